"""Which words want another exercise, and which only sound like it: a table of wordings beside the sample programme."""

from datetime import date

import pytest

from bot.dialogue.wishes import Wish, may_wish, read_wish
from bot.training.assemble import plan_session
from bot.training.catalogue_terms import Equipment
from bot.training.people import Gym
from bot.training.plan import PlannedExercise
from bot.training.samples import sample_programme
from bot.training.swap_hand import equipment_of
from bot.training.units import Unit

ROW, PUSHDOWN, SQUAT, BENCH, CURL = (
    "Seated cable row",
    "Cable pushdown",
    "Back squat",
    "Dumbbell bench press",
    "Leg curl",
)
CABLE, RACK, BENCHES = (frozenset(equipment_of(word)) for word in ("cable", "rack", "bench"))
BAR: frozenset[Equipment] = frozenset(equipment_of("barbell"))


def planned() -> tuple[PlannedExercise, ...]:
    """The first workout of the sample, as a session has it."""
    workout = sample_programme().workouts[0]
    return plan_session(workout, Gym.usual(Unit.KG), strengths={}, held=(), day=date(2027, 1, 11)).exercises


MEANT = {
    # what is not there
    "no cable today": Wish((ROW, PUSHDOWN), CABLE),
    "No cables today!": Wish((ROW, PUSHDOWN), CABLE),
    "the rack is taken": Wish((SQUAT,), RACK),
    "rack taken": Wish((SQUAT,), RACK),
    "Squat rack's busy": Wish((SQUAT,), RACK),
    "ugh someone is hogging the squat rack again": Wish((SQUAT,), RACK),
    "somebody's in the rack": Wish((SQUAT,), RACK),
    "cable machine is broken": Wish((ROW, PUSHDOWN), CABLE),
    "the cable isn't working": Wish((ROW, PUSHDOWN), CABLE),
    "the pulley is out of order": Wish((ROW, PUSHDOWN), CABLE),
    "I can't get on the cable machine": Wish((ROW, PUSHDOWN), CABLE),
    "no bench free": Wish((BENCH,), BENCHES),
    "all the benches are taken": Wish((BENCH,), BENCHES),
    "we dont have a barbell here": Wish((SQUAT,), BAR),
    "there's no barbell at my hotel": Wish((SQUAT,), BAR),
    "no sled here": Wish((), frozenset({Equipment.SLED})),
    # what can't be done, or shall be another
    "can't do squats today": Wish((SQUAT,)),
    "Can’t do squats today, sorry": Wish((SQUAT,)),
    "cant squat today": Wish((SQUAT,)),
    "I cannot do the rows": Wish((ROW,)),
    "swap rows": Wish((ROW,)),
    "can I swap rows?": Wish((ROW,)),
    "please replace the leg curl with something else": Wish((CURL,)),
    "swap rows for dumbbell rows": Wish((ROW,), into="Single-arm dumbbell row"),
    "what can I do instead of squats?": Wish((SQUAT,)),
    "something else instead of rows": Wish((ROW,)),
    "is there an alternative to leg curls?": Wish((CURL,)),
    "can you give me another exercise for squats": Wish((SQUAT,)),
    "leg curl machine is taken": Wish((CURL,)),
    "leg curl is broken": Wish((CURL,)),
    "can't do rows today because the cable is broken": Wish((ROW,), CABLE),
    "can't do squats, my knee hurts 4/10": Wish((SQUAT,)),
}
NO_WISH = (
    # reports, and what came of it
    "60x5", "rack was taken so did goblet squats 20x10", "the rack was taken but I waited", "no cable, did bands",
    "yesterday the rack was taken", "the cable was broken last week", "cable row 50x10", "can't do set 3 of rows",
    # sounds alike
    "no bench press PR today", "no bar path issues", "no problem with the rack", "no machine feels right",
    "no weight on the bar today", "no step count", "no pain today", "no time today", "the bar is broken in nicely",
    "the rack is not taken", "cable isn't broken", "weights felt heavy", "cable rows felt great",
    # the exercise, but nothing that is wanted of it
    "can't do rows properly", "can't do more rows", "can't curl my toes", "no rows left", "should I swap rows?",
    "is the rack taken?", "how do I do rows?", "swap rows and curls", "skip rows", "skipping squats",
    # days, minutes, other things
    "no gym today", "can't train today", "can't do it today", "can't make it", "swap days", "swap monday and thursday",
    "change my days", "change the load", "swap sides", "swap the order", "something for my shoulder?",
    "something for legs", "alternative for shoulder", "swap rows for my dog", "thanks!", "", "?",
)  # fmt: skip


@pytest.mark.parametrize("words", MEANT)
def test_what_is_meant(words: str) -> None:
    """The exercises concerned, what is missing, what was named; and what is looked up for it is looked up."""
    assert read_wish(words, planned()) == MEANT[words]
    assert may_wish(words)


@pytest.mark.parametrize("words", NO_WISH)
def test_what_is_not(words: str) -> None:
    """Nothing is offered."""
    assert read_wish(words, planned()) is None


def test_everything_at_home() -> None:
    """`no gym` is meant as equipment only where they say that they are elsewhere."""
    wish = read_wish("at home today, no gym", planned())
    assert wish is not None
    assert wish.exercises == (SQUAT, BENCH, ROW, CURL, PUSHDOWN)


def test_only_open_exercises_are_meant() -> None:
    """What is done is not asked for."""
    assert read_wish("swap rows", planned()[:2]) is None
