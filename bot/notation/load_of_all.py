"""A load said once for every exercise: `everything with the 24: swings 15 15 15, goblets 12 12`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

_ALL = frozenset(words("everything all whole lot it of session workout did done was were today exercises"))
_KIT = frozenset(
    words("bell kettlebell kb kbs bells dumbbell dumbbells db dbs plate bar sandbag bag one ones pair the")
)
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.PAIR)
_HEADS = (Kind.COLON, Kind.COMMA, Kind.DASH, Kind.LINE, Kind.STOP)
_UNLOADED = (LoadStyle.NONE, LoadStyle.BODYWEIGHT)


def with_load_of_all(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with that load behind the name of each exercise whose plan has another one; without the words of it."""
    number = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), None)
    if number is None or not _heads(marks[:number]):
        return list(marks)
    unit = number + 1 + (kind_at(marks, number + 1) in _UNITS)
    end = unit
    while text_at(marks, end) in _KIT:
        end += 1
    names = [i for i in range(end, len(marks)) if marks[i].kind is Kind.NAME]
    if kind_at(marks, end) not in _HEADS or not names or any(len(marks[i].names) != 1 for i in names):
        return list(marks)
    if not all(_is_unloaded_list(marks, i) for i in names):
        return list(marks)
    load = [*marks[number:unit], replace(marks[number], kind=Kind.X, text="x", value=None, parts=())]
    of = {i: request.exercises[marks[i].names[0]] for i in names}
    lacking = {i for i in names if of[i].load_style not in _UNLOADED and not _is_planned(of[i], load[0], request)}
    return [
        m
        for i, mark in enumerate(marks[end + 1 :], end + 1)
        for m in ((mark, *(replace(one, start=mark.end, end=mark.end) for one in load)) if i in lacking else (mark,))
    ]


def _heads(before: Sequence[Mark]) -> bool:
    """Whether only words that everything was done with, or at, stand before the load."""
    said = {w for m in before for w in m.text.split()}
    led = bool(before) and before[-1].kind in (Kind.WITH, Kind.AT)
    return led and bool(said & {"everything", "all"}) and all(set(m.text.split()) <= _ALL for m in before[:-1])


def _is_unloaded_list(marks: Sequence[Mark], place: int) -> bool:
    """Whether counts and no load follow a name: `swings 15 15 15`, `cleans 8 per side x3`."""
    at = place + 1 + (kind_at(marks, place + 1) in (Kind.COLON, Kind.DASH))
    units = (*_UNITS, Kind.FOR, Kind.AT, Kind.WITH)
    return kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) not in units


def _is_planned(exercise: PlannedExercise, load: Mark, request: Request) -> bool:
    """Whether all sets of an exercise are planned with that load, so that it need not be said."""
    planned = [s.load for s in exercise.sets]
    return all(p is not None and p.amount_in(request.unit) == load.value for p in planned)
