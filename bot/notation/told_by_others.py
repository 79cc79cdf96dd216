"""Efforts of the client's set as somebody else judged them: `92.5x5, spotter reckons 1 left`, `my mate said rpe 9`.

Who said so has no bearing. What somebody did himself, and what is said of his set, stays his.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.strays.people import PEOPLE
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_WHO = PEOPLE | frozenset(words("he she they coach pt spotters lifter someone somebody everyone"))
_JUDGES = frozenset(words(
    "says said say saying reckons reckoned reckon thinks thought think swears swore called calls call rated rates rate "
    "gave gives give guessed guesses guess estimates estimated claims claimed judged judges figured figures "
    "told counted insists insisted believes believed according"
))  # fmt: skip
_RATES = (Kind.RPE, Kind.RIR, Kind.RPEPOST, Kind.RIRPOST, Kind.TANK, Kind.LEFT, Kind.COULD, Kind.MORE, Kind.ANOTHER,
          Kind.EMPTY, Kind.FEELS)  # fmt: skip
_OF_SETS = (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS, Kind.SETS, Kind.NAME, Kind.WEAK, Kind.QUERY, Kind.NOT)
_ENDS = (*EDGES, Kind.DASH)
_SCORED = (["a"], ["an"])
_FAR = 12
"""Marks of the part in which somebody judges an effort."""


def with_judged_efforts(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with who judged an effort as little words, behind a set of the client's."""
    people = [i for i, m in enumerate(marks) if _is_person(m)]
    if len(people) != 1 or not any(m.kind is Kind.NUM for m in marks[: people[0]]):
        return list(marks)
    start = end = people[0]
    while start > 0 and marks[start - 1].kind not in _ENDS:
        start -= 1
    while end < len(marks) and end < start + _FAR and marks[end].kind not in _ENDS[:-1]:
        end += 1
    part = marks[start:end]
    verb = next((i for i in range(start, end) if set(marks[i].text.split()) & _JUDGES), None)
    if verb is None and not any(m.kind is Kind.COLON for m in part):
        return list(marks)
    scored = len(part) > 1 and part[-1].kind is Kind.NUM and part[-2].text.split()[-1:] in _SCORED
    rates = scored or any(m.kind in _RATES for m in part)
    numbers = sum(m.kind is Kind.NUM for m in part)
    if not rates or numbers > 1 or start == 0 or any(m.kind in _OF_SETS for m in part):
        return list(marks)
    last = max(people[0], verb if verb is not None else people[0])
    said = range(start, last + 1)
    out = [
        replace(m, kind=Kind.FILL, text="so") if i in said or (m.kind is Kind.COLON and i == last + 1) else m
        for i, m in enumerate(marks)
    ]
    return [*out[: end - 1], *_left(out[end - 1]), *out[end:]]


def _left(mark: Mark) -> list[Mark]:
    """The `one more` of `spotter swears there was one more`: one that was left."""
    if mark.kind is Kind.MORE:
        return [replace(mark, kind=Kind.TANK, text="left")]
    if mark.kind is not Kind.ANOTHER or mark.text != "one more":
        return [mark]
    one = replace(mark, kind=Kind.NUM, text="one", value=Decimal(1))
    return [one, Mark(Kind.TANK, "left", mark.end, mark.end)]


def _is_person(mark: Mark) -> bool:
    said = set(mark.text.split())
    return mark.kind is Kind.OTHERPERSON or (mark.kind in (Kind.WORD, Kind.FILL, Kind.WAS) and bool(said & _WHO))
