"""The fold of what befalls a client's weeks: `training.life.Life` as it stands after each fact."""

from dataclasses import replace
from datetime import date

from bot.training.facts import CameBack, LightWeekDeclined, RestNoticeSet, ReturnEased, WeekLaid, WentAway
from bot.training.life import MOST_CHANGES, Absence, Away, Life, with_week

LifeFact = WeekLaid | WentAway | CameBack | ReturnEased | LightWeekDeclined | RestNoticeSet


def follow(life: Life, fact: LifeFact, *, today: date) -> Life:
    """What stands after one more fact; `today` is the client's day on which it came about."""
    match fact:
        case WeekLaid(_, monday, week, before, change, eases):
            if eases:
                return replace(with_week(life, monday, week, today=today), before=None)
            changes = life.changes[:-1] if change is None else (*life.changes, change)[-MOST_CHANGES:]
            return replace(with_week(life, monday, week, today=today), before=before, changes=changes)
        case WentAway(_, why, until):
            ill = today if why is Absence.ILL else life.was_ill
            return replace(life, away=Away(why, today, until), was_ill=ill)
        case CameBack():
            return replace(life, away=None, back_since=today)
        case ReturnEased(_, on):
            return replace(life, eases=on)
        case LightWeekDeclined():
            return replace(life, declined=today)
        case RestNoticeSet(_, on, seconds):
            return replace(life, rest_notice=on, rest_notice_s=seconds)
