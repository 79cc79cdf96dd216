"""Less time today: what to do first so that the session fits, in the order that matters to the coach."""

from decimal import Decimal

from bot.dialogue.phrases import names_line
from bot.dialogue.turn import Turn
from bot.dialogue.underway import UnderWay
from bot.saying import Line, Say, line
from bot.training.plan import PlannedExercise
from bot.training.timing import session_minutes


def fit_into(at: UnderWay, minutes: Decimal) -> Turn:
    """Says what fits into these minutes: by priority, then in the plan's order; the coach's plan itself stays."""
    remaining = [e for e in at.session.plan.exercises if not at.session.is_complete(e)]
    if not remaining:
        return Turn()
    if session_minutes(tuple(remaining)) <= minutes:
        return Turn(says=(Say(at.client.profile.chat, (line("minutes-enough", minutes=minutes),)),))
    kept = fitting(remaining, minutes)
    left_out = [e.name for e in remaining if e not in kept]
    lines: list[Line] = []
    if kept:
        total = session_minutes(tuple(kept))
        lines.append(line("minutes-do", minutes=minutes, names=names_line([e.name for e in kept]), about=total))
        lines.append(line("minutes-leave", names=names_line(left_out)))
    else:
        lines.append(line("minutes-too-few", minutes=minutes, name=remaining[0].name))
    return Turn(says=(Say(at.client.profile.chat, tuple(lines)),))


def fitting(exercises: list[PlannedExercise], minutes: Decimal) -> list[PlannedExercise]:
    """The exercises that fit, most important first, in the plan's order."""
    kept: list[PlannedExercise] = []
    for exercise in sorted(exercises, key=lambda e: e.priority):
        tried = [e for e in exercises if e in kept or e is exercise]
        if session_minutes(tuple(tried)) <= minutes:
            kept.append(exercise)
    return [e for e in exercises if e in kept]
