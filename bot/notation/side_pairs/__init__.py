"""Both sides of a set in any order and wording, as `left 10 reps right 9 reps`; and what the next sets did on both.

`10 rep left and 9 rep right`, `10 (L) 9 (R)`, `was left 5 right 3`, `same on the left, only 6 on the right`, `10/9`,
`left 10 right 9, other set 9 on both`. Only of an exercise that works its sides apart and counts repetitions; a number
with a word of effort or of load is none of these.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.side_pairs.pairs import SoFar, bare_pair, counts_sets, named_pair, without_same
from bot.notation.side_pairs.placing import drop_label, drop_other, label_behind, put_pair
from bot.notation.side_pairs.sides import ENDS, LEFT, RIGHT, count_at, is_on
from bot.notation.tokens import Mark
from bot.training.plan import Measure
from bot.training.report import Side


def with_side_pairs(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with both sides of each set in that form."""
    if not any(m.kind in (*LEFT, *RIGHT, Kind.EACH, Kind.SLASH) for m in marks):
        return list(marks)
    out = list(marks)
    place, at, told = under, 0, SoFar()
    while at < len(out):
        if out[at].kind is Kind.NAME and len(out[at].names) == 1:
            told = told if place == out[at].names[0] else SoFar()
            place = out[at].names[0]
        exercise = None if place is None else record.exercises[place]
        if place is None or exercise is None or exercise.sides == 1 or exercise.measure is not Measure.REPS:
            at += 1
            continue
        base = max((p.set or 0 for p in record.stored if p.exercise == exercise.name), default=0)
        pair = named_pair(out, at) or bare_pair(out, at, exercise, told)
        pair = None if pair is None else without_same(pair, record, place, first=not told.sets)
        if pair is not None and pair.one.count.value == pair.two.count.value and counts_sets(out, pair.end):
            count = pair.one.count
            each = Mark(Kind.EACH, "each", count.end, count.end)
            out[pair.start : pair.end] = [count, Mark(Kind.REPS, "reps", count.end, count.end), each]
            at = pair.start + 3
            continue
        if pair is not None:
            at = put_pair(out, pair, base + told.sets + 1)
            told = SoFar(told.sets + 1, paired=True, in_order=pair.one.side is Side.LEFT)
            continue
        both = _both_at(out, at)
        if both is not None:
            if told.paired:
                out[at:both] = [out[at], Mark(Kind.REPS, "reps", out[at].end, out[at].end), _each(out[both - 1])]
                drop_other(out, at)
                both = at + 3
            told = replace(told, sets=told.sets + 1)
            drop_label(out, both, base + told.sets)
        at += 1
    return _done_on_both(out, record, under)


def _each(mark: Mark) -> Mark:
    return replace(mark, kind=Kind.EACH, text="each")


def _both_at(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words of `9 on both`, `9 each` end that start with a number."""
    if count_at(marks, at) is None or marks[at].kind is not Kind.NUM:
        return None
    end = at + 1
    while kind_at(marks, end) in (Kind.REPS, Kind.FOR, Kind.WITH) or is_on(marks, end):
        end += 1
    closes = kind_at(marks, end) is Kind.EACH and (kind_at(marks, end + 1) in ENDS or is_on(marks, end + 1))
    return end + 1 if closes or (kind_at(marks, end) is Kind.EACH and label_behind(marks, end + 1)) else None


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
        replace(m, kind=Kind.FILL) if i == each[0] or (i == each[0] - 1 and is_on(out, i)) else m
        for i, m in enumerate(out)
    ]
