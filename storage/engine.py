"""The database: opened once, used through transactions of which each is a `Work`.

SQLite: write-ahead log, foreign keys, full durability (an acknowledged message survives a power cut), and every
transaction takes the write lock at its start, since one that reads first and writes later fails where another wrote
in between. PostgreSQL: psycopg 3, read committed; rows are claimed with `FOR UPDATE SKIP LOCKED`.
"""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlalchemy.engine.interfaces import DBAPIConnection

from bot.faults import StoreFault
from storage.guard import check
from storage.keyring import Keyring
from storage.memory import Memory
from storage.work import Work

LOCK_WAIT_S = 30
"""How long a transaction waits for another's lock."""

RETRYABLE = ("40001", "40P01", "55P03", "57P01")
"""PostgreSQL's states (appendix A of its manual): serialization failure, deadlock, lock not available, shut down."""

_READS: dict[str, Any] = {"chalkpost_reads": True}
_COUNTED = {"preserve_rowcount": True}
"""Inserts tell how many rows they wrote, too."""


class Store:
    """An open database. Threads may share it; a `Work` belongs to one of them."""

    def __init__(self, engine: sa.Engine, keyring: Keyring) -> None:
        self.engine = engine
        self.keyring = keyring
        self.is_postgres = engine.dialect.name == "postgresql"
        self.memory = Memory()
        self._owes_scrub = False

    @classmethod
    def open(cls, url: str, keyring: Keyring) -> "Store":
        """The database at this address: `sqlite:///file` or `postgresql://...`.

        `StoreFault` where it can't be reached, written, or belongs to a newer Chalkpost; `KeyFault` where another
        key sealed it.
        """
        store = cls(_engine(url), keyring)
        try:
            with store.begin() as work:
                check(work)
        except sa.exc.DBAPIError as error:
            store.close()
            raise StoreFault(f"The database can't be opened: {_plain(error, store.engine)}.") from error
        except BaseException:
            store.close()
            raise
        return store

    def migrate(self) -> None:
        """Brings the tables up to this version; does nothing where they are."""
        from storage.migrate import migrate  # noqa: PLC0415  alembic is imported where it is needed

        try:
            migrate(self)
            with self.begin() as work:
                check(work)
        except sa.exc.DBAPIError as error:
            raise StoreFault(f"The database can't be brought up to date: {_plain(error, self.engine)}.") from error

    @contextmanager
    def begin(self) -> Iterator[Work]:
        """A transaction: committed at the end, undone by an exception."""
        with self.engine.begin() as connection:
            work = Work(connection, self.keyring, self.memory, self.is_postgres)
            yield work
        if work.scrubs:
            self.scrub()

    def scrub(self) -> bool:
        """On SQLite: what was deleted is overwritten in the file (`secure_delete`), and its older form in the log of
        writing goes too. Somebody who reads or writes just now is not waited for: false, and it is done after the next
        long reading, or with the house-keeping. PostgreSQL keeps the sealed bytes in its own files until it needs the
        room: see the runbook."""
        if self.is_postgres:
            return True
        with self.engine.connect() as connection:
            cursor = connection.connection.cursor()
            cursor.execute("PRAGMA busy_timeout=0")
            try:
                is_busy = bool(cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()[0])
            finally:
                cursor.execute(f"PRAGMA busy_timeout={LOCK_WAIT_S * 1000}")
                cursor.close()
        self._owes_scrub = is_busy
        return not is_busy

    @contextmanager
    def reading(self) -> Iterator[Work]:
        """One snapshot to read from, however long it takes: on neither engine does it hold up whoever writes. What is
        written in it is undone (on PostgreSQL refused)."""
        options = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True} if self.is_postgres else _READS
        with self.engine.connect().execution_options(**options) as connection, connection.begin() as transaction:
            try:
                yield Work(connection, self.keyring, self.memory, self.is_postgres)
            finally:
                transaction.rollback()
        if self._owes_scrub:
            self.scrub()

    def close(self) -> None:
        """Closes all connections."""
        self.engine.dispose()


def is_retryable(error: BaseException) -> bool:
    """Whether the same transaction may succeed when it is run again from its start (a deadlock, a lock not given,
    a lost connection)."""
    if not isinstance(error, sa.exc.DBAPIError):
        return False
    if error.connection_invalidated:
        return True
    state = getattr(error.orig, "sqlstate", None)
    return state in RETRYABLE if state else "database is locked" in str(error.orig)


def _plain(error: sa.exc.DBAPIError, engine: sa.Engine) -> str:
    """Which database, and what the driver says, in one line."""
    url = engine.url
    where = url.database if url.get_backend_name() == "sqlite" else url.render_as_string(hide_password=True)
    return f"{where}: {' '.join(str(error.orig).split()).rstrip('.')}"


def _engine(url: str) -> sa.Engine:
    try:
        address = sa.make_url(url)
    except sa.exc.ArgumentError as error:
        raise StoreFault("The database's address can't be read: write sqlite:///file or postgresql://....") from error
    match address.get_backend_name():
        case "sqlite":
            return _sqlite(address)
        case "postgresql":
            options = {"options": f"-c lock_timeout={LOCK_WAIT_S}s"}
            return sa.create_engine(
                address.set(drivername="postgresql+psycopg"),
                connect_args=options,
                execution_options=_COUNTED,
                hide_parameters=True,
            )
        case other:
            raise StoreFault(f"No database of the kind {other!r}: write sqlite:///file or postgresql://....")


def _sqlite(address: sa.URL) -> sa.Engine:
    file = Path(address.database or "")
    if not address.database or address.database == ":memory:":
        raise StoreFault("The database needs a file: write sqlite:///file.")
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise StoreFault(f"The folder {file.parent} can't be made: {error.strerror}.") from error
    engine = sa.create_engine(
        address,
        connect_args={"timeout": LOCK_WAIT_S, "cached_statements": 512},
        execution_options=_COUNTED,
        hide_parameters=True,
    )
    sa.event.listen(engine, "connect", _prepare_sqlite)
    sa.event.listen(engine, "begin", _begin_immediate)
    return engine


def _prepare_sqlite(raw: DBAPIConnection, _record: object) -> None:
    raw.isolation_level = None
    cursor = raw.cursor()
    for pragma in (
        "journal_mode=WAL",
        "synchronous=FULL",
        "foreign_keys=ON",
        "secure_delete=ON",
        "cache_size=-32000",
    ):
        cursor.execute(f"PRAGMA {pragma}")
    cursor.close()


def _begin_immediate(connection: sa.Connection) -> None:
    reads = connection.get_execution_options().get("chalkpost_reads", False)
    connection.exec_driver_sql("BEGIN" if reads else "BEGIN IMMEDIATE")
