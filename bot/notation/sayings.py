"""Turns of phrase that hold a word of sets and tell none: `it falls to one side`, `same as when i walk uphill`.

Each is told by its own words and what stands beside it. Common usage, no source.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace

from bot.notation import sayings_of_kit
from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NOWHERE = range(0)
_OF_SETS = (Kind.NUM, Kind.CLOCK, Kind.NAME, Kind.DONE, Kind.SET, Kind.SETS, Kind.ALL, Kind.EACH, Kind.REPS,
            Kind.THEREST, Kind.PLANNED, Kind.WORKSET, Kind.LASTSET)  # fmt: skip


def without_sayings(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the words of sets in such phrases as talk, and without the reason between a name and its sets."""
    places = range(len(marks))
    gone = {at for place in places for find in _SAYINGS for at in find(marks, place)}
    why = {at for place in places for at in _reason(marks, place)}
    said = ((i, m) for i, m in enumerate(marks) if i not in why)
    return [replace(m, kind=Kind.GAP, value=None, parts=()) if i in gone else m for i, m in said]


def without_nevertheless(marks: Sequence[Mark]) -> list[Mark]:
    """Beside a hurt, `30 for 15 all the same` tells of one set that was done although it hurt."""
    out = list(marks)
    for place in range(3, len(marks) - 1):
        if (text_at(marks, place), text_at(marks, place + 1)) != ("all", "the same"):
            continue
        start, end = part_of(marks, place, ends=_SENTENCES)
        sets = [m.kind for m in marks[start:place] if m.kind in (Kind.NUM, Kind.X, Kind.FOR)]
        if end == place + 2 and sets in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM]):
            out[place:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place:end]]
    return out


def _likened(marks: Sequence[Mark], place: int) -> range:
    """`60x5 60x5, same as when i walk uphill`: no set again, and no number behind it a set's."""
    likened = marks[place].kind is Kind.SAME and text_at(marks, place + 1) == "as"
    if not likened or text_at(marks, place + 2) not in ("when", "whenever", "if"):
        return _NOWHERE
    end = part_of(marks, place)[1]
    told = any(m.kind in (Kind.X, Kind.FOR, Kind.NAME) for m in marks[place:end])
    return range(place, place + 3 if told else end)


_DOING = (Kind.WORD, Kind.TALKNUM, Kind.WARMUP, Kind.GAP)
_SENTENCES = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)


def _as_asked(marks: Sequence[Mark], place: int) -> range:
    """`i paid attention as you asked. 25x10`: what was done so is no set, and a set is told in another part."""
    if marks[place].kind is not Kind.PLANNED:
        return _NOWHERE
    if (text_at(marks, place + 1), text_at(marks, place + 2)) == ("me", "to"):
        return range(place, place + 1)  # `like you asked me to check`
    start, end = part_of(marks, place)
    if end == start + 1 and start > 1 and marks[start - 1].kind is Kind.COMMA:
        start = part_of(marks, start - 2, ends=_SENTENCES)[0]
    before = marks[start:place]
    talk = any(m.kind in _DOING for m in before)
    talk = talk and not any(m.kind in _OF_SETS for m in (*before, *marks[place + 1 : end]))
    told = any(m.kind is Kind.NUM for m in (*marks[:start], *marks[end:]))
    return range(place, place + 1) if talk and told else _NOWHERE


_HARMING = frozenset(words("kill murder finish break destroy end bury bully punish torture drown ruin"))


def _after_me(marks: Sequence[Mark], place: int) -> range:
    """`coach is trying to kill me 155x7`: no intention of the client's, and none of its set."""
    meant = marks[place].kind is Kind.OTHERTIME and text_at(marks, place + 1) == "to"
    harm = meant and text_at(marks, place + 2) in _HARMING and text_at(marks, place + 3) in ("me", "us", "my")
    return range(place, place + 4) if harm else _NOWHERE


_DID_FEW = frozenset(words("managed did got made done finished completed through only just i we the my"))
_FEW = range(2, 6)


def _first_few(marks: Sequence[Mark], place: int) -> range:
    """`only managed the first two. squats 80x5`: so many of the exercises, before their sets are told."""
    few = kind_at(marks, place) is Kind.ORD and marks[place].value == 1 and kind_at(marks, place + 1) is Kind.NUM
    if not few or marks[place + 1].value not in _FEW or kind_at(marks, place + 2) not in EDGES:
        return _NOWHERE
    start, _ = part_of(marks, place)
    opens = start == 0 and all(set(m.text.split()) <= _DID_FEW for m in marks[:place]) and place > 0
    behind = [m.kind for m in marks[place + 3 : place + 8]]
    told = Kind.NAME in behind and Kind.NUM in behind[behind.index(Kind.NAME) :]
    return range(start, place + 2) if opens and told else _NOWHERE


def _load_still(marks: Sequence[Mark], place: int) -> range:
    """`60x15, only 8 on the second, still 60`: the load that was said before."""
    still = text_at(marks, place) == "still" and kind_at(marks, place + 1) is Kind.NUM
    end = place + 2 + (kind_at(marks, place + 2) in (Kind.KG, Kind.LB))
    if not still or kind_at(marks, end) not in (None, Kind.STOP, Kind.LINE):
        return _NOWHERE
    said = (i for i in range(place) if kind_at(marks, i) is Kind.NUM and kind_at(marks, i + 1) in (Kind.X, Kind.FOR))
    loads = [marks[i].value for i in said]
    return range(place, end) if loads[-1:] == [marks[place + 1].value] else _NOWHERE


def _done_with(marks: Sequence[Mark], place: int) -> range:
    """`goblets 28x12x3 done and dusted`: the exercise, whose sets stand straight before it."""
    dusted = kind_at(marks, place) is Kind.FINISH and text_at(marks, place).startswith(_DUSTED)
    tied = kind_at(marks, place - 1) in (Kind.NUM, Kind.EACH, Kind.REPS, Kind.SETS)
    named = sum(m.kind is Kind.NAME for m in marks[:place]) == 1
    return range(place, place + 1) if dusted and tied and named and place + 1 == len(marks) else _NOWHERE


_DUSTED = ("done and dusted", "done n dusted", "done & dusted", "over and done", "wrapped up")


_FIVE = 5
"""Minutes that somebody takes off: `taking five`."""
_RESTING = frozenset(words("taking take took taken grab grabbing"))
_CLOSING = frozenset(words("now here coach lol then"))


def _taking_five(marks: Sequence[Mark], place: int) -> range:
    """`60x5, taking five`: a rest."""
    five = marks[place].kind is Kind.NUM and marks[place].value == _FIVE and text_at(marks, place - 1) in _RESTING
    ends = kind_at(marks, place + 1) in (None, *EDGES) or text_at(marks, place + 1) in _CLOSING
    return range(place, place + 1) if five and ends else _NOWHERE


def _one_moment(marks: Sequence[Mark], place: int) -> range:
    """`everything went quiet for one moment`."""
    one = marks[place].kind is Kind.NUM and marks[place].value == 1 and kind_at(marks, place - 1) is Kind.FOR
    return range(place - 1, place + 2) if one and text_at(marks, place + 1) == "moment" else _NOWHERE


_DECADES = (60, 70, 80, 90)
_MISCOUNTED = (["miscounted"], ["misread"], ["misloaded"], ["miscalculated"], ["muddled"])
_LED = 3
"""Marks before a decade or plates that say so."""


def _decade_or_plates(marks: Sequence[Mark], place: int) -> range:
    """The 90s of `fainted once in the 90s`, the fives of `miscounted the fives`."""
    if marks[place].kind is not Kind.NUM or kind_at(marks, place + 1) is not Kind.S:
        return _NOWHERE
    before = [w for m in marks[max(0, place - _LED) : place] for w in m.text.split()]
    decade = before[-2:] == ["in", "the"] and marks[place].value in _DECADES
    plates = before[-1:] == ["the"] and before[-2:-1] in _MISCOUNTED
    return range(place, place + 2) if decade or plates else _NOWHERE


_TIPPED = frozenset(words("dropped fell tipped leaned leaning bent slid slipped uneven lower loose"))
_GOES_ON = frozenset(words("so but because then"))


def _to_one_side(marks: Sequence[Mark], place: int) -> range:
    """`it falls to one side`, `the bar dropped on one side so i moved`; not `3 to one side, 5 to the other`."""
    led = marks[place].kind is Kind.TO or (text_at(marks, place) == "on" and text_at(marks, place - 1) in _TIPPED)
    if not led or (text_at(marks, place + 1), text_at(marks, place + 2)) != ("one", "side"):
        return _NOWHERE
    closed = kind_at(marks, place + 3) in (None, *EDGES, Kind.AND) or text_at(marks, place + 3) in _GOES_ON
    return range(place, place + 3) if closed else _NOWHERE


_SAYINGS: tuple[Callable[[Sequence[Mark], int], range], ...] = (
    _likened,
    _as_asked,
    _after_me,
    _first_few,
    sayings_of_kit.one_of_kit,
    _load_still,
    sayings_of_kit.crossed_out,
    _done_with,
    sayings_of_kit.kit_gone,
    _taking_five,
    _one_moment,
    _decade_or_plates,
    _to_one_side,
)
_BECAUSE = frozenset(words("bc because as cos coz cause since"))
_REASON = 9
"""Marks of a reason between a name and the colon before its sets."""
NEEDS = (
    Kind.SAME,
    Kind.PLANNED,
    Kind.TO,
    Kind.S,
    Kind.OTHERTIME,
    Kind.ORD,
    Kind.SKIP,
    Kind.SKIPPED,
    Kind.FINISH,
    Kind.MINUTES,
    "moment",
    "side",
    *_BECAUSE,
    *_RESTING,
    *sayings_of_kit.WORDS,
    "still",
)
"""Of which one is said where any such phrase is."""


def _reason(marks: Sequence[Mark], place: int) -> range:
    """`chins because the platform was taken: 8 8 6`: why, between a name and its sets."""
    if marks[place].text not in _BECAUSE or kind_at(marks, place - 1) is not Kind.NAME:
        return _NOWHERE
    end = next((i for i in range(place, min(len(marks), place + _REASON)) if marks[i].kind is Kind.COLON), None)
    if end is None or kind_at(marks, end + 1) not in (Kind.NUM, Kind.PLUS, Kind.BODY):
        return _NOWHERE
    plain = all(m.kind not in (*_OF_SETS, *EDGES, Kind.X, Kind.FOR) for m in marks[place:end])
    return range(place, end) if plain else _NOWHERE
