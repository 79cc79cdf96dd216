"""The body's own weight: `weighed in at 82.4`, `bw 72`, `down 2kg this week`, `hit 82 on the scale`."""

from collections.abc import Sequence

from bot.notation.clauses import beside, part_of
from bot.notation.kinds import Kind
from bot.notation.tied import is_tied
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def is_weight_change(marks: Sequence[Mark], place: int) -> bool:
    """`weighed in at 82.4, down 0.6 since last week`: how far the body's weight went."""
    led = {w for m in marks[max(0, place - 2) : place] for w in m.text.split()}
    if led.isdisjoint(_WENT):
        return False
    weighed = any(m.kind in (Kind.TALKNUM, Kind.GAP) and "weigh" in m.text for m in marks[:place])
    return weighed and not is_tied(marks, place)


_WENT = frozenset(words("down up lost gained minus plus"))


def is_on_scale(marks: Sequence[Mark], place: int) -> bool:
    """`hit 82 on the scale`."""
    if not any(w in ("scale", "scales") for m in marks[place + 1 : place + 5] for w in m.text.split()):
        return False
    _, end = part_of(marks, place)
    end = next((i for i in range(place + 1, end) if marks[i].kind is Kind.NUM), end)
    return bool({"scale", "scales"} & {w for m in marks[place + 1 : min(end, place + 5)] for w in m.text.split()})


_LIGHTEST = 40
"""Kilograms or pounds: beside the body a greater number is its own weight (common practice, no source)."""


def weighs_in(marks: Sequence[Mark], place: int) -> set[int]:
    """`72kg bw`, `bw 72`: the body's own weight."""
    value, after = marks[place].value, place + 1
    if value is None or value < _LIGHTEST:
        return set()
    if after < len(marks) and marks[after].kind in (Kind.KG, Kind.LB):
        after += 1
    if after < len(marks) and marks[after].kind is Kind.BODY:
        return set(range(place, after + 1))
    follows = marks[after].kind if after < len(marks) else None
    led = place > 0 and marks[place - 1].kind is Kind.BODY and follows not in (Kind.X, Kind.FOR, Kind.NUM, Kind.REPS)
    return set(range(place - 1, after)) if led else set()


_UNITS = (Kind.KG, Kind.LB)


def is_body(marks: Sequence[Mark], place: int) -> bool:
    """`down 2kg this week`: the body's weight."""
    after = beside(marks, place, 1)
    if after is None or after.kind not in _UNITS:
        return False
    start, end = part_of(marks, place)
    words = {w for m in marks[start:end] for w in m.text.split()}
    if place > 0 and marks[place - 1].text in ("im", "i am", "am"):
        return not any(m.kind in (Kind.X, Kind.FOR, Kind.REPS) for m in marks[place:end])
    alone = sum(m.kind is Kind.NUM for m in marks[start:end]) == 1
    listed = (
        place > start and marks[place - 1].kind is Kind.WORD and not any(m.kind is Kind.NAME for m in marks[start:end])
    )
    if alone and listed and all(m.kind is Kind.FILL for m in marks[place + 2 : end]):
        return True
    return (
        alone
        and bool(words & {"down", "up", "lost", "gained", "heavier", "lighter"})
        and bool(
            words
            & (
                {"week", "weeks", "month", "months", "weight", "year", "scale", "scales", "holiday", "xmas"}
                | set(_MONTHS)
            )
        )
    )


_MONTHS = words(
    "january february march april june july august september october november december christmas easter summer"
)
