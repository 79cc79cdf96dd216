"""Efforts of every set, wherever they stand: `8 8 7 on the zerchers, all at rpe 8`, `2 in the tank on all of them`.

Which sets these are is settled once they are bound, by where their words stand: behind a list the sets of its
exercise, behind a comma or in a sentence of its own those of all exercises that have no effort yet, before a list what
follows. Warm-ups, drops and minis have none.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.efforts_of_all.phrases import APART, ENDS, EVERYTHING, Phrase, phrase_at, says_every
from bot.notation.efforts_of_all.rating import EffortOfAll, Reach
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle

_PARTS = (Kind.STOP, Kind.LINE, Kind.BREAK)
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5, "both": 2}
_LAST = ("those", "these", "last", "the last")


def split_of_all(marks: list[Mark], record: Record, under: int | None) -> tuple[list[Mark], tuple[EffortOfAll, ...]]:
    """The marks without such efforts, and those."""
    if not any(says_every(m) or m.text in EVERYTHING for m in marks):
        return marks, ()
    out, said = _those(marks), list[EffortOfAll]()
    at = 0
    while at < len(out):
        phrase = phrase_at(out, at)
        one = None if phrase is None else _placed(out, at, phrase, record, under)
        if phrase is None or one is None:
            at += 1
            continue
        said.append(one)
        end, start = phrase.end, at
        if kind_at(out, start - 1) is Kind.OPEN and kind_at(out, end) is Kind.CLOSE:
            start, end = start - 1, end + 1
        start -= kind_at(out, start - 1) in (Kind.COMMA, Kind.DASH, Kind.AND) and kind_at(out, end) in ENDS
        end += start == 0 and kind_at(out, end) in (Kind.COLON, *APART)
        del out[start:end]
        at = start
    return (out, tuple(said)) if said else (marks, ())


def _those(marks: list[Mark]) -> list[Mark]:
    """The `those three all` of `100x5, 80x8 8 7, those three all @8` as `those three`, of the last three."""
    for place in range(2, len(marks) - 1):
        counted = marks[place].kind is Kind.NUM and text_at(marks, place - 1) in _LAST and marks[place].text in _COUNTS
        if counted and marks[place + 1].kind is Kind.ALL and marks[place + 1].text == "all":
            text = f"those {marks[place].text}"
            every = replace(marks[place + 1], text=text, start=marks[place - 1].start)
            return [*marks[: place - 1], every, *marks[place + 2 :]]
    return list(marks)


def _placed(marks: Sequence[Mark], at: int, phrase: Phrase, record: Record, under: int | None) -> EffortOfAll | None:
    """The effort with its reach; `None` where the message tells no several sets that it may be of."""
    span = (marks[at].start, marks[phrase.end - 1].end)
    if phrase.names:
        return EffortOfAll(phrase.left, span, Reach.ALL, 0, None, names=phrase.names)
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
    goes_on = kind_at(marks, at - 1) is Kind.COMMA and _tells_another(marks, phrase.end, named)
    bracketed = kind_at(marks, at - 1) is Kind.OPEN and kind_at(marks, at - 2) in _TELLS
    apart = (kind_at(marks, at - 1) in APART and not (goes_on or bracketed)) or phrase.widest
    start = marks[part].start if part else 0
    return EffortOfAll(phrase.left, span, Reach.SENTENCE if apart else Reach.LIST, start, None, count, of_each, of_last)


def _parts(mark: Mark) -> bool:
    """Whether a sentence ends here; the comma or the `and` between two exercises ends none, nor a seam of no width."""
    return mark.kind in _PARTS and not (mark.text in ("", ",") or mark.text.isalpha())


def _tells_another(marks: Sequence[Mark], at: int, named: int | None) -> bool:
    """Whether the sets of another exercise follow in the same sentence: `press 42 6 5, all rpe 8, curls 14 10 11`."""
    end = next((i for i in range(at, len(marks)) if _parts(marks[i])), len(marks))
    return named is not None and any(m.kind is Kind.NAME and named not in m.names for m in marks[at:end])


_TELLS = (Kind.NUM, Kind.SAME, Kind.PLANNED, Kind.BODY, Kind.AGAIN)


def _leads(marks: Sequence[Mark], at: int, end: int, name: int | None) -> bool:
    """Whether the effort stands before the sets that it is of: `all at rpe 8: ...`, `thrusts, all rpe 8: 90 10 9 8`."""
    since = [m for m in marks[(name if name is not None else -1) + 1 : at] if m.kind in _TELLS]
    if len(since) > 1 or any(m.parts for m in since):
        return False
    if name is None:
        return not since
    before = past(list(reversed(marks[:name])), 0, Kind.FILL)
    opens = kind_at(list(reversed(marks[:name])), before) in (None, *APART)
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
    if kind_at(marks, at - 1) in (*APART, Kind.NAME):
        return False
    exercise = record.exercises[place]
    counted = kind_at(marks, at - 1) is Kind.NUM and kind_at(marks, at - 2) in _BEFORE_COUNTS
    listed = counted or bool(marks[at - 1].parts)
    return exercise.sides > 1 or (exercise.load_style is LoadStyle.PER_HAND and not listed)
