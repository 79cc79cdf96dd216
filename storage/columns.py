"""Kinds of columns, the same on SQLite (in `STRICT` tables) and PostgreSQL.

An instant is a whole number of microseconds since 1970 in UTC, so that it is exact and sorts alike on both.
A date is `YYYY-MM-DD`, a local time `HH:MM[:SS]`. Sealed columns hold bytes: `Work.seal` and `unseal` are called where
they are written and read, since the key belongs to a store and not to a table.
"""

from datetime import UTC, date, datetime, time, timedelta

import sqlalchemy as sa
from sqlalchemy.engine import Dialect
from sqlalchemy.types import TypeDecorator, TypeEngine

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)

Big = sa.BigInteger().with_variant(sa.Integer(), "sqlite")
"""A 64-bit whole number: ids of chats and messages are larger than 32 bits."""

Sealed = sa.LargeBinary
"""Sealed text; empty bytes are a text taken away for good."""


class Instant(TypeDecorator[datetime]):
    """An aware `datetime`, UTC when it comes back; `ValueError` for a naive one."""

    impl = sa.BigInteger
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[int]:
        return dialect.type_descriptor(sa.Integer() if dialect.name == "sqlite" else sa.BigInteger())

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> int | None:  # noqa: ARG002
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a naive datetime can't be kept")
        return (value - _EPOCH) // _MICROSECOND

    def process_result_value(self, value: int | None, dialect: Dialect) -> datetime | None:  # noqa: ARG002
        return None if value is None else _EPOCH + timedelta(microseconds=value)


class Day(TypeDecorator[date]):
    """A calendar day."""

    impl = sa.Text
    cache_ok = True

    def process_bind_param(self, value: date | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        return None if value is None else value.isoformat()

    def process_result_value(self, value: str | None, dialect: Dialect) -> date | None:  # noqa: ARG002
        return None if value is None else date.fromisoformat(value)


class Clock(TypeDecorator[time]):
    """A local time of day, without a zone."""

    impl = sa.Text
    cache_ok = True

    def process_bind_param(self, value: time | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        return None if value is None else value.isoformat()

    def process_result_value(self, value: str | None, dialect: Dialect) -> time | None:  # noqa: ARG002
        return None if value is None else time.fromisoformat(value)


class Flag(TypeDecorator[bool]):
    """Yes or no, kept as 1 or 0."""

    impl = sa.Integer
    cache_ok = True

    def process_bind_param(self, value: bool | None, dialect: Dialect) -> int | None:  # noqa: ARG002
        return None if value is None else int(value)

    def process_result_value(self, value: int | None, dialect: Dialect) -> bool | None:  # noqa: ARG002
        return None if value is None else bool(value)


class Weekdays(TypeDecorator[tuple[int, ...]]):
    """Weekdays, Monday 0, as `0,2,4`."""

    impl = sa.Text
    cache_ok = True

    def process_bind_param(self, value: tuple[int, ...] | None, dialect: Dialect) -> str | None:  # noqa: ARG002
        return None if value is None else ",".join(str(day) for day in value)

    def process_result_value(self, value: str | None, dialect: Dialect) -> tuple[int, ...] | None:  # noqa: ARG002
        return None if value is None else tuple(int(day) for day in value.split(",") if day)


def fixed(text: str) -> sa.ColumnElement[str]:
    """This very text within a statement, not a parameter: an index over part of a table is only used with those."""
    return sa.literal_column("'" + text.replace("'", "''") + "'", sa.Text())
