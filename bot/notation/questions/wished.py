"""Questions told as a wish, a lack or a heading: `i dont understand what rpe is`, `send me a video`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.questions.asked import CHANGED, end_of, opens
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry
from bot.notation.wordlist import words

_NOT = frozenset(words("dont doesnt didnt cant cannot couldnt not never havent no"))
_GRASP = frozenset(words("understand understood follow grasp"))
_FIND = frozenset(words("work figure find see tell make"))
_ASK = frozenset(words("what how which when where whether if why who"))
_KNOWN = frozenset(words("is are means mean do does done works work looks look for meant called go goes"))
"""Words that end what is not known of a thing: `no idea what a sled push is`."""
_LEARN = frozenset(words("know ask learn understand"))
_WISH = frozenset(words("want need wanted like love wondering"))
_GIVEN = frozenset(words("told said say tell explained explain written wrote put sent send gave given mention"))
_SHOWN = frozenset(words("video videos clip clips demo demos link links picture pictures pic photo diagram drawing"))
_SHOW = frozenset(words("send share show link forward"))
_AT_END = frozenset(words("when where why which"))
_SURE = frozenset(words("dunno knows no not idea clue know remember sure say said tell like any since from"))
_WHO = frozenset(words("me us"))
_BEFORE_HEAD = frozenset(
    words("my a one quick another got have small 1 random dumb silly stupid daft noob weird odd i do quick little")
)
_LEAST = 3
"""Words of a question about what is not known: `not sure what`, of which fewer are talk."""


def asks_for(marks: Sequence[Mark], place: int) -> int | None:
    """Where such a question that opens at a place ends; none where none does."""
    mark = marks[place]
    if mark.kind in (Kind.NUM, Kind.NAME, Kind.LINE, Kind.CLOCK, Kind.SCRAP) or not mark.text.strip():
        return None
    if not opens(marks, place):
        return None
    end = end_of(marks, place)
    if has_entry(marks[place:end]):
        return None
    said = [w for m in marks[place:end] for w in m.text.split()]
    changes = said[:1] in (["can"], ["could"]) and said[1:3] == ["you", "change"]
    if changes and any(m.kind is Kind.NAME for m in marks[place:end]):
        return None if any(m.kind in CHANGED for m in marks[place:end]) else end
    if said[:1] == ["i"]:
        said = said[1:]
    starts = place == 0 or marks[place - 1].kind in EDGES
    if said in (["your", "call"], ["your", "choice"], ["your", "pick"], ["you", "choose"], ["you", "pick"]):
        return end if _is_left_to_choose(marks, place) else None
    asks = _lacks(said) or (starts and _wishes(said)) or _wants_shown(said) or _is_headed(said) or _ends_asking(said)
    return end if asks else None


def _is_left_to_choose(marks: Sequence[Mark], place: int) -> bool:
    """`one leg up or both down, your call`: whether two things to choose from stand before."""
    start = place - 1
    while start > 0 and marks[start - 1].kind not in EDGES:
        start -= 1
    return place > 0 and any(m.kind is Kind.OR for m in marks[start:place])


def _lacks(said: Sequence[str]) -> bool:
    """`dont understand what`, `no idea what a sled push is`, `not sure how deep i should`, `you never told me the`."""
    if said[:1] == ["you"]:
        return len(said) > _LEAST and said[1] in _NOT and bool(_GIVEN & set(said[2:3])) and _is_of_plan(said[3:])
    if not said or said[0] not in _NOT:
        return False
    verb = said[1:2]
    if verb and verb[0] in _GRASP:
        return bool((_ASK | {"the", "this", "it"}) & set(said[2:3])) and "people" not in said
    if verb == ["get"] and said[0] in ("dont", "doesnt"):
        return bool(_ASK & set(said[2:3])) and "people" not in said
    if said[1:4] in (["tell", "when", "i"], ["tell", "if", "i"]) and not {"should", "need", "can"} & set(said):
        return False  # `cant tell when i wipe`
    if verb and verb[0] in _FIND and said[1:3] != ["tell", "you"]:
        return bool(_ASK & set(said[2:4]))
    wanted = (
        verb == ["sure"]
        and bool(_ASK & set(said[2:3]))
        and any(
            said[i : i + 2] in (["you", "want"], ["you", "wanted"], ["you", "mean"], ["you", "meant"])
            for i in range(3, len(said))
        )
    )
    if wanted:
        return True
    unknown = verb in (["idea"], ["clue"], ["sure"], ["know"], ["certain"]) and bool(_ASK & set(said[2:3]))
    to_do = bool({"should", "supposed", "meant", "to", "must"} & set(said[3:]))
    return unknown and said[2] != "why" and (to_do or (said[-1] in _KNOWN and len(said) > _LEAST)) and "was" not in said


def _is_of_plan(said: Sequence[str]) -> bool:
    return bool((_ASK | {"the", "me"}) & set(said[:2]))


def _wishes(said: Sequence[str]) -> bool:
    """`want to know if`, `id like to ask how`, `need help with the setup`."""
    if said[:1] in (["id"], ["would"], ["just"]):
        said = said[1:]
    if said[:1] and said[0] in _WISH and said[1:2] == ["to"] and said[2:3] and said[2] in _LEARN:
        return bool(_ASK & set(said[3:5])) or said[2] == "ask"
    needs = said[:2] in (["need", "help"], ["need", "some"], ["need", "your"]) and "help" in said[1:3]
    return needs or said[:2] in (["help", "with"], ["help", "please"], ["help", "pls"]) or list(said) == ["help"]


def _wants_shown(said: Sequence[str]) -> bool:
    """`send me a video of the sled`, `video of a good dip please`, `explain rir to me`."""
    if said[:1] in (["please"], ["pls"], ["can"]):
        said = said[1:]
    if said[:1] == ["explain"] and len(said) > 1:
        return True
    polite = bool({"please", "pls", "plz"} & set(said[-1:]))
    if said[:1] and said[0] in _SHOW:
        return bool(_SHOWN & set(said[1:5])) and (said[1] in _WHO or polite)
    return polite and bool(said[:1]) and said[0] in _SHOWN


def _is_headed(said: Sequence[str]) -> bool:
    """`my question is about the rest`, `question for you`, `quick q`, `technique question`."""
    head = said
    while head[:1] and head[0] in _BEFORE_HEAD:
        head = head[1:]
    return head[:1] in (["question"], ["questions"], ["q"]) and "no" not in said and "answered" not in said


def _ends_asking(said: Sequence[str]) -> bool:
    """`new plan when`, `hang with straps yes or no`."""
    yes_no = list(said[-3:]) == ["yes", "or", "no"] or list(said[-2:]) == ["yes", "no"]
    told = len(said) >= 2 and len(said) <= _LEAST + 2 and said[-1] in _AT_END and not _SURE & set(said)
    return (yes_no and len(said) > _LEAST) or told
