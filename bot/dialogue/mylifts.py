"""What a client lifts, for themselves: each exercise with its estimate and next load; a picture of one over time."""

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.charts import strength_chart
from bot.dialogue.chartwords import strength_words
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.lifts import coming_for, exercise_named, exercises_of, rounded, state_of
from bot.dialogue.looking import has_curve
from bot.dialogue.phrases import load_line
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Say, Toast, Value, line
from bot.training.calendar import local_day
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.strength import estimate

MOST_SHOWN = 24
MOST_UNSURE = 0.1
"""As `weekly.MOST_UNSURE`: a wider estimate says too little to be told."""


def my_lifts_row() -> tuple[Button, ...]:
    """The button under the week's words."""
    return (Button(line("mylifts-open"), show_press("lifts")),)


def show(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """Every exercise of the programme with a load, in a line; a picture of each that was done."""
    del press
    exercises = exercises_of(client, desk)
    loaded = [(n, e) for n, e in enumerate(exercises) if e.load_style is not LoadStyle.NONE]
    lines = [line("mylifts-title"), *(_entry(desk, client, e) for _, e in loaded)]
    buttons = [
        Button(line("mylifts-picture", exercise=e.name), show_press("curve", "", n, check_of(e.name)))
        for n, e in loaded[:MOST_SHOWN]
        if has_curve(client, e)
    ]
    rows: Rows = tuple((button,) for button in buttons)
    if not loaded:
        lines = [line("mylifts-none")]
    return Turn(says=(Toast(tap.query), Say(client.profile.chat, tuple(lines), rows, slot="mylifts", fresh=True)))


def curve(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """The picture of one of them over the last twelve months."""
    exercise = exercise_named(client, desk, press)
    if exercise is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    chart = strength_chart(client, exercise)
    if not chart.points:
        return Turn(says=(Toast(tap.query, line("look-nothing")),))
    return Turn(says=(Toast(tap.query), Say(client.profile.chat, strength_words(chart), picture=chart)))


def _entry(desk: Desk, client: ClientDesk, exercise: PlannedExercise) -> Line:
    state = state_of(client, exercise)
    if state is None or state.belief is None:
        return line("mylifts-entry-new", name=exercise.name)
    args: dict[str, Line | Value] = {"name": exercise.name}
    key = "mylifts-entry"
    known = estimate(state, local_day(desk.now, client.profile.zone))
    if known is not None and known.mean_kg > 0 and known.sd_kg <= MOST_UNSURE * known.mean_kg:
        key, args["best"] = f"{key}-max", rounded(known.mean_kg, client.profile.unit)
        args["unit"] = client.profile.unit.value
    coming = None if client.orders.asks_first else coming_for(desk, client, exercise)
    first = next((s.load for s in coming.sets if s.load is not None), None) if coming is not None else None
    if first is not None:
        key, args["next"] = f"{key}-next", load_line(exercise, first)
    return line(key, **args)
