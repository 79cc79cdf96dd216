"""What is told beside a list of repetitions, put where the grammar takes it.

`last one rpe 8, 90: 10 9 8`: the effort of the last set behind the list.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import EDGES, parts_between
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_LAST = frozenset(["last", "final", "set", "one"])
_EFFORTS = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.RPEPOST, Kind.RIRPOST, Kind.EMPTY, Kind.LEFT)
_OF_LAST = (
    *_EFFORTS,
    Kind.NUM,
    Kind.WAS,
    Kind.FILL,
    Kind.AT,
    Kind.WITH,
    Kind.FOR,
    Kind.LASTREP,
    Kind.LASTSET,
    Kind.SET,
)
_PARTS = (*EDGES, Kind.DASH)


def list_fields(marks: list[Mark]) -> list[Mark]:
    """The marks with such words in their place."""
    return _last_behind(marks)


def _last_behind(marks: list[Mark]) -> list[Mark]:
    """`rpe 8 on the last, 10 9 8`: that effort behind the sets, where nothing but a name stands before it."""
    told = 0
    for start, end in parts_between(marks, _PARTS):
        head = 0
        while start + head < end and marks[start + head].kind in (Kind.NAME, Kind.COLON):
            head += 1
        part = marks[start + head : end]
        if any(m.kind in (Kind.NUM, Kind.BODY, Kind.SAME) for m in marks[told:start]):
            return marks
        told = start
        if not part or not _is_effort_of_last(part):
            continue
        rest = marks[end + 1 :]
        of_another = rest[:1] and rest[0].kind is Kind.NAME and (head or marks[end].kind in (Kind.STOP, Kind.LINE))
        if sum(m.kind is Kind.NUM for m in rest) < SEVERAL or end >= len(marks) or of_another:
            return marks  # `last hip thrust was rpe 9. curls 15 12`: of a set that is stored
        comma = replace(marks[end], kind=Kind.COMMA, text=",", value=None, parts=())
        while rest and rest[-1].kind in _PARTS:
            rest = rest[:-1]
        return [*marks[: start + head], *rest, comma, *part]
    return marks


def _is_effort_of_last(part: Sequence[Mark]) -> bool:
    """Whether a part is the effort of the last set and nothing else."""
    last = [m for m in part if m.kind in (Kind.LASTREP, Kind.LASTSET)]
    named = bool(last) and last[0].text.split(" ")[-1] in _LAST
    rated = any(m.kind in _EFFORTS for m in part)
    return named and rated and sum(m.kind is Kind.NUM for m in part) <= 1 and all(m.kind in _OF_LAST for m in part)
