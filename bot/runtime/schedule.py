"""What comes due by the clock: rules are rows; claim, turn and advance of each are one transaction."""

from dataclasses import dataclass, field
from datetime import datetime

import structlog

import storage.schedule
from bot.dialogue.incoming import Due
from bot.runtime.inbox import Desks, place_of, turn_for
from bot.runtime.turns import commit
from storage.engine import is_retryable
from storage.facts import Origin
from storage.schedule import DueRule
from storage.work import Overtaken, Work

PASS = 20
"""At most so many due rules share a transaction."""

TRIES = 3
"""A rule's turn that failed so often is let go for this time; the next time comes as ever."""

log = structlog.get_logger("tick")


@dataclass(slots=True)
class Failures:
    """How often the present due time of a rule has failed, in this process."""

    tries: dict[tuple[int, datetime], int] = field(default_factory=dict)

    def count(self, rule: DueRule) -> int:
        """One more failure of this due time; how many that makes."""
        key = (rule.id, rule.due_at)
        self.tries[key] = self.tries.get(key, 0) + 1
        return self.tries[key]

    def forget(self, rule: DueRule) -> None:
        """This due time is over."""
        self.tries.pop((rule.id, rule.due_at), None)


@dataclass(frozen=True, slots=True)
class Ticked:
    """What a tick did: rules taken up, and parcels put."""

    rules: int
    parcels: int


def tick(work: Work, desks: Desks, failures: Failures, *, now: datetime, limit: int = PASS) -> Ticked:
    """Takes up what is due at `now`, each rule under a savepoint of its own."""
    rules = storage.schedule.due(work, now=now, limit=limit)
    parcels = [_take_up(work, rule, desks, failures, now=now) for rule in rules]
    taken_up = [count for count in parcels if count is not None]
    return Ticked(len(taken_up), sum(taken_up))


def _take_up(work: Work, rule: DueRule, desks: Desks, failures: Failures, *, now: datetime) -> int | None:
    """How many parcels it put; `None` where another process took it up."""
    due = Due(rule.id, rule.kind, rule.whose, rule.ref, rule.due_at)
    stamp = f"{rule.id}:{int(rule.due_at.timestamp())}"
    try:
        with work.savepoint():
            turn = turn_for(work, due, desks, now=now)
            # The rule moves first: what the turn sets for itself (a once-rule anew) then stands.
            storage.schedule.advance(work, rule, now=now)
            origin = Origin(by="clock", at=now, source=f"r{stamp}")
            done = commit(work, turn, origin=origin, key=f"remind:{stamp}", now=now)
    except Overtaken:
        return None
    except Exception as error:
        if is_retryable(error):
            raise  # the database's trouble: tried again with the next tick
        return _fail(work, rule, failures, error, now=now)
    failures.forget(rule)
    log.info(
        "tick",
        rule=rule.id,
        kind=rule.kind.value,
        facts=len(turn.facts),
        says=len(turn.says),
        skipped=turn.skipped or None,
        late_s=int((now - rule.due_at).total_seconds()),
    )
    return done.parcels


def _fail(work: Work, rule: DueRule, failures: Failures, error: Exception, *, now: datetime) -> int:
    tries = failures.count(rule)
    log.error("tick failed", rule=rule.id, kind=rule.kind.value, tries=tries, error=place_of(error))
    if tries >= TRIES:
        failures.forget(rule)
        storage.schedule.advance(work, rule, now=now)
    return 0
