"""The tables in the code and those that the migrations make are the same, on both engines, whole."""

import contextlib
import importlib.util
from collections.abc import Iterator
from pathlib import Path

import pytest
import sqlalchemy as sa
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory

from bot.faults import StoreFault
from storage.engine import Store
from storage.keyring import Keyring
from storage.migrate import FOLDER, upgrade
from storage.migrations import HEAD, VERSIONS
from storage.tables import metadata
from storage.triggers import statements
from tests.postgres import Postgres
from tests.store import practice


@pytest.fixture(params=["sqlite", "postgres"])
def empty_url(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[str]:
    """The address of a database without any table."""
    if request.param == "sqlite":
        yield f"sqlite:///{tmp_path}/empty.db"
        return
    running: Postgres = request.getfixturevalue("postgres")
    name = running.new_database()
    yield running.url(name)
    running.drop_database(name)


def test_migrations_and_tables_agree(store: Store) -> None:
    with store.begin() as work:
        context = MigrationContext.configure(work.connection, opts={"compare_type": True})
        assert compare_metadata(context, metadata) == []


def catalogue(connection: sa.Connection) -> set[tuple[str, ...]]:
    """Everything the engine knows of tables, columns, checks, indexes and triggers, in its own words."""
    if connection.dialect.name == "sqlite":
        found = connection.exec_driver_sql(
            "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_master "
            "WHERE tbl_name NOT IN ('alembic_version', 'sqlite_sequence')"
        )
        return {(*row[:3], _words(row[3])) for row in found}
    parts = (
        "SELECT 'column', table_name, column_name, data_type || is_nullable || coalesce(column_default, '') "
        "FROM information_schema.columns WHERE table_schema = 'public'",
        "SELECT 'index', tablename, indexname, indexdef FROM pg_indexes WHERE schemaname = 'public'",
        "SELECT 'constraint', conrelid::regclass::text, conname, pg_get_constraintdef(oid) FROM pg_constraint "
        "WHERE connamespace = 'public'::regnamespace",
        "SELECT 'trigger', tgrelid::regclass::text, tgname, pg_get_triggerdef(oid) FROM pg_trigger "
        "WHERE NOT tgisinternal",
        "SELECT 'function', proname, '', prosrc FROM pg_proc WHERE pronamespace = 'public'::regnamespace",
    )
    rows = [tuple(map(str, row)) for part in parts for row in connection.exec_driver_sql(part)]
    return {row for row in rows if row[1] != "alembic_version"}


def _words(sql: str) -> str:
    """A statement as it reads, however it was laid out; the columns and constraints of a table in any order."""
    plain = " ".join(sql.replace('"', "").split())
    if not plain.startswith("CREATE TABLE"):
        return plain
    head, _, rest = plain.partition("(")
    body, _, options = rest.rpartition(")")
    parts, depth = [""], 0
    for character in body:
        depth += (character == "(") - (character == ")")
        if character == "," and depth == 0:
            parts.append("")
        else:
            parts[-1] += character
    return f"{head}({', '.join(sorted(p.strip() for p in parts))}){options}"


def test_migrations_make_what_the_code_would_make(empty_url: str, keyring: Keyring) -> None:
    """Checks, partial indexes, triggers and defaults too, which the comparison above does not see."""
    store = Store.open(empty_url, keyring)
    with store.engine.connect() as connection:
        with connection.begin() as undone:
            metadata.create_all(connection)
            for statement in statements(connection.dialect.name):
                connection.exec_driver_sql(statement)
            made = catalogue(connection)
            undone.rollback()
        assert catalogue(connection) == set()
    store.migrate()
    with store.begin() as work:
        assert catalogue(work.connection) == made
    assert len(made) > 60
    store.close()


def test_an_empty_database_is_brought_up_and_a_second_time_changes_nothing(empty_url: str, keyring: Keyring) -> None:
    store = Store.open(empty_url, keyring)
    store.migrate()
    with store.begin() as work:
        practice.practice(work)
        first = catalogue(work.connection)
    store.migrate()
    store.close()
    again = Store.open(empty_url, keyring)
    again.migrate()
    with again.begin() as work:
        assert catalogue(work.connection) == first
        assert work.connection.execute(sa.text("SELECT count(*) FROM clients")).scalar() == 1
    again.close()


def test_the_code_knows_every_version_in_order() -> None:
    scripts = ScriptDirectory(str(FOLDER))
    assert tuple(reversed([s.revision for s in scripts.walk_revisions()])) == VERSIONS
    assert scripts.get_current_head() == HEAD


def test_the_steps_are_part_of_what_is_installed() -> None:
    """They lie in the package, found from wherever it is; the wheel takes the whole package."""
    spec = importlib.util.find_spec("storage.migrations")
    assert spec is not None
    assert spec.origin is not None
    assert Path(spec.origin).parent == FOLDER
    assert (FOLDER / "env.py").is_file()


def test_a_newer_database_is_left_alone_and_said_so(store: Store, url: str, keyring: Keyring) -> None:
    with store.begin() as work:
        work.connection.execute(sa.text("UPDATE alembic_version SET version_num = '9999'"))
    with pytest.raises(StoreFault, match=r"newer Chalkpost .*9999"):
        Store.open(url, keyring)
    with pytest.raises(StoreFault, match="newer"):
        store.migrate()


def test_a_step_that_fails_leaves_nothing_behind(empty_url: str, keyring: Keyring) -> None:
    """Half an upgrade is none: here the last statement meets something that is already there."""
    store = Store.open(empty_url, keyring)
    with store.begin() as work:
        work.connection.execute(sa.text("CREATE TABLE sets (id integer)"))
    with pytest.raises(StoreFault, match="can't be brought up to date"):
        store.migrate()
    with store.begin() as work:
        assert sa.inspect(work.connection).get_table_names() == ["sets"]
    store.close()


# --- from an old database

AT = 1_800_000_000_000_000
"""Some moment, in microseconds since 1970."""


def fill_first(connection: sa.Connection, keyring: Keyring) -> None:
    """Rows as version 0001 held them, written as it wrote them and not by today's code: people, facts, an outbox of
    which the newest rows are gone, so that its numbers are ahead of what is left."""
    coach = "INSERT INTO coaches VALUES ('c1', 52, :name, 'UTC', '07:00:00', :at)"
    connection.execute(sa.text(coach), {"name": keyring.seal("Coach"), "at": AT})
    client = (
        "INSERT INTO clients (id, coach, chat, name, unit, zone, days, hour, gym, standing, joined_at) "
        "VALUES ('k1', 'c1', 101, :name, 'kg', 'UTC', '0,2', '18:00:00', '{}', 'active', :at)"
    )
    connection.execute(sa.text(client), {"name": keyring.seal("Tamsin"), "at": AT})
    fact = (
        "INSERT INTO facts (kind, version, client, coach, said_by, at, source, body) "
        "VALUES ('ConsentGiven', 1, :client, 'c1', 'chat:101', :at, 'm101:1', :body)"
    )
    for whose in ("k1", None):
        connection.execute(sa.text(fact), {"client": whose, "at": AT, "body": keyring.seal("words")})
    parcel = (
        "INSERT INTO outbox (key, chat, kind, body, urgency, lane, repeat, state, next_at, made_at) "
        "VALUES (:key, 101, 'send', :body, 1, 1, 'resend', :state, :at, :at)"
    )
    for key, state in (("a", "waiting"), ("b", "sending"), ("c", "sent"), ("d", "sent")):
        row = {"key": key, "state": state, "body": keyring.seal(key), "at": AT}
        connection.execute(sa.text(parcel), row)
    connection.execute(sa.text("DELETE FROM outbox WHERE key = 'd'"))


def rows_of(connection: sa.Connection, table: str) -> list[tuple[object, ...]]:
    """All of a table, in order."""
    found = connection.execute(sa.text(f"SELECT * FROM {table} ORDER BY 1"))
    return [tuple(bytes(v) if isinstance(v, memoryview) else v for v in row) for row in found]


def test_a_database_of_the_first_version_comes_up_with_all_that_it_held(empty_url: str, keyring: Keyring) -> None:
    store = Store.open(empty_url, keyring)
    with store.engine.begin() as connection:
        upgrade(connection, "0001")
        fill_first(connection, keyring)
        before = {table: rows_of(connection, table) for table in ("coaches", "clients", "facts", "outbox")}
    store.migrate()
    with store.begin() as work:
        after = {table: rows_of(work.connection, table) for table in before}
        assert {table: [row[: len(before[table][0])] for row in rows] for table, rows in after.items()} == before
        work.connection.execute(
            sa.text(
                "INSERT INTO outbox (key, chat, kind, body, urgency, lane, repeat, next_at, made_at) "
                "VALUES ('e', 101, 'fetch', :body, 1, 1, 'resend', 0, 0)"
            ),
            {"body": b""},
        )
        number = work.connection.execute(sa.text("SELECT id FROM outbox WHERE key = 'e'")).scalar_one()
        assert number == 5, "a number that was ever used does not come back"
    store.close()


def test_an_upgraded_database_is_what_the_code_would_make(empty_url: str, keyring: Keyring) -> None:
    """Tables, checks, indexes and triggers, though the database had data on its way."""
    store = Store.open(empty_url, keyring)
    with store.engine.connect() as connection, connection.begin() as undone:
        metadata.create_all(connection)
        for statement in statements(connection.dialect.name):
            connection.exec_driver_sql(statement)
        made = catalogue(connection)
        undone.rollback()
    with store.engine.begin() as connection:
        upgrade(connection, "0001")
        fill_first(connection, keyring)
    store.migrate()
    with store.begin() as work:
        assert catalogue(work.connection) == made
    store.close()


CHANGED = "UPDATE facts SET source = 'm1:1'"
RESEALED = "UPDATE facts SET body = :body"


def test_the_guard_lets_a_fact_be_sealed_anew_and_nothing_else(empty_url: str, keyring: Keyring) -> None:
    """Only within a transaction that says so, and only the sealed bytes."""
    store = Store.open(empty_url, keyring)
    with store.engine.begin() as connection:
        upgrade(connection, "0001")
        fill_first(connection, keyring)
    store.migrate()
    for opened, statement, is_allowed in (
        (False, RESEALED, False),
        (False, CHANGED, False),
        (True, CHANGED, False),
        (True, RESEALED + ", at = at + 1", False),
        (True, RESEALED + ", session = 's'", False),
        (True, RESEALED, True),
    ):
        with contextlib.ExitStack() as stack:
            if not is_allowed:
                stack.enter_context(pytest.raises(sa.exc.DBAPIError, match="added, never edited"))
            with store.begin() as work:
                if opened:
                    work.connection.execute(sa.text("INSERT INTO resealing VALUES (1)"))
                work.connection.execute(sa.text(statement), {"body": b"anew"} if ":body" in statement else {})
                work.connection.execute(sa.text("DELETE FROM resealing"))
    store.close()


@pytest.mark.parametrize(("named", "left"), [("k1", 1), ("c1", 1), ("nobody", 2)])
def test_the_guard_lets_the_facts_go_of_whom_the_transaction_names(
    empty_url: str, keyring: Keyring, named: str, left: int
) -> None:
    """A coach's own are those about no client: naming the coach frees no client's."""
    store = Store.open(empty_url, keyring)
    with store.engine.begin() as connection:
        upgrade(connection, "0001")
        fill_first(connection, keyring)
    store.migrate()
    for body in ("client = 'k1'", "client IS NULL"):
        with contextlib.suppress(sa.exc.DBAPIError), store.begin() as work:
            work.connection.execute(sa.text("INSERT INTO forgetting VALUES (:named)"), {"named": named})
            work.connection.execute(sa.text(f"DELETE FROM facts WHERE {body}"))
            work.connection.execute(sa.text("DELETE FROM forgetting"))
    with store.begin() as work:
        assert len(rows_of(work.connection, "facts")) == left
        assert rows_of(work.connection, "forgetting") == []
    store.close()
