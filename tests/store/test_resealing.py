"""A new key on top of the file: what the older one sealed is sealed anew, and then the older one is needed no more."""

import base64
from pathlib import Path

import pytest
import sqlalchemy as sa
from click.testing import CliRunner

from bot.cli import chalkpost
from bot.faults import KeyFault
from storage import inbox, outbox, people, record
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.keyring import Keyring
from storage.outbox import NewParcel, ParcelKind
from storage.resealing import BATCH, Resealed, reseal, sealed_columns
from storage.tables import facts, metadata
from tests.store import practice
from tests.store.conftest import KEY
from tests.store.practice import NOW, TODAY
from tests.store.test_erasure import fill, in_files

NEW = bytes(range(1, 33))


def filled(store: Store) -> None:
    """People, history, messages on their way in and out."""
    with store.begin() as work:
        practice.coach(work)
        fill(work, 4)
        practice.trained(work, of="client-000", day=TODAY)
        inbox.receive(work, [RawUpdate(1, 1, 1_000, "{}")], now=NOW)
        outbox.put(work, [NewParcel("a", 1_000, ParcelKind.SEND, '"words"', 1, "resend")], now=NOW)


def all_sealed(store: Store) -> dict[str, list[bytes]]:
    """Every sealed text, by table."""
    found: dict[str, list[bytes]] = {}
    with store.begin() as work:
        for table in metadata.sorted_tables:
            if columns := sealed_columns(table):
                rows = work.connection.execute(sa.select(*columns))
                found[table.name] = [bytes(value) for row in rows for value in row if value]
    return found


def test_everything_is_sealed_by_the_newest_key_and_says_the_same(store: Store, url: str) -> None:
    """Afterwards the older key alone opens nothing, the newest alone everything; the facts are the same, and guarded as
    ever."""
    filled(store)
    with store.begin() as work:
        before = list(record.facts_of(work, "client-000"))
    store.close()
    both = Store.open(url, Keyring.of(NEW, KEY))
    told: list[Resealed] = []
    done = reseal(both, told=told.append)
    assert done.anew == done.seen == told[-1].anew > 100
    assert all(both.keyring.is_newest(one) for texts in all_sealed(both).values() for one in texts)
    assert reseal(both) == Resealed(0, done.seen)
    both.close()
    with pytest.raises(KeyFault):
        Store.open(url, Keyring.of(KEY))
    new = Store.open(url, Keyring.of(NEW))
    with new.begin() as work:
        assert list(record.facts_of(work, "client-000")) == before
        me = people.client_at(work, 1_000)
        assert me is not None
        assert me.name == "Person 0"
    with pytest.raises(sa.exc.DBAPIError, match="added, never edited"), new.begin() as work:
        work.connection.execute(sa.update(facts).values(body=b"other"))
    new.close()


def test_what_was_sealed_anew_leaves_nothing_of_its_older_form(store: Store, url: str) -> None:
    """On SQLite: else whoever has the leaked key could still read it from the file."""
    filled(store)
    old = {one for texts in all_sealed(store).values() for one in texts}
    store.close()
    both = Store.open(url, Keyring.of(NEW, KEY))
    reseal(both)
    if not both.is_postgres:
        assert in_files(both, old) == set()
    assert not {one for texts in all_sealed(both).values() for one in texts} & old
    both.close()


def test_broken_off_it_goes_on_where_it_was(store: Store, url: str) -> None:
    """What is done is done; meanwhile everything can be read."""
    filled(store)
    store.close()
    both = Store.open(url, Keyring.of(NEW, KEY))

    class Enough(Exception):
        """Somebody presses the interrupt key."""

    def stop(sofar: Resealed) -> None:
        if sofar.seen > BATCH // 5:
            raise Enough

    with pytest.raises(Enough):
        reseal(both, told=stop)
    with both.begin() as work:
        assert len(list(record.facts_of(work, "client-000"))) > 10
    half = [both.keyring.is_newest(one) for texts in all_sealed(both).values() for one in texts]
    assert True in half
    assert False in half
    assert reseal(both).anew == half.count(False)
    both.close()


def test_a_key_that_is_missing_is_said_and_changes_nothing(store: Store, url: str) -> None:
    filled(store)
    store.close()
    other = Store.open(url, Keyring.of(KEY))
    with other.begin() as work:
        work.run(sa.insert(facts), strange_fact(Keyring.of(bytes(32)).seal("[1,{}]")))
    before = all_sealed(other)["facts"]
    both = Store.open(url, Keyring.of(NEW, KEY))
    with pytest.raises(KeyFault):
        reseal(both)
    both.close()
    assert all_sealed(other)["facts"] == before
    other.close()


def strange_fact(body: bytes) -> dict[str, object]:
    """A fact sealed by some third key."""
    row: dict[str, object] = {"kind": "QuestionAsked", "version": 1, "client": "client-000", "said_by": "x"}
    return {**row, "at": NOW, "source": "x", "body": body}


def test_the_command_seals_anew_and_says_how_much(tmp_path: Path) -> None:
    """`chalkpost reseal`, with a new line on top of the key file; then the old line can go."""
    environment = {"CHALKPOST_DATA_DIR": str(tmp_path)}
    key = tmp_path / "key" / "chalkpost.key"
    store = Store.open(f"sqlite:///{tmp_path / 'chalkpost.db'}", Keyring.from_file(key))
    store.migrate()
    filled(store)
    store.close()
    key.write_text(base64.b64encode(NEW).decode() + "\n" + key.read_text())
    done = CliRunner().invoke(chalkpost, ["reseal"], env=environment)
    assert done.exit_code == 0, done.output
    first, second = done.output.split()[0], done.output.split()[2]
    assert int(first.replace(",", "")) == int(second.replace(",", "")) > 100
    key.write_text(base64.b64encode(NEW).decode() + "\n")
    again = CliRunner().invoke(chalkpost, ["reseal"], env=environment)
    assert again.exit_code == 0, again.output
    assert again.output.startswith("0 of ")
