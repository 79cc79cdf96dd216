"""How long a session takes, from its prescription, part by part.

Seconds = general warm-up + for each exercise: getting there and setting it up (`setup_s`, the coach's or the
exercise's), warm-up sets, work sets with their continuations, and the rests between sets. Halves of a pair are done in
turn: the whole rest comes once a round, after its last half; between the halves there is only the change of stations,
or the rest of the half where the coach gave that one a shorter one (30 s after the first, 90 s after the second).

What a part takes is told in `set_time`. Pairs checked against Burke et al. 2024 (preprint 10.51224/SRXIV.419: 36 % less
time), sets with short and long rests against Marshall et al. 2012 (J Sci Med Sport 15:153-158).
"""

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

from bot.training.plan import PlannedExercise, PlannedSet
from bot.training.set_time import finish_seconds, set_seconds, warmup_seconds, work_seconds

__all__ = ["ExerciseTime", "Part", "SessionTime", "Step", "exercise_seconds", "session_minutes", "set_seconds"]

GENERAL_WARMUP_S = 180
"""Before the first exercise. Iversen et al. 2021 (Sports Med 51:2079-2095) find that little of it is needed; three
minutes are common practice, no source."""
CHANGE_WITHIN_PAIR_S = 15
"""From one half to the other. With 10 to 20 s the time saved by pairs is what the trial found."""
USUAL_REST_S = 90


class Part(StrEnum):
    """What a session's time goes into."""

    GENERAL = "general"
    SETUP = "setup"
    WARMUP = "warmup"
    WORK = "work"
    FINISH = "finish"
    """Drops and mini sets."""
    REST = "rest"
    CHANGE = "change"
    """Between the halves of a pair."""


@dataclass(frozen=True, slots=True)
class Step:
    """A work set (`set` counts from 1) with what comes before it since the set before, in whole seconds."""

    exercise: str
    set: int
    setup_s: int = 0
    warmup_s: int = 0
    rest_s: int = 0
    change_s: int = 0
    work_s: int = 0
    finish_s: int = 0

    @property
    def seconds(self) -> int:
        """From the end of the set before to the end of this one."""
        return sum(self.of(part) for part in Part)

    def of(self, part: Part) -> int:
        """Seconds of a part."""
        match part:
            case Part.GENERAL:
                return 0
            case Part.SETUP:
                return self.setup_s
            case Part.WARMUP:
                return self.warmup_s
            case Part.WORK:
                return self.work_s
            case Part.FINISH:
                return self.finish_s
            case Part.REST:
                return self.rest_s
            case Part.CHANGE:
                return self.change_s


@dataclass(frozen=True, slots=True)
class ExerciseTime:
    """An exercise's seconds in the session, part by part; the parts that take none are left out."""

    name: str
    parts: tuple[tuple[Part, int], ...]

    @property
    def seconds(self) -> int:
        """All of them."""
        return sum(seconds for _, seconds in self.parts)


@dataclass(frozen=True, slots=True)
class SessionTime:
    """A session's time: the general warm-up, then every work set in the order in which they are done."""

    general_s: int
    steps: tuple[Step, ...]

    @property
    def seconds(self) -> int:
        """The whole session."""
        return self.general_s + sum(step.seconds for step in self.steps)

    @property
    def minutes(self) -> int:
        """The whole session in minutes, rounded up."""
        return -(-self.seconds // 60)

    def of(self, part: Part) -> int:
        """Seconds of a part of the whole session."""
        return (self.general_s if part is Part.GENERAL else 0) + sum(step.of(part) for step in self.steps)

    @property
    def parts(self) -> tuple[tuple[Part, int], ...]:
        """Seconds by part; the parts that take none are left out."""
        return tuple((part, seconds) for part in Part if (seconds := self.of(part)))

    @property
    def exercises(self) -> tuple[ExerciseTime, ...]:
        """Seconds by exercise, in the order in which they begin."""
        names = dict.fromkeys(step.exercise for step in self.steps)
        return tuple(ExerciseTime(name, self._of_exercise(name)) for name in names)

    def _of_exercise(self, name: str) -> tuple[tuple[Part, int], ...]:
        own = [step for step in self.steps if step.exercise == name]
        return tuple((part, seconds) for part in Part if (seconds := sum(step.of(part) for step in own)))


def session_minutes(exercises: tuple[PlannedExercise, ...]) -> int:
    """The whole session in minutes, rounded up; halves of a pair share their rests."""
    return session_time(exercises).minutes


def session_time(exercises: Sequence[PlannedExercise], *, begun: Collection[str] = ()) -> SessionTime:
    """The time of a session; what nobody does takes none.

    Of a session under way, give the sets that remain, and in `begun` the names of the exercises with a set behind them:
    in the place of setting up and warming up these have a rest before them, and there is no general warm-up any more.
    """
    general_s = GENERAL_WARMUP_S if exercises and not begun else 0
    return SessionTime(general_s, tuple(step for group in groups(exercises) for step in group_steps(group, begun)))


def exercise_seconds(exercise: PlannedExercise) -> int:
    """An exercise by itself: setting up, warming up, its sets and the rests between them."""
    return sum(step.seconds for step in group_steps((exercise,)))


def groups(exercises: Iterable[PlannedExercise]) -> tuple[tuple[PlannedExercise, ...], ...]:
    """What is done in turn, in the order in which it begins; an exercise without a pair stands alone."""
    found: dict[str | int, list[PlannedExercise]] = {}
    for n, exercise in enumerate(exercises):
        found.setdefault(exercise.pair or n, []).append(exercise)
    return tuple(tuple(group) for group in found.values())


def group_steps(group: tuple[PlannedExercise, ...], begun: Collection[str] = ()) -> tuple[Step, ...]:
    """The work sets of exercises done in turn; each is set up and warmed up for before its own first set."""
    steps: list[Step] = []
    met: set[str] = set(begun)
    rest_s = max((rest_of(e.sets[0]) for e in group if e.sets and e.name in begun), default=0)
    for n in range(max((len(e.sets) for e in group), default=0)):
        present = [e for e in group if n < len(e.sets)]
        after_s = max(rest_of(e.sets[n]) for e in present)
        change_s = 0
        for e in present:
            planned = e.sets[n]
            setup_s, warmup_s = (0, 0) if e.name in met else (e.setup_s, warmup_seconds(e))
            work_s, finish_s = work_seconds(e, planned), finish_seconds(e, planned)
            steps.append(Step(e.name, n + 1, setup_s, warmup_s, rest_s, change_s, work_s, finish_s))
            met.add(e.name)
            own_s = rest_of(planned)
            rest_s = own_s if CHANGE_WITHIN_PAIR_S < own_s < after_s else 0
            change_s = 0 if rest_s else CHANGE_WITHIN_PAIR_S
        rest_s = after_s
    return tuple(steps)


def rest_of(planned: PlannedSet) -> int:
    """Seconds of rest after a set; the usual ones where the coach gave none."""
    return USUAL_REST_S if planned.rest_s is None else planned.rest_s
