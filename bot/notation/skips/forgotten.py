"""What was forgotten: `forgot to do the face pulls`, `face pulls slipped my mind`. It is left out like what is skipped.

Not what was forgotten to be told, whose sets follow: `forgot the face pulls: 20x15`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.segments.edges import NUMBERS
from bot.notation.tokens import Mark

_FORGOT = ("forgot", "forgotten", "forgot about", "forgetting", "overlooked", "neglected")
_BETWEEN = ("to", "do", "doing", "about", "the", "my", "even", "all", "of", "that", "we", "had", "have", "any", "to do")
_BEHIND = frozenset(["today", "tonight", "completely", "totally", "entirely", "again", "lol", "oops", "sorry", "coach",
                     "altogether", "haha", "this", "time", "too", "also", "session"])  # fmt: skip
_PASSIVE = (["slipped", "my", "mind"], ["i", "forgot"], ["forgotten"], ["got", "forgotten"], ["were", "forgotten"],
            ["was", "forgotten"], ["i", "clean", "forgot"], ["i", "totally", "forgot"], ["i", "forgot", "to", "do"],
            ["i", "forgot", "about"], ["forgotten", "about"], ["completely", "slipped", "my", "mind"],
            ["i", "completely", "forgot"])  # fmt: skip
_NAMES = (Kind.NAME, Kind.WEAK)
_DONE_NOW = frozenset(["now", "back", "doing", "did", "going", "quick", "quickly", "gonna", "next", "after"])
"""Words of the message that say that it is done all the same."""
_HOME = ("im home", "im out", "home", "im", "its", "im in", "i am")
"""Behind a `now` that says that it is too late: `forgot the planks and now im home`."""


def with_forgotten(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as those that skip."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text in _FORGOT and mark.kind is Kind.FILL:
            at = place + 1
            while text_at(marks, at) in _BETWEEN and kind_at(marks, at) not in _NAMES:
                at += 1
            if kind_at(marks, at) in _NAMES and _is_left(marks, at):
                out[place] = replace(mark, kind=Kind.SKIP)
                out[place + 1 : at] = [replace(m, kind=Kind.FILL) for m in marks[place + 1 : at]]
        elif mark.kind in _NAMES:
            _, end = part_of(marks, place)
            said = [w for m in marks[place + 1 : end] for w in m.text.split() if w not in _BEHIND]
            if said in _PASSIVE and _is_left(marks, end):
                out[place + 1] = replace(marks[place + 1], kind=Kind.SKIPPED)
                out[place + 2 : end] = [replace(m, kind=Kind.FILL) for m in marks[place + 2 : end]]
    return out


def _is_left(marks: Sequence[Mark], at: int) -> bool:
    """Whether the part ends behind names, no sets of them follow, and no word says that they are done all the same."""
    while kind_at(marks, at) in (*_NAMES, Kind.AND) or set(text_at(marks, at).split()) & _BEHIND:
        at += 1
    ends = at >= len(marks) or marks[at].kind in (*EDGES, Kind.DASH)
    told = next((m.kind for m in marks[at:] if m.kind in (*_NAMES, *NUMBERS)), None)
    return (
        ends
        and told not in NUMBERS
        and not any(
            set(m.text.split()) & _DONE_NOW and text_at(marks, i + 1) not in _HOME for i, m in enumerate(marks[at:], at)
        )
    )
