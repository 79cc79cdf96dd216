"""Loads told to be others than the plan's, and not told: `then two back offs of 10`, `took a lighter pair`.

What the plan has is not what was lifted there, so that it is asked for.
"""

import re
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import replace
from itertools import accumulate

from bot.notation.answer import Source
from bot.notation.kinds import Kind
from bot.notation.order.as_planned import LIGHTER
from bot.notation.record import Record
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Stage

_SETS = (Kind.SETS, Kind.WORKSET, Kind.SET)


def lighter_unsaid(marks: Sequence[Mark], record: Record) -> Mark | None:
    """The words of lighter sets of which none is kept with less than the heaviest, and none has its load told."""
    at = next((i for i, m in enumerate(marks) if m.kind in _SETS and m.text.startswith(LIGHTER)), None)
    told = [one.row for one in record.told if one.row.stage is Stage.WORK]
    place = record.place_of(told[-1].exercise) if told else None
    if at is None or place is None or record.replaces or len({row.exercise for row in told}) > 1:
        return None
    exercise = record.context(place).exercise
    planned = {s.load for s in exercise.sets}
    of_it = [p for p in (*record.stored, *told) if p.exercise == exercise.name and p.stage is Stage.WORK]
    load = of_it[0].load
    if load is None or load.amount <= 0 or len(of_it) == 1 or len(planned) > 1 or any(p.load != load for p in of_it):
        return None
    return None if any(m.kind is Kind.NUM and m.value == load.amount for m in marks[at:]) else marks[at]


_FEW = (
    r"(?:(?:a|an|the|some|bit|little|tad|touch|much|slightly|way|even|notch|step|size|it|of|couple|with|for|on|to) )*"
)
_TOOK = (
    r"(?:went|gone|took|used|using|grabbed|picked(?: up)?|had to (?:go|use|take)|did it|done it|did them|switched to|"
    r"swapped to|swapped for|made it|so|made do with|settled for|ended up with|with|chose|loaded)"
)
_KIT = r"(?:pairs?|weights?|loads?|ones?|one|dumbbells?|dbs?|bells?|kettlebells?|kbs?|plates?|sets?)"
_OTHER_LOAD = re.compile(
    rf"\b{_TOOK} {_FEW}(?:lighter|heavier)\b(?! (?:than|last|next|feeling))(?: {_KIT})?"
    r"|\b(?:lighter|heavier|less|more)(?: weight)? than (?:planned|the plan|prescribed|written|it says"
    r"|you (?:said|wrote|put))\b"
    r"|\b(?:with|used|took|on|had) (?:much |a bit |a little |slightly )?(?:less|more) weight\b(?! (?:next|tomorrow))"
    r"|\b(?:dropped|lowered|reduced|upped|raised|increased|bumped(?: up)?) (?:the |my )?(?:weight|load)\b"
    r"(?! (?:to|by) #)"
    rf"|\b{_TOOK} (?:what|whatever|anything)(?: \w+)? (?:was|were|is|had|have|could|got)\b"
    r"|\b(?:went|moved|bumped|nudged|jumped|gone|go|stepped|crept) (?:it |them )?(?:up|down)(?: by)? (?:a |an )?"
    r"(?:bit|little|notch|touch|tad|smidge|smidgen|step|size|fraction|whisker)\b"
    r"|\b(?:upped|lowered|raised|dropped|reduced|increased) (?:it|them) (?:a )?"
    r"(?:bit|little|notch|touch|tad|slightly)\b"
    r"|\badded (?:a |on a )?(?:bit|little|touch|tad|smidge)\b(?! of (?:rest|chalk|time|pause))"
    r"|\b(?:a )?(?:bit|little|touch|tad) (?:more|less) (?:weight|load|help|assistance|assist)\b"
    r"|\b(?:slightly|bit|little|touch) (?:heavier|lighter)\b(?= (?:for|on|this|set|today) )"
    rf"|\b{_TOOK} (?:a different|different|another|other|the other) {_KIT}\b"
)
_NOT_NOW = frozenset(
    words(
        "next will would should want wanted could try going gonna tomorrow if felt feels feel seemed last before week"
    )
)


def other_load_unsaid(marks: Sequence[Mark], record: Record) -> Mark | None:
    """`the 17.5s were gone so i took a lighter pair, 10 reps`: another load than the plan's, and none is told."""
    rows = [one for one in record.told if one.row.stage is Stage.WORK and one.row.load is not None]
    if not rows or record.replaces or any(one.grounds.load.source not in (Source.PLAN, Source.BEFORE) for one in rows):
        return None
    said = ["#" if m.kind is Kind.NUM else m.text for m in marks]
    found = _OTHER_LOAD.search(" ".join(said))
    if found is None or any(m.kind is Kind.QUERY for m in marks) or _NOT_NOW & {w for s in said for w in s.split()}:
        return None
    ends = list(accumulate(len(text) + 1 for text in said))
    first, last = (marks[bisect_right(ends, at)] for at in (found.start(), found.end() - 1))
    return replace(first, end=last.end)
