"""What a message is read against, and what it was read to say. Plain values; the chat and the terminal share them."""

from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from enum import StrEnum

from bot.training.pain import PainSaid
from bot.training.plan import PlannedExercise
from bot.training.report import Performed, SetKey
from bot.training.units import Unit

Span = tuple[int, int]
"""Where words stand in the raw message: first character, and one past the last."""


@dataclass(frozen=True, slots=True)
class Request:
    """A message with what a coach would know beside it.

    `unit` is the client's own; `now` is aware, its offset is the client's; `done` is what the session holds so far;
    `current` names the exercise that the chat is on (`None`: the first with a prescribed set not yet done).
    """

    text: str
    unit: Unit
    now: datetime
    exercises: tuple[PlannedExercise, ...]
    done: tuple[Performed, ...] = ()
    current: str | None = None


class AskKind(StrEnum):
    """Why a message is asked about. Each has one short question in the wording files."""

    ORDER = "order"
    """Load and repetitions, sets, or list: which number is which."""
    UNIT = "unit"
    """Kilograms or pounds."""
    WHICH_EXERCISE = "which_exercise"
    """A name, or a set without one, that fits more than one exercise."""
    UNKNOWN_EXERCISE = "unknown_exercise"
    """An exercise that the session does not have, or a substitute."""
    OUT_OF_REASON = "out_of_reason"
    """Far outside the plan and the history."""
    RANGE = "range"
    """As planned, where the plan leaves a range, or a load without repetitions."""
    LOAD = "load"
    """Repetitions without a load where one is needed."""
    NUMBER_FORMAT = "number_format"
    """A number that can be written for several: `1.000`, `1e9`."""
    DAY = "day"
    """Which day the report is for."""
    PER_HAND = "per_hand"
    """One dumbbell or both, one side of the bar or all of it."""
    EFFORT = "effort"
    """An effort that is no effort on the scale, or contradicts the repetitions."""
    WHICH_SET = "which_set"
    """Which set a correction is about."""
    SAME = "same"
    """`same`, where there is nothing before it to repeat."""
    DONE = "done"
    """`done` or `as planned`, where it may be a set, an exercise or the session."""
    STOP = "stop"
    """`stopping there`, where it may be the exercise or the session."""
    WHICH_SKIP = "which_skip"
    """Which exercise is skipped."""
    TOO_LONG = "too_long"
    """More than the report of a session: its sets are asked for by themselves."""
    UNSURE = "unsure"
    """Numbers that belong to no reading."""


class Meaning(StrEnum):
    """Which value of a reading is explained."""

    NAME = "name"
    """Of a set: its exercise."""
    SET_NUMBER = "set_number"
    STAGE = "stage"
    LOAD = "load"
    UNIT = "unit"
    REPS = "reps"
    EFFORT = "effort"
    SIDE = "side"
    SETS = "sets"
    """Of a set: how many alike were said at once."""
    CORRECTION = "correction"
    """A stored set that is replaced."""
    SKIP = "skip"
    FINISH = "finish"
    PAIN = "pain"
    SCORE = "score"
    MINUTES = "minutes"
    DAY = "day"
    QUESTION = "question"


class Source(StrEnum):
    """Where a value came from."""

    SAID = "said"
    """The words of the span gave it."""
    PLAN = "plan"
    """The plan: its load, its repetitions where they are one number, its finish."""
    BEFORE = "before"
    """The set before, which the words repeat or leave as it was."""
    KEPT = "kept"
    """As it was stored, where a correction is of something else."""
    OWN = "own"
    """The client's own unit."""
    UNDER_WAY = "under_way"
    """The exercise that the chat, or the message, is on."""
    NEXT = "next"
    """The next set that is open."""
    ANSWERED = "answered"
    """The answer to a question: a reading that the message alone does not tell from others."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """Why one value of a reading is what it is; `value` is the value in notation (`60 kg`, `5`, `Bench Press`).

    `row` is the place of its set in `performed`, `None` for what is of no set. Where `source` is not `SAID` the span is
    that of the words which it completes (`same`, `as planned`, the rest of its set).
    """

    meaning: Meaning
    value: str
    span: Span
    source: Source = Source.SAID
    row: int | None = None


@dataclass(frozen=True, slots=True)
class Choice:
    """One honest reading of a doubtful message: what to print on its button, and all that it would store."""

    label: str
    """Values only, in notation: `60 kg x 5`, `Cable Row`, `2026-03-04`, `kg`."""
    reading: "Reading"


@dataclass(frozen=True, slots=True)
class Ask:
    """What must be asked back. `span` is where the doubtful words stand; `choices` is empty where none is honest."""

    kind: AskKind
    span: Span
    choices: tuple[Choice, ...] = ()
    exercise: str | None = None
    unfinished: "Reading | None" = None
    """Of a question for a load alone: all that the message says, with the plan's load where the true one is lacking."""

    @property
    def question(self) -> str:
        """Which of the questions in the wording files it is: its kind, or whether the sets beside its words are all."""
        return "is-it-this" if self.kind is AskKind.UNSURE and self.choices else self.kind.value.replace("_", "-")


@dataclass(frozen=True, slots=True)
class Reading:
    """What a message says. Where `ask` is set, `performed` and `replaces` are empty: nothing doubtful is stored.

    `performed` is only what this message adds or, with `replaces`, corrects. `minutes` is the time that the client has;
    `day` the day that the report is for where that is not today. `question`: the message wants the coach's answer.
    """

    performed: tuple[Performed, ...] = ()
    replaces: tuple[SetKey, ...] = ()
    skipped: tuple[str, ...] = ()
    finished: bool = False
    pain: PainSaid | None = None
    minutes: Decimal | None = None
    day: date | None = None
    question: bool = False
    ask: Ask | None = None
    evidence: tuple[Evidence, ...] = ()
