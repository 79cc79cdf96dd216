"""Reason clauses: `because someone had the 24s`. Their names and numbers are of no set, their efforts are."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, is_entry
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

BECAUSE = frozenset(words("because cause cus cos coz cuz bc bcs bcos bcuz becuz becuase becos since"))
_AS = frozenset(words("the my someone somebody all its it theres there they everyone we our im i gym some both your"))
"""Words after an `as` that gives a reason."""
_OWN = frozenset(words("so but then"))
"""Words that a reason ends before."""
_EFFORTS = (Kind.EMPTY, Kind.FAILED, Kind.RPE, Kind.RIR, Kind.TANK, Kind.LEFT, Kind.COULD, Kind.FEELS)
_NUMBERS = (Kind.NUM, Kind.CLOCK, Kind.BAD)
_LISTED = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.REPS, Kind.EACH)


def reasons(marks: Sequence[Mark]) -> set[int]:
    """The places of what reasons tell. Bare numbers at a clause's end are the repetitions that the set before lacks."""
    out: set[int] = set()
    for place in range(len(marks)):
        if place in out or not _opens(marks, place):
            continue
        end = _end(marks, place)
        if any(_is_effort(marks, i) for i in range(place, end)):
            continue
        end = _without_counts(marks, place, end)
        out |= set(range(place, end))
    return out


def without_skips(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with what gives up no exercise as words: `24s for 8 because my grip gave up`, `you wont make it`."""
    out = [replace(m, kind=Kind.FILL) if _is_of_coach(marks, i) else m for i, m in enumerate(marks)]
    for place in range(len(marks)):
        if not _opens(marks, place):
            continue
        end = _end(marks, place)
        named = any(m.kind in (Kind.NAME, Kind.WEAK, Kind.THEREST) for m in marks[place:end])
        for at in range(place, end):
            if not named and marks[at].kind in (Kind.SKIP, Kind.SKIPPED):
                out[at] = replace(marks[at], kind=Kind.FILL)
    return out


def _is_of_coach(marks: Sequence[Mark], place: int) -> bool:
    """`promise you wont make it a thing`: what the coach will not do."""
    return marks[place].kind is Kind.SKIP and place > 0 and marks[place - 1].text in ("you", "u")


def _is_effort(marks: Sequence[Mark], place: int) -> bool:
    """Whether a mark rates a set; `felt a bit stiff` does not."""
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    return marks[place].kind in _EFFORTS and (marks[place].kind is not Kind.FEELS or after is Kind.NUM)


def _opens(marks: Sequence[Mark], place: int) -> bool:
    mark = marks[place]
    following = marks[place + 1].text.split()[:1] if place + 1 < len(marks) else []
    if mark.kind not in (Kind.FILL, Kind.WORD) or not following:
        return False
    if mark.text == "since":
        return following[0] in _AS and place > 0
    if mark.text == "as":
        return following[0] in _AS and place > 0
    return mark.text in BECAUSE


def _end(marks: Sequence[Mark], place: int) -> int:
    at = place + 1
    while at < len(marks) and marks[at].kind not in EDGES and marks[at].kind not in (Kind.COLON, Kind.THEN):
        if marks[at].text.split()[:1] and marks[at].text.split(" ")[0] in _OWN and at > place + 1:
            break
        if at > place + 2 and tells_of_sets(marks, at):
            break
        at += 1
    return at


def tells_of_sets(marks: Sequence[Mark], at: int) -> bool:
    """`because the 24 was taken fifteen reps four rounds get ups 12 kilos`: a counted set, another exercise's sets."""
    following = marks[at + 1].kind if at + 1 < len(marks) else None
    before = marks[at - 1]
    free = before.text.split()[-1:] and before.text.split(" ")[-1] not in _LEADING and before.kind not in _LEADING_KINDS
    named = marks[at].kind is Kind.NAME and following in (Kind.NUM, Kind.BODY, Kind.ALL)
    if named and is_entry(marks, at + 1):
        return True
    return bool(free) and (named or (marks[at].kind is Kind.NUM and following in _COUNTED))


_COUNTED = (Kind.REPS, Kind.METRES, Kind.SETS)
_LEADING = frozenset(words("the a an my his her their that at only just had have for got get about after on with from "
                           "of did do doing another last first next"))  # fmt: skip
"""Words whose number or name is of the reason."""
_LEADING_KINDS = (Kind.AT, Kind.WITH, Kind.FOR, Kind.X, *_LISTED)


def _without_counts(marks: Sequence[Mark], place: int, end: int) -> int:
    """Where the reason ends before repetitions that follow it without a mark: `because i feel fancy ten nine and 8`."""
    if any(m.kind in _NUMBERS for m in marks[end:]):
        return end
    at = end
    while at > place + 1 and marks[at - 1].kind in _LISTED:
        at -= 1
    if at == end or not any(m.kind is Kind.NUM for m in marks[at:end]):
        return end
    if marks[at - 1].text.split()[-1:] in (["the"], ["a"], ["at"], ["only"]) or marks[at - 1].kind in (Kind.AT, Kind.X):
        return end
    return at
