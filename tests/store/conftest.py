"""Stores to test with: everything that takes `store` runs on SQLite and on PostgreSQL, and is never skipped.

A session (of each worker, under xdist) starts one PostgreSQL and migrates one database of each kind; each test gets a
copy of its own.
"""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from storage.engine import Store
from storage.keyring import Keyring
from tests.postgres import Postgres, server

KEY = bytes(range(32))


@pytest.fixture(scope="session")
def keyring() -> Keyring:
    """A key that is the same in every process of the tests."""
    return Keyring.of(KEY)


@pytest.fixture(scope="session")
def postgres() -> Iterator[Postgres]:
    """A running PostgreSQL."""
    with server() as running:
        yield running


@pytest.fixture(scope="session")
def template(postgres: Postgres, keyring: Keyring) -> str:
    """A migrated PostgreSQL database, to be copied."""
    name = postgres.new_database()
    _migrated(postgres.url(name), keyring)
    return name


@pytest.fixture(scope="session")
def template_file(tmp_path_factory: pytest.TempPathFactory, keyring: Keyring) -> Path:
    """A migrated SQLite file, to be copied."""
    file = tmp_path_factory.mktemp("template") / "template.db"
    _migrated(f"sqlite:///{file}", keyring)
    return file


def _migrated(url: str, keyring: Keyring) -> None:
    store = Store.open(url, keyring)
    store.migrate()
    store.close()


@pytest.fixture(params=["sqlite", "postgres"])
def url(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """The address of a fresh, migrated database."""
    if request.param == "sqlite":
        file = tmp_path / "store.db"
        shutil.copy(request.getfixturevalue("template_file"), file)
        yield f"sqlite:///{file}"
        return
    running: Postgres = request.getfixturevalue("postgres")
    name = running.new_database(request.getfixturevalue("template"))
    yield running.url(name)
    running.drop_database(name)


@pytest.fixture
def open_store(url: str, keyring: Keyring) -> Iterator[Callable[[], Store]]:
    """Opens the same database as often as it is called: each one stands for a process of its own."""
    opened: list[Store] = []

    def again() -> Store:
        opened.append(Store.open(url, keyring))
        return opened[-1]

    yield again
    for store in opened:
        store.close()


@pytest.fixture
def store(open_store: Callable[[], Store]) -> Store:
    """An open, migrated, empty database."""
    return open_store()


@pytest.fixture
def open_template(template_file: Path, tmp_path: Path, keyring: Keyring) -> Iterator[Callable[[], Store]]:
    """Opens a new SQLite database each time: for what is measured in SQLite's own steps, two databases side by side."""
    opened: list[Store] = []

    def another() -> Store:
        file = tmp_path / f"store{len(opened)}.db"
        shutil.copy(template_file, file)
        opened.append(Store.open(f"sqlite:///{file}", keyring))
        return opened[-1]

    yield another
    for store in opened:
        store.close()
