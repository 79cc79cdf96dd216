"""What is skipped without being named behind the verb: `skipping that one`, `so i left them`, `the third i skipped`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.skips.crossed import BECAUSE, PART_ENDS, ends_part
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
    first = len(named) - 1
    while first > 0 and not both and named[first - 1] == named[first] - 2 and _joined(marks, named[first] - 1):
        first -= 1
    return [marks[i] for i in named[-2 if both else max(first, 0) :]], not named, {place}


def _joined(marks: Sequence[Mark], place: int) -> bool:
    """The `and` of `calves and planks: giving them a miss`."""
    return marks[place].kind in (Kind.AND, Kind.PLUS)


def set_before(marks: Sequence[Mark], place: int) -> set[int]:
    """The places of `the third i skipped`, `set 3 not done`, `the other i leave`: of the exercise told before."""
    at = place - 1
    kinds = (Kind.FILL, Kind.SET, Kind.COLON, Kind.DASH, Kind.WAS)
    while at >= 0 and marks[at].kind in kinds and marks[at].text not in _OTHER:
        if marks[at].text in ("so", "then", "but"):
            return set()
        at -= 1
    number = at > 0 and marks[at].kind is Kind.NUM and marks[at - 1].kind is Kind.SET
    named = at >= 0 and (marks[at].kind in (Kind.ORD, Kind.LASTSET) or number or marks[at].text in _OTHER)
    end = next((i for i in range(place + 1, len(marks)) if _ends(marks[i])), len(marks))
    behind = any(m.kind in (Kind.NAME, Kind.WEAK, Kind.NUM) for m in marks[place + 1 : min(end, place + 4)])
    return set(range(at - number, place + 1)) if named and not behind else set()


def _ends(mark: Mark) -> bool:
    """Whether a part ends at a mark, or a reason begins: `the last i leave because the adductor cramps`."""
    return mark.kind in PART_ENDS or mark.text in BECAUSE


_OTHER = ("other", "others", "other one", "other ones", "remaining", "remaining one")


_NUMBERED = frozenset((Kind.NUM, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.DONE))


def is_bare(marks: Sequence[Mark], place: int) -> bool:
    """`abductor is broken, skipping`, `skip`: the word alone in its part."""
    starts = (
        place == 0 or marks[place - 1].kind in PART_ENDS or marks[place - 1].text in ("so", "im", "ill", "just", "to")
    )
    return marks[place].text in _ALONE and starts and ends_part(marks, place)


_ALONE = ("skip", "skipping", "skipped", "skip it", "pass", "ill skip", "im skipping")


def _stands_for(said: str) -> bool:
    """`so i left them`, `so thats a no from me`, `so none`: said of what was named before."""
    none = said.split()[:2] in (["so", "none"], ["so", "nothing"], ["hence", "none"])
    return none or said.rsplit(maxsplit=1)[-1] in ("them", "it") or "thats" in said.split()[:2]


def pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether `them` or `it` stands for what is skipped."""
    following = marks[place + 1 : place + 2]
    own = marks[place].kind is Kind.SKIPPED and _stands_for(marks[place].text) and ends_part(marks, place)
    return own or (bool(following) and following[0].text in PRONOUNS)
