"""What the operator does by hand: take up again what was set aside, delete who asked for it."""

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from bot.cli import chalkpost
from storage import inbox
from storage.census import clients_named
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.keyring import Keyring
from storage.work import Work
from tests.store import practice


class House:
    """A practice of three clients in a data folder, and the commands on it."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        with self.work() as work:
            practice.coach(work)
            practice.coach(work, id="coach-two", chat=9_000_000_002, name="Coach Wilhelmina")
            practice.client(work, id="one", chat=101, name="Tamsin")
            practice.client(work, id="two", chat=102, name="Tamsin", of="coach-two")
            practice.client(work, id="three", chat=103, name="Bjarne")

    @contextmanager
    def work(self) -> Iterator[Work]:
        """A transaction on the database, which is opened as the commands open it."""
        keyring = Keyring.from_file(self._folder / "key" / "chalkpost.key")
        store = Store.open(f"sqlite:///{self._folder / 'chalkpost.db'}", keyring)
        try:
            store.migrate()
            with store.begin() as work:
                yield work
        finally:
            store.close()

    def do(self, *words: str, say: str = "") -> Result:
        """Runs a command."""
        return CliRunner().invoke(chalkpost, words, env={"CHALKPOST_DATA_DIR": str(self._folder)}, input=say)

    def there(self, name: str) -> list[str]:
        """The ids of those who bear the name."""
        with self.work() as work:
            return [one.client for one in clients_named(work, name)]


@pytest.fixture
def house(tmp_path: Path) -> House:
    """A practice."""
    return House(tmp_path / "data")


def test_what_was_set_aside_is_taken_up_again(house: House) -> None:
    """All of it, once."""
    with house.work() as work:
        inbox.receive(work, [RawUpdate(1, 7, 101, "{}"), RawUpdate(1, 8, 103, "{}")], now=practice.NOW)
        for chat in (101, 103):
            row = inbox.claim(work, chat, worker="w", now=practice.NOW)
            assert row is not None
            assert inbox.keep_failed(work, row, "here", now=practice.NOW, limit=1)
        assert inbox.chats_waiting(work) == ()
    assert house.do("again").output == "2 messages are taken up again.\n"
    with house.work() as work:
        assert inbox.chats_waiting(work) == (101, 103)
    assert house.do("again").output == "Nothing was set aside.\n"


def test_a_person_is_deleted_after_a_question(house: House) -> None:
    """Who was found is shown; anything but yes leaves all as it is."""
    kept = house.do("forget", "bjarne", say="n\n")
    assert kept.exit_code == 0
    assert "Bjarne, with Coach Ondrej, joined 2027-02-11, id three" in kept.output
    assert "Nothing was deleted." in kept.output
    assert house.there("Bjarne") == ["three"]

    gone = house.do("forget", "bjarne", say="y\n")
    assert gone.exit_code == 0
    assert "Deleted." in gone.output
    assert house.there("Bjarne") == []
    assert house.there("Tamsin") == ["one", "two"]


def test_of_several_one_must_be_named(house: House) -> None:
    """They are told apart by coach, day and id; nothing is deleted before that."""
    asked = house.do("forget", "Tamsin", "--yes")
    assert asked.exit_code == 1
    assert "Tamsin, with Coach Ondrej" in asked.output
    assert "Tamsin, with Coach Wilhelmina" in asked.output
    assert "--id" in asked.output
    assert house.there("Tamsin") == ["one", "two"]

    assert house.do("forget", "Tamsin", "--id", "two", "--yes").exit_code == 0
    assert house.there("Tamsin") == ["one"]


@pytest.mark.parametrize("words", [("Nobody",), ("Bjarne", "--id", "one")])
def test_nobody_is_found(house: House, words: tuple[str, ...]) -> None:
    """A name that nobody bears, or an id that is somebody else's."""
    asked = house.do("forget", *words, "--yes")
    assert asked.exit_code == 1
    assert "There is no client" in asked.output
    assert house.there("Bjarne") == ["three"]
    assert house.there("Tamsin") == ["one", "two"]


def test_who_left_by_themselves_is_deleted_again_by_the_id_in_the_log(house: House) -> None:
    """After a restore: no name is needed, since the log has none."""
    assert house.do("forget", "--id", "two", "--yes").exit_code == 0
    assert house.there("Tamsin") == ["one"]
    asked = house.do("forget", "--id", "nobody", "--yes")
    assert asked.exit_code == 1
    assert "nobody" in asked.output
    assert house.do("forget", "--yes").exit_code == 2


def test_a_coach_is_deleted_with_all_clients_after_a_question(house: House) -> None:
    """Who it is and how many clients go is shown before; other practices stay."""
    assert house.do("coach", "forget", "Nobody", "--yes").exit_code == 1
    kept = house.do("coach", "forget", "coach wilhelmina", say="n\n")
    assert "Coach Wilhelmina, joined 2027-02-01, one client, id coach-two" in kept.output
    assert house.there("Tamsin") == ["one", "two"]
    gone = house.do("coach", "forget", "coach wilhelmina", say="y\n")
    assert "Deleted." in gone.output
    assert house.there("Tamsin") == ["one"]
    assert house.there("Bjarne") == ["three"]
    assert house.do("coach", "forget", "coach wilhelmina", "--yes").exit_code == 1
