"""The few words that stand inside a picture, and how it writes numbers. Another language passes another value."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from bot.training.plan import LoadStyle

LARGEST = Decimal(999_999)
"""Numbers above this are shown as "over" it: nobody trains that much, and the label has to stay a label."""


@dataclass(frozen=True, slots=True)
class WeekWords:
    """Words of the weekly picture; `{done}`, `{planned}` and `{more}` are filled in."""

    sessions: str = "Sessions: {done} of {planned} done"
    heading: str = "Hard sets by muscle"
    done: str = "done"
    planned: str = "planned"
    of: str = "{done} of {planned}"
    unplanned: str = "{done}, none planned"
    others: str = "{more} others"
    nothing: str = "No hard sets this week"
    over: str = "over {largest}"
    week: str = "Week of {day} {month} {year}"
    months: str = "January February March April May June July August September October November December"

    def title(self, given: str) -> str:
        """The title as drawn: a Monday in ISO form becomes words, anything else stays as it is."""
        try:
            monday = date.fromisoformat(given)
        except ValueError:
            return given
        return self.week.format(day=monday.day, month=self.months.split()[monday.month - 1], year=monday.year)

    def count(self, sets: Decimal) -> str:
        """Sets as a label: `6`, `3.5`, `1,240`; never below nought, at most two decimals."""
        if sets > LARGEST:
            return self.over.format(largest=f"{LARGEST:,}")
        shown = f"{max(Decimal(0), sets):,.2f}"
        return shown.rstrip("0").rstrip(".")


ENGLISH = WeekWords()


@dataclass(frozen=True, slots=True)
class DayWords:
    """How days are written."""

    months: str = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec"
    weekdays: str = "Mon Tue Wed Thu Fri Sat Sun"
    short: str = "{day} {month}"
    whole: str = "{day} {month} {year}"

    def month(self, day: date) -> str:
        """`Jan`."""
        return self.months.split()[day.month - 1]

    def day(self, day: date) -> str:
        """`11 Jan`."""
        return self.short.format(day=day.day, month=self.month(day))

    def dated(self, day: date) -> str:
        """`11 Jan 2027`."""
        return self.whole.format(day=day.day, month=self.month(day), year=day.year)


@dataclass(frozen=True, slots=True)
class StrengthWords:
    """Words of the picture of a one-repetition maximum."""

    of: str = "{heading}: {whose}"
    heading: str = "One-repetition maximum, {unit}"
    per_hand: str = "One-repetition maximum, {unit} each hand"
    added: str = "One-repetition maximum, {unit} beside body weight"
    known: str = "{day}: about {mean}, 95 % between {least} and {most}"
    estimate: str = "estimate"
    band: str = "95 % band"
    rest: str = "no sets"
    sets: str = "Sets as lifted, by repetitions:"
    above: str = "↑ beyond the picture: {count}, up to {highest}"
    weeks: str = "{weeks} weeks without"
    nothing: str = "Nothing lifted in the last 12 months"
    days: DayWords = DayWords()

    def title(self, style: LoadStyle, unit: str) -> str:
        """What the numbers are."""
        match style:
            case LoadStyle.PER_HAND:
                return self.per_hand.format(unit=unit)
            case LoadStyle.BODYWEIGHT:
                return self.added.format(unit=unit)
            case LoadStyle.TOTAL | LoadStyle.NONE:
                return self.heading.format(unit=unit)


@dataclass(frozen=True, slots=True)
class MusclesWords:
    """Words of the picture of weekly hard sets. `low` and `high` mark what lies below and above the target."""

    of: str = "{heading}: {whose}"
    heading: str = "Hard sets by muscle"
    target: str = "{low}–{high} a week"
    target_one: str = "{low} a week"
    planned: str = "no target set"
    now: str = "so far"
    low: str = "▼"
    high: str = "▲"
    key_target: str = "target"
    key_planned: str = "planned"
    key_done: str = "done"
    key_now: str = "this week"
    key_low: str = "▼ below"
    key_high: str = "▲ above the target"
    others: str = "{more} more in the words below"
    nothing: str = "No hard sets in these weeks"
    days: DayWords = DayWords()


@dataclass(frozen=True, slots=True)
class AttendanceWords:
    """Words of the attendance calendar."""

    of: str = "{heading}: {whose}"
    heading: str = "Sessions, day by day"
    summary: str = "{done} of {due} sessions done"
    summary_partly: str = "{done} of {due} sessions done, {partly} of them in part"
    week: str = "{done} of {due}"
    done: str = "done"
    partly: str = "in part"
    missed: str = "missed"
    skipped: str = "given up"
    moved: str = "moved away"
    planned: str = "to come"
    rest: str = "no session"
    days: DayWords = DayWords()


@dataclass(frozen=True, slots=True)
class OtherDaysWords:
    """Words of a programme on several numbers of days a week, side by side."""

    title: str = "{title}, each new day at most {most} min"
    minutes: str = "Minutes"
    week: str = "{days} days"
    now: str = "as it is"
    muscles: str = "Hard sets a week | least hours of rest"
    hours: str = "{hours} h"
    never: str = "–"
    low: str = "▼"
    high: str = "▲"
    key: str = "▼ below, ▲ above your target"
    others: str = "{more} more in the words"
    nothing: str = "No hard sets"
    days: DayWords = DayWords()


STRENGTH, MUSCLES, ATTENDANCE = StrengthWords(), MusclesWords(), AttendanceWords()
OTHER_DAYS = OtherDaysWords()
