"""The time that a client says they have: `only got 25 min`, `half an hour today`, `until 18:15`.

A duration counts only beside words of having, leaving or being short of it; rest, travel, lateness and warm-up minutes
are talk. A time of day is the next one that a clock on the wall shows: `until 7` said at 18:40 is twenty minutes.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.all_there_is import all_behind
from bot.notation.minutes.better import MinutesSaid, put_better
from bot.notation.minutes.clock import time_of_day, words_of
from bot.notation.minutes.durations import duration_at
from bot.notation.minutes.elapsed import HAD
from bot.notation.minutes.had import is_back_by, is_had, out_behind
from bot.notation.minutes.parts import EDGES, GOING, HAVING, MUST, RUNNING, RUNNING_OFF, is_to_clock, part_words
from bot.notation.minutes.past import is_before_next, is_of_gear, is_over, is_past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

__all__ = ["MinutesSaid", "read_minutes"]

_UNTIL = frozenset(("until", "till", "til", "by", "before"))
_LEADING = _UNTIL | {"at", "stop", "leave", "to"}
"""Words before a time of day at which there is no more time."""
_LEAVING = frozenset(words(
    "leave leaving go out shuts closes close shutting closing pick picking picks pickup collect collecting collects "
    "fetches gone kicked",
    "chucked thrown locks outta",
))  # fmt: skip
_BACK = frozenset(words("wants want need needs be gotta have has must due expected"))
_ENDING = frozenset(words(
    "stop stopping off home finish finishing finished ends end ending done calling packing packed wrap wrapping "
    "wrapped clocking signing"
))  # fmt: skip
"""Words that end a set as well: `had to stop at 8` is no time of day, `stop at 18:30` is."""


def read_minutes(marks: Sequence[Mark], now: datetime, timed: bool, metres: bool = False) -> MinutesSaid | None:
    """The time that the client has. `timed`, `metres`: the exercise under way counts those, so that
    a bare duration, or a bare `m`, is its set's.
    """
    said = _first_said(marks, now, timed, metres)
    return put_better(marks, said, metres) if any(m.kind in _LENGTHS for m in marks) else said


_LENGTHS = (Kind.MINUTES, Kind.HOURS)


def _first_said(marks: Sequence[Mark], now: datetime, timed: bool, metres: bool) -> MinutesSaid | None:
    """The first time that is the client's."""
    for place in range(len(marks)):
        clock = _until(marks, place, now)
        if clock is not None:
            clock = _sooner(marks, clock, now)
            end = max(clock.places) + 1
            behind = range(end, all_behind(marks, end))
            return replace(clock, places=tuple(sorted({*clock.places, *behind, *_telling_now(marks, now)})))
        bare = _bare(marks, place)
        if bare is not None:
            return bare
        duration = duration_at(marks, place, metres)
        if duration is not None:
            minutes, end = duration
            if is_before_next(marks, minutes, end):
                continue
            if 0 < minutes <= _DAY_PART and is_had(marks, place, end, timed):
                return MinutesSaid(minutes, tuple(range(place, all_behind(marks, out_behind(marks, end)))))
    return None


def _sooner(marks: Sequence[Mark], clock: MinutesSaid, now: datetime) -> MinutesSaid:
    """`pick up my son at 17:50 so i can only train until 17:30`: the end of the training, which is what counts."""
    behind = range(max(clock.places) + 1, len(marks))
    ends = [found for i in behind if marks[i].text in _ENDS_AT and (found := _until(marks, i, now)) is not None]
    told = [clock, *ends]
    return MinutesSaid(min(c.minutes for c in told), tuple(i for c in told for i in c.places))


_ENDS_AT = ("until", "till", "til")


def _telling_now(marks: Sequence[Mark], now: datetime) -> list[int]:
    """The `7:15` of `have to be gone at 8, its 7:15 now`: the time that it is."""
    told = [i for i, m in enumerate(marks) if m.kind is Kind.CLOCK and len(m.parts) == 2]
    since = {i: now.hour * 60 + now.minute - int(marks[i].parts[0]) * 60 - int(marks[i].parts[1]) for i in told}
    return [i for i in told if min(since[i] % 720, -since[i] % 720) <= _NEAR_NOW]


_NEAR_NOW = 10
"""Minutes between the time that is told and that of the message (common practice, no source)."""


_DAY_PART = 300
"""Minutes: a longer time is no session's (`24 hour gym`; common practice, no source)."""


def _bare(marks: Sequence[Mark], place: int) -> MinutesSaid | None:
    """`have to be out in 40`: a bare number of minutes after words of having to leave."""
    mark = marks[place]
    if mark.kind is not Kind.NUM or mark.value is None or not _SHORTEST <= mark.value <= _LONGEST:
        return None
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES or marks[place + 1].text.split()[:1] in _BEHIND
    if not ends:
        return None
    before = part_words(marks[:place], place)[-8:]
    if text_at(marks, place + 1).startswith("before") and set(before[-2:]) & HAD:
        if is_past(part_words(marks, place + 1)[len(before) :]):
            return None
        return MinutesSaid(mark.value, (place,))
    leaves = before[-1:] == ["in"] and set(before[-4:]) & (GOING | RUNNING) and set(before) & MUST
    if not leaves and not is_back_by(before):
        return None
    return MinutesSaid(mark.value, (place,))


_BEHIND = [[w] for w in ("ish", "or", "so", "today", "tonight", "max", "tops", "before", "now", "for", "because", "as")]
_SHORTEST, _LONGEST = 5, 180
"""Minutes of a session, for a number that names no unit (common practice, no source)."""


def _without_out(before: list[str]) -> list[str]:
    """The words without the `out` of what was used up: `ran out of steam at 7` is no time of leaving."""
    return [w for i, w in enumerate(before) if not (w in ("out", "gone") and i and before[i - 1] in _USED_UP)]


_USED_UP = frozenset(words(
    "ran run running gave given tapped maxed conked bailed gassed burned burnt petered wore dropped fizzled bombed "
    "locked grip legs arms strength energy passed zonked crashed knocked blacked chilled went stayed ate hung slept"
))  # fmt: skip


def _is_spoken(marks: Sequence[Mark], place: int) -> bool:
    """`half past 7`, `quarter to 8`, `7.30`: a time of day, and no count of anything."""
    first = marks[place] if place < len(marks) else None
    if first is None:
        return False
    dotted = first.kind is Kind.NUM and "." in first.text and time_of_day(marks, place) is not None
    return dotted or first.text in ("half", "quarter") or text_at(marks, place + 1) in ("past", "to")


def _runs_at(before: Sequence[str]) -> set[str]:
    """`gotta bounce at`, `shooting off at`: words of having to go that are of a lift as well."""
    must = set(before) & MUST
    return set(before[-2:]) & ((RUNNING | RUNNING_OFF) if must else RUNNING_OFF)


def _until(marks: Sequence[Mark], place: int, now: datetime) -> MinutesSaid | None:
    """`until 18:15`, `need to leave at half six`: the minutes from now to that time."""
    words = words_of(marks[place])
    if not words or words[-1] not in _LEADING:
        return None
    hard = words[-1:] == ["stop"] and place > 0 and marks[place - 1].text == "hard"
    leaves = words[-1:] == ["leave"] and kind_at(marks, place + 1) is Kind.CLOCK
    hard = hard or leaves or is_to_clock(marks, place)
    if words[-1] not in (*_UNTIL, "at") and not hard:
        return None
    is_until = words[-1] in _UNTIL
    if is_over(marks, place):
        return None
    if words[-1] == "by" and place and marks[place - 1].kind is Kind.NUM:
        return None
    before = [*(w for m in marks[max(0, place - 5) : place] for w in words_of(m)), *words[:-1]][-5:]
    clock = kind_at(marks, place + 1) is Kind.CLOCK
    spoken = _is_spoken(marks, place + 1)
    leaves_at = set(_without_out(before)) & (_LEAVING | _ENDING if clock or spoken else _LEAVING)
    leaves_at |= _runs_at(before) if clock or spoken else set()
    if (clock or spoken) and before[-1:] == ["back"] and set(before) & _BACK:
        leaves_at = {"back"}
    part = set(part_words(marks, place))
    due = (clock or spoken) and bool({"be", "b"} & set(before[:-1]) and MUST & part)
    if due:
        leaves_at = {"be"}  # `gotta be on the bus at 19:30`
    is_at = (words[-1] == "at" and (bool(leaves_at) or before[-2:] == ["hard", "stop"])) or hard
    if not (is_until or is_at):
        return None
    if words[-1] in ("by", "before") and not part & (GOING | HAVING) and not due:
        return None
    named = kind_at(marks, place - 1) is Kind.NAME and text_at(marks, place - 1) not in leaves_at
    if named or is_of_gear(marks, place):
        return None
    found = time_of_day(marks, place + 1)
    then_at = place
    if found is None and is_until and [m.text for m in marks[place + 1 : place + 2]] == ["then"]:
        clocks = [i for i in range(place) if marks[i].kind is Kind.CLOCK]
        found = time_of_day(marks, clocks[-1]) if clocks else None
        then_at = clocks[-1] if clocks else place
    if found is None:
        return None
    hour, minute, half_known, end = found
    if kind_at(marks, end) in (Kind.X, Kind.FOR, Kind.REPS, Kind.KG, Kind.LB, Kind.SETS, Kind.AT):
        return None
    then = now.replace(hour=hour % 24, minute=minute, second=0, microsecond=0)
    choices = [then] if half_known else [then, then + timedelta(hours=12)]
    ahead = [c if c > now else c + timedelta(days=1) for c in choices]
    wait = min(ahead) - now.replace(second=0, microsecond=0)
    if wait > timedelta(hours=6):
        return None
    places = tuple(range(min(then_at, place), max(end, place + (2 if then_at < place else 0))))
    return MinutesSaid(Decimal(int(wait.total_seconds() // 60)), places)
