"""Deleting all that is kept of a client, for good: the only way in which facts may go."""

import sqlalchemy as sa

from bot.training.people import ClientId
from storage.ready import ready
from storage.tables import (
    clients,
    coaches,
    facts,
    forgetting,
    inbox,
    matters,
    outbox,
    relays,
    schedule,
    sessions,
    sets,
    slots,
    strengths,
    talks,
)
from storage.work import Work

_CHAT = ready(sa.select(clients.c.chat).where(clients.c.id == sa.bindparam("gone")).with_for_update())
_OTHERS = ready(
    sa.select(clients.c.id)
    .where(clients.c.chat == sa.bindparam("in_chat"), clients.c.id != sa.bindparam("gone"))
    .union_all(sa.select(coaches.c.id).where(coaches.c.chat == sa.bindparam("in_chat")))
)
_OPENS = ready(sa.insert(forgetting))
_SHUTS = ready(sa.delete(forgetting).where(forgetting.c.client == sa.bindparam("gone")))
_OF_CLIENT = tuple(
    sa.delete(table).where(column == sa.bindparam("gone"))
    for table, column in (
        (facts, facts.c.client),
        (sets, sets.c.client),
        (strengths, strengths.c.client),
        (matters, matters.c.client),
        (sessions, sessions.c.client),
        (schedule, schedule.c.whose),
        (relays, relays.c.about),
        (outbox, outbox.c.about),
        (clients, clients.c.id),
    )
)
_OF_CHAT = (
    sa.delete(inbox).where(inbox.c.chat == sa.bindparam("in_chat"), inbox.c.lease_until.is_(None)),
    *(sa.delete(table).where(table.c.chat == sa.bindparam("in_chat")) for table in (outbox, talks, slots, relays)),
)


def forget(work: Work, client: ClientId) -> bool:
    """Deletes the client: facts, sessions, sets, strengths, pain, questions, rules, what their chat said and was to be
    told, and what waits for the coach about them. False where there is no such client.

    The update that is being worked on stays until it is done (its words go then, as with every other), and where the
    same chat is somebody else's too (a coach's, or an earlier client's), what the chat said stays theirs. Programmes
    are the coach's.
    """
    row = work.first(_CHAT, {"gone": client})
    if row is None:
        return False
    is_shared = work.first(_OTHERS, {"in_chat": row.chat, "gone": client}) is not None
    work.run(_OPENS, {"client": client})
    for statement in _OF_CLIENT:
        work.run(statement, {"gone": client})
    if not is_shared:
        for statement in _OF_CHAT:
            work.run(statement, {"in_chat": row.chat})
    work.run(_SHUTS, {"gone": client})
    return True
