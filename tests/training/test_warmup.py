"""Warm-up steps: as few as the work needs."""

from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from bot.training.gym import loadable
from bot.training.loads import Loadable
from bot.training.people import Gym
from bot.training.plan import LoadStyle, PlannedExercise, PlannedSet, Region, RepRange, WarmupStep
from bot.training.units import Load, Unit
from bot.training.warmup import warm_already, warmup_steps

BAR = Loadable.bar(20, ["1.25", "2.5", "5", "10", "20"], Unit.KG)


def steps(
    amount: object,
    share: float | None,
    ladder: Loadable = BAR,
    style: LoadStyle = LoadStyle.TOTAL,
    equipment: str = "bar",
) -> list[tuple[str, int]]:
    """The steps before a work set at so many kg."""
    load = Load.of(Decimal(str(amount)), Unit.KG)
    found = warmup_steps(load, share=share, loadable=ladder, load_style=style, region=Region.LOWER, equipment=equipment)
    return [(str(step.load.amount), step.reps) for step in found]


def test_a_heavy_lift_takes_three() -> None:
    """100 kg at 85 % of the 1RM: 50, 70 and 85 % of it on this bar (our own ramp)."""
    assert steps(100, 0.85) == [("50", 5), ("70", 3), ("85", 2)]


def test_a_middling_one_takes_two_and_a_light_one_one() -> None:
    """The longer the set, the fewer the steps."""
    assert steps(100, 0.72) == [("50", 6), ("80", 3)]
    assert steps(100, 0.5) == [("60", 6)]


def test_near_the_empty_bar_one_or_none() -> None:
    """Under twice the lightest load one step is enough; at the lightest there is none to make."""
    assert len(steps(35, 0.85)) == 1
    assert steps(20, 0.85) == []


def test_steps_that_fall_together_are_one() -> None:
    """On a coarse stack no load is used twice, and none is the work load itself."""
    assert steps(30, 0.85, Loadable.steps(10, 100, 10, Unit.KG)) == [("10", 5), ("20", 3)]


def test_body_weight_and_unloaded_work_need_none() -> None:
    """Nothing to load beforehand."""
    assert steps(10, 0.8, style=LoadStyle.BODYWEIGHT) == []
    assert steps(10, 0.8, style=LoadStyle.NONE) == []


@given(st.integers(1, 300), st.floats(0.1, 1.0), st.sampled_from(["1", "2.5", "7", "10"]))
def test_steps_rise_below_the_work_load(amount: int, share: float, step: str) -> None:
    """Whatever the load and the equipment: rising, loadable, below the work load, at most three."""
    ladder = Loadable.steps(step, 300, step, Unit.KG)
    found = warmup_steps(
        Load.of(amount, Unit.KG), share=share, loadable=ladder, load_style=LoadStyle.TOTAL, region=None
    )
    kilos = [one.load.kg for one in found]
    assert kilos == sorted(set(kilos))
    assert all(kilo < amount for kilo in kilos)
    assert len(found) <= 3
    assert all(one.load in ladder for one in found)


def test_a_machine_needs_fewer_than_a_barbell() -> None:
    """The same heavy work: three steps on the bar, two on the stack and with dumbbells (common practice, no source)."""
    stack = Loadable.steps(5, 120, 5, Unit.KG)
    assert len(steps(100, 0.85)) == 3
    assert steps(100, 0.85, stack, equipment="stack") == [("50", 6), ("80", 3)]
    dumbbells = Loadable.steps(2, 50, 2, Unit.KG)
    assert steps(40, 0.85, dumbbells, LoadStyle.PER_HAND, equipment="dumbbells") == [("20", 6), ("32", 3)]


def test_a_very_heavy_barbell_begins_with_the_empty_one() -> None:
    """140 kg: half of it is more than three empty bars; at 120 kg it is not (common practice, no source)."""
    assert steps(140, 0.85) == [("20", 8), ("70", 5), ("97.5", 3), ("120", 2)]
    assert steps(120, 0.85) == [("60", 5), ("85", 3), ("102.5", 2)]


def exercise(name: str, *muscles: str, count: int = 3) -> PlannedExercise:
    """An exercise with so many warm-up steps."""
    warmup = tuple(WarmupStep(Load.of(20 + 10 * n, Unit.KG), 5) for n in range(count))
    return PlannedExercise(name, (PlannedSet(RepRange(5, 5)),), muscles=muscles, warmup=warmup)


def test_muscles_that_are_warm_already_need_no_first_step() -> None:
    """The leg press after squats begins a step later; a row after them doesn't, nor what has one step only."""
    told = warm_already(
        (
            exercise("Squat", "quadriceps", "glutes"),
            exercise("Leg press", "quadriceps"),
            exercise("Row", "back"),
            exercise("Pull", "back", "biceps"),
            exercise("Leg extension", "quadriceps", count=1),
            exercise("Carry"),
        )
    )
    assert [len(e.warmup) for e in told] == [3, 2, 3, 3, 1, 3]


@given(
    st.integers(1, 400),
    st.floats(0.1, 1.0),
    st.sampled_from(["bar", "dumbbells", "stack", "body"]),
    st.sampled_from(["kg", "lb"]),
)
def test_what_an_ordinary_gym_makes_of_it(amount: int, share: float, equipment: str, unit: str) -> None:
    """On every kind of equipment: rising loads that there are, below the work load; a machine never takes more steps
    than a barbell of the same load, nothing more than four."""
    kind = Unit(unit)
    ladder = loadable(Gym.usual(kind), equipment)
    found = warmup_steps(
        Load.of(amount, kind),
        share=share,
        loadable=ladder,
        load_style=LoadStyle.TOTAL,
        region=None,
        equipment=equipment,
    )
    kilos = [step.load.kg for step in found]
    assert kilos == sorted(set(kilos))
    assert all(step.load in ladder and step.load.kg < Load.of(amount, kind).kg for step in found)
    assert len(found) <= (4 if equipment == "bar" else 2)
