"""What a transaction costs, without a clock: statements sent, rows read, and on SQLite steps of its virtual machine."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

from sqlalchemy.engine.interfaces import DBAPICursor

from storage.engine import Store
from storage.ready import Params, Row
from storage.work import Statement, Work

EVERY = 10
"""Steps of SQLite's virtual machine between two looks: the unit of `Cost.steps`."""


@dataclass
class Cost:
    """What was counted."""

    statements: list[tuple[str, Any]] = field(default_factory=list)
    rows: int = 0
    steps: int = 0


class Counting(Work):
    """A transaction that notes what it sends and how many rows it reads."""

    __slots__ = ("cost",)
    cost: Cost

    def all(self, statement: Statement, params: Params = MappingProxyType({})) -> Sequence[Row]:
        rows = super().all(statement, params)
        self.cost.rows += len(rows)
        return rows

    def send(self, sql: str, values: Any, *, several: bool = False) -> DBAPICursor:
        self.cost.statements.append((sql, values))
        return super().send(sql, values, several=several)


@contextmanager
def counted(store: Store) -> Iterator[tuple[Counting, Cost]]:
    """A transaction, and what it costs once it is over."""
    cost = Cost()

    def step() -> int:
        cost.steps += 1
        return 0

    with store.engine.begin() as connection:
        raw = connection.connection.driver_connection
        work = Counting(connection, store.keyring, store.memory, store.is_postgres)
        work.cost = cost
        if not store.is_postgres and raw is not None:
            raw.set_progress_handler(step, EVERY)
        try:
            yield work, cost
        finally:
            if not store.is_postgres and raw is not None:
                raw.set_progress_handler(None, 0)


def plans(work: Work, statements: Sequence[tuple[str, Any]]) -> list[tuple[str, str]]:
    """How the engine would find the rows of each statement: (statement, its plan)."""
    found = []
    for sql, params in statements:
        if not sql.lstrip().upper().startswith(("SELECT", "UPDATE", "DELETE", "WITH")):
            continue
        explain = "EXPLAIN " if work.is_postgres else "EXPLAIN QUERY PLAN "
        one = params[0] if isinstance(params, list) else params
        rows = work.connection.exec_driver_sql(explain + sql, one).fetchall()
        found.append((sql, "\n".join(str(row[-1]) for row in rows)))
    return found
