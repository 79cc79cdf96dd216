"""A client trains on another number of days than before: what that does to the weekly work is said to both, and the
coach is offered the same work laid over those days. Nothing changes by it but the days: the coach has the last word."""

from decimal import ROUND_HALF_EVEN, Decimal

from bot.dialogue.buttons import show_press
from bot.dialogue.desk import ClientDesk
from bot.dialogue.otherdays import COUNTS
from bot.dialogue.steps import day_words
from bot.dialogue.turn import Turn
from bot.saying import Button, Rows, Say, Urgency, line


def days_changed(before: ClientDesk, now: ClientDesk) -> Turn:
    """Said where the number of days is another; `now` is the client with the new ones."""
    me, programme = now.profile, now.programme
    days = len(me.trains.days)
    if programme is None or days == len(before.profile.trains.days):
        return Turn()
    sessions = len(programme.workouts)
    told = line("daycount-coach", name=me.name, count=days, days=day_words(me.trains.days))
    if days == sessions:
        lines, rows = (told, line("daycount-fits", title=programme.title, sessions=sessions)), list[tuple[Button]]()
    else:
        times = (Decimal(days) / sessions).quantize(Decimal("0.01"), ROUND_HALF_EVEN)
        lines = (told, line("daycount-turns", title=programme.title, sessions=sessions, times=times))
        look = Button(line("daycount-look", count=days), show_press("c.lay", "", programme.id))
        rows = [(look,)] if days in COUNTS else []
    shown: Rows = (*rows, (Button(line("open-client", name=me.name), show_press("c.open", me.id)),))
    coach = Say(now.coach.chat, lines, shown, slot=f"daycount:{me.id}", urgency=Urgency.NOTICE, about=me.id)
    if days == sessions:
        return Turn(says=(coach,))
    mine = line("daycount-mine", count=days, sessions=sessions, times=times, coach=now.coach.name)
    return Turn(says=(Say(me.chat, (mine,)), coach))
