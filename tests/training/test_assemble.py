"""A session put together, and the same while it is under way."""

from datetime import date
from decimal import Decimal

from bot.training.assemble import plan_session, strength_after, under_way
from bot.training.facts import Reported
from bot.training.people import Gym
from bot.training.report import Performed, Stage
from bot.training.samples import sample_programme
from bot.training.session import Session
from bot.training.units import Load, Unit

GYM = Gym.usual(Unit.KG)
DAY = date(2027, 1, 11)


def session_with(*sets: Performed) -> Session:
    """The sample's first workout with these sets of the squat reported."""
    plan = plan_session(sample_programme().workouts[0], GYM, strengths={}, held={}, day=DAY)
    return Session("s", "c", DAY, 0, plan, "t", (Reported("s", "m1", sets),))


def squat(number: int, kg: str, reps: int, rir: int | None = None) -> Performed:
    """A work set of the squat."""
    left = None if rir is None else Decimal(rir)
    return Performed("Back squat", number, Stage.WORK, Load.of(kg, Unit.KG), reps, left)


def test_the_sets_that_are_left_take_loads_from_those_done() -> None:
    """After the top set the back-off sets have a load that the gym can make, below it; what is done stays."""
    session = session_with(squat(1, "60", 5, 2))
    live = under_way(session, session.plan.exercises[0], GYM, None, held=False)
    assert live.sets[0].load is None
    for planned in live.sets[1:]:
        assert planned.load is not None
        assert 40 <= planned.load.kg < 60
        assert planned.load.thousandths % 2500 == 0


def test_a_gap_in_the_middle_gets_its_load_too() -> None:
    """A set taken back between two that are done is not a load to be found."""
    session = session_with(squat(1, "60", 5, 2), squat(3, "50", 8))
    live = under_way(session, session.plan.exercises[0], GYM, None, held=False)
    assert live.sets[1].load is not None
    assert live.sets[2].load is None


def test_effort_that_was_not_said_earns_no_large_step() -> None:
    """Never more than 10 % over what was lifted today while it is not known how hard it was (upper end of the
    2 to 10 % of the
    ACSM position stand, Ratamess et al. 2009, Med Sci Sports Exerc 41:687-708)."""
    session = session_with(squat(1, "40", 10))
    live = under_way(session, session.plan.exercises[0], GYM, None, held=False)
    assert all(s.load is not None and s.load.kg <= 44 for s in live.sets[1:])


def test_the_next_session_knows_what_was_done() -> None:
    """The load of next time lies about what was lifted, with warm-up steps that rise to it."""
    session = session_with(squat(1, "60", 5, 1), squat(2, "50", 9), squat(3, "50", 9))
    state = strength_after(session, session.plan.exercises[0], None, None)
    plan = plan_session(
        sample_programme().workouts[0], GYM, strengths={"Back squat": state}, held={}, day=date(2027, 1, 18)
    )
    top = plan.exercises[0].sets[0].load
    assert top is not None
    assert 55 <= top.kg <= 66
    steps = [step.load.kg for step in plan.exercises[0].warmup]
    assert steps == sorted(steps)
    assert all(kg < top.kg for kg in steps)


def test_a_held_exercise_is_not_raised() -> None:
    """However easy it was."""
    session = session_with(squat(1, "60", 6, 4), squat(2, "50", 10, 4), squat(3, "50", 10, 4))
    state = strength_after(session, session.plan.exercises[0], None, None)
    workout = sample_programme().workouts[0]
    held = plan_session(workout, GYM, strengths={"Back squat": state}, held={"Back squat": DAY}, day=date(2027, 1, 18))
    load = held.exercises[0].sets[0].load
    assert load is not None
    assert load.kg <= 60
