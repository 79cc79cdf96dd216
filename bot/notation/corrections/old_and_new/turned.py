"""Two stored sets told the wrong way round: `swap the two curl sets`, `sets 1 and 2 of rows are swapped`, `the curl
sets are the other way round, 10 and then 12`. What the numbers behind say must be the two sets turned; sides are none.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.corrections.old_and_new.stored import exercise_of
from bot.notation.corrections.which_stored import which_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Performed, Stage
from bot.training.units import Unit

TURNED = frozenset(words(
    "swap swapped switch switched flip flipped reverse reversed backwards mixed muddled round around inverted swapping",
))  # fmt: skip
_PASSED = (Kind.FILL, Kind.WAS, Kind.COMMA, Kind.MEANT, Kind.SORRY, Kind.THEN, Kind.AND, Kind.FOR, Kind.AT, Kind.SET,
           Kind.SETS, Kind.REPS, Kind.ASKING, Kind.COLON, Kind.DASH, Kind.INSTEAD, Kind.X, Kind.EACH)  # fmt: skip
_SIDED = frozenset(words("left right side sides leg legs arm arms hand hands"))
_PAIR = 2


def turned_round(sentence: Sequence[Mark], request: Request) -> list[Mark] | None:
    """The sentence in plain wording: what each of the two sets was; none where it turns no two stored sets."""
    said = {w for m in sentence for w in m.text.split()}
    if not said & TURNED or said & _SIDED:
        return None
    names = [m for m in sentence if m.kind is Kind.NAME]
    exercise = exercise_of(names[0] if names else None, request)
    rows = [p for p in request.done if p.exercise == exercise and p.set is not None]
    stored = sorted({p.set for p in rows if p.set is not None})
    if len(stored) < _PAIR or len({m.names for m in names}) > 1:
        return None
    pair, counts = _read(sentence, stored)
    both = [[p for p in rows if p.set == n] for n in pair]
    plain = len(pair) == _PAIR and all(
        len(one) == 1 and one[0].stage is Stage.WORK and one[0].side is None for one in both
    )
    if not plain or counts is None:
        return None
    one, two = both[0][0], both[1][0]
    if (counts and counts != [two.reps, one.reps]) or one.rir != two.rir:
        return None
    place = next(i for i, e in enumerate(request.exercises) if e.name == exercise)
    start, end = sentence[0].start, sentence[-1].end
    mark = Mark(Kind.NAME, exercise or "", start, end, names=(place,))
    stop = replace(mark, kind=Kind.STOP, text=".", names=())
    return [mark, *_was(mark, pair[0], two), stop, mark, *_was(mark, pair[1], one)]


def _read(sentence: Sequence[Mark], stored: Sequence[int]) -> tuple[Sequence[int], list[int] | None]:
    """The two sets, and the repetitions that are told of them; no repetitions (`None`) where a word has no place."""
    pair: Sequence[int] = ()
    counts: list[int] = []
    at = 0
    while at < len(sentence):
        mark = sentence[at]
        counted = mark.kind is Kind.NUM and mark.value == _PAIR and kind_at(sentence, at + 1) in (Kind.NAME, Kind.SETS)
        which = None if pair else which_at(sentence, at, stored)
        if counted and not pair and len(stored) == _PAIR:
            pair, at = stored, at + 1
        elif which is not None and len(which.sets) == _PAIR:
            pair, at = which.sets, which.end
        elif mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value):
            counts.append(int(mark.value))
            at += 1
        elif mark.kind in (*_PASSED, Kind.NAME, Kind.ORD) or set(mark.text.split()) & TURNED:
            at += 1
        else:
            return pair, None
    plural = any(m.kind is Kind.SETS for m in sentence) or counts
    return pair or (stored if len(stored) == _PAIR and plural else ()), counts


def _was(mark: Mark, number: int, row: Performed) -> list[Mark]:
    """`set 1 was 27.5 kg x 10`, with what is stored of the other one."""
    label = replace(mark, kind=Kind.LABEL, text="set", value=Decimal(number), names=())
    was = replace(label, kind=Kind.MEANT, text="was", value=None)
    reps = replace(label, kind=Kind.NUM, value=Decimal(row.reps))
    if row.load is None or row.load.thousandths < 0:
        return [label, was, reps, replace(was, kind=Kind.REPS, text="reps")]
    load = replace(label, kind=Kind.NUM, value=row.load.amount)
    unit = replace(was, kind=Kind.KG if row.load.unit is Unit.KG else Kind.LB, text="unit")
    return [label, was, load, unit, replace(was, kind=Kind.X, text="x"), reps]
