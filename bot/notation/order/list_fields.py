"""What is told beside a list of repetitions, put where the grammar takes it.

`last one rpe 8, 90: 10 9 8`: the effort of the last set behind the list. `10, 9, 8, 3 sets, 90 kg`: how many they are
is told by the list itself.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import EDGES, kind_at, parts_between, text_at
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
_LEADS = (Kind.AT, Kind.WITH)
_UNITS = (Kind.KG, Kind.LB)
_WEIGHTS = ("weight", "load", "weights", "loaded")


def list_fields(marks: list[Mark]) -> list[Mark]:
    """The marks with such words in their place."""
    return _counted(_last_behind(marks))


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
        if sum(m.kind is Kind.NUM for m in rest) < SEVERAL or end >= len(marks):
            return marks
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


def _counted(marks: list[Mark]) -> list[Mark]:
    """`10, 9, 8, 3 sets, 90 kg`: how many sets, where so many repetitions are told one by one."""
    out = list(marks)
    for start, end in parts_between(marks, _PARTS):
        said = [i for i in range(start, end) if marks[i].kind is not Kind.FILL]
        counted = [marks[i].kind for i in said] == [Kind.NUM, Kind.SETS]
        counts = [marks[i].value or 0 for i in _of_name(marks, start, end) if _is_count(marks, i)] if counted else []
        if counts and len(counts) == marks[said[0]].value and max(counts) <= SEVERAL * min(counts):
            for place in said:
                out[place] = replace(marks[place], kind=Kind.GAP, value=None, parts=())
    return out


def _of_name(marks: Sequence[Mark], start: int, end: int) -> range:
    """The places of what is told of one name around a part: up to the next names on both sides."""
    before = next((i for i in range(start, -1, -1) if i < len(marks) and marks[i].kind is Kind.NAME), -1)
    after = next((i for i in range(end, len(marks)) if marks[i].kind is Kind.NAME), len(marks))
    return range(before + 1, after)


def _is_count(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number may be repetitions by what stands beside it."""
    after, before = kind_at(marks, place + 1), kind_at(marks, place - 1)
    led = before in (*_LEADS, Kind.RPE, Kind.RIR, Kind.X) or text_at(marks, place - 1) in _WEIGHTS
    loads = after is Kind.NUM and kind_at(marks, place + 2) is Kind.REPS
    told = loads or after in (*_UNITS, Kind.SETS, Kind.SET, Kind.X, Kind.FOR, Kind.ALL, Kind.COLON, *_EFFORTS)
    return marks[place].kind is Kind.NUM and not led and not told
