"""Sets told alike but for one: `all 10s, 8 on the last`, `3x10 at 90 but the second was 9`, `as planned, last one 6`.

The one that differs is put right behind the others, in the words of a correction: `last was 8`. Where the sets that are
alike leave one open, a last one told behind a plain comma is that one, and nothing is changed.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.all_but import past_there, with_all_but
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.record import Record
from bot.notation.tagging.plurals import PLURALS
from bot.notation.tokens import Mark
from bot.training.plan import PlannedExercise

_LAST = frozenset(["last", "final"])
_BOUNDS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.OPEN, Kind.AND, Kind.EXCEPT)
_BUT = frozenset(["but", "except", "apart from", "bar", "besides", "excepting", "although", "though"])
_UNTIL = frozenset(["until", "till", "til"])
_PASSED = _BUT | _UNTIL | {"cut", "stopped", "ended", "died"}
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS)
_LOADS = (Kind.S, Kind.KG, Kind.LB)
_ENDS = (
    None,
    Kind.COMMA,
    Kind.STOP,
    Kind.LINE,
    Kind.BREAK,
    Kind.OPEN,
    Kind.CLOSE,
    Kind.AT,
    Kind.RPE,
    Kind.RIR,
    Kind.TANK,
)
_LITTLE = (Kind.FILL, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.EXCEPT, Kind.AND, Kind.OPEN)
_MOST = 10
_REACH = 100
"""Words behind which a name is not spoken of any more."""
_MOST_APART = 4
"""So many sets at most are told apart at once: `last two 9`."""


@dataclass(frozen=True, slots=True)
class _Alike:
    """Sets told alike: the place behind them, and how many (`None`: all that are open)."""

    end: int
    count: int | None


@dataclass(frozen=True, slots=True)
class _Name:
    """The words that name one set or several: where they end, and which (`number`: of the first one)."""

    marks: list[Mark]
    end: int
    number: int
    last: bool
    count: int = 1


@dataclass(frozen=True, slots=True)
class _One:
    """Sets told apart: where their words start and end, the words that name them, and what they were."""

    start: int
    end: int
    name: _Name
    value: list[Mark]


def with_exceptions(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with a set that differs from those told alike before it as a correction of its own."""
    out = list(marks)
    if any(m.kind in (Kind.MEANT, Kind.SORRY, Kind.WROTE, Kind.SCRAP) for m in out):
        return out
    out = _of_session(_each_planned(with_all_but(out)), under)
    at = 0
    while at < len(out):
        alike = _alike_at(out, at)
        if alike is None:
            at += 1
            continue
        bound = _bound_behind(out, alike.end)
        one = None if bound is None else _one_at(out, bound + 1)
        opens = () if one is None else _open(out, at, record, under)
        grouped = bound is not None and any(m.kind is Kind.NUM for m in out[alike.end : bound])
        if bound is None or one is None or grouped or not _differs(out, bound, one, alike, len(opens)):
            at = alike.end
            continue
        place = _exercise(out, at, under)
        apart = [] if place is None else _told_apart(out, at, one, opens, record.exercises[place])
        if apart:
            out[at : one.end] = apart
            at += len(apart)
            continue
        said = _corrections(one, opens[: alike.count or len(opens)])
        stop = replace(out[bound], kind=Kind.STOP, text=".", value=None, parts=())
        after = _close(out, one.end)
        total = _told_as(out[at : alike.end], alike, len(opens))
        between = [m for m in out[alike.end : bound] if m.kind is not Kind.AT]
        out[at : one.end] = [*total, *between, stop, *said]
        at += len(total) + len(between) + 1 + len(said) + after
    return out


def _of_session(marks: list[Mark], under: int | None) -> list[Mark]:
    """`everything as planned except the last set of rows, only got 6`: all of the session, then the one put right."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.PLANNED), None)
    if place is None or any(m.kind in (Kind.NUM, Kind.NAME, Kind.WEAK) for m in marks[:place]):
        return marks
    bound = _bound_behind(marks, place + 1)
    if bound is None:
        return marks
    end = next((i for i in range(bound + 1, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    names = [i for i in range(bound, end) if marks[i].kind is Kind.NAME]
    which = next((i for i in range(bound, end) if _name_at(marks, i) is not None), None)
    one = None if which is None else _name_at(marks, which)
    if which is None or one is None or one.count > 1 or len(names) != 1 or len(marks[names[0]].names) != 1:
        return marks
    said = {w for m in marks[:place] for w in m.text.split()}
    if not said & _WHOLE and marks[names[0]].names[0] == under:
        return marks
    rest = [i for i in range(bound + 1, end) if i not in names and not which <= i < one.end]
    value = next((i for i in rest if marks[i].kind is Kind.NUM), None)
    stop = None if value is None else _value_at(marks, value)
    told = range(value, stop) if value is not None and stop is not None else range(0)
    if not told or any(marks[i].kind not in _BESIDE_ONE for i in rest if i not in told):
        return marks
    named = [m for m in one.marks if m.kind is not Kind.NAME]
    whole = replace(marks[place], text="everything as planned")
    line = replace(marks[bound], kind=Kind.LINE, text="\n", value=None, parts=())
    value_said = [marks[i] for i in told]
    return [*marks[:place], whole, line, marks[names[0]], *named, _was(value_said[0]), *value_said, *marks[end:]]


_WHOLE = frozenset(["everything", "session", "workout", "whole", "all", "it"])
_BESIDE_ONE = (Kind.FILL, Kind.AT, Kind.WITH, Kind.FOR, Kind.WAS, Kind.COLON, Kind.COMMA, Kind.OPEN, Kind.CLOSE,
               Kind.SET, Kind.SETS, Kind.DASH, Kind.EXCEPT)  # fmt: skip


def _each_planned(marks: list[Mark]) -> list[Mark]:
    """`sets 1 and 2 as planned`, `first two squats as planned`: each as planned, by its number."""
    if not any(m.kind is Kind.PLANNED for m in marks):
        return marks
    for place in range(len(marks) - 2):
        numbers, end = _numbers_at(marks, place)
        name = [marks[end]] if numbers and kind_at(marks, end) is Kind.NAME else []
        at = end + len(name)
        while kind_at(marks, at) in (Kind.FILL, Kind.WAS, Kind.DONE):
            at += 1
        if not numbers or kind_at(marks, at) is not Kind.PLANNED:
            continue
        first, told = marks[place], marks[at]
        out = list(name)
        for number in numbers:
            out += [*_numbered(first, number), told, replace(told, kind=Kind.COMMA, text=",", start=told.end)]
        more = kind_at(marks, at + 1) in (None, *_BOUNDS)
        return [*marks[:place], *(out[:-1] if more else out), *marks[at + 1 :]]
    return marks


def _numbers_at(marks: Sequence[Mark], place: int) -> tuple[range, int]:
    """The numbers of `sets 1 and 2`, `sets 1-3`, `first two (sets)`, and where these words end; none elsewhere."""
    led = marks[place - 1].kind if place else None
    one = whole_number(marks, place + 1, 1, _MOST_APART)
    if one is None or led in (Kind.NUM, Kind.LASTSET, Kind.LASTREP, Kind.SET):
        return range(0), place
    end = place + 2
    if marks[place].kind is Kind.ORD and marks[place].value == 1 and one > 1:
        return range(1, one + 1), end + (kind_at(marks, end) in (Kind.SETS, Kind.SET))
    joined = kind_at(marks, end) in (Kind.AND, Kind.DASH, Kind.TO, Kind.PLUS)
    two = whole_number(marks, end + 1, one + 1, one + _MOST_APART) if joined else None
    each = two is not None and (two == one + 1 or kind_at(marks, end) in (Kind.DASH, Kind.TO))
    if marks[place].kind in (Kind.SET, Kind.SETS) and two is not None and each:
        return range(one, two + 1), end + 2
    return range(0), place


def _numbered(before: Mark, number: int) -> list[Mark]:
    """`set 2`, as it stands before a mark."""
    number_at = replace(before, kind=Kind.NUM, text=str(number), value=Decimal(number), parts=(), end=before.start)
    return [replace(before, kind=Kind.SET, text="set", value=None, parts=(), end=before.start), number_at]


def _close(out: list[Mark], end: int) -> int:
    """Makes what stands behind the sets told apart the end of their sentence; 1 where it does."""
    if kind_at(out, end) is Kind.CLOSE and kind_at(out, end + 1) in (Kind.COMMA, Kind.BREAK, Kind.STOP):
        out[end] = replace(out[end], kind=Kind.FILL)
        end += 1
    if kind_at(out, end) in (Kind.COMMA, Kind.BREAK):
        out[end] = replace(out[end], kind=Kind.STOP, text=".")
        return 1
    return 0


def _corrections(one: _One, numbers: Sequence[int]) -> list[Mark]:
    """`last was 8`; of several, `set 3 was 9. set 4 was 9`."""
    name = one.name
    if name.count == 1:
        return [*name.marks, _was(one.value[0]), *one.value]
    chosen = numbers[-name.count :] if name.last else numbers[: name.count]
    out: list[Mark] = []
    for number in chosen:
        first = name.marks[0]
        if out:
            out.append(replace(first, kind=Kind.LINE, text="", value=None, end=first.start))
        out += [replace(first, kind=Kind.SET, text="set", value=None, end=first.start),
                replace(first, kind=Kind.NUM, text=str(number), value=Decimal(number), parts=()),
                _was(one.value[0]), *one.value]  # fmt: skip
    return out


def _alike_at(marks: Sequence[Mark], at: int) -> _Alike | None:
    """Sets told alike that start here: `3x10`, `3 sets of 10`, `90x10x3`, `all 10s`, `as planned`."""
    if marks[at].kind not in (Kind.NUM, Kind.PLANNED, Kind.ALL):
        return None
    kinds = [m.kind for m in marks[at : at + 6]]
    if kinds == [Kind.NUM, Kind.S, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return _counted(marks, at + 5, at + 6)
    if kinds[:5] == [Kind.NUM, Kind.X, Kind.NUM, Kind.NUM, Kind.TIMES]:
        return _counted(marks, at + 3, at + 5)
    if kinds[:5] == [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]:
        return _counted(marks, at + 4, at + 5)
    if kinds[:3] == [Kind.NUM, Kind.X, Kind.NUM] and kind_at(marks, at - 1) is not Kind.X:
        value = marks[at].value
        return _counted(marks, at, at + 3) if value is not None and value <= _MOST // 2 else None
    if kinds[:2] == [Kind.NUM, Kind.SETS]:
        return _counted(marks, at, _past_numbers(marks, at + 2))
    if kinds[:1] == [Kind.PLANNED] and kind_at(marks, at - 1) not in (Kind.NUM, Kind.ORD, Kind.LABEL, Kind.SET):
        return _Alike(at + 1, None)
    if kinds[:4] == [Kind.ALL, Kind.NUM, Kind.X, Kind.NUM]:
        return _Alike(_past_numbers(marks, at + 4), None)
    if kinds[:1] == [Kind.ALL] and kinds[1:2] == [Kind.NUM]:
        return _Alike(_past_numbers(marks, at + 1), None)
    fives = kinds[:2] == [Kind.NUM, Kind.S] and at + 2 < len(marks)
    if kinds[:4] == [Kind.NUM, Kind.S, Kind.AT, Kind.NUM] or (fives and _turns(marks[at + 2])):
        return _Alike(_past_numbers(marks, at), None)
    if kinds[:1] == [Kind.ALL] and kinds[1:3] in ([Kind.WITH, Kind.NUM], [Kind.AT, Kind.NUM]):
        return _Alike(_past_numbers(marks, at + 1), None)
    if kinds[:1] == [Kind.NUM] and Kind.ALL in kinds:
        end = at + kinds.index(Kind.ALL)
        between = marks[at:end]
        counted = kind_at(marks, end + 1) is Kind.NUM and kind_at(marks, end + 2) is Kind.EXCEPT
        if not counted and all(
            m.kind in (Kind.NUM, Kind.S, Kind.X, Kind.FOR, Kind.AT, Kind.FILL, *_UNITS) for m in between
        ):
            return _Alike(end + 1, None)
    return None


def _turns(mark: Mark) -> bool:
    """`8s but 7 on the last`, `8s until the last one`: a word that turns to what differs."""
    return mark.kind is Kind.EXCEPT or mark.text in _BUT | _UNTIL


def _counted(marks: Sequence[Mark], count: int, end: int) -> _Alike | None:
    value = marks[count].value
    if value is None or value != int(value) or not 1 < value <= _MOST:
        return None
    return _Alike(_past_numbers(marks, end), int(value))


def _past_numbers(marks: Sequence[Mark], at: int) -> int:
    """Behind what still tells of the same sets: their load, their repetitions."""
    start = at
    while (
        (kind_at(marks, at) in (Kind.NUM, Kind.S, Kind.EACH, *_LINKS, *_UNITS) and not _names(marks, at))
        or (kind_at(marks, at) is Kind.SLASH and kind_at(marks, at + 1) is Kind.EACH)
    ) or (
        kind_at(marks, at) in (Kind.FILL, Kind.COMMA)
        and kind_at(marks, at + 1) is Kind.NUM
        and kind_at(marks, at + 2) in _LOADS
        and not any(m.kind in _LOADS for m in marks[start:at])
    ):
        at += 1
    return at


def _bound_behind(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of the other sets end: at a comma, a stop, `but`."""
    for place in range(at, min(at + 4, len(marks))):
        if marks[place].kind in _BOUNDS or marks[place].text in _BUT | _UNTIL:
            return place
        if place == at and at and marks[at].kind is Kind.LASTSET and marks[at - 1].kind is Kind.PLANNED:
            return place - 1
        if kind_at(marks, place) is Kind.TO and place and marks[place - 1].text == "up":
            return place
        if marks[place].text == "only" and kind_at(marks, place + 1) in (Kind.LASTSET, Kind.ORD):
            return place
        named = marks[place].kind is Kind.NAME and place and marks[place - 1].kind is Kind.AT
        if not named and marks[place].kind not in (Kind.FILL, Kind.WORD, Kind.AT):
            return None
    return None


def _names(marks: Sequence[Mark], at: int) -> bool:
    """Whether a link leads no number of the same sets, but a name: `on rows`."""
    return kind_at(marks, at) in _LINKS and kind_at(marks, at + 1) is Kind.NAME


def _one_at(marks: Sequence[Mark], at: int) -> _One | None:
    """One set and what it was: `8 on the last`, `last one only 8`, `the second was 9`, `last two 85x8`."""
    start = at
    at = _past_little(marks, at)
    name = _name_at(marks, at)
    if name is not None:
        at = _past_little(marks, name.end)
        at += kind_at(marks, at) in (Kind.AT, Kind.WITH) and marks[at].text != "@"
        value = _value_at(marks, at)
        end = None if value is None else past_there(marks, value)
        if value is None or end is None or kind_at(marks, end) not in _ENDS:
            return None
        return _One(start, end, name, _value_of(marks, at, value))
    at += kind_at(marks, at) is Kind.DROP and marks[at].text.endswith("to")
    value = _value_at(marks, at)
    linked = value is not None and (kind_at(marks, value) in _LINKS or text_at(marks, value) == "in")
    if value is None or not linked or marks[value].text == "@":
        return None
    name = _name_at(marks, _past_fill(marks, value + 1))
    ends = None if name is None else kind_at(marks, name.end)
    if name is None or (ends not in _ENDS and not (ends is Kind.WITH and _rates(marks, name.end + 1))):
        return None
    return _One(start, name.end, name, _value_of(marks, at, value))


def _rates(marks: Sequence[Mark], at: int) -> bool:
    """`8 on the last with 1 left`: an effort behind it."""
    behind = kind_at(marks, at + 1) in (Kind.LEFT, Kind.TANK, Kind.RIR)
    return kind_at(marks, at) is Kind.NUM and behind


def _past_fill(marks: Sequence[Mark], at: int) -> int:
    while kind_at(marks, at) is Kind.FILL:
        at += 1
    return at


def _past_little(marks: Sequence[Mark], at: int) -> int:
    """Behind words that tell nothing: `but`, `the`, `was`, `only`, `which was`, a colon."""
    while kind_at(marks, at) in _LITTLE or (at < len(marks) and (marks[at].text in _PASSED or _goes_to(marks[at]))):
        at += 1
    return at


def _goes_to(mark: Mark) -> bool:
    """`dropped to 90 for the last`: the load that was gone to."""
    return mark.kind is Kind.DROP and mark.text.endswith("to")


def _name_at(marks: Sequence[Mark], at: int) -> _Name | None:
    """The words that name one set, or so many of the first or the last ones."""
    kind = kind_at(marks, at)
    last = kind in (Kind.LASTREP, Kind.LASTSET) and bool(set(marks[at].text.split()) & _LAST)
    if last and "rep" not in marks[at].text:
        several = _several(marks, at + 1)
        if several is not None:
            return _Name(list(marks[at : several[1]]), several[1], 1, True, several[0])
        end = at + 1
        while kind_at(marks, end) in (Kind.SET, Kind.NAME, Kind.WORKSET) or text_at(marks, end) == "one":
            end += 1
        return _Name(list(marks[at:end]), end, 1, True)
    if kind is Kind.ORD and marks[at].value is not None:
        several = _several(marks, at + 1) if marks[at].value == 1 else None
        if several is not None:
            return _Name(list(marks[at : several[1]]), several[1], 1, False, several[0])
        end = at + 1
        if kind_at(marks, end) is Kind.SET or (end < len(marks) and marks[end].text == "one"):
            end += 1
        return _Name(list(marks[at:end]), end, int(marks[at].value or 0), False)
    if kind is Kind.SET and kind_at(marks, at + 1) is Kind.NUM and marks[at + 1].value is not None:
        return _Name(list(marks[at : at + 2]), at + 2, int(marks[at + 1].value or 0), False)
    return None


def _several(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """How many sets behind `last` or `first`, and where their words end: `two`, `2 sets`; not the `8` of `last 8`."""
    count = whole_number(marks, at, 2, _MOST_APART)
    if count is None:
        return None
    if kind_at(marks, at + 1) in (Kind.SETS, Kind.SET):
        return count, at + 2
    following = kind_at(marks, _past_fill(marks, at + 1))
    counts = following in (Kind.NUM, Kind.WAS) or (marks[at].text.isalpha() and following in _ENDS)
    led = at > 1 and marks[at - 2].kind in _LINKS and following in _ENDS
    return (count, at + 1) if counts or led or (following is Kind.COMMA and marks[at].text.isalpha()) else None


def _value_of(marks: Sequence[Mark], at: int, end: int) -> list[Mark]:
    """The words of what a set was, a plural as its number: `doubles`."""
    plural = PLURALS.get(marks[at].text) or PLURALS.get(marks[at].text + "s")
    return list(marks[at:end]) if plural is None else [replace(marks[at], kind=Kind.NUM, value=plural)]


def _value_at(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of what a set was end: a count, or a load with one."""
    if kind_at(marks, at) is Kind.WORD and (marks[at].text in PLURALS or marks[at].text + "s" in PLURALS):
        return at + 1
    if kind_at(marks, at) is not Kind.NUM:
        return None
    end = at + 1
    if kind_at(marks, end) is Kind.S or (
        kind_at(marks, end) in (Kind.KG, Kind.LB) and kind_at(marks, end + 1) not in (Kind.X, Kind.FOR)
    ):
        return end + 1
    if kind_at(marks, end) in (Kind.KG, Kind.LB) and kind_at(marks, end + 1) in (Kind.X, Kind.FOR):
        end += 1
    if kind_at(marks, end) in (Kind.X, Kind.FOR) and kind_at(marks, end + 1) is Kind.NUM:
        end += 2
    end += kind_at(marks, end) is Kind.REPS
    return end + (kind_at(marks, end) is Kind.EACH)


def _open(marks: Sequence[Mark], at: int, record: Record, under: int | None) -> tuple[int, ...]:
    """The open sets of the exercise that is spoken of here; none where none is known."""
    place = _exercise(marks, at, under)
    return () if place is None else record.context(place).open_sets


def _exercise(marks: Sequence[Mark], at: int, under: int | None) -> int | None:
    """The exercise that is spoken of here."""
    named = [m.names[0] for m in marks[max(0, at - _REACH) : at] if m.kind is Kind.NAME and len(m.names) == 1]
    behind = [m.names[0] for m in marks[at : at + 12] if m.kind is Kind.NAME and len(m.names) == 1]
    return named[-1] if named else behind[0] if behind and kind_at(marks, at - 1) is None else under


def _told_apart(
    marks: Sequence[Mark], at: int, one: _One, opens: Sequence[int], exercise: PlannedExercise
) -> list[Mark]:
    """`as planned up to the last, that was 260x2` where the plan has a range for the last: `set 1 as planned, set 2 as
    planned, set 3 260x2`; nothing where the plan has one number for it, as then all are told first and it is put right.
    """
    planned = marks[at]
    chosen = opens[-one.name.count :] if one.name.last else [one.name.number + n for n in range(one.name.count)]
    sets = exercise.sets
    open_ended = any(0 < n <= len(sets) and sets[n - 1].reps.low != sets[n - 1].reps.high for n in chosen)
    others = [n for n in opens if n not in chosen]
    fixed = all(0 < n <= len(sets) and sets[n - 1].reps.low == sets[n - 1].reps.high for n in others)
    if planned.kind is not Kind.PLANNED or not (open_ended and fixed and others):
        return []
    out: list[Mark] = []
    for number in opens:
        first = planned if number in others else one.value[0]
        told = [planned] if number in others else one.value
        comma = replace(first, kind=Kind.COMMA, text=",", value=None, parts=(), start=told[-1].end)
        out += [*_numbered(first, number), *told, comma]
    return out[:-1]


def _differs(marks: Sequence[Mark], bound: int, one: _One, alike: _Alike, count: int) -> bool:
    """Whether the sets are of those told alike, and not those that they leave."""
    but = any(_turns(m) for m in marks[bound : one.end])
    if alike.count is None:
        return count > one.name.count
    if not one.name.last and one.name.count == 1:
        return one.name.number <= alike.count
    return alike.count > one.name.count and (but or alike.count >= count)


def _was(before: Mark) -> Mark:
    return replace(before, kind=Kind.WAS, text="was", value=None, parts=(), end=before.start)


def _told_as(said: Sequence[Mark], alike: _Alike, count: int) -> list[Mark]:
    """The sets told alike, all of them as so many as are open."""
    if alike.count is not None:
        return list(said)
    every = next((m for m in said if m.kind is Kind.ALL), replace(said[0], end=said[0].start))
    number = replace(every, kind=Kind.NUM, text=str(count), value=Decimal(count), parts=())
    sets = replace(every, kind=Kind.SETS, text="sets", value=None, parts=(), start=every.end)
    rest = [m for m in said if m is not every]
    plural = next((i for i, m in enumerate(rest) if m.kind is Kind.NUM), 0) + 1
    if kind_at(rest, plural) is Kind.S:
        del rest[plural]
    return [number, sets, *rest]
