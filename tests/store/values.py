"""Any value of the trade, for properties: strategies from the types, with the ranges that can be kept."""

from datetime import UTC, datetime, time
from decimal import Decimal
from typing import get_args

from hypothesis import strategies as st

from bot.training.facts import Fact
from bot.training.people import Programme
from bot.training.plan import PlannedSession

TEXT = st.text(st.characters(exclude_categories=["Cs"]), max_size=20)
st.register_type_strategy(str, TEXT)
st.register_type_strategy(int, st.integers(-(2**53), 2**53))
st.register_type_strategy(
    Decimal, st.decimals(allow_nan=False, allow_infinity=False, min_value=-(10**9), max_value=10**9)
)
st.register_type_strategy(datetime, st.datetimes(timezones=st.just(UTC)).map(lambda at: at.replace(fold=0)))
st.register_type_strategy(time, st.times().map(lambda wall: wall.replace(fold=0)))

KINDS = get_args(Fact)
FACTS = st.one_of([st.from_type(kind) for kind in KINDS])
PLANS = st.from_type(PlannedSession)
PROGRAMMES = st.from_type(Programme)
