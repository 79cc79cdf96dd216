"""Words of having time and of having to go, and the part of a message that a time stands in."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.minutes.clock import time_of_day, words_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

HAVING = frozenset(
    words(
        "only got have has having ive max maximum leave leaving gotta limited short squeeze spare free time today",
        "tops available left just shuts closes closing session workout train training budget allowed hard tonight",
        "quick mins window gap weve need needs must limit pushed rushing rush squeezed cap capped cut lunch tight",
        "schedule most total remain remains gots had availabl maybe about roughly clock play remaining dispose under",
        "meetings calls lessons classes shifts appointments",
    )
)
GOING = frozenset(words(
    "leave leaving go out off finish finished done gone home shuts closes close pick head collect stop shutting",
    "closing catch wrap wrapping wrapped finishing outta pack packed packing",
))  # fmt: skip
RUNNING = frozenset(words(
    "run dash shoot bounce split scoot bolt jet bail dip fly jump zoom hop nip skedaddle head rush scram vamoose peel "
    "scarper away"
))  # fmt: skip
RUNNING_OFF = frozenset(words(
    "bouncing dashing shooting scooting jetting heading dipping bolting running splitting bailing outta flying rushing"
))  # fmt: skip
"""Of one who is about to go, without a word of having to: `bouncing at 7:15`."""
MUST = frozenset(
    words("have gotta need must got hafta has supposed haveto needs should ive ta want wants wanna hoping")
)
EDGES = frozenset((Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.COMMA, Kind.THEN))
_EDGES = EDGES | {Kind.DASH}
"""Those, and what is one at times."""


def part_of(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    """Where the part that a place stands in starts and ends; `then` is an edge here."""
    start, end = place, min(place, len(marks))
    while start > 0 and (marks[start - 1].kind not in _EDGES or not is_edge(marks, start - 1)):
        start -= 1
    while end < len(marks) and (marks[end].kind not in _EDGES or not is_edge(marks, end)):
        end += 1
    return start, end


def is_edge(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends at a mark: at a comma, a stop, a dash between spaces."""
    mark = marks[place]
    if mark.kind is not Kind.DASH:
        return mark.kind in EDGES
    return not mark.tight and not any(m.tight for m in marks[place + 1 : place + 2])


def part_words(marks: Sequence[Mark], place: int) -> list[str]:
    """The words of that part."""
    start, end = part_of(marks, place)
    return [w for m in marks[start:end] for w in words_of(m)]


def is_to_clock(marks: Sequence[Mark], place: int) -> bool:
    """`to 20:30 i have time`, `i have time only to 19.15`: a time of day up to which there is time."""
    number = marks[place + 1] if place + 1 < len(marks) else None
    if marks[place].text != "to" or number is None or number.kind not in (Kind.CLOCK, Kind.NUM):
        return False
    if number.kind is Kind.NUM and ("." not in number.text or time_of_day(marks, place + 1) is None):
        return False
    return {"have", "time"} <= set(part_words(marks, place))
