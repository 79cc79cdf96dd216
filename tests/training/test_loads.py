"""What equipment can make, and drops on it."""

from decimal import Decimal
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.loads import Loadable, drop_loads
from bot.training.plan import Drop
from bot.training.units import Load, Unit


def kg(amount: object) -> Load:
    """A load in kg."""
    return Load.of(Decimal(str(amount)), Unit.KG)


BAR = Loadable.bar(20, ["1.25", "2.5", "5", "10", "20"], Unit.KG)


def test_a_bar_makes_the_bar_and_pairs() -> None:
    """20 kg with 1.25 kg pairs steps by 2.5 kg: 62 kg lies between 60 and 62.5, nearest 62.5, never above 60."""
    assert BAR.neighbours(kg(62)) == (kg(60), kg(62.5))
    assert BAR.nearest(kg(62)) == kg(62.5)
    assert BAR.at_most(kg(62)) == kg(60)


def test_a_tie_goes_down() -> None:
    """61.25 kg is as near to 60 as to 62.5: the lighter one."""
    assert BAR.nearest(kg(61.25)) == kg(60)


def test_the_ends() -> None:
    """Below the lightest there is nothing, above the heaviest the heaviest."""
    assert BAR.neighbours(kg(10)) == (None, kg(20))
    assert BAR.at_most(kg(19.9)) is None
    assert BAR.above(kg(5000)) is None
    assert BAR.below(kg(20)) is None
    assert Loadable((), Unit.KG).nearest(kg(20)) is None


def test_a_load_of_the_other_unit_is_compared_exactly() -> None:
    """100 lb is 45.359237 kg (the 1959 agreement): between 45 and 47.5."""
    assert BAR.neighbours(Load.of(100, Unit.LB)) == (kg(45), kg(47.5))


def test_steps_and_lists() -> None:
    """A ladder includes its ends where the step meets them; a list may be in any order with repeats."""
    assert [load.amount for load in Loadable.steps(10, 20, "2.5", Unit.KG).all()] == [
        10,
        Decimal("12.5"),
        15,
        Decimal("17.5"),
        20,
    ]
    assert Loadable.of([5, 2, 5, 3], Unit.LB) == Loadable.of([2, 3, 5], Unit.LB)
    assert [str(load.amount) for load in Loadable.stack(5, 10, 3, Unit.KG, half="2.5").all()] == [
        "5", "7.5", "15", "17.5", "25", "27.5",
    ]  # fmt: skip


@pytest.mark.parametrize(("first", "last", "step"), [(10, 5, 1), (0, 10, 0), (0, 10, -1), (0, 1000, "0.01")])
def test_a_ladder_that_goes_nowhere_is_refused(first: int, last: int, step: object) -> None:
    """Upside down, standing still, or endless."""
    with pytest.raises(ValueError, match=r"loads|steps"):
        Loadable.steps(first, last, Decimal(str(step)), Unit.KG)


@given(
    st.lists(st.decimals(-50, 300, places=2), min_size=1, max_size=30),
    st.decimals(-100, 400, places=3),
    st.sampled_from(Unit),
)
def test_neighbours_enclose(amounts: list[Decimal], wanted: Decimal, unit: Unit) -> None:
    """Nothing loadable lies strictly between a load and its neighbours, and the nearest is one of them."""
    loadable, load = Loadable.of(amounts, unit), Load.of(wanted, Unit.KG)
    below, above = loadable.neighbours(load)
    exact = load.amount_in(unit)
    assert below is None or below.amount <= exact
    assert above is None or above.amount > exact
    between = [one for one in loadable.all() if (below is None or one.amount > below.amount) and one.amount <= exact]
    assert between == []
    assert loadable.nearest(load) in (below, above)


def test_drops_compound() -> None:
    """Three drops of 20 % from 50 kg are 40, 32, 25.6 kg (protocol of Fink et al. 2018, J Sports Med Phys Fitness
    58:597-605, from memory; the numbers computed: each cut is of the load before it)."""
    fine = Loadable.steps(0, 60, "0.1", Unit.KG)
    assert [str(load.amount) for load in drop_loads(kg(50), Drop(3, (20, 20)), fine)] == ["40", "32", "25.6"]


def test_drops_stay_in_their_percent_where_the_stack_allows() -> None:
    """30 to 40 % from 50 kg may be 30 to 35; on a stack of 10 that is 30, not the nearer 40."""
    stack = Loadable.steps(10, 100, 10, Unit.KG)
    assert drop_loads(kg(50), Drop(1, (30, 40)), stack) == (kg(30),)


def test_drops_end_with_the_stack() -> None:
    """Where nothing is lighter there are fewer drops."""
    stack = Loadable.steps(10, 100, 10, Unit.KG)
    assert drop_loads(kg(20), Drop(3, (20, 40)), stack) == (kg(10),)


@given(st.integers(1, 40), st.integers(0, 90), st.integers(0, 9), st.integers(1, 5))
def test_each_drop_is_lighter(place: int, low: int, more: int, times: int) -> None:
    """Whatever the percent, each drop is loadable and lighter than the one before."""
    stack = Loadable.steps(5, 200, 5, Unit.KG)
    loads = [kg(5 * place), *drop_loads(kg(5 * place), Drop(times, (low, low + more)), stack)]
    assert all(b.thousandths < a.thousandths for a, b in pairwise(loads))
    assert all(load in stack for load in loads)
