"""Sides before their numbers, or after them."""

from dataclasses import replace

from bot.notation.clauses import mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import TAILS, is_number
from bot.notation.tokens import Mark

_REACHING = (Kind.COLON, Kind.DASH, Kind.WAS)
"""Kinds between a side and its number: `right was 11`."""
_WEIGHED = (Kind.KG, Kind.LB, Kind.S, Kind.HAND, Kind.TOTAL)
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
    numbered = is_number(after) or (after is not None and after.kind in _REACHING)
    follows = before is not None and (is_number(before) or before.kind in TAILS)
    last = next((p for p in reversed(places) if any(_beside(marks, p))), places[-1])
    end = mark_at(marks, last + 1)
    counted = mark_at(marks, last + 2)
    counts = counted is not None and counted.kind in (Kind.SETS, Kind.TIMES)
    trailing = end is None or counts or not (is_number(end) or end.kind in _REACHING) or _is_load(marks, last + 1)
    is_post = follows and (not numbered or (trailing and len(places) > 1) or marks[first].tight)
    out = []
    for place, mark in enumerate(marks):
        led, reaches = _beside(marks, place)
        if place in places and is_post and not led and (reaches or _rates(marks, place)):
            out.append(mark)
        elif place in places and is_post and not led:
            out.append(replace(mark, kind=Kind.GAP))
        elif place in places and is_post:
            kind = Kind.LEFTPOST if mark.kind is Kind.LEFT else Kind.RIGHTPOST
            out.append(replace(mark, kind=kind))
        else:
            out.append(mark)
    return out


def _is_load(marks: list[Mark], place: int) -> bool:
    """Whether a load is told from here on: the `16s` of `10 left 9 right 16s`, the `- at 16` of `9 right - at 16`."""
    mark = mark_at(marks, place)
    at = place + (mark is not None and mark.kind is Kind.DASH)
    led, after = mark_at(marks, at), mark_at(marks, at + 1)
    if led is not None and led.kind in (Kind.AT, Kind.WITH):
        return True
    return is_number(led) and after is not None and after.kind in _WEIGHED


def _beside(marks: list[Mark], place: int) -> tuple[bool, bool]:
    """Whether a side stands behind its number, and before one; neither in `the left was always the weak one`."""
    before, after = mark_at(marks, place - 1), mark_at(marks, place + 1)
    led = before is not None and (is_number(before) or before.kind in (*TAILS, *_RATINGS))
    near = is_number(after) or (after is not None and after.kind in _REACHING and is_number(mark_at(marks, place + 2)))
    return led, near


def _rates(marks: list[Mark], place: int) -> bool:
    """Whether an effort follows a side whose number is told already: `10 left, 9 right, right was to failure`."""
    at = place + 1
    while (after := mark_at(marks, at)) is not None and after.kind in (Kind.WAS, Kind.COLON, Kind.GAP):
        at += 1
    return after is not None and after.kind in (Kind.EMPTY, Kind.COULD, Kind.RPE, Kind.RIR, Kind.FAILED)
