"""What a message says beside sets that are kept and no kept set shows: then a better reading may have been missed.

Every effort, ordinal, label and repeat of a report must be used by the reading that is kept; a bare number far under
the plan that nothing explains may be the number of a set, of sets, or of something else. Either is asked about.
"""

from collections.abc import Iterator, Sequence

from bot.notation.answer import Source, Span
from bot.notation.bounds import EASIEST, HARDEST
from bot.notation.clauses import EDGES
from bot.notation.context import Context
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.spans import Spans
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Stage

_RATED = (Kind.RPEPOST, Kind.RIRPOST, Kind.TANK)
_RATES = (Kind.RPE, Kind.RIR)
_OF_REPS = (Kind.REPS, Kind.LASTREP)
_NAMES_SET = (Kind.SET, Kind.WORKSET, Kind.LASTSET)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_NEAR = 6
"""Marks between an effort and its second telling."""
_CUES = (Kind.NOT, Kind.WAS, Kind.SORRY, Kind.MEANT, Kind.TO, Kind.OR, Kind.DASH, Kind.SLASH, Kind.AND, Kind.THEN,
         Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.LEFT, Kind.RIGHT, Kind.COMMA)  # fmt: skip
"""Kinds that say why two efforts are told of one set."""
_EXPLAINED = frozenset(
    words("only just got did managed made hit stopped failed quit bailed barely dropped died gave out at reps")
)
"""Words before a number of repetitions that is far under the plan."""


def overlooked(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first such mark; `None` where all that is said is used."""
    spans = Spans(_used((*told, *record.gone), Source.SAID))
    numbers = {one.row.set for one in told} | {key[1] for key in record.replaces}
    warmed = sum(one.row.stage is Stage.WARMUP for one in told)
    after = _next_after(numbers)
    for place, mark in enumerate(marks):
        rates = mark.kind is Kind.NUM and _is_rating(marks, place) and not _agrees(marks, place, told)
        if rates and not spans.touch(mark):
            return mark
        if place + 1 < len(marks) and marks[place + 1].kind in (Kind.DROP, Kind.DROPPED, Kind.MINI):
            continue
        number = _set_named(marks, place, after)
        if number is not None and number not in numbers and number > warmed:
            return mark
        if mark.kind is Kind.ORD and mark.value == after and _is_left_open(marks, place, spans):
            return mark
    return _rated_twice(marks, told) or next(_unlikely(marks, told, record), None)


def _rated_twice(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """The `7` of `90x10 @7. rpe 8`: an effort of the only set that is told, beside another one, and no word why."""
    if len(told) != 1 or told[0].row.rir is None or any(m.kind in _CUES for m in marks):
        return None
    for place, mark in enumerate(marks):
        scaled = mark.kind is Kind.NUM and EASIEST <= (mark.value or 0) <= HARDEST
        if scaled and place and (marks[place - 1].text == "@" or marks[place - 1].kind is Kind.RPE):
            linked = place + 1 < len(marks) and marks[place + 1].kind in _LINKS
            if not linked and HARDEST - (mark.value or 0) != told[0].row.rir and told[0].row.reps != mark.value:
                return mark
    return None


def _used(told: Sequence[Told], *sources: Source) -> Iterator[Span]:
    """Where the words stand that gave the kept sets' values, from these sources."""
    for one in told:
        grounds = one.grounds
        effort = None if one.row.rir is None else grounds.effort
        side = None if one.row.side is None else grounds.side
        for ground in (grounds.number, grounds.stage, grounds.load, grounds.unit, grounds.reps, effort, side,
                       grounds.sets):  # fmt: skip
            if ground is not None and ground.at is not None and ground.source in sources:
                yield ground.at


def _agrees(marks: Sequence[Mark], place: int, told: Sequence[Told]) -> bool:
    """Whether an effort says once more what is left: `90x10 rpe 8 (2 rir)` of the only set told, `90x10 @8, 2 left`."""
    value, rir = marks[place].value, told[0].row.rir if len(told) == 1 else None
    if value is None:
        return False
    if place > 0 and marks[place - 1].kind is Kind.RPE:
        return rir is not None and HARDEST - value == rir
    at = next((i for i in range(place - 1, max(0, place - _NEAR), -1) if marks[i].kind is Kind.NUM), 0)
    exerted = at > 0 and (marks[at - 1].kind is Kind.RPE or marks[at - 1].text == "@")
    return exerted and marks[at].value == HARDEST - value


def _is_rating(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number is that of an effort: `rir 0`, `2 in the tank`."""
    before = marks[place - 1].kind if place else None
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    return before in _RATES or after in _RATED


def _set_named(marks: Sequence[Mark], place: int, after: int) -> int | None:
    """The set that a mark names beside a number of its part: the 3 of `third i had to stop at 3`.

    `after` is the set after those that are kept.
    """
    mark = marks[place]
    if mark.kind is not Kind.ORD or mark.value is None:
        return None
    if any("fail" in m.text for m in marks[max(0, place - 3) : place]):
        return None
    following = [m for m in marks[place + 1 :] if m.kind is not Kind.FILL]
    if following and (following[0].kind in _OF_REPS or following[0].text.startswith("back")):
        return None
    called = place + 1 < len(marks) and marks[place + 1].text == "one"
    named = called or (bool(following) and following[0].kind in (*_NAMES_SET, Kind.NUM, Kind.WAS, Kind.COLON))
    part = []
    for m in following:
        if m.kind in EDGES:
            break
        part.append(m)
    if not any(m.kind is Kind.NUM for m in part) or not (named or int(mark.value) == after):
        return None
    return int(mark.value)


def _next_after(numbers: set[int | None]) -> int:
    """The set after the last of those that are kept."""
    return max((n for n in numbers if n is not None), default=0) + 1


def _is_left_open(marks: Sequence[Mark], place: int, spans: Spans) -> bool:
    """Whether a number that is no kept value stands in the sentence behind: `third i bailed, did not get past 3`."""
    for at in range(place + 1, len(marks)):
        if marks[at].kind in (Kind.STOP, Kind.LINE, Kind.QUERY):
            return False
        if marks[at].kind is Kind.NUM and not spans.touch(marks[at]) and marks[at].value is not None:
            return not (at + 1 < len(marks) and marks[at + 1].kind in (Kind.MINUTES, Kind.HOURS, Kind.SLASH))
    return False


def _unlikely(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Iterator[Mark]:
    """Bare numbers kept as repetitions though they are at most half of what is planned and nothing explains it."""
    highest: int | None = None
    for one in told:
        place = record.place_of(one.row.exercise)
        if place is None or one.row.stage is not Stage.WORK:
            continue
        if (one.row.exercise, one.row.set or 0) in record.replaces and any(_puts_right(m) for m in marks):
            continue
        if _is_low(one, record.context(place)) and not (highest is not None and one.row.reps * 3 > highest):
            mark = _bare(marks, one)
            if mark is not None:
                yield mark
        highest = one.row.reps


def _puts_right(mark: Mark) -> bool:
    """Whether a word says that a stored number was wrong: `was 2 not 4`, `was 2, miscounted`."""
    return mark.kind in (Kind.NOT, Kind.WROTE) or (mark.kind in (Kind.SORRY, Kind.MEANT) and "count" in mark.text)


def _is_low(one: Told, context: Context) -> bool:
    return one.row.reps * 2 <= context.range_of(one.row.set).low


def _bare(marks: Sequence[Mark], one: Told) -> Mark | None:
    """The mark of a set's repetitions, where they stand without a load, a link, or a word that says what they are."""
    at = one.grounds.reps.at
    if one.grounds.reps.source is not Source.SAID or at is None:
        return None
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM and m.start < at[1] and at[0] < m.end), None)
    if place is None:
        return None
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    said = {w for m in marks[max(0, place - 3) : place] for w in m.text.split()}
    load = one.grounds.load
    linked = load.source is Source.SAID and load.at is not None
    if linked and any(m.kind in _LINKS for m in marks[max(0, place - 1) : place]):
        return None
    first = not any(m.kind is Kind.NUM for m in marks[:place])
    of_them = first and place + 1 < len(marks) and marks[place + 1].text.startswith("of")
    counted = of_them or after in (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.EACH, Kind.LEFT, Kind.RIGHT)
    return None if counted or said & _EXPLAINED else marks[place]
