"""Published equations between a load, the repetitions it can be lifted for, and the one-repetition maximum (1RM).

All are conventions, not laws (Richens & Cleather 2014, Biol Sport 31:157-161, table 1): Epley is a poundage chart,
Brzycki gives no derivation, Lander began as a guess. They agree within about 5 % from 3 to 10 repetitions and part
beyond. Constants as listed side by side by LeSuer et al. 1997, J Strength Cond Res 11(4):211-213 (from memory, seen
on a secondary page). Each maps repetitions to failure to the *ratio* 1RM / load, so all are linear in the load.
"""

from collections.abc import Callable
from dataclasses import dataclass
from math import exp, inf, log

MOST_REPS = 36.0
"""Beyond this Brzycki and Lander are undefined (poles at 37 and 37.9); repetitions are capped here."""


@dataclass(frozen=True, slots=True)
class Equation:
    """A published equation: `ratio(reps)` is 1RM / load at `reps` to failure, `reps(ratio)` its inverse."""

    name: str
    source: str
    _ratio: Callable[[float], float]
    _reps: Callable[[float], float]

    def ratio(self, reps: float) -> float:
        """1RM / load for `reps` repetitions to failure, from 1 to 36 (outside, the nearer end is taken)."""
        return self._ratio(min(max(reps, 1.0), MOST_REPS))

    def reps(self, ratio: float) -> float:
        """The repetitions to failure at 1RM / load = `ratio`; may be below 1, is infinite past the equation's reach."""
        return self._reps(ratio)

    def one_rep_max(self, load: float, reps: float) -> float:
        """The 1RM in the load's unit. `reps` counts those left in reserve too; a single to failure is the 1RM."""
        return load if reps <= 1 else load * self.ratio(reps)

    def load(self, one_rep_max: float, reps: float) -> float:
        """The load that can be lifted `reps` times to failure, in the unit of `one_rep_max`."""
        return one_rep_max if reps <= 1 else one_rep_max / self.ratio(reps)


def _log_or_inf(value: float) -> float:
    return log(value) if value > 0 else -inf


EPLEY = Equation(
    "Epley",
    "Epley B 1985, Poundage chart, Boyd Epley Workout, Lincoln NE",
    lambda r: 1 + r / 30,
    lambda q: 30 * (q - 1),
)
BRZYCKI = Equation(
    "Brzycki", "Brzycki M 1993, JOPERD 64(1):88-90", lambda r: 36 / (37 - r), lambda q: 37 - 36 / q if q > 0 else -inf
)
LANDER = Equation(
    "Lander",
    "Lander J 1985, NSCA J 6(6):60-61",
    lambda r: 100 / (101.3 - 2.67123 * r),
    lambda q: (101.3 - 100 / q) / 2.67123 if q > 0 else -inf,
)
OCONNER = Equation(
    "O'Conner",
    "O'Conner B, Simmons J, O'Shea P 1989, Weight Training Today",
    lambda r: 1 + 0.025 * r,
    lambda q: 40 * (q - 1),
)
MAYHEW = Equation(
    "Mayhew",
    "Mayhew JL et al. 1992, J Appl Sport Sci Res 6:200-206",
    lambda r: 100 / (52.2 + 41.9 * exp(-0.055 * r)),
    lambda q: -_log_or_inf((100 / q - 52.2) / 41.9) / 0.055 if q > 0 else -inf,
)
LOMBARDI = Equation(
    "Lombardi", "Lombardi VP 1989, Beginning Weight Training", lambda r: r**0.10, lambda q: float(q**10)
)
WATHEN = Equation(
    "Wathen",
    "Wathen D 1994, Load assignment, in Baechle (ed.), Essentials of Strength Training and Conditioning",
    lambda r: 100 / (48.8 + 53.8 * exp(-0.075 * r)),
    lambda q: -_log_or_inf((100 / q - 48.8) / 53.8) / 0.075 if q > 0 else -inf,
)

EQUATIONS = (EPLEY, BRZYCKI, LANDER, OCONNER, MAYHEW, LOMBARDI, WATHEN)
"""All seven, in the order of the published comparison."""
