"""Steps through all marks, each of which is left out where a message says nothing that it could change.

Most messages are of a few kinds of mark, and most steps put right what only some kinds say: a look at the kinds and the
words of the message is many times cheaper than the step itself.
"""

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass

from bot.notation.tokens import Mark

Put = Callable[[list[Mark]], Sequence[Mark]]


@dataclass(frozen=True, slots=True)
class Step:
    """One thing put in its place by `put`, which gives the marks back as they are unless something of each of `needs`
    is said: the name of a kind, or a word."""

    put: Put
    needs: tuple[frozenset[str], ...] = ()


def step(put: Put, *needs: Iterable[str]) -> Step:
    """A step that changes nothing unless something of each of `needs` is said."""
    return Step(put, tuple(frozenset(need) for need in needs))


def said_in(marks: Sequence[Mark]) -> frozenset[str]:
    """The kinds and the words of the marks."""
    words = " ".join([mark.text for mark in marks]).split()
    return frozenset([*words, *[mark.kind for mark in marks]])


def is_lacking(needs: Iterable[frozenset[str]], said: frozenset[str]) -> bool:
    """Whether nothing of one of the needs is said."""
    return any(map(said.isdisjoint, needs))


def is_idle(one: Step, said: frozenset[str]) -> bool:
    """Whether a step changes nothing where this is said."""
    return is_lacking(one.needs, said)


def put_in_place(marks: Sequence[Mark], steps: Iterable[Step]) -> list[Mark]:
    """The marks after all steps."""
    out = list(marks)
    said = said_in(out)
    for one in steps:
        for need in one.needs:
            if need.isdisjoint(said):
                break
        else:
            after = list(one.put(out))
            if after != out:
                out, said = after, said_in(after)
    return out
