"""A day by its date: `3rd march`, `on the 3rd`, `13/4`, `2026-03-02`; `3/4` may be two days."""

import calendar
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


@dataclass(frozen=True, slots=True)
class DaySaid:
    """A day that a message may be about (`None`: it may be several of `candidates`), and the marks that said it."""

    day: date | None
    places: tuple[int, ...]
    candidates: tuple[date, ...] = ()


MONTHS = {m.lower(): i for i, m in enumerate(calendar.month_name) if m} | {
    m.lower(): i for i, m in enumerate(calendar.month_abbr) if m
} | {"sept": 9}  # fmt: skip


_OF_SETS = (Kind.NUM, Kind.KG, Kind.LB, Kind.S, Kind.NAME, Kind.BODY, Kind.ASSIST, Kind.ADDED)
"""What `for` and counts follow: `15 assist for 7/7` is no day."""
_DATING = (Kind.NUM, Kind.ORD, Kind.BAD)


def dated(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """`3rd march`, `march 3, 2026`, `on the 3rd`, `13/4, 17:40`; `3/4` may be two days. Today is no late day."""
    said = _dated(marks, place, today)
    if said is None:
        return None
    places = said.places
    for kinds in ((Kind.NUM,), (Kind.CLOCK,)):
        at = places[-1] + 1
        at += at + 1 < len(marks) and marks[at].kind is Kind.COMMA
        if at < len(marks) and marks[at].kind in kinds and _belongs(marks[at], kind_at(marks, at + 1)):
            places = (*places, at)
    return replace(said, places=places)


def _is_year(mark: Mark) -> bool:
    return mark.kind is Kind.NUM and mark.value is not None and _CENTURY < mark.value <= _CENTURY + 100


def _belongs(mark: Mark, after: Kind | None) -> bool:
    """Whether a number behind a date is its year, or the time of the day at the end of its line."""
    if mark.kind is Kind.NUM:
        return _is_year(mark)
    return after in (None, Kind.LINE) and (mark.value or 0) < _HOURS


_HOURS = 24
"""Hours of a day: a number behind a date that is below is a time."""


def _dated(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """A date with no year but in its digits."""
    mark = marks[place]
    if mark.kind not in _DATING and mark.text not in MONTHS:
        return None
    following = marks[place + 1] if place + 1 < len(marks) else None
    if mark.kind in (Kind.NUM, Kind.ORD) and mark.value is not None and following is not None:
        parted = following.kind is Kind.STOP and (place == 0 or text_at(marks, place - 1).split()[-1:] == ["the"])
        skip = 2 if following.text == "of" or parted else 1
        month = MONTHS.get(text_at(marks, place + skip))
        if (month is not None and text_at(marks, place + skip) != "may") or (month == 5 and mark.kind is Kind.ORD):
            return _past(int(mark.value), month, tuple(range(place, place + skip + 1)), today)
    if (
        mark.text in MONTHS
        and mark.text not in ("may", "mar", "march")
        and following is not None
        and following.value is not None
    ):
        return _past(int(following.value), MONTHS[mark.text], (place, place + 1), today)
    year = marks[place + 2 + (kind_at(marks, place + 2) is Kind.COMMA) :][:1]
    if mark.text in MONTHS and following is not None and following.value and year and _is_year(year[0]):
        return _past(int(following.value), MONTHS[mark.text], (place, place + 1), today)
    if (
        mark.text in MONTHS
        and mark.text != "may"
        and text_at(marks, place + 1) == "the"
        and kind_at(marks, place + 2) is Kind.ORD
    ):
        places = (place, place + 1, place + 2)
        return _past(int(marks[place + 2].value or 0), MONTHS[mark.text], places, today)
    if mark.text in ("march", "mar", "may") and following is not None and following.value:
        late = _past(int(following.value), MONTHS[mark.text], (place, place + 1), today)
        if following.kind is Kind.ORD or (mark.text != "may" and _is_of_late(marks, place, late, today)):
            return late
    before = text_at(marks, place - 1).split()
    on_the = "the" in before and "on" in (text_at(marks, place - 2), *before)
    counted = text_at(marks, place + 1) in ("set", "rep")
    counted = counted or any(m.kind is Kind.FAILED or "fail" in m.text for m in marks[max(0, place - 3) : place])
    struggled = {w for m in marks[max(0, place - 4) : place] for w in m.text.split()} & _OF_REPS
    counted = counted or (bool(struggled) and (mark.value or 0) <= _MOST_REPS)
    told = kind_at(marks, place - 2) in (Kind.NUM, Kind.REPS) and place + 1 >= len(marks)
    counted = counted or (told and (mark.value or 0) <= FEW_SETS) or _goes_on(marks, place) or _is_of_told(marks, place)
    if mark.kind is Kind.ORD and mark.value is not None and mark.text[0].isdigit() and on_the and not counted:
        return _past(int(mark.value), None, (place,), today)
    if mark.kind is Kind.NUM and mark.value is not None and 2000 <= mark.value <= 2100:
        return _iso(marks, place, today)
    if mark.kind is Kind.BAD and (place == 0 or marks[place - 1].kind is Kind.LINE):
        return _dotted(mark, place, today)
    if mark.kind is Kind.NUM and following is not None and following.kind is Kind.SLASH and following.tight:
        return _slashed(marks, place, today)
    return None


def _is_of_told(marks: Sequence[Mark], place: int) -> bool:
    """The 2nd of `80x8 80x7, pinched between the blades on the 2nd`: of sets that are told before, and no day."""
    start, end = part_of(marks, place)
    said = {w for m in marks[start:end] for w in m.text.split()}
    sets = sum(m.kind in (Kind.X, Kind.FOR) and kind_at(marks, i + 1) is Kind.NUM for i, m in enumerate(marks[:place]))
    number = marks[place].value or 0
    return 0 < number <= min(sets, FEW_SETS) and not said & _HELD


_HELD = frozenset(words("did done trained session workout training from was all these this reported report logged"))
"""Words beside a date on which a session was held."""
_LATELY = 14
"""Days after which a session is hardly reported any more (common practice, no source)."""


def _is_of_late(marks: Sequence[Mark], place: int, told: DaySaid | None, today: date) -> bool:
    """`on march 2 i benched`, `mar 2 bench: 60x10`: a day just gone, not so many of an exercise, `march 20 each`."""
    if told is None or told.day is None or not 0 < (today - told.day).days <= _LATELY:
        return False
    counted = kind_at(marks, place + 2) in (Kind.X, Kind.REPS, Kind.SECONDS, Kind.S, Kind.KG, Kind.LB, Kind.EACH)
    opens = place == 0 or kind_at(marks, place - 1) in (Kind.LINE, Kind.COMMA, Kind.STOP, Kind.COLON)
    led = text_at(marks, place - 1).split()[-1:]
    return not counted and (opens or (bool(led) and led[0] in ("on", "from", "of", "for", "late", "since")))


_OF_REPS = frozenset(words(
    "start struggled struggle slowed slow shaky wobbled wobbly stuck grindy ground grind slipped stalled lost ugly",
    "stopped",
))  # fmt: skip
"""How a set or a repetition went, and no day."""
_MOST_REPS = 12
"""The highest repetition that people call by its ordinal (`the 8th was a grind`): a higher one may be a date."""
_YEAR = 2
"""Digits of the shortest year."""
_SESSION = ("session", "workout", "training", "i", "we", "of", "at", "in", "with", "after", "before")


def _goes_on(marks: Sequence[Mark], place: int) -> bool:
    """`pulled a bit on the 6th so i stopped`, `on the 2nd leg press set`: of a set, or a repetition of one."""
    following = marks[place + 1] if place + 1 < len(marks) else None
    value = marks[place].value
    spoken = following is not None and following.text[:1].isalpha() and following.text.split(" ")[0] not in _SESSION
    return spoken and value is not None and value <= _MOST_REPS


def _begins_sets(marks: Sequence[Mark], place: int) -> bool:
    """Whether sets are told from here on: `3/4 - bench 60x5`, not `10/9 - 16kg`, which is each side with its load."""
    kinds = [m.kind for m in marks[place : place + 4]]
    return kinds[:1] == [Kind.NAME] or (kinds[:1] == [Kind.NUM] and bool({Kind.X, Kind.FOR} & set(kinds)))


def _is_late(year: Mark, today: date) -> bool:
    """Whether a number may be the year of a report: this one, or the one before."""
    return int(year.value or 0) % 100 in (today.year % 100, (today.year - 1) % 100)


def _year(mark: Mark) -> int:
    """The year that a number of two digits or of four says."""
    return _CENTURY + int(mark.value or 0) % 100


_CENTURY = 2000
"""The years that dates are in, and what a year of two digits counts from."""


def _kind_after(marks: Sequence[Mark], place: int) -> Kind | None:
    return marks[place + 1].kind if place + 1 < len(marks) else None


def _iso(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """`2026-03-02`."""
    parts = marks[place : place + 5]
    kinds = [m.kind for m in parts]
    if kinds != [Kind.NUM, Kind.DASH, Kind.NUM, Kind.DASH, Kind.NUM] or not all(m.tight for m in parts[1:]):
        return None
    year, month, day = (int(m.value or 0) for m in parts[::2])
    try:
        said = date(year, month, day)
    except ValueError:
        return None
    return DaySaid(said, tuple(range(place, place + 5))) if said <= today else None


def _dotted(mark: Mark, place: int, today: date) -> DaySaid | None:
    """`02.03.2026`: day before month, as where dates are written with points."""
    parts = [p for p in mark.text.split(".") if p]
    if len(parts) not in (2, 3) or not all(p.isdigit() for p in parts):
        return None
    day, month = int(parts[0]), int(parts[1])
    if not (1 <= day <= 31 and 1 <= month <= 12):
        return None
    return _past(day, month, (place,), today)


def _past(day: int, month: int | None, places: tuple[int, ...], today: date) -> DaySaid | None:
    """The latest day of this number (and month): of a date with its month, today too."""
    for back in range(month is None, 400):
        candidate = today - timedelta(days=back)
        if candidate.day == day and (month is None or candidate.month == month):
            return DaySaid(candidate, places)
    return None


def _slashed(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """A date with a slash: only at the start of a line before a colon or a name, or after `on`."""
    if place + 2 >= len(marks) or marks[place + 2].kind is not Kind.NUM or not marks[place + 2].tight:
        return None
    first, second = marks[place].value, marks[place + 2].value
    if first is None or second is None or first != int(first) or second != int(second):
        return None
    one, two = int(first), int(second)
    end = place + 3
    if end + 1 < len(marks) and marks[end].kind is Kind.SLASH and marks[end + 1].kind is Kind.NUM:
        if len(marks[end + 1].text) < _YEAR or not _is_late(marks[end + 1], today):  # `10/9/8`, `12/11/10` are lists
            return None
        end += 2
    has_year = end - place > len("d/m")
    starts = place == 0 or marks[place - 1].kind is Kind.LINE
    parted = _kind_after(marks, end) in (Kind.COLON, Kind.DASH, Kind.COMMA)
    headed = text_at(marks, end) in ("session", "workout", "training") and parted
    after = Kind.COLON if headed else marks[end].kind if end < len(marks) else None
    dated = (
        starts
        and after in (Kind.COLON, Kind.NAME, Kind.LINE, Kind.DASH, *((Kind.WEAK, Kind.WORD) if has_year else ()))
        and (after is not Kind.LINE or _kind_after(marks, end) is Kind.NAME)
        and (after is not Kind.DASH or _begins_sets(marks, end + 1))
    )
    before = text_at(marks, place - 1)
    counted = before == "for" and kind_at(marks, place - 2) in _OF_SETS
    led = (before in ("on", "from", "for", "date", "session from") and not counted) or before.endswith(" on")
    if not (dated or led) or not (1 <= one <= 31 and 1 <= two <= 31):
        return None
    if after is Kind.NAME and not led and two <= 12 and one <= 12 and not starts:
        return None
    places = tuple(range(place, end))
    days = [d for d in (_past(one, two, places, today), _past(two, one, places, today)) if d is not None and d.day]
    found = tuple(sorted({d.day for d in days if d.day is not None}))
    likely = [day for day in found if has_year and (day == today or day.year == _year(marks[end - 1]))]
    if len(likely) == 1:
        return DaySaid(likely[0], places)
    if len(found) == 1 and one != two and (one > 12 or two > 12):
        return DaySaid(found[0], places)
    if len(found) == 1 and one == two:
        return DaySaid(found[0], places)
    return DaySaid(None, places, found) if found else None
