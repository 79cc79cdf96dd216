"""What became of each day: done, partly, missed, given up, moved, to come, or rest."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum

from bot.training.facts import Ending
from bot.training.life import DayChange
from bot.training.report import Stage
from bot.training.session import Session


class DayMark(StrEnum):
    """What became of a day."""

    DONE = "done"
    """Every prescribed set."""
    PARTLY = "partly"
    MISSED = "missed"
    """Nothing was reported."""
    SKIPPED = "skipped"
    """The client gave it up, and said so."""
    MOVED = "moved"
    """Its session went to another day."""
    PLANNED = "planned"
    """It is to come, or is still open today."""
    REST = "rest"
    """No session was asked for."""


COUNTED = (DayMark.DONE, DayMark.PARTLY, DayMark.MISSED, DayMark.SKIPPED)
"""Marks of a session that is over."""
_FIRST = (*COUNTED[:2], DayMark.PLANNED, *COUNTED[2:], DayMark.MOVED, DayMark.REST)
"""Of two sessions on a day the one whose mark comes first here is shown."""


@dataclass(frozen=True, slots=True)
class SentSession:
    """A session, and the day that it was first sent for."""

    session: Session
    sent_for: date


def day_marks(
    sent: Iterable[SentSession],
    *,
    first: date,
    last: date,
    today: date,
    training_days: Sequence[int],
    changes: Iterable[DayChange] = (),
) -> tuple[DayMark, ...]:
    """What became of each day from `first` to `last`. `training_days` (weekdays, Monday is 0) are those on which a
    session will come: none for who has paused. `changes` tell of days before whose session was never sent."""
    found: dict[date, DayMark] = {}
    for change in changes:
        _note(found, change.day, DayMark.SKIPPED if change.to is None else DayMark.MOVED)
    for one in sent:
        _note(found, one.session.day, mark_of(one.session, today))
        if one.sent_for < one.session.day:
            _note(found, one.sent_for, DayMark.MOVED)
    days = [first + timedelta(days=n) for n in range((last - first).days + 1)]
    coming = DayMark.PLANNED
    return tuple(found.get(d, coming if d >= today and d.weekday() in training_days else DayMark.REST) for d in days)


def mark_of(session: Session, today: date) -> DayMark:
    """What became of a session."""
    if any(p.stage is Stage.WORK for p in session.done):
        is_whole = all(session.sets_reported(e) == len(e.sets) for e in session.plan.exercises)
        return DayMark.DONE if is_whole else DayMark.PARTLY
    if session.ended is Ending.SKIPPED:
        return DayMark.SKIPPED
    return DayMark.PLANNED if session.ended is None and session.day >= today else DayMark.MISSED


def _note(found: dict[date, DayMark], day: date, mark: DayMark) -> None:
    found[day] = min(found.get(day, mark), mark, key=_FIRST.index)


def counted(marks: Iterable[DayMark]) -> tuple[int, int, int]:
    """Sessions done (also in part), those in part, and all that are over."""
    over = [mark for mark in marks if mark in COUNTED]
    partly = over.count(DayMark.PARTLY)
    return over.count(DayMark.DONE) + partly, partly, len(over)
