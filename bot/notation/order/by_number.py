"""Sets told by their numbers: `1-4 at 70`, `squat 4 and 5 both 95x5`, `sets one two and three`, `2 at 140 for 12`.

They become the number of the first set and how many sets, before what is told of them.
"""

from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, MOST_SETS
from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD, counted_sets, past_fill, whole_number
from bot.notation.order.steps import step
from bot.notation.tokens import Mark

TELLS = (
    Kind.DROP,
    Kind.WAS,
    Kind.SETS,
    Kind.SET,
    Kind.AT,
    Kind.WITH,
    Kind.NUM,
    Kind.COLON,
    Kind.ALL,
    Kind.FOR,
    Kind.BODY,
)
_TIED = (Kind.X, Kind.FOR, Kind.AT, Kind.NUM, Kind.SET, Kind.RPE, Kind.RIR, Kind.DASH, Kind.TO, Kind.SLASH)


def _ordinals(marks: list[Mark]) -> list[Mark]:
    """`1st and 2nd 60x10`, `2nd and 3rd leg press same as first`: two sets next to each other."""
    for place in range(len(marks) - 3):
        one, joint, two = marks[place : place + 3]
        kinds = one.kind is two.kind is Kind.ORD and joint.kind in (Kind.AND, Kind.SLASH)
        end = place + 3 + (kind_at(marks, place + 3) in (Kind.SET, Kind.SETS))
        named = [marks[end]] if kind_at(marks, end) is Kind.NAME else []
        told = kind_at(marks, end + len(named)) in (Kind.NUM, Kind.WAS, Kind.COLON, Kind.AT, Kind.BODY, Kind.SAME)
        if kinds and told and one.value is not None and two.value == one.value + 1 <= MOST_SETS:
            start = place - (kind_at(marks, place - 1) is Kind.EACH and marks[place - 1].text == "both")
            group = group_marks(one, int(one.value), 2, marks[end - 1].end)
            return [*marks[:start], *named, *group, *marks[end + len(named) :]]
    return marks


def _ranges(marks: list[Mark]) -> list[Mark]:
    """`1-4 at 70`, `one through four were 100x5`: the first set, and how many."""
    out = list(marks)
    for place in range(len(marks) - 4):
        opens = place == 0 or marks[place - 1].kind in (*EDGES, Kind.COLON, Kind.NAME, Kind.SETS, Kind.FILL)
        joined = kind_at(marks, place + 1) in (Kind.DASH, Kind.TO)
        last = whole_number(marks, place + 2, 2, MOST_SETS)
        told = kind_at(marks, place + 3) in (Kind.AT, Kind.WITH, Kind.WAS, Kind.ALL, Kind.COLON)
        numbered = kind_at(marks, past_fill(marks, place + 4)) is Kind.NUM
        one = marks[place].kind is Kind.NUM and marks[place].value == 1
        if opens and joined and last is not None and told and numbered and one:
            rest = marks[place + 3]
            said = [] if rest.kind in (Kind.AT, Kind.WITH, Kind.WAS, Kind.COLON) else [rest]
            out[place : place + 4] = group_marks(marks[place], 1, last, marks[place + 2].end) + said
            return out
    return out


def _counted(marks: list[Mark]) -> list[Mark]:
    """`2 at 140 for 12`: so many sets, before their load and repetitions."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        at = place + 3 + (kind_at(marks, place + 3) in OF_LOAD)
        whole = [kind_at(marks, n) for n in (place + 1, place + 2, at, at + 1)]
        entry = whole in ([Kind.AT, Kind.NUM, Kind.FOR, Kind.NUM], [Kind.AT, Kind.NUM, Kind.X, Kind.NUM])
        free = kind_at(marks, place - 1) not in _TIED and whole_number(marks, place, 1, FEW_SETS) is not None
        if entry and free and marks[place + 1].text == "at":
            out.append(counted_sets(mark, "group"))
    return out


def _called(marks: list[Mark]) -> list[Mark]:
    """`squat 4 and 5 both 95x5`, `sets one two and three`: sets next to each other by their numbers."""
    out = list(marks)
    repeated = next((i for i, m in enumerate(marks) if m.kind is Kind.SAME), len(marks))
    for place in range(min(len(marks) - 3, repeated + 1)):
        if marks[place].kind not in (Kind.NAME, Kind.SETS, Kind.SET) or kind_at(marks, place + 1) is not Kind.NUM:
            continue
        numbers: list[int] = []
        at = place + 1
        while kind_at(marks, at) in (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH):
            if marks[at].kind is Kind.NUM:
                numbers.append(int(marks[at].value or 0))
            at += 1
        while at > place + 1 and kind_at(marks, at - 1) is not Kind.NUM:
            at -= 1
        joined = any(m.kind is Kind.AND for m in marks[place + 1 : at])
        row = (
            len(numbers) > 1
            and numbers == list(range(numbers[0], numbers[0] + len(numbers)))
            and numbers[-1] <= MOST_SETS
        )
        said = marks[at] if at < len(marks) else None
        sets = marks[place].kind is not Kind.NAME
        alike = said is not None and (said.kind in (Kind.ALL, Kind.DONE) or said.text == "both")
        told = alike or (sets and (said is None or said.kind in (*TELLS, *EDGES, Kind.THEN, Kind.FILL)))
        if row and joined and told and (sets or alike):
            kept = [] if sets else [marks[place]]
            out[place : at + alike] = [
                *kept,
                *group_marks(marks[place + 1], numbers[0], len(numbers), marks[at - 1].end),
            ]
            return out
    return out


def group_marks(at: Mark, first: int | None, count: int, end: int) -> list[Mark]:
    """The marks that say so many sets from the first on (`None`: the next ones)."""
    label = replace(at, kind=Kind.LABEL, value=Decimal(first or 1), parts=(), end=end)
    number = replace(at, kind=Kind.NUM, value=Decimal(count), text=str(count), parts=(), end=end)
    sets = replace(
        at, kind=Kind.SETS, text="last group" if first is None else "group", value=None, parts=(), start=end, end=end
    )
    return [label, number, sets] if first is not None else [number, sets]


BY_NUMBER = (
    step(_counted, (Kind.AT,)),
    step(_ranges, (Kind.DASH, Kind.TO)),
    step(_called, (Kind.AND,)),
    step(_ordinals, (Kind.ORD,)),
)
"""The steps that put sets told by their numbers so."""
