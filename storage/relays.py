"""Whom a message of ours is about, so that a reply to it reaches them."""

from datetime import datetime

import sqlalchemy as sa

from storage.ready import ready
from storage.tables import relays
from storage.work import Work, insert_or_replace

_KEEP = insert_or_replace(relays, "chat", "message", columns=("about", "other_message", "at"))
_ONE = ready(
    sa.select(relays.c.about, relays.c.other_message).where(
        relays.c.chat == sa.bindparam("in_chat"), relays.c.message == sa.bindparam("at_message")
    )
)
_PURGE = ready(sa.delete(relays).where(relays.c.at < sa.bindparam("before")))


def keep_about(work: Work, *, chat: int, message: int, about: str, other_message: int | None, now: datetime) -> None:
    """The message is about this client (in a coach's chat) or coach (in a client's); `other_message` is the other
    side's message that it shows."""
    row = {"chat": chat, "message": message, "about": about, "other_message": other_message, "at": now}
    work.run(_KEEP, row)


def about_of(work: Work, chat: int, message: int) -> tuple[str, int | None] | None:
    """Whom the message is about, and the other side's message; `None` for an ordinary one."""
    row = work.first(_ONE, {"in_chat": chat, "at_message": message})
    return None if row is None else (row.about, row.other_message)


def purge(work: Work, *, before: datetime) -> int:
    """Forgets what messages older than this were about."""
    return work.run(_PURGE, {"before": before})
