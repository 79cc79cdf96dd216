"""Fields of a form: what a number counts, said before it: `kg 55 reps 12`, `weight: 60 reps: 5 sets: 3`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

WEIGHTS = ("weight", "load", "wt", "weights")
_UNITS = (Kind.KG, Kind.LB)
_TIMES_COUNT = 3
"""How many times the repetitions a load must be for a unit behind them to be its own; `20x12 kg` is of twelve."""
_JOINTS = (Kind.COLON, Kind.DASH, Kind.WAS)


def fields(marks: list[Mark]) -> list[Mark]:
    """The marks with each number before what it counts."""
    out = _loads(_behind_counts(marks))
    for place in range(len(out) - 1):
        mark = out[place]
        at = place + 1
        while kind_at(out, at) in _JOINTS:
            at += 1
        if kind_at(out, at) is Kind.NUM and _leads(out, place, at):
            out[place : at + 1] = [out[at], mark, *(replace(m, kind=Kind.GAP) for m in out[place + 1 : at])]
    return out


def _behind_counts(marks: list[Mark]) -> list[Mark]:
    """`135x7 lbs`, `60x7 kilos not pounds`: the unit of the load, which stands behind the repetitions."""
    out = list(marks)
    for place in range(3, len(out)):
        entry = [m.kind for m in out[place - 3 : place]]
        if out[place].kind not in _UNITS or entry != [Kind.NUM, Kind.X, Kind.NUM]:
            continue
        load, count = out[place - 3].value or 0, out[place - 1].value or 0
        if load < _TIMES_COUNT * count or kind_at(out, place - 4) in (Kind.X, Kind.NUM):
            continue
        out[place - 2 : place + 1] = [out[place], out[place - 2], out[place - 1]]
        if kind_at(out, place + 1) is Kind.NOT and kind_at(out, place + 2) in _UNITS:
            out[place + 1 : place + 3] = [replace(m, kind=Kind.GAP) for m in out[place + 1 : place + 3]]
    return out


def _loads(marks: list[Mark]) -> list[Mark]:
    """`reps 5 weight 60`: a load that follows its repetitions is at them."""
    out = list(marks)
    for place in range(1, len(out)):
        at = place + 1
        while kind_at(out, at) in _JOINTS:
            at += 1
        field = out[place].text in WEIGHTS and kind_at(out, at) is Kind.NUM
        if field and kind_at(out, place - 1) in (Kind.NUM, Kind.COMMA) and _counted(out, place):
            out[place] = replace(out[place], kind=Kind.AT, text="at")
            out[place + 1 : at] = [replace(m, kind=Kind.GAP) for m in out[place + 1 : at]]
            if kind_at(out, place - 1) is Kind.COMMA:
                out[place - 1] = replace(out[place - 1], kind=Kind.FILL)
    return out


def _counted(marks: Sequence[Mark], place: int) -> bool:
    """Whether the number before was that of `reps`, said before it."""
    back = [m.kind for m in marks[max(0, place - 4) : place] if m.kind not in (*_JOINTS, Kind.COMMA)]
    return back[-2:] == [Kind.REPS, Kind.NUM]


def _leads(marks: Sequence[Mark], place: int, at: int) -> bool:
    """Whether the mark at `place` says what the number at `at` counts."""
    mark, before, after = marks[place], kind_at(marks, place - 1), kind_at(marks, at + 1)
    field = place > 1 and any(m.text in WEIGHTS for m in marks[max(0, place - 3) : place - 1])
    if before is Kind.NUM and (not field or mark.kind in _UNITS):
        return False
    match mark.kind:
        case Kind.KG | Kind.LB if mark.text not in ("k", "#"):
            return after not in (Kind.KG, Kind.LB) or kind_at(marks, at + 2) is Kind.NUM
        case Kind.REPS if mark.text in ("reps", "repetitions"):
            return after not in (Kind.X, Kind.SETS)
        case Kind.SETS if mark.text == "sets":
            return at > place + 1 and after not in (Kind.X, Kind.KG, Kind.LB, Kind.REPS)
        case _:
            return False
