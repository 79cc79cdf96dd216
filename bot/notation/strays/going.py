"""The load of a set that is still to come, told as what is about to be done: `205x3. bumping to 215 for set 2`.

Nothing was done with it yet: where its repetitions follow, it is a set (`going up to 215 for the last one, got 3`).
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

GOING = frozenset(words(
    "bumping upping going moving dropping adding staying sticking keeping putting loading taking trying jumping "
    "stepping raising lowering heading hopping pushing increasing reducing repeating holding attempting gonna "
    "switching using"
))  # fmt: skip
_LED = frozenset(words("i im i'm am ill and so now then will be just thinking of gonna ok okay next well we"))
_BEFORE = (None, *EDGES, Kind.DASH, Kind.AND, Kind.THEN)
_COUNTS = (Kind.X, Kind.REPS, Kind.RPE, Kind.RIR, Kind.SECONDS, Kind.METRES, Kind.M, Kind.COLON, Kind.EACH, Kind.FAILED,
           Kind.DONE, Kind.WAS, Kind.QUERY)  # fmt: skip
_WHICH = (Kind.SET, Kind.LASTSET, Kind.ORD)
_TOLD = frozenset(words("got did managed made hit only just done ended was were went easy fine"))
_UNITS = (Kind.KG, Kind.LB, Kind.S)


def going(marks: Sequence[Mark]) -> set[int]:
    """The places of such clauses."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.text.split(" ")[0] in GOING and place not in out:
            out |= set(_clause(marks, place))
    return out


def _clause(marks: Sequence[Mark], place: int) -> range:
    """The clause that opens at a word of going; none where it tells a set, or no load of one to come."""
    start, end = part_of(marks, place)
    while start < place and set(marks[start].text.split()) <= _LED:
        start += 1
    if start != place and not _ends_set(marks, place - 1):
        return range(0)
    end = next((i for i in range(place + 1, end) if marks[i].kind in (Kind.DASH, Kind.THEN) and not _is_next(marks, i)),
               end)  # fmt: skip
    part = marks[place:end]
    loads = [i for i in range(place, end) if marks[i].kind is Kind.NUM and kind_at(marks, i - 1) is not Kind.SET]
    to_count = any(m.kind is Kind.FOR and kind_at(part, i + 1) is Kind.NUM for i, m in enumerate(part))
    which = [i for i in range(place, end) if marks[i].kind in _WHICH or _is_next(marks, i)]
    if len(loads) != 1 or not which or to_count or any(m.kind in _COUNTS for m in part):
        return range(0)
    return range(0) if _counts_on(marks, end) else range(place, end)


def _is_next(marks: Sequence[Mark], place: int) -> bool:
    """`the next one`, `for next set`."""
    return marks[place].text.split()[-1:] == ["next"]


def _ends_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether a load with its repetitions ends at a place: `205x3 bumping to 215 for set 2`."""
    return kind_at(marks, place) is Kind.NUM and kind_at(marks, place - 1) in (Kind.X, Kind.FOR)


def _counts_on(marks: Sequence[Mark], end: int) -> bool:
    """Whether what follows a clause tells what was done with its load: `, got 3`, `: 3`, `. 3 reps`, `felt easy`."""
    if kind_at(marks, end) in (Kind.COLON, Kind.QUERY, Kind.DASH, Kind.OPEN):
        return True
    for at in range(end, len(marks)):
        if marks[at].kind in (Kind.NUM, Kind.SAME, Kind.AGAIN, Kind.DONE, Kind.FAILED):
            after = at + 1
            while kind_at(marks, after) in _UNITS:
                after += 1
            return kind_at(marks, after) not in (Kind.X, Kind.FOR, Kind.AT) or marks[at].kind is not Kind.NUM
        if set(marks[at].text.split()) & _TOLD:
            return True
    return False
