"""How the database is: what waits, what was set aside, how long the oldest has waited."""

from dataclasses import dataclass
from datetime import datetime
from typing import Any

import sqlalchemy as sa

from storage import outbox as out
from storage.columns import fixed
from storage.inbox import set_aside_count
from storage.ready import Ready, ready
from storage.tables import inbox, outbox, schedule
from storage.work import Work

_INBOX = ready(sa.select(sa.func.count()).select_from(inbox).where(inbox.c.state == fixed("waiting")))
_RECEIVED = ready(sa.select(sa.func.min(inbox.c.received_at)).where(inbox.c.state == fixed("waiting")))
_OUTBOX = ready(sa.select(sa.func.min(outbox.c.made_at)).where(outbox.c.state == fixed("waiting")))
_SENDING = ready(sa.select(sa.func.count()).select_from(outbox).where(outbox.c.state == fixed("sending")))
_DUE = ready(sa.select(sa.func.count()).select_from(schedule).where(schedule.c.next_due_at <= sa.bindparam("now")))


@dataclass(frozen=True, slots=True)
class Health:
    """Counts of what waits; `oldest_waiting_s` is the age in seconds of what has waited longest, in or out."""

    inbox_waiting: int
    set_aside: int
    outbox_waiting: int
    sending: int
    due: int
    oldest_waiting_s: float


def health(work: Work, now: datetime) -> Health:
    """How it is right now."""
    oldest = [at for at in (_scalar(work, _RECEIVED), _scalar(work, _OUTBOX)) if at is not None]
    return Health(
        inbox_waiting=_scalar(work, _INBOX) or 0,
        set_aside=set_aside_count(work),
        outbox_waiting=out.waiting(work),
        sending=_scalar(work, _SENDING) or 0,
        due=_scalar(work, _DUE, now=now) or 0,
        oldest_waiting_s=max(((now - at).total_seconds() for at in oldest), default=0.0),
    )


def _scalar(work: Work, statement: Ready, **params: object) -> Any:
    row = work.first(statement, params)
    return None if row is None else row[0]
