"""All minis (or drops) of a set told again: `minis were 5 4 3`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Source
from bot.notation.corrections.meant import Correction
from bot.notation.grounds import Ground, Told


def with_continuations(rows: Sequence[Told], said: Correction) -> list[Told]:
    """A set with its continuations as they are told again; each keeps the load of the one in its place."""
    old = [t for t in rows if t.row.stage is said.stage]
    out = [t for t in rows if t.row.stage is not said.stage]
    for place, (reps, at) in enumerate(said.counts):
        was = old[min(place, len(old) - 1)]
        grounds = replace(was.grounds, reps=Ground(Source.SAID, at))
        out.append(Told(replace(was.row, reps=reps), grounds))
    return out
