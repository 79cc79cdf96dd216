"""A client's last sessions in a line each, without their sets: for weeks off, weeks missed, how hard they felt."""

import sqlalchemy as sa

from bot.dialogue.desk import Lately
from bot.training.facts import Ending
from bot.training.people import ClientId
from storage.columns import fixed
from storage.ready import ready
from storage.tables import matters, sessions
from storage.work import Work

MOST = 60
"""Sessions looked at: ten weeks of six."""

_s, _m = sessions.c, matters.c
_HURT = (
    sa.exists()
    .where(_m.client == _s.client, _m.kind == fixed("pain"), _m.session == _s.id)
    .correlate(sessions)
    .label("hurt")
)
_LATEST = ready(
    sa.select(_s.day, _s.first_at, _s.effort, _s.minutes, _s.ended, _HURT)
    .where(_s.client == sa.bindparam("of"))
    .order_by(_s.day.desc(), _s.planned_at.desc())
    .limit(MOST)
)


def lately(work: Work, client: ClientId) -> tuple[Lately, ...]:
    """The last sessions, the oldest of them first; one that was given up by the client is none that was missed."""
    rows = work.all(_LATEST, {"of": client})
    return tuple(
        Lately(r.day, r.first_at is not None, r.effort, r.minutes, bool(r.hurt), given_up=r.ended == Ending.SKIPPED)
        for r in reversed(rows)
    )
