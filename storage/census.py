"""Who bears a name, across all coaches: for the operator alone, whom a person asks to be deleted."""

from dataclasses import dataclass
from datetime import datetime

import sqlalchemy as sa

from bot.training.people import ClientId, Standing
from storage.ready import ready
from storage.tables import clients, coaches
from storage.work import Work

_EVERYONE = ready(
    sa.select(clients.c.id, clients.c.name, clients.c.standing, clients.c.joined_at, coaches.c.name.label("coach"))
    .join_from(clients, coaches, coaches.c.id == clients.c.coach)
    .order_by(clients.c.joined_at, clients.c.id)
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
    found = (
        Namesake(row.id, work.unseal(row.name), work.unseal(row.coach), Standing(row.standing), row.joined_at)
        for row in work.all(_EVERYONE)
    )
    return tuple(one for one in found if _plain(one.name) == wanted)


def _plain(name: str) -> str:
    return " ".join(name.split()).casefold()
