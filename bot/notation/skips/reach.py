"""How far a skip reaches: the names after it or before it, the rest, a set of the exercise under way."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.skips.counted import counted_alone
from bot.notation.skips.names_ahead import LISTED
from bot.notation.tokens import Mark

_BETWEEN = frozenset((Kind.FILL, Kind.AND, Kind.FOR, Kind.WITH, Kind.AT, Kind.ALL, Kind.EACH))
_SETS = frozenset((Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET, Kind.SETS, Kind.LABEL, Kind.NUM))
_DOING = (
    "doing",
    "do",
    "did",
    "moving",
    "moved",
    "move",
    "straight",
    "started",
    "starting",
    "onto",
    "going",
    "but",
    "just",
    "only",
)
"""Words behind what is skipped that tell of what is done instead."""
_SORTS = frozenset(["either", "sorts", "kinds", "types", "forms", "versions", "any"])
"""Words before the name of several: `both sorts of lunges`, `either lunge`."""
PRONOUNS = frozenset(["them", "it", "those", "these", "that", "em", "dem", "both"])


def names_after(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int], bool, bool]:
    """What follows a `skip`: names in a list, `the rest`, or a set of the exercise under way."""
    found: list[Mark] = []
    used = {place}
    rest = False
    at = place + 1
    sets_first = False
    listed = place > 1 and marks[place - 2].kind in (Kind.NO, Kind.SKIP)
    skipped = marks[place].kind is Kind.SKIPPED or (place > 0 and marks[place - 1].kind is Kind.NAME and not listed)
    while at < len(marks):
        mark = marks[at]
        if (found or skipped) and mark.kind in (Kind.NAME, Kind.WEAK) and _is_reason(marks, at):
            break
        if (
            skipped
            and mark.kind in (Kind.NAME, Kind.WEAK)
            and [m.kind for m in marks[at + 1 : at + 2]] == [Kind.SKIPPED]
        ):
            break
        if mark.kind in (Kind.NAME, Kind.WEAK) and not _has_numbers_next(marks, at, listed=bool(found)):
            found.append(mark)
        elif not found and (_is_other(marks, at, place) or _is_of_it(mark)):
            sets_first = True
        elif (mark.kind is Kind.THEREST and _is_of_name(marks, at)) or _is_set_of(mark, marks[at - 1], found):
            pass
        elif mark.kind is Kind.THEREST and _is_of_pronoun(marks, at) and not found:
            sets_first = True
        elif mark.kind is Kind.THEREST and (not found or rest or marks[at - 1].kind in LISTED):
            rest = True
        elif mark.kind in _SETS and not found and not _is_entry(marks, at):
            sets_first = True
        elif not found and (mark.text in _SORTS or _is_more_of(marks, at)):
            pass
        elif (found and mark.text in _DOING) or (mark.kind not in _BETWEEN and not (found and mark.kind in LISTED)):
            break
        used.add(at)
        at += 1
    if marks[place].kind is Kind.NO and not (found or rest):
        named = (Kind.ORD, Kind.LASTSET, Kind.LABEL, Kind.SET)
        sets_first = sets_first and any(m.kind in named for m in marks[place + 1 : at])
    while used and max(used) > place and marks[max(used)].kind in (*LISTED, *_BETWEEN):
        used.discard(max(used))
    return found, used, rest and not (found and sets_first), sets_first and not found and not rest


def _is_more_of(marks: Sequence[Mark], at: int) -> bool:
    """The `more` of `not doing any more bench`, of `not doing another squat`: straight before the name."""
    if marks[at].kind not in (Kind.MORE, Kind.ANOTHER):
        return False
    behind = next((m for m in marks[at + 1 : at + _NEAR] if m.kind is not Kind.FILL), None)
    return behind is not None and behind.kind in (Kind.NAME, Kind.WEAK)


_NEAR = 4
"""Marks in which the name of `any more of the bench` stands."""


def _is_set_of(mark: Mark, before: Mark, found: Sequence[Mark]) -> bool:
    """`the last landmine set and the holds`: which set of the name that stands before."""
    return bool(found) and before is found[-1] and mark.kind in (Kind.LASTSET, Kind.SET, Kind.SETS)


_TOO = frozenset(["too", "as well", "also", "aswell"])


def names_too(marks: Sequence[Mark]) -> dict[int, Mark]:
    """`skipping rows, bench is taken, and preachers too`: names alone in their part behind it, by their place."""
    skips = next((i for i, m in enumerate(marks) if m.kind in (Kind.SKIP, Kind.SKIPPED, Kind.NO)), len(marks))
    out: dict[int, Mark] = {}
    for place in range(skips + 1, len(marks) - 1):
        ends = [n for n in (1, 2) if " ".join(m.text for m in marks[place + 1 : place + 1 + n]) in _TOO]
        weak = marks[place].kind is Kind.WEAK and bool(marks[place].names)
        if not (marks[place].kind is Kind.NAME or weak) or not ends:
            continue
        end = place + 1 + ends[-1]
        start = place
        while start > skips and marks[start - 1].kind in (Kind.AND, Kind.FILL):
            start -= 1
        opens = marks[start - 1].kind in (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK)
        closed = end >= len(marks) or marks[end].kind in (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY)
        told = any(m.kind is Kind.NUM for m in marks[skips:place])
        if opens and closed and not told:
            out[place] = marks[place]
    return out


_TAKEN = frozenset(["taken", "busy", "occupied", "broken", "snapped", "gone", "full", "closed", "bust", "broke",
                    "hurts", "used", "free", "being", "isnt", "hogged"])  # fmt: skip
_COMES = frozenset(["next", "instead", "first", "still", "went", "felt", "coming", "up"])
"""Words behind a name that is done all the same: `skipping rows, planks next`."""


def _is_reason(marks: Sequence[Mark], at: int) -> bool:
    """`no face pulls today the cable's snapped`, `skipping rows, bench was taken`: what hinders."""
    after = marks[at + 1] if at + 1 < len(marks) else None
    before = next((m for m in reversed(marks[max(0, at - 3) : at]) if m.kind is not Kind.FILL), None)
    linked = before is not None and before.kind in LISTED
    if after is None:
        return False
    stated = after.kind is Kind.WAS or bool(set(after.text.split()[:1]) & (_TAKEN | _COMES))
    return stated or (after.kind is Kind.WORD and not linked)


def _is_of_it(mark: Mark) -> bool:
    """`the rest of it`: of the exercise under way."""
    return mark.kind is Kind.THEREST and mark.text.endswith((" it", " them"))


def _is_other(marks: Sequence[Mark], at: int, place: int) -> bool:
    """`just the one set, skipping the other`: the sets that are left of the exercise under way."""
    mark = marks[at]
    ends = at + 1 >= len(marks) or marks[at + 1].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.BREAK, Kind.FILL)
    one = mark.text in ("other", "other one", "second one") and mark.kind is Kind.FILL and ends
    rest = mark.kind is Kind.THEREST and mark.text in ("the others", "the rest", "the other two")
    return one or (rest and counted_alone(marks, place) is not None)


def _is_of_name(marks: Sequence[Mark], place: int) -> bool:
    """`the rest of the lunges`, `the last two lunges`: what is left of one exercise, not of the session."""
    at = place + 1
    while at < len(marks) and (marks[at].text in ("of", "the", "my") or marks[at].kind is Kind.THEREST):
        at += 1
    return at < len(marks) and marks[at].kind in (Kind.NAME, Kind.WEAK, Kind.SETS)


def _is_of_pronoun(marks: Sequence[Mark], place: int) -> bool:
    """`what's left of those`: of the exercise under way."""
    said = [m.text for m in marks[place + 1 : place + 3]]
    return said[:1] == ["of"] and bool(set(said) & PRONOUNS)


def _is_entry(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number starts a set rather than counting sets that are left out."""
    if marks[at].kind is not Kind.NUM:
        return False
    if at and marks[at - 1].kind is Kind.SET:
        return False
    ends = kind_at(marks, at + 1) in (None, Kind.COLON, Kind.STOP, Kind.LINE)
    if ends and kind_at(marks, at - 1) is Kind.LASTSET and marks[at].value in (2, 3, 4):
        return False  # `leaving the last two: 60x10`
    if [m.kind for m in marks[at + 1 : at + 3]] in ([Kind.NAME, Kind.SETS], [Kind.NAME, Kind.SET]):
        return False  # `not doing the two pallof sets`
    return at + 1 >= len(marks) or marks[at + 1].kind not in (Kind.SETS, Kind.SET)


def _has_numbers_next(marks: Sequence[Mark], at: int, *, listed: bool) -> bool:
    """Whether sets of a name follow it. `listed`: it stands behind another one, so that a number alone is a set's."""
    following = [m.kind for m in marks[at + 1 : at + 6]]
    following = following[1:] if following[:1] in ([Kind.COLON], [Kind.PLUS]) else following
    loaded = following[:2] == [Kind.COMMA, Kind.NUM] and following[2:3] in ([Kind.KG], [Kind.LB], [Kind.X], [Kind.S])
    following = following[1:] if listed and loaded else following  # `skipped bench, curls, 14 kg for 12 12`
    if following[:1] != [Kind.NUM]:
        return False
    if listed:
        return following[1:2] not in ([Kind.SET], [Kind.SETS], [Kind.MINUTES])
    return following[1:2] in ([Kind.X], [Kind.KG], [Kind.LB], [Kind.NUM]) or following[1:3] == [Kind.FOR, Kind.NUM]
