"""The time that a client says they have: `only got 25 min`, `half an hour today`, `until 18:15`.

A duration counts only beside words of having, leaving or being short of it; rest, travel, lateness and warm-up minutes
are talk. A time of day is the next one that a clock on the wall shows: `until 7` said at 18:40 is twenty minutes.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from decimal import Decimal

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import time_of_day, words_of
from bot.notation.minutes.durations import duration_at
from bot.notation.minutes.elapsed import AT_MOST, HAD, is_elapsed, since_had
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_HAVING = frozenset(
    words(
        "only got have has having ive max maximum leave leaving gotta limited short squeeze spare free time today",
        "tops available left just shuts closes closing session workout train training budget allowed hard tonight",
        "quick mins window gap weve need needs must limit pushed rushing rush squeezed cap capped cut lunch tight",
        "schedule most total gots had availabl maybe about roughly clock play remaining dispose under meetings calls",
        "lessons classes shifts appointments",
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
_APPOINTMENTS = frozenset(words("meetings calls lessons classes shifts appointments clients patients jobs"))
_EDGES = frozenset((Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.COMMA, Kind.THEN))
_UNTIL = frozenset(("until", "till", "til", "by", "before"))
_LEAVING = frozenset(words(
    "leave leaving go out shuts closes close shutting closing pick picking collect collecting gone kicked chucked",
    "thrown locks",
))  # fmt: skip
_ENDING = frozenset(words("stop stopping off home finish finishing ends end ending"))
"""Words that end a set as well: `had to stop at 8` is no time of day, `stop at 18:30` is."""
_GOING = frozenset(words(
    "leave leaving go out off finish finished done gone home shuts closes close pick head collect stop shutting",
    "closing catch wrap finishing",
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
        bare = _bare(marks, place)
        if bare is not None:
            return bare
        duration = duration_at(marks, place, metres)
        if duration is not None:
            minutes, end = duration
            if 0 < minutes <= _DAY_PART and _is_had(marks, place, end, timed):
                return MinutesSaid(minutes, tuple(range(place, end)))
    return None


def _is_had(marks: Sequence[Mark], place: int, end: int, timed: bool) -> bool:
    """Whether a duration is what the client has, by the words of its part."""
    start = place
    while start > 0 and marks[start - 1].kind not in _EDGES and place - start < 8:
        start -= 1
    stop = end
    while stop < len(marks) and marks[stop].kind not in _EDGES and stop - end < 5:
        stop += 1
    before = [w for m in marks[start:place] for w in words_of(m)]
    after = [w for m in marks[end:stop] for w in words_of(m)]
    if any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[max(start, place - 3) : place]):
        return False
    near = before[-4:]
    leaving = bool(set(before) & _GOING) and "in" in near
    ended = bool(set(near) & {"done", "finished", "finish"}) and not set(before) & _MUST
    leaving = leaving and not ended
    blocked = set(since_had(near)) & _NOT_HAVING - ({"in", "be"} if leaving else set())
    if after[:1] and (after[0] in AT_MOST or after[:2] == ["from", "now"]):
        blocked -= {"late", "early", "after", "in", "behind"}
    if is_elapsed(before, after, marks):
        return False
    between = after[:1] == ["between"] and bool(set(after) & _APPOINTMENTS)
    if between:
        return True
    if blocked or set(after[:3]) & (_NOT_HAVING - {"in", "over", "each", "skip", "skipping"}):
        return False
    if after[:1] in (["gone"], ["lost"], ["wasted"]):
        return False
    if not before and not after and [m.text for m in marks[end + 1 : end + 2]] in _ENOUGH:
        return kind_at(marks, end) is Kind.COMMA and any(m.kind is Kind.QUERY for m in marks[end + 1 : end + 4])
    if before[-1:] == ["so"] and not after and set(before) & _CATCHING:
        return True
    if before in (["so"], ["so", "thats"], ["thats"], ["gives", "me"]) and not after and start > 0:
        return bool(set(_part_words(marks, start - 1)) & _CATCHING)
    if leaving or after[:2] == ["from", "now"] or set(before) & _HAVING or set(after) & _HAVING:
        return True
    alone = not any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.NAME) for i, m in enumerate(marks) if not place <= i < end)
    talk = any(m.kind is Kind.WORD for m in (*marks[start:place], *marks[end:stop]))
    return alone and not timed and not talk


def _is_half(marks: Sequence[Mark], place: int) -> bool:
    """`at 7 pm`."""
    return [m.text for m in marks[place + 2 : place + 3]] in (["pm"], ["am"])


_ENOUGH = (["enough"], ["ok"], ["okay"], ["possible"], ["doable"], ["realistic"], ["is"], ["will"])
_CATCHING = frozenset(words("bus train tram ferry metro half quarter past oclock class shift meeting appointment lift"))
"""Words of what a client has to be away for, behind which the minutes until then are told: `bus at 11, so 35 min`."""
_DAY_PART = 300
"""Minutes: a longer time is no session's (`24 hour gym`; common practice, no source)."""


def _bare(marks: Sequence[Mark], place: int) -> MinutesSaid | None:
    """`have to be out in 40`: a bare number of minutes after words of having to leave."""
    mark = marks[place]
    ends = place + 1 >= len(marks) or marks[place + 1].kind in _EDGES or marks[place + 1].text.split()[:1] in _BEHIND
    if mark.kind is not Kind.NUM or mark.value is None or not _SHORTEST <= mark.value <= _LONGEST or not ends:
        return None
    before = _part_words(marks[:place], place)[-8:]
    if marks[place + 1 : place + 2] and marks[place + 1].text.startswith("before") and set(before[-2:]) & HAD:
        return MinutesSaid(mark.value, (place,))
    if before[-1:] != ["in"] or not set(before[-4:]) & (_GOING | _RUNNING) or not set(before) & _MUST:
        return None
    return MinutesSaid(mark.value, (place,))


_BEHIND = [[w] for w in ("ish", "or", "so", "today", "tonight", "max", "tops", "before", "now", "for", "because", "as")]
_RUNNING = frozenset(words("run dash shoot bounce split scoot bolt jet bail"))
_SHORTEST, _LONGEST = 5, 180
"""Minutes of a session, for a number that names no unit (common practice, no source)."""
_MUST = frozenset(words("have gotta need must got hafta has supposed haveto needs should ive"))


def _until(marks: Sequence[Mark], place: int, now: datetime) -> MinutesSaid | None:
    """`until 18:15`, `need to leave at half six`: the minutes from now to that time."""
    words = words_of(marks[place])
    hard = words[-1:] == ["stop"] and place > 0 and marks[place - 1].text == "hard"
    leaves = words[-1:] == ["leave"] and kind_at(marks, place + 1) is Kind.CLOCK
    hard = hard or leaves or _is_to_clock(marks, place)
    if not words or (words[-1] not in (*_UNTIL, "at") and not hard):
        return None
    is_until = words[-1] in _UNTIL
    if words[-1] == "by" and place and marks[place - 1].kind is Kind.NUM:
        return None
    before = [w for m in marks[max(0, place - 3) : place] for w in words_of(m)][-4:]
    clock = kind_at(marks, place + 1) is Kind.CLOCK or (
        kind_at(marks, place + 2) is Kind.FILL and _is_half(marks, place)
    )
    leaves_at = set(before) & (_LEAVING | _ENDING if clock else _LEAVING)
    is_at = (words[-1] == "at" and bool(leaves_at)) or hard
    if not (is_until or is_at):
        return None
    if words[-1] in ("by", "before") and not set(_part_words(marks, place)) & (_GOING | _HAVING):
        return None
    if any(m.kind is Kind.NAME for m in marks[max(0, place - 1) : place]):
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
    wait = min(ahead) - now
    if wait > timedelta(hours=6):
        return None
    places = tuple(range(min(then_at, place), max(end, place + (2 if then_at < place else 0))))
    return MinutesSaid(Decimal(int(wait.total_seconds() // 60)), places)


def _is_to_clock(marks: Sequence[Mark], place: int) -> bool:
    """`to 20:30 i have time`: a time of day up to which there is time."""
    if marks[place].text != "to" or kind_at(marks, place + 1) is not Kind.CLOCK:
        return False
    return {"have", "time"} <= set(_part_words(marks, place))


def _part_words(marks: Sequence[Mark], place: int) -> list[str]:
    start = place
    while start > 0 and marks[start - 1].kind not in _EDGES:
        start -= 1
    end = min(place, len(marks))
    while end < len(marks) and marks[end].kind not in _EDGES:
        end += 1
    return [w for m in marks[start:end] for w in words_of(m)]
