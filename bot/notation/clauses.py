"""Where a message's words stand to each other: its parts, and what stands beside what."""

from collections.abc import Container, Iterator, Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

EDGES = frozenset((Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.OPEN, Kind.CLOSE))


def mark_at(marks: Sequence[Mark], place: int) -> Mark | None:
    """The mark at a place; `None` beyond either end."""
    return marks[place] if 0 <= place < len(marks) else None


def kind_at(marks: Sequence[Mark], place: int) -> Kind | None:
    """The kind of mark at a place; `None` beyond either end."""
    return marks[place].kind if 0 <= place < len(marks) else None


def text_at(marks: Sequence[Mark], place: int) -> str:
    """The words of the mark at a place; empty beyond either end."""
    return marks[place].text if 0 <= place < len(marks) else ""


_TIRED = frozenset(
    words(
        "shoulders legs arms lungs hands quads glutes calves triceps biceps lats abs traps forearms hamstrings wrists"
    )
)
"""What is tired behind the last of a list: `12, 11, 9 shoulders pumped`."""


def beside(marks: Sequence[Mark], place: int, step: int) -> Mark | None:
    at = place + step
    while 0 <= at < len(marks) and marks[at].kind is Kind.FILL and marks[at].text in ("one", "ones"):
        at += step
    return marks[at] if 0 <= at < len(marks) else None


def continues_list(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number stands in a row: the last one of `12, 12, 10 cooked`, not that of `12, 2 coffees`."""
    at = place - 1
    joins = (Kind.COMMA, Kind.SLASH) if marks[place].value == 1 else (Kind.COMMA, Kind.SLASH, Kind.THEN, Kind.AND)
    while at >= 0 and marks[at].kind in joins:
        at -= 1
    thing = place + 1 < len(marks) and marks[place + 1].kind is Kind.WORD and marks[place + 1].text.endswith("s")
    if thing and marks[place + 1].text not in _TIRED:
        return False
    return (len(marks[place].parts) > 1 and marks[place].value is None) or (at >= 0 and marks[at].kind is Kind.NUM)


FARTHEST = 96
"""Marks that a part reaches from a place: no longer one is a clause, and every look at it would cost its length."""


def part_of(marks: Sequence[Mark], place: int, far: int = FARTHEST, ends: Container[Kind] = EDGES) -> tuple[int, int]:
    """Where the part of a place, between two of `ends`, starts and ends, `far` marks away at most."""
    start, end = place, place + 1
    for mark in reversed(marks[max(0, place - far) : place]):
        if mark.kind in ends:
            break
        start -= 1
    for mark in marks[end : place + far]:
        if mark.kind in ends:
            break
        end += 1
    return start, end


def parts_between(marks: Sequence[Mark], ends: Container[Kind]) -> Iterator[tuple[int, int]]:
    """Where each part starts and ends that `ends` part, those without a mark too."""
    start = 0
    for place in range(len(marks) + 1):
        if place == len(marks) or marks[place].kind in ends:
            yield start, place
            start = place + 1


def is_entry(marks: Sequence[Mark], place: int) -> bool:
    """Whether a load with its repetitions starts at a place: `100x5`, `100 for 5`."""
    kinds = [m.kind for m in marks[place : place + 3]]
    return kinds in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])


def is_led_at(marks: Sequence[Mark], place: int) -> bool:
    """Whether `at` stands before a place, and no sign of an effort: `leaving it at two`."""
    return kind_at(marks, place - 1) is Kind.AT and marks[place - 1].text != "@"


def number_before(marks: Sequence[Mark], place: int, ends: Container[Kind]) -> bool:
    """Whether a number stands before a place, in the stretch that one of `ends` opens."""
    for mark in reversed(marks[:place]):
        if mark.kind in ends:
            return False
        if mark.kind is Kind.NUM:
            return True
    return False
