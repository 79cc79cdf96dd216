"""Whole sessions told in one breath: each exercise in its own form, with any mark or none between them.

The forms and links are those that people type or dictate; the wanted reading is always the same (common practice, no
source).
"""

import random
from decimal import Decimal

import pytest

from bot.notation.reading import Request, read_message
from bot.training.plan import PlannedExercise
from bot.training.report import Performed, Stage
from bot.training.units import Load, Unit
from tests.notation.plans import NOW, sets

THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
HINGE = PlannedExercise("Romanian Deadlift", sets("60", 8, 10), aliases=("rdl",))
CURL = PlannedExercise("Leg Curl", sets("35", 10, 12))
PLAN = (THRUST, HINGE, CURL)
TOLD = ((THRUST, 90, (10, 9, 8)), (HINGE, 60, (10, 10, 9)), (CURL, 35, (12, 11, 10)))
NAMES = (
    ("thrusts", "hip thrust", "hip thrusts", "thrust"),
    ("rdl", "rdls", "romanians", "romanian deadlifts", "RDL"),
    ("leg curl", "leg curls", "curls", "curl machine"),
)
FORMS = (
    "{name} {load}x{a}, {load}x{b}, {load}x{c}",
    "{name} {load}: {a} {b} {c}",
    "{name} {load}kg {a}/{b}/{c}",
    "{name}: {a}, {b}, {c} at {load}",
    "{name} {load} for {a} {b} {c}",
    "{name} {a} {b} and {c} with {load}",
    "{load} on {name} for {a}, {b}, {c}",
    "{name} was {load} x {a} {b} {c}",
    "did {name} at {load}, got {a}, {b} and {c}",
    "{name} {load} {a} {b} {c}",
    "for {name} i used {load}kg, {a} {b} {c}",
    "{a} {b} {c} on the {name} with {load}",
    "{name} 3 sets at {load}: {a},{b},{c}",
    "{name} ({load}kg) {a},{b},{c}",
    "{name} - {load}kg - {a}, {b}, {c}",
    "{name}={load}x{a}/{b}/{c}",
)
LINKS = (". ", ", ", "\n", "; ", " then ", " and ", ", then ", ". after that ", " and then ", " ")


def dumps(count: int) -> list[tuple[str, int]]:
    """So many messages, the same each time, with how many exercises each tells."""
    chance = random.Random(7)
    out = []
    for _ in range(count):
        several = chance.choice((2, 3))
        text = ""
        for place, (_, load, (a, b, c)) in enumerate(TOLD[:several]):
            link = chance.choice(LINKS) if place else ""
            text += link + chance.choice(FORMS).format(name=chance.choice(NAMES[place]), load=load, a=a, b=b, c=c)
        out.append((text, several))
    return out


@pytest.mark.parametrize(("text", "several"), dumps(150))
def test_each_set_goes_to_its_exercise(text: str, several: int) -> None:
    """Three sets of each exercise told, with their load."""
    reading = read_message(Request(text, Unit.KG, NOW, PLAN))
    assert reading.ask is None, text
    told = sorted((p.exercise, p.set, p.load.amount if p.load else None, p.reps) for p in reading.performed)
    wanted = [
        (exercise.name, n, Decimal(load), reps)
        for exercise, load, counts in TOLD[:several]
        for n, reps in enumerate(counts, 1)
    ]
    assert told == sorted(wanted), text


def test_no_seam_is_made_up_where_the_plan_does_not_tell() -> None:
    """A set more than planned stays the exercise's in whose words it stands."""
    reading = read_message(Request("thrusts 90x10 9 8 8, rdl 60x10", Unit.KG, NOW, PLAN))
    assert [(p.exercise, p.reps) for p in reading.performed] == [
        *(("Hip Thrust", reps) for reps in (10, 9, 8, 8)),
        ("Romanian Deadlift", 10),
    ]


DONE = tuple(
    Performed("Hip Thrust", n, Stage.WORK, Load.of(90, Unit.KG), reps) for n, reps in ((1, 10), (2, 9), (3, 8))
)


@pytest.mark.parametrize("text", ["rough one. 65x9", "thrusts. felt good today. 65, 9", "got 9 with some help"])
def test_a_set_more_than_planned_is_asked_about(text: str) -> None:
    """Nothing says that it was one more: it may be something else."""
    assert read_message(Request(text, Unit.KG, NOW, (THRUST,), DONE)).ask is not None


@pytest.mark.parametrize(
    "text", ["extra set of thrusts 90x9", "one more thrust, 90x9", "4th set of thrusts 90x9", "thrusts 90x9"]
)
def test_a_set_more_is_kept_where_it_is_said(text: str) -> None:
    """As one more, as the fourth, or straight behind the name."""
    reading = read_message(Request(text, Unit.KG, NOW, (THRUST,), DONE))
    assert reading.ask is None
    assert [(p.set, p.reps) for p in reading.performed] == [(4, 9)]
