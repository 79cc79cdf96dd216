"""Every number beside sets that are kept is accounted for: a value of a set, or told by its words to be something else.

What is accounted for by neither may be a set that was missed, and is asked about. This is the reader's last look.
"""

from collections.abc import Sequence

from bot.notation.answer import Source, Span
from bot.notation.clauses import EDGES, continues_list, is_led_at
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.spans import Spans
from bot.notation.tokens import Mark
from bot.training.units import Load

_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BAD)
_OF_TIME = (Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.PLATES)
_THINGS = (Kind.WORD, Kind.OTHERPERSON, Kind.TALKNUM, Kind.GAP)
_TAKING_BACK = (Kind.SORRY, Kind.MEANT, Kind.NO, Kind.NOT, Kind.SCRAP, Kind.WROTE)
_SAID = (Source.SAID, Source.BEFORE)
_SETS = (Kind.SETS, Kind.SET, Kind.WORKSET)


def unaccounted(
    marks: Sequence[Mark], told: Sequence[Told], said: Sequence[Mark], gone: Sequence[Told] = ()
) -> Mark | None:
    """The first number of the marks that no kept set holds and no word explains. `said`: all marks, corrections too;
    `gone`: what the message said and put right.
    """
    spans = Spans([*_said(told), *_said(gone)])
    numbered = [one.row.set for one in told]
    for place, mark in enumerate(marks):
        if mark.kind is Kind.ORD and _names_set(marks, place) and mark.value not in numbered:
            return mark
        if mark.kind not in _NUMBERS or spans.touch(mark):
            continue
        if not (_is_corrected(said, mark) or _is_explained(marks, place) or _says_no_more(marks, place, told)):
            return mark
    return None


def _names_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether an ordinal stands for a set beside another that does: the first one of `second and third 5`."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.AND, Kind.COMMA, Kind.SLASH, Kind.FILL):
        at += 1
    return at > place + 1 and at + 1 < len(marks) and marks[at].kind is Kind.ORD and marks[at + 1].kind in _NUMBERS


def _said(told: Sequence[Told]) -> list[Span]:
    """Where the values of the kept sets stand."""
    grounds = [
        ground
        for one in told
        for ground in (one.grounds.number, one.grounds.stage, one.grounds.load, one.grounds.unit, one.grounds.reps,
                       None if one.row.rir is None else one.grounds.effort,
                       None if one.row.side is None else one.grounds.side, one.grounds.sets)
    ]  # fmt: skip
    return [g.at for g in grounds if g is not None and g.at is not None and g.source in _SAID]


def _next(marks: Sequence[Mark], place: int) -> Mark | None:
    """What follows, past words that change nothing."""
    return next((m for m in marks[place + 1 : place + 4] if m.kind is not Kind.FILL), None)


def _is_explained(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number's neighbours say what it counts: `20 min`, `2 coffees`, the hands of `2x20 for 10`."""
    after, before = _next(marks, place), marks[place - 1] if place else None
    if after is None:
        return False
    if after.kind in _OF_TIME or (before is not None and before.text == "half"):
        return True
    straight = marks[place + 1]
    if straight.kind in _THINGS and not continues_list(marks, place):
        return True
    kinds = [m.kind for m in marks[place + 1 : place + 5]]
    hands = kinds[:1] == [Kind.NUM] and (Kind.S in kinds[1:3] or Kind.HAND in kinds[1:4])
    return marks[place].value == 2 and (hands or kinds[:2] == [Kind.X, Kind.NUM])


def _is_corrected(said: Sequence[Mark], number: Mark) -> bool:
    """Whether a word that takes something back follows: `80x5 no sorry 80x6`."""
    return any(m.kind in _TAKING_BACK and m.start >= number.end for m in said)


def _says_no_more(marks: Sequence[Mark], place: int, told: Sequence[Told]) -> bool:
    """Whether a number tells what is kept already: how many sets, which set, or their load once more."""
    mark = marks[place]
    if mark.value is None:
        return False
    sets = [m.kind for m in (*marks[max(0, place - 1) : place], *marks[place + 1 : place + 2]) if m.kind in _SETS]
    numbers = [one.row.set for one in told]
    counts = {numbers.count(n) for n in numbers} and {
        sum(other.row.exercise == one.row.exercise for other in told) for one in told
    }
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    if (sets or (mark.text.isalpha() and not ends) or (ends and is_led_at(marks, place))) and (
        int(mark.value) in counts or int(mark.value) in numbers
    ):
        return True
    return any(_is_amount(one.row.load, mark) for one in told)


def _is_amount(load: Load | None, mark: Mark) -> bool:
    return load is not None and mark.value is not None and abs(load.amount_in(load.unit)) == mark.value
