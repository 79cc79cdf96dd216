"""Where the talk with each chat stands."""

from datetime import datetime

import sqlalchemy as sa

from bot.dialogue.turn import Talk, TalkSet
from storage.codec import codec
from storage.ready import ready
from storage.tables import talks
from storage.work import Work, insert_or_replace

TALK = codec(Talk)
_ONE = ready(sa.select(talks.c.data, talks.c.expires_at).where(talks.c.chat == sa.bindparam("in_chat")))
_KEEP = insert_or_replace(talks, "chat", columns=("name", "step", "data", "expires_at"))
_END = ready(sa.delete(talks).where(talks.c.chat == sa.bindparam("in_chat")))


def talk_of(work: Work, chat: int, *, now: datetime) -> Talk | None:
    """The talk with this chat; `None` where there is none, or it has expired."""
    row = work.first(_ONE, {"in_chat": chat})
    return None if row is None else read_talk(work, row.data, row.expires_at, now=now)


def read_talk(work: Work, data: bytes | None, expires_at: datetime | None, *, now: datetime) -> Talk | None:
    """The talk from its columns."""
    if data is None or (expires_at is not None and expires_at <= now):
        return None
    return TALK.read_kept(work.unseal(data))


def keep_talk(work: Work, kept: TalkSet) -> None:
    """The talk stands here from now on, or is over."""
    talk = kept.talk
    if talk is None:
        work.run(_END, {"in_chat": kept.chat})
        return
    data = work.seal(TALK.show_kept(talk))
    row = {"chat": kept.chat, "name": talk.name, "step": talk.step, "data": data, "expires_at": talk.expires_at}
    work.run(_KEEP, row)
