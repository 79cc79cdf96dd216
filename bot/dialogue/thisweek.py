"""The client's week as days: what each holds, and what is done of it."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, timedelta

from bot.dialogue.buttons import Press, check_of, show_press
from bot.dialogue.desk import ClientDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.phrases import joined
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Say, Toast, line
from bot.training.calendar import local_day, monday_of
from bot.training.coming import Coming, ComingDay, Trainee, coming_days
from bot.training.people import Standing
from bot.training.plan import PlannedExercise
from bot.training.session import Session
from bot.training.timing import session_minutes

SLOT = "week"


def trainee_of(client: ClientDesk) -> Trainee | None:
    """What their days depend on; `None` where nothing comes: no programme, or a pause."""
    me = client.profile
    if client.programme is None or not client.programme.workouts or me.standing is not Standing.ACTIVE:
        return None
    return Trainee(me.trains, client.programme, client.begun, me.workout, client.life)


def ahead(desk: Desk, client: ClientDesk, of: Trainee, monday: date) -> Coming:
    """The days to come of this week, or of the next, whose turns follow those of this one."""
    today = local_day(desk.now, client.profile.zone)
    this = coming_days(of, today, monday_of(today), client.week)
    if monday == monday_of(today):
        return this
    return coming_days(replace(of, turn=this.turn), today, monday)


def page(desk: Desk, client: ClientDesk, monday: date, *, fresh: bool = False) -> Say | None:
    """The week as it stands; `None` where there is nothing to show."""
    of, today = trainee_of(client), local_day(desk.now, client.profile.zone)
    if of is None:
        return None
    is_this = monday == monday_of(today)
    sessions = client.week if is_this else ()
    coming = ahead(desk, client, of, monday)
    entries = [(s.day, _session_line(s)) for s in sessions] + [(d.day, coming_line(d)) for d in coming.days]
    lines = [line("days-title", first=monday, last=monday + timedelta(days=6))]
    lines += [told for _, told in sorted(entries, key=lambda e: e[0])] or [line("days-none")]
    named = [s.day for s in sessions if s.ended is None and not s.reports and s.day >= today]
    named += [d.day for d in coming.days]
    chips = [Button(line("days-open", day=d), show_press("wkday", "", d.isoformat())) for d in sorted(named)]
    other = monday + timedelta(weeks=1) if is_this else monday_of(today)
    turn = Button(line("days-next" if is_this else "days-this"), show_press("wk", "", other.isoformat()))
    rows: Rows = (*(tuple(chips[n : n + 3]) for n in range(0, len(chips), 3)), *_undo_row(client), (turn,))
    return Say(client.profile.chat, tuple(lines), rows, slot=SLOT, fresh=fresh)


def show(desk: Desk, client: ClientDesk, tap: Tapped, press: Press) -> Turn:
    """This week or the next, in place."""
    monday = read_day(press, 0)
    found = page(desk, client, monday_of(monday)) if monday is not None and is_near(desk, client, monday) else None
    return old_button(tap) if found is None else Turn(says=(Toast(tap.query), found))


def _session_line(session: Session) -> Line:
    done = sum(session.sets_reported(e) for e in session.plan.exercises)
    key = f"days-{session.ended.value}" if session.ended else "days-begun" if session.reports else "days-open-card"
    return line(key, day=session.day, title=session.plan.title, done=done, sets=session.plan.set_count)


def coming_line(coming: ComingDay) -> Line:
    """A day to come: its title, minutes, and what it holds."""
    exercises = coming.workout.exercises
    return line(
        "days-coming",
        day=coming.day,
        title=coming.workout.title,
        minutes=session_minutes(exercises),
        what=what_line(exercises),
    )


def what_line(exercises: Iterable[PlannedExercise]) -> Line:
    """Exercises with their sets."""
    return joined([line("days-sets", name=e.name, sets=len(e.sets)) for e in exercises])


def _undo_row(client: ClientDesk) -> Rows:
    before = client.life.before
    if before is None:
        return ()
    return ((Button(line("days-undo"), show_press("wkback", "", check_of(repr(before)))),),)


def is_near(desk: Desk, client: ClientDesk, day: date) -> bool:
    """Whether the day is in this week or the next, and not over."""
    today = local_day(desk.now, client.profile.zone)
    return monday_of(today) <= monday_of(day) <= monday_of(today) + timedelta(weeks=1)


def old_button(tap: Tapped) -> Turn:
    """The button means nothing any more."""
    return Turn(says=(Toast(tap.query, line("toast-old")),))


def read_day(press: Press, place: int) -> date | None:
    """A day on a button; `None` where there is none."""
    try:
        return date.fromisoformat(press.args[place]) if len(press.args) > place else None
    except ValueError:
        return None
