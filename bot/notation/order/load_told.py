"""A load told in other places: `7 at plus fifteen`, `on 20, twelve times`, `+7.5 on the last chins, got 8`."""

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
    return _on_load(_name_first(_signed(marks)))


def _signed(marks: list[Mark]) -> list[Mark]:
    """The `plus` of `8, 7 and 6 at plus fifteen`: the sign of what is added."""
    return [
        replace(m, kind=Kind.SIGN, text="+")
        if m.kind is Kind.PLUS and kind_at(marks, i - 1) in (Kind.AT, Kind.WITH) and kind_at(marks, i + 1) is Kind.NUM
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
