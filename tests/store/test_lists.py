"""The coach's lists: the roster from kept columns, the digest since the last one."""

from datetime import UTC, date, datetime, time, timedelta

from bot.dialogue.desk import DigestEntry, RosterLine
from bot.dialogue.incoming import Due, RuleKind
from bot.dialogue.turn import RuleSet
from bot.training.facts import (
    AlertHandled,
    Ending,
    MissNoted,
    PainFollowedUp,
    PainReported,
    ProfileChanged,
    QuestionAnswered,
    QuestionAsked,
    ReachChanged,
    ReadinessAnswered,
    SessionEnded,
    SessionMoved,
)
from bot.training.pain import PainSaid
from bot.training.people import Coach, Standing
from storage import people, schedule
from storage.digest import digest
from storage.engine import Store
from storage.roster import roster
from storage.work import Work
from tests.store import practice
from tests.store.practice import NOW, TODAY, ZONE, build, keep, report

SAME = "client-one"


def me(work: Work, id: str = "coach-one") -> Coach:
    coach = people.coach_by_id(work, id)
    assert coach is not None
    return coach


def lines(work: Work, now: datetime = NOW) -> tuple[RosterLine, ...]:
    return roster(work, me(work), now)


def test_the_roster_tells_the_last_day_adherence_and_the_next_day(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.trained(work, of=SAME, day=TODAY - timedelta(days=40))
        practice.trained(work, of=SAME, day=TODAY - timedelta(days=9))
        missed = practice.session(work, day=TODAY - timedelta(days=7))
        keep(work, SessionEnded(missed, Ending.MISSED))
        skipped = practice.session(work, day=TODAY - timedelta(days=5))
        keep(work, SessionEnded(skipped, Ending.SKIPPED))
        practice.trained(work, of=SAME, day=TODAY - timedelta(days=2))
        (line,) = lines(work)
        trained = TODAY - timedelta(days=2)
        assert line == RosterLine(SAME, "Tamsin", "active", True, trained, 2, 4, TODAY, programme="sample", chat=101)
        today = practice.session(work)
        assert (lines(work)[0].sessions_done, lines(work)[0].sessions_due) == (2, 4), "today is not over"
        report(work, today, "m1")
        (line,) = lines(work)
        assert (line.sessions_done, line.sessions_due, line.last_day) == (3, 5, TODAY)
        assert line.next_day == TODAY + timedelta(days=2), "Friday"


def test_a_moved_session_comes_before_the_next_training_day(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        id = practice.session(work)
        keep(work, SessionMoved(id, TODAY + timedelta(days=1)))
        keep(work, SessionEnded(practice.session(work), Ending.SKIPPED))
        assert lines(work)[0].next_day == TODAY + timedelta(days=1)


def test_the_roster_shows_everyones_standing_and_nobody_who_withdrew(store: Store) -> None:
    with store.begin() as work:
        practice.coach(work)
        for n, standing in enumerate(Standing):
            practice.client(work, id=f"k{n}", chat=200 + n, name=f"N{n}", standing=standing)
        practice.coach(work, id="coach-two", chat=52)
        practice.client(work, id="other", chat=300, of="coach-two")
        keep(work, ReachChanged("k1", False))
        shown = {line.client: (line.standing, line.reachable, line.next_day) for line in lines(work)}
        assert shown == {
            "k0": ("joining", True, None),
            "k1": ("active", False, TODAY),
            "k2": ("paused", True, None),
        }


def digest_rule(work: Work) -> None:
    schedule.keep_rule(work, RuleSet("coach-one", RuleKind.DIGEST, ZONE, time(7), tuple(range(7))), now=NOW)


def written(work: Work, now: datetime) -> tuple[DigestEntry, ...]:
    """The digest of the rule's own turn, as the clock's loop does it."""
    (rule,) = schedule.due(work, now=now, limit=10)
    desk = build(work, Due(rule.id, rule.kind, rule.whose, rule.ref, rule.due_at), now=now)
    schedule.advance(work, rule, now=now)
    assert desk.coach is not None
    return desk.coach.digest


def hurt(work: Work, id: str, at: datetime) -> None:
    keep(work, PainReported(id, SAME, None, "Back squat", PainSaid("knee", 4, None, False), "my knee"), at=at)


THURSDAY = datetime(2027, 3, 4, 6, 0, tzinfo=UTC)
FRIDAY = THURSDAY + timedelta(days=1)


def test_a_quiet_day_has_no_entries(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.session(work)
        digest_rule(work)
        assert written(work, THURSDAY) == ()


def test_the_digest_tells_what_happened_since_the_last_one(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        digest_rule(work)
        old = practice.trained(work, of=SAME, day=TODAY - timedelta(days=5))
        done = practice.trained(work, of=SAME, day=TODAY)
        (entry,) = written(work, THURSDAY)
        assert (entry.client, entry.name) == (SAME, "Tamsin")
        assert [s.id for s in entry.sessions] == [done]
        assert written(work, FRIDAY) == (), "once"
        report(work, old, "late", at=FRIDAY + timedelta(hours=1))
        (entry,) = written(work, FRIDAY + timedelta(days=1))
        assert [s.id for s in entry.sessions] == [old], "a late report is news, however old its session"


def test_pain_and_questions_are_told_until_somebody_sees_to_them(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        digest_rule(work)
        hurt(work, "p1", NOW)
        keep(work, QuestionAsked(SAME, "m1", "may I swim?"))
        for morning in (THURSDAY, FRIDAY):
            (entry,) = written(work, morning)
            assert [p.id for p in entry.pains] == ["p1"]
            assert [q.words for q in entry.questions] == ["may I swim?"]
        keep(work, AlertHandled("coach-one", "p1"), QuestionAnswered(SAME), at=FRIDAY + timedelta(hours=1))
        assert written(work, FRIDAY + timedelta(days=1)) == ()


def test_pain_that_was_handled_the_same_day_is_still_told_once(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        digest_rule(work)
        hurt(work, "p1", NOW)
        keep(work, AlertHandled("coach-one", "p1"))
        assert [p.id for p in written(work, THURSDAY)[0].pains] == ["p1"]
        assert written(work, FRIDAY) == ()
        hurt(work, "p2", FRIDAY)
        keep(work, PainFollowedUp("p2", SAME, "gone", settled=True), at=FRIDAY + timedelta(hours=2))
        assert written(work, FRIDAY + timedelta(days=1)) == (), "settled before anybody had to look"


def test_a_missed_session_is_told_until_it_is_handled_reported_or_ended(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        digest_rule(work)
        id = practice.session(work)
        keep(work, MissNoted(id), at=NOW + timedelta(hours=12))
        for morning in (THURSDAY, FRIDAY):
            assert [e.missed for e in written(work, morning)] == [(TODAY,)]
        report(work, id, "late", at=FRIDAY + timedelta(hours=1))
        (entry,) = written(work, FRIDAY + timedelta(days=1))
        assert entry.missed == ()
        assert [s.id for s in entry.sessions] == [id]
        other = practice.session(work, day=date(2027, 3, 5))
        keep(work, MissNoted(other), AlertHandled("coach-one", f"s{other}"), at=FRIDAY + timedelta(days=1, hours=1))
        assert [e.missed for e in written(work, FRIDAY + timedelta(days=2))] == [(date(2027, 3, 5),)]
        assert written(work, FRIDAY + timedelta(days=3)) == ()


def test_flags_and_silence_are_told_once(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        digest_rule(work)
        paused = ProfileChanged(SAME, standing=Standing.PAUSED)
        keep(work, ReadinessAnswered(SAME, True, "my heart"), paused, ReachChanged(SAME, False))
        (entry,) = written(work, THURSDAY)
        assert (entry.readiness_flagged, entry.unreachable) == (True, True)
        (entry,) = written(work, FRIDAY)
        assert (entry.readiness_flagged, entry.unreachable) == (True, False), "it waits for the coach's word"
        keep(work, ProfileChanged(SAME, standing=Standing.ACTIVE))
        assert written(work, FRIDAY + timedelta(days=1)) == ()


def test_each_coach_reads_of_their_own(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        practice.coach(work, id="coach-two", chat=52)
        practice.client(work, id="other", chat=300, of="coach-two", name="Wren")
        for id in (SAME, "other"):
            practice.trained(work, of=id, day=TODAY)
            keep(work, QuestionAsked(id, "m1", f"from {id}"), MissNoted(practice.session(work, of=id)))
        for coach, id in (("coach-one", SAME), ("coach-two", "other")):
            (entry,) = digest(work, me(work, coach), now=THURSDAY)
            assert entry.client == id
            assert [q.words for q in entry.questions] == [f"from {id}"]
            assert all(s.client == id for s in entry.sessions)


def test_a_renamed_client_is_told_by_the_new_name(store: Store) -> None:
    with store.begin() as work:
        practice.practice(work)
        keep(work, ProfileChanged(SAME, name="Tam"), QuestionAsked(SAME, "m1", "x"))
        assert digest(work, me(work), now=NOW)[0].name == "Tam"
        assert lines(work)[0].name == "Tam"
