"""What may take the place of an exercise, in words: three lines, each with where to begin; for client and coach alike.

A button names an exercise of the catalogue by its place there, with a check of its name.
"""

from datetime import date
from itertools import groupby

from bot.dialogue.buttons import Press, check_of
from bot.dialogue.desk import ClientDesk
from bot.dialogue.phrases import count_line, joined, load_line
from bot.saying import Line, line
from bot.training.catalogue import catalogue
from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_places import joints_hurt
from bot.training.catalogue_terms import Equipment, Joint
from bot.training.pain import PainSaid
from bot.training.plan import PlannedExercise, PlannedSet
from bot.training.strength import State
from bot.training.swap import Swap, SwapAsked
from bot.training.swap_hand import AtHand
from bot.training.swap_start import Start

NOTHING_MISSING: frozenset[Equipment] = frozenset()


def asked_for(
    client: ClientDesk,
    exercise: PlannedExercise,
    session: tuple[PlannedExercise, ...],
    day: date,
    *,
    missing: frozenset[Equipment] = NOTHING_MISSING,
    wanted: tuple[str, ...] = (),
    also: PainSaid | None = None,
) -> SwapAsked:
    """The question to `training.swap`: what hurts is spared, `wanted` goes before the coach's own choices."""
    chosen = tuple(into for name, into in client.preferred if name == exercise.name)
    return SwapAsked(
        planned=exercise,
        at_hand=AtHand(client.profile.gym, missing),
        day=day,
        session=session,
        spared=spared(client, exercise, also),
        on_hold=frozenset(name for name, _ in client.held),
        preferred=(*wanted, *chosen),
        strengths={row.exercise: State.from_json(row.after) for row in client.strengths},
    )


def spared(client: ClientDesk, exercise: PlannedExercise, also: PainSaid | None = None) -> frozenset[Joint]:
    """The joints that hurt: of all pain that is not settled, and of what was said just now during this exercise."""
    said = [(pain.said, pain.exercise) for pain in client.pains]
    said += [(also, exercise.name)] if also is not None else []
    return frozenset(
        j for pain, name in said for j in joints_hurt(pain.where, catalogue().find(name) if name else None)
    )


def choice_line(swap: Swap, coach: str) -> Line:
    """The exercise, its sets, and where to begin."""
    shown = line("swap-choice", exercise=swap.planned.name, sets=_sets_line(swap.planned), begin=_begin(swap))
    return line("swap-preferred", choice=shown, coach=coach) if swap.preferred else shown


def _sets_line(planned: PlannedExercise) -> Line:
    """`2 × 8–10, then 12–15 at 20 kg`: sets alike once, with their number."""
    alike = [list(group) for _, group in groupby(planned.sets, key=lambda s: (s.reps, s.load))]
    return joined([line("swap-sets", count=len(group), each=_each(planned, group[0])) for group in alike], "sets-then")


def _each(planned: PlannedExercise, first: PlannedSet) -> Line:
    reps = count_line(planned, first.reps)
    is_loaded = first.load is not None and first.load.thousandths != 0
    return line("planned-load", count=reps, load=load_line(planned, first.load)) if is_loaded and first.load else reps


def _begin(swap: Swap) -> Line:
    match swap.start:
        case Start.KNOWN if swap.planned.sets[0].load is not None:
            return line("swap-begin-known")
        case Start.LIKE if swap.begin_near is not None:
            return line("swap-begin-near", load=load_line(swap.planned, swap.begin_near), like=swap.like)
        case Start.BODY:
            return line("swap-begin-body")
        case Start.NOTHING:
            return line("swap-begin-nothing")
        case Start.KNOWN | Start.LIKE | Start.FIND:
            return line("swap-begin-find")


def show_choice(one: Exercise) -> str:
    """The argument of a button that means an exercise of the catalogue."""
    return f"{catalogue().exercises.index(one)}.{check_of(one.name)}"


def read_choice(press: Press, at: int) -> Exercise | None:
    """The exercise that a button means; `None` where the catalogue is another by now, or the data were forged."""
    place, _, check = (press.args[at] if at < len(press.args) else "").partition(".")
    number, every = Press("", "", (place,)).number(0), catalogue().exercises
    if number is None or not 0 <= number < len(every) or check_of(every[number].name) != check:
        return None
    return every[number]
