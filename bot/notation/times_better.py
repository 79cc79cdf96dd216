"""How a set compares or is scored, beside one that is told: `felt 10x better`, `twice as easy`, `a 10/10 set`, `50/50`.

Its number is of no set. Common wordings; no source.
"""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, parts_between, text_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_THINGS = TALKED_OF | frozenset(words(
    "gym gyms towels smell smells vibe vibes aircon ac service staff changing lockers toilets loos machines barista "
    "wifi view sunset sunrise weather crowd company chat banter fit shoes cat nap lighting lights receptionist decor "
    "changingrooms showers new refit pubs food beer protein"
))  # fmt: skip
"""What is scored out of ten for fun."""
_BETTER = frozenset(words(
    "better worse smoother easier harder heavier lighter faster quicker slower cleaner stronger nicer tougher rougher "
    "uglier steadier tighter prettier sharper crisper deeper calmer snappier scarier comfier happier sweatier"
))  # fmt: skip
_OF_PLAN = frozenset(words("reps sets of planned written prescribed before last said"))
"""Behind `3 times as` these tell of sets: `110 3 times as planned`."""
_MORE = frozenset(words("more less as"))
_QUALITIES = frozenset(
    words("fun stable solid controlled comfortable confident enjoyable stuck tired sure sweaty wobbly")
)
"""What there is more of, said of a set: not of `two times more i did the same`."""
_LITTLE = frozenset(words("a like about way even so much the"))
_SCORED = frozenset(words("set lift would recommend vibes execution performance experience"))
NEEDS = _BETTER | _MORE | _SCORED | {"50", "10"}
_HALF = 50
_TEN = 10
_EVEN = frozenset(words("less more was felt bit a pretty still very so like kinda about feels is were"))
_TIMES = (Kind.X, Kind.TIMES, Kind.LEADX)
_PAIR = 2
_OF_SETS = (
    Kind.RPE, Kind.RIR, Kind.FEELS, Kind.SET, Kind.SETS, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.SAME,
    Kind.LASTSET, Kind.EACH, Kind.QUERY,
)  # fmt: skip
_LINKED = (Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.X, Kind.FOR)


def without_times_better(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such words without bearing."""
    said = {w for m in marks for w in m.text.split()}
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.TIMES or (mark.kind is Kind.NUM and kind_at(marks, place + 1) in _TIMES):
            behind = place + 1 + (mark.kind is Kind.NUM)
            end = _better(marks, behind)
            if end is not None:
                gone |= set(range(place, end))
        elif mark.kind is Kind.NUM and kind_at(marks, place + 1) is Kind.SLASH and _is_score(marks, place):
            gone |= {place, place + 1, place + 2}
    gone |= _things_scored(marks) if "10" in said else set()
    return masked(marks, gone) if gone else marks


def _things_scored(marks: Sequence[Mark]) -> set[int]:
    """`playlist 10/10, this gym 3/10`: the scores of things, each in a part of its own that names no exercise."""
    out: set[int] = set()
    for start, end in parts_between(marks, EDGES):
        part = marks[start:end]
        numbers = [i for i in range(start, end) if marks[i].kind is Kind.NUM]
        ten = len(numbers) == _PAIR and numbers[1] == numbers[0] + _PAIR and marks[numbers[1]].value == _TEN
        named = any(m.kind in _OF_SETS or (m.kind is Kind.NAME and m.names) for m in part)
        thing = bool({w for m in part for w in m.text.split()} & _THINGS)
        if ten and thing and not named and kind_at(marks, numbers[0] + 1) is Kind.SLASH:
            out |= set(range(numbers[0], numbers[1] + 1))
    return out


def _better(marks: Sequence[Mark], at: int) -> int | None:
    """Where the words behind `10x` end that compare."""
    while text_at(marks, at) in _LITTLE:
        at += 1
    first = text_at(marks, at).split()
    if not first or text_at(marks, at + 1).split()[:1] in (["each"], ["every"]):
        return None
    if first[0] in _BETTER:
        return at + 1
    planned = not set(text_at(marks, at + 1).split()) & _OF_PLAN and kind_at(marks, at) is not Kind.PLANNED
    if first[0] != "as" and (first[1:2] or text_at(marks, at + 1).split()[:1] or [""])[0] not in _QUALITIES:
        return None
    as_such = planned and first[0] in _MORE and (len(first) > 1 or kind_at(marks, at + 1) in (Kind.FILL, Kind.WORD))
    return at + 1 if as_such and not set(first) & _OF_PLAN else None


def _is_score(marks: Sequence[Mark], place: int) -> bool:
    """`a 10/10 set`, `way less 50/50`: an opinion, where a set is told by other words."""
    other = marks[place + 2].value if kind_at(marks, place + 2) is Kind.NUM else None
    before, behind = text_at(marks, place - 1).split()[-1:], text_at(marks, place + 3).split()[:1]
    if kind_at(marks, place + 3) in _LINKED or not before:
        return False
    if marks[place].value == other == _HALF:
        return before[0] in _EVEN
    told = any(m.kind in (Kind.SAME, Kind.AGAIN, Kind.PLANNED) for m in marks[:place])
    return other == _TEN and told and bool(behind) and behind[0] in _SCORED
