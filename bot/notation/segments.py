"""A piece of a message cut by the exercises that it names. A name stands before its sets, or after them in its part."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from bot.notation.abbreviations import singular
from bot.notation.halves import completes, is_only_timed
from bot.notation.kinds import Kind
from bot.notation.names_apart import begun_parts, sets_before_names
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

EDGES = frozenset((Kind.COMMA, Kind.BREAK, Kind.LINE, Kind.STOP, Kind.QUERY, Kind.AND, Kind.THEN))
NUMBERS = frozenset((Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.BAD, Kind.SAMELOAD))
_MENTION = frozenset(["after", "before", "since", "than", "like", "from", "between", "until", "versus", "vs"])
_OPENS_AFTER = (Kind.LINE, Kind.STOP)
"""What ends before a bare `after`, which means `after that`: `cleans all done. After squat 95 kg 6, 5`."""
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
    return [
        segment
        for part in begun_parts(piece)
        for segment in ([Segment(*one) for one in sets_before_names(part)] or _read_part(part))
    ]


def _read_part(piece: Sequence[Mark]) -> list[Segment]:
    segments: list[Segment] = []
    name: Mark | None = None
    marks: list[Mark] = []
    part_start, trailing, led = 0, False, False
    for place, mark in enumerate(piece):
        if mark.kind in (Kind.NAME, Kind.WEAK) and _names_sets(piece, place):
            counted = _only_counts_sets(marks[part_start:])
            if counted and name is None and not any(m.kind in NUMBERS for m in marks[:part_start]):
                name, part_start, trailing = mark, 0, False
                continue
            if name is not None and part_start and _is_all_of(marks[part_start:]):
                segments.append(Segment(name, tuple(marks[:part_start])))
                marks, name, part_start, trailing = marks[part_start:], mark, 0, False
                continue
            if name is None and _is_bare_list(marks[:part_start]):
                inside = _is_inside(piece, place) or _is_load_behind(piece, place)
                part_start = 0 if inside else part_start
            inside = led or _is_between(piece, place, marks[part_start:])
            if inside and any(m.kind in NUMBERS for m in marks[part_start:]):
                marks = _without_on(marks)
                if part_start and any(m.kind in NUMBERS for m in marks[:part_start]):
                    segments.append(Segment(name, tuple(marks[:part_start])))
                marks, name, part_start, trailing, led = marks[part_start:], mark, 0, False, True
                continue
            numbers_here = any(m.kind in NUMBERS for m in marks[part_start:])
            follows = _is_whole(piece, place, marks[part_start:])
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
        if mark.kind in EDGES and not _joins_counts(marks, part_start):
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


def _is_whole(piece: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """Whether what stands before a name is all that is told of it in its part."""
    alone = not _numbers_in_part(piece, place + 1) or _is_entry_on(before)
    return alone or is_only_timed(before, piece[place + 1 :])


def _is_all_of(marks: Sequence[Mark]) -> bool:
    """The `both sets of` before a name: of its sets."""
    said = [m.kind for m in marks if m.kind is not Kind.FILL]
    return bool(said) and all(k in (Kind.ALL, Kind.SETS) for k in said) and Kind.ALL in said


def _joins_counts(marks: Sequence[Mark], part_start: int) -> bool:
    """The `and` of `then 12 and 14 wall push-ups`: two counts of one name that follows them."""
    then = part_start > 0 and marks[part_start - 1].kind is Kind.THEN
    return then and [m.kind for m in marks[part_start:]] == [Kind.NUM, Kind.AND]


def _is_its_load(before: Segment, marks: Sequence[Mark]) -> bool:
    """Whether marks after `8 dips` hold but the load of those: `, machine set to 40 assistance, rpe 8`."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    rated = (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.COULD)
    loads = [i for i, m in enumerate(said) if m.kind is Kind.NUM and (not i or said[i - 1].kind not in rated)]
    if len(loads) != 1 or loads[0] + 1 >= len(said) or any(m.kind in _OF_A_SET for m in said):
        return False
    alone = sum(m.kind is Kind.NUM for m in before.marks) == 1 and not any(m.kind in _LOADS for m in before.marks)
    return alone and said[loads[0] + 1].kind in _LOADS


def _is_between(piece: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """Whether a name stands inside its set: `5 on bench at 60`, `115 on press got 3 and 2`, `3,2 press 115lb`."""
    if _is_inside(piece, place):
        return True
    numbers = [m for m in before if m.kind in NUMBERS]
    rest = _own(piece, place)
    if any(m.kind in (Kind.X, Kind.AT) for m in rest):
        return False
    if _is_load_ahead(before, rest):
        return True
    last = next((m for m in reversed(before) if m.kind is not Kind.FILL), None)
    led = last is not None and last.text.split()[:1] in (["on"], ["for"])
    bare = not any(m.kind in (Kind.X, Kind.FOR) for m in before if m is not last)
    if len(numbers) == 1 and led and bare and any(m.kind is Kind.NUM for m in rest):
        return True
    return bool(numbers) and _is_bare_list(before) and _is_load_behind(piece, place)


def _is_load_ahead(before: Sequence[Mark], rest: Sequence[Mark]) -> bool:
    """Whether a load alone stands before a name and its counts behind: `16s splits 9, 9, 8`, `14kg hammers 12 reps`."""
    load = [m.kind for m in before if m.kind is not Kind.FILL]
    counts = [m.kind for m in rest if m.kind is not Kind.FILL]
    loaded = len(load) > 1 and load[0] is Kind.NUM and all(k in _LOADED for k in load[1:])
    weighed = any(a is Kind.NUM and b in _LOADED for a, b in pairwise(counts))
    return loaded and counts[:1] == [Kind.NUM] and not weighed and Kind.FOR not in counts


def _own(piece: Sequence[Mark], place: int) -> Sequence[Mark]:
    """What follows a name up to the end of its sentence, or to the part of the next name."""
    end = place + 1
    while end < len(piece) and piece[end].kind not in (*_STOPS, Kind.NAME):
        end += 1
    if end < len(piece) and piece[end].kind is Kind.NAME:
        edges = [i for i in range(place + 1, end) if piece[i].kind in EDGES]
        end = edges[-1] if edges else place + 1
    return piece[place + 1 : end]


def _is_entry_on(marks: Sequence[Mark]) -> bool:
    """`60x5 on` before a name: a whole set of it."""
    said = [m for m in marks if m.kind is not Kind.FILL]
    return bool(said) and said[-1].kind is Kind.AT and said[-1].text == "on" and any(m.kind is Kind.X for m in said)


def _without_on(marks: list[Mark]) -> list[Mark]:
    """The marks before a name inside its set, without the word that leads to it: `115 on`."""
    last = next((i for i in range(len(marks) - 1, -1, -1) if marks[i].kind is not Kind.FILL), None)
    led = last is not None and marks[last].kind in (Kind.AT, Kind.WITH, Kind.FOR) and marks[last].text != "@"
    return [m for i, m in enumerate(marks) if i != last] if led else marks


_STOPS = (Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)


def _is_bare_list(marks: Sequence[Mark]) -> bool:
    """Whether marks are numbers and what parts them: `10 and 12`."""
    plain = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.FILL, Kind.SLASH, Kind.REPS, Kind.AT, Kind.WITH, Kind.FOR)
    led = [m for m in marks if m.kind in (Kind.AT, Kind.WITH, Kind.FOR) and m.text not in ("on", "on the", "for")]
    return any(m.kind is Kind.NUM for m in marks) and all(m.kind in plain for m in marks) and not led


def _is_load_behind(piece: Sequence[Mark], place: int) -> bool:
    """Whether a load with its unit and nothing else follows a name: `3,2 push press 115lb`."""
    rest = [m.kind for m in piece[place + 1 : place + 7] if m.kind not in (Kind.FILL, Kind.OPEN, Kind.CLOSE)]
    rest = rest[1:] if rest[:1] == [Kind.COMMA] and len(rest) > 2 and rest[2] in (Kind.HAND, Kind.S) else rest
    loaded = rest[:1] == [Kind.NUM] and len(rest) > 1 and rest[1] in _LOADED
    return loaded and rest[2:3] in ([], [Kind.STOP], [Kind.LINE], [Kind.COMMA])


_LOADED = (Kind.KG, Kind.LB, Kind.HAND, Kind.S)


def _counts_only(marks: Sequence[Mark]) -> bool:
    """`, three sets` after what they are of."""
    kinds = [m.kind for m in marks if m.kind not in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.FOR)]
    return kinds in ([Kind.NUM, Kind.SETS], [Kind.NUM, Kind.TIMES])


def _is_inside(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name stands inside its set: `5 on bench at 60`."""
    following = [m for m in piece[place + 1 : place + 4] if m.kind is not Kind.FILL]
    return (
        len(following) > 1 and following[0].kind in (Kind.AT, Kind.WITH) and following[1].kind in (*NUMBERS, Kind.PLUS)
    )


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
    if before is not None and before.text.split()[-1:] and before.text.split(" ")[-1] in _MENTION:
        if before.text == "after" and following is Kind.NUM and (place == 1 or piece[place - 2].kind in _OPENS_AFTER):
            return True
        return following in (Kind.NUM, Kind.COLON) and before.text.split(" ")[-1] in ("from", "like")
    if mark.kind is Kind.WEAK:
        after = piece[place + 2].kind if place + 2 < len(piece) else None
        told = following is Kind.WAS and after in (Kind.NUM, Kind.CLOCK)
        linked = following in (Kind.WITH, Kind.AT) and after in (Kind.NUM, Kind.BODY)
        linked = linked and len(mark.names) == 1 and (before is None or before.kind in (*EDGES, Kind.FILL))
        told = told or (following is Kind.DONE and after is Kind.NUM and len(mark.names) == 1)
        several = len(mark.names) > 1 and _is_told_of(piece, place)
        headed = several or _heads_next(piece, place) or _ends_entry(piece, place)
        return following in _NEXT_TO or told or linked or headed
    return True


def _is_told_of(piece: Sequence[Mark], place: int) -> bool:
    """`did one set of calves, 15 reps`: everyday words that may be two exercises, straight before their count."""
    told = [m.kind for m in piece[place + 1 : place + 4]]
    return told[:2] == [Kind.COMMA, Kind.NUM] and told[2:] in ([Kind.REPS], [Kind.FOR], [Kind.X])


def _heads_next(piece: Sequence[Mark], place: int) -> bool:
    """`after that the machine shoulder, 35 for 12`: a name of two everyday words that opens its part, and its set."""
    if len(piece[place].names) != 1 or len(piece[place].text.split()) == 1:
        return False
    before = place - 1
    while before >= 0 and piece[before].kind is Kind.FILL:
        before -= 1
    opens = before < 0 or piece[before].kind in EDGES
    told = [m.kind for m in piece[place + 1 : place + 4]]
    return opens and told in ([Kind.COMMA, Kind.NUM, Kind.FOR], [Kind.COMMA, Kind.NUM, Kind.X])


def _ends_entry(piece: Sequence[Mark], place: int) -> bool:
    """Whether a name ends its part straight behind a set: `40 x 16 calves`."""
    if place + 1 < len(piece) and piece[place + 1].kind not in EDGES:
        return False
    at = place - _is_led(piece, place)
    while at > 1 and piece[at - 1].kind in (Kind.REPS, Kind.EACH):
        at -= 1
    return [m.kind for m in piece[max(0, at - 3) : at]] in (
        [Kind.NUM, Kind.X, Kind.NUM],
        [Kind.NUM, Kind.FOR, Kind.NUM],
    )


def _is_led(piece: Sequence[Mark], place: int) -> bool:
    """`22.5 for 10 on the shoulder machine`: words that tell one exercise, not what it is done on or with."""
    led = place > 0 and piece[place - 1].text in ("on", "on the", "on my", "at the", "of", "in the")
    return led and len(piece[place].names) == 1 and not {singular(w) for w in piece[place].text.split()} <= _THINGS


_THINGS = frozenset(
    words(
        "leg arm side back front knee hip wrist neck toe machine cable smith bar barbell dumbbell kettlebell band",
        "bench box wall floor rope ball belt rack block step bike treadmill bell kettle left right single half low",
        "high ab",
    )
)


def _numbers_in_part(piece: Sequence[Mark], at: int) -> bool:
    start = at
    while at < len(piece) and piece[at].kind not in EDGES:
        at += 1
    told = [m.kind for m in piece[start:at] if m.kind in NUMBERS]
    return bool(told) and told != [Kind.BODY]
