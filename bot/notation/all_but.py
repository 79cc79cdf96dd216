"""`60x10 for all but the last, 8 there`, `all but the last 12s, last 9`: all sets, then what the one apart was.

What all were goes before the words that say of which they are not; one that is left out and told by nothing is asked
about.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

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
    out = _with_others(list(marks))
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


def _with_others(marks: list[Mark]) -> list[Mark]:
    """`7 on the last, 8s on the others`, either way round: all eights, but seven on the last."""
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.COMMA, Kind.AND, Kind.BREAK):
            continue
        start = place
        while start and (marks[start - 1].kind in _SAID or marks[start - 1].text in _OTHERS):
            start -= 1
        first = _of_which(marks[start:place])
        second = None if first is None else _of_which(marks[place + 1 :])
        if first is None or second is None or first.others is second.others:
            continue
        one, rest = (second, first) if first.others else (first, second)
        end = place + 1 + second.end
        every = replace(rest.count[0], kind=Kind.ALL, text="all", value=None, parts=(), end=rest.count[0].start)
        but = replace(mark, kind=Kind.EXCEPT, text="but")
        return [*marks[: start + first.start], every, *rest.count, but, *one.count, *one.which, *marks[end:]]
    return marks


_COUNT = (Kind.NUM, Kind.S, Kind.REPS)
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR)
_LASTS = (Kind.LASTSET, Kind.LASTREP)
_SAID = (*_COUNT, *_LINKS, Kind.FILL, Kind.THEREST, *_LASTS)
_OTHERS = frozenset(["others", "other", "rest", "the others", "the rest"])
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.RPE, Kind.RIR)


@dataclass(frozen=True, slots=True)
class _OfWhich:
    """Repetitions and which sets they are of: where their words start and end, and whether of the others."""

    start: int
    end: int
    count: list[Mark]
    which: list[Mark]
    others: bool


def _of_which(part: Sequence[Mark]) -> _OfWhich | None:
    """`8s on the others`, `7 on the last`: the first repetitions of a part that are linked so."""
    link = next((i for i, m in enumerate(part) if m.kind in _LINKS and m.text != "@"), None)
    if link is None:
        return None
    start = link
    while start and part[start - 1].kind in (Kind.S, Kind.REPS, Kind.FILL):
        start -= 1
    start -= 1
    if start < 0 or part[start].kind is not Kind.NUM:
        return None
    at = link + 1
    while kind_at(part, at) is Kind.FILL and text_at(part, at) not in _OTHERS:
        at += 1
    others = text_at(part, at) in _OTHERS or kind_at(part, at) is Kind.THEREST
    if not others and kind_at(part, at) not in _LASTS:
        return None
    end = at + 1
    while kind_at(part, end) in (Kind.SET, Kind.SETS) or text_at(part, end) in (
        "one",
        "ones",
        "two",
        "three",
        "2",
        "3",
    ):
        end += 1
    if kind_at(part, end) not in _ENDS:
        return None
    return _OfWhich(start, end, [m for m in part[start:link] if m.kind is not Kind.FILL], list(part[link:end]), others)


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
