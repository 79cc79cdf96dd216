"""Bare numbers beside a hurt that tell of a set: `knee hurts, right was 7 not 6`, `felt dizzy, same but only 8`."""

from bot.notation.hurt.passage import Passage
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import SIDES
from bot.notation.hurt.tokens import Kind

_LEAST_LEFT = 5
"""From so many on, `only 8` tells repetitions: no pain is only an eight."""
_WROTE = word_set("wrote typed logged recorded meant")
_SHOULD = word_set("say read be been")
_SETS = word_set("set sets reps drop drops minis mini")
_JOINS = word_set("and but then so")
_SPARE = (("in", "the"), ("in", "me"), ("in", "reserve"), ("to", "spare"), ("in", "tank"))
_OF_TIMES = word_set("past oh o'clock oclock pm am")
_CLOCKS = word_set("quarter until till til by before away")
_GEAR = word_set("belt bar stack pin chain machine sled cable dip plate")
_TAKEN_BACK = word_set("actually not wrong miscounted counted")


def of_a_set(scene: Passage, first: int, end: int) -> bool:
    """Whether a bare number tells of a set, of a time of day or of a load, by what stands around it in its clause."""
    number, after = scene.word(first), scene.word(end)
    if number.replace(",", ".").partition(".")[2] not in ("", "0", "5"):
        return True
    if after in _OF_TIMES or (after, scene.word(end + 1)) in _SPARE or _goes_on(scene, end):
        return True
    if after == "on" and scene.words(end + 1, end + 3) & _GEAR:
        return True
    if scene.word(first - 1) == "to" and scene.words(first - 5, first - 1) & _CLOCKS:
        return True
    start = _start(scene, first)
    if not scene.hurting.isdisjoint(range(start, first)):
        return False
    before = scene.words(start, first)
    if "only" in before and _few(scene, first) >= _LEAST_LEFT and scene.word(first - 1) == "only":
        return True
    if ("should" in before and before & _SHOULD) or before & _SETS or scene.words(first - 8, first) & _WROTE:
        return scene.word(first - 1) not in ("a", "about")
    if after == "not" and _is_number(scene, end + 1):
        return True
    return _of_sides(scene, start, first, end)


def _start(scene: Passage, first: int) -> int:
    """Where the clause of a number begins: behind a pause, `and` or `but`."""
    at, farthest = first, max(0, first - _LONGEST)
    while at > farthest and not scene.ends(at) and scene.word(at - 1) not in _JOINS:
        at -= 1
    return at


_LONGEST = 48
"""Words of a clause that are looked at before its number."""


def _goes_on(scene: Passage, end: int) -> bool:
    """`1:05`, `10/12`: a sign and two more digits stand straight behind."""
    if not 0 < end < len(scene.tokens):
        return False
    last, token = scene.tokens[end - 1], scene.tokens[end]
    return token.kind is Kind.NUMBER and token.start - last.end == 1 and len(token.word) == 2 and last.word.isdigit()


def _of_sides(scene: Passage, start: int, first: int, end: int) -> bool:
    """`right was 8 actually`, or `left leg 9, right only 7` where nothing that hurts is a pair."""
    words = scene.words(start, first)
    if not words & set(SIDES) or any(s.place.plural for s in scene.spots):
        return False
    if scene.words(end, end + 4) & _TAKEN_BACK:
        return True
    side = next(SIDES[w] for w in words if w in SIDES)
    others = [i for i in range(max(0, start - _NEAR), start) if SIDES.get(scene.word(i), side) is not side]
    return any(_is_number(scene, j) for i in others for j in range(i + 1, min(i + 4, start)))


_NEAR = 6
"""Words between what one side did and the other."""


def _is_number(scene: Passage, index: int) -> bool:
    return 0 <= index < len(scene.tokens) and scene.tokens[index].kind is Kind.NUMBER


def _few(scene: Passage, index: int) -> int:
    word = scene.word(index)
    return int(word) if word.isdigit() else _WORDS.get(word, 0)


_WORDS = {"five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10}
