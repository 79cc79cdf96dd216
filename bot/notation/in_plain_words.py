"""What is told of sets in free words, put in the plain ones that the other rooms know.

Each step reads one kind of thing that people say in whole sentences: what is left out, how many were lifted and left
in reserve, the repetition that failed, a set put right, held, hung on, warmed up to, told by its sides. They come
first, on the words as they are tagged; what they do not know stays.
"""

from collections.abc import Callable, Sequence

from bot.notation.answer import Request, Span
from bot.notation.corrections.told_freely import told_freely
from bot.notation.counted_again import with_counted_again
from bot.notation.counted_freely import with_counts_freely
from bot.notation.failed_named import with_failed_named
from bot.notation.failed_reps_named import with_failed_reps_named
from bot.notation.halves_uncounted import without_halves_uncounted
from bot.notation.held import with_holds
from bot.notation.hung_freely import with_hung_freely
from bot.notation.kit_swapped import with_kit_swapped
from bot.notation.loads_awaited import without_loads_awaited
from bot.notation.loads_spoken_of import with_loads_spoken_of
from bot.notation.next_rep_told import with_next_rep_told
from bot.notation.numbers_beside import without_ages_and_ways
from bot.notation.order.warmups.by_load import with_warmups_by_load
from bot.notation.put_back import with_put_back
from bot.notation.reserve_ranges import with_reserve_ranges
from bot.notation.reserve_told import with_reserve_told
from bot.notation.said_around import with_plain_words_around
from bot.notation.same_talk import without_same_talk
from bot.notation.second_thoughts import with_second_thoughts
from bot.notation.set_worded import with_sets_worded
from bot.notation.sides_freely import with_sides_freely
from bot.notation.sides_spoken_of import without_sides_spoken_of
from bot.notation.skips.told import with_told
from bot.notation.times_better import without_times_better
from bot.notation.tokens import Mark
from bot.notation.untried import without_untried

_SAID_PLAINLY: tuple[Callable[[Sequence[Mark]], Sequence[Mark]], ...] = (
    with_second_thoughts,
    with_put_back,
    with_plain_words_around,
    without_times_better,
    without_halves_uncounted,
    without_loads_awaited,
    without_sides_spoken_of,
    without_same_talk,
    with_failed_reps_named,
    with_failed_named,
)
_EFFORTS: tuple[Callable[[Sequence[Mark]], Sequence[Mark]], ...] = (
    with_reserve_ranges,
    with_reserve_told,
    without_untried,
    with_next_rep_told,
)
_OF_SETS: tuple[Callable[[Sequence[Mark], Request], Sequence[Mark]], ...] = (
    with_counts_freely,
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
    told = marks
    for say in _SAID_PLAINLY:
        told = say(told)
    told = with_loads_spoken_of(without_ages_and_ways(with_sets_worded(with_told(told, stored))), request)
    for say in _EFFORTS:
        told = say(told)
    told = with_counted_again(told, request)
    asks = any(word in _ASKING for mark in marks[:1] for word in mark.text.split()[:1])
    if not hurts and not asks:
        for put in _OF_SETS:
            told = put(told, request)
    return list(told)
