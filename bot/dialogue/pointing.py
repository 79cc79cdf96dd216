"""Which exercise a button means: its place in the plan, and, once the plan was changed, a check of its name beside it.

So a button that was drawn before a change never speaks of the exercise that stands in its place now.
"""

from bot.dialogue.buttons import Press, check_of
from bot.training.plan import PlannedExercise
from bot.training.session import Session


def point_at(session: Session, exercise: str) -> str:
    """The argument of a button about an exercise of this session: `2`, or `2.a3f1` in a plan that was changed."""
    place = next(n for n, e in enumerate(session.plan.exercises) if e.name == exercise)
    return f"{place}.{check_of(exercise)}" if session.changes else str(place)


def pointed(session: Session, press: Press, at: int = 0) -> PlannedExercise | None:
    """The exercise that a button's argument means; `None` where the plan is another by now, or the data were forged."""
    text = press.args[at] if at < len(press.args) else ""
    place, _, check = text.partition(".")
    number = Press("", "", (place,)).number(0)
    if number is None or not 0 <= number < len(session.plan.exercises):
        return None
    exercise = session.plan.exercises[number]
    if session.changes or check:
        return exercise if check == check_of(exercise.name) else None
    return exercise
