"""Words that count sets, beside sets that are kept and are another number: then one was missed, or told twice.

`all three`, `both`, `every set` say how many there are; a set that is only repeated lies beyond the plan; `did two`
counts sets where repetitions are many more. Each is asked about.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import chain

from bot.notation.answer import Source
from bot.notation.bounds import SEVERAL
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.record import Record
from bot.notation.restated import EXTRA
from bot.notation.tokens import Mark
from bot.training.report import Stage

_COUNTS = {"both": 2, "two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5}
_EVERY = frozenset(["every set", "each set", "all sets", "per set", "every single set", "all the sets", "in every set"])
_DOING = ("did", "done", "managed", "made")


def miscounted(marks: Sequence[Mark], told: Sequence[Told], record: Record) -> Mark | None:
    """The first such word; `None` where the sets that are kept are as many as the words say."""
    work = [one for one in told if one.row.stage is Stage.WORK]
    if not work or record.replaces:
        return None
    counts = () if _CUES.isdisjoint(said_in(marks)) else (_of_all, _repeated, _done)
    return next(chain.from_iterable(look(marks, work, record) for look in (*counts, _unsided)), None)


_CUES = frozenset((Kind.ALL, Kind.EACH, Kind.SAME, *_DOING))
"""Kinds and words of which one stands wherever sets are counted, but for those of two sides."""


def _numbers(work: Sequence[Told]) -> dict[str, int]:
    """How many sets of each exercise are kept."""
    return dict(Counter(name for name, _ in {(one.row.exercise, one.row.set) for one in work}))


def _of_all(marks: Sequence[Mark], work: Sequence[Told], record: Record) -> Iterator[Mark]:
    """`all three` of fewer sets, `every set` of one where more are open."""
    counts = _numbers(work)
    places = {name: record.place_of(name) for name in counts}
    totals = {n: len({p.set for p in record.context(i).worked}) for n, i in places.items() if i is not None}
    for mark in marks:
        sided = mark.kind is Kind.EACH and mark.text == "both"
        if mark.kind is not Kind.ALL and not (sided and _is_one_sided(work, record)):
            continue
        count = next((_COUNTS[w] for w in mark.text.split() if w in _COUNTS), None)
        few = count is not None and count > max(*counts.values(), *totals.values(), 0)
        open_still = any(i is not None and record.context(i).open_sets for i in places.values())
        if few or (mark.text in _EVERY and max(counts.values()) == 1 and open_still):
            yield mark


def _is_one_sided(work: Sequence[Told], record: Record) -> bool:
    places = [record.place_of(one.row.exercise) for one in work]
    return all(p is not None and record.exercises[p].sides == 1 for p in places)


def _repeated(marks: Sequence[Mark], work: Sequence[Told], record: Record) -> Iterator[Mark]:
    """A set beyond the plan that only repeats the one before, beside others that are told."""
    if any(set(m.text.split()) & EXTRA for m in marks):
        return
    said = any(one.grounds.reps.source is Source.SAID for one in work)
    for one in work:
        place = record.place_of(one.row.exercise)
        planned = 0 if place is None else len(record.exercises[place].sets)
        at = one.grounds.reps.at
        if said and one.grounds.reps.source is Source.BEFORE and (one.row.set or 0) > planned > 0 and at is not None:
            yield from (m for m in marks if m.kind is Kind.SAME and m.start < at[1] and at[0] < m.end)


def _unsided(marks: Sequence[Mark], work: Sequence[Told], record: Record) -> Iterator[Mark]:
    """`10 and 10, then 10 and 9` beyond the plan of an exercise of two sides: sets, or sides of sets."""
    if any(m.kind is Kind.EACH or set(m.text.split()) & EXTRA for m in marks) or len(work) < SEVERAL:
        return
    for one in work:
        place = record.place_of(one.row.exercise)
        beyond = place is not None and (one.row.set or 0) > len(record.exercises[place].sets) > 0
        if beyond and place is not None and record.exercises[place].sides == 2 and one.row.side is None:
            yield from (m for m in marks if m.kind is Kind.NUM)


def _done(marks: Sequence[Mark], work: Sequence[Told], record: Record) -> Iterator[Mark]:
    """`did two` kept as two repetitions, where other sets are told of many more."""
    for one in work:
        place = record.place_of(one.row.exercise)
        at = one.grounds.reps.at
        if place is None or at is None or one.grounds.reps.source is not Source.SAID:
            continue
        low = record.context(place).range_of(one.row.set).low
        likely = any(other.row.reps >= low for other in work)
        if not likely or one.row.reps >= low or one.row.reps > len(record.exercises[place].sets):
            continue
        for index, mark in enumerate(marks):
            if mark.kind is Kind.NUM and (mark.start, mark.end) == at and index and marks[index - 1].text in _DOING:
                yield mark
