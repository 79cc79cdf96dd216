"""Corrections inside a message that stand beside what they are of: in brackets, or of the effort that was told last."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import EASIEST, HARDEST, SEVERAL
from bot.notation.clauses import EDGES, is_entry
from bot.notation.corrections import mistyped, planned_other
from bot.notation.corrections.again import told_again
from bot.notation.corrections.idle import (
    LOADING,
    SIDES,
    WRONGLY,
    without_kept_counts,
    without_misloads,
    without_remarks,
    without_side_talk,
)
from bot.notation.corrections.mistyped import without_mistyped
from bot.notation.corrections.planned_other import with_own_numbers
from bot.notation.kinds import Kind
from bot.notation.order.repeats import SAMES, as_back_then
from bot.notation.order.steps import put_in_place, step
from bot.notation.tokens import Mark

_CUES = (Kind.MEANT, Kind.SORRY, Kind.NO)
_RATES = (Kind.RPE, Kind.RIR)


def with_set_apart(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such corrections put in plain order."""
    return put_in_place(marks, _STEPS)


def _told_whole_behind(marks: Sequence[Mark]) -> list[Mark]:
    """`140x11 hold on that was 150. 150x11`: what puts right, told once more as the whole set, is one set."""
    out = list(marks)
    if any(m.kind is Kind.MEANT for m in marks):
        marks = out = _called_again(out)
    if any(m.kind in (Kind.SORRY, Kind.NO) for m in marks):
        marks = out = _in_list(out)
    for place in range(len(marks) - 5):
        if marks[place].kind is not Kind.SORRY:
            continue
        kinds = [m.kind for m in marks[place : place + 6]]
        once = kinds[:3] == [Kind.SORRY, Kind.WAS, Kind.NUM] and kinds[3] in (Kind.STOP, Kind.COMMA, Kind.LINE)
        again = kinds[4:] == [Kind.NUM, Kind.X] and marks[place + 2].value == marks[place + 4].value
        if once and again:
            out[place + 1 : place + 4] = [replace(m, kind=Kind.FILL, value=None) for m in marks[place + 1 : place + 4]]
    return out


def _in_list(marks: list[Mark]) -> list[Mark]:
    """`10, 9 no wait 8, 8`: one number of a list put right, behind which the list goes on."""
    out = list(marks)
    at = 1
    while at < len(out) - 3:
        wrong = _wrong_at(out, at)
        if wrong is None:
            at += 1
        else:
            del out[wrong]
    return out


def _wrong_at(marks: Sequence[Mark], at: int) -> slice | None:
    """What was wrong of a list before the cue at a place, with the cue; `None` where no list is put right there."""
    cued = marks[at].kind is Kind.SORRY or (marks[at].kind is Kind.NO and marks[at].text == "no")
    if not cued or at < SEVERAL or marks[at - 2].kind in _RATES or marks[at - 2].text == "@":
        return None
    if at > SEVERAL and is_entry(marks, at - 3) and is_entry(marks, at + 1):
        return slice(at - 3, at + 1) if _goes_on(marks, at + 4) else None
    if marks[at - 2].kind not in (*_LISTING, Kind.COLON, Kind.NUM, Kind.X, Kind.FOR) or not _is_rep(marks[at - 1]):
        return None
    if is_entry(marks, at + 1) and _is_rep(marks[at + 3]):
        loads = [m for i, m in enumerate(marks[: at - 1]) if m.kind is Kind.NUM and _is_load(marks, i)]
        return slice(at - 1, at + 3) if loads and loads[-1].value == marks[at + 1].value else None
    near = _is_rep(marks[at + 1]) and _far(marks[at - 1], marks[at + 1]) <= _SLIP
    return slice(at - 1, at + 1) if near and _goes_on(marks, at + 2) else None


def _far(one: Mark, two: Mark) -> Decimal:
    """How far two counts lie from each other."""
    return abs((one.value or Decimal(0)) - (two.value or Decimal(0)))


def _goes_on(marks: Sequence[Mark], place: int) -> bool:
    """Whether a list of counts goes on here: no link of a load, no effort and no unit follows."""
    then = place + 1 < len(marks) and marks[place].kind is Kind.AND and marks[place + 1].kind is Kind.THEN
    end = place + 1 + then
    listed = end < len(marks) and marks[place].kind in _LISTING and _is_rep(marks[end])
    unlike = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.AT, *_RATES)
    return listed and (end + 1 >= len(marks) or marks[end + 1].kind not in unlike)


def _is_load(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number leads repetitions: by a link, a colon, or as the first of a list."""
    return marks[place + 1].kind in (Kind.X, Kind.FOR, Kind.COLON, Kind.KG, Kind.LB, Kind.NUM)


_LISTING = (Kind.COMMA, Kind.THEN, Kind.AND, Kind.SLASH)
_SLIP = 3
"""How far a count that was mistyped lies from what it was (common practice, no source)."""
_MOST_REPS = 40
"""A greater number of a list is a load (common practice, no source)."""


def _is_rep(mark: Mark) -> bool:
    whole = mark.kind is Kind.NUM and mark.value is not None and len(mark.parts) < SEVERAL
    return whole and mark.value is not None and mark.value == int(mark.value) and 0 < mark.value <= _MOST_REPS


def _called_again(marks: list[Mark]) -> list[Mark]:
    """`10, 8 and that 8 should say 9`, `60x5. that 60 should be 62.5`: the number just told, called by its value."""
    for place in range(2, len(marks) - 2):
        if marks[place + 1].kind is not Kind.MEANT or marks[place + 2].kind is not Kind.NUM:
            continue
        if marks[place].kind is not Kind.NUM or marks[place - 1].text not in ("that", "the", "that last", "the last"):
            continue
        told = place - 2
        while told > 0 and marks[told].kind in (Kind.AND, Kind.COMMA, Kind.STOP, Kind.REPS):
            told -= 1
        if marks[told].kind is Kind.NUM and marks[told].value == marks[place].value and not marks[told].parts[1:]:
            return [*marks[: told + 1], *marks[place + 1 :]]
        if _last_load(marks[:place]) == marks[place].value:
            return [*marks[:place], *marks[place + 1 :]]
    return marks


def _last_load(marks: Sequence[Mark]) -> Decimal | None:
    """The load of the set that is told last."""
    links = [i for i, m in enumerate(marks) if i and m.kind in (Kind.X, Kind.FOR) and marks[i - 1].kind is Kind.NUM]
    return marks[links[-1] - 1].value if links else None


def _out_of_brackets(marks: Sequence[Mark]) -> list[Mark]:
    """`100x5 100x4 (second was 6 sorry)`: as a sentence of its own."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.OPEN or not any(m.kind is Kind.NUM for m in marks[:place]):
            continue
        end = next((i for i in range(place, len(marks)) if marks[i].kind is Kind.CLOSE), len(marks))
        inside = marks[place + 1 : end]
        named = any(m.kind in (Kind.ORD, Kind.SET, Kind.LASTSET) for m in inside)
        told = any(m.kind is Kind.WAS for m in inside) and any(m.kind is Kind.NUM for m in inside)
        if named and told:
            out[place] = replace(mark, kind=Kind.STOP)
            if end < len(marks):
                out[end] = replace(marks[end], kind=Kind.STOP)
    return out


def _rated_again(marks: Sequence[Mark]) -> list[Mark]:
    """`rpe 7 make that 8`, `rpe 8, actually more like 9`: the number behind the cue is an effort too."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        out.append(marks[at])
        at += 1
        if out[-1].kind not in _CUES:
            continue
        rate = _rate_before(out, len(out) - 1)
        number = at
        while number < len(marks) and (marks[number].kind in (Kind.FILL, Kind.MORE, Kind.COMMA, Kind.WAS)):
            number += 1
        if rate is not None and _is_alone(marks, number) and _is_scale(marks[number], rate):
            said = marks[number]
            out[-1] = replace(out[-1], kind=Kind.SORRY if out[-1].kind is Kind.NO else out[-1].kind)
            out += [replace(rate, start=said.start, end=said.start), said]
            at = number + 1
    return out


def _rate_before(marks: Sequence[Mark], place: int) -> Mark | None:
    """The word of the effort whose number is told last before a place."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.COMMA, Kind.STOP, Kind.SORRY):
        at -= 1
    rated = at > 0 and marks[at].kind is Kind.NUM
    if rated and marks[at - 1].text == "@" and EASIEST < (marks[at].value or 0) <= HARDEST:
        return replace(marks[at - 1], kind=Kind.RPE, text="rpe")
    return marks[at - 1] if rated and marks[at - 1].kind in _RATES else None


def _is_alone(marks: Sequence[Mark], place: int) -> bool:
    """Whether a bare number ends its part."""
    if place >= len(marks) or marks[place].kind is not Kind.NUM:
        return False
    after = marks[place + 1] if place + 1 < len(marks) else None
    return after is None or after.kind in (*EDGES, Kind.FILL, Kind.CLOSE)


def _is_scale(mark: Mark, rate: Mark) -> bool:
    value = mark.value
    if value is None:
        return False
    return EASIEST <= value <= HARDEST if rate.kind is Kind.RPE else value <= EASIEST


_STEPS = (
    step(as_back_then, SAMES),
    step(with_own_numbers, (Kind.NUM,), planned_other.NEEDS),
    step(without_kept_counts, (Kind.NOT, Kind.SORRY, Kind.MEANT, Kind.SCRAP, Kind.WAS)),
    step(without_remarks, (Kind.SORRY,)),
    step(without_misloads, (Kind.NUM,), LOADING, WRONGLY),
    step(without_side_talk, SIDES),
    step(_told_whole_behind, _CUES),
    step(without_mistyped, mistyped.NEEDS),
    step(told_again, (*_CUES, Kind.NOT, "before", "rather")),
    step(_out_of_brackets, (Kind.OPEN,)),
    step(_rated_again, _CUES),
)
"""Each with the kinds and the words without which it changes nothing."""
