"""A drop that is stored, told again: `the drop was 10`, `in the drop they were 10, not 9`, `the drop should be 10`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.plan import Drop
from bot.training.report import Performed, Stage

_SAID = (Kind.DROP, Kind.DROPPED)
_CUES = (Kind.WAS, Kind.MEANT)


def drop_again(piece: list[Mark], record: Record, last: Performed) -> list[Mark]:
    """The piece with the drop right before what it was, behind the word that corrects; as it is where it tells none."""
    if not _is_whole(record, last) or any(m.kind in (Kind.SET, Kind.ORD, Kind.LABEL, Kind.X) for m in piece):
        return piece
    at = next((i for i, m in enumerate(piece) if m.kind in _SAID), None)
    number = next((i for i, m in enumerate(piece) if m.kind is Kind.NUM), None)
    if at is None or number is None or at > number:
        return piece
    told = replace(piece[at], kind=Kind.DROP)
    cues = [i for i in range(at + 1, number) if piece[i].kind in _CUES]
    if cues:
        return [*piece[:at], *piece[at + 1 : cues[0] + 1], told, *piece[cues[0] + 1 :]]
    if {"was", "were"} & set(piece[at].text.split()):
        return [*piece[:at], replace(told, kind=Kind.WAS, text="was", end=told.start), told, *piece[at + 1 :]]
    return piece


def parted_drop(piece: list[Mark], record: Record, last: Performed | None) -> tuple[list[Mark], list[Mark]] | None:
    """`last one should be 235 for 10 with the drop at 165`: the work set's correction, and its drop's; else none."""
    at = next((i for i, m in enumerate(piece) if m.kind in (*_SAID, Kind.MINI)), len(piece))
    cue = next((i for i, m in enumerate(piece[:at]) if m.kind in _CUES), None)
    link = at - 1 - (kind_at(piece, at - 1) is Kind.FILL)
    linked = kind_at(piece, link) in (Kind.WITH, Kind.AND, Kind.COMMA, Kind.THEN, Kind.PLUS)
    behind = [m for m in piece[at + 1 :] if m.kind is Kind.NUM]
    told = cue is not None and any(m.kind is Kind.NUM for m in piece[cue:at]) and bool(behind)
    stage = Stage.MINI if kind_at(piece, at) is Kind.MINI else Stage.DROP
    stored = last is not None and any(r.stage is stage for r in record.rows((last.exercise, last.set or 0)))
    if cue is None or not (linked and told and stored) or any(m.kind is Kind.NOT for m in piece):
        return None
    was = replace(piece[cue], kind=Kind.MEANT, text="was")
    named = [m for m in piece[:cue] if m.kind is not Kind.NUM]
    kind = Kind.MINI if stage is Stage.MINI else Kind.DROP
    return piece[:link], [*named, was, replace(piece[at], kind=kind), *piece[at + 1 :]]


def _is_whole(record: Record, last: Performed) -> bool:
    """Whether the set told last has all the drops that the plan has for it."""
    place = record.place_of(last.exercise)
    rows: Sequence[Performed] = [] if last.set is None else record.rows((last.exercise, last.set))
    if place is None or last.set is None:
        return False
    planned = record.exercises[place].sets
    finish = planned[last.set - 1].finish if 0 < last.set <= len(planned) else None
    times = finish.times if isinstance(finish, Drop) else 1
    return sum(r.stage is Stage.DROP for r in rows) >= times
