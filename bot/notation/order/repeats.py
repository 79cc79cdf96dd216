"""Words that repeat a set: `the same once more` is one, `one more of those` too, `both legs the same` is none.

`same as set 1` names the set that is repeated.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.order.same_rest import same_rest
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LIKE = frozenset(words("like those them that it these same identical as"))
_TO_COME = frozenset(words("come coming go left remaining"))
_REPEATING = (Kind.SAME, Kind.ANOTHER, Kind.AGAIN, Kind.MORE, Kind.TIMES, Kind.THEREST)
SAMES = (Kind.SAME, Kind.SAMEREPS, Kind.SAMELOAD)
_PERIODS = frozenset(words("week weeks session workout month block cycle phase wk year"))
_COMPARING = (Kind.FILL, Kind.GAP, Kind.AT, Kind.AND, Kind.FOR, Kind.WORD)
_WHOLE = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
_LIMBS = frozenset(words("legs arms sides feet hands leg arm side both"))


def repeats(marks: list[Mark]) -> list[Mark]:
    """The marks with one `same` for each set that is repeated, and none for what is alike on both sides."""
    if not any(m.kind in _REPEATING or m.text == "like" for m in marks):
        return marks
    return _once(same_rest(_of_set(_likened(_alike(marks)))))


def as_back_then(marks: Sequence[Mark]) -> list[Mark]:
    """`100x10, same as last week`, `same number as in week 1`: behind a whole set, how it compares, and no set more."""
    out = list(marks)
    whole: int | None = None
    for place, mark in enumerate(marks):
        if mark.kind not in SAMES:
            continue
        whole = _first_whole(marks) if whole is None else whole
        if whole >= place:
            continue
        end = part_of(marks, place)[1]
        rest = marks[place + 1 : end]
        said = {w for m in rest for w in m.text.split()}
        as_then = mark.text.endswith(("as last", "as the last")) or bool({"as", "like"} & said)
        numbered = [i for i, m in enumerate(rest) if m.kind is Kind.NUM and i and rest[i - 1].text in _PERIODS]
        plain = all(m.kind in _COMPARING or i in numbered for i, m in enumerate(rest))
        if plain and as_then and said & _PERIODS:
            out[place:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place:end]]
    return out


def _first_whole(marks: Sequence[Mark]) -> int:
    """Where the first whole set starts."""
    links = (i for i in range(1, len(marks)) if marks[i].kind in (Kind.X, Kind.FOR))
    return next((i - 1 for i in links if [m.kind for m in marks[i - 1 : i + 2]] in _WHOLE), len(marks))


def _alike(marks: list[Mark]) -> list[Mark]:
    """`10, both legs the same`, `60x8, same every set`: of sets that are told, not one more."""
    out = list(marks)
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.NUM), len(marks))
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SAME or first >= place:
            continue
        start, end = part_of(marks, place)
        part = [m for m in marks[start:end] if m.kind not in (Kind.FILL, Kind.WAS)]
        kinds = [m.kind for m in part if m.kind not in (Kind.SET, Kind.SETS, Kind.FOR, Kind.AT)]
        both = any(m.text == "both" for m in part)
        if set(kinds) in ({Kind.ALL, Kind.SAME}, {Kind.EACH, Kind.SAME}) and (Kind.ALL in kinds or both):
            out[place] = replace(mark, kind=Kind.GAP)
            continue
        sided = [m for m in marks[start:end] if m.kind is Kind.EACH and _LIMBS & set(m.text.split())]
        beside = place > 0 and marks[place - 1].kind is Kind.EACH
        beside = beside or kind_at(marks, past(marks, place + 1, Kind.FILL)) is Kind.EACH
        alone = all(m.kind in (Kind.EACH, Kind.SAME, Kind.AND) for m in part)
        if sided and (alone or beside):
            out[place] = replace(mark, kind=Kind.GAP)
            for at in range(start, end):
                if alone and out[at].kind is Kind.EACH:
                    out[at] = replace(out[at], kind=Kind.GAP)
    return out


def _likened(marks: list[Mark]) -> list[Mark]:
    """`one more of those`, `another just like it`, `one more time`: the set before again."""
    out = _without_coming(_more_like(_twice_more(marks)))
    marks = list(out)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.ANOTHER or kind_at(marks, place - 1) in (Kind.COULD, Kind.NO, Kind.NUM):
            continue
        start, end = part_of(marks, place)
        rest = marks[place + 1 : end]
        plain = all(m.kind in (Kind.FILL, Kind.TIMES, Kind.SAME, Kind.AND) for m in rest)
        before = all(m.kind in (Kind.FILL, Kind.AND, Kind.THEN, Kind.NAME) for m in marks[start:place])
        said = {w for m in rest for w in m.text.split()}
        if plain and before and (said & _LIKE or said == {"time"}):
            gone = [replace(m, kind=Kind.FILL) for m in rest]
            out[place:end] = [replace(mark, kind=Kind.SAME, text="same"), *gone]
    return out


def _without_coming(marks: list[Mark]) -> list[Mark]:
    """`60x5, one more of those to come`: a set like it that is not done yet."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.SAME or mark.text not in _OF_THOSE:
            continue
        end = part_of(marks, place)[1]
        said = {w for m in marks[place + 1 : end] for w in m.text.split()}
        if said & _TO_COME and said <= _TO_COME | {"to", "still", "today"}:
            out[place:end] = [replace(m, kind=Kind.GAP, value=None) for m in marks[place:end]]
    return out


_OF_THOSE = ("same again", "same", "again", "one more of those", "another of those")


def _twice_more(marks: list[Mark]) -> list[Mark]:
    """`did that twice more`: the set before, two times."""
    if any(m.kind is Kind.NUM for m in marks):
        return marks
    out = list(marks)
    for place in range(len(marks) - 1):
        if marks[place].text == "twice" and marks[place + 1].text in ("more", "again"):
            number = replace(marks[place], kind=Kind.NUM, value=Decimal(2), text="two")
            sets = replace(marks[place], kind=Kind.SETS, text="sets", start=marks[place].end)
            return [
                *marks[:place],
                number,
                sets,
                replace(marks[place + 1], kind=Kind.SAME, text="same"),
                *marks[place + 2 :],
            ]
    return out


def _more_like(marks: list[Mark]) -> list[Mark]:
    """`two more like the first`, `3 more of those`: so many sets alike."""
    out = list(marks)
    for place in range(len(marks) - 2):
        more = kind_at(marks, place + 1) is Kind.MORE and kind_at(marks, place) is Kind.NUM
        link = past(marks, place + 2, Kind.FILL)
        words_ = [m.text for m in marks[place + 2 : link]]
        if not more or not ({"like", "of"} & set(words_)) or kind_at(marks, place - 1) is Kind.COULD:
            continue
        named = kind_at(marks, link) is Kind.ORD or kind_at(marks, link) in (Kind.LASTSET, Kind.LASTREP)
        ends = kind_at(marks, link + named) in (None, *EDGES) or marks[link + named].text == "one"
        if ends and (named or set(words_) & _LIKE - {"like", "as"}):
            value = marks[link].value if named and marks[link].kind is Kind.ORD else None
            same = replace(marks[place + 1], kind=Kind.SAME, text="same", value=value)
            sets = replace(marks[place + 1], kind=Kind.SETS, text="sets", end=marks[place + 1].start)
            out[place + 1 : link + named] = [sets, same]
            return out
    return out


def _of_set(marks: list[Mark]) -> list[Mark]:
    """`same as set 1`, `identical to the first`: which set is repeated, as the value of the mark."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        mark = marks[at]
        out.append(mark)
        at += 1
        labelled = [m.kind for m in out[-3:-1]] == [Kind.SET, Kind.NUM]
        if mark.text == "like" and labelled and kind_at(marks, at) is Kind.SET:
            out[-1] = replace(
                mark, kind=Kind.SAME, text="same", value=marks[at + 1].value if at + 1 < len(marks) else None
            )
            at += 2
            continue
        if mark.kind is not Kind.SAME:
            continue
        if mark.text.endswith("as the first"):
            out[-1] = replace(mark, value=Decimal(1))
            continue
        while at + 1 < len(marks) and marks[at].text in ("numbers", "weight", "thing", "again", "reps", "number"):
            at += 1
        to = at < len(marks) and (marks[at].text == "as" or marks[at].kind in (Kind.TO, Kind.WITH))
        place = past(marks, at + to, Kind.FILL)
        if not to:
            continue
        first, second = marks[place : place + 1], marks[place + 1 : place + 2]
        if first and second and first[0].kind is Kind.SET and second[0].kind is Kind.NUM:
            value = second[0].value
        elif first and second and first[0].kind is Kind.ORD and (second[0].kind is Kind.SET or second[0].text == "one"):
            value = first[0].value
        else:
            continue
        out[-1] = replace(mark, value=value, end=second[0].end)
        at = place + 2
    return out


def _once(marks: list[Mark]) -> list[Mark]:
    """`the same once more`, `same again one more`: one set, not two."""
    out = list(marks)
    last: int | None = None
    for place, mark in enumerate(marks):
        comma = [kind_at(marks, place + 1), kind_at(marks, place + 2)] == [Kind.COMMA, Kind.SAME]
        if comma and (mark.kind is Kind.AGAIN or mark.text in ("and again", "once more")):
            out[place] = replace(mark, kind=Kind.FILL)
        if mark.kind is Kind.SAME:
            if last is not None and mark.value is None:
                out[place] = replace(mark, kind=Kind.FILL)
                continue
            last = place
        elif mark.kind in (*EDGES, Kind.AND, Kind.THEN, Kind.NUM, Kind.NAME):
            last = None
    return out
