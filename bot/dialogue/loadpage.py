"""The load of a client's last weeks for the coach: session effort × minutes, monotony, strain, and their limits."""

from datetime import timedelta
from decimal import Decimal

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped
from bot.dialogue.turn import Turn
from bot.saying import BLANK, Button, Line, Say, Toast, line
from bot.training.calendar import local_day, monday_of
from bot.training.session_load import NoMonotony, SessionSaid, WeekLoad, week_load

WEEKS = 4


def show(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """In the place of the client's page, with the way back."""
    del press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    to = about.profile
    lines = [line("sload-title", name=to.name), *_weeks(desk, about), BLANK, line("sload-what"), line("sload-limits")]
    back = Button(line("back-client", name=to.name), show_press("c.view", to.id, "clients"))
    return Turn(says=(Toast(tap.query), Say(coach.profile.chat, tuple(lines), ((back,),), slot=DESK, about=to.id)))


def _weeks(desk: Desk, about: ClientDesk) -> list[Line]:
    """The last four weeks with this one, the oldest first."""
    said = [SessionSaid(s.day, s.effort, s.minutes) for s in about.lately if s.reported]
    this = monday_of(local_day(desk.now, about.profile.zone))
    lines: list[Line] = []
    for n in range(WEEKS - 1, -1, -1):
        monday = this - timedelta(weeks=n)
        week, when = week_load(monday, said), line("sload-week", monday=monday)
        lines.append(_so_far(week, when) if n == 0 else _week_line(week, when))
    return lines


def _so_far(week: WeekLoad, when: Line) -> Line:
    """The week under way: its days to come are no rest days yet, so it has neither monotony nor strain."""
    return line("sload-so-far", week=when, load=week.load, known=week.known, sessions=week.sessions)


def _week_line(week: WeekLoad, when: Line) -> Line:
    if not week.sessions:
        return line("sload-none", week=when)
    if week.monotony is not None and week.strain is not None:
        return line(
            "sload-whole",
            week=when,
            load=week.load,
            sessions=week.sessions,
            monotony=week.monotony.quantize(Decimal("0.1")),
            strain=int(week.strain.to_integral_value()),
        )
    match week.why:
        case NoMonotony.UNRATED:
            return line("sload-part", week=when, load=week.load, known=week.known, sessions=week.sessions)
        case NoMonotony.FLAT | NoMonotony.EMPTY | None:
            return line("sload-flat", week=when, load=week.load, sessions=week.sessions)
