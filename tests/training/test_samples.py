"""The sample programme keeps its own promises."""

from datetime import date

from bot.training.assemble import plan_session
from bot.training.gym import loadable
from bot.training.people import Gym
from bot.training.plan import LoadStyle
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes
from bot.training.units import Unit
from bot.training.volume import planned_sets


def test_every_exercise_can_be_loaded_in_an_ordinary_gym() -> None:
    """Its equipment is known, names are unique, muscles are named, pairs are pairs."""
    sample = sample_programme()
    for workout in sample.workouts:
        names = [e.name for e in workout.exercises]
        assert len(set(names)) == len(names)
        for exercise in workout.exercises:
            assert exercise.muscles
            for unit in Unit:
                assert loadable(Gym.usual(unit), exercise.equipment) or exercise.load_style is LoadStyle.NONE
        pairs = [e.pair for e in workout.exercises if e.pair]
        assert all(pairs.count(p) == 2 for p in pairs)


def test_it_is_short_and_works_the_whole_body() -> None:
    """Under 45 minutes, and over two workouts each large muscle gets at least four sets, the least that is advised
    (Iversen et al. 2021, Sports Med 51:2079-2095: four weekly sets per muscle, one leg press, one pull, one push)."""
    sample = sample_programme()
    assert all(session_minutes(w.exercises) <= 45 for w in sample.workouts)
    weekly = planned_sets(e for w in sample.workouts for e in w.exercises)
    for muscle in ("quadriceps", "glutes", "hamstrings", "back"):
        assert weekly[muscle] >= 4


def test_a_session_planned_from_nothing_asks_for_loads_to_be_found() -> None:
    """No load is made up where nothing is known."""
    plan = plan_session(
        sample_programme().workouts[0], Gym.usual(Unit.KG), strengths={}, held={}, day=date(2027, 1, 11)
    )
    assert all(s.load is None for e in plan.exercises for s in e.sets)
    assert plan.set_count == 11
