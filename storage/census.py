"""Who bears a name, across all coaches: for the operator alone, whom a person asks to be deleted."""

from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from bot.training.people import ClientId, CoachId, Standing
from storage.ready import ready
from storage.tables import clients, coaches
from storage.work import Work

_EVERYONE = ready(
    sa.select(clients.c.id, clients.c.name, clients.c.standing, clients.c.joined_at, coaches.c.name.label("coach"))
    .join_from(clients, coaches, coaches.c.id == clients.c.coach)
    .order_by(clients.c.joined_at, clients.c.id)
)


_COACHES = ready(
    sa.select(
        coaches.c.id,
        coaches.c.name,
        coaches.c.joined_at,
        sa.select(sa.func.count())
        .select_from(clients)
        .where(clients.c.coach == coaches.c.id)
        .scalar_subquery()
        .label("clients"),
    ).order_by(coaches.c.joined_at, coaches.c.id)
)


@dataclass(frozen=True, slots=True)
class Namesake:
    """A client as the operator tells them apart: id, name, the coach's name, when they joined."""

    client: ClientId
    name: str
    coach: str
    standing: Standing
    joined_at: datetime


def clients_named(work: Work, name: str) -> tuple[Namesake, ...]:
    """All clients of this name, whatever its capitals and spaces, the earliest first. Names are sealed, so each is
    opened: for a rare errand, not for a turn."""
    wanted = _plain(name)
    return tuple(one for one in everyone(work) if _plain(one.name) == wanted)


def everyone(work: Work) -> tuple[Namesake, ...]:
    """All clients, the earliest first."""
    return tuple(
        Namesake(row.id, work.unseal(row.name), work.unseal(row.coach), Standing(row.standing), row.joined_at)
        for row in work.all(_EVERYONE)
    )


@dataclass(frozen=True, slots=True)
class NamedCoach:
    """A coach as the operator tells them apart: id, name, when they joined, how many clients are kept of theirs."""

    coach: CoachId
    name: str
    joined_at: datetime
    clients: int


def coaches_named(work: Work, name: str) -> tuple[NamedCoach, ...]:
    """All coaches of this name, the earliest first."""
    found = (NamedCoach(r.id, work.unseal(r.name), r.joined_at, r.clients) for r in work.all(_COACHES))
    return tuple(one for one in found if _plain(one.name) == _plain(name))


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
