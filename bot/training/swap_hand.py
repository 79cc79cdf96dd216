"""What equipment somebody has at hand today, and what plain words for it mean."""

from collections.abc import Mapping
from dataclasses import dataclass

from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_terms import Equipment
from bot.training.gym import loadable
from bot.training.people import Gym
from bot.training.plan import LoadStyle


@dataclass(frozen=True, slots=True)
class AtHand:
    """The loads that a gym makes, and what it lacks today (or for good)."""

    gym: Gym
    missing: frozenset[Equipment] = frozenset()

    def has(self, exercise: Exercise) -> bool:
        """Whether all that the exercise takes is there, with loads for it."""
        if self.missing.intersection(exercise.needs):
            return False
        return exercise.load_style is LoadStyle.NONE or bool(loadable(self.gym, exercise.loads))


_PLATES = (Equipment.BAR, Equipment.HEX_BAR, Equipment.PLATE_MACHINE, Equipment.SLED)
_WORDS: Mapping[str, tuple[Equipment, ...]] = {
    "bar": (Equipment.BAR, Equipment.HEX_BAR),
    "barbell": (Equipment.BAR, Equipment.HEX_BAR),
    "hex bar": (Equipment.HEX_BAR,),
    "plate": _PLATES,
    "dumbbell": (Equipment.DUMBBELLS,),
    "db": (Equipment.DUMBBELLS,),
    "kettlebell": (Equipment.KETTLEBELL,),
    "kb": (Equipment.KETTLEBELL,),
    "free weight": (Equipment.BAR, Equipment.HEX_BAR, Equipment.DUMBBELLS, Equipment.KETTLEBELL),
    "weight": (*_PLATES, Equipment.DUMBBELLS, Equipment.KETTLEBELL, Equipment.MACHINE, Equipment.CABLE),
    "machine": (Equipment.MACHINE, Equipment.PLATE_MACHINE),
    "cable": (Equipment.CABLE,),
    "pulley": (Equipment.CABLE,),
    "cable machine": (Equipment.CABLE,),
    "cable station": (Equipment.CABLE,),
    "band": (Equipment.BAND,),
    "bench": (Equipment.BENCH,),
    "rack": (Equipment.RACK,),
    "squat rack": (Equipment.RACK,),
    "pull up bar": (Equipment.HIGH_BAR,),
    "pullup bar": (Equipment.HIGH_BAR,),
    "chin up bar": (Equipment.HIGH_BAR,),
    "high bar": (Equipment.HIGH_BAR,),
    "dip bar": (Equipment.DIP_BARS,),
    "box": (Equipment.BOX,),
    "step": (Equipment.BOX,),
    "strap": (Equipment.STRAPS,),
    "ring": (Equipment.STRAPS,),
    "ball": (Equipment.BALL,),
    "wheel": (Equipment.WHEEL,),
    "ab wheel": (Equipment.WHEEL,),
    "slider": (Equipment.SLIDERS,),
    "sled": (Equipment.SLED,),
    "equipment": tuple(e for e in Equipment if e not in (Equipment.BODY_WEIGHT, Equipment.NONE)),
    "gym": tuple(e for e in Equipment if e not in (Equipment.BODY_WEIGHT, Equipment.NONE)),
}


def equipment_of(words: str) -> tuple[Equipment, ...]:
    """What a plain noun for equipment means (`cable`, `dumbbells`, `pull-up bar`); none where it means none.

    A missing bar takes the hex bar with it, a machine those with plates; a missing gym leaves the body.
    """
    said = " ".join(words.casefold().replace("-", " ").split())
    return _WORDS.get(said) or _WORDS.get(said.removesuffix("s")) or ()
