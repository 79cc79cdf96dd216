"""The record of what was changed for a client: who, when, from what to what, why. The latest first."""

from bot.dialogue.buttons import Press, show_press
from bot.dialogue.desk import ChangeKept, ClientDesk, CoachDesk, Desk
from bot.dialogue.digest import DESK
from bot.dialogue.incoming import Tapped
from bot.dialogue.phrases import names_line
from bot.dialogue.turn import Turn
from bot.saying import Button, Line, Say, Toast, Value, line
from bot.training.calendar import local_time
from bot.training.facts import (
    AutonomySet,
    CameBack,
    ExerciseHeld,
    ExerciseSwapped,
    HandoverAnswered,
    HandoverOffered,
    HoldLifted,
    LightWeekDeclined,
    LightWeekOrdered,
    LoadOrdered,
    LoadsApproved,
    PlanChanged,
    ProfileChanged,
    ProgrammeAssigned,
    ReturnEased,
    SessionMoved,
    SessionPlanned,
    WeekLaid,
    WentAway,
)
from bot.training.life import DayChange
from bot.training.plan import PlannedExercise
from bot.training.units import Load

MOST_SHOWN = 20


def show(desk: Desk, coach: CoachDesk, tap: Tapped, press: Press) -> Turn:
    """In the place of the client's page, with the way back."""
    del desk, press
    about = coach.about
    if about is None:
        return Turn(says=(Toast(tap.query, line("not-available")),))
    lines = [line("changes-title", name=about.profile.name)]
    told = [one for n in range(len(coach.changes)) for one in _lines(coach, about, n)][:MOST_SHOWN]
    lines += told or [line("changes-none")]
    back = Button(line("back-client", name=about.profile.name), show_press("c.view", about.profile.id, "clients"))
    say = Say(coach.profile.chat, tuple(lines), ((back,),), slot=DESK, about=about.profile.id)
    return Turn(says=(Toast(tap.query), say))


def _lines(coach: CoachDesk, about: ClientDesk, place: int) -> list[Line]:
    kept = coach.changes[place]
    when = local_time(kept.at, coach.profile.zone)
    told = _planned(kept.fact, coach.changes[place + 1 :]) if isinstance(kept.fact, SessionPlanned) else _one(kept)
    who = _who(coach, about, kept)
    return [line("changes-entry", day=when.date(), time=when, who=who, what=what) for what in told]


def _who(coach: CoachDesk, about: ClientDesk, kept: ChangeKept) -> Line:
    if kept.by == f"chat:{about.profile.chat}":
        return line("name", name=about.profile.name)
    if kept.by == f"chat:{coach.profile.chat}":
        return line("name", name=coach.profile.name)
    return line("changes-by-itself") if kept.by == "clock" else line("changes-by-another")


def _planned(fact: SessionPlanned, before: tuple[ChangeKept, ...]) -> list[Line]:
    """The loads that a session asks for otherwise than the one before that had the exercise."""
    return [one for e in fact.plan.exercises if (one := _load_moved(e, before)) is not None]


def _load_moved(exercise: PlannedExercise, before: tuple[ChangeKept, ...]) -> Line | None:
    sessions = (kept.fact for kept in before if isinstance(kept.fact, SessionPlanned))
    last = next((e for s in sessions for e in s.plan.exercises if e.name == exercise.name), None)
    then, now = _first(last), _first(exercise)
    if now is None or then == now or last is None:
        return None
    args: dict[str, Line | Value] = {"exercise": exercise.name, "now": now}
    if then is None:
        return line("changed-load-found", **args, why=exercise.reason)
    return line("changed-load", **args, before=then, why=exercise.reason)


def _first(exercise: PlannedExercise | None) -> Load | None:
    return None if exercise is None else next((s.load for s in exercise.sets if s.load is not None), None)


def _one(kept: ChangeKept) -> list[Line]:
    match kept.fact:
        case ProgrammeAssigned(_, programme):
            return [line("changed-programme", title=programme.title)]
        case PlanChanged():
            return [line("changed-plan")]
        case ExerciseHeld(_, exercise):
            return [line("changed-held", exercise=exercise)]
        case HoldLifted(_, exercise):
            return [line("changed-lifted", exercise=exercise)]
        case LoadOrdered(_, exercise, load, before):
            if load is None:
                return [line("changed-order-back", exercise=exercise)]
            return [line("changed-order", exercise=exercise, now=load, before=before or line("changed-nothing"))]
        case LoadsApproved():
            return [line("changed-approved")]
        case LightWeekOrdered(_, monday, on):
            return [line("changed-light" if on else "changed-no-light", monday=monday)]
        case ExerciseSwapped(_, exercise, into):
            if into is None:
                return [line("changed-swap-back", exercise=exercise)]
            return [line("changed-swap", exercise=exercise, into=into.name)]
        case AutonomySet(_, asks_first, percent):
            return [line("changed-asks-first" if asks_first else "changed-by-itself", percent=percent)]
        case SessionMoved(_, to):
            return [line("changed-moved", day=to)]
        case WentAway(_, why, until):
            return [line("changed-quiet") if until is None else line(f"changed-{why.value}", day=until)]
        case LightWeekDeclined():
            return [line("changed-light-declined")]
        case ReturnEased(_, on):
            return [line("changed-eases" if on else "changed-no-eases")]
        case CameBack():
            return [line("changed-back")]
        case WeekLaid(_, monday, _, _, change, eases):
            return [line("changed-week-eased", monday=monday) if eases else _day(change)]
        case ProfileChanged():
            return _profile(kept.fact)
        case HandoverOffered(_, _, name):
            return [line("changed-offered", coach=name)]
        case HandoverAnswered(_, _, yes):
            return [line("changed-handed" if yes else "changed-stayed")]
        case _:
            return []


def _day(change: DayChange | None) -> Line:
    if change is None:
        return line("changed-week-back")
    if change.to is not None:
        return line("changed-day-moved", day=change.day, to=change.to)
    return line("changed-day-lost", day=change.day)


def _profile(fact: ProfileChanged) -> list[Line]:
    """Which of their own settings a client changed, not to what: that stands on the page."""
    said = (
        ("days", fact.trains),
        ("gym", fact.gym),
        ("unit", fact.unit),
        ("zone", fact.zone),
        ("standing", fact.standing),
    )
    changed = [name for name, value in said if value is not None]
    return [line("changed-settings", names=names_line(changed))] if changed else []
