"""A bare number that a joint before it and a time behind it make a score: `hip 3 on the way down`."""

from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap

_TIMES = {
    "by": word_set("the end"),
    "at": word_set("the first rest start end last"),
    "on": word_set("the way stairs"),
    "going": word_set("up down in out back"),
    "coming": word_set("up down in out back"),
    "last": word_set("week time session month night"),
    "to": word_set("start begin"),
    "the": word_set("day next other"),
    "this": word_set("morning time week"),
}


def of_a_time(scene: Passage, end: int) -> bool:
    """Whether a time follows a number: `at first`, `by the end`, `last week`, `today`."""
    if end >= len(scene.tokens) or scene.tokens[end].gap is Gap.HARD:
        return False
    word = scene.word(end)
    return word in ("today", "now", "yesterday", "after", "afterwards") or scene.word(end + 1) in _TIMES.get(word, ())


def of_a_joint(scene: Passage, first: int) -> bool:
    """Whether a joint is named right before a number: `hip 3`, `knee was a 2`."""
    at = first - 1
    while scene.word(at) in ("a", "was", "is", "'s", "at", "about", "maybe", "like"):
        at -= 1
    joints = [s for s in scene.spots if s.end == at + 1 and not s.place.plural]
    return any(s.place.tissue in (Tissue.JOINT, Tissue.MIXED) and s.place.name not in ("side", "hand") for s in joints)
