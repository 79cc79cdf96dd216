"""Deleting all that is kept of a client, or of a coach, for good: the only way in which facts may go."""

from typing import Any

import sqlalchemy as sa

from bot.training.people import ClientId, CoachId
from storage.ready import ready
from storage.tables import (
    clients,
    coaches,
    facts,
    forgetting,
    inbox,
    invites,
    matters,
    outbox,
    programmes,
    relays,
    schedule,
    sessions,
    sets,
    shelves,
    slots,
    strengths,
    talks,
)
from storage.work import Work

_CHAT = ready(sa.select(clients.c.chat).where(clients.c.id == sa.bindparam("gone")).with_for_update())
_AT = ready(sa.select(clients.c.id).where(clients.c.chat == sa.bindparam("in_chat")).order_by(clients.c.id))
_OF_COACH = ready(sa.select(clients.c.id).where(clients.c.coach == sa.bindparam("gone")).order_by(clients.c.id))
_COACH = ready(sa.select(coaches.c.chat).where(coaches.c.id == sa.bindparam("gone")).with_for_update())
_OTHERS = ready(
    sa.select(clients.c.id)
    .where(clients.c.chat == sa.bindparam("in_chat"), clients.c.id != sa.bindparam("gone"))
    .union_all(sa.select(coaches.c.id).where(coaches.c.chat == sa.bindparam("in_chat")))
)
_OTHER_CLIENT = ready(sa.select(clients.c.id).where(clients.c.chat == sa.bindparam("in_chat")).limit(1))
_OPENS = ready(sa.insert(forgetting))
_SHUTS = ready(sa.delete(forgetting).where(forgetting.c.client == sa.bindparam("gone")))


def _gone(*columns: sa.Column[Any]) -> tuple[sa.Delete, ...]:
    return tuple(sa.delete(column.table).where(column == sa.bindparam("gone")) for column in columns)


_OF_CLIENT = _gone(
    facts.c.client,
    sets.c.client,
    strengths.c.client,
    matters.c.client,
    sessions.c.client,
    schedule.c.whose,
    relays.c.about,
    outbox.c.about,
    talks.c.step,
    clients.c.id,
)
"""`talks.step`: a coach's talk that is about them."""
_SLOTS_ABOUT = sa.delete(slots).where(slots.c.slot.like(sa.bindparam("pattern"), escape="\\"))
"""A coach's messages that keep themselves up to date name in their slot whom they are about."""
_COACHS = (
    sa.delete(facts).where(facts.c.coach == sa.bindparam("gone"), facts.c.client.is_(None)),
    *_gone(invites.c.coach, shelves.c.coach, schedule.c.whose, relays.c.about, outbox.c.about, coaches.c.id),
)
_OF_CHAT = (
    sa.delete(inbox).where(inbox.c.chat == sa.bindparam("in_chat"), inbox.c.lease_until.is_(None)),
    sa.update(inbox).where(inbox.c.chat == sa.bindparam("in_chat")).values(chat=0),
    *(sa.delete(table).where(table.c.chat == sa.bindparam("in_chat")) for table in (outbox, talks, slots, relays)),
)
_LEFT_OVER = sa.delete(programmes).where(
    ~sa.exists().where(shelves.c.snapshot == programmes.c.snapshot),
    ~sa.exists().where(clients.c.snapshot == programmes.c.snapshot),
    ~sa.exists().where(sessions.c.snapshot == programmes.c.snapshot),
)
"""Programmes as they once stood that nobody has any more."""


def forget(work: Work, client: ClientId) -> bool:
    """Deletes the client: facts, sessions, sets, strengths, pain, questions, rules, what their chat said and was to be
    told, and what waits for the coach about them. False where there is no such client.

    Of the update that is being worked on only its number stays, so that it is not worked on twice; where the same chat
    is somebody else's too (a coach's, or an earlier client's), what the chat said stays theirs. Programmes are the
    coach's, but for older forms of them that nobody has any more. On SQLite what is deleted is overwritten, also in the
    log of writing (`storage.engine`).
    """
    row = work.first(_CHAT, {"gone": client})
    if row is None:
        return False
    is_shared = work.first(_OTHERS, {"in_chat": row.chat, "gone": client}) is not None
    work.run(_OPENS, {"client": client})
    for statement in _OF_CLIENT:
        work.run(statement, {"gone": client})
    work.run(_SLOTS_ABOUT, {"pattern": "%" + client.replace("_", "\\_") + "%"})
    if not is_shared:
        _forget_chat(work, row.chat)
    work.run(_SHUTS, {"gone": client})
    work.run(_LEFT_OVER)
    work.memory.forget(client)
    work.scrubs = True
    return True


def forget_at(work: Work, chat: int) -> tuple[ClientId, ...]:
    """Deletes everybody who ever trained from this chat; who they were."""
    gone = tuple(row.id for row in work.all(_AT, {"in_chat": chat}))
    for client in gone:
        forget(work, client)
    return gone


def forget_coach(work: Work, coach: CoachId) -> bool:
    """Deletes the coach and every client of theirs. False where there is no such coach."""
    row = work.first(_COACH, {"gone": coach})
    if row is None:
        return False
    for client in work.all(_OF_COACH, {"gone": coach}):
        forget(work, client.id)
    work.run(_OPENS, {"client": coach})
    for statement in _COACHS:
        work.run(statement, {"gone": coach})
    if work.first(_OTHER_CLIENT, {"in_chat": row.chat}) is None:
        _forget_chat(work, row.chat)
    work.run(_SHUTS, {"gone": coach})
    work.run(_LEFT_OVER)
    work.scrubs = True
    return True


def _forget_chat(work: Work, chat: int) -> None:
    for statement in _OF_CHAT:
        work.run(statement, {"in_chat": chat})
