"""From the options chosen to the shortened plan, and to what was traded for it."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from decimal import Decimal

from bot.training.plan import PlannedExercise, PlannedSession
from bot.training.replanned import Trade, Trading
from bot.training.session import Session
from bot.training.shorten_options import Choice, Option, as_pair
from bot.training.shorten_values import OPTIONAL, Rest, Shortened
from bot.training.timing import session_minutes
from bot.training.volume import planned_sets


def told(session: Session, remaining: Sequence[Rest], chosen: Sequence[Option], *, general_s: int) -> Shortened:
    """The plan that the options make, and what they cost. An exercise without an option is left out."""
    choices = {choice.rest.place: choice for option in chosen for choice in option.choices}
    choices |= {rest.place: _left_out(rest) for rest in remaining if rest.place not in choices}
    ahead = {place: choice.exercise for place, choice in choices.items()}
    for n, option in enumerate((option for option in chosen if option.paired), start=1):
        one, other = (choice.exercise for choice in option.choices)
        ahead |= dict(zip(option.places, as_pair(one, other, _pair_name(session, n)), strict=True))
    before = planned_sets(rest.exercise for rest in remaining)
    after = planned_sets(ahead.values())
    gone = {muscle: sets - after.get(muscle, Decimal(0)) for muscle, sets in before.items()}
    plan = _plan(session, choices, ahead, chosen)
    seconds = sum(option.seconds for option in chosen) + (general_s if any(e.sets for e in ahead.values()) else 0)
    trades = _trades([choices[place] for place in sorted(choices)], chosen)
    return Shortened(plan, seconds, True, trades, {muscle: sets for muscle, sets in gone.items() if sets})


def _plan(
    session: Session, choices: dict[int, Choice], ahead: dict[int, PlannedExercise], chosen: Sequence[Option]
) -> PlannedSession:
    """The whole plan: what is behind us at its numbers, what stays after it; a new partner stands behind the first."""
    partner = {option.places[0]: option.places[1] for option in chosen if option.paired}
    order = []
    for place in range(len(session.plan.exercises)):
        if place not in partner.values():
            order += [place, partner[place]] if place in partner else [place]
    exercises = []
    for place in order:
        planned = session.plan.exercises[place]
        if place in choices:
            behind = planned.sets[: choices[place].rest.behind]
            planned = replace(planned, sets=(*behind, *ahead[place].sets), pair=ahead[place].pair)
        if planned.sets:
            exercises.append(planned)
    return replace(session.plan, exercises=tuple(exercises), minutes=session_minutes(tuple(exercises)))


def _trades(choices: Sequence[Choice], chosen: Iterable[Option]) -> tuple[Trade, ...]:
    """What was given, in the order in which it goes, then in that of the plan."""
    top = min((choice.rest.exercise.priority for choice in choices), default=1)
    lost = [Trade(_kind(c, top), (c.rest.exercise.name,), c.lost) for c in choices if c.lost]
    turned = [Trade(Trading.TURNED, (c.rest.exercise.name,), 1) for c in choices if c.turned]
    pairs = [
        Trade(Trading.PAIRED, tuple(c.rest.exercise.name for c in option.choices), 0)
        for option in chosen
        if option.paired
    ]
    order = list(Trading)
    return tuple(sorted([*lost, *pairs, *turned], key=lambda trade: order.index(trade.kind)))


def _kind(choice: Choice, top: int) -> Trading:
    priority = choice.rest.exercise.priority
    if priority > top:
        return Trading.OPTIONAL if priority >= OPTIONAL else Trading.LOWER
    return Trading.TOP if choice.loses_top else Trading.SETS


def _left_out(rest: Rest) -> Choice:
    return Choice(rest, replace(rest.exercise, sets=()), len(rest.exercise.sets), False)


def _pair_name(session: Session, n: int) -> str:
    """A name that no pair of the plan has."""
    taken = {exercise.pair for exercise in session.plan.exercises}
    return next(name for k in range(n, n + len(taken) + 2) if (name := f"together {k}") not in taken)
