"""From the folded text to the marks of sets: kinds given, hurts set aside, and all that is no set's without bearing."""

from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import partial

from bot.notation.alike import said_plainly
from bot.notation.answer import Request, Span
from bot.notation.asides import with_asides
from bot.notation.beside_hurt import (
    bare_after,
    counted_hurts,
    counted_sides,
    lasting,
    names_since,
    sides_of_hurts,
    told_of_hurts,
)
from bot.notation.clauses import kind_at, part_of
from bot.notation.corrections.asides import with_set_apart
from bot.notation.corrections.confirmed import confirmed, without_opinions
from bot.notation.corrections.half_again import told_at_once
from bot.notation.corrections.load_left import without_left
from bot.notation.corrections.load_supplied import with_load_supplied
from bot.notation.corrections.no_drop import with_drops
from bot.notation.corrections.old_and_new import old_and_new
from bot.notation.corrections.ordinals import with_told_numbered
from bot.notation.corrections.parted import parted
from bot.notation.corrections.retracting import with_retractions
from bot.notation.corrections.wording import reworded
from bot.notation.denials import without_denied_continuations, without_denied_warmups
from bot.notation.exercise_numbers import exercises_by_number, runs_by_number
from bot.notation.failed_sets import with_failed_sets
from bot.notation.greeting import without_greeting
from bot.notation.help_told import with_help_told
from bot.notation.hurt_parts import left_out_for, of_hurts, unhurt, with_edges
from bot.notation.idle_times import without_idle_times
from bot.notation.in_plain_words import in_plain_words
from bot.notation.joining import with_joined_halves
from bot.notation.kinds import Kind
from bot.notation.kit_told import with_kit_told
from bot.notation.layout import laid_out
from bot.notation.load_apart import with_set_joined
from bot.notation.load_apart.described import with_described_counts
from bot.notation.masking import masked
from bot.notation.missed_after import with_missed_after
from bot.notation.misses import with_misses
from bot.notation.next_failed import with_next_failed
from bot.notation.order import ordered
from bot.notation.order.circuits import with_circuits
from bot.notation.order.efforts_behind import is_effort
from bot.notation.order.rounds import with_rounds
from bot.notation.order.steps import put_in_place, step
from bot.notation.order.vague import with_lost_counts
from bot.notation.questions.set_apart import with_questions_apart
from bot.notation.ratings import without_ratings
from bot.notation.relative import with_differences
from bot.notation.script import Folded
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.set_ends import with_set_ends
from bot.notation.shaping import number_lines
from bot.notation.shortfalls import with_shortfalls
from bot.notation.skips.self_asked import with_self_asked
from bot.notation.smileys import without_smileys
from bot.notation.tagging.once import Tagger
from bot.notation.thinning import thinned
from bot.notation.tokens import Mark
from bot.notation.told_by_others import with_judged_efforts
from bot.notation.trade import with_lone_names
from bot.notation.weight_told import with_hung_load, with_weight_told

MOST_NUMBERS = 120
"""A message with more numbers is no report of a session: it is asked about, and its words are not looked at."""
MOST_MARKS = 200
"""Marks of a message whose sets are read, three times those of the longest report met. A longer one is a letter: pain,
a question, a day and the time are heard in it; sets are asked for in a message of their own."""
_TIMES = (Kind.MINUTES, Kind.HOURS, Kind.SECONDS)
_NUMBERED = frozenset((*NUMBERS, Kind.ORD, Kind.SLIP, "one"))


@dataclass(frozen=True, slots=True)
class Kinds:
    """A message's marks with hurts without bearing: the places of names inside hurts, and where the others start.

    The marks of a letter are as tagged: no set is to be read in them.
    """

    marks: list[Mark]
    hurt_names: frozenset[int]
    hurts: frozenset[int]
    is_letter: bool = False


def kinds_beside_hurts(
    folded: Folded, plain: Sequence[Mark], request: Request, hurts: Sequence[Span], tagger: Tagger
) -> Kinds:
    """The marks of a message whose raw ranges `hurts` speak of pain: their numbers are no loads."""
    if len(plain) > MOST_MARKS:
        plain = _thinned(plain)
    begun = bool(request.done) or any(m.kind in NUMBERS for m in plain)
    typed = said_plainly(without_smileys(plain), begun=begun)
    if sum(m.kind in NUMBERS for m in typed) > MOST_NUMBERS:
        return Kinds(list(typed), frozenset(), frozenset())
    typed = laid_out(typed)
    few = _thinned(typed)
    if len(few) > MOST_MARKS:
        return Kinds(list(tagger.read(few)), frozenset(), frozenset(), is_letter=True)
    told = with_help_told(with_weight_told(with_questions_apart(in_plain_words(tagger.read(few), request, hurts))))
    told = with_judged_efforts(without_greeting(with_hung_load(without_idle_times(told), request)))
    told = with_set_joined(with_described_counts(told), request)
    told = runs_by_number(without_opinions(with_kit_told(told, request.exercises)), request.exercises)
    missed = with_failed_sets(with_misses(with_next_failed(with_missed_after(told))))
    ended = with_set_ends(missed, request.exercises)
    ended = with_shortfalls(ended, request.exercises)
    said = told_at_once(with_lost_counts(with_set_apart(ended)))
    said = with_load_supplied(without_left(said, request), request)
    said = with_told_numbered(with_drops(old_and_new(said, request), request))
    marks = with_retractions(reworded(parted(said, is_first=not request.done), is_first=not request.done), request)
    marks = with_self_asked(exercises_by_number(marks, len(request.exercises)))
    at = folded.at
    hurt = {
        place
        for place, mark in enumerate(marks)
        if mark.kind not in (Kind.LINE, Kind.STOP) and _is_within(at[mark.start], hurts)
    }
    hurt -= left_out_for(marks, hurt)
    hurt |= unhurt(marks)
    hurt |= {p for p in range(len(marks) - 1) if marks[p].kind in (Kind.LEFT, Kind.RIGHT) and p + 1 in hurt}
    hurt |= {
        p
        for p in range(len(marks) - 1)
        if marks[p].kind is Kind.NUM and p + 1 in hurt and (marks[p + 1].kind in _TIMES or marks[p].value == 0)
    }
    hurt |= counted_hurts(marks, hurt)
    marks = with_edges(marks, hurt)
    hurt |= bare_after(marks, hurt) | lasting(marks, hurt) | told_of_hurts(marks, hurt)
    hurt |= of_hurts(marks, hurt) | names_since(marks, hurt)
    hurt = (hurt | sides_of_hurts(marks, hurt)) - counted_sides(marks)
    names = frozenset(p for p in hurt if marks[p].kind is Kind.NAME)
    return Kinds(masked(marks, hurt - names), names, frozenset(marks[p].start for p in hurt - names))


def _thinned(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without words that are typed over and over; every number stays."""
    return thinned(marks, [None if m.kind in NUMBERS else m.text or m.kind for m in marks])


def marks_of_sets(marks: Sequence[Mark], hurts: bool, is_first: bool) -> list[Mark]:
    """The marks of sets, lists numbered. `hurts`: the message tells of pain; `is_first`: nothing is done yet."""
    told = without_denied_continuations(masked(marks, confirmed(marks)))
    named = with_lone_names(without_denied_warmups(ordered(with_rounds(with_circuits(told)))))
    compared = put_in_place(
        named, (step(with_asides, _NUMBERED), step(partial(with_differences, hurts=hurts), _NUMBERED))
    )
    joined = with_joined_halves(number_lines(without_ratings(_repeats(compared), hurts)))
    return masked(joined, _was_not(joined)) if is_first else joined


def _was_not(marks: Sequence[Mark]) -> set[int]:
    """`90 for 9, not 10`: before anything is done it corrects nothing, and says what was not."""
    out: set[int] = set()
    for place, mark in enumerate(marks[:-1]):
        before = place - 1 - (place > 0 and marks[place - 1].kind in (Kind.COMMA, Kind.OPEN, Kind.REPS))
        ends = place + 2 >= len(marks) or marks[place + 2].kind in (*EDGES, Kind.FILL, Kind.REPS, Kind.AT)
        told = before >= 0 and marks[before].kind is Kind.NUM and not marks[place + 1].parts
        if mark.kind is Kind.NOT and marks[place + 1].kind is Kind.NUM and told and ends:
            out |= {place, place + 1}
    return out


def _repeats(marks: Sequence[Mark]) -> list[Mark]:
    """`again` alone in its part is `same`; so is it, and `another one`, before an effort: `again but rpe 9`.

    Behind a set, `60x9, again 2 left`, the effort is what came again.
    """
    kept = [i for i, m in enumerate(marks) if m.kind is not Kind.FILL]
    out = list(marks)
    for at, place in enumerate(kept):
        if _is_another_set(marks, place):
            out[place] = replace(marks[place], kind=Kind.SAME)
        elif marks[place].kind is Kind.AGAIN:
            opens = at == 0 or marks[kept[at - 1]].kind in (*EDGES, Kind.NAME)
            opens = opens and not _is_counted_name(marks, [] if at == 0 else kept[at - 2 : at])
            starts = opens and _opens_part(marks, place)
            ends = at == len(kept) - 1 or marks[kept[at + 1]].kind in EDGES
            first = not any(marks[i].kind is Kind.NUM for i in kept[:at])
            if starts and (ends or (first and is_effort(marks, place + 1))):
                out[place] = replace(marks[place], kind=Kind.SAME)
    return out


def _is_another_set(marks: Sequence[Mark], place: int) -> bool:
    """Whether `another one` opens its part, and nothing but its effort is told behind: `another one but rpe 8`."""
    named = marks[place].kind is Kind.ANOTHER and marks[place].text in ("another one", "another set")
    comma = kind_at(marks, place + 1) is Kind.COMMA
    opens = all(m.kind is Kind.FILL and m.text in _LITTLE for m in marks[part_of(marks, place)[0] : place])
    return named and opens and is_effort(marks, place + 1 + comma)


def _is_counted_name(marks: Sequence[Mark], before: Sequence[int]) -> bool:
    """The name of `15 swings again`, whose number is told."""
    return [marks[i].kind for i in before] == [Kind.NUM, Kind.NAME]


def _opens_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing but little words stands before `again` in its part: `feels solid again` repeats no set."""
    start, _ = part_of(marks, place)
    return all(m.kind is not Kind.FILL or m.text in _LITTLE for m in marks[start:place])


_LITTLE = frozenset(["and", "then", "once", "did", "it", "that", "do", "yes", "yep", "yeah", "ok", "just", "all", "so"])


def _is_within(at: int, ranges: Sequence[Span]) -> bool:
    """Whether a place in the text lies in one of the ranges, which are in order and apart."""
    after = bisect_right(ranges, at, key=lambda one: one[0])
    return after > 0 and at < ranges[after - 1][1]
