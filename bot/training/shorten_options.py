"""The ways in which what remains of a session can be done, with their seconds: what the solver chooses among.

An option is of one exercise, of those that are in a pair already, or of two that become one.
"""

from collections.abc import Collection, Iterator, Sequence
from dataclasses import dataclass, replace
from enum import Enum
from itertools import combinations, product
from math import ceil

from bot.training.antagonists import can_pair, paired_rests
from bot.training.pace import Pace
from bot.training.plan import PlannedExercise
from bot.training.shorten_values import Allowed, Rest, finish_for
from bot.training.timing import group_steps


class Keep(Enum):
    """What may become of the sets of a priority."""

    ALL = "all"
    SOME = "some"
    NONE = "none"


@dataclass(frozen=True, slots=True)
class Stage:
    """A step of the coach's order: what may become of each priority, and whether pairs and drops may be made."""

    keep: tuple[tuple[int, Keep], ...]
    trades: bool

    def of(self, priority: int) -> Keep:
        """What may become of this priority."""
        return dict(self.keep)[priority]


@dataclass(frozen=True, slots=True)
class Choice:
    """What becomes of one exercise: `exercise` as it would remain, `lost` open sets, whether one is `turned`."""

    rest: Rest
    exercise: PlannedExercise
    lost: int
    turned: bool

    @property
    def loses_top(self) -> bool:
        """Whether its first set, which is still to come, is lost."""
        return self.rest.behind == 0 and not self.exercise.sets


@dataclass(frozen=True, slots=True)
class Option:
    """Choices for the exercises of a group, done in turn, and the seconds that they take."""

    choices: tuple[Choice, ...]
    seconds: int
    paired: bool = False

    @property
    def places(self) -> tuple[int, ...]:
        """Where its exercises stand in the plan."""
        return tuple(choice.rest.place for choice in self.choices)

    @property
    def turned(self) -> int:
        """How many sets are turned."""
        return sum(choice.turned for choice in self.choices)


def options_of(
    remaining: Sequence[Rest], stage: Stage, *, allowed: Allowed, pace: Pace, begun: Collection[str]
) -> Iterator[Option]:
    """All that may be done at a step of the order."""
    choices = {rest.place: _choices(rest, stage, allowed) for rest in remaining}
    for group in _groups(remaining):
        for taken in product(*(choices[rest.place] for rest in group)):
            yield option_of(taken, pace=pace, begun=begun)
    if not (stage.trades and allowed.pairs):
        return
    for one, other in combinations([r for r in remaining if r.exercise.name not in allowed.spared], 2):
        if can_pair(one.exercise, other.exercise):
            yield from _pairs(choices[one.place], choices[other.place], pace, begun)


def option_of(choices: tuple[Choice, ...], *, pace: Pace, begun: Collection[str]) -> Option:
    """Choices of one group with what they take."""
    return Option(choices, _seconds([choice.exercise for choice in choices], pace, begun))


def as_pair(one: PlannedExercise, other: PlannedExercise, name: str) -> tuple[PlannedExercise, PlannedExercise]:
    """Two exercises done in turn, the rests after their common rounds cut to what each muscle needs."""
    rests = paired_rests(one, other)
    return _with_rests(one, rests, name), _with_rests(other, rests, name)


def _pairs(ones: Sequence[Choice], others: Sequence[Choice], pace: Pace, begun: Collection[str]) -> Iterator[Option]:
    for one, other in product(ones, others):
        if one.exercise.sets and other.exercise.sets:
            yield Option((one, other), _seconds(as_pair(one.exercise, other.exercise, "pair"), pace, begun), True)


def _choices(rest: Rest, stage: Stage, allowed: Allowed) -> tuple[Choice, ...]:
    count, sets = len(rest.exercise.sets), rest.exercise.sets
    keep = stage.of(rest.exercise.priority)
    least = {Keep.ALL: count, Keep.SOME: 0, Keep.NONE: 0}[keep]
    most = 0 if keep is Keep.NONE else count
    found = [
        Choice(rest, replace(rest.exercise, sets=sets[:kept]), count - kept, False)
        for kept in range(most, least - 1, -1)
    ]
    if stage.trades:
        found += [turned for choice in found if (turned := _turned(choice, allowed)) is not None]
    return tuple(found)


def _turned(choice: Choice, allowed: Allowed) -> Choice | None:
    """The last set that stays, turned into a drop or mini sets of the one before."""
    sets = choice.exercise.sets
    if len(sets) < 2 or sets[-1].finish or sets[-2].finish:
        return None
    finish = finish_for(choice.exercise, allowed)
    if finish is None:
        return None
    return replace(
        choice, exercise=replace(choice.exercise, sets=(*sets[:-2], replace(sets[-2], finish=finish))), turned=True
    )


def _groups(remaining: Sequence[Rest]) -> list[list[Rest]]:
    groups: dict[str | int, list[Rest]] = {}
    for rest in remaining:
        groups.setdefault(rest.exercise.pair or rest.place, []).append(rest)
    return list(groups.values())


def _with_rests(exercise: PlannedExercise, rests: Sequence[int], name: str) -> PlannedExercise:
    sets = [replace(s, rest_s=rest_s) for s, rest_s in zip(exercise.sets, rests, strict=False)]
    return replace(exercise, sets=(*sets, *exercise.sets[len(sets) :]), pair=name)


def _seconds(group: Sequence[PlannedExercise], pace: Pace, begun: Collection[str]) -> int:
    return ceil(pace.seconds(group_steps(tuple(group), begun)))
