"""Another exercise in place of a planned one: the three nearest that can be done here and spare what hurts.

Pure and deterministic. Nothing is suggested that the equipment can't do, that loads a spared joint, that is on hold or
that stands in the session already. The coach's own preferences come first, in their order.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date

from bot.training.assemble import fresh_state, next_for, with_loads
from bot.training.catalogue import Catalogue, catalogue
from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_session import with_known_aliases
from bot.training.catalogue_terms import Joint
from bot.training.plan import Guess, PlannedExercise, PlannedSession
from bot.training.progress import NextLoads
from bot.training.strength import State
from bot.training.swap_fit import fitted, lowest_reps
from bot.training.swap_hand import AtHand
from bot.training.swap_rank import Sought, distance, is_like
from bot.training.swap_start import Beginning, Record, Start, as_guess, beginning
from bot.training.timing import session_minutes
from bot.training.units import Load

MOST = 3
"""Swaps that are offered at once."""


@dataclass(frozen=True, slots=True)
class SwapAsked:
    """What a swap is chosen from.

    `planned` is to be replaced in `session` (all exercises of it, `planned` with them). `spared` are the joints that
    hurt or are held, `on_hold` the names of exercises that are. `preferred` are the coach's, the first first.
    `strengths` are the client's, by the name in their plans.
    """

    planned: PlannedExercise
    at_hand: AtHand
    day: date
    session: tuple[PlannedExercise, ...] = ()
    spared: frozenset[Joint] = frozenset()
    on_hold: frozenset[str] = frozenset()
    preferred: tuple[str, ...] = ()
    strengths: Mapping[str, State] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Swap:
    """An exercise that may take the place: as it would stand in the plan, and where its load comes from.

    `state` is what the loads were chosen from (kept until the first session on it makes a better one); `like` names the
    lift that says where to begin (empty for none), `preferred` the coach's own choice.
    """

    exercise: Exercise
    planned: PlannedExercise
    start: Start
    coming: NextLoads
    state: State
    like: str = ""
    preferred: bool = False

    @property
    def begin_near(self) -> Load | None:
        """The load near which to begin to look; `None` where it is known, or nothing is."""
        return self.coming.reason.next if self.start is Start.LIKE else None


def swaps(asked: SwapAsked, known: Catalogue | None = None) -> tuple[Swap, ...]:
    """Up to three exercises that may take the place, the best first; none where nothing fits.

    `known` is the catalogue with the coach's own exercises laid over it; the catalogue as it comes where left out.
    """
    every = known or catalogue()
    record = Record.of(asked.strengths, asked.day, every)
    tracked = {lift.means.name for lift in record.lifts}
    sought = Sought.of(asked.planned, every)
    possible = _possible(asked, every)
    chosen = _preferred(asked, every, possible)
    near = sorted(
        (one for one in possible if is_like(sought, one) and one not in chosen),
        key=lambda one: (*distance(sought, one, is_known=one.name in tracked), one.name),
    )
    return tuple(
        _swap(asked, sought, one, record, preferred=place < len(chosen))
        for place, one in enumerate((*chosen, *near)[:MOST])
    )


def put_in(plan: PlannedSession, old: str, new: PlannedExercise, *, kept_sets: int = 0) -> PlannedSession:
    """The session with the new exercise where the old one stood, its minutes counted again.

    `kept_sets` of the old one are done already: it stays with them, and the new one follows with as many fewer (one at
    least). `KeyError` where the session has no such exercise.
    """
    before = plan.exercise(old)
    shorter = replace(new, sets=new.sets[min(kept_sets, len(new.sets) - 1) :])
    standing = (replace(before, sets=before.sets[:kept_sets], pair=""),) if kept_sets else ()
    exercises = tuple(e for one in plan.exercises for e in ((*standing, shorter) if one is before else (one,)))
    return replace(plan, exercises=exercises, minutes=session_minutes(exercises))


def _possible(asked: SwapAsked, known: Catalogue) -> tuple[Exercise, ...]:
    """What can be done here and spares what hurts, is not on hold and not in the session."""
    names = (asked.planned.name, *(e.name for e in asked.session), *sorted(asked.on_hold))
    found = [known.find(name) for name in names]
    out = {one.name for one in found if one is not None}
    return tuple(
        one
        for one in known.exercises
        if one.name not in out and not asked.spared.intersection(one.joints) and asked.at_hand.has(one)
    )


def _preferred(asked: SwapAsked, known: Catalogue, possible: tuple[Exercise, ...]) -> tuple[Exercise, ...]:
    wanted = (known.find(name) for name in asked.preferred)
    return tuple(dict.fromkeys(one for one in wanted if one is not None and one in possible))


def _swap(asked: SwapAsked, sought: Sought, one: Exercise, record: Record, *, preferred: bool) -> Swap:
    begun = beginning(one, record, instead_of=asked.planned.name)
    gym = asked.at_hand.gym
    alone = Load.of(0, gym.unit) if begun.start is Start.BODY else None
    lowest = lowest_reps(
        asked.planned,
        same_movement=one.pattern is sought.pattern,
        unloaded=begun.start in (Start.BODY, Start.NOTHING),
    )
    bare = fitted(asked.planned, one, lowest=lowest, name=begun.name, load=alone)
    bare = replace(bare, guess=_guess(begun))
    state = begun.state if begun.start is Start.KNOWN else fresh_state(bare)
    coming = next_for(bare, gym, state, held=bool(asked.spared), day=asked.day)
    loaded = with_loads(bare, gym, coming)
    if alone is not None:
        loaded = replace(loaded, sets=tuple(replace(s, load=alone) for s in loaded.sets))
    if begun.start is Start.LIKE and coming.reason.next is None:
        begun = replace(begun, start=Start.FIND, like="")  # the lightest that there is may be too much already
    return Swap(one, _called(asked, one, loaded, begun), begun.start, coming, state, begun.like, preferred)


def _guess(begun: Beginning) -> Guess | None:
    """What a lift like it suggests, as it stands in the plan: so the loads follow from the plan alone."""
    like = begun.state.guess
    if begun.start is not Start.LIKE or like is None:
        return None
    return as_guess(like)


def _called(asked: SwapAsked, one: Exercise, planned: PlannedExercise, begun: Beginning) -> PlannedExercise:
    """With the names that it is listened for by, beside the others of the session."""
    own = () if catalogue().find(one.name) == one else tuple(a for a in one.aliases if a != begun.name)
    others = tuple(e for e in asked.session if e.name != asked.planned.name)
    return with_known_aliases((*others, replace(planned, aliases=own)))[-1]
