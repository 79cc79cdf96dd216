"""Sets told by the plural of their repetitions: `five fives at 100`, `three 10s`, `25 for two twelves`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_REPS, MOST_SETS
from bot.notation.kinds import Kind
from bot.notation.spoken import TENS, UNITS
from bot.notation.tokens import Mark

PLURALS = {
    **{word + ("es" if word == "six" else "s"): value for word, value in UNITS.items() if value > 1},
    "twenties": Decimal(20), "thirties": Decimal(30), "singles": Decimal(1), "doubles": Decimal(2),
    "triples": Decimal(3),
}  # fmt: skip
"""The plurals of numbers, with what they count."""
_LEAST_SURE = 3
"""Of dumbbells people hold no more than two: `two 20s` may be what was lifted, `three 20s` is not."""
_LINKS = ("for", "x", "by")
_SIGNS = (Kind.X, Kind.SLASH, Kind.COMMA, Kind.PLUS, Kind.DASH)
_AT = ("at", "@", "on")
_TWO = ("couple", "both")
_OF_THEM = ("more", "further", "other", "extra", "clean", "easy", "solid", "good", "nice", "strict", "last")
"""Words between a count and what it counts: `two more nines`."""
_SIDES = ("l", "r", "left", "right")
_LIMBS = ("leg", "arm", "side", "hand", "foot", "was", "is", ":")
_ONE_LEFT = ("plates", "bells", "dumbbells", "kettlebells", "and")


def with_plurals(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `five fives` as `5 sets 5 reps`."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        count, after = _count(marks, at)
        while count is not None and after < len(marks) and marks[after].text in _OF_THEM:
            after += 1
        plural = _plural(marks, after)
        if plural is not None and _is_held(marks, at, after):
            number = replace(
                marks[after], kind=Kind.NUM, text=str(plural[0]), value=plural[0], end=marks[after].end - 1
            )
            ending = replace(marks[after], text="s", start=marks[after].end - 1, tight=True)
            out += [replace(marks[at], kind=Kind.NUM, value=count, parts=()), number, ending]
            at = plural[1]
            continue
        told = plural is not None and count is not None and _is_told(marks, at, after, plural[1])
        if plural is None or count is None or not told:
            out.append(marks[at])
            at += 1
            continue
        value, end = plural
        first, last = marks[at], marks[end - 1]
        out.append(replace(first, kind=Kind.NUM, value=count, parts=()))
        out.append(Mark(Kind.SETS, "fold", first.end, first.end))
        out.append(Mark(Kind.NUM, str(value), marks[after].start, last.end, value=value))
        out.append(Mark(Kind.WORD, "reps", last.end, last.end))
        at = end
    return out


def _count(marks: Sequence[Mark], at: int) -> tuple[Decimal | None, int]:
    """How many sets, and where its words end: a small number in digits or in words, `a couple of`, `both`."""
    mark = marks[at]
    if mark.text in _TWO and mark.kind is Kind.WORD:
        return Decimal(2), at + 1 + (at + 1 < len(marks) and marks[at + 1].text == "of")
    value = mark.value if mark.kind is Kind.NUM else UNITS.get(mark.text) if mark.kind is Kind.WORD else None
    return (value if value is not None and value == int(value) and 2 <= value <= MOST_SETS else None), at + 1


def _plural(marks: Sequence[Mark], at: int) -> tuple[Decimal, int] | None:
    """The number that stands in the plural at a place, and where it ends."""
    if at >= len(marks):
        return None
    mark = marks[at]
    if mark.kind is Kind.WORD and mark.text in PLURALS:
        return PLURALS[mark.text], at + 1
    digits = mark.kind is Kind.NUM and mark.value is not None and mark.value == int(mark.value)
    tight = at + 1 < len(marks) and marks[at + 1].tight and marks[at + 1].text == "s"
    return (mark.value, at + 2) if digits and tight and mark.value is not None and mark.value > 1 else None


def _is_told(marks: Sequence[Mark], at: int, start: int, end: int) -> bool:
    """Whether the plural from `start` to `end` can be repetitions, behind a count at `at`: no load that repetitions
    follow, no number behind a load.
    """
    following = marks[end] if end < len(marks) else None
    count, _ = _count(marks, at)
    value = _plural(marks, start)
    if value is None or count is None or value[0] > MOST_REPS:
        return False
    spoken = marks[start].kind is Kind.WORD
    beside = following is not None and following.text in _ONE_LEFT and not (spoken and following.text == "and")
    if following is not None and (following.text in _LINKS or following.kind is Kind.X or beside):
        return False
    if following is not None and following.kind is Kind.NUM:
        return False
    listed = following is not None and following.kind in (Kind.COMMA, Kind.COLON)
    led = at > 0 and (marks[at - 1].kind in _SIGNS and marks[at - 1].kind is not Kind.COMMA)
    led = led or (at > 0 and marks[at - 1].text in ("x", "the", "rpe", "set", *TENS)) or _is_of_side(marks, at)
    led = led or (
        at > 1 and marks[at - 1].kind is Kind.COMMA and marks[at - 1].tight and _is_bare(marks, at) and not spoken
    )
    sure = count >= _LEAST_SURE or spoken or start > at + 1 or _is_loaded(marks, end)
    return not led and sure and not (listed and not spoken and count < _LEAST_SURE)


def _is_held(marks: Sequence[Mark], at: int, start: int) -> bool:
    """Whether `two twelves` are what was held: `10 per leg with two twelves`, `holding two twelves`."""
    spoken = marks[start].kind is Kind.WORD and marks[start].text not in _LOWS and start == at + 1
    led = marks[at - 1].text if at else ""
    counted = led in _EACH and any(m.kind is Kind.NUM for m in marks[max(0, at - 4) : at])
    return spoken and _count(marks, at)[0] == 2 and (led in _HOLDING or counted)


_LOWS = ("singles", "doubles", "triples")
_HOLDING = ("with", "w", "holding", "using", "carrying", "held")
_EACH = ("each", "leg", "side", "arm")


def _is_of_side(marks: Sequence[Mark], at: int) -> bool:
    """Whether the count is that of a side: `L10 R9 16s`, `right leg 9 16s`."""
    before = at - 1 - (at > 1 and marks[at - 1].text in _LIMBS)
    return before >= 0 and marks[before].text in _SIDES


def _is_bare(marks: Sequence[Mark], at: int) -> bool:
    """Whether a count behind a comma is in digits, which may go on with a list."""
    return marks[at].kind is Kind.NUM


def _is_loaded(marks: Sequence[Mark], end: int) -> bool:
    """Whether a load follows: `two 8s at 115`."""
    linked = end + 1 < len(marks) and marks[end].text in _AT and marks[end + 1].kind is Kind.NUM
    value = marks[end + 1].value if linked else None
    counted = end + 2 < len(marks) and marks[end + 2].text in ("reps", "rep", "each")
    return value is not None and value > MOST_REPS and not counted
