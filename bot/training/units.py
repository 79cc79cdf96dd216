"""Loads with their unit, kept exactly as entered.

A load is a whole number of thousandths of the unit in which it was said, so a
record is never re-rounded by conversion: 100 lb stays 100 lb.

>>> Load.of("22.5", Unit.KG)
Load(thousandths=22500, unit=<Unit.KG: 'kg'>)
>>> Load.of(100, Unit.LB).kg
Decimal('45.35923700')
"""

from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Decimal
from enum import StrEnum

KG_PER_LB = Decimal("0.45359237")
"""Exactly, by the international yard and pound agreement of 1959 (NIST SP 811, appendix B)."""


class Unit(StrEnum):
    """The two units in which gyms mark their equipment."""

    KG = "kg"
    LB = "lb"


@dataclass(frozen=True, slots=True)
class Load:
    """A load as entered: thousandths of a unit; negative is assistance (body weight taken away)."""

    thousandths: int
    unit: Unit

    @classmethod
    def of(cls, amount: Decimal | int | str, unit: Unit) -> "Load":
        """The load of this amount in this unit; beyond a thousandth it is rounded half to even.

        Text is read by `Decimal`: `ValueError` (as `decimal.InvalidOperation`'s parent `ArithmeticError`)
        is the caller's to expect; people's text goes through `bot.notation` first.
        """
        scaled = (Decimal(amount) * 1000).to_integral_value(ROUND_HALF_EVEN)
        return cls(int(scaled), unit)

    @property
    def amount(self) -> Decimal:
        """The number as entered, without trailing zeros beyond what is needed."""
        value = Decimal(self.thousandths) / 1000
        return value.quantize(Decimal(1)) if value == value.to_integral_value() else value.normalize()

    @property
    def kg(self) -> Decimal:
        """The load in kilograms, unrounded."""
        value = Decimal(self.thousandths) / 1000
        return value if self.unit is Unit.KG else value * KG_PER_LB

    def amount_in(self, unit: Unit) -> Decimal:
        """The number in another unit, unrounded; in its own unit exactly as entered."""
        if unit is self.unit:
            return self.amount
        return self.kg if unit is Unit.KG else self.kg / KG_PER_LB
