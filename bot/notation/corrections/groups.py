"""Several stored sets corrected in one sentence, each with its own value: `set 1 was rpe 7, set 2 rpe 9`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import SetKey

_RATES = (Kind.RPE, Kind.RIR, Kind.TANK)
_VALUES = (Kind.NUM, Kind.EMPTY, Kind.CLOCK)
_CUES = (Kind.SORRY, Kind.MEANT, Kind.NOT)


def split_groups(piece: list[Mark], record: Record, place: int | None) -> list[list[Mark]]:
    """The piece cut before each set that it names, where all are stored and each has a value; else none.

    Without a word that corrects, only efforts are told again.
    """
    last = record.last(place)
    starts = _starts(piece)
    if last is None or len(starts) < 2:
        return []
    named = [int(piece[i].value or 0) if piece[i].kind is not Kind.SET else _after(piece, i) for i in starts]
    if len(set(named)) < len(named) or not all(record.rows(_key(last.exercise, n)) for n in named):
        return []
    groups = [_labelled(piece[a:b]) for a, b in zip(starts, [*starts[1:], len(piece)], strict=True)]
    if not all(any(m.kind in _VALUES for m in g) for g in groups):
        return []
    sided = any(m.kind in (Kind.RIGHT, Kind.LEFTPOST) for m in piece)
    groups = groups if sided else [[_left(m) for m in g] for g in groups]
    rated = [any(m.kind in _RATES for m in g) for g in groups]
    cued = any(m.kind in _CUES and _is_about_number(piece, i) for i, m in enumerate(piece))
    was = sum(m.kind in (Kind.WAS, Kind.MEANT) for m in piece) == len(groups)
    if rated[0] and not _has_entry(piece):
        return [_alike(g, groups[0]) if not r else g for g, r in zip(groups, rated, strict=True)]
    return groups if (cued or was) and not any(rated) else []


def _is_about_number(piece: Sequence[Mark], place: int) -> bool:
    """Whether a cue is no `not` of talk: `(grip, not legs)`."""
    return piece[place].kind is not Kind.NOT or any(m.kind is Kind.NUM for m in piece[place + 1 : place + 3])


def _key(exercise: str, number: int) -> SetKey:
    return exercise, number


def _has_entry(piece: Sequence[Mark]) -> bool:
    return any(m.kind in (Kind.X, Kind.KG, Kind.LB) for m in piece)


def _starts(piece: Sequence[Mark]) -> list[int]:
    """Where each set is named."""
    out: list[int] = []
    for place, mark in enumerate(piece):
        numbered = mark.kind is Kind.SET and place + 1 < len(piece) and piece[place + 1].kind is Kind.NUM
        run = bool(place) and mark.kind is Kind.LABEL and piece[place - 1].kind is Kind.LABEL
        if run:
            continue
        if mark.kind in (Kind.LABEL, Kind.ORD) or (numbered and not (place and piece[place - 1].kind is Kind.ORD)):
            out.append(place)
    return out


def _after(piece: Sequence[Mark], place: int) -> int:
    return int(piece[place + 1].value or 0)


def _left(mark: Mark) -> Mark:
    """`3 left` where no side is meant."""
    return replace(mark, kind=Kind.TANK) if mark.kind is Kind.LEFT and mark.text == "left" else mark


def _labelled(group: Sequence[Mark]) -> list[Mark]:
    """A group with its set as one label."""
    if group[0].kind is Kind.SET:
        return [replace(group[1], kind=Kind.LABEL, start=group[0].start, parts=()), *group[2:]]
    return [replace(group[0], kind=Kind.LABEL), *group[1:]]


def _alike(group: list[Mark], first: Sequence[Mark]) -> list[Mark]:
    """`second 1` behind `first had 3 in reserve`: the number with the words of the effort before."""
    rate = next(m for m in first if m.kind in _RATES)
    at = next((i for i, m in enumerate(group) if m.kind is Kind.NUM), None)
    if at is None:
        return group
    behind = rate.kind is Kind.TANK
    return [*group[:at], *([group[at], rate] if behind else [rate, group[at]]), *group[at + 1 :]]
