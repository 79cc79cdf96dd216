"""The people's side: what a person can do and see, in the process and over HTTP."""

import asyncio

import aiohttp
import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, ReplyKeyboardMarkup, ReplyKeyboardRemove

from bot.tryout.standin import CantDo, Limits, Seat, StandIn, show_line
from tests.tryout.conftest import MINA, OLEK, HandClock
from tests.tryout.drawings import png

MARKUP = InlineKeyboardMarkup(
    [
        [InlineKeyboardButton("Done", callback_data="d"), InlineKeyboardButton("Skip", callback_data="s")],
        [InlineKeyboardButton("Site", url="https://example.org")],
    ]
)


async def test_waiting_for_words_edits_and_answers(bot: Bot, mina: Seat) -> None:
    """A wait ends with the message, be it there already, new, or made so by an edit; a tap's wait with its answer."""
    sent = await bot.send_message(MINA, "Set 1 of 3", reply_markup=MARKUP)
    assert (await mina.wait_for("Set 1")).id == sent.message_id
    waiting = asyncio.create_task(mina.wait_for("Set 2"))
    query = mina.tap(sent.message_id, "Done")
    answer = asyncio.create_task(mina.wait_answer(query))
    await bot.answer_callback_query(query, "Kept")
    await bot.edit_message_text("Set 2 of 3", MINA, sent.message_id)
    assert (await waiting).edited is not None
    assert await answer == "Kept"
    assert (await mina.wait_for(lambda message: not message.inline)).id == sent.message_id


async def test_a_wait_in_vain_shows_the_chat(bot: Bot, mina: Seat) -> None:
    """TimeoutError has the transcript, so that a failed test says what was said instead."""
    await bot.send_message(MINA, "Something else", reply_markup=MARKUP)
    with pytest.raises(TimeoutError, match=r"2 bot: 'Something else' \[Done\] \[Skip\] \[Site\]"):
        await mina.wait_for("Welcome", timeout_s=0.01)


async def test_buttons_by_label_number_and_place(bot: Bot, mina: Seat) -> None:
    """A button is named by what it says, by number, or by row and column; one that isn't there is told so."""
    sent = await bot.send_message(MINA, "x", reply_markup=MARKUP)
    for place in ("Skip", 1, (0, 1)):
        mina.tap(sent.message_id, place)
    updates = await bot.get_updates()
    assert [update.callback_query.data for update in updates if update.callback_query] == ["s", "s", "s"]
    with pytest.raises(CantDo, match="it has «Done», «Skip», «Site»"):
        mina.tap(sent.message_id, "Finish")
    with pytest.raises(CantDo, match="does not call the bot"):
        mina.tap(sent.message_id, "Site")
    with pytest.raises(CantDo, match="no message 99"):
        mina.tap(99, 0)


async def test_what_a_person_cannot_do(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """As in a chat app: nothing empty or too long, no edit of others' words, nothing while the bot is blocked."""
    sent = await bot.send_message(MINA, "x")
    spoken = mina.say("y")
    with pytest.raises(CantDo, match="nothing to send"):
        mina.say("  ")
    with pytest.raises(CantDo, match="4096"):
        mina.say("x" * 4097)
    with pytest.raises(CantDo, match="only one's own"):
        mina.edit(sent.message_id, "z")
    with pytest.raises(CantDo, match="says that already"):
        mina.edit(spoken, "y")
    with pytest.raises(CantDo, match="not a picture"):
        mina.send("photo", b"text")
    mina.block()
    for act in (lambda: mina.say("z"), lambda: mina.edit(spoken, "z"), lambda: mina.tap_data(2, "d"), mina.block):
        with pytest.raises(CantDo):
            act()
    with pytest.raises(CantDo, match="not written yet"):
        standin.seat(OLEK).last()


async def test_a_reply_keyboard_stays_until_it_is_taken_away(bot: Bot, mina: Seat) -> None:
    """ReplyKeyboardMarkup, ReplyKeyboardRemove: it belongs to the chat, not to the message."""
    keyboard = ReplyKeyboardMarkup([["5", "6"], ["more"]], input_field_placeholder="how many?")
    await bot.send_message(MINA, "How many?", reply_markup=keyboard)
    await bot.send_message(MINA, "hm")
    assert mina.chat.keyboard is not None
    assert mina.chat.keyboard.rows == (("5", "6"), ("more",))
    await bot.send_message(MINA, "thanks", reply_markup=ReplyKeyboardRemove())
    assert mina.chat.keyboard is None


async def test_pins(bot: Bot, mina: Seat) -> None:
    """pinChatMessage: the chat says so in a notice of its own; unpinning takes no message away."""
    sent = await bot.send_message(MINA, "Today")
    await bot.pin_chat_message(MINA, sent.message_id)
    assert mina.chat.pinned == sent.message_id
    assert "pinned_message" in mina.last().more
    await bot.unpin_chat_message(MINA, sent.message_id)
    assert mina.chat.pinned == 0


async def test_over_http(standin: StandIn, bot: Bot, clock: HandClock) -> None:
    """The whole people's side by HTTP: add, start, say, read, tap, edit, send, fetch, block, news."""
    async with aiohttp.ClientSession(standin.url) as http:

        async def post(path: str, body: object) -> dict[str, object]:
            async with http.post(path, json=body) as reply:
                given: dict[str, object] = await reply.json()
                return given

        added = await post("/people", {"first_name": "Ines", "language": "es", "zone": "America/Lima"})
        assert (added["id"], added["zone"], added["started"]) == (9, "America/Lima", False)
        await post("/people/9/start", {"payload": "c_x"})
        await post("/people/9/say", {"text": "hola", "reply_to": 1})
        sent = await bot.send_photo(9, png(8, 6), caption="<b>A</b>", parse_mode="HTML", reply_markup=MARKUP)
        await bot.set_message_reaction(9, 2, "👍")
        async with http.get("/people/9/chat") as reply:
            chat = await reply.json()
        start, said, picture = chat["messages"]
        assert (start["text"], said["reply_to"], said["reactions"]) == ("/start c_x", 1, ["👍"])
        assert (picture["html"], picture["by"], picture["at"]) == ("<b>A</b>", "bot", clock.now().isoformat())
        assert [[one["label"] for one in row] for row in picture["buttons"]] == [["Done", "Skip"], ["Site"]]
        async with http.get(picture["file"]["url"]) as reply:
            assert (await reply.read(), reply.content_type) == (png(8, 6), "image/png")
        assert "query" in await post("/people/9/tap", {"message": sent.message_id, "button": [0, 1]})
        await post("/people/9/edit", {"message": 2, "text": "buenas"})
        form = aiohttp.FormData({"kind": "document", "caption": "c"})
        form.add_field("file", b"1;2", filename="a.csv", content_type="text/csv")
        async with http.post("/people/9/send", data=form) as reply:
            assert await reply.json() == {"message": 4}
        async with http.get(f"/people/news?after={chat['last']}&wait_s=0") as reply:
            news = await reply.json()
        assert [(one["kind"], one["message_id"]) for one in news["notices"]] == [("message", 2), ("message", 4)]
        waiting = asyncio.create_task(_news(http, news["last"]))
        await post("/people/9/block", {})
        assert [one["kind"] for one in (await waiting)["notices"]] == ["person"]
        assert "unblock it first" in str(await post("/people/9/say", {"text": "x"}))
        assert "can't do" in str(await post("/people/9/dance", {}))
        assert "nobody" in str(await post("/people/77/say", {"text": "x"}))


async def _news(http: aiohttp.ClientSession, after: int) -> dict[str, list[dict[str, object]]]:
    async with http.get(f"/people/news?after={after}&wait_s=5") as reply:
        given: dict[str, list[dict[str, object]]] = await reply.json()
        return given


@pytest.mark.parametrize("headers", [{"Origin": "https://example.org"}, {"Host": "example.org"}])
async def test_other_sites_are_kept_out(standin: StandIn, headers: dict[str, str]) -> None:
    """A web page from elsewhere can neither read nor act here, not even through a name that points to loopback."""
    async with aiohttp.ClientSession(standin.url) as http, http.get("/people", headers=headers) as reply:
        assert reply.status == 403


def test_a_line_names_file_and_reactions(mina: Seat, limits: Limits) -> None:
    """The transcript's line: who, file, words, buttons, reactions."""
    mina.send("document", b"x", name="a.csv", caption="see")
    assert limits.pace is None
    assert show_line(mina.messages()[-1]) == "2 Mina: <document a.csv> 'see'"
