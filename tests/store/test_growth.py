"""What a reply costs stays the same: after five years as after a month, with thousands of clients as with ten.

Counted in statements, rows and SQLite's own machine steps, never in time; and every statement finds its rows by index.
"""

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta

import pytest
import sqlalchemy as sa

from bot.dialogue.buttons import show_press
from bot.dialogue.incoming import Due, Edited, Incoming, RuleKind, Tapped, Typed
from bot.dialogue.turn import RuleSet, StrengthKept, Talk, TalkSet
from bot.training.facts import (
    AlertHandled,
    ClientJoined,
    CoachChanged,
    ConsentGiven,
    ConsentWithdrawn,
    DoubtKept,
    DoubtSettled,
    EffortRated,
    Ending,
    HoldLifted,
    InviteMade,
    MissNoted,
    PainFollowedUp,
    PainReported,
    PainScored,
    ProgrammeAssigned,
    QuestionAnswered,
    QuestionAsked,
    ReachChanged,
    ReadinessAnswered,
    Reported,
    ReportTakenBack,
    SessionEnded,
    SessionMoved,
    SessionPlanned,
    SessionReopened,
)
from bot.training.pain import PainSaid
from bot.training.strength import begin
from storage import facts, inbox, outbox, schedule, strengths, talks
from storage.engine import Store
from storage.inbox import RawUpdate
from storage.memory import Memory
from storage.outbox import NewParcel, ParcelKind
from storage.work import Work
from tests.store import practice
from tests.store.measuring import Cost, counted, plans
from tests.store.practice import COACH_CHAT, NOW, TODAY, ZONE, build, done, keep, origin

SAME = "client-one"
GROWING = frozenset(
    [
        "facts",
        "sessions",
        "sets",
        "strengths",
        "matters",
        "inbox",
        "outbox",
        "slots",
        "relays",
        "talks",
        "clients",
        "schedule",
        "invites",
    ]
)


NOTHING = begin().to_json()
"""A strength of which nothing is known."""


def history(work: Work, weeks: int, *, of: str = SAME) -> None:
    """Three sessions a week up to last week, as the record and the tables have them."""
    for n in range(weeks * 3, 0, -1):
        practice.trained(work, of=of, day=TODAY - timedelta(days=7 + n * 7 // 3), workout=n % 2)


def present(work: Work) -> str:
    """Today's session under way, with something of everything that may wait."""
    id = practice.session(work)
    practice.report(work, id, "m40", at=NOW)
    for name in ("Back squat", "Bench press"):
        strengths.keep(work, StrengthKept(SAME, name, id, TODAY, NOTHING, NOTHING))
    hurt = PainReported("p1", SAME, id, "Bench press", PainSaid("shoulder", 3, None, False), "my shoulder")
    keep(work, hurt, QuestionAsked(SAME, "m41", "may I swim?"))
    talks.keep_talk(work, TalkSet(101, Talk("pain", "where")))
    schedule.keep_rule(work, RuleSet(SAME, RuleKind.SESSION, ZONE, NOW.time(), (0, 2, 4)), now=NOW)
    return id


def incoming(session: str) -> dict[str, Incoming]:
    return {
        "typed": Typed(101, 60, NOW, "100x5"),
        "edited": Edited(101, 40, NOW, "100x4"),
        "tapped": Tapped(101, "q", NOW, show_press("set", f"t-{session}", 2), 1),
        "other exercise": Tapped(101, "q", NOW, show_press("other", f"t-{session}", 0), 1),
        "week": Typed(101, 60, NOW, "/week"),
        "session due": Due(1, RuleKind.SESSION, SAME, "", NOW),
        "week due": Due(1, RuleKind.WEEK, SAME, "", NOW),
        "about": Tapped(COACH_CHAT, "q", NOW, show_press("c.open", SAME), 1),
        "clients": Typed(COACH_CHAT, 60, NOW, "/clients"),
        "digest": Due(1, RuleKind.DIGEST, "coach-one", "", NOW),
    }


MOST = {"typed": 6, "edited": 7, "tapped": 6, "other exercise": 7, "week": 6, "session due": 8, "week due": 7}
MOST |= {"about": 11, "clients": 5, "digest": 12}
"""Statements on SQLite and PostgreSQL alike; a process that has not seen the session or programme yet."""


def whole_turn(work: Work, session: str, n: int) -> None:
    """A reported set from the raw update to the settled send, as the runtime does it."""
    inbox.receive(work, [RawUpdate(1, n, 101, '{"text":"100x5"}')], now=NOW)
    row = inbox.claim(work, 101, worker="a", now=NOW)
    assert row is not None
    desk = build(work, Typed(101, n, NOW, "100x5"))
    assert desk.client is not None
    facts.keep(work, Reported(session, f"m{n}", (done(number=2),)), origin())
    strengths.keep(work, StrengthKept(SAME, "Back squat", session, TODAY, NOTHING, NOTHING))
    card = NewParcel(f"reply:{n}:0", 101, ParcelKind.SEND, '{"html":"card"}', 2, "resend", slot=f"card:{session}")
    outbox.put(work, [card, replace(card, key=f"reply:{n}:1", kind=ParcelKind.REACT, slot="")], now=NOW)
    inbox.keep_done(work, row, now=NOW)
    for _ in range(2):
        (parcel,) = outbox.claim_due(work, worker="a", now=NOW, limit=16)
        outbox.keep_sent(work, parcel, message=n, body_hash="h", now=NOW)


def cost_of(store: Store, job: Callable[[Work], object]) -> Cost:
    """The job's cost in a process that remembers nothing; the second of two runs, so that nothing is still prepared."""
    for _ in range(2):
        store.memory = Memory()
        with counted(store) as (work, cost):
            job(work)
    return cost


def desk_job(session: str, name: str) -> Callable[[Work], object]:
    """Building the desk for this incoming thing."""
    return lambda work: build(work, incoming(session)[name])


def turn_job(session: str) -> Callable[[Work], object]:
    """Whole turns, one after another."""
    numbers = iter(range(100, 200))
    return lambda work: whole_turn(work, session, next(numbers))


def fill(store: Store, weeks: int) -> str:
    with store.begin() as work:
        practice.practice(work)
        history(work, weeks)
        return present(work)


@pytest.mark.parametrize("name", MOST)
def test_a_desk_takes_a_handful_of_statements(store: Store, name: str) -> None:
    session = fill(store, 4)
    cost = cost_of(store, desk_job(session, name))
    assert len(cost.statements) <= MOST[name], "\n".join(sql for sql, _ in cost.statements)


def test_a_reported_set_takes_few_statements_from_update_to_send(store: Store) -> None:
    session = fill(store, 1)
    cost = cost_of(store, turn_job(session))
    extra = 2 if store.is_postgres else 0  # the lock around a claim of parcels
    assert len(cost.statements) <= 21 + extra, "\n".join(sql for sql, _ in cost.statements)


@pytest.fixture(scope="module")
def years() -> int:
    """How many weeks five years are."""
    return 260


def test_after_five_years_a_reply_costs_what_it_cost_after_a_month(
    open_template: Callable[[], Store], years: int
) -> None:
    """Statements and rows equal; machine steps of SQLite within a fifth (its trees are one page deeper). The month is
    two months: so far back a digest looks for what speaks for a light week."""
    young, old = open_template(), open_template()
    sessions = {young: fill(young, 9), old: fill(old, years)}
    for name in MOST:
        costs = [cost_of(store, desk_job(sessions[store], name)) for store in (young, old)]
        assert len(costs[0].statements) == len(costs[1].statements), name
        assert costs[0].rows == costs[1].rows, name
        assert costs[1].steps <= 1.2 * costs[0].steps, name
    turns = {store: cost_of(store, turn_job(sessions[store])) for store in (young, old)}
    assert len(turns[young].statements) == len(turns[old].statements)
    assert turns[young].rows == turns[old].rows
    assert turns[old].steps <= 1.2 * turns[young].steps


def test_among_thousands_of_clients_a_reply_costs_what_it_costs_among_ten(
    open_template: Callable[[], Store],
) -> None:
    few, many = open_template(), open_template()
    costs = {}
    for store, others in ((few, 10), (many, 2000)):
        session = fill(store, 1)
        with store.begin() as work:
            for n in range(others):
                practice.client(work, id=f"other-{n}", chat=10_000 + n)
                keep(work, SessionPlanned(f"s{n}", f"other-{n}", TODAY, 0, practice.planned("Row"), f"t{n}"))
                schedule.keep_rule(work, RuleSet(f"other-{n}", RuleKind.SESSION, ZONE, NOW.time(), (0, 2)), now=NOW)
            rows = [RawUpdate(1, 10_000 + n, 10_000 + n, "{}") for n in range(others)]
            inbox.receive(work, rows, now=NOW)
            for n in range(others):
                row = inbox.claim(work, 10_000 + n, worker="a", now=NOW)
                assert row is not None
                inbox.keep_done(work, row, now=NOW)
        costs[store] = cost_of(store, turn_job(session))
    assert len(costs[few].statements) == len(costs[many].statements)
    assert costs[few].rows == costs[many].rows
    assert costs[many].steps <= 1.2 * costs[few].steps


def scans(plan: str, *, is_postgres: bool) -> list[str]:
    """Tables that grow and are read from end to end."""
    pattern = r"Seq Scan on (\w+)" if is_postgres else r"SCAN (\w+)(?! USING (?:COVERING )?INDEX)"
    return [table for table in re.findall(pattern, plan) if table in GROWING]


@pytest.mark.parametrize("name", [*MOST, "turn", "tick", "idle", "facts"])
def test_every_statement_finds_its_rows_by_index(store: Store, name: str) -> None:
    """On PostgreSQL with plain scans priced out, since on a small table it rightly prefers them."""
    session = fill(store, 4)
    jobs: dict[str, Callable[[Work], object]] = {
        "turn": turn_job(session),
        "tick": tick,
        "idle": idle,
        "facts": every_fact_job(session),
    }
    cost = cost_of(store, jobs.get(name) or desk_job(session, name))
    with store.begin() as work:
        if store.is_postgres:
            work.connection.execute(sa.text("SET LOCAL enable_seqscan = off"))
        for sql, plan in plans(work, cost.statements):
            assert not scans(plan, is_postgres=store.is_postgres), f"{sql}\n{plan}"


def every_fact_job(session: str) -> Callable[[Work], object]:
    """A fact of each kind that a day brings."""
    days = iter(range(1, 9))

    def job(work: Work) -> None:
        n = next(days)
        said = PainSaid("knee", None, None, False)
        id = f"extra{n}"
        keep(
            work,
            SessionPlanned(id, SAME, TODAY + timedelta(days=n), 0, practice.planned(), f"t-{id}"),
            MissNoted(id),
            SessionMoved(id, TODAY + timedelta(days=30 + n)),
            Reported(id, f"m{id}", (done(),)),
            ReportTakenBack(id, f"m{id}"),
            EffortRated(id, 5),
            SessionEnded(id, Ending.SKIPPED),
            SessionReopened(id),
            PainReported(f"p{n}", SAME, session, "Back squat", said, "my knee"),
            PainScored(f"p{n}", SAME, 4),
            HoldLifted(SAME, "Back squat"),
            AlertHandled("coach-one", f"p{n}"),
            AlertHandled("coach-one", f"s{id}"),
            PainFollowedUp(f"p{n}", SAME, "gone", settled=True),
            QuestionAsked(SAME, f"q{n}", "why?"),
            QuestionAnswered(SAME),
            DoubtKept(SAME, session, f"d{n}", "100 5"),
            DoubtSettled(SAME, session, f"d{n}"),
            InviteMade("coach-one", f"hash{n}", NOW + timedelta(days=1)),
            ClientJoined(f"new{n}", "coach-one", 5000 + n, "New", f"hash{n}"),
            ConsentGiven(f"new{n}", "1"),
            ReadinessAnswered(f"new{n}", True, "my heart"),
            ReachChanged(f"new{n}", False),
            ProgrammeAssigned(f"new{n}", practice.programme()),
            ConsentWithdrawn(f"new{n}"),
            CoachChanged("coach-one", name="Renamed"),
        )

    return job


def tick(work: Work) -> None:
    for rule in schedule.due(work, now=NOW + timedelta(days=1), limit=20):
        schedule.advance(work, rule, now=NOW + timedelta(days=1))
    schedule.next_due_at(work)


def idle(work: Work) -> None:
    """What the loops ask again and again while nothing happens."""
    inbox.chats_waiting(work)
    outbox.next_due_at(work)
    outbox.claim_due(work, worker="a", now=NOW, limit=16)
    schedule.next_due_at(work)


def end_job(session: str) -> Callable[[Work], object]:
    """The session's end, kept."""
    return lambda work: facts.keep(work, SessionEnded(session, Ending.FINISHED, 40), origin())


def test_ending_and_reopening_cost_no_more_with_the_years(open_template: Callable[[], Store]) -> None:
    young, old = open_template(), open_template()
    steps = []
    for store, weeks in ((young, 4), (old, 100)):
        session = fill(store, weeks)
        steps.append(cost_of(store, end_job(session)).steps)
    assert steps[1] <= 1.2 * steps[0]
