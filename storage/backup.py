"""A copy of the database, made while the bot runs, and checked before it counts."""

import os
import sqlite3
from contextlib import closing
from pathlib import Path

from bot.faults import StoreFault
from storage.engine import Store
from storage.migrations import VERSIONS


def backup(store: Store, target: Path) -> None:
    """Copies a SQLite database into this file, whole or not at all. `StoreFault` where it can't be written, where the
    copy is not sound, or on PostgreSQL, which brings its own tool."""
    if store.is_postgres:
        raise StoreFault("On PostgreSQL use pg_dump: it makes a whole copy while the bot runs.")
    unfinished = target.with_name(target.name + ".part")
    try:
        unfinished.unlink(missing_ok=True)
        with (
            closing(sqlite3.connect(str(store.engine.url.database))) as here,
            closing(sqlite3.connect(unfinished)) as there,
        ):
            here.backup(there)
            there.execute("PRAGMA journal_mode=DELETE")
        unfinished.chmod(0o600)
        check_backup(unfinished)
        os.replace(unfinished, target)
    except (sqlite3.Error, OSError) as error:
        raise StoreFault(f"The copy can't be written to {target}: {error}.") from error
    finally:
        unfinished.unlink(missing_ok=True)


def check_backup(file: Path) -> str:
    """Reads a copy from end to end; gives its version. `StoreFault` where it is not sound or not ours."""
    try:
        with closing(sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True)) as copy:
            verdict = copy.execute("PRAGMA integrity_check").fetchone()[0]
            broken = copy.execute("PRAGMA foreign_key_check").fetchall()
            version = copy.execute("SELECT version_num FROM alembic_version").fetchone()
    except sqlite3.Error as error:
        raise StoreFault(f"The copy {file} can't be read: {error}.") from error
    if verdict != "ok" or broken or version is None or version[0] not in VERSIONS:
        raise StoreFault(f"The copy {file} is not sound: make another, and look at the disk.")
    return str(version[0])
