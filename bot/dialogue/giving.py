"""The coach gives a client a programme: the sample, with one tap; an undo while nothing was done of it."""

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Say, Toast, line
from bot.training.calendar import local_day
from bot.training.facts import ProgrammeAssigned
from bot.training.people import Client, Programme, Standing
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes


def programme(coach: CoachDesk) -> Turn:
    """`/programme`: what the sample holds, and a button for each client."""
    sample = sample_programme()
    rows: Rows = tuple(
        (Button(line("give-sample", name=entry.name), show_press("c.give", entry.client)),)
        for entry in coach.roster[:20]
        if entry.standing != Standing.WITHDRAWN
    )
    return Turn(says=(Say(coach.profile.chat, (*programme_lines(sample), line("programme-give")), rows),))


def programme_lines(given: Programme) -> tuple[Line, ...]:
    """A programme in words: workouts, sets, minutes."""
    lines: list[Line] = [line("programme-title", title=given.title), line("programme-note", note=given.note)]
    for workout in given.workouts:
        sets = sum(len(e.sets) for e in workout.exercises)
        lines.append(
            line("programme-workout", title=workout.title, sets=sets, minutes=session_minutes(workout.exercises))
        )
        lines += [line("programme-exercise", name=e.name, count=len(e.sets)) for e in workout.exercises]
    return tuple(lines)


def give(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The sample goes to the client as it stands now; sessions follow from their next training day."""
    del press
    about = coach.about
    if about is None or about.profile.standing is Standing.WITHDRAWN:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    sample = sample_programme()
    to, me = about.profile, coach.profile
    given = line("programme-given", title=sample.title, name=to.name)
    return Turn(
        (ProgrammeAssigned(to.id, sample),),
        (
            Toast(tap.query, line("toast-given", name=to.name)),
            Say(me.chat, (given,), slot=_slot(desk, to), about=to.id),
            *_told(desk, about, me.id, sample),
        ),
    )


def _slot(desk: Desk, to: Client) -> str:
    """Given twice on a day, it is said once."""
    return f"given:{to.id}:{local_day(desk.now, to.zone)}"


def _told(desk: Desk, about: ClientDesk, coach: str, given: Programme) -> tuple[Say, ...]:
    if about.profile.standing is Standing.JOINING:
        return ()
    start = Button(line("button-start-today"), show_press("start"))
    lines = (line("programme-yours", title=given.title, coach=about.coach.name), *_titles(given))
    rows: Rows = ((start,),) if about.profile.standing is Standing.ACTIVE else ()
    return (Say(about.profile.chat, lines, rows, slot=_slot(desk, about.profile), about=coach),)


def _titles(given: Programme) -> list[Line]:
    return [
        line("programme-yours-workout", title=w.title, minutes=session_minutes(w.exercises)) for w in given.workouts
    ]
