"""How the work of a call grows, counted and not timed: a busy machine changes no count. The bench has the time."""

import sys
from collections.abc import Callable

LONG = (
    "(", ")", "@", "-", "/", "a ", "a-", "👍", "\n", "1,", "60,5 ", "60x5 ", "my knee hurts ", "monday ", "(1)", "no ",
    "skip squat ", "sorry ", "bnch rwo ", "and ", "'", "chest pain ", "?", "set 2 was ",
)  # fmt: skip
"""What is said over and over to make a message of 4,096 characters."""


def steps(call: Callable[[], object]) -> int:
    """The calls and returns of functions, ours and the libraries', that one call needs."""
    count = 0

    def note(_frame: object, _event: str, _argument: object) -> None:
        nonlocal count
        count += 1

    before = sys.getprofile()
    sys.setprofile(note)
    try:
        call()
    finally:
        sys.setprofile(before)
    return count
