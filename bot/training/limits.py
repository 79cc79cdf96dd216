"""How far a load may rise: the coach's bound a step, a hold, pain."""

from dataclasses import dataclass
from math import inf

from bot.training.exposure import Exposure
from bot.training.plan import PlannedSet
from bot.training.report import Stage
from bot.training.strength import Today


@dataclass(frozen=True, slots=True)
class Limits:
    """What bounds a rise. `bound` is a share of the whole load; `held` and `hurts` forbid any rise."""

    bound: float
    held: bool
    hurts: bool
    finding: bool
    last: Exposure | None
    plans: tuple[PlannedSet, ...]
    today_kg: float | None
    body_kg: float

    @classmethod
    def of(cls, now: Today, plans: tuple[PlannedSet, ...], *, hold: bool, pain: int | None, bound: float) -> "Limits":
        """From the day under way. Pain that was said in the last session still counts."""
        last = now.state.last[-1] if now.state.last else None
        before = last.pain if last is not None else None
        hurts = max(pain or 0, before or 0) > 0
        work = [s.load_kg for n, s in enumerate(now.done) if s.stage is Stage.WORK and n not in now.aside]
        today_kg = next((kg for kg in reversed(work) if kg is not None), None)
        finding = now.state.exposures == 0 and _had_plenty_left(now)
        return cls(max(bound, 0.0), hold, hurts, finding, last, plans, today_kg, now.state.body_kg)

    @property
    def never_up(self) -> bool:
        """Whether no rise at all is allowed."""
        return self.held or self.hurts

    def before_kg(self, place: int) -> float | None:
        """The load that a rise of set `place` (from 0) is measured from: the heaviest that was lifted last time in sets
        prescribed alike, or today's last load where that is more. `None` where there is nothing to measure from."""
        known = [kg for kg in (self._last_kg(place), self.today_kg) if kg is not None]
        return max(known, default=None)

    def _last_kg(self, place: int) -> float | None:
        if self.last is None:
            return None
        alike = {n for n, plan in enumerate(self.plans) if _alike(plan, self.plans[place])} if self.plans else set()
        numbered = ((n if s.set is None else s.set - 1, s.load_kg) for n, s in enumerate(self.last.sets))
        return max((kg for n, kg in numbered if kg is not None and n in alike), default=self.last.heaviest_kg)

    def cap_kg(self, place: int) -> float:
        """The most that set `place` may be loaded with, in kg."""
        before = self.before_kg(place)
        if before is None:
            return inf
        bound = 0.0 if self.never_up else max(self.bound, FINDING_BOUND) if self.finding else self.bound
        return before + bound * max(before + self.body_kg, 0.0)


FINDING_BOUND = 0.30
"""While a first load is found, a step may be larger: 10 to 20 % and more are usual in rising sets (NSCA 1RM protocol,
from memory). Only where the set before was said to leave plenty: effort that was not said earns no such step."""
PLENTY_LEFT = 3.0
"""Repetitions in reserve that leave room for a large step. Ours."""


def _had_plenty_left(now: Today) -> bool:
    work = [s for n, s in enumerate(now.done) if s.stage is Stage.WORK and n not in now.aside]
    return bool(work) and work[-1].rir is not None and work[-1].rir >= PLENTY_LEFT


def _alike(one: PlannedSet, other: PlannedSet) -> bool:
    return one.reps == other.reps and one.rir == other.rir
