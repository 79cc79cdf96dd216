"""The readings of a stretch beside the plan: one that stands clear is taken, else the honest ones are the choices."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import AskKind, Span
from bot.notation.atoms import Amount, Atom, Join
from bot.notation.binding import Bound, bind
from bot.notation.context import Context
from bot.notation.roles import Roles
from bot.notation.roles.costs import MARGIN
from bot.notation.said import Doubt
from bot.training.report import Performed, Stage
from bot.training.units import Unit

CHOICES = 3
"""Readings offered at most."""
UNLIKELY = 8.0
"""How much more than the best reading has against it one may have that is offered."""
FAR = 3.0
"""A reading with as much against it is asked about, though none is better: `7x5` on a plan of 70 for 5."""


@dataclass(frozen=True, slots=True)
class Ranked:
    """The reading that stands clear, or why there is none and which readings are honest."""

    bound: Bound
    doubt: Doubt | None = None
    honest: tuple[Bound, ...] = ()
    cost: float = 0.0
    sets_only: int | None = None


def rank(atoms: Sequence[Atom], context: Context, unit: Unit, unit_at: Span | None = None) -> Ranked:
    """The likeliest reading of atoms for one exercise; a doubt where two are too close or the best is out of reason."""
    candidates = Roles(context, unit, unit_at).read(atoms)
    if not candidates:
        return Ranked(Bound((), ()))
    best, others = candidates[0], candidates[1:]
    first = bind(best, context)
    near = [bind(c, context) for c in others if c.cost < best.cost + MARGIN]
    kept = _stored(first) if near else None
    rivals = [bound for bound in near if not bound.doubts and _stored(bound) != kept]
    if rivals and _is_listed_behind(atoms) and _is_the_plan(first, context):
        rivals = [bound for bound in rivals if not _goes_beyond(bound, context)]
    if rivals and _is_the_plan(first, context, whole=False):
        rivals = [bound for bound in rivals if not _turns_round(bound, first, context)]
    honest: list[Bound] = []
    for bound in ([first] if not first.doubts else []) + rivals:
        if all(_stored(bound) != _stored(other) for other in honest):
            honest.append(bound)
    if first.doubts:
        likely = [*near, *(bind(c, context) for c in others[len(near) :] if c.cost <= best.cost + UNLIKELY)]
        alone = _load_alone(first, likely, context)
        if alone is not None:
            return Ranked(alone, alone.doubts[0], (), best.cost)
        clear = [b for b in near if not b.doubts]
        spare = [b for b in likely if not b.doubts]
        return Ranked(first, first.doubts[0], tuple((clear or spare)[:CHOICES]), best.cost)
    if len(rivals) == 1 and not first.performed and not context.takes_load and len(rivals[0].performed) > 1:
        return Ranked(rivals[0], cost=best.cost)  # `ab wheel 12s across`: no load, where none is held
    if rivals:
        start = min(s.start for s in first.said) if first.said else 0
        end = max(s.end for s in first.said) if first.said else 0
        return Ranked(first, Doubt(AskKind.ORDER, start, end), tuple(honest[:CHOICES]), best.cost)
    if best.cost >= FAR and first.said:
        far = Doubt(AskKind.OUT_OF_REASON, min(s.start for s in first.said), max(s.end for s in first.said))
        return Ranked(first, far, (first,), best.cost)
    return Ranked(first, cost=best.cost, sets_only=best.sets_only)


def _is_listed_behind(atoms: Sequence[Atom]) -> bool:
    """Whether an `and` joins the last two numbers and not the first, as in `12 10 and 11`: the first is apart."""
    joins = [a.join for a in atoms if isinstance(a, Amount)]
    return len(joins) > _APART and joins[-1] is Join.AND and all(join is not Join.AND for join in joins[:-1])


_APART = 2
"""Numbers that a list and what stands apart from it are more than."""


def _is_the_plan(bound: Bound, context: Context, *, whole: bool = True) -> bool:
    """Whether a reading is every open set as planned: with its load, and repetitions inside its range.

    `whole`: no set is left; else those that are left may be planned with another load. Not where the load is each
    number of repetitions too: `15 15 15` says not which is which.
    """
    if all(p.load is not None and p.load.amount == p.reps for p in bound.performed):
        return False
    numbers = tuple(p.set for p in bound.performed)
    left = context.open_sets[len(numbers) :] if bound.performed else ()
    others = not whole and all(context.planned_load(n) != bound.performed[-1].load for n in left)
    return (
        not bound.doubts
        and numbers == context.open_sets[: len(numbers)]
        and (not left or others)
        and all(
            p.stage is Stage.WORK
            and p.load == context.planned_load(p.set)
            and context.range_of(p.set).low <= p.reps <= context.range_of(p.set).high
            for p in bound.performed
        )
    )


def _turns_round(bound: Bound, first: Bound, context: Context) -> bool:
    """Whether a reading takes the sets of `80 3x4` for its repetitions, where the plan has three of 4, none of 3."""
    alike = {p.load for p in bound.performed} == {p.load for p in first.performed}
    same = sum(p.reps for p in bound.performed) == sum(p.reps for p in first.performed)
    told = {(p.load, p.reps) for p in first.performed}
    turned = [p for p in bound.performed if (p.load, p.reps) not in told]
    ranges = [context.range_of(n) for n in range(1, len(context.exercise.sets) + 1)]
    off = all(not any(r.low <= p.reps <= r.high for r in ranges) for p in turned)
    return alike and same and bool(turned) and off and len(bound.performed) != len(first.performed)


def _goes_beyond(bound: Bound, context: Context) -> bool:
    """Whether a reading has more sets than the plan: `step ups 12 10 and 11`, where two sets with 12 are planned."""
    return any((p.set or 0) > len(context.exercise.sets) for p in bound.performed)


def _load_alone(first: Bound, others: Sequence[Bound], context: Context) -> Bound | None:
    """`60`, where 60 is planned and sixty repetitions are out of reason: a load whose repetitions are not said."""
    if first.doubts[0].kind is not AskKind.OUT_OF_REASON or len(first.said) != 1 or first.said[0].load is not None:
        return None
    for bound in others:
        asks = bool(bound.doubts) and bound.doubts[0].kind is AskKind.RANGE and len(bound.performed) == 1
        if asks and bound.performed[0].load == context.planned_load(bound.performed[0].set):
            return bound
    return None


def _stored(bound: Bound) -> tuple[frozenset[tuple[Performed, int]], tuple[object, ...]]:
    counts: dict[Performed, int] = {}
    for row in bound.performed:
        counts[row] = counts.get(row, 0) + 1
    return frozenset(counts.items()), tuple(sorted(bound.replaces))
