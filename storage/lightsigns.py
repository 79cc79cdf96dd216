"""What speaks for a light week of a client: read once a day for the digest, of those who trained since the last one."""

from dataclasses import dataclass
from datetime import date, timedelta

from bot.training.life import Life
from bot.training.light_weeks import Course, Felt, Sign, is_light_week_due, last_light, signs_of
from bot.training.orders import Orders
from bot.training.people import ClientId, Programme
from bot.training.stalls import Trend, drift_of
from bot.training.state import State
from storage.lately import lately
from storage.strengths import every_strength
from storage.work import Work

LOOKS_BACK = timedelta(weeks=8)
RECENT_DAYS = 21
"""A lift not done for longer neither stalls nor gets harder. Ours."""


@dataclass(frozen=True, slots=True)
class Trained:
    """Whose weeks are looked at: their programme, with the day on which it was given, and what stands beside it."""

    client: ClientId
    orders: Orders
    life: Life
    programme: Programme | None = None
    begun: date | None = None

    def last_light(self, today: date) -> date | None:
        """The Monday of the last light week, by the coach's word or the programme's own, as far as next week."""
        own = None if self.programme is None or self.begun is None else last_light(self.programme, self.begun, today)
        return max((*self.orders.light, *(() if own is None else (own,))), default=None)


def light_signs(work: Work, of: Trained, today: date) -> tuple[Sign, ...]:
    """The signs, where a light week is to be offered now; none where it is not."""
    client = of.client
    felt = tuple(Felt(s.day, s.effort, s.hurt) for s in lately(work, client, today - LOOKS_BACK) if s.reported)
    rows = [row for row in every_strength(work, client) if (today - row.day).days <= RECENT_DAYS]
    trends = [drift.trend for row in rows if (drift := drift_of(State.from_json(row.after))) is not None]
    course = Course(
        felt,
        light=of.last_light(today),
        stalled=trends.count(Trend.STALLED),
        creeping=trends.count(Trend.CREEPING),
        declined=of.life.declined,
    )
    return signs_of(course, today) if is_light_week_due(course, today) else ()
