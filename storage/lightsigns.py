"""What speaks for a light week of a client: read once a day for the digest, of those who trained since the last one."""

from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.training.life import Life
from bot.training.light_weeks import Course, Felt, Sign, is_light_week_due, last_light, signs_of
from bot.training.orders import Orders
from bot.training.people import ClientId
from bot.training.stalls import Trend, drift_of
from bot.training.state import State
from storage.lately import lately
from storage.plans import programme_of
from storage.strengths import every_strength
from storage.work import Work

LOOKS_BACK = timedelta(weeks=8)
RECENT_DAYS = 21
"""A lift not done for longer neither stalls nor gets harder. Ours."""


@dataclass(frozen=True, slots=True)
class Trained:
    """Whose weeks are looked at, with what stands beside their programme: its `snapshot`, and when it was given."""

    client: ClientId
    orders: Orders
    life: Life
    snapshot: str | None = None
    begun: date | None = None


def light_signs(work: Work, of: Trained, today: date) -> tuple[Sign, ...]:
    """The signs, where a light week is to be offered now; none where it is not."""
    felt = tuple(Felt(s.day, s.effort, s.hurt) for s in lately(work, of.client, today - LOOKS_BACK) if s.reported)
    rows = [row for row in every_strength(work, of.client) if (today - row.day).days <= RECENT_DAYS]
    trends = [drift.trend for row in rows if (drift := drift_of(State.from_json(row.after))) is not None]
    course = Course(
        felt,
        light=max(of.orders.light, default=None),
        stalled=trends.count(Trend.STALLED),
        creeping=trends.count(Trend.CREEPING),
        declined=of.life.declined,
    )
    if is_light_week_due(course, today):
        course = replace(course, light=_last_light(work, of, today))
    return signs_of(course, today) if is_light_week_due(course, today) else ()


def _last_light(work: Work, of: Trained, today: date) -> date | None:
    """The Monday of the last light week, by the coach's word or the programme's own, as far as next week. The programme
    can only take an offer back, so it is read where there is one."""
    programme = programme_of(work, of.snapshot)
    own = None if programme is None or of.begun is None else last_light(programme, of.begun, today)
    return max((*of.orders.light, *(() if own is None else (own,))), default=None)
