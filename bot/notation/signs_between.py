"""Signs that part exercises as a line does: `rdl 90 10 9 -> curls 25: 12 11`, `rows 60x8 + 12, 12 push ups`.

An arrow before an exercise with its sets, and a plus before sets that name theirs behind them, where sets or talk stand
before. An arrow from one bare exercise to the next tells of a swap, and stays.
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

NEEDS = (Kind.ARROW, Kind.PLUS, Kind.SLASH)
_DOING = frozenset(words("did got managed hit then next also and finally finished lastly"))
_LEADS = (Kind.COLON, Kind.COMMA, Kind.DASH, Kind.WITH, Kind.AT, Kind.BODY, Kind.ALL, Kind.X, Kind.LEADX, Kind.FILL)
_LISTED = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.X, Kind.KG, Kind.LB, Kind.FOR, Kind.S, Kind.AT, Kind.WITH,
           Kind.REPS, Kind.EACH)  # fmt: skip
_LEAST = 2
"""Numbers of sets that name their exercise behind them."""


def with_signs_as_ends(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such signs, and a dash that leads to one, as the end of a line."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind in NEEDS and _is_end(marks, place):
            while out and out[-1].kind in (Kind.DASH, Kind.COLON, Kind.STOP):
                out.pop()
            out.append(Mark(Kind.LINE, "\n", mark.start, mark.end))
        else:
            out.append(mark)
    return out


def _is_end(marks: Sequence[Mark], place: int) -> bool:
    start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind in EDGES), 0)
    before = marks[start:place]
    told = any(m.kind in (Kind.NUM, Kind.CLOCK) for m in before)
    bare = any(m.kind is Kind.NAME for m in before) and not told
    if not before or bare:
        return False
    if marks[place].kind is Kind.SLASH and marks[place].tight:
        return False
    at = place + 1
    while text_at(marks, at) in _DOING:
        at += 1
    return _names_behind(marks, at) or (marks[place].kind is not Kind.SLASH and _opens_sets(marks, at))


def _opens_sets(marks: Sequence[Mark], at: int) -> bool:
    """Whether an exercise with its sets starts there."""
    if kind_at(marks, at) is not Kind.NAME:
        return False
    at += 1
    while kind_at(marks, at) in _LEADS:
        at += 1
    return kind_at(marks, at) in (Kind.NUM, Kind.CLOCK)


def _names_behind(marks: Sequence[Mark], at: int) -> bool:
    """Whether sets start there that name their exercise behind them: `12, 12 push ups`, `25kg x 11, 11 on curls`."""
    if at < len(marks) and marks[at].tight:
        return False
    end = at
    while kind_at(marks, end) in _LISTED:
        end += 1
    numbers = sum(m.kind is Kind.NUM for m in marks[at:end])
    ends = kind_at(marks, end + 1) in (None, *EDGES, Kind.OPEN, Kind.DASH, Kind.PLUS, Kind.ARROW, Kind.AT, Kind.FILL)
    return numbers >= _LEAST and kind_at(marks, at) is Kind.NUM and kind_at(marks, end) is Kind.NAME and ends
