"""A load whose words stand in its way: `24kg dumbbells x 10, 9`, `7 weighted 5kg`, `13+4+4+3 at 25`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark

_UNITS = (Kind.KG, Kind.LB)
_WEIGHED = (*_UNITS, Kind.S)
_SIGNS = (Kind.PLUS, Kind.ADDED)
_ENDS = (None, *EDGES, Kind.RPE, Kind.RIR, Kind.AT, Kind.CLOSE)
_COUNTS = (Kind.NUM, Kind.REPS)
_WORDS = 2
"""Words between a load and its repetitions, bells of a pair, and numbers of a list's entry."""


def load_words(marks: list[Mark]) -> list[Mark]:
    """The marks without what was held between its weight and the `x`, and with added loads at their repetitions."""
    return _minis_last(
        _minis_apart(
            _added_before(_added_behind(_without_things(_helped(_told_once(_each_last(_belted(_worn(marks))))))))
        )
    )


def _worn(marks: list[Mark]) -> list[Mark]:
    """`vest on (5kg) so +5 x 7`, `5kg vest on, chins 7`, `belt with a five on, 8 chins`: what it weighs, then it."""
    out = list(marks)
    for place in range(len(marks)):
        vest = kind_at(out, place) is Kind.ADDED and out[place].text.split(" ")[-1] in _KIT
        belt = text_at(out, place) in _KIT and kind_at(out, place) is Kind.FILL
        if not (vest or belt):
            continue
        at = place + 1
        while (
            text_at(out, at) in ("on", "at", "with", "a", "with a", "is", "was", "and", "the", "of")
            or kind_at(out, at) is Kind.OPEN
        ):
            at += 1
        end = at + 1 + (kind_at(out, at + 1) in _UNITS)
        hung = text_at(out, end) == "on" and (kind_at(out, end + 1) in _ENDS or text_at(out, end + 1) == "it")
        if kind_at(out, at) is Kind.NUM and (
            hung or (end > at + 1 and at > place + 1)
            if belt
            else end > at + 1 and kind_at(out, place - 1) is not Kind.NUM
        ):
            behind = end + hung + (text_at(out, end + hung) == "it")
            behind += kind_at(out, behind) is Kind.CLOSE
            signed = [text_at(out, behind), kind_at(out, behind + 1)] == ["so", Kind.PLUS]
            again = signed and kind_at(out, behind + 2) is Kind.NUM and out[behind + 2].value == out[at].value
            added = replace(out[place], kind=Kind.ADDED, text="added")
            load = [] if again else [*out[at:end], added]
            return [*out[:place], *load, *out[behind + again :]]
        if vest and text_at(out, place + 1) == "on" and kind_at(out, place - 1) in (*_UNITS, Kind.NUM):
            return [*out[: place + 1], *out[place + 2 :]]
    return out


_KIT = ("belt", "vest")


def _belted(marks: list[Mark]) -> list[Mark]:
    """`150x3 @8.5 with belt`: behind a set with its load the belt is what was worn, or where that load hung."""
    out: list[Mark] = []
    paired = False
    for place, mark in enumerate(marks):
        paired = paired and mark.kind is not Kind.NAME and mark.kind not in EDGES
        ends = mark.kind is Kind.NUM and kind_at(marks, place - 1) is Kind.X
        paired = paired or (ends and kind_at(marks, place - 2) is Kind.NUM)
        worn = paired and mark.kind is Kind.ADDED and mark.text.endswith("belt")
        out.append(replace(mark, kind=Kind.FILL) if worn else mark)
    return out


def _helped(marks: list[Mark]) -> list[Mark]:
    """`assist 20kg 8 reps, with 15 only 5`: help, as told before it in the sentence; `assist 20x8 assist 15x6`."""
    out: list[Mark] = []
    helped: Mark | None = None
    leads = False
    for place, mark in enumerate(marks):
        if mark.kind is Kind.ASSIST and leads and kind_at(marks, place - 1) is kind_at(marks, place + 1) is Kind.NUM:
            out.append(replace(mark, kind=Kind.COMMA, text=",", end=mark.start))
        leads = leads or (mark.kind is Kind.ASSIST and kind_at(marks, place - 1) not in (Kind.NUM, *_UNITS))
        out.append(mark)
        helped = None if mark.kind in (Kind.STOP, Kind.LINE, Kind.NAME) else helped
        if helped is not None and mark.kind is Kind.NUM and kind_at(marks, place - 1) is Kind.WITH:
            at = past(marks, place + 1, Kind.FILL, Kind.COMMA)
            if at > place + 1 and kind_at(marks, at) is Kind.NUM:
                out.append(replace(helped, start=mark.end, end=mark.end))
        helped = mark if mark.kind is Kind.ASSIST else helped
    return out


def _told_once(marks: list[Mark]) -> list[Mark]:
    """`no assist!! bw x 6`: body weight, in two wordings."""
    out: list[Mark] = []
    for mark in marks:
        kept = len(out)
        while kept and out[kept - 1].kind in (Kind.STOP, Kind.COMMA, Kind.FILL, Kind.COLON):
            kept -= 1
        if mark.kind is Kind.BODY and kept and out[kept - 1].kind is Kind.BODY:
            del out[kept - 1 :]
        out.append(mark)
    if len(out) > 2 and out[-1].kind is Kind.BODY and out[-2].kind is Kind.COMMA and out[-3].kind in _COUNTS:
        told = sum(m.kind is Kind.BODY for m in out) > 1 and not any(m.kind in (Kind.STOP, Kind.LINE) for m in out)
        out = out[:-2] if told else out
    return out


def _without_things(marks: list[Mark]) -> list[Mark]:
    """`24kg dumbbells x 10, 9` as `24kg x 10, 9`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.X and kind_at(marks, place + 1) is Kind.NUM:
            kept = len(out)
            while kept and len(out) - kept < _WORDS and out[kept - 1].kind is Kind.FILL:
                kept -= 1
            if kept > 1 and out[kept - 1].kind in _WEIGHED and out[kept - 2].kind is Kind.NUM:
                both = kept > 2 and out[kept - 3].kind is Kind.NUM and out[kept - 3].value == _WORDS
                del out[kept:]
                if both:
                    out[-3] = replace(out[-3], kind=Kind.PAIR, value=None, parts=())
        out.append(mark)
    return out


def _each_last(marks: list[Mark]) -> list[Mark]:
    """`7.5 each arm x 14` as `7.5 x 14 each arm`, where no sets are counted: `10 each x 3`."""
    out: list[Mark] = []
    for mark in marks:
        out.append(mark)
        many = mark.kind is Kind.NUM and mark.value is not None and mark.value > FEW_SETS
        if many and [m.kind for m in out[-4:-1]] == [Kind.NUM, Kind.EACH, Kind.X]:
            out.append(replace(out.pop(-3), start=mark.end, end=mark.end))
    return out


def _added_behind(marks: list[Mark]) -> list[Mark]:
    """`7 reps weighted 5kg` as `7 reps at +5kg`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if _is_added_behind(marks, place):
            out.append(replace(mark, kind=Kind.AT, text="at", end=mark.start))
        out.append(mark)
    return out


def _is_added_behind(marks: Sequence[Mark], place: int) -> bool:
    """Whether an added load that starts here ends its part, behind repetitions without a load."""
    body = marks[place].kind is Kind.BODY
    sign = place + body
    number = sign + 1
    if kind_at(marks, sign) not in _SIGNS or kind_at(marks, number) is not Kind.NUM or not place:
        return False
    if not body and (marks[place].kind is Kind.PLUS or kind_at(marks, place - 1) is Kind.PLUS):
        return False
    start = max((i + 1 for i in range(place) if marks[i].kind in (Kind.LINE, Kind.STOP, Kind.COLON)), default=0)
    loaded = any(m.kind in (Kind.X, Kind.AT, Kind.WITH, Kind.FOR, Kind.BODY, *_WEIGHED) for m in marks[start:place])
    end = number + 1 + (kind_at(marks, number + 1) in _UNITS)
    return kind_at(marks, place - 1) in _COUNTS and not loaded and kind_at(marks, end) in _ENDS


def _added_before(marks: list[Mark]) -> list[Mark]:
    """`5kg added 7/6/5` as `5kg added: 7/6/5`: what is added is told before."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        out.append(mark)
        weighed = mark.kind is Kind.ADDED and [m.kind for m in out[-3:-1]] in [[Kind.NUM, unit] for unit in _UNITS]
        if weighed and kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) not in _UNITS:
            out.append(replace(mark, kind=Kind.COLON, text=":", start=mark.end))
    return out


def _minis_apart(marks: list[Mark]) -> list[Mark]:
    """The `(4,4,3)` of `25x13 (4,4,3)`, number by number."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        bracketed = kind_at(marks, place - 1) is Kind.OPEN and kind_at(marks, place + 1) is Kind.CLOSE
        if mark.kind is Kind.NUM and len(mark.parts) > 1 and bracketed and kind_at(marks, place - 2) is Kind.NUM:
            out += [replace(mark, text=str(part), value=part, parts=()) for part in mark.parts]
        else:
            out.append(mark)
    return out


def _minis_last(marks: list[Mark]) -> list[Mark]:
    """`13 + 4 + 4 + 3 at 25` as `25: 13 + 4 + 4 + 3`."""
    for place in range(len(marks) - 2, 0, -1):
        if marks[place].kind not in (Kind.AT, Kind.WITH) or marks[place + 1].kind is not Kind.NUM:
            continue
        start = place - 1
        while kind_at(marks, start) is Kind.NUM and kind_at(marks, start - 1) is Kind.PLUS:
            start -= 2
        end = place + 2 + (kind_at(marks, place + 2) in _WEIGHED)
        free = kind_at(marks, start - 1) in (None, Kind.NAME, Kind.COLON, Kind.FILL, *EDGES)
        listed = place - 1 - start >= 2 * _WORDS and kind_at(marks, start) is Kind.NUM
        if listed and free and kind_at(marks, end) in _ENDS:
            colon = replace(marks[place], kind=Kind.COLON, text=":")
            return [*marks[:start], *marks[place + 1 : end], colon, *marks[start:place], *marks[end:]]
    return marks
