"""An exercise that went like the one before it, as planned: `bench as planned. rdls too`, `same with the rows`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

TOO = ("too", "also", "likewise", "well", "same", Kind.SAME)
"""What such a part holds beside its name."""
_LINKS = frozenset((Kind.FILL, Kind.WAS, Kind.WITH, Kind.FOR, Kind.SAME, Kind.AND))
_PARTS = (*EDGES, Kind.AND, Kind.THEN)


def planned_too(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `as planned` said of such an exercise as well."""
    out: list[Mark] = []
    planned: Mark | None = None
    for part in _parts(marks):
        kinds = [m.kind for m in part]
        if Kind.PLANNED in kinds:
            planned = part[kinds.index(Kind.PLANNED)] if Kind.NAME in kinds else None
        elif planned is not None and kinds.count(Kind.NAME) == 1 and _says_too(part):
            name = part[kinds.index(Kind.NAME)]
            edge = part[-1:] if kinds[-1] in _PARTS else []
            last = part[-1 - len(edge)]
            out += [name, replace(planned, start=max(name.end, last.start), end=max(name.end, last.end)), *edge]
            continue
        elif any(k not in _PARTS for k in kinds):
            planned = None
        out += part
    return out


def _says_too(part: Sequence[Mark]) -> bool:
    """`rdls too`, `curls as well`, `the same with the bench`, and nothing else."""
    rest = [m for m in part if m.kind is not Kind.NAME and m.kind not in EDGES]
    told = {w for m in rest for w in m.text.split()}
    return all(m.kind in _LINKS for m in rest) and bool(told & {"too", "also", "likewise", "well", "same"})


def _parts(marks: Sequence[Mark]) -> list[list[Mark]]:
    """The marks part by part, each with the mark that ends it."""
    parts: list[list[Mark]] = [[]]
    for mark in marks:
        parts[-1].append(mark)
        if mark.kind in _PARTS:
            parts.append([])
    return [p for p in parts if p]
