"""Numbers that the word beside them gives to another thing: `140 bpm`, `34 degrees`, `a queue of 4`, `a 5k`."""

from collections.abc import Iterator, Sequence

from bot.notation.clauses import EDGES, kind_at, part_of
from bot.notation.kinds import Kind
from bot.notation.strays.meanings import (
    UNITS,
    is_age,
    is_body_change,
    is_clock,
    is_described,
    is_goal,
    is_in_mind,
    is_placed,
    is_price,
    is_score,
    is_setting,
    is_wanted,
    set_up,
)
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_GROUPS = frozenset(words("queue line group class crowd team family gang bunch pack party league crew row"))
_DISTANCE = frozenset(
    words(
        "ran run running jog jogged jogging trail trails road roads race raced parkrun marathon bike biked cycle",
        "cycling ride rode hike hiked hiking walk walked walking swim swam swimming tempo cardio hills towpath park",
        "canal commute erg cycled",
    )
)
_MUSIC = frozenset(
    words("playlist music hits song songs tune tunes rock pop disco bangers classics rave house dance stuff mix vibes")
)
_CARDIO = frozenset(
    words("bike treadmill elliptical stairclimber stepper rower crosstrainer spinner exercycle airbike stairs")
)
_DECADES = range(50, 100, 10)


def things(marks: Sequence[Mark]) -> set[int]:
    """The places of such numbers, with the words that say what they are of."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind in (Kind.NUM, Kind.CLOCK):
            out |= set(_of_number(marks, place))
    for place, mark in enumerate(marks):
        if mark.text in _CARDIO and not mark.names:
            out |= _cardio(marks, place)
    return out


def _of_number(marks: Sequence[Mark], place: int) -> Iterator[int]:
    after = marks[place + 1] if place + 1 < len(marks) else None
    before = marks[place - 1] if place else None
    if before is not None and before.text in ("£", "$", "€") and before.end == marks[place].start:
        yield from (place - 1, place)
    linked = before is not None and before.kind is Kind.X and before.text != "by"
    stepped = after is not None and after.text == "steps" and marks[place + 2 : place + 3] != []
    if stepped and marks[place + 2].kind is Kind.EACH:
        return
    if is_age(marks, place):
        yield place
        if [m.kind for m in marks[place + 1 : place + 3]] == [Kind.NOT, Kind.NUM]:
            yield from (place + 1, place + 2)
    elif after is not None and _is_unit(after) and not linked and not is_placed(marks, place + 1):
        yield from (place, place + 1)
        if before is not None and before.kind in (Kind.AT, Kind.DASH, Kind.MINUS, Kind.X):
            yield place - 1
        if before is not None and before.kind in (Kind.OR, Kind.TO, Kind.DASH) and place > 1:
            yield from (place - 1, place - 2)
    elif is_described(marks, place) and not linked:
        yield from (place, place + 1, place + 2)
    elif is_score(marks, place):
        yield from range(place, place + (3 if marks[place + 1].kind is Kind.DASH else 4))
    elif (
        _is_distance(marks, place)
        or _is_decade(marks, place)
        or is_wanted(marks, place)
        or is_body_change(marks, place)
    ):
        yield from (place, place + 1)
    elif ahead := _to_go(marks, place):
        yield from ahead
    elif _is_numbered(marks, place):
        yield from (place - 1, place)
    elif _is_of_thing(marks, place) or _is_run(marks, place):
        yield place
        yield from set_up(marks, place)
        if [m.text for m in marks[place + 1 : place + 2]] == ["of"] and [
            m.kind for m in marks[place + 2 : place + 3]
        ] == [Kind.NUM]:
            yield from (place + 1, place + 2)
    elif _is_likened(marks, place):
        yield from (place, place + 1)
    elif _is_part_of(marks, place):
        yield from (place, place + 3)


def _is_part_of(marks: Sequence[Mark], place: int) -> bool:
    """`2 of my 3 pairs of straps`, `one of our two racks`: some of so many things that are no sets."""
    said = [w for m in marks[place + 1 : place + 3] for w in m.text.split()]
    counted = kind_at(marks, place + 3) is Kind.NUM and kind_at(marks, place + 5) is not Kind.NUM
    things = kind_at(marks, place + 4) in (Kind.WORD, Kind.PAIR)
    return said[:1] == ["of"] and said[1:2] in (["my"], ["our"], ["the"], ["his"], ["her"]) and counted and things


def _is_likened(marks: Sequence[Mark], place: int) -> bool:
    """`looked like 200 kg`: what it was not."""
    unit = place + 1 < len(marks) and marks[place + 1].kind in (Kind.KG, Kind.LB)
    said = [w for m in marks[max(0, place - 2) : place] for w in m.text.split()][-2:]
    return unit and said in (["looked", "like"], ["looks", "like"], ["sounded", "like"])


def _is_unit(mark: Mark) -> bool:
    """`people`, `degrees`; the months of `six months ago`."""
    if mark.kind is Kind.OTHERTIME:
        return mark.text.split(" ")[0] in UNITS and mark.text.endswith("ago")
    return mark.kind in (Kind.WORD, Kind.FILL, Kind.TALKNUM, Kind.OTHERPERSON) and mark.text in UNITS


def _is_of_thing(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number stands for something else by itself: `a queue of 4`, `level 8`, `105 in mind`."""
    said = [w for m in marks[place + 1 : place + 4] for w in m.text.split()]
    if said[:1] == ["in"] and said[1:2] in (["the"], ["a"]) and set(said[2:3]) & _GROUPS - {"row", "pack"}:
        return True  # `15 in the queue`
    group = place > 1 and marks[place - 1].text == "of" and marks[place - 2].text in _GROUPS
    meant = is_in_mind(marks, place) or is_price(marks, place) or is_goal(marks, place) or _is_year(marks, place)
    return group or meant or is_setting(marks, place) or is_clock(marks, place)


def _is_year(marks: Sequence[Mark], place: int) -> bool:
    """`music from 1985`, `first time since 2019`."""
    value, led = marks[place].value, marks[place - 1].text.split()[-1:] if place else []
    plain = len(marks[place].text) == len("1985") and marks[place].text.isdigit() and value is not None
    unit = kind_at(marks, place + 1) in (Kind.M, Kind.METRES, Kind.KG, Kind.LB, Kind.REPS, Kind.X, Kind.S)
    return plain and value in _YEARS and led in ([w] for w in _OF_YEARS) and not unit


_YEARS = range(1900, 2100)
_OF_YEARS = ("from", "since", "in", "of", "circa", "like", "its")


def _to_go(marks: Sequence[Mark], place: int) -> range:
    """`2 more sets to go`, `3 left to go`: what is still to come; no place where it is not said."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.MORE, Kind.LEFT, Kind.SETS, Kind.SET, Kind.TANK):
        at += 1
    said = " ".join(m.text for m in marks[place + 1 : at + 2])
    linked = place > 0 and marks[place - 1].kind in (Kind.X, Kind.FOR, Kind.AT)
    to_go = at > place + 1 and [m.text for m in marks[at : at + 2]] == ["to", "go"]
    return (
        range(place, at + 2 * to_go)
        if (to_go or said.endswith(("more to go", "left to go"))) and not linked
        else range(0)
    )


def _is_numbered(marks: Sequence[Mark], place: int) -> bool:
    """`coffee number 3`: which of its kind a thing is that is no set."""
    thing = marks[place - 2] if place > 1 else None
    return (
        thing is not None
        and (thing.kind in (Kind.WORD, Kind.TALKNUM, Kind.OTHERPERSON) or thing.text in ("machine", "rack", "bench"))
        and not thing.names
        and thing.text not in _OF_SETS
        and marks[place - 1].text in ("number", "no", "nr", "num", "#")
        and marks[place - 1].kind in (Kind.FILL, Kind.NO, Kind.WORD)
    )


_OF_SETS = frozenset(
    words(
        "try attempt go round lift effort rep run lap trip length carry hold push walk shot take work time single",
        "double triple bout interval one station circuit pass turn exercise movement",
    )
)
"""What a set may be called."""


def _is_run(marks: Sequence[Mark], place: int) -> bool:
    """`did parkrun in 28:14`: how long another thing took."""
    if marks[place].kind is not Kind.CLOCK:
        return False
    start, end = part_of(marks, place)
    said = {w for m in marks[start:place] for w in m.text.split()}
    return bool(said & _DISTANCE) and not any(m.kind is Kind.NAME for m in marks[start:end])


def _is_distance(marks: Sequence[Mark], place: int) -> bool:
    """`a 5k this morning`, `32k on the trails`: how far, not how heavy."""
    unit = marks[place + 1] if place + 1 < len(marks) else None
    if unit is None or unit.text not in ("k", "km", "kms", "miles", "mile"):
        return False
    start, end = part_of(marks, place)
    if any(m.kind in (Kind.X, Kind.REPS) for m in marks[start:end]):
        return False
    said = {w for i, m in enumerate(marks[start:end], start) if i not in (place, place + 1) for w in m.text.split()}
    led = marks[place - 1].text.split()[-1:] if place else []
    article = led in (["a"], ["an"], ["my"], ["easy"], ["quick"], ["slow"], ["parkrun"])
    return article or bool(said & _DISTANCE)


def _is_decade(marks: Sequence[Mark], place: int) -> bool:
    """`the 90s playlist`."""
    said = [m.text for m in marks[place + 1 : place + 4]]
    value = marks[place].value
    described = 2 if kind_at(marks, place + 2) in (Kind.COMMA, Kind.OPEN) else 3
    listed = kind_at(marks, place - 1) in (Kind.S, Kind.SECONDS, Kind.NUM, Kind.COMMA)  # `45s 50s (music was awful)`
    return value in _DECADES and not listed and said[:1] == ["s"] and bool(set(said[1:described]) & _MUSIC)


def _cardio(marks: Sequence[Mark], place: int) -> set[int]:
    """The numbers of a part that tells of a machine for the heart, which the session does not have."""
    start, end = part_of(marks, place)
    end = next((i for i in range(start, end) if marks[i].kind is Kind.THEN), end)
    part = range(start, end)
    named = (i for i in part if marks[i].kind is Kind.NAME and marks[i].text not in _CARDIO)
    if any(marks[i].kind in (Kind.X, Kind.REPS, Kind.KG, Kind.LB) for i in part) or any(named):
        return set()
    return {i for i in part if marks[i].kind not in EDGES}
