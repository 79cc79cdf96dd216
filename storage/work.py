"""One transaction, and the statements that are written differently on the two engines."""

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Any

import sqlalchemy as sa
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.engine.interfaces import DBAPICursor

from storage.keyring import Keyring
from storage.memory import Memory
from storage.ready import Params, Ready, Row, ready

_NOTHING: Params = {}


class Overtaken(Exception):
    """Another turn came first (an invitation is used, a session planned, a rule done): undo this one, build the desk
    anew and answer again."""


Statement = Ready | sa.Executable
"""A module's own statement is made `ready` once; any other works as well, only slower."""


@dataclass(slots=True)
class Work:
    """One open transaction; it belongs to one thread."""

    connection: sa.Connection
    keyring: Keyring
    memory: Memory
    is_postgres: bool
    scrubs: bool = False
    """Something was deleted that must not be found in the files either: seen to after the commit."""
    _depth: int = 0

    def all(self, statement: Statement, params: Params = _NOTHING) -> Sequence[Row]:
        """All rows that the statement gives."""
        if not isinstance(statement, Ready):
            return self.connection.execute(statement, params).fetchall()
        sql = statement.sql(self.connection.dialect, params)
        cursor = self.send(sql.text, sql.values(params))
        found = cursor.fetchall()
        cursor.close()
        return sql.rows(found)

    def first(self, statement: Statement, params: Params = _NOTHING) -> Row | None:
        """The first row that the statement gives, or `None`."""
        rows = self.all(statement, params)
        return rows[0] if rows else None

    def run(self, statement: Statement, params: Params | Sequence[Params] = _NOTHING) -> int:
        """Runs the statement (once for each of several parameters) and tells how many rows it wrote."""
        if not isinstance(statement, Ready):
            return self.connection.execute(statement, params).rowcount
        if isinstance(params, Mapping):
            sql = statement.sql(self.connection.dialect, params)
            cursor = self.send(sql.text, sql.values(params))
        else:
            sql = statement.sql(self.connection.dialect, params[0])
            cursor = self.send(sql.text, [sql.values(one) for one in params], several=True)
        count: int = cursor.rowcount
        cursor.close()
        return count

    def send(self, sql: str, values: Any, *, several: bool = False) -> DBAPICursor:
        """Hands SQL to the driver; its errors come as the library's own, without people's words in them."""
        cursor = self.connection.connection.cursor()
        try:
            if several:
                cursor.executemany(sql, values)
            else:
                cursor.execute(sql, values)
        except self.connection.dialect.loaded_dbapi.Error as error:
            raise self._wrapped(sql, error, cursor) from error
        return cursor

    def _wrapped(self, sql: str, error: Exception, cursor: DBAPICursor) -> BaseException:
        dialect = self.connection.dialect
        dbapi = dialect.loaded_dbapi
        is_lost = isinstance(error, dbapi.Error) and dialect.is_disconnect(error, self.connection.connection, cursor)
        if is_lost:
            self.connection.invalidate(error)
        return sa.exc.DBAPIError.instance(
            sql, None, error, dbapi.Error, hide_parameters=True, connection_invalidated=is_lost, dialect=dialect
        )

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
        self.send(f"SAVEPOINT {name}", ())
        try:
            yield
        except BaseException:
            self.send(f"ROLLBACK TO SAVEPOINT {name}", ())
            self.send(f"RELEASE SAVEPOINT {name}", ())
            raise
        else:
            self.send(f"RELEASE SAVEPOINT {name}", ())
        finally:
            self._depth -= 1


def insert_new(table: sa.Table, *key: str) -> Ready:
    """An insert that leaves a row of the same key as it is (and then counts no row)."""
    lite = sqlite.insert(table).on_conflict_do_nothing(index_elements=key)
    post = postgresql.insert(table).on_conflict_do_nothing(index_elements=key)
    return ready(lite.inline(), post.inline())


def insert_or_replace(table: sa.Table, *key: str, columns: Sequence[str]) -> Ready:
    """An insert that gives a row of the same key the new values of these columns."""
    lite, post = sqlite.insert(table), postgresql.insert(table)
    return ready(
        lite.on_conflict_do_update(index_elements=key, set_={name: lite.excluded[name] for name in columns}).inline(),
        post.on_conflict_do_update(index_elements=key, set_={name: post.excluded[name] for name in columns}).inline(),
    )
