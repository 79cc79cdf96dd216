"""What is typed over and over says no more than said a few times: thinned, so that time grows with what is said."""

from collections.abc import Sequence
from typing import TypeVar

LONGEST = 6
"""Words of the longest phrase whose repetition is seen."""
TIMES = 4
"""How often a phrase is kept where it stands over and over."""
Said = TypeVar("Said")


def thinned(items: Sequence[Said], keys: Sequence[str | None]) -> list[Said]:
    """The items without the endless repetition of a phrase of up to `LONGEST` of them.

    `keys` tell the items apart; `None` is never a repetition (a number: ten sets of ten are ten sets).

    >>> "".join(thinned("no((((((((", ["n", "o", *"(((((((("]))
    'no((((('
    """
    out: list[Said] = []
    runs = [0] * (LONGEST + 1)
    for place, item in enumerate(items):
        key, says = keys[place], True
        if key is None or key not in keys[max(0, place - LONGEST) : place]:
            runs = [0] * (LONGEST + 1)
            out.append(item)
            continue
        for period in range(1, LONGEST + 1):
            repeats = place >= period and keys[place - period] == key
            runs[period] = runs[period] + 1 if repeats else 0
            says = says and runs[period] <= TIMES * period
        if says:
            out.append(item)
    return out
