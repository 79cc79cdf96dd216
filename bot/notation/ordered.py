"""Marks put in the order in which sets are written: a unit after its number, a load beside the sets it is of.

`kg 55 reps 12`, `53lb swings 15 15`, `180lb` on a line above its sets, `1. set 80x15`, `22 point 5`, `two times rows`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_UNITS = (Kind.KG, Kind.LB)
_OF_LOAD = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_LOADED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB)
_REPEATS = ("and again", "once more", "again")
_ROW = (Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.AND, Kind.FILL, Kind.REPS, Kind.EACH, Kind.M, Kind.METRES, Kind.SECONDS)
_ABOUT = (Kind.FILL, Kind.NAME, Kind.COLON, Kind.GAP, Kind.WITH, Kind.AT, Kind.ORD, Kind.TIMES)
_WHEN = frozenset(words("since after before until till during between"))
_BELLS = frozenset(words("db dbs dumbbell dumbbells dumbell dumbells kb kbs kettlebell kettlebells bells"))
_LOWS = {"single": 1, "double": 2, "triple": 3}
_LITTLE = frozenset(words("little bit some slight tiny"))
_POINT = 100


def ordered(marks: Sequence[Mark]) -> list[Mark]:
    """The marks in that order."""
    said = _lows(_likes(_with_decimals(_numbered(_mentions(list(marks))))))
    said = _heading_loads(_before_names(_units_first(_another(_labels_first(said)))))
    return [_by_neighbours(said, place) for place in range(len(said))]


def _kind(marks: Sequence[Mark], place: int) -> Kind | None:
    return marks[place].kind if 0 <= place < len(marks) else None


def _numbered(marks: list[Mark]) -> list[Mark]:
    """`1. set 80x15 2. set 80x14`: which set each is."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        kinds = [_kind(marks, at + n) for n in (0, 1, 2)]
        mark = marks[at]
        if kinds == [Kind.NUM, Kind.STOP, Kind.SET] and mark.value is not None and mark.value <= 12:
            out.append(replace(mark, kind=Kind.LABEL, end=marks[at + 2].end))
            at += 3
            continue
        out.append(mark)
        at += 1
    return out


def _mentions(marks: list[Mark]) -> list[Mark]:
    """`since the second set`: when, not which."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        before = [m.text.split()[-1:] for m in marks[max(0, place - 2) : place]]
        when = any(word and word[0] in _WHEN for word in before)
        if when and marks[place].kind is Kind.ORD and marks[place + 1].kind in (Kind.SET, Kind.LASTSET, Kind.WORKSET):
            out[place] = replace(marks[place], kind=Kind.GAP, value=None)
            out[place + 1] = replace(marks[place + 1], kind=Kind.GAP)
    return out


def _lows(marks: list[Mark]) -> list[Mark]:
    """`315 triple`: a load, and repetitions by their name."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.text in _LOWS and _kind(marks, place - 1) is Kind.NUM and _kind(marks, place + 1) is not Kind.NUM:
            out.append(replace(mark, kind=Kind.FOR, text="for", end=mark.start))
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(_LOWS[mark.text])))
        else:
            out.append(mark)
    return out


def _likes(marks: list[Mark]) -> list[Mark]:
    """`another two like that`: so many sets alike; `the same for the other two`: all that are left."""
    out = list(marks)
    for place in range(len(marks)):
        said = [m.text for m in marks[place + 1 : place + 3]]
        if marks[place].kind is Kind.NUM and said in (["like", "that"], ["like", "those"], ["like", "it"]):
            out[place + 1] = replace(marks[place + 1], kind=Kind.SAME)
        others = [m for m in marks if m.kind is Kind.THEREST or m.text in ("others", "the others")]
        if marks[place].kind is Kind.SAME and others and not any(m.kind is Kind.NUM for m in marks):
            return [replace(m, kind=Kind.ALL) if m in others else m for m in out]
    return out


def _with_decimals(marks: list[Mark]) -> list[Mark]:
    """`22 point 5`, `22 and half`: one number."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        said = [m.text for m in marks[at + 1 : at + 4]]
        whole = mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value)
        if whole and mark.value is not None and said[:1] == ["point"] and _kind(marks, at + 2) is Kind.NUM:
            tail = marks[at + 2].value or Decimal(0)
            if tail < _POINT and tail == int(tail):
                value = mark.value + tail / (10 if tail < 10 else 100)
                out.append(replace(mark, value=value, parts=(), end=marks[at + 2].end))
                at += 3
                continue
        halves = 3 if said == ["and", "a", "half"] else 2 if said[:2] == ["and", "half"] else 0
        if whole and mark.value is not None and halves and _kind(marks, at + halves + 1) is not Kind.MINUTES:
            out.append(replace(mark, value=mark.value + Decimal("0.5"), parts=(), end=marks[at + halves].end))
            at += halves + 1
            continue
        out.append(mark)
        at += 1
    return out


def _labels_first(marks: list[Mark]) -> list[Mark]:
    """`24 for the first three rounds of fifteen`: the first three, at 24."""
    out = list(marks)
    for place in range(1, len(out) - 1):
        at = place - 1
        while at >= 0 and out[at].kind is Kind.FILL:
            at -= 1
        if out[place].kind is Kind.ORD and [_kind(out, at - 1), _kind(out, at), _kind(out, place + 1)] == [
            Kind.NUM,
            Kind.FOR,
            Kind.NUM,
        ]:
            out.insert(at - 1, out.pop(place))
    return out


def _another(marks: list[Mark]) -> list[Mark]:
    """`could have done another 2`: two more."""
    out = list(marks)
    for place in range(1, len(out) - 1):
        kinds = [out[place + n].kind for n in (-1, 0, 1)]
        if kinds == [Kind.COULD, Kind.ANOTHER, Kind.NUM]:
            out[place : place + 2] = [out[place + 1], replace(out[place], kind=Kind.MORE)]
    return out


def _units_first(marks: list[Mark]) -> list[Mark]:
    """`kg 55 reps 12`, `reps: 8`: what a number counts, said before it."""
    out = list(marks)
    for place in range(len(out) - 1):
        mark = out[place]
        unit = mark.kind in _UNITS and mark.text not in ("k", "#")
        if not (unit or (mark.kind is Kind.REPS and mark.text in ("reps", "repetitions"))):
            continue
        at = place + 1
        while _kind(out, at) in (Kind.COLON, Kind.DASH, Kind.WAS):
            at += 1
        linked = not unit and _kind(out, at + 1) in (Kind.X, Kind.SETS)
        if _kind(out, place - 1) is Kind.NUM or _kind(out, at) is not Kind.NUM or linked:
            continue
        if unit and _kind(out, at + 1) in _UNITS and _kind(out, at + 2) is not Kind.NUM:
            continue
        out[place : at + 1] = [out[at], mark, *(replace(m, kind=Kind.GAP) for m in out[place + 1 : at])]
    return out


def _before_names(marks: list[Mark]) -> list[Mark]:
    """`53lb swings 15 15 15`: the load of the sets that follow the name."""
    out = list(marks)
    for place in range(len(out) - 3):
        starts = place == 0 or out[place - 1].kind in (Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.FILL)
        kinds = [_kind(out, place + n) for n in (0, 1, 2, 3)]
        if starts and kinds[0] is Kind.NUM and kinds[1] in _UNITS and kinds[2:] == [Kind.NAME, Kind.NUM]:
            if _kind(out, place + 4) in _LOADED:
                continue
            out[place : place + 3] = [out[place + 2], out[place], out[place + 1]]
    return out


def _heading_loads(marks: list[Mark]) -> list[Mark]:
    """A load alone on its line or in its sentence, of the sets in the next: `Box squat. 155. 5 5 5.`"""
    out = list(marks)
    start = 0
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.LINE, Kind.STOP):
            continue
        part = _without_counts([m for m in marks[start:place] if m.kind not in _ABOUT])
        part = part[max((i + 1 for i, m in enumerate(part) if m.kind is Kind.COMMA), default=0) :]
        start = place + 1
        end = next((i for i in range(start, len(marks)) if marks[i].kind in (Kind.LINE, Kind.STOP)), len(marks))
        row = [m for m in marks[start:end] if m.kind is not Kind.FILL]
        if _is_load(part) and row and _is_row(part[0], row, has_unit=len(part) > 1):
            out[place] = replace(mark, kind=Kind.COLON)
    return out


def _without_counts(part: Sequence[Mark]) -> list[Mark]:
    """A part without how many sets there were: `3 sets 90kg`."""
    counts = {i for i, m in enumerate(part) if m.kind is Kind.SETS and _kind(part, i - 1) is Kind.NUM}
    return [m for i, m in enumerate(part) if i not in counts and i + 1 not in counts]


def _is_load(part: Sequence[Mark]) -> bool:
    kinds = [m.kind for m in part]
    return kinds[:1] == [Kind.NUM] and len(kinds) <= 2 and all(k in _OF_LOAD for k in kinds[1:])


def _is_row(load: Mark, row: Sequence[Mark], *, has_unit: bool) -> bool:
    """Whether a part holds nothing but repetitions: with a load that says no unit, several smaller ones."""
    counts = [n for m in row if m.kind is Kind.NUM for n in (m.parts or ((m.value,) if m.value is not None else ()))]
    if not counts or any(m.kind not in _ROW for m in row) or row[0].kind is not Kind.NUM or load.value is None:
        return False
    return has_unit or (len(counts) > 1 and load.value > max(counts))


def _by_neighbours(marks: Sequence[Mark], place: int) -> Mark:
    """A mark with the meaning that those beside it give it."""
    mark = marks[place]
    after = _kind(marks, place + 1)
    numbered = after is Kind.NUM
    if mark.kind in (Kind.SAME, Kind.AGAIN) and mark.text in _REPEATS and numbered:
        whole = _kind(marks, place + 2) in _LOADED or _kind(marks, place + 2) in _OF_LOAD
        return replace(mark, kind=Kind.AND if mark.text.startswith("and") else Kind.FILL) if whole else mark
    if mark.kind is Kind.TIMES and _kind(marks, place - 1) is Kind.NUM and mark.text != "twice":
        kind = Kind.SETS if after is Kind.NAME else Kind.X if numbered else mark.kind
        return replace(mark, kind=kind, text="x" if kind is Kind.X else mark.text)
    if mark.kind is Kind.MORE and _kind(marks, place - 1) is Kind.NUM and after in (Kind.SETS, Kind.SET):
        return replace(mark, kind=Kind.FILL)
    if mark.kind in (Kind.NAME, Kind.WEAK) and mark.text in _BELLS and _kind(marks, place - 1) in (*_UNITS, Kind.S):
        return replace(mark, kind=Kind.HAND, names=())
    if mark.kind is Kind.ASSIST and _is_helped(marks, place):
        return replace(mark, kind=Kind.GAP)
    helped = next((i for i in range(place + 1, min(place + 5, len(marks))) if marks[i].kind is Kind.ASSIST), None)
    if mark.kind is Kind.WITH and helped is not None and _is_helped(marks, helped):
        return replace(mark, kind=Kind.GAP)
    return mark


def _is_helped(marks: Sequence[Mark], place: int) -> bool:
    """`with a little help`: no amount of it."""
    at = place - 1
    while _kind(marks, at) is Kind.FILL or (at >= 0 and marks[at].text in _LITTLE):
        at -= 1
    return _kind(marks, at) is Kind.WITH
