"""Sides as people write them: `8 (left) 10 (right)`, `left x14 right x15`, `the left one 8`; a load before both.

`7,5 left 14 right 15`: where each side has its own number, what stands before them is one load, and no list.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_SIDES = (Kind.LEFT, Kind.RIGHT)
_ANY = (*_SIDES, Kind.L, Kind.R)
_LINKS = (Kind.X, Kind.FOR, Kind.LEADX, Kind.COLON, Kind.DASH)
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_AND = (Kind.COMMA, Kind.AND, Kind.FILL, Kind.THEN)
_PAIR = 2
"""The two sides, and how many times as much one may have done as the other."""
_PLACING = (Kind.FILL, Kind.WITH, Kind.AT, Kind.WORD, Kind.WEAK)
_FAR = 6
"""Marks between a number and the side behind it."""
_MOST_LEFT = 6
"""Nobody counts more repetitions in reserve: `9 reps left, right 8` tells a side."""
_LIMBS = (["side"], ["leg"], ["arm"])


def side_marks(marks: list[Mark]) -> list[Mark]:
    """The marks with sides beside their numbers, and a load before them as one number."""
    return _slashed(
        _one_load(_named(_crossed(_linked(_bracketed(_in_turn(_unsaid(_on_lines(_threes(_columns(marks))))))))))
    )


def _columns(marks: list[Mark]) -> list[Mark]:
    """`16 (L/R): 10/9, 9/8`: which side each of two numbers is of, said once; two numbers are left and right anyway."""
    for place in range(len(marks) - 2):
        one, two = (_SIDE_OF.get(marks[i].kind) for i in (place, place + 2))
        if one is None or two is None or one is two or marks[place + 1].kind is not Kind.SLASH:
            continue
        start, end = place, place + 3
        if kind_at(marks, start - 1) is Kind.OPEN and kind_at(marks, end) is Kind.CLOSE:
            start, end = start - 1, end + 1
        rest = list(marks[end:])
        if not any(_is_pair(rest, i) for i in range(len(rest))) or any(m.kind in _ANY for m in rest):
            return marks
        if one is Kind.RIGHT:
            for i in range(len(rest) - 2):
                if _is_pair(rest, i):
                    rest[i], rest[i + 2] = rest[i + 2], rest[i]
        return [*marks[:start], *rest]
    return marks


def _is_pair(marks: Sequence[Mark], at: int) -> bool:
    """Whether two numbers with a slash between stand here, and no third."""
    kinds = [kind_at(marks, at + n) for n in range(-1, 4)]
    return kinds[1:4] == [Kind.NUM, Kind.SLASH, Kind.NUM] and Kind.SLASH not in (kinds[0], kinds[4])


def _threes(marks: list[Mark]) -> list[Mark]:
    """`16: 10/9/8`: three counts with slashes are of three sets, where two would be of both sides."""
    out = list(marks)
    at = 0
    while at < len(marks):
        end = at + 1
        while (
            kind_at(marks, at) is Kind.NUM and kind_at(marks, end) is Kind.SLASH and kind_at(marks, end + 1) is Kind.NUM
        ):
            end += 2
        odd = end - at == len(("10", "/", "9", "/", "8"))
        counts = [m.value or 0 for m in marks[at:end:2]]
        odd = odd and (kind_at(marks, at - 1) not in _CROSS or max(counts) <= _PAIR * min(counts))
        if odd and kind_at(marks, at - 1) is not Kind.SLASH and kind_at(marks, end) not in (*_CROSS, *_UNITS):
            out[at + 1 : end : 2] = [replace(m, kind=Kind.COMMA, text=",") for m in marks[at + 1 : end : 2]]
        at = end
    return out


def _on_lines(marks: list[Mark]) -> list[Mark]:
    """The lines of `16s, L: 10, 9, 8, R: 10, 8, 8` typed on three: of one set after the other, as with commas."""
    sided = {mark.kind for mark in marks if mark.kind in _ANY}
    if len(sided) != _PAIR or sum(m.kind in _ANY for m in marks) != _PAIR:
        return marks
    return [
        replace(m, kind=Kind.COMMA, text=",")
        if m.kind is Kind.LINE and kind_at(marks, i + 1) in _ANY and kind_at(marks, i - 1) in (Kind.NUM, *_UNITS)
        else m
        for i, m in enumerate(marks)
    ]


def _unsaid(marks: list[Mark]) -> list[Mark]:
    """The `one` of `one side 10 other side 9`: which side it was is not said, and asked about."""
    return [
        replace(m, kind=Kind.SLIP, value=None, parts=())
        if m.text == "one" and text_at(marks, i + 1).split()[-1:] in _LIMBS and kind_at(marks, i + 2) is Kind.NUM
        else m
        for i, m in enumerate(marks)
    ]


def _crossed(marks: list[Mark]) -> list[Mark]:
    """`left 45, only 38 on the right`: one side before its number, the other behind; both come before."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1 + (kind_at(marks, place + 1) in (Kind.WAS, Kind.COLON))
        if mark.kind not in _ANY or kind_at(marks, at) is not Kind.NUM:
            continue
        link = at + 1 + (kind_at(marks, at + 1) in _COUNTED)
        two = link
        while kind_at(marks, two) in (*_AND, Kind.GAP) or text_at(marks, two) == "but":
            two += 1
        other = two + 1 + (kind_at(marks, two + 1) in _COUNTED)
        ends = kind_at(marks, other + 1) in (None, *EDGES, Kind.FILL, Kind.WITH, Kind.AT, Kind.THEN, Kind.AND)
        crossed = two > link and kind_at(marks, two) is Kind.NUM and kind_at(marks, other) in _ANY and ends
        if crossed and _SIDE_OF[mark.kind] is not _SIDE_OF[marks[other].kind]:
            out[two : other + 1] = [marks[other], *marks[two:other]]
    return out


_COUNTED = (Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.M, Kind.S)
_TURNING = (*_SIDES, Kind.TANK)


def _in_turn(marks: list[Mark]) -> list[Mark]:
    """`9 left then right`, `9 reps left and right`: of each side."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        if marks[at].kind not in _TURNING:
            out.append(marks[at])
            at += 1
            continue
        kinds = [kind_at(marks, at + n) for n in range(4)]
        over = kinds[0] is Kind.TANK and marks[at].text.split()[-1:] == ["left"]
        kinds[0] = Kind.LEFT if over else kinds[0]
        many = over and kind_at(out, len(out) - 1) is Kind.NUM and (out[-1].value or 0) > _MOST_LEFT
        if many and any(m.kind is Kind.RIGHT for m in marks[at:]) and kinds[1] in (Kind.COMMA, Kind.RIGHT):
            out.append(replace(marks[at], kind=Kind.LEFT, text="on the left"))
            at += 1
            continue
        both = set(kinds[::2][:2]) == set(_SIDES) and kinds[1] in (Kind.THEN, Kind.AND)
        counted = kind_at(out, len(out) - 1) in (Kind.NUM, Kind.REPS)
        if both and counted and kinds[3] in (None, *EDGES, Kind.AT, Kind.WITH, Kind.RPE, Kind.RIR):
            out.append(replace(marks[at], kind=Kind.EACH, text="each side", end=marks[at + 2].end))
            at += 3
            continue
        out.append(marks[at])
        at += 1
    return out


def _bracketed(marks: list[Mark]) -> list[Mark]:
    """`10 on the good leg (right)`: the side alone, straight behind its number."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        inside = mark.kind in _SIDES and kind_at(marks, place - 1) is Kind.OPEN
        inside = inside and kind_at(marks, place + 1) is Kind.CLOSE
        named = kind_at(marks, place - 1) is Kind.COMMA and text_at(marks, place - 2).split()[-1:] in _LIMBS
        inside = inside or (mark.kind in _SIDES and named and kind_at(marks, place + 1) in (None, *EDGES))
        if mark.kind is Kind.CLOSE and kind_at(marks, place - 1) in _SIDES and kind_at(marks, place - 2) is Kind.OPEN:
            continue
        if inside:
            out.pop()
            number = len(out) - 1
            while number >= 0 and number > len(out) - _FAR and out[number].kind in _PLACING:
                number -= 1
            if number >= 0 and out[number].kind is Kind.NUM:
                del out[number + 1 :]
        out.append(mark)
    return out


def _linked(marks: list[Mark]) -> list[Mark]:
    """`left x14 right x15`, `the left one 8`: the side before its number."""
    led = [i for i in range(1, len(marks)) if _is_between(marks, i)]
    crossed = [i for i in led if marks[i].kind in _CROSS]
    gone = {i for i in led if i not in crossed or len(crossed) > 1}
    return [m for i, m in enumerate(marks) if i not in gone] if gone else marks


_CROSS = (Kind.X, Kind.LEADX)


def _is_between(marks: Sequence[Mark], place: int) -> bool:
    beside = kind_at(marks, place - 1) in _SIDES and kind_at(marks, place + 1) is Kind.NUM
    return beside and (marks[place].kind in _CROSS or _is_one(marks, place))


def _is_one(marks: Sequence[Mark], place: int) -> bool:
    """The `one` of `the left one 8`."""
    return kind_at(marks, place) is Kind.NUM and text_at(marks, place) == "one"


def _named(marks: list[Mark]) -> list[Mark]:
    """`left plank 40, right plank 30`: the name before its side."""
    led = [i for i, m in enumerate(marks) if m.kind in _SIDES and _is_named(marks, i)]
    if len(led) < _PAIR or len({marks[i + 1].names for i in led}) > 1:
        return marks
    out = list(marks)
    for at in led:
        name = marks[at + 1] if at == led[0] else replace(marks[at + 1], kind=Kind.FILL)
        out[at : at + 2] = [name, marks[at]]
    return out


def _is_named(marks: Sequence[Mark], at: int) -> bool:
    return kind_at(marks, at + 1) in (Kind.NAME, Kind.WEAK) and kind_at(marks, at + 2) is Kind.NUM


def _one_load(marks: list[Mark]) -> list[Mark]:
    """`7,5 left 14 right 15`: 7.5."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or len(mark.parts) != _PAIR or "," not in mark.text:
            continue
        at = past(marks, place + 1, *_UNITS, *_LINKS, *_AND)
        if at > place and _are_both(marks, at):
            out[place] = replace(mark, parts=())
    return out


def _slashed(marks: list[Mark]) -> list[Mark]:
    """`left 12 right 12, then 25 with 11/10`: once both sides are named, they are told in the same way behind it."""
    sided = [i for i, m in enumerate(marks) if m.kind in _ANY][:_PAIR]
    if {_SIDE_OF.get(marks[i].kind) for i in sided} != set(_SIDES):
        return marks
    led = all(kind_at(marks, i + 1) is Kind.NUM for i in sided)
    end = sided[-1] + 1 + led
    if not (led or all(kind_at(marks, i - 1) is Kind.NUM for i in sided)) or kind_at(marks, end) not in _PAIR_ENDS:
        return marks
    out, at = list(marks[:end]), end
    while at < len(marks):
        one = at + (kind_at(marks, at) in (Kind.WITH, *_LINKS))
        told = _both_at(marks, one)
        if told is None or kind_at(marks, at - 1) not in (Kind.NUM, *_UNITS, Kind.COMMA, Kind.THEN):
            out.append(marks[at])
            at += 1
            continue
        for number, kind in zip((marks[one], marks[one + 2]), told, strict=True):
            place = number.start if led else number.end
            side = Mark(kind, kind.lower(), place, place)
            out += [side, number] if led else [number, side]
        at = one + 3 + (kind_at(marks, one + 1) is not Kind.SLASH)
    return out


_SIDE_OF = {Kind.LEFT: Kind.LEFT, Kind.L: Kind.LEFT, Kind.RIGHT: Kind.RIGHT, Kind.R: Kind.RIGHT}
_PAIR_ENDS = (None, *EDGES, Kind.THEN, Kind.AND)


def _both_at(marks: Sequence[Mark], at: int) -> tuple[Kind, Kind] | None:
    """The sides of the two numbers of `11/10`, `11 left 10 right`, in their order."""
    kinds = [kind_at(marks, at + n) for n in range(5)]
    if kinds[:3] == [Kind.NUM, Kind.SLASH, Kind.NUM] and kinds[3] in _PAIR_ENDS:
        return Kind.LEFT, Kind.RIGHT
    if kinds[0] is not Kind.NUM or kinds[2] is not Kind.NUM or kinds[4] not in _PAIR_ENDS:
        return None
    one, two = (_SIDE_OF.get(kind) if kind is not None else None for kind in (kinds[1], kinds[3]))
    return (one, two) if one is not None and two is not None and one is not two else None


def _are_both(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number of each side follows, and no list of them."""
    kinds: list[Kind] = []
    numbers: list[Mark] = []
    while len(kinds) < 4 and at < len(marks):
        if marks[at].kind in (Kind.NUM, Kind.SLASH, *_ANY):
            kinds.append(Kind.LEFT if marks[at].kind in _ANY else marks[at].kind)
            numbers += [marks[at]] if marks[at].kind is Kind.NUM else []
        elif marks[at].kind not in (*_AND, Kind.X, Kind.FOR, Kind.COLON, Kind.REPS):
            break
        at += 1
    both = kinds in ([Kind.LEFT, Kind.NUM, Kind.LEFT, Kind.NUM], [Kind.NUM, Kind.LEFT, Kind.NUM, Kind.LEFT])
    both = both or kinds[:3] == [Kind.NUM, Kind.SLASH, Kind.NUM]
    return both and not any(m.parts for m in numbers)
