"""Bare numbers of talk: `gym at 7`, `2 sets to go`, `won 24-17`, `down 2kg this week`."""

from collections.abc import Callable, Sequence
from functools import cache, partial

from bot.notation.bounds import MINUTE_S
from bot.notation.clauses import EDGES, beside, continues_list, part_of
from bot.notation.compared import is_compared
from bot.notation.kinds import Kind
from bot.notation.tied import is_led_at, is_tied
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def talk_numbers(marks: Sequence[Mark]) -> set[int]:
    """The places of bare numbers that talk tells of: `gym at 7`, `2 sets to go`, `4 people waiting`.

    A number with a unit, a link, a side or another number beside it is a set's; a bare one only in a part that holds
    nothing but words that go with sets.
    """
    out: set[int] = set()
    tied = cache(partial(is_tied, marks))
    for place, mark in enumerate(marks):
        if mark.kind is Kind.CLOCK and place and marks[place - 1].kind is Kind.AT and marks[place - 1].text != "@":
            out.add(place)
        if mark.kind is Kind.CLOCK and _is_duration(marks, place):
            out.add(place)
        if mark.kind is Kind.BAD and place + 1 < len(marks) and marks[place + 1].kind in _COUNTED_TALK:
            out.add(place)
        if mark.kind in (Kind.NUM, Kind.BODY) and (_is_load_judged(marks, place) or _has_grown(marks, place)):
            out.add(place)
        if mark.kind is not Kind.NUM:
            continue
        after = beside(marks, place, 1)
        steps = [m.text for m in marks[place + 1 : place + 3]]
        if steps == ["k", "steps"]:
            out |= {place, place + 1}
        if _is_on_scale(marks, place) or is_named_so(marks, place) or _is_weight_change(marks, place):
            out.add(place)
        if _took(marks, place):
            out |= {place, place + 1, *_seconds_behind(marks, place + 2)}
        if _is_rest(marks, place):
            out |= {place, place + 1, place + 2}
        elif _is_nth(marks, place) or _is_hour(marks, place) or _is_judged(marks, place):
            out.add(place)
        elif body := _weighs_in(marks, place):
            out |= body
        elif (after is not None and after.kind is Kind.HOURS) or _is_to_come(marks, place) or _is_body(marks, place):
            out |= {place, place + 1}
        elif _is_result(marks, place):
            out.add(place)
        elif _is_record_by(marks, place):
            out |= {place - 1, place}
        elif is_compared(marks, place):
            out |= {place, place + 1}
        elif not tied(place) and _is_talk(marks, place, tied) and not _opens_sets(marks, place):
            out.add(place)
    return out


def _is_weight_change(marks: Sequence[Mark], place: int) -> bool:
    """`weighed in at 82.4, down 0.6 since last week`: how far the body's weight went."""
    led = {w for m in marks[max(0, place - 2) : place] for w in m.text.split()}
    if led.isdisjoint(_WENT):
        return False
    weighed = any(m.kind in (Kind.TALKNUM, Kind.GAP) and "weigh" in m.text for m in marks[:place])
    return weighed and not is_tied(marks, place)


_WENT = frozenset(words("down up lost gained minus plus"))


def _is_record_by(marks: Sequence[Mark], place: int) -> bool:
    """`pr by 5`: how far a record was beaten."""
    return place > 1 and marks[place - 1].text == "by" and bool(set(marks[place - 2].text.split()) & _RECORDS)


_RECORDS = frozenset(words("pr pb prd pbd best record it last"))


def _is_rest(marks: Sequence[Mark], place: int) -> bool:
    """`30 sec rest`: the time between two sets."""
    timed = place + 2 < len(marks) and marks[place + 1].kind in (Kind.SECONDS, Kind.S, Kind.MINUTES)
    return timed and marks[place + 2].text in ("rest", "rests", "break", "breather", "pause")


_COUNTED_TALK = (Kind.TALKNUM, Kind.WORD, Kind.OTHERPERSON, Kind.GAP)
_LONG = 15
"""Minutes: a longer `time 52:10` is that of the session, not of a hold (common practice, no source)."""


_NUMBERED = frozenset(words(
    "rack machine station platform locker lane room bus gate level floor treadmill studio tram channel track episode "
    "chapter terminal bay week phase cycle hr bpm"
))  # fmt: skip
"""Things that have a number of their own."""
_TURNED_UP = frozenset(words("music volume speakers headphones pulse heart hr bpm rate heartrate temp aircon"))
"""What stands at a number of its own: `music at 100`."""


def is_named_so(marks: Sequence[Mark], place: int) -> bool:
    """`rack 4 was free`, `here since 7`, `stuck on the 405`: the number of a thing or a road, or an hour."""
    named = place > 0 and marks[place - 1].kind in (Kind.NAME, Kind.WEAK) and bool(marks[place - 1].names)
    before = marks[place - 1].text.split()[-1:] if place and not named else []
    if before == ["half"]:
        before = marks[place - 2].text.split()[-1:] if place > 1 else []
    linked = place + 1 < len(marks) and marks[place + 1].kind in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.REPS)
    value = marks[place].value
    turned = before == ["at"] and place > 1 and bool(set(marks[place - 2].text.split()) & _TURNED_UP)
    hour = before == ["since"] and value is not None and value <= _LAST_HOUR
    stuck = place > 0 and marks[place - 1].text == "stuck on the" and value is not None and value > _MOST_REPS
    return not linked and (hour or stuck or turned or bool(set(before) & _NUMBERED))


_MOST_REPS = 30
"""Repetitions: nobody is stuck at a later one (common practice, no source)."""


def _is_on_scale(marks: Sequence[Mark], place: int) -> bool:
    """`hit 82 on the scale`."""
    _, end = part_of(marks, place)
    end = next((i for i in range(place + 1, end) if marks[i].kind is Kind.NUM), end)
    return bool({"scale", "scales"} & {w for m in marks[place + 1 : min(end, place + 5)] for w in m.text.split()})


def _took(marks: Sequence[Mark], place: int) -> bool:
    """`done in 55 minutes`, `took 48 min`: how long the session took."""
    timed = place + 1 < len(marks) and marks[place + 1].kind in (Kind.MINUTES, Kind.HOURS)
    before = [w for m in marks[max(0, place - 3) : place] for w in m.text.split()]
    after = [m.text for m in marks[place + 2 : place + 3]]
    if timed and after and after[0] in ("early", "late", "behind", "ahead", "ago", "walk", "drive", "away"):
        return True
    return timed and bool(
        set(before) & _TAKING
        or before[-1:] == ["within"]
        or (before[-1:] == ["in"] and {"done", "finished"} & set(before))
    )


def _seconds_behind(marks: Sequence[Mark], at: int) -> set[int]:
    """The `58` of `took 1 min 58`."""
    value = marks[at].value if at < len(marks) and marks[at].kind is Kind.NUM else None
    ends = at + 1 >= len(marks) or marks[at + 1].kind in (*EDGES, Kind.AND, Kind.THEN, Kind.SECONDS)
    return {at} if value is not None and value < MINUTE_S and ends else set()


def _is_duration(marks: Sequence[Mark], place: int) -> bool:
    """`time 52:10`, `took 48:30`: how long the session took."""
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.FILL, Kind.WAS, Kind.COLON) or marks[at].text == "of"):
        if marks[at].text in _TAKING:
            break
        at -= 1
    taken = at >= 0 and bool({*marks[at].text.split()} & _TAKING)
    return taken and marks[place].parts[0] >= _LONG


_TAKING = frozenset(words("time took duration total length timer clock elapsed lasted"))


def _is_hour(marks: Sequence[Mark], place: int) -> bool:
    """`5 in the morning`, `finished work at 6`: a time of day."""
    if [m.kind for m in marks[max(0, place - 2) : place]] == [Kind.UNDONE, Kind.AT] and "work" in marks[place - 2].text:
        return True
    said = [m.text for m in marks[place + 1 : place + 4]]
    return said[:2] == ["in", "the"] and said[2:] in (["morning"], ["evening"], ["afternoon"])


_BEYOND = frozenset(["beyond"])
_JUDGED = frozenset(words("easy heavy light hard tough ok okay fine good great smooth challenging"))


def _is_judged(marks: Sequence[Mark], place: int) -> bool:
    """`135 was too easy`: a load that is spoken of, with no repetitions beside it."""
    start, end = part_of(marks, place)
    verb = place + 1 + (place + 1 < end and marks[place + 1].kind is Kind.S)
    rest = [m for m in marks[verb + 1 : end] if m.text not in _BEYOND]
    if len(rest) < len(marks[verb + 1 : end]) and marks[verb].text in ("was", "were"):
        return start == place or all(m.kind is Kind.FILL for m in marks[start:place])
    was = verb < end and marks[verb].text in ("was", "was all", "was only", "felt")
    was = was and (start == 0 or marks[start - 1].kind is not Kind.COMMA)
    plain = all(m.kind is Kind.FILL for m in (*marks[start:place], *rest))
    return was and plain and bool(rest) and rest[-1].text in _JUDGED


_OF_LOADS = (Kind.S, Kind.KG, Kind.LB)
_IS = frozenset(words("is are feels feel felt seems seem was were getting"))
_OF_NOW = frozenset(words("now already lately already today tbh honestly coach tho though"))
_JUDGING = (Kind.FILL, Kind.WAS, Kind.FEELS)


def _is_load_judged(marks: Sequence[Mark], place: int) -> bool:
    """`the 40s feel light`, `bw is too easy now`: a load with its unit, judged, and no number in the rest."""
    start, end = part_of(marks, place)
    united = place + 1 < end and marks[place + 1].kind in _OF_LOADS
    if not (united or marks[place].kind is Kind.BODY):
        return False
    rest = [m for m in marks[place + 1 + united : end] if m.kind is not Kind.GAP]
    said = [w for m in rest for w in m.text.split()]
    while said and said[-1] in _OF_NOW:
        said.pop()
    judged = len(said) > 1 and said[0] in _IS and said[-1] in _JUDGED
    plain = all(m.kind in _JUDGING for m in (*marks[start:place], *rest))
    numbers = (Kind.NUM, Kind.CLOCK, Kind.X, Kind.BODY, Kind.SAME, Kind.DONE)
    alone = not any(m.kind in numbers for m in (*marks[:place], *marks[place + 1 :]))
    return judged and plain and alone


_GROWN = frozenset(words("become became becoming got gotten getting"))
_GENERAL = (*_JUDGING, *_OF_LOADS, Kind.WORD, Kind.REPS, Kind.AT, Kind.WITH, Kind.NAME, Kind.WEAK, Kind.GAP)


def _has_grown(marks: Sequence[Mark], place: int) -> bool:
    """`twelve has become too easy`, `65 is getting too light`, `8 is too easy now`: of sets in general, and no set."""
    start, end = part_of(marks, place)
    said = [w for m in marks[place + 1 : end] for w in m.text.split()]
    now = bool(said) and said[-1] in ("now", "lately", "already")
    while said and said[-1] in _OF_NOW:
        said.pop()
    if not said or said[-1] not in _JUDGED:
        return False
    if not all(m.kind in _GENERAL for i, m in enumerate(marks[start:end], start) if i != place):
        return False
    grown = bool(_GROWN & set(said)) and bool({"has", "is", "have", "are", "became", "getting"} & set(said))
    return grown or (now and "too" in said and bool({"is", "are"} & set(said)))


def _is_nth(marks: Sequence[Mark], place: int) -> bool:
    """`on rep 3`: which repetition, not how many."""
    before = beside(marks, place, -1)
    earlier = marks[place - 2].kind if place > 1 else None
    return before is not None and before.text == "rep" and earlier is not Kind.NUM


def _is_result(marks: Sequence[Mark], place: int) -> bool:
    """`won 24-17`: two numbers of talk with a dash."""
    start, end = part_of(marks, place)
    part = marks[start:end]
    numbers = [i for i, m in enumerate(part) if m.kind is Kind.NUM]
    if numbers == [0, 2] and part[1].kind is Kind.DASH and part[2].tight:
        return any(m.text.split()[:1] in (["down"], ["up"], ["win"], ["loss"], ["at"]) for m in part[3:4])
    score = any(set(m.text.split()) & _SCORED for m in part[: numbers[0] if numbers else 0])
    if score and len(numbers) == 2 and part[numbers[1]].text in ("nil", "zero", "0") and numbers[1] == numbers[0] + 1:
        return True
    if len(numbers) != 2 or [m.kind for m in part[numbers[0] : numbers[1] + 1]] != [Kind.NUM, Kind.DASH, Kind.NUM]:
        return False
    return part[numbers[1]].tight and (score or any(m.kind is Kind.WORD for m in part[: numbers[0]]))


_SCORED = frozenset(words("won lost drew beat beaten score scored match game"))


_LIGHTEST = 40
"""Kilograms or pounds: beside the body a greater number is its own weight (common practice, no source)."""


def _weighs_in(marks: Sequence[Mark], place: int) -> set[int]:
    """`72kg bw`, `bw 72`: the body's own weight."""
    value, after = marks[place].value, place + 1
    if value is None or value < _LIGHTEST:
        return set()
    if after < len(marks) and marks[after].kind in (Kind.KG, Kind.LB):
        after += 1
    if after < len(marks) and marks[after].kind is Kind.BODY:
        return set(range(place, after + 1))
    follows = marks[after].kind if after < len(marks) else None
    led = place > 0 and marks[place - 1].kind is Kind.BODY and follows not in (Kind.X, Kind.FOR, Kind.NUM, Kind.REPS)
    return set(range(place - 1, after)) if led else set()


_UNITS = (Kind.KG, Kind.LB)


def _is_body(marks: Sequence[Mark], place: int) -> bool:
    """`down 2kg this week`: the body's weight."""
    after = beside(marks, place, 1)
    if after is None or after.kind not in _UNITS:
        return False
    start, end = part_of(marks, place)
    words = {w for m in marks[start:end] for w in m.text.split()}
    if place > 0 and marks[place - 1].text in ("im", "i am", "am"):
        return not any(m.kind in (Kind.X, Kind.FOR, Kind.REPS) for m in marks[place:end])
    alone = sum(m.kind is Kind.NUM for m in marks[start:end]) == 1
    listed = (
        place > start and marks[place - 1].kind is Kind.WORD and not any(m.kind is Kind.NAME for m in marks[start:end])
    )
    if alone and listed and all(m.kind is Kind.FILL for m in marks[place + 2 : end]):
        return True
    return (
        alone
        and bool(words & {"down", "up", "lost", "gained", "heavier", "lighter"})
        and bool(
            words
            & (
                {"week", "weeks", "month", "months", "weight", "year", "scale", "scales", "holiday", "xmas"}
                | set(_MONTHS)
            )
        )
    )


_MONTHS = words(
    "january february march april june july august september october november december christmas easter summer"
)
_LAST_HOUR = 24
"""`gym at 7` is a time of day; a greater number after `at` is none."""
_TALKY = frozenset(
    words(
        "gym session sessions week weeks weekend day days exercise exercises home bed kids waiting rack station",
        "machine people see up start starting begin end half way through train training trained workout workouts",
        "wk wks spot help coach one things tired energy work works boss morning evening afternoon tonight rest",
        "water lunch dinner breakfast block lifts movements you your they them there here where who",
    )
)
"""Words of talk that do not go with a bare number of repetitions."""


def _is_talk(marks: Sequence[Mark], place: int, tied: Callable[[int], bool]) -> bool:
    start, end = part_of(marks, place)
    if is_led_at(marks, place):
        end = next((i for i in range(place, end) if marks[i].text in _OWN or marks[i].kind is Kind.COLON), end)
    part = marks[start:end]
    if any(m.kind in (Kind.X, Kind.KG, Kind.LB, Kind.REPS) for m in part) or _is_of_unknown(marks, start, place):
        return False
    if any(m.kind is Kind.NUM and tied(i) for i, m in enumerate(part, start)):
        return False
    before = beside(marks, place, -1)
    if before is not None and before.kind is Kind.AT and before.text != "@" and place - 1 >= start:
        sets = (Kind.LASTSET, Kind.SET, Kind.SETS, Kind.ORD, Kind.ALL, Kind.NUM, Kind.EMPTY, Kind.FAILED)
        value = marks[place].value
        if (place - 2 >= start and marks[place - 2].kind in sets) or (value is not None and value > _LAST_HOUR):
            return False
        if any(m.kind in (Kind.SET, Kind.LASTSET, Kind.ORD) for m in marks[start:place]):
            return False
        return not any(m.kind is Kind.NUM for m in marks[start : place - 1])
    if [m.text for m in marks[max(0, place - 2) : place]] in (["so", "only"], ["so", "just"]):
        return False
    if _is_only_one(marks, place) and any(m.kind is Kind.NAME and m.names for m in marks[start:place]):
        return False
    after = beside(marks, place, 1)
    if place + 1 < end and marks[place + 1].kind is Kind.FILL and continues_list(marks, place):
        return False
    if after is not None and place + 1 < end and (after.kind in (Kind.WORD, Kind.OTHERPERSON) or after.text in _TALKY):
        return True
    if place == start:
        return False
    told = (Kind.GAP, Kind.ALL, Kind.LASTSET, Kind.NAME, Kind.WEAK)
    words = {w for m in part if m.kind not in told for w in m.text.split()}
    return any(m.kind in (Kind.WORD, Kind.OTHERPERSON) for m in part) or bool(words & _TALKY)


def _is_of_unknown(marks: Sequence[Mark], start: int, place: int) -> bool:
    """`12 sit to stands`, `the sit to stands off the chair, twelve of them`: counts an exercise that there is not."""
    counted = [m.text for m in marks[place + 1 : place + 3]] == ["of", "them"]
    named = marks[start:place] if counted else marks[place + 1 : place + 2]
    return any(m.kind is Kind.NAME and not m.names for m in named)


def _opens_sets(marks: Sequence[Mark], place: int) -> bool:
    """The 12 of `up from the chair 12, 11 and 10`, the 15 of `rows at 15 after that: 10 each`: sets go on behind it."""
    before = beside(marks, place, -1)
    if before is not None and before.kind is Kind.AT:
        at = place + 1
        while at < len(marks) and marks[at].kind is Kind.FILL:
            at += 1
        named = place > 1 and marks[place - 2].kind is Kind.NAME and bool(marks[place - 2].names)
        return named and [m.kind for m in marks[at : at + 2]] in ([Kind.COLON, Kind.NUM], [Kind.COMMA, Kind.NUM])
    if before is None or before.kind is not Kind.WORD or before.text in _TALKY:
        return False
    listed = [m.kind for m in marks[place + 1 : place + 4]]
    links = (Kind.COMMA, Kind.AND)
    goes_on = listed[2:] == [] or listed[2] in (*links, *EDGES)
    return len(listed) > 1 and listed[0] in links and listed[1] is Kind.NUM and goes_on


_OWN = ("so", "but", "then")
"""Words behind which a clause of its own starts."""


def _is_only_one(marks: Sequence[Mark], place: int) -> bool:
    """`did swings before breakfast fifteen`: the one number of a message, at its end."""
    ends = all(m.kind in (Kind.STOP, Kind.FILL, Kind.REPS) for m in marks[place + 1 :])
    return ends and sum(m.kind in (Kind.NUM, Kind.CLOCK) for m in marks) == 1


def _is_to_come(marks: Sequence[Mark], place: int) -> bool:
    """`2 sets left`, `3 exercises to go`, `still 3 to go`."""
    counted = beside(marks, place, 1)
    if [m.text for m in marks[place + 1 : place + 3]] == ["to", "go"]:
        return (marks[place - 1].kind if place else None) not in (Kind.X, Kind.FOR, Kind.AT)
    if counted is None or counted.kind not in (Kind.SETS, Kind.SET, Kind.FILL, Kind.WORD) or counted.text in _OWN:
        return False
    following = [m.text for m in marks[place + 2 : place + 4] if m.kind is not Kind.GAP]
    return following[:1] in (["left"], ["remaining"], ["more"], ["more to go"]) or following == ["to", "go"]
