"""Pain as somebody reported it, and what follows from it. Never a diagnosis.

What is decided here: whether help comes first, whether the score is asked, what is held, whether the coach hears at
once, and what the next morning's answer changes. The words for it are elsewhere.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from bot.training.report import Side


@dataclass(frozen=True, slots=True)
class PainSaid:
    """Pain as a client said it.

    `where` is the plainest singular noun used, lower case, without the side; `None` where no place was said.
    `score` is out of ten, `None` where none was said. `urgent` marks what no coach should wait on.
    """

    where: str | None
    score: int | None
    side: Side | None
    urgent: bool


@dataclass(frozen=True, slots=True)
class PainPolicy:
    """Where the bands of a score (0 to 10) lie, and from where the coach hears at once. All are settings.

    Published edges disagree, so they are a coach's to set; the defaults are on the cautious side.
    """

    safe_to: int = 2
    """Up to here the exercise may go on as it is (pain-monitoring model, Thomeé 1997, Phys Ther 77:1690-1703, from
    memory: 0 to 2 safe; one physiotherapy page has up to 3)."""
    acceptable_to: int = 5
    """Up to here it may go on without more load if it settles by the next morning; over it the exercise stops (the same
    model, from memory: 3 to 5 acceptable, over 5 high risk; Silbernagel et al. 2007, Am J Sports Med 35:897-906 loaded
    under it with no worse outcome at twelve months)."""
    severe_from: int = 7
    """From here the pain is called severe (Serlin et al. 1995, Pain 61:277-284; Palos et al. 2006, J Pain 7:49-56: 7;
    Boonstra et al. 2016, Front Psychol 7:1466: 8)."""
    tell_at_once_from: int = 0
    """From this score the coach hears at once and not only in the digest: of everything, until a coach sets it."""
    rising_weeks: int = 2
    """Weeks within which pain must not rise (the model: not from week to week; from memory)."""

    def __post_init__(self) -> None:
        """Refuse bands out of order with `ValueError`."""
        if not 0 <= self.safe_to <= self.acceptable_to < 10 or not self.safe_to < self.severe_from <= 10:
            msg = "pain bands must rise: safe_to <= acceptable_to < 10, and safe_to < severe_from <= 10"
            raise ValueError(msg)
        if not 0 <= self.tell_at_once_from <= 10 or self.rising_weeks < 1:
            msg = "tell_at_once_from lies in 0 to 10, rising_weeks is at least 1"
            raise ValueError(msg)


class Tell(StrEnum):
    """When the coach hears of it."""

    AT_ONCE = "at once"
    DIGEST = "in the digest"


@dataclass(frozen=True, slots=True)
class GetHelp:
    """An urgent sign: the first words are to stop and get help, the session ends, the coach hears at once."""


@dataclass(frozen=True, slots=True)
class AskScore:
    """No score was said: it is asked, and the exercise stays held until it is known."""

    tell: Tell


@dataclass(frozen=True, slots=True)
class StopExercise:
    """More than may be trained through: the exercise stops and stays held until the coach lets it go on."""

    severe: bool
    tell: Tell


@dataclass(frozen=True, slots=True)
class KeepLoad:
    """The exercise may go on, its load is not raised. `watch` where it must have settled by the next morning."""

    watch: bool
    tell: Tell


PainResponse = GetHelp | AskScore | StopExercise | KeepLoad
"""What follows from pain. Whichever it is, a follow-up comes the next morning."""

DEFAULT_POLICY = PainPolicy()


def respond(said: PainSaid, policy: PainPolicy = DEFAULT_POLICY) -> PainResponse:
    """What follows from pain as said. Urgent comes before any score, and a missing score is never taken as low.

    >>> respond(PainSaid("knee", 6, None, urgent=False))
    StopExercise(severe=False, tell=<Tell.AT_ONCE: 'at once'>)
    """
    if said.urgent:
        return GetHelp()
    if said.score is None:
        return AskScore(Tell.AT_ONCE)
    tell = Tell.AT_ONCE if said.score >= policy.tell_at_once_from else Tell.DIGEST
    if said.score > policy.acceptable_to:
        return StopExercise(said.score >= policy.severe_from, Tell.AT_ONCE)
    return KeepLoad(said.score > policy.safe_to, tell)


def holds_exercise(response: PainResponse) -> bool:
    """Whether the exercise stops, and is not given again until it is let go."""
    match response:
        case GetHelp() | AskScore() | StopExercise():
            return True
        case KeepLoad():
            return False


def tells_at_once(response: PainResponse) -> bool:
    """Whether the coach hears at once."""
    match response:
        case GetHelp():
            return True
        case AskScore(tell) | StopExercise(tell=tell) | KeepLoad(tell=tell):
            return tell is Tell.AT_ONCE


class Morning(StrEnum):
    """How it is the next morning, as answered."""

    GONE = "gone"
    BETTER = "better"
    SAME = "same"
    WORSE = "worse"
    SILENT = "no answer"


@dataclass(frozen=True, slots=True)
class Release:
    """It is over: what was held goes on."""


@dataclass(frozen=True, slots=True)
class KeepHeld:
    """Not over yet: what was held stays held, and the question comes again the next morning."""

    tell: Tell


MorningResponse = Release | KeepHeld


def after_morning(said: PainSaid, answer: Morning) -> MorningResponse:
    """What the next morning's answer changes. Only `gone` releases, and an urgent sign is released by the coach alone.

    Pain that has not settled by the next morning is more than the model allows (Thomeé 1997, from memory): the coach
    hears at once where it is the same or worse, and of silence in the digest.
    """
    if answer is Morning.GONE and not said.urgent:
        return Release()
    calm = answer in (Morning.BETTER, Morning.SILENT) and not said.urgent
    return KeepHeld(Tell.DIGEST if calm else Tell.AT_ONCE)


@dataclass(frozen=True, slots=True)
class PainOnDay:
    """A score out of ten on a training day."""

    day: date
    score: int


def is_rising(scores: Sequence[PainOnDay], policy: PainPolicy = DEFAULT_POLICY) -> bool:
    """Whether pain in one place rises: the highest of the newest week above the highest of the weeks just before it.

    `scores` in any order; they are weighed by seven-day weeks back from the newest. One day alone says nothing.
    """
    if not scores:
        return False
    newest = max(s.day for s in scores)
    ages = [((newest - s.day).days, s.score) for s in scores]
    now = max(score for age, score in ages if age < 7)
    before = [score for age, score in ages if 7 <= age < 7 * policy.rising_weeks]
    return bool(before) and now > max(before)
