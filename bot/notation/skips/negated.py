"""What is left out in words that deny rather than skip: `today not the plank`, `calves i dont do`, `third one not`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_NAMES = (Kind.NAME, Kind.WEAK)
_TODAY = frozenset(["today", "tonight", "day", "session", "time"])
_LITTLE = frozenset(["i", "we", "today", "tonight", "now", "this", "time", "the", "day", "sorry", "either", "then",
                     "so", "just", "really", "session", "anymore", "will", "me"])  # fmt: skip
_NOT = frozenset(["not", "no"])
_AUX = frozenset(["do", "did", "have", "had", "can", "could", "will", "would", "shall", "for", "be"])
_DOING = frozenset(["do", "did", "does", "done", "doing", "make", "made", "maked", "making", "perform", "performed",
                    "get", "manage", "managed"])  # fmt: skip
_SHORT = {"dont": "do not", "didnt": "did not", "wont": "will not", "havent": "have not", "hadnt": "had not",
          "cant": "can not", "cannot": "can not", "couldnt": "could not", "wouldnt": "would not"}  # fmt: skip
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
        elif mark.kind in _DONE and (denial := _led_by_denial(marks, place, start)) is not None:
            behind = next((i for i in range(place + 1, end) if _breaks(marks[i]) and not _goes_on(marks, i)), end)
            if all(m.kind in _DONE or m.text in _LITTLE or _goes_on(marks, i) for i, m in _at(marks, place, behind)):
                out[denial.start : denial.stop] = [replace(marks[i], kind=Kind.FILL, text="i") for i in denial]
                out[denial.stop - 1] = replace(marks[denial.stop - 1], kind=Kind.SKIP, text="skip")
        elif mark.kind in (*_DONE, *_WHICH):
            end = next((i for i in range(place + 1, end) if _breaks(marks[i])), end)
            if mark.kind in _WHICH and kind_at(marks, place + 1) is Kind.SET:
                place += 1  # noqa: PLW2901
            rest = mark.kind is Kind.THEREST and [m.text for m in marks[place + 1 : end]] == ["not"]
            if rest or _is_denied(marks[place + 1 : end]):
                out[place + 1] = replace(marks[place + 1], kind=Kind.SKIPPED)
                for at in range(place + 2, end):
                    out[at] = replace(marks[at], kind=Kind.FILL)
    return out


_DONE = (*_NAMES, Kind.THEREST)
_DENYING = (Kind.NOT, Kind.NO, *_DONE, *_WHICH)


def _at(marks: Sequence[Mark], start: int, end: int) -> list[tuple[int, Mark]]:
    return list(enumerate(marks[start:end], start))


def _goes_on(marks: Sequence[Mark], place: int) -> bool:
    """Whether what joins a name to another stands there: `the curls and the planks`."""
    joins = marks[place].kind in (Kind.AND, Kind.OR)
    return joins and any(m.kind in _DONE for m in marks[place + 1 : place + 3])


_REFUSED = frozenset(["nah", "nope", "naw", "no", "pass"])
_UNABLE = frozenset(["cant", "cannot", "wont", "wont be", "couldnt"])


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word stands here that leads to what is refused: `nah on the`, `no to`."""
    leads = kind_at(marks, place) in (Kind.AT, Kind.WITH, Kind.TO)
    return leads and marks[place].text.split(" ")[0] in ("on", "to")


def _is_refused(marks: Sequence[Mark], place: int, start: int, end: int) -> bool:
    """`nah on the ab wheel today`, `no to rows`: names alone, and little words."""
    rest = [m for m in (*marks[start:place], *marks[place + 2 : end]) if m.kind is not Kind.FILL]
    return bool(rest) and all(m.kind in (*_NAMES, Kind.AND, Kind.FOR) for m in rest)


_BECAUSE = frozenset(["because", "cos", "coz", "bc", "cuz", "cause", "as", "since", "so", "but"])


def _breaks(mark: Mark) -> bool:
    """Where a reason starts, or what comes next."""
    return mark.kind in (Kind.AND, Kind.FINISH, Kind.THEN) or mark.text in _BECAUSE


_EDGES = EDGES | {Kind.DASH}
_REACH = 40
"""Marks that are looked at on either side."""


def _part(marks: Sequence[Mark], place: int) -> tuple[int, int]:
    """The part of a place, a dash between words as its edge too: `70x5 - not the rows today`."""
    return part_of(marks, place, _REACH, _EDGES)


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
    if not rest or not all(m.kind in _SAYING for m in rest):
        return False
    return _says_undone([w for m in rest for w in m.text.split()])


_SAYING = (Kind.FILL, Kind.NOT, Kind.NO, Kind.WORD, Kind.OTHERTIME, Kind.FOR, Kind.UNDONE)


def _says_undone(said: Sequence[str]) -> bool:
    """`i have not made today`, `dont do`, `not for me`: a denial of doing, and nothing else."""
    kept = [w for word in said if word not in _LITTLE for w in _SHORT.get(word, word).split()]
    denied = bool(set(kept) & _NOT) and set(kept) <= _NOT | _AUX | _DOING
    return denied and ("i" in said or "we" in said or len(kept) > 1)


def _led_by_denial(marks: Sequence[Mark], place: int, start: int) -> range | None:
    """The places of the denial before a name or the rest: `i have not made the planks`, in a part of its own.

    Behind what is denied only little words may stand, or what breaks off.
    """
    at = place - 1
    while at >= start and marks[at].text in ("the", "my", "any", "either"):
        at -= 1
    first = max([start, *(i + 1 for i in range(start, at) if _breaks(marks[i]))])
    said = [w for m in marks[first : at + 1] for w in m.text.split()]
    does = {"i", "we"} & set(said) or _DOING & set(said[1:])
    return range(first, at + 1) if at >= first and does and "for" not in said and _says_undone(said) else None


def _denies_set(marks: Sequence[Mark], place: int) -> bool:
    """`third one not`, `not the last one`, `the third set no`: a set of the exercise under way, and nothing else."""
    start, end = _part(marks, place)
    part = marks[start:end]
    which = [m for m in part if m.kind in _WHICH]
    others = [m for m in part if m.kind not in (*_WHICH, Kind.FILL, Kind.SET, Kind.NOT, Kind.NO)]
    words = {w for m in part if m.kind is Kind.FILL for w in m.text.split()}
    plain = words <= {"the", "one", "so", "but", "and", "then", "today", "did", "do", "i", "ones", "for", "me"}
    return len(which) == 1 and not others and plain and "rep" not in which[0].text
