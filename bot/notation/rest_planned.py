"""A session as planned but for what was told: `squats 60x5x3, everything else as planned`, `all of it as planned, bar
the rows, 40`.

What was otherwise is told first, and the rest of the session put at the end as planned: what is told, given up or
stored is none of it.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.context import LEAST, MOST
from bot.notation.exceptions.alike import BUT
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle

REST_PLANNED = "rest as planned"
"""What the sign says of what may be left of the exercise that was told last, else of the session."""
_WENT = (Kind.FILL, Kind.WAS, Kind.DONE, Kind.ALL)
_APART = frozenset((*EDGES, Kind.AND, Kind.THEN, Kind.DASH, Kind.OPEN, Kind.EXCEPT, Kind.PLUS))
_TOLD = (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB, Kind.EACH)
"""How a set may end: what stands behind it needs no comma."""
_OPEN_ENDS = (Kind.COMMA, Kind.AND, Kind.DASH, Kind.THEN, Kind.PLUS, Kind.EXCEPT)
_LEADING = frozenset(words("and with but so then plus did the my all of for while & also"))
_OF_LOADS = frozenset(words("for of"))
"""Words before the rest that may say what was lifted in it: `85 for the rest as planned`."""
_WHOLE = frozenset(words("everything session workout programme program day today exercise exercises stuff else"))
"""Words of what is of the session; `rest` and `others` may be of the exercise that was told last."""
_EVERYTHING = frozenset(words("everything session workout programme program lot thing"))
_OF_A_SET = (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.LABEL, Kind.SET, Kind.SETS)
"""What was otherwise of one set, which other rules put right behind the whole."""
_UNSAID = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH, Kind.FOR, Kind.COLON, Kind.COMMA)
_INSTEAD = frozenset(words("instead rather"))


def with_rest_planned(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with the rest of the session, or of the exercise told last, at their end."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.PLANNED:
            continue
        if (start := _rest(marks, place)) is not None:
            return _with_rest(marks, start, place, request)
        if _whole(marks, place):
            return _with_exceptions(marks, place, request)
    return list(marks)


def _rest(marks: Sequence[Mark], place: int) -> int | None:
    """Where the words start of what else there was, behind sets that are told; None where it is none."""
    at = place - 1
    while kind_at(marks, at) in _WENT and text_at(marks, at) not in ("everything", "others"):
        at -= 1
    other = kind_at(marks, at) is Kind.NUM and text_at(marks, at - 1) == "other"
    rest = kind_at(marks, at) is Kind.THEREST or text_at(marks, at) in ("everything", "others") or other
    at -= other
    if not rest or not any(m.kind is Kind.NUM for m in marks[:at]):
        return None
    rest_at = at
    while text_at(marks, at - 1) in _LEADING:
        at -= 1
    return at if _stands_apart(marks, at, rest_at) and _ends(marks, place) else None


def _stands_apart(marks: Sequence[Mark], start: int, rest: int) -> bool:
    """Whether what leads to the rest tells of nothing before it: `85x5x3 and everything else`, `85x5x3 rest`."""
    if kind_at(marks, start - 1) in _APART:
        return True
    leading = marks[start:rest]
    if any(m.text in _OF_LOADS for m in leading):
        return False
    return any(m.kind in _APART for m in leading) or kind_at(marks, start - 1) in _TOLD


def _ends(marks: Sequence[Mark], place: int) -> bool:
    """Whether nothing is told behind `as planned` in its part, but that it is done."""
    at = _behind(marks, place)
    at += kind_at(marks, at) is Kind.DONE and kind_at(marks, at + 1) is None
    return kind_at(marks, at) in (None, *_APART)


def _behind(marks: Sequence[Mark], place: int) -> int:
    at = place + 1
    while kind_at(marks, at) is Kind.FILL and text_at(marks, at) not in BUT:
        at += 1
    return at


def _with_rest(marks: Sequence[Mark], start: int, place: int, request: Request) -> list[Mark]:
    said = {w for m in marks[start:place] for w in m.text.split()}
    told = list(marks[:start])
    while told and told[-1].kind in _OPEN_ENDS:
        told.pop()
    alone = told and not any(m.kind in (Kind.STOP, Kind.LINE) for m in told)
    whole = replace(marks[place], text="everything as planned" if said & _WHOLE else REST_PLANNED)
    if alone and any(m.kind in _OF_A_SET for m in told) and sum(m.kind is Kind.NAME for m in told) == 1:
        but = replace(marks[place], kind=Kind.EXCEPT, text="but", start=whole.end)
        everything = replace(whole, kind=Kind.FILL, text="everything")
        return [everything, replace(whole, text="everything as planned"), but, *told, *marks[place + 1 :]]
    told = _otherwise(told, whole, request) if alone else told
    behind = [m for m in marks[_behind(marks, place) :] if m.kind is not Kind.DONE]
    return [*told, *behind, *_at_end(marks, replace(whole, start=marks[start].start))]


def _at_end(marks: Sequence[Mark], whole: Mark) -> list[Mark]:
    end = marks[-1].end
    return [Mark(Kind.LINE, "\n", end, end), whole]


def _whole(marks: Sequence[Mark], place: int) -> bool:
    """Whether the session is what went as planned, and nothing else is told before it."""
    before = marks[:place]
    said = {w for m in before for w in m.text.split()}
    names = sum(m.kind is Kind.NAME for m in before)
    listed = (
        names > 1
        and kind_at(marks, place - 1) is Kind.ALL
        and kind_at(marks, place - 2) in (Kind.STOP, Kind.LINE, Kind.DASH)
    )
    plain = all(m.kind in (*_WENT, *EDGES, Kind.DASH) or (listed and m.kind in (Kind.NAME, Kind.AND)) for m in before)
    return plain and (listed or (names == 0 and bool(said & _EVERYTHING)))


def _with_exceptions(marks: Sequence[Mark], place: int, request: Request) -> list[Mark]:
    """`everything as planned but rdl 82.5`: the exception first. `…: bench, rows and curls`: the names say no more."""
    at = _behind(marks, place)
    if kind_at(marks, at) not in (None, *_APART, Kind.COLON, Kind.PLATES) and text_at(marks, at) not in BUT:
        return list(marks)  # `everything went to plan at work`
    behind = list(marks[at:])
    while behind and (behind[0].kind in (Kind.COMMA, Kind.EXCEPT, Kind.COLON, Kind.DASH) or behind[0].text in BUT):
        behind.pop(0)
    if behind and behind[0].kind is Kind.PLATES and behind[0].text == "bar":
        behind.pop(0)  # `bar the rows`
    names = [m for m in behind if m.kind is Kind.NAME]
    whole = replace(marks[place], text="everything as planned")
    if not behind and any(m.kind is Kind.NAME for m in marks[:place]):
        return [whole]
    if not names or any(m.kind in _OF_A_SET for m in behind):
        return list(marks)
    if all(m.kind in (Kind.NAME, Kind.AND, Kind.COMMA, Kind.FILL, Kind.REPS) for m in behind):
        kept = [m for m in behind if m.kind not in (Kind.NAME, Kind.AND, Kind.COMMA)]
        return [*marks[:place], whole, *kept] if len(names) > 1 else list(marks)
    if not any(m.kind in (Kind.NUM, Kind.SKIP, Kind.SKIPPED, Kind.NOT) for m in behind):
        return list(marks)
    return [*_otherwise(behind, whole, request), *_at_end(marks, whole)]


def _otherwise(told: Sequence[Mark], whole: Mark, request: Request) -> list[Mark]:
    """`rdl 82.5`, `I went 85 on rdls`, `squats were 92.5 instead of 90`: that load, and the repetitions as planned."""
    end = next((i for i, m in enumerate(told) if m.kind is Kind.INSTEAD or m.text in _INSTEAD), len(told))
    names = [m for m in told[:end] if m.kind is Kind.NAME]
    numbers = [m for m in told[:end] if m.kind is Kind.NUM]
    units = [m for m in told[:end] if m.kind in (Kind.KG, Kind.LB)]
    rest = [m for m in told[:end] if m not in (*names, *numbers, *units)]
    if len(names) != 1 or len(numbers) != 1 or len(names[0].names) != 1 or any(m.kind not in _UNSAID for m in rest):
        return list(told)
    exercise = request.exercises[names[0].names[0]]
    loads = [s.load.amount_in(request.unit) for s in exercise.sets if s.load is not None]
    said = numbers[0].value or 0
    styled = exercise.load_style in (LoadStyle.TOTAL, LoadStyle.PER_HAND)
    most = max(s.reps.high for s in exercise.sets)
    in_reason = any(LEAST * load <= said <= MOST * load for load in loads)
    if not styled or not in_reason or (said <= most and not units):
        return list(told)
    planned = replace(whole, text="as planned", start=told[-1].end, end=told[-1].end)
    return [names[0], numbers[0], *units[:1], replace(planned, kind=Kind.ALL, text="all"), planned]
