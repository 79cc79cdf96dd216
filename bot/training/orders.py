"""A coach's standing orders for one client, beside the programme: holds, loads, swaps, light weeks, how freely loads
may rise. Each order is a fact; what stands now is their fold, and decides how the next session is planned.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from decimal import Decimal
from typing import TypeVar

from bot.training.calendar import monday_of
from bot.training.facts import (
    AutonomySet,
    ExerciseHeld,
    ExerciseSwapped,
    HandoverAnswered,
    HandoverOffered,
    HoldLifted,
    LightWeekOrdered,
    LoadOrdered,
    LoadsApproved,
    NoteKept,
)
from bot.training.people import CoachId, WeekChange, Workout
from bot.training.plan import PlannedExercise, PlannedSet
from bot.training.units import Load
from bot.training.weeks import changed

USUAL_BOUND_PERCENT = 10
"""As `progress.USUAL_BOUND`."""
LOWEST_BOUND_PERCENT, HIGHEST_BOUND_PERCENT = 2, 20
"""The published range of a step is 2 to 10 % (Ratamess et al. 2009, Med Sci Sports Exerc 41:687-708); small loads on
coarse equipment may need more, and a coach may allow it."""
MOST_ORDERS = 60
"""Of a kind, for one client; the oldest give way. Ours, so that what stands can't grow without end."""
MOST_NOTES = 12
"""Shown beside a client; the record keeps all."""

Order = (
    ExerciseHeld
    | HoldLifted
    | LoadOrdered
    | LoadsApproved
    | LightWeekOrdered
    | ExerciseSwapped
    | AutonomySet
    | NoteKept
    | HandoverOffered
    | HandoverAnswered
)

T = TypeVar("T")

LIGHT = WeekChange(weeks=(), sets_percent=60, rir=Decimal(3))
"""A light week where the coach says no more: three sets in five, all ended with three in reserve. Sets and effort are
what coaches cut most (Bell et al. 2022, Front Sports Act Living 4:1073223); by how much has no agreed figure, so the
amounts are common practice, no source."""


@dataclass(frozen=True, slots=True)
class LoadOrder:
    """The coach's own load for an exercise, until a session after `since` has been reported of it."""

    exercise: str
    load: Load
    since: date


@dataclass(frozen=True, slots=True)
class Swap:
    """In place of `exercise` of the programme comes `into`, in every session."""

    exercise: str
    into: PlannedExercise


@dataclass(frozen=True, slots=True)
class Note:
    """What the coach noted, and on which day of the client's."""

    day: date
    words: str


@dataclass(frozen=True, slots=True)
class Offer:
    """A colleague to whom the client may go: their id, name and chat."""

    to: CoachId
    name: str
    chat: int


@dataclass(frozen=True, slots=True)
class Orders:
    """What stands now. `asks_first`: loads rise only after the coach approved what the last session suggests;
    `approved` are the sessions of which that was done; `light` the Mondays of light weeks; `offer` the colleague to
    whom the client is asked to go."""

    held: tuple[tuple[str, date], ...] = ()
    loads: tuple[LoadOrder, ...] = ()
    swaps: tuple[Swap, ...] = ()
    light: tuple[date, ...] = ()
    asks_first: bool = False
    bound_percent: int = USUAL_BOUND_PERCENT
    approved: tuple[str, ...] = ()
    notes: tuple[Note, ...] = ()
    offer: Offer | None = None

    @property
    def bound(self) -> Decimal:
        """The most that a load may rise in one step, as a share."""
        return Decimal(self.bound_percent) / 100

    def load_for(self, exercise: str, *, last_done: date | None) -> Load | None:
        """The coach's load for the next session of it; `None` where there is none, or it has had its session."""
        order = next((o for o in self.loads if o.exercise == exercise), None)
        if order is None or (last_done is not None and last_done > order.since):
            return None
        return order.load


NO_ORDERS = Orders()


def follow(orders: Orders, order: Order, *, today: date) -> Orders:
    """What stands after one more order; `today` is the client's day on which it was given."""
    match order:
        case ExerciseHeld(_, exercise):
            others = tuple(held for held in orders.held if held[0] != exercise)
            return replace(orders, held=_kept((*others, (exercise, today))))
        case HoldLifted(_, exercise):
            return replace(orders, held=tuple(held for held in orders.held if held[0] != exercise))
        case LoadOrdered(_, exercise, load):
            rest = tuple(o for o in orders.loads if o.exercise != exercise)
            return replace(orders, loads=rest if load is None else _kept((*rest, LoadOrder(exercise, load, today))))
        case LoadsApproved(_, session):
            return replace(orders, approved=_kept((*orders.approved, session)))
        case LightWeekOrdered(_, monday, on):
            weeks = tuple(m for m in orders.light if m != monday and m >= monday_of(today) - timedelta(weeks=8))
            return replace(orders, light=(*weeks, monday) if on else weeks)
        case ExerciseSwapped(_, exercise, into):
            swaps = tuple(s for s in orders.swaps if s.exercise != exercise)
            return replace(orders, swaps=swaps if into is None else _kept((*swaps, Swap(exercise, into))))
        case AutonomySet(_, asks_first, bound_percent):
            bounded = min(max(bound_percent, LOWEST_BOUND_PERCENT), HIGHEST_BOUND_PERCENT)
            return replace(orders, asks_first=asks_first, bound_percent=bounded)
        case HandoverOffered(_, to, to_name, to_chat):
            return replace(orders, offer=Offer(to, to_name, to_chat))
        case HandoverAnswered(_, _, yes):
            # What a coach noted for themselves, and asked for, doesn't go along.
            stays = replace(orders, offer=None)
            return replace(stays, notes=(), asks_first=False, approved=()) if yes else stays
        case NoteKept(_, words):
            return replace(orders, notes=(*orders.notes, Note(today, words))[-MOST_NOTES:])


def ordered(workout: Workout, orders: Orders, *, day: date) -> Workout:
    """The workout of this day with the coach's swaps, and lighter in a light week."""
    into = {swap.exercise: swap.into for swap in orders.swaps}
    exercises = tuple(_swapped(exercise, into) for exercise in workout.exercises)
    if monday_of(day) in orders.light:
        exercises = tuple(changed(exercise, LIGHT) for exercise in exercises)
    return replace(workout, exercises=exercises)


def _swapped(exercise: PlannedExercise, into: Mapping[str, PlannedExercise]) -> PlannedExercise:
    """The other exercise in its place: as many sets as this week has, with its share of the load and its effort."""
    new = into.get(exercise.name)
    if new is None:
        return exercise
    sets = tuple(_set(new, n, planned) for n, planned in enumerate(exercise.sets))
    percent = exercise.load_percent
    return replace(new, sets=sets, pair=exercise.pair, priority=exercise.priority, load_percent=percent)


def _set(new: PlannedExercise, place: int, planned: PlannedSet) -> PlannedSet:
    own = new.sets[min(place, len(new.sets) - 1)]
    return own if own.rir is None or planned.rir is None else replace(own, rir=planned.rir)


def _kept(orders: tuple[T, ...]) -> tuple[T, ...]:
    return orders[-MOST_ORDERS:]
