"""The fields of a report may be told in any order: sets, repetitions, load, effort; each combination is read alike."""

from itertools import permutations, product

from bot.notation.answer import Request
from bot.notation.reading import read_message
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Performed
from bot.training.units import Unit
from tests.notation.plans import NOW, rows, sets

THRUST = PlannedExercise("Hip Thrust", sets("90", 8, 10), aliases=("thrusts",))
SPLIT = PlannedExercise("Split Squat", sets("16", 8, 10), aliases=("splits",), load_style=LoadStyle.PER_HAND, sides=2)


def _unlike(texts: list[str], exercise: PlannedExercise, *wanted: str) -> list[str]:
    """The texts that are read otherwise than wanted."""
    told: tuple[Performed, ...] = rows(*wanted)
    return [t for t in texts if read_message(Request(t, Unit.KG, NOW, (exercise,))).performed != told]


def _orders(*fields: tuple[str, ...], seps: tuple[str, ...], heads: tuple[str, ...] = ("",)) -> list[str]:
    """Every choice of one wording a field, in every order, with every joint and head.

    `at 90 reps 10` is left out: nothing but the plan says which of the two `reps` counts.
    """
    return [
        head + sep.join(order)
        for chosen in product(*fields)
        for order in permutations(chosen)
        for sep in seps
        for head in heads
        if "at 90 reps" not in sep.join(order)
    ]


THREE = _orders(
    ("10 reps", "ten repetitions", "reps 10"),
    ("3 sets", "three sets", "in 3 sets"),
    ("90 kg", "at 90", "with 90 kilos", "weight 90"),
    seps=(", ", " "),
    heads=("", "thrusts: "),
)


def test_sets_repetitions_and_load() -> None:
    assert not _unlike(THREE, THRUST, *(f"Hip Thrust#{n} 90x10" for n in (1, 2, 3)))


ONE = _orders(
    ("10 reps", "ten repetitions"),
    ("90 kg", "at 90", "weight 90"),
    ("rpe 8", "2 rir", "2 in reserve", "could have done 2 more"),
    seps=(", ", ". ", " - "),
    heads=("", "hip thrusts "),
)


def test_load_repetitions_and_effort() -> None:
    assert not _unlike(ONE, THRUST, "Hip Thrust#1 90x10 rir 2")


LISTS = _orders(
    ("10 9 8", "10/9/8", "10, 9 and 8", "reps 10, 9, 8"), ("90 kg", "at 90", "weight 90"), seps=(", ", " ", ". ")
)


def test_a_list_and_its_load() -> None:
    assert not _unlike(LISTS, THRUST, "Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x8")


OF_LAST = [
    text
    for effort in ("rpe 8 on the last", "last one rpe 8", "2 left on the last", "last set 2 rir")
    for told in ("90: 10 9 8", "10/9/8 at 90", "90 kg 10, 9, 8", "all at 90, 10/9/8")
    for text in (f"{told}, {effort}", f"{effort}, {told}", f"thrusts: {effort}, {told}")
]


def test_the_effort_of_the_last_set_before_or_behind() -> None:
    assert not _unlike(OF_LAST, THRUST, "Hip Thrust#1 90x10", "Hip Thrust#2 90x9", "Hip Thrust#3 90x8 rir 2")


SIDES = _orders(
    ("10 each", "10 per leg", "10/leg"),
    ("16s", "16 kg", "with 16s", "pair of 16s", "16 in each hand", "32 total"),
    seps=(", ", ". ", " - "),
    heads=("", "splits: "),
)


def test_each_side_and_the_load() -> None:
    assert not _unlike(SIDES, SPLIT, "Split Squat#1 16x10")
