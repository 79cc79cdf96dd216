"""Bones broken and joints torn long ago that healed: `broke my wrist at twelve, healed, never bothered me since`.

Only what breaks and mends, only of childhood, school or a year long past, and only where it is said to be well; a
`but`, a `still`, a `today` keep it. Common practice, no source.
"""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.matching import Mark
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set

_BROKE = word_set(
    """
    broke broken break fractured fracture snapped shattered cracked smashed dislocated dislocation tore torn ruptured
    bust busted popped sprained twisted slipped herniated
    """
)
_AGES = word_set("five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen")
_YOUNG = word_set("kid child boy girl lad lass teen teenager nipper youngster toddler bairn wean schoolboy schoolgirl")
_SCHOOLS = word_set("primary secondary middle elementary grade nursery junior high grammar infant")
_MENDED = word_set("healed mended fused sorted fixed forgotten recovered")
_WELL = word_set("solid fine sound good grand strong right perfect great ok okay perfectly golden brilliant")
_TROUBLE = word_set(
    """
    bothered bother bothers issue issues trouble troubled problem problems hurt hurts felt feel noticed thought
    complained peep twinge looked grief gyp
    """
)
_NOT_EVER = word_set("never no not nothing hasn't haven't didn't zero")
_GOES_ON = word_set("and but can't won't")
"""Between a break and a time these tell that the time is of something else."""
_KEEPS = word_set(
    """
    but though although until till still again today yesterday tonight lately recently except apart week month aches
    hurting sore twinges playing almost nearly mostly hardly isn't wasn't same other both just
    """
)


def healed_long_ago(scene: Passage, mark: Mark) -> bool:
    """Whether a break is of childhood or of years ago, and is said there or right behind to have healed."""
    if not scene.words(mark.first, mark.end) & _BROKE:
        return False
    number = scene.sentence[mark.first]
    here = [i for i, n in enumerate(scene.sentence) if n == number]
    if not _is_long_past(scene, mark, here):
        return False
    both = [i for i, n in enumerate(scene.sentence) if number <= n <= number + 1]
    low, high = both[0], both[-1] + 1
    kept = [i for i in range(low, high) if scene.word(i) in _KEEPS and not _denied(scene, i)]
    return not kept and any(_says_well(scene, i) for i in range(mark.first, high))


def _is_long_past(scene: Passage, mark: Mark, here: list[int]) -> bool:
    """Whether a time long ago is told of this break, no other one standing between them."""
    then = [i for i in here if i in scene.years or _is_childhood(scene, i)]
    then += [m.first for m in scene.of(Cue.LONG_AGO) if here[0] <= m.first <= here[-1]]
    between = [scene.words(mark.end, i) if i >= mark.end else scene.words(i, mark.first) for i in then]
    return any(not words & (_BROKE | _GOES_ON) for words in between)


def _is_childhood(scene: Passage, at: int) -> bool:
    """`at twelve`, `aged 9`, `as a nipper`, `in primary school`."""
    word, before = scene.word(at), scene.word(at - 1)
    young = word in _AGES or (word.isdigit() and 4 <= int(word) <= _GROWN)
    if young and before in ("at", "aged", "age"):
        return scene.word(at + 1) not in ("am", "pm", "o'clock", "reps", "kg", "this", "sharp", "today")
    if word in _YOUNG and before == "a" and scene.word(at - 2) in ("as", "was"):
        return True
    return word == "school" and (before in _SCHOOLS or before in ("at", "in"))


_GROWN = 18


def _says_well(scene: Passage, at: int) -> bool:
    word = scene.word(at)
    if word in _MENDED and not scene.words(at - 3, at) & _NOT_EVER:
        return True
    if word in _WELL and scene.words(at + 1, at + 5) & {"since", "now"} and not scene.words(at - 2, at) & _NOT_EVER:
        return True
    return word in _TROUBLE and _denied(scene, at) and bool(scene.words(at + 1, at + 5) & {"since", "now", "after"})


def _denied(scene: Passage, at: int) -> bool:
    return bool(scene.words(at - 4, at) & _NOT_EVER)
