"""The longest phrase of the lexicon from a mark on, and which of its kinds is meant."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.lexicon import Node, phrase_tree
from bot.notation.spelling import near_words
from bot.notation.spoken import TENS, UNITS
from bot.notation.tokens import Mark

LONGEST = 9
"""Marks of a phrase of the lexicon at the most."""


def longest_phrase(marks: list[Mark], at: int) -> tuple[tuple[Kind, ...], int] | None:
    """The longest phrase from here: its kinds, and where it ends. A symbol or number alone is no phrase."""
    node: Node = phrase_tree()
    best: tuple[tuple[Kind, ...], int] | None = None
    place = at
    mended = False
    while place < len(marks) and place < at + LONGEST:
        mark = marks[place]
        if mark.kind is Kind.DASH and place > at and mark.tight and place + 1 < len(marks) and marks[place + 1].tight:
            place += 1
            continue
        if mark.kind in (Kind.NAME, Kind.LINE):
            break
        following = node.next.get(mark.text)
        if following is None and mark.kind is Kind.WORD and not mended:
            following = _mended_step(node, marks, at, place)
            mended = following is not None
        if following is None:
            break
        node = following
        place += 1
        alone = place == at + 1
        if (
            node.kind
            and (not alone or mark.kind in (Kind.WORD, Kind.AT))
            and not (alone and mended and not _stands_out(marks, at))
        ):
            best = (node.kind, place)
    return best


def _mended_step(node: Node, marks: Sequence[Mark], at: int, place: int) -> Node | None:
    """The step that a word one slip away from it would take, where only one does."""
    steps = [node.next[near] for near in near_words(marks[place].text) if near in node.next]
    kinds = {step.kind for step in steps}
    if len(kinds) == 1 or (steps and place > at):
        return steps[0]
    swapped = [w for w in near_words(marks[place].text) if w in node.next and sorted(w) == sorted(marks[place].text)]
    return node.next[swapped[0]] if len(swapped) == 1 else None


def _stands_out(marks: Sequence[Mark], at: int) -> bool:
    """Whether a slip in a word alone is worth mending: beside a number, or in a message of a word or two."""
    beside = (*marks[max(0, at - 1) : at], *marks[at + 1 : at + 2])
    if any(m.kind in (Kind.NUM, Kind.CLOCK, Kind.NAME) or m.text in UNITS or m.text in TENS for m in beside):
        return True
    return sum(m.kind is Kind.WORD for m in marks) <= 2


def kind_meant(mark: Mark, kinds: tuple[Kind, ...], before: list[Mark]) -> Kind:
    """The kind of a phrase that has several, by what stands before it."""
    if len(kinds) > 1 and before and before[-1].kind is Kind.FAILED and Kind.LASTREP in kinds:
        return Kind.LASTREP
    if Kind.REPS in kinds and Kind.RPE in kinds:
        return Kind.REPS if before and before[-1].kind is Kind.NUM else Kind.RPE
    if kinds[0] is Kind.KG and mark.text in ("k", "keys") and not (before and before[-1].kind is Kind.NUM):
        return Kind.FILL
    if len(kinds) > 1 and before and before[-1].kind in (Kind.NAME, Kind.WEAK) and Kind.SKIPPED in kinds:
        return Kind.SKIPPED
    return kinds[0]
