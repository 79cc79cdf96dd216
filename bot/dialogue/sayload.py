"""A load typed as an answer: `62.5`, `62,5 kg`, `135 lb`, `-20` (assistance), `bw`."""

import re
from decimal import Decimal

from bot.training.units import Load, Unit

_LOAD = re.compile(r"\s*([-+−]?)\s*(\d{1,4}(?:[.,]\d{1,3})?)\s*(kg|kilos?|lbs?|pounds?)?\s*")
MOST = Decimal(1000)
"""More than any equipment makes, in either unit."""


def read_load(text: str, unit: Unit) -> Load | None:
    """The load, in the unit that was said, else in this one; `None` where the words are no load."""
    if text.strip().lower() in ("bw", "body weight", "bodyweight"):
        return Load(0, unit)
    found = _LOAD.fullmatch(text.lower())
    if found is None:
        return None
    sign, number, said = found.groups()
    amount = Decimal(number.replace(",", "."))
    if amount > MOST:
        return None
    named = unit if said is None else Unit.KG if said.startswith("k") else Unit.LB
    return Load.of(-amount if sign in ("-", "−") else amount, named)
