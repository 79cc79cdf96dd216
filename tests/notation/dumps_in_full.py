"""Whole sessions by chance that tell more than bare sets, with what they say known beforehand.

Each exercise is told in one of the ways of `dump_ways` or in a plain one; a hurt or a question may end the message. The
asides and what parts exercises are those of `dumps`. Common practice, no source.
"""

import random
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.reading import Request
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Performed
from bot.training.units import Load, Unit
from tests.notation.dump_ways import WAYS, One, plain, spoken
from tests.notation.dumps import ASIDES, BARBELL, ENDINGS, OPENINGS, OTHERS, PARTS
from tests.notation.plans import NOW, sets

MORE = (
    PlannedExercise("Triceps Pushdown", sets("27.5", 12, 15), aliases=("pushdowns",)),
    PlannedExercise("Seated Calf Raise", sets("45", 12, 15), aliases=("calves",)),
    PlannedExercise("Overhead Press", sets("42.5", 5, 7), aliases=("ohp",)),
    PlannedExercise("Step-Up", sets("12", 10, 12, 2), load_style=LoadStyle.PER_HAND, sides=2, aliases=("step ups",)),
    PlannedExercise("Dip", sets("10", 6, 8), load_style=LoadStyle.BODYWEIGHT, aliases=("dips",)),
)
SPOKEN_PARTS = (" then ", " and then ", " next ", " after that ", " ", " and ", " moved on to ", " followed by ")
HURTS = (
    (". left knee ached a bit", "knee", False),
    (", felt a sharp pinch in my shoulder on the last one", "shoulder", False),
    (". elbow hurts when i straighten it", "elbow", False),
    (". lower back pain 4/10 after", "lower back", False),
    (", wrist tweaked a little", "wrist", False),
    (". went dizzy and nearly passed out after", None, True),
    (". chest felt tight and heavy pressure after that", "chest", True),
    (", heard a pop in my calf and now i cant push off it", "calf", True),
    (". my right foot has gone numb", "foot", True),
)
"""What hurts, where, and whether it is urgent."""
QUESTIONS = (
    ". should i go up next week?",
    "\nis it ok to swap the order next time?",
    ". do i need straps for this?",
    " how long should i rest btw?",
)


@dataclass(slots=True)
class Told:
    """A message with what it tells: the sets, whether it asks the coach, where it hurts and whether that is urgent."""

    text: str
    plan: tuple[PlannedExercise, ...]
    unit: Unit
    stored: list[Performed]
    question: bool = False
    hurt: tuple[str | None, bool] | None = None

    @property
    def request(self) -> Request:
        return Request(self.text, self.unit, NOW, self.plan, (), None)


def told(seed: int) -> Told:
    """One message of two to four exercises, most with something beside bare sets; a fifth are dictated."""
    chance = random.Random(seed)
    unit = Unit.LB if chance.random() < 0.25 else Unit.KG
    some = chance.sample(BARBELL, chance.randint(1, 2)) + chance.sample(OTHERS + MORE, chance.randint(1, 3))
    plan = [_in_pounds(e) if unit is Unit.LB else e for e in some]
    chance.shuffle(plan)
    dictated, stored, parts = chance.random() < 0.2, list[Performed](), list[str]()
    for place, exercise in enumerate(plan):
        one = One(exercise, unit, chance)
        ways = [spoken] if dictated else [way for way, fits in WAYS if fits(exercise)]
        finish, text = chance.choice(ways)(one) if dictated or chance.random() < 0.5 else plain(one)
        if finish is not None:
            plan[place] = replace(exercise, sets=(*exercise.sets[:-1], replace(exercise.sets[-1], finish=finish)))
        parts.append(text + ("" if dictated else chance.choice(ASIDES)))
        stored += one.stored
    out = Told(chance.choice(SPOKEN_PARTS if dictated else PARTS).join(parts), tuple(plan), unit, stored)
    if dictated:
        return out
    ending, turn = chance.choice(ENDINGS), chance.random()
    if turn < 0.12:
        ending, where, urgent = chance.choice(HURTS)
        out.hurt = (where, urgent)
    elif turn < 0.2:
        ending, out.question = chance.choice(QUESTIONS), True
    out.text = chance.choice(OPENINGS) + out.text + ending
    return out


def _in_pounds(exercise: PlannedExercise) -> PlannedExercise:
    """The exercise with its loads in pounds (about 2.2 a kilogram), to the nearest five."""
    loads = [None if s.load is None else Decimal(round(s.load.amount * Decimal("2.2") / 5) * 5) for s in exercise.sets]
    planned = zip(exercise.sets, loads, strict=True)
    return replace(
        exercise,
        sets=tuple(replace(s, load=None if load is None else Load.of(load, Unit.LB)) for s, load in planned),
    )
