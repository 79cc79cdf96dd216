"""Times that are of no set: `30 sec rest`, `time 52:10`, `5 in the morning`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def is_rest(marks: Sequence[Mark], place: int) -> bool:
    """`30 sec rest`: the time between two sets."""
    timed = place + 2 < len(marks) and marks[place + 1].kind in (Kind.SECONDS, Kind.S, Kind.MINUTES)
    return timed and marks[place + 2].text in ("rest", "rests", "break", "breather", "pause")


_LONG = 15
"""Minutes: a longer `time 52:10` is that of the session, not of a hold (common practice, no source)."""


def is_duration(marks: Sequence[Mark], place: int) -> bool:
    """`time 52:10`, `took 48:30`: how long the session took."""
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.FILL, Kind.WAS, Kind.COLON) or marks[at].text == "of"):
        if marks[at].text in _TAKING:
            break
        at -= 1
    taken = at >= 0 and bool({*marks[at].text.split()} & _TAKING)
    return taken and marks[place].parts[0] >= _LONG


_TAKING = frozenset(words("time took duration total length timer clock elapsed lasted"))


def is_hour(marks: Sequence[Mark], place: int) -> bool:
    """`5 in the morning`, `finished work at 6`: a time of day."""
    if [m.kind for m in marks[max(0, place - 2) : place]] == [Kind.UNDONE, Kind.AT] and "work" in marks[place - 2].text:
        return True
    said = [m.text for m in marks[place + 1 : place + 4]]
    return said[:2] == ["in", "the"] and said[2:] in (["morning"], ["evening"], ["afternoon"])


LAST_HOUR = 24
"""`gym at 7` is a time of day; a greater number after `at` is none."""
