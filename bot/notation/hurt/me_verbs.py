"""`it pricks me in the lower back`, `me pulls the shoulder`: how a hurt is said by those whose own language says it so.

Whatever the verb, a thing that does something to `me` in a place hurts; unless the verb is one of training or of
help.
"""

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.places import Tissue
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import Spot
from bot.notation.hurt.tokens import Gap, Kind

_HARMLESS = word_set(
    """
    helps keeps gets puts lets takes tells shows gives makes works stretches warms loosens strengthens supports
    massages
    touches touched measured touching reminds pushes pushed checked asked told says said has does is was its as this
    his us less press across always hits hit targets needs wants likes leaves left sees loves starts challenges sets
    reps presses rows pulls curls squats lifts raises dips lunges
    """
)
_ME_FIRST = _HARMLESS - word_set("presses pulls pushes hits gives makes")
_LEADS = word_set("in at on inside around behind into")
_OF_IT = word_set("the my left right lower upper")


def done_to_me(scene: Passage) -> list[tuple[Mark, Spot]]:
    """The places of which a verb and `me` say that something is done to them."""
    out: list[tuple[Mark, Spot]] = []
    for spot in scene.spots:
        at = spot.first - 1
        while scene.word(at) in _OF_IT:
            at -= 1
        if at == spot.first - 1:
            continue
        if (end := _verb_behind(scene, at, spot)) is not None:
            mark = Mark(spot.first, end, None, spot.place)
            if not negated(scene, mark):
                out.append((mark, spot))
            continue
        first = _verb_before(scene, at)
        if first is not None and scene.same_sentence(first, spot.first):
            mark = Mark(first, spot.end, None, spot.place)
            if not negated(scene, mark):
                out.append((mark, spot))
    return out


def _verb_before(scene: Passage, at: int) -> int | None:
    """Where `pricks me in` or `me pricks` begins, that ends before the article of a place."""
    if scene.word(at) in _LEADS and scene.word(at - 1) == "me" and _is_verb(scene, at - 2, _HARMLESS):
        return at - 2
    opens = at >= 1 and (at == 1 or scene.tokens[at - 1].gap is not Gap.NONE or scene.word(at - 2) in _OPENERS)
    return at - 1 if opens and scene.word(at - 1) == "me" and _is_verb(scene, at, _ME_FIRST) else None


def _verb_behind(scene: Passage, at: int, spot: Spot) -> int | None:
    """Where `in the chest it presses me`, `the chest presses me` ends; `at` is the word before the article."""
    if spot.place.tissue is Tissue.CHEST and scene.word(spot.end) in _WEIGHS and scene.word(spot.end + 1) == "me":
        return spot.end + 2
    if scene.word(at) not in _LEADS:
        return None
    verb = spot.end
    while scene.word(verb) in _THERE and verb - spot.end < len(("left", "something", "me")):
        verb += 1
    if not scene.same_sentence(spot.first, min(verb, len(scene.tokens) - 1)) or not _is_verb(scene, verb, _WORKING):
        return None
    me_first = verb > spot.end and scene.word(verb - 1) == "me"
    return verb + 2 - me_first if me_first or scene.word(verb + 1) == "me" else None


_WEIGHS = word_set("presses pushes pulls squeezes oppresses crushes chokes weighs strangles tightens")
"""What a chest does to one who writes English as a second language: `the chest presses me when i climb`."""
_THERE = word_set("it something smth there that thing me left right side a")
_WORKING = _HARMLESS - word_set("presses pulls pushes")
"""Verbs that do nobody harm, or only work, behind a place said first: `in the quads it hits me`."""
_OPENERS = word_set("and but it because when that also now to so then")


def _is_verb(scene: Passage, index: int, harmless: frozenset[str]) -> bool:
    word = scene.word(index)
    third = len(word) > 3 and word.endswith("s") and not word.endswith("ss")
    return 0 <= index < len(scene.tokens) and scene.tokens[index].kind is Kind.WORD and third and word not in harmless
