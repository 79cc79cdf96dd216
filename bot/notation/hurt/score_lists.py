"""Several places, each with its number, that are said once to be out of ten: `neck 2, right hip 5 (out of ten)`."""

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap, Kind

_IS = word_set("a was is 's at about maybe like around")
_NUMERALS = word_set("0 1 2 3 4 5 6 7 8 9 10 one two three four five six seven eight nine ten")
_HEADS = word_set("pain pains wise level levels score scores today scale check report now")
_MEASURED = word_set("rep reps set sets kg kgs kilos lb lbs pounds each per side plates times x for of")
"""Behind a number these tell what it counts."""


def out_of_ten(scene: Passage) -> frozenset[int]:
    """The tokens of the tens in `out of ten`, and of both ends in `on a scale of 1 to 10`, which are no scores."""
    tens = [i for i, t in enumerate(scene.tokens) if t.word in ("10", "ten")]
    plain = {i for i in tens if scene.word(i - 2) in ("out", "scale") and scene.word(i - 1) in ("of", "off")}
    return frozenset(plain | {end for i in tens if _is_scale(scene, i) for end in (i - 2, i)})


_LOWEST = ("0", "1", "zero", "one", "nought")
"""Where a scale to ten begins."""


def _is_scale(scene: Passage, ten: int) -> bool:
    """`on a scale from 1 to 10`, `on the one to ten scale`: the ten at this place ends one."""
    ranges = scene.word(ten - 1) in ("to", "till", "and", "until") and scene.word(ten - 2) in _LOWEST
    return ranges and "scale" in (scene.word(ten + 1), *(scene.word(i) for i in range(ten - 5, ten - 2)))


def listed_scores(scene: Passage) -> frozenset[int]:
    """The tokens of the numbers in such lists; none where it is not said what they are out of, nor that they are pain.

    `so pain wise: back 1, hip 4` says so at its head.
    """
    paired = [i for s in scene.spots if (i := _number_of(scene, s.end)) is not None]
    scored = {i for i, t in enumerate(scene.tokens) if t.kind is Kind.SCORE} | out_of_ten(scene)
    if not paired or not (scored or scene.of(Cue.PAIN)):
        return frozenset()
    out: set[int] = set()
    for number in {scene.sentence[i] for i in paired}:
        here = [i for i in paired if scene.sentence[i] == number]
        said = any(scene.sentence[i] == number for i in scored)
        places = len(here) + sum(scene.tokens[i].kind is Kind.SCORE and scene.sentence[i] == number for i in scored)
        if places > 1 and (said or _headed(scene, here[0])):
            out |= set(here)
    return frozenset(out)


def _number_of(scene: Passage, end: int) -> int | None:
    """The number said of a place that ends there."""
    while scene.word(end) in _IS:
        end += 1
    if scene.word(end) not in _NUMERALS or scene.tokens[end].gap is Gap.HARD or scene.tokens[end].kind is Kind.SET:
        return None
    counted = scene.word(end + 1) in _MEASURED and not scene.ends(end + 1)
    return None if counted else end


def _headed(scene: Passage, first: int) -> bool:
    """Whether a head of pain stands before the first of a list: `pain: wrist 6, elbow 2`."""
    for m in scene.of(Cue.PAIN):
        between = range(m.end, first)
        opens = m.end <= first and scene.same_sentence(m.first, first) and not negated(scene, m)
        pause = next((i for i in between if scene.tokens[i].gap is Gap.SOFT), None)
        if opens and pause is not None and scene.words(m.end, pause) <= _HEADS:
            return True
    return False
