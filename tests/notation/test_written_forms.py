"""Two sets of every kind of exercise in every form in which they are written, alone and behind another exercise.

The answer is known by construction: each form tells the same two sets. That these are forms in which people write is
common practice, no source.
"""

from dataclasses import dataclass
from itertools import product

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import LoadStyle, Measure, PlannedExercise
from bot.training.report import Performed, Side, Stage
from bot.training.units import Load, Unit
from tests.notation.plans import NOW, sets

PRESS = PlannedExercise("Floor Press", sets("60", 4, 6), aliases=("floor",))


@dataclass(frozen=True, slots=True)
class Told:
    """An exercise, how its load is said before and behind its counts, and the two counts as they are written."""

    exercise: PlannedExercise
    load: str | None
    before: tuple[str, ...]
    behind: tuple[str, ...]
    counts: tuple[int, int]
    unit: str = ""


def _exercise(
    name: str, alias: str, plan: tuple[str | None, int, int], measure: Measure = Measure.REPS, **how: LoadStyle | int
) -> PlannedExercise:
    style, sides = how.get("style", LoadStyle.TOTAL), how.get("sides", 1)
    assert isinstance(style, LoadStyle)
    return PlannedExercise(name, sets(*plan), aliases=(alias,), load_style=style, sides=int(sides), measure=measure)


HANDS, BODY, NONE = LoadStyle.PER_HAND, LoadStyle.BODYWEIGHT, LoadStyle.NONE
HACK = _exercise("Hack Squat", "hack", ("100", 8, 10))
ARNOLD = _exercise("Arnold Press", "arnolds", ("14", 8, 10), style=HANDS)
STEP = _exercise("Step-Up", "step ups", ("12", 8, 10), style=HANDS, sides=2)
PALLOF = _exercise("Pallof Press", "pallof", ("15", 8, 10), sides=2)
DIP = _exercise("Weighted Dip", "dips", ("10", 6, 8), style=BODY)
PULL = _exercise("Assisted Pull-Up", "pull ups", ("-25", 6, 8), style=BODY)
CHIN = _exercise("Chin-Up", "chins", ("0", 6, 8), style=BODY)
HOLD = _exercise("Hollow Hold", "hollow", (None, 20, 30), Measure.SECONDS, style=NONE)
CARRY = _exercise("Sandbag Carry", "sandbag", ("50", 40, 40), Measure.METRES)
KINDS = (
    Told(HACK, "95", ("95", "95kg", "95 kg"), ("95", "95kg"), (9, 8)),
    Told(ARNOLD, "16", ("16s", "2x16", "16kg"), ("16s", "the 16s", "16kg"), (9, 8)),
    Told(STEP, "14", ("14s", "14kg"), ("14s",), (9, 8)),
    Told(PALLOF, "17.5", ("17.5", "17,5", "17.5 kilos"), ("17.5", "17.5kg"), (10, 9)),
    Told(DIP, "12.5", ("+12.5", "+12.5kg"), ("+12.5", "+12.5kg"), (7, 6)),
    Told(PULL, "-22.5", ("-22.5", "22.5 assist", "assist 22.5"), ("-22.5", "22.5kg assist"), (8, 7)),
    Told(CHIN, "0", ("bw", "bodyweight"), ("bodyweight",), (8, 7)),
    Told(_exercise("V-Up", "v ups", (None, 8, 12), style=NONE), None, (), (), (12, 11)),
    Told(HOLD, None, (), (), (30, 25), "sec"),
    Told(CARRY, "55", ("55", "55kg"), ("55kg",), (40, 40), "m"),
)  # fmt: skip
LISTS = ("{0}, {1}", "{0} {1}", "{0} then {1}", "{0} and {1}", "{0}/{1}", "{0},{1}")
BEFORE = ("{load} {list}", "{load}: {list}", "{load} for {list}")
LINES = ("{load}\n{0}{unit}\n{1}{unit}", "{load} x {0}{unit}\n{load} x {1}{unit}")
SECONDS = ('{0}" {1}"', "{0}s, {1}s", "{0} sec\n{1} sec", "{0},{1} secs")


def _texts(told: Told) -> list[str]:
    """Its two sets in every form."""
    one, two = told.counts
    sided = told.exercise.sides == len(Side)
    lists = [f.format(one, two) for f in LISTS if not (sided and "/" in f)]
    worded = {"sec": " sec", "m": "m"}.get(told.unit, "")
    if not told.before:
        extra = [f.format(one, two) for f in SECONDS] if told.unit == "sec" else []
        return [*lists, *(f"{each}{worded}" for each in lists if worded), *extra]
    before = [f.format(load=load, list=each) for f, load, each in product(BEFORE, told.before, lists)]
    before = [f"{text}{worded}" for text in before if not (told.unit and " for " in text)]
    each_of = [each for each in lists if " then " not in each]  # `9 then 8 at 95` may tell the load of the 8 alone
    behind = [f"{each}{worded} {link} {load}" for each, link, load in product(each_of, ("at", "with"), told.behind)]
    lines = [f.format(one, two, load=load, unit=told.unit) for f, load in product(LINES, told.before)]
    plain = told.exercise.measure is Measure.REPS
    return [*before, *behind, *(text for text in lines if not (plain and "\n" in text and " x " not in text))]


def _rows(told: Told) -> list[Performed]:
    load = None if told.load is None else Load.of(told.load, Unit.KG)
    return [Performed(told.exercise.name, n, Stage.WORK, load, reps) for n, reps in enumerate(told.counts, 1)]


@pytest.mark.parametrize("told", KINDS, ids=lambda told: told.exercise.name)
@pytest.mark.parametrize("behind", [False, True], ids=["alone", "behind another"])
def test_every_form_tells_the_same(told: Told, behind: bool) -> None:
    """With the name before it: the two sets are stored, nothing is asked, nothing else is told."""
    alias = told.exercise.aliases[0]
    first = [Performed(PRESS.name, 1, Stage.WORK, Load.of("60", Unit.KG), 5)] if behind else []
    wrong = []
    for text, head in product(_texts(told), ("floor 60x5; ", "floor 60x5\n", "floor 60x5 then ") if behind else ("",)):
        reading = read_message(Request(f"{head}{alias} {text}", Unit.KG, NOW, (PRESS, told.exercise)))
        if reading.ask is not None or list(reading.performed) != [*first, *_rows(told)] or reading.day is not None:
            wrong.append(f"{head}{alias} {text}")
    assert not wrong


SIDED = (
    "14s L9 R8", "14s 9L 8R", "14s left 9 right 8", "14s 9 left 8 right", "14s: 9 on the left, 8 on the right",
    "14kg L: 9 R: 8", "14 9L 8R", "14 L9 R8", "2x14 left 9, right 8", "14s 9/8", "left 9 right 8 with 14s",
)  # fmt: skip


@pytest.mark.parametrize("text", SIDED)
def test_sides_behind_their_load(text: str) -> None:
    """One set, left and right told apart."""
    reading = read_message(Request(text, Unit.KG, NOW, (STEP,)))
    load = Load.of("14", Unit.KG)
    wanted = [Performed(STEP.name, 1, Stage.WORK, load, n, side=side) for n, side in ((9, Side.LEFT), (8, Side.RIGHT))]
    assert (reading.ask, list(reading.performed)) == (None, wanted)


COUNTED = (
    "14s 9 each x2", "14 kg 9 each x2", "14kg 9 reps, 2 sets", "2x9 each @ 14s", "14s 2x9", "2 sets of 9 each at 14",
    "9 each, twice, 14s", "14s 9 each side times 2", "14kg x 9 x 2", "14s x 9 each x 2", "14kg x 9 ea x2",
)  # fmt: skip


@pytest.mark.parametrize("text", COUNTED)
def test_sets_that_are_counted(text: str) -> None:
    """Two sets alike."""
    reading = read_message(Request(f"step ups {text}", Unit.KG, NOW, (STEP,)))
    wanted = [Performed(STEP.name, n, Stage.WORK, Load.of("14", Unit.KG), 9) for n in (1, 2)]
    assert (reading.ask, list(reading.performed)) == (None, wanted)
