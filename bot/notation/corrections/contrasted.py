"""What a set was not, beside no stored set: `the bar was 95 not 100, got 5`, `4 on this one, not 5`.

What stands behind the `not` is what was planned or done before; nothing that is stored is put right by it.
"""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

_DENYING = ("not", "and not", "instead of", "rather than")
_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.BREAK)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_OF_STORED = (Kind.SORRY, Kind.MEANT, Kind.WROTE, Kind.SCRAP, Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL,
              Kind.DROP, Kind.MINI, Kind.LEFT, Kind.RIGHT)  # fmt: skip
"""Kinds that speak of what is stored."""
_THIS = ("this one", "this time", "this go", "this round")
_ON = (Kind.AT, Kind.FOR, Kind.WITH)
_LINKS = (Kind.X, Kind.FOR)
_CUES = (Kind.WAS, Kind.MEANT)


def with_contrasts(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks without what a set of now was not, and without the words that only say that it is one of now."""
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NOT and mark.text in _DENYING and kind_at(marks, place + 1) is Kind.NUM:
            end = place + 2 + (kind_at(marks, place + 2) in _UNITS)
            linked = kind_at(marks, end) is Kind.X or (
                kind_at(marks, end) is Kind.FOR and any(m.kind in _LINKS for m in marks[:place])
            )
            if not linked and _contrasts(marks, place, record, under):
                gone |= set(range(place, end))
    return _without_this([m for i, m in enumerate(marks) if i not in gone], record, under)


def _sentence(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    start = end = place
    for mark in reversed(marks[:place]):
        if mark.kind in _ENDS:
            break
        start -= 1
    for mark in marks[place:]:
        if mark.kind in _ENDS:
            break
        end += 1
    return start, end


def _contrasts(marks: Sequence[Mark], place: int, record: Record, under: int | None) -> bool:
    """Whether the number behind the `not` is of the plan, or of the set before, and of none that is put right."""
    start, end = _sentence(marks, place)
    sentence = marks[start:end]
    before = [i for i in range(start, place) if marks[i].kind is Kind.NUM]
    denied = marks[place + 1].value
    if not before or denied is None or any(m.kind in _OF_STORED for m in sentence):
        return False
    if marks[before[-1]].value == denied or denied in [m.value for m in marks[:place] if m.kind is Kind.NUM]:
        return False
    named = [m.names[0] for m in marks[:place] if m.kind is Kind.NAME and len(m.names) == 1]
    exercise = named[-1] if named else under
    if exercise is None:
        return False
    context, last = record.context(exercise), record.last()
    if not named and last is not None and denied in (last.reps, None if last.load is None else last.load.amount):
        return _is_of_now(marks, start, end) and bool(context.open_sets)
    if not context.worked:
        return denied in _planned(record, exercise)
    return _is_of_now(marks, start, end) and bool(context.open_sets)


def _is_of_now(marks: Sequence[Mark], start: int, end: int) -> bool:
    """Whether a sentence says that it is of a set of now; not `this one was 4`, which may be the one that is stored."""
    this = _this_at(marks, range(start, end))
    return this is not None and kind_at(marks, this[1]) not in _CUES


def _planned(record: Record, place: int) -> set[Decimal]:
    """The loads and repetitions that the plan has for an exercise."""
    sets = record.exercises[place].sets
    loads = {s.load.amount for s in sets if s.load is not None}
    return loads | {Decimal(n) for s in sets for n in (s.reps.low, s.reps.high)}


def _this_at(marks: Sequence[Mark], places: range) -> tuple[int, int] | None:
    """Where `this one`, `this set` starts and ends."""
    for at in places:
        if not marks[at].text.startswith("this"):
            continue
        if marks[at].text in _THIS:
            return at, at + 1
        if marks[at].text == "this" and (kind_at(marks, at + 1) is Kind.SET or text_at(marks, at + 1) == "time"):
            return at, at + 2
    return None


def _linked_load(marks: list[Mark], load: int, record: Record, under: int | None) -> list[Mark]:
    """`12 each, 40 this time`: the count, and at what load, where 40 are too many repetitions."""
    between = load - 1
    count = between - 1 - (kind_at(marks, between - 1) in _COUNTED)
    parted = kind_at(marks, between) is Kind.COMMA or text_at(marks, between) == "but"
    told = count >= 0 and kind_at(marks, count) is kind_at(marks, load) is Kind.NUM
    opens = kind_at(marks, count - 1) in (None, Kind.FILL, *_ENDS) if count else True
    if under is None or not (parted and told and opens):
        return marks
    context, reps, value = record.context(under), marks[count].value, marks[load].value
    fits = reps is not None and reps == int(reps) and context.are_reps_in_reason(int(reps), None)
    if not fits or value is None or context.are_reps_in_reason(int(value), None):
        return marks
    at = marks[load].start
    return [*marks[:between], Mark(Kind.AT, "at", at, at), *marks[load:]]


_COUNTED = (Kind.REPS, Kind.EACH)


def _without_this(marks: list[Mark], record: Record, under: int | None) -> list[Mark]:
    """`4 on this one`, `4 reps this set`, `this set 4`: a set of now, as any; not what stands in `this one was 4`."""
    found = _this_at(marks, range(len(marks)))
    if found is None or not any(m.kind is Kind.NUM for m in marks):
        return marks
    at, end = found
    if kind_at(marks, end) in _CUES:
        begun = under is None or bool(record.context(under).worked)
        return marks if begun or at else marks[end + 1 :]
    before = kind_at(marks, at - 1) if at else None
    if before not in (None, *_ON, Kind.NUM, *_UNITS) or (before is None and kind_at(marks, end) is not Kind.NUM):
        return marks
    marks = _linked_load(marks, at - 1, record, under)
    start = at - (before in _ON and marks[at - 1].text != "@")
    return [*marks[:start], *marks[end:]]
