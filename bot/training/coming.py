"""The days of a week that are still to come, and what each holds: as every week, or as the week was laid anew."""

from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.training.calendar import monday_of
from bot.training.life import LaidDay, LaidWeek, Life
from bot.training.people import Programme, TrainingTime, Workout
from bot.training.session import Session
from bot.training.weeks import week_number, workout_in_week


@dataclass(frozen=True, slots=True)
class ComingDay:
    """A day without a session yet: what it will hold, and the place in the programme after which the turn goes on."""

    day: date
    place: int
    workout: Workout
    laid: LaidDay


@dataclass(frozen=True, slots=True)
class Coming:
    """The days of a week still to come, in order; `turn` is the place of the workout that comes after them."""

    days: tuple[ComingDay, ...]
    turn: int

    def on(self, day: date) -> ComingDay | None:
        """What that day will hold; `None` where it holds nothing, or is no day to come."""
        return next((d for d in self.days if d.day == day), None)


@dataclass(frozen=True, slots=True)
class Trainee:
    """What the days to come depend on: when somebody trains, what, whose turn it is, and how weeks were laid."""

    trains: TrainingTime
    programme: Programme
    begun: date | None
    turn: int
    life: Life

    @property
    def tag(self) -> str:
        """Names the programme that a week's exercises were laid from."""
        return f"{self.programme.id}:{self.begun}"


def coming_days(of: Trainee, today: date, monday: date, sessions: Iterable[Session] = ()) -> Coming:
    """The days from today on in the week from `monday`; `sessions` are those of this week, whatever became of them."""
    here = tuple(sessions)
    is_open = [s for s in here if s.ended is None and s.day >= today]
    turn = max((s.workout + 1 for s in is_open), default=of.turn) if monday == monday_of(today) else of.turn
    days: list[ComingDay] = []
    for laid in laid_days(of, today, monday, {s.day for s in here}):
        place = laid.workout if not laid.is_plain else turn % len(of.programme.workouts)
        days.append(ComingDay(laid.day, place, workout_on(of, laid, place), laid))
        turn = place + 1
    return Coming(tuple(days), turn % len(of.programme.workouts))


def laid_days(of: Trainee, today: date, monday: date, taken: Collection[date] = ()) -> tuple[LaidDay, ...]:
    """What the week has from today on, on days that have no session yet."""
    week = laid_week(of.life, of.trains, monday)
    if week is None:
        days = usual_days(of.trains, monday)
    elif week.programme != of.tag:
        days = tuple(LaidDay(d.day) for d in week.days)
    else:
        days = week.days
    return tuple(d for d in days if d.day >= today and d.day not in taken)


def laid_week(life: Life, trains: TrainingTime, monday: date) -> LaidWeek | None:
    """The week as it was laid; `None` where it is as every week, or the training days are others by now."""
    week = life.week(monday)
    return week if week is not None and week.trained_on == trains.days else None


def usual_days(trains: TrainingTime, monday: date) -> tuple[LaidDay, ...]:
    """The days of every week."""
    return tuple(LaidDay(monday + timedelta(days=n)) for n in sorted(trains.days))


def workout_on(of: Trainee, laid: LaidDay, place: int) -> Workout:
    """What a day holds, as it is in its week of the programme."""
    if not laid.is_plain:
        return Workout(laid.title, laid.exercises)
    return workout_in_week(of.programme, place, week_number(of.begun or laid.day, laid.day))


def is_training_day(life: Life, trains: TrainingTime, day: date) -> bool:
    """Whether a session comes on that day."""
    week = laid_week(life, trains, monday_of(day))
    return day.weekday() in trains.days if week is None else any(d.day == day for d in week.days)


def next_day(life: Life, trains: TrainingTime, after: date) -> date | None:
    """The first day after this one on which a session comes; `None` where there is none within two weeks."""
    return next((d for n in range(1, 15) if is_training_day(life, trains, d := after + timedelta(days=n))), None)


def moved(coming: Coming, day: date, to: date) -> tuple[LaidDay, ...]:
    """The days to come with what comes on `day` coming on `to`."""
    days = (replace(d.laid, day=to) if d.day == day else d.laid for d in coming.days)
    return tuple(sorted(days, key=lambda d: d.day))


def week_of(
    of: Trainee, today: date, monday: date, days: tuple[LaidDay, ...], sessions: Iterable[Session] = ()
) -> LaidWeek | None:
    """A week that has these days to come; `None` where every week has."""
    taken = {s.day for s in sessions}
    usual = tuple(d for d in usual_days(of.trains, monday) if d.day >= today and d.day not in taken)
    return None if days == usual else LaidWeek(monday, days, of.trains.days, of.tag)


def free_days(coming: Coming, monday: date, first: date, sessions: Iterable[Session] = ()) -> tuple[date, ...]:
    """The days of the week, from `first` on, that hold nothing."""
    taken = {d.day for d in coming.days} | {s.day for s in sessions}
    week = (monday + timedelta(days=n) for n in range(7))
    return tuple(d for d in week if d >= first and d not in taken)
