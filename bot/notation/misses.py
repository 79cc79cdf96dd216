"""Repetitions that failed, in other words: `the 8th got stuck`, `missed the 8th on the last`, `failed the 8th so 7`.

All become `failed the 8th`; the words that say of which set it was go before it, and what only says it once more goes.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_EARLIEST = 3
"""An earlier repetition that fails is told otherwise; `missed the second` may be a set."""
_MISSED = frozenset(words("missed failed lost bailed"))
_STOPPED = frozenset(words("stuck stalled failed died"))
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR, Kind.FILL)
_LAST = ("last", "final", "set", "one")
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND, Kind.THEN, Kind.CLOSE, Kind.AT, Kind.QUERY)
_SAID_AGAIN = frozenset(words("so thats leaving left making"))


def with_misses(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words in that form."""
    out = list(marks)
    if not any(m.kind is Kind.ORD for m in out):
        return out
    at = 0
    while at < len(out):
        _name_failure(out, at)
        if out[at].kind is Kind.FAILED:
            _say_once(out, at)
            at = _put_behind_set(out, at)
        at += 1
    return out


def _name_failure(out: list[Mark], at: int) -> None:
    """`the 8th rep got stuck`, `I missed the 8th`: failed the 8th."""
    if out[at].kind is Kind.ORD and (out[at].value or 0) >= _EARLIEST:
        end = at + 1 + (kind_at(out, at + 1) is Kind.REPS)
        stop = end
        while kind_at(out, stop) in (Kind.FILL, Kind.WAS) and not set(text_at(out, stop).split()) & _STOPPED:
            stop += 1
        known = kind_at(out, at - 1) in (Kind.FAILED, Kind.SET) or kind_at(out, end) is Kind.SET
        said = bool(set(text_at(out, stop).split()) & _STOPPED) and kind_at(out, stop) in (Kind.WORD, Kind.FILL)
        if said and not known and kind_at(out, stop + 1) in _ENDS:
            failed = replace(out[at], kind=Kind.FAILED, text="failed", value=None, end=out[at].start)
            gone = [replace(m, kind=Kind.GAP) for m in out[end : stop + 1]]
            out[at : stop + 1] = [failed, *out[at:end], *gone]
        return
    if out[at].kind not in (Kind.SKIP, Kind.SKIPPED) or not set(out[at].text.split()) & _MISSED:
        return
    rep = at + 1
    while kind_at(out, rep) is Kind.FILL:
        rep += 1
    counted = kind_at(out, rep) is Kind.ORD and (out[rep].value or 0) >= _EARLIEST
    if counted and kind_at(out, rep + 1) not in (Kind.SET, Kind.NAME, Kind.WEAK) and text_at(out, rep + 1) != "one":
        out[at] = replace(out[at], kind=Kind.FAILED, text="failed the")


def _say_once(out: list[Mark], at: int) -> None:
    """`failed the 8th so 7`: that seven were done is said already."""
    rep = at + 1
    said = rep + 1 + (kind_at(out, rep + 1) is Kind.REPS)
    if kind_at(out, rep) is not Kind.ORD or not set(text_at(out, said).split()) & _SAID_AGAIN:
        return
    number = said
    while kind_at(out, number) in (Kind.FILL, Kind.WAS, Kind.LEFT):
        number += 1
    end = number + 1 + (kind_at(out, number + 1) is Kind.REPS)
    if (
        kind_at(out, number) is Kind.NUM
        and kind_at(out, end) in _ENDS
        and out[number].value == (out[rep].value or 0) - 1
    ):
        out[said:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[said:end]]


def _put_behind_set(out: list[Mark], at: int) -> int:
    """`missed the 8th on the last bench set at 60`: the last set, 60, failed the 8th; where to go on."""
    end = at + 2 + (kind_at(out, at + 2) is Kind.REPS)
    link = end
    while kind_at(out, link) in _LINKS:
        link += 1
    if kind_at(out, at + 1) is not Kind.ORD or link == end:
        return at
    last = kind_at(out, link) in (Kind.LASTSET, Kind.LASTREP) and text_at(out, link).split()[-1] in _LAST
    numbered = kind_at(out, link) is Kind.ORD and out[link].text != out[at + 1].text
    stop = link + 1
    while kind_at(out, stop) in (Kind.NAME, Kind.WEAK, Kind.SET) or text_at(out, stop) == "one":
        stop += 1
    if not (last or numbered) or kind_at(out, stop) not in _ENDS:
        return at
    names = [m for m in out[link:stop] if m.kind in (Kind.NAME, Kind.WEAK)]
    which = replace(out[link], kind=Kind.LASTSET if last else Kind.LABEL, text="last one")
    load = out[stop : stop + 2] if kind_at(out, stop) is Kind.AT and kind_at(out, stop + 1) is Kind.NUM else []
    unit = [out[stop + 2]] if load and kind_at(out, stop + 2) in (Kind.KG, Kind.LB) else []
    said = [*names, which, *load[1:], *unit, *out[at:end]]
    out[at : stop + len(load) + len(unit)] = said
    return at + len(said)
