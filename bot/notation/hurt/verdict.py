"""What a cue of hurt comes to."""

from dataclasses import dataclass
from enum import Enum

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.spots import Spot


class Verdict(Enum):
    """What a cue of hurt comes to; only `PAIN` is pain."""

    PAIN = "pain"
    DENIED = "denied"
    OVER = "over"
    ANOTHERS = "somebody else's"
    SUPPOSED = "only supposed"
    SORENESS = "soreness after training"
    EFFORT = "effort"
    TALK = "everyday talk"


Judged = tuple[Verdict, str]
"""A verdict and its reason in words."""


@dataclass(frozen=True, slots=True)
class Hurt:
    """A cue of hurt judged: its tokens, its place if one is said, the verdict and why."""

    mark: Mark
    spot: Spot | None
    verdict: Verdict
    why: str
