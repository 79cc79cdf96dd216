"""The times at which the clock speaks for a client or a coach, as rules to keep."""

from datetime import datetime, time, timedelta

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet
from bot.training.calendar import cutoff_of, instant, local_day, week_summary_at
from bot.training.people import Client, Coach

PAIN_CHECK_AT = time(9, 0)
"""The morning after; ours."""
NUDGE_AFTER = timedelta(hours=24)


def training_rules(client: Client) -> tuple[RuleSet, ...]:
    """Session, cut-off and weekly summary of a client; without training days they are taken away."""
    trains = client.trains
    last = trains.days[-1:]
    return (
        RuleSet(client.id, RuleKind.SESSION, client.zone, trains.at, trains.days),
        RuleSet(client.id, RuleKind.CUTOFF, client.zone, cutoff_of(trains), tuple(range(7)) if trains.days else ()),
        RuleSet(client.id, RuleKind.WEEK, client.zone, week_summary_at(trains), last),
    )


def no_training_rules(client: Client) -> tuple[RuleSet, ...]:
    """Takes the rules away: paused, withdrawn."""
    kinds = (RuleKind.SESSION, RuleKind.CUTOFF, RuleKind.WEEK)
    return tuple(RuleSet(client.id, kind, client.zone) for kind in kinds)


def no_resume(client: Client) -> RuleSet:
    """Takes away what would bring them back: they are."""
    return RuleSet(client.id, RuleKind.RESUME, client.zone)


def digest_rule(coach: Coach) -> RuleSet:
    """The coach's digest, every day."""
    return RuleSet(coach.id, RuleKind.DIGEST, coach.zone, coach.digest_at, tuple(range(7)))


def pain_check_rule(client: Client, pain: str, now: datetime) -> RuleSet:
    """The question of the morning after, once."""
    tomorrow = local_day(now, client.zone) + timedelta(days=1)
    return RuleSet(
        client.id, RuleKind.PAIN_CHECK, client.zone, once_at=instant(tomorrow, PAIN_CHECK_AT, client.zone), ref=pain
    )


def nudge_rule(client: Client, now: datetime) -> RuleSet:
    """The one reminder of an unfinished enrolment, a day later."""
    return RuleSet(client.id, RuleKind.NUDGE, client.zone, once_at=now + NUDGE_AFTER)
