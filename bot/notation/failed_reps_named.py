"""A repetition by its number beside its exercise or load: `went for an 8th chin and failed`, `third rep at 140 died`.

What did not come becomes the exercise, the load and `failed the 8th`; what came (`.. and got it`) so many repetitions.
Only where the message tells no other count. Common wordings; no source.
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import EARLIEST_FAILED
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.worded import sentence_of
from bot.notation.wordlist import words

_FAILED = re.compile(
    r"\b(?:fail(?:s|ed|ure|ing)?|miss(?:ed)?|bail(?:ed)?|dumped|nope|stuck|died|dies|dead|stalled|"
    r"no (?:chance|hope|way|luck|joy|"
    r"dice|go|good|bueno)|was a no|couldnt|could not|cant|didnt|did not|doesnt|wouldnt|would not|wasnt|"
    r"never|fell off|"
    r"dropped off|slipped off|not (?:there|happening|coming)|pinned|buried|stapled|crushed|folded|gave (?:up|out)|"
    r"halfway|half way|spotter|lost it|beat me|got me|defeated me|too much|came (?:straight )?back down|grip went)\b"
)
_CAME = re.compile(
    r"\b(?:got|made|nailed|hit|did|managed|ground|grinded|squeezed|finished|locked|smashed|stuck) (?:it|that|her|him|"
    r"there|the thing)\b|\b(?:came|went) up\b|\bit (?:came|went|moved|flew)\b|\bsuccess\b|\bbut got\b"
)
_DENIED = re.compile(r"\b(?:never|didnt|did not|couldnt|could not|not|wouldnt|doesnt|hasnt)(?: \w+){0,2}$")
_BY_CHOICE = re.compile(
    r"\b(?:didnt|did not|never|wouldnt|dont|not|without)(?: even)? (?:try|trying|attempt|need|want|bother|"
    r"risk|going for|"
    r"go for|chance|dare|worth|force)\b|\b(?:skipped|skip|week|day|month|time|session|workout|year|"
    r"tomorrow|next time|"
    r"nearly|almost)\b"
)
_GOT = re.compile(
    r"(?:(?:and|just|finally|i|ive|then|even|somehow|actually|yes|yess|omg|wow|did|only|barely) )*"
    r"(?:got|managed|hit|made|nailed|squeezed(?: out)?|ground out|smashed|locked out)(?: (?:a|an|the|my|"
    r"that|out))* (?:#th )?"
)
_TRYING = re.compile(
    r"\b(?:went for|going for|go for|tried|trying|try|attempted|attempting|attempt|reached for|pushed for|fought for|"
    r"had a go|gave)\b"
)
NEEDS = frozenset(words(
    "fail fails failed failing failure miss missed bail bailed dumped nope stuck died dies stalled no couldnt could "
    "cant didnt did doesnt wouldnt would wasnt never fell dropped slipped pinned buried stapled crushed folded gave "
    "halfway half spotter lost beat defeated much back grip got made nailed hit managed ground came went"
))  # fmt: skip
_APART = frozenset((
    Kind.SET, Kind.SETS, Kind.LASTSET, Kind.SAME, Kind.DROP, Kind.MINI, Kind.QUERY, Kind.X, Kind.FOR,
    Kind.RPE, Kind.RIR,
    Kind.TANK, Kind.SORRY, Kind.MEANT, Kind.CLOCK, Kind.BAD, Kind.LEFT, Kind.RIGHT, Kind.ASKING, Kind.AGAIN, Kind.SCRAP,
    Kind.OTHERPERSON, Kind.SLASH, Kind.BODY, Kind.ADDED, Kind.ASSIST,
))  # fmt: skip
_UNITS = (Kind.KG, Kind.LB)


def with_failed_reps_named(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such words in that form."""
    if not any(m.kind is Kind.ORD or m.kind is Kind.REPS or m.text in ("rep", "number") for m in marks):
        return marks
    if any(map(_tells_more, marks)):
        return marks
    at = _repetition(marks)
    if at is None:
        return marks
    start, end = sentence_of(marks, at)
    part = marks[start:end]
    names = [m for m in part if m.kind is Kind.NAME and m.names]
    loads = [i for i in range(start, end) if marks[i].kind is Kind.NUM and i != at]
    elsewhere = [m for m in (*marks[:start], *marks[end:]) if m.kind in (Kind.NUM, Kind.ORD, Kind.NAME)]
    if len(names) > 1 or len(loads) > 1 or elsewhere or not _is_of_rep(marks, at, loads):
        return marks
    line = " ".join(m.text for m in part)
    came = _came(line) or (not _FAILED.search(line) and _GOT.match(line) is not None and bool(names))
    if (_BY_CHOICE.search(line) and not came) or not (came or _FAILED.search(line)):
        return marks
    return [*marks[:start], *_plainly(marks, at, names, loads, came), *marks[end:]]


def _tells_more(mark: Mark) -> bool:
    """Whether a mark tells of something else than one repetition; not the `for an` of `went for an 8th`."""
    return mark.kind in _APART and mark.text not in _PLAIN


_PLAIN = ("for", "for a", "for an", "for the", "for my", "nope", "nah", "make it")


def _repetition(marks: Sequence[Mark]) -> int | None:
    """Where the one repetition that is named by its number stands."""
    nth = [i for i, m in enumerate(marks) if m.kind is Kind.ORD]
    nth += [
        i
        for i, m in enumerate(marks)
        if m.kind is Kind.NUM and text_at(marks, i - 1).split()[-1:] in (["rep"], ["number"])
    ]
    if len(nth) != 1 or (marks[nth[0]].value or 0) < EARLIEST_FAILED or marks[nth[0]].parts:
        return None
    return nth[0]


def _is_of_rep(marks: Sequence[Mark], at: int, loads: Sequence[int]) -> bool:
    """Whether the number is a repetition's, told in a way that no other rule knows."""
    behind = at + 1 + (kind_at(marks, at + 1) is Kind.REPS or text_at(marks, at + 1) in ("one", "rep"))
    counted = behind > at + 1 or marks[at].kind is Kind.NUM
    if any((marks[i].value or 0) <= (marks[at].value or 0) for i in loads):
        return False
    of = behind + (text_at(marks, behind) in ("of", "on", "of the", "on the"))
    of += text_at(marks, of) == "the"
    named = kind_at(marks, of) is Kind.NAME and (of == behind or counted)
    led = marks[at].kind is Kind.NUM and kind_at(marks, at - 2) is Kind.NAME
    loaded = counted and kind_at(marks, behind) in (Kind.AT, Kind.WITH) and kind_at(marks, behind + 1) is Kind.NUM
    tried = " ".join(m.text for m in marks[at + 1 : at + 5])
    beside = " ".join(m.text for m in marks[max(0, at - 4) : at])
    own = any(m.kind is Kind.NAME for m in marks) and (bool(_TRYING.search(tried)) or bool(_TRYING.search(beside)))
    return named or led or loaded or own


def _came(line: str) -> bool:
    found = _CAME.search(line)
    return found is not None and not _DENIED.search(line[: found.start()].rstrip())


def _plainly(marks: Sequence[Mark], at: int, names: Sequence[Mark], loads: Sequence[int], came: bool) -> list[Mark]:
    """The exercise, the load, and the repetition that failed, or how many there were."""
    nth = marks[at]
    load: list[Mark] = []
    for place in loads:
        load = list(marks[place : place + 1 + (kind_at(marks, place + 1) in _UNITS)])
    comma = [Mark(Kind.COMMA, ",", nth.start, nth.start)] if load else []
    if came:
        link = [Mark(Kind.X, "x", nth.start, nth.start)] if load else []
        count = [replace(nth, kind=Kind.NUM), Mark(Kind.REPS, "reps", nth.end, nth.end)]
        return [*names, *load, *link, *count]
    failed = Mark(Kind.FAILED, "failed the", nth.start, nth.start)
    return [*names, *load, *comma, failed, replace(nth, kind=Kind.ORD)]
