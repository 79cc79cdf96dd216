"""Turns of phrase that hold a word of sets and tell none: `it falls to one side`, `same as when i walk uphill`.

Common usage, no source.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_FIVE = 5
"""Minutes that somebody takes off: `taking five`."""
_OF_SETS = (Kind.NUM, Kind.CLOCK, Kind.NAME, Kind.DONE, Kind.SET, Kind.SETS, Kind.ALL, Kind.EACH, Kind.REPS,
            Kind.THEREST, Kind.PLANNED, Kind.WORKSET, Kind.LASTSET)  # fmt: skip
_DOING = (Kind.WORD, Kind.TALKNUM, Kind.WARMUP, Kind.GAP)
_SENTENCES = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)
_NOW = ("now", "here", "coach", "lol", "then")
_RESTING = ("taking", "take", "took", "taken", "grab", "grabbing")
NEEDS = (Kind.SAME, Kind.PLANNED, Kind.TO, "moment", *_RESTING)
_SUPPOSED = ("when", "whenever", "if")


def without_sayings(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the words of sets in such phrases as talk."""
    gone = {at for place in range(len(marks)) for at in _saying_at(marks, place)}
    return [replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone else m for i, m in enumerate(marks)]


def _saying_at(marks: Sequence[Mark], place: int) -> range:
    """The places of the phrase that starts here; empty where none does."""
    mark = marks[place]
    likened = mark.kind is Kind.SAME and text_at(marks, place + 1) == "as"
    if likened and text_at(marks, place + 2) in _SUPPOSED:
        end = part_of(marks, place)[1]
        told = any(m.kind in (Kind.X, Kind.FOR, Kind.NAME) for m in marks[place:end])
        return range(place, place + 3 if told else end)
    if mark.kind is Kind.PLANNED and _is_of_talk(marks, place):
        return range(place, place + 1)
    ends = (kind_at(marks, place + 1) in (None, *EDGES) or text_at(marks, place + 1) in _NOW) and mark.value == _FIVE
    if mark.kind is Kind.NUM and ends and text_at(marks, place - 1) in _RESTING:
        return range(place, place + 1)
    moment = text_at(marks, place + 1) == "moment" and kind_at(marks, place - 1) is Kind.FOR
    if mark.kind is Kind.NUM and mark.value == 1 and moment:
        return range(place - 1, place + 2)
    one_side = mark.kind is Kind.TO and text_at(marks, place + 1) == "one" and text_at(marks, place + 2) == "side"
    if one_side and (place + 3 >= len(marks) or kind_at(marks, place + 3) in (*EDGES, Kind.AND)):
        return range(place, place + 3)
    return range(0)


def _is_of_talk(marks: Sequence[Mark], place: int) -> bool:
    """`i paid attention as you asked. 25x10`: what was done so is no set, and a set is told in another part."""
    if text_at(marks, place + 1) == "me" and text_at(marks, place + 2) == "to":
        return True  # `like you asked me to check`
    start, end = part_of(marks, place)
    if end == start + 1 and start > 1 and marks[start - 1].kind is Kind.COMMA:
        start = part_of(marks, start - 2, ends=_SENTENCES)[0]
    said = [*marks[start:place], *marks[place + 1 : end]]
    talk = not any(m.kind in _OF_SETS for m in said) and any(m.kind in _DOING for m in marks[start:place])
    return talk and any(m.kind is Kind.NUM for m in (*marks[:start], *marks[end:]))
