"""The session's record while a message is read: what is stored, and what the message has said so far.

A set that the message itself said is changed in place; a stored one is replaced whole, and named in `replaces`.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from itertools import chain

from bot.notation.answer import Source
from bot.notation.binding import Bound
from bot.notation.context import Context
from bot.notation.grounds import Told, kept
from bot.training.plan import PlannedExercise
from bot.training.report import Performed, SetKey, Stage
from bot.training.units import Unit

_PAIR = 2
"""Sets of which one may be told again as it is, to say that only the other was not so."""


@dataclass
class Record:
    """Stored sets that still stand, sets said in this message, and what they replace; all in the order of saying."""

    exercises: tuple[PlannedExercise, ...]
    unit: Unit
    stored: list[Performed]
    told: list[Told] = field(default_factory=list)
    """The sets that this message gives, with their grounds."""
    replaces: list[SetKey] = field(default_factory=list)
    gone: list[Told] = field(default_factory=list)
    """Sets that the message gave and then put right or took back."""
    retold: list[Told] = field(default_factory=list)
    """Sets that the message numbered and told, whose number it then gave to other ones."""
    last_exercise: int | None = None
    """The exercise that the message spoke of last."""
    _contexts: dict[int, Context] = field(default_factory=dict, repr=False, compare=False)
    """Of each exercise asked about, as long as its sets stand as they were."""
    _asked: tuple[tuple[Performed, ...], tuple[Told, ...]] = field(default=((), ()), repr=False, compare=False)
    """The sets, stored and said, when an exercise was asked about last."""
    _fresh: set[int] = field(default_factory=set, repr=False, compare=False)
    """The exercises asked about since those last changed."""

    @property
    def said(self) -> list[Performed]:
        """The sets that this message gives."""
        return [t.row for t in self.told]

    def context(self, place: int) -> Context:
        """An exercise with all its sets, stored and said."""
        now = tuple(self.stored), tuple(self.told)
        if now != self._asked:
            self._asked = now
            self._fresh.clear()
        elif place in self._fresh:
            return self._contexts[place]
        self._fresh.add(place)
        exercise = self.exercises[place]
        name = exercise.name
        rows = [p for p in self.stored if p.exercise == name]
        rows += [t.row for t in self.told if t.row.exercise == name]
        known = self._contexts.get(place)
        if known is None or known.done != tuple(rows):
            known = self._contexts[place] = Context(exercise, self.unit, tuple(rows))
        return known

    def place_of(self, name: str) -> int | None:
        """Where an exercise stands in the session."""
        for place, exercise in enumerate(self.exercises):
            if exercise.name == name:
                return place
        return None

    def add(self, bound: Bound) -> None:
        """Adds sets as said; those of a set that is stored replace it."""
        for key in bound.replaces:
            self.retold += self._numbered(key)
            self.drop(key)
        self.told.extend(bound.told)

    def drop(self, key: SetKey) -> list[Told]:
        """Takes a set out, whole; returns what it was. A stored one is noted as replaced."""
        whole = (*(kept(p) for p in self.stored), *self.told)
        gone = [t for t in whole if (t.row.exercise, t.row.set) == key]
        if any((p.exercise, p.set) == key for p in self.stored) and key not in self.replaces:
            self.replaces.append(key)
        self.stored = [p for p in self.stored if (p.exercise, p.set) != key]
        self.gone += [t for t in self.told if (t.row.exercise, t.row.set) == key]
        self.told = [t for t in self.told if (t.row.exercise, t.row.set) != key]
        return gone

    def change(self, key: SetKey, how: Callable[[Sequence[Told]], Sequence[Told]]) -> None:
        """Replaces a set by what `how` makes of it, keeping its place among what was said."""
        place = next((i for i, p in enumerate(self.said) if (p.exercise, p.set) == key), len(self.said))
        before = self._numbered(key)
        told = list(how(self.drop(key)))
        self.told[place:place] = told
        now = [(t.row.reps, t.row.load) for t in told]
        self.retold += [t for t in before if (t.row.reps, t.row.load) not in now]

    def settle(self, before: Sequence[Performed]) -> None:
        """Leaves the one of two sets as it was `before` that is told again as it is, where the other is put right.

        `set one was 80, only the second one was 85` changes the first, where both are stored with 85; `they were 5,
        5, 4` tells all three again.
        """
        as_was = [key for key in self.replaces if self.rows(key) == [p for p in before if (p.exercise, p.set) == key]]
        if len(self.replaces) == _PAIR and len(as_was) == 1:
            self.replaces = [key for key in self.replaces if key not in as_was]
            self.told = [t for t in self.told if (t.row.exercise, t.row.set) not in as_was]

    def _numbered(self, key: SetKey) -> list[Told]:
        """A set of this message that its own words numbered."""
        told = [t for t in self.told if (t.row.exercise, t.row.set) == key]
        return [t for t in told if t.grounds.number.source is Source.SAID and t.grounds.count == 1]

    def last(self, place: int | None = None) -> Performed | None:
        """The set said last: work or continuation, not a warm-up; of one exercise where it is given."""
        name = None if place is None else self.exercises[place].name
        for row in chain((t.row for t in reversed(self.told)), reversed(self.stored)):
            if row.set is not None and row.stage is not Stage.WARMUP and (name is None or row.exercise == name):
                return row
        return None

    def rows(self, key: SetKey) -> list[Performed]:
        """All of a set."""
        exercise, number = key
        rows = chain(self.stored, (t.row for t in self.told))
        return [p for p in rows if p.set == number and p.exercise == exercise]
