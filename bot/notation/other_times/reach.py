"""How far what is told of another time or person reaches: `going for 8 but got 7`, `my mate pulled 120, i did 90x5`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, FARTHEST, is_entry, kind_at
from bot.notation.kinds import Kind
from bot.notation.other_times.own import is_named, is_own, is_own_count, is_set_of_mine, is_told_behind
from bot.notation.strays.reasons import BECAUSE, tells_of_sets
from bot.notation.tokens import Mark

DOING = (
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


_ONWARDS = (
    Kind.FILL, Kind.WITH, Kind.TO, Kind.COULD, Kind.WORD, Kind.ORD, Kind.LASTSET, Kind.SET, Kind.WAS, Kind.AT
)  # fmt: skip
_OTHERS = ("he", "she", "they", "his", "her", "their", "hers", "theirs")
_WHICH = (Kind.ORD, Kind.LASTSET)


def _leads_to_set(marks: Sequence[Mark], at: int, is_of_other: bool) -> bool:
    """Whether a number follows `so`: `someone took them so the 27.5 kilo ones for 9`, `so the third one was at 80 for
    10`, of the client's own set."""
    end = at
    while is_of_other and end < min(len(marks), at + _NEAR) and marks[end].kind in _ONWARDS:
        if marks[end].text.split()[0] in _OTHERS:
            return False
        end += 1
    named = is_of_other and kind_at(marks, at) is Kind.NAME and kind_at(marks, at + 1) in (Kind.WITH, Kind.AT)
    if named and kind_at(marks, at + 2) is Kind.NUM:
        return True  # `someone nicked the 24 so swings with the 28: 15 15`
    return end < len(marks) and marks[end].kind is Kind.NUM


def _counts_on(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`a lady wanted in and the third one was at 80 for 10`: which set of the client's own is told."""
    if marks[at].kind is not Kind.AND and marks[at].text != "but":
        return False
    if not any(m.kind is Kind.OTHERPERSON for m in marks[max(0, place - _NEAR) : place + 1]):
        return False
    which = at + 2 if at + 1 < len(marks) and marks[at + 1].text in ("the", "my") else at + 1
    return kind_at(marks, which) in _WHICH and _leads_to_set(marks, at + 1, is_of_other=True)


def _turns_to_own(marks: Sequence[Mark], place: int, at: int) -> bool:
    """Whether what is told of another person turns to the client's own: `my mate pulled 120, i did 90x5`."""
    own = is_own(marks, at) or is_told_behind(marks, place, at)
    return own or is_set_of_mine(marks, place, at) or is_named(marks, place, at)


_NEAR = 6
"""Marks between `so` and the number that it leads to."""


def reached_from(marks: Sequence[Mark], place: int) -> set[int]:
    reached = {place}
    at = place + 1
    opening = marks[place]
    of_time, of_person = opening.kind is Kind.OTHERTIME, opening.kind is Kind.OTHERPERSON
    doing = _NOW if opening.text.startswith(_PAST) else DOING
    hoping = opening.text.split(" ")[-1] in _HOPED
    last = min(len(marks), place + FARTHEST)
    because = place > 0 and marks[place - 1].text in BECAUSE
    while at < last and marks[at].kind not in EDGES and not _ends_telling(marks, at):
        mark = marks[at]
        if because and tells_of_sets(marks, at):
            break
        his = any(marks[i].kind is Kind.NUM for i in reached)
        if of_person and not his and mark.kind in _PARTING and _is_entry_named(marks, at + 1):
            break
        if mark.kind is Kind.FINISH and opening.text.split(" ")[0] in _TOMORROW:
            break
        if _is_mood(marks, at) and _is_set_apart(marks, place, at):
            break
        if mark.kind is Kind.FAILED and mark.text.startswith("but ") and of_time:
            break  # `wanted 8 but failed the 8th at 155`
        named = of_time and his and _is_entry_named(marks, at + 1)  # `last week i got 60x8 so rows 62.5x8`
        if mark.text == "so" and (named or _leads_to_set(marks, at + 1, of_person)):
            break
        if _counts_on(marks, place, at):
            break
        if of_time and mark.text in doing and not (hoping and mark.text in ("only", "just")):
            break
        if of_person and _turns_to_own(marks, place, at):
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
        reached -= _still_named(marks, reached, at) if is_own_count(marks, at) else set()
    before = place - 1
    while before > 0 and marks[before].kind in (Kind.KG, Kind.LB, Kind.S) and marks[place].text.startswith(_AHEAD):
        before -= 1
    bare = before >= 0 and marks[before].kind is Kind.NUM
    bare = bare and (before == 0 or marks[before - 1].kind in (*EDGES, Kind.FILL, Kind.AT, Kind.WAS, Kind.WITH))
    own = before == place - 1 and any(marks[i].kind is Kind.NUM for i in reached)
    if bare and not own and marks[place].text.startswith((*_AHEAD, "last")):
        reached |= set(range(before, place))
    return reached


_AHEAD = ("next", "tomorrow")
_NEXT = ("rack", "bench", "platform", "machine", "lane", "door", "station", "mat")


_PARTING = (Kind.PLUS, Kind.ARROW, Kind.DASH, Kind.SLASH)


def _is_entry_named(marks: Sequence[Mark], at: int) -> bool:
    """Whether an exercise with its sets starts there: `some guy took my rack + squats 80 4/4/4`."""
    while kind_at(marks, at) in _PARTING:
        at += 1
    led = (Kind.COLON, Kind.COMMA, Kind.DASH, Kind.WITH, Kind.AT, Kind.BODY, Kind.PLUS, Kind.MINUS, Kind.SIGN)
    number = at + 1 + (kind_at(marks, at + 1) in led)
    return kind_at(marks, at) is Kind.NAME and kind_at(marks, number) is Kind.NUM


def _ends_telling(marks: Sequence[Mark], at: int) -> bool:
    """Whether `then` or a colon ends what is told of another: not the `next` of `the guy in the next rack`."""
    if marks[at].kind not in (Kind.THEN, Kind.COLON):
        return False
    return marks[at].text != "next" or at + 1 >= len(marks) or marks[at + 1].text not in _NEXT


_LAUGHS = ("lol", "haha", "lmao", "hah", "lolz", "rofl")
_TOMORROW = ("tomorrow", "tmrw", "tmr", "tomoz", "tmw", "2moro", "tomorow", "tommorow")
"""Days to come, behind which an end is of today: `so sore tmrw haha all done`."""


def _in_apposition(marks: Sequence[Mark], at: int) -> set[int]:
    """`some girl pulled double bodyweight, 120!`: a number of theirs that ends the sentence behind a comma."""
    if not (at + 1 < len(marks) and marks[at].kind is Kind.COMMA and marks[at + 1].kind is Kind.NUM):
        return set()
    end = at + 2
    while end < len(marks) and marks[end].kind in (Kind.KG, Kind.LB):
        end += 1
    more = any(m.kind is Kind.NUM for m in marks[end:])
    return set(range(at + 1, end)) if more and end < len(marks) and marks[end].kind in (Kind.STOP, Kind.LINE) else set()


def _is_mood(marks: Sequence[Mark], at: int) -> bool:
    """A face, or a laugh before a whole set: `gonna puke lol 275x3`."""
    laughs = marks[at].text in _LAUGHS and is_entry(marks, at + 1)
    return marks[at].kind is Kind.FILL and (laughs or not marks[at].text.replace(" ", "").isalnum())


def _is_set_apart(marks: Sequence[Mark], place: int, at: int) -> bool:
    """Whether a sign of mood ends what is told: of another person, behind a number of theirs."""
    return marks[place].kind is Kind.OTHERTIME or any(m.kind is Kind.NUM for m in marks[place:at])


def _still_named(marks: Sequence[Mark], reached: set[int], at: int) -> set[int]:
    """`was gonna take 14s for lunges but took the 10s`: the one name of what was then done otherwise."""
    names = [i for i in reached if marks[i].kind is Kind.NAME]
    later = False
    while at < len(marks) and marks[at].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY):
        later = later or marks[at].kind in (Kind.NAME, Kind.WEAK)
        at += 1
    return set(names) if len(names) == 1 and not later else set()
