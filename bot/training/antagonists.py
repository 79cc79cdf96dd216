"""Which exercises can be done in turn, since one rests what the other works; and how long the rest after both is.

Pairs of opposite movements kept repetitions and gains (Robbins et al. 2010, J Strength Cond Res 24:2873-2882, from
memory; Burke et al. 2024, preprint 10.51224/SRXIV.419), though not all gains in every trial (Iversen et al. 2024, J
Strength Cond Res 38:1372-1378) and at more fatigue (Kadota et al. 2024, Front Sports Act Living 6:1497979). So each
muscle keeps at least the rest that was planned for it. Which muscles are opposite, that heavy sets stay alone and that
two exercises don't take two bars are common practice, no source.
"""

from collections.abc import Sequence

from bot.training.gym import BAR
from bot.training.plan import PlannedExercise
from bot.training.set_time import set_seconds
from bot.training.timing import CHANGE_WITHIN_PAIR_S, rest_of

HEAVY_REST_S = 180
"""A set with this much rest after it is a heavy one."""
SHORTEST_REST_S = 30
"""After both halves, at least: a breath. Common practice, no source (30 to 60 s)."""

_AXES = (
    (
        ("chest", "pec", "shoulder", "delt", "front delt", "front shoulder", "side delt", "tricep"),
        (
            "back",
            "upper back",
            "lat",
            "trap",
            "rhomboid",
            "rear delt",
            "rear shoulder",
            "bicep",
            "forearm",
            "brachialis",
        ),
    ),
    (("quad",), ("hamstring",)),
    (("abdominal", "abs", "core", "oblique"), ("lower back", "erector", "spinal")),
    (("calf", "calves", "gastrocnemius", "soleus"), ("shin", "tibialis")),
    (("adductor",), ("abductor",)),
)


def are_opposite(one: PlannedExercise, other: PlannedExercise) -> bool:
    """Whether one rests what the other works: some of their muscles are opposite, none the same.

    A muscle without an opposite (the glutes) stands in the way only where both work it.
    """
    shared = {*one.muscles, *one.muscles_indirect} & {*other.muscles, *other.muscles_indirect}
    mine, theirs = _sides(one.muscles), _sides(other.muscles)
    return not shared and not mine & theirs and any((axis, 1 - side) in theirs for axis, side in mine)


def can_pair(one: PlannedExercise, other: PlannedExercise) -> bool:
    """Whether two exercises, as far as they remain, may be done in turn: opposite, neither in a pair, neither with a
    heavy set, not both on a bar."""
    alone = not one.pair and not other.pair
    heavy = any(rest_of(planned) >= HEAVY_REST_S for planned in (*one.sets, *other.sets))
    return alone and not heavy and not one.equipment == other.equipment == BAR and are_opposite(one, other)


def paired_rests(one: PlannedExercise, other: PlannedExercise) -> tuple[int, ...]:
    """Seconds of rest after each round of the two: each muscle rests as long as planned, its partner's set counted.

    >>> from bot.training.plan import PlannedSet, RepRange
    >>> ten = PlannedSet(RepRange(10, 10), rest_s=120)
    >>> paired_rests(PlannedExercise("Press", (ten, ten)), PlannedExercise("Row", (ten, ten)))
    (75, 75)
    """
    return tuple(_rest_after(one, other, n) for n in range(min(len(one.sets), len(other.sets))))


def _rest_after(one: PlannedExercise, other: PlannedExercise, n: int) -> int:
    next_one = one.sets[min(n + 1, len(one.sets) - 1)]
    after_one = rest_of(one.sets[n]) - CHANGE_WITHIN_PAIR_S - set_seconds(other, other.sets[n])
    after_other = rest_of(other.sets[n]) - CHANGE_WITHIN_PAIR_S - set_seconds(one, next_one)
    return max(SHORTEST_REST_S, after_one, after_other)


def _sides(muscles: Sequence[str]) -> set[tuple[int, int]]:
    return {place for muscle in muscles if (place := _side(muscle)) is not None}


def _side(muscle: str) -> tuple[int, int] | None:
    """Axis and side of a muscle: those with the longest word found in its name."""
    named = f" {muscle.casefold().replace('_', ' ').replace('-', ' ')}"
    found = [
        (len(word), (axis, side))
        for axis, sides in enumerate(_AXES)
        for side, words in enumerate(sides)
        for word in words
        if f" {word}" in named
    ]
    return max(found)[1] if found else None
