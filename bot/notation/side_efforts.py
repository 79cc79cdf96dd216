"""Efforts of one side, put as `left rpe 8, right rpe 9`; `rir 2 left, 1 right`, `rpe 9 on the right`, `10/9 rpe 8/9`.

Only of an exercise that works its sides apart, and only behind the set that they are of. `rpe 8 on both` is the effort
of the set.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, number_before, text_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark

SIDES = (Kind.LEFT, Kind.RIGHT)
_RATES = (Kind.RPE, Kind.RIR, Kind.FEELS)
_LITTLE = (Kind.FILL, Kind.WAS, Kind.COLON, Kind.AT, Kind.WITH, Kind.FOR)
_JOINS = (Kind.COMMA, Kind.AND, Kind.SLASH, *_LITTLE)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE, Kind.AND, Kind.THEN, Kind.QUERY)
_BREAKS = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.NAME)
_BOTH = ("both", "on both", "for both", "both sides", "both arms", "both legs", "on both sides", "for both sides",
         "each side", "each arm", "each leg")  # fmt: skip


@dataclass(frozen=True, slots=True)
class _Rated:
    """Efforts of sides, in the order told: each side with its number; and where their words end."""

    sides: tuple[tuple[Mark, Mark], ...]
    end: int


def is_sided(marks: Sequence[Mark], at: int, record: Record, under: int | None) -> bool:
    """Whether the exercise that is spoken of at a place works its sides apart."""
    named = [m.names[0] for m in marks[:at] if m.kind is Kind.NAME and len(m.names) == 1]
    place = named[-1] if named else under
    return place is not None and record.exercises[place].sides > 1


def with_side_efforts(marks: Sequence[Mark], record: Record, under: int | None) -> list[Mark]:
    """The marks with such efforts in that form."""
    out = list(marks)
    if not any(m.kind in (*_RATES, Kind.FAILED, Kind.TANK, Kind.EMPTY) or m.text in ("@", "left") for m in out):
        return out
    at = 1
    while at < len(out):
        if out[at].kind is Kind.WITH and _is_own_effort(out, at) and is_sided(out, at, record, under):
            side = next(m for m in reversed(out[:at]) if m.kind in SIDES)
            out[at : at + 1] = [replace(out[at], kind=Kind.COMMA, text=","), replace(side, start=out[at].start)]
            at += 1
        elif out[at].kind is Kind.FAILED and is_sided(out, at, record, under):
            at = _failed_side(out, at)
        elif out[at].kind in _RATES and number_before(out, at, _BREAKS) and is_sided(out, at, record, under):
            at = _rate(out, at)
        at += 1
    return out


def _rate(out: list[Mark], at: int) -> int:
    """Puts the efforts behind a word of effort in order; where to go on."""
    rated = _sides_at(out, at) or _pair_at(out, at)
    if rated is None:
        _drop_both(out, at)
        return at
    word = out[at]
    comma = Mark(Kind.COMMA, ",", word.start, word.start)
    said: list[Mark] = []
    for side, number in rated.sides:
        said += [comma, side, replace(word, start=number.start, end=number.start), number]
    first = said[2]
    said[2] = replace(first, start=word.start, end=word.end) if word.start < said[3].start else first
    joined = 1 if kind_at(out, at - 1) is Kind.COMMA else 0
    out[at : rated.end] = said[joined:]
    return at + len(said) - joined - 1


def _sides_at(marks: Sequence[Mark], at: int) -> _Rated | None:
    """`rir 2 left, 1 right`, `rir left 2 right 1`, `rpe 8 left, rpe 9 right`, `rpe 9 on the right`."""
    word, place, end = marks[at].kind, at + 1, at
    found: list[tuple[Mark, Mark]] = []
    while place < len(marks):
        place = _past(marks, place, (*_JOINS, word) if found else _LITTLE)
        pair = marks[place : place + 2]
        linked = _past(marks, place + 1, _LITTLE)
        if len(pair) == 2 and pair[0].kind in SIDES and pair[1].kind is Kind.NUM:
            side, number, stop = pair[0], pair[1], place + 2
        elif pair and pair[0].kind is Kind.NUM and kind_at(marks, linked) in SIDES:
            side, number, stop = marks[linked], pair[0], linked + 1
        else:
            break
        if not _is_effort(number, word) or any(side.kind is s.kind for s, _ in found):
            break
        found.append((side, number))
        end = place = stop
    follows = kind_at(marks, end) not in _ENDS and not (found and text_at(marks, end) in ("side", "arm", "leg"))
    bare = len(found) == 1 and found[0][0].text == "left" and word is Kind.RIR
    counted = kind_at(marks, end) in (Kind.COMMA, Kind.AND) and kind_at(marks, end + 1) is Kind.NUM
    counted = counted and kind_at(marks, end + 2) in SIDES
    if not found or follows or bare or counted or (len(found) == 1 and kind_at(marks, at + 1) in SIDES):
        return None
    return _Rated(tuple(found), end)


def _pair_at(marks: Sequence[Mark], at: int) -> _Rated | None:
    """`10/9 rpe 8/9`, `L10 R9, rir 2 and 1`: an effort for each of the sides that were just told apart."""
    number = _past(marks, at + 1, _LITTLE)
    kinds = [kind_at(marks, number + n) for n in range(3)]
    if kinds not in ([Kind.NUM, Kind.SLASH, Kind.NUM], [Kind.NUM, Kind.AND, Kind.NUM]):
        return None
    if kind_at(marks, number + 3) not in _ENDS or not _are_apart(marks, at):
        return None
    one, two = marks[number], marks[number + 2]
    if not (_is_effort(one, marks[at].kind) and _is_effort(two, marks[at].kind)):
        return None
    left = Mark(Kind.LEFT, "left", one.start, one.start)
    right = Mark(Kind.RIGHT, "right", two.start, two.start)
    return _Rated(((left, one), (right, two)), number + 3)


def _are_apart(marks: Sequence[Mark], at: int) -> bool:
    """Whether both sides of one set, and of no other, are told apart before a place."""
    start = at
    while start > 0 and marks[start - 1].kind not in _BREAKS:
        start -= 1
    kinds = [m.kind for m in marks[start:at]]
    named = [k for k in kinds if k in (*SIDES, Kind.L, Kind.R)]
    if named:
        return [k in (Kind.LEFT, Kind.L) for k in named] == [True, False]
    slashes = [i for i, k in enumerate(kinds) if k is Kind.SLASH]
    return len(slashes) == 1 and kinds[slashes[0] - 1 : slashes[0] + 2] == [Kind.NUM, Kind.SLASH, Kind.NUM]


def _drop_both(out: list[Mark], at: int) -> None:
    """`rpe 8 on both`: the effort of a set that was told with both sides."""
    number = _past(out, at + 1, _LITTLE)
    both = _past(out, number + 1, _LITTLE)
    said = kind_at(out, number) is Kind.NUM and kind_at(out, both) in (Kind.EACH, Kind.ALL) and out[both].text in _BOTH
    before = out[:at]
    sets = sum(m.kind is Kind.EACH for m in before) + sum(m.kind is Kind.SLASH for m in before)
    if said and sets <= 1 and not any(m.kind in (Kind.SETS, Kind.ALL) for m in before):
        for place in range(number + 1, both + 1):
            out[place] = replace(out[place], kind=Kind.FILL)


def _is_own_effort(marks: Sequence[Mark], at: int) -> bool:
    """The `with` of `left 12, right 10 with nothing left`: the effort of the side told last, behind its count."""
    start = next((i + 1 for i in range(at - 1, -1, -1) if marks[i].kind in _BREAKS), 0)
    sided = [m.kind for m in marks[start:at] if m.kind in SIDES]
    last = [m.kind for m in marks[max(0, at - 3) : at] if m.kind is not Kind.REPS][-2:]
    counted = sorted(last) in ([Kind.LEFT, Kind.NUM], [Kind.NUM, Kind.RIGHT])
    behind = kind_at(marks, at + 1) is Kind.EMPTY or kind_at(marks, at + 2) is Kind.TANK
    end = at + 2 + (kind_at(marks, at + 2) is Kind.TANK)
    return sorted(sided) == sorted(SIDES) and counted and behind and _ends(marks, end)


def _failed_side(out: list[Mark], at: int) -> int:
    """`failed the 10th on the right`: the side before what failed."""
    end = at + 2 + (kind_at(out, at + 2) is Kind.REPS)
    link = _past(out, end, _LITTLE)
    if kind_at(out, at + 1) in (Kind.ORD, Kind.NUM) and kind_at(out, link) in SIDES and _ends(out, link + 1):
        out[at : link + 1] = [out[link], *out[at:end]]
        return at + 1
    return at


def _ends(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at) in _ENDS


def _is_effort(number: Mark, word: Kind) -> bool:
    """Whether a number is on the scale of its word."""
    value = number.value
    if value is None:
        return False
    return value <= MOST_LEFT if word is Kind.RIR else EASIEST <= value <= HARDEST


def _past(marks: Sequence[Mark], at: int, kinds: Sequence[Kind]) -> int:
    while kind_at(marks, at) in kinds:
        at += 1
    return at
