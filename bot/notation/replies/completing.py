"""The message that was asked about with its answer in it: a load that it lacked, other words for the doubtful ones."""

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
"""Of doubtful words with more, none is tried to be another."""


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


def put_in_place(request: Request, ask: Ask, text: str, told: Told) -> Reading | None:
    """The message with the answer in the place of the doubtful words, or of one number in them, where one such way
    leaves no doubt."""
    first, last = ask.span
    words = request.text[first:last]
    numbers = [*told.bare, *(n for n, _ in told.loads), *told.counts]
    counted = ask.kind in (AskKind.RANGE, AskKind.NUMBER_FORMAT, AskKind.SAME)
    ways = {text} if counted and numbers else set[str]()
    if ask.kind in (AskKind.OUT_OF_REASON, AskKind.NUMBER_FORMAT) and len(numbers) == 1:
        places = _numbers_in(words)
        ways |= {words[:a] + f"{numbers[0]:f}" + words[b:] for a, b in places if len(places) <= MOST_NUMBERS}
    if told.places and ask.kind in (AskKind.WHICH_EXERCISE, AskKind.UNKNOWN_EXERCISE):
        ways.add(text)
    texts = [f"set {number} {request.text}"] if ask.kind is AskKind.WHICH_SET and (number := _set_number(told)) else []
    return without_doubt(request, ask, sorted(ways), texts)


def without_doubt(request: Request, ask: Ask, ways: Sequence[str], texts: Sequence[str] = ()) -> Reading | None:
    """The one reading without a doubt of the message with any of these in the place of the doubtful words."""
    first, last = ask.span
    found: list[Reading] = []
    for said in (*(request.text[:first] + way + request.text[last:] for way in ways), *texts):
        reading = read_message(replace(request, text=said))
        if reading.ask is None and reading.performed and reading.performed not in [f.performed for f in found]:
            found.append(reading)
    return found[0] if len(found) == 1 else None


def _set_number(told: Told) -> int | None:
    """`the second`, `set 2`, `2`."""
    if told.order is not None:
        return told.order
    return int(told.bare[0]) if len(told.bare) == 1 else None


def _numbers_in(words: str) -> list[tuple[int, int]]:
    """Where the numbers stand."""
    places: list[tuple[int, int]] = []
    for at, letter in enumerate(words):
        joins = letter.isdigit() or (letter in ".,e" and bool(places) and places[-1][1] == at)
        if joins and places and places[-1][1] == at:
            places[-1] = (places[-1][0], at + 1)
        elif letter.isdigit():
            places.append((at, at + 1))
    return places


def said_anew(request: Request, ask: Ask, text: str) -> Reading | None:
    """One of the readings told anew in full; or, where none was offered for a message that is nothing but the doubtful
    words, what stands for all of it."""
    anew = read_message(replace(request, text=text))
    if anew.ask is not None or not (anew.performed or anew.replaces or anew.skipped):
        return None
    for choice in ask.choices:
        if _stores(choice.reading) == _stores(anew):
            return choice.reading
    first, last = ask.span
    whole = not (request.text[:first] + request.text[last:]).strip(" .,!\n")
    is_all = (
        whole and not ask.choices and ask.kind in (AskKind.NUMBER_FORMAT, AskKind.SAME, AskKind.RANGE, AskKind.DONE)
    )
    return anew if is_all and anew.performed else None


_CHANGES = frozenset((Kind.MEANT, Kind.SORRY, Kind.NOT, Kind.SCRAP))
_OF_ANOTHER = frozenset((Kind.NAME, Kind.WEAK, Kind.ORD, Kind.SET, Kind.SETS, Kind.LABEL))
"""Words that say which kept set is changed."""


def of_what_is_asked(request: Request, text: str) -> Reading | Unsettled | None:
    """A change of the last set (`sorry 8 reps`, `scrap that`) or its repetition (`same`).

    Behind a question the last set is the one that is asked about, and no kept one.
    """
    anew = read_message(replace(request, text=text))
    repeats = any(e.meaning is Meaning.REPS and e.source is Source.BEFORE for e in anew.evidence)
    marks = Tagger(session_index(request.exercises)).read(read_marks(read_script(text).text))
    kinds = {m.kind for m in marks}
    changes = bool(anew.replaces) or bool(kinds & _CHANGES)
    if not (changes or repeats) or kinds & _OF_ANOTHER:
        return None
    if repeats:
        return Unsettled.OPEN
    if anew.replaces and not anew.performed:
        return Unsettled.REFUSED
    joined = read_message(replace(request, text=f"{request.text}, {text}"))
    if joined.ask is None and joined.performed and not joined.replaces:
        return joined
    return Unsettled.OPEN if anew.replaces else None


def _stores(reading: Reading) -> object:
    """All that a reading would keep, efforts aside where only one tells them."""
    return reading.performed, reading.replaces, reading.skipped, reading.day
