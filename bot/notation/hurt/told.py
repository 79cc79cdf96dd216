"""What a sign told in any order must say: ideas, each a set of words, and how near they must stand."""

import re
from dataclasses import dataclass

from bot.notation.hurt.rows import word_set


@dataclass(frozen=True, slots=True)
class Told:
    """A sign as ideas, each a set of words of which one must stand; `within` tokens from the first to the last."""

    name: str
    within: int
    ideas: tuple[frozenset[str], ...]
    unless: frozenset[str]
    """Words of the same sentence beside which it is no sign."""
    across: bool = False
    """Whether the last idea may stand in a sentence beside: `puffing after 3 steps. never had this`."""
    sober: bool = False
    """Whether laughter takes nothing from it: people laugh off what frightened them."""
    posed: bool = False
    """Whether it may be put as what somebody could do: `you could pinch this arm and i'd not know`."""


_HEAD = re.compile(r"([a-z ]+?) (\d+)((?: across| sober| posed)*)")


def told_rows(table: str, classes: str) -> tuple[Told, ...]:
    """The rows of a table, one to a line that may go on indented: `name within flags: idea | idea ! unless`.

    A word `@name` stands for a class, written `name: words` in the table of classes.

    >>> told_rows("breath 5: breath | @hard ! lol", "hard: fight battle")[0].within
    5
    """
    named = {name: word_set(said) for name, said in (line.split(":", 1) for line in _lines(classes))}

    def idea(said: str) -> frozenset[str]:
        return frozenset().union(*(named[w[1:]] if w[0] == "@" else {w} for w in said.split()))

    out: list[Told] = []
    for line in _lines(table):
        head, _, rest = line.partition(": ")
        match = _HEAD.fullmatch(head)
        if match is None:
            raise ValueError(f"a row of signs begins with a name and a number, not with {head!r}")
        name, within, flags = match.groups()
        ideas, _, unless = rest.partition(" ! ")
        told = tuple(idea(part) for part in ideas.split(" | "))
        out.append(Told(name, int(within), told, idea(unless), "across" in flags, "sober" in flags, "posed" in flags))
    return tuple(out)


def _lines(table: str) -> list[str]:
    """The lines of a table, those that go on indented joined to theirs."""
    return re.sub(r"\n\s+", " ", table.strip("\n")).splitlines()
