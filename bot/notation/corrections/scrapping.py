"""Stored sets taken back: `scrap that`, `delete set 2 of the deads`, `remove both inclines`."""

from collections.abc import Sequence

from bot.notation.answer import AskKind
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.said import Doubt
from bot.notation.segments.edges import NUMBERS
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.training.report import SetKey


def tells_value(piece: Sequence[Mark]) -> bool:
    """Whether a number is left that is not the number of a set: not in `scrap curls set 2`."""
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    return any(m.kind in NUMBERS for m in shaped)


def takes_set_back(piece: Sequence[Mark]) -> bool:
    """Whether a piece takes a set back: `scrap that`, not `ignore` with what is told of others straight after it."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), None)
    if at is None:
        return False
    if any(m.kind is Kind.GAP for m in piece[:at]):
        named = bool({w for m in piece[:at] for w in m.text.split()} & {"last", "set", "one"})
        closes = all(m.kind in (Kind.FILL, Kind.STOP, Kind.LINE) for m in piece[at + 1 :])
        return named and closes and not any(m.kind in NUMBERS for m in piece)
    ends = next((i for i, m in enumerate(piece) if i > at and m.kind is Kind.COMMA), len(piece))
    return not any(m.kind is Kind.GAP for m in piece[at + 1 : ends]) or (
        at + 1 < len(piece) and piece[at + 1].kind in (Kind.LASTSET, Kind.SET, Kind.ORD, Kind.COMMA, Kind.NAME)
    )


def is_value(piece: Sequence[Mark]) -> bool:
    """`scratch that, 55s`: one value straight behind, which takes the place of what was told."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), len(piece))
    rest = [m.kind for m in piece[at + 1 :] if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE)]
    return rest[:1] == [Kind.NUM] and all(k in (Kind.S, Kind.KG, Kind.LB, Kind.REPS) for k in rest[1:])


def scrap(draft: Draft, piece: list[Mark], place: int | None) -> list[Mark]:
    """Takes a set back; gives what follows in the piece."""
    record = draft.record
    at = next(i for i, m in enumerate(piece) if m.kind is Kind.SCRAP)
    following = [m for m in piece[at + 1 :] if m.kind is not Kind.NAME][:4]
    shaped = shape_marks(following, False)[:2]
    label = next((int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None), None)
    last = record.last(place)
    if last is None or last.set is None:
        return []
    keys = _scrapped(draft, piece, at, (last.exercise, label if label is not None else last.set))
    if not all(record.rows(key) for key in keys):
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return []
    for key in keys:
        record.drop(key)
    draft.note_replaced((piece[0].start, piece[at].end))
    record.last_exercise = record.place_of(last.exercise)
    rest = piece[at + 1 :]
    if len(keys) > 1 or any(m.kind is Kind.LABEL for m in rest):
        return [m for m in rest if m.kind is not Kind.LABEL]
    if label is not None:
        number = next((i for i, m in enumerate(rest) if m.kind in (Kind.NUM, Kind.ORD)), -1)
        rest = rest[number + 1 :]
    return rest


def _scrapped(draft: Draft, piece: list[Mark], at: int, key: SetKey) -> list[SetKey]:
    """The sets that are taken back: those that are counted or named around the word that does, else `key`."""
    counted = [int(m.value) for m in piece[at + 1 :] if m.kind is Kind.LABEL and m.value is not None]
    shaped = shape_marks([m for m in piece[:at] if m.kind is not Kind.NAME], False)
    before = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    if len(shaped) and not before and shaped[0].kind is Kind.ORD and shaped[0].value is not None:
        before = [int(shaped[0].value)]
    every = any(m.kind is Kind.ALL or m.text == "both" for m in piece[at + 1 : at + 3])
    plural = any(m.kind is Kind.SETS or _is_plural(m) for m in piece[at + 1 : at + 5])
    one = any(m.kind in (Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.ORD) for m in piece)
    one = one or (piece[at].text.endswith("last") and any(m.text == "series" for m in piece[at + 1 : at + 2]))
    every = every or (plural and not one and not any(m.kind in NUMBERS for m in piece))
    if every and not counted:
        where = draft.record.place_of(key[0])
        worked = () if where is None else draft.record.context(where).worked
        return list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
    return [(key[0], n) for n in counted or before] or [key]


def _is_plural(mark: Mark) -> bool:
    """`the rows`: all sets of the exercise; not `the press`."""
    return mark.kind is Kind.NAME and mark.text.endswith("s") and not mark.text.endswith("ss")
