"""What is told of sets in free words, put in the plain ones that the other rooms know.

Each step reads one kind of thing that people say in whole sentences: what is left out, how many were lifted and left
in reserve, the repetition that failed, a set put right, held, hung on, warmed up to, told by its sides. They come
first, on the words as they are tagged; what they do not know stays.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.notation import (
    failed_reps_named,
    halves_uncounted,
    kit_steps,
    left_at_sets,
    load_of_all,
    loads_awaited,
    more_in_each,
    next_rep_told,
    put_back,
    reserve_ranges,
    reserve_told,
    rest_planned,
    said_around,
    sayings,
    second_thoughts,
    self_asked_loads,
    signs_between,
    times_better,
    untried,
)
from bot.notation.answer import Request, Span
from bot.notation.bounds import SEVERAL
from bot.notation.corrections.sorry_at_once import with_sorry_at_once
from bot.notation.corrections.told_freely import told_freely
from bot.notation.counted_again import with_counted_again
from bot.notation.counted_freely import with_counts_freely
from bot.notation.days import read_day
from bot.notation.failed_named import with_failed_named
from bot.notation.held import with_holds
from bot.notation.hung_freely import with_hung_freely
from bot.notation.kinds import Kind
from bot.notation.kit_swapped import with_kit_swapped
from bot.notation.load_before_sides import with_loads_before_sides
from bot.notation.loads_spoken_of import with_loads_spoken_of
from bot.notation.numbers_beside import without_ages_and_ways
from bot.notation.order.steps import put_in_place, step
from bot.notation.order.warmups.by_load import with_warmups_by_load
from bot.notation.same_talk import REPEATING, without_same_talk
from bot.notation.set_worded import with_sets_worded
from bot.notation.sides_freely import with_sides_freely
from bot.notation.sides_spoken_of import SIDES, without_sides_spoken_of
from bot.notation.skips import happened, not_yet
from bot.notation.skips.told import with_told
from bot.notation.tokens import Mark

SAID_PLAINLY = (
    step(signs_between.with_signs_as_ends, signs_between.NEEDS),
    step(happened.with_unhappened, happened.NEEDS),
    step(sayings.without_sayings, sayings.NEEDS),
    step(second_thoughts.with_second_thoughts, second_thoughts.NEEDS),
    step(self_asked_loads.with_told_again, self_asked_loads.NEEDS),
    step(not_yet.with_not_yet, (Kind.NAME,), not_yet.NEEDS),
    step(left_at_sets.with_left_at_sets, (Kind.NUM,), left_at_sets.NEEDS),
    step(put_back.with_put_back, put_back.NEEDS),
    step(kit_steps.without_kit_steps, (Kind.NUM,), kit_steps.NEEDS),
    step(said_around.with_plain_words_around, said_around.NEEDS),
    step(times_better.without_times_better, times_better.NEEDS),
    step(halves_uncounted.without_halves_uncounted, halves_uncounted.NEEDS),
    step(loads_awaited.without_loads_awaited, (Kind.NUM,), loads_awaited.NEEDS),
    step(without_sides_spoken_of, SIDES),
    step(without_same_talk, REPEATING),
    step(failed_reps_named.with_failed_reps_named, failed_reps_named.NEEDS),
    step(with_failed_named, (Kind.FAILED,)),
)
EFFORTS = (
    step(more_in_each.with_more_in_each, (Kind.EACH, Kind.ALL), more_in_each.NEEDS),
    step(reserve_ranges.with_reserve_ranges, (Kind.NUM,), reserve_ranges.NEEDS),
    step(reserve_told.with_reserve_told, (Kind.NUM,), reserve_told.NEEDS),
    step(untried.without_untried, untried.NEEDS),
    step(next_rep_told.with_next_rep_told, next_rep_told.NEEDS),
)
_OF_SETS: tuple[Callable[[Sequence[Mark], Request], Sequence[Mark]], ...] = (
    with_counts_freely,
    with_sorry_at_once,
    with_kit_swapped,
    with_holds,
    with_sides_freely,
    with_hung_freely,
    told_freely,
    with_warmups_by_load,
)
MOST_MARKS = 160
"""Marks of a message that is told in sentences: a longer one is a list, and every look at it would cost its length."""
_ASKING = ("does", "do", "is", "are", "how", "what", "whats", "why", "which", "when", "where", "should")
"""Words that open a question: what it says of sets is not told."""


def in_plain_words(marks: Sequence[Mark], request: Request, hurts: Sequence[Span]) -> list[Mark]:
    """The marks in plain words; of a message that tells of a hurt or asks, not what puts sets right or holds them."""
    if len(marks) > MOST_MARKS:
        return list(marks)
    done = {p.exercise for p in request.done}
    stored = {i for i, e in enumerate(request.exercises) if e.name in done}
    marks = [replace(m, kind=Kind.FILL) if _is_bullet(marks, i) else m for i, m in enumerate(marks)]
    marks = self_asked_loads.without_plan_kept(_with_scraps_apart(marks), request)
    marks = load_of_all.with_load_of_all(rest_planned.with_rest_planned(marks, request), request)
    plain = put_in_place(sayings.without_nevertheless(marks) if hurts else marks, SAID_PLAINLY)
    told: Sequence[Mark] = with_sets_worded(with_told(plain, stored))
    told = with_loads_spoken_of(without_ages_and_ways(told), request)
    told = with_counted_again(put_in_place(with_loads_before_sides(told, request), EFFORTS), request)
    asks = any(word in _ASKING for mark in marks[:1] for word in mark.text.split()[:1])
    if not hurts and not asks:
        for put in _OF_SETS:
            told = put(told, request)
    return _with_heading(marks, list(told), request)


def _with_heading(marks: Sequence[Mark], told: list[Mark], request: Request) -> list[Mark]:
    """What is told with the day that heads it, `yesterday: a dozen squats with the 20`, where plain words lost it."""
    end = next((i + 1 for i, m in enumerate(marks[:_HEADING]) if m.kind is Kind.COLON), 0)
    lost = end and told and told[0].start >= marks[end - 1].end
    if not lost or any(m.kind in (Kind.NAME, Kind.NUM) for m in marks[:end]):
        return told
    return told if read_day(marks[:end], request.now) is None else [*marks[:end], *told]


_HEADING = 5
"""Marks of a heading: `monday's session:`."""


def _is_bullet(marks: Sequence[Mark], place: int) -> bool:
    """The plus that opens a sentence before a name: `best day yet! + laterals 8 for 14`."""
    opens = place == 0 or marks[place - 1].kind in (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.BREAK)
    return marks[place].kind is Kind.PLUS and opens and place + 1 < len(marks) and marks[place + 1].kind is Kind.NAME


def _with_scraps_apart(marks: Sequence[Mark]) -> list[Mark]:
    """`press 10 10 scratch that, 12 and thrusts 10 9 scratch that, 10`: a sentence for each that is taken back."""
    out = list(marks)
    if sum(m.kind is Kind.SCRAP for m in marks) < SEVERAL:
        return out
    scrapped = told = False
    for place, mark in enumerate(marks[:-1]):
        joins = mark.kind in (Kind.AND, Kind.THEN, Kind.COMMA) and marks[place + 1].kind is Kind.NAME
        if told and joins:
            out[place] = replace(mark, kind=Kind.STOP, text=".")
        scrapped = (scrapped or mark.kind is Kind.SCRAP) and not joins
        told = scrapped and (told or mark.kind is Kind.NUM)
    return out
