"""What was changed for a client, by whom and when, the latest first: read from the record, a page of it at most."""

import sqlalchemy as sa

from bot.dialogue.desk import ChangeKept
from bot.training.people import ClientId
from storage.columns import fixed
from storage.ready import ready
from storage.record import CODECS
from storage.tables import facts
from storage.work import Work

MOST = 40
KINDS = (
    "ProgrammeAssigned",
    "SessionPlanned",
    "PlanChanged",
    "ExerciseHeld",
    "HoldLifted",
    "LoadOrdered",
    "LoadsApproved",
    "LightWeekOrdered",
    "ExerciseSwapped",
    "AutonomySet",
    "ProfileChanged",
    "SessionMoved",
    "WeekLaid",
    "WentAway",
    "CameBack",
    "ReturnEased",
    "LightWeekDeclined",
    "HandoverOffered",
    "HandoverAnswered",
)
"""What changes somebody's training, as the record names it. Reports are no changes, nor is what was said."""

_LATEST = ready(
    sa.select(facts.c.kind, facts.c.at, facts.c.said_by, facts.c.body)
    .where(facts.c.client == sa.bindparam("of"), sa.or_(*(facts.c.kind == fixed(kind) for kind in KINDS)))
    .order_by(facts.c.id.desc())
    .limit(MOST)
)


def changes_of(work: Work, client: ClientId) -> tuple[ChangeKept, ...]:
    """The latest changes."""
    rows = work.all(_LATEST, {"of": client})
    return tuple(ChangeKept(r.at, r.said_by, CODECS[r.kind].read_kept(work.unseal(r.body))) for r in rows)
