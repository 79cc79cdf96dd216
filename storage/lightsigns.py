"""What speaks for a light week of a client: read once a day for the digest, of those who trained since the last one."""

from datetime import date, timedelta

from bot.training.life import Life
from bot.training.light_weeks import Course, Felt, Sign, is_light_week_due, signs_of
from bot.training.orders import Orders
from bot.training.people import ClientId
from bot.training.stalls import Trend, drift_of
from bot.training.state import State
from storage.lately import lately
from storage.strengths import every_strength
from storage.work import Work

LOOKS_BACK = timedelta(weeks=8)
RECENT_DAYS = 21
"""A lift not done for longer neither stalls nor gets harder. Ours."""


def light_signs(work: Work, client: ClientId, orders: Orders, life: Life, today: date) -> tuple[Sign, ...]:
    """The signs, where a light week is to be offered now; none where it is not."""
    felt = tuple(Felt(s.day, s.effort, s.hurt) for s in lately(work, client, today - LOOKS_BACK) if s.reported)
    rows = [row for row in every_strength(work, client) if (today - row.day).days <= RECENT_DAYS]
    trends = [drift.trend for row in rows if (drift := drift_of(State.from_json(row.after))) is not None]
    course = Course(
        felt,
        light=max(orders.light, default=None),
        stalled=trends.count(Trend.STALLED),
        creeping=trends.count(Trend.CREEPING),
        declined=life.declined,
    )
    return signs_of(course, today) if is_light_week_due(course, today) else ()
