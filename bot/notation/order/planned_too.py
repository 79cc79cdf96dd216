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


def same_too(marks: Sequence[Mark]) -> list[Mark]:
    """`second set the same, third too`: the same set again for the one that is named."""
    out: list[Mark] = []
    same: Mark | None = None
    for part in _parts(marks):
        kinds = [m.kind for m in part]
        if Kind.SAME in kinds and (Kind.ORD in kinds or Kind.SET in kinds):
            same = part[kinds.index(Kind.SAME)]
        elif same is not None and _is_set_too(part):
            too = next(i for i, m in enumerate(part) if set(m.text.split()) & _TOO_WORDS)
            out += [replace(m, kind=Kind.SAME, text="same") if i == too else m for i, m in enumerate(part)]
            continue
        elif any(k not in _PARTS and k is not Kind.FILL for k in kinds):
            same = None
        out += part
    return out


_TOO_WORDS = frozenset(("too", "also", "well", "ditto", "likewise"))


def _is_set_too(part: Sequence[Mark]) -> bool:
    """`third too`, `set 3 as well`: the number of a set and such a word, and nothing else."""
    rest = [m for m in part if m.kind not in _PARTS and m.kind is not Kind.FILL]
    kinds = [m.kind for m in rest]
    named = kinds in ([Kind.ORD], [Kind.ORD, Kind.SET], [Kind.SET, Kind.NUM], [Kind.LASTSET], [Kind.LABEL])
    words = [w for m in part if m.kind not in _PARTS for w in m.text.split()]
    return named and (words[-1] in _TOO_WORDS or "also" in words)


def _parts(marks: Sequence[Mark]) -> list[list[Mark]]:
    """The marks part by part, each with the mark that ends it."""
    parts: list[list[Mark]] = [[]]
    for mark in marks:
        parts[-1].append(mark)
        if mark.kind in _PARTS:
            parts.append([])
    return [p for p in parts if p]
