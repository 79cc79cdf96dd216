"""Which set, said behind its numbers or among them: `200 first. 190 second`, `16s for the 3rd and got 9`."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import MOST_SETS, SEVERAL
from bot.notation.clauses import is_entry, kind_at
from bot.notation.kinds import Kind
from bot.notation.order.near import OF_LOAD, past
from bot.notation.tokens import Mark

_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.THEN, Kind.AND, Kind.QUERY, Kind.BREAK)
_IN_LIST = (Kind.NUM, Kind.X, Kind.FOR, Kind.REPS, Kind.FILL, *OF_LOAD)
_NUMBERED = frozenset(["number", "no", "nr", "num", "#", "round", "rd"])


def set_numbers(marks: list[Mark]) -> list[Mark]:
    """The marks with each set's number before what is told of it."""
    return _named(_failed_at(_for_the(_behind(_of_load(marks)))))


def _of_load(marks: list[Mark]) -> list[Mark]:
    """`365x3 then 315x6 and the second 315x6`: the second of that load, which the order of the sets says already."""
    out = list(marks)
    for place in range(4, len(marks) - 2):
        if marks[place].kind is not Kind.ORD or marks[place].value != SEVERAL:
            continue
        entry = [m.kind for m in marks[place - 4 : place] if m.kind not in (Kind.AND, Kind.COMMA, Kind.FILL)]
        at = past(marks, place + 1, Kind.FILL, Kind.WORKSET)
        before = next((i for i in range(place - 1, -1, -1) if marks[i].kind in (Kind.X, Kind.FOR)), 0)
        again = kind_at(marks, at) is Kind.NUM and before > 0 and marks[before - 1].value == marks[at].value
        told = entry[-1:] in ([Kind.NUM], [Kind.REPS]) and marks[place - 1].kind in (Kind.AND, Kind.COMMA, Kind.FILL)
        if again and told:
            out[place] = replace(marks[place], kind=Kind.FILL, value=None)
    return out


def _behind(marks: list[Mark]) -> list[Mark]:
    """`200 first. 200 second. 190 third`: two or more of such parts."""
    places = [i for i in range(len(marks)) if _ends_its_part(marks, i)]
    values = [_order(marks[i]) for i in places]
    if len(places) < 2 or values != list(range(int(values[0] or 0), int(values[0] or 0) + len(values))):
        return marks
    out = list(marks)
    for place, value in zip(places, values, strict=True):
        start = place
        while start > 0 and marks[start - 1].kind in _IN_LIST:
            start -= 1
        label = replace(marks[place], kind=Kind.LABEL, value=Decimal(value or 0))
        out[start : place + 1] = [label, *out[start:place]]
        if kind_at(marks, place + 1) is Kind.SET:
            out[place + 1] = replace(marks[place + 1], kind=Kind.COMMA, text=",")
    return _shared(out) if values else out


def _order(mark: Mark) -> int | None:
    if mark.kind is Kind.ORD and mark.value is not None:
        return int(mark.value)
    return 2 if mark.kind is Kind.SECONDS and mark.text == "second" else None


def _ends_its_part(marks: Sequence[Mark], place: int) -> bool:
    at = place + 1
    while kind_at(marks, at) in (Kind.FILL, Kind.SET):
        at += 1
    before = kind_at(marks, place - 1)
    goes_on = kind_at(marks, at) is Kind.NUM and at < len(marks) - 1 and _order(marks[at + 1]) is not None
    ends = kind_at(marks, at) in _ENDS or goes_on
    return _order(marks[place]) is not None and ends and before in (Kind.NUM, *OF_LOAD)


def _shared(marks: list[Mark]) -> list[Mark]:
    """`all 20m` after loads that have no repetitions of their own: each is for so many."""
    at = next((i for i, m in enumerate(marks) if m.kind is Kind.ALL and kind_at(marks, i + 1) is Kind.NUM), None)
    if at is None or kind_at(marks, at + 2) not in (Kind.M, Kind.METRES, Kind.REPS, Kind.SECONDS):
        return marks
    if any(m.kind in (Kind.X, Kind.FOR) for m in marks):
        return marks
    shared = marks[at + 1 : at + 3]
    out: list[Mark] = []
    for place, mark in enumerate(marks[:at]):
        out.append(mark)
        loaded = mark.kind is Kind.NUM and kind_at(marks, place + 1) not in OF_LOAD
        if loaded or (mark.kind in OF_LOAD and kind_at(marks, place - 1) is Kind.NUM):
            out += [replace(shared[0], kind=Kind.X, text="x", value=None), *shared]
    return [*out, *marks[at + 3 :]]


def _for_the(marks: list[Mark]) -> list[Mark]:
    """`went to 16s for the 3rd and got 9`: the third, 16s for 9."""
    out = list(marks)
    for place, mark in enumerate(marks):
        last = mark.kind in (Kind.LASTSET, Kind.LASTREP) and mark.text.split(" ")[-1] in _LAST
        if not last and (mark.kind is not Kind.ORD or mark.value is None):
            continue
        link = place - 1
        while kind_at(marks, link) is Kind.FILL or (last and kind_at(marks, link) is Kind.NAME):
            link -= 1
        load = link - 1 - (kind_at(marks, link - 1) in OF_LOAD)
        after = place + 1
        passed = (
            Kind.FILL,
            Kind.AND,
            Kind.COMMA,
            Kind.SET,
            *((Kind.NAME, Kind.WORD, Kind.STOP, Kind.LINE) if last else ()),
        )
        while kind_at(marks, after) in passed:
            after += 1
        linked = kind_at(marks, link) in (Kind.FOR, Kind.AT) and kind_at(marks, load) is Kind.NUM
        free = kind_at(marks, load - 1) not in (Kind.X, Kind.FOR, Kind.AT, Kind.NUM)
        joined = any(m.kind in (Kind.AND, Kind.COMMA, Kind.STOP, Kind.LINE) for m in marks[place + 1 : after])
        counts = kind_at(marks, after) is Kind.NUM and kind_at(marks, after + 1) not in (Kind.X, Kind.FOR, *OF_LOAD)
        if linked and free and joined and counts:
            said = [] if last else [replace(mark, kind=Kind.LABEL)]
            names = [m for m in marks[link + 1 : after] if m.kind is Kind.NAME]
            link_mark = replace(marks[link], kind=Kind.FOR, text="for")
            out[load : after + 1] = [*names, *said, *marks[load:link], link_mark, marks[after]]
            if load and out[load - 1].kind is Kind.DROP:
                out[load - 1] = replace(out[load - 1], kind=Kind.FILL)
            return out
    return out


_LAST = ("last", "final", "set", "one")


def _failed_at(marks: list[Mark]) -> list[Mark]:
    """`failed the third at 75`: 75, failed the third."""
    out = list(marks)
    for place in range(len(marks) - 1):
        if place == len(out):
            break
        failed = out[place].kind is Kind.FAILED or (out[place].kind is Kind.EMPTY and "fail" in out[place].text)
        at = place + 1
        while kind_at(out, at) is Kind.FILL:
            at += 1
        rep = kind_at(out, at + 1) is Kind.REPS
        link = at + 1 + rep
        if not failed or kind_at(out, at) is not Kind.ORD or kind_at(out, link) not in (Kind.AT, Kind.WITH):
            continue
        number = link + 1
        end = number + 1 + (kind_at(out, number + 1) in OF_LOAD)
        if kind_at(out, number) is Kind.NUM and kind_at(out, end) in _ENDS and out[link].text != "@":
            out[place:end] = [*out[number:end], replace(out[place], kind=Kind.FAILED), *out[place + 1 : link]]
    return out


def _named(marks: list[Mark]) -> list[Mark]:
    """`thrust number 3: 120 kg`, `log 3: six. log 4: five`: the number of a set of the exercise."""
    out = list(marks)
    told = [
        i
        for i, m in enumerate(marks)
        if m.kind is Kind.NUM and _is_count(m) and (_is_told(marks, i + 1) or _is_held(marks, i))
    ]
    for place in told:
        corrects = marks[place - 1].kind is Kind.NO and kind_at(marks, place - 2) in (Kind.COMMA, Kind.NUM, Kind.STOP)
        if marks[place - 1].text in _NUMBERED and place and not corrects:
            out[place - 1] = replace(marks[place - 1], kind=Kind.FILL)
            out[place] = replace(marks[place], kind=Kind.LABEL)
    held = [i for i in told if kind_at(marks, i - 1) in (Kind.WEAK, Kind.NAME) and _is_held(marks, i)]
    for place in held:
        out[place] = replace(marks[place], kind=Kind.LABEL)
    after = [i for i in told if kind_at(marks, i - 1) is Kind.NAME and kind_at(marks, i + 1) is Kind.COLON]
    values = [int(marks[i].value or 0) for i in after]
    names = {marks[i - 1].names for i in after}
    done = [i for i in range(1, len(marks) - 1) if marks[i].kind is Kind.NUM and kind_at(marks, i + 1) is Kind.DONE]
    for place in done:
        if kind_at(marks, place - 1) is Kind.NAME and is_entry(marks, place + 2) and _is_count(marks[place]):
            out[place] = replace(marks[place], kind=Kind.LABEL)
            out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    alone = [i for i in after if is_entry(marks, i + 2) and (marks[i].value or 0) <= _MOST_HELD + 2]
    for place in alone if len(after) == 1 else ():
        out[place] = replace(marks[place], kind=Kind.LABEL)
    called = [i for i in range(1, len(marks)) if marks[i].kind is Kind.NUM and kind_at(marks, i - 1) is Kind.NAME]
    order = [marks[i].value for i in called]
    if len(called) > 1 and order == list(range(1, len(order) + 1)) and len({marks[i - 1].names for i in called}) == 1:
        for place in called:
            out[place] = replace(marks[place], kind=Kind.LABEL)
    if len(after) > 1 and len(names) == 1 and values == list(range(values[0], values[0] + len(values))):
        for place in after:
            out[place] = replace(marks[place], kind=Kind.LABEL)
    return out


_MOST_HELD = 4
"""Holds and carries that are told by their number: a greater one is their seconds."""


def _is_held(marks: Sequence[Mark], place: int) -> bool:
    """`hold 2, thirty five seconds`, `hang two was 42 seconds`, `hang two 42s`: which of the holds."""
    at = place + 1
    while kind_at(marks, at) in (Kind.COMMA, Kind.COLON, Kind.WAS, Kind.FILL, Kind.TO):
        at += 1
    joined = at > place + 1 or marks[place].text.isalpha()
    timed = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in (Kind.SECONDS, Kind.S)
    if not joined or not timed or (marks[place].value or 0) > _MOST_HELD:
        return False
    return sum(m.kind is Kind.NUM for m in marks) == SEVERAL


def _is_count(mark: Mark) -> bool:
    return mark.value is not None and mark.value == int(mark.value) and 1 <= mark.value <= MOST_SETS


def _is_told(marks: Sequence[Mark], place: int) -> bool:
    """Whether a colon, a comma or `was` and a number follow."""
    joined = kind_at(marks, place) in (Kind.COLON, Kind.COMMA, Kind.WAS, Kind.DASH)
    return joined and kind_at(marks, place + 1) in (Kind.NUM, Kind.CLOCK)


NUMBERING = (
    Kind.ORD,
    Kind.SECONDS,
    Kind.LASTSET,
    Kind.LASTREP,
    Kind.FAILED,
    Kind.EMPTY,
    Kind.NAME,
    Kind.WEAK,
    *_NUMBERED,
)
"""What the number of a set is told by."""
