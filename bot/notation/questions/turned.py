"""Questions without a question mark by the turn of their words: `would a belt help`, `not from training is it`.

An auxiliary before what it is of, a tag at the end of what is denied, one of two things to choose from.
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.questions.asked import ENDS, end_of, opens
from bot.notation.tokens import Mark
from bot.notation.wholes import has_entry
from bot.notation.wordlist import words

_MODALS = frozenset(words("would could should will can may shall does wont wouldnt couldnt shouldnt cant doesnt"))
_OF = frozenset(
    words(
        "a an the my your this that these those some any other more less there everyone anyone people we someone",
        "somebody",
    )
)
_OURS = frozenset(words("the my your these those our"))
_DOES = frozenset(words("have need count matter mean work look feel help change"))
_PLANNED = frozenset(words("typo meant supposed purpose intentional deliberate"))
_DO = frozenset(words("other others most many people any your women men beginners clients you"))
_BE = frozenset(words("is are isnt arent was were"))
_JUDGED = frozenset(
    words("worth meant supposed normal ok okay alright enough allowed necessary needed better safe bad good fine",
          "dangerous usual possible cheating wrong right legit useful pointless overkill much often soon rude")
)  # fmt: skip
_TELLING = frozenset(
    words("a very too so all still now also just not only already really pretty quite done finished hard heavy easy",
          "good ok okay fine bad tough light going better that it this what how why getting looking feeling becoming "
          "coming moving much definitely slowly finally probably always never")
)  # fmt: skip
"""Words behind `is` of somebody who leaves out what it is of: `is very heavy today`."""
_THINGS = frozenset(words("it this that these those there"))
_ANY = frozenset(
    words("reason reasons objection objections point harm news update preference recommendation recommendations trick",
          "tricks feedback thoughts ideas advice tips word hints downside benefit problem issue")
)  # fmt: skip
_SUBJECTS = frozenset(words("it i they that we you there this"))
_TAGGING = frozenset(words("is am do should will does are was can did have would has could"))
_NEVER = frozenset(
    words("not no never isnt arent dont doesnt wont shouldnt cant cannot nothing nowt nae wasnt didnt aint")
)
_FORM = frozenset(
    words("form technique depth video clip grip setup stance back knees elbows timing position tempo range")
)
_LIMBS = frozenset(words("elbows knees feet hands head heels toes palms grip stance back chest hips shoulders bar"))
_CHOICES = frozenset(
    words("not nah no nope stay leave keep up down wait stick same stop quit call bin end rest lighter")
)
_CHOOSING = frozenset(
    words("keep stay stick go use add drop hold take leave bump raise push carry continue crack up heavier")
)
"""Words that open a choice of what to do: `keep the 25 or go bw today`."""
_BODY = ("bw", "bodyweight", "body")
_OPENERS = frozenset((*_MODALS, *_BE, "do", "hows", "how", "r", "you", "anything", "who", "what", "where"))
_BEFORE = EDGES | {Kind.COLON, Kind.DASH}
_MOST = 10
"""Words of a choice."""


def turns(marks: Sequence[Mark], place: int) -> int | None:
    """Where a question that opens at a place by its turn of words ends; none where none does."""
    mark = marks[place]
    if mark.kind in (Kind.NAME, Kind.WEAK) and (place == 0 or marks[place - 1].kind in EDGES):
        return end_of(marks, place) if _is_of_topic(marks[place + 1 : end_of(marks, place)]) else None
    if mark.kind in (Kind.NUM, Kind.NAME, Kind.LINE, Kind.CLOCK, Kind.SCRAP) or not mark.text.strip():
        return None
    starts = place == 0 or marks[place - 1].kind in _BEFORE
    if not starts and not (mark.text.split(" ")[0] in _OPENERS and opens(marks, place)):
        return None
    end = end_of(marks, place)
    if has_entry(marks[place:end]):
        return None
    said = [w for m in marks[place:end] for w in m.text.split()]
    if not said:
        return None
    if starts and _is_announced(marks, place):
        return end_of(marks, place)
    asks = (
        _asks_of(said)
        or (starts and said[0] == "any" and bool(_ANY & set(said[1:2])))
        or _asks_which(marks[place:end], said)
        or _is_choice(marks[place:end], said)
        or (starts and asks_of_named(marks[place:end]))
        or (starts and _asks_leave(said))
        or (starts and said[0] == "do" and kind_at(marks, place + 1) is Kind.NAME and bool(set(said[2:5]) & _DOES))
    )
    return end if asks else None


_SWAPS = frozenset(words("swap switch trade replace change exchange substitute sub"))
_LEAVES = _SWAPS | frozenset(words("do leave skip drop use cut move go add take try keep start stop finish split"))


def _asks_leave(said: Sequence[str]) -> bool:
    """`alright to trade rows for the machine`, `happy for me to skip the flies`; not `good to be back`."""
    lead = ["".join(said[:2]), *said[2:]] if said[:2] == ["all", "right"] else list(said)
    mine = lead[1:3] in (["for", "me"], ["with", "me"], ["if", "i"])
    verb = lead[4:5] if lead[3:4] == ["to"] else lead[3:4]
    if mine:
        return lead[0] in ("happy", *_ALLOWED, *_NICE) and bool(_LEAVES & set(verb))
    verbs = _LEAVES if lead[0] in _ALLOWED else _SWAPS if lead[0] in _NICE else frozenset[str]()
    return lead[1:2] == ["to"] and bool(verbs & set(lead[2:3]))


_ALLOWED = frozenset(words("alright allright ok okay fine allowed permitted acceptable"))
_NICE = frozenset(words("good cool safe"))
_ASKED = frozenset(words("is are does do should can could will would"))
_SIDES = frozenset(
    frozenset(pair.split())
    for pair in (
        "in out",
        "up down",
        "with without",
        "wide narrow",
        "high low",
        "left right",
        "straight bent",
        "overhand underhand",
        "seated standing",
        "strict loose",
        "light heavy",
        "tucked flared",
        "open closed",
        "slow fast",
        "slower faster",
        "heavier lighter",
    )
)
"""Two ways to do it."""


def _is_of_topic(rest: Sequence[Mark]) -> bool:
    """`t bar is that with the pad or without`, `csr with the elbows in or out`: what is asked of what is named."""
    said = [w for m in rest for w in m.text.split()]
    if has_entry(rest) or len(said) < _LEAST or any(m.kind is Kind.NUM for m in rest):
        return False
    if said[0] in _ASKED and said[1] in _SUBJECTS and said[1] != "there":
        return True
    at = said.index("or") if "or" in said else 0
    behind = said[at + 1 :]
    return len(behind) == 1 and any(frozenset((one, behind[0])) in _SIDES for one in said[:at])


def asks_of_named(part: Sequence[Mark]) -> bool:
    """`do the clams come before or after`, `is bench next`: what is asked of a named exercise, the verb first."""
    if not part or has_entry(part) or any(m.kind is Kind.NUM for m in part):
        return False
    first = part[0].text.split(" ")[0]
    article = len(part) > 1 and part[1].text in ("the", "my", "these", "those")
    named = part[1 + article].kind in (Kind.NAME, Kind.WEAK) if len(part) > 1 + article else False
    rest = part[2 + article :]
    return named and bool(rest) and ((first in ("do", "does") and article) or first in ("is", "are"))


def _is_announced(marks: Sequence[Mark], place: int) -> bool:
    """`q: drop sets on the last one or all`: what is called a question."""
    lead = [w for m in marks[max(0, place - 3) : place] for w in m.text.split() if w.isalpha()]
    linked = place > 1 and marks[place - 1].kind in (Kind.COLON, Kind.DASH, Kind.COMMA)
    return linked and lead[-1:] in (["q"], ["question"], ["qn"], ["qq"])


def tagged(marks: Sequence[Mark], end: int) -> int | None:
    """Where a sentence that ends at a place starts, if a tag at its end asks whether what it denies is so."""
    said: list[str] = []
    start = end
    while start > 0 and marks[start - 1].kind not in ENDS:
        start -= 1
        said = [*marks[start].text.split(), *said]
    tag = said[-2:]
    if len(said) < _LEAST or tag[0] not in _TAGGING or tag[1] not in _SUBJECTS:
        return None
    at = end
    while at > start and marks[at - 1].kind is not Kind.COMMA:
        at -= 1
    if not _NEVER & {w for m in marks[at:end] for w in m.text.split()}:
        at = start
    denied = _NEVER & {w for m in marks[at:end] for w in m.text.split()}
    return at if denied and not has_entry(marks[at:end]) else None


_LEAST = 4
"""Words of a question that is asked by turning its first two: `do i do these paused`."""


def _asks_of(said: Sequence[str]) -> bool:
    """`would a belt help`, `do other clients find`, `are straps worth it`, `is it meant to`, `hows the form in it`."""
    if len(said) < _LEAST - 1:
        return False
    first, second, rest = said[0], said[1], set(said[2:])
    if first in _MODALS and said[-1] == "instead":
        return True
    if first in _MODALS and (
        second in _OF or (second.replace(".", "", 1).isdigit() and ("be" in rest or _JUDGED & rest))
    ):
        return True
    if first in ("isnt", "arent") and (second in _THINGS or (second.isdigit() and _JUDGED & rest)):
        return not rest & {"its", "was", "it"}
    if first in ("r", "you", "anything", "who", "what", "where"):
        return _asks_shortly(said)
    if first == "do" and len(said) >= _LEAST:
        return second in _DO or (second in _OURS and bool(rest & _DOES))
    if first in ("hows", "how") and _FORM & set(said[1:4]):
        return True
    if first in ("is", "are") and second in _THINGS:
        return len(said) >= _LEAST
    if first in ("is", "are") and second in _OURS and rest & _FORM:
        return True
    if first in ("was", "were") and second in _OURS:
        return bool(rest & _PLANNED)
    if first in ("was", "were") and second in _THINGS:
        return bool(rest & {"supposed", "meant"})
    noun = second == "a" and (said[2] != "bit" or said[3:4] == ["of"]) and len(said) > _LEAST
    plain = second not in _TELLING or noun
    judged = bool(_JUDGED & (set(said[3:]) if second == "a" else rest))  # `is a right idiot` judges, and asks nothing
    return first in ("is", "are") and plain and judged


_FREE = frozenset(words("free around there ok okay happy cool fine in about up good"))


def _asks_shortly(said: Sequence[str]) -> bool:
    """`r u free on tuesday`, `u ok with me doing arms`, `anything i can do`, `who else is on this`."""
    if said[0] == "r":
        return said[1] == "you"
    if said[0] == "you" and said[1] == "want":
        return "or" in said[3:] or "how" in said or said[2:4] == ["me", "to"]
    if said[0] == "you" and said[1] in ("reckon", "think"):
        return said[2] in ("i", "we", "it", "that", "this", "the")
    if said[0] == "you":
        return said[1] in _FREE and bool({"with", "if", "for", "on", "to", "today", "tomorrow", "at"} & set(said[2:4]))
    if said[0] == "anything":
        return said[1] in ("i", "we", "else", "you")
    return said[1] == "else"


def _asks_which(part: Sequence[Mark], said: Sequence[str]) -> bool:
    """`was it 100 or 110 you wanted`: which of two numbers."""
    if said[0] not in ("was", "is") or said[1:2] not in (["it"], ["that"], ["this"]):
        return False
    kinds = [m.kind for m in part if m.kind not in (Kind.KG, Kind.LB, Kind.FILL, Kind.SETS, Kind.REPS)]
    return any(kinds[i : i + 3] == [Kind.NUM, Kind.OR, Kind.NUM] for i in range(len(kinds)))


def _is_choice(part: Sequence[Mark], said: Sequence[str]) -> bool:
    """`more weight or more reps`, `straps or no straps`, `same weight next week or up`: one of two things to do."""
    at = next((i for i, m in enumerate(part) if m.kind is Kind.OR), None)
    if at is None or len(said) > _MOST or at == 0 or at + 1 >= len(part):
        return False
    before = [w for m in part[:at] for w in m.text.split()]
    after = [w for m in part[at + 1 :] for w in m.text.split()]
    if before[0] in _CHOOSING and (after[0] in _CHOICES | _CHOOSING or after[0] in _BODY):
        return True
    if before[0] in ("use", "go", "take", "keep") and (after[0] == "the" or after[0].isdigit()):
        return True
    if any(m.kind is Kind.NUM for m in part[:at]) and not any(m.kind is Kind.OTHERTIME for m in part):
        return False
    twice = (before[0] == after[0] and len(after) > 1) or (before[0] == "too" and len(before) > 1)
    without = after[:1] == ["no"] and after[1:2] == before[-1:]
    put_off = any(m.kind is Kind.OTHERTIME and m.text.startswith("next ") for m in part)
    either = after[:1] == ["no"] and before[-1:] == ["yes"]
    formed = before[0] in _LIMBS and frozenset((before[-1], after[0])) in _SIDES
    twice = twice or formed or (len(before) == len(after) == 1 and frozenset((before[0], after[0])) in _SIDES)
    return twice or without or either or (put_off and (after[0] in _CHOICES or text_at(part, at + 1).isdigit()))
