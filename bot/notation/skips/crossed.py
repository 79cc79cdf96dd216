"""A cross or a `no` behind a name, or behind its sets: `calves x`, `curls + planks = nope`, `chins 8, 7, none`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

PART_ENDS = frozenset((Kind.STOP, Kind.LINE, Kind.BREAK, Kind.COMMA, Kind.QUERY))


BECAUSE = frozenset(words("because cos coz cause cuz bc as since"))
"""Words that open a reason: `lunges none because my knee hurt`."""


def ends_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends after a place, or a reason begins, but for words that change nothing."""
    at = place + 1
    while at < len(marks) and marks[at].kind is Kind.FILL and marks[at].text not in BECAUSE:
        at += 1
    return at >= len(marks) or marks[at].kind in PART_ENDS or marks[at].text in BECAUSE


def is_crossed(marks: Sequence[Mark], place: int) -> bool:
    """`calves x`, `calves - no`, `calves: nope`: a name with a cross or a no behind it, and nothing else."""
    mark = marks[place]
    if mark.kind not in (Kind.X, Kind.NO) and mark.text not in _NONE:
        return False
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.DASH, Kind.COLON, Kind.FILL) and marks[at].text != "but":
        at -= 1
    apart = at == place - 1 and kind_at(marks, at) is Kind.COMMA
    if apart:
        at -= 1
    if (mark.text in _OPENING or apart) and not _opens_part(marks, at):
        return False
    closed = ends_part(marks, place) and not (apart and kind_at(marks, place + 1) in (Kind.COMMA, Kind.QUERY))
    return closed and at >= 0 and marks[at].kind is Kind.NAME


def closes_list(marks: Sequence[Mark], place: int) -> bool:
    """`chins 8, 7, none`, `chins 8 7 x`: no set more, at the end of a list of them."""
    said = marks[place].kind in (Kind.X, Kind.SKIP, Kind.SKIPPED) and marks[place].text in ("x", "skip", "skipped")
    if not (said or marks[place].text in _NONE[2:]) or not ends_part(marks, place) or marks[place].tight:
        return False
    at = place - 1
    count = 0
    entry = at - (kind_at(marks, at) is Kind.COMMA)
    if not said and [m.kind for m in marks[max(0, entry - 2) : entry + 1]] == [Kind.NUM, Kind.X, Kind.NUM]:
        return False  # `95x5, none`: nothing was left
    while kind_at(marks, at) in (Kind.NUM, Kind.COMMA, Kind.X):
        count += kind_at(marks, at) is Kind.NUM
        at -= 1
    return count > 1 and kind_at(marks, at) in (Kind.NAME, None)


_OPENING = ("out", "zero", "nil", "pass")
"""Words that say so only of names that open their part."""
_NONE = ("nope", "out", "nah", "naw", "nay", "none", "zero", "zilch", "nada", "nothing", "negative", "nah mate", "nil",
         "pass", "🚫", "⛔", "👎")  # fmt: skip


def crossed_names(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int]]:
    """The name before a cross, or those that are joined there: `curls + planks = nope`; and the places used."""
    at = place - 1
    while marks[at].kind is not Kind.NAME:
        at -= 1
    first = at
    while first > 1 and marks[first - 1].kind in (Kind.AND, Kind.PLUS) and marks[first - 2].kind is Kind.NAME:
        first -= 2
    return [m for m in marks[first : at + 1] if m.kind is Kind.NAME], set(range(first, place + 1))


def _opens_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether a name stands first in its part: `hypers out`, not `sorted the hypers out`."""
    while place > 0 and (marks[place - 1].text in ("the", "my", "so", "and", "as for", "then")
                         or (place > 1 and marks[place - 1].kind in (Kind.AND, Kind.PLUS)
                             and marks[place - 2].kind is Kind.NAME)):  # fmt: skip
        place -= 1 + (marks[place - 2].kind is Kind.NAME)
    return place <= 0 or marks[place - 1].kind in PART_ENDS
