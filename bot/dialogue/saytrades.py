"""What was given for time, in words: one line for client and coach."""

from collections.abc import Iterator

from bot.dialogue.phrases import joined, names_line
from bot.saying import Line, line
from bot.training.plan import PlannedSession
from bot.training.replanned import Trade, Trading


def trades_line(trades: tuple[Trade, ...], before: PlannedSession) -> Line:
    """`Plank, Cable pushdown left out; one set of Leg curl left out; Row, Press in turn`. To be asked where there is
    something; `before` is the plan that it was given of."""
    return joined(list(_parts(trades, before)), "trades-and-then")


def _parts(trades: tuple[Trade, ...], before: PlannedSession) -> Iterator[Line]:
    planned = {e.name: len(e.sets) for e in before.exercises}
    lost = [t for t in trades if t.kind not in (Trading.PAIRED, Trading.TURNED)]
    whole = [t.exercises[0] for t in lost if t.sets >= planned.get(t.exercises[0], 0)]
    if whole:
        yield line("trade-all", names=names_line(whole))
    some = [t for t in lost if t.exercises[0] not in whole]
    for count in sorted({t.sets for t in some}):
        names = [t.exercises[0] for t in some if t.sets == count]
        yield line("trade-sets", names=names_line(names), count=count, exercises=len(names))
    yield from (line("trade-paired", names=names_line(t.exercises)) for t in trades if t.kind is Trading.PAIRED)
    turned = [t.exercises[0] for t in trades if t.kind is Trading.TURNED]
    if turned:
        yield line("trade-turned", names=names_line(turned), count=len(turned))
