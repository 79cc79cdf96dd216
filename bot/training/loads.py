"""The loads that somebody's equipment can make, and the drops between them.

>>> bar = Loadable.bar("20", ["1.25", "2.5", "5", "10"], Unit.KG)
>>> [str(load.amount) for load in bar.neighbours(Load.of(62, Unit.KG)) if load]
['60', '62.5']
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from bot.training.plan import Drop
from bot.training.units import Load, Unit

MOST_LOADS = 5000
"""More loads than any rack makes; a finer or longer ladder is refused."""


@dataclass(frozen=True, slots=True)
class Loadable:
    """The loads that can be made: thousandths of `unit`, rising, each once. May be empty (nothing to load)."""

    thousandths: tuple[int, ...]
    unit: Unit

    @classmethod
    def of(cls, amounts: Iterable[Decimal | int | str], unit: Unit) -> "Loadable":
        """From a list in any order; repeats count once."""
        return cls(tuple(sorted({Load.of(amount, unit).thousandths for amount in amounts})), unit)

    @classmethod
    def steps(
        cls, first: Decimal | int | str, last: Decimal | int | str, step: Decimal | int | str, unit: Unit
    ) -> "Loadable":
        """From `first` to `last` by `step`, both ends included where the step meets them.

        `ValueError` where the step isn't above zero, the ends are crossed or there are more than 5000 loads.
        """
        start, end, by = Decimal(first), Decimal(last), Decimal(step)
        if by <= 0 or end < start:
            raise ValueError("steps go up: from <= to and step > 0")
        if (end - start) / by > MOST_LOADS:
            raise ValueError(f"more than {MOST_LOADS} loads")
        return cls.of((start + by * n for n in range(int((end - start) / by) + 1)), unit)

    @classmethod
    def bar(
        cls, bar: Decimal | int | str, pairs: Iterable[Decimal | int | str], unit: Unit, *, most: int = 400
    ) -> "Loadable":
        """A bar with pairs of plates (each size in plenty): bar + 2 x every sum of plates, up to `most` in the unit."""
        base, top = Load.of(bar, unit).thousandths, most * 1000
        sizes = sorted({2 * Load.of(pair, unit).thousandths for pair in pairs})
        reached = {base}
        for size in (s for s in sizes if s > 0):
            reached |= {r + n * size for r in reached for n in range((top - r) // size + 1)}
        return cls(tuple(sorted(reached)), unit)

    @classmethod
    def stack(
        cls,
        first: Decimal | int | str,
        step: Decimal | int | str,
        plates: int,
        unit: Unit,
        *,
        half: Decimal | int | str = 0,
    ) -> "Loadable":
        """A stack of `plates` plates, the top one weighing `first`, each further one `step`, with an add-on `half`."""
        ladder = [Decimal(first) + Decimal(step) * n for n in range(plates)]
        added = [rung + Decimal(half) for rung in ladder] if Decimal(half) > 0 else []
        return cls.of([*ladder, *added], unit)

    def __bool__(self) -> bool:
        return bool(self.thousandths)

    def __contains__(self, load: Load) -> bool:
        return self._exactly(load) in self.thousandths if self.thousandths else False

    def all(self) -> tuple[Load, ...]:
        """Every load, rising."""
        return tuple(self._load(value) for value in self.thousandths)

    def neighbours(self, load: Load) -> tuple[Load | None, Load | None]:
        """The nearest load at or below and the nearest above it; `None` past either end."""
        place = bisect_right(self.thousandths, self._exactly(load))
        below = self._load(self.thousandths[place - 1]) if place else None
        above = self._load(self.thousandths[place]) if place < len(self.thousandths) else None
        return below, above

    def at_most(self, load: Load) -> Load | None:
        """The heaviest load that is not above it; `None` where all are."""
        return self.neighbours(load)[0]

    def below(self, load: Load) -> Load | None:
        """The heaviest load lighter than it; `None` where there is none."""
        place = bisect_left(self.thousandths, self._exactly(load))
        return self._load(self.thousandths[place - 1]) if place else None

    def above(self, load: Load) -> Load | None:
        """The lightest load heavier than it; `None` where there is none."""
        return self.neighbours(load)[1]

    def nearest(self, load: Load) -> Load | None:
        """The nearest load; a tie goes down, the cautious way. `None` where there is none at all."""
        below, above = self.neighbours(load)
        if below is None or above is None:
            return below if above is None else above
        exact = self._exactly(load)
        return above if above.thousandths - exact < exact - below.thousandths else below

    def _load(self, thousandths: int) -> Load:
        return Load(thousandths, self.unit)

    def _exactly(self, load: Load) -> Decimal:
        """The load in thousandths of this unit, unrounded."""
        return Decimal(load.thousandths) if load.unit is self.unit else load.amount_in(self.unit) * 1000


def drop_loads(load: Load, drop: Drop, loadable: Loadable) -> tuple[Load, ...]:
    """The loads of a drop's continuations: each cut by the drop's percent of the load before it, on this equipment.

    The middle of the percent is aimed at; a load inside the percent is preferred to a nearer one outside. The list is
    shorter than `times` where the equipment has nothing lighter. 50 kg by 20 % is 40, 32, 25.6 (Fink et al. 2018,
    J Sports Med Phys Fitness 58:597-605, three drops of 20 %, from memory).
    """
    loads: list[Load] = []
    before = load
    for _ in range(drop.times):
        lighter = _cut(before, drop.percent, loadable)
        if lighter is None:
            break
        loads.append(lighter)
        before = lighter
    return tuple(loads)


def _cut(load: Load, percent: tuple[int, int], loadable: Loadable) -> Load | None:
    exact = load.amount_in(loadable.unit) * 1000
    least, most = exact * (100 - max(percent)) / 100, exact * (100 - min(percent)) / 100
    middle = (least + most) / 2
    lighter = [value for value in loadable.thousandths if value < exact]
    if not lighter:
        return None
    return Load(min(lighter, key=lambda value: (not least <= value <= most, abs(value - middle), value)), loadable.unit)
