"""A circuit: `3 rounds of everything: 10 rows @50, 8 step ups each`; each of its exercises has as many sets."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.named_entries import name_first
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_WHOLE = frozenset(words("everything circuit each all it whole lot following"))
_PARTS = (Kind.PLUS, Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.AND, Kind.THEN)
_NAMES = (Kind.NAME, Kind.WEAK)


def with_rounds(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the number of rounds before each exercise of the circuit."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.SETS and m.text.startswith("round")), None)
    if place is None:
        marks = _all_counted(_gone_through(marks))
        place = next((i for i, m in enumerate(marks) if m.kind is Kind.SETS and m.text.startswith("round")), None)
    if place is None or place == 0 or marks[place - 1].kind is not Kind.NUM:
        return list(marks)
    before = [m for m in marks[: place - 1] if m.kind in (*_NAMES, *NUMBERS)]
    told = list(marks[: place - 1])
    told = told if _is_alike(told) else _parted(told)
    if _is_of_before(marks, place) and _is_alike(told):
        return _counted(told, marks[place - 1 : place + 1])
    colon = next(
        (i for i in range(place, min(place + 5, len(marks))) if marks[i].kind in (Kind.COLON, Kind.LINE)), None
    )
    named = sum(m.kind in _NAMES for m in marks[place:])
    if before or named < 2:
        return list(marks)
    if colon is None:
        return (
            _counted(marks[place + 1 :], marks[place - 1 : place + 1]) if _is_alike(marks[place + 1 :]) else list(marks)
        )
    said = {w for m in marks[place + 1 : colon] if m.kind not in (Kind.FILL, Kind.DONE) for w in m.text.split()}
    if not said and not any(m.kind in NUMBERS for m in marks[place + 1 : colon]):
        return _counted(marks[colon + 1 :], marks[place - 1 : place + 1])
    load = marks[colon - 1 : colon]
    loaded = sum(m.kind in NUMBERS for m in marks[place + 1 : colon]) == 1 and load[0].kind in NUMBERS
    if loaded and any(m.kind is Kind.WITH for m in marks[place + 1 : colon]):
        return _counted(marks[colon + 1 :], marks[place - 1 : place + 1], load)
    if any(m.kind in NUMBERS for m in marks[place + 1 : colon]) or not (said & _WHOLE or colon == place + 1):
        return list(marks)
    return _counted(marks[colon + 1 :], marks[place - 1 : place + 1])


_NUMBERS = {"two": 2, "three": 3, "four": 4, "five": 5, "2": 2, "3": 3, "4": 4, "5": 5, "both": 2}


_THOSE = frozenset(words("that those it this them both each these all"))


def _is_of_before(marks: Sequence[Mark], place: int) -> bool:
    """`swings 15, goblets 10, three rounds of that`: how often what was told before, at the end of the message."""
    said = {w for m in marks[place : place + 4] for w in m.text.split()}
    rest = marks[place + 1 :]
    plain = all(m.kind in (Kind.FILL, Kind.STOP, Kind.LINE, Kind.EACH, Kind.ALL) for m in rest)
    alone = not rest and kind_at(marks, place - 2) in _PARTS
    return plain and (alone or bool(said & _THOSE)) and sum(m.kind in _NAMES for m in marks[:place]) > 1


def _parted(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a comma between a number and the name behind it: `swings 15 goblets 10`."""
    out: list[Mark] = []
    for mark in marks:
        if mark.kind in _NAMES and out and out[-1].kind in NUMBERS and out and any(m.kind in _NAMES for m in out[:-1]):
            out.append(
                replace(out[-1], kind=Kind.COMMA, text=",", value=None, parts=(), start=mark.start, end=mark.start)
            )
        out.append(mark)
    return out


def _gone_through(marks: Sequence[Mark]) -> list[Mark]:
    """`12 swings then 10 goblets, 3 times through`, `… did that 3 times`: so many rounds of what was told before."""
    for place, mark in enumerate(marks):
        number, end = place - 1, place + 1
        if mark.kind is not Kind.TIMES or kind_at(marks, number) is not Kind.NUM:
            continue
        start = number
        while start > 0 and marks[start - 1].kind not in (*_PARTS, *_NAMES, *NUMBERS):
            start -= 1
        said = {w for m in marks[start:number] for w in m.text.split()}
        through = text_at(marks, end) in _THROUGH
        counted = any(kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in _SETS for at in range(start))
        those = said & _THOSE and said <= _THOSE | _DID and not counted
        if through or mark.text.endswith(" over") or those:
            rounds = replace(mark, kind=Kind.SETS, text="rounds of that")
            return [*marks[:start], marks[number], rounds, *marks[end + through :]]
    return list(marks)


_SETS = (Kind.SET, Kind.SETS)
_THROUGH = ("through", "thru", "round", "around", "over", "over again", "all over")
_DID = frozenset(words("did i we done do went gone through repeated repeat and then for to"))


def _all_counted(marks: Sequence[Mark]) -> list[Mark]:
    """`all 3 rounds done: swings 15, goblets 10`: the number of rounds, said of all."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ALL or not mark.text.endswith("rounds"):
            continue
        said = mark.text.split()
        count = next((_NUMBERS[w] for w in said if w in _NUMBERS), None)
        if said[-1] == "rounds" and count is not None:
            number = replace(mark, kind=Kind.NUM, value=Decimal(count), parts=())
            return [*marks[:place], number, replace(mark, kind=Kind.SETS, text="rounds"), *marks[place + 1 :]]
    return list(marks)


def _is_alike(marks: Sequence[Mark]) -> bool:
    """`3 rounds done, swings 15 and goblets 10 at 50`: each exercise that is named has one count, and its own part."""
    parts: list[list[Mark]] = [[]]
    for mark in marks:
        if mark.kind in _PARTS:
            parts.append([])
        else:
            parts[-1].append(mark)
    told = [p for p in parts if any(m.kind in (*_NAMES, *NUMBERS) for m in p)]
    numbers = [sum(m.kind in NUMBERS and not _is_load(p, i) for i, m in enumerate(p)) for p in told]
    plain = all(m.kind in _PLAIN for p in told for m in p)
    named = all(sum(m.kind in _NAMES for m in p) == 1 for p in told)
    return len(told) > 1 and plain and named and set(numbers) == {1}


_PLAIN = (*_NAMES, Kind.NUM, Kind.FILL, Kind.REPS, Kind.EACH, Kind.S, Kind.KG, Kind.LB, Kind.AT, Kind.WITH)


def _is_load(part: Sequence[Mark], place: int) -> bool:
    """Whether a number of a part is a load: `at 50`, `50 kg`."""
    return kind_at(part, place + 1) in (Kind.S, Kind.KG, Kind.LB) or kind_at(part, place - 1) in (Kind.AT, Kind.WITH)


def _counted(marks: Sequence[Mark], count: Sequence[Mark], load: Sequence[Mark] = ()) -> list[Mark]:
    """The marks with the count before each part that names an exercise."""
    out: list[Mark] = []
    part: list[Mark] = []
    for mark in [*marks, None]:
        if mark is not None and mark.kind not in _PARTS:
            part.append(mark)
            continue
        at = 0
        name = next((i for i, m in enumerate(part) if m.kind in _NAMES), 0)
        if any(_is_load(part, i) for i in range(len(part))):
            part = name_first(part, name)
        if any(m.kind in _NAMES for m in part) and not any(m.kind in (Kind.SETS, Kind.X) for m in part):
            first = next(i for i, m in enumerate(part) if m.kind in (*_NAMES, *NUMBERS))
            at = first + 1 if part[first].kind in _NAMES and any(m.kind in NUMBERS for m in part) else 0
            out += [*part[:at], count[0], replace(count[1], text="sets")]
        out += part[at:]
        if load and any(m.kind in NUMBERS for m in part):
            out += [
                replace(load[0], kind=Kind.WITH, text="with", value=None),
                *load,
                replace(load[0], kind=Kind.S, text="s"),
            ]
        part = []
        if mark is not None:
            out.append(replace(mark, kind=Kind.COMMA, text=",") if mark.kind in (Kind.AND, Kind.PLUS) else mark)
    return out
