"""What comes next: styles at their published boundaries, bounds, drops, finding a load, and what never happens."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.explain import explain
from bot.training.exposure import LiftedSet
from bot.training.lifter import Level
from bot.training.loads import Loadable
from bot.training.plan import Drop, LoadRule, LoadStyle, Measure, Mini, PlannedExercise, PlannedSet, Region, RepRange
from bot.training.progress import NextLoads, next_loads
from bot.training.reason import Why
from bot.training.report import Stage
from bot.training.rules import bridge
from bot.training.state import Estimate, State
from bot.training.strength import after_session, begin
from bot.training.units import Load, Unit

DAY = date(2026, 1, 5)
FINE = Loadable.steps(20, 200, "2.5", Unit.KG)
DUMBBELLS = Loadable.steps("2.5", 40, "2.5", Unit.KG)


def exercise(
    low: int = 8, high: int = 10, sets: int = 3, rule: LoadRule = LoadRule.TRACKED, rir: str | None = "2"
) -> PlannedExercise:
    """An upper-body exercise with sets alike."""
    one = PlannedSet(RepRange(low, high), None if rir is None else Decimal(rir), rest_s=150)
    return PlannedExercise("Press", (one,) * sets, region=Region.UPPER, load_rule=rule)


def history(plan: PlannedExercise, *sessions: Sequence[LiftedSet], level: Level = Level.INTERMEDIATE) -> State:
    """The state after sessions three days apart."""
    state = begin(level=level, region=plan.region, load_style=plan.load_style)
    for n, sets in enumerate(sessions):
        state = after_session(state, day=DAY + timedelta(days=3 * n), sets=sets, prescribed=plan.sets)
    return state


def kilos(answer: NextLoads) -> list[float | None]:
    """The loads of the sets that remain, in kg."""
    return [None if s.load is None else float(s.load.kg) for s in answer.sets]


def ask(state: State, plan: PlannedExercise, ladder: Loadable = FINE, **more: object) -> NextLoads:
    """The next session, three days on."""
    day = (state.day or DAY) + timedelta(days=3)
    return next_loads(state, plan, ladder, today=day, **more)  # type: ignore[arg-type]  # passed on as they came


def alike(kg: float, *reps: int, rir: float | None = 2.0) -> tuple[LiftedSet, ...]:
    """Sets at one load."""
    return tuple(LiftedSet(kg, n, rir) for n in reps)


# Fixed step: the 2-for-2 rule (Baechle & Earle, Essentials of Strength Training and Conditioning): two repetitions
# above the goal in the last set, in two sessions running.


@pytest.mark.parametrize(
    ("last_sets", "up"),
    [((10, 10), True), ((10, 9), False), ((10, 9, 10), False), ((11, 10), True), ((10,), False), ((9, 10, 10), True)],
)
def test_two_for_two(last_sets: tuple[int, ...], up: bool) -> None:
    """Goal 8: 10, 10 goes up; 10, 9 and 10, 9, 10 hold; 11, 10 goes up."""
    plan = exercise(8, 8, rule=LoadRule.FIXED, rir=None)
    state = history(plan, *(alike(60, 8, 8, n, rir=None) for n in last_sets))
    answer = ask(state, plan)
    assert kilos(answer) == [62.5 if up else 60.0] * 3
    assert answer.reason.why is (Why.UP if up else Why.SAME)


def test_two_for_two_counts_at_one_load_only() -> None:
    """After the step the count begins anew."""
    plan = exercise(8, 8, rule=LoadRule.FIXED, rir=None)
    state = history(plan, alike(57.5, 8, 8, 10, rir=None), alike(60, 8, 8, 10, rir=None))
    assert kilos(ask(state, plan)) == [60.0] * 3


def test_two_for_two_counts_what_was_left_beyond_the_target() -> None:
    """Who stops at the top of the range with two more left than asked for could have made two more."""
    plan = exercise(8, 10, rule=LoadRule.FIXED)
    assert kilos(ask(history(plan, *[alike(60, 10, 10, 10, rir=4.0)] * 2), plan)) == [62.5] * 3
    assert kilos(ask(history(plan, *[alike(60, 10, 10, 10, rir=3.0)] * 2), plan)) == [60.0] * 3


# Double progression: all sets at the top of the range, then one load up.


@pytest.mark.parametrize(
    ("reps", "load", "why"),
    [
        ((12, 12, 12), 62.5, Why.UP),
        ((12, 12, 11), 60.0, Why.SAME),
        ((12, 12), 60.0, Why.SAME),
        ((8, 8, 7), 60.0, Why.SAME),
    ],
)
def test_double_progression(reps: tuple[int, ...], load: float, why: Why) -> None:
    """Every prescribed set must reach the top."""
    plan = exercise(8, 12, rule=LoadRule.DOUBLE)
    answer = ask(history(plan, alike(60, *reps)), plan)
    assert kilos(answer) == [load] * 3
    assert answer.reason.why is why


def test_double_progression_goes_down_after_two_short_sessions() -> None:
    """Below the range twice running at one load: one load down (common practice, no source)."""
    plan = exercise(8, 12, rule=LoadRule.DOUBLE)
    assert kilos(ask(history(plan, *[alike(60, 8, 7, 6)] * 2), plan)) == [57.5] * 3


@pytest.mark.parametrize(
    ("jump", "low", "top"),
    [
        (0.025, 5, 5.9),
        (0.05, 8, 9.9),
        (0.10, 8, 11.8),
        (0.15, 6, 11.4),
        (0.20, 10, 18.0),
        (0.25, 10, 20.0),
        (0.25, 12, 22.5),
    ],
)
def test_the_top_that_bridges_a_jump(jump: float, low: int, top: float) -> None:
    """The smallest top from which a jump leaves the bottom of the range, by Epley's equation (worked by hand to a
    tenth; Epley B 1985, Poundage chart): whole repetitions are the next above."""
    assert top - 0.06 <= bridge(low, jump) < top + 1.001


def test_dumbbells_too_far_apart_take_repetitions_first() -> None:
    """10 to 12.5 kg is 25 %: from a bottom of 8 that takes 18 repetitions, so the load stays and the top of the range
    moves up, in words too."""
    plan = exercise(8, 12, rule=LoadRule.DOUBLE)
    answer = ask(history(plan, alike(10, 12, 12, 12)), plan, DUMBBELLS)
    assert kilos(answer) == [10.0] * 3
    assert answer.sets[0].reps == RepRange(8, 18)
    assert answer.reason.why is Why.REPS_FIRST
    assert answer.reason.high == 18


def test_dumbbells_go_up_once_repetitions_bridge_the_step() -> None:
    """With 18 made in every set the step is taken."""
    plan = exercise(8, 12, rule=LoadRule.DOUBLE)
    assert kilos(ask(history(plan, alike(10, 18, 18, 18)), plan, DUMBBELLS)) == [12.5] * 3


def test_tracked_takes_repetitions_first_too() -> None:
    """The tracked style stays at a dumbbell that is too easy while the next is beyond the bound, and says so."""
    plan = exercise(8, 12)
    answer = ask(history(plan, *[alike(10, 12, 12, 12, rir=4.0)] * 3), plan, DUMBBELLS)
    assert kilos(answer) == [10.0] * 3
    assert answer.reason.why is Why.REPS_FIRST
    assert answer.sets[0].reps.high > 12


# Percent of the top set, held.


def test_percent_of_the_top_set_just_done() -> None:
    """Planned at 100 and 90 %, the back-off follows what was really done on top."""
    one = PlannedSet(RepRange(4, 6), Decimal(1), Load.of(100, Unit.KG), 180)
    plan = PlannedExercise(
        "Squat",
        (one, PlannedSet(RepRange(8, 10), Decimal(2), Load.of(90, Unit.KG), 180)),
        region=Region.LOWER,
        load_rule=LoadRule.PERCENT,
    )
    state = history(plan, (LiftedSet(100, 5, 1.0), LiftedSet(90, 8, 2.0)))
    answer = ask(state, plan, done=(LiftedSet(105, 5, 1.0),))
    assert kilos(answer) == [95.0]
    assert (answer.reason.why, answer.reason.share) == (Why.TOP_SHARE, 90)


def test_percent_without_planned_loads_is_epleys() -> None:
    """5 with 1 left against 9 with 2 left: (1 + 6/30) / (1 + 11/30) = 88 % by Epley; of 100 kg, 87.5 on this bar."""
    plan = PlannedExercise(
        "Squat",
        (PlannedSet(RepRange(5, 5), Decimal(1)), PlannedSet(RepRange(8, 10), Decimal(2))),
        region=Region.LOWER,
        load_rule=LoadRule.PERCENT,
    )
    state = history(plan, (LiftedSet(100, 5, 1.0), LiftedSet(87.5, 9, 2.0)))
    assert kilos(ask(state, plan, done=(LiftedSet(100, 5, 1.0),))) == [87.5]


def test_held_stays_where_the_coach_set_it() -> None:
    """Whatever was lifted, the planned load; without one, the last."""
    plan = exercise(rule=LoadRule.HELD)
    state = history(plan, alike(60, 10, 10, 10, rir=5.0))
    assert kilos(ask(state, plan)) == [60.0] * 3
    planned = replace(plan, sets=tuple(replace(s, load=Load.of(50, Unit.KG)) for s in plan.sets))
    assert kilos(ask(state, planned)) == [50.0] * 3
    assert kilos(ask(state, plan, coach_load=Load.of("52.5", Unit.KG))) == [52.5] * 3


# The tracked choice.


def test_easy_goes_up_and_hard_goes_down() -> None:
    """Plenty left goes up, failing comes down, as asked for stays."""
    plan = exercise()
    assert (kilos(ask(history(plan, *[alike(60, 10, 10, 10, rir=5.0)] * 2), plan))[0] or 0) > 60
    assert (kilos(ask(history(plan, *[alike(60, 7, 6, 5, rir=0.0)] * 2), plan))[0] or 99) < 60
    assert kilos(ask(history(plan, *[alike(60, 9, 9, 9)] * 3), plan))[0] == 60


def test_never_more_than_the_bound_a_step() -> None:
    """However easy, at most 10 %, or what the coach set."""
    plan = exercise()
    state = history(plan, *[alike(60, 10, 10, 10, rir=8.0)] * 3)
    assert kilos(ask(state, plan)) == [65.0] * 3
    assert max(kilo or 0 for kilo in kilos(ask(state, plan, bound=Decimal("0.05")))) <= 63


@pytest.mark.parametrize("rule", LoadRule)
@pytest.mark.parametrize("why", [Why.HELD, Why.PAIN])
def test_never_up_on_a_held_or_painful_exercise(rule: LoadRule, why: Why) -> None:
    """In every style, and said so."""
    plan = exercise(8, 8, rule=rule)
    state = history(plan, *[alike(60, 10, 10, 10, rir=6.0)] * 3)
    answer = ask(state, plan, hold=why is Why.HELD, pain=4 if why is Why.PAIN else None)
    assert max(kilo or 0 for kilo in kilos(answer)) <= 60
    assert answer.reason.why in (why, Why.TOP_SHARE)


def test_pain_of_last_time_still_counts() -> None:
    """Pain said in the last session keeps the load from rising in the next."""
    plan = exercise()
    state = history(plan, *[alike(60, 10, 10, 10, rir=6.0)] * 2)
    hurt = after_session(
        state, day=DAY + timedelta(days=9), sets=alike(60, 10, 10, 10, rir=6.0), prescribed=plan.sets, pain=3
    )
    assert max(kilo or 0 for kilo in kilos(ask(hurt, plan))) <= 60
    assert ask(hurt, plan).reason.why is Why.PAIN


def test_the_back_off_follows_the_top_set_just_done() -> None:
    """A good top set today makes today's lighter set heavier, a bad one lighter."""
    plan = PlannedExercise(
        "Squat",
        (PlannedSet(RepRange(4, 6), Decimal(1), rest_s=180), PlannedSet(RepRange(8, 10), Decimal(2), rest_s=180)),
        region=Region.LOWER,
    )
    state = history(plan, *[(LiftedSet(100, 5, 1.0), LiftedSet(85, 9, 2.0))] * 5)
    good = kilos(ask(state, plan, done=(LiftedSet(100, 6, 4.0),)))
    bad = kilos(ask(state, plan, done=(LiftedSet(100, 3, 0.0),)))
    assert (bad[0] or 0) < 85 < (good[0] or 0)


def test_an_odd_report_is_named_and_left_out() -> None:
    """After 600 for 60 the next load is the old one, and the reason says that something was left out."""
    plan = exercise()
    state = history(plan, *[alike(60, 9, 9, 9)] * 4, alike(600, 9))
    answer = ask(state, plan)
    assert kilos(answer)[0] == 60
    assert answer.reason.why is Why.ASIDE


def test_weeks_off_start_lower() -> None:
    """After six weeks the load comes down, and the reason says after how many."""
    plan = exercise()
    state = history(plan, *[alike(60, 9, 9, 9)] * 4)
    half = Loadable.steps(20, 200, "0.5", Unit.KG)
    answer = next_loads(state, plan, half, today=(state.day or DAY) + timedelta(days=42))
    assert (kilos(answer)[0] or 99) < (kilos(ask(state, plan, half))[0] or 0)
    assert (answer.reason.why, answer.reason.weeks) == (Why.BACK, 6)


# Finding a load.


def test_nothing_known_asks_to_find() -> None:
    """Load null, find true."""
    answer = next_loads(begin(), exercise(), FINE, today=DAY)
    assert kilos(answer) == [None] * 3
    assert (answer.find, answer.e1rm, answer.reason.why) == (True, None, Why.FIND)


def test_two_or_three_rising_sets_find_it() -> None:
    """A lifter who can do 80 kg 11 times (1RM 109 by Epley) begins at 45 kg and is near it at the third set."""
    plan = exercise()
    done: list[LiftedSet] = [LiftedSet(45.0, 10, 10.0)]
    for _ in range(2):
        kilo = kilos(next_loads(begin(region=Region.UPPER), plan, FINE, today=DAY, done=done))[0]
        assert kilo is not None
        assert kilo > (done[-1].load_kg or 0)
        left = 30 * (109 / kilo - 1) - 10
        done.append(LiftedSet(kilo, 10, max(0.0, min(10.0, round(2 * left) / 2))))
    assert 72.5 <= (done[-1].load_kg or 0) <= 82.5
    state = after_session(begin(region=Region.UPPER), day=DAY, sets=done, prescribed=plan.sets)
    assert 75 <= (kilos(ask(state, plan))[0] or 0) <= 82.5


def test_the_coachs_planned_load_begins() -> None:
    """Where the coach planned a load there is nothing to find; it is taken at most as planned."""
    plan = exercise()
    planned = replace(plan, sets=tuple(replace(s, load=Load.of(51, Unit.KG)) for s in plan.sets))
    answer = next_loads(begin(), planned, FINE, today=DAY)
    assert (kilos(answer), answer.find, answer.reason.why) == ([50.0] * 3, False, Why.PLANNED)


def test_a_similar_lift_says_where_to_look() -> None:
    """The load is still to be found, from a cautious start."""
    answer = next_loads(begin(like=Estimate(100, 15)), exercise(), FINE, today=DAY)
    assert answer.find
    assert answer.reason.why is Why.FIND_NEAR
    assert answer.reason.next is not None
    assert 50 <= answer.reason.next.kg <= 62


# Continuations, other measures.


def test_drops_and_minis() -> None:
    """A drop's loads come from its percent, a mini's is the set's own; of the set just done they are still to come."""
    finish = (Drop(2, (20, 20)), Mini(4, (3, 5)))
    plan = replace(exercise(sets=2), sets=tuple(replace(exercise().sets[0], finish=f) for f in finish))
    answer = ask(history(plan, *[alike(50, 9, 9)] * 3), plan, Loadable.steps(10, 100, 2, Unit.KG))
    assert [(f.set, [float(load.kg) for load in f.loads]) for f in answer.finish] == [(1, [40.0, 32.0]), (2, [50.0])]
    under_way = ask(history(plan, *[alike(50, 9, 9)] * 3), plan, Loadable.steps(10, 100, 2, Unit.KG), done=alike(50, 9))
    assert [f.set for f in under_way.finish] == [1, 2]
    over = ask(
        history(plan, *[alike(50, 9, 9)] * 3),
        plan,
        FINE,
        done=(LiftedSet(50, 9, 2.0), LiftedSet(40, 8, 0.0, Stage.DROP)),
    )
    assert [f.set for f in over.finish] == [2]


def test_nothing_to_load() -> None:
    """Timed and unloaded work has no load, no estimate and nothing to find."""
    plan = replace(exercise(30, 60), load_style=LoadStyle.NONE, measure=Measure.SECONDS)
    answer = next_loads(begin(load_style=LoadStyle.NONE), plan, Loadable((), Unit.KG), today=DAY)
    assert (kilos(answer), answer.find, answer.e1rm, answer.reason.why) == ([None] * 3, False, None, Why.NO_LOAD)


def test_carries_are_progressed_by_their_range() -> None:
    """A loaded carry in metres has no 1RM: double progression, whatever the style."""
    plan = replace(exercise(30, 40), measure=Measure.METRES)
    answer = ask(history(plan, alike(40, 40, 40, 40)), plan)
    assert (kilos(answer), answer.e1rm) == ([42.5] * 3, None)


def test_all_sets_done() -> None:
    """Nothing remains, and it says so."""
    plan = exercise()
    answer = ask(history(plan, alike(60, 9, 9, 9)), plan, done=alike(60, 9, 9, 9))
    assert (answer.sets, answer.reason.why) == ((), Why.DONE)


def test_the_whole_for_the_coach() -> None:
    """The band holds the estimate, the chances of a load add up, and the chosen load is among its neighbours."""
    plan = exercise()
    state = history(plan, *[alike(60, 9, 9, 9)] * 3)
    day = DAY + timedelta(days=9)
    answer = next_loads(state, plan, FINE, today=day)
    whole = explain(state, plan, FINE, answer, today=day)
    assert whole.estimate is not None
    assert (whole.least_kg or 0) < whole.estimate.mean_kg < (whole.most_kg or 0)
    assert answer.sets[0].load in [w.load for w in whole.rows]
    for row in whole.rows:
        assert row.chances.lands + row.chances.over + row.chances.easy == pytest.approx(1.0)
    overs = [w.chances.over for w in whole.rows]
    assert overs == sorted(overs)


# Properties.

SETS = st.lists(
    st.builds(
        LiftedSet,
        load_kg=st.one_of(st.none(), st.floats(-50, 400, allow_nan=False)),
        reps=st.integers(0, 500),
        rir=st.one_of(st.none(), st.sampled_from([n / 2 for n in range(21)])),
        stage=st.sampled_from(Stage),
        set=st.one_of(st.none(), st.integers(1, 6)),
    ),
    max_size=5,
)


@settings(deadline=None, max_examples=120)
@given(
    sessions=st.lists(SETS, max_size=4),
    done=SETS,
    ladder=st.lists(st.decimals(-50, 300, places=2), max_size=12),
    rule=st.sampled_from(LoadRule),
    style=st.sampled_from(LoadStyle),
    measure=st.sampled_from(Measure),
    span=st.tuples(st.integers(0, 30), st.integers(0, 20)),
    rir=st.one_of(st.none(), st.sampled_from([Decimal(n) / 2 for n in range(21)])),
    unit=st.sampled_from(Unit),
)
def test_whatever_comes_every_load_can_be_made(
    *,
    sessions: list[list[LiftedSet]],
    done: list[LiftedSet],
    ladder: list[Decimal],
    rule: LoadRule,
    style: LoadStyle,
    measure: Measure,
    span: tuple[int, int],
    rir: Decimal | None,
    unit: Unit,
) -> None:
    """No history raises; every load, warm-up and drop is one that the equipment makes."""
    one = PlannedSet(RepRange(span[0], span[0] + span[1]), rir, finish=Drop(2, (20, 30)))
    plan = PlannedExercise("Any", (one,) * 3, load_rule=rule, load_style=style, measure=measure)
    loadable = Loadable.of(ladder, unit)
    state = history(plan, *sessions)
    answer = ask(state, plan, loadable, done=tuple(done))
    every = [s.load for s in answer.sets] + [load for f in answer.finish for load in f.loads]
    every += [step.load for step in answer.warmup]
    assert all(load in loadable for load in every if load is not None)
    assert len(answer.sets) <= 3
    assert dict(answer.reason.args) is not None
    if answer.e1rm is not None:
        assert answer.e1rm.sd_kg > 0


@settings(deadline=None, max_examples=80)
@given(
    st.lists(st.tuples(st.integers(7, 12), st.sampled_from([0.0, 1.0, 3.0, 8.0])), min_size=1, max_size=6),
    st.floats(0.02, 0.2),
    st.booleans(),
)
def test_the_bound_holds_whatever_was_done(rows: list[tuple[int, float]], bound: float, held: bool) -> None:
    """At most the bound above the last load, and nothing above it where it is held."""
    plan = exercise()
    state = history(plan, *[alike(60, reps, reps, rir=rir) for reps, rir in rows])
    answer = ask(state, plan, bound=Decimal(repr(bound)), hold=held)
    assert all(
        kilo is not None and kilo <= 60 * (1 if held else 1 + max(bound, 2.5 / 60)) + 1e-6 for kilo in kilos(answer)
    )
