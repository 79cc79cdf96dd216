"""Breath that was gone and came back within a minute or two, as after any hard set; common practice, no source."""

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Kind

_BREATH = word_set("breath breathe breathing breathed air wind puff lungs")
_BACK = word_set("normal normally back returned returns fine ok okay easily settled recovered again")
_NOT_BACK = word_set(
    """
    not never still can't won't doesn't isn't hasn't haven't didn't until till until hardly barely almost nearly
    should will hope hoping wait waiting if yet since chest dizzy faint lightheaded pain tight hurts hurt inhaler asthma
    sitting lying resting home talking stairs hour hours
    """
)
_SHORTLY = word_set("after within then minute min seconds secs sec moment bit now soon quickly quick and but one")


def came_back(scene: Passage, m: Mark) -> bool:
    """`i was without air but after one minute i breathe normal again`: breath that came back, and soon.

    Nothing else may be said of it: not `still not back`, `took 20 minutes`, `and my chest is tight`.
    """
    if scene.sentence_words(m.first) & _NOT_BACK - scene.words(m.first, m.end):
        return False
    timed = [t.word for i, t in enumerate(scene.tokens) if t.kind is Kind.TIME and scene.same_sentence(i, m.first)]
    if any(not _is_short(said) for said in timed):
        return False
    behind = range(m.end, min(m.end + 14, len(scene.tokens)))
    for at in (i for i in behind if scene.word(i) in _BREATH and scene.same_sentence(i, m.first)):
        if scene.words(at + 1, at + 6) & _BACK and (timed or scene.words(m.end, at + 6) & _SHORTLY):
            return True
    return False


def _is_short(time: str) -> bool:
    """Whether a time is two minutes at most, in which breath comes back to anybody: `30 sec`, `1 min`, `2 minutes`."""
    number, _, unit = time.partition(" ")
    size = number.rstrip("abcdefghijklmnopqrstuvwxyz")
    unit = unit or number[len(size) :]
    return unit.startswith("s") or (unit.startswith("m") and not unit.startswith("mo") and size in ("1", "2"))
