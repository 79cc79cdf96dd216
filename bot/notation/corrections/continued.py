"""All minis (or drops) of a set told again: `minis were 5 4 3`."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.answer import Source
from bot.notation.corrections.meant import Correction
from bot.notation.corrections.revised import Values, apply_values
from bot.notation.grounds import Ground, Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Stage


def with_one_changed(rows: Sequence[Told], stage: Stage | None, number: int, values: Values) -> list[Told]:
    """A set with one of its continuations as it is told again: `last mini was a 2` (-1), `second drop was 22.5` (1)."""
    places = [i for i, t in enumerate(rows) if t.row.stage is stage]
    out = list(rows)
    out[places[number]] = apply_values([out[places[number]]], replace(values, stage=stage))[0]
    return out


def which_continuation(shaped: Sequence[Mark], many: int) -> int | None:
    """Which of so many minis (or drops) is named: `last mini`, `the second drop`; `None` where none is."""
    for before, mark in pairwise(shaped):
        if mark.kind not in (Kind.MINI, Kind.DROP):
            continue
        if before.kind in (Kind.LASTREP, Kind.LASTSET):
            return -1
        ordinal = before.kind in (Kind.ORD, Kind.LABEL) and before.value is not None
        return int(before.value or 0) - 1 if ordinal and 0 < int(before.value or 0) <= many else None
    return None


def with_continuations(rows: Sequence[Told], said: Correction) -> list[Told]:
    """A set with its continuations as they are told again; each keeps the load of the one in its place."""
    old = [t for t in rows if t.row.stage is said.stage]
    out = [t for t in rows if t.row.stage is not said.stage]
    for place, (reps, at) in enumerate(said.counts):
        was = old[min(place, len(old) - 1)]
        grounds = replace(was.grounds, reps=Ground(Source.SAID, at))
        out.append(Told(replace(was.row, reps=reps), grounds))
    return out
