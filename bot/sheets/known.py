"""Exercises that a sheet may name: the coach's own, then the catalogue's. A definition is an exercise without sets."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Protocol

from bot.training.catalogue import Catalogue, catalogue
from bot.training.catalogue_exercise import Exercise, name_key
from bot.training.catalogue_terms import Muscle
from bot.training.gym import BAR, BODY, DUMBBELLS, NOTHING, STACK
from bot.training.plan import PlannedExercise

EQUIPMENT = (BAR, DUMBBELLS, STACK, BODY, NOTHING)
"""What an exercise's loads may be made of, as a client's gym names it."""
NEAREST = 3


class Known(Protocol):
    """What reading and writing want to know of exercises."""

    def find(self, name: str) -> PlannedExercise | None:
        """The definition under this name or another one of it, with its proper name; `None` where unknown."""

    def similar(self, text: str) -> tuple[str, ...]:
        """The names most like it, the most alike first."""

    @property
    def names(self) -> tuple[str, ...]:
        """The proper names of all, to choose from."""

    @property
    def muscles(self) -> tuple[str, ...]:
        """The muscles that sets are counted by."""


@dataclass(frozen=True, slots=True)
class OfCatalogue:
    """The catalogue as a sheet sees it."""

    whole: Catalogue

    def find(self, name: str) -> PlannedExercise | None:
        """The definition of the exercise of this name or alias; what clients call it stays in the catalogue."""
        found = self.whole.find(name)
        return None if found is None else _definition(found)

    def similar(self, text: str) -> tuple[str, ...]:
        """The nearest names."""
        return tuple(one.name for one in self.whole.similar(text, NEAREST))

    @property
    def names(self) -> tuple[str, ...]:
        """By the alphabet."""
        return tuple(sorted(one.name for one in self.whole.exercises))

    @property
    def muscles(self) -> tuple[str, ...]:
        """In the catalogue's order."""
        return tuple(muscle.value for muscle in Muscle)


@dataclass(frozen=True, slots=True)
class WithOwn:
    """A coach's own exercises before what else is known. An own name, exactly as written, goes before all."""

    own: tuple[PlannedExercise, ...]
    other: Known
    by_name: Mapping[str, PlannedExercise]
    by_key: Mapping[str, PlannedExercise]
    """By what the catalogue compares names by; an own name goes before an own alias, the earlier before the later."""

    @classmethod
    def of(cls, own: tuple[PlannedExercise, ...], other: Known) -> "WithOwn":
        """These before those."""
        by_key: dict[str, PlannedExercise] = {}
        for one in own:
            by_key.setdefault(name_key(one.name), one)
        for one in own:
            for alias in one.aliases:
                by_key.setdefault(name_key(alias), one)
        return cls(own, other, {one.name: one for one in own}, by_key)

    def find(self, name: str) -> PlannedExercise | None:
        """The definition under this name."""
        return self.by_name.get(name) or self.by_key.get(name_key(name)) or self.other.find(name)

    def similar(self, text: str) -> tuple[str, ...]:
        """The nearest names, own ones that share a word first."""
        words = set(text.casefold().split())
        own = tuple(one.name for one in self.own if words & set(one.name.casefold().split()))
        return tuple(dict.fromkeys((*own, *self.other.similar(text))))[:NEAREST]

    @property
    def names(self) -> tuple[str, ...]:
        """Own ones first."""
        return tuple(dict.fromkeys((*(one.name for one in self.own), *self.other.names)))

    @property
    def muscles(self) -> tuple[str, ...]:
        """Those that are known, then those of own exercises."""
        own = (muscle for one in self.own for muscle in (*one.muscles, *one.muscles_indirect))
        return tuple(dict.fromkeys((*self.other.muscles, *own)))


def known_exercises() -> Known:
    """The catalogue as it comes."""
    return OfCatalogue(catalogue())


def with_own(own: Iterable[PlannedExercise], other: Known) -> Known:
    """These before those."""
    return WithOwn.of(tuple(own), other)


def defined(exercise: PlannedExercise) -> PlannedExercise:
    """What of a prescribed exercise is its definition: nothing of this programme's."""
    return PlannedExercise(
        name=exercise.name,
        sets=(),
        aliases=exercise.aliases,
        load_style=exercise.load_style,
        sides=exercise.sides,
        measure=exercise.measure,
        region=exercise.region,
        cue=exercise.cue,
        muscles=exercise.muscles,
        muscles_indirect=exercise.muscles_indirect,
        equipment=exercise.equipment,
        setup_s=exercise.setup_s,
    )


def alike(one: PlannedExercise, other: PlannedExercise) -> bool:
    """Whether two definitions are the same but for what the sheet Programme itself can say otherwise."""
    return replace(defined(one), sides=other.sides, measure=other.measure, cue=other.cue) == defined(other)


def _definition(known: Exercise) -> PlannedExercise:
    return PlannedExercise(
        name=known.name,
        sets=(),
        load_style=known.load_style,
        sides=known.sides,
        measure=known.measure,
        region=known.region,
        muscles=tuple(muscle.value for muscle in known.muscles),
        muscles_indirect=tuple(muscle.value for muscle in known.muscles_indirect),
        equipment=known.loads,
        setup_s=known.setup_s,
    )
