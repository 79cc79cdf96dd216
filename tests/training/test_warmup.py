"""Warm-up steps: as few as the work needs."""

from decimal import Decimal

from hypothesis import given
from hypothesis import strategies as st

from bot.training.loads import Loadable
from bot.training.plan import LoadStyle, Region
from bot.training.units import Load, Unit
from bot.training.warmup import warmup_steps

BAR = Loadable.bar(20, ["1.25", "2.5", "5", "10", "20"], Unit.KG)


def steps(
    amount: object, share: float | None, ladder: Loadable = BAR, style: LoadStyle = LoadStyle.TOTAL
) -> list[tuple[str, int]]:
    """The steps before a work set at so many kg."""
    load = Load.of(Decimal(str(amount)), Unit.KG)
    found = warmup_steps(load, share=share, loadable=ladder, load_style=style, region=Region.LOWER)
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
