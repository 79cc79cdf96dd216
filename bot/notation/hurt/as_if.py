"""Somebody who is only what it feels like, and a hurt whose telling alone is put off. Common practice, no source."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set


def is_nobody(scene: Passage, other: Mark, mark: Mark) -> bool:
    """`feels like somebody parked a van on my chest`: nobody, only what it feels like; not `looks like someone fell`.

    What is done there must be done to the client, or the sign stand in a clause of its own behind it.
    """
    if scene.word(other.end - 1) not in _ANYBODY:
        return False
    low = max(0, other.first - _FAR_FELT)
    like = next((i for i in range(other.first - 1, low - 1, -1) if scene.word(i) in _LIKE), None)
    felt = like is not None and scene.clause_before(like + 1, _FAR_FELT) & _FELT
    mine = any(s.mine and 0 < s.first - other.end <= _FAR_MINE for s in scene.spots)
    apart = scene.soft_gaps(other.end, mark.first + 1) > 0
    return bool(felt) and (mine or apart) and not scene.soft_gaps((like or 0) + 1, other.first + 1)


_ANYBODY = word_set("somebody someone bloke guy man people person fella lad")
_LIKE = word_set("like as if though")
_FELT = word_set("feel feels felt feeling is it's was seems seemed")
_FAR_FELT = 5
"""Words before somebody in which a hurt is likened to what they do."""
_FAR_MINE = 16
"""Words behind somebody in which the place is named that it is done to."""


def only_tells(scene: Passage, future: Mark, mark: Mark) -> bool:
    """`i might mention a mild ache`, `would also report a pinch`: only the telling is put off; not `any ache`."""
    says = future.end + (scene.word(future.end) in ("also", "just", "perhaps", "maybe", "still"))
    led = scene.words(says + 1, mark.first)
    told = future.cue is Cue.FUTURE and scene.word(says) in _TELLING
    told = told and (scene.word(future.first) == "i'll" or scene.word(future.first - 1) in ("i", "we"))
    return told and bool(led & _ONE_THAT_IS) and not led & _NONE_YET


_TELLING = word_set("mention note report flag admit confess raise declare")
_ONE_THAT_IS = word_set("a an the my this that some one slight mild small little left right")
_NONE_YET = word_set("any if whether when no future possible potential every new")
