"""Times that shall come, as rows: daily or weekly at a local hour, or once.

A local time becomes UTC by the zone database: of an hour that comes twice the first counts, one that is skipped moves
forward. A rule comes due at most once for each local date, whatever the clocks do, and a rule that was slept through
comes due once, for its latest time.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import sqlalchemy as sa

from bot.dialogue.incoming import RuleKind
from bot.dialogue.turn import RuleSet
from bot.training.calendar import instant, local_day
from storage.columns import fixed
from storage.ready import ready
from storage.tables import schedule
from storage.work import Overtaken, Work, insert_or_replace

_c = schedule.c


@dataclass(frozen=True, slots=True)
class DueRule:
    """A rule whose time has come."""

    id: int
    kind: RuleKind
    whose: str
    ref: str
    due_at: datetime
    times: "Times"


@dataclass(frozen=True, slots=True)
class Times:
    """When a rule comes due: at `hour` on `days` (Monday 0), or at `once_at`."""

    zone: str
    hour: time | None
    days: tuple[int, ...]
    once_at: datetime | None

    def first_after(self, now: datetime, *, last_day: date | None) -> datetime | None:
        """The first time after `now`, on a local date later than `last_day`."""
        if self.hour is None:
            return self.once_at
        start = local_day(now, self.zone) - timedelta(days=1)
        if last_day is not None:
            start = max(start, last_day + timedelta(days=1))
        return next((at for _, at in self._from(start, days=16) if at > now), None)

    def latest(self, due_at: datetime, now: datetime) -> datetime:
        """The latest time from `due_at` to `now`: `due_at` itself where none came since."""
        if self.hour is None or now - due_at < timedelta(hours=12):
            return due_at
        start = max(local_day(due_at, self.zone), local_day(now, self.zone) - timedelta(days=8))
        came = [at for _, at in self._from(start, days=10) if due_at <= at <= now]
        return max(came, default=due_at)

    def _from(self, start: date, *, days: int) -> Iterator[tuple[date, datetime]]:
        if self.hour is None:
            return
        for n in range(days):
            day = start + timedelta(days=n)
            if day.weekday() in self.days:
                yield day, instant(day, self.hour, self.zone)


_THIS = sa.and_(_c.whose == sa.bindparam("of"), _c.kind == sa.bindparam("what"), _c.ref == sa.bindparam("about_ref"))
_ONE = ready(sa.select(_c.zone, _c.hour, _c.days, _c.once_at, _c.last_day).where(_THIS))
_REMOVE = ready(sa.delete(schedule).where(_THIS))
_DROP = ready(sa.delete(schedule).where(_c.whose == sa.bindparam("of")))
_KEEP = insert_or_replace(schedule, "whose", "kind", "ref", columns=("zone", "hour", "days", "once_at", "next_due_at"))
_DUE = ready(
    sa.select(_c.id, _c.kind, _c.whose, _c.ref, _c.zone, _c.hour, _c.days, _c.once_at, _c.next_due_at)
    .where(_c.next_due_at <= sa.bindparam("now"))
    .order_by(_c.next_due_at, _c.id)
    .limit(sa.bindparam("limit"))
    .with_for_update(skip_locked=True)
)
_ADVANCE = ready(
    sa.update(schedule)
    .where(_c.id == sa.bindparam("rule"), _c.next_due_at <= sa.bindparam("due"))
    .values(next_due_at=sa.bindparam("following"), last_day=sa.bindparam("on"), last_at=sa.bindparam("now"))
)
_WALL = (RuleKind.SESSION.value, RuleKind.RESUME.value, RuleKind.PAIN_CHECK.value)
"""What comes once at a wall time; the others come after so long."""
_ONCE = ready(
    sa.select(_c.id, _c.zone, _c.once_at).where(
        _c.whose == sa.bindparam("of"),
        _c.kind.in_([fixed(kind) for kind in _WALL]),
        _c.once_at.is_not(None),
        _c.next_due_at.is_not(None),
        _c.zone != sa.bindparam("zone"),
    )
)
_MOVE = ready(
    sa.update(schedule)
    .where(_c.id == sa.bindparam("rule"))
    .values(zone=sa.bindparam("to_zone"), once_at=sa.bindparam("at"), next_due_at=sa.bindparam("at"))
)
_NEXT = ready(sa.select(sa.func.min(_c.next_due_at)).where(_c.next_due_at.is_not(None)))
_LAST = ready(sa.select(_c.last_at).where(_THIS))
_PURGE = ready(sa.delete(schedule).where(_c.next_due_at.is_(None), _c.once_at < sa.bindparam("before")))


def keep_rule(work: Work, rule: RuleSet, *, now: datetime) -> None:
    """The rule holds from now on, in place of the one of the same (whose, kind, ref); without a time it is removed.
    The same times again change nothing, so that what is due stays due."""
    this = {"of": rule.whose, "what": rule.kind.value, "about_ref": rule.ref}
    if rule.once_at is None and (rule.at is None or not rule.days):
        work.run(_REMOVE, this)
        return
    hour, days = (rule.at, rule.days) if rule.once_at is None else (None, ())
    times = Times(rule.zone, hour, days, rule.once_at)
    old = work.first(_ONE, this)
    if old is not None and Times(old.zone, old.hour, old.days, old.once_at) == times:
        return
    next_due = times.first_after(now, last_day=None if old is None else old.last_day)
    row = {"whose": rule.whose, "kind": rule.kind.value, "ref": rule.ref, "zone": rule.zone, "hour": hour, "days": days}
    work.run(_KEEP, {**row, "once_at": rule.once_at, "next_due_at": next_due})


def follow_zone(work: Work, whose: str, zone: str) -> None:
    """Somebody's clock is another one: what is to come once, at a wall time of theirs, comes at that time of the new
    clock. Rules of every day are set anew by whoever changes the zone."""
    for row in work.all(_ONCE, {"of": whose, "zone": zone}):
        wall = row.once_at.astimezone(ZoneInfo(row.zone))
        at = instant(wall.date(), wall.time(), zone)
        work.run(_MOVE, {"rule": row.id, "to_zone": zone, "at": at})


def due(work: Work, *, now: datetime, limit: int) -> tuple[DueRule, ...]:
    """What is due, the longest due first, held for this transaction: on PostgreSQL no other one gets the same rules.
    `advance` each in the same transaction as what it leads to."""
    found = []
    for row in work.all(_DUE, {"now": now, "limit": limit}):
        times = Times(row.zone, row.hour, row.days, row.once_at)
        due_at = times.latest(row.next_due_at, now)
        found.append(DueRule(row.id, RuleKind(row.kind), row.whose, row.ref, due_at, times))
    return tuple(found)


def advance(work: Work, rule: DueRule, *, now: datetime) -> None:
    """The rule's time is over: it comes due again at its first time after now, on a later local date; a once-rule
    ends. `Overtaken` where another transaction did so first, or the rule was changed meanwhile."""
    on = local_day(rule.due_at, rule.times.zone)
    following = None if rule.times.hour is None else rule.times.first_after(max(now, rule.due_at), last_day=on)
    params = {"rule": rule.id, "due": rule.due_at, "following": following, "on": on, "now": now}
    if work.run(_ADVANCE, params) != 1:
        raise Overtaken


def next_due_at(work: Work) -> datetime | None:
    """When the next rule comes due (perhaps long ago)."""
    row = work.first(_NEXT)
    return None if row is None else row[0]


def last_at(work: Work, whose: str, kind: RuleKind) -> datetime | None:
    """When the rule was last taken up; `None` where it never was."""
    row = work.first(_LAST, {"of": whose, "what": kind.value, "about_ref": ""})
    return None if row is None else row.last_at


def drop_rules(work: Work, whose: str) -> None:
    """Takes all rules of somebody away."""
    work.run(_DROP, {"of": whose})


def purge(work: Work, *, before: datetime) -> int:
    """Forgets once-rules that ended before this time."""
    return work.run(_PURGE, {"before": before})
