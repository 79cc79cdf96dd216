"""What a client dictates as it is said: signs by their names, and a load that runs into how many sets there were.

`five comma five full stop` is a list and its end, `are deals` are `rdls`; `sixty three sets of eight` is three sets at
60, for nobody does sixty-three sets of anything; `twenty three times` is three times 20.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import FEW_SETS, MOST_LEFT, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS, TENS, UNITS
from bot.notation.tokens import Mark

_COMMAS = ("comma", "komma")
_PAIRS = {("full", "stop"): Kind.STOP, ("new", "line"): Kind.LINE, ("next", "line"): Kind.LINE}
_INITIALS = {(one, two): "rdls" for one in ("are", "our", "r", "ar") for two in ("deals", "dls", "dl", "deal")}
"""Initials as dictation writes them."""
_SIGNS = frozenset((*_COMMAS, *(first for first, _ in (*_PAIRS, *_INITIALS))))
"""Words that such a name begins with."""
_LEAST = 20
"""The lightest load that runs into a count by dictation (`sixty eight three sets`); of one behind a hundred, half."""


def spoken_signs(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a sign in place of its name: a comma between numbers, the end of a sentence or a line."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        if mark.text not in _SIGNS:
            out.append(mark)
            at += 1
            continue
        both = mark.text, text_at(marks, at + 1)
        pair = _PAIRS.get(both)
        if pair is not None and mark.kind is Kind.WORD and (out or kind_at(marks, at + 2) is not None):
            out.append(replace(mark, kind=pair, text="." if pair is Kind.STOP else "\n", end=marks[at + 1].end))
            at += 2
            continue
        initials = _INITIALS.get(both)
        if initials is not None and (not out or out[-1].kind is not Kind.WORD or _is_counted(out[-1])):
            out.append(replace(mark, text=initials, end=marks[at + 1].end))
            at += 2
            continue
        listed = mark.text in _COMMAS and out and _is_counted(out[-1]) and not _is_tenth(marks, at + 1)
        out.append(replace(mark, kind=Kind.COMMA, text=",") if listed else mark)
        at += 1
    return out


def _is_counted(mark: Mark) -> bool:
    return mark.kind is Kind.NUM or mark.text in NUMBER_WORDS or mark.text in ("reps", "each", "side", "leg", "arm")


def _is_tenth(marks: Sequence[Mark], at: int) -> bool:
    """`seventy two comma five for ten`, `rpe 8 comma 5`: a decimal, before what only a load has behind it, or rated."""
    rated = text_at(marks, at - 3) in ("rpe", "rir", "@") and text_at(marks, at) in ("five", "5")
    return rated or (text_at(marks, at) in ("five", "5", "25", "75") and text_at(marks, at + 1) in _AFTER_LOAD)


_AFTER_LOAD = ("for", "kilos", "kg", "by", "x", "kilo", "pounds")


def run_together(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with numbers that ran together apart, and those that fell apart together.

    `ten at seventy nine at seventy` is ten, then nine; `the first real set two seventy five for five` is 275;
    `eight reps left two in there` is eight repetitions, with two left.
    """
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, after = marks[at], kind_at(marks, at + 1)
        if after is Kind.TANK and _holds_left(mark):
            out += _cut_last(mark)
            at += 1
            continue
        if after is not Kind.NUM and after is not Kind.AT:
            out.append(mark)
            at += 1
            continue
        parts = mark.text.split()
        listed = [kind_at(marks, at + n) for n in (-2, -1, 1, 2)] == [Kind.NUM, Kind.AT, Kind.AT, Kind.NUM]
        hundred = (
            mark.kind is Kind.NUM and kind_at(marks, at - 1) is Kind.WORKSET and UNITS.get(mark.text, 0) in _HUNDREDS
        )
        whole = hundred and after is Kind.NUM and kind_at(marks, at + 2) in (Kind.FOR, Kind.X)
        left = mark.text == "reps left" and kind_at(marks, at - 1) is Kind.NUM and after is Kind.NUM
        if mark.kind is Kind.NUM and listed and len(parts) == SEVERAL and parts[0] in TENS and parts[1] in UNITS:
            cut = mark.start + len(parts[0])
            out.append(replace(mark, text=parts[0], value=TENS[parts[0]], end=cut))
            out.append(replace(mark, text=parts[1], value=UNITS[parts[1]], start=cut + 1))
        elif whole and _LEAST / 2 <= (marks[at + 1].value or 0) < 100 and not marks[at + 1].text.isdigit():
            value = UNITS[mark.text] * 100 + (marks[at + 1].value or 0)
            text = f"{mark.text} {marks[at + 1].text}"
            out.append(replace(mark, text=text, value=value, end=marks[at + 1].end))
            at += 1
        elif left and mark.kind is Kind.TANK and (marks[at + 1].value or 0) <= MOST_LEFT and _is_inside(marks, at + 2):
            two = marks[at + 1]
            out.append(replace(mark, kind=Kind.REPS, text="reps"))
            out.append(replace(mark, kind=Kind.COMMA, text=",", start=mark.end))
            out += [two, replace(mark, text="left", start=two.end, end=two.end)]
            at += 1
        else:
            out.append(mark)
        at += 1
    return out


def _holds_left(mark: Mark) -> bool:
    """Whether a number of `a hundred and fifty one left in the tank` is two: nobody has so many left."""
    parts = mark.text.split()
    many = mark.kind is Kind.NUM and (mark.value or 0) > MOST_LEFT
    return many and len(parts) >= SEVERAL and 0 < UNITS.get(parts[-1], 0) <= MOST_LEFT


def _cut_last(mark: Mark) -> list[Mark]:
    """A spoken number without its last word, and that."""
    head, last = mark.text.rsplit(maxsplit=1)
    less = UNITS[last]
    return [
        replace(mark, text=head, value=(mark.value or 0) - less, parts=(), end=mark.start + len(head)),
        replace(mark, text=last, value=UNITS[last], parts=(), start=mark.end - len(last), tight=False),
    ]


_HUNDREDS = range(1, 10)


def _is_inside(marks: Sequence[Mark], at: int) -> bool:
    """`in there`, `in me`, or the end."""
    return kind_at(marks, at) in (None, Kind.STOP, Kind.COMMA, Kind.TANK) or text_at(marks, at) in (
        "in",
        "in there",
        "in me",
    )


def without_opening(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a `right` that opens what is told as talk: `right, three sets of eight each`, no right side."""
    if not any(m.kind is Kind.RIGHT and m.text == "right" for m in marks) or any(m.kind in _LEFT for m in marks):
        return list(marks)
    out = list(marks)
    for place, mark in enumerate(marks):
        opens = place == 0 or marks[place - 1].kind in (Kind.LINE, Kind.STOP)
        if mark.text != "right" or mark.kind is not Kind.RIGHT or not opens:
            continue
        end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in (Kind.LINE, Kind.STOP)), len(marks))
        said = marks[place + 1 : end]
        talks = kind_at(marks, place + 1) in (Kind.NAME, Kind.WEAK, Kind.COMMA, Kind.STOP, Kind.THEN)
        talks = talks or text_at(marks, place + 1) in ("so", "the", "then", "i", "ok", "okay", "well", "did")
        listed = any(m.kind is Kind.EACH for m in said) or sum(m.kind is Kind.NUM for m in said) > _PAIR
        if talks or listed or any(m.kind is Kind.SETS for m in said):
            out[place] = replace(mark, kind=Kind.FILL)
    return out


_OPENS = (None, Kind.FILL, Kind.LINE, Kind.STOP, Kind.RIGHT)
_LEFT = (Kind.LEFT, Kind.L, Kind.LEFTPOST)
_PAIR = 2
"""Numbers that one side may be told with: its load and its count."""


def sets_apart(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with a dictated load and its number of sets as two numbers; the `plus` that opens a part is a sign."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            out.append(mark)
            continue
        if text_at(marks, place - 1) == "plus" and kind_at(marks, place - 2) in _OPENS:
            out[-1] = replace(out[-1], text="+")
            out.append(replace(mark, tight=True))
            continue
        words = mark.text.split()
        count = UNITS.get(words[-1]) if words and mark.value is not None else None
        times = text_at(marks, place + 1) == "times" and kind_at(marks, place + 2) is not Kind.NUM
        told = kind_at(marks, place + 1) is Kind.SETS or (times and len(words) > 1 and words[-2] in TENS)
        run = count is not None and len(words) > 1 and told
        if count is None or not run or mark.value is None or not SEVERAL <= count <= FEW_SETS or mark.value < _LEAST:
            out.append(mark)
            continue
        cut = mark.end - len(words[-1])
        load = " ".join(words[:-1])
        out.append(replace(mark, text=load, end=cut, value=mark.value - count, parts=()))
        out.append(replace(mark, text=words[-1], start=cut, tight=False, value=Decimal(count), parts=()))
    return out
