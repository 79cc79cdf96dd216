"""A reading in words: the question that it asks, and how each value came about."""

from collections.abc import Iterator
from datetime import UTC, datetime

from bot.notation.answer import Ask, Reading, Request
from bot.notation.printer import show_set
from bot.training.plan import Drop, LoadStyle, Measure, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from bot.wording import show


def show_ask(ask: Ask, text: str) -> str:
    """The question with the readings that it offers."""
    start, end = ask.span
    words = " ".join((text[start:end].strip() or text).split())
    question = show(f"ask-{ask.kind.value.replace('_', '-')}", words=words if len(words) <= 80 else words[:79] + "…")
    labels = list(dict.fromkeys(c.label for c in ask.choices if c.label))
    if not labels:
        return question
    if len(labels) == 1:
        return show("ask-offered", question=question, choices=labels[0] + "?")
    choices = show("ask-choice-or", first=", ".join(labels[:-1]), last=labels[-1])
    return show("ask-offered", question=question, choices=choices)


def explain_lines(reading: Reading, request: Request) -> Iterator[str]:
    """The reading line by line: what it stores, what it asks, and which words gave what."""
    yield show("explain-text", text=" ".join(request.text.split()))
    said = list(_said(reading, request))
    yield from said or [show("explain-nothing")]
    for item in reading.evidence:
        start, end = item.span
        words = " ".join(request.text[start:end].split())
        yield "  " + show(
            "explain-evidence",
            words=words,
            meaning=show(f"meaning-{item.meaning.value.replace('_', '-')}"),
            value=item.value,
        )


def _said(reading: Reading, request: Request) -> Iterator[str]:
    by_name = {e.name: e for e in request.exercises}
    for exercise, number in reading.replaces:
        yield show("explain-replaces", exercise=exercise, set=number)
    for row in reading.performed:
        yield _row(row, by_name[row.exercise])
    for name in reading.skipped:
        yield show("explain-skipped", exercise=name)
    if reading.finished:
        yield show("explain-finished")
    if reading.pain is not None:
        where = reading.pain.where or show("explain-pain-nowhere")
        side = f"{reading.pain.side.value} " if reading.pain.side is not None else ""
        yield show("explain-pain", where=side + where, urgent="yes" if reading.pain.urgent else "no")
        if reading.pain.score is not None:
            yield show("explain-score", score=reading.pain.score)
    if reading.minutes is not None:
        yield show("explain-minutes", minutes=reading.minutes)
    if reading.day is not None:
        yield show("explain-day", day=reading.day.isoformat())
    if reading.question:
        yield show("explain-question")
    if reading.ask is not None:
        yield show("explain-ask", question=show_ask(reading.ask, request.text))
        for choice in reading.ask.choices:
            yield "  " + show("explain-choice", choice=choice.label)


def _row(row: Performed, exercise: PlannedExercise) -> str:
    done = show_set(row, exercise.measure, exercise.load_style)
    if row.stage is Stage.WARMUP or row.set is None:
        return show("explain-warmup", exercise=row.exercise, done=done)
    return show("explain-set", exercise=row.exercise, set=row.set, done=done)


def _planned(load: int | str | None, low: int, high: int, finish: Drop | None = None) -> PlannedSet:
    return PlannedSet(RepRange(low, high), None, None if load is None else Load.of(load, Unit.KG), None, finish)


SAMPLE = Request(
    text="",
    unit=Unit.KG,
    now=datetime(2026, 3, 4, 18, 0, tzinfo=UTC),
    exercises=(
        PlannedExercise("Bench Press", tuple(_planned(60, 4, 6) for _ in range(3)), aliases=("bench",)),
        PlannedExercise(
            "Lat Pulldown", (_planned(50, 10, 12), _planned(50, 10, 12), _planned(50, 10, 12, Drop(1, (20, 40))))
        ),
        PlannedExercise(
            "Split Squat", tuple(_planned(16, 8, 10) for _ in range(3)), load_style=LoadStyle.PER_HAND, sides=2
        ),
        PlannedExercise(
            "Plank", tuple(_planned(None, 40, 60) for _ in range(2)), load_style=LoadStyle.NONE, measure=Measure.SECONDS
        ),
    ),
)
"""The plan that `--explain` reads beside where no request is given."""
