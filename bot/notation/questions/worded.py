"""Questions told by the order of their words alone: `how wide should my grip be`, `knee clicks, is that normal`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.questions.asked import end_of, follows_set, opens
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry
from bot.notation.wordlist import words

_SHORT = frozenset(words("howd whatd whered whyd whend whichd"))
"""`how'd you want my elbows`: with the verb in it."""
_SWORN = frozenset(words("wtf wtaf"))
"""`what`, with an oath: asks of an exercise, or what to do, and is a cry else."""
_ASKING = _SHORT | _SWORN | frozenset(words("how what why which when where who whats wheres whos whens"))
_AUXILIARY = frozenset(words(
    "is are was were should can could do does did will would am has have had may shall shud cud wud r",
))  # fmt: skip
_SUBJECT = frozenset(words("i you we it that this the my they there these those your u ur she he our a an"))
_JUDGED = frozenset(words(
    "normal ok okay right bad good fine enough dangerous allowed usual alright weird safe possible correct common",
    "expected serious worrying wrong heavy light much little",
))  # fmt: skip
_THINGS = ("that", "this", "it", "those", "these", "they")
_LEAST = 3
"""Words of a question."""
_TALK = 2
"""Words of a phrase that asks nothing, from which on it is one: `what was i going to say`."""
_FAR = 6
"""Words between the word that asks and its verb: `how many more sets should i`."""


def asks_in_order(marks: Sequence[Mark], place: int) -> int | None:
    """Where a question that opens at a place ends; none where none does."""
    mark = marks[place]
    if mark.kind in (Kind.SCRAP, Kind.MEANT, Kind.NUM, Kind.NAME, Kind.CLOCK, Kind.LINE) or not mark.text.strip():
        return None
    first = mark.text.split(" ")[0]
    if first in ("why", "y") and opens(marks, place) and _is_why(marks, place + 1):
        return end_of(marks, place)
    if mark.kind is Kind.FILL and len(mark.text.split()) > _TALK:
        return None
    if first == "which" and kind_at(marks, place - 1) is Kind.NUM and kind_at(marks, place + 1) is Kind.WAS:
        return None
    if first == "which" and (follows_set(marks, place) or _words(marks, place, 2)[1:2] in _TELLS_ON):
        return None
    if first == "which" and _is_relative(marks, place):
        return None
    if first in _SWORN and not _asks_of_exercise(marks[place : end_of(marks, place)]):
        return None
    led_by = place > 0 and marks[place - 1].text in _PREPOSITIONS and opens(marks, place - 1)
    begins = kind_at(marks, place - 1 - led_by) in (None, Kind.STOP, Kind.LINE, Kind.QUERY)
    if first in _ASKING and begins and _asks_straight(marks, place):
        return end_of(marks, place)
    if first in _ASKING and opens(marks, place):
        asks = _turns(marks, place) or _asks_which(marks, place) or _asks_what(_words(marks, place, 4))
        return end_of(marks, place) if asks else None
    told = first == "are" and place > 0 and marks[place - 1].text in _THINGS  # `these are getting too light`
    told = told or (first == "does" and text_at(marks, place - 1) in _DOERS)  # `as it does in such weather`
    if first in _OPENING and not told and opens(marks, place) and _is_of_somebody(marks, place):
        return end_of(marks, place)
    led = place > 0 and marks[place - 1].text in ("but", "and", "so", "or")
    if led and mark.text.split()[:2] in (
        ["is", "that"],
        ["is", "this"],
        ["is", "it"],
        ["does", "it"],
        ["does", "that"],
    ):
        return end_of(marks, place)
    asked = _words(marks, place, 3)[1:]
    if led and first in ("is", "does") and asked[:1] in (["that"], ["this"], ["it"], ["the"]) and "same" not in asked:
        return end_of(marks, place)
    if first in ("is", "was", "are", "were", "isnt") and _is_judging(marks, place):
        return end_of(marks, place)
    if first in ("is", "could", "might") and _is_turned_behind(marks, place):
        return end_of(marks, place)
    difference = mark.text in ("what is", "whats the", "whats") and "difference" in _words(marks, place, 4)
    return end_of(marks, place) if difference else None


_DOERS = frozenset(words("it that this he she which who as"))


def _is_turned_behind(marks: Sequence[Mark], place: int) -> bool:
    """`a weight on my chest is that from the bench`, `knee hurts could it be the shoes`: a cause asked for in a breath
    with what is told; not `thing is that the bar slips`."""
    said = _words(marks, place, 4)
    turned = said[1:2] in (["it"], ["that"], ["this"]) and (said[0] == "is" or said[2:3] == ["be"])
    cause = bool(_CAUSES & set(said[2:4])) and len(said) > _LEAST
    before = text_at(marks, place - 1).split()[-1:]
    return turned and cause and bool(before) and before[0] not in _SAYING_THAT


_CAUSES = frozenset(words("from because just the my something anything due down only cause cos me be a"))
_SAYING_THAT = frozenset(words(
    "problem thing issue reason point trouble truth fact what which who where all one only best it worst good bad "
    "annoying question idea plan news funny weird main this that how why when"
))  # fmt: skip
"""Words behind which `is that` opens what is said of them."""


def _asks_of_exercise(part: Sequence[Mark]) -> bool:
    """`wtf is a cable crunch`, `wtf do i do`; not `wtf is this weather`."""
    named = any(m.kind in (Kind.NAME, Kind.WEAK) for m in part) and not has_entry(part)
    return named or "i do" in " ".join(m.text for m in part)


def _is_why(marks: Sequence[Mark], place: int) -> bool:
    """`why face pulls`, `y do we do them`: an exercise or a verb behind it, and no set."""
    said = text_at(marks, place).split()[:1]
    asks = kind_at(marks, place) is Kind.NAME or bool(set(said) & {"do", "does", "are", "is", "am", "not", "no", "so"})
    return asks and not has_entry(marks[place : end_of(marks, place)])


_PREPOSITIONS = frozenset(words("with from at in on for until"))
_STRAIGHT = frozenset(words("must should can could shall cant cannot know need"))
_WHY = _STRAIGHT | frozenset(words("feel have get lose fail shake"))


def _asks_straight(marks: Sequence[Mark], place: int) -> bool:
    """`how i know with which weight to begin`, `with how much i must start`: a question with its verb behind."""
    said = _words(marks, place, 10)
    part = marks[place : end_of(marks, place)]
    who = next((i for i, w in enumerate(said[:5]) if w in ("i", "we")), None)
    relative = said[:2] == ["which", "i"] and place > 0  # `a dull ache, which i should put at two`
    if relative or said[0] in ("when", "who") or who is None or any(m.kind in (Kind.NUM, Kind.NAME) for m in part[:3]):
        return False
    verbs = _WHY if said[0] == "why" else _STRAIGHT
    must = said[who + 1 : who + 2] in ([v] for v in verbs) or said[who + 1 : who + 3] == ["have", "to"]
    tells = bool({"is", "was", "were", "are"} & set(said[who + 2 : who + 4])) or has_entry(part)
    return must and not tells


def _is_relative(marks: Sequence[Mark], place: int) -> bool:
    """`48 seconds, which is a record, I believe`: says more of what stands before it."""
    said = _words(marks, place, 9)
    end = end_of(marks, place)
    parted = kind_at(marks, place - 1) in (None, Kind.COMMA, Kind.STOP)
    return (
        parted
        and said[1:2] in (["is"], ["was"])
        and said[2:3] in _OF_IT
        and not _SOUGHT & set(said)
        and kind_at(marks, end) is not Kind.QUERY
    )


_OF_IT = [[word] for word in words("a an my the our not why what quite more less about")]
_SOUGHT = frozenset(words(
    "next right one ones better correct exercise should good substitute alternative option instead for",
))  # fmt: skip
_TELLS_ON = [[word] for word in words("makes made means meant brings brought leaves left gives gave takes took")]
"""Behind `which`, what goes on with what was told: `110x10, which makes it three`."""
_OPENING = frozenset(words("are can could should would will may shall must have did do does has am were"))
_SOMEBODY = frozenset(words("you u i we they"))
_THING = frozenset(words("it that this there those these"))
_NOT_WHICH = frozenset(words("a an the i you we he she they it was is are were felt feels happened ever now meant"))


def _asks_which(marks: Sequence[Mark], place: int) -> bool:
    """`what grip for pull ups`: a thing, and what it is for."""
    said = _words(marks, place, 5)
    asks = said[0] in ("what", "which") and len(said) > 2 and said[1] not in _NOT_WHICH
    return asks and any(w in ("for", "on", "in", "with", "at", "to") for w in said[2:4])


def _asks_what(said: Sequence[str]) -> bool:
    """`what happens if`, `whats your take`, `whens the deload`, `whats rir again`."""
    if said[0] in ("whats", "whens", "wheres", "whos"):
        return len(said) > 1 and said[1] not in _NO_THING
    if said[0] == "which" and said[1:2] in (["ones"], ["one"], ["exercises"], ["exercise"], ["lifts"]):
        return said[2:3] in _MATTERING
    if said[0] in _SHORT:
        return said[1:2] != ["it"] and bool(set(said[1:2]) & _SUBJECT)
    if said[0] == "which" and any([w] in _MATTERING for w in said[2:]):
        return True
    if said[:2] == ["which", "to"]:
        return said[2:3] in _CHOOSING
    if said[0] in ("what", "which") and said[1:2] in (["you"], ["u"]) and said[2:3] in _PREFER:
        return len(said) == _LEAST
    if said[0] in ("what", "which") and len(said) == _TALK and said[1] in _SHORTLY:
        return True
    if len(said) < _LEAST or said[2:] in (["that"], ["this"]) or said[1] in _SUBJECT:
        return False
    return said[0] in ("what", "who", "which") and said[1].endswith("s") and said[1] not in _NOT_WHICH | _BEING


_PREFER = [[word] for word in words("prefer want recommend suggest advise say reckon like fancy choose pick advice")]
"""Behind `what you` all of a question that follows a choice: `with straps or without, what you prefer`."""
_MATTERING = (["matter"], ["matters"], ["count"], ["counts"], ["come"], ["comes"], ["take"])
"""Words behind `which ones` that ask: `which one was 80` tells."""
_CHOOSING = (["cut"], ["keep"], ["do"], ["skip"], ["drop"], ["prioritise"], ["prioritize"])
_SHORTLY = frozenset(words("first matters stays goes gives ones one instead order exercises lifts"))
"""Behind `what` or `which` a whole question: `15 min for everything, what stays`."""
_NO_THING = frozenset(words("up left done what not more worse that this it happening going new"))
_BEING = frozenset(words("is was does has us reps sets kilos pounds times others yours this ones"))


def _is_of_somebody(marks: Sequence[Mark], place: int) -> bool:
    """`have you finished the plan`, `are straps allowed`: a verb before its subject."""
    said = _words(marks, place, 12)
    part = marks[place : end_of(marks, place)]
    numbered = any(m.kind is Kind.NUM for m in part) and said[1:2] != ["you"]
    if len(said) < _LEAST or numbered or has_entry(part):
        return False
    thing = said[1] in _THING and said[0] not in ("have", "did", "do", "has")
    either = said[0] == "are" and "or" in said[2:]
    return (
        said[1] in _SOMEBODY
        or thing
        or either
        or said[0] == "does"
        or _would_be(said)
        or (said[0] == "are" and bool(set(said[2:4]) & _JUDGED))
    )


def _would_be(said: Sequence[str]) -> bool:
    """`would dumbbells be ok for rows`; not `would rather be at home`."""
    return said[0] in ("would", "should") and "be" in said[2:4] and said[1] not in _UNNAMED


_UNNAMED = frozenset(words("rather love like just probably definitely have never always gladly prefer really"))
"""Behind `would` of one who leaves himself out: `would rather be at the beach`."""


def _words(marks: Sequence[Mark], place: int, most: int) -> list[str]:
    said: list[str] = []
    for at in range(place, len(marks)):
        if marks[at].kind in EDGES or len(said) > most:
            break
        said += marks[at].text.split()
    return said[: most + 1]


def _turns(marks: Sequence[Mark], place: int) -> bool:
    """Whether a verb stands before its subject: `how wide should my`, not `how my grip should be`, `what a session`."""
    said = _words(marks, place, _FAR + 2)
    if said[:2] == ["which", "of"]:
        return True
    for at in range(1, min(len(said) - 1, _FAR + 1)):
        if said[at] in _SUBJECT:
            return False
        if said[at] in _AUXILIARY:
            return said[at + 1] in _SUBJECT
    return False


def _is_judging(marks: Sequence[Mark], place: int) -> bool:
    """`is that normal`, `is it bad`, `was that enough`: at the end of its part."""
    said = _words(marks, place, 6)
    if said[1:2] == ["that"] and len(said) == _LEAST and not opens(marks, place) and _has_subject(marks, place):
        return False
    return len(said) in (3, 4, 5) and said[1] in _THINGS and said[-1] in _JUDGED


def _has_subject(marks: Sequence[Mark], place: int) -> bool:
    """`the song was that good`: what it is said of stands before, so that it tells how much."""
    return kind_at(marks, place - 1) is Kind.WORD or marks[place - 1].text in _THINGS
