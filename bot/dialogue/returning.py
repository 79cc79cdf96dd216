"""Back after a break: how much easier a session is, by the weeks off, unless the coach wants it as published."""

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

from bot.dialogue.desk import ClientDesk
from bot.dialogue.phrases import joined
from bot.saying import Line, line
from bot.training.after_break import FULL, Ease, ease_for, stops_reminders, weeks_off
from bot.training.back_days import weeks_back
from bot.training.calendar import monday_of
from bot.training.coming import Trainee, laid_days
from bot.training.facts import Fact, WeekLaid
from bot.training.life import with_week

SHORTEST = 2
"""Weeks off after which sessions are easier (`after_break.USUAL_RULES`); an illness counts as so many. Ours."""


def ease_on(client: ClientDesk, day: date) -> Ease:
    """How a session of this day is eased; nothing where the coach said so, or nobody was away."""
    if not client.life.eases:
        return FULL
    off = off_before(client, day)
    if off >= SHORTEST:
        return ease_for(off, weeks_back=0, is_first=True)
    for before, back in reversed(tuple(pairwise(_trained(client, day)))):
        weeks = _weeks(client, before, back)
        if weeks >= SHORTEST:
            return ease_for(weeks, weeks_back=(day - back).days // 7, is_first=False)
    return FULL


def off_before(client: ClientDesk, day: date) -> int:
    """Whole weeks between the last day with a report and this one; 0 for who has reported today, or never."""
    trained = _trained(client, day)
    if not trained or trained[-1] == day:
        return 0
    return _weeks(client, trained[-1], day)


def back_line(client: ClientDesk, day: date) -> Line | None:
    """What is easier and why, for the session of this day; `None` where nothing is."""
    ease, off = ease_on(client, day), off_before(client, day)
    if ease.is_full:
        return None
    if off >= SHORTEST:
        return line("back-first", percent=ease.sets_percent)
    return line("back-again", percent=ease.sets_percent)


def fewer_days(client: ClientDesk, day: date) -> tuple[tuple[Fact, ...], tuple[Line, ...]]:
    """The weeks laid with fewer training days, where the session of this day is the first after a break and there are
    more than is good; and how it is told."""
    me, programme = client.profile, client.programme
    if not client.life.eases or programme is None or off_before(client, day) < SHORTEST:
        return (), ()
    of = Trainee(me.trains, programme, client.begun, me.workout, client.life)
    weeks = weeks_back(of, day)
    if not weeks:
        return (), ()
    facts = tuple(WeekLaid(me.id, week.monday, week, eases=True) for week in weeks)
    life = client.life
    for week in weeks:
        life = with_week(life, week.monday, week, today=day)
    after = replace(of, life=life)
    first_week = [d.day for n in range(2) for d in laid_days(after, day, monday_of(day) + timedelta(weeks=n))]
    days = sorted({day, *(d for d in first_week if d < day + timedelta(weeks=1))})
    return facts, (line("back-days", days=joined([line("back-day", day=d) for d in days])),)


def is_quiet(client: ClientDesk, day: date) -> bool:
    """Whether so many weeks were missed, since they last came back, that reminders stop."""
    since = client.life.back_since or date.min
    seen = [(s.day, s.reported or s.given_up) for s in client.lately if since <= s.day < day]
    return stops_reminders(seen, day)


def _weeks(client: ClientDesk, before: date, back: date) -> int:
    """Weeks off between two days of training; where an illness was between them, `SHORTEST` at least."""
    weeks, ill = weeks_off(before, back), client.life.was_ill
    return max(weeks, SHORTEST) if ill is not None and before <= ill <= back else weeks


def _trained(client: ClientDesk, day: date) -> list[date]:
    days = {s.day for s in client.lately if s.reported and s.day <= day}
    if client.last_day is not None and client.last_day <= day:
        days.add(client.last_day)
    return sorted(days)
