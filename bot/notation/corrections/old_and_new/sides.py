"""One side of a stored set told afterwards: `the right arm, i forgot to say, was twelve too`, `same on the other side`;
and the efforts of its sides: `could have done 1 more on the left and 2 more on the right`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.bounds import HARDEST
from bot.notation.clauses import kind_at, text_at
from bot.notation.corrections.meant import SIDES
from bot.notation.corrections.old_and_new.clause import effort_said, numbered
from bot.notation.corrections.old_and_new.stored import exercise_of
from bot.notation.corrections.which_stored import which_at
from bot.notation.kinds import Kind
from bot.notation.order.in_reserve import NOTHING
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Side, Stage

_PASSED = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.FOR, Kind.COMMA, Kind.AND, Kind.COLON, Kind.TO, Kind.COULD,
           Kind.DASH, Kind.SET, Kind.REPS, Kind.THEN, Kind.SORRY)  # fmt: skip
_TURNING = frozenset(words("next others rest more new now weak weaker strong stronger each both"))
_SAME = (Kind.SAME, Kind.SAMEREPS)
_OF_SIDE = frozenset(words("side arm leg hand one"))
_KINDS = {Side.LEFT: Kind.LEFT, Side.RIGHT: Kind.RIGHT}


def _last_set(request: Request, marks: Sequence[Mark]) -> list[Performed]:
    """The set told last, with both its sides, of the two-sided exercise that is named or was told last."""
    names = [m for m in marks if m.kind is Kind.NAME]
    named = exercise_of(names[0] if names else None, request)
    exercise = next((e for e in request.exercises if e.name == named), None)
    if exercise is None or exercise.sides != len(Side) or len({m.names for m in names}) > 1:
        return []
    last = next(p for p in reversed(request.done) if p.exercise == named)
    if last.set is None or last.stage is not Stage.WORK:
        return []
    return [p for p in request.done if (p.exercise, p.set) == (last.exercise, last.set)]


def other_side(sentence: Sequence[Mark], request: Request) -> list[Mark] | None:
    """The side of the set before that was not told yet, as `right 12`; none where the sentence tells something else."""
    rows = _last_set(request, sentence)
    if len(rows) != 1 or rows[0].side is None:
        return None
    missing = Side.RIGHT if rows[0].side is Side.LEFT else Side.LEFT
    side: Mark | None = None
    number: Mark | None = None
    same = False
    effort: list[Mark] = []
    end = 0
    for at, mark in enumerate(sentence):
        rated = effort_said(sentence, at) if at >= end and number is not None else None
        if rated is not None and not effort:
            rir = replace(mark, kind=Kind.RIR, text="rir", value=None, end=mark.start)
            effort = [rir, replace(mark, kind=Kind.NUM, value=rated[0], end=sentence[rated[1] - 1].end)]
            end = rated[1]
        if at < end:
            continue
        said = set(mark.text.split())
        other = "other" in said and (said | set(text_at(sentence, at + 1).split())) & _OF_SIDE
        bare = missing.value == mark.text and kind_at(sentence, at + 1) is Kind.NUM
        if (SIDES.get(mark.kind) is missing or other or bare) and side is None:
            side = mark
        elif mark.kind is Kind.NUM and number is None and not mark.parts:
            number = mark
        elif mark.kind in _SAME:
            same = True
        elif not _has_place(sentence, at) or said & _TURNING:
            return None
    told = number is None and same
    if side is None or not (told or (number is not None and not same)):
        return None
    right = replace(side, kind=_KINDS[missing], text="side", names=(), value=None)
    reps = rows[0].reps
    count = number or replace(side, kind=Kind.NUM, text=str(reps), value=Decimal(reps), names=())
    if count.value is None or count.value != int(count.value) or count.value > 2 * rows[0].reps:
        return None
    edges = [replace(m, kind=Kind.FILL, text="that", value=None, names=()) for m in (sentence[0], sentence[-1])]
    return [
        edges[0],
        *[m for m in sentence if m.kind is Kind.NAME][:1],
        right,
        count,
        *effort,
        *([] if effort else edges[1:]),
    ]


def _has_place(sentence: Sequence[Mark], at: int) -> bool:
    mark = sentence[at]
    sided = (
        mark.kind in (Kind.EACH, Kind.WEAK, Kind.HAND)
        and mark.text in _OF_SIDE
        and text_at(sentence, at - 1).endswith("other")
    )
    word = mark.kind is Kind.WORD and mark.text in ("mention", "add", "okay")
    return sided or word or mark.kind in (*_PASSED, Kind.NAME)


def rated_sides(sentence: Sequence[Mark], request: Request) -> list[Mark] | None:
    """The efforts of the sides of a stored set, as `set 1 left rir 1 right rir 2`; none where more is told."""
    rows = _last_set(request, sentence)
    if not rows or not any(m.kind in SIDES for m in sentence):
        return None
    stored = sorted({p.set for p in request.done if p.exercise == rows[0].exercise and p.set is not None})
    number = rows[0].set
    sides: list[Side] = []
    efforts: list[Decimal] = []
    exerted = any(m.kind is Kind.RPE for m in sentence)
    at = 0
    while at < len(sentence):
        which = which_at(sentence, at, stored)
        effort = effort_said(sentence, at) or (_going_on(sentence, at, exerted=exerted) if efforts else None)
        if which is not None and len(which.sets) == 1:
            number, at = which.sets[0], which.end
        elif effort is not None and abs(len(efforts) + 1 - len(sides)) <= 1:
            efforts.append(effort[0])
            at = effort[1]
        elif sentence[at].kind in SIDES and abs(len(sides) + 1 - len(efforts)) <= 1:
            sides.append(SIDES[sentence[at].kind])
            at += 1
        elif sentence[at].kind in (*_PASSED, Kind.NAME) and not set(sentence[at].text.split()) & _TURNING:
            at += 1
        else:
            return None
    if not sides or len(sides) != len(efforts) or len(set(sides)) != len(sides):
        return None
    mark = replace(sentence[0], text="set", names=(), parts=(), value=None, end=sentence[-1].end)
    out = [
        *[m for m in sentence if m.kind is Kind.NAME][:1],
        replace(mark, kind=Kind.LABEL, value=Decimal(number or 0)),
    ]
    for side, left in zip(sides, efforts, strict=True):
        rir = replace(mark, kind=Kind.RIR, text="rir")
        out += [replace(mark, kind=_KINDS[side], text="side"), rir, replace(mark, kind=Kind.NUM, value=left)]
    return out


def side_again(sentence: Sequence[Mark], request: Request) -> list[Mark] | None:
    """What sides of a stored set were, as `set 2 was left 11 right 12`; none where more is told or it is to come."""
    rows = _last_set(request, sentence)
    if not rows or not any(m.kind in SIDES for m in sentence):
        return None
    own = {p.set: {q.side for q in request.done if q.set == p.set and q.exercise == p.exercise}
           for p in request.done if p.exercise == rows[0].exercise and p.set is not None}  # fmt: skip
    number: int | None = None
    told: list[Mark] = []
    cued = False
    at = 0
    while at < len(sentence):
        mark = sentence[at]
        which = which_at(sentence, at, sorted(own)) or numbered(sentence, at, sorted(own), ends=SIDES)
        if which is not None and which.lasts and _is_open(rows[0].exercise, max(own), request):
            return None  # `last get-up L3 R2` is the one to come
        if which is not None and len(which.sets) == 1 and number is None:
            number, at = which.sets[0], which.end
            continue
        words_of = set(mark.text.split())
        cued = cued or mark.kind in (Kind.MEANT, Kind.SORRY) or "actually" in words_of
        if mark.kind in SIDES or _is_count(mark):
            told.append(mark)
        elif mark.kind not in (*_PASSED, Kind.NAME, Kind.MEANT) or words_of & _TURNING:
            return None
        at += 1
    cued = cued or number is not None
    number = rows[0].set or 0 if number is None else number
    sides = [m for m in told if m.kind in SIDES]
    counts = [m for m in told if m.kind is Kind.NUM]
    paired = all(a.kind is not b.kind and (a.kind is Kind.NUM) is not (b.kind is Kind.NUM)
                 for a, b in zip(told[::2], told[1::2], strict=False))  # fmt: skip
    kept = own[number] >= {SIDES[m.kind] for m in sides} or own[number] == {None}
    if not cued or not kept or not paired or len(sides) != len(counts) or len({m.kind for m in sides}) != len(sides):
        return None
    start = sentence[0].start
    label = Mark(Kind.LABEL, "set", start, sentence[-1].end, value=Decimal(number))
    out = [
        *[m for m in sentence if m.kind is Kind.NAME][:1],
        label,
        Mark(Kind.MEANT, "was", counts[0].start, counts[0].start),
    ]
    for side, count in zip(sides, counts, strict=True):
        out += [replace(side, kind=_KINDS[SIDES[side.kind]], text="side"), count]
    return out


def _is_open(exercise: str, last: int, request: Request) -> bool:
    """Whether sets of an exercise are left behind the last one stored."""
    return any(e.name == exercise and len(e.sets) > last for e in request.exercises)


def _is_count(mark: Mark) -> bool:
    return mark.kind is Kind.NUM and not mark.parts and mark.value is not None and mark.value == int(mark.value)


def _going_on(sentence: Sequence[Mark], at: int, *, exerted: bool) -> tuple[Decimal, int] | None:
    """The 2 of `left rir 1, right 2`, of `1 more on the left and 2 more on the right`; the `none` of `right none`."""
    if text_at(sentence, at) in NOTHING:
        return Decimal(0), at + 1
    if kind_at(sentence, at) is not Kind.NUM or kind_at(sentence, at + 1) in (Kind.KG, Kind.LB, Kind.REPS, Kind.X):
        return None
    value = sentence[at].value or Decimal(0)
    return HARDEST - value if exerted else value, at + 1 + (kind_at(sentence, at + 1) is Kind.MORE)
