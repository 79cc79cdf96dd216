"""What the runbook says about copies and keys, done: a copy put back, a key put back, a new key put on top."""

import shutil
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from storage.census import clients_named
from storage.engine import Store
from storage.keyring import Keyring
from storage.work import Work
from tests.deploy.checkout import ROOT, Ran
from tests.store import practice


class Kept:
    """A data folder and a key folder, as the unit makes them, and the commands on them."""

    def __init__(self, folder: Path) -> None:
        self.data = folder / "chalkpost"
        self.database = self.data / "chalkpost.db"
        self.key = folder / "chalkpost-key" / "chalkpost.key"

    def chalkpost(self, *words: str | Path) -> Ran:
        """Runs a command as the operator does."""
        settings = [f"CHALKPOST_DATA_DIR={self.data}", f"CHALKPOST_KEY_FILE={self.key}", "CHALKPOST_ENV_FILE="]
        command = ["env", *settings, sys.executable, "-m", "bot", *map(str, words)]
        done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
        return Ran(done.returncode, done.stdout, done.stderr)

    @contextmanager
    def work(self) -> Iterator[Work]:
        """A transaction on the database."""
        store = Store.open(f"sqlite:///{self.database}", Keyring.from_file(self.key))
        try:
            store.migrate()
            with store.begin() as work:
                yield work
        finally:
            store.close()

    def names(self) -> list[str]:
        """The name of the one client, as often as it is there to be read."""
        with self.work() as work:
            return [one.name for one in clients_named(work, "tamsin")]

    def lose_database(self) -> None:
        """The disk is gone."""
        for file in self.data.glob("chalkpost.db*"):
            file.unlink()


@pytest.fixture
def kept(tmp_path: Path) -> Kept:
    """A practice with one client."""
    kept = Kept(tmp_path / "lib")
    with kept.work() as work:
        practice.coach(work)
        practice.client(work, name="Tamsin")
    return kept


def test_a_copy_put_back_is_the_practice_again(kept: Kept, tmp_path: Path) -> None:
    """`backup`, loss, `cp`: all is there. The copy is for its owner's eyes only, and the key is not in it."""
    copy = tmp_path / "copy.db"
    assert kept.chalkpost("backup", copy).code == 0
    assert copy.stat().st_mode & 0o077 == 0
    assert kept.key.read_bytes().strip() not in copy.read_bytes()
    assert b"Tamsin" not in copy.read_bytes()
    kept.lose_database()
    shutil.copy(copy, kept.database)
    assert kept.names() == ["Tamsin"]


def test_a_copy_without_its_key_is_refused(kept: Kept) -> None:
    """A lost key is told, and none is made over old data; put back, all is there."""
    safe = kept.key.with_name("in the safe")
    kept.key.rename(safe)
    ran = kept.chalkpost("status")
    assert ran.code == 2
    assert len(ran.err.strip().splitlines()) == 1
    assert "put it back" in ran.err
    assert not kept.key.exists()
    safe.rename(kept.key)
    assert kept.names() == ["Tamsin"]


def test_another_practices_key_is_refused(kept: Kept, tmp_path: Path) -> None:
    """One sentence, nothing is changed."""
    other = Kept(tmp_path / "other")
    assert other.chalkpost("status").code == 1  # never run; the key is made
    shutil.copy(other.key, kept.key)
    ran = kept.chalkpost("status")
    assert (ran.code, len(ran.err.strip().splitlines())) == (2, 1)
    assert "not the one that sealed" in ran.err


def test_a_new_key_goes_on_top(kept: Kept) -> None:
    """The runbook's own line makes it; old words stay readable, new ones need the new key."""
    (line,) = (one.strip() for one in (ROOT / "deploy" / "RUNBOOK.md").read_text("utf-8").splitlines() if "b64" in one)
    program = line.partition("-c '")[2].rstrip("'")
    new = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, check=True).stdout
    old = kept.key.read_text(encoding="ascii")
    kept.key.write_text(new + old, encoding="ascii")
    assert kept.names() == ["Tamsin"]
    with kept.work() as work:
        practice.client(work, id="another", chat=102, name="Tamsin")
    assert kept.names() == ["Tamsin", "Tamsin"]

    kept.key.write_text(new, encoding="ascii")
    assert "not the one that sealed" in kept.chalkpost("status").err
