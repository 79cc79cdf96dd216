"""Words whose meaning the exercise settles that they are told of.

The `s` of `hold 40, 32, 25 s` is seconds, the bar of `toes hit the bar` no load, `bw 12, 10, 9` a list of body weight,
`+5 8` eight with five added, `all five at 70` a set of five.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, MOST_REPS
from bot.notation.clauses import EDGES, kind_at, number_before, part_of, text_at
from bot.notation.context import Context
from bot.notation.counted_ahead import lists, told_ahead
from bot.notation.kinds import Kind
from bot.notation.order.meanings import counted_by_hand
from bot.notation.order.near import OF_LOAD, UNITS, past, past_fill, whole_number
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import LoadStyle, Measure, Mini

_LISTED = (Kind.COMMA, Kind.SLASH, Kind.AND)
_HELD = frozenset(["holding", "hugging", "clutching", "wearing", "carrying"])
_COUNTS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10}
_LEAST_LIST = 2
"""Numbers that are no list yet, and digits of a number of sets."""

_Rule = Callable[[list[Mark], int, Context], None]


def by_exercise(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such words as what they mean. `under`: the exercise of sets that name none."""
    out = list(marks)
    which = under
    place = 0
    while place < len(out):
        mark = out[place]
        if mark.kind is Kind.NAME and len(mark.names) == 1:
            which = mark.names[0]
        rule = _RULES.get(mark.kind) or (_HOLDS if mark.text in _HELD else None)
        if rule is not None and which is not None:
            rule(out, place, record.context(which))
        place += 1
    return out


def _seconds(marks: list[Mark], place: int, told_of: Context) -> None:
    """The bare `s` of a hold, which has no load."""
    unloaded = told_of.exercise.load_style is LoadStyle.NONE and told_of.exercise.measure is Measure.SECONDS
    if unloaded and kind_at(marks, place - 1) is Kind.NUM:
        marks[place] = replace(marks[place], kind=Kind.SECONDS, text="s")


def _bar(marks: list[Mark], place: int, told_of: Context) -> None:
    """The bar that one hangs from, or that the toes touch: no load of what is done without one."""
    bar = marks[place].text.split(" ")[-1] == "bar" and kind_at(marks, place - 1) is not Kind.NUM
    if bar and told_of.exercise.load_style in (LoadStyle.NONE, LoadStyle.BODYWEIGHT):
        marks[place] = replace(marks[place], kind=Kind.FILL)


def _body(marks: list[Mark], place: int, told_of: Context) -> None:
    """`bw 12, 10, 9`: so many with the body alone each, where there are as many sets left.

    `then two sets at bodyweight, 8 and 7`: as many as are told.
    """
    start, count = _counted_before(marks, place)
    if not told_of.is_bodyweight or (kind_at(marks, place - 1) is Kind.NUM and count is None):
        return
    commas = (Kind.COMMA, Kind.DASH) if count is not None else ()
    first = past(marks, place + 1, Kind.COLON, Kind.X, Kind.FOR, Kind.FILL, *commas)
    at, numbers = first, list[int]()
    while whole_number(marks, at, 1, MOST_REPS) is not None:
        numbers.append(at)
        at = past(marks, at + 1, *_LISTED)
        at += kind_at(marks, at) is Kind.LEADX
    end = numbers[-1] + 1 if numbers else first
    alone = kind_at(marks, end) in (None, *EDGES, Kind.FILL, Kind.REPS, Kind.THEN, Kind.SLASH)
    if (
        not (len(numbers) == count or len(numbers) > _LEAST_LIST)
        or len(numbers) > len(told_of.open_sets)
        or not alone
        or kind_at(marks, at) in (Kind.BODY, Kind.PLUS)
    ):
        return
    body = marks[place]
    by = replace(body, kind=Kind.X, text="x")
    comma = replace(body, kind=Kind.COMMA, text=",")
    told = [m for at in numbers for m in (comma, body, by, marks[at])]
    marks[start if len(numbers) == count else place : end] = told[1:]


def _counted_before(marks: Sequence[Mark], place: int) -> tuple[int, int | None]:
    """Where the words start that count the sets of a body weight, and how many: `two sets at`, `the last two`."""
    at = place - 1
    while kind_at(marks, at) in (Kind.AT, Kind.WITH, Kind.FILL, Kind.FOR, Kind.COMMA, Kind.WAS):
        at -= 1
    sets = kind_at(marks, at) in (Kind.SETS, Kind.SET)
    last = (
        kind_at(marks, at - sets - 1) in (Kind.LASTREP, Kind.LASTSET, Kind.THEREST)
        or text_at(marks, at - sets - 1) == "other"
    )
    number = at - sets
    count = whole_number(marks, number, 2, FEW_SETS) if sets or last else None
    return (number - last, count) if count is not None else (place, None)


def _added(marks: list[Mark], place: int, told_of: Context) -> None:
    """`bw 10, +5 8`: the load that is added and what was done with it, where the plan has no sets with short rests."""
    if not told_of.is_bodyweight or not told_of.open_sets:
        return
    planned = told_of.planned(told_of.open_sets[0])
    mini = planned is not None and isinstance(planned.finish, Mini)
    reps = place + 2 + (kind_at(marks, place + 2) in UNITS)
    told = kind_at(marks, place + 1) is Kind.NUM and whole_number(marks, reps, 1, MOST_REPS) is not None
    apart = place == 0 or kind_at(marks, place - 1) in (*EDGES, Kind.THEN, Kind.NAME, Kind.AND)
    ends = kind_at(marks, reps + 1) in (None, *EDGES, Kind.REPS, Kind.THEN, Kind.AND, Kind.FILL)
    if told and apart and ends and not mini and not any(m.kind is Kind.PLUS for m in marks[reps : reps + 2]):
        marks[reps:reps] = [
            replace(marks[place], kind=Kind.X, text="x", start=marks[reps].start, end=marks[reps].start)
        ]


def _held(marks: list[Mark], place: int, told_of: Context) -> None:
    """`12 bodyweight, then 10 holding a 5kg plate`: with the weight that is held."""
    at = past_fill(marks, place + 1)
    loaded = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in (*UNITS, Kind.PLATES)
    bare = any(m.kind is Kind.BODY for m in marks[:place])
    if (
        bare
        and told_of.is_bodyweight
        and loaded
        and marks[place].kind is Kind.FILL
        and kind_at(marks, place - 1) is Kind.NUM
    ):
        marks[place] = replace(marks[place], kind=Kind.WITH, text="with")


def _every(marks: list[Mark], place: int, told_of: Context) -> None:
    """`got all five at 70`, `got all six`: the repetitions of one set, where the plan has so many, and no such sets.

    `got all three`, `all 3 sets`, where so many sets are left: as planned.
    """
    word = marks[place].text.removeprefix("all ")
    count = _COUNTS.get(word) or (int(word) if word.isdigit() and len(word) <= _LEAST_LIST else None)
    load = kind_at(marks, place + 1) in (Kind.AT, Kind.WITH) and kind_at(marks, place + 2) is Kind.NUM
    end = place + 3 + (kind_at(marks, place + 2 + 1) in OF_LOAD)
    ends = kind_at(marks, end) in (None, *EDGES, Kind.FILL, Kind.RPE, Kind.RIR)
    opens = told_of.open_sets
    if number_before(marks, place, (Kind.STOP, Kind.LINE)):
        return
    if count is None or not opens or text_at(marks, place + 1) == "@":
        return
    if not (load and ends):
        got = _says_got(marks, place)
        if got is None or (count <= len(told_of.exercise.sets) and not got):
            return
        if count == len(opens):
            start, end = part_of(marks, place)
            if lists(marks, end + 1, count):
                marks[place] = replace(marks[place], kind=Kind.FILL)
                return
            if count not in told_of.range_of(opens[0]) and not any(m.kind is Kind.DONE for m in marks[start:end]):
                marks.insert(place + 1, replace(marks[place], kind=Kind.PLANNED, text="as planned"))
            return
        if kind_at(marks, place + 1) is Kind.SETS:
            return
    elif count <= len(told_of.exercise.sets):
        return
    if count in told_of.range_of(opens[0]):
        said = marks[place]
        number = replace(said, kind=Kind.NUM, text=word, value=Decimal(count), parts=())
        marks[place : place + 1] = [number, replace(said, kind=Kind.REPS, text="reps", start=said.end)]


_GOT = frozenset(["got", "made", "hit", "managed", "get", "completed", "finished", "nailed", "did", "sets"])
_BESIDE = frozenset(["i", "them", "of", "reps", "those", "today", "done", "clean", "though", "yes", "yep", "and"])


def _says_got(marks: Sequence[Mark], place: int) -> bool | None:
    """Whether `all six` is said to be got in its part; `None` where the part says something else of it."""
    start, end = part_of(marks, place)
    beside = [*marks[start:place], *marks[place + 1 : end]]
    said = {w for m in beside for w in m.text.split()}
    plain = (Kind.FILL, Kind.WORD, Kind.NAME, Kind.GAP)
    if said & _GOT - {"sets"} and all(m.kind in plain or set(m.text.split()) <= _GOT | _BESIDE for m in beside):
        return True
    return bool(said & _GOT) if said <= _GOT | _BESIDE else None


def _sided(marks: list[Mark], place: int, told_of: Context) -> None:
    """`pallof 14 L10 R10`: a load before what each side did with it."""
    exercise = told_of.exercise
    loaded = exercise.sides > 1 and exercise.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND)
    kinds = [kind_at(marks, place + n) for n in range(-2, 4)]
    if loaded and kinds[0] in (Kind.NAME, *EDGES) and kinds[1] is Kind.NUM and kinds[3] is Kind.NUM:
        right = past(marks, place + 2, Kind.COMMA, Kind.AND, Kind.SLASH)
        sides = kind_at(marks, right) in (Kind.RIGHT, Kind.R) and kind_at(marks, right + 1) is Kind.NUM
        value = marks[place - 1].value or 0
        counted = value == int(value) and int(value) in told_of.range_of(None)  # `10 left 9 right 16s`
        if sides and kind_at(marks, right + 2) not in OF_LOAD and not counted:
            at = marks[place].start
            marks[place:place] = [replace(marks[place], kind=Kind.COLON, text=":", start=at, end=at)]


def _by_hand(marks: list[Mark], place: int, told_of: Context) -> None:
    """`4x12 each hand`: repetitions, where so many are asked and no such load."""
    counted = counted_by_hand(marks, place)
    opens = told_of.open_sets
    if counted is None or not opens or int(counted[1]) not in told_of.range_of(opens[0]):
        return
    planned = told_of.planned_load(opens[0])
    if planned is None or planned.kg != counted[1]:
        marks[place] = replace(marks[place], kind=Kind.EACH)


_RULES: dict[Kind, _Rule] = {
    Kind.HAND: _by_hand,
    Kind.S: _seconds,
    Kind.PLATES: _bar,
    Kind.BODY: _body,
    Kind.PLUS: _added,
    Kind.ALL: _every,
    Kind.NUM: told_ahead,
    Kind.LEFT: _sided,
    Kind.L: _sided,
}
_HOLDS: _Rule = _held
