"""The load of a stored set that was told without one: `weight was 70`, `forgot to say, 70kg`, `all at 70`.

Only a message whose every word has its place is read so; the number must be a load by its unit, by a word beside it, or
because nobody does so many repetitions.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.context import Context
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle
from bot.training.report import Performed

_PASSED = (Kind.FILL, Kind.WAS, Kind.WITH, Kind.AT, Kind.SORRY, Kind.COLON, Kind.COMMA, Kind.FOR, Kind.TO, Kind.AND,
           Kind.STOP, Kind.LINE, Kind.COULD, Kind.EXCEPT, Kind.TALKNUM, Kind.MEANT, Kind.SETS, Kind.SET,
           Kind.DASH)  # fmt: skip
_CORRECTING = (Kind.MEANT, Kind.SORRY)
_UNITS = (Kind.KG, Kind.LB, Kind.S)
_LOADS = frozenset(words("weight weights load loaded bar used using lifted"))
"""Words of a load."""
_PAST = frozenset(words("was were that forgot forgotten btw used had using loaded way throughout missed sorry add"))
"""Words that point to what was done."""
_IDLE = frozenset(words("mention throughout add whoops oops"))
_TURNING = frozenset(words("next other rest before more new instead now this today plan planned bodyweight morning"))


def with_load_supplied(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with such a message in plain wording: its set was with 70; as they are where it is none."""
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    if not request.done or not 1 <= len(numbers) <= 2 or len(marks) > _LONGEST:
        return list(marks)
    at = numbers[0]
    said = {w for m in marks for w in m.text.split()}
    names = [m for m in marks if m.kind is Kind.NAME]
    bare = _without_load(request, names)
    again = len(numbers) > 1
    places = [m for m in marks if not (m.kind is Kind.NUM or (again and m.kind in (Kind.X, Kind.REPS)))]
    if not bare or said & _TURNING or not all(_has_place(m) for m in places):
        return list(marks)
    if again and (marks[numbers[1]].value != bare[-1].reps or not any(m.kind in _CORRECTING for m in marks)):
        return list(marks)
    exercise = next(e for e in request.exercises if e.name == bare[0].exercise)
    every = any(m.kind is Kind.ALL or "throughout" in m.text.split() for m in marks)
    several = len(bare) > 1 and not every
    measured = kind_at(marks, at + 1) in _UNITS or any(m.kind in (Kind.TALKNUM, Kind.WITH) for m in marks)
    most = 2 * Context(exercise, request.unit, ()).range_of(bare[-1].set).high
    loads = measured or again or bool(said & _LOADS) or (marks[at].value or Decimal(0)) > most
    told = bool(said & _PAST) or any(m.kind in (Kind.TALKNUM, Kind.LASTSET) for m in marks) or every or again
    if several or not (loads and (told or said & _LOADS)) or marks[at].value is None:
        return list(marks)
    start = marks[0].start
    place = request.exercises.index(exercise)
    name = Mark(Kind.NAME, exercise.name, start, start, names=(place,))
    labels = [replace(name, kind=Kind.LABEL, names=(), value=Decimal(p.set or 0)) for p in bare]
    unit = [m for m in marks[at + 1 : at + 2] if m.kind in _UNITS]
    rest = replace(marks[-1], kind=Kind.FILL, text="that", value=None)
    edge = [] if marks[-1] in (marks[at], *unit) else [rest]
    return [replace(name, kind=Kind.FILL, text="that", names=(), end=marks[0].end), name, *labels,
            Mark(Kind.MEANT, "was with", start, start), marks[at], *unit, *edge]  # fmt: skip


_LONGEST = 14
"""Marks of such a message."""


def _has_place(mark: Mark) -> bool:
    if mark.kind is Kind.WORD:
        return set(mark.text.split()) <= _IDLE
    if mark.kind is Kind.TALKNUM:
        return "weight" in mark.text or "load" in mark.text
    return mark.kind in (*_PASSED, *_UNITS, Kind.ALL, Kind.LASTSET, Kind.NAME)


def _without_load(request: Request, names: Sequence[Mark]) -> list[Performed]:
    """The stored sets without a load of the exercise that is named, else of the last set: none where that has one."""
    last = request.done[-1].exercise
    if names and (len(names[0].names) != 1 or request.exercises[names[0].names[0]].name != last):
        return []
    exercise = next(e for e in request.exercises if e.name == last)
    rows = [p for p in request.done if p.exercise == last and p.set is not None]
    if exercise.load_style is LoadStyle.NONE or rows[-1:] == [] or rows[-1].load is not None:
        return []
    bare = {p.set: p for p in rows if p.load is None}
    return list(bare.values())
