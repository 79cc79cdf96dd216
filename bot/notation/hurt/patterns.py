"""The phrase tables as patterns, and their vocabulary.

The tables' small language: `;` parts phrases, a blank parts words, `a/b` are alternatives for one word, `word?`
may be
left out, `word*` stands for none to three, `@name` is a class of words.
"""

import re
from dataclasses import dataclass
from functools import cached_property

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.phrases_hurt import CONDITIONS, HURTS
from bot.notation.hurt.phrases_scope import SCOPES
from bot.notation.hurt.phrases_talk import NEUTRAL
from bot.notation.hurt.phrases_urgent import SIGNS
from bot.notation.hurt.places import PLACES, Place
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spelling import SHORT, Speller

_CLASSES = {
    "@bit": word_set(
        """
        a bit little touch slightly kinda kind of sort somewhat quite very really so super pretty rather too well
        at all
        that feeling feel exactly entirely totally completely overly particularly
        """
    ),
    "@any": word_set("any enough the my a some full proper no"),
    "@cannot": word_set("can't won't doesn't don't wouldn't didn't isn't not"),
    "@thing": word_set(
        """
        wifi internet signal broadband reception app website site booking bookings login password phone charger
        headphones playlist music laptop printer spreadsheet spreadsheets paperwork form forms admin tax taxes traffic
        roadworks roads commute train trains bus buses tram car van queue queues boss job work rota shift shifts
        schedule calendar diary meeting meetings client clients kids childcare school nursery landlord neighbour
        neighbours neighbor neighbors builders house move mortgage bills deadline deadlines exam exams course timer
        clock video videos upload uploads link links locker lockers lock door key keys weather rain snow ice heatwave
        cable cables pin pins collar collars clip clips machine machines rack racks plates setup airport flight
        flights luggage plumber
        """
    ),
    "@chore": word_set(
        """
        parking parked finding getting loading unloading changing setting carrying packing moving travelling queueing
        queuing commuting scheduling logging typing counting maths drive travel
        """
    ),
    "@where": word_set(
        """
        here there in at on round around near by of to with the this that my our your their gym place building basement
        town city street station centre center road car park spot spots machine morning evening afternoon today tonight
        lately week weekend again up down out outside home work all always parked through past changed sorted set over
        for it me them one new old stuff
        """
    ),
    "@is": word_set("is was 's are were be been being become becomes became"),
    "@such": word_set(
        """
        a an the such one right real proper total absolute absolutely bloody fucking massive huge constant complete
        utter genuine big bit of pure actual royal mega major little proverbial such always just still really
        being been literally honestly nothing but
        """
    ),
    "@act": word_set(
        """
        move lift raise use grip hold squeeze control close open clench wiggle straighten extend curl grasp pick point
        respond work function command moving closing opening gripping working responding functioning closes opens
        """
    ),
    "@place": frozenset(phrase for phrase in PLACES if " " not in phrase) | {"chin"},
}


@dataclass(frozen=True, slots=True)
class Element:
    """One place in a pattern: the words that fill it, and how often it is filled."""

    words: frozenset[str]
    least: int
    most: int


@dataclass(frozen=True, eq=False)
class Pattern:
    """A phrase of the tables and what it means; a place where `cue` is nothing, or a cue that means one (headache)."""

    elements: tuple[Element, ...]
    cue: Cue | None
    place: Place | None

    @property
    def is_word(self) -> bool:
        """Whether it is a single word."""
        return len(self.elements) == 1 and self.elements[0].most == 1

    @cached_property
    def needed(self) -> tuple[frozenset[str], ...]:
        """Words of which one each must stand in a message that holds this phrase."""
        return tuple(e.words for e in self.elements if e.least)

    @cached_property
    def second(self) -> frozenset[str] | None:
        """The words of which one must come second, if the second place is fixed."""
        fixed = len(self.elements) > 1 and all(e.least == e.most == 1 for e in self.elements[:2])
        return self.elements[1].words if fixed else None


def _elements(phrase: str) -> tuple[Element, ...]:
    out: list[Element] = []
    for part in phrase.split():
        body = part.rstrip("?*")
        words = frozenset[str]().union(*(_CLASSES.get(w, frozenset({w})) for w in body.split("/")))
        out.append(Element(words, 1 if part == body else 0, 3 if part.endswith("*") else 1))
    return tuple(out)


def _split(table: str) -> list[str]:
    """The phrases of a row; a line may end after a stroke."""
    return [p for p in re.sub(r"/\s+", "/", table).split(";") if p.strip()]


def _patterns() -> list[Pattern]:
    out = [Pattern(_elements(phrase), None, place) for phrase, place in PLACES.items()]
    for table in (HURTS, SIGNS, SCOPES, {Cue.NEUTRAL: NEUTRAL}):
        for cue, phrases in table.items():
            place = PLACES["head"] if cue is Cue.HEADACHE else None
            out += [Pattern(_elements(p), cue, place) for p in _split(phrases)]
    for row in CONDITIONS.strip().splitlines():
        name, phrases = row.split(":", 1)
        out += [Pattern(_elements(p), Cue.CONDITION, PLACES.get(name)) for p in _split(phrases)]
    return out


PATTERNS = tuple(_patterns())
"""Every phrase of every table."""
VOCABULARY = frozenset(word for p in PATTERNS for e in p.elements for word in e.words)
"""Every word of every table."""
_FORGIVEN = (
    frozenset(HURTS)
    | frozenset(SIGNS)
    | {*(Cue.NOT, Cue.GONE, Cue.CONDITION, Cue.PAST, Cue.FINE, Cue.TRAINED, Cue.OTHER, None)}
) - {*(Cue.SETTLE, Cue.LOOKS, Cue.DARK, Cue.SEVERE, Cue.SWEAT)}
_SELDOM = word_set("gout zing ooch rsi akes")
"""Seldom words, with too many others a slip away."""
TARGETS = frozenset(
    w
    for p in PATTERNS
    if p.cue in _FORGIVEN
    for e in p.elements
    for w in e.words
    if w not in _SELDOM and (p.cue is not Cue.NOT or len(w) > SHORT)
)
"""The words that a slip may stand for."""
URGENT = frozenset(w for p in PATTERNS if p.cue in SIGNS or p.cue is None for e in p.elements for w in e.words)
"""The words that a slip may stand for in doubt, beside the rest of an urgent sign."""
SPELLER = Speller(VOCABULARY, TARGETS, URGENT | {"cant", "can't", "wont", "doesnt", "dont"})
"""What a typed word may stand for."""
