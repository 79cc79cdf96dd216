"""Where the sets of one exercise end and those of the next begin, and no mark says so: as the plan fits.

In `thrusts 90x10 9 8 rdl 10 10 and 9 with 60` only the plan tells that the `8` is of the thrusts. Where a message
names several exercises and its reading asks, or gives an exercise more sets or another load than it has, a line's end
is tried at each place between two names; the reading that leaves nothing in doubt and fits the plan best is taken.
Where two fit alike, none is.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.notation.answer import AskKind, Reading, Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.context import ALIKE_LEAST, ALIKE_MOST, Context
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.plan import Drop, Mini
from bot.training.report import Performed, SetKey, Stage

Seams = frozenset[int]
"""Where lines end beside those that are typed: the starts of the marks behind them."""

MOST_TRIED = 24
"""Readings of one message, at the price of some milliseconds each."""
MOST_LOOKED_AT = 1200
"""Marks of all those readings together: of a longer message fewer are made."""
_HARD = (Kind.LINE, Kind.STOP, Kind.QUERY)
_SOFT = (Kind.COMMA, Kind.AND, Kind.THEN, Kind.BREAK)
_STARTS = (Kind.NUM, Kind.FILL, Kind.FOR, Kind.BODY, Kind.WORD, Kind.NAME, Kind.WEAK)
_CORRECTS = (Kind.MEANT, Kind.SORRY, Kind.SCRAP, Kind.WROTE)
_LINKS = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.COLON, Kind.SLASH, Kind.RPE, Kind.RIR, Kind.PLUS, Kind.SIGN)
_NUMBERS_ASKED = (AskKind.ORDER, AskKind.OUT_OF_REASON, AskKind.RANGE, AskKind.LOAD, AskKind.UNSURE)
_MARGIN = 2
"""Of the score: readings that are no farther apart are both honest."""
_HALF = 2
"""Times what was told that is no more than the least that is planned: a set of another exercise, perhaps."""
_USUAL_MINI, _TWICE = 5, 2
"""Repetitions of a continuation where the plan has none (common practice, no source), and how many times as many no one
does.
"""
_WHOLE, _EXTRA, _ASKED = 4, -4, -8
"""Points of a reading: for an exercise whose open sets are all told, for a set beside the plan or put right, for
asking."""


@dataclass(frozen=True, slots=True)
class _Fit:
    """How a reading fits the plan: `score` the more the better; `sound` where nothing in it speaks for a wrong seam."""

    score: int
    sound: bool
    whole: bool
    """Whether of each exercise that is told all open sets are."""


def with_seams_by_plan(
    request: Request, first: Reading, marks: Sequence[Mark], read: Callable[[Seams], Reading]
) -> Reading:
    """The reading with lines ended where the plan fits best; `first` where it is sound or no other is better.

    `marks` are the message's; `read` reads it with lines ended before the marks that start at these places.
    """
    if first.ask is not None and first.ask.kind not in _NUMBERS_ASKED:
        return first
    between = [(gap, names) for gap, names in _gaps(marks) if gap]
    gaps = [gap for gap, _ in between]
    if not gaps:
        return first
    best, fit, seams = first, _fit(request, first), Seams()
    if fit.sound and fit.whole:
        return first
    put_right = frozenset(first.replaces)
    sound, fit = fit.sound, _fit(request, first, put_right)
    ahead = _names_ahead(marks, gaps)
    if ahead:
        reading = read(ahead)
        named = _fit(request, reading, put_right)
        if named.sound and named.score > fit.score and _tells_as_much(first, reading):
            return reading
    if sound:
        return first
    if _are_many(gaps, marks):
        odd = _ill_fitting(request, first)
        gaps = [gap for gap, names in between if odd & names]
    if not gaps or _are_many(gaps, marks):
        return first
    for gap in gaps:
        found: list[tuple[_Fit, Seams, Reading]] = []
        for place in gap:
            reading = read(seams | {place})
            found.append((_fit(request, reading, put_right), seams | {place}, reading))
        top = max(one.score for one, _, _ in found)
        alike = [one for one in found if one[0].score == top or (one[0].sound and one[0].score >= top - _MARGIN)]
        alike.sort(key=lambda one: -one[0].score)
        if top > fit.score and all(one[2].performed == alike[0][2].performed for one in alike):
            _, seams, best = alike[0]
            fit = _fit(request, best, put_right)
    return best if fit.sound and best is not first and _tells_as_much(first, best) else first


def with_lines(marks: Sequence[Mark], seams: Seams) -> list[Mark]:
    """The marks with a line's end before each mark that starts at one of these places."""
    out: list[Mark] = []
    for mark in marks:
        if mark.start in seams and out:
            if out[-1].kind in _SOFT:
                out.pop()
            out.append(Mark(Kind.LINE, "", mark.start, mark.start))
        out.append(mark)
    return out


_OF_NAME = (Kind.ALL, Kind.SETS, Kind.SET, Kind.SKIP, Kind.SKIPPED, Kind.NO, Kind.THEREST, Kind.LASTSET)
"""Kinds before a name that are told of it: `both sets of shrugs`, `skipped farmers`."""


def _names_ahead(marks: Sequence[Mark], gaps: Sequence[Sequence[int]]) -> Seams:
    """A line's end before each name, where the first of several stands before all that is told; else none."""
    names = [i for i, m in enumerate(marks) if m.kind in (Kind.NAME, Kind.WEAK) and m.names]
    told = next((i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.BODY)), 0)
    starts = {marks[i].start for i in names[1:]}
    seams = Seams(gap[-1] for gap in gaps if gap[-1] in starts)
    tied = any(kind_at(marks, i - 1) in _OF_NAME or text_at(marks, i - 1).split()[-1:] == ["of"] for i in names[1:])
    return seams if names[0] < told and not tied else Seams()


def _are_many(gaps: Sequence[Sequence[int]], marks: Sequence[Mark]) -> bool:
    """Whether to try all these places would take too long."""
    tries = sum(map(len, gaps))
    return tries > MOST_TRIED or tries * len(marks) > MOST_LOOKED_AT


def _ill_fitting(request: Request, reading: Reading) -> frozenset[int]:
    """The exercises of which more sets or continuations are told than planned, or other ones; none where it asks."""
    out = set[int]()
    for place, exercise in enumerate(request.exercises):
        own = [p for p in reading.performed if p.exercise == exercise.name]
        told = [p for p in own if p.stage is Stage.WORK]
        context = Context(exercise, request.unit, tuple(p for p in request.done if p.exercise == exercise.name))
        more = any(p.set is not None and p.set > len(exercise.sets) for p in told)
        if more or any(_fits(context, p) < 0 for p in told) or _continued_beyond(context, own):
            out.add(place)
    return frozenset(out)


def _gaps(marks: Sequence[Mark]) -> Iterator[tuple[list[int], frozenset[int]]]:
    """Where a line may end between each two names side by side of different exercises, if it does not already; and the
    exercises that they may name.
    """
    if any(m.kind in _CORRECTS for m in marks):
        return
    names = [i for i, m in enumerate(marks) if m.kind in (Kind.NAME, Kind.WEAK) and m.names]
    for one, other in pairwise(names):
        if marks[one].names == marks[other].names or any(m.kind in _HARD for m in marks[one:other]):
            continue
        if all(m.kind in (Kind.AND, Kind.PLUS) for m in marks[one + 1 : other]) and other > one + 1:
            continue  # `squats and rows as planned`: told together
        places = [marks[at].start for at in range(one + 1, other + 1) if _may_start(marks, at, other)]
        yield places, frozenset((*marks[one].names, *marks[other].names))


def _may_start(marks: Sequence[Mark], at: int, name: int) -> bool:
    """Whether what is told of the exercise named at `name` may start at a mark."""
    before = marks[at - 1].kind
    joins = before is Kind.NUM and marks[at].kind is Kind.FOR and kind_at(marks, at + 1) is Kind.NUM
    return before not in _LINKS and not joins and (at == name or marks[at].kind in _STARTS)


def _fit(request: Request, reading: Reading, put_right: frozenset[SetKey] = frozenset()) -> _Fit:
    """How a reading fits the plan and what is done. `put_right`: sets that every reading puts right."""
    replaces = [key for key in reading.replaces if key not in put_right]
    score, sound, whole = 0, reading.ask is None and not replaces, True
    score += 0 if reading.ask is None else _ASKED
    score += _EXTRA * len(replaces)
    for exercise in request.exercises:
        told = [p for p in reading.performed if p.exercise == exercise.name and p.stage is Stage.WORK]
        if not told:
            continue
        context = Context(exercise, request.unit, tuple(p for p in request.done if p.exercise == exercise.name))
        numbers = {p.set for p in told}
        extra = sum(1 for n in numbers if n is not None and n > len(exercise.sets))
        filled = not extra and numbers.issuperset(context.open_sets)
        whole = whole and filled
        score += _EXTRA * extra + (_WHOLE if filled else 0)
        fits = [_fits(context, p) for p in told]
        score += sum(fits)
        sided = {p.set for p in told if p.side is not None} & {p.set for p in told if p.side is None}
        own = [p for p in reading.performed if p.exercise == exercise.name]
        long = _continued_beyond(context, own)
        score += _EXTRA * long
        sound = sound and not extra and not sided and min(fits) >= 0 and not long
    return _Fit(score, sound, whole)


def _continued_beyond(context: Context, rows: Sequence[Performed]) -> int:
    """How many continuations are rather sets of another exercise."""
    return sum(_is_long_mini(context, p) for p in rows) + _drops_beyond(context, rows)


def _drops_beyond(context: Context, rows: Sequence[Performed]) -> int:
    """How many drops without a load follow another one, where the plan has no second: sets of another exercise."""
    loose = [p for p in rows if p.stage is Stage.DROP and p.load is None]
    told = {n: sum(p.stage is Stage.DROP and p.set == n for p in rows) for n in {p.set for p in loose}}
    planned = {n: context.planned(n) for n in told}
    most = {n: s.finish.times if s is not None and isinstance(s.finish, Drop) else 1 for n, s in planned.items()}
    return sum(max(0, count - most[n]) for n, count in told.items())


def _is_long_mini(context: Context, row: Performed) -> bool:
    """Whether a continuation at the same load is longer than any is: the set of another exercise, perhaps."""
    planned = context.planned(row.set)
    finish = planned.finish if planned is not None else None
    usual = finish.reps if isinstance(finish, Mini) else _USUAL_MINI
    return row.stage is Stage.MINI and row.reps > _TWICE * usual


def _fits(context: Context, row: Performed) -> int:
    """How one set fits what is planned for it: its load and its repetitions."""
    sets = context.exercise.sets
    if row.set is None or not 0 < row.set <= len(sets):
        return 0
    planned = sets[row.set - 1]
    score = int(planned.reps.low <= row.reps <= planned.reps.high) - 2 * int(row.reps * _HALF <= planned.reps.low)
    if row.load is None or planned.load is None:
        return score
    if context.is_bodyweight:
        return score + int(row.load == planned.load)
    share = row.load.kg / planned.load.kg
    return score + (int(row.load == planned.load) if ALIKE_LEAST <= share <= ALIKE_MOST else -3)


def _tells_as_much(first: Reading, best: Reading) -> bool:
    """Whether the better reading keeps what the first one told beside sets, and no fewer sets if that did not ask."""
    kept = (first.pain, first.minutes, first.day, first.question) == (best.pain, best.minutes, best.day, best.question)
    kept = kept and set(first.skipped) <= set(best.skipped) and first.finished <= best.finished
    return kept and (first.ask is not None or len(best.performed) >= len(first.performed))
