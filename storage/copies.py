"""What is kept of a client, or of a whole practice, to be handed out: whole, and nothing of anybody else.

A client's copy is of their chat: also of an earlier time with the practice. A coach's is of the coach and of all
clients who have not taken their consent back. It is read from one snapshot that holds up nobody who writes, and goes
through the data row by row.
"""

from dataclasses import dataclass

import sqlalchemy as sa

from bot.saying import Copy, Wanted
from bot.training.people import Standing
from storage.ready import Row
from storage.tables import clients, coaches, facts
from storage.work import Work

FACTS_A_PART = 300_000
"""Facts in one part of a practice's copy: well below the 50 MB that the platform takes, and the rows of a sheet."""


@dataclass(frozen=True, slots=True)
class Subject:
    """A client in a copy, and their coach."""

    id: str
    chat: int
    name: str
    zone: str
    coach: str
    coach_chat: int
    coach_name: str
    row: Row


@dataclass(frozen=True, slots=True)
class Owner:
    """The coach whose practice it is."""

    id: str
    chat: int
    name: str
    zone: str
    row: Row


@dataclass(frozen=True, slots=True)
class Scope:
    """Of whom a copy (or this part of it) is. `after` is where the next part begins, where there is one; `left_out` how
    many clients are not in it, since they took their consent back."""

    owner: Owner | None
    subjects: tuple[Subject, ...]
    after: str = ""
    left_out: int = 0


_COACH = tuple(coaches.c[name].label(f"coach_{name}") for name in ("chat", "name"))
_SUBJECTS = sa.select(clients, *_COACH).join_from(clients, coaches, coaches.c.id == clients.c.coach)


def scope_of(work: Work, wanted: Wanted, *, facts_a_part: int = FACTS_A_PART) -> Scope | None:
    """Of whom this copy is; `None` where nobody of that id is kept."""
    match wanted.copy:
        case Copy.OWN:
            here = sa.select(clients.c.chat).where(clients.c.id == wanted.whose).scalar_subquery()
            rows = work.all(_SUBJECTS.where(clients.c.chat == here).order_by(clients.c.joined_at, clients.c.id))
            return Scope(None, tuple(_subject(work, row) for row in rows)) if rows else None
        case Copy.PRACTICE:
            return _practice(work, wanted, facts_a_part)
        case Copy.TEMPLATE | Copy.SHEET:
            raise ValueError("sheets are no copies of what is kept: see `bot.runtime.programmes`")


def _practice(work: Work, wanted: Wanted, facts_a_part: int) -> Scope | None:
    row = work.first(sa.select(coaches).where(coaches.c.id == wanted.whose))
    if row is None:
        return None
    owner = Owner(row.id, row.chat, work.unseal(row.name), row.zone, row)
    withdrawn = clients.c.standing == Standing.WITHDRAWN.value
    mine = _SUBJECTS.where(clients.c.coach == owner.id, ~withdrawn, clients.c.id > wanted.after).order_by(clients.c.id)
    counting = sa.select(sa.func.count()).select_from(clients).where(clients.c.coach == owner.id, withdrawn)
    left_out = int(work.all(counting)[0][0])
    chosen: list[Subject] = []
    held = 0
    for found in work.all(mine):
        count = sa.select(sa.func.count()).select_from(facts).where(facts.c.client == found.id)
        held += int(work.all(count)[0][0])
        if chosen and held > facts_a_part:
            return Scope(owner, tuple(chosen), chosen[-1].id, left_out)
        chosen.append(_subject(work, found))
    return Scope(owner, tuple(chosen), "", left_out)


def _subject(work: Work, row: Row) -> Subject:
    return Subject(
        id=row.id,
        chat=row.chat,
        name=work.unseal(row.name),
        zone=row.zone,
        coach=row.coach,
        coach_chat=row.coach_chat,
        coach_name=work.unseal(row.coach_name),
        row=row,
    )
