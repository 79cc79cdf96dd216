"""Another exercise in place of a planned one: what is never suggested, what comes first, and where one begins."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.training.assemble import plan_session
from bot.training.catalogue import Catalogue, catalogue
from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_places import joints_of
from bot.training.catalogue_terms import Equipment, Joint, Muscle, Pattern
from bot.training.equations import EPLEY
from bot.training.gym import loadable
from bot.training.people import Gym, Programme, Workout
from bot.training.plan import (
    Drop,
    LoadRule,
    LoadStyle,
    Measure,
    Mini,
    PlannedExercise,
    PlannedSession,
    PlannedSet,
    RepRange,
    Tempo,
)
from bot.training.reason import Why
from bot.training.samples import sample_programme
from bot.training.strength import LiftedSet, State, after_session, begin, estimate
from bot.training.swap import MOST, Swap, SwapAsked, put_in, swaps
from bot.training.swap_hand import AtHand, equipment_of
from bot.training.swap_start import Start
from bot.training.timing import session_minutes
from bot.training.units import Load, Unit
from bot.training.volume import planned_sets

DAY = date(2027, 1, 11)
GYM = Gym.usual(Unit.KG)
SAMPLE = sample_programme()
PLANNED = {e.name: e for w in SAMPLE.workouts for e in w.exercises}


def without(*words: str, gym: Gym = GYM) -> AtHand:
    """A gym that lacks what the words say."""
    return AtHand(gym, frozenset(e for word in words for e in equipment_of(word)))


def session_of(name: str) -> tuple[PlannedExercise, ...]:
    """The sample's workout that holds this exercise."""
    return next(w.exercises for w in SAMPLE.workouts if any(e.name == name for e in w.exercises))


def asked(name: str, *missing: str, **more: object) -> SwapAsked:
    """A swap of an exercise of the sample."""
    plain = SwapAsked(PLANNED[name], without(*missing), DAY, session_of(name))
    return replace(plain, **more)  # type: ignore[arg-type]  # the fields' own types are checked where they are given


def names(found: Sequence[Swap]) -> list[str]:
    """What is suggested."""
    return [swap.exercise.name for swap in found]


def tracked(planned: PlannedExercise, kg: float, *, reps: int = 8) -> State:
    """The strength of somebody who did two sets of this with two left, a week ago."""
    fresh = begin(region=planned.region, load_style=planned.load_style)
    sets = [LiftedSet(kg, reps, 2.0)] * 2
    return after_session(fresh, day=date(2027, 1, 4), sets=sets, prescribed=planned.sets)


# --- what comes first


@pytest.mark.parametrize(
    ("name", "missing", "first"),
    [
        ("Lat pulldown", ["cable"], "Machine pulldown"),
        ("Seated cable row", ["cable"], "Machine row"),
        ("Cable pushdown", ["cable"], "Lying triceps extension"),
        ("Back squat", ["bar"], "Hack squat"),
        ("Back squat", ["bar", "machine"], "Goblet squat"),
        ("Dumbbell bench press", ["dumbbells"], "Bench press"),
        ("Romanian deadlift", ["bar"], "Dumbbell Romanian deadlift"),
        ("Leg curl", ["machine"], "Dumbbell leg curl"),
        ("Split squat", ["dumbbells"], "Bodyweight split squat"),
        ("Biceps curl", ["dumbbells"], "Barbell curl"),
    ],
)
def test_the_nearest_comes_first(name: str, missing: list[str], first: str) -> None:
    """The same movement and muscles with what there is; which is nearest is common practice, no source."""
    found = swaps(asked(name, *missing))
    assert len(found) == MOST
    assert names(found)[0] == first


def test_the_coachs_own_come_first() -> None:
    """In their order, called as they call them, whatever movement they are; what can't be done here is passed over."""
    found = swaps(asked("Back squat", "cable", preferred=("goblet squats", "Cable squat", "RDL", "nothing known")))
    assert names(found)[:2] == ["Goblet squat", "Romanian deadlift"]
    assert [swap.preferred for swap in found] == [True, True, False]


def test_more_than_three_preferred_are_three() -> None:
    """At most three are offered."""
    wanted = ("Leg press", "Hack squat", "Goblet squat", "Front squat")
    assert names(swaps(asked("Back squat", preferred=wanted))) == list(wanted[:3])


def test_what_the_client_has_done_goes_before_what_they_have_not() -> None:
    """Between exercises as near, the one with a tracked strength."""
    plain = names(swaps(asked("Lat pulldown", "cable", "machine")))
    chin = replace(PLANNED["Lat pulldown"], name="Chin-up", load_style=LoadStyle.BODYWEIGHT, equipment="body")
    known = names(swaps(asked("Lat pulldown", "cable", "machine", strengths={"Chin-up": tracked(chin, 0.0)})))
    assert plain[0] != "Chin-up"
    assert known[0] == "Chin-up"


def test_sore_knees_take_the_work_to_the_hips() -> None:
    """Where no squat spares the knee, what works a squat's muscle without it; never for few repetitions at once."""
    found = swaps(asked("Back squat", spared=frozenset(joints_of("knee"))))
    assert found
    for swap in found:
        assert Joint.KNEE not in swap.exercise.joints
        assert Muscle.GLUTES in swap.exercise.muscles
        assert all(s.reps.low >= 8 for s in swap.planned.sets)


def test_nothing_fits_where_every_one_loads_what_hurts() -> None:
    """No press of the shoulders spares them: nothing is suggested, rather than something else."""
    assert swaps(asked("Dumbbell shoulder press", spared=frozenset(joints_of("shoulder")))) == ()


def test_a_coachs_own_exercise_may_be_suggested_and_replaced() -> None:
    """One that only the coach's catalogue holds."""
    own = Exercise("Tower row", Pattern.HORIZONTAL_PULL, Equipment.CABLE, (Muscle.BACK,), aliases=("tower",))
    both = catalogue().with_own([own])
    found = swaps(asked("Seated cable row", preferred=("tower",)), both)
    assert names(found)[0] == "Tower row"
    assert found[0].planned.aliases == ("tower",)
    planned = replace(PLANNED["Seated cable row"], name="Tower row")
    assert "Tower row" not in names(swaps(SwapAsked(planned, without(), DAY), both))


def test_an_exercise_that_no_catalogue_knows_is_replaced_by_its_muscles() -> None:
    """A row by any name is replaced by a pull, and something without name or muscles by nothing."""
    planned = replace(PLANNED["Seated cable row"], name="The long one")
    assert all("back" in swap.planned.muscles for swap in swaps(SwapAsked(planned, without(), DAY)))
    assert len(swaps(SwapAsked(planned, without(), DAY))) == MOST
    blank = replace(planned, muscles=(), muscles_indirect=())
    assert swaps(SwapAsked(blank, without(), DAY)) == ()


# --- where one begins


def test_a_known_strength_gives_the_load() -> None:
    """The client's own, by the name in their plans: the same load as in an ordinary session."""
    press = replace(PLANNED["Back squat"], name="leg presses")
    state = tracked(press, 120)
    found = swaps(asked("Back squat", preferred=("Leg press",), strengths={"leg presses": state}))[0]
    assert (found.start, found.planned.name, found.like) == (Start.KNOWN, "leg presses", "")
    assert not found.coming.find
    workout = Workout("A", (replace(found.planned, sets=PLANNED["Back squat"].sets),))
    usual = plan_session(workout, GYM, strengths={"leg presses": state}, held={}, day=DAY)
    assert [s.load for s in found.planned.sets] == [s.load for s in usual.exercises[0].sets]
    assert all(s.load is not None for s in found.planned.sets)
    assert found.planned.warmup == usual.exercises[0].warmup


def test_a_lift_like_it_says_where_to_begin() -> None:
    """Dumbbells from the bar: 17 % less in all, so 41.5 % a hand (Saeterbakken et al. 2011, J Sports Sci 29:533-538);
    the first try lies well below what that would allow, by Epley's equation, and no load is put in the plan."""
    bench = replace(PLANNED["Back squat"], name="Bench press", region=PLANNED["Dumbbell bench press"].region)
    state = tracked(bench, 80)
    found = swaps(
        SwapAsked(bench, without(), DAY, preferred=("Dumbbell bench press",), strengths={"Bench press": state})
    )[0]
    there = estimate(state, DAY)
    assert there is not None
    assert (found.start, found.like) == (Start.LIKE, "Bench press")
    assert found.coming.find
    assert found.coming.reason.why is Why.FIND_NEAR
    assert all(s.load is None for s in found.planned.sets)
    near = found.begin_near
    assert near is not None
    top = bench.sets[0]
    fits = EPLEY.load(0.415 * there.mean_kg, top.reps.high + float(top.rir or 0))
    assert 0.5 * fits <= float(near.kg) <= 0.9 * fits
    assert near in loadable(GYM, "dumbbells")


def test_the_replaced_lift_is_asked_before_others_like_it() -> None:
    """What was planned is nearest to what is done instead, whatever else is known."""
    squat, front = PLANNED["Back squat"], replace(PLANNED["Back squat"], name="Front squat")
    strengths = {"Back squat": tracked(squat, 100), "Front squat": tracked(front, 70)}
    found = swaps(asked("Back squat", preferred=("Hack squat",), strengths=strengths))[0]
    assert found.like == "Back squat"
    other = swaps(asked("Back squat", preferred=("Hack squat",), strengths={"Front squat": strengths["Front squat"]}))
    assert other[0].like == "Front squat"


def test_the_guess_goes_into_the_first_session() -> None:
    """The state to keep carries what the lift like it suggests."""
    found = swaps(asked("Back squat", strengths={"Back squat": tracked(PLANNED["Back squat"], 100)}))[0]
    assert found.start is Start.LIKE
    assert found.state.guess is not None
    assert found.state.exposures == 0


def test_a_guess_below_the_lightest_load_is_no_guess() -> None:
    """Who squats 25 kg is not told to begin a front squat at an empty bar that may be too much: they find out."""
    found = swaps(
        asked("Back squat", preferred=("Front squat",), strengths={"Back squat": tracked(PLANNED["Back squat"], 22.5)})
    )[0]
    assert (found.start, found.like, found.begin_near) == (Start.FIND, "", None)


def test_nothing_known_is_to_be_found() -> None:
    """No load is made up."""
    found = swaps(asked("Leg curl"))
    assert {swap.start for swap in found} == {Start.FIND}
    assert all(s.load is None and swap.begin_near is None for swap in found for s in swap.planned.sets)
    assert all(swap.coming.find for swap in found)


def test_the_body_alone_is_begun_with_unless_it_is_much() -> None:
    """A body-weight squat is begun with nothing added; chin-ups, which many can't do, have to be found."""
    squat = swaps(asked("Back squat", "gym"))[0]
    assert (squat.exercise.name, squat.start) == ("Bodyweight squat", Start.BODY)
    assert [s.load for s in squat.planned.sets] == [Load.of(0, Unit.KG)] * 3
    chin = swaps(asked("Lat pulldown", preferred=("Chin-up",)))[0]
    assert (chin.start, chin.planned.sets[0].load) == (Start.FIND, None)


def test_what_hurts_elsewhere_raises_nothing() -> None:
    """A swap to spare a joint never goes above what was lifted last time."""
    press = replace(PLANNED["Back squat"], name="Seated leg press", equipment="stack")
    state = tracked(press, 60, reps=14)
    free = swaps(asked("Back squat", preferred=("Seated leg press",), strengths={"Seated leg press": state}))[0]
    spared = frozenset(joints_of("lower back"))
    held = swaps(
        asked("Back squat", preferred=("Seated leg press",), strengths={"Seated leg press": state}, spared=spared)
    )[0]
    assert max(s.load.kg for s in free.planned.sets if s.load) > 60
    assert max(s.load.kg for s in held.planned.sets if s.load) <= 60


# --- what becomes of the prescription


def test_the_prescription_stays_where_it_makes_sense() -> None:
    """Sets, ranges, effort, rest, drop, pair and priority stay; the old one's cue, note and link go."""
    old = replace(PLANNED["Leg curl"], pair="C", note="as last week", link="https://example.org/x", cue="slow")
    new = swaps(SwapAsked(old, without(), DAY))[0].planned
    assert [(s.reps, s.rir, s.rest_s, s.finish) for s in new.sets] == [
        (s.reps, s.rir, s.rest_s, s.finish) for s in old.sets
    ]
    assert (new.pair, new.priority, new.load_rule) == (old.pair, old.priority, old.load_rule)
    assert (new.cue, new.note, new.link) == ("", "", "")


def test_timed_becomes_counted_by_the_time_it_takes() -> None:
    """A repetition takes three seconds: a plank of 30 to 60 s is 10 to 20 repetitions; back again it is as long."""
    dead_bug = swaps(asked("Plank", preferred=("Dead bug",)))[0].planned
    assert [s.reps for s in dead_bug.sets] == [RepRange(10, 20)]
    assert dead_bug.measure is Measure.REPS
    counted = replace(PLANNED["Biceps curl"], name="Dead bug", muscles=("abdominals",), load_style=LoadStyle.NONE)
    plank = swaps(SwapAsked(counted, without(), DAY, preferred=("Plank",)))[0].planned
    assert [(s.reps, s.rir, s.finish) for s in plank.sets] == [(RepRange(30, 35), None, None)]


def test_a_tempo_tells_how_long_a_repetition_is() -> None:
    """Ten at seven seconds each are no thirty-second hold."""
    slow = PlannedSet(RepRange(5, 6), tempo=Tempo(3, 1, 2, 1))
    old = replace(PLANNED["Plank"], name="Dead bug", measure=Measure.REPS, sets=(slow,))
    plank = swaps(SwapAsked(old, without(), DAY, preferred=("Plank",)))[0].planned
    assert plank.sets == (PlannedSet(RepRange(35, 40)),)


def test_distance_becomes_time_and_time_distance() -> None:
    """A loaded carry is walked at a metre a second."""
    walk = (PlannedSet(RepRange(30, 40)),)
    carry = replace(PLANNED["Plank"], name="Farmer carry", measure=Measure.METRES, sets=walk)
    hold = swaps(SwapAsked(carry, without(), DAY, preferred=("Dumbbell hold",)))[0].planned
    assert (hold.measure, hold.sets[0].reps) == (Measure.SECONDS, RepRange(30, 40))


def test_a_drop_needs_a_load_and_mini_sets_do_not() -> None:
    """On a band there is nothing to cut; short rests go on."""
    sets = (
        PlannedSet(RepRange(10, 12), finish=Drop(1, (20, 40))),
        PlannedSet(RepRange(10, 12), finish=Mini(4, (3, 5))),
    )
    old = replace(PLANNED["Cable pushdown"], sets=sets)
    band = swaps(SwapAsked(old, without(), DAY, preferred=("Band pushdown",)))[0].planned
    assert [s.finish for s in band.sets] == [None, Mini(4, (3, 5))]
    bar = swaps(SwapAsked(old, without(), DAY, preferred=("Lying triceps extension",)))[0].planned
    assert [s.finish for s in bar.sets] == [s.finish for s in sets]


def test_few_repetitions_are_not_carried_to_a_small_movement_or_a_band() -> None:
    """4 to 6 presses are 8 to 10 flies and 10 to 12 of a band; a heavy press stays at 4 to 6."""
    sets = (PlannedSet(RepRange(4, 6), Decimal(1)),)
    old = replace(PLANNED["Dumbbell bench press"], sets=sets)
    wanted = ("Dumbbell fly", "Band chest press", "Bench press")
    found = swaps(SwapAsked(old, without(), DAY, preferred=wanted))
    assert [s.planned.sets[0].reps for s in found] == [RepRange(8, 10), RepRange(10, 12), RepRange(4, 6)]


def test_a_load_that_the_coach_held_is_not_carried_over() -> None:
    """A load of the bar's is none of the dumbbells', and neither is the step; shares of the top set are."""
    loads = (Load.of(100, Unit.KG), Load.of(80, Unit.KG))
    sets = tuple(PlannedSet(RepRange(5, 5), Decimal(2), load) for load in loads)
    old = replace(PLANNED["Back squat"], sets=sets, load_rule=LoadRule.HELD, step=Load.of(5, Unit.KG))
    goblet = swaps(SwapAsked(old, without(), DAY, preferred=("Goblet squat",)))[0].planned
    assert (goblet.load_rule, goblet.step) == (LoadRule.TRACKED, None)
    assert all(s.load is None for s in goblet.sets)
    shares = replace(old, load_rule=LoadRule.PERCENT)
    goblet = swaps(SwapAsked(shares, without(), DAY, preferred=("Goblet squat",)))[0].planned
    assert [s.percent for s in goblet.sets] == [Decimal(100), Decimal(80)]


def test_the_plan_takes_it_in_and_the_week_counts_its_muscles() -> None:
    """In the old one's place, minutes counted again, hard sets by the new one's muscles."""
    plan = plan_session(SAMPLE.workouts[0], GYM, strengths={}, held={}, day=DAY)
    new = swaps(SwapAsked(plan.exercises[0], without("bar", "machine"), DAY, plan.exercises))[0].planned
    after = put_in(plan, "Back squat", new)
    assert [e.name for e in after.exercises[1:]] == [e.name for e in plan.exercises[1:]]
    assert after.exercises[0] == new
    assert after.minutes == session_minutes(after.exercises)
    before, now = planned_sets(plan.exercises), planned_sets(after.exercises)
    assert now["quadriceps"] == before["quadriceps"] == 3
    assert "lower back" in before
    assert "lower back" not in now


def test_sets_done_stay_with_the_old_one() -> None:
    """One of three squats is done: it stays, and two of the new one follow; where all are done, one more follows."""
    plan = plan_session(SAMPLE.workouts[0], GYM, strengths={}, held={}, day=DAY)
    new = swaps(SwapAsked(plan.exercises[0], without("bar"), DAY, plan.exercises))[0].planned
    after = put_in(plan, "Back squat", new, kept_sets=1)
    assert [(e.name, len(e.sets)) for e in after.exercises[:2]] == [("Back squat", 1), (new.name, 2)]
    assert after.exercises[1].sets == new.sets[1:]
    assert len(put_in(plan, "Back squat", new, kept_sets=3).exercises[1].sets) == 1
    with pytest.raises(KeyError):
        put_in(plan, "Front squat", new)


def test_it_is_listened_for_by_its_names_where_they_are_clear() -> None:
    """Beside the others of the session."""
    old = PLANNED["Cable pushdown"]
    new = swaps(SwapAsked(old, without(), DAY, preferred=("Lying triceps extension",)))[0].planned
    assert "skull crusher" in new.aliases
    crusher = replace(old, name="Dumbbell skull crusher")
    new = swaps(SwapAsked(old, without(), DAY, (old, crusher), preferred=("Lying triceps extension",)))[0].planned
    assert "skull crusher" not in new.aliases


@pytest.mark.parametrize(
    ("words", "lost"),
    [
        ("cable", {Equipment.CABLE}),
        ("Cables", {Equipment.CABLE}),
        ("machines", {Equipment.MACHINE, Equipment.PLATE_MACHINE}),
        ("barbell", {Equipment.BAR, Equipment.HEX_BAR}),
        ("dumbbells", {Equipment.DUMBBELLS}),
        ("pull-up bar", {Equipment.HIGH_BAR}),
        ("squat rack", {Equipment.RACK}),
        ("kettlebells", {Equipment.KETTLEBELL}),
        ("benches", set()),
        ("time", set()),
        ("", set()),
    ],
)
def test_words_for_equipment(words: str, lost: set[Equipment]) -> None:
    """Plain nouns; a word that is no equipment means none."""
    assert set(equipment_of(words)) == lost


# --- what always holds

SMALL = Gym(
    Unit.LB,
    Decimal(35),
    Decimal("1.25"),
    (Decimal(5), Decimal(25), Decimal("2.5")),
    (Decimal(15), Decimal(150), Decimal(15)),
    Decimal(200),
)
EVERY = st.sampled_from(catalogue().exercises)
REPS = st.builds(lambda low, more: RepRange(low, low + more), st.integers(1, 60), st.integers(0, 10))
SETS = st.builds(
    PlannedSet,
    REPS,
    st.sampled_from([None, Decimal(0), Decimal("1.5"), Decimal(3)]),
    st.sampled_from([None, Load.of(40, Unit.KG), Load.of(-10, Unit.KG)]),
    st.sampled_from([None, 60, 180]),
    st.sampled_from([None, Drop(2, (20, 30)), Mini(4, (3, 5))]),
)


@st.composite
def planned_exercises(draw: st.DrawFn) -> PlannedExercise:
    """An exercise as it may stand in a plan: of the catalogue, under one of its names, with any prescription."""
    one = draw(EVERY)
    return PlannedExercise(
        draw(st.sampled_from([one.name, *one.aliases])),
        tuple(draw(st.lists(SETS, min_size=1, max_size=4))),
        load_style=one.load_style,
        sides=one.sides,
        measure=one.measure,
        region=one.region,
        muscles=draw(st.sampled_from([(), tuple(m.value for m in one.muscles)])),
        equipment=one.loads,
        load_rule=draw(st.sampled_from(list(LoadRule))),
        load_percent=draw(st.sampled_from([None, Decimal(60)])),
    )


@st.composite
def questions(draw: st.DrawFn) -> SwapAsked:
    """Any swap that might be asked for."""
    session = draw(st.lists(planned_exercises(), min_size=1, max_size=5, unique_by=lambda e: e.name))
    known = draw(st.lists(planned_exercises(), max_size=4, unique_by=lambda e: e.name))
    strengths = {e.name: tracked(e, draw(st.sampled_from([0.0, 12.5, 60.0, 140.0]))) for e in known}
    return SwapAsked(
        session[0],
        AtHand(draw(st.sampled_from([GYM, SMALL])), draw(st.frozensets(st.sampled_from(list(Equipment)), max_size=8))),
        DAY,
        tuple(session),
        draw(st.frozensets(st.sampled_from(list(Joint)), max_size=2)),
        frozenset(e.name for e in draw(st.lists(planned_exercises(), max_size=3))),
        tuple(e.name for e in draw(st.lists(planned_exercises(), max_size=3))),
        strengths,
    )


@settings(max_examples=80, deadline=None)
@given(questions())
def test_what_is_never_suggested(question: SwapAsked) -> None:
    """Nothing that can't be done here, that loads what is spared, that is on hold or in the session; three at most."""
    found = swaps(question)
    assert len(found) <= MOST
    assert len(set(names(found))) == len(found)
    taken = [catalogue().find(e.name) for e in question.session]
    held = [catalogue().find(name) for name in question.on_hold]
    for swap in found:
        one = swap.exercise
        assert not question.at_hand.missing & {one.equipment, *one.also}
        assert not question.spared & one.joints
        assert one not in taken
        assert one not in held
        assert swap.planned.name not in [e.name for e in question.session]


@settings(max_examples=60, deadline=None)
@given(questions())
def test_something_is_suggested_where_there_is_something(question: SwapAsked) -> None:
    """Three of the same movement before any other, as far as there are; none only where there is none."""
    found = swaps(question)
    old = catalogue().find(question.planned.name)
    assert old is not None
    out = {question.planned.name, *question.on_hold, *(e.name for e in question.session)}
    same = [
        one
        for one in catalogue().exercises
        if one.pattern is old.pattern
        and not question.at_hand.missing & {one.equipment, *one.also}
        and not question.spared & one.joints
        and one not in {catalogue().find(name) for name in out}
    ]
    own = [swap for swap in found if not swap.preferred]
    wished = len(found) - len(own)
    assert len(found) >= min(MOST, len(same))
    near = [swap for swap in own if swap.exercise.pattern is old.pattern]
    assert len(near) >= min(MOST - wished, len([s for s in same if s.name not in names(found[:wished])]))
    assert names(own)[: len(near)] == names(near)


@settings(max_examples=80, deadline=None)
@given(questions())
def test_what_is_suggested_can_be_done(question: SwapAsked) -> None:
    """Loads that the gym makes (the body alone is always there), ranges that are ranges, as many sets as before; the
    new one's muscles are counted, and it fits in the plan."""
    plan = PlannedSession("A", question.session, session_minutes(question.session))
    gym = question.at_hand.gym
    for swap in swaps(question):
        new = swap.planned
        ladder = loadable(gym, swap.exercise.loads)
        assert len(new.sets) == len(question.planned.sets)
        for planned in new.sets:
            assert 1 <= planned.reps.low <= planned.reps.high
            assert planned.load is None or planned.load in ladder or planned.load.thousandths == 0
            assert planned.load is None or new.load_style is not LoadStyle.NONE
        assert all(step.load in ladder for step in new.warmup)
        assert swap.begin_near is None or swap.begin_near in ladder
        assert (swap.begin_near is not None) == bool(swap.like) == (swap.start is Start.LIKE)
        assert (new.muscles, new.muscles_indirect) == (swap.exercise.muscles, swap.exercise.muscles_indirect)
        assert all(type(muscle) is str for muscle in (*new.muscles, *new.muscles_indirect))
        after = put_in(plan, question.planned.name, new)
        assert after.set_count == plan.set_count
        sets = planned_sets(after.exercises)
        assert all(sets[muscle] >= len(new.sets) for muscle in new.muscles)


@settings(max_examples=25, deadline=None)
@given(questions(), st.randoms(use_true_random=False))
def test_the_order_of_what_is_known_changes_nothing(question: SwapAsked, chance: object) -> None:
    """The same answer twice, and with session, strengths and catalogue in another order."""
    shuffle = chance.shuffle  # type: ignore[attr-defined]  # a `random.Random`
    strengths, others = list(question.strengths.items()), list(question.session)
    every = list(catalogue().exercises)
    for some in (strengths, others, every):
        shuffle(some)
    other = replace(question, strengths=dict(strengths), session=tuple(others))
    found = swaps(question)
    assert swaps(question) == found
    assert swaps(other) == found
    assert names(swaps(other, Catalogue.of(every))) == names(found)


def test_a_programme_is_not_changed() -> None:
    """A swap is of one session: the programme's own values stay as they were."""
    before = sample_programme()
    swaps(asked("Back squat"))
    assert isinstance(before, Programme)
    assert sample_programme() == before
