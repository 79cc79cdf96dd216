"""What is left out in words that deny rather than skip: `today not the plank`, `calves i dont do`, `third one not`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_NAMES = (Kind.NAME, Kind.WEAK)
_TODAY = frozenset(["today", "tonight", "day", "session", "time"])
_LITTLE = frozenset(["i", "we", "today", "tonight", "now", "this", "time", "the", "day", "sorry", "either", "then",
                     "so", "just", "really", "session", "anymore", "will", "me"])  # fmt: skip
_DENIED = frozenset(["dont do", "do not do", "dont make", "do not make", "did not make", "didnt make", "not make",
                     "not do", "dont", "wont", "didnt", "did not", "do not", "not", "make not", "do no",
                     "not for"])  # fmt: skip
_WHICH = (Kind.ORD, Kind.LASTSET, Kind.LASTREP)


def with_negated(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a denial as a skip; with numbers in its part it is none."""
    out = list(marks)
    for place, mark in enumerate(marks):
        refused = mark.text in _REFUSED and _leads(marks, place + 1)
        unable = mark.kind is Kind.OTHERTIME and mark.text in _UNABLE
        if mark.kind not in _DENYING and mark.text != "without" and not (refused or unable):
            continue
        start, end = _part(marks, place)
        if kind_at(marks, end) is Kind.QUERY or any(m.kind is Kind.NUM for m in marks[start:end]):
            continue
        if mark.kind in (Kind.NOT, Kind.NO) and _denies_set(marks, place):
            out[place] = replace(mark, kind=Kind.SKIPPED)
        elif (mark.kind is Kind.NOT or mark.text == "without") and _is_of_name(marks, place, start, end):
            out[place] = replace(mark, kind=Kind.SKIP)
        elif refused and _is_refused(marks, place, start, end):
            out[place] = replace(mark, kind=Kind.SKIP)
            out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
        elif unable and _is_of_name(marks, place, start, end):
            out[place] = replace(mark, kind=Kind.SKIP)
        elif mark.kind in (*_NAMES, *_WHICH):
            end = next((i for i in range(place + 1, end) if _breaks(marks[i])), end)
            if _is_denied(marks[place + 1 : end]):
                out[place + 1] = replace(marks[place + 1], kind=Kind.SKIPPED)
                for at in range(place + 2, end):
                    out[at] = replace(marks[at], kind=Kind.FILL)
    return out


_DENYING = (Kind.NOT, Kind.NO, *_NAMES, *_WHICH)
_REFUSED = frozenset(["nah", "nope", "naw", "no", "pass"])
_UNABLE = frozenset(["cant", "cannot", "wont", "wont be", "couldnt"])


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word stands here that leads to what is refused: `nah on the`, `no to`."""
    leads = kind_at(marks, place) in (Kind.AT, Kind.WITH, Kind.TO)
    return leads and marks[place].text.split()[0] in ("on", "to")


def _is_refused(marks: Sequence[Mark], place: int, start: int, end: int) -> bool:
    """`nah on the ab wheel today`, `no to rows`: names alone, and little words."""
    rest = [m for m in (*marks[start:place], *marks[place + 2 : end]) if m.kind is not Kind.FILL]
    return bool(rest) and all(m.kind in (*_NAMES, Kind.AND, Kind.FOR) for m in rest)


_BECAUSE = frozenset(["because", "cos", "coz", "bc", "cuz", "cause", "as", "since", "so", "but"])


def _breaks(mark: Mark) -> bool:
    """Where a reason starts, or what comes next."""
    return mark.kind in (Kind.AND, Kind.FINISH, Kind.THEN) or mark.text in _BECAUSE


_REACH = 40
"""Marks that are looked at on either side."""


def _part(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    """The part of a place, a dash between words as its edge too: `70x5 - not the rows today`."""
    edges = (*EDGES, Kind.DASH)
    start = place
    while start > max(0, place - _REACH) and marks[start - 1].kind not in edges:
        start -= 1
    end = place + 1
    while end < min(len(marks), place + _REACH) and marks[end].kind not in edges:
        end += 1
    return start, end


_FEELING = ("feeling", "feelin", "feeling like")
_LEADING = ("the", "my", "any", "doing", "make", "do", "be", "those", "these", *_FEELING)


def _is_of_name(marks: Sequence[Mark], place: int, start: int, end: int) -> bool:
    """`today not the planks`, `not the planks today`, `without planks`: the name straight behind."""
    at = place + 1
    while kind_at(marks, at) is Kind.FILL and marks[at].text in _LEADING:
        at += 1
    if kind_at(marks, at) not in _NAMES:
        return False
    start = max([start, *(i + 1 for i in range(start, place) if _breaks(marks[i]))])
    ahead, behind = marks[start:place], marks[at + 1 : end]
    today = bool({w for m in ahead for w in m.text.split()} & _TODAY)
    if {w for m in ahead[-1:] for w in m.text.split()} & _TODAY:
        behind = []
    for place_behind, mark in enumerate(behind):
        if mark.text in ("today", "tonight", "day"):
            today, behind = True, behind[:place_behind]
            break
    plain = all(m.kind in (Kind.FILL, *_NAMES, Kind.AND) for m in (*ahead, *behind))
    felt = any(m.text in _FEELING for m in marks[place + 1 : at])
    return plain and (today or felt or marks[place].text in ("without", "wont"))


def _is_denied(rest: Sequence[Mark]) -> bool:
    """Whether all that follows a name in its part denies that it is done: `i dont do today`."""
    if not rest or not all(m.kind in (Kind.FILL, Kind.NOT, Kind.WORD, Kind.OTHERTIME, Kind.FOR) for m in rest):
        return False
    said = [w for m in rest for w in m.text.split()]
    own = "i" in said or "we" in said
    kept = " ".join(w for w in said if w not in _LITTLE)
    return kept in _DENIED and (own or len(kept.split()) > 1)


def _denies_set(marks: Sequence[Mark], place: int) -> bool:
    """`third one not`, `not the last one`, `the third set no`: a set of the exercise under way, and nothing else."""
    start, end = _part(marks, place)
    part = marks[start:end]
    which = [m for m in part if m.kind in _WHICH]
    others = [m for m in part if m.kind not in (*_WHICH, Kind.FILL, Kind.SET, Kind.NOT, Kind.NO)]
    words = {w for m in part if m.kind is Kind.FILL for w in m.text.split()}
    plain = words <= {"the", "one", "so", "but", "and", "then", "today", "did", "do", "i", "ones", "for", "me"}
    return len(which) == 1 and not others and plain and "rep" not in which[0].text
