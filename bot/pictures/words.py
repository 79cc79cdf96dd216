"""The few words that stand inside a picture, and how it writes numbers. Another language passes another value."""

from dataclasses import dataclass
from datetime import date
from decimal import Decimal

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
