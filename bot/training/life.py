"""What stands beside the programme in a client's life: weeks laid otherwise, times away, the way back, and
what they want to be told. Each change is a fact; what stands now is their fold (`follow`)."""

from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from enum import StrEnum

from bot.training.calendar import monday_of
from bot.training.plan import PlannedExercise

MOST_CHANGES = 8
"""Changes of days that are remembered for the digest; the record keeps all."""


class Absence(StrEnum):
    """Why no sessions come for a time; each value is a part of its words' key."""

    AWAY = "away"
    ILL = "ill"
    QUIET = "quiet"
    """Nothing was heard for so many weeks that reminders stopped."""


@dataclass(frozen=True, slots=True)
class LaidDay:
    """A day of a week that was laid anew. Without exercises it holds the workout whose turn it is; else these, after
    which the turn is that of the workout after `workout`. `title` says what it holds."""

    day: date
    workout: int = 0
    title: str = ""
    exercises: tuple[PlannedExercise, ...] = ()

    @property
    def is_plain(self) -> bool:
        """Whether it holds what the programme has for it."""
        return not self.exercises


@dataclass(frozen=True, slots=True)
class LaidWeek:
    """The days still to come of the week from `monday`, in the place of those of every week: `trained_on` are those
    that it was made from. `programme` names the programme that its exercises are of."""

    monday: date
    days: tuple[LaidDay, ...]
    trained_on: tuple[int, ...]
    programme: str = ""


@dataclass(frozen=True, slots=True)
class DayChange:
    """A day that was moved (`to`), or given up: `cut` are the sets that found no room, by exercise; `waits` says that
    its work comes with the next session, since the week has no other day."""

    at: datetime
    day: date
    to: date | None = None
    cut: tuple[tuple[str, int], ...] = ()
    waits: bool = False


@dataclass(frozen=True, slots=True)
class WasLaid:
    """How a week stood before its last change, for an undo; `skipped` is the session that was given up with it."""

    monday: date
    week: LaidWeek | None
    skipped: str = ""


@dataclass(frozen=True, slots=True)
class Away:
    """No sessions come since a day, until one (`None`: until they go on)."""

    why: Absence
    since: date
    until: date | None = None


@dataclass(frozen=True, slots=True)
class Life:
    """What stands now. `was_ill` holds from an illness to the first session after it; `eases` is the coach's word
    whether sessions are easier after a break; `declined` the day on which a light week was not wanted; `back_since`
    when they came back from their last time away; `rest_notice_s` their own rest in the place of the planned ones."""

    laid: tuple[LaidWeek, ...] = ()
    before: WasLaid | None = None
    changes: tuple[DayChange, ...] = ()
    away: Away | None = None
    was_ill: date | None = None
    eases: bool = True
    declined: date | None = None
    rest_notice: bool = False
    rest_notice_s: int | None = None
    back_since: date | None = None

    def week(self, monday: date) -> LaidWeek | None:
        """The week from this Monday as it was laid; `None` where it is as every week."""
        return next((w for w in self.laid if w.monday == monday), None)


PLAIN_LIFE = Life()


def with_week(life: Life, monday: date, week: LaidWeek | None, *, today: date) -> Life:
    """The life with this week laid so, or as every week again; weeks that are over are forgotten."""
    others = tuple(w for w in life.laid if w.monday != monday and w.monday >= monday_of(today) - timedelta(weeks=1))
    return replace(life, laid=others if week is None else (*others, week))
