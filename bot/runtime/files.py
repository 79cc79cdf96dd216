"""Files on their way: out, made or wanted; and in, brought from the platform and handed back to the chat's talk.

What is brought stands in the inbox like any message, under a number that only its parcel can have: settled twice, it
comes in once. Numbers below zero are ours; the platform's never are.
"""

import asyncio
import base64
import json
from dataclasses import replace
from datetime import datetime
from typing import assert_never

import storage.inbox
from bot.dialogue.incoming import FileFailed, FileFetched, FileTrouble
from bot.runtime.bodies import FileBody, read_fetch, read_file, show_body
from bot.runtime.ports import Bringing, Gone, Got, Later, Made, Make, NotSent, Refused, SendFile, TooBig, Unknown
from bot.saying import Repeat, Wanted, line
from bot.wording.bundle import show_html, show_plain
from storage.inbox import RawUpdate
from storage.outbox import NewParcel, Parcel
from storage.work import Work

OURS = 0
"""The bot under whose number our own rows of the inbox stand."""

FETCH_TRIES = 4
"""So often a file is asked for before the person hears that it can't be had: what waits in the chat waits behind it."""

Brought = bytes | FileTrouble
"""A file's content, or why there is none."""


# --- in


def read_bringing(parcel: Parcel, answer: Bringing) -> Brought | Later | str:
    """What the platform's answer means: the end of it, a pause that it asks for, or (text) a reason to try again."""
    match answer:
        case Got(content):
            return content
        case TooBig():
            return FileTrouble.TOO_BIG
        case Gone() | Refused():
            return FileTrouble.GONE
        case Later():
            return answer
        case NotSent(error) | Unknown(error):
            return error if parcel.tries < FETCH_TRIES else FileTrouble.FAILED
        case _:
            assert_never(answer)


def come_in(work: Work, parcel: Parcel, brought: Brought, *, now: datetime) -> None:
    """What a fetch brought stands in the inbox, once."""
    asked = read_fetch(parcel.body)
    raw: dict[str, object] = {"message": asked.message, "name": asked.name, "purpose": asked.purpose}
    if isinstance(brought, FileTrouble):
        raw["trouble"] = brought.value
    else:
        raw["content"] = base64.b64encode(brought).decode()
    row = RawUpdate(bot=OURS, update=-parcel.id, chat=parcel.chat, raw=json.dumps(raw))
    storage.inbox.receive(work, (row,), now=now)


def read_own(raw: str, *, chat: int, received_at: datetime) -> FileFetched | FileFailed:
    """Our own row of the inbox, read."""
    data = json.loads(raw)
    message, name, purpose = data["message"], data["name"], data["purpose"]
    if "trouble" in data:
        return FileFailed(chat, message, received_at, name, purpose, FileTrouble(data["trouble"]))
    return FileFetched(chat, message, received_at, name, purpose, base64.b64decode(data["content"]))


# --- out


async def whole(body: FileBody, make: Make) -> Made | None:
    """The file's content, made where it was only wanted; `None` where there is nobody any more to make it of."""
    if isinstance(body.file, bytes):
        return Made(body.file)
    return await asyncio.to_thread(make, body.file)


def call_of(parcel: Parcel, body: FileBody, made: Made, *, is_html: bool, again: bool) -> SendFile:
    """The call that sends it; `again` marks it as a repetition."""
    words, show = (body.html, show_html) if is_html else (body.plain, show_plain)
    if isinstance(body.file, Wanted) and body.file.after:
        words = show(line("file-goes-on", part=body.file.part))
    if again and parcel.repeat == Repeat.AGAIN:
        words = f"{show(line('sent-again'))} {words}"
    name = _name(body, made)
    return SendFile(parcel.chat, name, made.content, words, body.keyboard, is_html, parcel.silent, body.reply_to)


def _name(body: FileBody, made: Made) -> str:
    """Where it comes in parts, each says which it is."""
    if not isinstance(body.file, Wanted) or (made.following is None and not body.file.after):
        return body.name
    stem, dot, ending = body.name.rpartition(".")
    return f"{stem}-part-{body.file.part}{dot}{ending}"


def part_after(parcel: Parcel, following: Wanted) -> NewParcel:
    """The parcel of the next part: put once, whoever settles the one before it."""
    body = replace(read_file(parcel.body), file=following, keyboard=())
    return NewParcel(
        key=f"{parcel.key.partition('+')[0]}+{following.part}",
        chat=parcel.chat,
        kind=parcel.kind,
        body=show_body(body),
        urgency=parcel.urgency,
        repeat=parcel.repeat,
        about=parcel.about,
        expires_at=parcel.expires_at,
        silent=True,
    )
