"""What came in, kept before it is acknowledged: each update once, a chat's in order and by one worker at a time.

A worker claims a chat's oldest waiting row; while it holds that row's lease, the chat is its own. Order within a chat
is that of the platform's update numbers, since webhooks may arrive side by side.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

import sqlalchemy as sa

from storage.columns import fixed
from storage.ready import ready
from storage.tables import inbox
from storage.work import Work, insert_new

NO_CHAT = 0
"""The chat under which updates without one stand."""


@dataclass(frozen=True, slots=True)
class RawUpdate:
    """An update as the platform sent it: whose bot, which number, from which chat (where it has one), its JSON."""

    bot: int
    update: int
    chat: int | None
    raw: str


@dataclass(frozen=True, slots=True)
class InboxRow:
    """A claimed update; `attempts` are those that failed before."""

    id: int
    update: int
    chat: int
    raw: str
    received_at: datetime
    attempts: int


_row = inbox.c
_WAITING = _row.state == fixed("waiting")
_RECEIVE = insert_new(inbox, "bot", "update_id")
_CHATS = ready(
    sa.select(_row.chat).where(_WAITING).group_by(_row.chat).order_by(sa.func.min(_row.id)).limit(sa.bindparam("limit"))
)
_HEAD = (
    sa.select(_row.id)
    .where(_row.chat == sa.bindparam("in_chat"), _WAITING)
    .order_by(_row.update_id, _row.id)
    .limit(1)
    .scalar_subquery()
)
_FREE = sa.or_(_row.lease_until.is_(None), _row.lease_until <= sa.bindparam("now"))
_LOCKED_HEAD = (
    sa.select(_row.id).where(_row.id == _HEAD, _WAITING, _FREE).with_for_update(skip_locked=True).scalar_subquery()
)
_CLAIM = ready(
    sa.update(inbox)
    .where(_row.id == _LOCKED_HEAD, _WAITING)
    .values(worker=sa.bindparam("by"), lease_until=sa.bindparam("until"))
    .returning(_row.id, _row.update_id, _row.chat, _row.raw, _row.received_at, _row.attempts)
)
_DONE = ready(
    sa.update(inbox)
    .where(_row.id == sa.bindparam("row"), _WAITING)
    .values(state="done", raw=b"", lease_until=None, done_at=sa.bindparam("now"))
)
_FAILED = ready(
    sa.update(inbox)
    .where(_row.id == sa.bindparam("row"), _WAITING)
    .values(
        attempts=_row.attempts + 1,
        lease_until=None,
        error=sa.bindparam("why"),
        state=sa.case((_row.attempts + 1 >= sa.bindparam("limit"), "aside"), else_="waiting"),
        done_at=sa.case((_row.attempts + 1 >= sa.bindparam("limit"), sa.bindparam("now", type_=_row.done_at.type))),
    )
    .returning(_row.state)
)
_ASIDE = ready(sa.select(sa.func.count()).select_from(inbox).where(_row.state == fixed("aside")))
_AGAIN = ready(
    sa.update(inbox)
    .where(_row.state == fixed("aside"))
    .values(state="waiting", attempts=0, lease_until=None, done_at=None)
)
_RELEASE = ready(sa.update(inbox).where(_WAITING, _row.lease_until.is_not(None)).values(lease_until=None))
_PURGE = ready(sa.delete(inbox).where(_row.done_at < sa.bindparam("before"), _row.state == fixed("done")))


def receive(work: Work, updates: Sequence[RawUpdate], *, now: datetime) -> tuple[int, ...]:
    """Keeps the updates; gives the chats that have new ones. A repeated update is nothing new."""
    fresh = []
    for one in updates:
        chat = NO_CHAT if one.chat is None else one.chat
        row = {"bot": one.bot, "update_id": one.update, "chat": chat, "raw": work.seal(one.raw), "received_at": now}
        if work.run(_RECEIVE, row) == 1:
            fresh.append(chat)
    return tuple(dict.fromkeys(fresh))


def chats_waiting(work: Work, *, limit: int = 1000) -> tuple[int, ...]:
    """Chats with updates to work on, the longest waiting first."""
    return tuple(row.chat for row in work.all(_CHATS, {"limit": limit}))


def claim(work: Work, chat: int, *, worker: str, now: datetime, lease_s: int = 60) -> InboxRow | None:
    """The chat's oldest waiting update, held by this worker until the lease ends; `None` where there is none, or
    another worker has the chat."""
    until = now + timedelta(seconds=lease_s)
    row = work.first(_CLAIM, {"in_chat": chat, "by": worker, "now": now, "until": until})
    if row is None:
        return None
    return InboxRow(row.id, row.update_id, row.chat, work.unseal(row.raw), row.received_at, row.attempts)


def keep_done(work: Work, row: InboxRow, *, now: datetime) -> bool:
    """The update is worked on, and its words are taken away; false where another worker had done so before."""
    return work.run(_DONE, {"row": row.id, "now": now}) == 1


def keep_failed(work: Work, row: InboxRow, error: str, *, now: datetime, limit: int = 3) -> bool:
    """One more failed attempt (in a transaction of its own); true where the update is set aside now."""
    params = {"row": row.id, "why": work.seal(error), "limit": limit, "now": now}
    found = work.first(_FAILED, params)
    return found is not None and found.state == "aside"


def set_aside_count(work: Work) -> int:
    """How many updates were set aside and wait for the operator."""
    row = work.first(_ASIDE)
    return int(row[0]) if row is not None else 0


def try_again(work: Work) -> int:
    """Puts all updates that were set aside back into their chats' lines (the operator's doing); tells how many."""
    return work.run(_AGAIN)


def recover(work: Work) -> None:
    """At a process's start: on SQLite, where one process works, the claims of its earlier life are let go; on
    PostgreSQL they end with their leases."""
    if not work.is_postgres:
        work.run(_RELEASE)


def purge(work: Work, *, before: datetime) -> int:
    """Forgets updates done before this time. Some days must be kept: the platform may send one again for a day."""
    return work.run(_PURGE, {"before": before})
