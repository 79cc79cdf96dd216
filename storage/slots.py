"""Messages that keep themselves up to date: which message of a chat stands in which slot, and what it shows."""

from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from storage.ready import ready
from storage.tables import slots
from storage.work import Work, insert_or_replace


@dataclass(frozen=True, slots=True)
class SlotRow:
    """The message in a slot, and the hash of what it shows, so that nothing is edited into the same."""

    message: int
    body_hash: str


_HERE = sa.and_(slots.c.chat == sa.bindparam("in_chat"), slots.c.slot == sa.bindparam("in_slot"))
_ONE = ready(sa.select(slots.c.message, slots.c.body_hash).where(_HERE))
_KEEP = insert_or_replace(slots, "chat", "slot", columns=("message", "body_hash", "at"))
_DROP = ready(sa.delete(slots).where(_HERE))
_PURGE = ready(sa.delete(slots).where(slots.c.at < sa.bindparam("before")))


def slot_of(work: Work, chat: int, slot: str) -> SlotRow | None:
    """The message in this slot; `None` where it is empty."""
    row = work.first(_ONE, {"in_chat": chat, "in_slot": slot})
    return None if row is None else SlotRow(row.message, row.body_hash)


def keep_slot(work: Work, chat: int, slot: str, *, message: int, body_hash: str, now: datetime) -> None:
    """This message stands in the slot from now on."""
    work.run(_KEEP, {"chat": chat, "slot": slot, "message": message, "body_hash": body_hash, "at": now})


def drop_slot(work: Work, chat: int, slot: str) -> None:
    """The slot is empty (its message is gone)."""
    work.run(_DROP, {"in_chat": chat, "in_slot": slot})


def purge(work: Work, *, before: datetime) -> int:
    """Forgets slots not touched since this time."""
    return work.run(_PURGE, {"before": before})
