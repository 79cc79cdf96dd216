"""Pain scores: `4/10`, `six out of ten`, `about a 6`, `pain 3`; and which numbers are none."""

import re
from dataclasses import dataclass, replace
from math import ceil

from bot.notation.hurt.cues import Cue
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.phrases_scope import SCOPES
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.score_lists import listed_scores, out_of_ten
from bot.notation.hurt.score_sets import of_a_set
from bot.notation.hurt.score_times import of_a_joint, of_a_time
from bot.notation.hurt.tokens import Gap, Kind, Token
from bot.notation.spoken import NUMBER_WORDS

_WORDS = {
    w: i for i, w in enumerate(["zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"])
} | {
    "nought": 0,
    "naught": 0,
    "nil": 0,
}
ABOUT = frozenset(
    w for p in re.sub(r"/\s+", "/", SCOPES[Cue.ABOUT]).split(";") for w in p.strip().split("/") if " " not in w
)
_GOVERNS = frozenset(
    w for p in re.sub(r"/\s+", "/", SCOPES[Cue.GOVERNS]).split(";") for w in p.strip().split("/") if " " not in w
)
_TEN = frozenset({"10", "ten"})
_OUT_OF = (
    ("out", "of"),
    ("out", "off"),
    ("outta", ""),
    ("outa", ""),
    ("of", ""),
    ("over", ""),
    ("on", ""),
    ("from", ""),
)
_LESS = word_set("down dropped drop minus off lost by back up")
"""Before a number `from ten` these count what is less: `down 2 from 10`."""
_NOT_SCORE_AFTER = word_set(
    """
    reps rep sets set times second seconds sec secs kg kilos lb lbs pounds x min mins minutes weeks days hours more
    left each per side
    plates of for steps exercises rounds at years months on off or and words word fingers toes people stairs flights
    metres meters miles km laps lengths holes beers pints coffees stitches
    lads lasses guys men women mates blokes fellas staff girls boys kids trainers ladies strangers
    """
)


@dataclass(frozen=True, slots=True)
class Score:
    """A number out of ten: tokens `first` up to, not with, `end`; `plain` where `out of ten` was said."""

    first: int
    end: int
    value: int
    plain: bool


def find_scores(scene: Passage) -> list[Score]:
    """Every number that could be a pain score, in order; those that measure something else are left out."""
    out: list[Score] = []
    numbers = [i for i, t in enumerate(scene.tokens) if t.kind is Kind.SCORE or _value(scene, i) is not None]
    if not numbers:
        return out
    listed, tens = listed_scores(scene), out_of_ten(scene)
    for index in numbers:
        if out and index < out[-1].end:
            continue
        told = None if index in tens else _score_of(scene, index, listed)
        score = told or (_goes_on(scene, index, out[-1]) if out else None)
        if score is not None:
            out.append(score)
    return out


def _score_of(scene: Passage, index: int, listed: frozenset[int]) -> Score | None:
    """The score at an index; one of a list, `neck 2, hip 5 out of ten`, is out of ten wherever that is said."""
    score = _score_at(scene, index)
    scale = None if score is not None and score.plain else _scale_before(scene, index)
    if scale is not None and (told := _bounded(scene, index, index + 1, _value(scene, index) or 0, plain=True)):
        return replace(told, first=scale)
    scaled = score is not None and not score.plain and _scale_behind(scene, score.end)
    value = _value(scene, index) if index in listed and (score is None or not score.plain) else None
    if score is not None and scaled:
        return _bounded(scene, index, score.end, score.value, plain=True)
    return score if value is None else _bounded(scene, index, index + 1, value, plain=True)


def _scale_before(scene: Passage, index: int) -> int | None:
    """Where the words begin that make a number a score: `on a scale to ten my knee hurts 3`, `level 3 pain`."""
    if _value(scene, index) is None:
        return None
    if _is_levelled(scene, index):
        return index
    start = next((i for i in range(index - 1, max(-1, index - 14), -1) if scene.word(i) == "scale"), None)
    if start is None or not scene.same_sentence(start, index):
        return None
    ten = next((i for i in range(start + 1, index) if scene.word(i) in _TEN), None)
    hurts = any(start < i < index + 4 for i in scene.hurting) or _is_of_place(scene, ten or start, index)
    start -= 2 if start > 1 and scene.word(start - 2) == "on" else 0
    return start if ten is not None and hurts and scene.word(index + 1) not in _NOT_SCORE_AFTER else None


def _is_of_place(scene: Passage, first: int, index: int) -> bool:
    """`on a scale of 1 to 10 my wrist is a 6`: a place of the client's, and its number right behind."""
    spot = next((s for s in scene.spots if first < s.first and 0 <= index - s.end <= len(("is", "about", "a"))), None)
    return spot is not None and scene.words(spot.end, index) <= _AT_A


_AT_A = word_set("is 's a an at about around was maybe like")


def _scale_behind(scene: Passage, end: int) -> bool:
    """`a 5 on the scale of one to ten`, `6 on a 1 to 10 scale`."""
    scale = next((i for i in range(end, end + 7) if scene.word(i) == "scale"), None)
    led = scale is not None and scene.word(end) in ("on", "in", "at") and scene.same_sentence(scale, end)
    return led and scale is not None and any(scene.word(i) in _TEN for i in range(end, scale + 5))


def _is_levelled(scene: Passage, index: int) -> bool:
    """`level 3 pain`, `a grade two ache`."""
    behind = any(m.first == index + 1 and m.cue in (Cue.PAIN, Cue.SORE, Cue.SHARP) for m in scene.marks)
    return behind and _value(scene, index) is not None and scene.word(index - 1) in ("level", "grade", "rating", "lvl")


def _goes_on(scene: Passage, index: int, last: Score) -> Score | None:
    """A bare number of another time after a score: `hip 3 on the way down and 2 on the way up`."""
    value = _value(scene, index)
    near = 0 < index - last.end <= 8 and scene.same_sentence(index, last.first)
    if value is None or not near or not of_a_time(scene, index + 1):
        return None
    plain = all(t.kind is Kind.WORD for t in scene.tokens[last.end : index])
    return _bounded(scene, index, index + 1, value, plain=False) if plain else None


def _score_at(scene: Passage, index: int) -> Score | None:
    token = scene.tokens[index]
    if token.kind is Kind.SCORE:
        if _of_two_sides(scene, index):
            return None
        value = max(_whole(n) for n in re.split(r"-|–|to|or", token.word.rsplit("/", 1)[0]))
        return _bounded(scene, index, index + 1, value, plain=True)
    value_here = _value(scene, index)
    if value_here is None:
        return None
    end = index + 1
    if _range_goes_on(scene, end):
        value_here, end = max(value_here, _value(scene, end + 1) or 0), end + 2
    if scene.word(end) in ("and", "point") and scene.word(end + 1) in ("a", "half", "five"):
        value_here, end = value_here + 1, min(end + (3 if scene.word(end + 1) == "a" else 2), len(scene.tokens))
    words = [scene.word(end + i) for i in range(3)]
    for lead, then in _OUT_OF:
        if lead == "from" and scene.word(index - 1) in _LESS and scene.tokens[index].gap is Gap.NONE:
            continue
        skip = 2 if then else 1
        if words[0] == lead and then in ("", words[1]) and words[skip] in _TEN:
            return _bounded(scene, index, end + skip + 1, value_here, plain=True)
    if (
        words[0] in _TEN
        and end < len(scene.tokens)
        and scene.tokens[end].gap is Gap.SOFT
        and scene.tokens[index].kind is Kind.WORD
    ):
        return _bounded(scene, index, end + 1, value_here, plain=True)
    return _bounded(scene, index, end, value_here, plain=False) if _may_be_bare(scene, index, end) else None


def _of_two_sides(scene: Passage, index: int) -> bool:
    """`14 kg: 10/10, 10/9`, `12s, 10/10`, `pallof 12.5 10/10`: repetitions left and right behind their load, or beside
    others."""
    first = index
    while first > max(0, index - _MOST_PAIRS) and scene.tokens[first - 1].kind is Kind.SCORE:
        first -= 1
    before = scene.tokens[first - 1] if first else None
    loaded = before is not None and before.kind is Kind.SET and _LOAD.fullmatch(before.word) is not None
    loaded = loaded or (before is not None and before.kind is Kind.NUMBER and scene.tokens[first].gap is Gap.NONE)
    if loaded and not any(i < index and scene.same_sentence(i, index) for i in scene.hurting):
        return True
    pair = scene.tokens[index + 1 : index + 3]
    return len(pair) == 2 and all(t.kind is Kind.NUMBER and t.gap is Gap.SOFT for t in pair) and _touch(*pair)


_MOST_PAIRS = 8
"""Sets that are told by their sides behind one load."""


def _touch(one: Token, two: Token) -> bool:
    """Whether but one sign stands between: `10/9`."""
    return two.start - one.end == 1


_LOAD = re.compile(r"\d+(?:[.,]\d+)?\s*(?:kgs?|kilos?|lbs?|pounds?|s)")


def _range_goes_on(scene: Passage, end: int) -> bool:
    return scene.word(end) in ("or", "to") and _value(scene, end + 1) is not None


def _value(scene: Passage, index: int) -> int | None:
    if not 0 <= index < len(scene.tokens):
        return None
    token = scene.tokens[index]
    if token.kind is Kind.WORD:
        value = _WORDS.get(token.word)
        return None if value is None or _is_age(scene, index) or _counts_nothing(scene, index) else value
    return _whole(token.word) if token.kind is Kind.NUMBER else None


def _is_age(scene: Passage, index: int) -> bool:
    """`fainted once when i was nine`."""
    return scene.word(index - 1) == "was" and scene.word(index - 3) == "when" and scene.word(index - 2) == "i"


def _counts_nothing(scene: Passage, index: int) -> bool:
    """`zero strength in it`."""
    if scene.word(index) not in ("zero", "nil") or index + 1 >= len(scene.tokens):
        return False
    after = scene.tokens[index + 1]
    said = after.word in ("out", "of", "on", "over", "outta", "today", "now", "pain", "and", "but", "at")
    return after.kind is Kind.WORD and after.gap is Gap.NONE and not said


def _whole(number: str) -> int:
    try:
        return ceil(float(number.strip().replace(",", ".")))
    except ValueError:
        return 99


def _bounded(scene: Passage, first: int, end: int, value: int, *, plain: bool) -> Score | None:
    if value > 10 or governed(scene, first, end):
        return None
    return Score(first, end, value, plain)


_WHEN = word_set(
    "when whenever while since during whole entire after throughout through every first second third final last all"
)
"""Before what is scored these say when it hurt: `since the second set, a 2`."""


def says_when(scene: Passage, index: int) -> bool:
    """Whether a word for what is scored says when it hurt."""
    of_a_set = scene.word(index) in _SETS and "on" in scene.words(index - 3, index)
    return of_a_set or _on_effort(scene, index) or bool(scene.words(index - 3, index) & _WHEN)


def _on_effort(scene: Passage, index: int) -> bool:
    """`pressure in the chest on exertion, 4/10`: what brings it on; not `on leg day, effort 4/10`."""
    if scene.word(index) not in ("exertion", "effort", "exertions", "efforts"):
        return False
    first = next((i for i in range(index - 1, index - 4, -1) if scene.word(i) in ("on", "upon", "with", "under")), 0)
    return first > 0 and all(scene.tokens[i].gap is Gap.NONE for i in range(first, index + 1))


_SETS = word_set("set sets rep reps")


_THINGS = word_set(
    """
    playlist playlists music tunes song songs podcast gym weather coffee aircon parking vibe vibes showers staff towels
    smell service crowd
    """
)
"""What is scored out of ten for fun, right before its score."""


def _is_of_thing(scene: Passage, first: int) -> bool:
    """`playlist 10/10`: the score of a thing, with no hurt and no place in what leads to it."""
    if scene.tokens[first].kind is not Kind.SCORE or scene.word(first - 1) not in _THINGS:
        return False
    start = first - 1
    while start > 0 and scene.tokens[start].gap is Gap.NONE and scene.tokens[start - 1].kind is Kind.WORD:
        start -= 1
    said = range(start, first)
    return not any(i in said for i in scene.hurting) and not any(s.first in said for s in scene.spots)


def _is_scored_apart(scene: Passage, index: int) -> bool:
    """Whether a place stands here behind a score of something else: `playlist 10/10, elbow 3/10`."""
    behind = any(t.kind is Kind.SCORE for t in scene.tokens[max(0, index - 3) : index])
    return behind and any(s.first <= index < s.end for s in scene.spots)


def governed(scene: Passage, first: int, end: int) -> bool:
    """Whether the number measures something else: `energy 6/10`, `session was a 9/10`, `7/10 effort`."""
    if scene.word(end) in _GOVERNS and scene.tokens[end].gap is Gap.NONE:
        return True
    if _is_of_thing(scene, first):
        return True
    hurts = scene.hurting
    for index in range(first - 1, max(first - 7, -1), -1):
        if index in hurts or scene.tokens[index + 1].gap is Gap.HARD or _is_scored_apart(scene, index):
            return False
        if scene.word(index) in _GOVERNS and not says_when(scene, index):
            return True
    return False


_ENDED = word_set(
    """
    stop stopped stopping quit bail bailed fail failed rack racked cut ended died stuck capped done finished called
    left settled binned call
    """
)
"""Before `at 9`, `it at 9` or `out at 9`, these end a set."""
_BETWEEN_END = word_set("it off out down away")
_FELL_OFF = word_set("dropped fell tailed came backed bombed conked gave tapped dropping")
"""Before `off at 5`, `out at 5` these end a set, too; `dropped at 5` alone does not."""
_APPOINTED = word_set(
    "there home work you u gym training train start starting leave leaving meet meeting session class"
)
"""Before `at 8` these tell a time of day: `knee hurts, see you at 8`."""
_NUMERALS = frozenset(NUMBER_WORDS)
_UPS = word_set("push pull step chin sit press get set muscle")
"""Exercises that are something `up`: `push up 10` tells repetitions."""
_GETS = word_set("it pain has have 's ache hurt hurts that")
"""What gets to a score: `it got 6`; otherwise `got 6` tells repetitions."""
_NOT_FEW = word_set("5 6 7 8 9 10 five six seven eight nine ten")
"""Behind `only` these are repetitions that were left, and no score: `hurt on the rows, only 8`."""
_A_ONE = word_set("a about maybe pain only just at is was")


def _is_rep_told(scene: Passage, number: str) -> bool:
    """Whether a set tells the same number of repetitions: `twinge at 8, 100x8` ended it there."""
    return any(t.kind is Kind.SET and t.word.endswith((f"x{number}", f"x {number}")) for t in scene.tokens)


def _may_be_bare(scene: Passage, first: int, end: int) -> bool:
    """Whether a number without `out of ten` could be a score by what stands around it."""
    after = scene.word(end)
    if of_a_set(scene, first, end):
        return False
    if after == "on" and scene.word(first - 1) == "a" and of_a_joint(scene, first):
        return True
    weighed = (scene.word(first - 2), after) == ("about", "and")
    if end < len(scene.tokens) and scene.tokens[end].gap is Gap.NONE and not weighed:
        if after in _NOT_SCORE_AFTER and not (
            after in ("on", "at", "and", "of", "for", "or")
            and scene.word(end + 1)
            in (
                "first",
                "start",
                "rest",
                "the",
                "my",
                "it",
                "then",
                "a",
                "rest",
                "most",
                "worst",
                "so",
                "pain",
                "i",
                "but",
                "now",
            )
        ):
            return False
        if scene.tokens[end].kind in (Kind.NUMBER, Kind.SET, Kind.TIME) and scene.tokens[end].word[0] in "x*@":
            return False
        if scene.tokens[end].kind is Kind.NUMBER:
            return False
    before = scene.word(first - 1)
    if "so" in (before, scene.word(first - 2) if before in ("only", "just") else ""):
        return False
    if before == "only" and scene.tokens[first - 1].gap is Gap.SOFT and scene.word(first) in _NOT_FEW:
        return False
    if of_a_joint(scene, first) and of_a_time(scene, end):
        return True
    if after in ("on", "onto") and scene.words(first - 3, first) & {"dropped", "drop", "dropping"}:
        return False
    it = scene.word(first - 2) in _BETWEEN_END
    if before in ("at", "on") and scene.word(first - 2 - it) in _ENDED | (_FELL_OFF if it else set()):
        return False
    if (before == "at" and scene.word(first - 2) in _APPOINTED) or (scene.word(first - 2), before) == ("instead", "of"):
        return False
    if before == "at" and _is_rep_told(scene, scene.word(first)):
        return False
    if before in ("of", "to") and first > 1 and scene.tokens[first - 2].kind is Kind.SET:
        return False
    if before == "of" and scene.word(first - 2) in _SETS:
        return False
    if after in _NUMERALS and end < len(scene.tokens) and scene.tokens[end].gap is Gap.NONE:
        return False
    if before in _NUMERALS and scene.tokens[first].gap is Gap.NONE and before not in ("a", "to", "or"):
        return False
    if before == "between" or (before == "up" and scene.word(first - 2) in _UPS):
        return False
    if before in ("got", "hit") and (scene.ends(first - 1) or scene.word(first - 2) not in _GETS):
        return False
    if scene.word(first) == "one" and before not in _A_ONE:
        return False
    if after == "on" and scene.word(end + 2) == "scale":
        return True
    if (
        after in ("today", "now", "maybe", "ish", "ish?", "tops", "max", "probably", "perhaps", "i'd")
        and scene.tokens[first].gap is Gap.SOFT
        and first > 1
    ):
        return True
    if scene.tokens[first].gap is Gap.SOFT and any(s.end == first and not s.place.plural for s in scene.spots):
        return scene.ends(end) and (end >= len(scene.tokens) or scene.tokens[end].kind is not Kind.NUMBER)
    behind = end == len(scene.tokens) and scene.tokens[first].gap is Gap.SOFT
    if behind and any(m.end == first and m.cue in (Cue.HURT, Cue.PAINFUL) for m in scene.marks):
        return True
    lone = first > 0 and scene.tokens[first].gap is not Gap.HARD
    hurt_before = any(m.end == first and m.cue in (Cue.PAIN, Cue.SORE, Cue.SHARP, Cue.HEADACHE) for m in scene.marks)
    hurt_before |= scene.ends(end) and any(m.end == first and m.cue is Cue.WHISPER for m in scene.marks)
    place_before = any(s.end == first for s in scene.spots) and any(
        m.end in (first, first - 1) and m.cue is Cue.PAIN for m in scene.marks
    )
    return lone and (hurt_before or place_before or before in ABOUT)
