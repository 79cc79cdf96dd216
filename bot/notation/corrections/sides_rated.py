"""The efforts of the sides of one stored set, each for itself: `set 1 left rir 1 right rir 2`, and nothing more."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Source
from bot.notation.clauses import kind_at
from bot.notation.corrections.meant import SIDES
from bot.notation.grounds import Ground, Told
from bot.notation.kinds import Kind
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.training.report import Side, Stage


def rate_sides(piece: Sequence[Mark], record: Record, place: int | None) -> bool:
    """Gives the sides of the set that is named their efforts; whether the piece tells nothing else."""
    said = [m for m in piece if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.NAME)]
    last = record.last(place)
    if last is None or kind_at(said, 0) is not Kind.LABEL or len(said) not in (4, 7):
        return False
    efforts: dict[Side, Mark] = {}
    for at in range(1, len(said), 3):
        side, rir, number = said[at : at + 3]
        if side.kind not in SIDES or rir.kind is not Kind.RIR or number.kind is not Kind.NUM:
            return False
        efforts[SIDES[side.kind]] = number
    key = (last.exercise, int(said[0].value or 0))
    if not record.rows(key):
        return False
    record.change(key, lambda rows: [one for told in rows for one in _rated(told, efforts)])
    record.last_exercise = record.place_of(last.exercise)
    return True


def _rated(told: Told, efforts: dict[Side, Mark]) -> list[Told]:
    """A row with the effort of its side; one of both sides as two."""
    if told.row.stage is not Stage.WORK:
        return [told]
    both = (Side.LEFT, Side.RIGHT) if told.row.side is None else (told.row.side,)
    out = []
    for side in both:
        number = efforts.get(side)
        at = Ground(Source.SAID) if number is None else Ground(Source.SAID, (number.start, number.end))
        grounds = told.grounds if told.row.side is not None else replace(told.grounds, side=at)
        row = replace(told.row, side=side)
        if number is not None:
            row, grounds = replace(row, rir=number.value or Decimal(0)), replace(grounds, effort=at)
        out.append(Told(row, grounds))
    return out
