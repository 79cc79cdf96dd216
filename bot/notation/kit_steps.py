"""By how much the loads of the kit go up, which is no set: `pin only goes 5 by 5 here`, `the stack goes up in 5s`."""

import re
from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_KIT = (
    r"(?:pins?|stacks?|plates|weights?|machines?|cables?|dumbbells?|dbs|kettlebells?|kbs|bells|rack|racks|loads?|it|"
    r"they|everything|numbers|settings?|holes|discs)"
)
_OFTEN = r"(?: (?:only|just|all|always|here|there|really|at this gym|in this gym|at my gym|in my gym|at ours))*"
_GOES = r"(?:goes|go|going|jumps?|jumping|moves?|climbs?|increases?|rises?|steps?|comes?)"
_UNIT = r"(?: (?:kg|kgs|kilos?|lbs?|pounds?))?"
_STEP = (
    rf"(?:#{_UNIT} (?:by|and|at a|in) #{_UNIT}|#{_UNIT} s|#{_UNIT} (?:at a )?(?:time|jumps?|steps?|increments?|a time)|"
    rf"(?:jumps?|steps?|increments?) of #{_UNIT})"
)
_END = (
    r"(?: (?:jumps?|steps?|increments?|time|only|here|there|though|tho|sadly|annoyingly|at this gym|in this gym|"
    r"at my gym|in my gym))*"
)
_STEPPED = re.compile(
    rf"(?P<before>(?:.* )?){_KIT}{_OFTEN} {_GOES}{_OFTEN}(?: (?:up|down|on))?{_OFTEN}"
    rf"(?: (?:in|by|at|of|with))?(?: (?:the|a|steps of|jumps of))? {_STEP}{_END}"
)
NEEDS = frozenset(words(
    "goes go going jump jumps jumping move moves climb climbs increase increases rise rises step steps come comes"
))  # fmt: skip


def without_kit_steps(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such a clause without bearing."""
    gone: set[int] = set()
    start = 0
    for place in range(len(marks) + 1):
        if place < len(marks) and marks[place].kind not in EDGES:
            continue
        gone |= _of_steps(marks, start, place)
        start = place + 1
    return masked(marks, gone) if gone else marks


def _of_steps(marks: Sequence[Mark], start: int, end: int) -> set[int]:
    """The marks of a clause from the kit on, where it tells by how much that goes up: always by the same."""
    part = marks[start:end]
    numbers = {m.value for m in part if m.kind is Kind.NUM}
    if len(numbers) != 1 or any(m.kind in (Kind.NAME, Kind.REPS, Kind.SETS) or m.parts for m in part):
        return set()
    found = _STEPPED.fullmatch(" ".join("#" if m.kind is Kind.NUM else m.text for m in part))
    if found is None or "#" in found["before"]:
        return set()
    of_kit = (i for i in range(start, end) if set(marks[i].text.split()) & _WORDS_OF_KIT)
    first = next(of_kit, start)
    return set(range(first, end))


_WORDS_OF_KIT = frozenset(words(
    "pin pins stack stacks plate plates weight weights machine machines cable cables dumbbell dumbbells db dbs "
    "kettlebell kettlebells kb kbs bells rack racks load loads it they everything numbers setting settings holes discs"
))  # fmt: skip
