"""The desk: what each incoming thing finds on it, and that nobody finds anything of others."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest

from bot.dialogue.buttons import show_press
from bot.dialogue.desk import ClientDesk, CoachDesk
from bot.dialogue.incoming import BotBlocked, Due, Edited, Incoming, MediaKind, MediaSent, RuleKind, Tapped, Typed
from bot.dialogue.turn import StrengthKept, Talk, TalkSet
from bot.training.facts import (
    ConsentWithdrawn,
    DoubtKept,
    Ending,
    ExerciseSwapped,
    InviteMade,
    PainReported,
    QuestionAsked,
    ReportTakenBack,
    SessionEnded,
    SessionMoved,
)
from bot.training.pain import PainSaid
from bot.training.people import Standing
from bot.training.plan import PlannedExercise, PlannedSet, RepRange
from storage import relays, strengths, talks
from storage.engine import Store
from storage.work import Work
from tests.store import practice
from tests.store.practice import COACH_CHAT, HOUSE, NOW, TODAY, TOKENS, build, hash_of, keep, report

SAME = "client-one"
CHAT = 101


def typed(text: str = "100x5", *, chat: int = CHAT, reply_to: int | None = None) -> Typed:
    return Typed(chat, 50, NOW, text, reply_to=reply_to)


def tapped(op: str, ref: str = "", *args: str | int, chat: int = CHAT) -> Tapped:
    return Tapped(chat, "q", NOW, show_press(op, ref, *args), 1)


def due(kind: RuleKind, *, at: datetime = NOW, whose: str = SAME, ref: str = "") -> Due:
    return Due(1, kind, whose, ref, at)


def client_desk(work: Work, incoming: Incoming, *, now: datetime = NOW) -> ClientDesk:
    desk = build(work, incoming, now=now)
    assert desk.client is not None
    return desk.client


def coach_desk(work: Work, incoming: Incoming, *, now: datetime = NOW) -> CoachDesk:
    desk = build(work, incoming, now=now)
    assert desk.coach is not None
    return desk.coach


def session_id(work: Work, incoming: Incoming, *, now: datetime = NOW) -> str | None:
    session = client_desk(work, incoming, now=now).session
    return None if session is None else session.id


# --- who


def test_a_stranger_finds_an_empty_desk(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        desk = build(work, typed(chat=999))
        assert (desk.client, desk.coach, desk.invite, desk.talk) == (None, None, None, None)
        assert (desk.now, desk.house, desk.tokens) == (NOW, HOUSE, TOKENS)


def test_everybody_finds_themselves_and_their_talk(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        for chat in (CHAT, COACH_CHAT, 999):
            talks.keep_talk(work, TalkSet(chat, Talk("name", f"step{chat}", (("a", "ž"),), NOW + timedelta(hours=1))))
        mine = build(work, typed())
        assert mine.client is not None
        assert (mine.client.profile.id, mine.client.coach.id, mine.coach) == (SAME, "coach-one", None)
        assert mine.client.programme == practice.programme()
        theirs = build(work, typed(chat=COACH_CHAT))
        assert theirs.coach is not None
        assert (theirs.coach.profile.id, theirs.client) == ("coach-one", None)
        for chat in (CHAT, COACH_CHAT, 999):
            talk = build(work, typed(chat=chat)).talk
            assert talk == Talk("name", f"step{chat}", (("a", "ž"),), NOW + timedelta(hours=1))
            assert build(work, typed(chat=chat), now=NOW + timedelta(hours=1)).talk is None, "it has expired"


def test_a_chat_may_be_a_coachs_and_a_clients_at_once(store: Store) -> None:
    with store.begin() as work:
        practice.coach(work)
        practice.client(work, chat=COACH_CHAT)
        desk = build(work, typed(chat=COACH_CHAT))
        assert desk.client is not None
        assert desk.coach is not None
        assert desk.coach.profile.id == "coach-one"


def test_somebody_who_withdrew_is_known_as_such(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.session(work)
        keep(work, ConsentWithdrawn(SAME))
        mine = client_desk(work, typed())
        assert mine.profile.standing is Standing.WITHDRAWN
        assert mine.session is None


def test_an_invitation_is_found_by_what_is_shown(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        keep(work, InviteMade("coach-one", hash_of("c-token_1"), NOW + timedelta(days=1)))
        for text in ("/start c-token_1", "/START@chalkpost_bot   c-token_1 ", "/start\nc-token_1"):
            invite = build(work, typed(text, chat=999)).invite
            assert invite is not None, text
            assert (invite.coach, invite.is_open) == ("coach-one", True)
        for text in ("/start", "/start other", "c-token_1", "/help c-token_1"):
            assert build(work, typed(text, chat=999)).invite is None, text
        talks.keep_talk(work, TalkSet(999, Talk("joining", "name", (("invite", hash_of("c-token_1")),))))
        assert build(work, typed("Tamsin", chat=999)).invite is not None, "a talk may remember it"


# --- which session


def test_words_are_about_todays_session_an_open_one_first(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        assert session_id(work, typed()) is None
        ended = practice.trained(work, of=SAME, day=TODAY)
        assert session_id(work, typed()) == ended
        again = practice.session(work)
        assert session_id(work, typed()) == again


def test_else_about_the_latest_unfinished_one_of_the_last_two_days(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.session(work, day=TODAY - timedelta(days=3))
        assert session_id(work, typed()) is None
        monday = practice.session(work, day=TODAY - timedelta(days=2))
        tuesday = practice.session(work, day=TODAY - timedelta(days=1))
        practice.session(work, day=TODAY + timedelta(days=1))
        assert session_id(work, typed()) == tuesday
        keep(work, SessionEnded(tuesday, Ending.SKIPPED))
        assert session_id(work, typed()) == monday


def test_today_is_the_clients_own_day(store: Store) -> None:
    """Half past ten in the evening in London is the next day in Berlin."""
    late = datetime(2027, 3, 3, 23, 30, tzinfo=UTC)
    with store.begin() as work:
        practice.practice(work)
        thursday = practice.session(work, day=date(2027, 3, 4))
        assert session_id(work, typed(), now=late) == thursday


def test_a_tap_is_about_its_cards_session_however_old(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        old = practice.trained(work, of=SAME, day=TODAY - timedelta(days=15))
        present = practice.session(work)
        assert session_id(work, tapped("set", f"t-{old}", 1)) == old
        assert session_id(work, tapped("set", f"t-{present}", 1)) == present
        assert session_id(work, tapped("set", "no-such-token", 1)) == present
        assert session_id(work, tapped("score", "pain-id", 4)) == present


def test_a_forged_tap_never_reaches_anothers_session(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.client(work, id="client-two", chat=102)
        theirs = practice.session(work, of="client-two")
        assert session_id(work, tapped("set", f"t-{theirs}", 1)) is None


def test_an_edit_is_about_the_session_that_the_message_reported_to(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        old = practice.session(work, day=TODAY - timedelta(days=9))
        report(work, old, "m40")
        doubtful = practice.session(work, day=TODAY - timedelta(days=8))
        keep(work, DoubtKept(SAME, doubtful, "m41", "100 5"))
        present = practice.session(work)
        assert session_id(work, Edited(CHAT, 40, NOW, "100x4")) == old
        assert session_id(work, Edited(CHAT, 41, NOW, "100x4")) == doubtful
        assert session_id(work, Edited(CHAT, 42, NOW, "100x4")) == present
        keep(work, ReportTakenBack(old, "m40"))
        assert session_id(work, Edited(CHAT, 40, NOW, "100x4")) == old, "an edit takes it up again"


def test_the_clock_speaks_of_its_own_day(store: Store) -> None:
    """A cut-off that comes late, after midnight, is still about the evening's session."""
    late = NOW + timedelta(hours=23)
    with store.begin() as work:
        practice.practice(work)
        today = practice.session(work)
        practice.session(work, day=TODAY + timedelta(days=1))
        evening = datetime(2027, 3, 3, 20, tzinfo=UTC)
        assert session_id(work, due(RuleKind.CUTOFF, at=evening), now=late) == today
        much_later = evening + timedelta(days=5)
        assert session_id(work, due(RuleKind.CUTOFF, at=evening), now=much_later) == today


def test_a_moved_session_is_found_where_it_stands_now(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        moved = practice.session(work, day=TODAY - timedelta(days=5))
        keep(work, SessionMoved(moved, TODAY))
        assert session_id(work, typed()) == moved


def test_whether_a_later_session_has_reports_is_known(store: Store) -> None:
    """Then strength must be built anew rather than carried on."""
    with store.begin() as work:
        practice.practice(work)
        old = practice.trained(work, of=SAME, day=TODAY - timedelta(days=20))
        assert client_desk(work, tapped("set", f"t-{old}")).session_is_latest
        planned = practice.session(work)
        assert client_desk(work, tapped("set", f"t-{old}")).session_is_latest, "a plan alone says nothing"
        report(work, planned, "m1")
        assert not client_desk(work, tapped("set", f"t-{old}")).session_is_latest
        assert client_desk(work, typed()).session_is_latest
        keep(work, SessionEnded(planned, Ending.FINISHED))
        second = practice.session(work, at=NOW + timedelta(hours=9))
        report(work, second, "m2")
        assert not client_desk(work, tapped("set", f"t-{planned}")).session_is_latest, "two on one day"


# --- weeks


def test_the_week_is_there_where_it_is_asked_for(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        days = [date(2027, 2, 19), date(2027, 2, 22), date(2027, 2, 28), date(2027, 3, 1), date(2027, 3, 3)]
        for day in days:
            practice.trained(work, of=SAME, day=day)
        later = practice.session(work, day=date(2027, 3, 7))
        asking = (typed("/week"), typed("/today"), due(RuleKind.WEEK), due(RuleKind.SESSION), tapped("start", ""))
        for incoming in (*asking, typed("yesterday: 100x5"), typed("on 1/3 I did 100x5")):
            mine = client_desk(work, incoming)
            assert [s.day for s in mine.week] == [*days[3:], date(2027, 3, 7)], incoming
            assert [s.day for s in mine.last_week] == days[1:3], incoming
            assert mine.week[-1].id == later
            assert mine.week[0].done
        for lean in (typed("100x5"), tapped("set", "x"), due(RuleKind.CUTOFF)):
            assert client_desk(work, lean).week == (), "nothing is read that isn't needed"


# --- strength


def test_strengths_are_those_of_the_session_or_of_what_may_be_planned(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        for name in ("Back squat", "Bench press", "Deadlift", "Overhead press", "Lat pulldown"):
            strengths.keep(work, StrengthKept(SAME, name, "s", TODAY, "{}", f'{{"of":"{name}"}}'))

        def names(incoming: Incoming) -> set[str]:
            return {row.exercise for row in client_desk(work, incoming).strengths}

        assert names(due(RuleKind.SESSION)) == {"Back squat", "Bench press"}, "of the next workout"
        open_one = practice.session(work, plan=practice.planned("Lat pulldown"))
        assert names(typed()) == {"Lat pulldown"}
        keep(work, SessionEnded(open_one, Ending.FINISHED))
        assert names(tapped("start")) == {"Lat pulldown", "Deadlift", "Overhead press"}
        row = client_desk(work, typed()).strength("Lat pulldown")
        assert row is not None
        assert (row.session, row.day, row.before, row.after) == ("s", TODAY, "{}", '{"of":"Lat pulldown"}')
        assert names(due(RuleKind.WEEK)) >= {"Lat pulldown"}, "of all the week's exercises"
        assert names(BotBlocked(CHAT, NOW, True)) == set()


# --- what waits


def test_open_matters_lie_on_the_desk(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        said = PainSaid("knee", 4, None, False)
        keep(work, PainReported("p1", SAME, id, "Back squat", said, "my knee"), QuestionAsked(SAME, "m1", "why?"))
        keep(work, DoubtKept(SAME, id, "m2", "100 5"))
        for incoming in (typed(), due(RuleKind.PAIN_CHECK, ref="p1"), due(RuleKind.SESSION)):
            mine = client_desk(work, incoming)
            assert [p.id for p in mine.pains] == ["p1"]
            assert [q.key for q in mine.questions] == ["m1"]
            assert [d.key for d in mine.doubts] == ["m2"]
            assert mine.held == (("Back squat", TODAY),)


# --- the coach


def test_a_coachs_button_opens_their_own_client(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.trained(work, of=SAME, day=TODAY)
        practice.session(work, day=TODAY + timedelta(days=1))
        keep(work, PainReported("p1", SAME, id, "Back squat", PainSaid("knee", 4, None, False), "my knee"))
        about = coach_desk(work, tapped("c.open", SAME, chat=COACH_CHAT)).about
        assert about is not None
        assert (about.profile.id, about.coach.id) == (SAME, "coach-one")
        assert about.session is not None
        assert about.session.id == id, "the one last reported"
        assert len(about.week) == 2
        assert about.held == (("Back squat", TODAY),)


@pytest.mark.parametrize("op", ["c.open", "c.reply", "c.handled", "c.give", "c.lift", "c.pick", "c.anything"])
def test_another_coachs_client_and_nobody_look_the_same(store: Store, op: str) -> None:
    """Every button of a coach, replayed by another one, with ids known and unknown."""
    with store.begin() as work:
        practice.practice(work)
        practice.coach(work, id="coach-two", chat=52, name="Other")
        known = build(work, tapped(op, SAME, 1, chat=52))
        unknown = build(work, tapped(op, "no-such-client", 1, chat=52))
        assert known == unknown
        assert known.coach is not None
        assert known.coach.about is None


def test_a_clients_forged_coach_button_opens_nothing(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.client(work, id="client-two", chat=102)
        assert build(work, tapped("c.open", "client-two")).coach is None


def test_a_reply_reaches_whom_the_message_was_about(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        relays.keep_about(work, chat=COACH_CHAT, message=7, about=SAME, other_message=50, now=NOW)
        relays.keep_about(work, chat=CHAT, message=8, about="coach-one", other_message=None, now=NOW)
        desk = build(work, typed("do swim", chat=COACH_CHAT, reply_to=7))
        assert (desk.reply_about, desk.reply_message) == (SAME, 50)
        assert desk.coach is not None
        assert desk.coach.about is not None
        assert desk.coach.about.profile.id == SAME
        media = MediaSent(COACH_CHAT, 51, NOW, MediaKind.VOICE, reply_to=7)
        assert coach_desk(work, media).about is not None
        mine = build(work, typed("thanks", reply_to=8))
        assert (mine.reply_about, mine.reply_message) == ("coach-one", None)
        assert build(work, typed("thanks", reply_to=9)).reply_about == ""
        assert build(work, typed("x", chat=52, reply_to=7)).reply_about == "", "another chat's message 7 is another"


def test_a_relay_to_a_client_of_somebody_else_opens_nothing(store: Store) -> None:
    """Even where the table were wrong, the door holds."""
    with store.begin() as work:
        practice.practice(work)
        practice.coach(work, id="coach-two", chat=52)
        relays.keep_about(work, chat=52, message=7, about=SAME, other_message=50, now=NOW)
        assert coach_desk(work, typed("hello", chat=52, reply_to=7)).about is None


def test_reply_mode_is_about_its_client(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        talks.keep_talk(work, TalkSet(COACH_CHAT, Talk("reply", SAME)))
        about = coach_desk(work, typed("do swim", chat=COACH_CHAT)).about
        assert about is not None
        assert about.profile.id == SAME
        assert coach_desk(work, typed("/clients", chat=COACH_CHAT)).about is None


def test_the_roster_is_there_for_lists_and_for_words_to_nobody(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        for text in ("/clients", "/programme", "/plan", "/digest", "for whom is this?"):
            assert len(coach_desk(work, typed(text, chat=COACH_CHAT)).roster) == 1, text
        for text in ("/help", "/settings", "/invite"):
            assert coach_desk(work, typed(text, chat=COACH_CHAT)).roster == (), text
        assert coach_desk(work, tapped("c.open", SAME, chat=COACH_CHAT)).roster == ()


def test_the_programmes_a_coach_has_given_are_on_the_shelf(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        given = coach_desk(work, typed("/programme", chat=COACH_CHAT)).programmes
        assert given == (practice.programme(),)
        practice.client(work, id="client-two", chat=102, given=replace(practice.programme(), note="rewritten"), at=NOW)
        (latest,) = coach_desk(work, typed("/programme", chat=COACH_CHAT)).programmes
        assert latest.note == "rewritten"


def test_a_rule_of_nobody_finds_an_empty_desk(store: Store) -> None:
    """Whoever was deleted meanwhile."""
    with store.begin() as work:
        for kind in RuleKind:
            desk = build(work, due(kind, whose="gone"))
            assert (desk.client, desk.coach) == (None, None)


def test_all_that_was_ever_done_is_there_where_another_exercise_is_chosen(store: Store) -> None:
    """With what the coach chose for others in its place, the most frequent first; else that is not read."""
    into = PlannedExercise("Leg press", (PlannedSet(RepRange(5, 8)),))
    with store.begin() as work:
        practice.practice(work)
        for n, name in enumerate(("Leg press", "Leg press", "Hack squat")):
            practice.client(work, id=f"other-{n}", chat=500 + n)
            keep(work, ExerciseSwapped(f"other-{n}", "Back squat", replace(into, name=name)))
        strengths.keep(work, StrengthKept(SAME, "Sled drag", "s", TODAY, "{}", "{}"))
        for incoming in (typed("no cable today"), tapped("other", "x"), tapped("instead", "x")):
            mine = client_desk(work, incoming)
            assert mine.preferred == (("Back squat", "Leg press"), ("Back squat", "Hack squat"))
            assert mine.strength("Sled drag") is not None
        for lean in (typed("100x5"), tapped("set", "x")):
            assert client_desk(work, lean).preferred == ()
