"""How near one exercise is to another, for taking its place. The weights are ours, no source."""

from collections.abc import Set as AbstractSet
from dataclasses import dataclass

from bot.training.catalogue import Catalogue
from bot.training.catalogue_exercise import Exercise, name_words
from bot.training.catalogue_terms import Muscle, Pattern
from bot.training.plan import LoadStyle, Measure, PlannedExercise

_MUSCLES = {muscle.value: muscle for muscle in Muscle}


@dataclass(frozen=True, slots=True)
class Sought:
    """What is to be replaced: the plan's word where it has one, else the catalogue's. `pattern` is `None` where neither
    name nor muscles tell it."""

    pattern: Pattern | None
    muscles: frozenset[Muscle]
    indirect: frozenset[Muscle]
    loads: str
    load_style: LoadStyle
    sides: int
    measure: Measure
    stretches: bool
    words: frozenset[str]

    @classmethod
    def of(cls, planned: PlannedExercise, known: Catalogue) -> "Sought":
        """What the plan asks for, and what the catalogue knows of it."""
        entry = known.find(planned.name)
        direct = frozenset(_MUSCLES[m] for m in planned.muscles if m in _MUSCLES)
        indirect = frozenset(_MUSCLES[m] for m in planned.muscles_indirect if m in _MUSCLES)
        if not direct and entry is not None:
            direct, indirect = frozenset(entry.muscles), frozenset(entry.muscles_indirect)
        return cls(
            entry.pattern if entry is not None else _pattern(planned, direct, known),
            direct,
            indirect,
            planned.equipment or (entry.loads if entry is not None else ""),
            planned.load_style,
            planned.sides,
            planned.measure,
            entry is not None and entry.stretches,
            name_words(entry.name if entry is not None else planned.name),
        )

    @property
    def is_loaded(self) -> bool:
        """Whether it has a load of its own, beside the body."""
        return self.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND)

    @property
    def is_small(self) -> bool:
        """Whether it is work of one joint; not where its pattern isn't known."""
        return self.pattern is not None and self.pattern.is_small


def is_like(sought: Sought, one: Exercise) -> bool:
    """Whether it may stand in at all: the same movement, or a muscle that both work directly."""
    return one.pattern is sought.pattern or bool(sought.muscles.intersection(one.muscles))


def distance(sought: Sought, one: Exercise, *, is_known: bool) -> tuple[bool, float]:
    """How far it is, the nearest lowest: another movement is always farther; then muscles, then how it is done.

    `is_known`: whether the client's strength on it is tracked; what was never done and is demanding lies farther.
    """
    muscles, every = frozenset(one.muscles), frozenset((*one.muscles, *one.muscles_indirect))
    weighed = (
        (3.0, _apart(sought.muscles, muscles)),
        (1.0, _apart(sought.muscles | sought.indirect, every)),
        (0.7, float(sought.measure is not one.measure)),
        (0.5, float(sought.sides != one.sides)),
        (0.5, float(sought.is_small is not one.pattern.is_small)),
        (0.2, float(sought.load_style is not one.load_style)),
        (0.4, float(sought.is_loaded and one.load_style is LoadStyle.NONE)),
        (0.2, float(sought.loads != one.loads)),
        (0.2, float(sought.stretches is not one.stretches)),
        (0.4, _apart(sought.words, name_words(one.name))),
        (0.5, 0.0 if is_known else 1.0),
        (0.5, 0.0 if is_known or one.common else 1.0),
        (0.8, float(one.demanding and not is_known)),
    )
    return one.pattern is not sought.pattern, round(sum(weight * part for weight, part in weighed), 6)


def _apart(one: AbstractSet[str], other: AbstractSet[str]) -> float:
    """1 less the share in common of what either has: 0 alike, 1 nothing in common."""
    either = one | other
    return 1 - len(one & other) / len(either) if either else 0.0


def _pattern(planned: PlannedExercise, direct: frozenset[Muscle], known: Catalogue) -> Pattern | None:
    """Of an exercise that the catalogue lacks: that of the likest name which works the same muscles, else that of the
    likest muscles in the same region."""
    for one in known.similar(planned.name, 5):
        if not direct or direct.intersection(one.muscles):
            return one.pattern
    near = [e for e in known.exercises if direct.intersection(e.muscles) and planned.region in (None, e.region)]
    nearest = min(near, key=lambda e: (_apart(direct, frozenset(e.muscles)), e.sides != planned.sides), default=None)
    return nearest.pattern if nearest is not None else None
