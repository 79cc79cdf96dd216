"""A piece of a message that changes what was said before: a correction, or a set taken back."""

from collections.abc import Sequence

from bot.notation.answer import AskKind
from bot.notation.corrections import is_correction, takes_back
from bot.notation.corrections.amending import correct
from bot.notation.corrections.drops import parted_drop
from bot.notation.corrections.going_on import with_next
from bot.notation.corrections.groups import split_groups
from bot.notation.corrections.idle import denied_behind
from bot.notation.corrections.moved import MOVING, move_set
from bot.notation.corrections.no_drop import take_drop_back
from bot.notation.corrections.old_and_new.clause import HEDGES
from bot.notation.corrections.plainly import put_plainly
from bot.notation.corrections.pointed import POINTING, pointed
from bot.notation.corrections.revised import apply_values
from bot.notation.corrections.scrapping import is_value, scrap, takes_set_back, tells_value
from bot.notation.corrections.sides_rated import rate_sides
from bot.notation.corrections.swapped import SWAPPED, swap_sides
from bot.notation.corrections.targets import OF_ENTRIES, RATES, with_targets
from bot.notation.corrections.told_whole import sets_anew
from bot.notation.corrections.units import correct_unit
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.leaving import cuts_open_set
from bot.notation.masking import masked
from bot.notation.order.steps import said_in
from bot.notation.record import Record
from bot.notation.restated import is_called_wrong, is_of_another
from bot.notation.said import Doubt
from bot.notation.segments.edges import NUMBERS
from bot.notation.shaping import shape_marks
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry


def amend(draft: Draft, piece: list[Mark]) -> list[Mark]:
    """Applies what the piece corrects or takes back; gives what is left of it to be read as new sets, if anything."""
    if has_entry(piece) and not any(m.kind in _OF_BEFORE for m in piece):
        _leave_ended(draft)
    if draft.record.replaces and _keeps_rest(piece):
        return []
    if _AMENDING.isdisjoint(said_in(piece)):
        return piece
    denied = denied_behind(piece)
    if denied and _has_open(draft):
        return amend(draft, masked(piece, denied))
    if move_set(draft, piece):
        return []
    if _means_another(draft, piece):
        draft.doubt(Doubt(AskKind.WHICH_EXERCISE, piece[0].start, piece[-1].end))
        return []
    place = _exercise_of(draft, piece)
    stored = _names_stored(draft, piece)
    begun = _begins(draft, piece)
    if begun is not None:
        if begun:
            draft.doubt(Doubt(AskKind.WHICH_EXERCISE, piece[0].start, piece[-1].end))
        return [] if begun else [m for m in piece if m.kind is not Kind.WAS]
    unnamed = not any(m.kind is Kind.NAME for m in piece)
    turned = (stored or unnamed) and swap_sides(piece, draft.record, place)
    if turned or (stored and correct_unit(piece, draft.record, place)):
        draft.note_replaced((piece[0].start, piece[-1].end))
        return []
    if stored and rate_sides(piece, draft.record, place):
        draft.note_replaced((piece[0].start, piece[-1].end))
        return []
    other = is_of_another(piece)
    scraps = any(m.kind is Kind.SCRAP for m in piece)
    if other is not None or (not scraps and is_called_wrong(piece) and not any(m.kind in NUMBERS for m in piece)):
        at = (piece[0].start, piece[-1].end)
        if draft.record.last() is not None or other is not None:
            draft.doubt(Doubt(AskKind.WHICH_EXERCISE if other is not None else AskKind.WHICH_SET, *at))
        return [] if draft.ask is not None else piece
    if scraps and take_drop_back(piece, draft.record, place) is not None:
        draft.note_replaced((piece[0].start, piece[-1].end))
        return []
    anew = sets_anew(draft, piece)
    if anew is not None:
        return anew
    if cuts_open_set(draft, piece):
        return []
    if takes_set_back(piece):
        after = [m for m in piece if m.kind is not Kind.SCRAP]
        if (_corrects(draft, after) or is_value(piece)) and tells_value(after):
            _correct(draft, after)
            return []
        rest = scrap(draft, piece, _exercise_of(draft, piece))
        return amend(draft, rest) if any(m.kind in NUMBERS for m in rest) else []
    if draft.record.replaces and takes_back(piece):
        draft.doubt(Doubt(AskKind.WHICH_SET, piece[0].start, piece[-1].end))
        return []
    groups = split_groups(piece, draft.record, place) if stored else []
    if groups:
        for group in groups:
            _correct(draft, group, place)
        return []
    if stored and _rates_labelled(piece, draft.record, place):
        _correct(draft, piece, place)
        return []
    if _tells_efforts(piece):
        return piece
    drop = parted_drop(piece, draft.record, draft.record.last(place)) if stored else None
    if drop is not None and all(_corrects(draft, part) for part in drop):
        for part in drop:
            _correct(draft, part, place)
        return []
    return _as_correction(draft, piece, place, stored=stored)


_AMENDING = MOVING | SWAPPED | frozenset(
    (Kind.SORRY, Kind.MEANT, Kind.WAS, Kind.NOT, Kind.NO, Kind.SCRAP, Kind.WROTE, Kind.LABEL, Kind.SET, Kind.ORD,
     Kind.LASTSET, Kind.LASTREP, "*", "only", "mean", "meant", "way")
)  # fmt: skip
"""Kinds and words of which one stands in every piece that changes what was said before."""


def _as_correction(draft: Draft, piece: list[Mark], place: int | None, *, stored: bool) -> list[Mark]:
    """Applies the piece where it corrects a set in one sentence; gives what is left of it."""
    plain = put_plainly(piece, draft.record, place) if stored else None
    head, rest = with_next(piece)
    corrects = _corrects(draft, head if rest else piece)
    if corrects and (plain is None or not any(m.kind is Kind.WROTE for m in piece)):
        if _changes_nothing(draft, head):
            return piece
        _correct(draft, head)
        return rest
    if plain is not None:
        _correct(draft, plain, place)
        return []
    return piece


def _keeps_rest(piece: Sequence[Mark]) -> bool:
    """`reps the same`, `same weight`: behind a correction, what of the set stays as it was."""
    said = [m.kind for m in piece if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND, Kind.WAS)]
    return said in ([Kind.SAMEREPS], [Kind.SAMELOAD])


def _means_another(draft: Draft, piece: Sequence[Mark]) -> bool:
    """`rows 60x10, i mean squats 100x5`: whether the first sets stand is not said."""
    said = [m for m in piece if m.kind not in (Kind.FILL, Kind.COMMA)]
    opens = bool(said) and said[0].text in ("i mean", "i meant", "meant", "sorry i meant", "sorry i mean")
    if not opens or len(said) < 3 or said[1].kind is not Kind.NAME or said[2].kind is not Kind.NUM:
        return False
    last = draft.record.told[-1].row.exercise if draft.record.told else None
    place = None if last is None else draft.record.place_of(last)
    return place is not None and place not in said[1].names


def _has_open(draft: Draft) -> bool:
    """Whether a set of the exercise under way is still to come, so that a whole one that is told may be it."""
    place = draft.under_way()
    return place is not None and bool(draft.record.context(place).open_sets)


def _changes_nothing(draft: Draft, piece: list[Mark]) -> bool:
    """Whether a whole set is told that is stored just so: `actually felt good, 100x5` is another one."""
    if not any([m.kind for m in piece[i : i + 3]] == [Kind.NUM, Kind.X, Kind.NUM] for i in range(len(piece))):
        return False
    if any(m.kind in (Kind.NOT, Kind.MEANT, Kind.SET, Kind.ORD, Kind.LABEL, Kind.LASTSET) for m in piece):
        return False
    tried = Record(draft.record.exercises, draft.record.unit, list(draft.record.stored))
    tried.told, tried.last_exercise = list(draft.record.told), draft.record.last_exercise
    rows = sorted(map(repr, (*tried.stored, *tried.said)))
    corrected = correct(piece, tried, draft.unit, _exercise_of(draft, piece))
    return corrected.doubt is None and sorted(map(repr, (*tried.stored, *tried.said))) == rows


def _begins(draft: Draft, piece: Sequence[Mark]) -> bool | None:
    """Whether it is in doubt that `set 1 was 24x12` begins the exercise under way, where another one was told last.

    `False`: it begins it; `None`: it speaks of what is stored.
    """
    record = draft.record
    place, last = draft.under_way(), record.last()
    before = None if last is None else record.place_of(last.exercise)
    if place is None or before is None or place == before or record.told or record.context(place).worked:
        return None
    strong = (Kind.SORRY, Kind.MEANT, Kind.NOT, Kind.NO, Kind.SCRAP, Kind.WROTE, Kind.NAME, Kind.RPE, Kind.RIR)
    if not any(m.kind is Kind.WAS for m in piece) or any(m.kind in strong for m in piece):
        return None
    shaped = shape_marks(list(piece), True)
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    opens = list(record.context(place).open_sets)
    numbers = [m.value for m in shaped if m.kind is Kind.NUM]
    if not labels or labels != opens[: len(labels)] or not numbers:
        return None
    if not all(record.context(place).is_likely(v, draft.unit) for v in numbers):
        return None
    return all(record.context(before).is_likely(v, draft.unit) for v in numbers)


def _tells_efforts(piece: Sequence[Mark]) -> bool:
    """`bench was 2 rir then 1 rir`: two or more efforts, and no number that is none."""
    rates = sum(m.kind in (Kind.RPE, Kind.RIR, Kind.TANK) for m in piece)
    labelled = any(m.kind in (Kind.LABEL, Kind.ORD, Kind.SET, Kind.NOT, Kind.SORRY, Kind.MEANT) for m in piece)
    return rates > 1 and not labelled and rates == sum(m.kind is Kind.NUM for m in piece)


def _rates_labelled(piece: Sequence[Mark], record: Record, place: int | None) -> bool:
    """`rpe 8 on both inclines`, `rir 1 on set 2`: nothing but the effort of stored sets that are named."""
    last = record.last(place)
    if last is None or any(m.kind in (Kind.X, Kind.KG, Kind.LB, Kind.REPS) for m in piece):
        return False
    shaped = shape_marks([m for m in piece if m.kind is not Kind.NAME], False)
    labels = [int(m.value) for m in shaped if m.kind is Kind.LABEL and m.value is not None]
    numbers = sum(m.kind is Kind.NUM for m in shaped)
    rates: bool = any(m.kind in (Kind.RPE, Kind.RIR, Kind.TANK) for m in shaped) or any(
        m.kind is Kind.EMPTY for m in shaped
    )
    return bool(labels) and rates and numbers <= 1 and all(record.rows((last.exercise, n)) for n in labels)


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
    said = said_in(piece)
    rated = not said.isdisjoint(RATES) and (said.isdisjoint(OF_ENTRIES) or not said.isdisjoint(POINTING))
    if (_AIMING.isdisjoint(said) and not rated) or not _names_stored(draft, piece):
        return piece
    piece = pointed(piece, draft.record, _exercise_of(draft, piece))
    return with_targets(piece, draft.record, _exercise_of(draft, piece))


_AIMING = frozenset(
    (Kind.ORD, Kind.LABEL, Kind.WAS, Kind.MEANT, Kind.SORRY, Kind.NOT, Kind.SCRAP, Kind.COULD, "only", "just", "was",
     "were")
)  # fmt: skip
"""Kinds and words of which one stands wherever stored sets are counted or pointed at, but for their efforts."""


def _names_stored(draft: Draft, piece: Sequence[Mark]) -> bool:
    """Whether no exercise is named in the piece, or one that has sets."""
    names = [m for m in piece if m.kind in (Kind.NAME, Kind.WEAK)]
    return not names or any(draft.record.last(p) is not None for m in names for p in m.names)


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
    hedged = any(set(m.text.split()) & HEDGES for m in piece if m.kind in (Kind.FILL, Kind.WORD))
    if hedged and draft.doubt(Doubt(AskKind.UNSURE, piece[0].start, piece[-1].end), alternatives=1) is None:
        return
    if _is_of_either(draft, piece):
        draft.doubt(Doubt(AskKind.WHICH_EXERCISE, piece[0].start, piece[-1].end))
        return
    corrected = correct(piece, draft.record, draft.unit, place)
    if corrected.doubt is not None:
        chosen = draft.doubt(corrected.doubt, len(corrected.choices))
        if chosen is not None:
            key, values = corrected.choices[chosen]
            draft.record.change(key, lambda rows: apply_values(rows, values))
    draft.note_replaced((piece[0].start, piece[-1].end))


_OF_BEFORE = (Kind.NAME, Kind.WEAK, Kind.DROP, Kind.DROPPED, Kind.MINI, Kind.SORRY, Kind.MEANT, Kind.NOT, Kind.SCRAP)
"""Kinds that name an exercise, or that are of the set told before."""


def _leave_ended(draft: Draft) -> None:
    """`front squat set 2 was 80, then 100x8`: behind a correction of what is over, what is under way goes on."""
    record, place = draft.record, draft.record.last_exercise
    if (
        place is None
        or not record.replaces
        or record.context(place).open_sets
        or draft.request.current == record.exercises[place].name
    ):
        return
    stored = {p.exercise for p in draft.request.done}
    if record.exercises[place].name in stored and any(
        record.context(p).open_sets for p in range(len(record.exercises))
    ):
        record.last_exercise = None


def _is_of_either(draft: Draft, piece: Sequence[Mark]) -> bool:
    """`row set 2 was 11`, where two rows are stored and none is under way."""
    record, under = draft.record, draft.under_way()
    either = [[p for p in m.names if record.last(p) is not None] for m in piece if m.kind is Kind.NAME]
    return any(len(places) > 1 and under not in places for places in either)
