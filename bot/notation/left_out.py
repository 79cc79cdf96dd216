"""What of a message is no set of today: what it skips, where it ends, what is of another time or person, stray numbers.

`skipping rows today, 60x10 last week so 62.5x8 now` leaves the `62.5x8`.
"""

from collections.abc import Sequence, Set
from dataclasses import dataclass
from functools import partial

from bot.notation.clauses import kind_at, text_at
from bot.notation.draft import Draft
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.other_times import other_times
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.skips import SkipsSaid, read_skips
from bot.notation.skips.endings import closing, read_finish
from bot.notation.skips.enough import with_enough
from bot.notation.skips.kept import heads_for_another
from bot.notation.skips.seams import headed_by_kept, with_skip_seams
from bot.notation.strays import nothing_to_drop, stray_numbers
from bot.notation.tokens import Mark
from bot.notation.told_at_end import told_at_end
from bot.training.units import Load


@dataclass(frozen=True, slots=True)
class LeftOut:
    """The marks that may tell sets, and what was left out of them."""

    marks: list[Mark]
    skips: SkipsSaid
    finish: Mark | None
    """The word that ends the session."""
    before: list[Mark]
    """Marks of another time or person, and numbers that tell of no set."""


def without_left_out(draft: Draft, marks: list[Mark], hurt_names: Set[int], *, wants_other: bool) -> LeftOut:
    """The marks without what is no set of today. `hurt_names` are places of names that only say what hurts;
    `wants_other`: the message asks for another exercise, so that its `no` skips nothing.
    """
    marks = with_enough(marks, draft.record, draft.under_way())
    wanted = {i for i, m in enumerate(marks) if m.kind is Kind.NO} if wants_other else set()
    skips = read_skips(masked(marks, wanted))
    closures = partial(_is_likely, draft), partial(_may_be_set, draft)
    strays = stray_numbers(marks, *closures, is_first=not draft.record.stored)
    draft.mentions = [m for m in draft.mentions if m[0].start not in {marks[i].start for i in strays}]
    elsewhen = (other_times(marks) - told_at_end(draft, marks)) | strays
    elsewhen |= nothing_to_drop(marks, elsewhen, is_begun=bool(draft.record.stored))
    finish = read_finish(masked(marks, elsewhen - closing(marks)))
    before = [marks[i] for i in sorted(elsewhen)]
    marks = masked(marks, elsewhen - skips.places)
    names = (p for p in skips.places if marks[p].kind is Kind.NAME)
    kept = {p for p in names if _numbers_follow(marks, p) and not heads_for_another(marks, p)}
    denied = {p for p, m in enumerate(marks) if m.kind is Kind.NAME and heads_for_another(marks, p)}
    left_out = {marks[p].start for p in (skips.places - kept) | denied}
    draft.mentions = [m for m in draft.mentions if m[0].start not in left_out]
    marks = with_skip_seams(headed_by_kept(marks, skips.kept), skips.places, kept)
    marks = masked(marks, (skips.places - kept) | hurt_names | denied)
    return LeftOut(marks, skips, finish, before)


def _is_likely(draft: Draft, number: Mark) -> bool:
    """Whether a number may be a load or a count of an exercise that the message names, or of the one under way."""
    under = draft.under_way()
    places = {place for _, place in draft.mentions} | ({under} if under is not None else set())
    return any(draft.record.context(place).is_likely(number.value, draft.unit) for place in places)


def _may_be_set(draft: Draft, load: Mark, others: int) -> bool:
    """Whether a load without its count may be of a set: it is the planned one of an exercise of which nothing is done,
    and so many `others` tell not all sets of it.
    """
    under = draft.under_way()
    places = {place for _, place in draft.mentions} or ({under} if under is not None else set())
    contexts = [draft.record.context(place) for place in places]
    told = None if load.value is None else Load.of(load.value, draft.unit)
    return told is not None and any(
        not c.done and others <= len(c.exercise.sets) and c.is_planned(told, None) for c in contexts
    )


def _numbers_follow(marks: Sequence[Mark], place: int) -> bool:
    """Whether sets of a name follow it in its part."""
    which = (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.SETS, Kind.THEREST)
    one = any(m.kind in which for m in marks[max(0, place - 3) : place + 4])
    ends = (Kind.DASH, Kind.LINE, Kind.SKIP, Kind.SKIPPED)
    for at, mark in enumerate(marks[place + 1 :], place + 1):
        if mark.kind in NUMBERS:
            return True
        if mark.kind in (Kind.COMMA, Kind.STOP) and one and _is_other_set(marks, at):
            continue
        if mark.kind in (*EDGES, Kind.OPEN) or (mark.kind in ends and not one):
            return False
    return False


def _is_other_set(marks: Sequence[Mark], edge: int) -> bool:
    """`the second one of curls i leave, the first was 15x18`: a set that is told behind the one that is left out."""
    at = edge + 1
    while text_at(marks, at) in ("the", "my", "and", "but", "only"):
        at += 1
    return kind_at(marks, at) in (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.THEREST)
