"""The coach looks back on a client: pictures, each with its words, and past sessions, planned beside done."""

from datetime import date

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.charts import attendance_chart, muscles_chart, strength_chart
from bot.dialogue.chartwords import attendance_words, muscles_words, strength_words
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped
from bot.dialogue.lifts import exercise_named, exercises_of, press_for, state_of
from bot.dialogue.sessionview import session_lines
from bot.dialogue.turn import Turn
from bot.saying import Button, Chart, Line, Rows, Say, Toast, line
from bot.training.attendance import COUNTED
from bot.training.plan import LoadStyle, PlannedExercise

MOST_LIFTS = 24


def look_row(about: ClientDesk) -> tuple[Button, ...]:
    """The three pictures, for a client's page."""
    to = about.profile.id
    return (
        Button(line("look-strength"), show_press("c.curves", to)),
        Button(line("look-muscles"), show_press("c.muscles", to)),
        Button(line("look-days"), show_press("c.days", to)),
    )


def past_row(about: ClientDesk) -> tuple[Button, ...]:
    """The last sessions, for a client's page."""
    to = about.profile.id
    return tuple(
        Button(line("look-session", day=d), show_press("c.past", to, d.isoformat())) for d in about.past.trained
    )


def has_curve(about: ClientDesk, exercise: PlannedExercise) -> bool:
    """Whether there is a maximum to draw."""
    state = state_of(about, exercise)
    return exercise.load_style is not LoadStyle.NONE and state is not None and state.belief is not None


def choose_lift(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """Which exercise's strength, in the place of the client's page."""
    del press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    lifts = [e for e in exercises_of(about, desk) if has_curve(about, e)][:MOST_LIFTS]
    buttons = [Button(line("lifts-open", exercise=e.name), press_for("c.curve", about, desk, e)) for e in lifts]
    rows: Rows = tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))
    back = Button(line("back-client", name=about.profile.name), show_press("c.view", about.profile.id, "clients"))
    asked = line("look-which" if lifts else "look-none-yet", name=about.profile.name)
    say = Say(coach.profile.chat, (asked,), (*rows, (back,)), slot=DESK, about=about.profile.id)
    return Turn(says=(Toast(tap.query), say))


def strength(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The picture of an exercise's strength over the last twelve months."""
    about = coach.about
    exercise = None if about is None else exercise_named(about, desk, press)
    if about is None or exercise is None:
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    chart = strength_chart(about, exercise, whose=about.profile.name)
    if not chart.points:
        return Turn(says=(Toast(tap.query, line("look-nothing")),))
    return _picture(coach, about, tap, chart, strength_words(chart))


def muscles(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The picture of hard sets by muscle, week by week, against the coach's targets."""
    del desk, press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    chart = muscles_chart(about, whose=about.profile.name)
    if not any(sets for row in chart.muscles for sets in (*row.done, *row.planned)):
        return Turn(says=(Toast(tap.query, line("look-nothing")),))
    return _picture(coach, about, tap, chart, muscles_words(chart))


def days(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The attendance calendar."""
    del press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    chart = attendance_chart(about, desk.now, whose=about.profile.name)
    if not any(mark in COUNTED for mark in chart.marks):
        return Turn(says=(Toast(tap.query, line("look-nothing")),))
    return _picture(coach, about, tap, chart, attendance_words(chart))


def _picture(coach: CoachDesk, about: ClientDesk, tap: Tapped, chart: Chart, words: tuple[Line, ...]) -> Turn:
    return Turn(says=(Toast(tap.query), Say(coach.profile.chat, words, about=about.profile.id, picture=chart)))


def past_session(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The sessions of a day, planned beside done."""
    del desk, press
    about = coach.about
    if about is None or not about.past.sessions:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    says = tuple(
        Say(coach.profile.chat, session_lines(about.profile.name, session), about=about.profile.id)
        for session in about.past.sessions
    )
    return Turn(says=(Toast(tap.query), *says))


def day_of(press: Press) -> date | None:
    """The day on a button; `None` where there is none (forged or old data)."""
    try:
        return date.fromisoformat(press.args[0]) if press.args else None
    except ValueError:
        return None
