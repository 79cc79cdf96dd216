"""Whether words that may skip do so: `that's it for bench` does, `couldnt stop it`, `so i left it at 50x10` do not."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.skips.crossed import ends_part
from bot.notation.skips.stands_for import pronoun
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def tells_one(marks: Sequence[Mark], place: int) -> bool:
    """`except the last set of rows, only got 6`: what one set was, so that nothing is left out."""
    end = next((i for i in range(place, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    which = any(m.kind in (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET) for m in marks[place:end])
    told = [i for i in range(place, end) if marks[i].kind is Kind.NUM and marks[i - 1].kind is not Kind.SET]
    names = [i for i in range(place, end) if marks[i].kind in (Kind.NAME, Kind.WEAK)]
    return which and len(told) == 1 and len(names) == 1


def goes_on(marks: Sequence[Mark], place: int) -> bool:
    """`couldnt stop it`, `so i left it at 50x10`: what is denied or left stands behind; `stopped the set`.

    In the words of a hurt the denial stands before.
    """
    if marks[place].kind is Kind.NO and is_gear(marks, place):
        return True
    if marks[place].text == "stop" and place and marks[place - 1].kind is Kind.GAP and pronoun(marks, place):
        return True
    if set(marks[place].text.split()) & _LOWERING and _lowers(marks, place):
        return True
    if marks[place].text.startswith("so ") and not ends_part(marks, place):
        return True
    said = marks[place].text.split()
    if said == ["stopped"] and set(text_at(marks, place + 1).split()[:1]) & _BY_ITSELF:
        return True
    if {"stop", "stopped", "stopping", "cut"} & set(said) and [m.kind for m in marks[place + 1 : place + 2]] == [
        Kind.SET
    ]:
        return ends_part(marks, place + 1)
    behind = marks[place + 1].kind if place + 1 < len(marks) else None
    verb = behind in (Kind.NAME, Kind.WEAK) and pronoun(marks, place + 1)
    unable = marks[place].text == "couldnt"
    return unable and (verb or behind in (Kind.SKIP, Kind.GAP) or text_at(marks, place + 1) in _UNTIED)


_UNTIED = frozenset(words("look watch believe stop help wait resist care complain ask remember find tell say hear see"))
"""What somebody could not do that is no exercise: `couldnt look`."""


_LOWERING = frozenset(words("drop dropped dropping cut cutting took"))


def _lowers(marks: Sequence[Mark], place: int) -> bool:
    """`dropped the hacks to 80x12`: their load."""
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.NAME, Kind.WEAK):
        at += 1
    return text_at(marks, at) in ("to", "down to") and kind_at(marks, at + 1) is Kind.NUM


def is_gear(marks: Sequence[Mark], place: int) -> bool:
    """`no belt today so chins 7`, `no dip belt`: what is hung on the body is missing, and no exercise is skipped."""
    at = place + 1
    while kind_at(marks, at) is Kind.NAME or text_at(marks, at) in ("weight", "lifting", "the", "my"):
        at += 1
    return at < place + 3 and text_at(marks, at) in _GEAR


_GEAR = frozenset(words("belt belts vest plate plates chain chains straps wraps sleeves chalk collars shoes"))
_BY_ITSELF = frozenset(
    words("working moving responding listening cooperating functioning hurting aching shaking burning feeling behaving")
)
"""What a body stops doing: `my legs stopped working`."""


def gives_up(marks: Sequence[Mark], place: int) -> bool:
    """`that's it for bench`: sets left are given up."""
    after = next((m for m in marks[place + 1 : place + 4] if m.text != "the"), None)
    if after is None or kind_at(marks, part_of(marks, place)[1]) is Kind.QUERY:
        return False
    return marks[place].text in (
        "thats it",
        "thats enough",
        "thats all",
        "that is it",
        "stopping there",
        "stopped there",
        "leaving it there",
        "call it a day",
        "ending it there",
        "calling it there",
        "stopping here",
        "stop here",
        "thatll do",
        "that will do",
        "thats my lot",
        "thats your lot",
        "thats yer lot",
        "thats the lot",
        "that is all",
        "thats me",
        "thats me done",
        "that was that",
        "thats that",
        "that was it",
        "that was me",
        "that was me done",
        "and that was that",
    ) and after.kind in (Kind.FOR, Kind.AT, Kind.WITH, Kind.NAME)
