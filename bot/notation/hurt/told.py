"""What a sign told in any order must say: ideas, each a set of words, and how near they must stand."""

from dataclasses import dataclass


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
