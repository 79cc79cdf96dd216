"""Statements made ready give the same as the library's own execution, with its errors."""

from datetime import UTC, datetime, time, timedelta

import pytest
import sqlalchemy as sa

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet
from storage import leases, schedule, slots
from storage.engine import Store, is_retryable
from storage.ready import Ready, ready
from storage.tables import clients
from storage.tables import schedule as rules
from storage.work import Work
from tests.store import practice
from tests.store.practice import NOW

ALL_RULES = sa.select(rules).order_by(rules.c.id)
ALL_CLIENTS = sa.select(clients).order_by(clients.c.id)


@pytest.mark.parametrize("statement", [ALL_RULES, ALL_CLIENTS])
def test_rows_are_those_that_the_library_gives(store: Store, statement: sa.Select[tuple[object, ...]]) -> None:
    """Instants, days, hours, flags, weekdays, bytes and empty values, by name and by place."""
    with store.begin() as work:
        practice.practice(work)
        schedule.keep_rule(work, RuleSet("c", RuleKind.WEEK, "UTC", time(7, 30), (0, 6)), now=NOW)
        schedule.keep_rule(work, RuleSet("c", RuleKind.NUDGE, "UTC", once_at=NOW + timedelta(microseconds=1)), now=NOW)
        theirs = work.connection.execute(statement).fetchall()
        ours = work.all(ready(statement))
        assert [tuple(row) for row in theirs] == [tuple(row) for row in ours]  # type: ignore[arg-type]  # rows iterate
        for mine, other in zip(ours, theirs, strict=True):
            for name in statement.selected_columns.keys():  # noqa: SIM118  not a dict
                assert getattr(mine, name) == getattr(other, name)
                assert type(getattr(mine, name)) is type(getattr(other, name))


def test_values_in_the_statement_and_given_ones_both_arrive(store: Store) -> None:
    some = ready(
        sa.select(rules.c.kind, sa.func.count(), rules.c.once_at)
        .where(
            rules.c.kind.in_((sa.literal("week"), sa.literal("nudge"))),
            rules.c.once_at >= sa.bindparam("since"),
            rules.c.whose != "x",
        )
        .group_by(rules.c.kind, rules.c.once_at)
        .limit(5)
    )
    with store.begin() as work:
        schedule.keep_rule(work, RuleSet("c", RuleKind.NUDGE, "UTC", once_at=NOW), now=NOW)
        for since, count in ((NOW, 1), (NOW + timedelta(seconds=1), 0), (datetime(2020, 1, 1, tzinfo=UTC), 1)):
            rows = work.all(some, {"since": since})
            assert [(row[0], row[1], row.once_at) for row in rows] == [("nudge", 1, NOW)] * count


def test_rows_written_are_counted(store: Store) -> None:
    with store.begin() as work:
        assert leases.take(work, "a", "me", NOW, 5)
        assert not leases.take(work, "a", "other", NOW, 5)
        for n in range(3):
            slots.keep_slot(work, n, "card", message=1, body_hash="", now=NOW)
        assert slots.purge(work, before=NOW + timedelta(seconds=1)) == 3
        assert slots.purge(work, before=NOW + timedelta(seconds=1)) == 0


def clash(work: Work) -> None:
    insert = ready(sa.insert(rules))
    row = {"whose": "secret words", "kind": "nudge", "zone": "UTC", "days": (), "once_at": NOW}
    work.run(insert, [row, row])


def test_errors_are_the_librarys_and_show_no_parameters(store: Store) -> None:
    with pytest.raises(sa.exc.IntegrityError) as error, store.begin() as work:
        clash(work)
    assert not is_retryable(error.value)
    assert "secret words" not in str(error.value).split("DETAIL")[0]
    with store.begin() as work:
        assert work.all(ready(ALL_RULES)) == []


def test_a_naive_instant_is_refused_before_it_reaches_the_database(store: Store) -> None:
    with pytest.raises(ValueError, match="naive"), store.begin() as work:
        leases.take(work, "a", "me", datetime(2027, 3, 1), 5)


def cut(store: Store) -> None:
    """Ends every other connection of this database, as a restart of the server does."""
    with store.engine.connect() as connection:
        connection.execute(
            sa.text(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity "
                "WHERE datname = current_database() AND pid <> pg_backend_pid()"
            )
        )


def test_a_lost_connection_is_told_and_the_next_transaction_works(store: Store) -> None:
    if not store.is_postgres:
        return
    with pytest.raises(sa.exc.DBAPIError) as error, store.begin() as work:
        lose(store, work)
    assert is_retryable(error.value)
    with store.begin() as work:
        assert leases.take(work, "a", "me", NOW, 5)


def lose(store: Store, work: Work) -> None:
    cut(store)
    leases.take(work, "a", "me", NOW, 5)


def test_a_statement_may_differ_by_engine(store: Store) -> None:
    which = ready(sa.select(sa.literal("sqlite").label("name")), sa.select(sa.literal("postgresql").label("name")))
    assert isinstance(which, Ready)
    with store.begin() as work:
        row = work.first(which)
        assert row is not None
        assert row.name == store.engine.dialect.name


def test_a_list_that_the_library_would_write_anew_each_time_is_refused_at_once(store: Store) -> None:
    listed = ready(sa.select(rules.c.id).where(rules.c.kind.in_(("week", "nudge"))))
    with store.begin() as work, pytest.raises(TypeError, match="IN"):
        work.all(listed)
