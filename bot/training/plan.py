"""What a coach prescribes: sets, exercises, sessions. A planned session is a snapshot; another may take its place."""

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from bot.training.units import Load


class LoadStyle(StrEnum):
    """What the number on a load means for an exercise."""

    TOTAL = "total"
    """Bar and plates together, a stack, a machine."""
    PER_HAND = "per_hand"
    """The number on one dumbbell."""
    BODYWEIGHT = "bodyweight"
    """What is added to the body; negative is assistance."""
    NONE = "none"
    """Timed or unloaded."""


class Measure(StrEnum):
    """What a set counts."""

    REPS = "reps"
    SECONDS = "seconds"
    METRES = "metres"


class Region(StrEnum):
    """Where an exercise works, coarsely."""

    UPPER = "upper"
    LOWER = "lower"
    TRUNK = "trunk"


class LoadRule(StrEnum):
    """How the next load of an exercise is chosen; a coach sets it per exercise."""

    TRACKED = "tracked"
    """From the tracked strength (the default)."""
    DOUBLE = "double"
    """Double progression: repetitions to the top of the range, then load."""
    FIXED = "fixed"
    """A fixed step after two sessions over target."""
    PERCENT = "percent"
    """A percentage of the top set."""
    HELD = "held"
    """The load stays as the coach set it."""


@dataclass(frozen=True, slots=True)
class RepRange:
    """Repetitions (or seconds, or metres) asked for, both ends included; `low == high` fixes the number."""

    low: int
    high: int

    @property
    def is_fixed(self) -> bool:
        """Whether one single number is asked for."""
        return self.low == self.high

    def __contains__(self, reps: int) -> bool:
        return self.low <= reps <= self.high


@dataclass(frozen=True, slots=True)
class Drop:
    """Lighter continuations without rest: `times` drops, each cut by `percent` (low, high) of the load before it.

    20 to 40 % a drop is common practice, no source.
    """

    times: int
    percent: tuple[int, int]


@dataclass(frozen=True, slots=True)
class Mini:
    """Short-rest continuations at the same load: `reps` each, `rest_s` (low, high) seconds apart, while they last."""

    reps: int
    rest_s: tuple[int, int]


Finish = Drop | Mini


@dataclass(frozen=True, slots=True)
class Tempo:
    """Seconds of a repetition's four parts; `lift_s` is `None` where the load is to be lifted as fast as possible.

    Written with hyphens in this order, an X for as fast as possible (`3-1-X-0`): common practice, no source.
    """

    lower_s: int
    stretched_s: int
    lift_s: int | None
    top_s: int

    @property
    def seconds(self) -> int:
        """A repetition in seconds; as fast as possible counts one."""
        return self.lower_s + self.stretched_s + (1 if self.lift_s is None else self.lift_s) + self.top_s


@dataclass(frozen=True, slots=True)
class PlannedSet:
    """One prescribed work set. `rir` is the target in repetitions in reserve, 0 to 10, halves allowed.

    `percent` is its load in percent of the top set's (the exercise's first set), for the rule of that name; `cue` is
    the grip or cue of this set, beside that of the exercise.
    """

    reps: RepRange
    rir: Decimal | None = None
    load: Load | None = None
    rest_s: int | None = None
    finish: Finish | None = None
    percent: Decimal | None = None
    tempo: Tempo | None = None
    cue: str = ""


@dataclass(frozen=True, slots=True)
class WarmupStep:
    """A warm-up set before the first work set."""

    load: Load
    reps: int


@dataclass(frozen=True, slots=True)
class Guess:
    """What a similar lift suggests for a one-repetition maximum: mean and standard deviation in kg."""

    mean_kg: Decimal
    sd_kg: Decimal


@dataclass(frozen=True, slots=True)
class PlannedExercise:
    """An exercise as prescribed for one session.

    `pair` names a superset: exercises of one session with the same `pair` are done in turn.
    `muscles` count a hard set as 1 (direct), `muscles_indirect` as a half.
    `priority` 1 is kept at all cost, 3 goes first when time is short.
    `reason` says in a line why the loads are what they are (empty where there is nothing to say).
    `step` is how far the load goes up at once under the rule of the fixed step (the next that there is, where unset).
    `note` and `link` are the coach's, for the client to read. `load_percent` makes a lighter week: its loads are this
    percent (up to 100) of what they would be. `guess` says where to begin on an exercise that took another's place, as
    long as nothing of it is known.
    """

    name: str
    sets: tuple[PlannedSet, ...]
    aliases: tuple[str, ...] = ()
    load_style: LoadStyle = LoadStyle.TOTAL
    sides: int = 1
    measure: Measure = Measure.REPS
    region: Region | None = None
    cue: str = ""
    pair: str = ""
    muscles: tuple[str, ...] = ()
    muscles_indirect: tuple[str, ...] = ()
    equipment: str = ""
    """Which loads can be made: a key of the client's `Gym` (`bar`, `dumbbell`, `stack`, `bodyweight`, `none`)."""
    load_rule: LoadRule = LoadRule.TRACKED
    priority: int = 2
    setup_s: int = 60
    warmup: tuple[WarmupStep, ...] = ()
    reason: str = ""
    step: Load | None = None
    note: str = ""
    link: str = ""
    load_percent: Decimal | None = None
    guess: Guess | None = None


@dataclass(frozen=True, slots=True)
class PlannedSession:
    """A workout as planned for one client and day, in order. `minutes` is the estimate of the whole."""

    title: str
    exercises: tuple[PlannedExercise, ...]
    minutes: int

    def exercise(self, name: str) -> PlannedExercise:
        """The exercise of that name; `KeyError` where the session has none."""
        for exercise in self.exercises:
            if exercise.name == name:
                return exercise
        raise KeyError(name)

    @property
    def set_count(self) -> int:
        """How many work sets are prescribed."""
        return sum(len(exercise.sets) for exercise in self.exercises)
