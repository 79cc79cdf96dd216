"""Giving a programme: what it changes for somebody is shown, then it is given, with an undo until its first report."""

from bot.dialogue.buttons import Press, check_of, print_of, show_press
from bot.dialogue.desk import ClientDesk, CoachDesk, Desk
from bot.dialogue.incoming import Tapped
from bot.dialogue.lookover import change_lines
from bot.dialogue.programmes import have, named
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Rows, Say, Saying, Toast, line
from bot.training.calendar import local_day
from bot.training.changes import changes_between
from bot.training.facts import ProgrammeAssigned
from bot.training.people import Client, Programme, Standing
from bot.training.samples import sample_programme
from bot.training.timing import session_minutes


def sample(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The sample, with one tap, as it stands now; sessions follow from the client's next training day."""
    del press
    about = coach.about
    if about is None or about.profile.standing is Standing.WITHDRAWN:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    toast = Turn(says=(Toast(tap.query, line("toast-given", name=about.profile.name)),))
    return toast + given(desk, coach, about, sample_programme())


def preview(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """What it would change for one client, and the button that does it."""
    del desk
    found, about = _checked(coach, press), coach.about
    if found is None or about is None:
        return Turn(says=(Toast(tap.query, line("toast-look-again")),))
    to = about.profile
    lines = [
        line("programme-preview", name=to.name, title=found.title),
        *change_lines(changes_between(about.programme, found)),
        line("programme-when", name=to.name),
    ]
    give = Button(
        line("programme-give-to", name=to.name),
        show_press("c.giveit", to.id, found.id, check_of(repr(found)), check_of(repr(about.programme))),
    )
    back = Button(line("back-programme"), show_press("c.prog", "", found.id))
    return Turn(says=(Toast(tap.query), Say(coach.profile.chat, tuple(lines), ((give,), (back,)), slot="shelf")))


def give(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The client has it from now on; what they were asked to do before stays as it was."""
    found, about = _checked(coach, press), coach.about
    if found is None or about is None or press.args[2:] != (check_of(repr(about.programme)),):
        return Turn(says=(Toast(tap.query, line("toast-look-again")),))
    return Turn(says=(Toast(tap.query, line("toast-given", name=about.profile.name)),)) + given(
        desk, coach, about, found
    )


def given(desk: Desk, coach: CoachDesk, about: ClientDesk, found: Programme) -> Turn:
    """The facts and words of giving, with an undo that stands until the first report."""
    to, me = about.profile, coach.profile
    undo = Button(line("programme-undo"), show_press("c.ungive", to.id, found.id))
    rows: Rows = ((undo,),) if about.programme is not None else ()
    mine = Say(
        me.chat,
        (line("programme-given", title=found.title, name=to.name),),
        rows,
        slot=_slot(desk, to, found),
        about=to.id,
    )
    return Turn((ProgrammeAssigned(to.id, found),), (mine, *told(desk, coach, about, found)))


def give_all(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """All who have it already get this version, in one transaction; the count is confirmed first."""
    del desk
    found = _checked(coach, press)
    if found is None:
        return Turn(says=(Toast(tap.query, line("toast-look-again")),))
    those = have(coach, found)
    chat, check = coach.profile.chat, check_of(repr(found))
    if press.args[2:] != (str(len(those)),):
        sure = Button(
            line("programme-all-sure", count=len(those)), show_press("c.giveall", "", found.id, check, len(those))
        )
        back = Button(line("back-programme"), show_press("c.prog", "", found.id))
        names = line("programme-all-ask", count=len(those), title=found.title)
        return Turn(says=(Toast(tap.query), Say(chat, (names,), ((sure,), (back,)), slot="shelf")))
    facts = tuple(ProgrammeAssigned(e.client, found) for e in those)
    done = Say(chat, (line("programme-all-given", count=len(those), title=found.title),), slot="shelf")
    return Turn(facts, (Toast(tap.query), done))


def undo(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """The programme before comes back, while nothing of the new one was reported."""
    about = coach.about
    if about is None or about.programme is None or press.args[:1] != (about.programme.id,):
        return Turn(says=(Toast(tap.query, line("toast-old")),))
    before, begun = about.programme_before, about.begun
    used = any(s.reports for s in (*about.week, *about.last_week) if begun is not None and s.day >= begun)
    if before is None or used:
        return Turn(says=(Toast(tap.query, line("toast-programme-used" if used else "toast-old")),))
    to = about.profile
    says: tuple[Saying, ...] = (
        Toast(tap.query),
        Say(
            coach.profile.chat,
            (line("programme-undone", name=to.name, title=before.title),),
            slot=_slot(desk, to, about.programme),
        ),
        *told(desk, coach, about, before, again=True),
    )
    return Turn((ProgrammeAssigned(to.id, before),), says)


def told(desk: Desk, coach: CoachDesk, about: ClientDesk, found: Programme, *, again: bool = False) -> tuple[Say, ...]:
    """What the client hears; `again` after another one was taken back, so that the newest message tells what holds."""
    if about.profile.standing is Standing.JOINING:
        return ()
    rows: Rows = (
        ((Button(line("button-start-today"), show_press("start")),),)
        if about.profile.standing is Standing.ACTIVE
        else ()
    )
    lines = (line("programme-yours", title=found.title, coach=coach.profile.name), *titles(found))
    slot = _slot(desk, about.profile, found)
    return (Say(about.profile.chat, lines, rows, slot=slot, fresh=again, about=coach.profile.id),)


def _slot(desk: Desk, to: Client, found: Programme) -> str:
    """The same programme given twice on a day is said once."""
    return f"given:{to.id}:{print_of(repr(found))}:{local_day(desk.now, to.zone)}"


def titles(found: Programme) -> list[Line]:
    """The workouts, with their minutes."""
    return [
        line("programme-yours-workout", title=w.title, minutes=session_minutes(w.exercises)) for w in found.workouts
    ]


def _checked(coach: CoachDesk, press: Press) -> Programme | None:
    """The programme on a button, where it is still the one that was looked at."""
    found = named(coach, press)
    return found if found is not None and press.args[1:2] == (check_of(repr(found)),) else None
