"""A prescription carried over to another exercise: sets, ranges, effort and rest where they make sense there."""

from dataclasses import replace
from decimal import Decimal

from bot.training.catalogue_exercise import Exercise
from bot.training.plan import Drop, Finish, LoadRule, LoadStyle, Measure, PlannedExercise, PlannedSet, RepRange
from bot.training.set_time import METRES_A_SECOND, SECONDS_A_REP
from bot.training.units import Load

LOWEST_SMALL = 8
"""Repetitions: work of one joint is not done for fewer where a larger movement was, nor is another movement begun with
fewer. Common practice, no source."""
LOWEST_UNLOADED = 10
"""Repetitions where the body or a band is all the load: fewer would be no work. Common practice, no source."""
_LEAST = {Measure.REPS: 5, Measure.SECONDS: 10, Measure.METRES: 10}
_MOST = {Measure.REPS: 20, Measure.SECONDS: 60, Measure.METRES: 60}
"""Where a range lies after it was turned into another measure. Common practice, no source."""


def fitted(planned: PlannedExercise, one: Exercise, *, lowest: int, name: str, load: Load | None) -> PlannedExercise:
    """The planned exercise with `one` in its place, called `name`, every set at `load` (`None`: to be chosen).

    Order, pair, priority, rest and the week's share of the load stay; muscles, style, sides and set-up are the new
    one's; the old one's cues, notes and link go. Ranges that begin below `lowest` repetitions are moved up to it.
    """
    rule = LoadRule.TRACKED if planned.load_rule is LoadRule.HELD else planned.load_rule
    return replace(
        planned,
        name=name,
        sets=tuple(_set(s, planned, one, lowest=lowest, load=load) for s in planned.sets),
        aliases=(),
        load_style=one.load_style,
        sides=one.sides,
        measure=one.measure,
        region=one.region,
        cue="",
        muscles=tuple(m.value for m in one.muscles),
        muscles_indirect=tuple(m.value for m in one.muscles_indirect),
        equipment=one.loads,
        load_rule=rule,
        setup_s=one.setup_s,
        warmup=(),
        reason="",
        step=planned.step if planned.equipment == one.loads else None,
        note="",
        link="",
    )


def lowest_reps(planned: PlannedExercise, *, same_movement: bool, unloaded: bool) -> int:
    """The fewest repetitions that a range begins with on what takes the planned one's place."""
    if unloaded and planned.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND):
        return LOWEST_UNLOADED
    return 1 if same_movement else LOWEST_SMALL


def _set(old: PlannedSet, planned: PlannedExercise, one: Exercise, *, lowest: int, load: Load | None) -> PlannedSet:
    counted = one.measure is Measure.REPS
    loaded = one.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND)
    return PlannedSet(
        reps=_range(old, planned.measure, one.measure, lowest),
        rir=old.rir if counted else None,
        load=load,
        rest_s=old.rest_s,
        finish=_finish(old.finish, loaded=loaded) if counted and planned.measure is Measure.REPS else None,
        percent=_percent(old, planned) if loaded else None,
        tempo=old.tempo if counted and planned.measure is Measure.REPS else None,
    )


def _range(old: PlannedSet, was: Measure, now: Measure, lowest: int) -> RepRange:
    reps = old.reps
    if was is not now:
        a_rep = old.tempo.seconds if old.tempo is not None else SECONDS_A_REP
        low, high = (_turned(count, was, now, max(a_rep, 1)) for count in (reps.low, reps.high))
        return RepRange(low, high)
    if now is Measure.REPS and reps.low < lowest:
        return RepRange(lowest, lowest + reps.high - reps.low)
    return reps


def _turned(count: int, was: Measure, now: Measure, a_rep_s: int) -> int:
    """A count in another measure, by the time that it takes; seconds and metres to the next five."""
    seconds = {Measure.REPS: count * a_rep_s, Measure.SECONDS: count, Measure.METRES: count // METRES_A_SECOND}[was]
    match now:
        case Measure.REPS:
            turned = round(seconds / SECONDS_A_REP)
        case Measure.SECONDS:
            turned = 5 * round(seconds / 5)
        case Measure.METRES:
            turned = 5 * round(seconds * METRES_A_SECOND / 5)
    return min(max(turned, _LEAST[now]), _MOST[now])


def _finish(finish: Finish | None, *, loaded: bool) -> Finish | None:
    """Drops need a load to cut; mini sets need none."""
    return None if isinstance(finish, Drop) and not loaded else finish


def _percent(old: PlannedSet, planned: PlannedExercise) -> Decimal | None:
    """The set's share of the top set: as the coach wrote it, else as the planned loads have it."""
    top = planned.sets[0].load
    if planned.load_rule is not LoadRule.PERCENT or old.percent is not None or old.load is None or top is None:
        return old.percent
    if top.thousandths <= 0:
        return None
    return round(100 * old.load.kg / top.kg, 1)
