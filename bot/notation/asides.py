"""Numbers said beside a set that are no set: a target, a tempo, a rest, a clock, repetitions that were not whole.

`6 out of 8`, `tempo 3-1-1`, `rest was 90s`, `7pm`, `2 half reps`. Plates counted beside the bar are asked about.
"""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NOT_WHOLE = frozenset(words("half partial partials forced cheat cheated cheating assisted negative negatives ugly"))
_OF_DAY = frozenset(words("am pm oclock"))
_TIMES = (Kind.S, Kind.SECONDS, Kind.MINUTES, Kind.M)
_BETWEEN = (Kind.WAS, Kind.FILL, Kind.FOR, Kind.COLON)


def with_asides(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such numbers without bearing, and with plates beside a bar as a slip, which is asked about."""
    said = said_in(marks)
    gone = {place for needs, find in _FOUND if not needs.isdisjoint(said) for place in find(marks)}
    if not gone and Kind.PLATES not in said:
        return list(marks)
    return [
        replace(mark, kind=Kind.FILL if mark.kind is Kind.PLATES else Kind.GAP, value=None, parts=())
        if place in gone
        else replace(mark, kind=Kind.SLIP)
        if _is_with_bar(marks, place)
        else mark
        for place, mark in enumerate(marks)
    ]


def _is_number(marks: Sequence[Mark], place: int) -> bool:
    return 0 <= place < len(marks) and marks[place].kind is Kind.NUM


def _praise(marks: Sequence[Mark]) -> Iterator[int]:
    """`90x10 great set`, `knee feels A1`: what the set or the client was like."""
    for place in range(1, len(marks)):
        before, mark = marks[place - 1], marks[place]
        after = kind_at(marks, place + 1)
        if mark.kind is Kind.SET and before.text in _LIKE and after not in (Kind.NUM, Kind.LABEL, Kind.ORD):
            yield from (place - 1, place)
        full = _is_number(marks, place) and mark.value in (100, 110, 1000) and after in _ENDS_PRAISE
        if full and before.text.split()[-1:] in _IS[:4]:
            yield place
        best = _is_number(marks, place) and mark.value == 1 and before.text == "a" and before.end == mark.start
        if best and (text_at(marks, place - 2).split()[-1:] in _IS or text_at(marks, place + 1) in ("today", "now")):
            yield from (place - 1, place)


_LIKE = frozenset(words(
    "best worst great good nice solid strong tough hard heavy easy brutal killer rough ugly decent horrible awful bad "
    "lovely sick amazing clean smooth messy horrid grim nasty shaky beautiful perfect fantastic awesome savage monster "
    "grindy poor"
))  # fmt: skip
_ENDS_PRAISE = (None, Kind.FILL, Kind.STOP, Kind.COMMA, Kind.LINE)
_IS = [[w] for w in words("feels felt feel feeling is was are s all im am its doing")]


def _on_a_list(marks: Sequence[Mark]) -> Iterator[int]:
    """`number 3 on the list is done`: which of the plan's lines it is, and no repetitions."""
    for place in range(1, len(marks)):
        if marks[place].kind is not Kind.NUM:
            continue
        on = text_at(marks, place + 1) in ("on", "on the", "on my", "on your", "of the")
        listed = text_at(marks, place + 2) in _LISTS or text_at(marks, place + 3) in _LISTS
        if on and listed and marks[place - 1].text in _NUMBERED:
            yield from (place - 1, place)


_LISTS = ("list", "plan", "sheet", "program", "programme", "menu", "todo")
_NUMBERED = ("number", "numb", "num", "no", "nr", "item", "exercise", "thing", "?")


def _targets(marks: Sequence[Mark]) -> Iterator[int]:
    for place in range(len(marks) - 3):
        if marks[place].kind is not Kind.NUM:
            continue
        said = [m.text for m in marks[place + 1 : place + 3]]
        if said == ["out", "of"] and _is_number(marks, place + 3):
            yield from range(place + 1, place + 4)
        whole, of = marks[place + 2].value, marks[place].value
        both = said[0] == "of" and _is_number(marks, place + 2)
        both = both and kind_at(marks, place - 1) is not Kind.RPE
        if both and whole is not None and of is not None and 6 <= of < whole:
            yield from (place + 1, place + 2)


def _only_part(marks: Sequence[Mark]) -> Iterator[int]:
    """`last 500, only did 400 of it`: what was to be done, of which less was."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        at = place + 1
        while kind_at(marks, at) in _AMOUNTED:
            at += 1
        said = [text_at(marks, n) for n in range(place + 1, at)]
        end = at + 1 + (kind_at(marks, at + 1) in (Kind.METRES, Kind.M, Kind.SECONDS, Kind.S, Kind.REPS))
        of_it = text_at(marks, end) == "of" and text_at(marks, end + 1) in ("it", "them", "that", "those")
        less = _is_number(marks, at) and (marks[at].value or 0) < (mark.value or 0)
        if less and of_it and _PARTLY & set(said) and kind_at(marks, place - 1) not in (Kind.X, Kind.FOR):
            yield place


_AMOUNTED = (Kind.PLANNED, Kind.COMMA, Kind.FILL, Kind.STOP, Kind.METRES, Kind.M, Kind.SECONDS, Kind.S, Kind.WORD)
_PARTLY = frozenset(words("only just got did managed made"))


def _tempos(marks: Sequence[Mark]) -> Iterator[int]:
    for place, mark in enumerate(marks):
        if mark.text != "tempo":
            continue
        after = place + 1
        while kind_at(marks, after) in (Kind.NUM, Kind.DASH, Kind.SLASH, Kind.BAD) and (
            not _is_number(marks, after) or kind_at(marks, after + 1) is not Kind.X
        ):
            after += 1
        if after > place + 2:
            yield from range(place + 1, after)
        before = place - 1
        while before >= 0 and kind_at(marks, before) in (Kind.NUM, Kind.DASH, Kind.SLASH) and marks[before + 1].tight:
            before -= 1
        if before < place - 3:
            yield from range(before + 1, place)


def _rests(marks: Sequence[Mark]) -> Iterator[int]:
    for place, mark in enumerate(marks):
        if mark.text in _RESTED or mark.text in _PAUSED:
            at = place + 1
            while kind_at(marks, at) in _BETWEEN:
                at += 1
            if mark.text in _PAUSED and _is_number(marks, at) and kind_at(marks, at + 1) in _TIMES:
                yield from (at, at + 1)
            if mark.text in _RESTED and kind_at(marks, at) is Kind.CLOCK:
                yield at
        if mark.kind is not Kind.NUM:
            continue
        timed = kind_at(marks, place + 1) in _TIMES or text_at(marks, place + 1) == "count"
        put = text_at(marks, place + 2) == "down" and (mark.value or 0) > _LONGEST_DOWN
        if timed and not put and _is_paced(marks, place + 2):
            yield from (place, place + 1)


_PAUSED = ("rest", "rests", "pause", "paused")
_RESTED = ("rest", "rests", "rested", "resting")
_LONGEST_DOWN = 15
"""Seconds: what is lowered for no longer; `put the 55s down` speaks of dumbbells (common practice, no source)."""
_PACED = frozenset(words(
    "pause pauses paused tempo eccentric eccentrics negative negatives lowering descent descents concentric squeeze "
    "squeezes down stretch"
))  # fmt: skip
"""Words of how long a part of a repetition took: `3s eccentric`, `2 sec pause` (trade use)."""


def _is_paced(marks: Sequence[Mark], place: int) -> bool:
    """Whether such a word stands here, or behind `in the`, `on the way`."""
    said = [w for m in marks[place : place + 4] for w in m.text.split()]
    while said and said[0] in ("on", "the", "in", "at", "way", "of", "a", "slow", "long"):
        said = said[1:]
    return bool(said) and said[0] in _PACED


def _clocks(marks: Sequence[Mark]) -> Iterator[int]:
    for place in range(len(marks) - 1):
        if _is_number(marks, place) and marks[place + 1].text in _OF_DAY:
            yield from (place, place + 1)


def _part_reps(marks: Sequence[Mark]) -> Iterator[int]:
    for place in range(len(marks) - 2):
        if _is_number(marks, place) and marks[place + 1].text in _NOT_WHOLE and marks[place + 2].kind is Kind.REPS:
            yield from range(place, place + 3)


_MISSING = frozenset(words("short shy off under away missing"))


def _short(marks: Sequence[Mark]) -> Iterator[int]:
    """`was 2 reps short on the last`: what was not done."""
    for place in range(len(marks) - 1):
        at = place + 1
        if _is_number(marks, place) and kind_at(marks, at) is Kind.REPS and marks[at + 1 : at + 2]:
            following = [m.text for m in marks[at + 1 : at + 4]]
            if following[0] in _MISSING and "failure" not in following:
                yield from (place, at)


def _sums(marks: Sequence[Mark]) -> Iterator[int]:
    """`10, 9 and 8 so 27 total`, `40 pushups total, 15 15 10`: the sum of what is listed."""
    for place, mark in enumerate(marks):
        if not _is_number(marks, place) or mark.value is None:
            continue
        between = kind_at(marks, place + 1) in (Kind.REPS, Kind.NAME, Kind.WEAK)
        end = place + 1 + between
        whole = kind_at(marks, end) is Kind.TOTAL or (end == place + 1 < len(marks) and marks[end].text == "total reps")
        if not whole:
            continue
        before = [m.value for m in marks[:place] if m.kind is Kind.NUM and m.value is not None]
        after = [m.value for m in marks[end:] if m.kind is Kind.NUM and m.value is not None]
        ends = {sum(before[i:]) for i in range(len(before) - SEVERAL + 1)}
        if mark.value in ends or (len(after) >= SEVERAL and mark.value == sum(after)):
            named = kind_at(marks, place + 1) in (Kind.NAME, Kind.WEAK)
            yield from (place, end) if named else range(place, end + 1)


def _is_with_bar(marks: Sequence[Mark], place: int) -> bool:
    """`bar + 40`, `40 plus the bar`: what was lifted is not the number."""
    mark = marks[place]
    if mark.kind is not Kind.PLATES:
        return False
    said = mark.text.split()
    if "bar" not in said:
        return False
    adds = kind_at(marks, place + 1) in (Kind.PLUS, Kind.AND, Kind.WITH) and _is_number(marks, place + 2)
    added = said[0] in ("plus", "+", "and") or kind_at(marks, place - 1) in (Kind.PLUS, Kind.AND)
    return adds or (added and any(_is_number(marks, at) for at in range(max(0, place - 4), place)))


def _bars(marks: Sequence[Mark]) -> Iterator[int]:
    """`- bar felt slow`, `the bar moved well`: how the bar went says nothing of what was on it."""
    for place, mark in enumerate(marks):
        went = set(text_at(marks, place + 1).split()) & _BAR_WENT
        if mark.kind is Kind.PLATES and mark.text in ("bar", "the bar") and went:
            yield place


_BAR_WENT = frozenset(words(
    "felt feels moved moves moving was is flew flying crawled drifted slowed stalled stuck rolled shot path speed "
    "wobbled bent bends kept wasnt isnt went didnt tipped"
))  # fmt: skip


_FOUND: tuple[tuple[frozenset[str], Callable[[Sequence[Mark]], Iterator[int]]], ...] = (
    (frozenset((Kind.SET, Kind.NUM)), _praise),
    (frozenset(_LISTS), _on_a_list),
    (frozenset(("of",)), _targets),
    (frozenset(("of",)), _only_part),
    (frozenset(("tempo",)), _tempos),
    (_PACED.union(_PAUSED, _RESTED), _rests),
    (_OF_DAY, _clocks),
    (_NOT_WHOLE, _part_reps),
    (_MISSING, _short),
    (frozenset((Kind.TOTAL, "total")), _sums),
    (frozenset((Kind.PLATES,)), _bars),
)
"""What finds such numbers, each with the kinds and the words without which it finds none."""
