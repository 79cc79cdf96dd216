"""Marks put in the order in which sets are written: a unit after its number, a load beside the sets it is of.

`kg 55 reps 12`, `53lb swings 15 15`, `180lb` on a line above its sets, `1. set 80x15`, `22 point 5`, `two times rows`.
"""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.order.again import again
from bot.notation.order.arrows import arrows
from bot.notation.order.as_planned import as_planned
from bot.notation.order.backwards import backwards
from bot.notation.order.called import called
from bot.notation.order.changes import CHANGING, changes
from bot.notation.order.counted_off import counted_off, each_apart
from bot.notation.order.drops import drops
from bot.notation.order.elliptic import short_efforts
from bot.notation.order.extra_sets import EXTRA, extra_sets
from bot.notation.order.failures import did_not_come, out_of_ten
from bot.notation.order.figures import (
    counts_by_name,
    numbered,
    with_half_minutes,
    with_hundreds,
    with_linked_decimals,
)
from bot.notation.order.groups import groups
from bot.notation.order.hands import one_hand
from bot.notation.order.headings import before_names, heading_loads
from bot.notation.order.how_many import how_many
from bot.notation.order.in_reserve import IN_RESERVE, in_reserve
from bot.notation.order.in_turn import in_turn
from bot.notation.order.kit import BARS, kit
from bot.notation.order.labelled import labelled
from bot.notation.order.last_first import last_first
from bot.notation.order.list_fields import list_fields
from bot.notation.order.listed import linked_lists, same_but, times_lists
from bot.notation.order.load_each import load_each
from bot.notation.order.load_last import load_last, load_of_all
from bot.notation.order.load_told import load_told
from bot.notation.order.load_words import load_words
from bot.notation.order.manner import manner
from bot.notation.order.meanings import by_neighbours
from bot.notation.order.one_set import one_set
from bot.notation.order.one_side import one_side
from bot.notation.order.ones import LOWS, ones
from bot.notation.order.placing import another, likes, mentions
from bot.notation.order.planned_too import TOO, planned_too, same_too
from bot.notation.order.rated import rated_all, rated_between
from bot.notation.order.rated_again import rated_again
from bot.notation.order.rated_twice import TELLING, rated_twice
from bot.notation.order.repeats import repeats
from bot.notation.order.reps_first import reps_first
from bot.notation.order.roughly import roughly
from bot.notation.order.same_load import same_load
from bot.notation.order.same_so_many import same_so_many
from bot.notation.order.several import all_sets, numbered_all, set_ranges, the_others, work_sets
from bot.notation.order.shared_counts import shared_counts
from bot.notation.order.side_marks import side_marks
from bot.notation.order.steps import put_in_place, step
from bot.notation.order.three_fields import three_fields
from bot.notation.order.titles import titles
from bot.notation.order.told_counts import told_counts
from bot.notation.order.told_of import told_of
from bot.notation.order.two_bells import BELLS, two_bells
from bot.notation.order.under_titles import under_titles
from bot.notation.order.units import WEIGHTS, fields
from bot.notation.order.vague import MAYBE, SOME, vague
from bot.notation.order.warmups import warmups
from bot.notation.order.which_set import NUMBERING, set_numbers
from bot.notation.tokens import Mark

__all__ = ["ordered"]


_WHICH = (Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.THEREST, "other", "others", "rest")
STEPS = (
    step(manner, (Kind.ALL,)),
    step(planned_too, (Kind.PLANNED,), (Kind.NAME,), TOO),
    step(same_too, (Kind.SAME,), (Kind.ORD, Kind.SET, Kind.LASTSET), ("too", "also", "as well", "well", "likewise")),
    step(titles),
    step(under_titles, (Kind.LINE, Kind.STOP), (Kind.NAME,)),
    step(side_marks, (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R, Kind.SLASH, "one")),
    step(mentions),
    step(each_apart, (Kind.SET,), (Kind.ALL,)),
    step(counted_off, (Kind.NUM,), (Kind.X, Kind.FOR)),
    step(load_of_all, (Kind.ALL, Kind.EACH), (Kind.NUM,)),
    step(list_fields, (Kind.LASTREP, Kind.LASTSET, Kind.SETS)),
    step(rated_twice, (Kind.NUM,), (Kind.RPE, Kind.AT), TELLING),
    step(in_reserve, (Kind.NUM,), IN_RESERVE),
    step(load_told, (Kind.AT, Kind.WITH, Kind.ORD, Kind.PLUS), (Kind.NUM,)),
    step(load_words, (Kind.X, Kind.ADDED, Kind.BODY, Kind.PLUS, Kind.ASSIST, "belt"), (Kind.NUM,)),
    step(labelled, (Kind.COLON, Kind.DASH, Kind.COMMA, Kind.WAS), (Kind.NUM,)),
    step(one_set, (Kind.RPE, Kind.RIR, Kind.RPEPOST, Kind.RIRPOST, Kind.TANK, Kind.COULD, Kind.AT)),
    step(three_fields, (Kind.SETS, Kind.X)),
    step(reps_first, (Kind.REPS, Kind.METRES, Kind.M, Kind.SECONDS)),
    step(told_of, (Kind.LASTREP, Kind.LASTSET, Kind.ORD, "the")),
    step(backwards, (Kind.NUM,), ("before", "previous")),
    step(last_first, (Kind.LASTREP, Kind.LASTSET)),
    step(as_planned, (Kind.PLANNED, Kind.DONE, Kind.SAME, Kind.SAMEREPS, Kind.SETS)),
    step(numbered, (Kind.SET,)),
    step(with_half_minutes, ("half",)),
    step(with_hundreds, ("hundred", "hundreds")),
    step(with_linked_decimals, (Kind.WITH, Kind.AT)),
    step(again, (Kind.AGAIN, Kind.SAME)),
    step(ones, ("one", *LOWS)),
    step(rated_again, (Kind.RPE, Kind.RIR, Kind.AT, Kind.TANK)),
    step(rated_between, (Kind.RPE, Kind.RIR, Kind.FEELS)),
    step(rated_all, (Kind.NUM,), (Kind.ALL, Kind.EACH, "both")),
    step(load_each, (Kind.NUM,), (Kind.ALL, Kind.EACH, Kind.REPS), (*_WHICH, Kind.FOR, Kind.SET, Kind.SETS)),
    step(in_turn),
    step(drops),
    step(one_side, (Kind.LEFT, Kind.RIGHT, Kind.EACH, Kind.SLASH, Kind.ALL, Kind.TIMES)),
    step(changes, (Kind.MORE, Kind.PLUS, *CHANGING)),
    step(roughly, (Kind.MINUTES, Kind.EACH, "in", "too", "ish", "roughly", "so", "or")),
    step(two_bells, (*BELLS, Kind.S, "halfs", "halves", "2", "two"), (Kind.NUM,)),
    step(kit, ("the", "extra", *BARS, Kind.TOTAL)),
    step(called),
    step(extra_sets, EXTRA),
    step(same_so_many, (Kind.SAME, "also", "too", "likewise"), (Kind.NUM,)),
    step(how_many, (Kind.NUM,)),
    step(told_counts, (Kind.NUM,)),
    step(arrows, (Kind.ARROW, Kind.SLASH)),
    step(repeats),
    step(load_last),
    step(groups, (Kind.NUM, Kind.SAME)),
    step(load_last),
    step(shared_counts),
    step(work_sets),
    step(set_ranges, (Kind.SET, Kind.SETS)),
    step(all_sets, (Kind.ALL, Kind.SAME, "all")),
    step(likes, ("like", Kind.SAME)),
    step(one_hand, (Kind.TOTAL, "both")),
    step(same_but, (Kind.SAME, Kind.AGAIN)),
    step(same_load, (Kind.SAMELOAD,)),
    step(vague, (Kind.OR, Kind.DASH, Kind.WAS, Kind.COULD, "between", *MAYBE, *SOME)),
    step(times_lists, (Kind.TIMES,)),
    step(linked_lists),
    step(short_efforts),
    step(warmups, (Kind.WARMUP, Kind.NOT)),
    step(set_numbers, NUMBERING),
    step(counts_by_name, ("single", "double", "triple")),
    step(numbered_all, (Kind.ALL,)),
    step(the_others, (Kind.THEREST,)),
    step(did_not_come),
    step(out_of_ten, ("of", "from", Kind.SLASH)),
    step(another, (Kind.ANOTHER,)),
    step(fields, (Kind.KG, Kind.LB, Kind.REPS, Kind.SETS, *WEIGHTS)),
    step(before_names, (Kind.NAME,)),
    step(heading_loads, (Kind.LINE, Kind.STOP)),
)
"""Each takes all marks and gives them with one thing put in its place, where what it puts right is said."""


def ordered(marks: Sequence[Mark]) -> list[Mark]:
    """The marks in that order."""
    said = put_in_place(marks, STEPS)
    return [by_neighbours(said, place) for place in range(len(said))]
