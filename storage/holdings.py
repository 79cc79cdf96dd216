"""How much is kept of whoever trains from a chat: counted when they want it deleted."""

import sqlalchemy as sa

from bot.dialogue.desk import Holdings
from storage.columns import fixed
from storage.ready import Ready, ready
from storage.tables import clients, matters, sessions, sets
from storage.work import Work


def _count(table: sa.Table, *conditions: sa.ColumnElement[bool]) -> Ready:
    """Rows of all clients of the chat: those of an earlier time too."""
    mine = sa.select(clients.c.id).where(clients.c.chat == sa.bindparam("in_chat"))
    return ready(sa.select(sa.func.count()).select_from(table).where(table.c.client.in_(mine), *conditions))


_SETS = _count(sets)
_SESSIONS = _count(sessions, sessions.c.first_at.is_not(None))
_PAINS = _count(matters, matters.c.kind == fixed("pain"))
_WORDS = _count(matters, matters.c.kind != fixed("pain"))


def holdings(work: Work, chat: int) -> Holdings:
    """Sets, sessions with sets, notes of pain, questions and doubts."""
    counts = [int(work.all(counting, {"in_chat": chat})[0][0]) for counting in (_SETS, _SESSIONS, _PAINS, _WORDS)]
    return Holdings(*counts)
