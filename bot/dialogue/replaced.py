"""An exercise reported that the session lacks: what it is, and which planned ones it may have been done in place of."""

from bot.notation.answer import Ask, AskKind
from bot.training.catalogue import catalogue
from bot.training.catalogue_exercise import Exercise, name_key, name_words
from bot.training.plan import PlannedExercise
from bot.training.session import Session
from bot.training.swap_rank import Sought, is_like

AFTER_ALL = "b"
"""On a button in the place of an exercise: the plan before is meant."""
MOST = 3
"""Planned exercises that are offered at once."""


def in_place_of(session: Session, text: str, ask: Ask | None) -> tuple[Exercise | None, tuple[str, ...]]:
    """The catalogue's exercise that the doubtful words name, and the open ones of the session whose place it may have
    taken: those of the same movement first, then those that work a muscle of it."""
    one = None if ask is None or ask.kind is not AskKind.UNKNOWN_EXERCISE else named(text[slice(*ask.span)])
    if one is None or any(catalogue().find(e.name) == one for e in session.plan.exercises):
        return None, ()
    still_open = [e for e in session.plan.exercises if session.sets_reported(e) < len(e.sets)]
    alike = [e for e in still_open if is_like(_sought(e), one)]
    same = [e for e in alike if _sought(e).pattern is one.pattern]
    return one, tuple(e.name for e in (*same, *(e for e in alike if e not in same)))[:MOST]


def taken_out(session: Session, text: str, ask: Ask | None) -> str:
    """The exercise that the doubtful words name, where the last change of plan took it out and may be taken back; empty
    where it did not."""
    if ask is None or ask.kind is not AskKind.UNKNOWN_EXERCISE or not session.may_go_back:
        return ""
    words, now = text[slice(*ask.span)], {e.name for e in session.plan.exercises}
    one, key = catalogue().find(words), name_key(words)
    gone = [e for e in session.changes[-1].before.exercises if e.name not in now]
    said = (e for e in gone if key in {name_key(n) for n in (e.name, *e.aliases)})
    meant = (e for e in gone if one is not None and catalogue().find(e.name) == one)
    found = next(said, None) or next(meant, None)
    return "" if found is None else found.name


def named(words: str) -> Exercise | None:
    """The exercise that goes by this name, or by one so like it that all its words are in it."""
    found = catalogue().find(words)
    if found is not None:
        return found
    said = name_words(words)
    near = catalogue().similar(words)
    return next((e for e in near if said and any(said <= name_words(name) for name in (e.name, *e.aliases))), None)


def _sought(exercise: PlannedExercise) -> Sought:
    return Sought.of(exercise, catalogue())
