"""A time that is put better in the same breath: `an hour, make that 50`, `30 to 40 min so plan on 35`; the last counts.

The better one stands behind words that put it in place of the first, or before words that say it is the nearer one;
nothing else may be told between the two.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import words_of
from bot.notation.minutes.durations import duration_at
from bot.notation.minutes.parts import EDGES
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


@dataclass(frozen=True, slots=True)
class MinutesSaid:
    """Minutes that there are, and the marks that said so."""

    minutes: Decimal
    places: tuple[int, ...]


def _phrases(said: str) -> tuple[tuple[str, ...], ...]:
    """The words of each phrase; semicolons part them."""
    return tuple(tuple(phrase.split()) for phrase in said.split(";"))


_PUTS = _phrases(
    "make that; make it; call it; call that; say; well; rather; put; put down; more like; closer to; nearer; "
    "nearer to; realistically; actually; really; i mean; i meant; turns out; plan on; plan for; planning on; go "
    "with; going with; work with; count on; reckon on; no; scratch that; scrap that; sorry; correction; in truth; "
    "in fact; but its; but thats; its now; leaves me; leaves; gives me; aim for; bank on; =; minus that; or "
    "rather; so say; no wait"
)
"""What puts the time behind it in place of the one before."""
_NEARER = _phrases(
    "realistically; actually; really; is safer; safer; to be safe; to be honest; tbh; in truth; is more like it; "
    "more likely; is likelier; at best; is realistic; is closer; is what i have; is more realistic"
)
"""What says of the time before it that it is the nearer one."""
_BEHIND = frozenset(words(
    "realistically actually really now today tonight sorry max tops of all left only then instead please if thanks "
    "cheers coach so before until till just ok but because mate tho though"
))  # fmt: skip
_BETWEEN = frozenset(
    words("it about like only be just maybe around roughly me that its is a the on to for with more so")
)
_PLAIN = frozenset(words(
    "i im id ive ill told said you we can could stay do about maybe around roughly somewhere between from got have had "
    "thought think planned it its was is be for up to today session probably might manage spare ok right so like just "
    "originally meant promised reckon reckoned wrote or and earlier before a an the time there coach that only told "
    "not quite nearly almost"
))  # fmt: skip
"""Words before a time that may be what there is, and say of nothing else that it took so long."""
_OF_ELSE = frozenset(words(
    "ago of on late early behind sleep nap walk drive rest cardio bike warm warmup queue queuing waiting wait traffic "
    "stretch stretching run each later since"
))  # fmt: skip
"""Words behind a time that tell what took so long, or when it was."""
_TOLD = (Kind.NUM, Kind.NAME, Kind.WEAK, Kind.X, Kind.CLOCK, Kind.SKIP, Kind.REPS, Kind.KG, Kind.LB, Kind.SET)
"""What tells of a set."""
_FAR = 12
"""Marks between a time and the better one."""
_LEAST, _MOST = 10, 300
"""Minutes: less is a rest, more is no session's (common practice, no source)."""


def put_better(marks: Sequence[Mark], said: MinutesSaid | None, metres: bool) -> MinutesSaid | None:
    """The time that was said last, where it stands in place of the first; else what was said.

    A bare number counts behind a time that named its unit: `an hour, call it 50`.
    """
    if said is None:
        first = _first(marks, metres)
        if first is None:
            return None
    else:
        first = said
    start, end = _range_start(marks, min(first.places)), max(first.places) + 1
    for place in range(end, min(end + _FAR, len(marks))):
        found = _length(marks, place, metres)
        if found is not None:
            if _is_likely(found, first) and _stands_for(marks, range(start, end), place, max(found.places) + 1):
                return MinutesSaid(found.minutes, tuple(range(start, max(found.places) + 1)))
            break
        if marks[place].kind in _TOLD and marks[place].kind is not Kind.WEAK:
            break
    if said is not None and start < min(said.places):
        return MinutesSaid(said.minutes, (*range(start, min(said.places)), *said.places))
    return said


def _first(marks: Sequence[Mark], metres: bool) -> MinutesSaid | None:
    """A time that opens the message, of which nothing else is said than that it is the time there is."""
    for place in range(len(marks)):
        found = duration_at(marks, place, metres)
        if found is not None:
            start = _range_start(marks, place)
            lead = {w for m in marks[:start] for w in words_of(m)}
            behind = words_of(marks[found[1]])[:1] if found[1] < len(marks) else []
            plain = lead <= _PLAIN and not set(behind) & _OF_ELSE and _LEAST <= found[0] <= _MOST
            return MinutesSaid(found[0], tuple(range(start, found[1]))) if plain else None
    return None


def _range_start(marks: Sequence[Mark], place: int) -> int:
    """Where `between 30 and 40 min`, `30 to 40 min` starts, of which the second number stands at the place."""
    if kind_at(marks, place) is not Kind.NUM or kind_at(marks, place - 2) is not Kind.NUM:
        return place
    led = bool({"between", "from"} & set(text_at(marks, place - 3).split()))
    return place - 2 - led if led or kind_at(marks, place - 1) in _TO else place


_TO = (Kind.AND, Kind.TO, Kind.DASH, Kind.OR)


def _length(marks: Sequence[Mark], place: int, metres: bool) -> MinutesSaid | None:
    """The time that starts at a place; a bare number that ends its part is minutes."""
    found = duration_at(marks, place, metres)
    if found is not None:
        return MinutesSaid(found[0], tuple(range(place, found[1])))
    mark = marks[place]
    ends = place + 1 >= len(marks) or marks[place + 1].kind in EDGES or text_at(marks, place + 1) in _AFTER_BARE
    ends = ends or _begins(marks, place + 1, _NEARER)
    if mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value) and ends:
        return MinutesSaid(mark.value, (place,))
    return None


_AFTER_BARE = frozenset(words("tho though today tonight sorry max tops please thanks now instead so"))


def _is_likely(found: MinutesSaid, first: MinutesSaid) -> bool:
    """Whether it is a time to train in; of a bare number, whether it is near the first as well."""
    near = len(found.places) > 1 or first.minutes / 2 <= found.minutes <= first.minutes * 3 / 2
    return near and _LEAST <= found.minutes <= _MOST


def _stands_for(marks: Sequence[Mark], first: range, place: int, behind: int) -> bool:
    """Whether the time from `place` to `behind` stands in place of the first one."""
    start, end = first.start, first.stop
    after = words_of(marks[behind])[:1] if behind < len(marks) and marks[behind].kind not in EDGES else []
    nearer = _begins(marks, behind, _NEARER)
    if set(after) - _BEHIND and not nearer:
        return False
    said = [w for m in marks[end:place] if m.kind not in EDGES for w in m.text.split()]
    while said and said[-1] in _BETWEEN and not _ends_with_put(said):
        said.pop()
    apart = place + 1 == behind and any(kind_at(marks, i) in _STOPS for i in range(end, place))
    if apart and not nearer and set(said[-1:]) <= _OF_A_SET:
        return False
    denied = text_at(marks, start - 1) == "not" and set(said) <= _JOINS | _BEHIND
    return _ends_with_put(said) or denied or (nearer and set(said) <= _JOINS)


_JOINS = frozenset(words("or but and maybe though hmm tho"))
_STOPS = (Kind.STOP, Kind.LINE, Kind.BREAK)
_OF_A_SET = frozenset(words("sorry no actually really well correction rather"))
"""Words that put a set right as well, in a sentence of its own: `i have 40 min. sorry 35`."""


def _ends_with_put(said: Sequence[str]) -> bool:
    return any(tuple(said[-len(phrase) :]) == phrase for phrase in _PUTS)


def _begins(marks: Sequence[Mark], place: int, phrases: Sequence[tuple[str, ...]]) -> bool:
    """Whether one of the phrases is said from a place on."""
    said = [w for m in marks[place : place + 5] for w in words_of(m)]
    return any(tuple(said[: len(phrase)]) == phrase for phrase in phrases)
