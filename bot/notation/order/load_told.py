"""A load told in other places: `7 at plus fifteen`, `20 on the rows, 12 reps`, `+7.5 on the last chins, got 8`."""

from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB)
_SIGNS = (Kind.PLUS, Kind.ADDED, Kind.SIGN)
_OF_LAST = (Kind.LASTSET, Kind.LASTREP, Kind.FILL, Kind.SET, Kind.SETS)
_SENTENCES = (Kind.STOP, Kind.LINE)


def load_told(marks: list[Mark]) -> list[Mark]:
    """The marks with such loads at their sets."""
    return _on_load(_of_ordinal(_hung_on(_announced(_name_first(_signed(marks))))))


def _signed(marks: list[Mark]) -> list[Mark]:
    """The `plus` of `8, 7 and 6 at plus fifteen`, `dips plus five 6 6 5`: the sign of what is added."""
    return [
        replace(m, kind=Kind.SIGN, text="+")
        if m.kind is Kind.PLUS
        and (kind_at(marks, i - 1) in (Kind.AT, Kind.WITH) or (m.text == "plus" and kind_at(marks, i - 1) is Kind.NAME))
        and kind_at(marks, i + 1) is Kind.NUM
        else m
        for i, m in enumerate(marks)
    ]


def _name_first(marks: list[Mark]) -> list[Mark]:
    """`+7.5 on the last set of chins, got 8` as `chins +7.5 on the last set, got 8`."""
    for place in range(1, len(marks) - 2):
        load = place - 1 - (kind_at(marks, place - 1) in _UNITS)
        end = place + 1
        while kind_at(marks, end) in _OF_LAST:
            end += 1
        led = marks[place].kind in (Kind.WITH, Kind.AT) and kind_at(marks, load) is Kind.NUM
        last = any(m.kind in _OF_LAST[:2] for m in marks[place + 1 : end])
        named = kind_at(marks, end) is Kind.NAME and kind_at(marks, end + 1) is Kind.COMMA
        start = load - (kind_at(marks, load - 1) in _SIGNS)
        if led and last and named and kind_at(marks, start - 1) in (None, Kind.FILL, *_SENTENCES):
            return [*marks[:start], marks[end], *marks[start:end], *marks[end + 1 :]]
    return marks


def _announced(marks: list[Mark]) -> list[Mark]:
    """`using 30 on leg curl. 30x12` as `leg curl 30x12`: a load that the set behind it tells again."""
    for place in range(1, len(marks) - 4):
        load = place - 1 - (kind_at(marks, place - 1) in _UNITS)
        on = marks[place].kind in (Kind.WITH, Kind.AT) and marks[place].text.startswith("on")
        if not on or kind_at(marks, load) is not Kind.NUM or kind_at(marks, place + 1) is not Kind.NAME:
            continue
        entry = place + 2
        while kind_at(marks, entry) in _TO_ENTRY:
            entry += 1
        again = kind_at(marks, entry) is Kind.NUM and marks[entry].value == marks[load].value
        opens = kind_at(marks, load - 1) in (None, Kind.FILL, Kind.WITH, Kind.TO, Kind.AT, *_SENTENCES)
        if again and opens and kind_at(marks, entry + 1) in (Kind.X, *_UNITS):
            start = load - (kind_at(marks, load - 1) in (Kind.WITH, Kind.TO, Kind.AT))
            return [*marks[:start], marks[place + 1], *marks[entry:]]
    return marks


_TO_ENTRY = (Kind.FILL, Kind.COMMA, Kind.COLON, Kind.DASH, *_SENTENCES)


def _hung_on(marks: list[Mark]) -> list[Mark]:
    """`20 on the rows, 12 reps` as `rows 20 x 12 reps`, where nothing else is told of them."""
    for place in range(1, len(marks) - 3):
        load = place - 1 - (kind_at(marks, place - 1) in _UNITS)
        led = marks[place].kind in (Kind.WITH, Kind.AT) and marks[place].text.startswith("on")
        named = [m.kind for m in marks[place + 1 : place + 3]] == [Kind.NAME, Kind.COMMA]
        count = place + 3
        while kind_at(marks, count) is Kind.FILL:
            count += 1
        counted = kind_at(marks, count) is Kind.NUM and kind_at(marks, count + 1) is Kind.REPS
        ends = kind_at(marks, count + 2) in (None, *_SENTENCES, Kind.FILL)
        opens = kind_at(marks, load - 1) in (None, Kind.FILL, *_SENTENCES)
        if led and named and counted and ends and opens and kind_at(marks, load) is Kind.NUM:
            by = replace(marks[place + 2], kind=Kind.X, text="x")
            return [*marks[:load], marks[place + 1], *marks[load:place], by, *marks[count:]]
    return marks


def _of_ordinal(marks: list[Mark]) -> list[Mark]:
    """`6, second set holding a 10lb plate 5`: the load of that set alone, and its repetitions."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        before = place - 1 - (kind_at(marks, place - 1) is Kind.PLATES)
        load = before - 1
        start = load - 1
        while kind_at(marks, start) in (Kind.FILL, Kind.WITH, Kind.AT, Kind.SET, Kind.COLON, Kind.WORD, *_SIGNS):
            start -= 1
        weighed = kind_at(marks, before) in _UNITS and kind_at(marks, load) is Kind.NUM
        which = kind_at(marks, start) is Kind.ORD and start < load - 1
        ends = kind_at(marks, place + 1) in (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.REPS, Kind.AND)
        if mark.kind is Kind.NUM and weighed and which and ends:
            if before < place - 1:
                out.pop()
            out.append(replace(mark, kind=Kind.X, text="x", value=None, parts=(), end=mark.start))
        out.append(mark)
    return out


def _on_load(marks: list[Mark]) -> list[Mark]:
    """`the machine on 20, twelve times` as `20 x twelve`, where no number stands before it in its sentence."""
    for place in range(len(marks) - 3):
        comma = place + 2 + (kind_at(marks, place + 2) in _UNITS)
        count = comma + 1
        while kind_at(marks, count) is Kind.FILL:
            count += 1
        told = marks[place].text == "on" and kind_at(marks, place + 1) is Kind.NUM
        counted = kind_at(marks, count) is Kind.NUM and kind_at(marks, count + 1) in (Kind.REPS, Kind.TIMES)
        if not (told and counted and kind_at(marks, comma) is Kind.COMMA):
            continue
        start = max((i + 1 for i in range(place) if marks[i].kind in _SENTENCES), default=0)
        if not any(m.kind in (Kind.NUM, Kind.SETS) for m in marks[start:place]):
            times = replace(marks[comma], kind=Kind.X, text="x")
            done = [replace(m, kind=Kind.FILL) if m.kind is Kind.DONE else m for m in marks[start:place]]
            return [*marks[:start], *done, *marks[place + 1 : comma], times, *marks[comma + 1 :]]
    return marks
