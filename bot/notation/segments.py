"""A piece of a message cut by the exercises that it names. A name stands before its sets, or after them in its part."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

EDGES = frozenset((Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN))
NUMBERS = frozenset((Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD))
_MENTION = frozenset(["after", "before", "since", "than", "like", "from", "between", "until", "versus", "vs"])
_LOADS = (Kind.KG, Kind.LB, Kind.ASSIST, Kind.ADDED, Kind.HAND)
_OF_A_SET = (Kind.X, Kind.FOR, Kind.REPS, Kind.TIMES, Kind.SAME, Kind.NAME)
_NEXT_TO = frozenset((Kind.NUM, Kind.COLON, Kind.CLOCK, Kind.DASH, Kind.BODY, Kind.SIGN, Kind.PLANNED, Kind.SAME))


@dataclass(frozen=True, slots=True)
class Segment:
    """Marks of one exercise; `name` is the mark that named it (`None`: the one under way)."""

    name: Mark | None
    marks: tuple[Mark, ...]

    @property
    def has_numbers(self) -> bool:
        """Whether a set can be in it."""
        return any(m.kind in NUMBERS for m in self.marks)


def read_segments(piece: Sequence[Mark]) -> list[Segment]:
    """The segments of a piece, in order; those without numbers keep their names (`bench as planned` has none)."""
    segments: list[Segment] = []
    name: Mark | None = None
    marks: list[Mark] = []
    part_start = 0
    trailing = led = False
    for place, mark in enumerate(piece):
        if mark.kind in (Kind.NAME, Kind.WEAK) and _names_sets(piece, place):
            counted = _only_counts_sets(marks[part_start:])
            if counted and name is None and not any(m.kind in NUMBERS for m in marks[:part_start]):
                name, part_start, trailing = mark, 0, False
                continue
            if (led or _is_inside(piece, place)) and any(m.kind in NUMBERS for m in marks[part_start:]):
                if part_start and any(m.kind in NUMBERS for m in marks[:part_start]):
                    segments.append(Segment(name, tuple(marks[:part_start])))
                marks, name, part_start, trailing, led = marks[part_start:], mark, 0, False, True
                continue
            numbers_here = any(m.kind in NUMBERS for m in marks[part_start:])
            if numbers_here and not _numbers_in_part(piece, place + 1) and (name is None or part_start > 0):
                if name is not None:
                    segments.append(Segment(name, tuple(marks[:part_start])))
                    marks = marks[part_start:]
                segments.append(Segment(mark, tuple(marks)))
                marks, name, part_start, trailing, led = [], None, 0, True, True
                continue
            if trailing and segments and _is_its_load(segments[-1], marks):
                segments[-1] = Segment(segments[-1].name, (*segments[-1].marks, *marks))
                marks = []
            elif any(m.kind in NUMBERS for m in marks) or name is not None:
                segments.append(Segment(name, tuple(marks)))
                marks = []
            name, part_start, trailing = mark, 0, False
            continue
        marks.append(mark)
        if mark.kind in EDGES:
            part_start = len(marks)
    if marks or name is not None:
        told = [m.kind for m in marks if m.kind in NUMBERS]
        if trailing and name is None and segments and (told in ([], [Kind.BODY]) or _is_its_load(segments[-1], marks)):
            last = segments[-1]
            segments[-1] = Segment(last.name, (*last.marks, *marks))
        else:
            segments.append(Segment(name, tuple(marks)))
    return segments


def _is_its_load(before: Segment, marks: Sequence[Mark]) -> bool:
    """Whether marks after `8 dips` hold but the load of those: `, machine set to 40 assistance, rpe 8`."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    rated = (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.COULD)
    loads = [i for i, m in enumerate(said) if m.kind is Kind.NUM and (not i or said[i - 1].kind not in rated)]
    if len(loads) != 1 or loads[0] + 1 >= len(said) or any(m.kind in _OF_A_SET for m in said):
        return False
    alone = sum(m.kind is Kind.NUM for m in before.marks) == 1 and not any(m.kind in _LOADS for m in before.marks)
    return alone and said[loads[0] + 1].kind in _LOADS


def _is_inside(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name stands inside its set: `5 on bench at 60`."""
    following = [m for m in piece[place + 1 : place + 4] if m.kind is not Kind.FILL]
    return (
        len(following) > 1 and following[0].kind in (Kind.AT, Kind.WITH) and following[1].kind in (*NUMBERS, Kind.PLUS)
    )


def shared_marks(segments: list[Segment]) -> list[Segment]:
    """Names joined by `and` share what follows the last: `squat and bench as planned`."""
    out = list(segments)
    for place in range(len(out) - 2, -1, -1):
        one, two = out[place], out[place + 1]
        joined = bool(one.marks) and one.marks[-1].kind is Kind.AND and len(one.marks) == 1
        planned = any(m.kind is Kind.PLANNED for m in two.marks) and not any(m.kind is Kind.NUM for m in two.marks)
        if one.name is not None and two.name is not None and joined and planned:
            out[place] = Segment(one.name, two.marks)
    return out


def unshared(segments: Sequence[Segment]) -> Mark | None:
    """A name whose sets are not told apart from the next one's: `leg curl and extension 40x12 and 50x12`."""
    for one, two in pairwise(segments):
        joined = [m.kind for m in one.marks if m.kind is not Kind.FILL] == [Kind.AND]
        names = one.name is not None and two.name is not None
        if joined and names and any(m.kind is Kind.NUM for m in two.marks):
            return one.name
    return None


def _only_counts_sets(marks: Sequence[Mark]) -> bool:
    """Whether the numbers so far only say how many sets of the name that follows: `two sets of rows`."""
    numbers = [i for i, m in enumerate(marks) if m.kind in NUMBERS]
    if [marks[i].kind for i in numbers] == [Kind.BODY] or _is_signed_alone(marks):
        return True
    if len(numbers) == 1 and numbers[0] and marks[numbers[0] - 1].kind is Kind.SET:
        return True
    return len(numbers) == 1 and numbers[0] + 1 < len(marks) and marks[numbers[0] + 1].kind in (Kind.SETS, Kind.SET)


def _is_signed_alone(marks: Sequence[Mark]) -> bool:
    """`+2.5` before its name: what is added to the body."""
    kinds = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.KG, Kind.LB)]
    return kinds in ([Kind.PLUS, Kind.NUM], [Kind.DASH, Kind.NUM], [Kind.MINUS, Kind.NUM], [Kind.ADDED, Kind.NUM])


def _names_sets(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name is one of sets, not a mention (`harder than bench`) or everyday talk."""
    mark = piece[place]
    following = piece[place + 1].kind if place + 1 < len(piece) else None
    before = piece[place - 1] if place else None
    if before is not None and before.text.split()[-1:] and before.text.split()[-1] in _MENTION:
        return following in (Kind.NUM, Kind.COLON) and before.text.split()[-1] in ("from", "like")
    if mark.kind is Kind.WEAK:
        return following in _NEXT_TO
    return True


def _numbers_in_part(piece: Sequence[Mark], at: int) -> bool:
    start = at
    while at < len(piece) and piece[at].kind not in EDGES:
        at += 1
    told = [m.kind for m in piece[start:at] if m.kind in NUMBERS]
    return bool(told) and told != [Kind.BODY]
