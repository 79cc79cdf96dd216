"""A piece of kit by its number: `used the 24 for goblets`, `went down to the 12`, `5 with 10 extra`; it is a load."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD, past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_HOLDING = frozenset(words("used using use took taking grabbed picked held holding with w to swung carried"))
_COUNTED = (*OF_LOAD, Kind.X, Kind.REPS, Kind.SETS, Kind.SET, Kind.SECONDS, Kind.METRES, Kind.M, Kind.MINUTES,
            Kind.TANK, Kind.LEFT, Kind.RIGHT, Kind.MORE, Kind.SLASH, Kind.DASH, Kind.WORD, Kind.RIR,
            Kind.PLATES)  # fmt: skip
_TWO = 2
"""The two bells or words that are counted: `both 20s`, `holding the 16`."""
_LEAST = 4
"""A lesser number after `the` is rather how many: `the 3`."""


_OF_BAR = frozenset(words("speed path whip height"))
"""What a bar has that is no load."""
BARS = ("bar", "barbell", "stack", "pin")


def _on_bar(marks: Sequence[Mark], place: int) -> bool:
    """The `on the` and the `bar` of `10 reps, 90 on the bar`."""
    if marks[place].text in BARS:
        return place > 0 and _on_bar(marks, place - 1)
    link = marks[place].text in ("on the", "on") and kind_at(marks, place - 1) in (Kind.NUM, *OF_LOAD)
    return link and place + 1 < len(marks) and marks[place + 1].text in BARS


def _is_spoken_of(marks: Sequence[Mark], place: int) -> bool:
    """The `the bar` of `60x8 the bar felt light`: its load is told."""
    bar = marks[place].kind is Kind.PLATES and marks[place].text.split(" ")[-1] in BARS
    if bar and _OF_BAR.intersection(text_at(marks, place + 1).split()[:1]):
        return True
    if not bar or kind_at(marks, place - 1) is not Kind.NUM:
        return False
    start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind in (Kind.LINE, Kind.STOP)), 0)
    loaded = any(m.kind in (Kind.X, Kind.AT, Kind.KG, Kind.LB) for m in marks[start:place])
    return loaded and kind_at(marks, place + 1) in (Kind.FILL, Kind.WORD, Kind.WAS)


def kit(marks: list[Mark]) -> list[Mark]:
    """The marks with such numbers as loads."""
    marks = _without_plates(marks)
    beside = [_on_bar(marks, i) or _is_spoken_of(marks, i) for i in range(len(marks))]
    marks = [replace(m, kind=Kind.FILL) if of_bar else m for m, of_bar in zip(marks, beside, strict=True)]
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        heads = kind_at(marks, place - 1) is Kind.WITH and kind_at(marks, place + 1) is Kind.COLON
        if (
            mark.kind is Kind.NUM
            and _is_held(marks, place)
            and not (heads and not any(m.kind is Kind.ALL for m in out))
        ):
            if len(out) > _TWO and out[-3].kind is Kind.ALL and kind_at(marks, place + 1) is Kind.COLON:
                out[-3] = replace(out[-3], kind=Kind.FILL)
            out.append(Mark(Kind.S, "s", mark.end, mark.end, tight=True))
        elif mark.text == "extra" and mark.kind is Kind.MORE and _is_added(marks, place):
            out[-1] = replace(mark, kind=Kind.ADDED)
    return out


def _without_plates(marks: list[Mark]) -> list[Mark]:
    """`20 20 and 5 each side so 90 total`: the plates of a bar, whose load is told behind them."""
    out = list(marks)
    for place, mark in enumerate(marks):
        so = past(marks, place + 1, Kind.FILL, Kind.COMMA, Kind.COLON, Kind.WAS)
        end = so + 1 + (kind_at(marks, so + 1) in OF_LOAD)
        whole = kind_at(marks, so) is Kind.NUM and kind_at(marks, end) is Kind.TOTAL
        if mark.kind is not Kind.EACH or "side" not in mark.text.split() or not whole:
            continue
        start = place
        while start and marks[start - 1].kind in (*_PLATE, Kind.GAP):
            start -= 1
        plates = [m.value or 0 for m in marks[start:place] if m.kind is Kind.NUM]
        if plates and sum(plates) <= (marks[so].value or 0):
            out[start:so] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[start:so]]
            out[end] = replace(out[end], kind=Kind.FILL)
    return out


_PLATE = (Kind.NUM, Kind.AND, Kind.PLUS, Kind.COMMA, Kind.FILL, Kind.KG, Kind.LB, Kind.PLATES)


def _is_held(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number with `the` before it is what was held: `used the 24`, `down to the 12`."""
    value = marks[place].value
    before = [w for m in marks[max(0, place - 3) : place] for w in m.text.split()]
    if len(before) < _TWO or before[-1] != "the" or before[-2] not in _HOLDING or value is None or value < _LEAST:
        return False
    return kind_at(marks, place + 1) not in _COUNTED


def _is_added(marks: Sequence[Mark], place: int) -> bool:
    """`5 with 10 extra`, `10 kg extra`: weight added, not repetitions that were left."""
    unit = kind_at(marks, place - 1) in OF_LOAD
    number = place - 1 - unit
    return kind_at(marks, number) is Kind.NUM and (unit or kind_at(marks, number - 1) is Kind.WITH)
