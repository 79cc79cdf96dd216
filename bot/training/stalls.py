"""What stalls or drifts on an exercise, from the best sets of its last sessions: said with the numbers behind it.

What counts as a stall has no agreed definition; four sessions without a better set are common practice, no source.
Effort that creeps up at the same load and repetitions is the sign that the published scale of repetitions in reserve is
made to show (Zourdos et al. 2016, J Strength Cond Res 30:267-275); how much of it matters is ours.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from bot.training.exposure import Mark
from bot.training.state import State
from bot.training.strength import shown_kg

SESSIONS = 4
BETTER = 1.005
"""So much more than before is progress: less is rounding."""
CREEPS = 1.5
"""Repetitions in reserve lost at the same work over the last three sessions."""
ALIKE_REPS = 1
EASY_LEFT = 3.0
"""With so much left a stalled lift is not heavy: it waits for load, or for honest effort."""
LONGEST_DAYS = 56
"""Marks older than eight weeks before the last tell nothing of now."""


class Trend(StrEnum):
    """What is wrong; each value is a part of its words' key."""

    STALLED = "stalled"
    """No better set in four sessions."""
    CREEPING = "creeping"
    """The same work leaves less and less."""


class Advice(StrEnum):
    """One suggestion that the coach may apply."""

    LIGHT_WEEK = "light-week"
    """It is hard and goes nowhere."""
    GO_UP = "go-up"
    """It goes nowhere, and is easy."""
    STEP_DOWN = "step-down"
    """The same load gets harder."""


@dataclass(frozen=True, slots=True)
class Drift:
    """A finding: `first` and `last` are the sets that it is read from, `sessions` how many it spans."""

    trend: Trend
    advice: Advice
    sessions: int
    first: Mark
    last: Mark


def drift_of(state: State) -> Drift | None:
    """What stalls or creeps; `None` where nothing does, or too little is known. Creeping effort goes first: it is
    seen sooner."""
    marks = _recent(state.marks)
    return _creeping(marks) or _stalled(state, marks)


def _recent(marks: Sequence[Mark]) -> tuple[Mark, ...]:
    if not marks:
        return ()
    return tuple(m for m in marks if (marks[-1].day - m.day).days <= LONGEST_DAYS)


def _creeping(marks: Sequence[Mark]) -> Drift | None:
    three = marks[-3:]
    if len(three) < 3 or any(m.rir is None for m in three):
        return None
    first, _, last = three
    same = all(m.load_kg == last.load_kg and abs(m.reps - last.reps) <= ALIKE_REPS for m in three)
    left = [m.rir or 0.0 for m in three]
    falls = left[0] >= left[1] >= left[2] and left[0] - left[2] >= CREEPS and last.reps <= first.reps
    return Drift(Trend.CREEPING, Advice.STEP_DOWN, 3, first, last) if same and falls else None


def _stalled(state: State, marks: Sequence[Mark]) -> Drift | None:
    four = marks[-SESSIONS:]
    if len(four) < SESSIONS:
        return None
    shown = [shown_kg(state.whole_kg(m.load_kg), m.reps, m.rir) for m in four]
    if max(shown[1:]) > BETTER * shown[0]:
        return None
    is_easy = four[-1].rir is not None and four[-1].rir >= EASY_LEFT
    return Drift(Trend.STALLED, Advice.GO_UP if is_easy else Advice.LIGHT_WEEK, SESSIONS, four[0], four[-1])
