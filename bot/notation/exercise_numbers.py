"""What is told by its number: `first exercise`, `exercise 2`, `ex 3:`, and the runs of a session that has some.

`run one and two with 80, run three with 90` are sets of what is measured in metres; `hold no. 2 @ 40` is a set, too.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.tokens import Mark
from bot.training.plan import Measure, PlannedExercise

_WORDS = frozenset(["exercise", "ex", "excercise", "exercice", "movement", "lift"])


def exercises_by_number(marks: Sequence[Mark], count: int) -> list[Mark]:
    """The marks with such words as names. `count`: the exercises of the session."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, end = marks[at], at + 1
        place = _place(marks, at)
        if mark.kind is Kind.THEREST and mark.text.endswith(("last exercise", "final exercise")):
            place = count
        elif place is not None:
            end = at + 2
        if place is not None and 1 <= place <= count:
            last = marks[end - 1]
            out.append(replace(mark, kind=Kind.NAME, names=(place - 1,), value=None, parts=(), end=last.end))
            at = end
            continue
        out.append(mark)
        at += 1
    return out


def _place(marks: Sequence[Mark], at: int) -> int | None:
    """The place that two words from here name, which open a part or stand before a colon or a number."""
    mark, after = marks[at], marks[at + 1] if at + 1 < len(marks) else None
    if after is None or (after.text not in _WORDS and mark.text not in _WORDS):
        return None
    if kind_at(marks, at - 1) not in (None, *EDGES, Kind.FILL, Kind.THEN, Kind.AND, Kind.NUM):
        return None
    word = after.text in _WORDS and kind_at(marks, at + 2) in (Kind.COLON, Kind.NUM, Kind.WAS, Kind.COMMA, Kind.DASH)
    if mark.kind is Kind.ORD and mark.value is not None and word:
        return int(mark.value)
    numbered = text_at(marks, at) in _WORDS and after.kind is Kind.NUM and after.value is not None
    told = kind_at(marks, at + 2) in (Kind.COLON, Kind.NUM, Kind.COMMA, Kind.DASH)
    whole = numbered and after.value is not None and after.value == int(after.value)
    return int(after.value) if whole and told and after.value is not None else None


_NUMBER = frozenset(["no", "nr", "nbr", "number", "numero", "nos"])


def _sets_by_number(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the `no.` of `hold no. 2 @ 40` as the word `set`."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        if mark.text not in _NUMBER:
            out.append(mark)
            at += 1
            continue
        number = at + 1 + (kind_at(marks, at + 1) is Kind.STOP)
        led = kind_at(marks, at - 1) in (Kind.NAME, Kind.WEAK)
        pointed = number < len(marks) and marks[number].text.startswith(".") and marks[number].text[1:].isdigit()
        if led and pointed:
            digits = marks[number].text[1:]
            marks = [*marks[:number], replace(marks[number], text=digits, value=Decimal(digits)), *marks[number + 1 :]]
        if led and whole_number(marks, number, 1, MOST_SETS) is not None and kind_at(marks, number + 1) not in _TIED:
            told = [replace(mark, kind=Kind.SET, text="set", end=marks[number - 1].end), marks[number]]
            twice = kind_at(marks, at - 2) is Kind.ORD and marks[at - 2].value == marks[number].value
            out += [] if twice else told
            at = number + 1
            continue
        out.append(mark)
        at += 1
    return out


_TIED = (Kind.X, Kind.FOR, Kind.REPS, Kind.KG, Kind.LB, Kind.S, Kind.SLASH, Kind.MORE)
_RUNS = frozenset(["run", "runs", "trip", "trips", "length", "lengths", "lap", "laps"])
_OF_RUN = (Kind.WITH, Kind.AT, Kind.WAS, Kind.COLON, Kind.NUM, Kind.AND)


def runs_by_number(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with such runs, and with the number of a set behind a name, as sets."""
    marks = _sets_by_number(marks)
    out = list(marks)
    if not any(e.measure is Measure.METRES for e in exercises):
        return out
    for place, mark in enumerate(marks[:-2]):
        if mark.text not in _RUNS or kind_at(marks, place - 1) not in (None, *EDGES, Kind.NAME, Kind.THEN, Kind.AND):
            continue
        one = marks[place + 1].kind is Kind.FILL and marks[place + 1].text == "one"
        numbered = one or whole_number(marks, place + 1, 1, MOST_SETS) is not None
        if not numbered or marks[place + 2].kind not in _OF_RUN:
            continue
        several = marks[place + 2].kind is Kind.AND
        out[place] = replace(mark, kind=Kind.SETS if several else Kind.SET, text="sets" if several else "set")
        if one:
            out[place + 1] = replace(marks[place + 1], kind=Kind.NUM, value=Decimal(1))
    return out
