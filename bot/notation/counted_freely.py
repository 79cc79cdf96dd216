"""What only counts or repeats, taken from what it counts: `two 45-pounders: 10, 10`, `2 more sets, 12 and 11`, `the
next two swings the same`, `six! SIX!`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.session_place import place_spoken_of
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle

_POLITE = ("coach", "sir", "boss", "mate", "please", "thanks", "too", "as well", "again")
_OF_HAND = ("bell", "bells", "dumbbell", "dumbbells", "db", "dbs", "kettlebell", "kettlebells", "ones", "s", "hand")
_UNITS = (Kind.LB, Kind.KG, Kind.S)
_PAIR = 2


def with_counts_freely(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks without such counts."""
    return _next_of_name(_without_more(_without_pair(_without_shouts(marks), request)))


def _without_shouts(marks: Sequence[Mark]) -> list[Mark]:
    """`six! SIX!`: one number, shouted twice."""
    if sum(m.text == "!" for m in marks) <= 1:
        return list(marks)
    out: list[Mark] = []
    for at, mark in enumerate(marks):
        last = max((i for i in range(len(out)) if out[i].kind is not Kind.STOP), default=None)
        shouted = kind_at(marks, at + 1) is Kind.STOP and text_at(marks, at + 1) == "!"
        stops = out[last + 1 :] if last is not None else []
        again = last is not None and bool(stops) and all(m.text == "!" for m in stops)
        if mark.kind is Kind.NUM and shouted and again and last is not None:
            same = out[last].kind is Kind.NUM and out[last].value == mark.value
            whole = at + 2 >= len(marks) or kind_at(marks, at + 2) in (Kind.STOP, Kind.LINE)
            if same and whole and not out[last].text[:1].isdigit():
                continue
        out.append(mark)
    return out


def _without_pair(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The `two` of `two 45-pounders`, `with two 45 lb dumbbells`: one for each hand."""
    place = place_spoken_of([m for m in marks if m.kind is Kind.NAME and m.names], request)
    if place is None or request.exercises[place].load_style is not LoadStyle.PER_HAND:
        return list(marks)
    for at, mark in enumerate(marks):
        unit = at + 2 + (kind_at(marks, at + 2) is Kind.DASH)
        pair = mark.kind is Kind.NUM and mark.value == _PAIR and kind_at(marks, at + 1) is Kind.NUM
        pair = pair and kind_at(marks, at - 1) is not Kind.SET
        plain = kind_at(marks, unit + 1) is not Kind.WORD or text_at(marks, unit + 1) in _OF_HAND
        if pair and kind_at(marks, unit) in _UNITS and plain:  # `two 10 kg kids`: no bells
            return [*marks[:at], marks[at + 1], *marks[unit:]]
    return list(marks)


def _without_more(marks: Sequence[Mark]) -> list[Mark]:
    """The count of `2 more sets, 12 and 11`, where as many numbers follow."""
    for at, mark in enumerate(marks):
        few = mark.value if mark.kind is Kind.NUM and mark.value is not None else 0
        more = kind_at(marks, at + 1) is Kind.MORE or text_at(marks, at + 1) == "more"
        if not (_PAIR <= few <= FEW_SETS and more):
            continue
        end = at + 2 + (kind_at(marks, at + 2) is Kind.NAME)
        counted = kind_at(marks, end) in (Kind.SETS, Kind.SET)
        behind = [m for m in marks[end + 1 :] if m.kind is Kind.NUM]
        plain = all(
            m.kind in (Kind.NUM, Kind.COMMA, Kind.AND, Kind.COLON, Kind.FILL, Kind.NAME, Kind.FOR, Kind.AT, Kind.DASH)
            for m in marks[end + 1 :]
        )
        if counted and plain and len(behind) == few:
            return [*marks[:at], *marks[at + 2 : end], *marks[end + 1 :]]
    return list(marks)


def _next_of_name(marks: Sequence[Mark]) -> list[Mark]:
    """`the next two swings the same`, `two more swings the same`: the name first, as in `swings, next two the same`."""
    if not any(m.kind is Kind.SAME for m in marks):
        return list(marks)
    for at, mark in enumerate(marks):
        few = mark.kind is Kind.NUM and mark.value is not None and _PAIR <= mark.value <= FEW_SETS
        more = few and text_at(marks, at + 1) == "more"
        name = at + 1 + more
        led = at > 0 and text_at(marks, at - 1).split()[-1:] == ["next"]
        rest = marks[name + 2 :]
        whole = not rest or rest[0].kind in (Kind.STOP, Kind.COMMA, Kind.LINE) or rest[0].text in _POLITE
        same = kind_at(marks, name + 1) is Kind.SAME and whole and not any(m.kind is Kind.QUERY for m in rest)
        if few and (led or more) and kind_at(marks, name) is Kind.NAME and same:
            start = at - led
            ahead = [m for m in marks[:start] if m.kind not in (Kind.AND, Kind.FILL)]
            then = replace(marks[at - 1] if led else mark, kind=Kind.FILL, text="next", value=None, parts=())
            comma = Mark(Kind.COMMA, ",", marks[start].start, marks[start].start)
            return [*ahead, replace(marks[name], start=marks[start].start, end=marks[start].start), comma, then, mark,
                    *marks[name + 1 :]]  # fmt: skip
    return list(marks)
