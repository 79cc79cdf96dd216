"""Time that a session took, beside time that there is: `whole session 70 minutes`, `got like 45 min`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

HAD = frozenset(words("got have has ive weve gotta only just gots havin need needs must"))
AT_MOST = frozenset(words("max maximum tops top left available only remaining"))
_WHOLE = frozenset(words("whole entire total altogether overall duration complete full all"))
_OF_SESSION = frozenset(words("session workout training time train gym all in"))


def since_had(near: list[str]) -> list[str]:
    """The words after the last one of having: `shuts early got like` 45 min is had, not early by so much."""
    at = max((i for i, w in enumerate(near) if w in HAD and not _took(near, i)), default=-1)
    return near[at + 1 :]


def _took(near: list[str], place: int) -> bool:
    """The `only` of `slept only` four hours: so much was slept, and no more."""
    return near[place] in _NO_MORE and place > 0 and near[place - 1] in TOOK


_NO_MORE = ("only", "just")
_ANOTHERS = frozenset(words("his her hers their he she they hes shes theyre"))
TOOK = frozenset(words(
    "walked drove cycled biked jogged queued waited rested slept napped warmed stretched took sleep nap dozed",
    "kipped after",
))  # fmt: skip
"""Words of what took the time that is told behind them: `walked here, 25 min`."""


def is_elapsed(before: Sequence[str], after: Sequence[str], marks: Sequence[Mark]) -> bool:
    """`whole session 70 minutes`, `70 min in total`: how long it took, which is not the time that there is."""
    if set(before) & (HAD - {"just"}):
        return False
    if before[-1:] == ["at"] and after[:1] in (["already"], ["now"], ["in"], ["so"], []):
        return True
    if before[-1:] == ["since"] or ("for" in before[-2:] and set(before[-6:]) & _ANOTHERS):
        return True
    if before[-1:] == ["for"] and any(w.endswith("ed") and w not in ("need", "limited") for w in before[:-1]):
        return True
    told = bool(set(before[-4:]) & _WHOLE) and bool(set(before[-4:]) & _OF_SESSION)
    totals = after[:2] in (["in", "total"], ["all", "in"], ["all", "up"], ["all", "told"]) or after[:1] == [
        "altogether"
    ]
    ended = any(m.kind is Kind.FINISH for m in marks) and bool(set(before[-4:]) & _OF_SESSION)
    return told or totals or ended
