"""The whole behind a choice, for the coach: the band, the chances of the loads around, what was set aside."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.training.asked import Asked
from bot.training.exposure import LiftedSet
from bot.training.limits import Limits
from bot.training.loads import Loadable
from bot.training.plan import PlannedExercise, PlannedSet
from bot.training.progress import NextLoads
from bot.training.state import Doubt, Estimate, State
from bot.training.strength import estimate_of
from bot.training.strength import today as begin_today
from bot.training.tracked import Weighed, aims, weigh

BAND = 1.96
"""Standard deviations on either side that hold 95 %."""
NEIGHBOURS = 2


@dataclass(frozen=True, slots=True)
class Explained:
    """Why the first set that remains gets its load: `rows` are the loads around the chosen one, rising."""

    estimate: Estimate | None
    least_kg: float | None
    most_kg: float | None
    place: int | None
    plan: PlannedSet | None
    rows: tuple[Weighed, ...]
    aside: Doubt | None


def explain(
    state: State,
    exercise: PlannedExercise,
    loadable: Loadable,
    answer: NextLoads,
    *,
    today: date,
    done: Sequence[LiftedSet] = (),
) -> Explained:
    """The whole behind `answer`, which `next_loads` gave for the same arguments."""
    now = begin_today(state, today, done, exercise.sets)
    estimate = estimate_of(now)
    wide = 0.0 if estimate is None else BAND * estimate.sd_kg
    asked = Asked(now, exercise, loadable, Limits.of(now, exercise.sets, hold=False, pain=None, bound=0.1), None)
    place: int | None = None
    plan: PlannedSet | None = None
    rows: tuple[Weighed, ...] = ()
    if answer.sets and answer.sets[0].load is not None:
        place, plan = asked.remaining[0]
        rows = _around(weigh(asked, place, aims(asked)[0]), answer)
    return Explained(
        estimate,
        None if estimate is None else max(0.0, estimate.mean_kg - wide),
        None if estimate is None else estimate.mean_kg + wide,
        place,
        plan,
        rows,
        now.doubt,
    )


def _around(weighed: tuple[Weighed, ...], answer: NextLoads) -> tuple[Weighed, ...]:
    at = next((n for n, w in enumerate(weighed) if w.load == answer.sets[0].load), None)
    if at is None:
        return weighed[: 2 * NEIGHBOURS + 1]
    return weighed[max(0, at - NEIGHBOURS) : at + NEIGHBOURS + 1]
