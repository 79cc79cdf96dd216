"""The repetition behind the last one done, as one that was not tried: `180x2, back was rounding so no third`.

Where how the set looked is the reason, the client ended it: the set was not to failure. Where what gave out is the
reason (`grip went so no fifth`), other rules read a failure. Common wordings, no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import told_last
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause, sentence_of
from bot.notation.wordlist import words

_HENCE = frozenset(words("so hence thus therefore"))
_ENDED = re.compile(
    r"\b(?:didnt|did not|wasnt|never)(?: even)? (?:go|going|try|trying|push|pushing|reach|reaching|chase|chasing|"
    r"risk|risking|attempt|attempting|bother|force|forcing)"
    r"(?: (?:for|with|to|out|on|the|a|an|my|another))*$|"
    r"\b(?:left|skipped|passed on|dodged|stopped before|racked before|racked it before|stayed clear of)"
    r"(?: (?:out|off))? (?:the|a|an|my)(?: (?:number|rep))?$"
)
"""What leads to the repetition that the client did not try."""
_GAVE_OUT = frozenset(words(
    "gone went gave give giving empty dead died fried toast toasted spent nothing fail failed failing failure stuck "
    "done out cooked left couldnt cant wouldnt unable missed miss bailed lost pinned stalled spotter tired "
    "exhausted knackered weak gassed finished burning burnt pumped slipped slipping slip dropped drop fell shaking "
    "opened opening tried attempted weight heavy limit max dying exploded jelly noodles emptied quit stopped knackered "
    "battery fuel steam juice gas strength power drained wiped smoked shot beat beaten"
))  # fmt: skip
"""Words of what gave out: the repetition would not have come."""
_OF_REP = (Kind.ORD, Kind.NUM)


def without_untried(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a repetition as no more than talk."""
    out = list(marks)
    for place in range(2, len(out)):
        mark = out[place]
        if mark.kind not in _OF_REP or mark.value is None or mark.parts:
            continue
        start, _ = sentence_of(out, place)
        behind = place + 1 + (kind_at(out, place + 1) is Kind.REPS) + (text_at(out, place + 1) == "one")
        denied = mark.kind is Kind.ORD and kind_at(out, behind) in (Kind.NO, Kind.NOT)
        end = behind + denied
        if end < len(out) and not ends_clause(out, end):
            continue
        first = _led(out, start, place, denied=denied)
        if first is None or mark.value - 1 != told_last(out[:first]):
            continue
        gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[first:end]]
        out = [*out[:first], *gone, *out[end:]]
    return out


def _led(marks: Sequence[Mark], start: int, place: int, *, denied: bool) -> int | None:
    """Where the words start that say that the repetition here was not tried; `None` where they do not say so."""
    hence = next((i for i in range(place - 1, start - 1, -1) if set(marks[i].text.split()) & _HENCE), None)
    number = next((i for i in range(place - 1, start - 1, -1) if marks[i].kind is Kind.NUM), start - 1)
    if hence is not None and hence > number:
        reason = {w for m in marks[number + 1 : hence] for w in m.text.split()}
        between = [m for m in marks[hence + 1 : place] if m.text not in _LITTLE]
        none = denied and not between
        none = none or (marks[place].kind is Kind.ORD and [m.kind for m in between] == [Kind.NO])
        if none and reason and not reason & _GAVE_OUT and number < hence - 1:
            return hence + 1
    first = max(start, number + 1)
    line = " ".join(m.text for m in marks[first:place])
    return first if _ENDED.search(line) and not set(line.split()) & (_GAVE_OUT - _OWN) else None


_OWN = frozenset(words("left gave stopped"))
"""Words of giving out that also say what the client chose not to try."""
_LITTLE = frozenset(words("there was i did a the my for me got"))
NEEDS = _HENCE | frozenset(words(
    "didnt did wasnt never left skipped passed dodged stopped racked stayed"
))  # fmt: skip
