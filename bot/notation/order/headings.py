"""A load that heads the sets it is of: before the name, on the line above, in the sentence before."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import LOADED, OF_LOAD, UNITS
from bot.notation.tokens import Mark

_SIDES = (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R)
_ROW = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.AND, Kind.FILL, Kind.REPS, Kind.EACH, Kind.M, Kind.METRES, Kind.SECONDS,
        *_SIDES)  # fmt: skip
_ABOUT = (Kind.FILL, Kind.NAME, Kind.COLON, Kind.GAP, Kind.WITH, Kind.AT, Kind.ORD, Kind.TIMES)
_OPENS = (Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.FILL)
_LIGHTEST = 20
"""A bare number before a name that is less may be its repetitions."""


def before_names(marks: list[Mark]) -> list[Mark]:
    """`53lb swings 15 15 15`, `60kg bench for 5`, `140 deads 5 reps`: the load of the sets that follow the name."""
    out = list(marks)
    for place in range(len(out) - 2):
        if (place and out[place - 1].kind not in _OPENS) or out[place].kind is not Kind.NUM:
            continue
        has_unit = kind_at(out, place + 1) in UNITS
        name = place + 1 + has_unit
        name += has_unit and kind_at(out, name) is Kind.ADDED
        parted = _alone(out, place, name)
        if kind_at(out, parted) is Kind.NAME and _holds(out, place, parted, has_unit=has_unit):
            rest = [replace(m, kind=Kind.FILL) for m in out[name:parted]]
            out[place : parted + 1] = [out[parted], *out[place:name], *rest]
            if kind_at(out, parted + 1) is Kind.COMMA:
                out[parted + 1] = replace(out[parted + 1], kind=Kind.COLON)
    return out


def _alone(marks: Sequence[Mark], place: int, end: int) -> int:
    """Where the name of `90 on the bar, thrusts, 9` stands, behind a load that is all of its part."""
    if place and any(m.kind is not Kind.FILL for m in marks[:place][-1:]) and kind_at(marks, place - 1) not in _STARTS:
        return end
    at = end
    while kind_at(marks, at) in _WHERE and text_at(marks, at) != ",":
        at += 1
    worn = kind_at(marks, end - 1) is Kind.ADDED and kind_at(marks, end - 2) in UNITS
    if kind_at(marks, at) is not Kind.COMMA and not (worn and kind_at(marks, at) is Kind.COLON):
        return end
    at += 1
    while kind_at(marks, at) is Kind.FILL:
        at += 1
    counted = kind_at(marks, at + 1) is Kind.NUM and kind_at(marks, at + 2) in (None, Kind.STOP, Kind.LINE, Kind.REPS)
    follows = kind_at(marks, at + 1) is Kind.COMMA or (worn and counted)
    return at if kind_at(marks, at) is Kind.NAME and follows else end


_STARTS = (Kind.LINE, Kind.STOP, Kind.WITH)
_WHERE = (Kind.FILL, Kind.AT, Kind.PLATES, Kind.GAP)
"""`on the bar`, `on the stack`."""


def _holds(marks: Sequence[Mark], place: int, name: int, *, has_unit: bool) -> bool:
    """Whether repetitions follow the name, and no load of their own."""
    reps = name + 1
    apart = kind_at(marks, reps) is Kind.COMMA and kind_at(marks, place - 1) in (None, Kind.LINE, Kind.STOP)
    while kind_at(marks, reps) in (Kind.X, Kind.FOR, Kind.COLON, *_SIDES, *((Kind.COMMA, Kind.FILL) if apart else ())):
        reps += 1
    if kind_at(marks, reps) is not Kind.NUM or kind_at(marks, reps + 1) in (*LOADED, Kind.NAME):
        return False
    tried = kind_at(marks, reps + 1) is Kind.LINE and not text_at(marks, reps + 1).strip(" ")
    if apart and (tried or kind_at(marks, reps + 1) in (Kind.SETS, Kind.SET)):
        return False
    load, count = marks[place].value, marks[reps].value
    if has_unit:
        return True
    return load is not None and load >= _LIGHTEST and count is not None and load > 2 * count


def heading_loads(marks: list[Mark]) -> list[Mark]:
    """A load alone on its line or in its sentence, of the sets in the next: `Box squat. 155. 5 5 5.`"""
    out = list(marks)
    start = 0
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.LINE, Kind.STOP):
            continue
        part = _without_counts([m for m in marks[start:place] if m.kind not in _ABOUT and not _is_gone_to(m)])
        while part and part[-1].kind is Kind.COMMA:
            part.pop()
        part = part[max((i + 1 for i, m in enumerate(part) if m.kind is Kind.COMMA), default=0) :]
        start = place + 1
        while mark.kind is Kind.STOP and mark.text == "!" and kind_at(marks, start) is Kind.STOP:
            start += 1
        end = next((i for i in range(start, len(marks)) if marks[i].kind in (Kind.LINE, Kind.STOP)), len(marks))
        row = [m for m in marks[start:end] if m.kind is not Kind.FILL]
        has_unit = len(part) > 1 or (bool(part) and part[0].kind is Kind.BODY)
        if _is_load(part) and row and _is_row(part[0], row, has_unit=has_unit):
            if kind_at(out, place - 1) is Kind.NAME and out[place - 2] in part:
                load = place - 1 - len(part)
                out[load:place] = [out[place - 1], *out[load : place - 1]]
            out[:place] = [replace(m, kind=Kind.FILL) if _is_gone_to(m) else m for m in out[:place]]
            out[place:start] = [
                replace(m, kind=Kind.COLON if i == place else Kind.FILL)
                for i, m in enumerate(marks)
                if place <= i < start
            ]
            for stop in _listed_stops(marks, end):
                out[stop] = replace(marks[stop], kind=Kind.COMMA)
    return out


def _is_gone_to(mark: Mark) -> bool:
    """`dropped the weight to`, `went down to`: before a load that heads sets it is no drop."""
    return mark.kind is Kind.TO or (mark.kind is Kind.DROP and mark.text.split(" ")[-1] == "to")


def _listed_stops(marks: Sequence[Mark], end: int) -> list[int]:
    """The full stops of a list under a load whose sentences are one number each: `20s. 12. 12. 11.`"""
    out: list[int] = []
    while kind_at(marks, end) is Kind.STOP and kind_at(marks, end - 1) is Kind.NUM:
        ends = kind_at(marks, end + 2) in (None, Kind.STOP, Kind.LINE)
        if kind_at(marks, end + 1) is not Kind.NUM or not ends:
            break
        out.append(end)
        end += 2
    return out


def _without_counts(part: Sequence[Mark]) -> list[Mark]:
    """A part without how many sets there were: `3 sets 90kg`."""
    counts = {i for i, m in enumerate(part) if m.kind is Kind.SETS and kind_at(part, i - 1) is Kind.NUM}
    return [m for i, m in enumerate(part) if i not in counts and i + 1 not in counts]


def _is_load(part: Sequence[Mark]) -> bool:
    kinds = [m.kind for m in part]
    if kinds == [Kind.BODY]:
        return True
    return kinds[:1] == [Kind.NUM] and len(kinds) <= 2 and all(k in OF_LOAD for k in kinds[1:])


def _is_row(load: Mark, row: Sequence[Mark], *, has_unit: bool) -> bool:
    """Whether a part holds nothing but repetitions: with a load that says no unit, several smaller ones."""
    counts = [n for m in row if m.kind is Kind.NUM for n in (m.parts or ((m.value,) if m.value is not None else ()))]
    if has_unit and [m.kind for m in row[:3]] == [Kind.SET, Kind.NUM, Kind.COLON]:
        row = row[3:]
    if not counts or any(m.kind not in _ROW for m in row) or not row or row[0].kind not in (Kind.NUM, *_SIDES):
        return False
    if has_unit or load.value is None:
        return has_unit
    if len(counts) == 1:
        return load.value >= _LIGHTEST and load.value > 2 * counts[0]
    return load.value > max(counts)
