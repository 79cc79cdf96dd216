"""Cells to what a coach prescribes: repetitions, effort, loads, rests, tempo, weeks. A value, `None` or a `Problem`."""

import re
from dataclasses import dataclass
from decimal import Decimal

from bot.sheets.cells import NUMBER, faulty, read_number, read_span, shown_text, whole_span
from bot.sheets.problems import Fault, Problem
from bot.sheets.table import Cell, Kind
from bot.training.plan import Measure, RepRange, Tempo
from bot.training.units import Load, Unit

MOST = {Measure.REPS: 200, Measure.SECONDS: 7_200, Measure.METRES: 20_000}
"""Repetitions, seconds and metres of a set."""
MOST_LOAD = 2_000
MOST_REST_S = 1_800
LEAST_BARE_REST = 15
"""A rest without unit below this may be minutes as well as seconds: it is asked about."""
MOST_WEEK = 104
_SECONDS, _MINUTES = ("s", "sec", "secs", "second", "seconds", '"', "″"), ("min", "mins", "minute", "minutes", "'", "′")
_METRES = ("m", "metre", "metres", "meter", "meters")
_REPS = ("rep", "reps", "repetition", "repetitions", "x", "times")
_TAIL = re.compile(r"(.*?\d)\s*([a-z\"'″′]+)\.?")
_EFFORT = re.compile(rf"(?:(rpe|rir|@)\s*({NUMBER})|({NUMBER})\s*(rpe|rir|left|in reserve|reps left|reps in reserve))")
_BARE_EFFORT = re.compile(NUMBER)
_LOAD = re.compile(
    rf"(add|added|plus|\+|assist|assisted|assistance|minus|-|\u2212)?\s*({NUMBER})\s*(kg|kgs|kilo|kilos|lb|lbs|pounds?)?"
    r"\s*(added|assist|assisted|assistance)?"
)
_ASSISTING = ("assist", "assisted", "assistance", "minus", "-", "\u2212")
_BODY = ("bodyweight", "body weight", "bw", "own weight")


@dataclass(frozen=True, slots=True)
class Counted:
    """A range and what it counts; `None` where the cell doesn't say."""

    reps: RepRange
    measure: Measure | None


def read_reps(cell: Cell) -> Counted | Problem | None:
    """`8-10`, `5`, `30-60 s`, `1-2 min`, `40 m`, `8 reps`."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    found = shown_text(cell)
    text, unit = _apart(re.sub(r"\s*(each|per) (side|leg|arm)\.?$", "", cell.text.lower()))
    match unit:
        case "":
            measure, times = None, 1
        case unit if unit in _REPS:
            measure, times = Measure.REPS, 1
        case unit if unit in _SECONDS:
            measure, times = Measure.SECONDS, 1
        case unit if unit in _MINUTES:
            measure, times = Measure.SECONDS, 60
        case unit if unit in _METRES:
            measure, times = Measure.METRES, 1
        case _:
            return Problem(Fault.NOT_A_RANGE, found, _range_hint(cell.text))
    if cell.kind is Kind.PERCENT:
        return Problem(Fault.NOT_A_RANGE, found, "8-10")
    span = (
        _times(text, times)
        if times > 1
        else whole_span(text, found, 1, MOST[measure or Measure.METRES], _range_hint(text))
    )
    if span is None:
        return Problem(Fault.NOT_A_RANGE, found, "60-90 s")
    return span if isinstance(span, Problem) else Counted(RepRange(*span), measure)


def _times(text: str, times: int) -> tuple[int, int] | None:
    span = read_span(text)
    if span is None or span[0] > span[1] or span[0] <= 0 or span[1] * times > MOST[Measure.SECONDS]:
        return None
    return round(span[0] * times), round(span[1] * times)


def _range_hint(text: str) -> str:
    """What to write instead of something like it: the numbers in it, or one number and two more."""
    numbers = [int(n) for n in re.findall(r"\d{1,3}", text)][:2]
    match numbers:
        case [one, other] if one != other:
            return f"{min(one, other)}-{max(one, other)}"
        case [one, *_] if one > 0:
            return f"{one}-{one + 2}"
        case _:
            return "8-10"


def _apart(text: str) -> tuple[str, str]:
    """Number and the unit after it."""
    found = _TAIL.fullmatch(text.strip())
    return (found[1], found[2]) if found else (text.strip(), "")


def read_effort(cell: Cell, heading: str) -> Decimal | Problem | None:
    """Repetitions in reserve: `RIR 2`, `RPE 8`, `2 left`; a bare number where the heading says which."""
    if (problem := faulty(cell)) is not None:
        return problem
    text = cell.text.lower()
    if not text:
        return None
    if text in ("to failure", "failure"):
        return Decimal(0)
    found = _EFFORT.fullmatch(text)
    if found is not None:
        word, number = found[1] or found[4], read_number(found[2] or found[3])
    elif _BARE_EFFORT.fullmatch(text) and cell.kind is not Kind.PERCENT:
        word, number = _scale_of(heading), read_number(text)
        if not word:
            return Problem(Fault.BARE_EFFORT, shown_text(cell), f"RIR {text} or RPE {text}")
    else:
        return Problem(Fault.NOT_EFFORT, shown_text(cell), "RIR 2 or RPE 8")
    if number is None:
        return Problem(Fault.NOT_EFFORT, shown_text(cell), "RIR 2 or RPE 8")
    is_rpe = word in ("rpe", "@")
    if number * 2 != (number * 2).to_integral_value() or not (1 if is_rpe else 0) <= number <= 10:
        return Problem(Fault.NOT_EFFORT, shown_text(cell), "RIR 2 or RPE 8")
    return 10 - number if is_rpe else number


def _scale_of(heading: str) -> str:
    words = re.findall(r"[a-z]+", heading.lower())
    return "rpe" if "rpe" in words else "rir" if "rir" in words or "reserve" in words else ""


def read_load(cell: Cell, unit: Unit | None) -> Load | Problem | None:
    """`60 kg`, `add 10 kg`, `assist 20 kg`, `body weight`; `unit` is meant where none is written."""
    if (problem := faulty(cell)) is not None:
        return problem
    text = cell.text.lower()
    if not text:
        return None
    if text in _BODY:
        return Load(0, unit or Unit.KG)
    found = _LOAD.fullmatch(text)
    number = None if found is None or cell.kind is Kind.PERCENT else read_number(found[2])
    if found is None or number is None or (found[1] and found[4]):
        return Problem(Fault.NOT_A_LOAD, shown_text(cell), "60 kg")
    written = Unit.LB if (found[3] or "").startswith(("lb", "pound")) else Unit.KG if found[3] else unit
    if written is None:
        return Problem(Fault.NO_UNIT, shown_text(cell), f"{text} kg or {text} lb")
    if number > MOST_LOAD:
        return Problem(Fault.OUT_OF_RANGE, shown_text(cell), f"0-{MOST_LOAD}")
    return Load.of(-number if (found[1] or found[4]) in _ASSISTING else number, written)


def unit_of(text: str) -> Unit | None:
    """The unit that a heading names."""
    words = re.findall(r"[a-z]+", text.lower())
    return Unit.KG if "kg" in words else Unit.LB if "lb" in words or "lbs" in words else None


def read_seconds(cell: Cell, heading: str) -> int | Problem | None:
    """A rest or time in seconds: `90 s`, `1.5 min`; a bare number is seconds from 15 on, or as the heading says."""
    span = read_seconds_span(cell, heading, LEAST_BARE_REST)
    if not isinstance(span, tuple):
        return span
    return span[0] if span[0] == span[1] else Problem(Fault.NOT_A_REST, shown_text(cell), f"{span[1]} s")


def read_seconds_span(cell: Cell, heading: str, least_bare: int) -> tuple[int, int] | Problem | None:
    """A range of seconds: `3-5 s`. A bare number under `least_bare` is asked about."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    found = shown_text(cell)
    text, unit = _apart(cell.text.lower())
    if re.fullmatch(r"\d{1,2}:\d{2}", text):
        return Problem(Fault.CLOCK, found, f"{int(text[:-3]) * 60 + int(text[-2:])} s")
    span = read_span(text)
    if span is None or unit not in ("", *_SECONDS, *_MINUTES) or cell.kind is Kind.PERCENT:
        return Problem(Fault.NOT_A_REST, found, "90 s or 2 min")
    unit = unit or _time_unit_of(heading)
    if not unit and 0 < span[1] < least_bare:
        return Problem(Fault.BARE_REST, found, f"{text} min or {text} s")
    low, high = (n * 60 if unit in _MINUTES else n for n in span)
    if low > high or high > MOST_REST_S or any(n != n.to_integral_value() for n in (low, high)):
        return Problem(Fault.NOT_A_REST, found, "90 s or 2 min")
    return int(low), int(high)


def _time_unit_of(heading: str) -> str:
    words = re.findall(r"[a-z]+", heading.lower())
    return "s" if {"s", "sec", "secs", "seconds"} & {*words} else "min" if {"min", "minutes"} & {*words} else ""


def read_tempo(cell: Cell) -> Tempo | Problem | None:
    """`3-1-X-0`, `3 1 x 0`, `31X0`: lowering, at the bottom, lifting, at the top."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    text = cell.text.lower()
    parts = (
        list(text) if re.fullmatch(r"[0-9x]{4}", text) else [p for p in re.split(r"[-\u2010-\u2015/\s.]+", text) if p]
    )
    is_sound = len(parts) == 4 and all(
        re.fullmatch(r"\d{1,2}", p) or (n == 2 and p == "x") for n, p in enumerate(parts)
    )
    if not is_sound or cell.kind is Kind.PERCENT:
        return Problem(Fault.NOT_A_TEMPO, shown_text(cell), "3-1-X-0")
    lower, stretched, lift, top = parts
    return Tempo(int(lower), int(stretched), None if lift == "x" else int(lift), int(top))


def read_link(cell: Cell) -> str | Problem | None:
    """A web address."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    if not re.fullmatch(r"https?://[^\s<>\"']{3,490}", cell.text):
        return Problem(Fault.NOT_A_LINK, shown_text(cell), "https://example.org/squat")
    return cell.text


def read_weeks(cell: Cell) -> tuple[int, ...] | Problem | None:
    """`4, 8, 10-12`: numbers of weeks, rising, each once."""
    if (problem := faulty(cell)) is not None:
        return problem
    if not cell.text:
        return None
    weeks: set[int] = set()
    for part in re.split(r"[,;&]|\band\b", cell.text.lower().replace("weeks", "").replace("week", "")):
        span = whole_span(part.strip(), shown_text(cell), 1, MOST_WEEK, "4, 8")
        if isinstance(span, Problem):
            return span if span.fault is not Fault.NOT_A_RANGE else Problem(Fault.NOT_WEEKS, shown_text(cell), "4, 8")
        weeks |= set(range(span[0], span[1] + 1))
    return tuple(sorted(weeks))
