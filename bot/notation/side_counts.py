"""Both sides of one set that is named: `second set 5 and 5`, `set 2: 5/4`; and talk of repetitions.

Only of an exercise that works its sides apart. `last two on the right were ugly` speaks of repetitions, not of sets.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.side_efforts import SIDES, is_sided
from bot.notation.tagging.plurals import PLURALS
from bot.notation.tokens import Mark

_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AT, Kind.WITH, Kind.RPE, Kind.RIR, Kind.EACH)
_LOADS = (Kind.KG, Kind.LB, Kind.X, Kind.FOR, Kind.S, Kind.COLON)
_LITTLE = (Kind.COMMA, Kind.COLON, Kind.WAS, Kind.FILL)
_FEW = frozenset(["two", "2", "three", "3", "couple", "few", "four", "4", "ones", "reps", "of"])
_TELLS = (Kind.NUM, Kind.SAME, Kind.PLANNED, Kind.CLOCK, Kind.BODY, Kind.DONE)
_PARTS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)


def with_side_counts(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with the two sides of such a set told apart, and without such talk."""
    out = _without_last_reps(list(marks))
    named = [i for i, m in enumerate(out) if _names_set(out, i)]
    if len(named) != 1 or not is_sided(out, named[0], record, under):
        return out
    at = _past_name(out, named[0])
    if kind_at(out, at) is Kind.NUM and kind_at(out, at + 1) in _LOADS:
        at += 1
        while kind_at(out, at) in (*_LOADS, Kind.COMMA):
            at += 1
    kinds = [kind_at(out, at + n) for n in range(3)]
    if kinds[:1] != [Kind.NUM] or kinds[1] not in (Kind.AND, Kind.SLASH, Kind.PLUS) or kinds[2] is not Kind.NUM:
        return out
    if kind_at(out, at + 3) not in _ENDS:
        return out
    one, two = out[at], out[at + 2]
    left = Mark(Kind.LEFT, "left", one.start, one.start)
    right = Mark(Kind.RIGHT, "right", two.start, two.start)
    out[at : at + 3] = [left, one, replace(out[at + 1], kind=Kind.COMMA), right, two]
    return out


def _names_set(marks: Sequence[Mark], at: int) -> bool:
    """`second set`, `set 2`, `last set`: words that name one set."""
    mark = marks[at]
    if mark.kind is Kind.SET:
        return kind_at(marks, at + 1) is Kind.NUM and kind_at(marks, at - 1) is not Kind.ORD
    if mark.kind is Kind.ORD:
        return kind_at(marks, at + 1) is Kind.SET or text_at(marks, at + 1) == "one"
    return mark.kind is Kind.LASTSET and mark.text.split(" ")[-1] in ("set", "one")


def _past_name(marks: Sequence[Mark], at: int) -> int:
    at += 1 if marks[at].kind is Kind.LASTSET else 2
    while kind_at(marks, at) in _LITTLE:
        at += 1
    return at


def _without_last_reps(out: list[Mark]) -> list[Mark]:
    """`last two on the right were ugly`: no sets, where nothing is told of them in numbers."""
    for place, mark in enumerate(out):
        if mark.kind not in (Kind.LASTREP, Kind.LASTSET) or "last" not in mark.text.split():
            continue
        at = place + 1
        while text_at(out, at) in _FEW:
            at += 1
        if at == place + 1 or not any(m.kind is Kind.NUM for m in out[:place]):
            continue
        side = kind_at(out, at) in SIDES
        end = next((i for i in range(at, len(out)) if out[i].kind in _PARTS), len(out))
        part = out[at + side : end]
        tells = any(m.kind in _TELLS or m.text in PLURALS or m.text + "s" in PLURALS for m in part)
        spoken = bool(part) and part[0].kind in (Kind.WAS, Kind.FILL, Kind.WORD) and not tells
        if spoken and (side or part[0].kind is Kind.WAS):
            out[place:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[place:end]]
    return out
