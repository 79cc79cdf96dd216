"""The time that a client says they have: `only got 25 min`, `half an hour today`, `until 18:15`.

A duration counts only beside words of having, leaving or being short of it; rest, travel, lateness and warm-up minutes
are talk. A time of day is the next one that a clock on the wall shows: `until 7` said at 18:40 is twenty minutes.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_HAVING = frozenset(
    words(
        "only got have has having ive max maximum leave leaving gotta limited short squeeze spare free time today",
        "tops available left just shuts closes closing session workout train training budget allowed hard tonight",
        "quick mins window gap weve need needs must limit pushed rushing rush squeezed cap capped cut lunch tight",
        "schedule most total gots had availabl maybe about roughly",
    )
)
_NOT_HAVING = frozenset(
    words(
        "sat sit sitting lay lying stood standing rest rested resting rests late drive driving walk walked",
        "walking bike biked cycle cycled cycling treadmill run ran running cardio warm warmed warming warmup took",
        "takes taking ago sleep slept plus extra longer over between queue queued waited waiting wait waits",
        "commute commuting arriving away traffic stretch stretched stretching foam mobility break rower rowing",
        "elliptical jog jogged jogging early behind swim swam hold held holding after in be each per every total",
        "duration lasted lasting elapsed spent steady amrap emom intervals sauna stairmaster stepper skipping",
        "skipped skip",
    )
)
_EDGES = frozenset((Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.COMMA, Kind.THEN))
_UNTIL = frozenset(("until", "till", "til", "by", "before"))
_LEAVING = frozenset(["leave", "leaving", "go", "out", "shuts", "closes", "close", "shutting", "closing", "pick"])
_GOING = frozenset(words(
    "leave leaving go out off finish finished done gone home shuts closes close pick head collect stop shutting",
    "closing",
))  # fmt: skip


@dataclass(frozen=True, slots=True)
class MinutesSaid:
    """Minutes that there are, and the marks that said so."""

    minutes: Decimal
    places: tuple[int, ...]


def read_minutes(marks: Sequence[Mark], now: datetime, timed: bool, metres: bool = False) -> MinutesSaid | None:
    """The time that the client has. `timed`, `metres`: the exercise under way counts those, so that
    a bare duration, or a bare `m`, is its set's.
    """
    for place in range(len(marks)):
        clock = _until(marks, place, now)
        if clock is not None:
            return clock
        duration = _duration(marks, place, metres)
        if duration is not None:
            minutes, end = duration
            if minutes > 0 and _is_had(marks, place, end, timed):
                return MinutesSaid(minutes, tuple(range(place, end)))
    return None


def _words(mark: Mark) -> list[str]:
    return mark.text.split()


def _text(marks: Sequence[Mark], place: int) -> str:
    return marks[place].text if 0 <= place < len(marks) else ""


def _kind(marks: Sequence[Mark], place: int) -> Kind | None:
    return marks[place].kind if 0 <= place < len(marks) else None


def _plain(marks: Sequence[Mark], place: int) -> list[tuple[str, int]]:
    """Words from here on with the mark that each stands in, phrases taken apart, at most ten."""
    words: list[tuple[str, int]] = []
    for index in range(place, min(place + 8, len(marks))):
        words.extend((word, index) for word in _words(marks[index]))
    return words


def _duration(marks: Sequence[Mark], place: int, metres: bool) -> tuple[Decimal, int] | None:
    """The duration that starts here: minutes, and the place after it."""
    mark = marks[place]
    if (
        mark.text == "three"
        and "quarters" in _spoken_after(marks, place + 1)
        and "hour" in [w for w, _ in _plain(marks, place)]
    ):
        return Decimal(45), _after_hour(marks, place + 1)
    if mark.kind is Kind.NUM and mark.value is not None:
        unit = _kind(marks, place + 1)
        if unit is Kind.DASH and _kind(marks, place + 2) is Kind.MINUTES:
            return mark.value, place + 3
        if unit is Kind.MINUTES or (unit is Kind.M and not metres and marks[place + 1].tight and mark.value >= 10):
            return mark.value, place + 2
        if unit is Kind.HOURS:
            return _with_rest(marks, place + 2, mark.value * 60)
        if unit is Kind.SLASH and _text(marks, place + 2) == "4" and "hour" in _spoken_after(marks, place + 3):
            return Decimal(45), _after_hour(marks, place + 3)
        return None
    words = _plain(marks, place)
    texts = [w for w, _ in words]
    for lead, minutes in _FIXED:
        size = len(lead)
        if tuple(texts[:size]) == lead and words[0][1] == place:
            end = words[size - 1][1] + 1
            return _with_rest(marks, end, Decimal(minutes)) if minutes == 60 else (Decimal(minutes), end)
    return None


_FIXED: tuple[tuple[tuple[str, ...], int], ...] = (
    (("three", "quarters", "of", "an", "hour"), 45),
    (("half", "an", "hour"), 30), (("half", "a", "hour"), 30), (("half", "hour"), 30), (("half", "an", "hr"), 30),
    (("half", "hr"), 30), (("quarter", "of", "an", "hour"), 15), (("quarter", "hour"), 15),
    (("an", "hour"), 60), (("a", "hour"), 60), (("an", "hr"), 60), (("hour",), 60),
)  # fmt: skip


def _spoken_after(marks: Sequence[Mark], place: int) -> list[str]:
    return [word for word, _ in _plain(marks, place)[:3]]


def _after_hour(marks: Sequence[Mark], place: int) -> int:
    for index in range(place, min(place + 4, len(marks))):
        if "hour" in _words(marks[index]):
            return index + 1
    return place


def _with_rest(marks: Sequence[Mark], at: int, minutes: Decimal) -> tuple[Decimal, int]:
    """Hours with what follows: `and ten`, `and a half`, `15`, `30 min`."""
    words = _plain(marks, at)
    texts = [w for w, _ in words]
    for lead, more in ((("and", "a", "half"), 30), (("and", "a", "quarter"), 15), (("and", "half"), 30)):
        if tuple(texts[: len(lead)]) == lead:
            return minutes + more, words[len(lead) - 1][1] + 1
    joined = at + 1 if _kind(marks, at) is Kind.AND else at
    number = marks[joined] if joined < len(marks) else None
    if number is not None and number.kind is Kind.NUM and number.value is not None and number.value < 60:
        named = _kind(marks, joined + 1) in (Kind.MINUTES, Kind.M)
        if named or joined > at or number.tight:
            return minutes + number.value, joined + (2 if named else 1)
    return minutes, at


def _is_had(marks: Sequence[Mark], place: int, end: int, timed: bool) -> bool:
    """Whether a duration is what the client has, by the words of its part."""
    start = place
    while start > 0 and marks[start - 1].kind not in _EDGES and place - start < 8:
        start -= 1
    stop = end
    while stop < len(marks) and marks[stop].kind not in _EDGES and stop - end < 5:
        stop += 1
    before = [w for m in marks[start:place] for w in _words(m)]
    after = [w for m in marks[end:stop] for w in _words(m)]
    if any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[max(start, place - 3) : place]):
        return False
    near = before[-4:]
    leaving = bool(set(before) & _GOING) and "in" in near
    blocked = set(near) & _NOT_HAVING - ({"in", "be"} if leaving else set())
    if blocked or set(after[:3]) & (_NOT_HAVING - {"in", "over", "each", "skip", "skipping"}):
        return False
    if leaving or set(before) & _HAVING or set(after) & _HAVING:
        return True
    alone = not any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.NAME) for i, m in enumerate(marks) if not place <= i < end)
    talk = any(m.kind is Kind.WORD for m in (*marks[start:place], *marks[end:stop]))
    return alone and not timed and not talk


def _until(marks: Sequence[Mark], place: int, now: datetime) -> MinutesSaid | None:
    """`until 18:15`, `need to leave at half six`: the minutes from now to that time."""
    words = _words(marks[place])
    if not words or words[-1] not in (*_UNTIL, "at"):
        return None
    is_until = words[-1] in _UNTIL
    before = [w for m in marks[max(0, place - 3) : place] for w in _words(m)][-4:]
    is_at = words[-1] == "at" and bool(set(before) & _LEAVING)
    if not (is_until or is_at):
        return None
    if words[-1] in ("by", "before") and not set(_part_words(marks, place)) & (_GOING | _HAVING):
        return None
    if any(m.kind is Kind.NAME for m in marks[max(0, place - 1) : place]):
        return None
    found = _time_of_day(marks, place + 1)
    if found is None:
        return None
    hour, minute, half_known, end = found
    if _kind(marks, end) in (Kind.X, Kind.FOR, Kind.REPS, Kind.KG, Kind.LB, Kind.SETS, Kind.AT):
        return None
    then = now.replace(hour=hour % 24, minute=minute, second=0, microsecond=0)
    choices = [then] if half_known else [then, then + timedelta(hours=12)]
    ahead = [c if c > now else c + timedelta(days=1) for c in choices]
    wait = min(ahead) - now
    if wait > timedelta(hours=6):
        return None
    return MinutesSaid(Decimal(int(wait.total_seconds() // 60)), tuple(range(place, end)))


def _part_words(marks: Sequence[Mark], place: int) -> list[str]:
    start = place
    while start > 0 and marks[start - 1].kind not in _EDGES:
        start -= 1
    end = place
    while end < len(marks) and marks[end].kind not in _EDGES:
        end += 1
    return [w for m in marks[start:end] for w in _words(m)]


def _time_of_day(marks: Sequence[Mark], at: int) -> tuple[int, int, bool, int] | None:
    """Hour, minute, whether its half of the day is known, and the place after it."""
    while at < len(marks) and marks[at].kind is Kind.FILL and marks[at].text in ("about", "around", "like", "roughly"):
        at += 1
    if at >= len(marks):
        return None
    mark = marks[at]
    words = [w for w, _ in _plain(marks, at)]
    if words[:2] == ["half", "past"] or words[:1] == ["half"]:
        place = at + 2 if words[:2] == ["half", "past"] else at + 1
        return _hour(marks, place, 30)
    if words[:1] == ["quarter"] and words[1:2] in (["past"], ["to"]):
        return _hour(marks, at + 2, 15 if words[1] == "past" else -15)
    if mark.kind is Kind.NUM and mark.value is not None and _text(marks, at + 1) in ("past", "to"):
        return _hour(marks, at + 2, int(mark.value) * (1 if _text(marks, at + 1) == "past" else -1))
    if mark.kind is Kind.CLOCK:
        first, second = (int(p) for p in mark.parts)
        if first > 23 or second > 59:
            return None
        return _half_of_day(marks, at + 1, first, second)
    if mark.kind is Kind.NUM and mark.value is not None:
        if mark.value != int(mark.value):
            hour, minute = int(mark.value), round((mark.value - int(mark.value)) * 100)
            if "." not in mark.text or len(mark.text.split(".")[1]) != 2 or minute > 59 or hour > 23:
                return None
            return _half_of_day(marks, at + 1, hour, minute)
        if mark.value <= 23:
            return _half_of_day(marks, at + 1, int(mark.value), 0)
        if 100 <= mark.value <= 2359 and mark.value % 100 < 60 and len(mark.text) in (3, 4):
            return _half_of_day(marks, at + 1, int(mark.value) // 100, int(mark.value) % 100)
    return None


def _hour(marks: Sequence[Mark], at: int, minutes: int) -> tuple[int, int, bool, int] | None:
    mark = marks[at] if at < len(marks) else None
    if (
        mark is None
        or mark.kind is not Kind.NUM
        or mark.value is None
        or mark.value != int(mark.value)
        or mark.value > 23
    ):
        return None
    total = int(mark.value) * 60 + minutes
    return _half_of_day(marks, at + 1, total // 60 % 24, total % 60)


def _half_of_day(marks: Sequence[Mark], at: int, hour: int, minute: int) -> tuple[int, int, bool, int]:
    word = _text(marks, at)
    if word in ("pm", "p"):
        return (hour % 12 + 12, minute, True, at + 1)
    if word in ("am",):
        return (hour % 12, minute, True, at + 1)
    return hour, minute, hour > 12 or hour == 0, at
