"""Where to begin on an exercise that takes another's place: what is known of it or of a lift like it, else a search."""

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import StrEnum
from math import hypot, log

from bot.training.catalogue import Catalogue, catalogue
from bot.training.catalogue_exercise import Exercise
from bot.training.plan import Guess, LoadStyle, Measure, PlannedExercise
from bot.training.strength import Estimate, State, begin, estimate

SPREAD_ALIKE, SPREAD_APART = 0.18, 0.28
"""How far people's shares of one lift to another spread, as a standard deviation, where both go by the same equipment
and where not (stacks and levers differ from maker to maker). Ours, no source; single studies of one pair have standard
errors of about 10 to 20 % (Ebben et al. 2008, J Strength Cond Res 22:1947-1949: 9.6 to 12.6 kg). The first try is
begun a standard deviation below the guess (`bot.training.progress`)."""


class Start(StrEnum):
    """What the first load comes from."""

    KNOWN = "known"
    """The client's own tracked strength on it."""
    LIKE = "like"
    """A lift like it says near which load to begin to look."""
    BODY = "body"
    """The body alone."""
    FIND = "find"
    """Nothing is known: a load has to be found."""
    NOTHING = "nothing"
    """There is nothing to load."""


@dataclass(frozen=True, slots=True)
class Beginning:
    """Where to begin. `name` is what the client's record calls the exercise; `like` the lift a guess comes from."""

    start: Start
    state: State
    name: str
    like: str = ""


@dataclass(frozen=True, slots=True)
class Lift:
    """A tracked strength, by the name in the client's plans, and the exercise that the name means."""

    name: str
    means: Exercise
    state: State


@dataclass(frozen=True, slots=True)
class Record:
    """The client's tracked strengths on exercises that are known, and the day."""

    lifts: tuple[Lift, ...]
    day: date

    @classmethod
    def of(cls, strengths: Mapping[str, State], day: date, known: Catalogue) -> "Record":
        """Those that were loaded, as the exercise that they are now (a state of another load style says nothing)."""
        found = ((name, known.find(name), state) for name, state in sorted(strengths.items()))
        lifts = (Lift(name, means, state) for name, means, state in found if means is not None)
        return cls(tuple(x for x in lifts if _is_tracked(x.state) and x.state.load_style is x.means.load_style), day)

    def on(self, one: Exercise) -> Lift | None:
        """The tracked strength on it; `None` where it was never loaded. Of two names for it the one used most."""
        found = [lift for lift in self.lifts if lift.means == one]
        return max(found, key=lambda lift: (lift.name == one.name, lift.state.exposures), default=None)

    def like(self, one: Exercise, first: str) -> tuple[str, Estimate] | None:
        """The strength that a lift like it suggests; the lift called `first` goes before all others."""
        if one.share is None or one.measure is not Measure.REPS:
            return None
        best: tuple[tuple[bool, bool, float], str, Estimate] | None = None
        for lift in self.lifts:
            other = lift.means
            if other.share is None or other.pattern is not one.pattern or other.measure is not Measure.REPS:
                continue
            there = estimate(lift.state, self.day)
            if other == one or there is None or there.mean_kg <= 0:
                continue
            alike = other.loads == one.loads
            order = (lift.name != first, not alike, round(abs(log(one.share / other.share)), 6))
            if best is None or order < best[0]:
                best = order, lift.name, _carried(there, one.share / other.share, alike=alike)
        return None if best is None else best[1:]


def guess_for(exercise: PlannedExercise, strengths: Mapping[str, State], day: date) -> Guess | None:
    """Where to begin on an exercise that the client never did, from a lift like it; `None` where none says anything."""
    one = catalogue().find(exercise.name)
    near = None if one is None else Record.of(strengths, day, catalogue()).like(one, "")
    return None if near is None else as_guess(near[1])


def as_guess(like: Estimate) -> Guess:
    """What a lift suggests, as it stands in a plan: so the loads follow from the plan alone."""
    return Guess(*(Decimal(repr(round(kg, 3))) for kg in (like.mean_kg, like.sd_kg)))


def beginning(one: Exercise, record: Record, *, instead_of: str) -> Beginning:
    """Where the client begins on it."""
    fresh = begin(region=one.region, load_style=one.load_style)
    if one.load_style is LoadStyle.NONE:
        return Beginning(Start.NOTHING, fresh, one.name)
    tracked = record.on(one)
    if tracked is not None:
        return Beginning(Start.KNOWN, tracked.state, tracked.name)
    near = record.like(one, instead_of)
    if near is not None:
        like, guess = near
        return Beginning(Start.LIKE, begin(region=one.region, load_style=one.load_style, like=guess), one.name, like)
    alone = one.load_style is LoadStyle.BODYWEIGHT and not one.demanding
    return Beginning(Start.BODY if alone else Start.FIND, fresh, one.name)


def _carried(there: Estimate, ratio: float, *, alike: bool) -> Estimate:
    mean = there.mean_kg * ratio
    spread = hypot(there.sd_kg / there.mean_kg, SPREAD_ALIKE if alike else SPREAD_APART)
    return Estimate(mean, mean * spread)


def _is_tracked(state: State) -> bool:
    return state.belief is not None or any(e.heaviest_kg is not None for e in state.last)
