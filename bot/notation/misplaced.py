"""What a kept set says though its words speak of another thing: an effort `on the first` kept for the second, a number
in brackets or after `add` kept as a set of its own, the 7 of `7 chins` kept for the press, repetitions `on the second`
kept for the first, a lone number that is itself a question. Each is asked about.
"""

from collections.abc import Iterator, Sequence
from itertools import chain

from bot.notation.answer import Source
from bot.notation.clauses import EDGES, kind_at
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import PlannedExercise

_CHANGING = frozenset(words("add adding added knock knocked take takes minus less subtract remove removed plus"))
"""Words before a number by which a set is changed, not a number of repetitions."""
_OF_EFFORT = (Kind.TANK, Kind.MORE, Kind.LEFT, Kind.RIRPOST, Kind.RPEPOST, Kind.FILL, Kind.REPS, Kind.AT, Kind.WITH,
              Kind.FOR, Kind.COULD, Kind.DONE)  # fmt: skip
_LINKED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_Placed = tuple[int, Mark]
"""A number and where it stands."""


def misplaced(marks: Sequence[Mark], told: Sequence[Told], exercises: Sequence[PlannedExercise]) -> Mark | None:
    """The first such mark; `None` where there is none."""
    numbers = [(place, mark) for place, mark in enumerate(marks) if mark.kind in (Kind.NUM, Kind.CLOCK)]
    looks = (_efforts(marks, told, numbers), _counts(marks, told, numbers), _numbered(marks, told, numbers),
             _questioned(marks, told), _named(marks, told, exercises))  # fmt: skip
    return next(chain.from_iterable(looks), None)


def _named(marks: Sequence[Mark], told: Sequence[Told], exercises: Sequence[PlannedExercise]) -> Iterator[Mark]:
    """Names whose number straight before them is kept as the repetitions of another exercise."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NAME or not mark.names:
            continue
        number = place - 1 - (kind_at(marks, place - 1) is Kind.FILL and marks[place - 1].text in ("of", "the"))
        ends = kind_at(marks, place + 1) in (None, *EDGES, Kind.AT, Kind.WITH)
        if kind_at(marks, number) is not Kind.NUM or not ends:
            continue
        named = {exercises[at].name for at in mark.names}
        start, end = marks[number].start, marks[number].end
        kept = [one for one in told if (at := one.grounds.reps.at) is not None and at[0] < end and start < at[1]]
        if any(one.row.exercise not in named and one.grounds.reps.source is Source.SAID for one in kept):
            yield mark


def _efforts(marks: Sequence[Mark], told: Sequence[Told], numbers: Sequence[_Placed]) -> Iterator[Mark]:
    """Efforts kept for another set than the one that is named straight behind them."""
    for one in told:
        at = None if one.row.rir is None or one.grounds.effort is None else one.grounds.effort.at
        place = _place(numbers, at)
        if place is None or at is None:
            continue
        while place < len(marks) and (marks[place].start < at[1] or marks[place].kind in _OF_EFFORT):
            place += 1
        mark = marks[place] if place < len(marks) else None
        ends = place + 1 >= len(marks) or marks[place + 1].kind in (*EDGES, Kind.FILL, Kind.AND, Kind.SET)
        if mark is not None and mark.kind is Kind.ORD and mark.value is not None and ends:
            named = {other.row.set for other in told if other.grounds.effort == one.grounds.effort}
            if int(mark.value) not in named:
                yield mark


def _numbered(marks: Sequence[Mark], told: Sequence[Told], numbers: Sequence[_Placed]) -> Iterator[Mark]:
    """Repetitions kept for another set than the one that is named straight behind them: `were 11 on the second`."""
    for one in told:
        at = one.grounds.reps.at if one.grounds.reps.source is Source.SAID else None
        place = _place(numbers, at)
        if place is None or at is None:
            continue
        behind = place + 1
        while kind_at(marks, behind) in (Kind.FILL, Kind.REPS, Kind.DONE, Kind.WITH, Kind.FOR):
            behind += 1
        linked = any(m.kind is Kind.WITH for m in marks[place + 1 : behind])
        mark = marks[behind] if behind < len(marks) and linked else None
        ends = kind_at(marks, behind + 1) in (None, *EDGES, Kind.SET)
        if mark is not None and mark.kind is Kind.ORD and mark.value is not None and ends:
            named = {other.row.set for other in told if other.grounds.reps == one.grounds.reps}
            if int(mark.value) not in named:
                yield mark


def _questioned(marks: Sequence[Mark], told: Sequence[Told]) -> Iterator[Mark]:
    """The only number of a message, kept as repetitions though it is asked: `12-ish??`, `12 maybe?`."""
    numbers = [place for place, mark in enumerate(marks) if mark.kind is Kind.NUM]
    if len(numbers) != 1 or len(told) != 1 or told[0].grounds.reps.source is not Source.SAID:
        return
    behind = numbers[0] + 1
    while kind_at(marks, behind) in (Kind.FILL, Kind.DASH):
        behind += 1
    if kind_at(marks, behind) is Kind.QUERY:
        yield marks[numbers[0]]


def _counts(marks: Sequence[Mark], told: Sequence[Told], numbers: Sequence[_Placed]) -> Iterator[Mark]:
    """Bare numbers kept as repetitions that stand in brackets with words, or say by how much a set changes."""
    for one in told:
        at = one.grounds.reps.at if one.grounds.reps.source is Source.SAID else None
        place = _place(numbers, at)
        if place is None or not place:
            continue
        before, after = marks[place - 1], marks[place + 1 : place + 3]
        changing = bool(set(before.text.split()[-1:]) & _CHANGING) and before.kind not in (*_LINKED, Kind.PLUS)
        changing = changing and not (at is not None and at[0] <= before.start)
        weighed = before.kind is Kind.ADDED and kind_at(marks, place - 2) in (Kind.NUM, Kind.KG, Kind.LB)
        if changing and not weighed and marks[place].kind is Kind.NUM:
            yield marks[place]
        near = marks[max(0, place - 4) : place]
        near = near[max((i + 1 for i, m in enumerate(near) if m.kind is Kind.NUM), default=0) :]
        could = [w for m in near if m.kind is not Kind.MEANT for w in m.text.split()]
        if {"couldve", "could", "shouldve"} & set(could) and {"have", "of", "couldve", "shouldve"} & set(could):
            yield marks[place]
        if before.text == "of" and kind_at(marks, place - 2) is Kind.NUM and _is_kept(marks[place - 2], told):
            yield marks[place]
        spoken = len(after) == 2 and after[0].kind in (Kind.FILL, Kind.WORD) and after[1].kind is Kind.CLOSE
        if before.kind is Kind.OPEN and spoken and one is not told[0]:
            yield marks[place]


def _is_kept(number: Mark, told: Sequence[Told]) -> bool:
    """Whether a number is kept as repetitions: both of `4 of 6`."""
    return any(
        (at := one.grounds.reps.at) is not None and at[0] <= number.start and number.end <= at[1] for one in told
    )


def _place(numbers: Sequence[_Placed], at: tuple[int, int] | None) -> int | None:
    """Where the first number inside a range stands."""
    if at is None:
        return None
    return next((place for place, m in numbers if at[0] <= m.start and m.end <= at[1]), None)
