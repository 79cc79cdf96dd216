"""What is checked when a database is opened: its version is known, and the key at hand is the one that sealed it."""

import sqlalchemy as sa

from bot.faults import KeyFault, StoreFault
from storage.migrations import HEAD, VERSIONS
from storage.tables import seals
from storage.work import Work

_WORD = "chalkpost"
_VERSION = sa.text("SELECT version_num FROM alembic_version")


def version_of(connection: sa.Connection) -> str | None:
    """The version of the database, `None` for an empty one; `StoreFault` for one that this code doesn't know."""
    if not sa.inspect(connection).has_table("alembic_version"):
        return None
    version = connection.execute(_VERSION).scalar()
    if version is not None and version not in VERSIONS:
        raise StoreFault(f"The database belongs to a newer Chalkpost (its version is {version}): install that one.")
    return version


def check(work: Work) -> None:
    """Checks both; writes the proof of the key into a database that has none yet."""
    if version_of(work.connection) != HEAD:
        return
    row = work.first(sa.select(seals.c.proof).where(seals.c.id == 1))
    if row is None:
        work.run(sa.insert(seals), {"id": 1, "proof": work.seal(_WORD)})
        return
    try:
        work.unseal(row.proof)
    except KeyFault as error:
        made = work.keyring.made
        if made is None:
            raise KeyFault("The key file is not the one that sealed this database: put that one back.") from error
        made.unlink(missing_ok=True)
        raise KeyFault(
            f"The key file {made} is missing, and the database can't be read without it: put it back."
        ) from error
