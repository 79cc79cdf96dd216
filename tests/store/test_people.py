"""Coaches, invitations, clients, settings; the one door; and deleting all of a person's data."""

from collections.abc import Callable
from dataclasses import replace
from datetime import time, timedelta
from decimal import Decimal

import pytest
import sqlalchemy as sa

from bot.dialogue.incoming import RuleKind, Typed
from bot.dialogue.turn import RuleSet, StrengthKept, Talk, TalkSet
from bot.training.facts import (
    ClientJoined,
    CoachChanged,
    CoachJoined,
    ConsentGiven,
    ConsentWithdrawn,
    InviteMade,
    PainReported,
    ProfileChanged,
    ProgrammeAssigned,
    QuestionAsked,
    ReachChanged,
    ReadinessAnswered,
)
from bot.training.pain import PainSaid
from bot.training.people import Client, Gym, Standing, TrainingTime
from bot.training.units import Unit
from storage import inbox, outbox, people, record, relays, schedule, slots, strengths, talks
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.outbox import NewParcel, ParcelKind
from storage.tables import metadata
from storage.work import Overtaken, Work
from tests.store import practice
from tests.store.practice import NOW, ZONE, hash_of, keep

SAME = "client-one"


def the_client(work: Work, id: str = SAME) -> Client:
    row = people.client_by_id(work, id)
    assert row is not None
    return row.profile


def test_an_operators_link_makes_one_coach(store: Store) -> None:
    with store.begin() as work:
        people.new_coach_invite(work, hash_of("t"), NOW + timedelta(days=1), NOW)
        invite = people.invite_of(work, hash_of("t"), now=NOW)
        assert invite is not None
        assert (invite.coach, invite.coach_name, invite.is_open) == ("", "", True)
        keep(work, CoachJoined("c1", 50, "Ondrej", ZONE, time(7), hash_of("t")))
        found = people.coach_at(work, 50)
        assert found is not None
        assert (found.id, found.name, found.zone, found.digest_at) == ("c1", "Ondrej", ZONE, time(7))
        spent = people.invite_of(work, hash_of("t"), now=NOW)
        assert spent is not None
        assert not spent.is_open
    with pytest.raises(Overtaken), store.begin() as work:
        keep(work, CoachJoined("c2", 51, "Second", ZONE, time(7), hash_of("t")))
    with store.begin() as work:
        assert people.coach_at(work, 51) is None


def test_a_coachs_link_makes_one_client_with_sensible_settings(store: Store) -> None:
    with store.begin() as work:
        coach = practice.coach(work, name="Ondrej")
        keep(work, InviteMade(coach, hash_of("t"), NOW + timedelta(days=7)))
        invite = people.invite_of(work, hash_of("t"), now=NOW)
        assert invite is not None
        assert (invite.coach, invite.coach_name, invite.is_open) == (coach, "Ondrej", True)
        keep(work, ClientJoined("k1", coach, 60, "Tamsin", hash_of("t")))
        me = people.client_at(work, 60)
        assert me is not None
        assert (me.id, me.coach, me.name, me.unit, me.zone) == ("k1", coach, "Tamsin", Unit.KG, ZONE)
        assert (me.trains.days, me.gym, me.standing) == ((), Gym.usual(Unit.KG), Standing.JOINING)
        assert (me.consent, me.programme, me.workout, me.reachable) == ("", "", 0, True)


def test_a_link_is_open_until_it_ends_or_is_used_and_a_strange_one_never_was(store: Store) -> None:
    with store.begin() as work:
        coach = practice.coach(work)
        keep(work, InviteMade(coach, hash_of("t"), NOW + timedelta(days=7)))
        late = people.invite_of(work, hash_of("t"), now=NOW + timedelta(days=7))
        assert late is not None
        assert not late.is_open
        assert people.invite_of(work, hash_of("other"), now=NOW) is None
    with pytest.raises(Overtaken), store.begin() as work:
        keep(work, ClientJoined("k1", coach, 60, "Late", hash_of("t")), at=NOW + timedelta(days=8))


def test_a_link_cannot_be_used_for_another_coach_or_another_role(store: Store) -> None:
    with store.begin() as work:
        one, two = practice.coach(work), practice.coach(work, id="coach-two", chat=52)
        keep(work, InviteMade(one, hash_of("t"), NOW + timedelta(days=7)))
        people.new_coach_invite(work, hash_of("op"), NOW + timedelta(days=7), NOW)
    for fact in (
        ClientJoined("k1", two, 60, "x", hash_of("t")),
        ClientJoined("k1", one, 60, "x", hash_of("op")),
        CoachJoined("c3", 61, "x", ZONE, time(7), hash_of("t")),
    ):
        with pytest.raises(Overtaken), store.begin() as work:
            keep(work, fact)


def test_two_who_follow_one_link_at_the_same_time_make_one_client(open_store: Callable[[], Store]) -> None:
    """Both have seen it open; the second one's turn is undone and answered anew."""
    one, two = open_store(), open_store()
    with one.begin() as work:
        coach = practice.coach(work)
        keep(work, InviteMade(coach, hash_of("t"), NOW + timedelta(days=7)))
    for store in (one, two):
        with store.begin() as work:
            invite = people.invite_of(work, hash_of("t"), now=NOW)
            assert invite is not None
            assert invite.is_open
    with one.begin() as work:
        keep(work, ClientJoined("k1", coach, 60, "First", hash_of("t")))
    with pytest.raises(Overtaken), two.begin() as work:
        keep(work, ClientJoined("k2", coach, 61, "Second", hash_of("t")))
    with two.begin() as work:
        assert people.client_at(work, 61) is None


def test_settings_change_one_at_a_time(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        before = the_client(work)
        gym = replace(Gym.usual(Unit.LB), plate=Decimal("2.50"))
        trains = TrainingTime((1, 3), time(6, 30))
        keep(work, ProfileChanged(SAME, name="Tam", unit=Unit.LB, zone="Asia/Tokyo", trains=trains, gym=gym))
        keep(work, ProfileChanged(SAME, confirm_in_words=True, standing=Standing.PAUSED), ConsentGiven(SAME, "2"))
        keep(work, ReadinessAnswered(SAME, True, "my heart"), ReachChanged(SAME, False))
        after = the_client(work)
        assert after == replace(
            before,
            name="Tam",
            unit=Unit.LB,
            zone="Asia/Tokyo",
            trains=trains,
            gym=gym,
            confirm_in_words=True,
            standing=Standing.PAUSED,
            consent="2",
            readiness_flagged=True,
            reachable=False,
        )
        assert str(after.gym.plate) == "2.50"
        keep(work, ProfileChanged(SAME, confirm_in_words=False), ReachChanged(SAME, True))
        assert the_client(work) == replace(after, confirm_in_words=False, reachable=True)
        keep(work, CoachChanged("coach-one", zone="Asia/Tokyo", digest_at=time(20)))
        coach = people.coach_by_id(work, "coach-one")
        assert coach is not None
        assert (coach.zone, coach.digest_at, coach.name) == ("Asia/Tokyo", time(20), "Coach Ondrej")


def test_a_programme_is_a_snapshot_and_begins_at_its_first_workout(store: Store) -> None:
    first = practice.programme()
    changed = replace(first, note="rewritten", workouts=first.workouts[:1])
    with store.begin() as work:
        practice.practice(work)
        practice.client(work, id="client-two", chat=102)
        keep(work, ProgrammeAssigned("client-two", changed))
        given = {}
        for chat in (101, 102):
            desk = practice.build(work, Typed(chat, 1, NOW, "hello"))
            assert desk.client is not None
            given[chat] = desk.client.programme
        assert given == {101: first, 102: changed}
        assert work.connection.execute(sa.text("SELECT count(*) FROM programmes")).scalar() == 2


def test_withdrawn_is_withdrawn_and_may_join_again_as_somebody_new(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        schedule.keep_rule(work, RuleSet(SAME, RuleKind.SESSION, ZONE, time(18), (0, 2, 4)), now=NOW)
        keep(work, ConsentWithdrawn(SAME))
        assert people.client_at(work, 101) is None
        assert the_client(work).standing is Standing.WITHDRAWN
        assert the_client(work).consent == ""
        assert schedule.due(work, now=NOW + timedelta(days=9), limit=10) == ()
        practice.client(work, id="again", chat=101, at=NOW)
        me = people.client_at(work, 101)
        assert me is not None
        assert me.id == "again"


def test_a_chat_has_one_client_at_a_time(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
    with pytest.raises(Overtaken), store.begin() as work:
        practice.client(work, id="double", chat=101)


def test_the_door_gives_nothing_of_another_coachs_client_nor_of_nobody(store: Store) -> None:
    """One answer for both, so that an id can't be probed."""
    with store.begin() as work:
        practice.practice(work)
        other = practice.coach(work, id="coach-two", chat=52)
        assert people.client_of(work, "coach-one", SAME) == the_client(work)
        assert people.client_of(work, other, SAME) is None
        assert people.client_of(work, other, "no-such") is None
        assert people.client_of(work, "", SAME) is None


def test_facts_about_nobody_are_refused(store: Store) -> None:
    for fact in (ConsentGiven("nobody", "1"), ProfileChanged("nobody", name="x"), QuestionAsked("nobody", "m1", "x")):
        with pytest.raises(LookupError), store.begin() as work:
            keep(work, fact)


# --- forgetting


def everything_about(work: Work, id: str, chat: int) -> None:
    """Something in every table that can hold anything of a client."""
    session = practice.trained(work, of=id, day=NOW.date())
    keep(work, PainReported("p1", id, session, "Back squat", PainSaid("knee", 4, None, False), "my knee"))
    keep(work, QuestionAsked(id, "m9", "may I swim?"))
    schedule.keep_rule(work, RuleSet(id, RuleKind.SESSION, ZONE, time(18), (0, 2, 4)), now=NOW)
    strengths.keep(work, StrengthKept(id, "Back squat", session, NOW.date(), "{}", "{}"))
    talks.keep_talk(work, TalkSet(chat, Talk("pain", "where")))
    inbox.receive(work, [RawUpdate(1, chat, chat, "words")], now=NOW)
    plain = NewParcel(f"k{id}", chat, ParcelKind.SEND, "{}", 1, "resend")
    outbox.put(work, [plain, replace(plain, key=f"c{id}", chat=practice.COACH_CHAT, about=id)], now=NOW)
    slots.keep_slot(work, chat, "card", message=1, body_hash="h", now=NOW)
    relays.keep_about(work, chat=practice.COACH_CHAT, message=chat, about=id, other_message=1, now=NOW)
    relays.keep_about(work, chat=chat, message=1, about="coach-one", other_message=1, now=NOW)


def contents(work: Work) -> dict[str, int]:
    """How many rows each table has, but for those of the practice itself."""
    out = {}
    for table in metadata.sorted_tables:
        out[table.name] = work.connection.execute(sa.select(sa.func.count()).select_from(table)).scalar_one()
    return out


def test_forgetting_leaves_nothing_of_the_client_and_all_of_everybody_else(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        everything_about(work, SAME, 101)
        alone = contents(work)
    with store.begin() as work:
        practice.client(work, id="client-two", chat=102)
        everything_about(work, "client-two", 102)
    with store.begin() as work:
        assert people.forget(work, "client-two")
    with store.begin() as work:
        left = contents(work)
        assert left.pop("invites") == alone.pop("invites") + 1, "the used link says nothing about anybody"
        assert left.pop("facts") == alone.pop("facts") + 1, "the coach's fact of having made it"
        assert left == alone
        assert people.client_at(work, 102) is None
        assert list(record.facts_of(work, "client-two")) == []
        assert len(list(record.facts_of(work, SAME))) > 5
        assert not people.forget(work, "client-two")


def test_forgetting_within_a_turn_lets_the_turn_end(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        inbox.receive(work, [RawUpdate(1, 1, 101, "delete me"), RawUpdate(1, 2, 101, "still there?")], now=NOW)
        row = inbox.claim(work, 101, worker="a", now=NOW)
        assert row is not None
        assert people.forget(work, SAME)
        assert inbox.keep_done(work, row, now=NOW)
        assert inbox.chats_waiting(work) == ()
        assert work.connection.execute(sa.text("SELECT count(*) FROM inbox WHERE length(raw) > 0")).scalar() == 0


def test_a_coach_who_also_trains_keeps_the_coachs_side(store: Store) -> None:
    with store.begin() as work:
        practice.coach(work)
        practice.client(work, chat=practice.COACH_CHAT)
        slots.keep_slot(work, practice.COACH_CHAT, "digest", message=1, body_hash="h", now=NOW)
        assert people.forget(work, SAME)
        assert people.client_at(work, practice.COACH_CHAT) is None
        assert people.coach_at(work, practice.COACH_CHAT) is not None
        assert slots.slot_of(work, practice.COACH_CHAT, "digest") is not None
