"""Which day a report is for, where the message names another than today. Always past, in `now`'s own offset.

`monday` said on a Monday is seven days ago. A weekday of a plan, of a workout's name, or to come is no day. What may be
several days (`the weekend`, `3/4`) is asked about.
"""

import calendar
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

WEEKDAYS = {
    "monday": 0, "mondays": 0, "mon": 0, "mons": 0, "tuesday": 1, "tuesdays": 1, "tue": 1, "tues": 1, "teusday": 1,
    "wednesday": 2, "wednesdays": 2, "wed": 2, "weds": 2, "wensday": 2, "wednesdy": 2, "wendsday": 2, "thursday": 3,
    "thursdays": 3, "thu": 3, "thur": 3, "thurs": 3, "thrusday": 3, "thursay": 3, "friday": 4, "fridays": 4, "fri": 4,
    "firday": 4, "firdays": 4, "saturday": 5, "saturdays": 5, "sat": 5, "sats": 5, "satruday": 5, "sunday": 6,
    "sundays": 6, "sun": 6, "monady": 6 - 6, "tuesdsy": 1, "moday": 0, "tusday": 1, "wednsday": 2, "saterday": 5,
}  # fmt: skip
MONTHS = {m.lower(): i for i, m in enumerate(calendar.month_name) if m} | {
    m.lower(): i for i, m in enumerate(calendar.month_abbr) if m
} | {"sept": 9}  # fmt: skip
YESTERDAY = ("yesterday", "yesterdays", "yest", "yday", "yesteday", "yestrday", "yesturday", "ystrday", "ysterday",
             "yestarday", "yesterdy", "yeserday", "yestredy", "yestreday", "yesterady", "yesteray")  # fmt: skip
_TO_COME = ("next", "this", "by", "until", "till", "see", "back", "for", "move", "moving", "to", "tomorrow", "before",
            "come", "every", "coming", "make", "both", "plan")  # fmt: skip
_NOT_ITS_DAY = ("from", "since", "than", "like", "after", "as", "beat", "versus", "vs")
_WORKOUT = ("workout", "workouts", "programme", "program", "plan", "routine", "template", "day", "legs", "push", "pull",
            "upper", "lower")  # fmt: skip
_AWAY = frozenset(
    words(
        "missed couldnt didnt cant skipped missing off sick ill busy travelling away rest couldn",
    )
)
"""Words of a day without training."""
_TELLING = frozenset(
    words(
        "log logging logged send sending sent report reporting write post posting forgot message update",
    )
)
_SHORT = ("mon", "sat", "sun", "wed", "fri", "thu", "tue", "mons", "sats")


@dataclass(frozen=True, slots=True)
class DaySaid:
    """A day that a message may be about (`None`: it may be several of `candidates`), and the marks that said it."""

    day: date | None
    places: tuple[int, ...]
    candidates: tuple[date, ...] = ()


def read_day(marks: Sequence[Mark], now: datetime) -> DaySaid | None:
    """The day that the message names for its report, if any."""
    today = now.date()
    for place in range(len(marks)):
        said = _day_at(marks, place, today)
        if said is not None and not _is_talk(marks, said.places):
            return said
    return None


def _text(marks: Sequence[Mark], place: int) -> str:
    return marks[place].text if 0 <= place < len(marks) else ""


def _day_at(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    word, following, second = _text(marks, place), _text(marks, place + 1), _text(marks, place + 2)
    words = word.split()
    if word in YESTERDAY:
        ahead = _text(marks, place - 1), _text(marks, place - 2)
        back = 2 if "before" in (ahead[0], *ahead[0].split()) and ("day" in ahead[1] or "day" in ahead[0]) else 1
        places = (place,) if back == 1 else (place - 2, place - 1, place)
        return DaySaid(today - timedelta(days=back), places)
    if word == "last" and following == "night":
        return DaySaid(today - timedelta(days=1), (place, place + 1))
    if following == "days" and second == "ago" and marks[place].kind is Kind.NUM:
        return _ago(marks, place, 3, today)
    if word in ("couple", "few") and "days" in (second, _text(marks, place + 2)):
        end = place + 2
        if _text(marks, end + 1) == "ago":
            exact = today - timedelta(days=2) if word == "couple" else None
            return DaySaid(exact, (place, place + 1, end, end + 1), _last(today, 4) if exact is None else ())
    if word == "other" and following == "day":
        return DaySaid(None, (place, place + 1), _last(today, 3))
    if words[:1] == ["weekend"] or word == "weekend":
        return _weekend(marks, place, today)
    if word in WEEKDAYS:
        return _weekday(marks, place, today)
    return _dated(marks, place, today)


def _ago(marks: Sequence[Mark], place: int, size: int, today: date) -> DaySaid | None:
    value = marks[place].value
    if value is None or value != int(value) or not 1 <= value <= 60:
        return None
    return DaySaid(today - timedelta(days=int(value)), tuple(range(place, place + size)))


def _last(today: date, days: int) -> tuple[date, ...]:
    return tuple(today - timedelta(days=n) for n in range(1, days + 1))


def _weekend(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    if _text(marks, place - 1) in ("this", "next") or _text(marks, place + 1) in ("plans", "coming"):
        return None
    saturday = today - timedelta(days=(today.weekday() - 5) % 7 or 7)
    sunday = today - timedelta(days=(today.weekday() - 6) % 7 or 7)
    return DaySaid(None, (place,), tuple(sorted((saturday, sunday))))


def _weekday(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    word, before, after = _text(marks, place), _text(marks, place - 1), _text(marks, place + 1)
    last_before = before.split()[-1] if before else ""
    if last_before in _TO_COME or before in _TO_COME:
        return None
    possessive = word.endswith("s") and word not in ("tues", "weds", "thurs")
    if after in _WORKOUT and (not possessive or after in ("programme", "program", "plan", "routine", "template")):
        return None
    if after == "workout" and any(m.text == "today" for m in marks):
        return None
    if word in _SHORT:
        at_start = place == 0 or marks[place - 1].kind in (Kind.LINE, Kind.STOP, Kind.OPEN)
        if not (
            before in ("on", "last", "from", "for")
            or "on" in before.split()
            or (at_start and _starts_report(marks, place))
        ):
            return None
    back = (today.weekday() - WEEKDAYS[word]) % 7 or 7
    places = [place]
    if before in ("last", "on", "on last", "past"):
        places.insert(0, place - 1)
    return DaySaid(today - timedelta(days=back), tuple(places))


def _starts_report(marks: Sequence[Mark], place: int) -> bool:
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    return following in (Kind.COLON, Kind.DASH, Kind.NAME, Kind.NUM, Kind.COMMA)


def _dated(marks: Sequence[Mark], place: int, today: date) -> DaySaid | None:
    """`3rd march`, `march 3`, `on the 3rd`, `13/4`; `3/4` may be two days."""
    mark = marks[place]
    following = marks[place + 1] if place + 1 < len(marks) else None
    if mark.kind in (Kind.NUM, Kind.ORD) and mark.value is not None and following is not None:
        skip = 2 if following.text == "of" else 1
        month = MONTHS.get(_text(marks, place + skip))
        if (month is not None and _text(marks, place + skip) != "may") or (month == 5 and mark.kind is Kind.ORD):
            return _past(int(mark.value), month, tuple(range(place, place + skip + 1)), today)
    if (
        mark.text in MONTHS
        and mark.text not in ("may", "mar", "march")
        and following is not None
        and following.value is not None
    ):
        return _past(int(following.value), MONTHS[mark.text], (place, place + 1), today)
    if (
        mark.text in ("march", "mar", "may")
        and following is not None
        and following.kind is Kind.ORD
        and following.value
    ):
        return _past(int(following.value), MONTHS[mark.text], (place, place + 1), today)
    before = _text(marks, place - 1).split()
    on_the = "the" in before and "on" in (_text(marks, place - 2), *before)
    counted = _text(marks, place + 1) in ("set", "rep")
    if mark.kind is Kind.ORD and mark.value is not None and mark.text[0].isdigit() and on_the and not counted:
        return _past(int(mark.value), None, (place,), today)
    if mark.kind is Kind.NUM and mark.value is not None and 2000 <= mark.value <= 2100:
        return _iso(marks, place, today)
    if mark.kind is Kind.BAD and (place == 0 or marks[place - 1].kind is Kind.LINE):
        return _dotted(mark, place, today)
    if mark.kind is Kind.NUM and following is not None and following.kind is Kind.SLASH and following.tight:
        return _slashed(marks, place, today)
    return None


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
    return DaySaid(said, tuple(range(place, place + 5))) if said < today else None


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
    """The latest past day of this number (and month)."""
    for back in range(1, 400):
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
        end += 2
    starts = place == 0 or marks[place - 1].kind is Kind.LINE
    after = marks[end].kind if end < len(marks) else None
    dated = (
        starts
        and after in (Kind.COLON, Kind.NAME, Kind.LINE, Kind.DASH)
        and (after is not Kind.LINE or _kind_after(marks, end) is Kind.NAME)
    )
    led = _text(marks, place - 1) in ("on", "from", "for", "date", "session from") or _text(marks, place - 1).endswith(
        " on"
    )
    if not (dated or led) or not (1 <= one <= 31 and 1 <= two <= 31):
        return None
    if after is Kind.NAME and not led and two <= 12 and one <= 12 and not starts:
        return None
    places = tuple(range(place, end))
    days = [d for d in (_past(one, two, places, today), _past(two, one, places, today)) if d is not None and d.day]
    found = tuple(sorted({d.day for d in days if d.day is not None}))
    if len(found) == 1 and one != two and (one > 12 or two > 12):
        return DaySaid(found[0], places)
    if len(found) == 1 and one == two:
        return DaySaid(found[0], places)
    return DaySaid(None, places, found) if found else None


def _is_talk(marks: Sequence[Mark], places: tuple[int, ...]) -> bool:
    """Whether the day stands in talk beside the report: `sore from tuesday`, `slept badly last night, 60x5`."""
    first, last = places[0], places[-1]
    at = first - 1
    while _text(marks, at) in ("the", "last", "on", "my", "this"):
        at -= 1
    before = _text(marks, at)
    heads = _heads(marks, at, last)
    if before.split()[-1:] and before.split()[-1] in _NOT_ITS_DAY:
        return not heads
    edges = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)
    start = first
    while start > 0 and marks[start - 1].kind not in edges:
        start -= 1
    end = last + 1
    while end < len(marks) and marks[end].kind not in (*edges, Kind.COLON):
        end += 1
    part = [m for i, m in enumerate(marks[start:end], start) if i not in places]
    words = {w for m in part for w in m.text.split()}
    if end < len(marks) and marks[end].kind is Kind.COLON:
        return bool(words & _AWAY and not words & _TELLING)
    if any(m.kind in (Kind.TALKNUM, Kind.OTHERTIME) for m in part):
        return True
    numbered = any(m.kind in (Kind.NUM, Kind.CLOCK) for m in part)
    words = {w for m in part for w in m.text.split()}
    if words & _AWAY and not numbered and not words & _TELLING:
        return True
    if any(m.kind in (Kind.NUM, Kind.NAME, Kind.CLOCK, Kind.SKIP, Kind.PLANNED) for m in part):
        return False
    return any(m.kind is Kind.WORD for m in part)


def _heads(marks: Sequence[Mark], first: int, last: int) -> bool:
    """Whether the report follows straight after, as in `from yesterday: 60x5`."""
    ends = (Kind.COLON, Kind.DASH, Kind.LINE)
    if last + 1 < len(marks) and marks[last + 1].text in ("session", "workout", "training"):
        last += 1
    opening = first == 0 or {w for m in marks[:first] for w in m.text.split()} <= {"this", "is", "these", "are", "its"}
    if opening and last + 1 < len(marks) and marks[last + 1].kind is Kind.COMMA:
        return True
    if first > 0 and last + 1 == len(marks) and marks[first - 1].kind in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB):
        return True
    if last + 1 < len(marks) and marks[last + 1].kind is Kind.COMMA:
        told = {w for m in marks[last + 2 : last + 9] for w in m.text.split()}
        return bool(told & _TELLING) and any(m.kind is Kind.COLON for m in marks[last + 2 : last + 9])
    return last + 1 < len(marks) and marks[last + 1].kind in ends
