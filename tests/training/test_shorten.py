"""Less time today: never over the minutes, in the coach's order, and never worse than the best cut there is."""

from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.antagonists import are_opposite, paired_rests
from bot.training.pace import Pace, Trait
from bot.training.plan import Drop, Mini, PlannedExercise, PlannedSet, RepRange
from bot.training.replanned import Trade, Trading
from bot.training.samples import sample_programme
from bot.training.session import Session
from bot.training.set_time import set_seconds
from bot.training.shorten import shorten
from bot.training.shorten_values import Allowed, Shortened, finish_for, what_remains
from bot.training.timing import session_time
from bot.training.volume import planned_sets
from tests.training.shorten_worlds import as_session, best_by_hand, done, key_of, session_of

ALL, NOTHING = Allowed(), Allowed(pairs=False, finishes=False)
SQUAT, BENCH, ROW, CURL, PLANK, PUSHDOWN = sample_programme().workouts[0].exercises


def cut(session: Session, minutes: float, allowed: Allowed = ALL) -> Shortened:
    """Cut, with time enough for the proof."""
    return shorten(session, Decimal(str(minutes)), allowed=allowed, limit_s=30)


def ahead(session: Session, plan_of: Shortened) -> int:
    """The seconds of what the new plan leaves to do, reckoned from the plan itself."""
    remaining = what_remains(replace(session, plan=plan_of.plan))
    return session_time([r.exercise for r in remaining], begun={p.exercise for p in session.done}).seconds


def names(found: Shortened) -> list[str]:
    """What stays, in order."""
    return [e.name for e in found.plan.exercises]


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10_000), st.integers(1, 4), st.integers(2, 40), st.booleans(), st.sampled_from([ALL, NOTHING]))
def test_as_good_as_trying_everything(seed: int, count: int, minutes: int, begun: bool, allowed: Allowed) -> None:
    """All cuts of a small session that keep to the order are tried out; ours is as good as the best of them."""
    session = session_of(seed, count, most_sets=3, begun=begun)
    found = cut(session, minutes, allowed)
    best = best_by_hand(session, minutes * 60, allowed)
    if best is None:
        assert found.fits is not bool(what_remains(session))
    else:
        assert (found.fits, found.proven) == (True, True)
        assert key_of(session, found.plan) == best


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10_000), st.integers(1, 12), st.integers(1, 70), st.booleans())
def test_never_over_the_minutes(seed: int, count: int, minutes: int, begun: bool) -> None:
    """What remains takes what it says, and that is within the minutes; else one first set stays, and it says so."""
    session = session_of(seed, count, begun=begun)
    found = cut(session, minutes)
    assert ahead(session, found) == found.seconds
    if found.fits:
        assert found.seconds <= minutes * 60
    else:
        assert found.seconds > minutes * 60
        assert [len(r.exercise.sets) for r in what_remains(replace(session, plan=found.plan))] == [1]


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10_000), st.integers(2, 12), st.integers(5, 60))
def test_no_set_of_more_weight_is_lost_while_one_of_less_stays(seed: int, count: int, minutes: int) -> None:
    """Of two priorities, the lower one gives all its sets before the higher one gives any."""
    session = session_of(seed, count)
    found = cut(session, minutes)
    lost = {t.exercises[0] for t in found.trades if t.kind not in (Trading.PAIRED, Trading.TURNED)}
    top = min(e.priority for e in session.plan.exercises)
    for name in lost:
        priority = session.plan.exercise(name).priority
        if priority in (1, top):
            assert all(e.priority <= priority for e in found.plan.exercises)


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10_000), st.integers(1, 10), st.integers(4, 50), st.integers(1, 20))
def test_more_minutes_never_keep_less(seed: int, count: int, minutes: int, more: int) -> None:
    """In the order of the coach, and by priority: what is kept of 1, of 2 and of 3 grows with the minutes."""
    session = session_of(seed, count)
    less, longer = cut(session, minutes), cut(session, minutes + more)
    if less.fits:
        assert longer.fits
        assert key_of(session, longer.plan) <= key_of(session, less.plan)
        top = min(e.priority for e in session.plan.exercises)
        for priority in {2, 3} - {top}:
            kept = [sum(len(e.sets) for e in f.plan.exercises if e.priority == priority) for f in (less, longer)]
            turned = [sum(t.sets for t in f.trades if t.kind is Trading.TURNED) for f in (less, longer)]
            assert kept[1] + turned[1] >= kept[0]


def test_enough_time_changes_nothing() -> None:
    """The plan stays as it is, to the set."""
    session = as_session(sample_programme().workouts[0].exercises)
    found = cut(session, 60)
    assert (found.plan, found.trades, found.given_up) == (session.plan, (), {})
    assert found.minutes == session.plan.minutes


def test_the_order_of_a_coach() -> None:
    """The sample's first workout in less and less time: pushdown, plank, leg curl, and the heavy squat set last."""
    session = as_session(sample_programme().workouts[0].exercises)
    assert names(cut(session, 28))[-1] == "Plank"
    assert cut(session, 28).trades == (Trade(Trading.OPTIONAL, ("Cable pushdown",), 2),)
    assert Trading.LOWER not in {t.kind for t in cut(session, 26).trades}
    assert names(cut(session, 20)) == ["Back squat", "Dumbbell bench press", "Seated cable row"]
    assert names(cut(session, 12))[0] == "Back squat"
    assert not cut(session, 3).fits
    assert names(cut(session, 3)) == ["Back squat"]
    assert cut(session, 3).plan.set_count == 1


def test_a_pair_rests_every_muscle_as_long_as_planned() -> None:
    """Press and row with 120 s of rest: 15 s to change, 30 s of the other's set, 75 s after both make 120 s each."""
    press = PlannedExercise("Press", (PlannedSet(RepRange(10, 10), rest_s=120),) * 3, muscles=("chest",), setup_s=0)
    row = replace(press, name="Row", muscles=("back",))
    assert paired_rests(press, row) == (75, 75, 75)
    session = as_session((press, row))
    minutes = (180 + 6 * 30 + 3 * 15 + 2 * 75) / 60
    found = cut(session, minutes, Allowed(finishes=False))
    assert found.trades == (Trade(Trading.PAIRED, ("Press", "Row"), 0),)
    assert found.given_up == {}
    assert len({e.pair for e in found.plan.exercises}) == 1
    assert found.seconds == minutes * 60
    assert Trading.PAIRED not in {t.kind for t in cut(session, minutes, NOTHING).trades}


@settings(max_examples=80, deadline=None)
@given(st.integers(0, 10_000), st.integers(2, 10), st.integers(4, 40))
def test_rests_stay_within_their_bounds(seed: int, count: int, minutes: int) -> None:
    """In a pair that was made, the time from the end of a set to the next one of the same exercise is never shorter
    than the rest that was planned."""
    session = session_of(seed, count)
    found = cut(session, minutes)
    for trade in found.trades:
        if trade.kind is Trading.PAIRED:
            one, other = (found.plan.exercise(name) for name in trade.exercises)
            was_one, was_other = (session.plan.exercise(name) for name in trade.exercises)
            for n in range(min(len(one.sets), len(other.sets))):
                shared = one.sets[n].rest_s or 0
                if n + 1 < len(one.sets):
                    assert 15 + set_seconds(other, other.sets[n]) + shared >= (was_one.sets[n].rest_s or 0)
                if n + 1 < len(other.sets) and n + 1 < len(one.sets):
                    assert shared + set_seconds(one, one.sets[n + 1]) + 15 >= (was_other.sets[n].rest_s or 0)


@pytest.mark.parametrize(
    ("one", "other", "opposite"),
    [
        (("chest",), ("back",), True),
        (("quadriceps", "glutes"), ("hamstrings",), True),
        (("biceps",), ("triceps",), True),
        (("abdominals",), ("lower back",), True),
        (("chest",), ("triceps",), False),
        (("quadriceps", "glutes"), ("hamstrings", "glutes"), False),
        (("chest",), ("quadriceps",), False),
        (("lats",), ("front_delts",), True),
        ((), ("back",), False),
    ],
)
def test_what_is_opposite(one: tuple[str, ...], other: tuple[str, ...], opposite: bool) -> None:
    """Push and pull, front and back of the thigh, of the arm, of the trunk (common practice, no source)."""
    a, b = PlannedExercise("A", (), muscles=one), PlannedExercise("B", (), muscles=other)
    assert are_opposite(a, b) is are_opposite(b, a) is opposite


def test_heavy_sets_bars_and_who_hurts_are_left_alone() -> None:
    """No drop on a bar or where somebody reported pain; a drop on a machine, mini sets where there is no load."""
    ten = replace(CURL, sets=(PlannedSet(RepRange(10, 12), rest_s=90),) * 2)
    assert finish_for(ten, ALL) == Drop(1, (20, 30))
    assert finish_for(replace(ten, equipment="none"), ALL) == Mini(4, (3, 5))
    assert finish_for(replace(ten, equipment="bar"), ALL) is None
    assert finish_for(ten, Allowed(spared=frozenset({"Leg curl"}))) is None
    assert finish_for(ten, NOTHING) is None
    session = as_session((replace(ten, priority=1),))
    spared = cut(session, 5, Allowed(spared=frozenset({"Leg curl"})))
    assert Trading.TURNED not in {t.kind for t in spared.trades}


def test_a_second_set_becomes_a_drop_of_the_first() -> None:
    """Two sets on a machine, and half a minute short: one set with a drop stays, and a hard set is given up."""
    two = replace(CURL, sets=(PlannedSet(RepRange(10, 12), rest_s=90),) * 2, priority=1)
    session = as_session((two,))
    found = cut(session, (session_time((two,)).seconds - 30) / 60)
    assert found.trades == (Trade(Trading.TURNED, ("Leg curl",), 1),)
    assert [s.finish for s in found.plan.exercises[0].sets] == [Drop(1, (20, 30))]
    assert found.given_up == {"hamstrings": 1}


@given(st.integers(0, 10_000), st.integers(1, 10), st.integers(4, 40))
@settings(max_examples=40, deadline=None)
def test_what_is_given_up_is_what_the_plans_differ_by(seed: int, count: int, minutes: int) -> None:
    """Hard sets by muscle of the old plan, less those of the new one."""
    session = session_of(seed, count)
    found = cut(session, minutes)
    after = planned_sets(found.plan.exercises)
    for muscle, sets in planned_sets(session.plan.exercises).items():
        assert found.given_up.get(muscle, Decimal(0)) == sets - after.get(muscle, Decimal(0))


def test_what_was_done_stays_at_its_numbers() -> None:
    """The squat has two sets behind it: they stay sets 1 and 2 whatever is cut; an exercise given up stays as it is."""
    session = done(as_session(sample_programme().workouts[0].exercises), "Back squat", 1, 2)
    found = cut(session, 12)
    assert found.plan.exercises[0].sets[:2] == SQUAT.sets[:2]
    now = replace(session, plan=found.plan)
    assert [p.set for p in now.work_done("Back squat")] == [1, 2]
    assert session.plan == as_session(sample_programme().workouts[0].exercises).plan
    only = cut(done(as_session((SQUAT,)), "Back squat", 1, 2, 3), 5)
    assert (only.plan.exercises, only.seconds, only.fits) == ((SQUAT,), 0, True)


def test_a_slow_client_gets_less_and_a_fast_one_more() -> None:
    """The same minutes at another pace."""
    session = as_session(sample_programme().workouts[0].exercises)
    slow, fast = (Pace(Trait(mean, 0.1), Trait(mean, 0.1), 3) for mean in (0.3, -0.3))
    kept = [shorten(session, Decimal(26), pace=pace).plan.set_count for pace in (slow, Pace(), fast)]
    assert kept == sorted(kept)
    assert kept[0] < kept[-1]


def test_without_time_to_think_the_answer_is_still_within_the_minutes() -> None:
    """The solver is given no time for a large session: whatever comes is allowed."""
    session = session_of(4, 12)
    found = shorten(session, Decimal(25), limit_s=0.0)
    assert ahead(session, found) == found.seconds
    assert found.seconds <= 25 * 60 or not found.fits
