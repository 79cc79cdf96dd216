"""The outbox: nothing put twice, one on its way a chat, in order, urgent first; and what may have arrived is known."""

from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from datetime import datetime, timedelta

import pytest
import sqlalchemy as sa

from bot.saying import Repeat, Urgency
from storage import outbox
from storage.engine import Store
from storage.outbox import NewParcel, Parcel, ParcelKind
from tests.store.practice import NOW

LATER = NOW + timedelta(seconds=30)


def parcel(key: str, chat: int = 5, **changed: object) -> NewParcel:
    plain = NewParcel(
        key=key,
        chat=chat,
        kind=ParcelKind.SEND,
        body=f'{{"html":"{key}"}}',
        urgency=int(Urgency.REPLY),
        repeat=Repeat.RESEND.value,
        slot="",
        fresh=False,
        about="",
        expires_at=None,
        silent=False,
    )
    return replace(plain, **changed)  # type: ignore[arg-type]  # the tests' own keywords


def put(store: Store, *parcels: NewParcel) -> None:
    with store.begin() as work:
        outbox.put(work, parcels, now=NOW)


def claim(store: Store, limit: int = 10, *, now: datetime = NOW, worker: str = "a") -> tuple[Parcel, ...]:
    with store.begin() as work:
        return outbox.claim_due(work, worker=worker, now=now, limit=limit)


def sent(store: Store, *parcels: Parcel) -> None:
    with store.begin() as work:
        for one in parcels:
            outbox.keep_sent(work, one, message=one.id + 1000, body_hash="h", now=NOW)


def keys(parcels: tuple[Parcel, ...]) -> list[str]:
    return [p.key for p in parcels]


def all_sent(store: Store) -> list[str]:
    """The keys, in the order in which they go out one after another."""
    order: list[str] = []
    while parcels := claim(store, 1):
        order += keys(parcels)
        sent(store, *parcels)
    return order


def test_a_parcel_comes_out_as_it_was_put(store: Store) -> None:
    full = parcel(
        "k", 9_007_199_254_740_000, kind=ParcelKind.RELAY, body='{"a":"ž"}', urgency=3, repeat="again", slot="card:1"
    )
    put(store, replace(full, fresh=True, about="client-one", expires_at=LATER, silent=True))
    (out,) = claim(store)
    assert (out.key, out.chat, out.kind, out.body) == ("k", 9_007_199_254_740_000, ParcelKind.RELAY, '{"a":"ž"}')
    assert (out.urgency, out.repeat, out.slot, out.fresh) == (3, "again", "card:1", True)
    assert (out.about, out.expires_at, out.silent, out.tries) == ("client-one", LATER, True, 1)
    assert not out.maybe_sent


def test_a_key_is_unique_for_good(store: Store) -> None:
    """Two ticks, two workers, the same turn again: one message; also after it was sent."""
    put(store, parcel("remind:1:2"), parcel("remind:1:2"))
    put(store, parcel("remind:1:2"))
    assert all_sent(store) == ["remind:1:2"]
    put(store, parcel("remind:1:2"))
    assert claim(store) == ()


def test_one_parcel_of_a_chat_is_on_its_way_and_the_order_is_kept(store: Store) -> None:
    put(store, *(parcel(f"a{n}", 5) for n in range(3)), *(parcel(f"b{n}", 6) for n in range(3)))
    first = claim(store)
    assert keys(first) == ["a0", "b0"]
    assert claim(store) == (), "both chats have one on its way"
    sent(store, first[0])
    assert keys(claim(store)) == ["a1"]


def test_urgent_parcels_go_before_others_of_their_chat_and_more_urgent_chats_first(store: Store) -> None:
    put(store, parcel("digest", 5, urgency=3), parcel("reply", 6, urgency=1), parcel("pain", 5, urgency=0))
    put(store, parcel("reply again", 5, urgency=1))
    assert all_sent(store) == ["pain", "reply", "digest", "reply again"], "but for urgent ones a chat keeps its order"


def test_a_newer_state_of_a_slot_takes_the_place_of_one_that_still_waits(store: Store) -> None:
    put(store, parcel("card1", slot="card"), parcel("words"), parcel("card2", slot="card"))
    put(store, parcel("other", slot="other"), parcel("card3", slot="card"))
    assert all_sent(store) == ["words", "other", "card3"]


def test_what_is_to_be_sent_afresh_or_in_another_chat_is_never_superseded(store: Store) -> None:
    put(store, parcel("fresh", slot="card", fresh=True), parcel("elsewhere", 6, slot="card"))
    put(store, parcel("edit", slot="card"))
    assert all_sent(store) == ["fresh", "elsewhere", "edit"]


def test_the_same_key_again_supersedes_nothing(store: Store) -> None:
    """A reminder put by a second worker must not take the first one away."""
    put(store, parcel("card", slot="card"))
    put(store, parcel("card", slot="card"))
    assert all_sent(store) == ["card"]


def test_only_messages_of_a_slot_are_superseded(store: Store) -> None:
    put(store, parcel("strip", slot="card", kind=ParcelKind.STRIP), parcel("card", slot="card"))
    assert all_sent(store) == ["strip", "card"]


def test_what_is_tried_later_holds_its_chat_and_no_other(store: Store) -> None:
    put(store, parcel("a0", 5), parcel("a1", 5), parcel("b0", 6))
    first = claim(store)
    with store.begin() as work:
        outbox.keep_later(work, first[0], until=LATER, error="429")
    sent(store, first[1])
    assert claim(store) == ()
    with store.begin() as work:
        assert outbox.next_due_at(work) == LATER
        assert outbox.waiting(work) == 2
    again = claim(store, now=LATER)
    assert keys(again) == ["a0"]
    assert again[0].tries == 2
    assert not again[0].maybe_sent


def test_a_pause_that_is_nobodys_fault_needs_not_count(store: Store) -> None:
    put(store, parcel("a"))
    (first,) = claim(store)
    with store.begin() as work:
        outbox.keep_later(work, first, until=LATER, error="429", counts=False)
    assert claim(store, now=LATER)[0].tries == 1


@pytest.mark.parametrize(("repeat", "comes_again"), [("resend", True), ("again", True), ("drop", False)])
def test_what_may_have_arrived_is_sent_again_or_not_as_its_kind_says(
    store: Store, repeat: str, comes_again: bool
) -> None:
    put(store, parcel("a", repeat=repeat))
    (first,) = claim(store)
    with store.begin() as work:
        outbox.keep_unknown(work, first, until=LATER, error="cut off", now=NOW)
    again = claim(store, now=LATER)
    assert [p.maybe_sent for p in again] == [True] * comes_again


def test_what_a_dead_worker_was_sending_is_known_as_perhaps_sent(store: Store) -> None:
    put(store, parcel("resend", 5), parcel("drop", 6, repeat="drop"), parcel("waiting", 7))
    claim(store, 2)
    after = NOW + timedelta(seconds=61)
    with store.begin() as work:
        assert outbox.recover(work, now=after) == 2
        assert outbox.recover(work, now=after) == 0
    again = claim(store, now=after)
    assert {p.key: p.maybe_sent for p in again} == {"resend": True, "waiting": False}


def test_a_living_workers_sends_are_left_alone_where_there_may_be_several(store: Store) -> None:
    """On PostgreSQL the lease decides; on SQLite a start means that nobody else sends."""
    put(store, parcel("a"))
    claim(store)
    with store.begin() as work:
        assert outbox.recover(work, now=NOW + timedelta(seconds=1)) == (0 if store.is_postgres else 1)


def test_a_claim_still_being_committed_as_its_process_died_is_found_by_the_next_life(
    open_store: Callable[[], Store],
) -> None:
    """PostgreSQL goes on with a commit whose client is gone; SQLite's writers never overlap anyway."""
    dying, next_life, onlooker = open_store(), open_store(), open_store()
    put(dying, parcel("a"))
    with ThreadPoolExecutor(1) as pool:
        with dying.begin() as work:
            outbox.claim_due(work, worker="me", now=NOW, limit=10)
            found = pool.submit(_recovered, next_life)
            while onlooker.is_postgres and not found.done() and not _somebody_waits(onlooker):
                pass
        assert found.result() == 1


def _recovered(store: Store) -> int:
    with store.begin() as work:
        return outbox.recover(work, now=NOW + timedelta(seconds=1), own="me")


def _somebody_waits(store: Store) -> bool:
    with store.begin() as work:
        return bool(work.connection.execute(sa.text("SELECT count(*) FROM pg_locks WHERE NOT granted")).scalar())


def test_the_dead_stay_dead_and_their_chat_goes_on(store: Store) -> None:
    put(store, parcel("a"), parcel("b"))
    (first,) = claim(store)
    with store.begin() as work:
        outbox.keep_dead(work, first, error="400", now=NOW)
    assert all_sent(store) == ["b"]


def test_a_chat_that_takes_nothing_any_more_loses_what_waits(store: Store) -> None:
    put(store, parcel("a", 5), parcel("b", 5), parcel("c", 6))
    with store.begin() as work:
        assert outbox.drop_chat(work, 5, error="403", now=NOW) == 2
    assert all_sent(store) == ["c"]


def test_words_go_when_a_parcel_is_closed_and_keys_stay_until_they_are_purged(store: Store) -> None:
    put(store, parcel("a", 5), parcel("b", 6), parcel("old", 7, slot="s"), parcel("new", 7, slot="s"), parcel("w", 8))
    claimed = claim(store, 2)
    sent(store, claimed[0])
    with store.begin() as work:
        outbox.keep_dead(work, claimed[1], error="400", now=NOW)
        bodies = work.connection.execute(sa.text("SELECT key, body FROM outbox")).fetchall()
        assert {key for key, body in bodies if body} == {"new", "w"}
        assert outbox.purge(work, before=NOW + timedelta(days=40)) == 3
        assert outbox.waiting(work) == 2


def test_settling_twice_changes_nothing(store: Store) -> None:
    """A worker that comes back after its lease ended must not undo what another did."""
    put(store, parcel("a"))
    (lost,) = claim(store)
    with store.begin() as work:
        outbox.recover(work, now=NOW + timedelta(seconds=61))
    (again,) = claim(store, now=NOW + timedelta(seconds=62), worker="b")
    sent(store, again)
    with store.begin() as work:
        outbox.keep_later(work, lost, until=LATER, error="late")
        outbox.keep_dead(work, lost, error="late", now=NOW)
        assert work.connection.execute(sa.text("SELECT state FROM outbox")).scalar() == "sent"


def test_two_senders_never_have_the_same_parcel_or_chat(open_store: Callable[[], Store]) -> None:
    one, two = open_store(), open_store()
    put(one, *(parcel(f"{chat}:{n}", chat) for n in range(3) for chat in range(1, 6)))
    first = claim(one, 3, worker="a")
    second = claim(two, 10, worker="b")
    assert len(first) == 3
    assert len(second) == 2
    assert not {p.chat for p in first} & {p.chat for p in second}
