"""Words around a number that change nothing of it: `140 for the next 8`, `5 @ 9 with 120 on`, `both kilos`.

All become the plain words that the other rooms know: `140 for 8`, `with 120`, `all in kilos`; `bodyweight only. 9, 8`
heads the list behind it.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_UNITS = (Kind.KG, Kind.LB)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.CLOSE)
_BOTH = ("both", "both of them", "all of it", "all of them", "for both", "both sets", "throughout")
_BARE = (("nothing", "hanging"), ("nothing", "hung"), ("nothing", "hanging off"), ("nothing", "added"))
NEEDS = frozenset(words("next on both all throughout hanging hung added plates only bodyweight bw just"))


def with_plain_words_around(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such words put plainly."""
    out = list(marks)
    for place in range(len(out) - 1, -1, -1):
        kind = out[place].kind
        next_one = kind is Kind.THEN and out[place].text == "next" and _counts_next(out, place)
        if (
            next_one
            or (kind is Kind.AT and out[place].text == "on" and _ends_load(out, place))
            or _is_of_somebody(out, place)
        ):
            out[place] = replace(out[place], kind=Kind.FILL)
        elif kind is Kind.PLATES and text_at(out, place - 1) == "on the" and _ends_load(out, place - 1):
            out[place - 1 : place + 1] = [replace(m, kind=Kind.FILL) for m in out[place - 1 : place + 1]]
        elif kind in _UNITS:
            _say_for_all(out, place)
        elif kind in (Kind.ADDED, Kind.PLATES, Kind.BODY):
            _head_with_body(out, place)
    return out


def _is_of_somebody(marks: Sequence[Mark], place: int) -> bool:
    """The `both` of `congratulations to you both`, the `all` of `all my strength left me`: of no sets."""
    if marks[place].text == "both":
        return text_at(marks, place - 1).split()[-1:] == ["you"]
    mine = marks[place].text == "all" and text_at(marks, place + 1) == "my"
    return mine and kind_at(marks, place + 2) is Kind.WORD


def _counts_next(marks: Sequence[Mark], place: int) -> bool:
    """`140 for the next 8`: the repetitions of the set with that load."""
    the = text_at(marks, place - 1) == "the"
    linked = kind_at(marks, place - 1 - the) is Kind.FOR
    loaded = kind_at(marks, place - 2 - the) in (Kind.NUM, *_UNITS)
    ends = kind_at(marks, place + 2) in (*_ENDS, Kind.REPS, Kind.AND, Kind.THEN)
    return linked and loaded and kind_at(marks, place + 1) is Kind.NUM and ends


def _ends_load(marks: Sequence[Mark], place: int) -> bool:
    """`5 @ 9 with 120 on`: the load that was on."""
    number = place - 1 - (kind_at(marks, place - 1) in _UNITS)
    led = kind_at(marks, number - 1) is Kind.WITH and kind_at(marks, number) is Kind.NUM
    end = place + 1 + (kind_at(marks, place + 1) is Kind.PLATES)
    return led and kind_at(marks, end) in _ENDS and kind_at(marks, number - 3) in (Kind.AT, Kind.RPE)


def _say_for_all(marks: list[Mark], place: int) -> None:
    """`both kilos`, `kilos both`, `both in kg`, `kilos for both`: all in kilos."""
    if kind_at(marks, place - 1) is Kind.NUM:
        return
    start, end = place, place + 1
    while text_at(marks, start - 1) in ("in", "were", "are"):
        start -= 1
    before = text_at(marks, start - 1) in _BOTH
    while not before and text_at(marks, end) in ("for", "on"):
        end += 1
    behind = not before and text_at(marks, end) in _BOTH
    start, end = start - before, end + behind
    apart = kind_at(marks, start - 1) in (*_ENDS, Kind.NUM, Kind.REPS) and kind_at(marks, end) in _ENDS
    if not (before or behind) or not apart:
        return
    unit, first = marks[place], marks[start]
    every = Mark(Kind.ALL, "all", first.start, first.start)
    led = Mark(Kind.FILL, "in", first.start, first.start)
    comma = [] if kind_at(marks, start - 1) in _ENDS else [Mark(Kind.COMMA, ",", first.start, first.start)]
    marks[start:end] = [*comma, every, led, replace(unit, start=first.start, end=marks[end - 1].end)]


def _head_with_body(marks: list[Mark], place: int) -> None:
    """`nothing hanging off me: 8, 6`, `no plates. 10, 9`, `bodyweight only. 7 then 6`: heads a list."""
    mark, start, end = marks[place], place, place + 1
    if mark.kind is not Kind.BODY:
        if text_at(marks, place - 1) not in ("nothing", "no") or (
            mark.kind is Kind.PLATES and not _is_alone(marks, place)
        ):
            return
        start -= 1
        while text_at(marks, end) in ("off", "me", "off me", "on", "on me"):
            end += 1
    if kind_at(marks, end) not in (Kind.STOP, Kind.COLON, Kind.COMMA) or kind_at(marks, end + 1) is not Kind.NUM:
        return
    if marks[end].kind is Kind.COMMA and mark.kind is not Kind.ADDED:
        return
    counted = kind_at(marks, end + 2) in (Kind.COMMA, Kind.THEN, Kind.AND, Kind.SLASH) or marks[end + 1].parts
    if not counted:
        return
    marks[end] = replace(marks[end], kind=Kind.COLON, text=":")
    body = replace(mark, kind=Kind.BODY, text="bodyweight", start=marks[start].start, end=marks[end - 1].end)
    named = kind_at(marks, start - 1) is Kind.COMMA and kind_at(marks, start - 2) is Kind.NAME
    marks[start - named : end] = [body]


def _is_alone(marks: Sequence[Mark], place: int) -> bool:
    """Whether `no plates` ends what stands behind the one name of a message, and no number stands before it."""
    return not any(m.kind is Kind.NUM for m in marks[:place]) and marks[place].text in ("plates", "plate")
