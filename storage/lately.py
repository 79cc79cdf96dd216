"""A client's last sessions in a line each, without their sets: for weeks off, weeks missed, how hard they felt."""

from datetime import date

import sqlalchemy as sa

from bot.dialogue.desk import Lately
from bot.training.facts import Ending
from bot.training.people import ClientId
from storage.columns import fixed
from storage.ready import ready
from storage.tables import matters, sessions
from storage.work import Work

MOST = 80
"""Sessions looked at, at most: ten weeks of eight."""

_s, _m = sessions.c, matters.c
_before = sessions.alias("before")
_HURT = (
    sa.exists()
    .where(_m.client == _s.client, _m.kind == fixed("pain"), _m.session == _s.id)
    .correlate(sessions)
    .label("hurt")
)
_LAST_BEFORE = (
    sa.select(sa.func.max(_before.c.day))
    .where(
        _before.c.client == sa.bindparam("of"), _before.c.day < sa.bindparam("since"), _before.c.first_at.is_not(None)
    )
    .scalar_subquery()
)
_LATEST = ready(
    sa.select(_s.day, _s.first_at, _s.effort, _s.minutes, _s.ended, _HURT)
    .where(_s.client == sa.bindparam("of"), _s.day >= sa.func.coalesce(_LAST_BEFORE, sa.bindparam("since")))
    .order_by(_s.day.desc(), _s.planned_at.desc())
    .limit(MOST)
)


def lately(work: Work, client: ClientId, since: date) -> tuple[Lately, ...]:
    """The sessions from this day on, and from the last one before it that was reported; the oldest first."""
    rows = work.all(_LATEST, {"of": client, "since": since})
    return tuple(
        Lately(r.day, r.first_at is not None, r.effort, r.minutes, bool(r.hurt), given_up=r.ended == Ending.SKIPPED)
        for r in reversed(rows)
    )
