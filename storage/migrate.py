"""Bringing a database up to this version, within one transaction.

On SQLite foreign keys are off meanwhile, and checked at the end: a step that makes a table anew would otherwise take
every row that refers to it along (measured).
"""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import sqlalchemy as sa

from bot.faults import StoreFault
from storage.engine import Store
from storage.guard import version_of
from storage.migrations import HEAD

FOLDER = Path(__file__).parent / "migrations"
_ONE_AT_A_TIME = 0x63686B70
"""The advisory lock that lets one process migrate at a time on PostgreSQL."""


def migrate(store: Store) -> None:
    """Runs the steps that the database has not had."""
    with _transaction(store) as connection:
        if version_of(connection) != HEAD:
            upgrade(connection)


def upgrade(connection: sa.Connection, to: str = HEAD) -> None:
    """Runs the steps up to this version on an open transaction."""
    from alembic import command  # noqa: PLC0415  a start without steps to run needs no alembic
    from alembic.config import Config  # noqa: PLC0415

    config = Config()
    config.set_main_option("script_location", str(FOLDER).replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    command.upgrade(config, to)


@contextmanager
def _transaction(store: Store) -> Iterator[sa.Connection]:
    with store.engine.connect() as connection:
        if store.is_postgres:
            with connection.begin():
                connection.execute(sa.select(sa.func.pg_advisory_xact_lock(_ONE_AT_A_TIME)))
                yield connection
            return
        _foreign_keys(connection, "OFF")
        try:
            with connection.begin():
                yield connection
                if broken := connection.exec_driver_sql("PRAGMA foreign_key_check").fetchall():
                    raise StoreFault(f"The upgrade would break {len(broken)} links between rows; nothing was changed.")
        finally:
            _foreign_keys(connection, "ON")


def _foreign_keys(connection: sa.Connection, state: str) -> None:
    """Outside of a transaction: within one SQLite ignores it."""
    cursor = connection.connection.cursor()
    cursor.execute(f"PRAGMA foreign_keys={state}")
    cursor.close()
