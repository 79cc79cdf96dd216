"""A sentence of talk with one number that no set of the exercise can have, beside a sentence that tells a whole set."""

from collections.abc import Callable, Sequence
from itertools import pairwise

from bot.notation.clauses import parts_between
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_OF_TALK = frozenset(
    (Kind.WORD, Kind.FILL, Kind.WAS, Kind.AT, Kind.FOR, Kind.WITH, Kind.TO, Kind.COMMA, Kind.NOT, Kind.NO, Kind.NUM,
     Kind.KG, Kind.LB, Kind.GAP, Kind.OTHERTIME, Kind.OTHERPERSON, Kind.NAME, Kind.WEAK, Kind.COULD, Kind.AND,
     Kind.COLON, Kind.MORE, Kind.UNDONE, Kind.PLATES)
)  # fmt: skip
_LEAST = 4
"""Words of a sentence that tells something."""


def around(marks: Sequence[Mark], is_likely: Callable[[Mark], bool]) -> set[int]:
    """The places of such numbers. `is_likely`: whether a number may be a load or a count of the exercise at hand."""
    sentences = [s for s in parts_between(marks, _ENDS) if s[0] < s[1]]
    whole = [s for s in sentences if _is_whole(marks, s)]
    out: set[int] = set()
    for start, end in sentences:
        if not whole or (start, end) in whole:
            continue
        part = marks[start:end]
        numbers = [i for i in range(start, end) if marks[i].kind is Kind.NUM]
        spoken = sum(m.kind in (Kind.WORD, Kind.FILL, Kind.WAS, Kind.AT) for m in part)
        talks = any(m.kind in (Kind.WORD, Kind.OTHERPERSON) for m in part) and spoken >= _LEAST
        if len(numbers) == 1 and talks and all(m.kind in _OF_TALK for m in part) and not is_likely(marks[numbers[0]]):
            out |= {i for i in range(start, end) if marks[i].kind in (Kind.NUM, Kind.KG, Kind.LB, Kind.NAME, Kind.WEAK)}
    return out


def told_again(marks: Sequence[Mark]) -> set[int]:
    """`the rack only had 60 kg of plates. 60x6`: a load that talk tells, and a whole set after it that has it too."""
    sentences = [s for s in parts_between(marks, _ENDS) if s[0] < s[1]]
    out: set[int] = set()
    for (start, end), after in pairwise(sentences):
        numbers = [i for i in range(start, end) if marks[i].kind is Kind.NUM]
        entry = next((m for m in marks[slice(*after)] if m.kind is Kind.NUM), None)
        spoken = sum(m.kind in (Kind.WORD, Kind.FILL, Kind.WAS, Kind.AT) for m in marks[start:end])
        talks = spoken >= _LEAST and all(m.kind in _OF_TALK for m in marks[start:end])
        same = len(numbers) == 1 and entry is not None and entry.value == marks[numbers[0]].value
        if same and talks and _is_whole(marks, after):
            out |= {i for i in range(start, end) if marks[i].kind in (Kind.NUM, Kind.KG, Kind.LB)}
    return out


def nothing_to_drop(marks: Sequence[Mark], gone: set[int], *, is_begun: bool) -> set[int]:
    """`stripped it and did 100x5` before any set: a load taken off, no drop of a set. `is_begun`: there are sets.

    `had to drop it, 8 reps`: the bar, whatever was done before.
    """
    let_go = {
        i
        for i, m in enumerate(marks[:-2])
        if m.kind is Kind.DROP and marks[i + 1].text == "it" and marks[i + 2].kind in _ENDED and i not in gone
    }
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.DROP and i not in gone | let_go), None)
    if place is None or is_begun or any(m.kind is Kind.NUM and i not in gone for i, m in enumerate(marks[:place])):
        return let_go
    return {place} | let_go


_ENDED = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.CLOSE)


def _is_whole(marks: Sequence[Mark], sentence: tuple[int, int]) -> bool:
    """Whether a sentence tells a set with its load and repetitions."""
    kinds = [m.kind for m in marks[slice(*sentence)] if m.kind not in (Kind.KG, Kind.LB, Kind.FILL, Kind.S)]
    return any(kinds[i : i + 3] in _ENTRIES for i in range(len(kinds)))


_ENTRIES = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM], [Kind.NUM, Kind.AT, Kind.NUM])
