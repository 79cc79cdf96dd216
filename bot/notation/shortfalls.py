"""So much of what was planned: `did 400 of the last 500`, `held 22 of the 30 seconds`, `4 and a half so call it 4`.

What was planned has no bearing; the words that say of which set it was go before what was done. `3 of 8` stays, which
is three sets, and `6 out of 10`, which rates.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.masking import unsaid
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_OF = frozenset(["of", "into", "outta"])
_WHICH = (Kind.LASTSET, Kind.LASTREP, Kind.ORD)
_LITTLE = frozenset(["the", "my", "that", "planned", "those", "a", "prescribed"])
_LAST = frozenset(["final", "last"])
_COUNTED = (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.M)
_LOADS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.X, Kind.FOR, Kind.PLUS, Kind.DASH, Kind.SLASH)
_TEN = 10
"""The whole of `8 out of 10`, which rates where nothing else says that it counts."""


def with_shortfalls(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks without what was planned of a set of which less was done."""
    out = _without_halves(list(marks))
    if not any(m.text in _OF for m in out):
        return out
    planned = {reps for e in exercises for s in e.sets for reps in (s.reps.low, s.reps.high)}
    most = max((len(e.sets) for e in exercises), default=0)
    for place in range(len(out) - 2, -1, -1):
        if out[place].kind is not Kind.NUM or kind_at(out, place - 1) is Kind.SLASH:
            continue
        unit = place + 1 + (kind_at(out, place + 1) in _COUNTED)
        of = unit + (text_at(out, unit) == "out")
        if text_at(out, of) not in _OF:
            continue
        whole = of + 1
        while text_at(out, whole) in _LITTLE or text_at(out, whole) in _LAST or kind_at(out, whole) in _WHICH:
            whole += 1
        if _is_part(out[place], out[whole : whole + 1], planned) and kind_at(out, whole + 1) not in _LOADS:
            measured = kind_at(out, whole + 1) in _COUNTED
            plain = whole == of + 1 and not measured
            value = out[place].value or 0
            if plain and (value <= most or out[whole].value == _TEN):
                continue
            which = [m for m in out[of + 1 : whole] if m.kind in _WHICH or m.text in _LAST]
            kept = [replace(m, kind=Kind.LASTSET) if m.text in _LAST else m for m in which]
            counted = out[whole + 1 : whole + 2] if measured else out[place + 1 : unit]
            out[place : whole + 1 + measured] = [*kept, out[place], *counted]
    return out


def _without_halves(marks: list[Mark]) -> list[Mark]:
    """`70 for 4 and a half, so lets call it 4`: four."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or mark.value is None or mark.value == int(mark.value):
            continue
        at = place + 1
        while kind_at(marks, at) in (Kind.FILL, Kind.COMMA, Kind.FINISH, Kind.WORD):
            at += 1
        so = {w for m in marks[place + 1 : at] for w in m.text.split()} & _CALLED
        if so and kind_at(marks, at) is Kind.NUM and marks[at].value == int(mark.value):
            loaded = kind_at(marks, at + 1) in (Kind.AT, Kind.WITH)
            gone = range(place, at) if loaded else range(place + 1, at + 1)
            whole = replace(mark, value=marks[at].value)
            return unsaid([*marks[:place], whole, *marks[place + 1 :]], gone)
    return marks


_CALLED = frozenset(["so", "call", "count", "say", "calling", "counting"])


def _is_part(part: Mark, whole: Sequence[Mark], planned: set[int]) -> bool:
    """Whether a number is less than another, which is planned."""
    if not whole or whole[0].kind is not Kind.NUM or whole[0].value is None or part.value is None:
        return False
    return whole[0].value in planned and 0 < part.value < whole[0].value
