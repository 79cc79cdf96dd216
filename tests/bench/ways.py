"""Ways of choosing loads, from the plainest to ours, and the bound that knows the lifter."""

from dataclasses import dataclass, field
from datetime import date
from decimal import Decimal
from math import exp, log
from typing import Protocol

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


class Way(Protocol):
    """A way of choosing: asked before each set, told after each set and session."""

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        """The load (kg) of set `place` (from 0) after today's `done`; `None` where the lifter must find one."""

    def end(self, day: date, done: list[Done]) -> None:
        """A session is over."""

    def band(self, day: date) -> tuple[float, float] | None:
        """The 1RM's mean and standard deviation (kg), where the way has one."""


@dataclass
class Setting:
    """What every way is given."""

    loads: Floats
    plan: Plan
    level: str
    region: str
    style: str = "total"

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

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        return self.load if self.load is not None else (done[-1].load if done else None)

    def end(self, day: date, done: list[Done]) -> None:
        last = done[-1]
        self.load = self.load if self.load is not None else last.load
        spare = last.reps + max(0.0, (last.rir or 0.0) - self.given.plan.target)
        self.over = self.over + 1 if spare >= self.given.plan.high + 2 else 0
        self.short = self.short + 1 if any(d.reps < self.given.plan.low for d in done) else 0
        if self.over >= 2:
            self.load, self.over = self.given.above(self.load), 0
        if self.short >= 2:
            self.load, self.short = self.given.below(self.load), 0

    def band(self, day: date) -> tuple[float, float] | None:
        return None


@dataclass
class Double:
    """All sets at the top of the range: a step up; two sessions with a set below it: a step down."""

    given: Setting
    load: float | None = None
    short: int = 0

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        return self.load if self.load is not None else (done[-1].load if done else None)

    def end(self, day: date, done: list[Done]) -> None:
        self.load = self.load if self.load is not None else done[-1].load
        self.short = self.short + 1 if any(d.reps < self.given.plan.low for d in done) else 0
        if all(d.reps >= self.given.plan.high for d in done):
            self.load = self.given.above(self.load)
        elif self.short >= 2:
            self.load, self.short = self.given.below(self.load), 0

    def band(self, day: date) -> tuple[float, float] | None:
        return None


@dataclass
class Chart:
    """A percent chart (Epley) on a 1RM taken from the best set of every fourth week."""

    given: Setting
    top: float = 0.0
    asked: int = 0
    block: float = 0.0
    weeks: date | None = None

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        if self.top <= 0:
            return None if not done else self.given.nearest(_epley(done[-1], self.given) * _share(self.given))
        return self.given.nearest(self.top * _share(self.given))

    def end(self, day: date, done: list[Done]) -> None:
        best = max(_epley(d, self.given) for d in done)
        if self.weeks is None or (day - self.weeks).days >= 28:
            self.top, self.weeks = best, day

    def band(self, day: date) -> tuple[float, float] | None:
        return None


@dataclass
class LastSession:
    """The mean estimate of last session's sets (Epley, reserve at face value)."""

    given: Setting
    top: float = 0.0

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        if self.top <= 0:
            return None if not done else self.given.nearest(_epley(done[-1], self.given) * _share(self.given))
        return self.given.nearest(self.top * _share(self.given))

    def end(self, day: date, done: list[Done]) -> None:
        self.top = float(np.mean([_epley(d, self.given) for d in done]))

    def band(self, day: date) -> tuple[float, float] | None:
        return None


@dataclass
class Scalar:
    """A scalar Kalman filter on ln 1RM (Epley, reserve at face value), step 1 % a session, report 5 %."""

    given: Setting
    mean: float = 0.0
    var: float = 0.0

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        mean = self.mean
        if self.var == 0.0:
            if not done:
                return None
            mean = log(_epley(done[-1], self.given))
        return self.given.nearest(exp(mean) * _share(self.given))

    def end(self, day: date, done: list[Done]) -> None:
        for one in done:
            self._take(log(_epley(one, self.given)))

    def _take(self, seen: float) -> None:
        if self.var == 0.0:
            self.mean, self.var = seen, 0.05**2
            return
        before = self.var + 0.01**2 / 3
        gain = before / (before + 0.05**2)
        self.mean, self.var = self.mean + gain * (seen - self.mean), (1 - gain) * before

    def band(self, day: date) -> tuple[float, float] | None:
        return None if self.var == 0.0 else (exp(self.mean), exp(self.mean) * self.var**0.5)


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
    keeps_text: bool = False

    def __post_init__(self) -> None:
        plan = self.given.plan
        one = PlannedSet(RepRange(plan.low, plan.high), Decimal(repr(plan.target)), rest_s=plan.rest_s)
        region = Region(self.given.region)
        self.exercise = PlannedExercise("Lift", (one,) * plan.sets, region=region)
        self.ladder = Loadable.of([Decimal(repr(float(kg))) for kg in self.given.loads], Unit.KG)
        self.state = begin(level=Level(self.given.level), region=region)

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        found = next_loads(self.state, self.exercise, self.ladder, today=day, done=_lifted(done))
        load: Load | None = found.sets[0].load
        return None if load is None else float(load.kg)

    def end(self, day: date, done: list[Done]) -> None:
        self.state = after_session(self.state, day=day, sets=_lifted(done), prescribed=self.exercise.sets)

    def band(self, day: date) -> tuple[float, float] | None:
        found = estimate(self.state, day)
        return None if found is None else (found.mean_kg, found.sd_kg)


def _lifted(done: list[Done]) -> tuple[LiftedSet, ...]:
    return tuple(LiftedSet(d.load, d.reps, d.rir) for d in done)


@dataclass
class Bound:
    """Knows the lifter, the mean strength of the day and the day's tiredness; not the day's form nor the feel's errors."""

    given: Setting
    world: World
    lifter: Lifter
    chance: np.random.Generator
    adapts: bool = False
    strength_kg: float = 0.0
    tired: float = 0.0
    draws: int = 300
    tiredness: list[float] = field(default_factory=list)

    def choose(self, day: date, place: int, done: list[Done]) -> float | None:
        plan = self.given.plan
        if not done:
            self.tiredness = []
        self.tiredness.append(self.tired)
        form = np.exp(self.chance.normal(0, self.lifter.form_sd, self.draws * (10 if self.adapts and done else 1)))
        if self.adapts and done:
            weights = self._likely(form, done)
            form = self.chance.choice(form, self.draws, p=weights / weights.sum())
        noise = self.chance.normal(0, 1, (self.draws, plan.high + 2))
        return self.best(form, noise, place)

    def _likely(self, form: Floats, done: list[Done]) -> Floats:
        """How well each form explains today's sets."""
        weights = np.full(form.shape, 1e-12)
        told = np.ones_like(form)
        for order, (one, tired) in enumerate(zip(done, self.tiredness, strict=False)):
            could = could_lift(self.world, self.lifter, self.strength_kg * form, one.load, tired)
            left = np.maximum(could - one.reps, 0.0)
            felt = felt_share(self.world, self.lifter, could) * left
            spread = (0.5 + 0.06 * left) * self.lifter.feel_noise * (1.0, 0.9, 0.8)[min(order, 2)] + 0.15
            told = told * np.exp(-0.5 * ((felt - (one.rir or 0.0)) / spread) ** 2) / spread * (could >= one.reps - 0.01)
        return weights + told

    def best(self, form: Floats, noise: Floats, place: int) -> float:
        """The load that lands most often over these days and errors."""
        plan = self.given.plan
        about = self.strength_kg / (1 + (plan.high + plan.target) / (30 * self.lifter.endurance))
        near = self.given.loads[np.argsort(np.abs(np.log(np.maximum(self.given.loads, 0.1) / about)))[:14]]
        found: list[tuple[float, float]] = []
        for load in np.sort(near):
            could = could_lift(self.world, self.lifter, self.strength_kg * form, float(load), self.tired)
            ended: Outcome = perform(self.world, self.lifter, could, plan, place, noise)
            landed, over, _ = judged(plan, ended.reps, ended.left)
            found.append((float(landed.mean()) - 0.0 * float(over.mean()), float(load)))
        return max(found)[1]

    def end(self, day: date, done: list[Done]) -> None:
        pass

    def band(self, day: date) -> tuple[float, float] | None:
        return None
