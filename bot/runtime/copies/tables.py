"""The sheets of a copy's workbook: sessions planned beside done, pain, words, notes, programmes, strength."""

from collections.abc import Callable, Iterable, Iterator
from datetime import datetime
from decimal import Decimal
from zoneinfo import ZoneInfo

from bot.runtime.copies.book import Cell, Sheet
from bot.training.people import Gym, Programme
from bot.training.plan import PlannedExercise, PlannedSet
from bot.training.report import Performed, Stage
from bot.training.shown import MEASURES
from bot.training.state import State
from bot.training.strength import estimate
from bot.training.units import KG_PER_LB, Load, Unit
from bot.wording import show
from storage.copies import Scope, Subject
from storage.history import (
    SessionDone,
    given_to,
    notes_of,
    pains_of,
    sessions_of,
    shelf_whole,
    strengths_whole,
    words_of,
)
from storage.plans import GYM
from storage.work import Work

Rows = Iterator[tuple[Cell, ...]]

PEOPLE = (
    "id name standing unit zone days hour equipment programme next-workout consent joined flagged words-each-set coach"
)
SESSIONS = "day workout ended planned-minutes minutes session-effort planned-sets sets-done first-report last-report"
SETS = (
    "day exercise set stage side planned-low planned-high planned-load planned-unit planned-rir "
    "planned-rest done load unit rir measure load-means"
)
PAINS = "when exercise where side score urgent words settled"
WORDS = "when kind words answered"
NOTES = "when words"
PROGRAMMES = (
    "when programme workout workout-minutes exercise set planned-low planned-high measure "
    "planned-load planned-unit planned-rir planned-rest cue note"
)
STRENGTH = "exercise day max max-sd unit"


def sheets_of(work: Work, scope: Scope) -> Iterator[Sheet]:
    """All sheets, each read through as it is written."""
    of_each: tuple[tuple[str, str, Callable[[Work, Subject], Rows]], ...] = (
        ("sessions", SESSIONS, _sessions),
        ("sets", SETS, _sets),
        ("pain", PAINS, _pains),
        ("words", WORDS, _words),
        ("notes", NOTES, _notes),
        ("given", PROGRAMMES, _given),
        ("strength", STRENGTH, _strength),
    )
    yield _sheet("people", PEOPLE, (_person(s) for s in scope.subjects))
    for name, headings, rows in of_each:
        yield _sheet(name, f"id name {headings}", _for_each(work, scope.subjects, rows))
    owner = scope.owner
    if owner is not None:
        shelf = (
            row
            for given in shelf_whole(work, owner.id)
            for row in _programme(_when(given.at, owner.zone), given.programme)
        )
        yield _sheet("shelf", PROGRAMMES, shelf)


def _sheet(name: str, headings: str, rows: Iterable[tuple[Cell, ...]]) -> Sheet:
    return Sheet(show(f"copy-sheet-{name}"), tuple(show(f"copy-col-{h}") for h in headings.split()), rows)


def _for_each(work: Work, subjects: tuple[Subject, ...], rows: Callable[[Work, Subject], Rows]) -> Rows:
    for subject in subjects:
        for row in rows(work, subject):
            yield (subject.id, subject.name, *row)


def _person(subject: Subject) -> tuple[Cell, ...]:
    row = subject.row
    return (
        subject.id,
        subject.name,
        row.standing,
        row.unit,
        row.zone,
        ", ".join(show(f"copy-day-{day}") for day in row.days),
        row.hour.strftime("%H:%M"),
        _equipment(GYM.read_kept(row.gym)),
        row.programme,
        row.workout + 1,
        row.consent,
        _when(row.joined_at, row.zone),
        _yes(row.readiness_flagged),
        _yes(row.confirm_in_words),
        subject.coach_name,
    )


def _equipment(gym: Gym) -> str:
    (low, high, step), (first, last, apart) = gym.dumbbells, gym.stack
    return show(
        "copy-equipment",
        unit=gym.unit.value,
        bar=str(gym.bar),
        plate=str(gym.plate),
        highest=str(gym.bar_highest),
        dumbbells=f"{low}-{high} / {step}",
        stack=f"{first}-{last} / {apart}",
    )


def _sessions(work: Work, subject: Subject) -> Rows:
    for session in sessions_of(work, subject.id):
        yield (
            session.day.isoformat(),
            session.plan.title,
            session.ended,
            session.plan.minutes,
            session.minutes,
            session.effort,
            session.plan.set_count,
            sum(p.stage is Stage.WORK for p in session.done),
            _when(session.first_at, subject.zone),
            _when(session.last_at, subject.zone),
        )


def _sets(work: Work, subject: Subject) -> Rows:
    for session in sessions_of(work, subject.id):
        yield from _of_session(session)


def _of_session(session: SessionDone) -> Rows:
    """Each planned set with what was done of it, in order; then what was done beside the plan."""
    day, used = session.day.isoformat(), set[int]()
    for exercise in session.plan.exercises:
        for number, planned in enumerate(exercise.sets, 1):
            mine = [n for n, p in enumerate(session.done) if p.exercise == exercise.name and p.set == number]
            used.update(mine)
            if not mine:
                yield _set(day, exercise, number, planned, None)
            for done in (session.done[n] for n in mine):
                yield _set(day, exercise, number, planned if done.stage is Stage.WORK else None, done)
    exercises = {exercise.name: exercise for exercise in session.plan.exercises}
    for n, done in enumerate(session.done):
        if n not in used:
            yield _set(day, exercises.get(done.exercise), done.set, None, done)


def _set(
    day: str, exercise: PlannedExercise | None, number: int | None, planned: PlannedSet | None, done: Performed | None
) -> tuple[Cell, ...]:
    load = None if done is None else done.load
    name = done.exercise if done is not None else exercise.name if exercise is not None else ""
    return (
        day,
        name,
        number,
        show("copy-not-done") if done is None else done.stage.value,
        None if done is None or done.side is None else done.side.value,
        *_asked(planned),
        None if done is None else done.reps,
        None if load is None else load.amount,
        None if load is None else load.unit.value,
        None if done is None else done.rir,
        None if exercise is None else MEASURES[exercise.measure],
        None if exercise is None else exercise.load_style.value,
    )


def _asked(planned: PlannedSet | None) -> tuple[Cell, ...]:
    """From repetitions to rest; empty where the set was not asked for."""
    if planned is None:
        return (None,) * 6
    return (planned.reps.low, planned.reps.high, *_amount(planned.load), planned.rir, planned.rest_s)


def _amount(load: Load | None) -> tuple[Cell, Cell]:
    return (None, None) if load is None else (load.amount, load.unit.value)


def _pains(work: Work, subject: Subject) -> Rows:
    for pain in pains_of(work, subject.id):
        said = pain.hurt.said
        yield (
            _when(pain.at, subject.zone),
            pain.hurt.exercise,
            said.where,
            None if said.side is None else said.side.value,
            said.score,
            _yes(said.urgent),
            pain.hurt.words,
            _when(pain.closed_at, subject.zone),
        )


def _words(work: Work, subject: Subject) -> Rows:
    for said in words_of(work, subject.id):
        yield (_when(said.at, subject.zone), said.kind, said.words, _when(said.closed_at, subject.zone))


def _notes(work: Work, subject: Subject) -> Rows:
    for note in notes_of(work, subject.id):
        yield (_when(note.at, subject.zone), note.words)


def _given(work: Work, subject: Subject) -> Rows:
    for given in given_to(work, subject.id):
        yield from _programme(_when(given.at, subject.zone), given.programme)


def _programme(when: Cell, programme: Programme) -> Rows:
    """Each prescribed set."""
    for workout in programme.workouts:
        for exercise in workout.exercises:
            for number, planned in enumerate(exercise.sets, 1):
                reps = (planned.reps.low, planned.reps.high, MEASURES[exercise.measure])
                yield (
                    when,
                    programme.title,
                    workout.title,
                    workout.minutes,
                    exercise.name,
                    number,
                    *reps,
                    *_amount(planned.load),
                    planned.rir,
                    planned.rest_s,
                    planned.cue or exercise.cue,
                    exercise.note,
                )


def _strength(work: Work, subject: Subject) -> Rows:
    """The estimate of each exercise as of the day it was last done, in the client's unit."""
    unit = Unit(subject.row.unit)
    for exercise, day, state in strengths_whole(work, subject.id):
        found = estimate(State.from_json(state), day)
        mean, sd = (None, None) if found is None else (_in(unit, found.mean_kg), _in(unit, found.sd_kg))
        yield (exercise, day.isoformat(), mean, sd, unit.value)


def _in(unit: Unit, kg: float) -> Decimal:
    amount = Decimal(str(kg)) if unit is Unit.KG else Decimal(str(kg)) / KG_PER_LB
    return amount.quantize(Decimal("0.1"))


def _yes(is_so: bool) -> str:
    return show("copy-yes" if is_so else "copy-no")


def _when(at: datetime | None, zone: str) -> str | None:
    """Local time with its distance from UTC (ISO 8601)."""
    return None if at is None else at.astimezone(ZoneInfo(zone)).isoformat(timespec="seconds")
