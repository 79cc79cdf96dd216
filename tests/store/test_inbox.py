"""The inbox: each update once, a chat's in order by one worker at a time, and nothing lost by trouble."""

from collections.abc import Callable
from datetime import timedelta

from storage import inbox
from storage.engine import Store
from storage.inbox import InboxRow, RawUpdate
from tests.store.practice import NOW

BOT = 7


def receive(store: Store, *updates: tuple[int, int | None]) -> tuple[int, ...]:
    """Each is (update, chat)."""
    with store.begin() as work:
        rows = [RawUpdate(BOT, number, chat, f'{{"update_id":{number}}}') for number, chat in updates]
        return inbox.receive(work, rows, now=NOW)


def claim(store: Store, chat: int, worker: str = "a", *, after_s: int = 0) -> InboxRow | None:
    with store.begin() as work:
        return inbox.claim(work, chat, worker=worker, now=NOW + timedelta(seconds=after_s))


def finish(store: Store, row: InboxRow | None) -> bool:
    assert row is not None
    with store.begin() as work:
        return inbox.keep_done(work, row, now=NOW)


def test_a_repeated_update_is_nothing_new(store: Store) -> None:
    """The platform sends again what it did not see acknowledged; within one call and across calls."""
    assert receive(store, (1, 5), (2, 6), (1, 5)) == (5, 6)
    assert receive(store, (2, 6), (1, 5)) == ()
    finish(store, claim(store, 5))
    assert receive(store, (1, 5)) == ()
    assert claim(store, 5) is None


def test_the_same_number_of_another_bot_is_another_update(store: Store) -> None:
    receive(store, (1, 5))
    with store.begin() as work:
        assert inbox.receive(work, [RawUpdate(8, 1, 5, "{}")], now=NOW) == (5,)


def test_a_chat_is_worked_in_the_order_of_its_updates(store: Store) -> None:
    """Also where webhooks brought them the other way round."""
    receive(store, (12, 5), (11, 5))
    receive(store, (10, 5))
    numbers = []
    for _ in range(3):
        row = claim(store, 5)
        assert row is not None
        numbers.append(row.update)
        finish(store, row)
    assert numbers == [10, 11, 12]


def test_one_worker_holds_a_chat_and_others_work_on_other_chats(store: Store) -> None:
    receive(store, (1, 5), (2, 5), (3, 6))
    first = claim(store, 5, "a")
    assert first is not None
    assert first.update == 1
    assert claim(store, 5, "b") is None
    other = claim(store, 6, "b")
    assert other is not None
    assert other.update == 3
    finish(store, first)
    second = claim(store, 5, "b")
    assert second is not None
    assert second.update == 2


def test_a_dead_workers_chat_is_free_when_the_lease_ends(store: Store) -> None:
    receive(store, (1, 5))
    lost = claim(store, 5, "a")
    assert claim(store, 5, "b", after_s=59) is None
    row = claim(store, 5, "b", after_s=61)
    assert row is not None
    assert row.update == 1
    assert finish(store, row)
    assert not finish(store, lost), "the first worker, late, must learn that it was done already"


def test_a_claim_that_is_not_committed_is_no_claim(open_store: Callable[[], Store]) -> None:
    """Two connections: what the first had begun when it died is undone whole."""
    one, two = open_store(), open_store()
    receive(one, (1, 5))

    class Died(Exception):
        pass

    try:
        with one.begin() as work:
            assert inbox.claim(work, 5, worker="a", now=NOW) is not None
            raise Died
    except Died:
        pass
    assert claim(two, 5, "b") is not None


def test_a_start_lets_go_of_what_an_earlier_life_held(store: Store) -> None:
    """At once where one process works on the file; on PostgreSQL others may live, so the lease decides."""
    receive(store, (1, 5))
    claim(store, 5, "a")
    with store.begin() as work:
        inbox.recover(work)
    assert (claim(store, 5, "b") is None) == store.is_postgres


def test_a_turn_that_fails_three_times_is_set_aside_and_the_chat_goes_on(store: Store) -> None:
    receive(store, (1, 5), (2, 5))
    for attempt in range(3):
        row = claim(store, 5)
        assert row is not None
        assert (row.update, row.attempts) == (1, attempt)
        with store.begin() as work:
            assert inbox.keep_failed(work, row, "ValueError at grammar.py:3", now=NOW) == (attempt == 2)
    row = claim(store, 5)
    assert row is not None
    assert row.update == 2
    with store.begin() as work:
        assert inbox.set_aside_count(work) == 1
        assert inbox.try_again(work) == 1
        assert inbox.set_aside_count(work) == 0
        assert inbox.chats_waiting(work) == (5,)


def test_waiting_chats_come_by_age(store: Store) -> None:
    receive(store, (3, 7), (1, 5), (2, 6), (4, 5))
    with store.begin() as work:
        assert inbox.chats_waiting(work) == (7, 5, 6)
        assert inbox.chats_waiting(work, limit=2) == (7, 5)


def test_an_update_without_a_chat_is_kept_and_can_be_worked(store: Store) -> None:
    assert receive(store, (1, None)) == (inbox.NO_CHAT,)
    assert finish(store, claim(store, inbox.NO_CHAT))


def test_done_updates_lose_their_words_at_once_and_their_number_later(store: Store) -> None:
    receive(store, (1, 5), (2, 5))
    finish(store, claim(store, 5))
    with store.begin() as work:
        rows = work.connection.exec_driver_sql("SELECT update_id, raw FROM inbox ORDER BY id").fetchall()
        assert [(n, bool(raw)) for n, raw in rows] == [(1, False), (2, True)]
        assert inbox.purge(work, before=NOW) == 0
        assert inbox.purge(work, before=NOW + timedelta(days=7)) == 1, "what still waits stays"
    assert claim(store, 5) is not None
