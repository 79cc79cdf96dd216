"""What the next session of an exercise will ask for, in a line; and the coach's yes to it where they want to say it."""

from bot.dialogue.buttons import show_press
from bot.dialogue.phrases import load_line
from bot.dialogue.underway import UnderWay
from bot.saying import Button, Line, Say, line
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.progress import NextLoads, NextSet


def approval_slot(session: str) -> str:
    """The slot of the question whether loads may rise."""
    return f"approve:{session}"


def ask_for_yes(at: UnderWay) -> tuple[Say, ...]:
    """At the session's end, to a coach who wants to be asked first: what it suggests, and one button."""
    if not at.waits_for_yes:
        return ()
    lines = [next_time_line(at, e) for e in at.session.plan.exercises]
    told = [line("orders-approve-entry", entry=one) for one in lines if one is not None]
    if not told:
        return ()
    me, coach = at.client.profile, at.client.coach
    yes = Button(line("orders-approve"), show_press("c.yes", me.id, at.session.id))
    opened = Button(line("open-client", name=me.name), show_press("c.open", me.id))
    lines_ = (line("orders-approve-ask", name=me.name), *told)
    return (Say(coach.chat, lines_, ((yes,), (opened,)), slot=approval_slot(at.session.id), fresh=True, about=me.id),)


def next_time_line(at: UnderWay, exercise: PlannedExercise) -> Line | None:
    """What the next session will ask for, with one line of reason; nothing for exercises without loads."""
    if exercise.load_style is LoadStyle.NONE or not at.session.work_done(exercise.name):
        return None
    coming = at.next_time(exercise)
    if coming.find or not coming.sets or coming.sets[0].load is None:
        return None
    reason = Line(coming.reason.key, tuple(coming.reason.args))
    return line("next-time", name=exercise.name, loads=_loads(exercise, coming), reason=reason)


def _loads(exercise: PlannedExercise, coming: NextLoads) -> Line:
    """`60 kg × 4–6, then 52.5 kg × 8–10`: equal sets once, with their number."""
    groups: list[tuple[NextSet, int]] = []
    for item in coming.sets:
        if groups and (groups[-1][0].load, groups[-1][0].reps) == (item.load, item.reps):
            groups[-1] = (groups[-1][0], groups[-1][1] + 1)
        else:
            groups.append((item, 1))
    shown = [_group(exercise, item, count) for item, count in groups]
    whole = shown[0]
    for more in shown[1:]:
        whole = line("sets-then", first=whole, second=more)
    return whole


def _group(exercise: PlannedExercise, item: NextSet, count: int) -> Line:
    span = str(item.reps.low) if item.reps.is_fixed else f"{item.reps.low}–{item.reps.high}"
    load = load_line(exercise, item.load) if item.load is not None else line("load-unknown")
    return line("next-group", count=count, load=load, reps=span)
