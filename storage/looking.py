"""Which part of what lies behind a client a button asks for."""

from bot.dialogue.buttons import Press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.lifts import exercise_named
from bot.dialogue.looking import day_of
from bot.training.past import NO_PAST, Past
from bot.training.people import Standing
from storage import past
from storage.work import Work

LOOK_OPS = frozenset({"c.open", "c.view", "c.curve", "c.muscles", "c.days", "c.past", "curve"})
"""Buttons for which something of what lies behind a client is read."""

LOOK_LIFT_OPS = frozenset({"c.curves", "c.curve", "lifts", "curve"})
"""Buttons for which every exercise of the programme is looked at."""


def look_back(work: Work, about: ClientDesk, desk: Desk, press: Press) -> Past:
    """What this button asks for; nothing for any other, and of nobody who has not joined or is gone."""
    if about.profile.standing in (Standing.JOINING, Standing.WITHDRAWN):
        return NO_PAST
    match press.op:
        case "c.open" | "c.view":
            return past.page(work, about, desk.now)
        case "c.curve" | "curve":
            exercise = exercise_named(about, desk, press)
            return NO_PAST if exercise is None else past.lift(work, about, exercise.name, desk.now)
        case "c.muscles":
            return past.weeks(work, about, desk.now)
        case "c.days":
            return past.calendar(work, about, desk.now)
        case "c.past":
            day = day_of(press)
            return NO_PAST if day is None else past.on_day(work, about, day)
        case _:
            return NO_PAST
