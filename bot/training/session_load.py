"""The load of sessions and weeks from what clients say of them: session effort (0 to 10) times minutes.

Load of a session: Foster et al. 2001 (J Strength Cond Res 15:109-115). Monotony, the mean of a week's daily loads
divided by their standard deviation, and strain, the week's load times its monotony: Foster 1998 (Med Sci Sports Exerc
30:1164-1168). Days without training count 0.

Limits. The 2001 paper does not tell the standard deviation's divisor (the one of 1998 was seen as an abstract only);
here it is n - 1 = 6. The 2001 paper's worked week prints 1.26, which its own nine session loads give with the divisor
n; by days it would be 1.21 (n) or 1.12 (n - 1). So other people's numbers are not to be compared with ours. Two to four
sessions a week leave so many days at zero that monotony hardly moves: it says little about strength clients. Effort is
a rating, minutes may be an estimate.
A large load says that much was done, not that somebody will be hurt: nothing here predicts injury, and no ratio of
recent to earlier load is made, since it has been shown to predict no better for its denominator (Impellizzeri et al.
2021, Sports Med 51:581-592).
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from decimal import Decimal
from enum import StrEnum

DAYS = 7


@dataclass(frozen=True, slots=True)
class SessionSaid:
    """A session that took place: its effort (0 to 10) and its minutes, each `None` where nobody knows."""

    day: date
    effort: int | None
    minutes: int | None

    @property
    def load(self) -> int | None:
        """Effort times minutes, in arbitrary units; `None` where either is not known.

        >>> SessionSaid(date(2026, 1, 5), 7, 40).load
        280
        """
        return None if self.effort is None or self.minutes is None else self.effort * self.minutes


class NoMonotony(StrEnum):
    """Why a week has no monotony and no strain."""

    EMPTY = "empty"
    """Nothing was trained: there is nothing to divide."""
    FLAT = "flat"
    """Every day had the same load: the division would be by zero."""
    UNRATED = "unrated"
    """A session's effort or minutes are not known, so its day's load is not."""


@dataclass(frozen=True, slots=True)
class WeekLoad:
    """A week of sessions. `load` sums those that are known: with `known` under `sessions` it is at least that much.

    `daily` holds Monday to Sunday; a day with a session that is not known is `None`. `monotony` and `strain` are `None`
    for the reason `why`.
    """

    daily: tuple[int | None, ...]
    load: int
    sessions: int
    known: int
    monotony: Decimal | None
    strain: Decimal | None
    why: NoMonotony | None

    @property
    def is_whole(self) -> bool:
        """Whether every session's load is known."""
        return self.known == self.sessions


def week_load(monday: date, sessions: Iterable[SessionSaid]) -> WeekLoad:
    """The week from `monday` on; sessions of other weeks are left out."""
    days = [monday + timedelta(days=n) for n in range(DAYS)]
    ours = [session for session in sessions if session.day in days]
    daily = tuple(_sum([session.load for session in ours if session.day == day]) for day in days)
    known = [session.load for session in ours if session.load is not None]
    monotony, why = _monotony_of(daily)
    strain = None if monotony is None else (sum(known) * monotony)
    return WeekLoad(daily, sum(known), len(ours), len(known), monotony, strain, why)


def monotony_of(loads: Sequence[int], *, divisor_less: int = 1) -> Decimal | None:
    """Mean over standard deviation (its divisor is the number of loads less `divisor_less`); `None` where that is
    zero."""
    mean = Decimal(sum(loads)) / len(loads)
    spread = sum(((load - mean) ** 2 for load in loads), Decimal(0)) / (len(loads) - divisor_less)
    return mean / spread.sqrt() if spread else None


def _monotony_of(daily: Sequence[int | None]) -> tuple[Decimal | None, NoMonotony | None]:
    loads = [load for load in daily if load is not None]
    if len(loads) < len(daily):
        return None, NoMonotony.UNRATED
    if not any(loads):
        return None, NoMonotony.EMPTY
    monotony = monotony_of(loads)
    return monotony, NoMonotony.FLAT if monotony is None else None


def _sum(loads: Sequence[int | None]) -> int | None:
    known = [load for load in loads if load is not None]
    return sum(known) if len(known) == len(loads) else None
