"""Bare numbers of talk: `gym at 7`, `2 sets to go`, `won 24-17`, `down 2kg this week`."""

from collections.abc import Callable, Sequence

from bot.notation.clauses import EDGES, beside, continues_list, is_led_at, kind_at, part_of
from bot.notation.compared import is_compared
from bot.notation.kinds import Kind
from bot.notation.talk.body import is_body, is_on_scale, is_weight_change, weighs_in
from bot.notation.talk.judged import has_grown, is_judged, is_load_judged, judges
from bot.notation.talk.times import LAST_HOUR, is_duration, is_hour, is_rest
from bot.notation.tied import is_tied
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def talk_numbers(marks: Sequence[Mark]) -> set[int]:
    """The places of bare numbers that talk tells of: `gym at 7`, `2 sets to go`, `4 people waiting`.

    A number with a unit, a link, a side or another number beside it is a set's; a bare one only in a part that holds
    nothing but words that go with sets.
    """
    out: set[int] = set()
    known: dict[int, bool] = {}

    def tied(place: int) -> bool:
        """Whether a number is a set's, asked of each many times."""
        if place not in known:
            known[place] = is_tied(marks, place)
        return known[place]

    judged = judges(marks)
    scored = any(m.kind is Kind.DASH or not _SCORED.isdisjoint(m.text.split()) for m in marks)
    for place, mark in enumerate(marks):
        if mark.kind is Kind.CLOCK and place and marks[place - 1].kind is Kind.AT and marks[place - 1].text != "@":
            out.add(place)
        if mark.kind is Kind.CLOCK and is_duration(marks, place):
            out.add(place)
        if mark.kind is Kind.BAD and place + 1 < len(marks) and marks[place + 1].kind in _COUNTED_TALK:
            out.add(place)
        if judged and mark.kind in (Kind.NUM, Kind.BODY) and (is_load_judged(marks, place) or has_grown(marks, place)):
            out.add(place)
        if mark.kind is not Kind.NUM:
            continue
        after = beside(marks, place, 1)
        steps = [m.text for m in marks[place + 1 : place + 3]]
        if steps == ["k", "steps"]:
            out |= {place, place + 1}
        if is_on_scale(marks, place) or is_named_so(marks, place) or is_weight_change(marks, place):
            out.add(place)
        if is_rest(marks, place):
            out |= {place, place + 1, place + 2}
        elif _is_nth(marks, place) or is_hour(marks, place) or is_judged(marks, place):
            out.add(place)
        elif body := weighs_in(marks, place):
            out |= body
        elif (after is not None and after.kind is Kind.HOURS) or _is_to_come(marks, place) or is_body(marks, place):
            out |= {place, place + 1}
        elif scored and _is_result(marks, place):
            out.add(place)
        elif _is_record_by(marks, place):
            out |= {place - 1, place}
        elif is_compared(marks, place):
            out |= {place, place + 1}
        elif (
            not tied(place)
            and _is_talk(marks, place, tied)
            and not _opens_sets(marks, place)
            and not _is_put_right(marks, place)
        ):
            out.add(place)
    return out


def _is_put_right(marks: Sequence[Mark], place: int) -> bool:
    """`8, 8, no 9 lol my belt broke`: behind a number, what it was instead."""
    led = kind_at(marks, place - 1) is Kind.NO and marks[place - 1].text in ("no", "no wait", "wait no")
    behind = place - 2 - (kind_at(marks, place - 2) is Kind.COMMA)
    plain = marks[place + 1].text in _MOODS if place + 1 < len(marks) else True
    return led and place > 1 and kind_at(marks, behind) is Kind.NUM and plain


_MOODS = frozenset(words("lol haha hah ha lmao xd ffs sorry whoops oops argh felt 😅 😂 🤦 🙈"))


def _is_record_by(marks: Sequence[Mark], place: int) -> bool:
    """`pr by 5`: how far a record was beaten."""
    return place > 1 and marks[place - 1].text == "by" and bool(set(marks[place - 2].text.split()) & _RECORDS)


_RECORDS = frozenset(words("pr pb prd pbd best record it last"))
_COUNTED_TALK = (Kind.TALKNUM, Kind.WORD, Kind.OTHERPERSON, Kind.GAP)
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
    hour = before == ["since"] and value is not None and value <= LAST_HOUR
    stuck = place > 0 and marks[place - 1].text == "stuck on the" and value is not None and value > _MOST_REPS
    placed = place > 1 and marks[place - 2].text.split()[-1:] == ["the"]  # `on the floor 9, 8, 8`
    return not linked and (hour or stuck or turned or (not placed and bool(set(before) & _NUMBERED)))


_MOST_REPS = 30
"""Repetitions: nobody is stuck at a later one (common practice, no source)."""


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
    if kind_at(part, numbers[1] + 1) in _LEFT_OVER:
        return False  # `maybe 2-3 left`: how many more there were
    return part[numbers[1]].tight and (score or any(m.kind is Kind.WORD for m in part[: numbers[0]]))


_LEFT_OVER = (Kind.LEFT, Kind.TANK, Kind.RIRPOST, Kind.RIR, Kind.MORE, Kind.REPS)
_SCORED = frozenset(words("won lost drew beat beaten score scored match game"))
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
        if (place - 2 >= start and marks[place - 2].kind in sets) or (value is not None and value > LAST_HOUR):
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
