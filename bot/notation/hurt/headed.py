"""A day that heads a report: it says when all of it was, not what a place is sore from, nor that a hurt is over."""

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set

_SESSIONS = word_set("session workout training")


def heads_report(scene: Passage, day: Mark, mark: Mark) -> bool:
    """Whether a day heads what is told with `mark`: `yesterday: lower back ached, 140x5`."""
    end = day.end + (scene.word(day.end) in _SESSIONS)
    return day.first == 0 and end <= mark.first and scene.ends(end)
