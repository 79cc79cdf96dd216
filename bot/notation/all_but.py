"""`60x10 for all but the last, 8 there`, `all but the last 12s, last 9`: all sets, then what the one apart was.

What all were goes before the words that say of which they are not; one that is left out and told by nothing is asked
about.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BUT = frozenset(["but", "except", "apart from", "bar", "besides", "excepting"])
_ONE = (Kind.LASTSET, Kind.LASTREP, Kind.ORD)
_ENTRY = (Kind.NUM, Kind.S, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.AT, Kind.WITH)
_THERE = frozenset(["there", "it", "that", "this", "one", "only", "though", "tho"])
_TOLD = (Kind.NUM, Kind.WORD, Kind.SKIP, Kind.SKIPPED, Kind.PLANNED, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.FAILED)


def with_all_but(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words in that order."""
    out = list(marks)
    for place in range(len(marks) - 2):
        if out[place].kind is not Kind.ALL or not _is_but(out[place + 1]):
            continue
        at = place + 2
        while kind_at(out, at) is Kind.FILL:
            at += 1
        if kind_at(out, at) not in _ONE:
            continue
        end = at + 1
        while kind_at(out, end) is Kind.SET or text_at(out, end) == "one":
            end += 1
        stop = end
        while kind_at(out, stop) in _ENTRY:
            stop += 1
        told = any(m.kind is Kind.NUM for m in out[end:stop])
        if told and kind_at(out, place - 1) is not Kind.NUM and not _is_told(out, place) and _tells(out, stop):
            but = replace(out[place + 1], kind=Kind.EXCEPT, text="but")
            out[place:stop] = [*out[end:stop], out[place], but, *_without_name(out[at:end], out, stop)]
        elif not _tells(out, end):
            out[at] = replace(out[at], kind=Kind.SLIP)
        else:
            out[place + 1] = replace(out[place + 1], kind=Kind.EXCEPT, text="but")
        return out
    return out


def past_there(marks: Sequence[Mark], at: int) -> int:
    """Behind what only says once more which set it was: `there`, `on that one`, `on the last`."""
    link = at + (kind_at(marks, at) in (Kind.AT, Kind.WITH, Kind.FOR) and text_at(marks, at) != "@")
    end = link
    while (kind_at(marks, end) is Kind.FILL and text_at(marks, end) in _THERE) or (
        link > at and end == link and kind_at(marks, end) in (Kind.LASTREP, Kind.LASTSET)
    ):
        end += 1
    return end if end > link else at


def _is_but(mark: Mark) -> bool:
    return mark.kind is Kind.EXCEPT or mark.text in _BUT


def _is_told(marks: Sequence[Mark], place: int) -> bool:
    """Whether what all were stands straight before the words."""
    at = place - 1
    while kind_at(marks, at) in (Kind.FILL, Kind.S, Kind.REPS, Kind.KG, Kind.LB):
        at -= 1
    return kind_at(marks, at) is Kind.NUM


def _tells(marks: Sequence[Mark], at: int) -> bool:
    """Whether something is told behind the words, before the message turns to another exercise."""
    rest = marks[at : at + 12]
    end = next((i for i, m in enumerate(rest) if m.kind in (Kind.LINE, Kind.BREAK, Kind.NAME)), len(rest))
    return any(m.kind in _TOLD for m in rest[:end])


def _without_name(name: Sequence[Mark], marks: Sequence[Mark], at: int) -> list[Mark]:
    """The words that name the set apart, unless they follow once more: `all but the last 12s, last 9`."""
    again = [m.kind for m in marks[at : at + 3] if m.kind not in (Kind.COMMA, Kind.AND, Kind.FILL)]
    return [replace(m, kind=Kind.FILL) for m in name] if again and again[0] in _ONE else list(name)
