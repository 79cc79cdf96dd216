"""Loads that are only spoken of beside sets: `felt the same as 72.5`, `60 was a joke, 62.5x8`, `160 looks doable`.

What a set felt like, what another load was like, and what is to come: the words around a bare load say which.
"""

from collections.abc import Callable, Sequence

from bot.notation.bounds import HARDEST
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.strays.spoken_wordings import (
    COMPARED,
    JUDGED,
    LATER,
    LEFT_BEHIND,
    LOOKED_TO,
    NOT_TAKEN,
    OPINION,
    REASONED,
    TO_COME,
)
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_LINKS = (Kind.X, Kind.FOR, Kind.COLON, Kind.PLUS, Kind.MINUS, Kind.SIGN, Kind.SLASH, Kind.RPE, Kind.RIR, Kind.LEADX,
          Kind.LEADAT)  # fmt: skip
_COUNTS = (*_LINKS, Kind.AT, Kind.REPS, Kind.SETS, Kind.SECONDS, Kind.MINUTES, Kind.METRES, Kind.TANK, Kind.EACH,
           Kind.TIMES, Kind.RPEPOST, Kind.RIRPOST, Kind.MORE, Kind.PLATES, Kind.NUM, Kind.CLOCK)  # fmt: skip
_TURNS = (Kind.THEN, Kind.NUM, Kind.CLOCK, Kind.COLON, Kind.NAME)
_FAR = 9
"""Marks that such words reach."""
_MISTAKEN = frozenset(("thought", "assumed", "swore", "sworn"))
"""What puts right what is stored, where `but` follows: `thought it was 75 but it was 72.5`."""
_SOON = 5
"""Marks behind `so` in which the load stands that was taken: `145 was light so 150 for 6`."""
_TIMES_REPS = 3
"""So much more than the repetitions before it is a number no repetitions of the same list (ours)."""

_DOING = frozenset(("got", "did", "made", "hit", "managed", "only", "just", "for", "x", "at"))
"""Words before a number that was done."""


def spoken_of(marks: Sequence[Mark], may_be_set: Callable[[Mark, int], bool]) -> set[int]:
    """The places of such loads, and of the words that tell of them.

    `may_be_set`: whether a judged load may be of a set without its count, beside so many other numbers.
    """
    numbers = [i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.CLOCK)]
    others = sum(marks[i].kind is Kind.NUM for i in numbers) - 1
    out: set[int] = set()
    for place in numbers:
        if len(numbers) > 1 and _is_bare(marks, place):
            out |= _told_of(marks, place, others, may_be_set)
    return out


def _told_of(marks: Sequence[Mark], place: int, others: int, may_be_set: Callable[[Mark, int], bool]) -> set[int]:
    """The places of a load that is only spoken of, beside so many other numbers; none where it may be a set's."""
    after = place + 1
    while kind_at(marks, after) in _UNITS:
        after += 1
    start, end = _before(marks, place), _behind(marks, after)
    led, said = _words(marks[start:place]), _words(marks[after:end])
    heavy = (marks[place].value or 0) > HARDEST or after > place + 1
    compared = COMPARED.search(led)
    mistaken = bool(compared) and text_at(marks, end) == "but" and not _MISTAKEN.isdisjoint(led.split())
    if compared and not mistaken and (heavy or "like" not in compared.group().split()):
        first = _place_of(marks, start, place, compared.start())
        lone = others == 1 and first == start and kind_at(marks, start - 1) is Kind.NUM and _is_bare(marks, start - 1)
        return set(range(first - lone, end))
    if not heavy:
        return set()
    if LOOKED_TO.search(led) or NOT_TAKEN.search(led) or LEFT_BEHIND.search(led):
        return set(range(place, end))
    later = any(m.kind is Kind.OTHERTIME and m.text.startswith(LATER) for m in marks[after:end])
    counted = _is_counted(marks, end, marks[place])
    if (later or TO_COME.search(said)) and _opens(marks, place) and not counted:
        return set(range(place, end))
    reasoned = bool(REASONED.search(led)) and kind_at(marks, after) is not None
    judged = bool(JUDGED.search(said)) and bool(OPINION.search(said))
    left = text_at(marks, end) == "so" and any(m.kind is Kind.NUM for m in marks[end : end + _SOON])
    told = reasoned or (_opens(marks, place) and not counted and (left or not may_be_set(marks[place], others)))
    if judged and told:
        return set(range(place, end)) if reasoned or left or _is_set_elsewhere(marks, place, end) else set()
    return set()


def _is_counted(marks: Sequence[Mark], at: int, load: Mark) -> bool:
    """Whether the repetitions of a load follow the words about it: `77.5 was heavy, only 3`."""
    end = min(len(marks), at + _SOON)
    while at < end and marks[at].kind is not Kind.NUM:
        at += 1
    few = at < end and (marks[at].value or 0) * 2 < (load.value or 0)
    return few and kind_at(marks, at + 1) not in (Kind.X, Kind.FOR, Kind.COLON, Kind.KG, Kind.LB, Kind.S)


def _is_bare(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing makes a set of a number: no sign before it, no count behind it."""
    after = place + 1
    while kind_at(marks, after) in _UNITS:
        after += 1
    put_off = kind_at(marks, after) is Kind.FOR and _is_later(marks, after + 1)
    free = put_off or kind_at(marks, after) not in _COUNTS
    return kind_at(marks, place - 1) not in _LINKS and free and not marks[place].parts


def _is_later(marks: Sequence[Mark], place: int) -> bool:
    return kind_at(marks, place) is Kind.OTHERTIME or text_at(marks, place).split()[:1] in (["another"], ["later"])


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number begins what is told: behind an edge or a word, or behind a set that is told whole."""
    before = place - 1
    while kind_at(marks, before) in (*_UNITS, Kind.REPS):
        before -= 1
    if kind_at(marks, before) is not Kind.NUM:
        free = (None, *EDGES, Kind.FILL, Kind.WORD, Kind.DASH, Kind.AND, Kind.GAP)
        return kind_at(marks, place - 1) in free and not set(text_at(marks, place - 1).split()) & _DOING
    whole = kind_at(marks, before - 1) in (Kind.X, Kind.FOR, Kind.COMMA, Kind.COLON)
    return whole and (marks[place].value or 0) > _TIMES_REPS * (marks[before].value or 0)


def _is_set_elsewhere(marks: Sequence[Mark], place: int, end: int) -> bool:
    """Whether another load is told with its repetitions."""
    others = (i for i, m in enumerate(marks) if m.kind is Kind.NUM and not place <= i < end)
    return any(
        kind_at(marks, i + 1 + (kind_at(marks, i + 1) in _UNITS)) in (Kind.X, Kind.FOR, Kind.COLON, Kind.NUM)
        and marks[i].value != marks[place].value
        for i in others
    )


def _before(marks: Sequence[Mark], place: int) -> int:
    at = place
    while at > max(0, place - _FAR) and marks[at - 1].kind not in (*EDGES, *_TURNS):
        at -= 1
    return at


def _behind(marks: Sequence[Mark], place: int) -> int:
    at = place
    while at < min(len(marks), place + _FAR) and marks[at].kind not in (*EDGES, *_TURNS, Kind.AND):
        if text_at(marks, at).split()[:1] in (["so"], ["but"]):
            break
        at += 1
    return at


def _words(marks: Sequence[Mark]) -> str:
    return " ".join(m.text for m in marks)


def _place_of(marks: Sequence[Mark], start: int, end: int, offset: int) -> int:
    """The mark at an offset of the words between two places."""
    length = 0
    for place in range(start, end):
        length += len(marks[place].text) + 1
        if length > offset:
            return place
    return end
