"""How far a skip reaches: the names after it or before it, the rest, a set of the exercise under way."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BETWEEN = frozenset((Kind.FILL, Kind.AND, Kind.FOR, Kind.WITH, Kind.AT, Kind.ALL, Kind.EACH))
_LISTED = frozenset((Kind.AND, Kind.COMMA, Kind.OR, Kind.FILL, Kind.PLUS, Kind.SLASH))
_SETS = frozenset((Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET, Kind.SETS, Kind.LABEL, Kind.NUM))
_PASSIVE = frozenset((Kind.FILL, Kind.WAS, Kind.COLON, Kind.DASH, Kind.COMMA, Kind.ALL, Kind.AND, Kind.PLUS, Kind.SLASH,
                      Kind.OR))  # fmt: skip
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
        elif mark.kind is Kind.THEREST and (not found or rest or marks[at - 1].kind in _LISTED):
            rest = True
        elif mark.kind in _SETS and not found and not _is_entry(marks, at):
            sets_first = True
        elif not found and mark.text in _SORTS:
            pass
        elif (found and mark.text in _DOING) or (mark.kind not in _BETWEEN and not (found and mark.kind in _LISTED)):
            break
        used.add(at)
        at += 1
    if marks[place].kind is Kind.NO and not (found or rest):
        named = (Kind.ORD, Kind.LASTSET, Kind.LABEL, Kind.SET)
        sets_first = sets_first and any(m.kind in named for m in marks[place + 1 : at])
    while used and max(used) > place and marks[max(used)].kind in (*_LISTED, *_BETWEEN):
        used.discard(max(used))
    return found, used, rest and not (found and sets_first), sets_first and not found and not rest


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
        if marks[place].kind is not Kind.NAME or not ends:
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
    linked = before is not None and before.kind in _LISTED
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


_FAR = 60
"""Marks that are looked back at."""
_COUNTS = {"two": 2, "three": 3, "four": 4, "both": 2, "2": 2, "3": 3, "4": 4}


def rest_count(marks: Sequence[Mark], used: set[int]) -> int | None:
    """How many the rest is said to be: `the other two`, `the last 2`."""
    for at in sorted(used):
        said = marks[at].text.split()
        if marks[at].kind is Kind.THEREST and "exercises" not in said:
            counts = [_COUNTS[w] for w in said if w in _COUNTS]
            after = marks[at + 1] if at + 1 in used else None
            number = None if after is None or after.kind is not Kind.NUM else after.value
            return counts[0] if counts else None if number is None else int(number)
    return None


def told_before(marks: Sequence[Mark], place: int) -> Mark | None:
    """The name whose sets are told before a place, where another name with sets follows it."""
    near = range(max(0, place - _FAR), min(len(marks), place + _FAR))
    named = [i for i in near if marks[i].kind is Kind.NAME and len(marks[i].names) == 1]
    before = [i for i in named if i < place and any(m.kind is Kind.NUM for m in marks[i:place])]
    after = [i for i in named if i > place and any(m.kind is Kind.NUM for m in marks[i + 1 : i + 3])]
    return marks[before[-1]] if before and after else None


def counted_alone(marks: Sequence[Mark], place: int) -> tuple[int, int] | None:
    """Where `just the one set` stands, in the sentence before a place; `None` where it does not."""
    start = place
    while start > max(0, place - _FAR) and marks[start - 1].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY):
        start -= 1
    for at in range(start, place - 1):
        named = marks[at + 1].kind is Kind.NAME
        if marks[at].kind is not Kind.NUM or marks[at + 1 + named].kind not in (Kind.SET, Kind.SETS):
            continue
        words = {w for m in (*marks[max(start, at - 3) : at], *marks[at + 2 : at + 3]) for w in m.text.split()}
        if words & {"just", "only", "after"}:
            return at, at + 2
    return None


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
    following = [m.kind for m in marks[at + 1 : at + 5]]
    following = following[1:] if following[:1] == [Kind.COLON] else following
    if following[:1] != [Kind.NUM]:
        return False
    if listed:
        return following[1:2] not in ([Kind.SET], [Kind.SETS], [Kind.MINUTES])
    return following[1:2] in ([Kind.X], [Kind.KG], [Kind.LB], [Kind.NUM]) or following[1:3] == [Kind.FOR, Kind.NUM]


def names_before(marks: Sequence[Mark], place: int, far: bool) -> tuple[list[Mark], set[int], bool]:
    """Names straight before `skipped`: `calves and rows skipped`."""
    found: list[Mark] = []
    used = {place}
    rest = False
    at = place - 1
    while at >= 0:
        mark = marks[at]
        if mark.kind in (Kind.NAME, Kind.WEAK):
            if found and mark.kind is Kind.WEAK and _is_talk(marks, at):
                break
            if found and at + 1 < len(marks) and marks[at + 1].kind is Kind.NAME and marks[at].kind is Kind.NAME:
                pass
            elif found and not any(
                m.kind in (Kind.AND, Kind.COMMA, Kind.SLASH, Kind.PLUS, Kind.OR) for m in marks[at + 1 : at + 3]
            ):
                break
            found.append(mark)
        elif mark.text in ("yes", "yep", "yeah", "yup") or (found and _is_of_sets(marks, at)):
            break
        elif mark.kind is Kind.THEREST:
            rest = not found
        elif (not found and _counts_sets(marks, at)) or _is_small(marks, at):
            pass
        elif mark.kind not in _PASSIVE or (mark.kind is Kind.COMMA and not (far or found)):
            break
        used.add(at)
        at -= 1
    if not found and not rest:
        return [], set(), False
    return found, used, rest


def _is_talk(marks: Sequence[Mark], at: int) -> bool:
    """The `legs` of `ran out of legs, squats i skip`: it stands in a clause of its own."""
    return (at > 0 and marks[at - 1].kind not in (*_LISTED, Kind.NAME, Kind.WEAK)) or text_at(marks, at - 1) == "of"


def _is_of_sets(marks: Sequence[Mark], at: int) -> bool:
    """The `on all four` of `70 for 6 on all four and curls skipped`: it is of the sets told before it."""
    of_all = marks[at].kind in (Kind.ALL, Kind.EACH)
    return of_all and kind_at(marks, at - 1) in (Kind.NUM, Kind.REPS, Kind.KG, Kind.LB)


def _is_small(marks: Sequence[Mark], at: int) -> bool:
    """The `sets` of `both pallof sets and the hangs skipped`, the `r` of `burpees r not happening`."""
    sets = marks[at].kind in (Kind.SETS, Kind.SET) and at > 0 and marks[at - 1].kind in (Kind.NAME, Kind.WEAK)
    return sets or (marks[at].kind is Kind.R and not marks[at].tight)


def _counts_sets(marks: Sequence[Mark], at: int) -> bool:
    """`3 sets of them`, `curls and planks both`: how many of what stands before."""
    numbered = marks[at].kind is Kind.NUM and marks[at + 1].kind is Kind.SETS
    return marks[at].kind is Kind.SETS or numbered or marks[at].text == "both"


def counted_before(marks: Sequence[Mark], place: int) -> set[int]:
    """How many sets of a name are left out: `3 sets of calf raises binned`, `two calf sets skipped`."""
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.SETS, Kind.SET, Kind.FILL, Kind.THEREST) or marks[at].text == "of"):
        at -= 1
    sets = at < place - 1 or kind_at(marks, place + 1) in (Kind.SETS, Kind.SET)
    counts = at >= 0 and sets and marks[at].kind is Kind.NUM
    return set(range(at, place)) if counts else set()


def is_after(marks: Sequence[Mark], name: Mark) -> bool:
    """`everything after pull ups`: a name after which all is meant."""
    place = next(i for i, m in enumerate(marks) if m is name)
    while place and marks[place - 1].text in ("the", "my"):
        place -= 1
    before = marks[place - 1] if place else None
    return before is not None and before.kind is Kind.THEREST and before.text.endswith("after")


def is_only(marks: Sequence[Mark], place: int) -> bool:
    """`rows only today`, `just rows`, `rows and curls only`: a name that is to be done, whatever is left out."""
    if marks[place].kind is not Kind.NAME:
        return False
    start, end = place, place + 1
    while start > 1 and marks[start - 1].kind is Kind.AND and marks[start - 2].kind is Kind.NAME:
        start -= 2
    while end + 1 < len(marks) and marks[end].kind is Kind.AND and marks[end + 1].kind is Kind.NAME:
        end += 2
    beside = [m.text for m in (*marks[max(0, start - 1) : start], *marks[end : end + 1])]
    return bool({"only", "just"} & set(beside))


def is_all_but(marks: Sequence[Mark], place: int) -> bool:
    """`skipping everything except rows`: all is left out but what follows."""
    before = next((m for m in reversed(marks[max(0, place - 3) : place]) if m.kind is not Kind.FILL), None)
    whole = marks[place].text.split(" ")[0] in ("everything", "all")
    led = before is not None and before.kind is Kind.SKIP
    return whole and (led or left_behind(marks, place) is not None)


def left_behind(marks: Sequence[Mark], place: int) -> int | None:
    """The place of what skips behind the names that are kept: `everything bar the rows got skipped`; else none."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.NAME, Kind.WEAK, Kind.AND, Kind.FILL, Kind.WAS):
        at += 1
    named = any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[place + 1 : at])
    skips = at < len(marks) and marks[at].kind in (Kind.SKIP, Kind.SKIPPED)
    return at if named and skips else None


def counted_after(marks: Sequence[Mark], place: int) -> set[int]:
    """How many sets were done of what is stopped: `stopping bench at two sets`."""
    kinds = [m.kind for m in marks[place + 1 : place + 4]]
    counted = kinds[:1] in ([Kind.AT], [Kind.WITH]) or [m.text for m in marks[place + 1 : place + 2]] == ["after"]
    return set(range(place + 1, place + 4)) if counted and kinds[1:] == [Kind.NUM, Kind.SETS] else set()


def heads_for_another(marks: Sequence[Mark], place: int) -> bool:
    """`chins only, so no pressing: 8 7 7`: the sets behind a name that is denied are of the one named before, alone."""
    denied = any(m.kind is Kind.NO for m in marks[max(0, place - 2) : place])
    if not denied:
        return False
    before = next((i for i in range(place - 1, -1, -1) if marks[i].kind is Kind.NAME), None)
    if before is None or marks[before].names == marks[place].names:
        return False
    told = any(m.kind in _TOLD for m in marks[before:place])
    return not told and any(m.text in _ALONE for m in marks[max(0, before - 2) : before + 3])


_TOLD = (Kind.NUM, Kind.CLOCK, Kind.BODY, Kind.SAME, Kind.PLANNED)
_ALONE = ("only", "just", "today")
