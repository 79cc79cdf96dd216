"""What a short answer to a question tells: `it was 15 kilos`, `the cable one`, `12 reps`, `saturday`, `no, 60`.

Every word must have its place: with any other in it a message is no answer, and is read as a message of its own.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from enum import Enum, auto

from bot.notation.answer import Request
from bot.notation.courtesies import without_courtesies
from bot.notation.days.dates import MONTHS
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.names import session_index
from bot.notation.script import read_script
from bot.notation.tagging.once import Tagger
from bot.notation.tokens import Mark, read_marks
from bot.notation.wordlist import words
from bot.training.units import Unit

MOST_MARKS = 12
"""A longer message is no short answer."""
_YES = frozenset(words("yes yep yeah yup ye ya y correct right yessir sure exactly indeed true"))
_NO = frozenset(words("no nope nah n wrong"))
_NONE = frozenset(words("none neither"))
_LITTLE = frozenset(
    words(
        "i it that this these those its thats the a an one ones is was were did done do used use took had with at by on"
        " in for of to my me mean means meant sorry just only think guess what said as typed set sets"
        " machine exercise day last really please so and ok okay pair"
    )
)
_THATS_IT = frozenset(("thats it", "that's it"))
"""The end of a session, but not in a yes: `yep that's it`."""
_SILENT = (Kind.COMMA, Kind.STOP, Kind.BREAK, Kind.COLON, Kind.FILL, Kind.GAP, Kind.SORRY, Kind.LINE)
_LITTLE_KINDS = (Kind.WAS, Kind.MEANT, Kind.WITH, Kind.AT, Kind.FOR, Kind.AND, Kind.SET, Kind.SETS)
_UNITS = {Kind.KG: Unit.KG, Kind.LB: Unit.LB}


class Unsettled(Enum):
    """An answer that settles nothing."""

    OPEN = auto()
    """It leaves several readings, or none."""
    REFUSED = auto()
    """None of the readings: nothing of the message is to be kept."""


@dataclass(slots=True)
class Told:
    """What an answer tells. Loads and counts are numbers that say what they are; `bare` are those that don't."""

    loads: list[tuple[Decimal, Unit | None]] = field(default_factory=list)
    counts: list[int] = field(default_factory=list)
    bare: list[Decimal] = field(default_factory=list)
    unit: Unit | None = None
    each: bool = False
    total: bool = False
    body: bool = False
    order: int | None = None
    places: list[frozenset[int]] = field(default_factory=list)
    weekdays: set[int] = field(default_factory=set)
    month: int | None = None
    yes: bool = False
    no: bool = False
    none: bool = False
    both: bool = False
    """`both`, `all`: of hands it may be each or together."""
    is_list: bool = False
    """Several numbers that may be sets, or one that can be read as two."""

    @property
    def numbers(self) -> list[Decimal]:
        """All that it tells, loads first."""
        return [*(n for n, _ in self.loads), *self.bare, *(Decimal(n) for n in self.counts)]

    @property
    def says_anything(self) -> bool:
        """Whether there is anything in it but little words."""
        facts = self.unit or self.each or self.both or self.total or self.body or self.order or self.places
        return bool(self.numbers or facts or self.weekdays or self.month or self.yes or self.no or self.none)

    @property
    def says_values(self) -> bool:
        """Whether it tells a value beside a yes or no."""
        return self.says_anything and Told(yes=self.yes, no=self.no, none=self.none) != self


def read_told(request: Request, text: str, *, skips: bool = False) -> Told | None:
    """What a short answer tells beside the session of `request`; `None` where a word of it has no place.

    `skips`: what is asked is an exercise to skip, so that a word of skipping has its place.
    """
    index = session_index(request.exercises)
    marks = Tagger(index).read(without_courtesies(read_marks(read_script(text).text)))
    if len(marks) > MOST_MARKS:
        return None
    told, at = Told(), 0
    while at < len(marks):
        if skips and marks[at].kind in (Kind.SKIP, Kind.SKIPPED):
            at += 1
            continue
        taken = _refuted(marks, at) or _number(told, marks, at) or _word(told, marks[at])
        if not taken:
            return None
        at += taken
    told.is_list |= len(told.loads) + len(told.bare) > 1 or len(told.counts) > 1
    return told if told.says_anything else None


def _refuted(marks: Sequence[Mark], at: int) -> int:
    """How many marks `not 600 kg` takes here, which tells nothing: what it was instead is said beside it."""
    kinds = [m.kind for m in marks[at : at + 3]]
    if kinds[:2] != [Kind.NOT, Kind.NUM]:
        return 0
    return 3 if kinds[2:] and kinds[2] in (*_UNITS, Kind.S, Kind.REPS) else 2


def _number(told: Told, marks: Sequence[Mark], at: int) -> int:
    """How many marks the number here takes, with the word that says what it is; 0 where none is here."""
    value = marks[at].value
    if marks[at].kind is not Kind.NUM or value is None:
        return 0
    after = marks[at + 1].kind if at + 1 < len(marks) else None
    told.is_list |= bool(marks[at].parts)
    if after in _UNITS:
        told.loads.append((value, _UNITS[after]))
    elif after is Kind.S:
        told.loads.append((value, None))
    elif after is Kind.REPS and value == int(value):
        told.counts.append(int(value))
    else:
        told.bare.append(value)
        return 1
    return 2


def _word(told: Told, mark: Mark) -> int:
    """1 where the word has a place in an answer, 0 where it has none."""
    kind = mark.kind
    if mark.text in _NONE:
        told.none = True
    elif mark.text in _NO:
        told.no = True
    elif mark.text in _YES:
        told.yes = True
    elif kind in _UNITS and told.unit in (None, _UNITS[kind]):
        told.unit = _UNITS[kind]
    elif kind is Kind.ALL or mark.text == "both":
        told.both = True
    elif kind in (Kind.HAND, Kind.EACH, Kind.PAIR):
        told.each = True
    elif kind is Kind.TOTAL:
        told.total = True
    elif kind is Kind.BODY:
        told.body = True
    elif kind is Kind.ORD and mark.value is not None:
        told.order = int(mark.value)
    elif kind in (Kind.NAME, Kind.WEAK) and mark.names:
        told.places.append(frozenset(mark.names))
    elif mark.text in WEEKDAYS:
        told.weekdays.add(WEEKDAYS[mark.text])
    elif mark.text in MONTHS:
        told.month = MONTHS[mark.text]
    else:
        is_little = kind in (*_SILENT, *_LITTLE_KINDS) or mark.text in _LITTLE
        return int(is_little or (told.yes and mark.text in _THATS_IT))
    return 1
