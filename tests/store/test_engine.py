"""Opening a database: durability, transactions, and faults in plain sentences."""

import os
import subprocess
import sys
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from pathlib import Path

import pytest
import sqlalchemy as sa

from bot.dialogue.turn import Talk, TalkSet
from bot.faults import ChalkpostFault, KeyFault, StoreFault
from storage import leases, talks
from storage.engine import Store, is_retryable
from storage.keyring import Keyring
from storage.work import Work
from tests.store import practice
from tests.store.conftest import KEY
from tests.store.practice import NOW

ROOT = Path(__file__).parents[2]


def names(work: Work) -> list[str]:
    return list(work.connection.execute(sa.text("SELECT name FROM leases ORDER BY name")).scalars())


def take(work: Work, name: str) -> None:
    assert leases.take(work, name, "me", NOW, 60)


class Stop(Exception):
    """The tests' own trouble."""


def take_and_stop(work: Work, name: str) -> None:
    take(work, name)
    raise Stop


def take_and_clash(work: Work, name: str) -> None:
    take(work, name)
    work.connection.execute(sa.text("INSERT INTO leases VALUES ('a', 'x', 1)"))


def test_sqlite_is_opened_durable(store: Store) -> None:
    if store.is_postgres:
        return
    with store.begin() as work:
        found = {p: work.connection.exec_driver_sql(f"PRAGMA {p}").scalar() for p in ("journal_mode", "foreign_keys")}
        assert found == {"journal_mode": "wal", "foreign_keys": 1}
        assert work.connection.exec_driver_sql("PRAGMA synchronous").scalar() == 2, "FULL"


def test_what_is_written_is_there_after_and_not_before_the_end(open_store: Callable[[], Store]) -> None:
    one, two = open_store(), open_store()
    with one.begin() as work:
        take(work, "a")
    with two.begin() as work:
        assert names(work) == ["a"]


def test_an_error_undoes_the_whole_transaction(store: Store) -> None:
    with pytest.raises(Stop), store.begin() as work:
        take_and_stop(work, "a")
    with store.begin() as work:
        assert names(work) == []


def test_a_savepoint_undoes_its_own_part_only(store: Store) -> None:
    """Also after an error of the database itself, which ends a whole PostgreSQL transaction otherwise."""
    with store.begin() as work:
        take(work, "a")
        with pytest.raises(sa.exc.IntegrityError), work.savepoint():
            take_and_clash(work, "b")
        with work.savepoint():
            take(work, "c")
            with pytest.raises(Stop), work.savepoint():
                take_and_stop(work, "d")
            take(work, "e")
    with store.begin() as work:
        assert names(work) == ["a", "c", "e"]


def test_reading_first_and_writing_later_never_fails_on_a_busy_file(open_store: Callable[[], Store]) -> None:
    """Each transaction takes the write lock at its start: twenty that read, then write, side by side."""
    one, two = open_store(), open_store()
    with one.begin() as work:
        take(work, "count")

    def add(n: int) -> None:
        with (one if n % 2 else two).begin() as work:
            before = names(work)
            work.connection.execute(sa.text("INSERT INTO leases VALUES (:n, 'x', 1)"), {"n": f"n{n}"})
            assert len(before) >= 1

    with ThreadPoolExecutor(8) as pool:
        list(pool.map(add, range(20)))
    with one.begin() as work:
        assert len(names(work)) == 21


def test_a_lease_is_one_holders_until_it_ends(store: Store) -> None:
    later = NOW + timedelta(seconds=31)
    with store.begin() as work:
        assert leases.take(work, "poll", "a", NOW, 30)
        assert not leases.take(work, "poll", "b", NOW, 30)
        assert leases.take(work, "poll", "a", NOW, 30), "its holder may hold it on"
        assert leases.take(work, "pace", "b", NOW, 30), "another lease is another matter"
        assert leases.take(work, "poll", "b", later, 30)
        assert not leases.take(work, "poll", "a", later, 30)
        leases.give(work, "poll", "a")
        assert not leases.take(work, "poll", "a", later, 30), "only its holder gives it up"
        leases.give(work, "poll", "b")
        assert leases.take(work, "poll", "a", later, 30)


# --- faults


@pytest.mark.parametrize(
    ("url", "words"),
    [
        ("nonsense", "address can't be read"),
        ("mysql://host/db", "No database of the kind 'mysql'"),
        ("sqlite://", "needs a file"),
        ("sqlite:///:memory:", "needs a file"),
        ("postgresql://nobody@/none?host=/nowhere/at/all", "can't be opened"),
    ],
)
def test_an_address_that_leads_nowhere_is_said_plainly(url: str, words: str, keyring: Keyring) -> None:
    with pytest.raises(StoreFault, match=words) as fault:
        Store.open(url, keyring)
    assert "\n" not in str(fault.value)


def test_a_file_that_is_no_database_is_said_plainly(tmp_path: Path, keyring: Keyring) -> None:
    (tmp_path / "x.db").write_bytes(b"not a database, only words" * 100)
    with pytest.raises(StoreFault, match="not a database"):
        Store.open(f"sqlite:///{tmp_path}/x.db", keyring)


def test_a_folder_that_is_a_file_is_said_plainly(tmp_path: Path, keyring: Keyring) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(StoreFault, match=r"The folder .* can't be made"):
        Store.open(f"sqlite:///{tmp_path}/file/x.db", keyring)


READ_ONLY = """
import os, sys
from bot.faults import StoreFault
from storage.engine import Store
from storage.keyring import Keyring
ring = Keyring.of(bytes(32))
Store.open(sys.argv[2], ring).close()  # loads all that it takes while this user may still read it
if os.getuid() == 0:
    os.setgid(65534), os.setuid(65534)
try:
    Store.open(sys.argv[1], ring)
except StoreFault as fault:
    print(fault)
"""


@pytest.mark.parametrize("has_file", [False, True])
def test_a_read_only_folder_is_said_plainly(tmp_path: Path, keyring: Keyring, has_file: bool) -> None:
    """In a process of an ordinary user, since root may write everywhere."""
    folder = tmp_path / "readonly"
    folder.mkdir()
    if has_file:
        Store.open(f"sqlite:///{folder}/store.db", keyring).close()
    for path in (tmp_path, *tmp_path.parents):
        if os.getuid() == 0 and path.owner() == "root" and path != Path("/"):
            path.chmod(path.stat().st_mode | 0o055)
    folder.chmod(0o555)
    command = [sys.executable, "-c", READ_ONLY, f"sqlite:///{folder}/store.db", f"sqlite:///{tmp_path}/x.db"]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True, timeout=60)
    assert "The database can't be opened" in done.stdout
    assert str(folder) in done.stdout
    assert done.stdout.count("\n") == 1
    assert done.stderr == ""


# --- the key


def test_the_right_key_opens_and_another_does_not(url: str, keyring: Keyring) -> None:
    store = Store.open(url, keyring)
    with store.begin() as work:
        practice.practice(work)
    store.close()
    Store.open(url, Keyring.of(KEY)).close()
    with pytest.raises(KeyFault, match="not the one that sealed this database"):
        Store.open(url, Keyring.of(bytes(32)))


def test_a_missing_key_is_not_replaced_by_a_new_one(url: str, tmp_path: Path) -> None:
    """The file that this run made for want of one goes again, so that the right one can simply be put back."""
    file = tmp_path / "key"
    with pytest.raises(KeyFault, match="is missing, and the database can't be read without it"):
        Store.open(url, Keyring.from_file(file))
    assert not file.exists()


def test_a_first_run_makes_the_key_and_the_next_one_takes_it(tmp_path: Path) -> None:
    file, url = tmp_path / "key", f"sqlite:///{tmp_path}/new.db"
    for _ in range(2):
        store = Store.open(url, Keyring.from_file(file))
        store.migrate()
        store.close()
    assert file.exists()


def test_faults_are_the_operators(store: Store) -> None:
    assert issubclass(StoreFault, ChalkpostFault)
    assert store.engine.hide_parameters, "an error's text must not show people's words"


def test_what_may_be_tried_again_is_told_apart(store: Store) -> None:
    with pytest.raises(sa.exc.DBAPIError) as bad, store.begin() as work:
        work.connection.execute(sa.text("SELECT nonsense"))
    assert not is_retryable(bad.value)
    assert not is_retryable(ValueError())
    orig = type("Locked", (Exception,), {})("database is locked")
    assert is_retryable(sa.exc.OperationalError("x", {}, orig))
    deadlock = type("Deadlock", (Exception,), {"sqlstate": "40P01"})("deadlock detected")
    assert is_retryable(sa.exc.OperationalError("x", {}, deadlock))


def test_a_talk_that_another_key_sealed_is_a_fault_not_a_crash(store: Store) -> None:
    with store.begin() as work:
        talks.keep_talk(work, TalkSet(5, Talk("a", "b")))
        work.keyring = Keyring.of(bytes(32))
        with pytest.raises(KeyFault):
            talks.talk_of(work, 5, now=NOW)
