"""Sides before their numbers, or after them."""

from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import TAILS, is_number, mark_at
from bot.notation.tokens import Mark

_RATINGS = (Kind.TANK, Kind.EMPTY, Kind.RPEPOST, Kind.RIRPOST, Kind.ORD, Kind.LASTREP)


def sides(marks: list[Mark], two_sided: bool) -> list[Mark]:
    """Sides before their numbers, or after: whichever the first one is holds for the message."""
    places = [i for i, m in enumerate(marks) if m.kind in (Kind.LEFT, Kind.RIGHT)]
    if not places:
        return marks
    if not two_sided:
        return [replace(m, kind=Kind.GAP) if m.kind in (Kind.LEFT, Kind.RIGHT) else m for m in marks]
    first = places[0]
    before, after = mark_at(marks, first - 1), mark_at(marks, first + 1)
    numbered = is_number(after) or (after is not None and after.kind in (Kind.COLON, Kind.DASH))
    follows = before is not None and (is_number(before) or before.kind in TAILS)
    end = mark_at(marks, places[-1] + 1)
    trailing = end is None or not (is_number(end) or end.kind in (Kind.COLON, Kind.DASH))
    is_post = follows and (not numbered or (trailing and len(places) > 1) or marks[first].tight)
    out = []
    for place, mark in enumerate(marks):
        if place in places and is_post and _stands_alone(marks, place):
            out.append(replace(mark, kind=Kind.GAP))
        elif place in places and is_post:
            kind = Kind.LEFTPOST if mark.kind is Kind.LEFT else Kind.RIGHTPOST
            out.append(replace(mark, kind=kind))
        else:
            out.append(mark)
    return out


def _stands_alone(marks: list[Mark], place: int) -> bool:
    """Whether a side has no number beside it, as in `the left was always the weak one`."""
    before, after = mark_at(marks, place - 1), mark_at(marks, place + 1)
    led = before is not None and (is_number(before) or before.kind in (*TAILS, *_RATINGS))
    reaches = is_number(after) or (after is not None and after.kind in (Kind.COLON, Kind.DASH))
    return not led and not reaches
