"""A correction and a new set in one breath, parted into sentences: `first set was 132.5 btw, and just now 120x5`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.BREAK)
_LINKS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.DASH)
_NAMING = (Kind.ORD, Kind.SET, Kind.LASTSET, Kind.LASTREP)
_CUES = (Kind.WAS, Kind.MEANT)
_STRONG = (Kind.SORRY, Kind.MEANT, Kind.NOT)
_RATES = (Kind.RPE, Kind.RIR)
_NOW = frozenset(["now", "just", "this", "next", "also", "then", "new", "did", "the", "one", "set", "and", "i", "was",
                  "got", "on", "to", "today", "todays"])  # fmt: skip
"""Words that lead to what was done since."""
_AIMS = (Kind.FILL, Kind.NAME, Kind.SETS, Kind.SORRY, Kind.COMMA, Kind.MEANT, *_NAMING)


_LATE = frozenset(["also", "oh", "btw", "earlier", "before"])
"""Words of what comes to mind behind a set."""
_REACH = 40
"""Marks that are looked at on either side."""


def parted(marks: Sequence[Mark], *, is_first: bool) -> list[Mark]:
    """The marks with a stop between what is corrected and what is new. `is_first`: no set is stored yet."""
    out = list(marks)
    start = 0
    for place, mark in enumerate(marks):
        if mark.kind in _ENDS:
            start = place + 1
        if mark.kind not in _LINKS:
            continue
        far = min(len(marks), place + _REACH)
        end = next((i for i in range(place, far) if marks[i].kind in _ENDS), far)
        left, right = marks[max(start, place - _REACH) : place], marks[place + 1 : end]
        if (not is_first and _corrects(left, right)) or _puts_right(left, right):
            out[place] = replace(mark, kind=Kind.STOP, text=".", value=None, parts=())
            start = place + 1
    return out


def _entry_at(marks: Sequence[Mark], at: int) -> bool:
    """Whether a load and repetitions start here: `120x5`, `120 kg for 5`."""
    if kind_at(marks, at) is not Kind.NUM:
        return False
    then = at + 1 + (kind_at(marks, at + 1) in (Kind.KG, Kind.LB, Kind.S))
    return kind_at(marks, then) in (Kind.X, Kind.FOR) and kind_at(marks, then + 1) is Kind.NUM


def _counted_at(marks: Sequence[Mark], at: int) -> bool:
    """Whether nothing but a count is told from here on: `8 as well`, behind `and this one`."""
    rest = [m.kind for m in marks[at + 1 :] if m.kind is not Kind.REPS]
    return kind_at(marks, at) is Kind.NUM and all(kind is Kind.FILL for kind in rest)


def _corrects(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """Whether a stored set is corrected on the left, and a whole one is told on the right."""
    if not any(m.kind in _CUES for m in left) or any(m.kind is Kind.X or m.kind in _RATES for m in left):
        return False
    if not any(m.kind is Kind.NUM and not (i and left[i - 1].kind is Kind.SET) for i, m in enumerate(left)):
        return False
    named = any(m.kind in _NAMING for m in left)
    at = 0
    now = False
    while at < len(right) and not (_entry_at(right, at) or (now and _counted_at(right, at))):
        said = set(right[at].text.split())
        leads = right[at].kind in (Kind.NAME, Kind.COLON, Kind.SET, Kind.ANOTHER) or right[at].kind in (
            *_LINKS,
            Kind.FILL,
        )
        if not (leads or (said and said <= _NOW)):
            return False
        now = now or bool(said & {"now", "next", "this", "new"})
        at += 1
    numbered = any(m.kind is Kind.ORD or m.kind is Kind.SET for m in left)
    strong = any(m.kind in _STRONG for m in left)
    return at < len(right) and (strong or (named and (numbered or now)))


def _is_corrected(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """Whether a whole set is told on the left, and on the right a set that is named is corrected."""
    cue = next((i for i, m in enumerate(right) if m.kind in _CUES and any(n.kind in _NAMING for n in right[:i])), None)
    if cue is None or any(m.kind is Kind.X for m in right) or any(m.kind in _CUES for m in left):
        return False
    if not any(_entry_at(left, i) for i in range(len(left))):
        return False
    aims = [m for i, m in enumerate(right[:cue]) if not (i and right[i - 1].kind is Kind.SET and m.kind is Kind.NUM)]
    plain = all(m.kind in _AIMS or set(m.text.split()) <= _LATE for m in aims)
    late = any(set(m.text.split()) & _LATE for m in (*aims, *right[-1:]))
    return plain and (late or any(m.kind in _STRONG for m in right)) and any(m.kind is Kind.NUM for m in right[cue:])


def _puts_right(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """Whether the right puts right, or rates, what is told on the left."""
    return _is_corrected(left, right) or _is_rated(left, right) or _is_of_side(left, right)


def _is_of_side(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """`45x8 each, no wait right was 7`: one side of a set that is told of both on the left."""
    if not any(m.kind is Kind.EACH or m.text == "both sides" for m in left):
        return False
    said = [m for m in right[:_REACH] if m.kind not in (Kind.FILL, Kind.SORRY, Kind.NO, Kind.NOT, Kind.COMMA)]
    kinds = [m.kind for m in said]
    ends = len(said) == len(_SIDE_WAS) or kinds[len(_SIDE_WAS) : len(_SIDE_WAS) + 1] == [Kind.REPS]
    sided = kinds[:1] in ([Kind.LEFT], [Kind.RIGHT]) and kinds[1 : len(_SIDE_WAS)] == list(_SIDE_WAS[1:])
    return sided and ends and any(m.kind is Kind.NUM for m in left)


_SIDE_WAS = (Kind.LEFT, Kind.WAS, Kind.NUM)


def _is_rated(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """`100x6, 100x5, first was rpe 8`: nothing but the effort of a set that is told on the left."""
    end = next((i for i, m in enumerate(right) if m.kind is Kind.COMMA), len(right))
    part = [m for m in right[:end] if m.kind not in (Kind.FILL, Kind.WAS)]
    ordinal = next((m for m in part if m.kind is Kind.ORD), None)
    if ordinal is None or ordinal.value is None:
        return False
    entries = sum(_entry_at(left, i) for i in range(len(left)))
    if not 0 < int(ordinal.value) < entries:
        return False
    rated = any(m.kind in _RATES for m in part) and sum(m.kind is Kind.NUM for m in part) == 1
    return rated and all(m.kind in (Kind.ORD, Kind.SET, Kind.NUM, Kind.FOR, Kind.WITH, Kind.AT, *_RATES) for m in part)
