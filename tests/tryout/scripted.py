"""A tiny bot for the page's tests, on a plain HTTP client: it knows a few words and answers to them."""

import asyncio
import json
from collections.abc import Mapping
from typing import TypeAlias

import aiohttp

from tests.tryout.conftest import TOKEN
from tests.tryout.drawings import png

Json: TypeAlias = "Mapping[str, Json] | list[Json] | str | int | bool | None"

LINK = "https://t.me/chalk_bot?start=c_abc"
CARD = (
    "<b>Lower A</b>\nSet {done} of 3\n\n<b>Squat</b> 5 × 102.5 kg, effort 8\n"
    "<blockquote expandable>Warm-up\n1. 8 × 40 kg\n2. 5 × 70 kg\n3. 3 × 90 kg</blockquote>\n"
    'Rest until <tg-time unix="1803888000" format="t">the clock</tg-time>. <tg-spoiler>You can.</tg-spoiler> '
    "<i>Cue:</i> <code>brace</code>"
)


def callback(label: str, data: str) -> Json:
    return {"text": label, "callback_data": data}


class ScriptedBot:
    """Polls, answers, and stops when told."""

    def __init__(self, base_url: str) -> None:
        self._url = f"{base_url}{TOKEN}"
        self._task: asyncio.Task[None] | None = None
        self.done = 0
        self.holds_answers = False

    def start(self) -> None:
        self._task = asyncio.get_running_loop().create_task(self._run())

    async def stop(self) -> None:
        if self._task is not None:
            self._task.cancel()
            await asyncio.gather(self._task, return_exceptions=True)

    async def _run(self) -> None:
        async with aiohttp.ClientSession() as http:
            self._http = http
            offset = 0
            while True:
                for update in await self.call("getUpdates", offset=offset, timeout=20):
                    offset = update["update_id"] + 1
                    await self.answer(update)

    async def call(self, method: str, **params: Json):  # type: ignore[no-untyped-def]
        async with self._http.post(f"{self._url}/{method}", json=params) as reply:
            return (await reply.json()).get("result")

    async def upload(self, method: str, name: str, data: bytes, file_name: str, **params: str) -> None:
        form = aiohttp.FormData(params)
        form.add_field(name, data, filename=file_name)
        async with self._http.post(f"{self._url}/{method}", data=form) as reply:
            assert (await reply.json())["ok"]

    async def say(self, chat: int, text: str, *rows: list[Json], **more: Json) -> None:
        markup: Json = {"inline_keyboard": list(rows)} if rows else None
        params: dict[str, Json] = {"chat_id": chat, "text": text, "parse_mode": "HTML", **more}
        if markup:
            params["reply_markup"] = markup
        await self.call("sendMessage", **params)

    async def answer(self, update) -> None:  # type: ignore[no-untyped-def]
        match update:
            case {"callback_query": query}:
                await self.tapped(query)
            case {"edited_message": {"text": text, "chat": {"id": chat}}}:
                await self.say(chat, f"Changed to: {text}")
            case {"message": {"document": document, "chat": {"id": chat}} as message}:
                named = f"{document['file_name']}, {document['file_size']} bytes"
                await self.say(chat, f"Got {named}. {message.get('caption', '')}")
            case {"message": {"photo": sizes, "chat": {"id": chat}}}:
                await self.say(chat, f"Got a picture, {sizes[-1]['width']} wide")
            case {"message": {"text": text, "chat": {"id": chat}} as message}:
                await self.spoken(chat, text, message)
            case {"message": {"chat": {"id": chat}} as message}:
                await self.say(chat, f"Got a {'voice' if 'voice' in message else 'sticker'}")
            case _:
                pass

    async def spoken(self, chat: int, text: str, message) -> None:  # type: ignore[no-untyped-def]
        match text.split():
            case ["/start", *payload]:
                await self.say(chat, f"Welcome, {message['chat']['first_name']} {' '.join(payload)}".strip())
            case ["card"]:
                row = [callback("Done", "done"), callback("Heavier", "more"), callback("Stop", "stop")]
                await self.say(chat, CARD.format(done=self.done), row, [callback("Something hurts", "pain")])
            case ["picture"]:
                caption = {"chat_id": str(chat), "caption": "<b>Squat</b>: 8 weeks", "parse_mode": "HTML"}
                await self.upload("sendPhoto", "photo", png(640, 360), "chart.png", **caption)
            case ["file"]:
                await self.upload("sendDocument", "document", b"week;day\n1;1\n", "plan.csv", chat_id=str(chat))
            case ["keys"]:
                keyboard: Json = {"keyboard": [["5", "6"], ["other"]], "input_field_placeholder": "how many?"}
                await self.say(chat, "How many?", reply_markup=keyboard)
            case ["invite"]:
                share = f"https://t.me/share/url?url={LINK}&text=Come%20along"
                buttons: list[Json] = [{"text": "Share", "url": share}, {"text": "Copy", "copy_text": {"text": LINK}}]
                await self.say(chat, f"Your link: {LINK}", buttons)
            case ["react"]:
                reaction: Json = [{"type": "emoji", "emoji": "👍"}]
                await self.call("setMessageReaction", chat_id=chat, message_id=message["message_id"], reaction=reaction)
            case _:
                answered = message.get("reply_to_message", {}).get("text")
                told = f" (to: {answered})" if answered else ""
                await self.say(chat, f"You said: {json.dumps(text, ensure_ascii=False)}{told}".replace("<", "&lt;"))

    async def tapped(self, query) -> None:  # type: ignore[no-untyped-def]
        if self.holds_answers:
            return
        chat, message = query["message"]["chat"]["id"], query["message"]["message_id"]
        if query["data"] == "pain":
            await self.call("answerCallbackQuery", callback_query_id=query["id"], text="Stop for now.", show_alert=True)
            return
        self.done += 1
        await self.call("answerCallbackQuery", callback_query_id=query["id"], text=f"Kept: {query['data']}")
        markup: Json = {"inline_keyboard": [[callback("Done", "done"), callback("Stop", "stop")]]}
        await self.call(
            "editMessageText",
            chat_id=chat,
            message_id=message,
            text=CARD.format(done=self.done),
            parse_mode="HTML",
            reply_markup=markup,
        )
