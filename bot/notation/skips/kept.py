"""What is done all the same: `everything except rows`, `chins only, so no pressing: 8 7 7`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def is_after(marks: Sequence[Mark], name: Mark) -> bool:
    """`everything after pull ups`: a name after which all is meant."""
    place = next(i for i, m in enumerate(marks) if m is name)
    while place and marks[place - 1].text in ("the", "my"):
        place -= 1
    before = marks[place - 1] if place else None
    return before is not None and before.kind is Kind.THEREST and before.text.endswith("after")


def is_all_but(marks: Sequence[Mark], place: int) -> bool:
    """`skipping everything except rows`: all is left out but what follows."""
    before = next((m for m in reversed(marks[max(0, place - 3) : place]) if m.kind is not Kind.FILL), None)
    whole = marks[place].text.split(" ")[0] in ("everything", "all")
    led = before is not None and before.kind is Kind.SKIP
    return whole and (led or left_behind(marks, place) is not None)


def left_behind(marks: Sequence[Mark], place: int) -> int | None:
    """The place of what skips behind the names that are kept: `everything bar the rows got skipped`; else none."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.NAME, Kind.WEAK, Kind.AND, Kind.FILL, Kind.WAS):
        at += 1
    named = any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[place + 1 : at])
    skips = at < len(marks) and marks[at].kind in (Kind.SKIP, Kind.SKIPPED)
    return at if named and skips else None


def heads_for_another(marks: Sequence[Mark], place: int) -> bool:
    """`chins only, so no pressing: 8 7 7`: the sets behind a name that is denied are of the one named before, alone."""
    denied = any(m.kind is Kind.NO for m in marks[max(0, place - 2) : place])
    if not denied:
        return False
    before = next((i for i in range(place - 1, -1, -1) if marks[i].kind is Kind.NAME), None)
    if before is None or marks[before].names == marks[place].names:
        return False
    told = any(m.kind in _TOLD for m in marks[before:place])
    return not told and any(m.text in _ALONE for m in marks[max(0, before - 2) : before + 3])


_TOLD = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED)
_ALONE = ("only", "just", "today")
