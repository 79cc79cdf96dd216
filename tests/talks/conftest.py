"""The stage of every talk: a fresh database, the real bot, the stand-in, and a clock that the talk sets.

Properties and long times are lived without the wire: see `wireless`.
"""

from collections.abc import AsyncIterator, Iterator
from pathlib import Path

import pytest

from bot.cli.tryout import Rehearsal, rehearsal
from storage.engine import Store
from storage.keyring import Keyring
from tests.talks.practice import Practice
from tests.talks.wireless import Wired


@pytest.fixture
async def held(tmp_path: Path) -> AsyncIterator[Rehearsal]:
    """The bot at the stand-in; nobody has joined."""
    async with rehearsal(tmp_path) as stage:
        yield stage


@pytest.fixture
async def practice(held: Rehearsal) -> Practice:
    """A coach and Ada, who trains on Mondays and Thursdays at 18:00 in Berlin, the sample programme."""
    made = Practice(held, held.stage(lambda _: None))
    await made.coach_joins()
    await made.ada_joins()
    await made.given()
    return made


@pytest.fixture(scope="session")
def blank(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    """A database in which nobody is; nothing that a talk does in it stays."""
    yield from _database(tmp_path_factory.mktemp("blank"))


@pytest.fixture(scope="session")
def wired(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Wired]:
    """A practice that has joined; nothing that a talk does in it stays."""
    for store in _database(tmp_path_factory.mktemp("wired")):
        yield Wired.made(store)


def _database(folder: Path) -> Iterator[Store]:
    store = Store.open(f"sqlite:///{folder}/store.db", Keyring.of(bytes(range(32))))
    store.migrate()
    yield store
    store.close()
