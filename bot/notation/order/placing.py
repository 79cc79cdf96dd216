"""Words that say which set, or how many alike, put where their numbers are; words of when, put aside."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.order.near import kind_at
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3}
_MOST_SETS = 12
_NEGATED = frozenset(words("not didnt wouldnt never no couldnt"))
_RISING = frozenset(words("come came go went move moved up happen possible rise"))
_EARLIEST = 3
_OTHERS = ("other", "remaining", "my", "the", "of", "these", "those")
_WHEN = frozenset(words("since after before until till during between"))


def mentions(marks: list[Mark]) -> list[Mark]:
    """`since the second set`: when, not which."""
    out = list(marks)
    for place in range(1, len(marks) - 1):
        before = [m.text.split()[-1:] for m in marks[max(0, place - 2) : place]]
        when = any(word and word[0] in _WHEN for word in before)
        if when and marks[place].kind is Kind.ORD and marks[place + 1].kind in (Kind.SET, Kind.LASTSET, Kind.WORKSET):
            out[place] = replace(marks[place], kind=Kind.GAP, value=None)
            out[place + 1] = replace(marks[place + 1], kind=Kind.GAP)
    return out


def likes(marks: list[Mark]) -> list[Mark]:
    """`another two like that`: so many sets alike; `the same for the other two`: all that are left."""
    out = list(marks)
    for place in range(len(marks)):
        said = [m.text for m in marks[place + 1 : place + 3]]
        if marks[place].kind is Kind.NUM and said in (["like", "that"], ["like", "those"], ["like", "it"]):
            out[place + 1] = replace(marks[place + 1], kind=Kind.SAME)
        others = [m for m in marks if m.kind is Kind.THEREST or m.text in ("others", "the others")]
        if marks[place].kind is Kind.SAME and others and not any(m.kind is Kind.NUM for m in marks):
            return [replace(m, kind=Kind.ALL) if m in others else m for m in out]
    return out


def all_sets(marks: list[Mark]) -> list[Mark]:
    """`all other sets five`, `same 3x`: each set, and how many."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark, end = marks[at], at + 1
        while end < len(marks) and marks[end].text in _OTHERS:
            end += 1
        if mark.kind is Kind.ALL and mark.text == "all" and kind_at(marks, end) is Kind.SETS and end > at + 1:
            out.append(replace(mark, text="all sets", end=marks[end].end))
            at = end + 1
            continue
        same = Kind.SAME in (kind_at(marks, at - 2), kind_at(marks, at + 1))
        if (
            mark.kind is Kind.X
            and same
            and kind_at(marks, at - 1) is Kind.NUM
            and kind_at(marks, at + 1) is not Kind.NUM
        ):
            mark = replace(mark, kind=Kind.SETS, text="sets")
        out.append(mark)
        at += 1
    return out


def set_ranges(marks: list[Mark]) -> list[Mark]:
    """`set one to five`, `sets 1-5`, `set 2 and 3`: the first of them, and how many."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        span = marks[at : at + 4]
        kinds = [m.kind for m in span]
        first, last = (span[1].value, span[3].value) if len(span) == 4 else (None, None)
        ranged = kinds[:2] in ([Kind.SET, Kind.NUM], [Kind.SETS, Kind.NUM]) and kinds[3:] == [Kind.NUM]
        joined = ranged and kinds[2] in (Kind.TO, Kind.DASH, Kind.AND, Kind.THEN)
        if joined and first is not None and last is not None and first < last <= _MOST_SETS and _holds_on(span):
            out.append(replace(span[1], kind=Kind.LABEL, start=span[0].start))
            out.append(replace(span[3], value=last - first + 1))
            out.append(replace(span[3], kind=Kind.SETS, text="sets", value=None, start=span[3].end))
            at += 4
            if kind_at(marks, at) is Kind.ALL:
                at += 1
            continue
        out.append(marks[at])
        at += 1
    return out


def _holds_on(span: Sequence[Mark]) -> bool:
    """Whether `and` joins two sets next to each other."""
    one, two = span[1].value, span[3].value
    return span[2].kind is not Kind.AND or (one is not None and two == one + 1)


def numbered_all(marks: list[Mark]) -> list[Mark]:
    """`one two three all with 45`: the numbers of the sets that are all alike."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ALL:
            continue
        at, expected = place - 1, Decimal(0)
        while at >= 0 and marks[at].kind in (Kind.NUM, Kind.COMMA, Kind.AND):
            value = marks[at].value
            if marks[at].kind is Kind.NUM and (value is None or (expected and value != expected - 1)):
                break
            expected = value if value is not None else expected
            at -= 1
        count = sum(m.kind is Kind.NUM for m in marks[at + 1 : place])
        led = expected == 1 or (at >= 0 and expected == 2 and marks[at].text == "one")
        if led and count > 1 - (expected == 2):
            out[at + 1 : place] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[at + 1 : place]]
    return out


def the_others(marks: list[Mark]) -> list[Mark]:
    """`the other two were nine`, `the rest nine`: so many sets, or all that are left, of what follows."""
    out: list[Mark] = []
    skips = any(m.kind in (Kind.SKIP, Kind.SKIPPED, Kind.NO) for m in marks)
    for place, mark in enumerate(marks):
        at = place + 1
        while kind_at(marks, at) in (Kind.WAS, Kind.FILL, Kind.AT, Kind.WITH):
            at += 1
        if mark.kind is not Kind.THEREST or skips or kind_at(marks, at) is not Kind.NUM:
            out.append(mark)
            continue
        count = next((_COUNTS[w] for w in mark.text.split() if w in _COUNTS), None)
        if count is None:
            out.append(replace(mark, kind=Kind.ALL))
            continue
        out.append(replace(mark, kind=Kind.NUM, value=Decimal(count), text=str(count)))
        out.append(replace(mark, kind=Kind.SETS, text="sets", start=mark.end))
    return out


def labels_first(marks: list[Mark]) -> list[Mark]:
    """`24 for the first three rounds of fifteen`: the first three, at 24."""
    out = list(marks)
    for place in range(1, len(out) - 1):
        at = place - 1
        while at >= 0 and out[at].kind is Kind.FILL:
            at -= 1
        if out[place].kind is Kind.ORD and [kind_at(out, at - 1), kind_at(out, at), kind_at(out, place + 1)] == [
            Kind.NUM,
            Kind.FOR,
            Kind.NUM,
        ]:
            out.insert(at - 1, out.pop(place))
    return out


def failed_last(marks: list[Mark]) -> list[Mark]:
    """`tenth rep failed`: failed the tenth."""
    out = list(marks)
    for place in range(len(out) - 2):
        failed = out[place + 2].kind in (Kind.EMPTY, Kind.FAILED) and "fail" in out[place + 2].text
        if out[place].kind is Kind.ORD and out[place + 1].kind is Kind.REPS and failed:
            out[place : place + 3] = [replace(out[place + 2], kind=Kind.FAILED), *out[place : place + 2]]
    return out


def did_not_come(marks: list[Mark]) -> list[Mark]:
    """`the fifth rep not come up`, `the tenth did not go`: failed the fifth, the tenth."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ORD or mark.value is None or mark.value < _EARLIEST:
            continue
        said = [w for m in marks[place + 1 : place + 6] for w in m.text.split()][:6]
        counted = any(m.kind is Kind.NUM for m in marks[place + 1 : place + 6])
        if set(said) & _NEGATED and set(said) & _RISING and not counted:
            at = place + 1
            while at < len(marks) and not set(marks[at].text.split()) & _RISING:
                at += 1
            gone = [replace(m, kind=Kind.GAP) for m in marks[place + 1 : at + 1]]
            out[place : at + 1] = [replace(mark, kind=Kind.FAILED, text="failed", end=mark.start), mark, *gone]
            return out
    return out


def another(marks: list[Mark]) -> list[Mark]:
    """`could have done another 2`: two more."""
    out = list(marks)
    for place in range(1, len(out) - 1):
        kinds = [out[place + n].kind for n in (-1, 0, 1)]
        if kinds == [Kind.COULD, Kind.ANOTHER, Kind.NUM]:
            out[place : place + 2] = [out[place + 1], replace(out[place], kind=Kind.MORE)]
    return out
