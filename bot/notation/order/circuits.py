"""Exercises done in turn, told once with their loads: `2 rounds of bench 60x8 and rows 50x10`, `(bench 60x8 + …) x2`.

Each exercise of the circuit has as many sets as there were rounds. Only a message that tells nothing but the circuit is
read so: every exercise named once, with one load and one number of repetitions, or with one number of either.
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NAMES = (Kind.NAME, Kind.WEAK)
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.SECONDS, Kind.REPS, Kind.HAND, Kind.METRES)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_EFFORTS = (Kind.RPE, Kind.RIR)
_RATED = 4
"""Marks of an entry with a load, `60x8`, and a word before its effort."""
_PARTS = (Kind.PLUS, Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.AND, Kind.THEN, Kind.SLASH, Kind.WITH)
_SAID = (*_PARTS, Kind.FILL, Kind.DONE, Kind.COLON, Kind.EACH, Kind.ALL, Kind.SAME, Kind.FOR, Kind.TO, Kind.TOTAL,
         Kind.OPEN, Kind.CLOSE, Kind.SET, Kind.SETS,
         Kind.GAP)  # fmt: skip
"""Kinds that say nothing of how much was lifted: they may stand around the exercises."""
_CIRCUIT = frozenset(words(
    "circuit circuits style superset supersets super alternated alternating alternate paired pair tandem legs core "
    "giant tri combo back forth between"
))  # fmt: skip
"""Words of exercises done in turn (common practice, no source)."""
_THROUGH = frozenset(words("through thru round around over altogether total each both"))
_MOST = 10
"""Rounds that a circuit has at most (common practice, no source)."""


def with_circuits(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the number of rounds before the entry of each exercise of a circuit."""
    marks = _by_round(marks)
    found = next(_counts(marks), None)
    if found is None:
        return list(marks)
    start, end, count = found
    entries = _entries([*marks[:start], *marks[end:]])
    if entries is None or not 2 <= count <= _MOST:
        return list(marks)
    out: list[Mark] = []
    for entry in entries:
        number = replace(entry[0], kind=Kind.NUM, value=Decimal(count), parts=(), names=(), end=entry[0].start)
        sets = replace(number, kind=Kind.SETS, text="sets", value=None)
        parts = replace(number, kind=Kind.LINE, text="", value=None)
        out += [*([parts] if out else []), entry[0], replace(number, start=entry[0].end, end=entry[0].end), sets]
        out += entry[1:]
    return out


def _counts(marks: Sequence[Mark]) -> Iterator[tuple[int, int, int]]:
    """Where it is said how many rounds there were, and how many."""
    for place, mark in enumerate(marks):
        before = marks[place - 1] if place else None
        if mark.kind is Kind.SETS and (mark.text.startswith("round") or _is_superset(marks, place)):
            number = place - 1 - (kind_at(marks, place - 1) is Kind.FILL)
            if kind_at(marks, number) is Kind.NUM and marks[number].value is not None:
                yield number, place + 1, int(marks[number].value or 0)
        elif mark.kind is Kind.TIMES and _is_through(marks, place):
            number = place - 1
            if mark.text == "twice":
                yield place, place + 1, 2
            elif kind_at(marks, number) is Kind.NUM and marks[number].value is not None:
                yield number, place + 1, int(marks[number].value or 0)
        elif mark.kind is Kind.X and before is not None:
            if before.kind is Kind.CLOSE and kind_at(marks, place + 1) is Kind.NUM and place + 2 == len(marks):
                yield place, place + 2, int(marks[place + 1].value or 0)
            elif before.kind is Kind.NUM and place == 1 and kind_at(marks, place + 1) is Kind.OPEN:
                yield 0, place + 1, int(before.value or 0)


def _is_superset(marks: Sequence[Mark], place: int) -> bool:
    """`two supersets of`, whose first word is a word of its own."""
    return text_at(marks, place - 1) == "super" and kind_at(marks, place - 2) is Kind.NUM


def _is_through(marks: Sequence[Mark], place: int) -> bool:
    """`twice through`, `went round twice`, `superset, done two times`: of the whole circuit."""
    beside = {text_at(marks, place + 1), text_at(marks, place - 1)}
    whole = kind_at(marks, place - 1) is Kind.DONE and any(m.text in _CIRCUIT for m in marks)
    return bool(beside & _THROUGH) or whole


def _entries(marks: Sequence[Mark]) -> list[list[Mark]] | None:
    """The exercises of a circuit, each with its name first; `None` where anything else is told."""
    entries: list[list[Mark]] = []
    ahead: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind in _NAMES:
            told = not any(m.kind in NUMBERS for m in entries[-1][1:]) if entries else False
            if told or any(m.names == mark.names for e in entries for m in e[:1]):
                return None
            entries.append([mark, *ahead])
            ahead = []
        elif mark.kind in (*NUMBERS, *_UNITS, *_LINKS, *_EFFORTS):
            if mark.kind in _LINKS and (not _links(marks, place) or _leads(marks, place)):
                continue
            (entries[-1] if entries and _is_behind(marks, place) else ahead).append(mark)
        elif mark.kind not in _SAID and mark.text not in _CIRCUIT:
            return None
    plain = len(entries) > 1 and not ahead and all(_is_entry(e[1:]) for e in entries)
    return entries if plain and any(len(e) > 2 for e in entries) else None


def _links(marks: Sequence[Mark], place: int) -> bool:
    """Whether a link stands between the numbers of one entry."""
    beside = (*NUMBERS, *_UNITS)
    return kind_at(marks, place - 1) in beside and kind_at(marks, place + 1) in NUMBERS


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """The `with` of `goblets 20x12 with a 45 second plank`: the next exercise's, told before its name."""
    at = place + 1
    while kind_at(marks, at) in (*NUMBERS, *_UNITS, Kind.FILL):
        at += 1
    return marks[place].kind is Kind.WITH and kind_at(marks, at) in _NAMES


def _is_behind(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number belongs to the name before it: not that of `and a 45 second plank`, before its name."""
    within = (*NUMBERS, *_UNITS, Kind.X, Kind.FOR, Kind.AT, Kind.FILL)
    end = next((i for i in range(place, len(marks)) if marks[i].kind not in within), len(marks))
    start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind not in within), 0)
    return not (kind_at(marks, end) in _NAMES and start > 0 and marks[start - 1].kind not in _NAMES)


def _is_entry(marks: Sequence[Mark]) -> bool:
    """Whether marks tell one load and one number of repetitions, or one of either; behind a load, with an effort."""
    if len(marks) > _RATED and marks[-2].kind in (*_EFFORTS, Kind.AT) and marks[-1].kind is Kind.NUM:
        marks = marks[:-2]
    kinds = [m.kind for m in marks]
    numbers = [m for m in marks if m.kind in NUMBERS]
    linked = sum(k in _LINKS for k in kinds)
    whole = all(m.kind is Kind.NUM and m.value is not None for m in numbers)
    return whole and ((len(numbers) == 1 and not linked) or (len(numbers) == 2 and linked == 1))


def _by_round(marks: Sequence[Mark]) -> list[Mark]:
    """`round 1: bench 60x8, row 50x10. round 2: same`: the same circuit, so many times."""
    heads = [i for i, m in enumerate(marks) if m.text == "round" and kind_at(marks, i + 1) is Kind.NUM]
    values = [marks[i + 1].value for i in heads]
    if len(heads) < 2 or values != list(range(1, len(heads) + 1)) or heads[0] != 0:
        return list(marks)
    again = all(_only_again(marks[i + 2 : j]) for i, j in zip(heads[1:], [*heads[2:], len(marks)], strict=True))
    if not again:
        return list(marks)
    count, label = marks[heads[-1] + 1], marks[heads[-1]]
    return [count, replace(label, kind=Kind.SETS, text="rounds"), *marks[2 : heads[1]]]


def _only_again(marks: Sequence[Mark]) -> bool:
    """Whether nothing is told but that it was the same."""
    kinds = {m.kind for m in marks}
    return Kind.SAME in kinds and kinds <= {Kind.SAME, Kind.COLON, Kind.STOP, Kind.COMMA, Kind.LINE, Kind.FILL}
