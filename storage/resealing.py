"""Sealing anew, by the newest key, what older keys of the key file sealed: after it the older ones are needed no more.

It goes through the tables a batch at a time, each in a transaction of its own, so that it may run beside the bot and be
broken off at any moment: what is done is done, and the next run does the rest. A fact's sealed bytes are the one thing
of it that the database lets be changed, and only by this door (`storage.triggers`).
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass

import sqlalchemy as sa

from storage.engine import Store
from storage.ready import Row
from storage.tables import facts, metadata, resealing
from storage.work import Work

BATCH = 500
"""Rows looked at in one transaction."""


@dataclass(frozen=True, slots=True)
class Resealed:
    """How many texts were sealed anew, of how many that are sealed at all."""

    anew: int
    seen: int


def sealed_columns(table: sa.Table) -> tuple[sa.Column[bytes], ...]:
    """The columns of a table that hold sealed text."""
    return tuple(column for column in table.columns if isinstance(column.type, sa.LargeBinary))


def reseal(store: Store, *, told: Callable[[Resealed], None] = lambda _: None) -> Resealed:
    """Seals anew what an older key sealed; `told` hears after each batch how far it is. `KeyFault` where something was
    sealed by a key that is not in the file: nothing of that batch is changed."""
    anew = seen = 0
    for table in metadata.sorted_tables:
        columns = sealed_columns(table)
        last: tuple[object, ...] | None = None
        while columns:
            with store.begin() as work:
                rows = _batch(work, table, columns, last)
                for row in rows:
                    old = [c for c in columns if getattr(row, c.name)]
                    seen += len(old)
                    anew += _reseal(work, table, row, old)
                work.scrubs = len(rows) < BATCH
            if not rows:
                break
            last = _key(table, rows[-1])
            told(Resealed(anew, seen))
    return Resealed(anew, seen)


def _batch(
    work: Work, table: sa.Table, columns: tuple[sa.Column[bytes], ...], last: tuple[object, ...] | None
) -> list[Row]:
    """The next rows in order of their key, held so that nobody changes them meanwhile."""
    key = tuple(table.primary_key.columns)
    ahead = [] if last is None else [sa.tuple_(*key) > sa.tuple_(*map(sa.literal, last))]
    return list(work.all(sa.select(*key, *columns).where(*ahead).order_by(*key).limit(BATCH).with_for_update()))


def _reseal(work: Work, table: sa.Table, row: Row, columns: list[sa.Column[bytes]]) -> int:
    texts = {c.name: bytes(getattr(row, c.name)) for c in columns}
    new = {name: work.seal(work.unseal(sealed)) for name, sealed in texts.items() if not work.keyring.is_newest(sealed)}
    if not new:
        return 0
    this = [column == value for column, value in zip(table.primary_key.columns, _key(table, row), strict=True)]
    with _door(work, table):
        work.run(sa.update(table).where(*this).values(new))
    return len(new)


def _key(table: sa.Table, row: Row) -> tuple[object, ...]:
    return tuple(getattr(row, column.name) for column in table.primary_key.columns)


@contextmanager
def _door(work: Work, table: sa.Table) -> Iterator[None]:
    """Facts are guarded by the database itself: within this block their sealed bytes may be changed."""
    if table is not facts:
        yield
        return
    work.run(sa.insert(resealing), {"id": 1})
    yield
    work.run(sa.delete(resealing))
