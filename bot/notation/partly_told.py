"""What the client did less of, or else, without saying how many: asked about, since the plan has what was not done.

`everything bar the last rep`, `stopped the last one early`, `7 if you're strict, 8 if you're kind`.
"""

import re
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import replace
from itertools import accumulate

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_REP = r"(?:rep|repetition)"
_LAST = r"(?:last|final|very last|very end|end)"
_BUT = r"(?:except(?: for)?|bar|but(?: not)?|minus|apart from|short of|save(?: for)?|besides|excluding|less)"
_SET = rf"(?:(?:{_LAST}|first|second|third|fourth|fifth|1st|2nd|3rd|4th|5th)(?: (?:set|one))?)"
_ONE_SHORT = re.compile(
    rf"\b{_BUT}(?: (?:the|my|that|one|just))*(?: very)? {_LAST} {_REP}\b"
    r"(?! (?:was|were|is|had|felt|went|moved|slow|hard|ugly) )"
    rf"|\b{_BUT} (?:one|a|a single|1) {_REP}\b"
)
_PLANNED = re.compile(
    r"\b(?:as|like|per) (?:planned|prescribed|written|you|the plan)|\b(?:everything|all|whole|every)\b"
)
_CUT_SHORT = re.compile(
    rf"\b(?:stopped|cut|ended|quit|racked|finished|bailed|stopping|cutting)"
    rf"(?: (?:the|my|that|on|in|at|it|a|bit|little))*"
    rf" (?:{_SET} )?(?:short|early|too early|before the end|before the finish|part way|partway|half way|halfway)\b"
)
_EITHER = re.compile(r"# (?:reps )?if (?:[^#,;.]+ )?[,;]?\s?(?:and |or |but |then )?# (?:reps )?if\b")
_CUES = frozenset(("rep", "repetition", "short", "early", "end", "finish", "way", "partway", "halfway", "if"))


def partly_told(marks: Sequence[Mark]) -> Mark | None:
    """The words of such a set, of which no number is told; `None` where there are none."""
    if not any(not _CUES.isdisjoint(m.text.split()) for m in marks):
        return None
    said = ["#" if m.kind is Kind.NUM else m.text for m in marks]
    line = " ".join(said)
    found = _EITHER.search(line)
    short = _ONE_SHORT.search(line)
    if found is None and short is not None and (_PLANNED.search(line[: short.start()]) or "#" in line[: short.start()]):
        found = short if "#" not in line[short.end() :] else None
    if found is None and (cut := _CUT_SHORT.search(line)) and re.search(_SET, _clause(line, cut)):
        found = cut if "#" not in _clause(line, cut) else None
    if found is None:
        return None
    ends = list(accumulate(len(text) + 1 for text in said))
    first, last = (marks[bisect_right(ends, at)] for at in (found.start(), found.end() - 1))
    return replace(first, end=last.end)


def _clause(line: str, found: re.Match[str]) -> str:
    """The words around what was found, from one comma or stop to the next."""
    start = max(line.rfind(mark, 0, found.start()) for mark in (" ,", " .", "#"))
    ends = [at for at in (line.find(mark, found.end()) for mark in (" ,", " .", " ;")) if at >= 0]
    return line[start + 1 : min(ends, default=len(line))]


def without_cut_short(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with the verb of `stopped the last one early` as a word: the exercise is not given up."""
    out = list(marks)
    if not any(m.kind is Kind.SKIP for m in out) or _CUES.isdisjoint(w for m in out for w in m.text.split()):
        return out
    said = ["#" if m.kind is Kind.NUM else m.text for m in out]
    line = " ".join(said)
    for place, mark in enumerate(out):
        if mark.kind is not Kind.SKIP or mark.text.split()[0] not in _STOPPING:
            continue
        found = _CUT_SHORT.search(line, sum(len(text) + 1 for text in said[:place]))
        if found is not None and re.search(_SET, _clause(line, found)):
            out[place] = replace(mark, kind=Kind.FILL)
    return out


_STOPPING = ("stopped", "cut", "ended", "quit", "stopping", "cutting")
