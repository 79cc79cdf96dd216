"""What a session's exercises are listened for by: the coach's names, the catalogue's where they stay clear."""

import json
from datetime import date

from hypothesis import given
from hypothesis import strategies as st

from bot.cli.read import answer
from bot.notation.names import read_names, session_index
from bot.training.assemble import plan_session
from bot.training.catalogue import aliases_of, catalogue
from bot.training.catalogue_exercise import name_key
from bot.training.catalogue_session import with_known_aliases
from bot.training.people import Gym, Workout
from bot.training.plan import PlannedExercise, PlannedSet, RepRange
from bot.training.samples import sample_programme
from bot.training.units import Unit
from tests.notation.judging import rows_of, stored


def planned(name: str, *aliases: str) -> PlannedExercise:
    """An exercise as a coach writes it."""
    return PlannedExercise(name, (PlannedSet(RepRange(8, 10)),), aliases=aliases)


def aliases(*exercises: PlannedExercise) -> list[tuple[str, ...]]:
    """The aliases in the session of these."""
    return [e.aliases for e in with_known_aliases(exercises)]


def heard(text: str, *exercises: PlannedExercise) -> list[str]:
    """Whom the words of a message name, with the session's aliases."""
    session = with_known_aliases(exercises)
    return [session[n].name for hit in read_names(text.split(), session_index(session)) for n in hit.exercises]


def test_a_planned_session_carries_them() -> None:
    """The session of a day is listened for by the catalogue's names too; the coach's come first."""
    plan = plan_session(
        Workout("A", (planned("Lying triceps extension", "skulls"),)),
        Gym.usual(Unit.KG),
        strengths={},
        held={},
        day=date(2027, 1, 11),
    )
    assert plan.exercises[0].aliases == ("skulls", "skull crusher")


def test_a_coachs_name_is_an_alias_itself() -> None:
    """Who plans skull crushers is heard as lying triceps extension too."""
    assert aliases(planned("Skull crusher")) == [("Lying triceps extension",)]


def test_what_two_go_by_is_dropped() -> None:
    """A name of another exercise of the session, or its alias by the coach, stays the other's alone."""
    assert "squat" in aliases(planned("Back squat"))[0]
    assert "squat" not in aliases(planned("Back squat"), planned("Leg press", "squat"))[0]
    one, two = aliases(planned("Back squat"), planned("back squats"))
    assert not {name_key(a) for a in one} & {name_key(a) for a in two}


def test_a_shortening_of_the_others_name_is_dropped() -> None:
    """`squat` beside a front squat is asked about, as it was."""
    assert "squat" not in aliases(planned("Back squat"), planned("Front squat"))[0]
    assert heard("squat", planned("Back squat"), planned("Front squat")) == ["Back squat", "Front squat"]
    assert heard("squat", planned("Back squat"), planned("Plank")) == ["Back squat"]


def test_a_name_of_an_exercise_that_is_not_there_is_not_stolen() -> None:
    """Pull-ups said where chin-ups are planned are not chin-ups."""
    assert heard("pullups", planned("Chin-up"), planned("Plank")) == []


def test_equipment_alone_names_nothing() -> None:
    """The dumbbells in `25 kg dbs` are no hammer curl."""
    assert heard("dbs", planned("Hammer curl"), planned("Machine row")) == []


NAMES = st.sampled_from([n for e in catalogue().exercises for n in (e.name, *e.aliases)])


@given(st.lists(st.builds(planned, NAMES), min_size=1, max_size=8, unique_by=lambda e: name_key(e.name)))
def test_no_two_share_an_alias(exercises: list[PlannedExercise]) -> None:
    """Whatever the session, an added alias belongs to one exercise only, the coach's words stay, the order too."""
    session = with_known_aliases(exercises)
    assert [e.name for e in session] == [e.name for e in exercises]
    for place, exercise in enumerate(session):
        others = {name_key(a) for n, e in enumerate(session) if n != place for a in (e.name, *e.aliases)}
        assert not others & {name_key(a) for a in exercise.aliases}
        assert set(exercise.aliases) <= set(aliases_of(exercise.name))


def test_names_are_understood_as_before() -> None:
    """Whatever named one exercise of the sample before names the same one with the catalogue's aliases."""
    for workout in sample_programme().workouts:
        before = session_index(workout.exercises)
        after = session_index(with_known_aliases(workout.exercises))
        for exercise in workout.exercises:
            for name in (exercise.name, *exercise.aliases):
                words = name.lower().replace("-", " ").split()
                assert read_names(words, after) == read_names(words, before)


def test_messages_are_read_as_before() -> None:
    """The shared sample of labelled messages stores and asks the same with the catalogue's aliases as without."""
    for row in rows_of("shared"):
        request = row["request"]
        session = with_known_aliases([planned(e["name"], *(e.get("aliases") or ())) for e in request["exercises"]])
        named = [{**e, "aliases": list(p.aliases)} for e, p in zip(request["exercises"], session, strict=True)]
        before, after = answer(json.dumps(request)), answer(json.dumps({**request, "exercises": named}))
        assert stored(after) == stored(before), request["text"]
        assert (after["ask"] is None) == (before["ask"] is None), request["text"]
        assert (after["skipped"], after["pain"]) == (before["skipped"], before["pain"]), request["text"]
