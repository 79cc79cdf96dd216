"""What a client lifts, for the coach: every exercise of the programme with its estimate and what comes next; one of
them in full, with the whole behind its load, and the coach's hand on it."""

from collections.abc import Iterable
from dataclasses import replace
from decimal import Decimal

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped
from bot.dialogue.phrases import done_line, joined, load_line
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Line, Rows, Say, Toast, line
from bot.training.assemble import fresh_state, next_for
from bot.training.calendar import local_day
from bot.training.explain import Explained, explain
from bot.training.exposure import LiftedSet
from bot.training.gym import loadable
from bot.training.orders import ordered
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.progress import NextLoads
from bot.training.report import Performed
from bot.training.state import State
from bot.training.tracked import Weighed
from bot.training.units import Load, Unit

MOST_SHOWN = 24
"""Exercises with a button of their own."""


def exercises_of(about: ClientDesk, desk: Desk) -> tuple[PlannedExercise, ...]:
    """Those of the programme, as the coach's swaps make it, each once; of the session where there is no programme."""
    day = local_day(desk.now, about.profile.zone)
    workouts = about.programme.workouts if about.programme else ()
    planned = [e for w in workouts for e in ordered(w, replace(about.orders, light=()), day=day).exercises]
    if not planned and about.session is not None:
        planned = list(about.session.plan.exercises)
    first: dict[str, PlannedExercise] = {}
    for exercise in planned:
        first.setdefault(exercise.name, exercise)
    return tuple(first.values())


def exercise_named(about: ClientDesk, desk: Desk, press: Press, *, place: int = 0) -> PlannedExercise | None:
    """The exercise on a button: its place and the check of its name; `None` where the programme has changed since."""
    number, check = press.number(place), press.args[place + 1] if len(press.args) > place + 1 else ""
    exercises = exercises_of(about, desk)
    if number is None or not 0 <= number < len(exercises) or check_of(exercises[number].name) != check:
        return None
    return exercises[number]


def press_for(op: str, about: ClientDesk, desk: Desk, exercise: PlannedExercise, *more: str | int) -> str:
    """The data of a button about one exercise of this client."""
    place = next(n for n, e in enumerate(exercises_of(about, desk)) if e.name == exercise.name)
    return show_press(op, about.profile.id, place, check_of(exercise.name), *more)


def show_all(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Every exercise in a line; a button for each."""
    del press
    if coach.about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    return Turn(says=(Toast(tap.query), list_page(desk, coach, coach.about)))


def list_page(desk: Desk, coach: CoachDesk, about: ClientDesk) -> Say:
    """The list, in the place of the client's page."""
    exercises = exercises_of(about, desk)
    lines = [line("lifts-title", name=about.profile.name)]
    lines += [_entry(desk, about, e) for e in exercises] or [line("lifts-none")]
    buttons = [
        Button(line("lifts-open", exercise=e.name), press_for("c.lift1", about, desk, e))
        for e in exercises[:MOST_SHOWN]
    ]
    rows: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
    back = Button(line("back-client", name=about.profile.name), show_press("c.view", about.profile.id, "clients"))
    return Say(coach.profile.chat, tuple(lines), (*rows, (back,)), slot=DESK, about=about.profile.id)


def _entry(desk: Desk, about: ClientDesk, exercise: PlannedExercise) -> Line:
    state, coming = state_of(about, exercise), coming_for(desk, about, exercise)
    first = coming.sets[0] if coming.sets else None
    args: dict[str, Line | str | Load] = {"name": exercise.name}
    key = "lifts-entry"
    if state is None:
        return line(f"{key}-new", **args)
    if first is not None and first.load is not None:
        key, args["next"] = f"{key}-next", load_line(exercise, first.load)
    if coming.e1rm is not None and exercise.load_style is LoadStyle.TOTAL:
        key, args["best"] = f"{key}-max", _load(coming.e1rm.mean_kg, about.profile.unit)
    shown = line(key, **args)
    return line("lifts-entry-held", entry=shown) if _is_held(about, exercise) else shown


def show_one(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """One exercise in full."""
    about = coach.about
    exercise = exercise_named(about, desk, press) if about is not None else None
    if about is None or exercise is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    return Turn(says=(Toast(tap.query), exercise_page(desk, coach, about, exercise)))


def exercise_page(desk: Desk, coach: CoachDesk, about: ClientDesk, exercise: PlannedExercise) -> Say:
    """Estimate with its band, the last session, what comes next and why, the chances around it; the coach's hand."""
    unit = about.profile.unit
    state, coming = state_of(about, exercise), coming_for(desk, about, exercise)
    lines: list[Line] = [line("lift-title", exercise=exercise.name, name=about.profile.name)]
    if state is not None and state.last:
        last = state.last[-1]
        lines.append(line("lift-last", day=last.day, sets=_sets_line(exercise, last.sets, unit)))
    if state is not None:
        lines += _behind(explained(desk, about, exercise, state, coming), exercise, coming, unit)
    lines += [BLANK, *_next_lines(exercise, coming)]
    if (order := about.orders.load_for(exercise.name, last_done=None if state is None else state.day)) is not None:
        lines.append(line("lift-ordered", load=load_line(exercise, order)))
    if _is_held(about, exercise):
        lines.append(line("lift-held"))
    if (original := original_of(about, exercise)) != exercise.name:
        lines.append(line("lift-swapped", exercise=original))
    return Say(
        coach.profile.chat, tuple(lines), _hand(desk, about, exercise, coming), slot=DESK, about=about.profile.id
    )


def _next_lines(exercise: PlannedExercise, coming: NextLoads) -> list[Line]:
    reason = Line(coming.reason.key, tuple(coming.reason.args))
    first = coming.sets[0] if coming.sets else None
    if first is None or first.load is None:
        return [line("lift-next-none"), reason]
    span = str(first.reps.low) if first.reps.is_fixed else f"{first.reps.low}–{first.reps.high}"
    return [line("lift-next", load=load_line(exercise, first.load), reps=span), reason]


def _behind(found: Explained, exercise: PlannedExercise, coming: NextLoads, unit: Unit) -> list[Line]:
    lines: list[Line] = []
    chosen = coming.sets[0].load if coming.sets else None
    if found.estimate is not None and found.least_kg is not None and found.most_kg is not None:
        lines.append(
            line(
                "lift-estimate",
                mean=rounded(found.estimate.mean_kg, unit),
                least=rounded(found.least_kg, unit),
                most=rounded(found.most_kg, unit),
                unit=unit.value,
            )
        )
    lines += [_chance(exercise, w, is_chosen=w.load == chosen) for w in found.rows]
    if found.aside is not None:
        lines.append(
            line("lift-aside", day=found.aside.day, load=rounded(found.aside.load_kg, unit), reps=found.aside.reps)
        )
    return lines


def _chance(exercise: PlannedExercise, weighed: Weighed, *, is_chosen: bool) -> Line:
    chances = weighed.chances
    return line(
        "lift-chosen" if is_chosen else "lift-chance",
        load=load_line(exercise, weighed.load),
        lands=round(100 * chances.lands),
        over=round(100 * chances.over),
        easy=round(100 * chances.easy),
    )


def _hand(desk: Desk, about: ClientDesk, exercise: PlannedExercise, coming: NextLoads) -> Rows:
    """Lighter, heavier, another load; hold or lift; another exercise; back."""
    rows: list[tuple[Button, ...]] = []
    first = next((s.load for s in coming.sets if s.load is not None), None)
    if first is not None:
        below, above = around(about, exercise, first)
        rows.append(
            tuple(
                Button(
                    line("lift-set", load=load_line(exercise, load)),
                    press_for("c.load", about, desk, exercise, load.thousandths, load.unit.value),
                )
                for load in (below, first, above)
                if load is not None
            )
        )
    if exercise.load_style is not LoadStyle.NONE:
        rows.append((Button(line("lift-other-load"), press_for("c.loadask", about, desk, exercise)),))
    if any(o.exercise == exercise.name for o in about.orders.loads):
        rows.append((Button(line("lift-unset"), press_for("c.noload", about, desk, exercise)),))
    if _is_held(about, exercise):
        place = next(n for n, (name, _) in enumerate(about.held) if name == exercise.name)
        data = show_press("c.lift", about.profile.id, place, check_of(exercise.name))
        rows.append((Button(line("lift-hold", exercise=exercise.name), data),))
    else:
        rows.append((Button(line("lift-do-hold"), press_for("c.hold", about, desk, exercise)),))
    rows.append((Button(line("lift-other"), press_for("c.other", about, desk, exercise)),))
    if exercise.load_style is not LoadStyle.NONE and state_of(about, exercise) is not None:
        rows.append((Button(line("look-strength"), press_for("c.curve", about, desk, exercise)),))
    rows.append((Button(line("back-lifts"), show_press("c.lifts", about.profile.id)),))
    return tuple(rows)


def original_of(about: ClientDesk, exercise: PlannedExercise) -> str:
    """The programme's own exercise, in whose place it stands; its own name where it stands in none's."""
    return next((s.exercise for s in about.orders.swaps if s.into.name == exercise.name), exercise.name)


def around(about: ClientDesk, exercise: PlannedExercise, load: Load) -> tuple[Load | None, Load | None]:
    """The next lighter and the next heavier load on the client's equipment."""
    there = loadable(about.profile.gym, exercise.equipment)
    return there.below(load), there.above(load)


def state_of(about: ClientDesk, exercise: PlannedExercise) -> State | None:
    """The kept strength; `None` where the exercise was never done."""
    row = about.strength(exercise.name)
    return None if row is None else State.from_json(row.after)


def coming_for(desk: Desk, about: ClientDesk, exercise: PlannedExercise) -> NextLoads:
    """What the next session would ask for, were it today."""
    return next_for(
        exercise,
        about.profile.gym,
        state_of(about, exercise),
        held=_is_held(about, exercise),
        day=local_day(desk.now, about.profile.zone),
        orders=about.orders,
    )


def explained(
    desk: Desk, about: ClientDesk, exercise: PlannedExercise, state: State | None, coming: NextLoads
) -> Explained:
    """The whole behind it."""
    return explain(
        state or fresh_state(exercise),
        exercise,
        loadable(about.profile.gym, exercise.equipment),
        coming,
        today=local_day(desk.now, about.profile.zone),
    )


def _load(kg: float, unit: Unit) -> Load:
    """An estimate as a load."""
    return Load.of(rounded(kg, unit), unit)


def rounded(kg: float, unit: Unit) -> Decimal:
    """An estimate in the client's unit, to the nearest half: it is not known better."""
    amount = Load.of(repr(kg), Unit.KG).amount_in(unit)
    return (amount * 2).quantize(Decimal(1)) / 2


def _sets_line(exercise: PlannedExercise, sets: Iterable[LiftedSet], unit: Unit) -> Line:
    return joined([_set_line(exercise, lifted, unit) for lifted in sets])


def _set_line(exercise: PlannedExercise, lifted: LiftedSet, unit: Unit) -> Line:
    load = None if lifted.load_kg is None else Load.of(rounded(lifted.load_kg, unit), unit)
    rir = None if lifted.rir is None else Decimal(repr(lifted.rir))
    return done_line(exercise, Performed(exercise.name, lifted.set, lifted.stage, load, lifted.reps, rir))


def _is_held(about: ClientDesk, exercise: PlannedExercise) -> bool:
    return any(name == exercise.name for name, _ in about.held)
