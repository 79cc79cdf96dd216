"""Efforts of every set, wherever they stand: `8 8 7 on the zerchers, all at rpe 8`, `2 in the tank on all of them`.

Which sets these are is settled once they are bound, by where their words stand: behind a list the sets of its
exercise, behind a comma or in a sentence of its own those of all exercises that have no effort yet, before a list what
follows. Warm-ups, drops and minis have none.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import ROUND_HALF_UP, Decimal
from enum import Enum, auto

from bot.notation.answer import AskKind, Source, Span
from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT, SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.draft import Draft
from bot.notation.efforts_named import effort_at
from bot.notation.grounds import Ground, Told
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle
from bot.training.report import Stage

_EVERYTHING = frozenset(("everything", "it all", "lot"))
_OF_EACH = frozenset(("each", "ea", "each one"))
_BOTH = frozenset(("both", "both were", "both of them"))
_LITTLE = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.COLON, Kind.SET, Kind.SETS)
_OF_THEM = frozenset(words("of it them these those the set sets one ones single last"))
_ARTICLES = ("a", "an")
_RANGED = (Kind.DASH, Kind.TO, Kind.OR)
_PARTS = (Kind.STOP, Kind.LINE, Kind.BREAK)
_ENDS = (None, *EDGES, Kind.AND, Kind.THEN, Kind.DASH, Kind.COLON, Kind.NAME, Kind.SORRY)
_APART = (*EDGES, Kind.AND, Kind.DASH, Kind.THEN)
_BUT = frozenset(words("but bar until till apart minus besides not"))
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5, "both": 2}
_LAST = ("those", "these", "last", "the last")
_HALF = Decimal("0.5")


class Reach(Enum):
    """Which of the sets told so far an effort is of."""

    LIST = auto()
    """The list that it stands behind."""
    SENTENCE = auto()
    """All of the sentence."""
    ALL = auto()
    """All that was told."""
    NEXT = auto()
    """What follows it: of the exercise named before it, if one is."""


@dataclass(frozen=True, slots=True)
class EffortOfAll:
    """Repetitions in reserve of every set in reach; `start` is where the reach starts, `at` where the words stand."""

    left: Decimal
    at: Span
    reach: Reach
    start: int
    place: int | None
    """Of what follows: the exercise that was named."""
    count: int | None = None
    """How many sets are said to be."""
    of_each: bool = False
    """Told by `each`, which may be of the two hands of one set."""
    of_last: bool = False
    """Of so many told last: `those three all @8`."""


@dataclass(frozen=True, slots=True)
class _Phrase:
    """The words of an effort of all."""

    left: Decimal
    every: Mark
    end: int
    widest: bool
    """Of `everything`: no single list."""


def split_of_all(marks: list[Mark], record: Record, under: int | None) -> tuple[list[Mark], tuple[EffortOfAll, ...]]:
    """The marks without such efforts, and those."""
    if not any(_says_every(m) or m.text in _EVERYTHING for m in marks):
        return marks, ()
    out, said = _those(marks), list[EffortOfAll]()
    at = 0
    while at < len(out):
        phrase = _phrase_at(out, at)
        one = None if phrase is None else _placed(out, at, phrase, record, under)
        if phrase is None or one is None:
            at += 1
            continue
        said.append(one)
        end, start = phrase.end, at
        if kind_at(out, start - 1) is Kind.OPEN and kind_at(out, end) is Kind.CLOSE:
            start, end = start - 1, end + 1
        start -= kind_at(out, start - 1) in (Kind.COMMA, Kind.DASH, Kind.AND) and kind_at(out, end) in _ENDS
        end += start == 0 and kind_at(out, end) in (Kind.COLON, *_APART)
        del out[start:end]
        at = start
    return (out, tuple(said)) if said else (marks, ())


# --- the words ------------------------------------------------------------------------------------------------------


def _says_every(mark: Mark) -> bool:
    return (
        mark.kind is Kind.ALL or (mark.kind is Kind.EACH and mark.text in _OF_EACH | _BOTH) or mark.text == "all felt"
    )


def _phrase_at(marks: Sequence[Mark], at: int) -> _Phrase | None:
    """An effort of all that starts here, in either order."""
    first = marks[at]
    if _says_every(first) or first.text in _EVERYTHING:
        start = at + 1
        while set(text_at(marks, start).split()) <= _OF_THEM and start < len(marks):
            start += 1
        felt = first.text == "all felt"
        while kind_at(marks, start) in (*_LITTLE, Kind.SKIP) or text_at(marks, start) in ("had", "with"):
            start += 1
        effort = _effort(marks, start, felt=felt)
        return None if effort is None else _closed(marks, first, *effort)
    if not (effort := _effort(marks, at, felt=False)):
        return None
    left, end = effort
    every = past(marks, end, Kind.AT, Kind.FOR, Kind.WITH, Kind.FILL)
    while every > end and text_at(marks, every - 1) in _EVERYTHING:
        every -= 1
    if every >= len(marks) or not (_says_every(marks[every]) or marks[every].text in _EVERYTHING):
        return None
    end = every + 1
    while end < len(marks) and set(text_at(marks, end).split()) <= _OF_THEM:
        end += 1
    return _closed(marks, marks[every], left, end)


def _closed(marks: Sequence[Mark], every: Mark, left: Decimal, end: int) -> _Phrase | None:
    """The phrase, where nothing but little words follows it in its part."""
    close = end
    while kind_at(marks, close) is Kind.FILL and text_at(marks, close) not in _BUT:
        close += 1
    if kind_at(marks, close) not in _ENDS:
        return None
    return _Phrase(left, every, end, every.text in _EVERYTHING)


def _effort(marks: Sequence[Mark], at: int, *, felt: bool) -> tuple[Decimal, int] | None:
    """Repetitions in reserve that are told from here on, and where their words end; a range is its middle."""
    if kind_at(marks, at) is Kind.COULD and kind_at(marks, at + 2) is Kind.MORE:
        value = marks[at + 1].value if kind_at(marks, at + 1) is Kind.NUM else None
        return None if value is None or value > MOST_LEFT else (value, at + 3)
    number = at + (kind_at(marks, at) is Kind.FEELS)
    scored = felt or number > at or text_at(marks, at - 1) in _ARTICLES
    value = marks[number].value if kind_at(marks, number) is Kind.NUM else None
    plain = value is not None and EASIEST <= value <= HARDEST and kind_at(marks, number + 1) in _ENDS
    if scored and plain and value is not None:
        return HARDEST - value, number + 1
    if kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in _RANGED:
        led = kind_at(marks, at - 1) is Kind.AT and kind_at(marks, at + 3) in _ENDS
        scale = led and value is not None and EASIEST <= value <= HARDEST and kind_at(marks, at + 2) is Kind.NUM
        return (
            _middle(HARDEST - (value or Decimal(0)), marks, at + 2, Kind.RPE) if scale else _between(marks, at, at + 2)
        )
    one = effort_at(marks, at, None)
    if one is None:
        return None
    if kind_at(marks, one.end) in _RANGED and kind_at(marks, one.end + 1) is Kind.NUM:
        return _middle(one.left, marks, one.end + 1, one.word)
    return one.left, one.end + (one.word is Kind.RPE and kind_at(marks, one.end) is Kind.S)


def _between(marks: Sequence[Mark], low: int, high: int) -> tuple[Decimal, int] | None:
    """The `2-3 in the tank` of two numbers before their word."""
    one = effort_at(marks, high, None)
    value = marks[low].value
    if one is None or value is None or kind_at(marks, high) is not Kind.NUM:
        return None
    first = value if one.word is Kind.RIR else HARDEST - value
    return (_halved(first, one.left), one.end) if abs(first - one.left) <= SEVERAL else None


def _middle(first: Decimal, marks: Sequence[Mark], at: int, word: Kind) -> tuple[Decimal, int] | None:
    """The `rpe 8-9` of two numbers behind their word."""
    value = marks[at].value
    if value is None:
        return None
    second = value if word is Kind.RIR else HARDEST - value
    return (_halved(first, second), at + 1) if abs(first - second) <= SEVERAL else None


def _halved(one: Decimal, two: Decimal) -> Decimal:
    return ((one + two) / 2 / _HALF).quantize(Decimal(1), ROUND_HALF_UP) * _HALF


def _those(marks: list[Mark]) -> list[Mark]:
    """The `those three all` of `100x5, 80x8 8 7, those three all @8` as `those three`, of the last three."""
    for place in range(2, len(marks) - 1):
        counted = marks[place].kind is Kind.NUM and text_at(marks, place - 1) in _LAST and marks[place].text in _COUNTS
        if counted and marks[place + 1].kind is Kind.ALL and marks[place + 1].text == "all":
            text = f"those {marks[place].text}"
            every = replace(marks[place + 1], text=text, start=marks[place - 1].start)
            return [*marks[: place - 1], every, *marks[place + 2 :]]
    return list(marks)


# --- their place ----------------------------------------------------------------------------------------------------


def _placed(marks: Sequence[Mark], at: int, phrase: _Phrase, record: Record, under: int | None) -> EffortOfAll | None:
    """The effort with its reach; `None` where the message tells no several sets that it may be of."""
    span = (marks[at].start, marks[phrase.end - 1].end)
    count = next((_COUNTS[w] for w in phrase.every.text.split() if w in _COUNTS), None)
    of_each = phrase.every.kind is Kind.EACH and count is None
    of_last = phrase.every.text.startswith("those ")
    name = next((i for i in range(at - 1, -1, -1) if marks[i].kind is Kind.NAME), None)
    named = marks[name].names[0] if name is not None and len(marks[name].names) == 1 else None
    if phrase.every.kind is Kind.EACH and _may_be_of_sides(marks, at, record, named if named is not None else under):
        return None
    if _leads(marks, at, phrase.end, name):
        if not _tells_several(marks[phrase.end :]):
            return None
        return EffortOfAll(phrase.left, span, Reach.NEXT, span[1], named)
    if not _tells_several(marks[:at]):
        return None
    part = next((i + 1 for i in range(at - 1, -1, -1) if _parts(marks[i])), 0)
    if not any(m.kind in _TELLS for m in marks[part:at]):
        own_line = part == 0 or marks[part - 1].kind is Kind.LINE
        line = max((i for i, m in enumerate(marks[: part - 1]) if m.text == "\n"), default=-1)
        start = 0 if own_line or line < 0 else marks[line].end
        return EffortOfAll(phrase.left, span, Reach.ALL, start, None, count, of_each, of_last)
    apart = kind_at(marks, at - 1) in _APART or phrase.widest
    start = marks[part].start if part else 0
    return EffortOfAll(phrase.left, span, Reach.SENTENCE if apart else Reach.LIST, start, None, count, of_each, of_last)


def _parts(mark: Mark) -> bool:
    """Whether a sentence ends here; the comma or the `and` between two exercises ends none."""
    return mark.kind in _PARTS and not (mark.text == "," or mark.text.isalpha())


_TELLS = (Kind.NUM, Kind.SAME, Kind.PLANNED, Kind.BODY, Kind.AGAIN)


def _leads(marks: Sequence[Mark], at: int, end: int, name: int | None) -> bool:
    """Whether the effort stands before the sets that it is of: `all at rpe 8: ...`, `thrusts, all rpe 8: 90 10 9 8`."""
    since = [m for m in marks[(name if name is not None else -1) + 1 : at] if m.kind in _TELLS]
    if len(since) > 1 or any(m.parts for m in since):
        return False
    if name is None:
        return not since
    before = past(list(reversed(marks[:name])), 0, Kind.FILL)
    opens = kind_at(list(reversed(marks[:name])), before) in (None, *_APART)
    follows = next((m.kind for m in marks[end:] if m.kind in (*_TELLS, Kind.NAME, Kind.LINE)), None)
    return follows in _TELLS and (opens or bool(since))


def _tells_several(marks: Sequence[Mark]) -> bool:
    """Whether more than one set is told: three numbers and more, two with a word between that joins them."""
    numbers = [i for i, m in enumerate(marks) if m.kind in _TELLS]
    told = sum(max(1, len(marks[i].parts)) for i in numbers)
    joined = told == SEVERAL and len(numbers) == SEVERAL
    between = marks[numbers[0] + 1 : numbers[1]] if joined else []
    listed = bool(between) and all(m.kind in (Kind.COMMA, Kind.AND, Kind.SLASH, Kind.THEN, Kind.FILL) for m in between)
    kinds = {m.kind for m in marks}
    return told > SEVERAL or listed or bool({Kind.PLANNED, Kind.AGAIN, Kind.SAME, Kind.SETS} & kinds)


_BEFORE_COUNTS = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.X, Kind.FOR)


def _may_be_of_sides(marks: Sequence[Mark], at: int, record: Record, place: int | None) -> bool:
    """Whether `each` may be of two sides or hands: straight behind a number of an exercise that has such."""
    if place is None:
        return True
    if kind_at(marks, at - 1) in (*_APART, Kind.NAME):
        return False
    exercise = record.exercises[place]
    counted = kind_at(marks, at - 1) is Kind.NUM and kind_at(marks, at - 2) in _BEFORE_COUNTS
    listed = counted or bool(marks[at - 1].parts)
    return exercise.sides > 1 or (exercise.load_style is LoadStyle.PER_HAND and not listed)


# --- the sets -------------------------------------------------------------------------------------------------------


def rate_of_all(draft: Draft, said: EffortOfAll) -> None:
    """Gives every set in reach the effort; asks where they are not so many, or where one has another effort."""
    record = draft.record
    rows = [t for t in record.told if t.row.stage is Stage.WORK and _is_within(t, said, record)]
    rows = _reached(rows, said)
    if not rows or any(_has_own(t, said) for t in rows) or not _are_counted(rows, said):
        draft.doubt(Doubt(AskKind.EFFORT, *said.at))
        return
    rated = {id(t) for t in rows if t.row.rir is None}
    ground = Ground(Source.SAID, said.at)
    record.told = [
        replace(t, row=replace(t.row, rir=said.left), grounds=replace(t.grounds, effort=ground))
        if id(t) in rated
        else t
        for t in record.told
    ]


def _is_within(told: Told, said: EffortOfAll, record: Record) -> bool:
    at = _at(told)
    if said.reach is Reach.NEXT:
        named = said.place is None or told.row.exercise == record.exercises[said.place].name
        return named and at >= said.at[1]
    return said.start <= at < said.at[0]


def _at(told: Told) -> int:
    at = told.grounds.reps.at or told.grounds.exercise.at
    return 0 if at is None else at[0]


def _reached(rows: list[Told], said: EffortOfAll) -> list[Told]:
    """The sets of one list, or of all exercises that have no effort of their own."""
    if not rows or said.reach is Reach.NEXT:
        return [t for t in rows if t.row.rir is None]
    last = max(rows, key=_at).row.exercise
    own = [t for t in rows if t.row.exercise == last]
    if said.of_last and said.count is not None:
        kept = list(dict.fromkeys(t.row.set for t in own))[-said.count :]
        return [t for t in own if t.row.set in kept]
    unrated = [t for t in own if t.row.rir is None]
    if said.count is not None and said.count == _keys(unrated) < _keys(own):
        return unrated
    if said.reach is Reach.LIST and (_keys(own) > 1 or said.of_each):
        return own
    if said.count is not None and _keys(own) == said.count:
        return own
    apart = {t.row.exercise for t in rows if t.row.rir is not None} - {last}
    return [t for t in rows if t.row.exercise not in apart]


def _keys(rows: Sequence[Told]) -> int:
    return len({(t.row.exercise, t.row.set) for t in rows})


def _has_own(told: Told, said: EffortOfAll) -> bool:
    """Whether a set was told with another effort before the one of all; one told behind it is excepted."""
    at = told.grounds.effort.at if told.grounds.effort is not None else None
    before = at is not None and at[0] < said.at[0] and said.reach is not Reach.NEXT
    return before and told.row.rir is not None and told.row.rir != said.left


def _are_counted(rows: Sequence[Told], said: EffortOfAll) -> bool:
    return said.count in (None, _keys(rows), len(rows), len({t.row.exercise for t in rows}))
