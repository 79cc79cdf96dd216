"""`chalkpost read`: what a client's message says; one request a line in, one answer a line out."""

import json
import sys
from decimal import Decimal
from pathlib import Path
from typing import Annotated, TextIO

import click
from pydantic import AwareDatetime, Field, JsonValue, ValidationError, model_validator

from bot.cli.readwords import SAMPLE, explain_lines, show_ask
from bot.cli.shapes import ExerciseShape, Name, PerformedShape, Shape, show_number, show_performed, show_problem
from bot.notation.reading import Reading, Request, read_message
from bot.training.pain import PainSaid
from bot.training.units import Unit

LONGEST_TEXT = 100_000
"""Characters of a text that are taken at the door; the reader reads the first 4,096, the chat's own limit."""


class ReadRequest(Shape):
    """A message with what a coach would know beside it."""

    id: JsonValue = None
    text: Annotated[str, Field(max_length=LONGEST_TEXT)]
    unit: Unit
    now: AwareDatetime
    exercises: tuple[ExerciseShape, ...]
    done: tuple[PerformedShape, ...] | None = None
    current: Name | None = None

    @model_validator(mode="after")
    def _names_known(self) -> "ReadRequest":
        names = [e.name for e in self.exercises]
        if len(set(names)) < len(names):
            raise ValueError("exercises: expected each name once")
        for place, done in enumerate(self.done or ()):
            if done.exercise not in names:
                raise ValueError(f"done.{place}.exercise: {done.exercise!r} is none of the exercises")
        if self.current is not None and self.current not in names:
            raise ValueError(f"current: {self.current!r} is none of the exercises")
        return self

    def request(self) -> Request:
        """The request as the reader takes it."""
        return Request(
            text=self.text,
            unit=self.unit,
            now=self.now,
            exercises=tuple(e.planned(self.unit) for e in self.exercises),
            done=tuple(d.performed(self.unit) for d in self.done or ()),
            current=self.current,
        )


def answer(line: str) -> dict[str, object]:
    """The answer to a line: what is wrong with it comes back under `error`."""
    request_id: object = None
    try:
        raw = json.loads(line, parse_float=Decimal)
        if isinstance(raw, dict):
            request_id = raw.get("id")
            request_id = float(request_id) if isinstance(request_id, Decimal) else request_id
        shaped = ReadRequest.model_validate(raw)
    except ValidationError as error:
        return {"id": _plain(request_id), "error": show_problem(error)}
    except (ValueError, RecursionError) as error:
        return {"id": _plain(request_id), "error": f"expected a JSON object on one line: {error}"}
    request = shaped.request()
    return {"id": _plain(request_id), **show_reading(read_message(request), request)}


def _plain(value: object) -> object:
    """An id that JSON can show again."""
    return value if isinstance(value, str | int | float | None) else json.loads(json.dumps(value, default=float))


def show_reading(reading: Reading, request: Request) -> dict[str, object]:
    """A reading in the contract's shape."""
    return {
        "performed": [show_performed(p, request.unit) for p in reading.performed],
        "replaces": [list(key) for key in reading.replaces],
        "skipped": list(reading.skipped),
        "finished": reading.finished,
        "pain": _show_pain(reading.pain),
        "minutes": None if reading.minutes is None else show_number(reading.minutes),
        "day": None if reading.day is None else reading.day.isoformat(),
        "question": reading.question,
        "ask": None if reading.ask is None else show_ask(reading.ask, request.text),
    }


def _show_pain(pain: PainSaid | None) -> dict[str, object] | None:
    if pain is None:
        return None
    side = None if pain.side is None else pain.side.value
    return {"where": pain.where, "score": pain.score, "side": side, "urgent": pain.urgent}


def run(lines: TextIO, out: TextIO) -> None:
    """Answers every line that is not blank, in order, each flushed as it is done."""
    for line in lines:
        if line.strip():
            out.write(json.dumps(answer(line), ensure_ascii=False) + "\n")
            out.flush()


@click.command()
@click.option(
    "--explain", "text", metavar="TEXT", help="Read one message aloud: the reading in words, with its evidence."
)
@click.option(
    "--request",
    "request_file",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="With --explain: a file with the request whose plan to read beside (its text is not used).",
)
def read(text: str | None, request_file: Path | None) -> None:
    """Read training reports: one JSON request a line in, one answer a line out."""
    if text is None:
        if request_file is not None:
            raise click.UsageError("--request goes with --explain")
        run(sys.stdin, sys.stdout)
        return
    request = SAMPLE if request_file is None else _request_of(request_file)
    request = Request(text, request.unit, request.now, request.exercises, request.done, request.current)
    for line in explain_lines(read_message(request), request):
        click.echo(line)


def _request_of(path: Path) -> Request:
    try:
        return ReadRequest.model_validate(json.loads(path.read_text(encoding="utf-8"), parse_float=Decimal)).request()
    except ValidationError as error:
        raise click.UsageError(f"{path}: {show_problem(error)}") from None
    except ValueError as error:
        raise click.UsageError(f"{path}: expected one JSON object: {error}") from None
