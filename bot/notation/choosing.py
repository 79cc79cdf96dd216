"""Which exercise sets belong to, where a name fits several, or the one that they seem to be of does not fit them."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.answer import AskKind
from bot.notation.atoms import Amount, Atom, Counts, Join
from bot.notation.binding import Bound
from bot.notation.context import Context
from bot.notation.draft import Draft
from bot.notation.names import is_misspelt, looser_fits, session_index
from bot.notation.ranking import Ranked
from bot.notation.said import Doubt
from bot.notation.segments import Segment
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.tokens import Mark
from bot.training.plan import Measure
from bot.training.report import Performed, Stage

MOST_ELSEWHERE = 12
"""A report of more numbers is not tried on exercises that it does not name."""


@dataclass(frozen=True, slots=True)
class Fit:
    """An exercise for the sets of a segment: its place, the name that says it, and how they read beside its plan."""

    place: int
    context: Context
    ranked: Ranked
    name: Mark | None


def keep_one_of(draft: Draft, name: Mark, atoms: Sequence[Atom]) -> None:
    """A name that fits several: the one that is open and fits the load, else a question."""
    ranks = [(p, draft.rank(atoms, draft.record.context(p))) for p in _so_measured(draft, name, atoms)]
    usable = [(p, r) for p, r in ranks if r.doubt is None and r.bound.told]
    fits = [(p, r) for p, r in usable if draft.record.context(p).open_sets]
    if len(fits) > 1:
        fits = [(p, r) for p, r in fits if _fits_load(r.bound, draft.record.context(p))]
    if len(fits) > 1 and is_misspelt(name.text.split(), session_index(draft.request.exercises)):
        fits = [(p, r) for p, r in fits if _is_exact(r.bound, draft.record.context(p))] or fits
    if len({draft.request.exercises[p].measure for p, _ in fits}) > 1:
        fits = [(p, r) for p, r in fits if _are_asked(r.bound, draft.record.context(p))] or fits
    turned = any(
        r.doubt is not None and r.doubt.kind is AskKind.ORDER and draft.record.context(p).open_sets for p, r in ranks
    )  # `curls 12 11`: of one exercise they may be a load and its repetitions
    if len(fits) == 1 and not turned:
        draft.keep(fits[0][1].bound, fits[0][0], name)
        return
    chosen = draft.doubt(Doubt(AskKind.WHICH_EXERCISE, name.start, name.end), len(usable))
    if chosen is not None:
        draft.keep(usable[chosen][1].bound, usable[chosen][0], name)


def _so_measured(draft: Draft, name: Mark, atoms: Sequence[Atom]) -> Sequence[int]:
    """The exercises of a name measured as the sets are told (`sandbag 40 m`: its carry); all, where none is."""
    said = {_COUNTED[a.counts] for a in atoms if isinstance(a, Amount) and a.counts in _COUNTED}
    fits = [p for p in name.names if draft.request.exercises[p].measure in said]
    return fits or name.names


_LEAST, _MOST = Decimal("0.6"), Decimal("1.6")
"""Of the planned load, what is far from it."""


def _fits_load(bound: Bound, context: Context) -> bool:
    """Whether the loads are near those of the plan, where it has any: 26 kg are no row under the bar on body weight."""
    for row in bound.performed:
        planned = context.planned_load(row.set)
        if row.stage is not Stage.WORK or row.load is None or planned is None:
            continue
        least, most = sorted((planned.kg * _LEAST, planned.kg * _MOST))
        if not least <= row.load.kg <= most:
            return False
    return True


def _is_exact(bound: Bound, context: Context) -> bool:
    """Whether all work sets are as planned: `aductor 35 14` where the adductor machine has 35."""
    return all(row.stage is not Stage.WORK or _exact(row, context) for row in bound.performed)


def _are_asked(bound: Bound, context: Context) -> bool:
    """Whether all counts are those of the plan: 10 are repetitions of the squat, and no metres of a carry of 40."""
    return all(row.stage is not Stage.WORK or row.reps in context.range_of(row.set) for row in bound.performed)


_COUNTED = {
    Counts.METRES: Measure.METRES,
    Counts.M: Measure.METRES,
    Counts.SECONDS: Measure.SECONDS,
    Counts.REPS: Measure.REPS,
}
_MEASURED = {Counts.METRES: Measure.METRES, Counts.M: Measure.METRES, Counts.SECONDS: Measure.SECONDS}


def by_measure(draft: Draft, atoms: Sequence[Atom], place: int) -> int:
    """`40 metres with the 24s`: the one exercise that is so measured, where the one under way is not; else `place`."""
    amounts = [a for a in atoms if isinstance(a, Amount)]
    said = {_MEASURED[a.counts] for a in amounts if a.counts in _MEASURED}
    counted = any(a.join in (Join.X, Join.FOR) and a.counts not in _MEASURED for a in amounts)
    exercises = draft.request.exercises
    if len(said) != 1 or counted or exercises[place].measure in said:
        return place
    measured = [p for p, e in enumerate(exercises) if e.measure in said and draft.record.context(p).open_sets]
    return measured[0] if len(measured) == 1 else place


def better_fit(draft: Draft, segment: Segment, atoms: Sequence[Atom], *, place: int) -> Fit:
    """The exercise at `place`; or another, where that one does not fit and one other that may be meant does."""
    name = segment.name
    context = draft.record.context(place)
    ranked = draft.rank(atoms, context)
    first = Fit(place, context, ranked, name)
    mentioned = {p: mark for mark, p in draft.mentions if mark.start < atoms[0].start}
    if ranked.doubt is None and not (name is None and set(mentioned) - {place} and not draft.has_named):
        return first
    others: dict[int, Mark | None] = {}
    if name is not None and ranked.doubt is not None and ranked.doubt.kind is AskKind.OUT_OF_REASON:
        under = draft.under_way()
        if _stands_apart(segment) and under is not None:
            others = {under: None}
        else:
            others = dict.fromkeys(looser_fits(name.text.split(), session_index(draft.request.exercises)), name)
    elif name is None and len(mentioned) == 1 and not draft.has_named:
        others = dict(mentioned)
    found = [
        fit
        for other, named in others.items()
        if other != place and (fit := _other_fit(draft, atoms, other, named)) is not None
        if ranked.doubt is not None or not any(_exact(p, context) for p in ranked.bound.performed)
    ]
    return found[0] if len(found) == 1 else first


def _other_fit(draft: Draft, atoms: Sequence[Atom], place: int, name: Mark | None) -> Fit | None:
    """An exercise with sets left that the sets meet without a doubt."""
    context = draft.record.context(place)
    ranked = draft.rank(atoms, context)
    if not context.open_sets or ranked.doubt is not None:
        return None
    met = any(_meets(p, context) for p in ranked.bound.performed)
    return Fit(place, context, ranked, name) if met else None


def elsewhere(draft: Draft, atoms: Sequence[Atom], place: int, ranked: Ranked) -> list[tuple[int, Bound]]:
    """Other open exercises whose plan a set without a name meets exactly, where the one under way is not met."""
    context = draft.record.context(place)
    if sum(isinstance(a, Amount) for a in atoms) > MOST_ELSEWHERE:
        return []
    if ranked.doubt is None and any(_meets(p, context) for p in ranked.bound.performed):
        return []
    found: list[tuple[int, Bound]] = []
    for other in range(len(draft.request.exercises)):
        beside = draft.record.context(other)
        if other == place or not beside.open_sets:
            continue
        theirs = draft.rank(atoms, beside)
        rows = theirs.bound.performed
        said_load = any(s.load is not None for s in theirs.bound.said)
        if theirs.doubt is None and rows and said_load and all(_exact(p, beside) for p in rows):
            found.append((other, theirs.bound))
    if found and ranked.doubt is None:
        found.insert(0, (place, ranked.bound))
    return found


def _stands_apart(segment: Segment) -> bool:
    """Whether a comma or more stands between a name and its first number."""
    for mark in segment.marks:
        if mark.kind in NUMBERS:
            return False
        if mark.kind in EDGES:
            return True
    return False


def _meets(row: Performed, context: Context) -> bool:
    """Whether a set is what the plan, or the set before, would have it: the load or the repetitions."""
    planned = context.planned_load(row.set)
    near = row.load is None or planned is None or (row.load.kg == planned.kg)
    last = context.worked[-1].load if context.worked else None
    near = near or (last is not None and row.load is not None and last.kg == row.load.kg)
    return near or row.reps in context.range_of(row.set) or row.stage is not Stage.WORK


def _exact(row: Performed, context: Context) -> bool:
    """Whether a set is exactly as planned."""
    planned = context.planned_load(row.set)
    return (
        row.stage is Stage.WORK
        and planned is not None
        and planned.thousandths != 0
        and row.load is not None
        and row.load.kg == planned.kg
        and row.reps in context.range_of(row.set)
    )
