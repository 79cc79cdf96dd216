"""The part of a message that tells of a hurt: what else it says is said of the hurt, and of no set.

`lower back is killing me on the belt squat - 80x9`: the exercise is where it hurt. `80x9, elbow playing up since
yesterday`: the day is the hurt's. A part that tells a set too, or leaves something out, keeps what it says.
"""

from collections.abc import Iterator, Sequence

from bot.notation.clauses import EDGES, FARTHEST, kind_at, text_at
from bot.notation.days.weekdays import WEEKDAYS, YESTERDAY
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.BODY, Kind.X)
_TELLING = frozenset(
    (Kind.SKIP, Kind.SKIPPED, Kind.NO, Kind.THEREST, Kind.INSTEAD, Kind.DONE, Kind.UNDONE, Kind.FINISH, Kind.SCRAP,
     Kind.SORRY, Kind.MEANT, Kind.WROTE, Kind.PLANNED, Kind.UNITALL, Kind.ASKING, Kind.SAME)
)  # fmt: skip
"""Kinds that say something of the session or its sets, whatever hurts."""
_DOING = frozenset(
    words("did do doing done switched swapped swap switching went used using tried subbed replaced moved")
)
"""Before an exercise that the session lacks, these say that it was done."""


_GIVEN_UP = (
    *("had to", "have to", "skip", "couldnt", "cant", "didnt", "not doing", "are", "is", "bailed", "binned", "none"),
    *("no ", "nope", "nah", "nil", "zero", "i leave", "leaving", "leave", "left out", "off"),
)
"""How what leaves an exercise out begins, in words that can be of nothing else: `dropped the curl bar` can."""


def left_out_for(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The places of words of a hurt that leave an exercise out: `had to stop the rows, chest felt heavy`."""
    out: set[int] = set()
    for place in hurt:
        mark = marks[place]
        if mark.kind not in (Kind.SKIP, Kind.SKIPPED) or not mark.text.startswith(_GIVEN_UP):
            continue
        step = 1 if mark.kind is Kind.SKIP else -1
        at = place + step
        while kind_at(marks, at) is Kind.FILL or text_at(marks, at) in ("the", "my"):
            at += step
        if kind_at(marks, at) is Kind.NAME:
            out |= {place, *range(place + 1, at)}
    return out


def unhurt(marks: Sequence[Mark]) -> set[int]:
    """The places of `no chest pain`, `no pain in the shoulder`: nothing hurts there, and no exercise is left out."""
    out: set[int] = set()
    for place in range(len(marks) - 2):
        if marks[place].kind is not Kind.NO:
            continue
        if marks[place + 1].kind in (Kind.NAME, Kind.WEAK) and set(marks[place + 2].text.split()) & _ACHES:
            out |= set(range(place, place + 3))
        at = place + 2
        while text_at(marks, at) in _WHERE:
            at += 1
        led = at > place + 2 and set(marks[place + 1].text.split()) & _ACHES
        if led and kind_at(marks, at) in (Kind.WORD, Kind.NAME, Kind.WEAK):
            out |= set(range(place + 2, at + 1))
    return out


_WHERE = frozenset(words("in on from with at the my either"))


_ACHES = frozenset(words(
    "pain pains issues issue problems problem trouble twinge twinges ache aches discomfort tightness soreness niggles "
    "niggle hurt complaints symptoms"
))  # fmt: skip


def with_edges(marks: Sequence[Mark], hurt: set[int]) -> list[Mark]:
    """The marks with a dash that parts a hurt from the rest as the edge of a part: `knee hurts - 80x9`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.DASH or place in hurt or mark.tight or not 0 < place < len(marks) - 1:
            continue
        if marks[place + 1].tight:
            continue
        telling = place - 1 not in hurt and kind_at(marks, place - 1) in _NUMBERS
        telling = telling and kind_at(marks, place + 1) in _NUMBERS
        if not telling and (_worded(marks, place - 1, hurt) or place + 1 in hurt or _in_part(marks, place + 1, hurt)):
            out[place] = replace(mark, kind=Kind.STOP, text=".")
    return _parted_at_but(out, hurt)


def _parted_at_but(marks: list[Mark], hurt: set[int]) -> list[Mark]:
    """`8 but a pressing in the chest`, `7 each then everything went black`: a set on one side of `but` or `then` and a
    hurt on the other are parts of their own."""
    out = list(marks)
    joins = [p for p, m in enumerate(marks) if m.text in ("but", "then", "and then") and p not in hurt]
    for place in joins if hurt else ():
        start, end = _part(out, place)
        sides = [set(range(start, place)), set(range(place + 1, end))]
        hurts = [bool(side & hurt) for side in sides]
        counts = [any(out[p].kind in _NUMBERS and p not in hurt for p in side) for side in sides]
        if [hurts, counts] in ([[False, True], [True, False]], [[True, False], [False, True]]):
            out[place] = replace(out[place], kind=Kind.COMMA)
    return out


def _worded(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    """Whether a part ends here that tells in words, or hurts."""
    return place in hurt or marks[place].kind in (Kind.WORD, Kind.GAP) or _in_part(marks, place, hurt)


def _in_part(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    start, end = _part(marks, place)
    return any(p in hurt for p in range(start, end))


def of_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """The places in the parts of hurts that say nothing else: with them, what they tell is told of the hurt."""
    out: set[int] = set()
    for start, end in _parts(marks, hurt):
        told = hurt | _moments(marks, start, end) | _weighed(marks, start, end)
        own = [p for p in range(start, end) if p not in told]
        kinds = {marks[p].kind for p in own}
        if marks[end - 1].kind is Kind.QUERY or kind_at(marks, end) is Kind.QUERY:
            continue
        stops = Kind.FINISH in kinds and _ends_a_set(marks, start, end)
        if kinds & (_TELLING - ({Kind.FINISH} if stops else set())) or kinds & set(_NUMBERS):
            continue
        lacking = any(marks[p].kind is Kind.NAME and not marks[p].names for p in own)
        if lacking and any(w in _DOING for p in own for w in marks[p].text.split()):
            continue
        heads = _heading(marks) if start == 0 else 0
        out |= {p for p in range(max(start, heads), end) if not (marks[p].kind is Kind.NAME and marks[p].names)}
    return out | _compared(marks, hurt)


def _compared(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """`knee 2 out of 10, same as last week`, `elbow hurts same as monday`: how it hurt then, and no set as before."""
    out: set[int] = set()
    for place in range(1, len(marks)):
        if marks[place].kind is not Kind.SAME or place in hurt:
            continue
        before = place - 1
        while before and marks[before].kind in (Kind.COMMA, Kind.AND, Kind.AGAIN) and before not in hurt:
            before -= 1
        end = place + 1
        while end < len(marks) and marks[end].kind not in EDGES and marks[end].kind is not Kind.NUM:
            end += 1
        said = [w for m in marks[place:end] for w in m.text.split()]
        like = said[1:2] == ["as"] or bool(set(said[1:3]) & set(WEEKDAYS))
        if before in hurt and like and set(said) & _THEN and not set(said) & _SETS:
            out |= set(range(place, end))
    return out


_THEN = frozenset(
    words(
        "week time session month workout night yesterday usual before always ever year january february march "
        "april may june july august september october november december spring summer autumn fall winter christmas"
    )
) | set(WEEKDAYS)
_SETS = frozenset(words("set sets rep reps weight load"))


def of_times(marks: Sequence[Mark], times: set[int]) -> set[int]:
    """The places in the part of a time told that say nothing else: `need to be out by 6:30` corrects no set."""
    out: set[int] = set()
    for start, end in _parts(marks, times):
        kinds = {marks[p].kind for p in range(start, end) if p not in times}
        query = kind_at(marks, end) is Kind.QUERY
        if not query and not kinds & (_TELLING - _POLITE) and not kinds & {*_NUMBERS, Kind.NAME, Kind.WEAK}:
            out |= set(range(start, end))
    return out


_POLITE = frozenset((Kind.SORRY, Kind.MEANT, Kind.UNDONE))
"""Kinds that beside a time are of the time: `sorry, only 30 min`, `need to be done by 7`."""


def _heading(marks: Sequence[Mark]) -> int:
    """Where a day that opens the message ends: `friday my elbow hurt. that was 55x7` is of that day."""
    led = [m.text for m in marks[:2]]
    return len(led) if any(text in YESTERDAY or text in WEEKDAYS for text in led) or led == ["last", "night"] else 0


def without_words(marks: Sequence[Mark], starts: frozenset[int]) -> list[Mark]:
    """The marks with those of hurts, by where they start, without their words too, which would be read as a set's."""
    return [replace(m, text=_SAID) if m.kind is Kind.GAP and m.start in starts else m for m in marks]


_SAID = "?"


def _moments(marks: Sequence[Mark], start: int, end: int) -> set[int]:
    """`rep 6`, `set 2`: when it hurt."""
    return {
        at + 1
        for at in range(start, end - 1)
        if marks[at].kind in (Kind.REPS, Kind.SET) and marks[at + 1].kind is Kind.NUM
        and kind_at(marks, at - 1) not in (Kind.NUM, Kind.ORD)
        and kind_at(marks, at + 2) not in (Kind.X, Kind.FOR, Kind.COLON)
    }  # fmt: skip


def _weighed(marks: Sequence[Mark], start: int, end: int) -> set[int]:
    """`hip was a 6 on tuesday`: how much it hurt."""
    return {
        at
        for at in range(start + 1, end)
        if marks[at].kind is Kind.NUM and text_at(marks, at - 1).split()[-1:] == ["a"]
        and marks[at].value in _SCORES and kind_at(marks, at + 1) not in (Kind.X, Kind.FOR, Kind.REPS, Kind.KG, Kind.LB)
    }  # fmt: skip


_SCORES = range(11)


def _ends_a_set(marks: Sequence[Mark], start: int, end: int) -> bool:
    """`twinge on rep 6 so stopped there`: the set is what ended."""
    told = [m for m in marks[start:end] if m.kind is Kind.FINISH]
    rep = any(marks[p].kind in (Kind.REPS, Kind.LASTREP) for p in range(start, end))
    return rep and all(m.text.split(" ")[0] == "stopped" for m in told)


def _parts(marks: Sequence[Mark], hurt: set[int]) -> Iterator[tuple[int, int]]:
    """Where the parts with a hurt start and end."""
    end = 0
    for place in sorted(hurt):
        if place >= end:
            start, end = _part(marks, place)
            yield start, end


def _part(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    start, end = place, place + 1
    first, last = max(0, place - FARTHEST), min(len(marks), place + FARTHEST)
    while start > first and not _is_edge(marks, start - 1):
        start -= 1
    while end < last and not _is_edge(marks, end):
        end += 1
    return start, end


def _is_edge(marks: Sequence[Mark], place: int) -> bool:
    return marks[place].kind in EDGES or marks[place].text == "but"


def begun(marks: Sequence[Mark]) -> list[Mark]:
    """The marks from where they tell of sets: `got 50 min, front squat as planned` begins with the squat."""
    at = 0
    while at < len(marks) and (marks[at].kind in EDGES or (marks[at].kind is Kind.GAP and marks[at].text == _SAID)):
        at += 1
    told = any(m.kind is Kind.GAP for m in marks[:at]) and kind_at(marks, at) is Kind.NAME
    return list(marks[at:]) if told else list(marks)
