"""A past session in words: each set as planned, and beside it what was done."""

from bot.dialogue.phrases import done_line, joined, planned_line
from bot.saying import BLANK, Line, line
from bot.training.plan import PlannedExercise
from bot.training.report import Performed, Stage
from bot.training.session import Session


def session_lines(name: str, session: Session) -> tuple[Line, ...]:
    """Title, every exercise with its sets, how hard it felt, how it ended."""
    lines: list[Line] = [line("last-title", name=name, title=session.plan.title, day=session.day)]
    for exercise in session.plan.exercises:
        lines += [BLANK, line("last-exercise", name=exercise.name), *_sets(session, exercise)]
    if session.effort is not None:
        lines += [BLANK, line("last-effort", rating=session.effort)]
    return tuple(lines)


def _sets(session: Session, exercise: PlannedExercise) -> list[Line]:
    done = [p for p in session.done if p.exercise == exercise.name and p.stage is not Stage.WARMUP]
    lines: list[Line] = []
    for number, planned in enumerate(exercise.sets, 1):
        of_set = [p for p in done if p.set == number]
        shown = planned_line(exercise, planned)
        if of_set:
            lines.append(line("view-set", number=number, planned=shown, done=_all(exercise, of_set)))
        else:
            key = "view-set-to-come" if session.ended is None else "view-set-open"
            lines.append(line(key, number=number, planned=shown))
    beyond = [p for p in done if p.set is None or p.set > len(exercise.sets)]
    return [*lines, line("view-set-more", done=_all(exercise, beyond))] if beyond else lines


def _all(exercise: PlannedExercise, done: list[Performed]) -> Line:
    return joined([done_line(exercise, p) for p in done])
