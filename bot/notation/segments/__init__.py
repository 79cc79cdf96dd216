"""A piece of a message cut by the exercises that it names. A name stands before its sets, or after them in its part."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.notation.halves import completes
from bot.notation.kinds import Kind
from bot.notation.names_apart import begun_parts, sets_before_names
from bot.notation.segments.edges import EDGES, NUMBERS
from bot.notation.segments.inside import is_bare_list, is_between, is_inside, is_load_behind, is_whole
from bot.notation.segments.naming import names_sets
from bot.notation.tokens import Mark

_LOADS = (Kind.KG, Kind.LB, Kind.ASSIST, Kind.ADDED, Kind.HAND)
_OF_A_SET = (Kind.X, Kind.FOR, Kind.REPS, Kind.TIMES, Kind.SAME, Kind.NAME)


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
    return [
        segment
        for part in begun_parts(_without_things(piece))
        for segment in ([Segment(*one) for one in sets_before_names(part)] or _read_part(part))
    ]


def _read_part(piece: Sequence[Mark]) -> list[Segment]:
    segments: list[Segment] = []
    name: Mark | None = None
    marks: list[Mark] = []
    part_start, trailing, led = 0, False, False
    for place, mark in enumerate(piece):
        if mark.kind in (Kind.NAME, Kind.WEAK) and names_sets(piece, place):
            counted = _only_counts_sets(marks[part_start:])
            if counted and name is None and not any(m.kind in NUMBERS for m in marks[:part_start]):
                name, part_start, trailing = mark, 0, False
                continue
            if name is not None and part_start and _is_all_of(marks[part_start:]):
                segments.append(Segment(name, tuple(marks[:part_start])))
                marks, name, part_start, trailing = marks[part_start:], mark, 0, False
                continue
            if name is None and is_bare_list(marks[:part_start]):
                inside = is_inside(piece, place) or is_load_behind(piece, place)
                part_start = 0 if inside else part_start
            inside = led or is_between(piece, place, marks[part_start:])
            if inside and any(m.kind in NUMBERS for m in marks[part_start:]):
                marks = _without_on(marks)
                if part_start and any(m.kind in NUMBERS for m in marks[:part_start]):
                    segments.append(Segment(name, tuple(marks[:part_start])))
                marks, name, part_start, trailing, led = marks[part_start:], mark, 0, False, True
                continue
            numbers_here = any(m.kind in NUMBERS for m in marks[part_start:])
            follows = is_whole(piece, place, marks[part_start:])
            if numbers_here and follows and (name is None or part_start > 0):
                if name is not None:
                    segments.append(Segment(name, tuple(marks[:part_start])))
                    marks = marks[part_start:]
                segments.append(Segment(mark, tuple(marks)))
                marks, name, part_start, trailing, led = [], None, 0, True, True
                continue
            if trailing and segments and (_is_its_load(segments[-1], marks) or completes(segments[-1].marks, marks)):
                segments[-1] = Segment(segments[-1].name, (*segments[-1].marks, *marks))
                marks = []
            elif any(m.kind in NUMBERS for m in marks) or name is not None:
                segments.append(Segment(name, tuple(marks)))
                marks = []
            name, part_start, trailing = mark, 0, False
            continue
        marks.append(mark)
        if mark.kind in EDGES and not _joins_counts(marks, part_start, piece[place + 1 : place + 2]):
            part_start = len(marks)
    if marks or name is not None:
        told = [m.kind for m in marks if m.kind in NUMBERS]
        if (
            trailing
            and name is None
            and segments
            and (
                told in ([], [Kind.BODY])
                or _is_its_load(segments[-1], marks)
                or completes(segments[-1].marks, marks)
                or _counts_only(marks)
            )
        ):
            last = segments[-1]
            segments[-1] = Segment(last.name, (*last.marks, *marks))
        else:
            segments.append(Segment(name, tuple(marks)))
    return segments


def _without_things(piece: Sequence[Mark]) -> list[Mark]:
    """The piece with a gap before the kids of `20 swings kids watching`: it is the name between that is counted."""
    out: list[Mark] = []
    for place, mark in enumerate(piece):
        if mark.kind is Kind.WORD and [m.kind for m in piece[max(0, place - 2) : place]] == [Kind.NUM, Kind.NAME]:
            out.append(Mark(Kind.GAP, "", mark.start, mark.start))
        out.append(mark)
    return out


def _is_all_of(marks: Sequence[Mark]) -> bool:
    """The `both sets of` before a name: of its sets."""
    said = [m.kind for m in marks if m.kind is not Kind.FILL]
    return bool(said) and all(k in (Kind.ALL, Kind.SETS) for k in said) and Kind.ALL in said


def _joins_counts(marks: Sequence[Mark], part_start: int, following: Sequence[Mark]) -> bool:
    """The `and` of `then 12 and 14 wall push-ups`: two counts of one name that follows them; not that of `10 then 9 and
    presses at 24`.
    """
    then = part_start > 0 and marks[part_start - 1].kind is Kind.THEN
    then = then and [m.kind for m in following] != [Kind.NAME]
    told = [m.kind for m in marks[part_start:] if m.kind is not Kind.FILL]
    return then and told == [Kind.NUM, Kind.AND]


def _is_its_load(before: Segment, marks: Sequence[Mark]) -> bool:
    """Whether marks after `8 dips` hold but the load of those: `, machine set to 40 assistance, rpe 8`."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    rated = (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.COULD)
    loads = [i for i, m in enumerate(said) if m.kind is Kind.NUM and (not i or said[i - 1].kind not in rated)]
    if len(loads) != 1 or loads[0] + 1 >= len(said) or any(m.kind in _OF_A_SET for m in said):
        return False
    alone = sum(m.kind is Kind.NUM for m in before.marks) == 1 and not any(m.kind in _LOADS for m in before.marks)
    return alone and said[loads[0] + 1].kind in _LOADS


def _without_on(marks: list[Mark]) -> list[Mark]:
    """The marks before a name inside its set, without the word that leads to it: `115 on`."""
    last = next((i for i in range(len(marks) - 1, -1, -1) if marks[i].kind is not Kind.FILL), None)
    led = last is not None and marks[last].kind in (Kind.AT, Kind.WITH, Kind.FOR) and marks[last].text != "@"
    return [m for i, m in enumerate(marks) if i != last] if led else marks


def _counts_only(marks: Sequence[Mark]) -> bool:
    """`, three sets` after what they are of."""
    kinds = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.FOR)]
    return kinds in ([Kind.NUM, Kind.SETS], [Kind.NUM, Kind.TIMES])


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
    marks = [m for m in marks if m.kind is not Kind.FILL]
    numbers = [i for i, m in enumerate(marks) if m.kind in NUMBERS]
    if [marks[i].kind for i in numbers] == [Kind.BODY]:
        return True
    if len(numbers) == 1 and numbers[0] and marks[numbers[0] - 1].kind is Kind.SET:
        return True
    return len(numbers) == 1 and numbers[0] + 1 < len(marks) and marks[numbers[0] + 1].kind in (Kind.SETS, Kind.SET)
