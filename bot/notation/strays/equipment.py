"""Loads that stood about and were not lifted, or were not to be had: `180 on the rack`, `the 24s were gone`."""

from collections.abc import Sequence
from decimal import Decimal
from itertools import chain

from bot.notation.clauses import EDGES, FARTHEST
from bot.notation.kinds import Kind
from bot.notation.strays.people import PEOPLE
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_THERE = frozenset(words("there theres thered"))
_PLACES = frozenset(words("bar rack machine stack pin sled it floor bench hooks there smith platform"))
_STANDING = frozenset(words("left still already sitting loaded standing stacked lying"))
_UNITS = (Kind.KG, Kind.LB)


GONE = frozenset(
    words(
        "missing gone taken using busy broken hogged nowhere hiding elsewhere occupied lost swiped nicked stolen use",
        "unavailable downstairs upstairs borrowed hoarded hoarding vanished disappeared used bent",
    )
)


_AT = frozenset(words("at in with on by"))


def not_there(marks: Sequence[Mark]) -> set[int]:
    """`the 24s were gone so 22s x 10`, `no 65s anywhere`: loads that were not to be had, where others are told."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        kinds = [m.kind for m in marks[place + 1 : place + 3]]
        plates = kinds in ([Kind.KG, Kind.PLATES], [Kind.LB, Kind.PLATES]) or kinds[:1] == [Kind.PLATES]
        if not (kinds[:1] == [Kind.S] or plates):
            continue
        end = _end(marks, place)
        lacking = place > 0 and marks[place - 1].kind is Kind.NO
        told = kinds[1:] == [Kind.WAS] or (place > 0 and marks[place - 1].text.split()[-1:] == ["the"])
        said = {w for m in marks[place + 2 : min(end, place + 6)] for w in m.text.split()}
        placed = kinds[1:] == [Kind.WAS] and bool(
            {w for m in marks[place + 2 : place + 4] for w in m.text.split()} & _AT
        )
        gone = (
            (bool(said & GONE) or (placed and not said & {"rpe", "rir"}))
            and told
            and not any(m.kind in (Kind.X, Kind.FOR) for m in marks[place:end])
        )
        away = gone and bool(said & GONE) and not placed
        nowhere = lacking and bool(said & (_AROUND | {"left"}))
        if away or nowhere or ((lacking or gone) and _tells_another(marks, place, end)):
            out |= set(range(place, end))
    return out | {i for place in range(len(marks)) for i in _held_elsewhere(marks, place)}


def _held_elsewhere(marks: Sequence[Mark], place: int) -> range:
    """`the 20 is with my husband`, `the 20 was missing`, `husband took the 20`, where another number is told."""
    if marks[place].kind is not Kind.NUM:
        return range(0)
    the = place > 0 and marks[place - 1].text.split()[-1:] == ["the"]
    opens = place == 0 or marks[place - 1].kind in EDGES
    if not (the or opens):
        return range(0)
    end = _end(marks, place)
    part = marks[place + 1 : end]
    if any(m.kind in _OF_SET for m in part) or not _tells_another(marks, place, end):
        return range(0)
    said = [w for m in part for w in m.text.split()]
    is_at = bool(part) and part[0].kind is Kind.WAS
    person = any(m.kind is Kind.OTHERPERSON or set(m.text.split()) & _SOMEONE for m in part)
    gone = is_at and (person or bool(set(said[:4]) & GONE) or (said[1:2] == ["in"] and bool(set(said) & _HOMES)))
    led = [w for m in marks[max(0, place - 4) : place] for w in m.text.split()]
    led = [w for w in led if w not in ("all", "both", "every")]
    who = [m for m in marks[max(0, place - 4) : place] if m.kind is Kind.OTHERPERSON or m.text in PEOPLE]
    taken = the and led[-2:-1] != [] and ((who and led[-2] in _TAKING) or (led[-2] in _LENT and said[:1] == ["to"]))
    return range(place, end) if gone or taken else range(0)


def _tells_another(marks: Sequence[Mark], start: int, end: int) -> bool:
    """Whether a number is told outside of a stretch."""
    return any(m.kind is Kind.NUM for m in chain(marks[:start], marks[end:]))


_OF_SET = (Kind.NUM, Kind.X, Kind.REPS, Kind.RPE, Kind.RIR, Kind.NAME)
_SOMEONE = frozenset(words("someone someones somebody somebodys sb")) | PEOPLE | {one + "s" for one in PEOPLE}
_HOMES = frozenset(words("car garage office house flat boot trunk van shed kitchen loft closet wash repair"))
_TAKING = frozenset(
    words("took has had takes borrowed grabbed nicked stole swiped pinched nabbed uses using used hogged")
)
_LENT = frozenset(words("lent gave loaned borrowed handed left"))


_SET = frozenset(words("set loaded pinned stacked left stuck already still on up"))


def _was_set(marks: Sequence[Mark], place: int) -> bool:
    """`the pulldown was set to 200 when i sat down`, where another number is told behind it; not that of `it was loaded
    to 60 and I pushed it 20m`.
    """
    at = place - 1
    if at < 1 or marks[at].text.split()[-1:] not in (["to"], ["at"], ["on"], ["with"]):
        return False
    at -= len(marks[at].text.split()) == 1
    said = {w for m in marks[max(0, at - 2) : place] for w in m.text.split()}
    was = any(m.kind is Kind.WAS for m in marks[max(0, at - 3) : at + 1])
    end = _end(marks, place)
    told = any(m.kind in (Kind.X, Kind.FOR, Kind.REPS) for m in marks[place:end])
    came = "when i" in " ".join(m.text for m in marks[place + 1 : end])
    found = came or any(m.kind is Kind.NUM for m in marks[end:])
    mine = [m.text.split()[:1] for m in marks[place + 1 : place + 4] if m.kind not in _UNITS][:2] == [["and"], ["i"]]
    return was and bool(said & (_SET - {"on"})) and not told and found and not mine


def left_standing(marks: Sequence[Mark]) -> set[int]:
    """The places of such loads, and of what they stood on."""
    out: set[int] = set(not_there(marks))
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and any(stood(marks, place) for stood in _STOOD):
            out |= set(range(place, _end(marks, place)))
        elif mark.kind is Kind.NUM and _is_lacking(marks, place):
            out |= set(range(place - 2 if place > 1 and _HAS & set(marks[place - 2].text.split()) else place - 1,
                             _offered(marks, _end(marks, place))))  # fmt: skip
    return out


def _were_on(marks: Sequence[Mark], place: int) -> bool:
    """`two plates were already on it`."""
    following = [w for m in marks[place + 1 : place + 6] for w in m.text.split()]
    plates = place + 1 < len(marks) and marks[place + 1].kind is Kind.PLATES
    return (
        plates and following[1:2] in (["were"], ["was"], ["are"]) and bool(set(following[2:5]) & (_STANDING | {"on"}))
    )


_AROUND = frozenset(words("today here available free anywhere around there tonight"))
_HAS = frozenset(words("has have had hasnt got is are was were theres there"))


def _is_lacking(marks: Sequence[Mark], place: int) -> bool:
    """`machine has no 30 today, took 35x8`: a load that is not to be had, where another is told behind it."""
    if place < 1 or marks[place - 1].kind is not Kind.NO:
        return False
    end = _end(marks, place)
    opens = place == 1 or marks[place - 2].kind in EDGES
    following = marks[place + 1 : place + 3]
    goes_on = bool(following) and following[0].kind in _BESIDE_LACKING
    stood = bool(following) and (following[0].text in _AROUND or (goes_on and following[-1].kind is Kind.NAME))
    if not (place > 1 and set(marks[place - 2].text.split()) & _HAS) and not (opens and stood):
        return False
    plain = not any(m.kind in (Kind.X, Kind.FOR, Kind.REPS, Kind.SETS, Kind.MORE) for m in marks[place:end])
    return plain and any(m.kind is Kind.NUM for m in marks[_offered(marks, end) :])


_BESIDE_LACKING = (Kind.NAME, Kind.FILL, Kind.S, Kind.KG, Kind.LB, Kind.FOR, Kind.AT, Kind.WITH)


def _offered(marks: Sequence[Mark], at: int) -> int:
    """Where `, only 25 and 35.` behind what is lacking ends: the loads that there are."""
    if at + 1 >= len(marks) or marks[at].kind is not Kind.COMMA or marks[at + 1].text not in ("only", "just"):
        return at
    end = at + 1
    while end < len(marks) and marks[end].kind in (Kind.FILL, Kind.NUM, Kind.AND, Kind.OR, Kind.KG, Kind.LB, Kind.S):
        end += 1
    several = sum(m.kind is Kind.NUM for m in marks[at:end]) > 1
    return end if several and (end >= len(marks) or marks[end].kind in (Kind.STOP, Kind.LINE)) else at


def _end(marks: Sequence[Mark], place: int) -> int:
    """Where the part of a place ends."""
    end = place + 1
    for mark in marks[end : place + FARTHEST]:
        if mark.kind in _ENDS or mark.text in _TURNS:
            break
        end += 1
    return end


_ENDS = EDGES | {Kind.COLON}
_TURNS = ("so", "but", "anyway", "lol")


def _stands(marks: Sequence[Mark], place: int) -> bool:
    """`there was 180 on the rack`; `180 left on the bar`."""
    at = place + 1
    while at < len(marks) and marks[at].kind in _UNITS:
        at += 1
    if "on" not in [w for m in marks[at : at + 2] for w in m.text.split()][:2]:
        return False
    after = [w for m in marks[at : _end(marks, place)] for w in m.text.split()]
    on = after[:1] == ["on"] or after[1:2] == ["on"]
    if not on or not set(after[1:5]) & _PLACES:
        return False
    start = place
    while start > 0 and marks[start - 1].kind not in EDGES:
        start -= 1
    before = [w for m in marks[start:place] for w in m.text.split()]
    there = bool(set(before) & _THERE) and bool(set(before) & {"was", "were", "is", "theres", "thered"})
    return there or bool(set(after[:1]) & _STANDING) or after[:1] == ["was"]


_BUILT = frozenset(
    words("built build building made make making put pieced loaded load loading filled stacked up bar all")
)
_MADE_OF = frozenset(words("of from with in"))
_MOST_PLATE = 55
"""The heaviest plate, in pounds or kilograms (common practice, no source)."""
_LISTED = (Kind.NUM, Kind.S, Kind.AND, Kind.COMMA, Kind.PLUS, Kind.KG, Kind.LB, Kind.PLATES, Kind.SLASH)


def _was_built(marks: Sequence[Mark], place: int) -> bool:
    """`80x10, built it out of 5s and 10s`, `92.5x11, used two 1.25s`: the plates of a load that is told before them,
    with no set of their own."""
    value = marks[place].value
    behind = marks[place + 1].kind if place + 1 < len(marks) else None
    if behind is Kind.NUM and value in _SO_MANY and marks[place + 1].value not in _SO_MANY:
        return _was_built(marks, place + 1)
    if (
        value is None
        or value > _MOST_PLATE
        or marks[place + 1 : place + 2] == []
        or marks[place + 1].kind is not Kind.S
    ):
        return False
    start = place
    while start > 0 and marks[start - 1].kind in _LISTED:
        start -= 1
    end = place + 1
    while end < len(marks) and marks[end].kind in _LISTED:
        end += 1
    told = [w for m in marks[max(0, start - _FEW) : start] for w in m.text.split()][-_FEW:]
    built = told[-1:] != [] and told[-1] in _MADE_OF and bool(_BUILT & set(told[:-1]))
    built = built or (bool(_USED & set(told[-2:])) and _is_small(marks[:start], value))
    if not built:
        return False
    listed = [m for m in marks[start:end] if m.kind is Kind.NUM]
    bare = end >= len(marks) or marks[end].kind not in (Kind.X, Kind.FOR, Kind.REPS, Kind.EACH, Kind.COLON)
    whole = any(m.kind is Kind.NUM and m.value is not None and m.value > value for m in marks[:start])
    plates = all(marks[i + 1 : i + 2] and marks[i + 1].kind in _OF_PLATE for i in range(start, end)
                 if marks[i].kind is Kind.NUM and (i + 1 != place or marks[i].value not in _SO_MANY))  # fmt: skip
    return bare and whole and plates and bool(listed)


def _is_small(before: Sequence[Mark], value: Decimal) -> bool:
    """Whether a plate is so small beside a load told before it that it is no load itself."""
    return any(m.kind is Kind.NUM and m.value is not None and m.value > value * _SMALL for m in before)


_SMALL = 8
"""So many times the weight of a plate is a load that the plate is a part of."""
_SO_MANY = range(2, 9)
_USED = frozenset(words("used using use took with pair needed"))
_FEW = 6
"""Words before a list of plates that say what is made of them."""
_OF_PLATE = (Kind.S, Kind.KG, Kind.LB, Kind.PLATES)
_STOOD = (_stands, _was_set, _were_on, _was_built)
