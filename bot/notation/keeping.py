"""Keeps what the marks of a message report and correct, piece by piece: `90x8, 85x8, sorry the first was 92.5`."""

from dataclasses import dataclass

from bot.notation.added_sets import with_added_sets
from bot.notation.announced import without_announced
from bot.notation.answer import AskKind
from bot.notation.both_again import with_both_again
from bot.notation.by_exercise import by_exercise
from bot.notation.corrections.amends import all_targeted, amend, targeted
from bot.notation.corrections.contrasted import with_contrasts
from bot.notation.draft import Draft
from bot.notation.efforts_each import rate_each, split_efforts
from bot.notation.efforts_named import split_named
from bot.notation.efforts_named.rating import NamedEfforts, rate_named
from bot.notation.efforts_of_all import split_of_all
from bot.notation.efforts_of_all.rating import EffortOfAll, rate_of_all
from bot.notation.exceptions import with_exceptions
from bot.notation.gear import without_gear
from bot.notation.hurt_parts import begun
from bot.notation.last_looks import Looked, last_look
from bot.notation.leftovers import unread_number
from bot.notation.load_unsaid import lighter_unsaid, other_load_unsaid
from bot.notation.masking import masked
from bot.notation.mentions import only_mentioned
from bot.notation.named_entries import unclear_entry, with_named_entries
from bot.notation.nameless import with_names_by_load
from bot.notation.numbers_beside import with_numbers_beside
from bot.notation.order.other_side import with_other_side
from bot.notation.paired import with_paired
from bot.notation.partly_told import partly_told
from bot.notation.pieces import split_pieces
from bot.notation.preparing import marks_of_sets
from bot.notation.progress import Progress, read_progress
from bot.notation.reports import Reporting
from bot.notation.restated import taken_back
from bot.notation.said import Doubt
from bot.notation.same_times import with_same_times
from bot.notation.same_twice import with_same_twice
from bot.notation.side_counts import with_side_counts
from bot.notation.side_efforts import with_side_efforts
from bot.notation.side_pairs import with_side_pairs
from bot.notation.stepped import with_steps
from bot.notation.strays.substitutes import substituted
from bot.notation.talk import talk_numbers
from bot.notation.tokens import Mark
from bot.notation.totals import without_totals
from bot.notation.which_forgotten import is_which_forgotten
from bot.notation.without_load import with_body_weight


@dataclass(frozen=True, slots=True)
class _Plain:
    """The marks in the wordings that the grammar knows; as they were `said`; the efforts told apart from their sets,
    what was told of progress, and a number of a named entry that is not clear.
    """

    marks: list[Mark]
    said: list[Mark]
    named: tuple[NamedEfforts, ...]
    of_all: tuple[EffortOfAll, ...]
    progress: Progress
    unclear: Mark | None


MOST_PIECES = 40
"""Corrections of one message that are read: no session has as many sets to put right, so more are asked about."""


def keep_sets(draft: Draft, marks: list[Mark], *, hurts: bool) -> list[Mark]:
    """Keeps what the marks report and correct, piece by piece; gives the marks as they were read."""
    record = draft.record
    plain = _put_plainly(draft, marks)
    marks = marks_of_sets(plain.marks, hurts, is_first=not record.stored)
    talk = talk_numbers(marks)
    unread = unread_number(marks, talk)
    marks = masked(marks, talk | taken_back(marks))
    reporting = Reporting(draft)
    told: list[Mark] = []
    pieces = split_pieces(marks)
    if len(pieces) > MOST_PIECES:
        draft.doubt(Doubt(AskKind.UNSURE, 0, len(draft.folded.text)))
    for piece in pieces:
        if draft.ask is not None:
            break
        piece, each = split_efforts(targeted(draft, piece), record, draft.under_way())  # noqa: PLW2901
        left = amend(draft, piece)
        told += left
        if left and draft.ask is None:
            reporting.read_piece(left)
        if each is not None and draft.ask is None:
            rate_each(draft, each, piece)
    for one in plain.named if draft.ask is None else ():
        rate_named(draft, one)
    for every in plain.of_all if draft.ask is None else ():
        rate_of_all(draft, every)
    record.settle(draft.request.done)
    changes = bool(record.replaces) and not draft.is_decided
    if changes and draft.ask is None and is_which_forgotten(draft.folded.text):
        draft.doubt(Doubt(AskKind.WHICH_SET, 0, len(draft.folded.text)))
    if draft.reports and not draft.is_decided:
        unread = unread or last_look(Looked(plain.said, told, record, plain.progress, plain.unclear))
        lighter = lighter_unsaid(plain.said, record) or other_load_unsaid(plain.said, record)
        if lighter is not None:
            draft.doubt(Doubt(AskKind.LOAD, lighter.start, lighter.end), alternatives=1)
        other = substituted(plain.said, draft.request.exercises, frozenset(one.row.exercise for one in record.told))
        if other is not None:
            draft.doubt(Doubt(AskKind.UNKNOWN_EXERCISE, other.start, other.end))
    if not draft.is_decided and draft.ask is None and (short := partly_told(plain.said)) is not None:
        draft.doubt(Doubt(AskKind.UNSURE, short.start, short.end), alternatives=1)
    if draft.reports and unread is not None and draft.ask is None:
        draft.doubt(Doubt(AskKind.UNSURE, unread.start, unread.end), alternatives=1)
    return marks


def _put_plainly(draft: Draft, marks: list[Mark]) -> _Plain:
    """The marks with everything that is told in other wordings in plain ones, in the order that these need."""
    record, under = draft.record, draft.under_way()
    marks = with_numbers_beside(marks, draft.request)
    marks = with_both_again(with_paired(begun(marks), draft.request.exercises), draft.request.exercises)
    marks = with_other_side(with_names_by_load(marks, record, draft.unit), record.last())
    said = marks = with_side_pairs(marks, record, under)
    mentioned = only_mentioned(marks)
    starts = {marks[i].start for i in mentioned}
    draft.mentions = [m for m in draft.mentions if m[0].start not in starts]
    marks = without_gear(masked(marks, mentioned), draft.request.exercises, under)
    marks = with_contrasts(marks, record, under)
    progress = read_progress(marks, record, under)
    counted = without_totals(without_announced(progress.marks), draft.request.exercises)
    unclear = unclear_entry(counted, record)
    listed = with_named_entries(counted, record)
    steps = with_steps(all_targeted(draft, listed), record, under)
    steps, named = split_named(steps)
    steps, of_all = split_of_all(steps, record, under)
    steps = with_body_weight(with_added_sets(steps, record, under), record, under)
    sided = with_side_efforts(with_side_counts(steps, record, under), record, under)
    telling = with_same_times(with_same_twice(sided, record, under), record, under)
    telling = by_exercise(with_exceptions(telling, record, under), record, under)
    return _Plain(telling, said, named, of_all, progress, unclear)
