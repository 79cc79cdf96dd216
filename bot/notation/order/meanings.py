"""Marks whose meaning those beside them give: `60 times 5`, `again 60 for 5`, `14kg dbs`, `with a little help`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.order.near import LOADED, OF_LOAD, UNITS, kind_at
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_REPEATS = ("and again", "once more", "again")
_BELLS = frozenset(words("db dbs dumbbell dumbbells dumbell dumbells kb kbs kettlebell kettlebells bells"))
_LITTLE = frozenset(words("little bit some slight tiny"))


def by_neighbours(marks: Sequence[Mark], place: int) -> Mark:
    """A mark with the meaning that those beside it give it."""
    mark = marks[place]
    after = kind_at(marks, place + 1)
    numbered = after is Kind.NUM
    if mark.kind in (Kind.SAME, Kind.AGAIN) and mark.text in _REPEATS and numbered:
        whole = kind_at(marks, place + 2) in LOADED or kind_at(marks, place + 2) in OF_LOAD
        return replace(mark, kind=Kind.AND if mark.text.startswith("and") else Kind.FILL) if whole else mark
    if mark.kind is Kind.SAME and not any(m.kind is Kind.NUM for m in marks[:place]) and _is_entry(marks, place + 1):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.TIMES and kind_at(marks, place - 1) is Kind.NUM and mark.text != "twice":
        kind = Kind.SETS if after is Kind.NAME else Kind.X if numbered else mark.kind
        return replace(mark, kind=kind, text="x" if kind is Kind.X else mark.text)
    if mark.kind is Kind.MORE and kind_at(marks, place - 1) is Kind.SETS:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and kind_at(marks, place - 1) is Kind.NUM and after in (Kind.SETS, Kind.SET):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and mark.text == "extra" and _is_set(marks, place + 1):
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.MORE and mark.text == "more" and _is_many(marks, place - 1):
        return replace(mark, kind=Kind.REPS)
    if mark.kind is Kind.PLATES and mark.text == "bar" and kind_at(marks, place - 1) is Kind.NAME and not numbered:
        return replace(mark, kind=Kind.FILL)
    if mark.kind is Kind.PLATES and "bar" in mark.text.split() and _is_told_of(marks, place):
        return replace(mark, kind=Kind.FILL)
    if mark.kind in (Kind.NAME, Kind.WEAK) and mark.text in _BELLS and kind_at(marks, place - 1) in (*UNITS, Kind.S):
        return replace(mark, kind=Kind.HAND, names=())
    if mark.kind is Kind.ASSIST and _is_helped(marks, place):
        return replace(mark, kind=Kind.GAP)
    helped = next((i for i in range(place + 1, min(place + 5, len(marks))) if marks[i].kind is Kind.ASSIST), None)
    if mark.kind is Kind.WITH and helped is not None and _is_helped(marks, helped):
        return replace(mark, kind=Kind.GAP)
    return mark


def _is_entry(marks: Sequence[Mark], place: int) -> bool:
    """`100x5`, past fillers: what `the same again 100x5` repeats, told in full."""
    while kind_at(marks, place) is Kind.FILL:
        place += 1
    return [kind_at(marks, place + n) for n in (0, 1, 2)] in (
        [Kind.NUM, Kind.X, Kind.NUM],
        [Kind.NUM, Kind.FOR, Kind.NUM],
    )


def _is_set(marks: Sequence[Mark], place: int) -> bool:
    """`an extra one`, `an extra set`."""
    return kind_at(marks, place) in (Kind.SET, Kind.SETS) or (place < len(marks) and marks[place].text == "one")


_MOST_LEFT = 6
"""Nobody keeps as many repetitions in reserve and counts them."""


def _is_many(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number is too great for repetitions in reserve: `17 more for the second`."""
    value = marks[place].value if kind_at(marks, place) is Kind.NUM else None
    return value is not None and value >= _MOST_LEFT and kind_at(marks, place - 1) is not Kind.COULD


def _is_told_of(marks: Sequence[Mark], place: int) -> bool:
    """Whether a bar's load follows (`empty bar 20x12`), or it is only spoken of (`bar pad slipped`)."""
    weighed = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (Kind.X, Kind.FOR)
    spoken = kind_at(marks, place + 1) is Kind.WORD and kind_at(marks, place - 1) is not Kind.NUM
    return weighed or spoken


def _is_helped(marks: Sequence[Mark], place: int) -> bool:
    """`with a little help`: no amount of it."""
    at = place - 1
    while kind_at(marks, at) is Kind.FILL or (at >= 0 and marks[at].text in _LITTLE):
        at -= 1
    return kind_at(marks, at) is Kind.WITH
