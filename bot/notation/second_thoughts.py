"""A count put right in the same breath: `72.5x4.. well 3 really`, `10 each, hmm 9 if im honest`, `x6, ok ok 5`.

The better count is one to three lower, as people take back what did not count, and stands behind a word of second
thoughts or beside one of honesty; a word of second thoughts alone counts where the next words say what did not.
Common wordings, no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause
from bot.notation.wordlist import words

_THINKING = frozenset(words(
    "well hmm hm hmmm eh er um uh erm ah oh nah ok okay fine alright meh ugh oof yeah right wait lol haha but so its "
    "maybe it was just only like"
))  # fmt: skip
_SECOND = frozenset(words("well hmm hm hmmm eh er um uh erm ah nah ok okay fine alright meh ugh oof wait"))
"""Words of second thoughts; the others stand beside them and say nothing."""
_HONEST = frozenset(words("really honest honestly tbh truthfully truth strict strictly proper properly realistically"))
NEEDS = _SECOND | _HONEST
_BESIDE = frozenset(words("if im i am to be being in all were was more like its it thats the fair id say tho though"))
_UNCOUNTED = re.compile(
    r"\b(?:cut|short|shallow|half|quarter|bounced?|bouncing|bouncy|cheated|cheat|forgot|didnt (?:pause|lock|touch|"
    r"count|finish|reach|hit)|doesnt count|dont count|wasnt|werent|not (?:full|deep|clean|whole|all)|no (?:depth|"
    r"lockout|pause)|helped|touched|spotter|assisted|fell off|lost count|miscounted|high|ugly|no rep|void|swung|"
    r"swinging|momentum|butt|hips came)\b"
)
"""What says that a repetition did not count."""
_FAR = 3
"""Repetitions that people take back at most (common practice, no source)."""
_COUNTED = (Kind.REPS, Kind.EACH)
_EDGES = (Kind.COMMA, Kind.STOP, Kind.DASH, Kind.BREAK, Kind.LINE, Kind.OPEN)
_SAID = (Kind.FILL, Kind.WORD, Kind.WAS, Kind.SORRY, Kind.OTHERTIME, Kind.TO)


def with_second_thoughts(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as those that put the count right."""
    for place in range(3, len(marks)):
        led = _thoughts(marks, place)
        if led is None:
            continue
        start, end = led
        gone = [replace(m, kind=Kind.FILL, text="so") for m in marks[place + 1 : end] if m.kind not in _COUNTED]
        kept = [m for m in marks[place + 1 : end] if m.kind in _COUNTED]
        meant = Mark(Kind.MEANT, "i mean", marks[start].start, marks[start].start)
        return [*marks[:start], meant, marks[place], *kept, *gone, *marks[end:]]
    return list(marks)


def _thoughts(marks: Sequence[Mark], place: int) -> tuple[int, int] | None:
    """Where the clause of a better count starts and ends, whose number stands at the place."""
    mark = marks[place]
    if mark.kind is not Kind.NUM or mark.value is None or mark.parts or mark.value != int(mark.value):
        return None
    start = place
    start -= kind_at(marks, start - 1) is Kind.COMMA and kind_at(marks, start - 2) in _SAID and start > 1
    while kind_at(marks, start - 1) in _SAID and set(marks[start - 1].text.split()) <= _THINKING | _HONEST:
        start -= 1
    end = place + 1
    while kind_at(marks, end) in _COUNTED:
        end += 1
    while kind_at(marks, end) in _SAID and set(marks[end].text.split()) <= _HONEST | _BESIDE:
        end += 1
    edge = kind_at(marks, start - 1) in _EDGES or (start < place and kind_at(marks, start - 1) is Kind.NUM)
    if not edge or (end < len(marks) and not ends_clause(marks, end)):
        return None
    spoken = {w for m in (*marks[start:place], *marks[place + 1 : end]) for w in m.text.split()}
    thinks = bool({w for m in marks[start:place] for w in m.text.split()} & _SECOND)
    reason = " ".join(m.text for m in marks[end + 1 : end + 9])
    if not (spoken & _HONEST or (thinks and _UNCOUNTED.search(reason))):
        return None
    return (start, end) if _takes_back(marks, start, mark, thinks=thinks) else None


def _takes_back(marks: Sequence[Mark], start: int, mark: Mark, *, thinks: bool) -> bool:
    """Whether the count told last before a place is a little higher; a load is none."""
    old = start - 1
    while old >= 0 and marks[old].kind in (*_EDGES, *_COUNTED, Kind.FILL):
        old -= 1
    if kind_at(marks, old) is not Kind.NUM or mark.value is None:
        return False
    values = marks[old].parts or (marks[old].value,)
    ahead = old - 1
    while kind_at(marks, ahead) in (Kind.FILL, Kind.S, Kind.KG, Kind.LB, Kind.HAND):
        ahead -= 1
    whole = kind_at(marks, ahead) in (Kind.X, Kind.FOR, Kind.NUM) or kind_at(marks, old + 1) in _COUNTED
    last = values[-1]
    lower = last is not None and 0 < last - mark.value <= _FAR
    return lower and text_at(marks, old + 1) not in ("kg", "lb") and (whole or thinks)
