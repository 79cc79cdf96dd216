"""Lists of words, written as words."""

from collections.abc import Iterable
from itertools import product


def words(*lines: str) -> tuple[str, ...]:
    """The words of these lines, in order."""
    return tuple(word for line in lines for word in line.split())


def products(*lists: Iterable[str]) -> list[str]:
    """Every way to take one of each list, in order: `too tired for`, `too gassed for`, `too tired to do`."""
    return [" ".join(" ".join(one).split()) for one in product(*lists)]
