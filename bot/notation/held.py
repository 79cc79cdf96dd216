"""How long something was held, in free words: `lasted till 50`, `timer showed 50`, `two planks: 50s 45s`, `plank one 50
plank two 45`, `ten short of a minute`. Only of an exercise of the session that is measured in seconds.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise

from bot.notation.answer import Request
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.session_place import place_spoken_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import Measure, PlannedExercise

_HELD = frozenset(words("held hold holding lasted last stayed hung hanging survived kept made managed stuck stood"))
_HANGING = frozenset(words("hung hanging"))
_ON = frozenset(words("up on in it there going out still to till until for at about around just a the"))
_CLOCKS = frozenset(words("timer clock watch stopwatch phone timing time"))
_SHOWED = frozenset(words("showed shows said says read reads showing hit stopped was on at had"))
_AND = frozenset(words("und e y et en i och og then and daarna danach dann poi puis luego after"))
_SHORT = frozenset(words("short shy off under before of from"))
_TO_COME = frozenset(
    words(
        "ill hope hoping plan planning try trying next will gonna tomorrow",
        "rest resting break wait should aim aiming want goal target left to-go",
    )
)
_OTHER = (Kind.X, Kind.KG, Kind.LB, Kind.RPE, Kind.QUERY, Kind.LEFT, Kind.RIGHT, Kind.HOURS, Kind.SKIP, Kind.NOT)
_MEASURES = (Kind.M, Kind.MINUTES, Kind.SECONDS, Kind.S, Kind.CLOCK, Kind.KG, Kind.LB, Kind.REPS, Kind.SETS)
_MINUTE = Decimal(60)
_LEAST, _MOST = Decimal("0.4"), Decimal(2)
"""Of the planned time: how long people hold (common practice, no source)."""


def with_holds(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with such words as seconds of the exercise that is named, or of the one under way."""
    names = [m for m in marks if m.kind is Kind.NAME and m.names]
    place = place_spoken_of(names, request)
    if place is None or request.exercises[place].measure is not Measure.SECONDS:
        return list(marks)
    said = {w for m in marks for w in m.text.split()}
    to_hold = any(
        "going to" in m.text or (m.text == "going" and text_at(marks, i + 1) == "to") for i, m in enumerate(marks)
    )
    if to_hold or said & _TO_COME or any(m.kind in _OTHER for m in marks if m.text not in ("x", "by")):
        return list(marks)
    exercise = request.exercises[place]
    out = _with_minutes(marks)
    out = _without_labels(out, exercise)
    return _with_units(_with_links(out, exercise), exercise)


def _is_time(mark: Mark, exercise: PlannedExercise) -> bool:
    """Whether a number is as long as people hold it."""
    aims = [s.reps for s in exercise.sets]
    low, high = min(a.low for a in aims), max(a.high for a in aims)
    return mark.kind is Kind.NUM and mark.value is not None and _LEAST * low <= mark.value <= _MOST * high


def _with_minutes(marks: Sequence[Mark]) -> list[Mark]:
    """`0 min 50 sec` as 50 seconds, `a minute minus ten` and `ten short of a minute` too."""
    out = list(marks)
    for at, mark in enumerate(marks):
        if mark.kind is not Kind.MINUTES:
            continue
        one = text_at(marks, at - 1) in ("a", "one", "the", "1", "full")
        if kind_at(marks, at - 1) is Kind.NUM and marks[at - 1].value == 0 and kind_at(marks, at + 1) is Kind.NUM:
            return [*marks[: at - 1], *marks[at + 1 :]]
        less = kind_at(marks, at + 1) is Kind.MINUS or text_at(marks, at + 1) in ("minus", "less", "bar", "but")
        if one and less and kind_at(marks, at + 2) is Kind.NUM:
            return _seconds(out, at - 1, at + 2, marks[at + 2])
        number = next(
            (i for i in range(at - 1, max(-1, at - 7), -1) if marks[i].kind is Kind.NUM and i != at - 1), None
        )
        if one and number is not None and {m.text for m in marks[number + 1 : at - 1]} & _SHORT:
            end = at
            so = at + 1 + (kind_at(marks, at + 1) is Kind.COMMA)
            so += text_at(marks, so) in ("so", "ie", "thats", "=")
            same = kind_at(marks, so) is Kind.NUM and marks[so].value == _MINUTE - (marks[number].value or 0)
            return _seconds(out, number, so if same else end, marks[number])
    return out


def _seconds(marks: list[Mark], first: int, last: int, less: Mark) -> list[Mark]:
    """The marks with those of a stretch as a minute less so many seconds."""
    last += kind_at(marks, last + 1) in (Kind.SECONDS, Kind.S)
    start, end = marks[first].start, marks[last].end
    time = replace(less, kind=Kind.NUM, value=_MINUTE - (less.value or 0), parts=(), start=start, end=end)
    return [*marks[:first], time, Mark(Kind.SECONDS, "sec", end, end), *marks[last + 1 :]]


def _without_labels(marks: list[Mark], exercise: PlannedExercise) -> list[Mark]:
    """The marks without what only counts the holds: `two planks`, `plank one 50, plank two 45`, `one x plank`."""
    gone: set[int] = set()
    times = [i for i, m in enumerate(marks) if _is_time(m, exercise)]
    for at, mark in enumerate(marks):
        few = _few(mark, len(exercise.sets))
        if few is None or not times or at in times:
            continue
        crossed = kind_at(marks, at + 1) is Kind.X
        counts = kind_at(marks, at + 1 + crossed) is Kind.NAME and few in (len(times), 1)
        counts = counts and text_at(marks, at + 2 + crossed) != "of"  # `two planks of wood`
        behind = kind_at(marks, at - 1) in (Kind.NAME, Kind.LINE, Kind.AND, Kind.STOP, Kind.COMMA) and few - sum(
            i < at for i in times
        ) in (0, 1)
        behind = behind and (kind_at(marks, at - 1) is Kind.NAME or kind_at(marks, at + 1) in (Kind.STOP, Kind.CLOSE))
        if counts or (behind and kind_at(marks, at + 1) not in _MEASURES):
            gone |= {at, at + 1} if crossed and counts else {at}
            if kind_at(marks, at + 1) in (Kind.STOP, Kind.CLOSE) and behind:
                gone.add(at + 1)
    return [m for i, m in enumerate(marks) if i not in gone]


def _few(mark: Mark, sets: int) -> int | None:
    """The number of a set, or of sets: no more than there are."""
    value = 1 if mark.text == "one" else mark.value if mark.kind is Kind.NUM else None
    return int(value) if value is not None and value == int(value) and 1 <= value <= sets else None


def _with_links(marks: list[Mark], exercise: PlannedExercise) -> list[Mark]:
    """`50 und 45`, `50 en daarna 45`: two holds; `here are both: 50 45` too."""
    times = [i for i, m in enumerate(marks) if _is_time(m, exercise)]
    out = list(marks)
    for one, two in pairwise(times):
        between = [i for i in range(one + 1, two) if marks[i].kind not in (Kind.S, Kind.SECONDS)]
        if between and all(marks[i].kind is Kind.WORD and marks[i].text in _AND for i in between):
            out[between[0]] = replace(marks[between[0]], kind=Kind.AND, text="and")
            for at in between[1:]:
                out[at] = replace(marks[at], kind=Kind.FILL)
    if len(times) > 1 and not any(m.kind is Kind.EACH for m in marks[times[0] :]):
        for at in range(times[0]):
            if out[at].text == "both" or (out[at].kind is Kind.FINISH and kind_at(marks, times[0] - 1) is Kind.COLON):
                out[at] = replace(out[at], kind=Kind.FILL)
                if at and out[at - 1].kind is Kind.WAS:
                    out[at - 1] = replace(out[at - 1], kind=Kind.FILL)
    return out


def _is_led(marks: Sequence[Mark], at: int) -> bool:
    """Whether it is the client who held it: not `my phone lasted till 50`, `he held on for 50`, `will hold 50`."""
    before = text_at(marks, at - 1).split()[-1:] if at else []
    named = kind_at(marks, at - 1) in (Kind.NAME, Kind.WEAK, Kind.NUM, Kind.ORD, Kind.SET, *EDGES)
    return at == 0 or named or not before or before[0] in _ME


def _is_closed(marks: Sequence[Mark], number: int) -> bool:
    """Whether what stands behind a time measures nothing else: not `watch says 50 steps`."""
    behind = number + 1 + (kind_at(marks, number + 1) in (Kind.SECONDS, Kind.S))
    if kind_at(marks, behind) in (Kind.MINUTES, Kind.HOURS):
        return False
    return kind_at(marks, behind) not in (Kind.WORD, Kind.TALKNUM) or text_at(marks, behind).split()[0] in _AFTER


_ME = frozenset(words(
    "i ive im we and then but so just only also",
    "it that really barely somehow still again finally actually first second",
    "third one both planks plank set time on dear sir coach",
))  # fmt: skip
_AFTER = frozenset(words(
    "before when then and but until till with while this on",
    "at so because cos shaking sir coach boss mate dear lol haha",
    "tbh again more today here first second third sec secs seconds sekunden secondi segundos secondes solid total",
    "exactly almost just not very like my i it is as y et und en e dead flat straight clean ok okay yes fine",
))  # fmt: skip


def _with_units(marks: list[Mark], exercise: PlannedExercise) -> list[Mark]:
    """`lasted till 50`, `timer showed 50`, `stayed up 50`: seconds."""
    out = list(marks)
    for at, mark in enumerate(marks):
        said = set(mark.text.split())
        held, clock = said & _HELD, said & _CLOCKS
        passes = _ON if held else _SHOWED
        number = at + 1
        while (
            number < len(marks) and marks[number].kind is not Kind.NUM and set(text_at(marks, number).split()) <= passes
        ):
            number += 1
        if not (held or (clock and number > at + 1)) or number >= len(marks) or not _is_time(marks[number], exercise):
            continue
        if (held and not _is_led(marks, at)) or not _is_closed(marks, number):
            continue
        if said & _HANGING and {w for m in marks[at + 1 : number] for w in m.text.split()} & {"around", "about"}:
            continue
        if said & _HANGING and kind_at(marks, number + 1) in (Kind.SECONDS, Kind.S):
            continue  # `hung 38s` is plain, and its word names the exercise
        for i in range(at, number):
            out[i] = replace(marks[i], kind=Kind.FILL, text="did" if i == at else "")
    return out
