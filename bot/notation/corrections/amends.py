"""A piece of a message that changes what was said before: a correction, or a set taken back."""

from collections.abc import Sequence

from bot.notation.answer import AskKind
from bot.notation.corrections import is_correction, takes_back
from bot.notation.corrections.amending import correct
from bot.notation.corrections.groups import split_groups
from bot.notation.corrections.revised import apply_values
from bot.notation.corrections.targets import with_targets
from bot.notation.corrections.units import correct_unit
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.record import Record
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
        if (_corrects(draft, after) or _is_value(piece)) and _tells_value(after):
            _correct(draft, after)
            return []
        rest = _scrap(draft, piece)
        return amend(draft, rest) if any(m.kind in NUMBERS for m in rest) else []
    if draft.record.replaces and takes_back(piece):
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return []
    place = _exercise_of(draft, piece)
    stored = _names_stored(draft, piece)
    if stored and correct_unit(piece, draft.record, place):
        draft.note_replaced((piece[0].start, piece[-1].end))
        return []
    groups = split_groups(piece, draft.record, place) if stored else []
    if groups:
        for group in groups:
            _correct(draft, group, place)
        return []
    if stored and _rates_labelled(piece, draft.record, place):
        _correct(draft, piece, place)
        return []
    if _corrects(draft, piece):
        head, rest = _list_behind(piece)
        _correct(draft, head)
        return rest
    return piece


def _is_value(piece: Sequence[Mark]) -> bool:
    """`scratch that, 55s`: one value straight behind, which takes the place of what was told."""
    at = next((i for i, m in enumerate(piece) if m.kind is Kind.SCRAP), len(piece))
    rest = [m.kind for m in piece[at + 1 :] if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE)]
    return rest[:1] == [Kind.NUM] and all(k in (Kind.S, Kind.KG, Kind.LB, Kind.REPS) for k in rest[1:])


def _list_behind(piece: list[Mark]) -> tuple[list[Mark], list[Mark]]:
    """`no 9, 8` in a list: what the set before really was, and what is told of the next ones."""
    plain = all(m.kind in (Kind.NO, Kind.NUM, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.FILL, Kind.AND) for m in piece)
    comma = next((i for i, m in enumerate(piece) if m.kind is Kind.COMMA and i > 1), None)
    if piece[0].kind is not Kind.NO or not plain or comma is None:
        return piece, []
    return piece[:comma], piece[comma + 1 :]


def _rates_labelled(piece: Sequence[Mark], record: Record, place: int | None) -> bool:
    """`rpe 8 on both inclines`, `rir 1 on set 2`: nothing but the effort of stored sets that are named."""
    if any(m.kind in (Kind.X, Kind.KG, Kind.LB, Kind.REPS) for m in piece):
        return False
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    numbers = sum(m.kind is Kind.NUM for m in shaped)
    rates: bool = any(m.kind in (Kind.RPE, Kind.RIR, Kind.TANK) for m in shaped) or any(m.kind is Kind.EMPTY for m in shaped)
    last = record.last(place)
    return (
        bool(labels)
        and rates
        and numbers <= 1
        and last is not None
        and all(record.rows((last.exercise, n)) for n in labels)
    )


def all_targeted(draft: Draft, marks: list[Mark]) -> list[Mark]:
    """The marks, each sentence before the first number of the message that may be a new set's `targeted`."""
    if not draft.request.done:
        return marks
    out: list[Mark] = []
    at = 0
    while at < len(marks) and not any(m.kind in NUMBERS for m in out):
        end = next((i for i in range(at, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
        out += targeted(draft, marks[at:end]) + marks[end : end + 1]
        at = end + 1
    return out + marks[at:]


def targeted(draft: Draft, piece: list[Mark]) -> list[Mark]:
    """The piece with the stored sets that it counts as labels."""
    return with_targets(piece, draft.record, _exercise_of(draft, piece)) if _names_stored(draft, piece) else piece


def _names_stored(draft: Draft, piece: Sequence[Mark]) -> bool:
    """Whether no exercise is named in the piece, or one that has sets."""
    names = [m for m in piece if m.kind in (Kind.NAME, Kind.WEAK)]
    return not names or any(draft.record.last(p) is not None for m in names for p in m.names)


def _tells_value(piece: Sequence[Mark]) -> bool:
    """Whether a number is left that is not the number of a set: not in `scrap curls set 2`."""
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    return any(m.kind in NUMBERS for m in shaped)


def _takes_back(piece: Sequence[Mark]) -> bool:
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


def _correct(draft: Draft, piece: list[Mark], place: int | None = None) -> None:
    place = _exercise_of(draft, piece) if place is None else place
    named = {m.names for m in piece if m.kind is Kind.NAME and m.names}
    if len(named) > 1 and sum(m.kind is Kind.NUM for m in piece) > 1:
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return
    corrected = correct(piece, draft.record, draft.unit, place)
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
    every = every or (plural and not any(m.kind in NUMBERS for m in piece))
    if every and not counted:
        where = draft.record.place_of(key[0])
        worked = () if where is None else draft.record.context(where).worked
        return list(dict.fromkeys((p.exercise, p.set) for p in worked if p.set is not None))
    return [(key[0], n) for n in counted or before] or [key]


def _is_plural(mark: Mark) -> bool:
    """`the rows`: all sets of the exercise; not `the press`."""
    return mark.kind is Kind.NAME and mark.text.endswith("s") and not mark.text.endswith("ss")
