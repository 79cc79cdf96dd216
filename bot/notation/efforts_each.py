"""Efforts told set by set: `the three sets were rpe 8, 9 and 10`, `60: 5 5 5 rpe 7 8 9`."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from itertools import pairwise

from bot.notation.answer import AskKind, Span
from bot.notation.atoms import Effort
from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT, SEVERAL
from bot.notation.draft import Draft
from bot.notation.grounds import Told, with_effort
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.said import Doubt
from bot.notation.tokens import Mark
from bot.training.report import SetKey

_BETWEEN = (Kind.COMMA, Kind.AND, Kind.FILL, Kind.THEN, Kind.SLASH)
_COUNTED = (Kind.X, Kind.REPS, Kind.KG, Kind.LB, Kind.FOR, Kind.AT, Kind.RPE, Kind.RIR, Kind.SETS, Kind.WITH, Kind.S,
            Kind.LEFT, Kind.RIGHT, Kind.TANK, Kind.COLON, Kind.DASH, Kind.OR)  # fmt: skip
"""Kinds after a number that make it no effort."""
_SURE = 3
"""So many efforts, none easier than the one before, beside sets in the same sentence are one each."""


@dataclass(frozen=True, slots=True)
class EffortsEach:
    """Repetitions in reserve, one a set in order, each with where it stands; and where they stand together."""

    efforts: tuple[tuple[Decimal, Span], ...]
    at: Span
    doubtful: bool = False
    """Whether it may be one effort as well: `25 12 11 @ 8/10`, of two sets or out of ten."""


def split_efforts(piece: list[Mark], record: Record, under: int | None) -> tuple[list[Mark], EffortsEach | None]:
    """The piece without efforts that are told one a set, and those; as it is where there are none."""
    for place, mark in enumerate(piece):
        if mark.kind not in (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.AT):
            continue
        open_sets = _filled_by(piece[:place], record, under)
        if mark.kind not in (Kind.RPE, Kind.RIR, Kind.FEELS) and not _rates_sets(piece, place, open_sets):
            continue
        piece = _apart(piece, place + 1)
        places = _listed(piece, place + 1, mark.kind)
        values = [piece[i].value or Decimal(0) for i in places]
        if len(values) < 2 or not _are_efforts(values, mark.kind):
            continue
        rest = [*piece[:place], *piece[places[-1] + 1 :]]
        beside = _tells_sets(rest)
        if beside and mark.kind is Kind.FEELS:
            continue
        slashed = any(m.kind is Kind.SLASH for m in piece[place : places[-1]])
        harder = values == sorted(values, reverse=mark.kind is Kind.RIR)
        listed = slashed or mark.kind is Kind.AT
        turned = any(m.kind is Kind.THEN for m in piece[place : places[-1]])
        told = sum(m.kind is Kind.X for m in piece[:place])
        counted = _counts(piece[:place], len(values))
        turned = turned or (counted and any(m.kind is Kind.AND for m in piece[place : places[-1]]))
        turned = turned and (told == len(values) or counted)
        out_of_ten = slashed and len(values) == SEVERAL and values[-1] == HARDEST
        doubtful = out_of_ten and mark.kind is Kind.AT
        fills = len(values) == open_sets and mark.kind is not Kind.FEELS
        sure = turned or (fills and (doubtful or not out_of_ten))
        if (beside or slashed) and not sure and (len(values) < _SURE or not (harder or listed)):
            continue
        whole = 0 if mark.kind is Kind.RIR else 10
        efforts = tuple((abs(whole - v), (piece[i].start, piece[i].end)) for v, i in zip(values, places, strict=True))
        said = EffortsEach(efforts, (mark.start, piece[places[-1]].end), doubtful)
        return (rest if beside else [m for m in rest if m.kind is not Kind.NUM]), said
    return piece, None


def _filled_by(told: Sequence[Mark], record: Record, under: int | None) -> int:
    """How many sets are told behind the last name, where they are all that the plan has left; else 0."""
    named = next((i for i in range(len(told) - 1, -1, -1) if told[i].kind is Kind.NAME), None)
    place = under if named is None else told[named].names[0] if len(told[named].names) == 1 else None
    numbers = [m for m in told[(-1 if named is None else named) + 1 :] if m.kind in (Kind.NUM, Kind.X)]
    if place is None or any(m.parts for m in numbers):
        return 0
    crosses = sum(m.kind is Kind.X for m in numbers)
    many = len(numbers) - crosses
    context = record.context(place)
    sets = many - context.takes_load if crosses <= 1 else crosses if many == crosses * 2 else 0
    return sets if sets > 1 and sets == len(context.open_sets) else 0


def _counts(told: Sequence[Mark], many: int) -> bool:
    """Whether so many sets are told: `65x8, two sets`, `65x8x2`."""
    entries = [i for i, m in enumerate(told) if m.kind is Kind.X]
    if len(entries) == 1:
        return any(m.kind is Kind.SETS and n.value == many for n, m in pairwise(told))
    times = len(entries) == _ENTRY_AND_TIMES and entries[1] == entries[0] + 2 and entries[1] + 1 < len(told)
    return times and told[entries[1] + 1].value == many


_ENTRY_AND_TIMES = 2
"""The crosses of `65x8x2`: of the set, and of how many there were."""


def _rates_sets(piece: Sequence[Mark], place: int, open_sets: int) -> bool:
    """The `@` of `275x4x4 @ 7, 8, 8, 9`: behind so many sets of so many repetitions at a load; of `60 8 8 8 @ 7/8/8`:
    before as many as there are sets left, which are told.
    """
    kinds = [m.kind for m in piece[max(0, place - 5) : place]]
    whole = [Kind.NUM, Kind.X, Kind.NUM, Kind.X, Kind.NUM]
    if piece[place].kind is not Kind.AT or piece[place].text != "@":
        return False
    return kinds == whole or (open_sets > 1 and len(_listed(piece, place + 1, Kind.AT)) == open_sets)


def _apart(piece: list[Mark], at: int) -> list[Mark]:
    """The piece with the numbers of a list typed as one apart, straight behind the word: `rpe 8,8,9,10`."""
    while at < len(piece) and piece[at].kind in (Kind.COLON, Kind.WAS, Kind.FILL):
        at += 1
    mark = piece[at] if at < len(piece) else None
    if mark is None or mark.kind is not Kind.NUM or mark.value is not None or len(mark.parts) < _SURE:
        return piece
    out: list[Mark] = []
    start = mark.start
    for value, text in zip(mark.parts, mark.text.split(","), strict=True):
        out.append(replace(mark, text=text, start=start, end=start + len(text), value=value, parts=()))
        start += len(text) + 1
    return [*piece[:at], *out, *piece[at + 1 :]]


def _are_efforts(values: Sequence[Decimal], kind: Kind) -> bool:
    """Whether all numbers are on the scale: efforts from 5 to 10, or so few in reserve that no set is as short."""
    if kind is Kind.RIR:
        return all(v <= MOST_LEFT for v in values)
    return all(EASIEST <= v <= HARDEST for v in values)


def _listed(piece: Sequence[Mark], at: int, word: Kind) -> list[int]:
    """The places of the bare numbers of a list; the word of effort may stand before each: `@7, @8, @9`."""
    places: list[int] = []
    while at < len(piece):
        if piece[at].kind is Kind.NUM:
            following = piece[at + 1] if at + 1 < len(piece) else None
            if following is not None and following.kind in _COUNTED and following.text not in ("on", "on the"):
                return []
            places.append(at)
        elif places and piece[at].kind is word and piece[at - 1].kind in (Kind.COMMA, Kind.AND, Kind.SLASH):
            pass
        elif piece[at].kind not in (*_BETWEEN, Kind.WAS) and (places or piece[at].kind not in (Kind.COLON, Kind.DASH)):
            break
        at += 1
    return places


def _tells_sets(rest: Sequence[Mark]) -> bool:
    """Whether numbers are left that do more than say how many sets there were."""
    numbers = [m for m in rest if m.kind in (Kind.NUM, Kind.BODY, Kind.SAME)]
    counts = any(m.kind in (Kind.SETS, Kind.SET, Kind.ALL) for m in rest)
    return len(numbers) > 1 or (len(numbers) == 1 and not counts)


def rate_each(draft: Draft, said: EffortsEach, piece: Sequence[Mark]) -> None:
    """Gives each set its effort, where there are as many sets; else asks."""
    record = draft.record
    names = [m for m in piece if m.kind is Kind.NAME and len(m.names) == 1]
    named = next((m.names[0] for m in reversed(names) if m.start < said.at[0]), names[0].names[0] if names else None)
    place = named if named is not None else record.last_exercise
    last = record.last(place)
    if last is None:
        return
    keys = _keys(record.told, last.exercise) or [
        (p.exercise, p.set) for p in record.stored if p.exercise == last.exercise and p.set is not None
    ]
    keys = list(dict.fromkeys(keys))
    counted = [int(m.value) for m in piece if m.kind is Kind.LABEL and m.value is not None]
    keys = [k for k in keys if k[1] in counted] if counted else keys
    if len(keys) > len(said.efforts):
        rated = {(t.row.exercise, t.row.set) for t in record.told if t.row.rir is not None}
        keys = [k for k in keys if k not in rated]
    if said.doubtful or len(keys) != len(said.efforts):
        draft.doubt(Doubt(AskKind.EFFORT, *said.at))
        return
    for key, (rir, at) in zip(keys, said.efforts, strict=True):
        record.change(key, lambda rows, rir=rir, at=at: [with_effort(t, rir, at) for t in rows])  # type: ignore[misc]
    draft.note_replaced(said.at)


def rate_in_turn(draft: Draft, efforts: Sequence[Effort], name: Mark | None) -> bool:
    """`bench was 2 rir then 1 rir`: as many efforts as there are sets, one each; whether that was so."""
    record = draft.record
    named = name.names[0] if name is not None and len(name.names) == 1 else None
    last = record.last(named if named is not None else record.last_exercise)
    if last is None or any(e.failed is not None or e.beyond for e in efforts):
        return False
    rows = [p for p in (*record.stored, *record.said) if p.exercise == last.exercise and p.set is not None]
    keys = list(dict.fromkeys((p.exercise, p.set) for p in rows if p.set is not None))
    if len(keys) != len(efforts):
        return False
    for key, effort in zip(keys, efforts, strict=True):
        at = (effort.start, effort.end)
        record.change(key, lambda rows, rir=effort.rir, at=at: [with_effort(t, rir, at) for t in rows])  # type: ignore[misc]
    draft.note_replaced((efforts[0].start, efforts[-1].end))
    return True


def _keys(told: Sequence[Told], exercise: str) -> list[SetKey]:
    return [(t.row.exercise, t.row.set) for t in told if t.row.exercise == exercise and t.row.set is not None]
