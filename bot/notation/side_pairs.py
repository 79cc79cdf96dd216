"""Both sides of a set in any order and wording, as `left 10 reps right 9 reps`; and what the next sets did on both.

`10 rep left and 9 rep right`, `10 (L) 9 (R)`, `was left 5 right 3`, `same on the left, only 6 on the right`, `10/9`,
`left 10 right 9, other set 9 on both`. Only of an exercise that works its sides apart and counts repetitions; a number
with a word of effort or of load is none of these.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import Measure, PlannedExercise
from bot.training.report import Side, Stage

_LEFT, _RIGHT = (Kind.LEFT, Kind.L), (Kind.RIGHT, Kind.R)
_BETWEEN = (Kind.FILL, Kind.COLON, Kind.OPEN, Kind.CLOSE, Kind.REPS, Kind.WITH, Kind.FOR, Kind.WAS, Kind.AND, Kind.DASH)
_PARTS = (Kind.STOP, Kind.LINE, Kind.BREAK)
_LIMBS = frozenset(words("leg legs arm arms side hand foot limb one only just but"))
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.CLOSE, Kind.QUERY, Kind.AND, Kind.NAME,
         Kind.ORD, Kind.LASTSET, Kind.FILL, Kind.DASH)  # fmt: skip
_OPENS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.THEN, Kind.ORD, Kind.SET, Kind.LASTSET, Kind.COLON,
          Kind.WAS, Kind.FILL, Kind.AND, Kind.NAME, Kind.KG, Kind.LB, Kind.S)  # fmt: skip

_LOWEST, _HIGHEST = Decimal("0.4"), Decimal("1.3")
"""Two bare numbers are both sides' within these parts of the planned range."""


@dataclass(frozen=True, slots=True)
class _Told:
    """What one side did: the mark that says it, the place behind its words."""

    side: Side
    count: Mark
    side_mark: Mark
    failed: bool = False
    """Whether the repetition behind these failed."""


@dataclass(frozen=True, slots=True)
class _Pair:
    """Both sides, in the order told, and where their words start and end."""

    one: _Told
    two: _Told
    start: int
    end: int


def with_side_pairs(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with both sides of each set in that form."""
    if not any(m.kind in (*_LEFT, *_RIGHT, Kind.EACH, Kind.SLASH) for m in marks):
        return list(marks)
    out = [replace(m, kind=Kind.ORD, value=Decimal(2)) if _is_second(marks, i) else m for i, m in enumerate(marks)]
    place, at, told = under, 0, _So()
    while at < len(out):
        if out[at].kind is Kind.NAME and len(out[at].names) == 1:
            told = told if place == out[at].names[0] else _So()
            place = out[at].names[0]
        exercise = None if place is None else record.exercises[place]
        if place is None or exercise is None or exercise.sides == 1 or exercise.measure is not Measure.REPS:
            at += 1
            continue
        base = max((p.set or 0 for p in record.stored if p.exercise == exercise.name), default=0)
        pair = _named_pair(out, at) or _bare_pair(out, at, exercise, told)
        pair = None if pair is None else _without_same(pair, record, place, first=not told.sets)
        if pair is not None:
            at = _put_pair(out, pair, base + told.sets + 1)
            told = _So(told.sets + 1, paired=True, in_order=pair.one.side is Side.LEFT)
            continue
        both = _both_at(out, at)
        if both is not None:
            if told.paired:
                out[at:both] = [out[at], Mark(Kind.REPS, "reps", out[at].end, out[at].end), _each(out[both - 1])]
                _drop_other(out, at)
                both = at + 3
            told = replace(told, sets=told.sets + 1)
            _drop_label(out, both, base + told.sets)
        at += 1
    return _done_on_both(out, record, under)


def _is_second(marks: Sequence[Mark], at: int) -> bool:
    """The `second` of `L10 R7 second`, `10/7 second`: a set, and no time."""
    counted = kind_at(marks, at - 1) is Kind.NUM and kind_at(marks, at - 2) in (*_LEFT, *_RIGHT, Kind.SLASH)
    return kind_at(marks, at) is Kind.SECONDS and text_at(marks, at) == "second" and counted


@dataclass(frozen=True, slots=True)
class _So:
    """What was told of an exercise so far: how many sets of both sides, and whether any with each by itself."""

    sets: int = 0
    paired: bool = False
    in_order: bool = False
    """Whether the left was told first, so that `9 and 8` behind it is left, then right."""


_GOT = ("got", "did", "made", "had")
"""Words that tell what a set was, and so may correct one."""


def _put_pair(out: list[Mark], pair: _Pair, number: int) -> int:
    """Puts a pair in its form, its load and its label before it; where to go on."""
    said = [*_said(pair.one), *_said(pair.two), *_failing(pair.one), *_failing(pair.two)]
    _drop_other(out, pair.start)
    corrects = number > 1 and kind_at(out, pair.start - 1) is not Kind.NAME
    between = [m for m in out[pair.start : pair.end] if m.kind is Kind.WAS or (corrects and m.text in _GOT)]
    led = _was(out[pair.start]) or between[:1]
    out[pair.start : pair.end] = [*led, *said]
    start = _beside_load(out, pair.start)
    end = start + len(led) + len(said)
    return _label_first(out, end, len(led) + len(said), number)


def _said(told: _Told) -> list[Mark]:
    side = Kind.LEFT if told.side is Side.LEFT else Kind.RIGHT
    at = told.side_mark
    start = at.end - len(at.text.split(" ")[-1]) if at.kind is Kind.TANK else at.start
    return [
        Mark(side, told.side.value, start, at.end),
        told.count,
        Mark(Kind.REPS, "reps", told.count.end, told.count.end),
    ]


def _failing(told: _Told) -> list[Mark]:
    """The `right failed the 9th` of one side: an effort of that side alone."""
    if not told.failed:
        return []
    comma = Mark(Kind.COMMA, ",", told.count.start, told.count.start)
    return [comma, _said(told)[0], Mark(Kind.EMPTY, "to failure", told.count.start, told.count.end)]


def _beside_load(out: list[Mark], at: int) -> int:
    """`step ups with 10, left 10 right 9`: the load straight before the sides; where these start then."""
    led = kind_at(out, at - 3) in (Kind.WITH, Kind.AT) and kind_at(out, at - 2) is Kind.NUM
    if kind_at(out, at - 1) is not Kind.COMMA or not led or kind_at(out, at - 4) not in (None, Kind.NAME, *_PARTS):
        return at
    out[at - 1] = Mark(Kind.FOR, "for", out[at - 1].start, out[at - 1].end)
    return at


def _each(mark: Mark) -> Mark:
    return replace(mark, kind=Kind.EACH, text="each")


def _was(mark: Mark) -> list[Mark]:
    """The `was` of `set 2 was left 5 right 3`, whose `was left` tells a side."""
    words_said = mark.text.split()
    if mark.kind is not Kind.TANK or words_said[:1] != ["was"]:
        return []
    return [replace(mark, kind=Kind.WAS, text="was", end=mark.start + len("was"))]


def _side_at(marks: Sequence[Mark], at: int) -> Side | None:
    """The side that a mark names; `reps left` names one where a right one is told too, as the pair sees to."""
    kind = kind_at(marks, at)
    over = kind is Kind.TANK and text_at(marks, at).split()[-1:] == ["left"]
    return Side.LEFT if kind in _LEFT or over else Side.RIGHT if kind in _RIGHT else None


def _count_at(marks: Sequence[Mark], at: int) -> Mark | None:
    """The whole number, or the `same`, at a place."""
    mark = marks[at] if 0 <= at < len(marks) else None
    if mark is None or mark.kind not in (Kind.NUM, Kind.SAME):
        return None
    whole = mark.kind is Kind.SAME or (mark.value is not None and mark.value == int(mark.value) and not mark.parts)
    return (
        mark
        if whole and kind_at(marks, at + 1) not in (Kind.X, Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.TOTAL)
        else None
    )


def _past(marks: Sequence[Mark], at: int, *more: Kind) -> int:
    while kind_at(marks, at) in (*_BETWEEN, *more) or text_at(marks, at) in _LIMBS or _is_on(marks, at):
        if kind_at(marks, at) is Kind.NUM:
            break
        at += 1
    return at


def _is_on(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.AT and text_at(marks, at).split()[:1] in (["on"], ["in"])


def _one_at(marks: Sequence[Mark], at: int, *, side_first: bool) -> tuple[_Told, int] | None:
    """What one side did, from here on, and the place behind it."""
    link = _past(marks, at + 1) if not side_first or kind_at(marks, at + 1) is not Kind.AND else at + 1
    first, second = (at, link) if side_first else (link, at)
    side, count = _side_at(marks, first), _count_at(marks, second)
    failed = side_first and kind_at(marks, link) is Kind.FAILED and kind_at(marks, link + 1) is Kind.ORD
    if failed:
        done = (marks[link + 1].value or Decimal(1)) - 1
        count, link = replace(marks[link + 1], kind=Kind.NUM, text=str(done), value=done), link + 1
    if side is None or count is None or any(m.kind is Kind.AND for m in marks[at:link]):
        return None
    end = link + 1
    while text_at(marks, end) in _LIMBS - {"but", "only", "just"} or kind_at(marks, end) in (Kind.REPS, Kind.CLOSE):
        end += 1
    return _Told(side, count, marks[first], failed), end


def _named_pair(marks: Sequence[Mark], at: int) -> _Pair | None:
    """Both sides from here on, each with its number before it or each behind it."""
    side_first = _side_at(marks, at) is not None
    one = _one_at(marks, at, side_first=side_first)
    if one is None or kind_at(marks, at - 1) in (Kind.X, Kind.FOR) or _is_rated(marks, at):
        return None
    link = _past(marks, one[1], Kind.COMMA, Kind.SLASH, Kind.THEN)
    two = _one_at(marks, link, side_first=side_first)
    if two is None and any(m.kind in (Kind.COMMA, Kind.AND) or m.text == "but" for m in marks[one[1] : link]):
        two = _one_at(marks, link, side_first=not side_first)
        two = two if two is not None and kind_at(marks, two[1]) in _ENDS else None
    if two is None or two[0].side is one[0].side or _goes_on(marks, two[1]):
        return None
    load_first = not side_first and _count_at(marks, two[1]) is not None
    if load_first and _named_pair(marks, _next_side(marks, at)) is not None:
        return None
    overs = [m for m in (one[0].side_mark, two[0].side_mark) if m.kind is Kind.TANK]
    if overs and any("was" in m.text.split() for m in overs) and not side_first:
        return None
    return _Pair(one[0], two[0], at, two[1])


def _is_rated(marks: Sequence[Mark], at: int) -> bool:
    """Whether a word of effort stands before: the `left 2 right 1` of `10/9 rir left 2 right 1`."""
    while kind_at(marks, at - 1) in (Kind.FILL, Kind.WAS, Kind.COLON, Kind.WITH):
        at -= 1
    return kind_at(marks, at - 1) in (Kind.RPE, Kind.RIR, Kind.FEELS) or text_at(marks, at - 1) == "@"


def _goes_on(marks: Sequence[Mark], at: int) -> bool:
    """Whether what follows both sides is of the last number, or counts sets alike: `all three`, `3 sets`."""
    link = at + (kind_at(marks, at) is Kind.COMMA)
    counted = kind_at(marks, link) is Kind.NUM and kind_at(marks, link + 1) in (Kind.SETS, Kind.TIMES)
    return counted or kind_at(marks, link) is Kind.ALL or kind_at(marks, at) in _OF_NUMBER


_OF_NUMBER = (Kind.X, Kind.KG, Kind.LB, Kind.TANK)


def _next_side(marks: Sequence[Mark], at: int) -> int:
    return next((i for i in range(at + 1, len(marks)) if _side_at(marks, i) is not None), len(marks))


def _bare_pair(marks: Sequence[Mark], at: int, exercise: PlannedExercise, so: _So) -> _Pair | None:
    """`10/9`: left, then right; behind sides that were named, `9 and 9` too."""
    one, two = _count_at(marks, at), _count_at(marks, at + 2)
    joins = (Kind.SLASH, Kind.AND, Kind.PLUS) if so.in_order else (Kind.SLASH,)
    opens = (*_OPENS, Kind.WITH, Kind.FOR, Kind.X, Kind.NUM) if so.paired else _OPENS
    if one is None or two is None or kind_at(marks, at + 1) not in joins or kind_at(marks, at - 1) not in opens:
        return None
    if _has_columns(marks):
        return None
    end = at + 3 + (kind_at(marks, at + 3) is Kind.REPS)
    planned = [reps for one_set in exercise.sets for reps in (one_set.reps.low, one_set.reps.high)]
    likely = all(min(planned) * _LOWEST <= (m.value or 0) <= max(planned) * _HIGHEST for m in (one, two))
    finish = any(s.finish is not None for s in exercise.sets)
    if not likely or finish or kind_at(marks, end) not in _ENDS or one.value is None or two.value is None:
        return None
    return _Pair(_Told(Side.LEFT, one, one), _Told(Side.RIGHT, two, two), at, end)


def _has_columns(marks: Sequence[Mark]) -> bool:
    """Whether the message says once which side each of two numbers is of: `16 (R/L): 10/9, 9/8`."""
    sides = (*_LEFT, *_RIGHT)
    kinds = [m.kind for m in marks]
    return any(
        kinds[i] in sides and kinds[i + 1] is Kind.SLASH and kinds[i + 2] in sides for i in range(len(kinds) - 2)
    )


def _both_at(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of `9 on both`, `9 each` end that start with a number."""
    if _count_at(marks, at) is None or marks[at].kind is not Kind.NUM:
        return None
    end = at + 1
    while kind_at(marks, end) in (Kind.REPS, Kind.FOR, Kind.WITH) or _is_on(marks, end):
        end += 1
    closes = kind_at(marks, end) is Kind.EACH and (kind_at(marks, end + 1) in _ENDS or _is_on(marks, end + 1))
    return end + 1 if closes or (kind_at(marks, end) is Kind.EACH and _label_behind(marks, end + 1)) else None


def _drop_other(out: list[Mark], at: int) -> None:
    """The `other set` of `other set 9 on both`: the next one."""
    start = at
    while start > 0 and (set(text_at(out, start - 1).split()) <= _OTHER or _is_set(out, start - 1)):
        start -= 1
    if any("other" in m.text.split() for m in out[start:at]):
        out[start:at] = [replace(m, kind=Kind.GAP) for m in out[start:at]]


_OTHER = frozenset(("one", "other", "the"))


def _is_set(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.SET and kind_at(marks, at - 1) is not Kind.ORD


def _label_behind(marks: Sequence[Mark], at: int) -> tuple[int, int] | None:
    """Where the words start and end that say behind a set which one it was: `second set`, `on the second`."""
    link = at + (kind_at(marks, at) is Kind.COMMA)
    while kind_at(marks, link) in (Kind.FILL, Kind.WITH) or _is_on(marks, link):
        link += 1
    end = link + 1 + (kind_at(marks, link + 1) is Kind.SET or text_at(marks, link + 1) == "one")
    named = kind_at(marks, link) in (Kind.ORD, Kind.LASTSET)
    return (link, end) if named and kind_at(marks, end) in (None, Kind.COMMA, Kind.THEN, *_PARTS) else None


def _drop_label(out: list[Mark], at: int, number: int) -> None:
    """The `first set` of `10 each first set, left 9 right 8`: the set that is next anyway."""
    found = _label_behind(out, at)
    if found is not None and out[found[0]].kind is Kind.ORD and out[found[0]].value == number:
        out[at : found[1]] = [replace(m, kind=Kind.GAP, value=None) for m in out[at : found[1]]]


def _label_first(out: list[Mark], at: int, width: int, number: int) -> int:
    """`L9 R8 second set`: which set it is, before both sides of it; nothing where it is the next; where to go on."""
    led = at - width - 1
    led -= kind_at(out, led) in (Kind.SET, Kind.COLON, Kind.FILL)
    if kind_at(out, led) is Kind.ORD and out[led].value == number and number > 1:
        out[led : at - width] = [replace(m, kind=Kind.GAP, value=None) for m in out[led : at - width]]
        return at
    found = _label_behind(out, at)
    if found is None:
        return at
    link, end = found
    label = [] if out[link].kind is Kind.ORD and out[link].value == number else out[link:end]
    out[at - width : end] = [*label, *out[at - width : at]]
    return at + len(label)


def _without_same(pair: _Pair, record: Record, place: int, *, first: bool) -> _Pair | None:
    """The pair with the repetitions of the set before for `same`; `None` where there is no such set.

    Told second, `same` is what the first side did.
    """
    if Kind.SAME not in (pair.one.count.kind, pair.two.count.kind):
        return pair
    if pair.one.count.kind is not Kind.SAME:
        return None
    last = record.last(place) if first else None
    if last is None:
        return None
    rows = [p for p in record.rows((last.exercise, last.set or 0)) if p.stage is Stage.WORK]
    sides = []
    for one in (pair.one, pair.two):
        reps = next((p.reps for p in rows if p.side in (None, one.side)), None)
        if one.count.kind is Kind.SAME and reps is None:
            return None
        count = one.count
        if count.kind is Kind.SAME:
            count = replace(count, kind=Kind.NUM, text=str(reps), value=Decimal(reps or 0), parts=())
        sides.append(replace(one, count=count))
    return replace(pair, one=sides[0], two=sides[1])


def _done_on_both(out: list[Mark], record: Record, under: int | None) -> list[Mark]:
    """`done both sides`, `did both sides`: done, of an exercise with two."""
    if under is None or record.exercises[under].sides == 1 or any(m.kind in (Kind.NUM, Kind.NAME) for m in out):
        return out
    each = [i for i, m in enumerate(out) if m.kind is Kind.EACH]
    done = any(m.kind is Kind.DONE for m in out)
    did = next((i for i, m in enumerate(out) if m.text in ("did", "finished")), None)
    if len(each) != 1 or not (done or did is not None):
        return out
    if not done and did is not None:
        out[did] = replace(out[did], kind=Kind.DONE, text="done")
    return [
        replace(m, kind=Kind.FILL) if i == each[0] or (i == each[0] - 1 and _is_on(out, i)) else m
        for i, m in enumerate(out)
    ]
