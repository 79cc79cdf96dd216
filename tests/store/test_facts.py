"""The record can't be edited, neither by us nor by hand; and the sessions follow it."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
import sqlalchemy as sa
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.training.facts import (
    AlertHandled,
    DoubtKept,
    DoubtSettled,
    EffortRated,
    Ending,
    HoldLifted,
    MissNoted,
    PainFollowedUp,
    PainReported,
    PainScored,
    PlanChanged,
    ProgrammeAssigned,
    QuestionAnswered,
    QuestionAsked,
    Reported,
    ReportTakenBack,
    SessionEnded,
    SessionMoved,
    SessionPlanned,
    SessionReopened,
)
from bot.training.pain import PainSaid
from bot.training.people import Programme
from bot.training.replanned import AsBefore, Shorter, Trade, Trading
from bot.training.report import Performed, Stage
from bot.training.session import Change, Session, with_report, without_report
from storage import matters, people, record, sessions
from storage.engine import Store
from storage.memory import Memory
from storage.work import Overtaken, Work
from tests.store import practice
from tests.store.practice import NOW, TODAY, done, keep, report

SAME = "client-one"


def the_session(work: Work, id: str) -> Session:
    kept = sessions.session_of(work, id)
    assert kept is not None
    return kept.session


def the_workout(work: Work) -> int:
    row = people.client_by_id(work, SAME)
    assert row is not None
    return row.profile.workout


def last_day(work: Work) -> date | None:
    row = people.client_by_id(work, SAME)
    assert row is not None
    return row.last_day


def kept_sets(work: Work, session: str) -> list[tuple[str, int, int]]:
    found = sa.text("SELECT exercise, set_number, reps FROM sets WHERE session = :s ORDER BY place")
    return [tuple(row) for row in work.connection.execute(found, {"s": session})]


# --- the record


@pytest.mark.parametrize(
    "statement",
    [
        "UPDATE facts SET source = 'forged'",
        "UPDATE facts SET client = NULL",
        "DELETE FROM facts",
        "DELETE FROM facts WHERE client = 'client-one'",
        "DELETE FROM facts WHERE client IS NULL",
    ],
)
def test_the_database_itself_refuses_to_change_or_delete_facts(store: Store, statement: str) -> None:
    with store.begin() as work:
        practice.practice(work)
        before = work.connection.execute(sa.text("SELECT count(*) FROM facts")).scalar()
    with pytest.raises(sa.exc.DBAPIError, match="never edited"), store.begin() as work:
        work.connection.execute(sa.text(statement))
    with store.begin() as work:
        assert work.connection.execute(sa.text("SELECT count(*) FROM facts")).scalar() == before


def test_postgresql_refuses_to_empty_the_record(store: Store) -> None:
    statement = "TRUNCATE facts" if store.is_postgres else "DELETE FROM facts"
    with store.begin() as work:
        practice.coach(work)
    with pytest.raises(sa.exc.DBAPIError, match="never edited"), store.begin() as work:
        work.connection.execute(sa.text(statement))


def test_a_fact_stands_with_who_said_it_when_and_where(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        report(work, id, "m7", at=NOW)
        last = list(record.facts_of(work, SAME))[-1]
        assert last.fact == Reported(id, "m7", (done(),))
        assert (last.origin.by, last.origin.at, last.origin.source) == ("chat:1", NOW, "m1:1")
        assert record.session_of_key(work, SAME, "m7") == id
        assert record.session_of_key(work, SAME, "m8") is None
        assert record.session_of_key(work, "somebody", "m7") is None


# --- sessions


def test_a_planned_session_never_changes_with_its_programme(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        plan = practice.planned("Back squat", "Deadlift")
        id = practice.session(work, plan=plan)
        keep(work, ProgrammeAssigned(SAME, practice.programme()))
    with store.begin() as work:
        assert the_session(work, id) == Session(id, SAME, TODAY, 0, plan, f"t-{id}")


def test_a_day_has_one_open_session(store: Store) -> None:
    """Two ticks, or a tick and a tap: the second turn is undone and answered anew."""
    with store.begin() as work:
        practice.practice(work)
        first = practice.session(work)
    with pytest.raises(Overtaken), store.begin() as work:
        practice.session(work)
    with store.begin() as work:
        practice.session(work, day=TODAY + timedelta(days=1))
        keep(work, SessionEnded(first, Ending.FINISHED))
        practice.session(work)


def test_reports_count_correct_and_are_taken_back(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        report(work, id, "m1", done(number=1), at=NOW)
        report(work, id, "m2", done(number=2), at=NOW + timedelta(minutes=4))
        keep(work, Reported(id, "m3", (), skipped=("Bench press",)), at=NOW + timedelta(minutes=9))
        session = the_session(work, id)
        assert [r.key for r in session.reports] == ["m1", "m2", "m3"]
        assert session.skipped == ("Bench press",)
        assert (session.first_at, session.last_at) == (NOW, NOW + timedelta(minutes=4)), "of sets, not of skipping"
        assert kept_sets(work, id) == [("Back squat", 1, 5), ("Back squat", 2, 5)]
        report(work, id, "m1", done(number=1, reps=3), at=NOW + timedelta(hours=3))
        session = the_session(work, id)
        assert [r.key for r in session.reports] == ["m1", "m2", "m3"], "a correction stays in its place"
        assert session.first_at == NOW, "and at its time"
        assert kept_sets(work, id) == [("Back squat", 1, 3), ("Back squat", 2, 5)]
        keep(work, ReportTakenBack(id, "m1"))
        assert kept_sets(work, id) == [("Back squat", 2, 5)]
        assert the_session(work, id).first_at == NOW + timedelta(minutes=4)
        assert last_day(work) == TODAY
        keep(work, ReportTakenBack(id, "m2"))
        assert kept_sets(work, id) == []
        assert the_session(work, id).first_at is None
        assert last_day(work) is None


def test_the_last_day_goes_back_to_the_one_before(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.trained(work, of=SAME, day=TODAY - timedelta(days=2))
        id = practice.session(work)
        report(work, id, "m1")
        assert last_day(work) == TODAY
        keep(work, ReportTakenBack(id, "m1"))
        assert last_day(work) == TODAY - timedelta(days=2)


def test_what_befalls_a_session_is_seen_in_it(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        keep(work, MissNoted(id))
        assert the_session(work, id).miss_noted
        keep(work, SessionMoved(id, TODAY + timedelta(days=1)))
        moved = the_session(work, id)
        assert (moved.day, moved.miss_noted) == (TODAY + timedelta(days=1), False)
        report(work, id, "m1")
        keep(work, SessionMoved(id, TODAY))
        assert last_day(work) == TODAY
        assert work.connection.execute(sa.text("SELECT DISTINCT day FROM sets")).scalars().all() == [str(TODAY)]
        keep(work, SessionEnded(id, Ending.FINISHED, 50), EffortRated(id, 7))
        assert (the_session(work, id).ended, the_session(work, id).effort) == (Ending.FINISHED, 7)
        keep(work, SessionReopened(id))
        assert the_session(work, id).ended is None
    with store.begin() as work:
        work.memory = Memory()
        assert the_session(work, id).effort == 7


@pytest.mark.parametrize(("how", "next_workout"), [(Ending.FINISHED, 1), (Ending.SKIPPED, 1), (Ending.MISSED, 0)])
def test_the_programme_moves_on_unless_a_session_was_missed(store: Store, how: Ending, next_workout: int) -> None:
    with store.begin() as work:
        practice.practice(work)
        keep(work, SessionEnded(practice.session(work), how))
        assert the_workout(work) == next_workout


def test_the_programme_goes_round(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        for n, place in enumerate((1, 0, 1)):
            practice.trained(work, of=SAME, day=TODAY + timedelta(days=n), workout=(place + 1) % 2)
            assert the_workout(work) == place


def test_a_late_end_does_not_turn_the_programme_back(store: Store) -> None:
    """Monday's was missed, Wednesday's done; then Monday's is reported after all."""
    with store.begin() as work:
        practice.practice(work)
        monday = practice.session(work, day=TODAY - timedelta(days=2))
        keep(work, SessionEnded(monday, Ending.MISSED))
        practice.trained(work, of=SAME, day=TODAY, workout=0)
        practice.trained(work, of=SAME, day=TODAY + timedelta(days=2), workout=1)
        assert the_workout(work) == 0
        keep(work, SessionReopened(monday), SessionEnded(monday, Ending.FINISHED))
        assert the_workout(work) == 0, "Friday's end stands, though Monday's comes later"


def test_a_session_of_an_older_programme_does_not_move_the_new_one(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        other = Programme("other", "Other", (practice.workout("Row"), practice.workout("Press")))
        keep(work, ProgrammeAssigned(SAME, other), SessionEnded(id, Ending.FINISHED))
        assert the_workout(work) == 0


def test_a_fact_about_no_session_is_refused(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
    for fact in (Reported("none", "m1", ()), SessionEnded("none", Ending.FINISHED), MissNoted("none")):
        with pytest.raises(LookupError), store.begin() as work:
            keep(work, fact)
    with pytest.raises(LookupError), store.begin() as work:
        keep(work, SessionPlanned("s", "nobody", TODAY, 0, practice.planned(), "t"))


SETS = st.builds(
    Performed,
    exercise=st.sampled_from(["Back squat", "Bench press"]),
    set=st.one_of(st.none(), st.integers(1, 4)),
    stage=st.sampled_from(Stage),
    load=st.just(done().load),
    reps=st.integers(0, 12),
)
CHANGES = st.one_of(
    st.builds(
        Reported,
        session=st.just("s"),
        key=st.sampled_from(["m1", "m2", "m3", "m4"]),
        sets=st.lists(SETS, max_size=3).map(tuple),
        replaces=st.lists(st.tuples(st.sampled_from(["Back squat", "Bench press"]), st.integers(1, 4)), max_size=2).map(
            tuple
        ),
    ),
    st.builds(ReportTakenBack, session=st.just("s"), key=st.sampled_from(["m1", "m2", "m3", "m4"])),
)


@settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(changes=st.lists(CHANGES, max_size=8))
def test_any_reports_corrections_and_undos_give_what_the_trade_says(
    store: Store, changes: list[Reported | ReportTakenBack]
) -> None:
    """The kept session and the rows of `sets`, against `bot.training.session`'s own folding."""
    with practice.undone(store) as work:
        practice.practice(work)
        plan = practice.planned()
        keep(work, SessionPlanned("s", SAME, TODAY, 0, plan, "t"))
        expected = Session("s", SAME, TODAY, 0, plan, "t")
        for change in changes:
            keep(work, change)
            match change:
                case Reported():
                    expected = with_report(expected, change)
                case ReportTakenBack():
                    expected = without_report(expected, change)
        work.memory = Memory()
        kept = the_session(work, "s")
        assert kept.reports == expected.reports
        rows = [(p.exercise, p.set, p.reps) for p in expected.done]
        assert kept_sets(work, "s") == rows


# --- what waits


def pain(work: Work, id: str, exercise: str | None, session: str | None = None, score: int | None = None) -> None:
    said = PainSaid("knee", score, None, False)
    keep(work, PainReported(id, SAME, session, exercise, said, "my knee hurts"))


def open_matters(work: Work) -> matters.Open:
    row = people.client_by_id(work, SAME)
    assert row is not None
    waiting = matters.open_of(work, SAME, row.profile.zone)
    count = len(waiting.pains) + len(waiting.doubts) + len(waiting.questions)
    assert row.matters_open == count, "the count beside the client is right"
    return waiting


def test_pain_holds_its_exercise_until_it_is_settled(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        pain(work, "p1", "Back squat")
        keep(work, PainScored("p1", SAME, 6))
        (open_pain,) = open_matters(work).pains
        assert (open_pain.id, open_pain.exercise, open_pain.said.score) == ("p1", "Back squat", 6)
        assert (open_pain.words, open_pain.at) == ("my knee hurts", NOW)
        assert open_matters(work).held == (("Back squat", TODAY),)
        keep(work, PainFollowedUp("p1", SAME, "same", settled=False))
        assert open_matters(work).held == (("Back squat", TODAY),)
        keep(work, PainFollowedUp("p1", SAME, "gone", settled=True))
        assert open_matters(work) == matters.NOTHING_OPEN


def test_a_lift_by_the_coach_ends_the_hold_and_not_the_pain(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        pain(work, "p1", "Back squat")
        pain(work, "p2", "Bench press")
        pain(work, "p3", None)
        keep(work, HoldLifted(SAME, "Back squat"))
        assert open_matters(work).held == (("Bench press", TODAY),)
        assert [p.id for p in open_matters(work).pains] == ["p1", "p2", "p3"]


def test_an_exercise_is_held_while_any_pain_holds_it(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        pain(work, "p1", "Back squat")
        pain(work, "p2", "Back squat")
        keep(work, PainFollowedUp("p1", SAME, "gone", settled=True))
        assert open_matters(work).held == (("Back squat", TODAY),)


def test_questions_and_doubts_wait_until_they_are_answered(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        keep(work, QuestionAsked(SAME, "m1", "may I swim?"), QuestionAsked(SAME, "m2", "and run?"))
        keep(work, DoubtKept(SAME, id, "m3", "100 5 or so"), QuestionAsked(SAME, "m1", "may I swim today?"))
        waiting = open_matters(work)
        assert [(q.key, q.words) for q in waiting.questions] == [("m1", "may I swim today?"), ("m2", "and run?")]
        assert [(d.session, d.key, d.words) for d in waiting.doubts] == [(id, "m3", "100 5 or so")]
        assert record.session_of_key(work, SAME, "m3") == id, "an edit of a doubtful message finds its session"
        keep(work, QuestionAnswered(SAME))
        assert open_matters(work).questions == ()
        keep(work, DoubtSettled(SAME, id, "m3"))
        assert open_matters(work) == matters.NOTHING_OPEN


def test_an_alert_is_handled_by_its_own_coach_only(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.coach(work, id="coach-two", chat=52)
        id = practice.session(work)
        pain(work, "p1", None)
        keep(work, MissNoted(id))
        keep(work, AlertHandled("coach-two", "p1"), AlertHandled("coach-two", f"s{id}"), AlertHandled("coach-one", "x"))
        handled = sa.text(
            "SELECT count(*) FROM matters WHERE handled_at IS NOT NULL "
            "UNION ALL SELECT count(*) FROM sessions WHERE handled_at IS NOT NULL"
        )
        assert work.connection.execute(handled).scalars().all() == [0, 0]
        keep(work, AlertHandled("coach-one", "p1"), AlertHandled("coach-one", f"s{id}"))
        assert work.connection.execute(handled).scalars().all() == [1, 1]


def test_a_changed_plan_is_kept_with_what_stood_before(store: Store) -> None:
    """Read back whole from the database; the way back leaves the session as it was sent."""
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        sent = the_session(work, id)
        cut = replace(sent.plan, exercises=sent.plan.exercises[:1])
        given = (Trade(Trading.OPTIONAL, ("Bench press",), 2),)
        keep(work, PlanChanged(id, cut, Shorter(20, given, (("chest", Decimal("1.5")),))))
    store.memory.forget(SAME)
    with store.begin() as work:
        changed = the_session(work, id)
        assert changed.plan == cut
        assert changed.changes == (Change(Shorter(20, given, (("chest", Decimal("1.5")),)), sent.plan, ()),)
        keep(work, PlanChanged(id, sent.plan, AsBefore()))
    store.memory.forget(SAME)
    with store.begin() as work:
        assert the_session(work, id) == sent
