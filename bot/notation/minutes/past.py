"""Times of day that are over, and how long things took: `watched the match till 2am`, `warmed up for 10 min`."""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import time_of_day, words_of
from bot.notation.minutes.durations import duration_at
from bot.notation.minutes.parts import GOING, MUST, RUNNING, is_edge, is_to_clock, part_of
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_UNTIL = frozenset(["until", "till", "til"])
_PAST = frozenset(words(
    "slept sleep asleep watched watching was were stayed worked up awake gaming gamed partied studying studied stuck",
    "drank out busy nap napped danced cramming baby revising drove queued waited been kept travelled",
))  # fmt: skip
_AHEAD = frozenset(
    words("have got only need must gotta leave ive weve limited free time today open here stay can will")
)


def is_over(marks: Sequence[Mark], place: int) -> bool:
    """Whether a time of day at `until` ended what is over: `was up until 3 with the baby`."""
    if not set(words_of(marks[place])) & _UNTIL:
        return False
    start, _ = part_of(marks, place)
    if place and marks[place - 1].text.split()[-1:] in (["work"], ["working"], ["school"], ["shift"]):
        return True  # `got to work until 10 tonight`
    said = [w for m in marks[start:place] for w in words_of(m)]
    return bool(set(said) & _PAST) and not set(said) & _AHEAD


def is_past(said: Sequence[str]) -> bool:
    """Whether what follows `got 8 before` is over: `my foot slipped`; not `my train leaves`."""
    return any(w in _WENT or (w.endswith("ed") and len(w) > _SHORTEST) for w in said)


_LOST = frozenset(words("lost wasted waited losing wasting"))
"""Before minutes: they are gone."""
_WENT = frozenset(words("went gave fell hit broke slid came rang ran had was were blew lost felt started quit got let"))
_SHORTEST = 4
"""Letters: `need` and `bed` are no past."""


def over(marks: Sequence[Mark]) -> set[int]:
    """The places of such times, of how long a warm-up took, and of `not a minute more`, `i have not much time`."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is Kind.TO and (is_over(marks, place) or is_to_clock(marks, place)):
            found = time_of_day(marks, place + 1)
            if found is not None:
                out |= set(range(place, found[3]))
        if mark.kind is Kind.TO and is_of_gear(marks, place):
            out |= {place, place + 1}
        duration = duration_at(marks, place, False)
        if duration is not None and text_at(marks, place - 1) in _LOST:
            out |= set(range(place, duration[1]))
        out |= set(range(place, _pause_before(marks, place, duration)))
        rest = None if duration is None else _rest_behind(marks, duration[1])
        if rest is not None:
            out |= set(range(place, rest))
        if mark.kind is Kind.CLOCK and _is_of_event(marks, place):
            out.add(place)
        if mark.kind is Kind.NUM:
            out |= _hour_of_event(marks, place)
        if mark.kind is Kind.NOT and _is_of_time(marks, place):
            out |= set(range(*part_of(marks, place)))
        if mark.kind is not Kind.WARMUP:
            continue
        at = place + 1 + (kind_at(marks, place + 1) is Kind.FOR)
        if kind_at(marks, place - 1) is Kind.MINUTES and kind_at(marks, place - 2) is Kind.NUM:
            out |= {place - 2, place - 1, place}
        if kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) is Kind.MINUTES:
            out |= set(range(place, at + 2))
    return out


def _rest_behind(marks: Sequence[Mark], at: int) -> int | None:
    """Where `1 min 10 of rest` ends, from behind its minutes on: a pause, and no hold."""
    end = at + (kind_at(marks, at) is Kind.NUM)
    end += text_at(marks, end) == "of"
    return end + 1 if text_at(marks, end) in ("rest", "resting", "break", "pause", "rests") else None


_LED = frozenset(words("gimme give need rest resting wait waiting taking take another just few hang"))
_LONGEST = 10
"""Minutes of a pause between exercises (common practice, no source)."""


def _pause_before(marks: Sequence[Mark], place: int, duration: tuple[Decimal, int] | None) -> int:
    """Where the time of `gimme 2 min then face pulls` ends: a pause, and no more told of what is next; else `place`.

    `duration` is what starts there: minutes, and the place after them.
    """
    if kind_at(marks, place + 1) is Kind.MINUTES and text_at(marks, place) == "a":
        duration = Decimal(1), place + 2
    if duration is None or not is_before_next(marks, *duration):
        return place
    start, _ = part_of(marks, place)
    led = {w for m in marks[start:place] for w in words_of(m)} & _LED
    named = any(m.kind in (Kind.NAME, Kind.WEAK) for m in marks[start:place])
    return duration[1] if led and not named else place


def is_before_next(marks: Sequence[Mark], minutes: Decimal, end: int) -> bool:
    """Whether so short a time ends before `then face pulls`: what comes next, of which nothing is told."""
    at = end + 1
    named = False
    while at < len(marks) and kind_at(marks, at) in (Kind.FILL, Kind.NAME, Kind.WEAK, Kind.WORD):
        named = named or kind_at(marks, at) in (Kind.NAME, Kind.WEAK)
        named = named or (kind_at(marks, at) is Kind.WORD and not set(words_of(marks[at])) & _OFF)
        at += 1
    ends = at >= len(marks) or is_edge(marks, at)
    return minutes <= _LONGEST and kind_at(marks, end) is Kind.THEN and named and ends


_OFF = GOING | RUNNING | MUST | {"im", "bus", "train", "work"}


_GEAR = frozenset(words("dumbbells dbs kettlebells kbs bells weights plates stack rack"))


def is_of_gear(marks: Sequence[Mark], place: int) -> bool:
    """`the hotel has dumbbells only until 12`: how heavy the heaviest is, and no time of day."""
    said = [w for m in marks[max(0, place - 3) : place] for w in words_of(m)]
    up_to = text_at(marks, place) in (*_UNTIL, "to", "up to") and kind_at(marks, place + 1) is Kind.NUM
    return up_to and bool(set(said) & _GEAR) and not set(said) & {"open", "gym", "leave", "time"}


_EVENTS = frozenset(words(
    "train trains bus tram ferry flight taxi uber cab film movie game match meeting call class school nursery dinner",
    "appointment dentist doctor shift gym pool centre center ride carpool gig concert show lunch breakfast",
    "supper party",
    "drinks bbq interview exam lecture lesson practice bed bedtime delivery plumber choir pickup kickoff church physio",
    "football rugby netball hockey cricket tennis badminton swimming yoga pilates golf rehearsal mass service",
    "home daycare creche curfew barber haircut",
))  # fmt: skip
_HAPPENS = frozenset(words(
    "goes leaves starts comes begins opens ends finishes finished started shuts closes kicks arrives departs is",
    "at until till by start leave close shut",
))  # fmt: skip
_SAID_OF = 5
"""Words before a time that tell what happens then."""


def _is_of_event(marks: Sequence[Mark], place: int) -> bool:
    """`train goes 19:05 so i must stop`, `meeting 19:30`: when something happens, and no hold of nineteen minutes."""
    start, _ = part_of(marks, place)
    said = [w for m in marks[max(start, place - _SAID_OF) : place] for w in words_of(m)]
    names = any(m.kind in (Kind.NAME, Kind.NUM) for m in marks[start:place])
    event = next((i for i, w in enumerate(said) if w in _EVENTS), None)
    linked = event is not None and (event == len(said) - 1 or bool(_HAPPENS & set(said[event + 1 :])))
    return linked and not names


def _hour_of_event(marks: Sequence[Mark], place: int) -> set[int]:
    """The places of `at 4` in `meeting at 4`, `until 3` in `the kids are at school until 3`, `at half seven`: so many
    o'clock, at the end of its part."""
    value, behind = marks[place].value, marks[place + 1] if place + 1 < len(marks) else None
    at = place - 1 - (text_at(marks, place - 1) == "half")
    hour = value is not None and value == int(value) and 1 <= value <= _LAST_HOUR and text_at(marks, at) in _AT_HOUR
    ends = behind is None or behind.kind is Kind.AND or is_edge(marks, place + 1) or behind.text in ("so", "pm", "am")
    if not (hour and ends):
        return set()
    start, _ = part_of(marks, place)
    start = next((i + 1 for i in range(at - 1, start - 1, -1) if marks[i].kind in (Kind.NUM, Kind.NAME)), start)
    said = [w for m in marks[max(start, place - _SAID_OF) : at] for w in words_of(m)]
    work = said[-2:] in [[w, "work"] for w in _WORKED]
    event = work or (bool(set(said[-1:]) & _EVENTS) or (bool(set(said[-2:-1]) & _EVENTS) and said[-1] in _HAPPENS))
    event = event or (text_at(marks, at) == "at" and bool(set(said[-1:]) & TALKED_OF))
    return set(range(at, place + 1)) if event else set()


_LAST_HOUR = 12
_AT_HOUR = frozenset(words("at until till til by from before around about"))
_WORKED = ("finished", "finish", "finishing", "start", "starts", "started", "from", "at", "left", "leave")


def _is_of_time(marks: Sequence[Mark], place: int) -> bool:
    """`not a minute more`, `i have not so much time`: takes back no set."""
    start, end = part_of(marks, place)
    if any(m.kind in _SETS for m in marks[start:end]):
        return False
    return not _TIME.isdisjoint(w for m in marks[start:end] for w in words_of(m))


_TIME = frozenset(("time", "minute", "longer"))
_SETS = (Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.NAME, Kind.SKIP, Kind.SET, Kind.ORD, Kind.LASTSET, Kind.REPS)
