"""The sample programme that a coach can give with one tap. Data: `samples.toml`."""

import tomllib
from decimal import Decimal
from functools import cache
from importlib.resources import files

from bot.training.people import Programme, Workout
from bot.training.plan import Drop, Finish, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, Region, RepRange

SAMPLE_ID = "sample-two-short-days"

_Table = dict[str, object]


@cache
def sample_programme() -> Programme:
    """The sample: two whole-body workouts that rotate, without loads (they are found, then tracked)."""
    text = files("bot.training").joinpath("samples.toml").read_text(encoding="utf-8")
    data = tomllib.loads(text)
    workouts = tuple(Workout(w["title"], tuple(_exercise(e) for e in w["exercises"])) for w in data["workouts"])
    return Programme(SAMPLE_ID, data["title"], workouts, data["note"])


def _exercise(data: _Table) -> PlannedExercise:
    return PlannedExercise(
        name=_text(data, "name"),
        aliases=_texts(data, "aliases"),
        load_style=LoadStyle(_text(data, "load_style") or LoadStyle.TOTAL),
        sides=_number(data, "sides", 1),
        measure=Measure(_text(data, "measure") or Measure.REPS),
        region=Region(_text(data, "region")),
        cue=_text(data, "cue"),
        pair=_text(data, "pair"),
        muscles=_texts(data, "muscles"),
        muscles_indirect=_texts(data, "muscles_indirect"),
        equipment=_text(data, "equipment"),
        priority=_number(data, "priority", 2),
        setup_s=_number(data, "setup_s", 60),
        sets=tuple(_set(s) for s in _tables(data, "sets")),
    )


def _set(data: _Table) -> PlannedSet:
    low, high = _pair(data, "reps")
    rir = _text(data, "rir")
    return PlannedSet(
        RepRange(low, high), Decimal(rir) if rir else None, None, _number(data, "rest_s", 90), _finish(data)
    )


def _finish(data: _Table) -> Finish | None:
    match data.get("drop"), data.get("mini"):
        case {"times": int(times), "percent": [int(low), int(high)]}, None:
            return Drop(times, (low, high))
        case None, {"reps": int(reps), "rest_s": [int(low), int(high)]}:
            return Mini(reps, (low, high))
        case _:
            return None


def _text(data: _Table, key: str) -> str:
    return str(data.get(key, ""))


def _texts(data: _Table, key: str) -> tuple[str, ...]:
    value = data.get(key, [])
    return tuple(str(v) for v in value) if isinstance(value, list) else ()


def _number(data: _Table, key: str, default: int) -> int:
    value = data.get(key, default)
    return value if isinstance(value, int) else default


def _pair(data: _Table, key: str) -> tuple[int, int]:
    match data[key]:
        case [int(low), int(high)]:
            return low, high
        case _:
            raise ValueError(f"{key}: two whole numbers are expected")


def _tables(data: _Table, key: str) -> list[_Table]:
    value = data.get(key, [])
    return [dict(v) for v in value] if isinstance(value, list) else []
