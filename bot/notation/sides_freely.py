"""A set of both sides told in free words, put plainly: `left 9, right 8 on lunges with 12s`, `9 and 8, left and right,
with the 12s`, `9 on left, one less on right` as `lunges 12s, left 9, right 8`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.session_place import name_of, place_spoken_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle
from bot.training.report import Side

_PLAIN = (Kind.FILL, Kind.WORD, Kind.COMMA, Kind.AND, Kind.COLON, Kind.DASH, Kind.WITH, Kind.AT, Kind.WAS, Kind.NUM,
          Kind.S, Kind.KG, Kind.LB, Kind.HAND, Kind.NAME, Kind.LEFT, Kind.RIGHT, Kind.REPS, Kind.FOR, Kind.ANOTHER,
          Kind.OTHERTIME, Kind.STOP, Kind.MORE, Kind.OPEN, Kind.CLOSE, Kind.DONE, Kind.X)  # fmt: skip
_LESS = {"less": -1, "fewer": -1, "more": 1, "extra": 1}
_FEW = {"one": 1, "1": 1, "two": 2, "2": 2, "a": 1}
_TO_COME = frozenset(words("next will gonna tomorrow should if sore hurts try want drop more-set again same hand-over"))
_OF_SET = frozenset(words(
    "the a an my i ive im on with w in at of for from by and but was were is got did done made hit went managed just",
    "only about leg legs side sides foot arm hand hands each either per one two more less fewer extra than it them",
    "both holding using carrying sir coach boss mate lol haha today here finally tough hard heavy easy good strong",
    "weak weaker stronger wobbly clean solid sadly reps rep kilos kgs kg dumbbell dumbbells bell bells db dbs pair set",
    "sets first second then while whereas so too many also links",
    "rechts linke rechte seite mit met avec con und et y en",
    "izquierda derecha gauche droite short better worse down up same weight weighted loaded though again",
)) - {"again", "same", "then", "too", "first", "second"}  # fmt: skip
"""Words of the telling of such a set; with any other (`plan says 9 left 8 right`, `year olds left and right`) it may
tell of something else."""
_MOST = 40
"""Marks of a message that is read so."""


def _with_left(marks: Sequence[Mark]) -> list[Mark]:
    """`they were left 9 right 8`: the side, and not what was left."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        sided = kind_at(marks, place + 1) is Kind.NUM and Kind.RIGHT in [m.kind for m in marks[place + 2 : place + 4]]
        if mark.kind is Kind.TANK and mark.text in ("was left", "were left") and sided:
            was, left = mark.text.split()
            out += [replace(mark, kind=Kind.WAS, text=was), replace(mark, kind=Kind.LEFT, text=left)]
        else:
            out.append(mark)
    return out


def with_sides_freely(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks of a message that tells one set of both sides, in plain order; as they are in any other."""
    marks = _with_left(marks)
    names = [m for m in marks if m.kind is Kind.NAME and m.names]
    sides = [m for m in marks if m.kind in (Kind.LEFT, Kind.RIGHT)]
    place = place_spoken_of(names, request)
    if place is None or request.exercises[place].sides != len(Side) or not 2 < len(marks) <= _MOST:
        return list(marks)
    crossed = any(m.kind is Kind.X and kind_at(marks, i + 1) is Kind.NUM for i, m in enumerate(marks))
    said = {w for m in marks for w in m.text.split()}
    if crossed or said & _TO_COME or not all(m.kind in _PLAIN for m in marks):
        return list(marks)
    spoken = {w for m in marks if m.kind in (Kind.FILL, Kind.WORD, Kind.OTHERTIME) for w in m.text.split()}
    if spoken - _OF_SET:
        return list(marks)
    told = request.exercises[place].name in {p.exercise for p in request.done}
    if told and (any(m.kind in (Kind.WAS, Kind.AND) for m in marks) or not names):
        return list(marks)
    compared, between = _compared(marks)
    sides = [m for i, m in enumerate(marks) if m.kind in (Kind.LEFT, Kind.RIGHT) and i not in compared]
    loads = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and _is_load(marks, i)]
    counts = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and i not in loads and i not in compared]
    values = [marks[i] for i in counts]
    if len(sides) == len(Side) and len(counts) == 1 and between and counts[0] < between[0]:
        at, differs = marks[between[0]], (values[0].value or Decimal(0)) + between[1]
        values.append(replace(values[0], text=str(differs), value=differs, start=at.start, end=at.end))
    elif compared and not sides and len(counts) == len(Side):
        sides = [m for i, m in enumerate(marks) if m.kind in (Kind.LEFT, Kind.RIGHT)]
    kinds = [m.kind for m in sides]
    if sorted(kinds, key=str) != sorted((Kind.LEFT, Kind.RIGHT), key=str) or len(values) != len(Side) or len(loads) > 1:
        return list(marks)
    led = all(side.start < value.start for side, value in zip(sides, values, strict=True))
    ahead = all(marks[i].start < sides[0].start for i in loads)
    first = min([sides[0].start, *(marks[i].start for i in loads)])
    ahead = ahead and all(m.start < first for m in names)
    if led and ahead and not compared and not any(m.kind is Kind.WAS for m in marks):
        return list(marks)  # in plain order already
    load = [m for i in loads for m in marks[i : i + 1 + (kind_at(marks, i + 1) in (Kind.S, Kind.KG, Kind.LB))]]
    if load and len(load) == 1 and request.exercises[place].load_style is LoadStyle.PER_HAND:
        load.append(Mark(Kind.S, "s", load[0].end, load[0].end))
    ends: list[Mark] = []
    for side, value in zip(sides, values, strict=True):
        first = min(side.start, value.start)
        comma = Mark(Kind.COMMA, ",", first, first)
        ends += [comma, replace(side, start=first, end=first), value]
    return [name_of(place, names, request, marks[0].start), *load, *ends]


def _is_load(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number is the load: `12s`, `12 kg`, `with the 12`."""
    unit = kind_at(marks, at + 1) in (Kind.S, Kind.KG, Kind.LB, Kind.HAND)
    unit = unit or (text_at(marks, at + 1) == "in" and kind_at(marks, at + 2) is Kind.HAND)
    return unit or kind_at(marks, at - 1) is Kind.WITH


def _compared(marks: Sequence[Mark]) -> tuple[set[int], tuple[int, int] | None]:
    """The marks of `one more on the left than the right`; and where `one less on right` stands, and by how many."""
    for at, mark in enumerate(marks):
        said = mark.text.split()
        more = next((w for w in (*said, *text_at(marks, at + 1).split()[:1]) if w in _LESS), None)
        few = _FEW.get(said[0]) if said else None
        if more is None or few is None:
            continue
        end = at + 1
        while end < len(marks) and marks[end].kind not in (Kind.COMMA, Kind.STOP):
            end += 1
        part = range(at, end)
        if "than" in {w for i in part for w in marks[i].text.split()}:
            return set(part), None
        sided = {i for i in part if marks[i].kind not in (Kind.LEFT, Kind.RIGHT)}
        return sided, (at, few * _LESS[more])
    return set(), None
