"""Words of another time or another person than this session: plans, wishes, last week's, a mate's."""

from collections.abc import Sequence

from bot.notation.bounds import HARDEST
from bot.notation.clauses import EDGES, FARTHEST, text_at
from bot.notation.kinds import Kind
from bot.notation.strays.reasons import BECAUSE, tells_of_sets
from bot.notation.strays.substitutes import taken_up
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_DOING = (
    "did",
    "got",
    "managed",
    "made",
    "ended",
    "but",
    "only",
    "just",
    "actual",
    "actually",
    "instead",
    "so",
    "today",
)
_PAST = ("last", "used", "my", "pb", "pr", "best", "personal", "previous", "record", "since", "back in")
_NOW = ("but", "today", "now", "tonight", "instead", "actual")
_HOPED = ("to", "try", "might", "could", "will", "ill", "gonna", "can", "should", "would", "want", "hope", "wanna")


def other_times(marks: Sequence[Mark]) -> set[int]:
    """The places of numbers that are no set of this session: plans, wishes, last week's, and things counted.

    What is told of another time reaches to the end of its part, or to a word of doing (`going for 8 but got 7`).
    """
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if _is_went_back(marks, place):
            continue
        out |= _before(marks, place)
        if mark.text == "up from" and not _is_compared(marks, place):
            continue
        if mark.kind in (Kind.OTHERTIME, Kind.OTHERPERSON):
            out |= _reach(marks, place)
        elif mark.kind is Kind.TALKNUM or (mark.kind is Kind.INSTEAD and _next_kind(marks, place) is Kind.NUM):
            out |= _with_scale(marks, _next_number(marks, place))
    return out - taken_up(marks)


def _with_scale(marks: Sequence[Mark], places: set[int]) -> set[int]:
    """The places of a score with the rest of `four out of ten`."""
    last = max(places, default=-1)
    ten = last + 3 if [m.text for m in marks[last + 1 : last + 3]] == ["out", "of"] else -1
    scored = 0 < ten < len(marks) and marks[ten].value == HARDEST
    return places | set(range(last + 1, ten + 1)) if scored else places


def _is_went_back(marks: Sequence[Mark], place: int) -> bool:
    """`then went back to 120 for 9`, `back to the 14s and got 12`, `back to rows 60x8`: what was done, not what is to
    come."""
    if marks[place].text.split()[-2:] != ["back", "to"]:
        return False
    at = place + 1
    while at < len(marks) and (marks[at].text in ("the", "for") or marks[at].kind is Kind.NAME):
        at += 1
    if at >= len(marks) or marks[at].kind is not Kind.NUM:
        return False
    following = [m for m in marks[at + 1 : at + 6] if m.kind not in (Kind.KG, Kind.LB, Kind.S, Kind.HAND)]
    got = [m for m in following[1:] if m.kind is not Kind.FILL or m.text in _DOING]
    told = [m.kind for m in (following[:1] + got)[:3]]
    counted = told[:2] in ([Kind.NUM, Kind.REPS], [Kind.COMMA, Kind.NUM]) or told == [Kind.AND, Kind.FILL, Kind.NUM]
    return told[:1] in ([Kind.X], [Kind.FOR]) or counted


def _is_compared(marks: Sequence[Mark], place: int) -> bool:
    """`60x5, up from 57.5`, `up from last week's 8`: what was, and no `stood up from the chair 12`."""
    following = [m for m in marks[place + 1 : place + 4] if m.kind is not Kind.FILL]
    stood = place > 0 and marks[place - 1].text in _STOOD
    return not stood and bool(following) and following[0].kind is not Kind.WORD


_STOOD = ("stood", "standing", "stand", "getting", "got", "get", "rose", "rising")
_LATELY = ("last time", "last week", "last session", "last month")


def _before(marks: Sequence[Mark], place: int) -> set[int]:
    """`57.5x10 last time, 60x9 now`: the set straight before, where another set is told elsewhere."""
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES
    if marks[place].text not in _LATELY or not ends:
        return set()
    start = place
    while start > 0 and marks[start - 1].kind in (Kind.NUM, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS):
        start -= 1
    led = start == 0 or marks[start - 1].kind in EDGES or marks[start - 1].kind is Kind.NAME
    whole = any(m.kind in (Kind.X, Kind.FOR) for m in marks[start:place])
    other = any(m.kind in (Kind.X, Kind.FOR) for m in (*marks[:start], *marks[place:]))
    return set(range(start, place)) if led and whole and other else set()


def _next_kind(marks: Sequence[Mark], place: int) -> Kind | None:
    """What follows, past a sign."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.PLUS, Kind.DASH, Kind.MINUS):
        at += 1
    return marks[at].kind if at < len(marks) else None


def _reach(marks: Sequence[Mark], place: int) -> set[int]:
    reached = {place}
    at = place + 1
    opening = marks[place]
    of_time, of_person = opening.kind is Kind.OTHERTIME, opening.kind is Kind.OTHERPERSON
    doing = _NOW if opening.text.startswith(_PAST) else _DOING
    hoping = opening.text.split(" ")[-1] in _HOPED
    last = min(len(marks), place + FARTHEST)
    because = place > 0 and marks[place - 1].text in BECAUSE
    while at < last and marks[at].kind not in EDGES and not _ends_telling(marks, at):
        mark = marks[at]
        if because and tells_of_sets(marks, at):
            break
        if mark.kind is Kind.FINISH and opening.text.split(" ")[0] in _TOMORROW:
            break
        if mark.kind is Kind.FILL and not mark.text.replace(" ", "").isalnum() and _is_set_apart(marks, place, at):
            break
        if mark.kind is Kind.NUM and at > place + 1 and _is_set_behind(marks, place, at):
            break
        if mark.kind is Kind.FAILED and mark.text.startswith("but ") and of_time:
            break  # `wanted 8 but failed the 8th at 155`
        if mark.text == "so" and at + 1 < len(marks) and marks[at + 1].kind is Kind.NUM:
            break
        if of_time and mark.text in doing and not (hoping and mark.text in ("only", "just")):
            break
        if of_person and (_is_own(marks, at) or _is_told_behind(marks, place, at)):
            break
        if of_person and (_is_set_of_mine(marks, place, at) or _is_named(marks, place, at)):
            break
        if (of_person or opening.text in _SAYS) and _lists_behind(marks, place, at):
            break
        if mark.kind is Kind.NUM and marks[at - 1].kind is Kind.NAME and opening.text.startswith("instead"):
            break
        if mark.kind is Kind.AND and at + 2 < len(marks) and marks[at + 1].kind is Kind.NAME:
            break
        reached.add(at)
        hoping = mark.text in _HOPED
        at += 1
    if at < len(marks) and marks[at].kind not in EDGES and of_time:
        reached -= _still_named(marks, reached, at)
    if of_person:
        reached |= _in_apposition(marks, at)
        reached -= _still_named(marks, reached, at) if _is_own_count(marks, at) else set()
    before = place - 1
    while before > 0 and marks[before].kind in (Kind.KG, Kind.LB, Kind.S) and marks[place].text.startswith(_AHEAD):
        before -= 1
    bare = before >= 0 and marks[before].kind is Kind.NUM
    bare = bare and (before == 0 or marks[before - 1].kind in (*EDGES, Kind.FILL, Kind.AT, Kind.WAS, Kind.WITH))
    if bare and marks[place].text.startswith((*_AHEAD, "last")):
        reached |= set(range(before, place))
    return reached | _aimed(marks, place)


_SAYS = ("says", "said", "say", "sends", "thinks", "reckons")


def _lists_behind(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`my wife says hi and 60 8 8 7`: behind words without a number, the client's own list."""
    if marks[at].kind is not Kind.AND:
        return False
    told = any(m.kind is Kind.NUM for m in marks[place:at])
    listed = [m.kind for m in marks[at + 1 : at + 4]]
    return not told and listed in ([Kind.NUM] * 3, [Kind.NUM, Kind.X, Kind.NUM])


def _is_set_behind(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`hurt my pride more than anything 80x3`: a set behind what is only compared."""
    entry = at + 1 < len(marks) and marks[at + 1].kind is Kind.X
    return marks[place].text == "than" and entry and all(m.kind is Kind.FILL for m in marks[place + 1 : at])


_AHEAD = ("next", "tomorrow")
_NEXT = ("rack", "bench", "platform", "machine", "lane", "door", "station", "mat")


def _ends_telling(marks: Sequence[Mark], at: int) -> bool:
    """Whether `then` or a colon ends what is told of another: not the `next` of `the guy in the next rack`."""
    if marks[at].kind not in (Kind.THEN, Kind.COLON):
        return False
    return marks[at].text != "next" or at + 1 >= len(marks) or marks[at + 1].text not in _NEXT


_RESUMING = ("anyway", "anyways", "anyhow")
_TOMORROW = ("tomorrow", "tmrw", "tmr", "tomoz", "tmw", "2moro", "tomorow", "tommorow")
"""Days to come, behind which an end is of today: `so sore tmrw haha all done`."""
_MY_DOING = frozenset(
    words("i im ive ill id it did started just count counting counted call calling say lets make only really put log")
)
"""Words behind `so` of what the client did, or how many count: `my spotter helped so count only 6`."""
_MINE = ("me", "mine", "myself")


def _in_apposition(marks: Sequence[Mark], at: int) -> set[int]:
    """`some girl pulled double bodyweight, 120!`: a number of theirs that ends the sentence behind a comma."""
    if not (at + 1 < len(marks) and marks[at].kind is Kind.COMMA and marks[at + 1].kind is Kind.NUM):
        return set()
    end = at + 2
    while end < len(marks) and marks[end].kind in (Kind.KG, Kind.LB):
        end += 1
    more = any(m.kind is Kind.NUM for m in marks[end:])
    return set(range(at + 1, end)) if more and end < len(marks) and marks[end].kind in (Kind.STOP, Kind.LINE) else set()


def _is_set_apart(marks: Sequence[Mark], place: int, at: int) -> bool:
    """Whether a sign of mood ends what is told: of another person, behind a number of theirs."""
    return marks[place].kind is Kind.OTHERTIME or any(m.kind is Kind.NUM for m in marks[place:at])


def _is_set_of_mine(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`my mate watched and 90x10`, `they are so hard but 110x8`: a set behind somebody who lifted nothing."""
    first = at + 1
    if marks[at].kind is not Kind.AND and marks[at].text != "but":
        return False
    told = [m.kind for m in marks[first : first + 3] if m.kind not in (Kind.KG, Kind.LB)]
    entry = told[:1] == [Kind.NUM] and told[1:2] in ([Kind.X], [Kind.FOR], [Kind.NUM])
    said = {w for m in marks[place:at] for w in m.text.split()}
    return entry and not said & _LIFTED and not any(m.kind is Kind.NUM for m in marks[place:at])


def _is_named(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`my kid got sick and it was a quick one rows 60 10 9 8`: a named set behind what is no more told of them."""
    if marks[at].kind is not Kind.NAME or at + 1 >= len(marks) or marks[at + 1].kind not in _OF_SETS:
        return False
    turned = (i for i in range(place, at) if marks[i].kind is Kind.AND or marks[i].text in ("so", "but", "because"))
    mine = any(marks[i + 1].text.split(" ")[0] in _NOT_THEIRS for i in turned if marks[i + 1].text)
    mine = mine or marks[at - 1].text == "so"
    return mine and not any(m.kind is Kind.NUM for m in marks[place:at])


_OF_SETS = (Kind.NUM, Kind.BODY, Kind.SET, Kind.SETS, Kind.ALL, Kind.EACH, Kind.ASSIST, Kind.ADDED, Kind.PLUS,
            Kind.SIGN, Kind.MINUS, Kind.WITH, Kind.LABEL, Kind.COLON, Kind.PLANNED, Kind.WAS)  # fmt: skip
"""What the sets of a name begin with, straight behind it."""
_NOT_THEIRS = frozenset(words("it its i im ive id we were only quick short just"))
"""What is spoken of behind `and`, where no more is told of somebody else."""
_WHEN = frozenset(("before", "while", "until", "till", "when", "after", "as", "since", "whilst"))
_LIFTS = frozenset(("did", "got", "had", "hit", "put", "made", "pulled", "pushed", "lifted", "pressed", "at", "for"))


def _is_told_behind(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`before she woke up eight reps`: the client's own number, behind what only says when."""
    if marks[at].kind is not Kind.NUM or at < place + 2:
        return False
    when = place > 0 and marks[place - 1].text.split()[-1:] and marks[place - 1].text.split(" ")[-1] in _WHEN
    if not when:
        return False
    before = marks[at - 1]
    lifted = before.text.split()[-1:] and before.text.split(" ")[-1] in (*_LIFTS, "the", "my")
    rest = marks[at + 1].kind if at + 1 < len(marks) else None
    counted = rest in (None, Kind.REPS, Kind.X, Kind.FOR, Kind.AND, Kind.WITH, Kind.EACH, *EDGES)
    return counted and not lifted and before.kind is not Kind.NAME


_LIFTED = frozenset(
    words("benched squatted deadlifted curled rowed repped does lifts did got hit made pulled pushed lifted")
)
"""What somebody did who lifted too."""


def _still_named(marks: Sequence[Mark], reached: set[int], at: int) -> set[int]:
    """`was gonna take 14s for lunges but took the 10s`: the one name of what was then done otherwise."""
    names = [i for i in reached if marks[i].kind is Kind.NAME]
    later = False
    while at < len(marks) and marks[at].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY):
        later = later or marks[at].kind in (Kind.NAME, Kind.WEAK)
        at += 1
    return set(names) if len(names) == 1 and not later else set()


def _is_own(marks: Sequence[Mark], place: int) -> bool:
    """`someone was on it so i did rows`, `lol anyway 60x5`, `me: 60x5`: where the client's own doing starts."""
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    if marks[place].kind is Kind.AND and text_at(marks, place + 1).split()[:1] in (["i"], ["im"], ["ive"], ["me"]):
        return True
    if marks[place].text in _RESUMING or (marks[place].text in _MINE and following in (Kind.NUM, Kind.COLON)):
        return True
    if marks[place].text != "so":
        return False
    doing = {w for m in marks[place + 1 : place + 2] for w in m.text.split()[:1]}
    return bool(doing & _MY_DOING)


def _is_own_count(marks: Sequence[Mark], at: int) -> bool:
    """`my brother did 8 chins, i only did 6`: a bare count of the client's own, of the same exercise."""
    said = [m for m in marks[at + 1 : at + 7] if m.text not in ("only", "just", "but", "could")]
    own = [m.text for m in said[:1]] == ["i"] and {m.text for m in said[1:2]} <= {"did", "got", "managed", "hit"}
    ends = len(said) < 4 or said[3].kind in (*EDGES, Kind.REPS)
    return own and [m.kind for m in said[2:3]] == [Kind.NUM] and ends


def _aimed(marks: Sequence[Mark], place: int) -> set[int]:
    """`dropping to -10 next time`: the load that is only thought of, before the words that put it off."""
    if not marks[place].text.startswith(_AHEAD):
        return set()
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.KG, Kind.LB, Kind.FILL, Kind.FOR):
        at -= 1
    if at < 0 or marks[at].kind is not Kind.NUM:
        return set()
    number = at
    while at > 0 and marks[at - 1].kind in (Kind.DASH, Kind.PLUS, Kind.MINUS, Kind.FILL):
        at -= 1
    led = at > 0 and (marks[at - 1].kind is Kind.TO or marks[at - 1].text.endswith(" to"))
    return set(range(at - 1, number + 1)) if led else set()


def _weighed_behind(marks: Sequence[Mark], place: int) -> set[int]:
    """`weighed myself this morning, 84.2 kg.`: the number straight behind the comma that ends its part."""
    at = place + 1
    while at < len(marks) and marks[at].kind not in EDGES and marks[at].kind is not Kind.NUM:
        at += 1
    number = at + 1
    if not (number < len(marks) and marks[at].kind in (Kind.COMMA, Kind.STOP) and marks[number].kind is Kind.NUM):
        return set()
    end = number + 1
    while end < len(marks) and marks[end].kind in (Kind.KG, Kind.LB):
        end += 1
    ends = end >= len(marks) or marks[end].kind in EDGES
    return set(range(number, end)) if ends else set()


_WEIGHED = ("weighed", "weigh", "weighed in at")
_PAID_OR_UP = ("paid", "cost", "costs", "spent", "price", "woke", "wake", "arrive", "arrived", "bed", "awake",
               "got up at", "get up at", "getting up at", "was up at", "set my alarm for",
               "alarm went off at")  # fmt: skip
"""Behind these a number with `for` tells what was paid, or the time of day: `woke up at 5 for this`."""


def _next_number(marks: Sequence[Mark], place: int) -> set[int]:
    at = place
    reached = {place}
    if "weigh" in marks[place].text:
        reached |= _weighed_behind(marks, place)
    while at + 1 < len(marks) and marks[at + 1].kind not in (*EDGES, Kind.THEN, Kind.NAME) and at - place < 5:
        at += 1
        if marks[at].kind in (Kind.NUM, Kind.CLOCK, Kind.BAD):
            if marks[at - 1].text == "@":
                return {place}
            if marks[place].kind is Kind.INSTEAD and marks[at - 1].kind in (Kind.PLUS, Kind.DASH, Kind.MINUS):
                reached.add(at - 1)
            following = marks[at + 1].kind if at + 1 < len(marks) else None
            if following in (Kind.METRES, Kind.M):
                return {place}
            if marks[place].text.startswith("arriv") and marks[at - 1].kind is not Kind.AT:
                return {place}
            if following in (Kind.SLASH, Kind.DASH) and at + 2 < len(marks) and marks[at + 2].kind is Kind.NUM:
                reached |= {at + 1, at + 2}
            bought = marks[place].text in _PAID_OR_UP and following is Kind.FOR and at + 2 < len(marks)
            bought = bought and marks[at + 2].kind is not Kind.NUM
            if following in (Kind.X, Kind.FOR) and marks[place].text not in _WEIGHED and not bought:
                return {place}
            reached.add(at)
            if following in (Kind.KG, Kind.LB, Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.M, Kind.WORD):
                reached.add(at + 1)
            return reached
    return reached
