"""What is skipped without being named behind the verb: `skipping that one`, `so i left them`, `the third i skipped`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.skips.crossed import PART_ENDS, ends_part
from bot.notation.skips.reach import (
    PRONOUNS,
)
from bot.notation.tokens import Mark


def named_ahead(marks: Sequence[Mark], place: int, used: set[int]) -> tuple[list[Mark], bool, set[int]]:
    """What a pronoun or a bare `skipping` stands for: the name before it, or the exercise under way."""
    named = [i for i, m in enumerate(marks[:place]) if m.kind in (Kind.NAME, Kind.WEAK)]
    numbered = bool(named) and any(m.kind in _NUMBERED for m in marks[named[-1] : place])
    if numbered and not pronoun(marks, place):
        return [], False, used
    both = [m.text for m in marks[place + 1 : place + 2]] == ["both"]
    return [marks[i] for i in named[-2 if both else -1 :]], not named, {place}


def set_before(marks: Sequence[Mark], place: int) -> set[int]:
    """The places of `the third i skipped`, `set 3 not done`: a set of the exercise under way, named before."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.SET, Kind.COLON, Kind.DASH, Kind.WAS):
        if marks[at].text in ("so", "then", "but"):
            return set()
        at -= 1
    number = at > 0 and marks[at].kind is Kind.NUM and marks[at - 1].kind is Kind.SET
    named = at >= 0 and (marks[at].kind in (Kind.ORD, Kind.LASTSET) or number)
    end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in PART_ENDS), len(marks))
    behind = any(m.kind in (Kind.NAME, Kind.WEAK, Kind.NUM) for m in marks[place + 1 : min(end, place + 4)])
    return set(range(at - number, place + 1)) if named and not behind else set()


_NUMBERED = frozenset((Kind.NUM, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.DONE))


def is_bare(marks: Sequence[Mark], place: int) -> bool:
    """`abductor is broken, skipping`, `skip`: the word alone in its part."""
    starts = (
        place == 0 or marks[place - 1].kind in PART_ENDS or marks[place - 1].text in ("so", "im", "ill", "just", "to")
    )
    return marks[place].text in _ALONE and starts and ends_part(marks, place)


_ALONE = ("skip", "skipping", "skipped", "skip it", "pass", "ill skip", "im skipping")


def _stands_for(said: str) -> bool:
    """`so i left them`, `so thats a no from me`: said of what was named before."""
    return said.rsplit(maxsplit=1)[-1] in ("them", "it") or "thats" in said.split()[:2]


def pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether `them` or `it` stands for what is skipped."""
    following = marks[place + 1 : place + 2]
    own = marks[place].kind is Kind.SKIPPED and _stands_for(marks[place].text) and ends_part(marks, place)
    return own or (bool(following) and following[0].text in PRONOUNS)
