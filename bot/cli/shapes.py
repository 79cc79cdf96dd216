"""The shapes that the line filters share, checked at the door: `exercise`, `set` and `performed` of a request.

Unknown keys are an error, each error names its place. Numbers come in as JSON numbers; loads are kept exactly.
"""

from decimal import Decimal
from typing import Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, ValidationError, field_validator

from bot.training.plan import Drop, Finish, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, Region, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit

LoadNumber = Annotated[Decimal, Field(ge=-5000, le=5000, allow_inf_nan=False)]
"""A load in the request's unit."""
Effort = Annotated[Decimal, Field(ge=0, le=10, multiple_of=Decimal("0.5"), allow_inf_nan=False)]
"""Repetitions in reserve, halves allowed."""
Count = Annotated[int, Field(ge=0, le=100_000, strict=True)]
"""Repetitions, seconds or metres."""
Name = Annotated[str, StringConstraints(min_length=1, max_length=200, strip_whitespace=True)]


class Shape(BaseModel):
    """A JSON object that takes no unknown keys and never changes."""

    model_config = ConfigDict(extra="forbid", frozen=True)


class FinishShape(Shape):
    """A prescribed finish: `{"kind": "drop", "times", "percent"}` or `{"kind": "mini", "reps", "rest_s"}`."""

    kind: Literal["drop", "mini"]
    times: Annotated[int, Field(ge=1, le=10)] | None = None
    percent: tuple[int, int] | None = None
    reps: Annotated[int, Field(ge=1, le=100)] | None = None
    rest_s: tuple[int, int] | None = None

    def finish(self) -> Finish:
        """The finish as the trade's value; a `ValueError` where keys of the other kind are given."""
        match self.kind:
            case "drop":
                return Drop(times=self.times or 1, percent=self.percent or (20, 40))
            case "mini":
                return Mini(reps=self.reps or 4, rest_s=self.rest_s or (3, 5))


class SetShape(Shape):
    """One prescribed set."""

    reps: tuple[Count, Count]
    rir: Effort | None = None
    load: LoadNumber | None = None
    rest_s: Count | None = None
    finish: FinishShape | None = None

    @field_validator("reps")
    @classmethod
    def _in_order(cls, reps: tuple[int, int]) -> tuple[int, int]:
        if reps[0] > reps[1]:
            raise ValueError("expected [low, high] with low not above high")
        return reps

    def planned(self, unit: Unit) -> PlannedSet:
        """The set as prescribed, its load in this unit."""
        return PlannedSet(
            reps=RepRange(*self.reps),
            rir=self.rir,
            load=None if self.load is None else Load.of(self.load, unit),
            rest_s=self.rest_s,
            finish=None if self.finish is None else self.finish.finish(),
        )


class ExerciseShape(Shape):
    """One prescribed exercise."""

    name: Name
    aliases: tuple[Name, ...] | None = None
    load_style: LoadStyle = LoadStyle.TOTAL
    sides: Literal[1, 2] = 1
    measure: Measure | None = None
    region: Region | None = None
    sets: tuple[SetShape, ...]

    def planned(self, unit: Unit) -> PlannedExercise:
        """The exercise as prescribed, its loads in this unit."""
        return PlannedExercise(
            name=self.name,
            sets=tuple(s.planned(unit) for s in self.sets),
            aliases=self.aliases or (),
            load_style=self.load_style,
            sides=self.sides,
            measure=self.measure or Measure.REPS,
            region=self.region,
        )


class PerformedShape(Shape):
    """A set as done."""

    exercise: Name
    set: Annotated[int, Field(ge=1, le=1000)] | None = None
    stage: Stage = Stage.WORK
    load: LoadNumber | None = None
    unit: Unit | None = None
    reps: Count
    rir: Effort | None = None
    side: Side | None = None

    def performed(self, unit: Unit) -> Performed:
        """The set as done; `unit` is that of the request where the set names none."""
        return Performed(
            exercise=self.exercise,
            set=self.set,
            stage=self.stage,
            load=None if self.load is None else Load.of(self.load, self.unit or unit),
            reps=self.reps,
            rir=self.rir,
            side=self.side,
        )


def show_number(value: Decimal) -> int | float:
    """A decimal as a JSON number: whole where it is whole."""
    return int(value) if value == value.to_integral_value() else float(value)


def show_performed(performed: Performed, unit: Unit) -> dict[str, str | int | float | None]:
    """A set as done in the contract's shape; `unit` is the request's, shown where there is no load."""
    load = performed.load
    return {
        "exercise": performed.exercise,
        "set": performed.set,
        "stage": performed.stage.value,
        "load": None if load is None else show_number(load.amount),
        "unit": (unit if load is None else load.unit).value,
        "reps": performed.reps,
        "rir": None if performed.rir is None else show_number(performed.rir),
        "side": None if performed.side is None else performed.side.value,
    }


_PLAIN = {
    "model_type": "expected a JSON object",
    "model_attributes_type": "expected a JSON object",
    "extra_forbidden": "no such key is known here",
}
"""What the checking library says in words of its own, in ours."""


def show_problem(error: ValidationError) -> str:
    """What is wrong with a request, where, and what is expected; one sentence for each place, at most five."""
    lines = []
    for problem in error.errors(include_url=False)[:5]:
        place = ".".join(str(part) for part in problem["loc"]) or "the line"
        said = problem.get("input")
        message = _PLAIN.get(problem["type"]) or problem["msg"].removeprefix("Value error, ")
        said = float(said) if isinstance(said, Decimal) else said
        shown = "" if isinstance(said, dict | list | tuple) else f" (got {said!r:.60})"
        lines.append(f"{place}: {message}{shown}")
    return "; ".join(lines)
