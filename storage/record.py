"""The record of facts: appended to, read in order, never changed (the database itself refuses: `storage.triggers`)."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import get_args

import sqlalchemy as sa

from bot.faults import StoreFault
from bot.training.facts import Fact
from bot.training.people import ClientId, SessionId
from storage.codec import VERSION, Codec, codec
from storage.ready import ready
from storage.tables import facts
from storage.work import Work


@dataclass(frozen=True, slots=True)
class Origin:
    """Who said it, when, and in which message: `m<chat>:<message>`, `t<update>`, or `r<rule>:<due>` for the clock's."""

    by: str
    at: datetime
    source: str


@dataclass(frozen=True, slots=True)
class About:
    """Whose fact it is, and which session and report it is about."""

    client: str | None = None
    coach: str | None = None
    session: str | None = None
    key: str | None = None


@dataclass(frozen=True, slots=True)
class Recorded:
    """A fact as it stands in the record."""

    id: int
    fact: Fact
    origin: Origin


CODECS: dict[str, Codec[Fact]] = {kind.__name__: codec(kind) for kind in get_args(Fact)}
"""By the name under which each kind of fact is kept: a class that gets another name must keep its old one here."""

_c = facts.c
_APPEND = ready(sa.insert(facts).inline())
_OF_CLIENT = ready(
    sa.select(facts)
    .where(_c.client == sa.bindparam("of"), _c.id > sa.bindparam("after"))
    .order_by(_c.id)
    .limit(sa.bindparam("limit"))
)
_SESSION_OF_KEY = ready(
    sa.select(_c.session)
    .where(_c.client == sa.bindparam("of"), _c.key == sa.bindparam("with_key"))
    .order_by(_c.id.desc())
    .limit(1)
)


def append(work: Work, fact: Fact, origin: Origin, about: About) -> None:
    """Adds the fact."""
    kind = type(fact).__name__
    body = work.seal(CODECS[kind].show_kept(fact))
    row = {
        "kind": kind,
        "version": VERSION,
        "said_by": origin.by,
        "at": origin.at,
        "source": origin.source,
        "body": body,
    }
    work.run(
        _APPEND,
        {**row, "client": about.client, "coach": about.coach, "session": about.session, "key": about.key},
    )


def facts_of(work: Work, client: ClientId) -> Iterator[Recorded]:
    """All that was ever kept of a client, in order. It grows with the years: for rebuilding and copies of one's data,
    never for an answer."""
    after = 0
    while rows := work.all(_OF_CLIENT, {"of": client, "after": after, "limit": 500}):
        for row in rows:
            kept = CODECS.get(row.kind)
            if kept is None:
                raise StoreFault(f"The database holds a fact of a kind that this version doesn't know ({row.kind}).")
            yield Recorded(row.id, kept.read_kept(work.unseal(row.body)), Origin(row.said_by, row.at, row.source))
        after = rows[-1].id


def session_of_key(work: Work, client: ClientId, key: str) -> SessionId | None:
    """Which session a message of the client's was about: a report, or a doubt; `None` where it was neither."""
    row = work.first(_SESSION_OF_KEY, {"of": client, "with_key": key})
    return None if row is None else row.session
