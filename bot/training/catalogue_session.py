"""The names that a session's exercises are listened for by: the coach's, and the catalogue's where they stay clear."""

from collections.abc import Sequence
from dataclasses import replace

from bot.training.catalogue import aliases_of
from bot.training.catalogue_exercise import name_key, name_words
from bot.training.plan import PlannedExercise


def with_known_aliases(exercises: Sequence[PlannedExercise]) -> tuple[PlannedExercise, ...]:
    """The exercises of one session, each with what else the catalogue calls it.

    A name that another exercise of the session goes by, or that is a shortening of one of the other's names, is left
    out: what would have been asked about is never decided by an alias. The coach's own aliases stay as they are.
    """
    every = [(e.name, *e.aliases, *aliases_of(e.name)) for e in exercises]
    return tuple(
        _with(exercise, [name for other, names in enumerate(every) if other != place for name in names])
        for place, exercise in enumerate(exercises)
    )


def _with(exercise: PlannedExercise, others: Sequence[str]) -> PlannedExercise:
    taken = {name_key(name) for name in (exercise.name, *exercise.aliases, *others)}
    longer = [name_words(name) for name in others]
    clear = tuple(
        alias
        for alias in aliases_of(exercise.name)
        if name_key(alias) not in taken and not any(name_words(alias) <= words for words in longer)
    )
    return replace(exercise, aliases=(*exercise.aliases, *clear)) if clear else exercise
