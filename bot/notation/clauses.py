"""Where a message's words stand to each other: parts, and which of them tell of another time than this session."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

EDGES = frozenset((Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.OPEN, Kind.CLOSE))
_DOING = (
    "did",
    "got",
    "managed",
    "made",
    "ended",
    "but",
    "only",
    "just",
    "actual",
    "actually",
    "instead",
    "so",
    "today",
)
_PAST = ("last", "used", "my", "pb", "pr", "best", "personal", "previous", "record", "since", "back in")
_NOW = ("but", "today", "now", "tonight", "instead", "actual")
_HOPED = ("to", "try", "might", "could", "will", "ill", "gonna", "can", "should", "would", "want", "hope", "wanna")


def other_times(marks: Sequence[Mark]) -> set[int]:
    """The places of numbers that are no set of this session: plans, wishes, last week's, and things counted.

    What is told of another time reaches to the end of its part, or to a word of doing (`going for 8 but got 7`).
    """
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind in (Kind.OTHERTIME, Kind.OTHERPERSON):
            out |= _reach(marks, place)
        elif mark.kind is Kind.TALKNUM or (
            mark.kind is Kind.INSTEAD and place + 1 < len(marks) and marks[place + 1].kind is Kind.NUM
        ):
            out |= _next_number(marks, place)
    return out


def talk_numbers(marks: Sequence[Mark]) -> set[int]:
    """The places of bare numbers that talk tells of: `gym at 7`, `2 sets to go`, `4 people waiting`.

    A number with a unit, a link, a side or another number beside it is a set's; a bare one only in a part that holds
    nothing but words that go with sets.
    """
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.CLOCK and place and marks[place - 1].kind is Kind.AT and marks[place - 1].text != "@":
            out.add(place)
        if mark.kind is not Kind.NUM:
            continue
        after = _beside(marks, place, 1)
        if _is_nth(marks, place):
            out.add(place)
        elif (after is not None and after.kind is Kind.HOURS) or _is_to_come(marks, place) or _is_body(marks, place):
            out |= {place, place + 1}
        elif _is_result(marks, place):
            out.add(place)
        elif _is_compared(marks, place):
            out |= {place, place + 1}
        elif not _is_tied(marks, place) and _is_talk(marks, place):
            out.add(place)
    return out


def _is_nth(marks: Sequence[Mark], place: int) -> bool:
    """`on rep 3`: which repetition, not how many."""
    before = _beside(marks, place, -1)
    earlier = marks[place - 2].kind if place > 1 else None
    return before is not None and before.text == "rep" and earlier is not Kind.NUM


def _is_result(marks: Sequence[Mark], place: int) -> bool:
    """`won 24-17`: two numbers of talk with a dash."""
    start, end = _part(marks, place)
    part = marks[start:end]
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    if len(numbers) != 2 or [m.kind for m in part[numbers[0] : numbers[1] + 1]] != [Kind.NUM, Kind.DASH, Kind.NUM]:
        return False
    return part[numbers[1]].tight and any(m.kind is Kind.WORD for m in part[: numbers[0]])


def _is_tied(marks: Sequence[Mark], place: int) -> bool:
    """Whether what stands beside a number makes it a set's."""
    before, after = _beside(marks, place, -1), _beside(marks, place, 1)
    if before is not None and (before.text == "@" or before.kind in (Kind.LASTSET, Kind.THEN)):
        return True
    return (before is not None and before.kind in _TIED) or (after is not None and after.kind in _TIED)


def _is_body(marks: Sequence[Mark], place: int) -> bool:
    """`down 2kg this week`: the body's weight."""
    start, end = _part(marks, place)
    after = _beside(marks, place, 1)
    words = {w for m in marks[start:end] for w in m.text.split()}
    alone = sum(m.kind is Kind.NUM for m in marks[start:end]) == 1
    listed = (
        place > start and marks[place - 1].kind is Kind.WORD and not any(m.kind is Kind.NAME for m in marks[start:end])
    )
    if (
        alone
        and listed
        and after is not None
        and after.kind in (Kind.KG, Kind.LB)
        and all(m.kind is Kind.FILL for m in marks[place + 2 : end])
    ):
        return True
    return (
        alone
        and after is not None
        and after.kind in (Kind.KG, Kind.LB)
        and bool(words & {"down", "up", "lost", "gained", "heavier", "lighter"})
        and bool(words & {"week", "weeks", "month", "months", "weight", "year", "scale", "scales", "holiday"})
    )


_TIED = frozenset(
    (
        Kind.X,
        Kind.FOR,
        Kind.WITH,
        Kind.NUM,
        Kind.COLON,
        Kind.SLASH,
        Kind.PLUS,
        Kind.DASH,
        Kind.LABEL,
        Kind.SET,
        Kind.LEFT,
        Kind.RIGHT,
        Kind.L,
        Kind.R,
        Kind.RPE,
        Kind.RIR,
        Kind.FAILED,
        Kind.DROP,
        Kind.DROPPED,
        Kind.MINI,
        Kind.ARROW,
        Kind.COULD,
        Kind.SAME,
        Kind.KG,
        Kind.LB,
        Kind.REPS,
        Kind.SETS,
        Kind.S,
        Kind.M,
        Kind.HAND,
        Kind.EACH,
        Kind.SECONDS,
        Kind.METRES,
        Kind.MINUTES,
        Kind.HOURS,
        Kind.TANK,
        Kind.MORE,
        Kind.TIMES,
        Kind.BODY,
        Kind.ASSIST,
        Kind.TOTAL,
        Kind.NAME,
        Kind.WEAK,
        Kind.SAMELOAD,
        Kind.SAMEREPS,
        Kind.OPEN,
        Kind.CLOCK,
        Kind.WARMUP,
        Kind.ADDED,
        Kind.MINUS,
        Kind.MEANT,
        Kind.SORRY,
        Kind.NOT,
        Kind.FEELS,
        Kind.PAIR,
        Kind.WROTE,
        Kind.ORD,
    )
)
"""Kinds which beside a number make it a set's."""
_LAST_HOUR = 24
"""`gym at 7` is a time of day; a greater number after `at` is none."""
_TALKY = frozenset(
    words(
        "gym session sessions week weeks weekend day days exercise exercises home bed kids waiting rack station",
        "machine people see up start starting begin end half way through train training trained workout workouts",
        "wk wks spot help coach one things tired energy work works boss morning evening afternoon tonight rest",
        "water lunch dinner breakfast block lifts movements you your they them there here where who",
    )
)
"""Words of talk that do not go with a bare number of repetitions."""


def _beside(marks: Sequence[Mark], place: int, step: int) -> Mark | None:
    at = place + step
    while 0 <= at < len(marks) and marks[at].kind is Kind.FILL and marks[at].text in ("one", "ones"):
        at += step
    return marks[at] if 0 <= at < len(marks) else None


def _part(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    start = place
    while start > 0 and marks[start - 1].kind not in EDGES:
        start -= 1
    end = place
    while end + 1 < len(marks) and marks[end + 1].kind not in EDGES:
        end += 1
    return start, end + 1


def _is_talk(marks: Sequence[Mark], place: int) -> bool:
    start, end = _part(marks, place)
    part = marks[start:end]
    if any(m.kind in (Kind.X, Kind.KG, Kind.LB, Kind.REPS) for m in part):
        return False
    if any(m.kind is Kind.NUM and _is_tied(marks, i) for i, m in enumerate(part, start)):
        return False
    before = _beside(marks, place, -1)
    if before is not None and before.kind is Kind.AT and before.text != "@" and place - 1 >= start:
        sets = (Kind.LASTSET, Kind.SET, Kind.SETS, Kind.ORD, Kind.ALL, Kind.NUM)
        value = marks[place].value
        if (place - 2 >= start and marks[place - 2].kind in sets) or (value is not None and value > _LAST_HOUR):
            return False
        return not any(m.kind is Kind.NUM for m in marks[start : place - 1])
    after = _beside(marks, place, 1)
    if after is not None and place + 1 < end and (after.kind in (Kind.WORD, Kind.OTHERPERSON) or after.text in _TALKY):
        return True
    if place == start:
        return False
    words = {w for m in part if m.kind is not Kind.GAP for w in m.text.split()}
    return any(m.kind in (Kind.WORD, Kind.OTHERPERSON) for m in part) or bool(words & _TALKY)


def _is_to_come(marks: Sequence[Mark], place: int) -> bool:
    """`2 sets left`, `3 exercises to go`."""
    counted = _beside(marks, place, 1)
    if counted is None or counted.kind not in (Kind.SETS, Kind.SET, Kind.FILL, Kind.WORD):
        return False
    following = [m.text for m in marks[place + 2 : place + 4]]
    return following[:1] in (["left"], ["remaining"], ["more"], ["more to go"]) or following == ["to", "go"]


def _is_compared(marks: Sequence[Mark], place: int) -> bool:
    """`2 more reps than last week`, `2.5kg more than before`, `1 rep pb`."""
    following = [m.text for m in marks[place + 1 : place + 4]]
    if following[:1] == ["more reps"] and following[1:2] in (["than"], ["on"]):
        return True
    beside = [w for text in following for w in text.split()]
    if any(w in ("fewer", "less", "lighter", "heavier") and "than" in beside[i:] for i, w in enumerate(beside[:3])):
        return True
    if following[1:3] == ["more", "than"] or following[1:2] == ["more than"]:
        return True
    return following[:1] in (["rep"], ["reps"], ["kg"], ["kilo"], ["lb"]) and following[1:2] in (
        ["pb"],
        ["pr"],
        ["up"],
        ["heavier"],
    )


def _reach(marks: Sequence[Mark], place: int) -> set[int]:
    reached = {place}
    at = place + 1
    hoping = marks[place].text.split()[-1] in _HOPED
    while at < len(marks) and marks[at].kind not in EDGES and marks[at].kind not in (Kind.THEN, Kind.COLON):
        mark = marks[at]
        doing = _DOING if not marks[place].text.startswith(_PAST) else _NOW
        if (
            marks[place].kind is Kind.OTHERTIME
            and mark.text in doing
            and not (hoping and mark.text in ("only", "just"))
        ):
            break
        if mark.kind is Kind.AND and at + 2 < len(marks) and marks[at + 1].kind is Kind.NAME:
            break
        reached.add(at)
        hoping = mark.text in _HOPED
        at += 1
    before = place - 1
    bare = before >= 0 and marks[before].kind is Kind.NUM
    bare = bare and (before == 0 or marks[before - 1].kind in (*EDGES, Kind.FILL))
    if bare and marks[place].text.startswith(("next", "tomorrow", "last")):
        reached.add(before)
    return reached


def _next_number(marks: Sequence[Mark], place: int) -> set[int]:
    at = place
    reached = {place}
    while at + 1 < len(marks) and marks[at + 1].kind not in (*EDGES, Kind.THEN, Kind.NAME) and at - place < 5:
        at += 1
        if marks[at].kind in (Kind.NUM, Kind.CLOCK, Kind.BAD):
            following = marks[at + 1].kind if at + 1 < len(marks) else None
            if following in (Kind.METRES, Kind.M):
                return {place}
            if following is Kind.SLASH and at + 2 < len(marks) and marks[at + 2].kind is Kind.NUM:
                reached |= {at + 1, at + 2}
            if following in (Kind.X, Kind.FOR) and marks[place].text not in ("weighed", "weigh", "weighed in at"):
                return {place}
            reached.add(at)
            if following in (Kind.KG, Kind.LB, Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.M, Kind.WORD):
                reached.add(at + 1)
            return reached
    return {place}
