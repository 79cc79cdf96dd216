"""`chalkpost week`: a week's work laid over the days that there are, by the very function that the chat calls."""

import sys
from decimal import Decimal
from fractions import Fraction
from time import monotonic
from typing import Annotated, Literal

import click
from pydantic import Field, JsonValue, model_validator

from bot.cli.lines import answer_line, answer_lines
from bot.cli.shapes import Name, Shape, show_number
from bot.training.plan import Region
from bot.training.week import lay_week
from bot.training.week_story import Cut, Why, minutes_of, muscle_weeks, name_days, tell_cuts
from bot.training.week_values import (
    MOST_MUSCLES,
    REST_HOURS,
    DayRoom,
    Fault,
    Laying,
    Week,
    Weekday,
    WeekProblem,
    WorkDone,
    WorkItem,
    check_week,
)
from bot.wording import show

Minutes = Annotated[Decimal, Field(ge=0, le=10_080, allow_inf_nan=False)]
"""Minutes, up to those of a week."""
Sets = Annotated[int, Field(ge=1, le=100, strict=True)]
DayWord = Literal["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]
MOST_ITEMS = 200


class ItemShape(Shape):
    """An item of the week's work."""

    name: Name
    sets: Sets
    minutes: Minutes
    direct: Annotated[tuple[Name, ...], Field(max_length=MOST_MUSCLES)]
    indirect: Annotated[tuple[Name, ...], Field(max_length=MOST_MUSCLES)] | None = None
    priority: Literal[1, 2, 3]
    region: Region
    partner: Name | None = Field(default=None, alias="with")

    def item(self) -> WorkItem:
        """The item as the trade's value."""
        return WorkItem(
            name=self.name,
            sets=self.sets,
            minutes=self.minutes,
            direct=self.direct,
            priority=self.priority,
            region=self.region,
            indirect=self.indirect or (),
            partner=self.partner,
        )


class DayShape(Shape):
    """A day to train on."""

    day: DayWord
    minutes: Minutes


class DoneShape(Shape):
    """Work that is behind us."""

    name: Name
    sets: Annotated[int, Field(ge=0, le=1000, strict=True)]
    day: DayWord


class WeekRequest(Shape):
    """A request, per the contract."""

    id: JsonValue = None
    items: Annotated[tuple[ItemShape, ...], Field(max_length=MOST_ITEMS)]
    days: tuple[DayShape, ...]
    rest_hours: Annotated[Decimal, Field(ge=0, le=168, allow_inf_nan=False)] | None = None
    done: Annotated[tuple[DoneShape, ...], Field(max_length=MOST_ITEMS * 7)] | None = None

    @model_validator(mode="after")
    def _sound(self) -> "WeekRequest":
        if problems := check_week(self.week()):
            raise ValueError("; ".join(_show_problem(problem) for problem in problems[:5]))
        return self

    def week(self) -> Week:
        """The request as the trade's value."""
        return Week(
            items=tuple(item.item() for item in self.items),
            days=tuple(DayRoom(_read_day(d.day), d.minutes) for d in self.days),
            rest_hours=REST_HOURS if self.rest_hours is None else self.rest_hours,
            done=tuple(WorkDone(d.name, d.sets, _read_day(d.day)) for d in self.done or ()),
        )


def _read_day(word: str) -> Weekday:
    return Weekday[word.upper()]


def _show_day(day: Weekday) -> str:
    return day.name.title()


def _show_problem(problem: WeekProblem) -> str:
    match problem.fault:
        case Fault.DAY_TWICE:
            return f"days.{problem.place}.day: {problem.name.title()} stands there before, expected each day once"
        case Fault.PARTNER_UNKNOWN:
            return f"items.{problem.place}.with: {problem.name!r} is none of the items, expected the name of one"
        case Fault.PARTNER_ITSELF:
            return f"items.{problem.place}.with: {problem.name!r} is the item itself, expected the name of another"
        case Fault.PARTNER_SEVERAL:
            return f"items.{problem.place}.with: several items are named {problem.name!r}, expected one of that name"
        case Fault.DONE_UNKNOWN:
            return f"done.{problem.place}.name: {problem.name!r} is none of the items, expected the name of one"
        case Fault.MUSCLES_MANY:
            return f"items: {problem.name} different muscles in `direct`, expected at most {MOST_MUSCLES}"


def answer(text: str) -> dict[str, object]:
    """The answer to a line."""
    return answer_line(text, WeekRequest, lambda request: show_week(request.week()))


def show_week(week: Week) -> dict[str, object]:
    """The week laid, in the contract's shape."""
    laying = lay_week(week, clock=monotonic)
    minutes, names = minutes_of(week, laying), name_days(week, laying)
    cuts = tell_cuts(week, laying)
    placed = list(zip(week.items, laying.sets, laying.places, strict=True))
    return {
        "days": [
            {
                "day": _show_day(room.day),
                "minutes": _minutes(minutes[at]),
                "items": [{"name": item.name, "sets": kept} for item, kept, place in placed if place == at],
                "label": show(f"weekplan-label-{names[at].value}"),
            }
            for at, room in enumerate(week.days)
        ],
        "cut": [{"name": cut.item.name, "sets": cut.sets, "why": _why(week, cut)} for cut in cuts],
        "muscles": {
            muscle: {"wanted": show_number(m.wanted), "planned": show_number(m.planned), "gap_h": m.gap_h}
            for muscle, m in muscle_weeks(week, laying).items()
        },
        "clashes": laying.clashes,
        "optimal": laying.proven,
        "reason": show_reason(week, laying, cuts),
    }


def show_reason(week: Week, laying: Laying, cuts: tuple[Cut, ...]) -> str:
    """The week in a few short sentences: what was cut, what clashes, how long the longest day is."""
    work = sum((s * n for s, n in zip(week.minutes_a_set(), week.sets_left(), strict=True)), Fraction(0))
    room = sum((Fraction(day.minutes) for day in week.days), Fraction(0))
    if not week.days:
        return show("weekplan-no-days")
    said = [
        show(
            "weekplan-cut",
            cut=sum(cut.sets for cut in cuts),
            sets=sum(week.sets_left()),
            work=_tenths(work),
            room=_tenths(room),
        )
        if cuts
        else show("weekplan-all")
    ]
    clashes = "weekplan-clashes" if laying.clashes else "weekplan-clashes-none"
    said.append(show(clashes, clashes=laying.clashes, hours=week.rest_hours))
    said.append(show("weekplan-longest", minutes=_tenths(max(minutes_of(week, laying)))))
    if not laying.proven:
        said.append(show("weekplan-unproven"))
    return " ".join(said)


def _why(week: Week, cut: Cut) -> str:
    share = Fraction(cut.item.minutes) / cut.item.sets
    longest = max((day.minutes for day in week.days), default=Decimal(0))
    match cut.why:
        case Why.NO_DAYS:
            return show("weekplan-why-no-days")
        case Why.TOO_LONG:
            return show("weekplan-why-too-long", minutes=_tenths(share), longest=longest)
        case Why.LOWER_FIRST:
            return show("weekplan-why-lower-first", priority=cut.item.priority)
        case Why.SHORT:
            return show("weekplan-why-short", priority=cut.item.priority)
        case Why.PARTNER:
            return show("weekplan-why-partner")
        case Why.SEAMS:
            return show("weekplan-why-seams", minutes=_tenths(share))


def _minutes(minutes: Fraction) -> int | float:
    return int(minutes) if minutes.denominator == 1 else round(float(minutes), 6)


def _tenths(minutes: Fraction) -> Decimal:
    """Minutes for reading, to a tenth."""
    return Decimal(round(minutes * 10)) / 10


@click.command()
def week() -> None:
    """Lay a week's work over its days: one JSON request a line in, one answer a line out."""
    answer_lines(sys.stdin, sys.stdout, answer)
