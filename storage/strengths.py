"""What each client can lift, exercise by exercise: a small state kept up to date, never worked out from the history
when somebody waits for an answer."""

from collections.abc import Iterable
from functools import lru_cache

import sqlalchemy as sa

from bot.dialogue.desk import StrengthRow
from bot.dialogue.turn import StrengthKept
from bot.training.assemble import fresh_state, strength_after
from bot.training.people import ClientId
from bot.training.plan import PlannedExercise
from bot.training.session import Session
from storage.matters import pain_scores
from storage.ready import Ready, ready
from storage.sessions import LIGHT, rows_to_sessions
from storage.tables import sessions, sets, strengths
from storage.work import Work, insert_or_replace

_c = strengths.c
_KEEP = insert_or_replace(strengths, "client", "exercise", columns=("session", "day", "before", "after"))
_DROP = ready(sa.delete(strengths).where(_c.client == sa.bindparam("of"), _c.exercise == sa.bindparam("lift")))
_WITH = ready(
    sa.select(*LIGHT)
    .where(
        sessions.c.id.in_(
            sa.select(sets.c.session).where(
                sets.c.client == sa.bindparam("of"), sets.c.exercise == sa.bindparam("lift")
            )
        )
    )
    .order_by(sessions.c.day, sessions.c.planned_at)
)


_EVERY = ready(
    sa.select(_c.exercise, _c.session, _c.day, _c.before, _c.after)
    .where(_c.client == sa.bindparam("of"))
    .order_by(_c.exercise)
)


@lru_cache(64)
def _of(count: int) -> Ready:
    names: list[sa.BindParameter[str]] = [sa.bindparam(f"lift{n}") for n in range(count)]
    return ready(
        sa.select(_c.exercise, _c.session, _c.day, _c.before, _c.after).where(
            _c.client == sa.bindparam("of"), _c.exercise.in_(names)
        )
    )


def strengths_of(work: Work, client: ClientId, exercises: Iterable[str]) -> tuple[StrengthRow, ...]:
    """What is kept of these exercises."""
    names = sorted(set(exercises))
    if not names:
        return ()
    rows = work.all(_of(len(names)), {"of": client, **{f"lift{n}": name for n, name in enumerate(names)}})
    return tuple(StrengthRow(row.exercise, row.session, row.day, row.before, row.after) for row in rows)


def every_strength(work: Work, client: ClientId) -> tuple[StrengthRow, ...]:
    """What is kept of all that they ever did: as many rows as exercises, however long the history is."""
    rows = work.all(_EVERY, {"of": client})
    return tuple(StrengthRow(row.exercise, row.session, row.day, row.before, row.after) for row in rows)


def keep(work: Work, kept: StrengthKept) -> None:
    """The state is this from now on."""
    row = {"client": kept.client, "exercise": kept.exercise, "session": kept.session, "day": kept.day}
    work.run(_KEEP, {**row, "before": kept.before, "after": kept.after})


def rebuild(work: Work, client: ClientId, exercise: str) -> None:
    """Works the state out anew from all sessions in which the exercise was done, in order of their days: for a
    correction of an older session. It reads as many sessions as there were; nothing else does."""
    before = after = None
    last: Session | None = None
    rows = work.all(_WITH, {"of": client, "lift": exercise})
    scores = pain_scores(work, client) if rows else {}
    for start in range(0, len(rows), 50):
        for kept in rows_to_sessions(work, rows[start : start + 50]):
            session = kept.session
            planned = _planned(session, exercise)
            if planned is None:
                continue
            before = after or fresh_state(planned)
            after = strength_after(session, planned, before, scores.get((session.id, exercise)))
            last = session
    if last is None or before is None or after is None:
        work.run(_DROP, {"of": client, "lift": exercise})
        return
    keep(work, StrengthKept(client, exercise, last.id, last.day, before.to_json(), after.to_json()))


def _planned(session: Session, exercise: str) -> PlannedExercise | None:
    return next((e for e in session.plan.exercises if e.name == exercise), None)
