"""Loads: exact as entered, converted by the legal pound."""

from decimal import Decimal

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.units import Load, Unit

REGISTRY: pint.UnitRegistry[Decimal] = pint.UnitRegistry(non_int_type=Decimal)
amounts = st.decimals(min_value=-500, max_value=1500, places=3)


@given(amounts, st.sampled_from(Unit))
def test_a_load_keeps_what_was_entered(amount: Decimal, unit: Unit) -> None:
    """100 lb is 100 lb for good: nothing is re-rounded by conversion."""
    load = Load.of(amount, unit)
    assert load.amount == amount
    assert load.amount_in(unit) == amount


@given(amounts)
def test_pounds_against_a_units_library(amount: Decimal) -> None:
    """Checked against the `pint` library (the pound of the international yard and pound agreement of 1959)."""
    expected = REGISTRY.Quantity(amount, "pound").to("kilogram").magnitude
    assert Load.of(amount, Unit.LB).kg == pytest.approx(expected, abs=Decimal("1e-12"))


@pytest.mark.parametrize(
    ("pounds", "kilograms"),
    [("45", "20.41166"), ("135", "61.23497"), ("225", "102.05828"), ("315", "142.88160"), ("2.5", "1.13398")],
)
def test_common_plates(pounds: str, kilograms: str) -> None:
    """By hand from 1 lb = 0.45359237 kg, to the fifth decimal."""
    assert round(Load.of(pounds, Unit.LB).kg, 5) == Decimal(kilograms)


@given(amounts)
def test_there_and_back(amount: Decimal) -> None:
    """A pound load read in kilograms and back differs by less than a billionth of a pound."""
    kg = Load.of(amount, Unit.LB).kg
    assert abs(kg / Decimal("0.45359237") - amount) < Decimal("1e-9")
