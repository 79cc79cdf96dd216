"""One transaction, and the statements that are written differently on the two engines."""

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.dialects import postgresql, sqlite

from storage.keyring import Keyring
from storage.memory import Memory

Params = Mapping[str, object]


class Overtaken(Exception):
    """Another turn came first (an invitation is used, a session planned, a rule done): undo this one, build the desk
    anew and answer again."""


@dataclass(frozen=True)
class PerEngine:
    """A statement that is written differently on the two engines."""

    sqlite: sa.Executable
    postgres: sa.Executable


Statement = sa.Executable | PerEngine


@dataclass(slots=True)
class Work:
    """One open transaction; it belongs to one thread."""

    connection: sa.Connection
    keyring: Keyring
    memory: Memory
    is_postgres: bool
    _depth: int = 0

    def all(self, statement: Statement, params: Params | None = None) -> Sequence[sa.Row[Any]]:
        """All rows that the statement gives."""
        return self.connection.execute(self._mine(statement), params).fetchall()

    def first(self, statement: Statement, params: Params | None = None) -> sa.Row[Any] | None:
        """The first row that the statement gives, or `None`."""
        return self.connection.execute(self._mine(statement), params).first()

    def run(self, statement: Statement, params: Params | Sequence[Params] | None = None) -> int:
        """Runs the statement (once for each of several parameters) and tells how many rows it wrote."""
        return self.connection.execute(self._mine(statement), params).rowcount

    def seal(self, text: str) -> bytes:
        """The text, sealed."""
        return self.keyring.seal(text)

    def unseal(self, sealed: bytes) -> str:
        """The text again; empty where it was taken away for good."""
        return self.keyring.unseal(sealed) if sealed else ""

    @contextmanager
    def savepoint(self) -> Iterator[None]:
        """What happens within is undone by an exception, without the rest of the transaction."""
        name = f"job{self._depth}"
        self._depth += 1
        self.connection.exec_driver_sql(f"SAVEPOINT {name}")
        try:
            yield
        except BaseException:
            self.connection.exec_driver_sql(f"ROLLBACK TO SAVEPOINT {name}")
            self.connection.exec_driver_sql(f"RELEASE SAVEPOINT {name}")
            raise
        else:
            self.connection.exec_driver_sql(f"RELEASE SAVEPOINT {name}")
        finally:
            self._depth -= 1

    def _mine(self, statement: Statement) -> sa.Executable:
        if isinstance(statement, PerEngine):
            return statement.postgres if self.is_postgres else statement.sqlite
        return statement


def insert_new(table: sa.Table, *key: str) -> PerEngine:
    """An insert that leaves a row of the same key as it is (and then counts no row)."""
    lite = sqlite.insert(table).on_conflict_do_nothing(index_elements=key)
    post = postgresql.insert(table).on_conflict_do_nothing(index_elements=key)
    return PerEngine(lite.inline(), post.inline())


def insert_or_replace(table: sa.Table, *key: str, columns: Sequence[str]) -> PerEngine:
    """An insert that gives a row of the same key the new values of these columns."""
    lite, post = sqlite.insert(table), postgresql.insert(table)
    return PerEngine(
        lite.on_conflict_do_update(index_elements=key, set_={name: lite.excluded[name] for name in columns}).inline(),
        post.on_conflict_do_update(index_elements=key, set_={name: post.excluded[name] for name in columns}).inline(),
    )
