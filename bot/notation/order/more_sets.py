"""More sets, counted before their numbers: `2 more: 11, 10`, `another two at 140`, `25 12s across`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS, counted_sets, past_fill, whole_number
from bot.notation.order.steps import step
from bot.notation.tokens import Mark

_HEADS = (Kind.COLON, Kind.COMMA, Kind.AT, Kind.WITH, Kind.DASH)
_NOT_NEW = (Kind.COULD, Kind.X, Kind.FOR, Kind.RIR, Kind.RPE, Kind.KG, Kind.LB, Kind.REPS, Kind.NUM, Kind.NO)


def _plurals(marks: list[Mark]) -> list[Mark]:
    """`25 12s across the board`: so many repetitions in each."""
    out = list(marks)
    for place in range(1, len(marks) - 2):
        behind = kind_at(marks, past_fill(marks, place + 2)) is Kind.ALL
        led = kind_at(marks, place - 1) in (Kind.NUM, *UNITS)
        if [kind_at(marks, place), kind_at(marks, place + 1)] == [Kind.NUM, Kind.S] and behind and led:
            out[place + 1] = replace(marks[place + 1], kind=Kind.REPS)
    return out


_MOST_ANOTHER = 3
"""Sets: `another 5 at 80` is rather five repetitions."""


def _more(marks: list[Mark]) -> list[Mark]:
    """`2 more: 11, 10`, `another 2 at 140`: so many sets, whose numbers follow."""
    out = list(marks)
    for place in range(len(marks)):
        if whole_number(out, place, 1, FEW_SETS) is None:
            continue
        another = place > 0 and out[place - 1].kind is Kind.ANOTHER and out[place - 1].text == "another"
        another = another and (out[place].value or 0) <= _MOST_ANOTHER
        more = kind_at(out, place + 1) is Kind.MORE and out[place + 1].text in ("more", "extra")
        if not (another or more):
            continue
        at = place - 1 - another
        while kind_at(out, at) is Kind.FILL:
            at -= 1
        end = past_fill(out, place + 1 + more)
        done = kind_at(out, end) is Kind.DONE
        end = past_fill(out, end + done)
        heads = kind_at(out, end) in _HEADS and kind_at(out, past_fill(out, end + 1)) in (Kind.NUM, Kind.SIGN)
        if kind_at(out, at) in _NOT_NEW or not heads or _is_effort(out, end):
            continue
        if more:
            out[place + 1] = counted_sets(out[place + 1])
        else:
            out[place - 1] = replace(out[place - 1], kind=Kind.FILL)
            out[place] = replace(out[place], end=out[place].end)
            out.insert(place + 1, replace(counted_sets(out[place]), start=out[place].end))
        for index in range(place + 2, end):
            if out[index].kind is Kind.DONE:
                out[index] = replace(out[index], kind=Kind.FILL)
        return out
    return out


def _one_more(marks: list[Mark]) -> list[Mark]:
    """`5 more with the same bar`, `5 more, rpe 8`: one more set of so many, where its load or its effort is told."""
    at = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), len(marks))
    opened = marks[:at]
    more = kind_at(marks, at + 1) is Kind.MORE and all(m.kind in _OPENING for m in opened)
    end = at + 2 + (kind_at(marks, at + 2) is Kind.REPS)
    while kind_at(marks, end) in (Kind.FILL, Kind.COMMA, Kind.STOP):
        end += 1
    loaded = kind_at(marks, end) is Kind.SAMELOAD or Kind.SAMELOAD in {m.kind for m in opened}
    held = kind_at(marks, end) in (Kind.WITH, Kind.AT) and text_at(marks, end + 1) in (
        "that",
        "it",
        "bar",
        "same",
        "this",
    )
    rated = kind_at(marks, end) is Kind.RPE or text_at(marks, end) == "@"
    if not more or not (loaded or held or rated):
        return marks
    another = replace(marks[at + 1], kind=Kind.ANOTHER, text="another", start=marks[at].start, end=marks[at].start)
    gone = [replace(m, kind=Kind.FILL) for m in marks[end : end + 2]] if held else marks[end : end + 2]
    return [*marks[:at], another, marks[at], *marks[at + 2 : end], *gone, *marks[end + 2 :]]


_OPENING = (Kind.FILL, Kind.NAME, Kind.WEAK, Kind.SAMELOAD, Kind.COMMA, Kind.AND, Kind.THEN, Kind.STOP, Kind.COLON)


def _is_effort(marks: Sequence[Mark], link: int) -> bool:
    """Whether what follows a link counts repetitions that were left: `2 more, 1 left`."""
    after = kind_at(marks, past_fill(marks, link + 1) + 1)
    return after in (Kind.TANK, Kind.LEFT, Kind.RPEPOST, Kind.RIRPOST)


MORE_SETS = (
    step(_one_more, (Kind.MORE,)),
    step(_more, (Kind.ANOTHER, Kind.MORE)),
    step(_plurals, (Kind.S,), (Kind.ALL,)),
)
"""The steps that make each such number one of sets."""
