"""Words that say the same, put as the ones that the reader's rules know: `final one` is `last one`, `thus` is `so`.

Rules look for words; each would have to list every other way to say them. Here such a word, or a few, are said by one
of them before any rule looks: `60x5 once more` is `60x5 again`, `9 and in fact 10` is `9 and actually 10`. Only what
means the same wherever it stands is in `anywhere`; what does so only beside something else is told in `beside`.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from functools import cache

from bot.notation.alike.anywhere import ANYWHERE
from bot.notation.alike.beside import BESIDE, Where
from bot.notation.alike.dated import with_days
from bot.notation.alike.ending import with_endings
from bot.notation.alike.repeating import with_repeats
from bot.notation.alike.time_left import with_time_left
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

__all__ = ["said_plainly"]


@dataclass(slots=True)
class _Node:
    """Where some first words of phrases lead: by the next word, and what is said for those that end here."""

    next: dict[str, "_Node"] = field(default_factory=dict)
    ends: list[tuple[tuple[str, ...], Where | None]] = field(default_factory=list)


@cache
def _phrases() -> _Node:
    """All phrases, word by word."""
    root = _Node()
    rows: list[tuple[str, Iterable[str], Where | None]] = [*BESIDE, *((plain, said, None) for plain, said in ANYWHERE)]
    for plain, said, where in rows:
        for phrase in said:
            node = root
            for word in phrase.split():
                node = node.next.setdefault(word, _Node())
            node.ends.append((tuple(plain.split()), where))
    return root


def said_plainly(marks: Sequence[Mark], *, begun: bool = True) -> list[Mark]:
    """The marks as typed, with such phrases as the ones that the rules know. `begun`: there are sets already.

    >>> from bot.notation.tokens import read_marks
    >>> [m.text for m in said_plainly(read_marks("60 for 5 once more, final one 4"))]
    ['60', 'for', '5', 'again', ',', 'last', 'one', '4']
    """
    marks = with_endings(with_time_left(with_repeats(with_days(marks))), begun=begun)
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        found = _longest(marks, at)
        if found is None:
            out.append(marks[at])
            at += 1
        else:
            plain, end = found
            out += _put(marks[at:end], plain)
            at = end
    return out


def _longest(marks: Sequence[Mark], at: int) -> tuple[tuple[str, ...], int] | None:
    """What is said for the longest phrase from a place on, and where that ends."""
    node, end = _phrases(), at
    met: list[tuple[int, _Node]] = []
    while end < len(marks) and (following := node.next.get(marks[end].text)) is not None:
        node, end = following, end + 1
        met.append((end, node))
    for end, node in reversed(met):
        for plain, where in node.ends:
            if where is None or where(marks, at, end):
                return plain, end
    return None


def _put(said: Sequence[Mark], plain: Sequence[str]) -> list[Mark]:
    """The words of a phrase as marks in the place of those that were typed."""
    start, end = said[0].start, said[-1].end
    places = [said[i].start if i < len(said) else min(start + i, end) for i in range(len(plain))]
    ends = [*places[1:], end]
    return [
        replace(
            said[0], kind=Kind.WORD, value=None, text=word, start=places[i], end=ends[i], tight=said[0].tight and i == 0
        )
        for i, word in enumerate(plain)
    ]
