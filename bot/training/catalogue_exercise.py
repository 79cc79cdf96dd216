"""An exercise of the catalogue, and its names made comparable."""

from dataclasses import dataclass

from bot.training.catalogue_terms import Equipment, Joint, Muscle, Pattern, WarmUp
from bot.training.gym import NOTHING
from bot.training.plan import LoadStyle, Measure, Region

_NO_PLURALS = frozenset({"biceps", "triceps", "quadriceps", "abs", "press", "cross"})


@dataclass(frozen=True, slots=True)
class Exercise:
    """What the trade knows of an exercise, whoever does it.

    `muscles` count a hard set as 1, `muscles_indirect` as a half. `also` is what it needs beside what loads it.
    `joints` are what it loads; they err towards more. `stretches`: the muscle works hard while it is long.
    `common`: among the first that come to mind. `demanding`: too much for many who never did it. `share`: its usual
    maximum, as the number on the equipment, as a share of its pattern's main lift; `None` where two people's numbers
    can't be compared.
    """

    name: str
    pattern: Pattern
    equipment: Equipment
    muscles: tuple[Muscle, ...]
    aliases: tuple[str, ...] = ()
    muscles_indirect: tuple[Muscle, ...] = ()
    also: tuple[Equipment, ...] = ()
    load_style: LoadStyle = LoadStyle.TOTAL
    sides: int = 1
    measure: Measure = Measure.REPS
    joints: frozenset[Joint] = frozenset()
    setup_s: int = 60
    warmup: WarmUp = WarmUp.LIGHT
    stretches: bool = False
    common: bool = False
    demanding: bool = False
    share: float | None = None

    @property
    def region(self) -> Region:
        """Where it works."""
        return self.pattern.region

    @property
    def loads(self) -> str:
        """The kind of the client's gym that makes its loads, as `PlannedExercise.equipment` names it."""
        return NOTHING if self.load_style is LoadStyle.NONE else self.equipment.loads

    @property
    def needs(self) -> tuple[Equipment, ...]:
        """All the equipment that it takes."""
        return (self.equipment, *self.also)


# fmt: off
UNSAID = frozenset({
    "abductor", "adductor", "air", "ankle", "apart", "away", "b", "backward", "body", "bw", "chair", "core",
    "crab", "degree", "diamond", "drag", "extended", "feet", "fixed", "foot", "forward", "french", "full",
    "hand", "horizontal", "kick", "lean", "lift", "loaded", "long", "negative", "one", "parallel", "passive",
    "paused", "plate", "pump", "raised", "resistance", "sided", "sliding", "static", "stop", "strap",
    "suspended", "table", "to", "torso", "towel", "two", "unweighted", "upward", "vertical", "weight", "wood",
    "y", "45", "abdominal",
})
# fmt: on
"""Words of talk. A name with one of them is known here, but it is not listened for in what clients write: there the
word alone would be taken for the exercise."""
_SHORTEST_SAID = 3
"""Letters: shorter names (`dl`) are the reader's own business, which knows when they are meant."""


_THINGS = frozenset(
    {"bar", "barbell", "bb", "dumbbell", "db", "kettlebell", "kb", "cable", "machine", "rope", "band", "sled"}
)


def is_said(alias: str, name: str) -> bool:
    """Whether what a client writes may be searched for this alias of an exercise that they know by `name`.

    Not where the alias brings in a thing to lift that the name lacks: the thing alone (`25 kg dbs`) would be taken for
    the exercise, and the reader knows by itself that a curl may be a dumbbell curl.
    """
    words = name_words(alias)
    return not (UNSAID & words or (_THINGS & words) - name_words(name)) and sum(map(len, words)) >= _SHORTEST_SAID


def name_words(name: str) -> frozenset[str]:
    """The words of a name, lower case and singular."""
    return frozenset(_singular(word) for word in _words(name))


def name_key(name: str) -> str:
    """A name as it is compared: case, spaces, signs and plurals don't count.

    >>> name_key("Push-ups") == name_key("pushup")
    True
    """
    return "".join(_singular(word) for word in _words(name))


def _words(name: str) -> list[str]:
    return "".join(c if c.isalnum() else " " for c in name.casefold().replace("'", "").replace("’", "")).split()


def _singular(word: str) -> str:
    if word in _NO_PLURALS or len(word) < 3 or not word.endswith("s") or word.endswith("ss"):
        return word
    if word.endswith(("sses", "ches", "shes", "xes")):
        return word[:-2]
    if len(word) > 4 and word.endswith("ies"):
        return word[:-3] + "y"
    if word in ("calves", "halves"):
        return word[:-3] + "f"
    return word[:-1]
