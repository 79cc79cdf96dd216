"""Words of talk as what they are in their clause: moods, hedges, a watch's numbers."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark


def with_wordings(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text == "steps" and place and marks[place - 1].kind is Kind.NUM:
            out[place] = replace(mark, kind=Kind.REPS)
        elif _is_mood(marks, place) or _is_all_of_things(marks, place):
            out[place] = replace(mark, kind=Kind.FILL)
        elif mark.text in ("might", "may", "mightve") and _is_hedge(marks, place):
            out[place] = replace(mark, kind=Kind.SLIP)
        elif mark.kind is Kind.OTHERTIME and mark.text in ("says", "say", "said") and _is_watch(marks, place):
            out[place] = replace(mark, kind=Kind.TALKNUM)
        elif (
            (mark.kind is Kind.SAME and _is_of_thing(marks, place))
            or _is_unsent(marks, place)
            or is_apology(marks, place)
        ):
            out[place] = replace(mark, kind=Kind.FILL)
        elif mark.kind is Kind.MORE and _is_uncounted(marks, place):
            out[place - 1] = replace(marks[place - 1], kind=Kind.FILL)
            out[place] = replace(mark, kind=Kind.FILL)
        elif mark.kind is Kind.NO and _is_told_again(marks, place):
            out[place] = replace(mark, kind=Kind.SORRY)
    return out


def _is_uncounted(marks: Sequence[Mark], place: int) -> bool:
    """`could have done more but the straps slipped`: how many is not said."""
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    return place > 0 and marks[place - 1].kind is Kind.COULD and following not in (Kind.NUM, Kind.REPS)


def _is_all_of_things(marks: Sequence[Mark], place: int) -> bool:
    """`sorry for all the typos`, `all the lads watched`: of no sets, in a part without a number or behind thanks."""
    if marks[place].kind not in (Kind.ALL, Kind.EACH) or marks[place].text not in ("all", "for all", "both"):
        return False
    start, end = part_of(marks, place)
    led = [m.text for m in marks[place + 1 : place + 2]] in ([w] for w in _WHOSE)
    thanked = any(set(m.text.split()) & _THANKED for m in marks[max(start, place - _NEAR) : place])
    thing = place + 2 < end and (thanked or marks[place + 2].kind is Kind.WORD)
    return (
        led
        and thing
        and not any(m.kind is Kind.NUM for m in marks[place if thanked or marks[place].text == "both" else start : end])
    )


_NEAR = 3
"""Marks between thanks and what they are for."""
_THANKED = frozenset(("thanks", "thank", "thx", "tks", "cheers", "ta", "thankyou", "sorry", "grateful"))
_WHOSE = ("the", "my", "your", "this", "that", "these", "those")


def _is_mood(marks: Sequence[Mark], place: int) -> bool:
    """`feeling fancy`: how it went, no wish."""
    before = marks[place - 1].text.split()[-1:] if place else []
    return marks[place].text == "fancy" and before in (["feeling"], ["felt"], ["feel"], ["so"], ["very"], ["bit"])


def _is_hedge(marks: Sequence[Mark], place: int) -> bool:
    """`might have been 4`: a number that is not known for certain."""
    said = [w for m in marks[place + 1 : place + 4] for w in m.text.split()]
    numbered = any(m.kind is Kind.NUM for m in marks[place + 1 : place + 4])
    return numbered and (said[:2] == ["have", "been"] or said[:1] == ["been"])


def _is_watch(marks: Sequence[Mark], place: int) -> bool:
    """`my watch says 152`: the next number is its, and no more."""
    return place > 0 and marks[place - 1].text in (
        "watch",
        "garmin",
        "tracker",
        "strap",
        "phone",
        "thermometer",
        "scale",
    )


def is_apology(marks: Sequence[Mark], place: int) -> bool:
    """`sorry for all the messages`, `sorry about the noise`: for something else than a number."""
    if marks[place].kind is not Kind.SORRY or not marks[place].text.startswith("sorry"):
        return False
    led = place + 1 < len(marks) and marks[place + 1].text.split()[:1] in (["for"], ["about"])
    _, end = part_of(marks, place)
    said = {w for m in marks[place:end] for w in m.text.split()}
    return (
        led and len(said) > len(_BARE) and not said & _SLIPS and not any(m.kind is Kind.NUM for m in marks[place:end])
    )


_BARE = ("sorry", "for")
_SLIPS = frozenset(
    ("mistake", "typo", "error", "wrong", "mixup", "confusion", "miscount", "number", "numbers", "mistakes")
)


def apologies(marks: Sequence[Mark]) -> set[int]:
    """The places of such apologies, to the end of their part."""
    starts = [i for i in range(len(marks)) if is_apology(marks, i)]
    return {i for start in starts for i in range(start, part_of(marks, start)[1])}


_SENDING = frozenset(("sent", "send", "logged", "log", "told", "wrote", "reported", "posted", "i sent"))


def _is_unsent(marks: Sequence[Mark], place: int) -> bool:
    """`i never sent you monday's session`: what comes now is what was done."""
    return marks[place].text == "never" and place + 1 < len(marks) and marks[place + 1].text in _SENDING


def _is_of_thing(marks: Sequence[Mark], place: int) -> bool:
    """`the radio played the same song`, `same playlist as always`: behind a word of talk, or of a thing of talk."""
    start, end = part_of(marks, place)
    if _is_of_kit(marks[start:end], place - start) and any(m.kind is Kind.NUM for m in marks):
        return True
    if place + 1 >= end:
        return False
    behind = next((m for m in marks[place + 1 : end] if m.text not in _OF_IT), marks[place])
    if behind.text in TALKED_OF | _PLACES and behind.kind not in (Kind.NAME, Kind.WEAK):
        return True
    noun = marks[place + 1].kind is Kind.WORD and not marks[place + 1].text.endswith(_OF_HOW)
    if noun and place + 2 < end and all(m.kind in _OF_TALK for m in marks[place + 2 : end]):
        return True  # `same queue for the showers`: the word goes on
    before = any(m.kind in (Kind.WORD, Kind.TALKNUM, Kind.OTHERPERSON) for m in marks[start:place])
    return before and marks[place + 1].kind in (Kind.WORD, Kind.SECONDS, Kind.MINUTES, Kind.HOURS, Kind.ORD)


def _is_of_kit(part: Sequence[Mark], place: int) -> bool:
    """`6, belt on as before`, `straps on same as last time`: in a part without a number, behind what was worn."""
    worn = any(set(m.text.split()) & _WORN for m in part[:place])
    return worn and not any(m.kind in (Kind.NUM, Kind.NAME, Kind.WEAK, Kind.SET, Kind.SETS, Kind.AND) for m in part)


_WORN = frozenset(("belt", "straps", "strap", "sleeves", "wraps", "chalk", "shoes", "hook", "hooks", "grips", "gloves"))
_OF_IT = ("as", "as the", "as my", "of", "of the", "the", "my", "of my", "of this", "this", "that", "old")
_PLACES = frozenset(("time", "place", "spot", "corner", "rack", "machine", "station", "platform"))
_OF_HOW = ("ed", "er", "ly", "ing", "y")
"""Ends of words that tell how a set was that is the same: `same wobbled a bit`."""
_OF_TALK = frozenset((Kind.WORD, Kind.FILL, Kind.FOR, Kind.AT, Kind.WITH, Kind.TO, Kind.GAP, Kind.OTHERPERSON, Kind.WAS,
                      Kind.OTHERTIME, Kind.TALKNUM, Kind.AGAIN))  # fmt: skip


def _is_told_again(marks: Sequence[Mark], place: int) -> bool:
    """`100x6, no, 5`: a number that another takes the place of."""
    kinds = [m.kind for m in marks[place + 1 : place + 3]]
    earlier = [m.kind for m in marks[max(0, place - 2) : place]]
    return kinds == [Kind.COMMA, Kind.NUM] and earlier in ([Kind.NUM, Kind.COMMA], [Kind.NUM, Kind.STOP])
