"""What a message takes back in its own words without saying which: told again in full, or another exercise's.

Where the later telling is whole, the earlier one has no bearing; where sets go beyond the plan after a word that takes
something back, what was meant is asked about.
"""

from collections.abc import Sequence
from itertools import pairwise

from bot.notation.answer import Source
from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.record import Record
from bot.notation.segments.edges import NUMBERS
from bot.notation.strays.reasons import BECAUSE
from bot.notation.tokens import Mark
from bot.training.report import Stage

_TAKING_BACK = (Kind.SORRY, Kind.MEANT, Kind.NOT, Kind.NO)
_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LINKS = (Kind.X, Kind.FOR)
_WRONG = frozenset(["counted wrong", "i counted wrong", "counted it wrong", "miscounted", "i miscounted", "miscount",
                    "misread", "lost count"])  # fmt: skip


def taken_back(marks: Sequence[Mark]) -> set[int]:
    """The places of what a later telling takes the place of."""
    said = said_in(marks)
    return {place for needs, find in _TOLD_AGAIN if not needs.isdisjoint(said) for place in find(marks)}


def _load_again(marks: Sequence[Mark]) -> set[int]:
    """`did the squats at 100 because i slept badly. 100x3x3`: a load alone, with which the next sentence begins."""
    numbers = [i for i, m in enumerate(marks) if m.kind in NUMBERS]
    for one, two in pairwise(numbers):
        led = one > 0 and marks[one - 1].kind in (Kind.AT, Kind.WITH) and marks[one].value is not None
        again = marks[one].value == marks[two].value and two + 1 < len(marks) and marks[two + 1].kind in _LINKS
        between = [m.kind for m in marks[one + 1 : two]]
        told = between[-1:] == [Kind.STOP] and between.count(Kind.STOP) == 1
        told = told and all(k in (*_TALK, Kind.STOP, Kind.KG, Kind.LB) for k in between)
        if led and again and told:
            return {one - 1, one}
    return set()


_TALK = (Kind.FILL, Kind.WORD, Kind.GAP, Kind.COMMA, Kind.WAS)


def _explained(marks: Sequence[Mark]) -> set[int]:
    """`155x6. only 6 because my grip went`: the count of the set before, told again for its reason."""
    out: set[int] = set()
    for place in range(3, len(marks) - 1):
        if marks[place].kind is not Kind.NUM:
            continue
        start = place - 1
        while start and marks[start].kind is Kind.FILL:
            start -= 1
        led = {w for m in marks[start + 1 : place] for w in m.text.split()} & _LESS
        parted = marks[start].kind in (Kind.STOP, Kind.COMMA, Kind.DASH, Kind.OPEN, Kind.BREAK, Kind.LINE)
        last = start - 1 - (marks[start - 1].kind is Kind.REPS)
        whole = last > 0 and marks[last].kind is Kind.NUM and marks[last - 1].kind in _LINKS
        because = place + 1 + (marks[place + 1].kind is Kind.REPS)
        told = because < len(marks) and marks[because].text in BECAUSE
        if led and parted and whole and told and marks[last].value == marks[place].value:
            out |= set(range(start + 1, because))
    return out


_LESS = frozenset(["only", "just"])


def numbered_again(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The set that was told first of two with one number, where no word takes anything back: whose is the second?"""
    if not record.retold or any(m.kind in (*_TAKING_BACK, Kind.SCRAP, Kind.WROTE, Kind.WAS) for m in marks):
        return None
    start = record.retold[0].grounds.number.at
    return None if start is None else next((m for m in marks if m.end > start[0]), None)


def counted_on(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The `second set 9` of `60x10, second set 9` where two sets are stored: the second of today's, or of those?"""
    for exercise, number in record.replaces:
        told = [t for t in record.told if t.row.exercise == exercise]
        at = min((t.grounds.reps.at[0] for t in told if t.row.set == number and t.grounds.reps.at), default=None)
        before = {t.row.set for t in told if at is not None and t.grounds.reps.at and t.grounds.reps.at[0] < at}
        if at is None or len(before) != number - 1 or not before or number in before:
            continue
        place = next((i for i, m in enumerate(marks) if m.end > at), len(marks))
        start, end = part_of(marks, place, ends=(Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY))
        if not any(m.kind in (*_TAKING_BACK, Kind.SCRAP, Kind.WROTE, Kind.WAS, Kind.NOT) for m in marks[start:end]):
            return marks[place] if place < len(marks) else None
    return None


def _mended(marks: Sequence[Mark]) -> set[int]:
    """`nineteen no eighteen`: of two bare numbers with a `no` between, the first and the `no`; not `60x8 no 60x9`."""
    kept = [i for i, m in enumerate(marks) if m.kind is not Kind.FILL]
    out: set[int] = set()
    for at, (one, no, two) in enumerate(zip(kept, kept[1:], kept[2:], strict=False), 3):
        if marks[no].kind is not Kind.NO or marks[one].kind is not Kind.NUM or marks[two].kind is not Kind.NUM:
            continue
        whole = one > 0 and marks[one - 1].kind in _LINKS and at < len(kept) and marks[kept[at]].kind in _LINKS
        ends = at >= len(kept) or marks[kept[at]].kind in (*EDGES, Kind.FOR, Kind.X, Kind.KG, Kind.LB, Kind.REPS)
        out |= {one, no} if ends and not whole else set()
    return out


def _broken_off(marks: Sequence[Mark]) -> set[int]:
    """`sixty for... no. 72.5 for 5`: a load whose repetitions are never told, before a whole set."""
    out: set[int] = set()
    for place in range(1, len(marks) - 1):
        dangling = marks[place].kind in (Kind.FOR, Kind.X) and marks[place + 1].kind is Kind.STOP
        if not dangling or marks[place - 1].kind is not Kind.NUM:
            continue
        rest = [m for m in marks[place + 1 :] if m.kind not in (Kind.STOP, Kind.FILL, Kind.NO, Kind.SORRY)]
        if [m.kind for m in rest[:2]] in ([Kind.NUM, Kind.FOR], [Kind.NUM, Kind.X]):
            out |= {place - 1, place}
    return out


def _of_another(marks: Sequence[Mark]) -> set[int]:
    """`row 30x12, no wait that was the chest press. so chest press 30x12`: what was told of the wrong exercise."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NAME or not _is_taken_for(marks, place):
            continue
        again = [
            i for i, m in enumerate(marks[place + 1 :], place + 1) if m.kind is Kind.NAME and m.names == mark.names
        ]
        numbered = any(m.kind in NUMBERS for i in again for m in marks[i + 1 : i + 3])
        start = max((i for i in range(place) if marks[i].kind in _ENDS), default=-1) + 1
        if numbered:
            return set(range(start, place + 1))
    return set()


def _is_taken_for(marks: Sequence[Mark], place: int) -> bool:
    """`no wait that was the` before a name that ends its part."""
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    before = [m for m in marks[max(0, place - 5) : place] if m.kind is not Kind.FILL]
    return ends and bool(before) and before[-1].kind is Kind.WAS and any(m.kind in _TAKING_BACK for m in before[:-1])


def _counted_again(marks: Sequence[Mark]) -> set[int]:
    """`9... 10! 10. counted wrong`: of such bare numbers all but the last, and the words that say so."""
    cue = next((i for i, m in enumerate(marks) if m.kind in (Kind.MEANT, Kind.SORRY) and m.text in _WRONG), None)
    if cue is None or any(m.kind in NUMBERS for m in marks[cue:]):
        return set()
    said: list[int] = []
    at = cue - 1
    while at >= 0 and marks[at].kind in (Kind.NUM, Kind.STOP, Kind.FILL, Kind.COMMA, Kind.NO, Kind.SORRY):
        if marks[at].kind is Kind.NUM:
            parted = any(m.kind is Kind.STOP for m in marks[at + 1 : (said[-1] if said else cue) + 1])
            if not parted:
                break
            said.append(at)
        at -= 1
    return set(range(said[-1], said[0])) | {cue} if len(said) > 1 else set()


def goes_beyond(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The word that takes something back, where sets that are kept go beyond the plan."""
    keys = [(row.exercise, row.set, row.side) for row in record.said if row.stage is Stage.WORK]
    if len(set(keys)) < len(keys):
        return next((m for m in marks if m.kind in NUMBERS), None)
    cue = next((m for m in marks if m.kind in (Kind.SORRY, Kind.MEANT, Kind.NO, Kind.EXCEPT, Kind.LASTSET)), None)
    if len({row.load for row in record.said}) > 1:
        counts = (m for i, m in enumerate(marks) if m.kind is Kind.SETS and kind_at(marks, i - 1) is not Kind.ORD)
        cue = cue or next(counts, None)
    planned = {e.name: len(e.sets) for e in record.exercises}
    beyond = [row for row in record.said if (row.set or 0) > planned[row.exercise] > 0 and row.stage is Stage.WORK]
    if len(beyond) > 1 and len(beyond) == len(record.said) and not any(m.text in EXTRA for m in marks):
        return cue or next((m for m in marks if m.kind in NUMBERS), None)
    bare = len(beyond) == len(record.said) == 1 and record.told[0].grounds.load.source is not Source.SAID
    if bare and record.stored and not any(m.text in EXTRA for m in marks):
        return cue or next((m for m in marks if m.kind in NUMBERS), None)
    far = len(beyond) > 1 and not any(m.text in EXTRA for m in marks) and len({row.load for row in record.said}) > 1
    return cue or (next((m for m in marks if m.kind in NUMBERS), None) if far else None) if beyond else None


EXTRA = frozenset(["extra", "bonus", "more", "another", "additional", "added", "backoff"])
"""Words of sets that the plan does not have."""


def is_called_wrong(piece: Sequence[Mark]) -> bool:
    """`that last set isn't right`: a stored set is wrong, and what it was is not said."""
    said = [m for m in piece if m.kind is not Kind.FILL]
    wrong = any(m.kind is Kind.MEANT and {"wrong", "right", "mistake"} & set(m.text.split()) for m in said)
    if wrong and any(m.kind in (Kind.LASTSET, Kind.SET, Kind.ORD, Kind.WROTE) for m in said):
        return True
    denied = [i for i, m in enumerate(said) if m.kind is Kind.NOT and i]
    units = ([Kind.KG, Kind.LB], [Kind.LB, Kind.KG])
    return any([m.kind for m in said[i - 1 : i + 2 : 2]] in units for i in denied)


def is_of_another(piece: Sequence[Mark]) -> Mark | None:
    """The name in `no, that was the chest press`, without sets of its own."""
    if any(m.kind in NUMBERS for m in piece):
        names = [i for i, m in enumerate(piece) if m.kind is Kind.NAME]
        last = names[-1] if names else None
        tail = last is not None and not any(m.kind in NUMBERS for m in piece[last:])
        return piece[last] if tail and last is not None and _is_taken_for(piece, last) else None
    return next((m for i, m in enumerate(piece) if m.kind is Kind.NAME and _is_taken_for(piece, i)), None)


_LEFT_IT = frozenset(["left it", "so i left it", "i left it", "kept it", "stopped it", "called it", "cut it"])


def _left_at(marks: Sequence[Mark]) -> set[int]:
    """`L10 R8, right knee hurt a bit so i left it at 8`: where the set that was told ended, behind why."""
    for place in range(2, len(marks)):
        if marks[place].kind is not Kind.NUM or marks[place - 1].text != "at" or marks[place - 2].text not in _LEFT_IT:
            continue
        told = [m.value for m in marks[: place - 2] if m.kind is Kind.NUM]
        end = place + 1 + (kind_at(marks, place + 1) is Kind.REPS)
        behind = any(m.kind is Kind.GAP for m in marks[: place - 2])
        if told and told[-1] == marks[place].value and behind and kind_at(marks, end) in (None, *EDGES):
            return set(range(place - 2, end))
    return set()


_TOLD_AGAIN = (
    (frozenset(("at",)), _left_at),
    (frozenset((Kind.STOP,)), _load_again),
    (frozenset((Kind.WAS,)), _of_another),
    (frozenset((Kind.MEANT, Kind.SORRY)), _counted_again),
    (frozenset((Kind.NO,)), _mended),
    (frozenset((Kind.STOP,)), _broken_off),
    (_LESS, _explained),
)
"""What finds such tellings, each with the kinds and the words without which it finds none."""
