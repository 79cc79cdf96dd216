"""How far a load may rise: the coach's bound a step, a hold, pain."""

from dataclasses import dataclass
from math import inf

from bot.training.exposure import Exposure
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
    today_kg: float | None
    body_kg: float

    @classmethod
    def of(cls, now: Today, *, hold: bool, pain: int | None, bound: float) -> "Limits":
        """From the day under way. Pain that was said in the last session still counts."""
        last = now.state.last[-1] if now.state.last else None
        before = last.pain if last is not None else None
        hurts = max(pain or 0, before or 0) > 0
        work = [s.load_kg for n, s in enumerate(now.done) if s.stage is Stage.WORK and n not in now.aside]
        today_kg = next((kg for kg in reversed(work) if kg is not None), None)
        finding = now.state.exposures == 0
        return cls(max(bound, 0.0), hold, hurts, finding, last, today_kg, now.state.body_kg)

    @property
    def never_up(self) -> bool:
        """Whether no rise at all is allowed."""
        return self.held or self.hurts

    def before_kg(self, place: int) -> float | None:
        """The load that a rise of set `place` (from 0) is measured from: what was lifted in that set last time, or
        today's last load where that is more. `None` where there is nothing to measure from."""
        last = _load_at(self.last, place)
        known = [kg for kg in (last, self.today_kg) if kg is not None]
        return max(known, default=None)

    def cap_kg(self, place: int) -> float:
        """The most that set `place` may be loaded with, in kg."""
        before = self.before_kg(place)
        if before is None:
            return inf
        bound = 0.0 if self.never_up else max(self.bound, FINDING_BOUND) if self.finding else self.bound
        return before + bound * max(before + self.body_kg, 0.0)


FINDING_BOUND = 0.30
"""While a first load is found, a step may be larger: 10 to 20 % and more are usual in rising sets (NSCA 1RM protocol,
from memory)."""


def _load_at(last: Exposure | None, place: int) -> float | None:
    if last is None or not last.sets:
        return None
    by_number = next((s.load_kg for s in last.sets if s.set == place + 1), None)
    if by_number is not None:
        return by_number
    return last.sets[place].load_kg if place < len(last.sets) and last.sets[place].set is None else last.heaviest_kg
