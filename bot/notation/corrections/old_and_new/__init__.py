"""What stored sets were, in any order of words: `190 not 180 on the last two`, `i wrote 180 for set 1, it was 190`.

A small closed grammar: which stored sets, what they were, what not, and words that say no more. Only a clause whose
every word has its place is read so, and only where what it was not is what these sets are stored with; it is then put
as their numbers, and what they were. Everything else is left to the other rules of this room.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, parts_between, text_at
from bot.notation.corrections.meant import SIDES
from bot.notation.corrections.old_and_new.beside import (
    asks_for_change,
    is_announcement,
    is_of_open,
    is_talk,
    is_unsure,
    tells_left,
    tells_set,
    with_guesses,
    without_links,
)
from bot.notation.corrections.old_and_new.clause import (
    ANNOUNCING,
    PUTTING,
    STAGES,
    WRITTEN,
    Said,
    Value,
    continuation_at,
    new_and_old,
    read_clause,
)
from bot.notation.corrections.old_and_new.sides import other_side, rated_sides, side_again
from bot.notation.corrections.old_and_new.stored import (
    all_helped,
    as_rated,
    as_scaled,
    counts_of_part,
    exercise_of,
    is_told,
    what_changes,
    which_continuations,
    with_old,
)
from bot.notation.corrections.old_and_new.taken_out import CUES, taken_out
from bot.notation.corrections.old_and_new.turned import TURNED, turned_round
from bot.notation.corrections.which_stored import NAMING, which_at
from bot.notation.kinds import Kind
from bot.notation.order.in_reserve import NOTHING
from bot.notation.order.steps import said_in
from bot.notation.quick import replace
from bot.notation.tokens import Mark
from bot.training.report import Performed, Side, Stage

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_LINKS = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.BREAK, Kind.DASH, Kind.COLON)
_STRONG = (Kind.MEANT, Kind.SORRY, Kind.WROTE)


def old_and_new(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with each clause that puts stored sets right in plain wording: their labels, and what they were."""
    if not request.done or not _may_correct(said_in(marks)):
        return list(marks)
    out: list[Mark] = []
    before = _Before()
    marks = _with_values_joined(marks)
    for start, end in parts_between(marks, _ENDS):
        sentence = with_guesses(marks[start:end])
        put = _sentence(sentence, request, before)
        several = tells_set(sentence) or sum(m.kind is Kind.NUM for m in sentence) > 1
        fresh = before.fresh and (put != sentence or not several or is_of_open(sentence, request))
        spoken = _name_in(sentence) or before.spoken
        before = _Before(announced=put != sentence or is_announcement(sentence), fresh=fresh, spoken=spoken)
        asked = put != sentence and kind_at(marks, end) is Kind.QUERY
        out += put + [replace(m, kind=Kind.STOP) if asked else m for m in marks[end : end + 1]]
    return out


def _may_correct(said: frozenset[str]) -> bool:
    """Whether anything is said without which no clause is read so."""
    return not _CORRECTING.isdisjoint(said) or (Kind.NAME in said and not _BEHIND_NUMBER.isdisjoint(said))


_CORRECTING = NAMING | WRITTEN | ANNOUNCING | PUTTING | CUES | TURNED | frozenset(
    (Kind.SET, Kind.SETS, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.ALL, *STAGES, Kind.NOT, Kind.INSTEAD, Kind.WROTE,
     Kind.NO, Kind.SORRY, Kind.MEANT, Kind.TO, Kind.ARROW, *SIDES, "other", "left", "right", "wrong", "been")
)  # fmt: skip
_BEHIND_NUMBER = frozenset((Kind.WAS, Kind.COLON, "only", "just"))
"""What stands behind a set that is named by its exercise and a bare number: `front squat 3 only 4 reps`."""


def _with_values_joined(marks: Sequence[Mark]) -> list[Mark]:
    """`can you amend the first rdl? it was 102.5`: the value in one sentence with its set."""
    out = list(marks)
    for start, end in parts_between(marks, _ENDS):
        follows = kind_at(marks, end + 1) in (Kind.WAS, Kind.MEANT) or text_at(marks, end + 1) == "it"
        if follows and asks_for_change(marks[start:end]):
            out[end] = replace(marks[end], kind=Kind.COMMA)
    return out


@dataclass(frozen=True, slots=True)
class _Before:
    """What stands before a clause: whether it is `announced` that something is put right, whether it is `fresh` (no
    sets are told before it that an ordinal may count), and the name that was `spoken` last.
    """

    announced: bool = False
    rated: bool = False
    """Whether efforts are told by repetitions in reserve straight before."""
    scaled: bool = False
    """Whether one is told on the scale of exertion there."""
    fresh: bool = True
    spoken: Mark | None = None


def _name_in(marks: Sequence[Mark]) -> Mark | None:
    """The last name of an exercise."""
    return next((m for m in reversed(marks) if m.kind is Kind.NAME), None)


def _sentence(sentence: list[Mark], request: Request, before: _Before) -> list[Mark]:
    """The sentence, put plainly: the whole of it, or what stands before or behind one of its commas."""
    if not 1 < len(sentence) <= _LONGEST:
        return sentence
    whole = _plain(sentence, request, before) or _whole(sentence, request, before)
    if whole is not None:
        return whole
    for place, mark in enumerate(sentence):
        links = mark.kind in _LINKS
        if not links and not _aims_anew(sentence, place):
            continue
        left, right = sentence[:place], without_links(sentence[place + links :])
        scaled = any(m.kind in (Kind.RPE, Kind.RPEPOST) for m in left)
        spoken = _name_in(left) or before.spoken
        goes_on = replace(before, announced=True, rated=tells_left(left), scaled=before.scaled or scaled, spoken=spoken)
        stop = replace(mark, kind=Kind.STOP, text=".", value=None, parts=())
        if is_announcement(left):
            following = _sentence(right, request, goes_on)
            if following != right:
                return following
        if mark.kind is Kind.COLON:
            continue
        ahead = _plain(left, request, before) or _whole(left, request, before)
        following = right if ahead is None else _sentence(right, request, goes_on)
        if ahead is not None and links and mark.kind is not Kind.AND and is_talk(right):
            maybe = replace(mark, kind=Kind.FILL, text="maybe")
            return [maybe, *ahead] if is_unsure(right) else ahead
        if ahead is not None and ((links and tells_set(right)) or following != right):
            return [*ahead, stop, *following]
        aims = any(which_at(right, i, (1,)) or right[i].kind in (Kind.ORD, Kind.SET) for i in range(len(right)))
        if not (aims and links and tells_set(left)) or _is_of_told(left, right):
            continue
        behind = _sentence(
            right, request, replace(goes_on, announced=before.announced, fresh=is_of_open(left, request))
        )
        if behind != right and (mark.kind is not Kind.AND or is_of_open(left, request)):
            return [*left, stop, *behind]
    return sentence


def _is_of_told(left: Sequence[Mark], right: Sequence[Mark]) -> bool:
    """Whether `the last was 10` is of the sets told straight before it, and not of what is stored."""
    lasts = any(m.kind in (Kind.LASTSET, Kind.LASTREP) for m in right)
    number = next((i for i, m in enumerate(right) if m.kind is Kind.NUM), len(right))
    name, before = _name_in(right[:number]), _name_in(left)
    return lasts and (name is None or (before is not None and name.names == before.names))


def _aims_anew(sentence: Sequence[Mark], place: int) -> bool:
    """Whether another set or drop is named behind a number, without a comma: `first drop 30 second drop 22.5`."""
    named = sentence[place].kind is Kind.ORD or continuation_at(sentence, place) is not None
    numbered = sentence[place].kind is Kind.SET and kind_at(sentence, place + 1) is Kind.NUM
    return (named or numbered) and kind_at(sentence, place - 1) in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB, Kind.RIR)


_LONGEST = 40
"""Marks of a sentence that is read so: a longer one tells more than a correction."""


def _whole(sentence: list[Mark], request: Request, before: _Before) -> list[Mark] | None:
    """A whole sentence that takes out, turns round, or tells one side."""
    named = sentence if before.spoken is None or _name_in(sentence) else [before.spoken, *sentence]
    put = taken_out(named, request) or turned_round(named, request)
    if put is not None or not before.fresh:
        return put
    return other_side(named, request) or rated_sides(named, request) or side_again(named, request)


def _plain(clause: list[Mark], request: Request, before: _Before) -> list[Mark] | None:
    """The clause in plain wording; none where a word of it has no place, or where it does not fit what is stored.

    Behind another correction, or where one is announced, a set that is named and its value are enough: `and set 2 185`.
    """
    clause = clause[:-1] if before.announced and len(clause) > 1 and clause[-1].text in ("too", "as well") else clause
    name = next((m for m in clause if m.kind is Kind.NAME), before.spoken)
    parts = [STAGES[m.kind] for m in clause if m.kind in STAGES]
    exercise = exercise_of(name, request, parts[0] if parts else Stage.WORK)
    rows = [p for p in request.done if p.exercise == exercise and p.set is not None]
    stored = sorted({p.set for p in rows if p.set is not None})
    said = read_clause(clause, stored) if stored else None
    if said is None or exercise is None:
        return None
    said = as_rated(said, rows, next((m for m in clause if m.text in NOTHING), None)) if before.rated else said
    said = as_scaled(said, rows) if before.scaled else said
    said.owned = said.name is not None
    said.name = said.name or before.spoken
    if said.name is None and exercise != request.done[-1].exercise:
        place = next(i for i, e in enumerate(request.exercises) if e.name == exercise)
        said.name = Mark(Kind.NAME, exercise.lower(), clause[0].start, clause[0].start, names=(place,))
    put = _rated(said, exercise, request, before) if said.effort is not None else _told(said, rows, request, before)
    return None if put is None else [*_edge(clause[0], put), *put, *_edge(clause[-1], put)]


def _told(said: Said, rows: Sequence[Performed], request: Request, before: _Before) -> list[Mark] | None:
    """A set that was something else, plainly: `set 2 was 9`, `the second drop was 22.5 not 25`."""
    exercise = rows[0].exercise
    new, old = new_and_old(said)
    follows = before.announced and before.fresh and (said.which is None or not said.which.lasts)
    last = follows and said.name is not None and not said.several
    bare = not (
        said.owned or before.announced or said.cues - {Kind.ARROW, Kind.FILL, Kind.DASH}
    )  # `11 > 7`: a set and its drop
    if said.which is None and said.nth is None and (said.several or bare):
        return None
    if new is None or (said.which is None and old is None and said.nth is None and not last):
        return None
    told = is_told(said, exercise, request) or (said.nth or 0) > 0 or (said.nth is not None and Kind.WAS in said.cues)
    if old is None and not (follows or bool(said.cues & set(_STRONG)) or told):
        return None
    if said.stage is not None:
        return _of_continuation(said, rows, new, old)
    stages = (Stage.WORK, Stage.DROP)
    aimed = said.which.sets if said.which is not None else (rows[-1].set or 0,) if old is None else with_old(rows, old)
    staged = [[p for p in rows if p.set == n] for n in aimed]
    stage, counts = what_changes(staged, new, old, stages)
    if not aimed or stage is None:
        return None
    value = _told_plainly(new, old, counts=counts, helped=counts is False and all_helped(staged))
    return _put(said, aimed, value, [Mark(Kind.DROP, "drop", value[0].start, value[0].start)]
                if stage is Stage.DROP else [])  # fmt: skip


def _of_continuation(said: Said, rows: Sequence[Performed], new: Value, old: Value | None) -> list[Mark] | None:
    """One drop or mini that was something else: the one that is named, or the only one with the old value."""
    out: list[Mark] = []
    for row, nth in which_continuations(said, rows, old):
        stage, counts = what_changes([[row]], new, old, (row.stage,))
        if stage is None:
            return None
        counts = counts_of_part(row, new) if counts is None and old is None else counts
        value = _told_plainly(new, old, counts=counts, helped=False)
        at = value[0].start
        kind, word = (Kind.DROP, "drop") if stage is Stage.DROP else (Kind.MINI, "mini")
        numbered = [] if nth is None else [Mark(Kind.ORD, "nth", at, at, value=Decimal(nth))]
        stop = [Mark(Kind.STOP, ".", out[-1].end, out[-1].end)] if out else []
        out += [*stop, *_put(said, (row.set or 0,), value, [*numbered, Mark(kind, word, at, at)])]
    return out or None


def _rated(said: Said, exercise: str, request: Request, before: _Before) -> list[Mark] | None:
    """The effort of stored sets that are named by their numbers: `second one was 1 rir`, `curls set 1 rpe 9`."""
    if said.effort is None or said.plain or said.olds or said.which is None or said.stage is not None:
        return None
    left, first, last = said.effort
    sides = next(e.sides for e in request.exercises if e.name == exercise)
    if (sides == len(Side) and last.kind is Kind.LEFT) or said.which.lasts or not before.fresh:
        return None
    if not is_told(said, exercise, request, told=True):
        return None
    rate = replace(first, kind=Kind.RIR, text="rir", value=None, parts=(), end=first.start)
    return _put(said, said.which.sets, [rate, replace(first, kind=Kind.NUM, value=left, parts=(), end=last.end)], [])


def _edge(mark: Mark, put: Sequence[Mark]) -> list[Mark]:
    """The first or the last word of the clause as one that says nothing: the evidence holds the whole of it."""
    kept = any(m.start <= mark.start and mark.end <= m.end for m in put)
    return [] if kept else [replace(mark, kind=Kind.FILL, text="that", value=None, parts=(), names=())]


def _told_plainly(new: Value, old: Value | None, *, counts: bool | None, helped: bool) -> list[Mark]:
    """`was with 190`, `was 9 not 11`, `was 190`: what the sets were, and of what."""
    start, end = new.marks[0].start, new.marks[-1].end
    was = Mark(Kind.MEANT, "was" if counts is not False else "was with", start, start)
    value = [m for m in new.marks if m.kind is not Kind.S or counts is None]
    if counts and old is not None:
        return [was, *value, Mark(Kind.NOT, "not", end, end), old.marks[0]]
    reps = [Mark(Kind.REPS, "", end, end)] if counts else []
    less = new.amount < 0 or (helped and new.marks[0].kind is not Kind.BODY)
    return [was, *value, *reps, *([Mark(Kind.ASSIST, "assist", end, end)] if less else [])]


def _put(said: Said, chosen: Sequence[int], value: Sequence[Mark], part: Sequence[Mark]) -> list[Mark]:
    """The sets by their numbers, which `part` of them, and what they were."""
    beside = said.at if said.at is not None else value[1]
    label = replace(beside, kind=Kind.LABEL, parts=(), names=())
    labels = [replace(label, value=Decimal(n)) for n in chosen]
    doubtful = [] if said.hedge is None else [replace(said.hedge, kind=Kind.FILL)]
    return [*doubtful, *([] if said.name is None else [said.name]), *labels, *part, *value]
