"""A load told in a sentence of its own behind the sets it is of: `40, 40, 30. 24 in each hand.`"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import AskKind, Source
from bot.notation.atoms import Amount, Atom, Counts
from bot.notation.draft import Draft
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.ranking import Ranked
from bot.notation.segments import Segment
from bot.training.report import Stage

_LEADING = (Kind.WITH, Kind.AT, Kind.ALL, Kind.EACH)


def load_late(draft: Draft, ranked: Ranked, segment: Segment, atoms: Sequence[Atom], *, place: int) -> bool:
    """Whether a load without repetitions was put to the sets of the message that tell none.

    It is of those where it would be asked about otherwise, or be a set beyond the plan that no word announces.
    """
    amounts = [a for a in atoms if isinstance(a, Amount)]
    led = any(m.kind in _LEADING for m in segment.marks)
    alone = len(amounts) == 1 and (amounts[0].counts in (Counts.LOAD, Counts.S) or amounts[0].hand or led)
    rows, saids = ranked.bound.told, ranked.bound.said
    if not alone or len(rows) != 1 or rows[0].row.load is None or not saids[0].from_plan:
        return False
    beyond = not draft.record.context(place).open_sets and not any(m.kind is Kind.ANOTHER for m in segment.marks)
    asked = ranked.doubt is not None and ranked.doubt.kind is AskKind.RANGE
    if not (asked or (beyond and ranked.doubt is None)):
        return False
    load, grounds = rows[0].row.load, rows[0].grounds
    name = draft.request.exercises[place].name
    told = draft.record.told
    keys = [t.row.set for t in told if t.row.exercise == name and _is_unsaid(t)]
    if not keys:
        return False

    def loaded(one: Told) -> Told:
        if one.row.exercise != name or not _is_unsaid(one):
            return one
        row = replace(one.row, load=load)
        return replace(one, row=row, grounds=replace(one.grounds, load=grounds.load, unit=grounds.unit))

    draft.record.told = [loaded(t) for t in told]
    return True


def _is_unsaid(one: Told) -> bool:
    """Whether the load of a set is the plan's, or that of a set before it whose own is."""
    drops = one.row.stage is Stage.DROP
    return one.row.set is not None and not drops and one.grounds.load.source in (Source.PLAN, Source.BEFORE)
