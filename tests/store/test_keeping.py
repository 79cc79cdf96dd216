"""A copy made while the bot runs, what an operator is told, and strength built anew from the sets."""

import sqlite3
import stat
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from pathlib import Path

import pytest

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet, StrengthKept, Talk, TalkSet
from bot.faults import StoreFault
from bot.training.assemble import fresh_state, strength_after
from bot.training.facts import PainReported, ReportTakenBack
from bot.training.pain import PainSaid
from storage import inbox, outbox, relays, schedule, sessions, slots, strengths, talks
from storage.backup import backup, check_backup
from storage.engine import Store
from storage.health import Health, health
from storage.inbox import RawUpdate
from storage.keyring import Keyring
from storage.migrations import HEAD
from storage.outbox import NewParcel, ParcelKind
from storage.people import client_at
from storage.work import Work
from tests.store import practice
from tests.store.practice import NOW, TODAY, done, keep, report

SAME = "client-one"


# --- copies


def test_a_copy_made_during_work_is_whole_and_opens_with_the_key(
    store: Store, tmp_path: Path, keyring: Keyring
) -> None:
    with store.begin() as work:
        practice.practice(work)
    copy = tmp_path / "copies" / "store.db"
    copy.parent.mkdir()
    if store.is_postgres:
        with pytest.raises(StoreFault, match="pg_dump"):
            backup(store, copy)
        return
    with store.begin() as work:
        practice.session(work)
        backup(store, copy)
    assert check_backup(copy) == HEAD
    assert stat.S_IMODE(copy.stat().st_mode) == 0o600
    assert [p.name for p in copy.parent.iterdir()] == ["store.db"], "nothing half made is left"
    again = Store.open(f"sqlite:///{copy}", keyring)
    with again.begin() as work:
        me = client_at(work, 101)
        assert me is not None
        assert me.name == "Tamsin"
    again.close()
    with store.begin() as work:
        practice.client(work, id="client-two", chat=102)
    backup(store, copy)
    assert check_backup(copy) == HEAD, "a new copy takes the old one's place"


def test_a_copy_that_cannot_be_written_leaves_the_old_one(store: Store, tmp_path: Path) -> None:
    if store.is_postgres:
        return
    with pytest.raises(StoreFault, match="can't be written"):
        backup(store, tmp_path / "no-such-folder" / "store.db")


@pytest.mark.parametrize("damage", ["cut", "scribble", "empty", "foreign", "links", "newer"])
def test_a_damaged_or_strange_copy_is_found_out(
    open_template: Callable[[], Store], tmp_path: Path, damage: str
) -> None:
    store = open_template()
    with store.begin() as work:
        practice.practice(work)
        for n in range(40):
            practice.trained(work, of=SAME, day=TODAY - timedelta(days=n))
    copy = tmp_path / "copy.db"
    backup(store, copy)
    content = copy.read_bytes()
    match damage:
        case "cut":
            copy.write_bytes(content[: len(content) // 2])
        case "scribble":
            middle = len(content) // 2
            copy.write_bytes(content[:middle] + b"\xff" * 8192 + content[middle + 8192 :])
        case "empty":
            copy.write_bytes(b"")
        case "foreign":
            copy.unlink()
            with sqlite3.connect(copy) as other:
                other.execute("CREATE TABLE x (y)")
            other.close()
        case "links":
            with sqlite3.connect(copy) as other:
                other.execute("UPDATE sessions SET client = 'none'")
            other.close()
        case _:
            with sqlite3.connect(copy) as other:
                other.execute("UPDATE alembic_version SET version_num = '9999'")
            other.close()
    with pytest.raises(StoreFault, match=r"not sound|can't be read"):
        check_backup(copy)


# --- health


def test_an_operator_is_told_what_waits(store: Store) -> None:
    with store.begin() as work:
        assert health(work, NOW) == Health(0, 0, 0, 0, 0, 0.0)
        inbox.receive(work, [RawUpdate(1, n, n, "{}") for n in range(4)], now=NOW)
        row = inbox.claim(work, 0, worker="a", now=NOW)
        assert row is not None
        inbox.keep_failed(work, row, "x", now=NOW, limit=1)
        parcels = [NewParcel(f"k{n}", n, ParcelKind.SEND, "{}", 1, "resend") for n in range(3)]
        outbox.put(work, parcels, now=NOW - timedelta(seconds=30))
        outbox.claim_due(work, worker="a", now=NOW, limit=1)
        schedule.keep_rule(work, RuleSet("c", RuleKind.NUDGE, "UTC", once_at=NOW), now=NOW)
        assert health(work, NOW + timedelta(seconds=60)) == Health(3, 1, 2, 1, 1, 90.0)


# --- small tables


def test_slots_and_relays_are_replaced_dropped_and_purged(store: Store) -> None:
    with store.begin() as work:
        for message in (1, 2):
            slots.keep_slot(work, 5, "card", message=message, body_hash=f"h{message}", now=NOW)
        assert slots.slot_of(work, 5, "card") == slots.SlotRow(2, "h2")
        assert slots.slot_of(work, 6, "card") is None
        assert slots.purge(work, before=NOW) == 0
        slots.drop_slot(work, 5, "card")
        assert slots.slot_of(work, 5, "card") is None
        relays.keep_about(work, chat=5, message=1, about="a", other_message=None, now=NOW)
        relays.keep_about(work, chat=5, message=1, about="b", other_message=7, now=NOW)
        assert relays.about_of(work, 5, 1) == ("b", 7)
        assert relays.purge(work, before=NOW + timedelta(seconds=1)) == 1
        assert relays.about_of(work, 5, 1) is None


def test_a_talk_is_kept_replaced_expired_and_ended(store: Store) -> None:
    first = Talk("enrol", "name", (("name", "ž"), ("days", "0,2")))
    with store.begin() as work:
        talks.keep_talk(work, TalkSet(5, first))
        assert talks.talk_of(work, 5, now=NOW) == first
        talks.keep_talk(work, TalkSet(5, replace(first, step="zone", expires_at=NOW)))
        assert talks.talk_of(work, 5, now=NOW - timedelta(seconds=1)) == replace(first, step="zone", expires_at=NOW)
        assert talks.talk_of(work, 5, now=NOW) is None
        talks.keep_talk(work, TalkSet(5, None))
        assert talks.talk_of(work, 5, now=NOW - timedelta(days=1)) is None


# --- strength


def kept(work: Work, exercise: str = "Back squat") -> tuple[str, str, str]:
    (row,) = strengths.strengths_of(work, SAME, [exercise])
    return row.session, row.before, row.after


def folded(work: Work, ids: list[str], pains: dict[str, int] | None = None) -> tuple[str, str]:
    """The trade's own function over the same sessions, in the order of their days."""
    before = after = None
    for id in ids:
        found = sessions.session_of(work, id)
        assert found is not None
        exercise = found.session.plan.exercise("Back squat")
        before = after or fresh_state(exercise)
        after = strength_after(found.session, exercise, before, (pains or {}).get(id))
    assert before is not None
    assert after is not None
    return before.to_json(), after.to_json()


def test_strength_is_built_anew_from_all_sessions_in_order_of_their_days(store: Store) -> None:
    """An old set is corrected: what follows from it is as if it had been right from the start."""
    with store.begin() as work:
        practice.practice(work)
        days = [TODAY - timedelta(days=n) for n in (10, 7, 3, 0)]
        late = practice.trained(work, of=SAME, day=days[1])
        ids = [practice.trained(work, of=SAME, day=days[0]), late]
        ids += [practice.trained(work, of=SAME, day=day) for day in days[2:]]
        practice.trained(work, of=SAME, day=TODAY - timedelta(days=1), names=("Row",))
        strengths.rebuild(work, SAME, "Back squat")
        assert kept(work) == (ids[-1], *folded(work, ids))
        before_correction = kept(work)
        report(work, ids[0], f"m{ids[0]}0", done(number=1, load="60", reps=5))
        said = PainSaid("knee", 5, None, False)
        keep(work, PainReported("p1", SAME, ids[2], "Back squat", said, "my knee"))
        strengths.rebuild(work, SAME, "Back squat")
        assert kept(work) == (ids[-1], *folded(work, ids, {ids[2]: 5}))
        assert kept(work)[2] != before_correction[2]


def test_strength_of_what_was_never_done_after_all_is_gone(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        report(work, id, "m1")
        strengths.rebuild(work, SAME, "Back squat")
        assert kept(work)[0] == id
        keep(work, ReportTakenBack(id, "m1"))
        strengths.rebuild(work, SAME, "Back squat")
        assert strengths.strengths_of(work, SAME, ["Back squat"]) == ()


def test_a_kept_strength_takes_the_place_of_the_one_before(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        for n in (1, 2):
            strengths.keep(work, StrengthKept(SAME, "Row", f"s{n}", TODAY, f"b{n}", f"a{n}"))
        assert kept(work, "Row") == ("s2", "b2", "a2")
        assert strengths.strengths_of(work, "somebody", ["Row"]) == ()
        assert strengths.strengths_of(work, SAME, []) == ()
