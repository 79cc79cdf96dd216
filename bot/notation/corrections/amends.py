"""A piece of a message that changes what was said before: a correction, or a set taken back."""

from collections.abc import Sequence

from bot.notation.answer import AskKind
from bot.notation.corrections import is_correction, takes_back
from bot.notation.corrections.amending import correct
from bot.notation.corrections.revised import apply_values
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.restated import is_called_wrong, is_of_another
from bot.notation.said import Doubt
from bot.notation.segments import NUMBERS
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.training.report import SetKey


def amend(draft: Draft, piece: list[Mark]) -> list[Mark]:
    """Applies what the piece corrects or takes back; gives what is left of it to be read as new sets, if anything."""
    other = is_of_another(piece)
    scraps = any(m.kind is Kind.SCRAP for m in piece)
    if other is not None or (not scraps and is_called_wrong(piece) and not any(m.kind in NUMBERS for m in piece)):
        at = (piece[0].start, piece[-1].end)
        if draft.record.last() is not None or other is not None:
            draft.doubt(Doubt(AskKind.WHICH_EXERCISE if other is not None else AskKind.WHICH_SET, *at))
        return [] if draft.ask is not None else piece
    if _takes_back(piece):
        after = [m for m in piece if m.kind is not Kind.SCRAP]
        if _corrects(draft, after) and _tells_value(after):
            _correct(draft, after)
            return []
        rest = _scrap(draft, piece)
        return amend(draft, rest) if any(m.kind in NUMBERS for m in rest) else []
    if draft.record.replaces and takes_back(piece):
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return []
    if _corrects(draft, piece):
        _correct(draft, piece)
        return []
    return piece


def _tells_value(piece: Sequence[Mark]) -> bool:
    """Whether a number is left that is not the number of a set: not in `scrap curls set 2`."""
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    return any(m.kind in NUMBERS for m in shaped)


def _takes_back(piece: Sequence[Mark]) -> bool:
    """Whether a piece takes a set back: `scrap that`, not `ignore` with what is told of others straight after it."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), None)
    if at is None or any(m.kind is Kind.GAP for m in piece[:at]):
        return False
    return not any(m.kind is Kind.GAP for m in piece[at + 1 :]) or (
        at + 1 < len(piece) and piece[at + 1].kind in (Kind.LASTSET, Kind.SET, Kind.ORD, Kind.COMMA, Kind.NAME)
    )


def _corrects(draft: Draft, piece: Sequence[Mark]) -> bool:
    place = draft.under_way()
    return is_correction(piece, draft.record, None if place is None else draft.request.exercises[place].name)


def _exercise_of(draft: Draft, piece: Sequence[Mark]) -> int | None:
    """The exercise that a correction is of: the one that it names, else the one that the message spoke of last."""
    for mark in piece:
        if mark.kind is Kind.NAME and mark.names:
            done = [p for p in mark.names if draft.record.last(p) is not None]
            if len(done) == 1:
                return done[0]
    return draft.record.last_exercise if draft.record.told else None


def _correct(draft: Draft, piece: list[Mark]) -> None:
    corrected = correct(piece, draft.record, draft.unit, _exercise_of(draft, piece))
    if corrected.doubt is not None:
        chosen = draft.doubt(corrected.doubt, len(corrected.choices))
        if chosen is not None:
            key, values = corrected.choices[chosen]
            draft.record.change(key, lambda rows: apply_values(rows, values))
    draft.note_replaced((piece[0].start, piece[-1].end))


def _scrap(draft: Draft, piece: list[Mark]) -> list[Mark]:
    """Takes a set back; gives what follows in the piece."""
    record = draft.record
    at = next(i for i, m in enumerate(piece) if m.kind is Kind.SCRAP)
    following = [m for m in piece[at + 1 :] if m.kind is not Kind.NAME][:4]
    shaped = shape_marks(following, False)[:2]
    label = next((int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None), None)
    last = record.last(_exercise_of(draft, piece))
    if last is None or last.set is None:
        return []
    key: SetKey = (last.exercise, label if label is not None else last.set)
    if not record.rows(key):
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return []
    record.drop(key)
    draft.note_replaced((piece[0].start, piece[at].end))
    record.last_exercise = record.place_of(key[0])
    rest = piece[at + 1 :]
    if label is not None:
        number = next((i for i, m in enumerate(rest) if m.kind in (Kind.NUM, Kind.ORD)), -1)
        rest = rest[number + 1 :]
    return rest
