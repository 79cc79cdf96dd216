"""A coach's standing swap: another exercise in place of one of the programme's, in every session to come.

A coach's preferences are what stands in an exercise's place with any of their clients, the most frequent first
(`storage.orders.preferred_by`): nobody keeps a list of them, and what is taken back is none any more.
"""

from dataclasses import replace

from bot.dialogue.buttons import Press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped
from bot.dialogue.lifts import exercise_named, exercise_page, exercises_of, original_of, press_for
from bot.dialogue.offering import asked_for, choice_line, read_choice, show_choice
from bot.dialogue.ordering import to_client, with_order
from bot.dialogue.turn import Turn
from bot.saying import Button, Rows, Say, Toast, line
from bot.training.calendar import local_day
from bot.training.facts import ExerciseSwapped
from bot.training.orders import ordered
from bot.training.plan import PlannedExercise
from bot.training.swap import Swap, SwapAsked, swaps
from bot.training.swap_start import Start


def other(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """`Another exercise…`: three that may take its place, and the programme's own where it was swapped before."""
    about = coach.about
    exercise = exercise_named(about, desk, press) if about is not None else None
    if about is None or exercise is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query), _page(desk, coach, about, exercise)))


def chosen(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """It stands in every session that is planned from now on; the client is told."""
    about = coach.about
    exercise, one = (exercise_named(about, desk, press), read_choice(press, 2)) if about is not None else (None, None)
    if about is None or exercise is None or one is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    swap = next((s for s in swaps(_asked(desk, about, exercise, (one.name,))) if s.exercise == one), None)
    if swap is None:
        return Turn(says=(Toast(tap.query, line("toast-read-anew")), _page(desk, coach, about, exercise)))
    order = ExerciseSwapped(about.profile.id, original_of(about, exercise), _standing(swap))
    told = line("swap-order-told", coach=coach.profile.name, exercise=exercise.name, into=swap.planned.name)
    page = exercise_page(desk, coach, with_order(desk, about, order), swap.planned)
    toast = Toast(tap.query, line("toast-swapped", into=swap.planned.name))
    return Turn((order,), (toast, to_client(coach, about, told), page))


def back(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The programme's own exercise again."""
    about = coach.about
    exercise = exercise_named(about, desk, press) if about is not None else None
    original = "" if about is None or exercise is None else original_of(about, exercise)
    if about is None or exercise is None or original == exercise.name:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    order = ExerciseSwapped(about.profile.id, original, None)
    after = with_order(desk, about, order)
    told = line("swap-order-back-told", coach=coach.profile.name, exercise=original, into=exercise.name)
    own = next(e for e in exercises_of(after, desk) if e.name == original)
    toast = Toast(tap.query, line("toast-swapped", into=original))
    return Turn((order,), (toast, to_client(coach, about, told), exercise_page(desk, coach, after, own)))


def _page(desk: Desk, coach: CoachDesk, about: ClientDesk, exercise: PlannedExercise) -> Say:
    asked = _asked(desk, about, exercise)
    found, original = swaps(asked), original_of(about, exercise)
    name, me = about.profile.name, coach.profile
    key = "swap-order-title" if found else "swap-order-none"
    lines = [line(key, exercise=exercise.name, name=name)]
    lines += [choice_line(swap, me.name) for swap in found]
    if asked.spared:
        lines.append(line("swap-spares"))
    picks = [
        Button(
            line("swap-pick", exercise=s.planned.name),
            press_for("c.swapin", about, desk, exercise, show_choice(s.exercise)),
        )
        for s in found
    ]
    if original != exercise.name:
        picks.append(Button(line("swap-order-own", exercise=original), press_for("c.unswap", about, desk, exercise)))
    back_ = Button(line("back-lift", exercise=exercise.name), press_for("c.lift1", about, desk, exercise))
    rows: Rows = (*((pick,) for pick in picks), (back_,))
    return Say(me.chat, tuple(lines), rows, slot=DESK, about=about.profile.id)


def _asked(desk: Desk, about: ClientDesk, exercise: PlannedExercise, wanted: tuple[str, ...] = ()) -> SwapAsked:
    """What may take the place of the programme's own, beside the others of every workout that has it."""
    day = local_day(desk.now, about.profile.zone)
    workouts = about.programme.workouts if about.programme else ()
    planned = [ordered(w, replace(about.orders, light=()), day=day).exercises for w in workouts]
    beside = tuple(e for exercises in planned if exercise.name in {x.name for x in exercises} for e in exercises)
    own = next((e for w in workouts for e in w.exercises if e.name == original_of(about, exercise)), exercise)
    return asked_for(about, own, beside or exercises_of(about, desk), day, wanted=wanted)


def _standing(swap: Swap) -> PlannedExercise:
    """As it stands in the programme: its loads follow from the sets, but for the body alone."""
    if swap.start is Start.BODY:
        return swap.planned
    return replace(swap.planned, sets=tuple(replace(s, load=None) for s in swap.planned.sets), warmup=())
