"""What lies behind a client is read when it is asked for: by index, a year back at most, kept in no memory."""

from datetime import date, timedelta

import pytest
import sqlalchemy as sa

from bot.dialogue.buttons import check_of, show_press
from bot.dialogue.desk import ClientDesk
from bot.dialogue.incoming import Tapped
from bot.training.attendance import DayMark
from bot.training.facts import PainFollowedUp, PainReported
from bot.training.pain import PainSaid
from bot.training.past import NO_PAST
from bot.training.state import State
from bot.training.strength import estimate
from storage import strengths
from storage.engine import Store
from storage.memory import Memory
from storage.work import Work
from tests.store import practice
from tests.store.measuring import counted, plans
from tests.store.practice import COACH_CHAT, NOW, TODAY, build, keep
from tests.store.test_growth import scans

CLIENT = "client-one"
SQUAT = ("0", check_of("Back squat"))


def tapped(op: str, *args: str) -> Tapped:
    return Tapped(COACH_CHAT, "q", NOW, show_press(op, CLIENT, *args), 1)


def looked(work: Work, op: str, *args: str) -> ClientDesk:
    """The client as the coach's desk has them after this tap."""
    coach = build(work, tapped(op, *args)).coach
    assert coach is not None
    assert coach.about is not None
    return coach.about


def fill(work: Work, weeks: int) -> list[date]:
    """Three sessions a week, all as planned; their days."""
    practice.practice(work)
    days = [TODAY - timedelta(days=2 + n * 7 // 3) for n in range(weeks * 3, 0, -1)]
    for day in days:
        practice.trained(work, of=CLIENT, day=day)
    return days


def test_a_lift_goes_back_a_year_and_ends_at_what_is_kept(store: Store) -> None:
    """The days of the last twelve months; worked out from the sessions, the last estimate is as good as the kept one,
    which has seen all of them."""
    with store.begin() as work:
        days = fill(work, 60)
        strengths.rebuild(work, CLIENT, "Back squat")
        about = looked(work, "c.curve", *SQUAT)
    lift, (row,) = about.past.lift, [r for r in about.strengths if r.exercise == "Back squat"]
    assert [one.day for one in lift] == [day for day in days if day >= TODAY - timedelta(days=365)]
    kept, last = estimate(State.from_json(row.after), row.day), lift[-1].estimate
    assert kept is not None
    assert last is not None
    assert last.mean_kg == pytest.approx(kept.mean_kg, rel=0.01)
    assert last.sd_kg == pytest.approx(kept.sd_kg, rel=0.1)


def test_weeks_and_days_are_the_last_ones(store: Store) -> None:
    with store.begin() as work:
        days = fill(work, 30)
        weeks, marks = looked(work, "c.muscles").past.weeks, looked(work, "c.days").past
    monday = TODAY - timedelta(days=TODAY.weekday())
    assert [w.monday for w in weeks] == [monday - timedelta(weeks=n) for n in range(5, -1, -1)]
    for week in weeks:
        sessions = sum(1 for day in days if week.monday <= day < week.monday + timedelta(days=7))
        assert week.done.get("quads", 0) == week.planned.get("quads", 0) == 6 * sessions
    assert marks.since == monday - timedelta(weeks=11)
    assert len(marks.marks) == 84
    for n, mark in enumerate(marks.marks):
        day = marks.since + timedelta(days=n)
        if day in days:
            assert mark is DayMark.DONE
        elif day >= TODAY and day.weekday() in (0, 2, 4):
            assert mark is DayMark.PLANNED
        else:
            assert mark is DayMark.REST


def test_a_page_has_the_last_five_pains_with_how_they_ended(store: Store) -> None:
    with store.begin() as work:
        fill(work, 2)
        for n in range(7):
            said = PainSaid(f"place {n}", n, None, urgent=False)
            keep(work, PainReported(f"p{n}", CLIENT, None, None, said, "it hurts"), at=NOW - timedelta(days=9 - n))
        keep(work, PainFollowedUp("p5", CLIENT, "better", settled=False))
        keep(work, PainFollowedUp("p6", CLIENT, "gone", settled=True))
        past = looked(work, "c.open").past
    assert [(p.said.where, p.settled, p.how) for p in past.pains] == [
        ("place 6", TODAY, "gone"),
        *[(f"place {n}", None, "") for n in (5, 4, 3, 2)],
    ]
    assert (past.done, past.due, len(past.trained)) == (6, 6, 3)


def test_a_day_gives_its_sessions_and_no_other_day(store: Store) -> None:
    with store.begin() as work:
        day = fill(work, 2)[-1]
        assert [s.day for s in looked(work, "c.past", day.isoformat()).past.sessions] == [day]
        assert looked(work, "c.past", "2001-01-01").past.sessions == ()
        assert looked(work, "c.past", "soon").past == NO_PAST


@pytest.mark.parametrize(
    ("op", "args", "most"),
    [("c.curve", SQUAT, 6), ("c.muscles", (), 2), ("c.days", (), 2), ("c.open", (), 3)],
)
def test_looking_back_takes_few_statements_each_by_index(
    store: Store, op: str, args: tuple[str, ...], most: int
) -> None:
    """So many more than a button that looks at nothing; and the sessions of today stay in memory."""
    with store.begin() as work:
        fill(work, 30)
    taken = []
    for what, with_args in (("c.notes", ()), (op, args)):
        for _ in range(2):
            store.memory = Memory()
            with counted(store) as (work, cost):
                looked(work, what, *with_args)
                remembered = len(work.memory.sessions._things)
        taken.append((len(cost.statements), remembered))
        with store.begin() as work:
            if store.is_postgres:
                work.connection.execute(sa.text("SET LOCAL enable_seqscan = off"))
            for sql, plan in plans(work, cost.statements):
                assert not scans(plan, is_postgres=store.is_postgres), f"{sql}\n{plan}"
    (plain, kept_plain), (here, kept_here) = taken
    assert here <= plain + most
    assert kept_here == kept_plain
