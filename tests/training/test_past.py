"""What lies behind somebody: days, weeks, estimates, from their sessions."""

from datetime import UTC, date, datetime, timedelta
from decimal import Decimal

import pytest

from bot.training.assemble import fresh_state, strength_after
from bot.training.attendance import DayMark, SentSession, counted, day_marks, mark_of
from bot.training.facts import Ending, Reported
from bot.training.life import DayChange
from bot.training.past import lift_days, sets_weeks
from bot.training.plan import PlannedExercise, PlannedSession, PlannedSet, RepRange
from bot.training.report import Performed, Side, Stage
from bot.training.session import Session
from bot.training.state import State
from bot.training.strength import estimate
from bot.training.units import Load, Unit

MONDAY = date(2027, 1, 11)
SET = PlannedSet(RepRange(5, 8), Decimal(2), Load.of(60, Unit.KG))
SQUAT = PlannedExercise("Back squat", (SET,) * 2, muscles=("quadriceps",), muscles_indirect=("glutes",))
PLANK = PlannedExercise("Plank", (SET,), muscles=("abdominals",))


def done(number: int | None, exercise: str = "Back squat", *, kg: str = "60", reps: int = 6) -> Performed:
    stage = Stage.WARMUP if number is None else Stage.WORK
    return Performed(exercise, number, stage, Load.of(kg, Unit.KG), reps, Decimal(2))


def session(
    day: date, *sets: Performed, ended: Ending | None = None, plan: tuple[PlannedExercise, ...] = ()
) -> Session:
    reports = (Reported(f"s{day}", "m1", sets),) if sets else ()
    planned = PlannedSession("One", plan or (SQUAT,), 40)
    return Session(
        f"s{day}", "ada", day, 0, planned, "t", reports, ended, first_at=datetime(2027, 1, 1) if sets else None
    )


TODAY = MONDAY + timedelta(days=3)


@pytest.mark.parametrize(
    ("one", "mark"),
    [
        (session(MONDAY, done(1), done(2), ended=Ending.FINISHED), DayMark.DONE),
        (session(MONDAY, done(1), ended=Ending.FINISHED), DayMark.PARTLY),
        (session(MONDAY, done(1), done(2), plan=(SQUAT, PLANK)), DayMark.PARTLY),
        (session(MONDAY, done(1)), DayMark.PARTLY),
        (session(MONDAY, done(None), ended=Ending.FINISHED), DayMark.MISSED),
        (session(MONDAY, ended=Ending.MISSED), DayMark.MISSED),
        (session(MONDAY), DayMark.MISSED),
        (session(MONDAY, ended=Ending.SKIPPED), DayMark.SKIPPED),
        (session(TODAY), DayMark.PLANNED),
        (session(TODAY + timedelta(days=1)), DayMark.PLANNED),
    ],
)
def test_what_became_of_a_session(one: Session, mark: DayMark) -> None:
    """Warm-ups alone are no session; one that is open counts as missed once its day is over."""
    assert mark_of(one, TODAY) is mark


def test_both_sides_of_a_set_are_one_set() -> None:
    left, right = (Performed("Back squat", 1, Stage.WORK, None, 8, None, side) for side in Side)
    assert mark_of(session(MONDAY, left, right, done(2)), TODAY) is DayMark.DONE
    assert mark_of(session(MONDAY, left, right), TODAY) is DayMark.PARTLY


def test_the_days_of_two_weeks() -> None:
    """Done on the first Monday; Thursday's was moved to Friday; then one was missed, one is today, one is to come."""
    moved = session(MONDAY + timedelta(days=4), done(1), done(2))
    sent = [
        SentSession(session(MONDAY, done(1), done(2)), MONDAY),
        SentSession(moved, MONDAY + timedelta(days=3)),
        SentSession(session(MONDAY + timedelta(days=7)), MONDAY + timedelta(days=7)),
    ]
    marks = day_marks(
        sent, first=MONDAY, last=MONDAY + timedelta(days=13), today=MONDAY + timedelta(days=9), training_days=(0, 3)
    )
    rest = DayMark.REST
    assert marks[:7] == (DayMark.DONE, rest, rest, DayMark.MOVED, DayMark.DONE, rest, rest)
    assert marks[7:] == (DayMark.MISSED, rest, rest, DayMark.PLANNED, rest, rest, rest)
    assert counted(marks) == (2, 0, 3)


def test_days_that_changed_before_their_session_was_sent() -> None:
    """One was moved from Monday, one given up on Thursday; what was done on such a day all the same shows."""
    at = datetime(2027, 1, 10, tzinfo=UTC)
    changes = [
        DayChange(at, MONDAY, MONDAY + timedelta(days=1)),
        DayChange(at, MONDAY + timedelta(days=3)),
        DayChange(at, MONDAY + timedelta(days=4)),
    ]
    sent = [SentSession(session(day, done(1), done(2)), day) for day in (MONDAY + timedelta(days=n) for n in (1, 4))]
    marks = day_marks(
        sent,
        first=MONDAY,
        last=MONDAY + timedelta(days=4),
        today=MONDAY + timedelta(days=5),
        training_days=(0, 3),
        changes=changes,
    )
    assert marks == (DayMark.MOVED, DayMark.DONE, DayMark.REST, DayMark.SKIPPED, DayMark.DONE)


def test_of_two_sessions_on_a_day_the_one_that_was_done_shows() -> None:
    sent = [
        SentSession(session(MONDAY, ended=Ending.SKIPPED), MONDAY),
        SentSession(session(MONDAY, done(1), done(2)), MONDAY),
    ]
    for order in (sent, sent[::-1]):
        assert day_marks(order, first=MONDAY, last=MONDAY, today=TODAY, training_days=()) == (DayMark.DONE,)


def test_who_has_paused_has_nothing_to_come() -> None:
    assert day_marks([], first=MONDAY, last=MONDAY, today=MONDAY, training_days=()) == (DayMark.REST,)


def test_weeks_of_sets_hold_what_was_done_and_what_was_planned() -> None:
    """Direct work counts one, along with others a half (Pelland et al. 2024, as `training.volume` has it)."""
    sessions = [session(MONDAY, done(1), done(2), done(None)), session(MONDAY + timedelta(days=7), done(1))]
    first, second, third = sets_weeks(sessions, [MONDAY + timedelta(weeks=n) for n in range(3)])
    one, two = Decimal(1), Decimal(2)
    assert first.done == first.planned == {"quadriceps": two, "glutes": one}
    assert (second.done["quadriceps"], second.planned["quadriceps"]) == (one, two)
    assert (third.done, third.planned) == ({}, {})


def test_each_days_estimate_is_what_was_known_that_evening() -> None:
    """As the kept state came about, session by session; another exercise's sessions change nothing."""
    kilos = [60 + n for n in range(12)]
    sessions = [
        session(MONDAY + timedelta(days=3 * n), done(1, kg=str(kg)), done(2, kg="50", reps=9))
        for n, kg in enumerate(kilos)
    ]
    other = session(MONDAY + timedelta(days=40), done(1, "Plank"), plan=(PLANK,))
    days = lift_days([*sessions, other], "Back squat", {})
    state: State = fresh_state(SQUAT)
    for one, kg, found in zip(sessions, kilos, days, strict=True):
        state = strength_after(one, SQUAT, state, None)
        assert (found.day, found.estimate) == (one.day, estimate(state, one.day))
        assert [(s.load_kg, s.reps) for s in found.sets] == [(float(kg), 6), (50.0, 9)]
    first, last = days[0].estimate, days[-1].estimate
    assert first is not None
    assert last is not None
    assert last.sd_kg < first.sd_kg
