"""A reading in words: the question that it asks, and how each value came about."""

from collections.abc import Iterator, Mapping
from datetime import UTC, datetime

from bot.notation.answer import Ask, Evidence, Meaning, Reading, Request, Source
from bot.notation.printer import show_set
from bot.training.plan import Drop, LoadStyle, Measure, PlannedExercise, PlannedSet, RepRange
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from bot.wording import show


def show_ask(ask: Ask, text: str) -> str:
    """The question with the readings that it offers."""
    start, end = ask.span
    words = " ".join((text[start:end].strip() or text).split())
    question = show(f"ask-{ask.question}", words=words if len(words) <= 80 else words[:79] + "…")
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
    rest = [e for e in reading.evidence if e.row is None]
    yield from ("  " + _told(item, request.text) for item in rest)


def _said(reading: Reading, request: Request) -> Iterator[str]:
    by_name = {e.name: e for e in request.exercises}
    for exercise, number in reading.replaces:
        yield show("explain-replaces", exercise=exercise, set=number)
    for place, row in enumerate(reading.performed):
        yield _row(row, by_name[row.exercise])
        of_row = {e.meaning: e for e in reading.evidence if e.row == place}
        yield from ("  " + line for line in _why(of_row, request.text, by_name[row.exercise].measure))
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


def _why(of_row: Mapping[Meaning, Evidence], text: str, measure: Measure) -> Iterator[str]:
    """Each value of a set with its words, and what was not said with where it is from."""
    unsaid = []
    for meaning, item in of_row.items():
        if meaning is Meaning.UNIT:
            continue
        if meaning is Meaning.STAGE and item.source is not Source.SAID and item.value == Stage.WORK.value:
            continue
        if meaning is Meaning.LOAD and item.source is Source.SAID:
            yield _load(item, of_row[Meaning.UNIT], text)
        elif item.source is Source.SAID:
            yield _told(item, text, measure)
        else:
            value = show("explain-set-number", set=item.value) if meaning is Meaning.SET_NUMBER else _value(item)
            unsaid.append(show("explain-value-from", value=value, **{"from": _source(item)}))
    if unsaid:
        yield show("explain-unsaid", values=", ".join(unsaid))


def _load(load: Evidence, unit: Evidence, text: str) -> str:
    """A load with its words, and where its unit is from where those do not say it."""
    if unit.source is Source.SAID and load.span[0] <= unit.span[0] and unit.span[1] <= load.span[1]:
        return _told(load, text)
    if unit.source is Source.SAID:
        why = show("explain-unit-said", unit=unit.value, words=_words(unit, text))
    elif unit.source is Source.OWN:
        why = show("explain-unit-own", unit=unit.value)
    else:
        why = show("explain-value-from", value=unit.value, **{"from": _source(unit)})
    meaning = show("meaning-load")
    return show("explain-evidence-from", words=_words(load, text), meaning=meaning, value=load.value, **{"from": why})


def _told(item: Evidence, text: str, measure: Measure = Measure.REPS) -> str:
    """One value with the words that gave it."""
    named = measure if item.meaning is Meaning.REPS else item.meaning
    words, meaning = _words(item, text), show(f"meaning-{named.value.replace('_', '-')}")
    if not item.value:
        return show("explain-evidence-alone", words=words, meaning=meaning)
    return show("explain-evidence", words=words, meaning=meaning, value=_value(item))


def _value(item: Evidence) -> str:
    """The value in notation; repetitions beside other values say what they are."""
    unsaid = item.meaning is Meaning.REPS and item.source is not Source.SAID
    return f"{item.value} reps" if unsaid and item.value.isdigit() else item.value


def _source(item: Evidence) -> str:
    return show(f"source-{item.source.value.replace('_', '-')}")


def _words(item: Evidence, text: str) -> str:
    return " ".join(text[slice(*item.span)].split())


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
