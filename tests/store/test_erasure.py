"""What is deleted is gone: from every table, and from SQLite's files, also where pages were moved and split before."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import sqlalchemy as sa

from bot.dialogue.turn import Talk, TalkSet
from bot.training.facts import NoteKept, QuestionAsked
from storage import erasure, inbox, outbox, slots, talks
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.outbox import NewParcel, ParcelKind
from storage.sessions import session_of
from storage.tables import facts, metadata
from storage.work import Work
from tests.store import practice
from tests.store.practice import NOW, TODAY, keep


def fill(work: Work, count: int, *, of: str = "coach-one", first: int = 0) -> list[str]:
    """So many clients of a coach, with some history each, written turn by turn so that their rows lie mixed."""
    ids = [f"client-{n:03d}" for n in range(first, first + count)]
    for n, id in enumerate(ids, first):
        practice.client(work, id=id, chat=1_000 + n, name=f"Person {n}", of=of)
    for week in range(6):
        for n, id in enumerate(ids, first):
            practice.trained(work, of=id, day=TODAY - timedelta(days=7 * week + n % 5))
            keep(work, QuestionAsked(id, f"m{week}", f"question {week} of {n} " + "x" * (37 * n % 3_000)))
    return ids


def sealed_of(work: Work, ids: set[str]) -> set[bytes]:
    """Everything that is sealed in these clients' rows."""
    found: set[bytes] = set()
    for table in metadata.sorted_tables:
        column = table.c.get("client") if table.name not in ("clients", "forgetting") else table.c.get("id")
        if column is None or table.name == "forgetting":
            continue
        for row in work.connection.execute(sa.select(table).where(column.in_(ids))):
            found |= {bytes(value) for value in row if isinstance(value, bytes | memoryview) and len(value) > 40}
    return found


def in_files(store: Store, sealed: set[bytes]) -> set[bytes]:
    """Those of which a piece is in the database's files: looked for by their first, middle and last bytes."""
    file = str(store.engine.url.database)
    paths = [Path(f"{file}{end}") for end in ("", "-wal")]
    content = b"".join(path.read_bytes() for path in paths if path.exists())
    return {one for one in sealed if any(one[at : at + 24] in content for at in (8, len(one) // 2, len(one) - 24))}


def test_no_sealed_byte_of_a_deleted_client_stays_in_sqlites_files(open_template: Callable[[], Store]) -> None:
    """Half of forty clients go; every piece of theirs is overwritten, every one of the others' is there."""
    store = open_template()
    with store.begin() as work:
        practice.coach(work)
        ids = fill(work, 40)
    gone, stay = set(ids[::2]), set(ids[1::2])
    with store.begin() as work:
        sealed, others = sealed_of(work, gone), sealed_of(work, stay)
    assert len(sealed) > 500
    assert in_files(store, sealed) == sealed, "the search finds what is there"
    for one in sorted(gone):
        with store.begin() as work:
            assert erasure.forget(work, one)
    assert in_files(store, sealed) == set()
    assert in_files(store, others) == others
    with store.begin() as work:
        assert work.connection.exec_driver_sql("PRAGMA integrity_check").scalar() == "ok"


def test_while_somebody_reads_it_is_overwritten_when_they_are_done(open_template: Callable[[], Store]) -> None:
    """A snapshot that is being read keeps the older pages of the log of writing; deleting does not wait for it."""
    store = open_template()
    with store.begin() as work:
        practice.coach(work)
        fill(work, 3)
    with store.begin() as work:
        sealed = sealed_of(work, {"client-000"})
    with store.reading() as reader:
        assert rows(reader, facts) > 0
        with store.begin() as work:
            erasure.forget(work, "client-000")
        assert sealed_of(reader, {"client-000"}) == sealed, "the snapshot is what it was"
        assert not store.scrub()
    assert in_files(store, sealed) == set()


def test_forgetting_a_coach_takes_the_clients_along_and_leaves_other_practices(store: Store) -> None:
    with store.begin() as work:
        practice.coach(work)
        kept = fill(work, 2)
        before = {table.name: rows(work, table) for table in metadata.sorted_tables}
    with store.begin() as work:
        practice.coach(work, id="coach-two", chat=77, name="Coach Two")
        fill(work, 2, of="coach-two", first=10)
        talks.keep_talk(work, TalkSet(77, Talk("reply", "client-010")))
        slots.keep_slot(work, 77, "page", message=1, body_hash="h", now=NOW)
        inbox.receive(work, [RawUpdate(1, 1, 77, "{}")], now=NOW)
        outbox.put(work, [NewParcel("to two", 77, ParcelKind.SEND, "{}", 1, "resend")], now=NOW)
    with store.begin() as work:
        assert erasure.forget_coach(work, "coach-two")
        assert not erasure.forget_coach(work, "coach-two")
    with store.begin() as work:
        after = {table.name: rows(work, table) for table in metadata.sorted_tables}
        used = after.pop("invites") - before.pop("invites")
        assert used == 1, "the operator's link, which says nothing about anybody"
        assert after == before
        assert {row.client for row in work.all(sa.select(facts.c.client))} == {*kept, None}


def rows(work: Work, table: sa.Table) -> int:
    """How many rows a table has."""
    return int(work.connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one())


def test_what_the_coachs_chat_holds_about_them_goes(store: Store) -> None:
    """The talk that is about them, messages that keep themselves up to date, parcels; those about others stay."""
    with store.begin() as work:
        practice.coach(work)
        fill(work, 2)
        chat = practice.COACH_CHAT
        talks.keep_talk(work, TalkSet(chat, Talk("reply", "client-000")))
        for slot in ("given:client-000:2027-01-01", "given:client-001:2027-01-01", "digest"):
            slots.keep_slot(work, chat, slot, message=1, body_hash="h", now=NOW)
        about = NewParcel("about 0", chat, ParcelKind.SEND, "{}", 1, "resend", about="client-000")
        outbox.put(work, [about, replace(about, key="about 1", about="client-001")], now=NOW)
        keep(work, NoteKept("client-000", "a note"))
        assert erasure.forget(work, "client-000")
        assert talks.talk_of(work, chat, now=NOW) is None
        assert slots.slot_of(work, chat, "given:client-000:2027-01-01") is None
        assert slots.slot_of(work, chat, "given:client-001:2027-01-01") is not None
        assert slots.slot_of(work, chat, "digest") is not None
        assert [p.key for p in outbox.claim_due(work, worker="a", now=NOW, limit=5)] == ["about 1"]


def test_a_session_in_memory_goes_too(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.trained(work, of="client-one", day=TODAY)
        kept = session_of(work, id)
        assert kept is not None
        assert work.memory.sessions.get((id, kept.revision)) is not None
        erasure.forget(work, "client-one")
        assert work.memory.sessions.get((id, kept.revision)) is None


# --- reading beside writing


def test_a_long_reading_holds_up_nobody_and_sees_one_moment(store: Store) -> None:
    """Within it the database is what it was at its beginning, whatever is written meanwhile."""
    with store.begin() as work:
        practice.practice(work)
    with store.reading() as reader:
        assert rows(reader, facts) > 0
        before = rows(reader, facts)
        with store.begin() as work:
            keep(work, QuestionAsked("client-one", "m1", "now?"))
        assert rows(reader, facts) == before
    with store.begin() as work:
        assert rows(work, facts) == before + 1
