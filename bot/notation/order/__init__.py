"""Marks put in the order in which sets are written: a unit after its number, a load beside the sets it is of.

`kg 55 reps 12`, `53lb swings 15 15`, `180lb` on a line above its sets, `1. set 80x15`, `22 point 5`, `two times rows`.
"""

from collections.abc import Sequence

from bot.notation.order.as_planned import as_planned
from bot.notation.order.called import called
from bot.notation.order.changes import changes
from bot.notation.order.down import went_down
from bot.notation.order.drops import drops
from bot.notation.order.elliptic import short_efforts
from bot.notation.order.failures import did_not_come, failed_last, out_of_ten
from bot.notation.order.figures import counts_by_name, numbered, with_decimals, with_half_minutes, with_hundreds
from bot.notation.order.groups import groups
from bot.notation.order.hands import one_hand
from bot.notation.order.headings import before_names, heading_loads
from bot.notation.order.how_many import how_many
from bot.notation.order.in_turn import in_turn
from bot.notation.order.kit import kit
from bot.notation.order.last_first import last_first
from bot.notation.order.listed import linked_lists, same_but, times_lists
from bot.notation.order.load_last import load_last
from bot.notation.order.meanings import by_neighbours
from bot.notation.order.one_side import one_side
from bot.notation.order.placing import another, labels_first, likes, mentions
from bot.notation.order.repeats import repeats
from bot.notation.order.roughly import roughly
from bot.notation.order.same_load import same_load
from bot.notation.order.several import all_sets, numbered_all, rated_each, set_ranges, the_others, work_sets
from bot.notation.order.shared_counts import shared_counts
from bot.notation.order.titles import titles
from bot.notation.order.told_counts import told_counts
from bot.notation.order.told_of import told_of
from bot.notation.order.under_titles import under_titles
from bot.notation.order.units import fields
from bot.notation.order.vague import vague
from bot.notation.order.warmups import warmups
from bot.notation.order.which_set import set_numbers
from bot.notation.tokens import Mark

__all__ = ["ordered"]


_STEPS = (
    titles,
    under_titles,
    mentions,
    told_of,
    last_first,
    as_planned,
    numbered,
    with_half_minutes,
    with_hundreds,
    with_decimals,
    in_turn,
    drops,
    one_side,
    changes,
    went_down,
    roughly,
    kit,
    called,
    how_many,
    told_counts,
    repeats,
    groups,
    load_last,
    shared_counts,
    work_sets,
    set_ranges,
    all_sets,
    rated_each,
    likes,
    one_hand,
    same_but,
    same_load,
    vague,
    times_lists,
    linked_lists,
    short_efforts,
    warmups,
    set_numbers,
    counts_by_name,
    numbered_all,
    the_others,
    labels_first,
    failed_last,
    did_not_come,
    out_of_ten,
    another,
    fields,
    before_names,
    heading_loads,
)
"""Each takes all marks and gives them with one thing put in its place."""


def ordered(marks: Sequence[Mark]) -> list[Mark]:
    """The marks in that order."""
    said = list(marks)
    for step in _STEPS:
        said = step(said)
    return [by_neighbours(said, place) for place in range(len(said))]
