"""The message that was asked about with its answer in it: a load that it lacked, other words for the doubtful ones."""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Ask, AskKind, Meaning, Reading, Request, Source
from bot.notation.kinds import Kind
from bot.notation.names import session_index
from bot.notation.printer import show_sets
from bot.notation.reading import read_message
from bot.notation.replies.choosing import as_typed
from bot.notation.replies.told import Told, Unsettled
from bot.notation.script import read_script
from bot.notation.tagging.once import Tagger
from bot.notation.tokens import read_marks
from bot.training.plan import LoadStyle
from bot.training.report import Performed, Stage
from bot.training.units import Load

MOST_NUMBERS = 6
"""Of doubtful words with more, none is tried to be another. Ours."""
_NUMBER = re.compile(r"\d[\d.,e]*")


def with_load(request: Request, unfinished: Reading, told: Told) -> Reading | Unsettled | None:
    """The reading that lacks nothing but a load, with the one that the answer tells."""
    if told.counts or told.places or told.weekdays or len(told.loads) + len(told.bare) + told.body != 1:
        return None if told.counts or told.places else Unsettled.OPEN
    amount, unit = told.loads[0] if told.loads else (told.bare[0] if told.bare else None, told.unit)
    styles = {e.name: e.load_style for e in request.exercises}
    said = {e.row for e in unfinished.evidence if e.meaning is Meaning.LOAD and e.source is Source.SAID}
    rows: list[Performed] = []
    for place, row in enumerate(unfinished.performed):
        lacks = place not in said and row.stage is Stage.WORK and row.load is not None
        hands = 2 if told.total and styles[row.exercise] is LoadStyle.PER_HAND else 1
        load = Load.of((amount or Decimal(0)) / hands, unit or request.unit)
        rows.append(replace(row, load=load) if lacks else row)
    printed = show_sets(rows, request.exercises)
    is_in_reason = read_message(replace(request, text=printed)).ask is None
    return replace(unfinished, performed=tuple(rows)) if is_in_reason else Unsettled.OPEN


def in_its_unit(ask: Ask, told: Told) -> Reading | None:
    """`lb`, where the sets as typed were read in kilograms and in no other way."""
    typed = as_typed(ask)
    if told.unit is None or typed is None or told != Told(unit=told.unit, yes=told.yes, no=told.no):
        return None
    loads = [None if r.load is None else Load(r.load.thousandths, told.unit) for r in typed.reading.performed]
    rows = zip(typed.reading.performed, loads, strict=True)
    return replace(typed.reading, performed=tuple(replace(row, load=load) for row, load in rows))


def put_in_place(request: Request, ask: Ask, told: Told) -> Reading | None:
    """The message with the one number of the answer in the place of one in the doubtful words.

    It must change loads or counts of the sets as typed and nothing else, and only one such way may leave no doubt.
    """
    typed = as_typed(ask)
    if len(told.numbers) != 1 or ask.kind not in (AskKind.OUT_OF_REASON, AskKind.NUMBER_FORMAT):
        return None
    first, last = ask.span
    words, number = request.text[first:last], f"{told.numbers[0]:f}"
    unit = next((unit for _, unit in told.loads if unit is not None), told.unit)
    said = f"{number}{unit.value}" if unit is not None else number
    places = [found.span() for found in _NUMBER.finditer(words)]
    ways = [words[:a] + said + words[b:] for a, b in places] if len(places) <= MOST_NUMBERS else []
    found = without_doubt(request, ask, ways)
    if found is None:
        return None
    of_load = all(row.load is not None and row.load.amount == told.numbers[0] for row in found.performed)
    if typed is None:
        return found if of_load and not told.counts and len(found.performed) == 1 else None
    return found if _differs_by(told, typed.reading.performed, found.performed) else None


def _differs_by(told: Told, typed: Sequence[Performed], found: Sequence[Performed]) -> bool:
    """Whether the sets are those as typed but for loads, or but for counts, which are the number told."""
    if len(typed) != len(found):
        return False
    pairs, number = list(zip(typed, found, strict=True)), told.numbers[0]
    loads = {b.load.amount for a, b in pairs if a.load != b.load and b.load is not None}
    counts = {b.reps for a, b in pairs if a.reps != b.reps}
    by_load = loads == {number} and not told.counts and all(replace(a, load=b.load) == b for a, b in pairs)
    return by_load or (counts == {number} and all(replace(a, reps=b.reps) == b for a, b in pairs))


def without_doubt(request: Request, ask: Ask, ways: Sequence[str]) -> Reading | None:
    """The one reading without a doubt of the message with any of these in the place of the doubtful words."""
    first, last = ask.span
    found: list[Reading] = []
    for way in ways:
        reading = read_message(replace(request, text=request.text[:first] + way + request.text[last:]))
        if reading.ask is None and reading.performed and reading.performed not in [f.performed for f in found]:
            found.append(reading)
    return found[0] if len(found) == 1 else None


def says_more(anew: Reading, ask: Ask, *, may_end: bool) -> bool:
    """Whether words tell more than an answer may: pain, a question, time, a day that was not asked about, or the end
    where it may not be one (`yes that's it` is none)."""
    beside = anew.pain is not None or anew.question or anew.minutes is not None
    day = anew.day is not None and ask.kind is not AskKind.DAY
    return beside or day or (anew.finished and not may_end)


_GOES_ON = re.compile(
    r"\b(?:next|then|another|also|more|now|set|sets|first|second|third|last|again|and|weight|load)\b", re.IGNORECASE
)
"""Words of a set that comes behind the one that is asked about."""
_LIST = re.compile(r"[\d\s,]+")


def said_anew(request: Request, ask: Ask, anew: Reading, text: str) -> Reading | None:
    """One of the readings told anew in full; or, where none was offered for a message that is nothing but the doubtful
    words, what stands for all of it."""
    if anew.ask is not None or not (anew.performed or anew.replaces or anew.skipped) or _GOES_ON.search(text):
        return None
    for choice in ask.choices:
        if _stores(choice.reading) == _stores(anew):
            return choice.reading
    first, last = ask.span
    whole = not (request.text[:first] + request.text[last:]).strip(" .,!\n")
    full = ask.kind in (AskKind.NUMBER_FORMAT, AskKind.SAME)
    listed = ask.kind in (AskKind.RANGE, AskKind.DONE) and len(anew.performed) > 1 and _LIST.fullmatch(text.strip())
    return anew if whole and not ask.choices and anew.performed and (full or listed) else None


_OF_ANOTHER = frozenset((Kind.NAME, Kind.WEAK, Kind.ORD, Kind.SET, Kind.SETS, Kind.LABEL))
"""Words that say which kept set is changed."""


def of_what_is_asked(request: Request, anew: Reading, text: str) -> Unsettled | None:
    """A change of the last set (`that was 9`, `scrap that`) or its repetition (`same`).

    Behind a question the last set is the one that is asked about, and no kept one.
    """
    repeats = any(e.meaning is Meaning.REPS and e.source is Source.BEFORE for e in anew.evidence)
    marks = Tagger(session_index(request.exercises)).read(read_marks(read_script(text).text))
    if not (anew.replaces or repeats) or any(m.kind in _OF_ANOTHER for m in marks):
        return None
    return Unsettled.REFUSED if anew.replaces and not anew.performed else Unsettled.OPEN


def _stores(reading: Reading) -> object:
    """All that a reading would keep."""
    return reading.performed, reading.replaces, reading.skipped, reading.day
