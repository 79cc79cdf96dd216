"""`chalkpost next`: a line in, a line out, by the very function that the chat calls."""

import sys
from collections import OrderedDict
from dataclasses import dataclass, field, replace
from datetime import date
from decimal import Decimal
from typing import Annotated

import click
from pydantic import Field, JsonValue, model_validator

from bot.cli.explained import show_explained
from bot.cli.lines import answer_line, answer_lines
from bot.cli.shapes import Count, Effort, ExerciseShape, LoadNumber, Shape, show_number
from bot.saying import Line
from bot.training.explain import explain
from bot.training.exposure import LiftedSet
from bot.training.lifter import Level
from bot.training.loads import MOST_LOADS, Loadable
from bot.training.plan import LoadRule, PlannedExercise
from bot.training.progress import NextLoads, next_loads
from bot.training.report import Stage
from bot.training.state import State
from bot.training.strength import after_session, begin
from bot.training.units import KG_PER_LB, Load, Unit
from bot.wording.bundle import show_plain


class StepsShape(Shape):
    """Loads as a ladder."""

    first: LoadNumber = Field(alias="from")
    last: LoadNumber = Field(alias="to")
    step: Annotated[Decimal, Field(gt=0, allow_inf_nan=False)]


class LiftedShape(Shape):
    """A set of the history. A load may be a typing error of any size: the engine sets it aside."""

    load: Annotated[Decimal, Field(ge=-1_000_000, le=1_000_000, allow_inf_nan=False)] | None = None
    reps: Count
    rir: Effort | None = None
    stage: Stage | None = None

    def lifted(self, unit: Unit) -> LiftedSet:
        """The set in the engine's shape."""
        kg = None if self.load is None else float(Load.of(self.load, unit).kg)
        return LiftedSet(kg, self.reps, None if self.rir is None else float(self.rir), self.stage or Stage.WORK)


class DayShape(Shape):
    """A session of the history."""

    date: date
    sets: tuple[LiftedShape, ...]
    pain: Annotated[int, Field(ge=0, le=10)] | None = None


class NextRequest(Shape):
    """A request, per the contract."""

    id: JsonValue = None
    exercise: ExerciseShape
    unit: Unit
    loads: Annotated[tuple[LoadNumber, ...], Field(max_length=MOST_LOADS)] | StepsShape
    today: date
    history: tuple[DayShape, ...]
    hold: bool | None = None
    style: LoadRule | None = None
    level: Level | None = None

    @model_validator(mode="after")
    def _check(self) -> "NextRequest":
        for place, day in enumerate(self.history):
            if day.date > self.today:
                raise ValueError(f"history.{place}.date: {day.date} is after today, {self.today}")
        self.loadable()
        return self

    def loadable(self) -> Loadable:
        """The loads; `ValueError` where a ladder is upside down or endless."""
        if isinstance(self.loads, StepsShape):
            return Loadable.steps(self.loads.first, self.loads.last, self.loads.step, self.unit)
        return Loadable.of(self.loads, self.unit)

    def planned(self) -> PlannedExercise:
        """The exercise, with the style asked for."""
        return replace(self.exercise.planned(self.unit), load_rule=self.style or LoadRule.TRACKED)


Session = tuple[date, tuple[LiftedSet, ...], int | None]


@dataclass(slots=True)
class Memory:
    """States of histories already folded, so that asking again after every set costs one session, not ten years."""

    most: int = 1024
    states: OrderedDict[tuple[object, ...], State] = field(default_factory=OrderedDict)

    def state(self, empty: State, exercise: PlannedExercise, past: tuple[Session, ...]) -> State:
        """The state after `past`, from the longest part of it that is remembered (all, or all but the last session)."""
        base = (empty.level, empty.region, empty.load_style, exercise.sets)
        known = self.states.get((*base, past))
        if known is None:
            state, rest = self.states.get((*base, past[:-1]), empty), past[-1:]
            if state is empty:
                rest = past
            for day, sets, pain in rest:
                state = after_session(state, day=day, sets=sets, prescribed=exercise.sets, pain=pain)
            known = state
        self.states[(*base, past)] = known
        self.states.move_to_end((*base, past))
        while len(self.states) > self.most:
            self.states.popitem(last=False)
        return known


def answer(text: str, memory: Memory, *, explained: bool = False) -> dict[str, object]:
    """The answer to a line: what is wrong with it comes back under `error`."""
    return answer_line(text, NextRequest, lambda request: _answer(request, memory, explained=explained))


def _answer(request: NextRequest, memory: Memory, *, explained: bool) -> dict[str, object]:
    exercise, loadable = request.planned(), request.loadable()
    past, done, pain = _split(request)
    empty = begin(level=request.level, region=exercise.region, load_style=exercise.load_style)
    state = memory.state(empty, exercise, past)
    found = next_loads(state, exercise, loadable, today=request.today, done=done, hold=bool(request.hold), pain=pain)
    shown = show_next(found, request.unit)
    if explained:
        whole = explain(state, exercise, loadable, found, today=request.today, done=done)
        shown["explain"] = show_explained(whole, found, request.unit)
    return shown


def _split(request: NextRequest) -> tuple[tuple[Session, ...], tuple[LiftedSet, ...], int | None]:
    """Past sessions by day, one a day, and today's sets and pain where the last entry bears today's date."""
    days: dict[date, Session] = {}
    for day in sorted(request.history, key=lambda d: d.date):
        sets = tuple(s.lifted(request.unit) for s in day.sets)
        _, before, hurt = days.get(day.date, (day.date, (), None))
        pain = hurt if day.pain is None else max(day.pain, hurt or 0)
        days[day.date] = (day.date, (*before, *sets), pain)
    _, done, pain = days.pop(request.today, (request.today, (), None))
    return tuple(days.values()), done, pain


def show_next(found: NextLoads, unit: Unit) -> dict[str, object]:
    """The answer in the contract's shape."""
    per_unit = 1.0 if unit is Unit.KG else 1 / float(KG_PER_LB)
    estimate = found.e1rm
    return {
        "sets": [
            {
                "load": _load(s.load),
                "reps": [s.reps.low, s.reps.high],
                "rir": None if s.rir is None else show_number(s.rir),
            }
            for s in found.sets
        ],
        "finish": [{"set": f.set, "loads": [_load(load) for load in f.loads]} for f in found.finish],
        "e1rm": None
        if estimate is None
        else {"mean": round(estimate.mean_kg * per_unit, 3), "sd": round(estimate.sd_kg * per_unit, 3)},
        "warmup": [{"load": _load(step.load), "reps": step.reps} for step in found.warmup],
        "reason": show_plain(Line(found.reason.key, found.reason.args)),
        "find": found.find,
    }


def _load(load: Load | None) -> int | float | None:
    return None if load is None else show_number(load.amount)


@click.command("next")
@click.option(
    "--explain", "explained", is_flag=True, help="Add the whole for the coach: band, chances, what was set aside."
)
def next_(explained: bool) -> None:
    """The loads of the next session: one JSON request a line in, one answer a line out."""
    memory = Memory()
    answer_lines(sys.stdin, sys.stdout, lambda text: answer(text, memory, explained=explained))
