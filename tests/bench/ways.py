"""Ways of choosing loads, from the plainest to ours, and the bound that knows the lifter."""

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from math import exp, log
from typing import Protocol, runtime_checkable

import numpy as np

from bot.training.exposure import LiftedSet
from bot.training.lifter import Level
from bot.training.loads import Loadable
from bot.training.plan import PlannedExercise, PlannedSet, Region, RepRange
from bot.training.progress import next_loads
from bot.training.state import State
from bot.training.strength import after_session, begin, estimate
from bot.training.units import Load, Unit
from tests.bench.lifters import Floats, Lifter, Outcome, Plan, World, could_lift, felt_share, judged, perform


@dataclass(frozen=True, slots=True)
class Done:
    """A set as reported."""

    load: float
    reps: int
    rir: float | None


@dataclass(frozen=True, slots=True)
class Moment:
    """A day, the place (from 0) of the set to come, and today's sets so far."""

    day: date
    place: int
    done: tuple[Done, ...]


class Way(Protocol):
    """A way of choosing: asked before each set, told after each session."""

    given: "Setting"

    def choose(self, now: Moment) -> float | None:
        """The load (kg) of the set to come; `None` where the lifter must find one."""

    def end(self, now: Moment) -> None:
        """A session is over."""


@runtime_checkable
class Banded(Protocol):
    """A way that says how strong it takes the lifter to be."""

    def band(self, day: date) -> tuple[float, float] | None:
        """The 1RM's mean and standard deviation (kg)."""


@dataclass
class Setting:
    """What every way is given."""

    loads: Floats
    plan: Plan
    level: str
    region: str

    def nearest(self, kg: float) -> float:
        return float(self.loads[np.argmin(np.abs(self.loads - kg))])

    def above(self, kg: float) -> float:
        up = self.loads[self.loads > kg + 1e-6]
        return float(up[0]) if len(up) else kg

    def below(self, kg: float) -> float:
        down = self.loads[self.loads < kg - 1e-6]
        return float(down[-1]) if len(down) else kg


@dataclass
class Fixed:
    """A step up after two sessions with two repetitions to spare in the last set, a step down after two failures."""

    given: Setting
    load: float | None = None
    over: int = 0
    short: int = 0

    def choose(self, now: Moment) -> float | None:
        return self.load if self.load is not None else (now.done[-1].load if now.done else None)

    def end(self, now: Moment) -> None:
        last = now.done[-1]
        self.load = self.load if self.load is not None else last.load
        spare = last.reps + max(0.0, (last.rir or 0.0) - self.given.plan.target)
        self.over = self.over + 1 if spare >= self.given.plan.high + 2 else 0
        self.short = self.short + 1 if any(d.reps < self.given.plan.low for d in now.done) else 0
        if self.over >= 2:
            self.load, self.over = self.given.above(self.load), 0
        if self.short >= 2:
            self.load, self.short = self.given.below(self.load), 0


@dataclass
class Double:
    """All sets at the top of the range: a step up; two sessions with a set below it: a step down."""

    given: Setting
    load: float | None = None
    short: int = 0

    def choose(self, now: Moment) -> float | None:
        return self.load if self.load is not None else (now.done[-1].load if now.done else None)

    def end(self, now: Moment) -> None:
        self.load = self.load if self.load is not None else now.done[-1].load
        self.short = self.short + 1 if any(d.reps < self.given.plan.low for d in now.done) else 0
        if all(d.reps >= self.given.plan.high for d in now.done):
            self.load = self.given.above(self.load)
        elif self.short >= 2:
            self.load, self.short = self.given.below(self.load), 0


@dataclass
class Chart:
    """A percent chart (Epley) on a 1RM taken from the best set of every fourth week."""

    given: Setting
    top: float = 0.0
    weeks: date | None = None

    def choose(self, now: Moment) -> float | None:
        if self.top <= 0:
            return None if not now.done else self.given.nearest(_epley(now.done[-1], self.given) * _share(self.given))
        return self.given.nearest(self.top * _share(self.given))

    def end(self, now: Moment) -> None:
        best = max(_epley(d, self.given) for d in now.done)
        if self.weeks is None or (now.day - self.weeks).days >= 28:
            self.top, self.weeks = best, now.day


@dataclass
class LastSession:
    """The mean estimate of last session's sets (Epley, reserve at face value)."""

    given: Setting
    top: float = 0.0

    def choose(self, now: Moment) -> float | None:
        if self.top <= 0:
            return None if not now.done else self.given.nearest(_epley(now.done[-1], self.given) * _share(self.given))
        return self.given.nearest(self.top * _share(self.given))

    def end(self, now: Moment) -> None:
        self.top = float(np.mean([_epley(d, self.given) for d in now.done]))


@dataclass
class Scalar:
    """A scalar Kalman filter on ln 1RM (Epley, reserve at face value), step 1 % a session, report 5 %."""

    given: Setting
    mean: float = 0.0
    var: float = 0.0
    last: date | None = None

    def choose(self, now: Moment) -> float | None:
        mean = self.mean
        if self.var == 0.0:
            if not now.done:
                return None
            mean = log(_epley(now.done[-1], self.given))
        return self.given.nearest(exp(mean) * _share(self.given))

    def end(self, now: Moment) -> None:
        for one in now.done:
            self._take(log(_epley(one, self.given)))
        self.last = now.day

    def _take(self, seen: float) -> None:
        if self.var == 0.0:
            self.mean, self.var = seen, 0.05**2
            return
        before = self.var + 0.01**2 / 3
        gain = before / (before + 0.05**2)
        self.mean, self.var = self.mean + gain * (seen - self.mean), (1 - gain) * before

    def band(self, day: date) -> tuple[float, float] | None:
        if self.last is None:
            return None
        var = self.var + 0.01**2 * (day - self.last).days / 3.5
        return exp(self.mean), exp(self.mean) * var**0.5


def _epley(done: Done, given: Setting) -> float:
    left = done.rir if done.rir is not None else (given.plan.target if done.reps >= given.plan.low else 0.0)
    return done.load * (1 + (done.reps + left) / 30)


def _share(given: Setting) -> float:
    return 1 / (1 + ((given.plan.low + given.plan.high) / 2 + given.plan.target) / 30)


@dataclass
class Ours:
    """The engine of `bot.training`, from its kept state."""

    given: Setting
    state: State = field(init=False)
    exercise: PlannedExercise = field(init=False)
    ladder: Loadable = field(init=False)

    def __post_init__(self) -> None:
        plan = self.given.plan
        one = PlannedSet(RepRange(plan.low, plan.high), Decimal(repr(plan.target)), rest_s=plan.rest_s)
        region = Region(self.given.region)
        self.exercise = PlannedExercise("Lift", (one,) * plan.sets, region=region)
        self.ladder = Loadable.of([Decimal(repr(float(kg))) for kg in self.given.loads], Unit.KG)
        self.state = begin(level=Level(self.given.level), region=region)

    def choose(self, now: Moment) -> float | None:
        found = next_loads(self.state, self.exercise, self.ladder, today=now.day, done=_lifted(now.done))
        load: Load | None = found.sets[0].load
        return None if load is None else float(load.kg)

    def end(self, now: Moment) -> None:
        self.state = after_session(self.state, day=now.day, sets=_lifted(now.done), prescribed=self.exercise.sets)

    def band(self, day: date) -> tuple[float, float] | None:
        found = estimate(self.state, day)
        return None if found is None else (found.mean_kg, found.sd_kg)


def _lifted(done: tuple[Done, ...]) -> tuple[LiftedSet, ...]:
    return tuple(LiftedSet(d.load, d.reps, d.rir) for d in done)


@dataclass
class Bound:
    """Knows the lifter, the day's mean strength and tiredness; not the day's form nor the feel's errors.

    `adapts`: it also reads the day's form from today's sets, knowing the lifter's feel.
    """

    given: Setting
    world: World
    lifter: Lifter
    chance: np.random.Generator
    adapts: bool = False
    strength_kg: float = 0.0
    tired: float = 0.0
    draws: int = 300
    tiredness: list[float] = field(default_factory=list)

    def choose(self, now: Moment) -> float | None:
        plan = self.given.plan
        if not now.done:
            self.tiredness = []
        self.tiredness.append(self.tired)
        form = np.exp(self.chance.normal(0, self.lifter.form_sd, self.draws * (10 if self.adapts and now.done else 1)))
        if self.adapts and now.done:
            weights = self._likely(form, now.done)
            form = self.chance.choice(form, self.draws, p=weights / weights.sum())
        noise = self.chance.normal(0, 1, (self.draws, plan.high + 2))
        return self.best(form, noise, now.place)

    def _likely(self, form: Floats, done: tuple[Done, ...]) -> Floats:
        """How well each form explains today's sets."""
        weights = np.full(form.shape, 1e-12)
        told = np.ones_like(form)
        for order, (one, tired) in enumerate(zip(done, self.tiredness, strict=False)):
            could = could_lift(self.world, self.lifter, self.strength_kg * form, one.load, tired)
            left = np.maximum(could - one.reps, 0.0)
            felt = felt_share(self.world, self.lifter, could) * left
            spread = (0.5 + 0.06 * left) * self.lifter.feel_noise * (1.0, 0.9, 0.8)[min(order, 2)] + 0.15
            told = told * (could >= one.reps - 0.01)
            if one.rir is not None:
                told = told * np.exp(-0.5 * ((felt - one.rir) / spread) ** 2) / spread
        return weights + told

    def best(self, form: Floats, noise: Floats, place: int) -> float:
        """The load that lands most often over these days and errors."""
        plan = self.given.plan
        about = self.strength_kg / (1 + (plan.high + plan.target) / (30 * self.lifter.endurance))
        near = self.given.loads[np.argsort(np.abs(np.log(np.maximum(self.given.loads, 0.1) / about)))[:14]]
        found: list[tuple[float, float]] = []
        for load in np.sort(near):
            could = could_lift(self.world, self.lifter, self.strength_kg * form, float(load), self.tired)
            ended: Outcome = perform(self.world, self.lifter, plan, could=could, order=place, noise=noise)
            landed, _, _ = judged(plan, ended.reps, ended.left)
            found.append((float(landed.mean()), float(load)))
        return max(found)[1]

    def end(self, now: Moment) -> None:
        pass
