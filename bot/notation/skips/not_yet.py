"""What is only not begun yet, beside the time that is left: `20 min left, so far bench 60x5, curls not started`.

An exercise called off in two words is left out: `no more today, calves off`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SO_FAR = frozenset(("so far",))
_TIMES = (Kind.MINUTES, Kind.HOURS)
_LEFT = frozenset(words("left remaining spare go"))
_HAVING = frozenset(words("have got has still with"))
_UNBEGUN = frozenset(("not started", "not begun", "not done", "not touched", "not attempted", "untouched", "unstarted",
                      "unattempted", "never started", "not even started"))  # fmt: skip
_MOST = 3
"""Marks of such words."""
NEEDS = frozenset(words("not untouched unstarted unattempted never off")) | {Kind.NOT}


def with_not_yet(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `yet` behind what is not begun, and an exercise called off as one that is skipped."""
    out = list(marks)
    goes_on = any(m.text in _SO_FAR for m in marks) or any(_time_left(marks, i) for i in range(len(marks)))
    for place in range(len(marks) - 1, -1, -1):
        if marks[place].kind is not Kind.NAME:
            continue
        if _is_off(marks, place):
            out[place + 1] = replace(marks[place + 1], kind=Kind.SKIPPED, text="are off")
        end = place + 1
        while goes_on and end < len(marks) and end <= place + _MOST and marks[end].kind not in EDGES:
            end += 1
            said = " ".join(m.text for m in marks[place + 1 : end]).removeprefix("are ").removeprefix("is ")
            if said in _UNBEGUN and kind_at(marks, end) in (None, *EDGES, Kind.AND):
                yet = Mark(Kind.FILL, "yet", marks[end - 1].end, marks[end - 1].end)
                out[place + 1 : end] = [*(replace(m, kind=Kind.FILL, text="open") for m in marks[place + 1 : end]), yet]
                break
    return out


def _time_left(marks: Sequence[Mark], place: int) -> bool:
    """`20 min left`, `still got 15 min to go`: time in which there is something to do."""
    if marks[place].kind is not Kind.NUM or kind_at(marks, place + 1) not in _TIMES:
        return False
    behind = {w for m in marks[place + 1 : place + 4] for w in m.text.split()}
    ahead = {w for m in marks[max(0, place - 3) : place] for w in m.text.split()}
    if "had" in ahead:
        return False
    return bool(behind & _LEFT) or ("still" in ahead and bool(ahead & _HAVING))


def _is_off(marks: Sequence[Mark], place: int) -> bool:
    """Whether a name and `off` are all that their part says."""
    opens = place == 0 or kind_at(marks, place - 1) in EDGES
    led = text_at(marks, place - 1) in ("the", "so", "my") and kind_at(marks, place - 2) in EDGES
    ends = kind_at(marks, place + 2) in (None, Kind.STOP, Kind.LINE, Kind.BREAK)
    told = kind_at(marks, place + 3) in (Kind.NUM, Kind.BODY, Kind.PLUS)
    return (opens or led) and text_at(marks, place + 1) == "off" and ends and not told
