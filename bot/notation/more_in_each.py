"""How many more each set had in it: `80x6x3 (maybe one more in each)`, `could have done two more on every set`.

Where a word says that these were not done, they were left; where none does, they may be more than at another time, and
are asked about.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_LEFT
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_UNDONE = frozenset(words(
    "maybe perhaps probably possibly prob probs likely could couldve coulda might mightve would wouldve can easily "
    "surely reckon think guess felt id"
))  # fmt: skip
"""Words of what was not done, one of which leads."""
_LED = frozenset((*_UNDONE, *words("i had have done do got did get made make of it like there was were is with "
                                  "about only just still at least the")))  # fmt: skip
_IN = frozenset(words("in on for with at"))
_OF_SET = frozenset(words("set sets one ones of them those these the time"))
_EVERY = (Kind.EACH, Kind.ALL)
_BEFORE = (None, *EDGES, Kind.NUM, Kind.REPS, Kind.KG, Kind.LB, Kind.S)
"""What such words stand behind: a set, or nothing in their part."""


def with_more_in_each(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as what was left in each."""
    out = list(marks)
    for place in range(len(marks) - 1, -1, -1):
        more = place if kind_at(marks, place) is Kind.ANOTHER else place + 1
        one = more == place and text_at(marks, place) == "one more"
        number = kind_at(marks, place) is Kind.NUM and kind_at(marks, more) is Kind.MORE
        if not (one or number):
            continue
        at = more + 1 + (kind_at(marks, more + 1) is Kind.REPS)
        at += text_at(marks, at) in _IN
        every, end = at, at + 1
        while kind_at(marks, end) not in (None, *EDGES) and set(text_at(marks, end).split()) <= _OF_SET:
            end += 1
        closed = kind_at(marks, end) in (None, *EDGES) and kind_at(marks, end) is not Kind.QUERY
        if kind_at(marks, every) not in _EVERY or not closed:
            continue
        start = place
        while start > 0 and marks[start - 1].kind not in EDGES and set(marks[start - 1].text.split()) <= _LED:
            start -= 1
        value = Decimal(1) if one else marks[place].value
        count = replace(marks[place], kind=Kind.NUM, text=str(value), value=value)
        undone = any(set(m.text.split()) & _UNDONE for m in marks[start:place])
        inside = every > more + 1
        if undone and kind_at(marks, start - 1) in _BEFORE and value is not None and value <= MOST_LEFT:
            tank = replace(marks[more], kind=Kind.TANK, text="left", value=None)
            each = replace(marks[every], end=marks[end - 1].end)
            each = replace(each, kind=Kind.ALL, text="every set") if inside else each
            out[start:end] = [replace(count, start=marks[start].start), tank, each]
        elif one and inside and start == place:
            out[place : place + 1] = [count, replace(marks[place], kind=Kind.MORE, text="more", start=count.end)]
    return out


NEEDS = (Kind.MORE, Kind.ANOTHER)
