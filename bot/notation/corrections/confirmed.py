"""What is only said to be right as it is stored, and so corrects nothing: `minis are right`, `set 2 is ok`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark


def confirmed(marks: Sequence[Mark]) -> set[int]:
    """Parts that only say that something is right as it is stored: `minis are right`, `set 2 is ok`.

    One that names a set, or a drop, has no bearing only beside words that correct another.
    """
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.text not in _RIGHT | _AS_IT_WAS or not place or not _is_said_right(marks[place - 1]):
            continue
        if mark.text in _AS_IT_WAS and not any(m.kind in (Kind.DROP, Kind.MINI) for m in marks[place - 2 : place]):
            continue
        start, end = part_of(marks, place)
        start = max(
            [start, *(i + 1 for i in range(start, place) if marks[i].kind is Kind.AND or marks[i].text == "but")]
        )
        bare = not any(m.kind in NUMBERS for m in marks[start:end]) and marks[place - 1].kind is Kind.WAS
        aim = [m for i, m in enumerate(marks[start : place - 1], start) if not _is_set_number(marks, i)]
        corrects = any(m.kind in _CORRECTING for m in (*marks[: max(0, start)], *marks[end:]))
        plain = all(m.kind in _AIMS for m in aim) and all(m.kind is Kind.FILL for m in marks[place + 1 : end])
        if (end == place + 1 and bare) or (corrects and plain):
            out |= set(range(start, end))
    return out


def without_opinions(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the `should be` of `hack squats should be illegal` as talk: no number stands before its words."""
    return [
        replace(m, kind=Kind.FILL)
        if m.kind is Kind.MEANT and m.text.split(" ")[0] in _SHOULD and _is_talk(marks, place + 1)
        else m
        for place, m in enumerate(marks)
    ]


def _is_talk(marks: Sequence[Mark], place: int) -> bool:
    """Whether an unknown word stands here before any number, or several little ones: `illegal`, `easier by now`."""
    end = place
    while end < len(marks) and marks[end].kind is Kind.FILL and marks[end].text.replace(" ", "").isalpha():
        end += 1
    spoken = sum(len(m.text.split()) for m in marks[place:end])
    return (end < len(marks) and marks[end].kind is Kind.WORD) or spoken >= _SEVERAL


_SEVERAL = 3
"""Little words that no number stands before."""


_SHOULD = ("should", "shouldnt", "ought", "oughta")


_CORRECTING = (Kind.NOT, Kind.SORRY, Kind.MEANT, Kind.WAS)
_AIMS = (Kind.FILL, Kind.ORD, Kind.SET, Kind.SETS, Kind.DROP, Kind.DROPPED, Kind.MINI, Kind.NAME, Kind.THEREST,
         Kind.LASTSET, Kind.LASTREP, Kind.ALL)  # fmt: skip


def _is_said_right(before: Mark) -> bool:
    """`is`, `was`, `drop's`, `the drop was`."""
    said = before.text.split()
    return before.kind is Kind.WAS or before.text in _STAYS or (before.kind in (Kind.DROP, Kind.MINI) and bool(said))


def _is_set_number(marks: Sequence[Mark], place: int) -> bool:
    """The 2 of `set 2`, `first 2`."""
    before = marks[place - 1].kind if place else None
    return marks[place].kind is Kind.NUM and before in (Kind.SET, Kind.SETS, Kind.ORD, Kind.LASTSET)


_STAYS = frozenset(["stays", "stayed", "remains", "stay", "still", "stands", "keeps", "kept"])
_AS_IT_WAS = frozenset(["same", "the same", "unchanged", "as it was", "as is", "as before"])
_RIGHT = frozenset(["right", "fine", "ok", "okay", "correct", "good", "accurate"])
