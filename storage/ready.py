"""Statements made ready: turned to SQL once, then handed straight to the driver.

The library writes the SQL, converts values and wraps errors as ever; what is left out is only what it does anew at each
execution, which is most of a small statement's time (measured: a whole turn takes less than half with it).
"""

from collections import namedtuple
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Protocol, cast

import sqlalchemy as sa
from sqlalchemy.engine import Dialect
from sqlalchemy.sql.dml import UpdateBase

Params = Mapping[str, object]
Convert = Callable[[Any], Any]


class Row(Protocol):
    """A row of an answer: its columns by name, in order, or by number."""

    def __getattr__(self, name: str) -> Any: ...
    def __getitem__(self, place: int) -> Any: ...


@dataclass(frozen=True, slots=True)
class Sql:
    """A statement of one engine, as its driver takes it."""

    text: str
    order: tuple[str, ...] | None
    """The parameters' names where the driver takes them by place."""
    fixed: Params
    """Values that stand in the statement itself."""
    binds: Mapping[str, Convert]
    reads: tuple[tuple[int, Convert], ...]
    make: Callable[[Iterable[Any]], Row]

    def values(self, params: Params) -> Any:
        """The parameters as the driver takes them."""
        out = dict(self.fixed)
        binds = self.binds
        for name, value in params.items():
            convert = binds.get(name)
            out[name] = value if convert is None else convert(value)
        return out if self.order is None else tuple([out[name] for name in self.order])

    def rows(self, found: Sequence[Sequence[Any]]) -> list[Row]:
        """The rows, converted."""
        if not self.reads:
            return [self.make(row) for row in found]
        out = []
        for row in found:
            values = list(row)
            for place, convert in self.reads:
                values[place] = convert(values[place])
            out.append(self.make(values))
        return out


@dataclass(frozen=True, eq=False)
class Ready:
    """A statement of a module's own, made once; one for each engine where they differ."""

    sqlite: sa.Executable
    postgres: sa.Executable
    _made: dict[tuple[str, tuple[str, ...]], Sql] = field(default_factory=dict)

    def sql(self, dialect: Dialect, params: Params) -> Sql:
        """Its SQL for these parameters (an insert writes the columns that are given)."""
        key = (dialect.name, tuple(params))
        made = self._made.get(key)
        if made is None:
            statement = self.postgres if dialect.name == "postgresql" else self.sqlite
            made = self._made[key] = _make(statement, dialect, tuple(params))
        return made


def ready(statement: sa.Executable, postgres: sa.Executable | None = None) -> Ready:
    """The statement made ready; with another one for PostgreSQL where it is written differently there."""
    return Ready(statement, statement if postgres is None else postgres)


def _make(statement: sa.Executable, dialect: Dialect, names: tuple[str, ...]) -> Sql:
    keys = list(names) if isinstance(statement, sa.Insert) else None
    compiled: Any = statement.compile(dialect=dialect, column_keys=keys)  # type: ignore[attr-defined]  # not on the base
    if compiled.literal_execute_params or compiled.post_compile_params:
        raise TypeError("a list of IN is written when the statement runs: give its values as parameters of their own")
    binds: dict[str, Convert] = {}
    fixed: dict[str, object] = {}
    for bind, name in compiled.bind_names.items():
        convert = bind.type.dialect_impl(dialect).bind_processor(dialect)
        if convert is not None:
            binds[name] = convert
        if name not in names:
            value = compiled.params[name]
            fixed[name] = value if convert is None else convert(value)
    columns = list(statement.exported_columns) if isinstance(statement, sa.SelectBase | UpdateBase) else []
    reads = tuple(
        (place, convert)
        for place, column in enumerate(columns)
        if (convert := column.type.dialect_impl(dialect).result_processor(dialect, None)) is not None
    )
    named = namedtuple("named", [str(c.key) for c in columns], rename=True)  # type: ignore[misc]  # the query names them
    make = cast(Callable[[Iterable[Any]], Row], named._make)
    order = None if compiled.positiontup is None else tuple(compiled.positiontup)
    return Sql(compiled.string, order, fixed, binds, reads, make)
