"""The frame of a line filter: a JSON object a line in, one a line out, in order, each flushed; errors are answers."""

import json
from collections.abc import Callable
from decimal import Decimal
from typing import TextIO, TypeVar

from pydantic import JsonValue, ValidationError

from bot.cli.shapes import Shape, show_problem

S = TypeVar("S", bound=Shape)


def answer_line(text: str, shape: type[S], answer: Callable[[S], dict[str, object]]) -> dict[str, object]:
    """The answer to a line under its `id`; what is wrong with it comes back under `error`."""
    request_id: JsonValue = None
    try:
        raw = json.loads(text, parse_float=Decimal, parse_constant=_refuse)
        if isinstance(raw, dict) and "id" in raw:
            request_id = json.loads(json.dumps(raw["id"], default=float))
            raw = {**raw, "id": request_id}
        request = shape.model_validate(raw)
    except ValidationError as error:
        return {"id": request_id, "error": show_problem(error)}
    except (ValueError, RecursionError) as error:
        return {"id": request_id, "error": f"expected a JSON object on one line: {error}"}
    return {"id": request_id, **answer(request)}


def answer_lines(lines: TextIO, out: TextIO, answer: Callable[[str], dict[str, object]]) -> None:
    """Answers every line that isn't blank."""
    for text in lines:
        if text.strip():
            out.write(json.dumps(answer(text), ensure_ascii=False) + "\n")
            out.flush()


def _refuse(word: str) -> float:
    raise ValueError(f"{word} is no number in JSON")
