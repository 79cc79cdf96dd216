"""How many sets or exercises are left out, or were done: `the other two`, `just the one set`, `bench at two sets`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_FAR = 60
"""Marks that are looked back at."""
_COUNTS = {"two": 2, "three": 3, "four": 4, "both": 2, "2": 2, "3": 3, "4": 4}


def rest_count(marks: Sequence[Mark], used: set[int]) -> int | None:
    """How many the rest is said to be: `the other two`, `the last 2`."""
    for at in sorted(used):
        said = marks[at].text.split()
        if marks[at].kind is Kind.THEREST and "exercises" not in said:
            counts = [_COUNTS[w] for w in said if w in _COUNTS]
            after = marks[at + 1] if at + 1 in used else None
            number = None if after is None or after.kind is not Kind.NUM else after.value
            return counts[0] if counts else None if number is None else int(number)
    return None


def told_before(marks: Sequence[Mark], place: int) -> Mark | None:
    """The name whose sets are told before a place, where another name with sets follows it."""
    near = range(max(0, place - _FAR), min(len(marks), place + _FAR))
    named = [i for i in near if marks[i].kind is Kind.NAME and len(marks[i].names) == 1]
    before = [i for i in named if i < place and any(m.kind is Kind.NUM for m in marks[i:place])]
    after = [i for i in named if i > place and any(m.kind is Kind.NUM for m in marks[i + 1 : i + 3])]
    return marks[before[-1]] if before and after else None


def counted_alone(marks: Sequence[Mark], place: int) -> tuple[int, int] | None:
    """Where `just the one set` stands, in the sentence before a place; `None` where it does not."""
    start = place
    while start > max(0, place - _FAR) and marks[start - 1].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY):
        start -= 1
    for at in range(start, place - 1):
        named = marks[at + 1].kind is Kind.NAME
        if marks[at].kind is not Kind.NUM or marks[at + 1 + named].kind not in (Kind.SET, Kind.SETS):
            continue
        words = {w for m in (*marks[max(start, at - 3) : at], *marks[at + 2 : at + 3]) for w in m.text.split()}
        if words & {"just", "only", "after"}:
            return at, at + 2
    return None


def counted_before(marks: Sequence[Mark], place: int) -> set[int]:
    """How many sets of a name are left out: `3 sets of calf raises binned`, `two calf sets skipped`."""
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.SETS, Kind.SET, Kind.FILL, Kind.THEREST) or marks[at].text == "of"):
        at -= 1
    sets = at < place - 1 or kind_at(marks, place + 1) in (Kind.SETS, Kind.SET)
    counts = at >= 0 and sets and marks[at].kind is Kind.NUM
    return set(range(at, place)) if counts else set()


def counted_after(marks: Sequence[Mark], place: int) -> set[int]:
    """How many sets were done of what is stopped: `stopping bench at two sets`."""
    kinds = [m.kind for m in marks[place + 1 : place + 4]]
    counted = kinds[:1] in ([Kind.AT], [Kind.WITH]) or [m.text for m in marks[place + 1 : place + 2]] == ["after"]
    return set(range(place + 1, place + 4)) if counted and kinds[1:] == [Kind.NUM, Kind.SETS] else set()
