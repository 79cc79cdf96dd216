"""What stands beside a number and makes it a set's: a link, a unit, a side, a set that is named, a load come to."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, beside, continues_list, is_led_at, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TIED = frozenset(
    (Kind.X, Kind.FOR, Kind.WITH, Kind.NUM, Kind.COLON, Kind.SLASH, Kind.PLUS, Kind.DASH, Kind.LABEL, Kind.SET,
     Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R, Kind.RPE, Kind.RIR, Kind.FAILED, Kind.DROP, Kind.DROPPED, Kind.MINI,
     Kind.ARROW, Kind.COULD, Kind.SAME, Kind.KG, Kind.LB, Kind.REPS, Kind.SETS, Kind.S, Kind.M, Kind.HAND, Kind.EACH,
     Kind.SECONDS, Kind.METRES, Kind.MINUTES, Kind.HOURS, Kind.TANK, Kind.MORE, Kind.TIMES, Kind.BODY, Kind.ASSIST,
     Kind.TOTAL, Kind.NAME, Kind.WEAK, Kind.SAMELOAD, Kind.SAMEREPS, Kind.OPEN, Kind.CLOCK, Kind.WARMUP, Kind.ADDED,
     Kind.MINUS, Kind.MEANT, Kind.SORRY, Kind.NOT, Kind.FEELS, Kind.PAIR, Kind.WROTE, Kind.ORD)
)  # fmt: skip
"""Kinds which beside a number make it a set's."""
_THAT_WAS = ("that was", "it was", "those were", "they were")
_COMING = frozenset(words("up down went moved bumped jumped dropped increased got arrive arrived came reached made"))
_DONE = frozenset(words("got did managed reached made hit"))


def is_tied(marks: Sequence[Mark], place: int) -> bool:
    """Whether what stands beside a number makes it a set's."""
    before, after = beside(marks, place, -1), beside(marks, place, 1)
    if before is not None and (before.text in ("@", "this one") or before.kind in (Kind.LASTSET, Kind.THEN)):
        return True
    if _is_of_set(marks, place) or continues_list(marks, place) or _is_reached(marks, place):
        return True
    if before is not None and before.kind in _TIED:
        return True
    if _is_one_of_two(marks, place) or _is_on_name(marks, place) or _is_at_load(marks, place):
        return True
    if _is_described(marks, place):
        return True
    return after is not None and after.kind in _TIED and not _is_for_talk(marks, place)


def _is_one_of_two(marks: Sequence[Mark], place: int) -> bool:
    """`either 4 or 5`: one of two numbers of which one is meant."""
    if kind_at(marks, place + 1) is not Kind.OR and kind_at(marks, place - 1) is not Kind.OR:
        return False
    after = [m.kind for m in marks[place + 1 : place + 3]]
    before = [m.kind for m in marks[max(0, place - 2) : place]]
    return after == [Kind.OR, Kind.NUM] or before == [Kind.NUM, Kind.OR]


def _is_described(marks: Sequence[Mark], place: int) -> bool:
    """`8 and 7 and a scrappy 6`: a count with a word for how it went, behind other counts."""
    if place < 2 or marks[place - 1].kind is not Kind.WORD or marks[place - 2].text not in ("a", "an", "my"):
        return False
    start, end = part_of(marks, place)
    ends = place + 1 >= end or marks[place + 1].kind in (Kind.AND, Kind.THEN, Kind.REPS)
    return start <= place - 2 and ends and any(m.kind is Kind.NUM for m in marks[start : place - 2])


def _is_at_load(marks: Sequence[Mark], place: int) -> bool:
    """`did 4 at 140`: repetitions at a load."""
    said = [m.kind for m in marks[place + 1 : place + 3]]
    done = place > 0 and marks[place - 1].text in _DONE
    return done and said == [Kind.AT, Kind.NUM]


def _is_on_name(marks: Sequence[Mark], place: int) -> bool:
    """`went 90 on thrusts`: a load on its exercise."""
    kinds = [m.kind for m in marks[place + 1 : place + 4] if m.kind is not Kind.FILL]
    return kinds[:2] in ([Kind.AT, Kind.NAME], [Kind.WITH, Kind.NAME], [Kind.FOR, Kind.NAME])


def _is_for_talk(marks: Sequence[Mark], place: int) -> bool:
    """`up at 5 for this`: a link behind a number that leads to nothing but words."""
    if not is_led_at(marks, place):
        return False
    _, end = part_of(marks, place)
    rest = marks[place + 2 : end]
    words_only = bool(rest) and all(m.kind in (Kind.FILL, Kind.WORD) for m in rest)
    return place + 1 < end and marks[place + 1].kind in (Kind.FOR, Kind.WITH) and words_only


def _is_reached(marks: Sequence[Mark], place: int) -> bool:
    """`went up to 110`, `i arrive only to 10`, `cramped up so just 16`: a load or repetitions that were come to."""
    said = [m.text for m in marks[max(0, place - 4) : place]]
    if said[-1:] == ["to"] and _COMING & set(said):
        return True
    at = place - 1
    while at >= 0 and marks[at].text in ("the", "only", "just"):
        at -= 1
    if at < 0 or marks[at].text not in (*_DONE, "so", "went", "used", "stuck with", "stayed"):
        return False
    _, end = part_of(marks, place)
    plain = all(m.kind in (Kind.FILL, Kind.GAP) for m in marks[place + 1 : end])
    if marks[at].text == "so":
        return plain and any(m.kind in (Kind.NUM, Kind.NAME) for i, m in enumerate(marks) if i != place)
    return plain


def _is_of_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether a set or a side is named before a number: `that last one i only got 2`, `the left leg only got 10`."""
    was = marks[place - 1] if place else None
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    if was is not None and was.kind is Kind.WAS and was.text in _THAT_WAS and ends:
        return True
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.WAS, Kind.TO, Kind.MEANT, Kind.FOR):
        at -= 1
    if 0 <= at < place - 1 and marks[at].kind in (Kind.LASTSET, Kind.ORD, Kind.LEFT, Kind.RIGHT, Kind.SET, Kind.LABEL):
        return True
    if was is None or was.kind is not Kind.WAS:
        return False
    start, _ = part_of(marks, place)
    return any(m.kind in (Kind.WORKSET, Kind.DROP, Kind.SET, Kind.LASTSET, Kind.ORD) for m in marks[start:place])
