"""The rest notice: after one reported set, on time or not at all, never twice, never a flood."""

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.training.facts import Ending, Reported
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.rest_notice import LATEST, OLD, RestDue, is_still_due, rest_after
from bot.training.session import Session, with_report

NOW = datetime(2026, 1, 5, 18, tzinfo=UTC)
SQUAT = PlannedExercise("Squat", (PlannedSet(RepRange(5, 5), rest_s=180),) * 3)
PRESS = PlannedExercise("Press", (PlannedSet(RepRange(10, 10), rest_s=90),) * 2, pair="A")
ROW = replace(PRESS, name="Row")
SESSION = Session("s", "c", date(2026, 1, 5), 0, PlannedSession("Today", (SQUAT, PRESS, ROW), 30), "t")


def report(*sets: tuple[str, int], key: str = "m1") -> Reported:
    """A report of these sets."""
    return Reported("s", key, tuple(Performed(name, number, Stage.WORK, None, 5) for name, number in sets))


def after(session: Session, told: Reported, *, late_s: int = 0, rest_s: int | None = None) -> RestDue | None:
    """The notice that waits after a report that was written `late_s` ago."""
    said_at = NOW - timedelta(seconds=late_s)
    return rest_after(with_report(session, told), told, said_at=said_at, now=NOW, rest_s=rest_s)


def having(*sets: tuple[str, int]) -> Session:
    """The session with these sets behind it."""
    session = SESSION
    for n, key in enumerate(sets):
        session = with_report(session, report(key, key=f"before{n}"))
    return session


def test_it_comes_when_the_planned_rest_is_over() -> None:
    """Three minutes after the set was reported, before the next set of it; the client's own rest goes before."""
    due = after(SESSION, report(("Squat", 1)))
    assert due == RestDue(NOW + timedelta(seconds=180), ("Squat", 1), ("Squat", 2), 180)
    own = after(SESSION, report(("Squat", 1)), rest_s=120)
    assert own is not None
    assert own.due_at == NOW + timedelta(seconds=120)


def test_a_report_on_its_way_for_some_seconds_counts_from_when_it_was_written() -> None:
    """Twenty seconds on the way: due twenty seconds sooner. A minute and more: from a phone without signal, none."""
    due = after(SESSION, report(("Squat", 1)), late_s=20)
    assert due is not None
    assert due.due_at == NOW + timedelta(seconds=160)
    assert after(SESSION, report(("Squat", 1)), late_s=int(OLD.total_seconds()) + 1) is None


@pytest.mark.parametrize(
    "told",
    [
        report(("Squat", 1), ("Squat", 2)),
        report(("Squat", 3)),
        Reported("s", "m1", (Performed("Squat", None, Stage.WARMUP, None, 5),)),
        Reported("s", "m1", (Performed("Squat", 4, Stage.WORK, None, 5),)),
        replace(report(("Squat", 1)), replaces=(("Squat", 1),)),
        replace(report(("Squat", 1)), skipped=("Row",)),
        report(("Elsewhere", 1)),
    ],
    ids=["batch", "last set", "warm-up", "beyond the plan", "correction", "given up", "not planned"],
)
def test_none_after(told: Reported) -> None:
    """Batches, corrections, warm-ups, sets beyond the plan; the last set, after which another exercise is set up."""
    session = having(("Squat", 1), ("Squat", 2)) if told.sets[0].set == 3 else SESSION
    assert after(session, told) is None


def test_none_for_a_rest_that_is_too_short_or_a_slip() -> None:
    """Under half a minute, and over ten minutes."""
    for seconds, wanted in ((29, False), (30, True), (600, True), (601, False)):
        assert (after(SESSION, report(("Squat", 1)), rest_s=seconds) is not None) is wanted


def test_a_pair_rests_after_its_second_half() -> None:
    """After the press the row follows at once, after the row the whole rest; a first half may have a shorter one."""
    begun = having(("Squat", 1), ("Squat", 2), ("Squat", 3))
    assert after(begun, report(("Press", 1))) is None
    pressed = having(("Squat", 1), ("Squat", 2), ("Squat", 3), ("Press", 1))
    due = after(pressed, report(("Row", 1)))
    assert due == RestDue(NOW + timedelta(seconds=90), ("Row", 1), ("Press", 2), 90)
    short = replace(PRESS, sets=(replace(PRESS.sets[0], rest_s=45),) * 2)
    plan = PlannedSession("Today", (short, ROW), 30)
    half = after(replace(SESSION, plan=plan), report(("Press", 1)))
    assert half == RestDue(NOW + timedelta(seconds=45), ("Press", 1), ("Row", 1), 45)


def test_both_sides_of_a_set_are_one() -> None:
    """Left and right in one report: one set."""
    told = Reported(
        "s", "m1", tuple(Performed("Squat", 1, Stage.WORK, None, 5, side=side) for side in (Side.LEFT, Side.RIGHT))
    )
    assert after(SESSION, told) is not None


def test_never_after_the_set_was_reported_or_the_session_ended() -> None:
    """At its time it is looked at again."""
    session = having(("Squat", 1))
    due = RestDue(NOW, ("Squat", 1), ("Squat", 2), 180)
    assert is_still_due(due, session, NOW)
    assert not is_still_due(due, having(("Squat", 1), ("Squat", 2)), NOW)
    assert not is_still_due(due, replace(session, ended=Ending.FINISHED), NOW)
    assert not is_still_due(
        due, replace(session, reports=(*session.reports, Reported("s", "k", (), (), ("Squat",)))), NOW
    )


@given(st.integers(-300, 300))
def test_never_early_and_never_late(seconds: int) -> None:
    """From its time on for twenty seconds, and not a second longer."""
    due = RestDue(NOW, ("Squat", 1), ("Squat", 2), 180)
    sent = is_still_due(due, having(("Squat", 1)), NOW + timedelta(seconds=seconds))
    assert sent is (0 <= seconds <= LATEST.total_seconds())


@given(st.lists(st.tuples(st.sampled_from(["Squat", "Press", "Row"]), st.integers(1, 3)), max_size=12))
def test_never_more_than_one_for_a_report_and_always_for_a_set_to_come(told: list[tuple[str, int]]) -> None:
    """Whatever is reported in whatever order: the notice is before the set that is next, and that set is not done."""
    session = SESSION
    for n, key in enumerate(told):
        one = report(key, key=f"m{n}")
        session = with_report(session, one)
        due = rest_after(session, one, said_at=NOW, now=NOW)
        if due is not None:
            assert due.before[1] == session.next_set(session.plan.exercise(due.before[0]))
            assert due.due_at > NOW
            assert is_still_due(due, session, due.due_at)
