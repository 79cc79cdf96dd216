"""Names that no sets stand with: a machine that is taken, or one that is only passed on the way."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NAMES = (Kind.NAME, Kind.WEAK)
_TAKEN = frozenset(words("busy taken occupied hogged unavailable packed crowded free rammed"))
_PASSED = frozenset(words("near beside behind opposite queue queueing queuing waiting hogging"))
_STEPS = frozenset((Kind.FILL, Kind.WAS, Kind.WORD, Kind.FOR, Kind.AT, Kind.OTHERTIME, Kind.GAP, Kind.ALL, Kind.PLATES))


def only_mentioned(marks: Sequence[Mark]) -> set[int]:
    """The places of names that tell where, or why not: `60x5 while the rack is taken`, `70x8 beside the leg press`."""
    return {
        place
        for place, mark in enumerate(marks)
        if mark.kind in _NAMES and (_is_taken(marks, place) or _is_passed(marks, place))
    }


def _is_taken(marks: Sequence[Mark], place: int) -> bool:
    for at in range(place + 1, min(place + 6, len(marks))):
        mark = marks[at]
        if mark.kind in EDGES or mark.kind not in _STEPS:
            return False
        following = marks[at + 1] if at + 1 < len(marks) else None
        if mark.text in _TAKEN and not (following is not None and following.kind is Kind.TO):
            return True
        if mark.text == "use" and marks[at - 1].text.split()[-1:] == ["in"]:
            return True
    return False


def _is_passed(marks: Sequence[Mark], place: int) -> bool:
    for at in range(place - 1, max(place - 4, -1), -1):
        said = marks[at].text.split()
        if set(said) & _PASSED:
            return True
        if marks[at].kind not in (Kind.FILL, Kind.FOR) and said[-1:] != ["to"]:
            return False
        if said[-1:] == ["to"] and marks[at - 1].text == "next":
            return True
    return False
