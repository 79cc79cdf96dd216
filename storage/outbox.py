"""What goes out: kept with the facts that it tells of, and only then sent.

A parcel is claimed (`sending`, committed) before the call and closed after it; what is still `sending` when its worker
died may have arrived: `recover`. Of one chat at most one parcel is on its way, in order of writing, urgent ones first.
A parcel's key is unique for good, so that nothing is put twice; its words are taken away as soon as it is closed.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from enum import StrEnum

import sqlalchemy as sa

from bot.saying import Repeat
from storage.columns import fixed
from storage.ready import Row, ready
from storage.tables import outbox
from storage.work import Work, insert_new


class ParcelKind(StrEnum):
    """What is to be done in the chat."""

    SEND = "send"
    REACT = "react"
    STRIP = "strip"
    RELAY = "relay"
    MENU = "menu"
    LEAVE = "leave"
    FILE = "file"
    FETCH = "fetch"
    """Not to the chat but from it: a file's content is brought."""


@dataclass(frozen=True, slots=True)
class NewParcel:
    """Something to be sent. `body` is JSON of the runtime's making; `urgency` and `repeat` are those of `bot.saying`
    (urgency 0 goes before all else of its chat), `slot`, `fresh`, `about` and `silent` as in `Say`."""

    key: str
    chat: int
    kind: ParcelKind
    body: str
    urgency: int
    repeat: str
    slot: str = ""
    fresh: bool = False
    about: str = ""
    expires_at: datetime | None = None
    silent: bool = False


@dataclass(frozen=True, slots=True)
class Parcel:
    """A claimed parcel. `tries` counts this one too; `maybe_sent` where an earlier one may have arrived."""

    id: int
    key: str
    chat: int
    kind: ParcelKind
    body: str
    urgency: int
    repeat: str
    slot: str
    fresh: bool
    about: str
    tries: int
    expires_at: datetime | None
    silent: bool
    maybe_sent: bool


FILE_LEASE = timedelta(minutes=10)
"""So much longer a file may be on its way: it may have to be made first, and is long to send."""

_c = outbox.c
_head = outbox.alias("head")
_busy = outbox.alias("busy")
_WAITING = _c.state == fixed("waiting")
_SENDING = _c.state == fixed("sending")
_DUE = sa.and_(_WAITING, _c.next_at <= sa.bindparam("now"))
_IS_HEAD = _c.id == (
    sa.select(_head.c.id)
    .where(_head.c.chat == _c.chat, _head.c.state == fixed("waiting"))
    .order_by(_head.c.lane, _head.c.id)
    .limit(1)
    .correlate(outbox)
    .scalar_subquery()
)
_IN_FLIGHT = sa.exists().where(_busy.c.chat == _c.chat, _busy.c.state == fixed("sending")).correlate(outbox)

_PUT = insert_new(outbox, "key")
_newer = outbox.alias("newer")
_NEWER = sa.select(_newer.c.id).where(_newer.c.key == sa.bindparam("with_key")).scalar_subquery()
_SUPERSEDE = ready(
    sa.update(outbox)
    .where(
        _WAITING,
        _c.chat == sa.bindparam("in_chat"),
        _c.slot == sa.bindparam("in_slot"),
        _c.kind == fixed("send"),
        _c.fresh == sa.bindparam("is_fresh"),
        _c.id < _NEWER,
    )
    .values(state="superseded", closed_at=sa.bindparam("now"), body=b"")
)
_ONE_CLAIM_AT_A_TIME = ready(sa.select(sa.func.pg_advisory_xact_lock(0x63686F78)))
_CHOSEN = (
    sa.select(_c.id)
    .where(_DUE, _IS_HEAD, ~_IN_FLIGHT)
    .order_by(_c.urgency, _c.id)
    .limit(sa.bindparam("limit"))
    .with_for_update(skip_locked=True)
    .cte("chosen")
    .prefix_with("MATERIALIZED", dialect="postgresql")
)
"""Once and for all: as a plain subquery PostgreSQL may run it again for each row, and so claim more than the limit."""
_CLAIM = ready(
    sa.update(outbox)
    .where(_c.id.in_(sa.select(_CHOSEN.c.id)), _WAITING)
    .values(
        state="sending",
        tries=_c.tries + 1,
        worker=sa.bindparam("by"),
        lease_until=sa.case(
            (_c.kind == fixed("file"), sa.bindparam("until_file", type_=_c.lease_until.type)),
            else_=sa.bindparam("until", type_=_c.lease_until.type),
        ),
    )
    .returning(
        *(_c[f] for f in ("id", "key", "chat", "kind", "body", "urgency", "repeat", "slot", "fresh", "about", "tries")),
        *(_c[f] for f in ("expires_at", "silent", "maybe_sent")),
    )
)
_MINE = sa.and_(_c.id == sa.bindparam("parcel"), _SENDING)
_SENT = ready(
    sa.update(outbox)
    .where(_MINE)
    .values(
        state="sent",
        body=b"",
        lease_until=None,
        message=sa.bindparam("as_message"),
        body_hash=sa.bindparam("hash"),
        closed_at=sa.bindparam("now"),
    )
)
_BACK = ready(
    sa.update(outbox)
    .where(_MINE)
    .values(
        state="waiting",
        lease_until=None,
        next_at=sa.bindparam("again_at"),
        tries=_c.tries - sa.bindparam("uncounted", type_=sa.Integer),
        error=sa.bindparam("why"),
        maybe_sent=sa.case((sa.bindparam("maybe", type_=_c.maybe_sent.type) == 1, 1), else_=_c.maybe_sent),
    )
)
_CLOSE = ready(
    sa.update(outbox)
    .where(_MINE)
    .values(
        state=sa.bindparam("as_state"),
        body=b"",
        lease_until=None,
        error=sa.bindparam("why"),
        closed_at=sa.bindparam("now"),
    )
)
_DROP_CHAT = ready(
    sa.update(outbox)
    .where(_WAITING, _c.chat == sa.bindparam("in_chat"))
    .values(state="dead", body=b"", error=sa.bindparam("why"), closed_at=sa.bindparam("now"))
)
_DROP_CLOSED = ready(sa.delete(outbox).where(_c.key.like(sa.bindparam("pattern")), _c.closed_at.is_not(None)))
_PUT_AT = ready(sa.select(_c.made_at).where(_c.key == sa.bindparam("with_key")))
_LOST = sa.and_(
    _SENDING,
    sa.or_(
        sa.bindparam("alone", type_=_c.fresh.type) == 1,
        _c.lease_until <= sa.bindparam("now"),
        _c.worker == sa.bindparam("own"),
    ),
)
_RECOVER_DROPPED = ready(
    sa.update(outbox)
    .where(_LOST, _c.repeat == fixed("drop"))
    .values(state="unknown", body=b"", lease_until=None, closed_at=sa.bindparam("now"))
)
_RECOVER = ready(
    sa.update(outbox)
    .where(_LOST, _c.repeat != fixed("drop"))
    .values(state="waiting", maybe_sent=True, lease_until=None, next_at=sa.bindparam("now"))
)
_NEXT = ready(sa.select(sa.func.min(_c.next_at)).where(_WAITING, _IS_HEAD, ~_IN_FLIGHT))
_COUNT = ready(sa.select(sa.func.count()).select_from(outbox).where(_WAITING))
_PURGE = ready(sa.delete(outbox).where(_c.closed_at < sa.bindparam("before")))


def put(work: Work, parcels: Sequence[NewParcel], *, now: datetime) -> None:
    """Puts the parcels into the line. A key that was ever put before is left as it is. A message that keeps itself up
    to date takes the place of older ones of its slot that still wait (but of those to be sent afresh)."""
    if not parcels:
        return
    work.run(_PUT, [_row(work, parcel, now) for parcel in parcels])
    for parcel in parcels:
        if parcel.slot and parcel.kind is ParcelKind.SEND:
            newer = {"in_chat": parcel.chat, "in_slot": parcel.slot, "with_key": parcel.key}
            work.run(_SUPERSEDE, {**newer, "is_fresh": False, "now": now})


def _row(work: Work, parcel: NewParcel, now: datetime) -> dict[str, object]:
    return {
        "key": parcel.key,
        "chat": parcel.chat,
        "kind": parcel.kind.value,
        "body": work.seal(parcel.body),
        "urgency": parcel.urgency,
        "lane": 0 if parcel.urgency == 0 else 1,
        "repeat": Repeat(parcel.repeat).value,
        "slot": parcel.slot,
        "fresh": parcel.fresh,
        "about": parcel.about,
        "silent": parcel.silent,
        "next_at": now,
        "expires_at": parcel.expires_at,
        "made_at": now,
    }


def claim_due(work: Work, *, worker: str, now: datetime, limit: int, lease_s: int = 60) -> tuple[Parcel, ...]:
    """The parcels to send now, at most one of each chat, most urgent first. Commit before the call: they are marked as
    being sent."""
    if work.is_postgres:
        work.run(_ONE_CLAIM_AT_A_TIME)
    until = now + timedelta(seconds=lease_s)
    params = {"by": worker, "now": now, "until": until, "until_file": until + FILE_LEASE, "limit": limit}
    claimed = [_parcel(work, row) for row in work.all(_CLAIM, params)]
    return tuple(sorted(claimed, key=lambda parcel: (parcel.urgency, parcel.id)))


def _parcel(work: Work, row: Row) -> Parcel:
    return Parcel(
        id=row.id,
        key=row.key,
        chat=row.chat,
        kind=ParcelKind(row.kind),
        body=work.unseal(row.body),
        urgency=row.urgency,
        repeat=row.repeat,
        slot=row.slot,
        fresh=row.fresh,
        about=row.about,
        tries=row.tries,
        expires_at=row.expires_at,
        silent=row.silent,
        maybe_sent=row.maybe_sent,
    )


def keep_sent(work: Work, parcel: Parcel, *, message: int | None, body_hash: str, now: datetime) -> bool:
    """It arrived, as this message; false where it is no longer there as being sent."""
    return work.run(_SENT, {"parcel": parcel.id, "as_message": message, "hash": body_hash, "now": now}) == 1


def keep_later(work: Work, parcel: Parcel, *, until: datetime, error: str, counts: bool = True) -> None:
    """It surely did not arrive; it is tried again at `until`, and what waits in its chat waits behind it. Where the
    try was nobody's fault (a pause that the platform asked for), it needn't count."""
    params = {"parcel": parcel.id, "again_at": until, "why": work.seal(error), "maybe": False}
    work.run(_BACK, {**params, "uncounted": 0 if counts else 1})


def keep_unknown(work: Work, parcel: Parcel, *, until: datetime, error: str, now: datetime) -> None:
    """It may have arrived: it is closed where twice is worse than never (`Repeat.DROP`), else tried again at `until`,
    marked as `maybe_sent`."""
    if parcel.repeat == Repeat.DROP:
        work.run(_CLOSE, {"parcel": parcel.id, "as_state": "unknown", "why": work.seal(error), "now": now})
    else:
        params = {"parcel": parcel.id, "again_at": until, "why": work.seal(error), "maybe": True}
        work.run(_BACK, {**params, "uncounted": 0})


def keep_dead(work: Work, parcel: Parcel, *, error: str, now: datetime) -> bool:
    """It will never arrive (refused, expired, tried too often); false where it is no longer there as being sent."""
    return work.run(_CLOSE, {"parcel": parcel.id, "as_state": "dead", "why": work.seal(error), "now": now}) == 1


def drop_chat(work: Work, chat: int, *, error: str, now: datetime) -> int:
    """Gives up all that waits for a chat which takes no messages any more; tells how many."""
    return work.run(_DROP_CHAT, {"in_chat": chat, "why": work.seal(error), "now": now})


def drop_closed(work: Work, prefix: str) -> None:
    """Nothing of closed parcels whose keys begin so stays: their keys and chats neither."""
    work.run(_DROP_CLOSED, {"pattern": f"{prefix}%"})


def put_at(work: Work, key: str) -> datetime | None:
    """When a parcel of this key was put; `None` where none is known."""
    row = work.first(_PUT_AT, {"with_key": key})
    return None if row is None else row.made_at


def recover(work: Work, *, now: datetime, own: str = "") -> int:
    """What dead workers were sending may have arrived: treated as by `keep_unknown`. Call it at a process's start, with
    the name under which its earlier life worked (on SQLite, where one process sends, all of it is then a dead
    worker's), and on PostgreSQL now and then (by lease). There it first waits for claims that are being committed: the
    last one of a killed process may reach the database after its next life has begun."""
    if work.is_postgres:
        work.run(_ONE_CLAIM_AT_A_TIME)
    params = {"alone": not work.is_postgres, "now": now, "own": own}
    return work.run(_RECOVER_DROPPED, params) + work.run(_RECOVER, params)


def next_due_at(work: Work) -> datetime | None:
    """When the next parcel may be sent (perhaps long ago); chats with one on its way don't count."""
    row = work.first(_NEXT)
    return row[0] if row is not None else None


def waiting(work: Work) -> int:
    """How many parcels wait to be sent."""
    row = work.first(_COUNT)
    return int(row[0]) if row is not None else 0


def purge(work: Work, *, before: datetime) -> int:
    """Forgets parcels closed before this time (with their keys: keep them longer than anything may be put twice)."""
    return work.run(_PURGE, {"before": before})
