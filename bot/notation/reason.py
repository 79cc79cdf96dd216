"""What speaks against storing sets as bound: out of reason, twice the dumbbell, a heavier drop, beyond the plan."""

from collections.abc import Sequence

from bot.notation.answer import AskKind
from bot.notation.context import Context
from bot.notation.said import Doubt, SaidSet
from bot.training.plan import Measure
from bot.training.report import Performed, Stage
from bot.training.units import Load

MOST_KG, MOST_PER_HAND_KG = 400, 100
"""Beyond these a load is asked about even where no plan says what is likely: above what all but a few people on earth
lift for repetitions, and above the heaviest dumbbells that gyms have. Common practice, no source."""
MOST_WARMING = 20
"""Repetitions of a warm-up that are in reason before any work sets, singles too (common practice, no source)."""


def check_beyond(rows: Sequence[Performed], said: Sequence[SaidSet], context: Context) -> list[Doubt]:
    """Sets after those of the plan that may be none: `5 5 5, last set a 9`, `all as planned except the last 80x4`."""
    planned = len(context.exercise.sets)
    beyond = [(r, w) for r, w in zip(rows, said, strict=True) if r.stage is Stage.WORK and (r.set or 0) > planned > 0]
    if not beyond or all(r.set != planned for r in rows):
        return []
    whole = any(w.planned for w in said)
    return [
        Doubt(AskKind.UNSURE, words.start, words.end)
        for row, words in beyond
        if words.label is None and not words.planned and (whole or _is_unlikely(row, words, said[0], context))
    ]


def _is_unlikely(row: Performed, words: SaidSet, first: SaidSet, context: Context) -> bool:
    """Whether a set beyond the plan is a bare number over its range, or one of many of too few repetitions."""
    asked = context.range_of(row.set)
    if words.same:
        return False
    if words.count > 1 and row.reps < asked.low:
        return True
    bare = (words.load is None or words.load.end <= first.end) and words.start > first.start
    return bare and row.reps > asked.high


def check_row(row: Performed, said: SaidSet, context: Context, rows: Sequence[Performed]) -> list[Doubt]:
    """What speaks against a set as bound: out of reason, twice the dumbbell, a drop that is heavier."""
    if said.same or said.planned:
        return []
    doubts: list[Doubt] = []
    here = Doubt(AskKind.OUT_OF_REASON, said.start, said.end)
    if row.stage is Stage.WORK and not context.are_reps_in_reason(row.reps, row.set):
        doubts.append(here)
    counted = context.exercise.measure is Measure.REPS
    few = counted and row.stage is Stage.WORK and row.reps * 2 < context.range_of(row.set).low
    if few and not _is_told_few(said):
        doubts.append(here)
    light = row.stage in (Stage.MINI, Stage.DROP, Stage.WARMUP)
    most = max(4 * context.range_of(row.set).high, MOST_WARMING if row.stage is Stage.WARMUP else 0)
    if light and not 0 < row.reps <= most:
        doubts.append(here)
    if row.load is None or said.load is None or said.load.load is None:
        return doubts
    place = next(i for i, other in enumerate(rows) if other is row)
    earlier = [p.load for p in (*context.worked, *(r for r in rows[:place] if r.stage is Stage.WORK))]
    planned = context.planned_load(row.set)
    if row.stage is Stage.WORK:
        if context.is_per_hand and planned is not None and not said.load.hand and row.load.kg == planned.kg * 2:
            doubts.insert(0, Doubt(AskKind.PER_HAND, said.load.start, said.load.end))
        elif _is_out_of_reason(row.load, context) or not context.is_load_in_reason(
            row.load, row.set, earlier, said.load.signed
        ):
            doubts.append(here)
    if (
        row.stage is Stage.WARMUP
        and planned is not None
        and row.load.kg == planned.kg
        and row.reps in context.range_of(row.set)
    ):
        doubts.append(Doubt(AskKind.UNSURE, said.start, said.end))
    if row.stage is Stage.WARMUP and planned is not None and row.load.kg > planned.kg * 2 and planned.kg > 0:
        doubts.append(here)
    if row.stage is Stage.DROP and earlier and earlier[-1] is not None and row.load.kg >= earlier[-1].kg:
        doubts.append(here)
    return doubts


def _is_told_few(said: SaidSet) -> bool:
    """Whether so few are told with their load, side, set or failure: `140x1`, `single at 140`, `third set only 2`.

    A bare number that is less than half of what the plan asks counts something else more often than not.
    """
    reps, load = said.words.reps, said.load
    tied = load is not None and reps is not None and 0 <= reps[0] - load.end <= _TIED
    turned = load is not None and reps is not None and len("@ ") <= load.start - reps[1] <= len(" reps with ")
    return tied or turned or said.side is not None or said.label is not None or said.rir == 0


_TIED = len(" for a ")
"""Characters between a load and its repetitions."""


def _is_out_of_reason(load: Load, context: Context) -> bool:
    return load.kg > (MOST_PER_HAND_KG if context.is_per_hand else MOST_KG)
