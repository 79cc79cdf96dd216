"""Names of which each that fits is skipped: `both calves`, `no calves of either kind`."""

from collections.abc import Sequence

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def is_every(marks: Sequence[Mark], name: Mark) -> bool:
    """Whether a name means each that it fits: `both calves`, `any calves`, `calves of either kind`, `calves, both`."""
    place = next(i for i, m in enumerate(marks) if m is name)
    start, _ = part_of(marks, place, _NEAR)
    ahead = {w for m in marks[max(start, place - 4) : place] for w in m.text.split()}
    stop = next((i for i in range(place + 1, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    after = [w for m in marks[place + 1 : min(stop, place + _NEAR)] for w in m.text.split()]
    own = after[: next((i for i, w in enumerate(after) if w in _BECAUSE), len(after))]
    two = any(own[i : i + 3] in (["two", "of", "them"], ["2", "of", "them"]) for i in range(len(own)))
    return bool(ahead & _EACH or set(own) & _EACH_BEHIND) or two or ["at", "all"] in (own[:2], own[1:3])


_EACH = frozenset(["both", "all", "any", "either", "neither", "every", "each"])
_EACH_BEHIND = frozenset(["both", "either", "neither", "any", "whatsoever", "whatever", "altogether"])
_BECAUSE = frozenset(["because", "cos", "coz", "cus", "cuz", "bc", "as", "since", "so", "but"])
_NEAR = 8
"""Marks behind a name that may say that each is meant."""
