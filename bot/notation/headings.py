"""Headings that no exercise of the session has: `mirror selfie count: 7`, `mood: 7`.

A heading says what the numbers behind it are of. Words of reports (`results`, `today`) head those of the exercise under
way; what measures the day or the body (`energy`, `sleep`) heads no set; any other asks whose its numbers are.
"""

from collections.abc import Iterator, Sequence

from bot.notation.answer import Source
from bot.notation.clauses import EDGES, kind_at
from bot.notation.grounds import Told
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_MEASURED = frozenset(
    words(
        "mood energy sleep stress motivation hydration water calories kcal protein steps hr pulse heartrate readiness",
        "hunger appetite recovery nutrition focus fatigue tiredness soreness score weather temp temperature weight",
    )
)
_OF_REPORT = frozenset(
    words(
        "results result reps rep today todays numbers number log update coach workout session sets set final lift main",
        "work working top back off first last second third here done now so far report training gym tally totals total",
        "score scores evening morning afternoon night tonight yesterday logged logging bits list summary info data",
        "round rounds entry check checking checkin exercise one two three next then rest lifts sesh stuff",
    )
)
_PLAIN = (Kind.WORD, Kind.FILL)
_NUMBERS = (Kind.NUM, Kind.CLOCK)


def measured(marks: Sequence[Mark]) -> set[int]:
    """The places of what headings of no set head: `energy: 6`."""
    out: set[int] = set()
    for start, colon in _headings(marks):
        said = {w for m in marks[start:colon] for w in m.text.split()}
        alone = kind_at(marks, colon + 2) in (None, *EDGES) or kind_at(marks, colon + 2) is Kind.SLASH
        if said & _MEASURED and alone:
            out |= {colon + 1}
    return out


def unknown_heading(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """The first word of a heading that may be another exercise's, or of no set, before bare numbers that are kept."""
    at = {t.grounds.reps.at for t in told if t.grounds.load.source is not Source.SAID}
    for start, colon in _headings(marks):
        number = marks[colon + 1]
        said = [w for m in marks[start:colon] for w in m.text.split()]
        strange = [m for m in marks[start:colon] if m.kind is Kind.WORD and m.text not in _OF_REPORT]
        if strange and not set(said) & _OF_REPORT and (number.start, number.end) in at:
            return strange[0]
    return None


def _headings(marks: Sequence[Mark]) -> Iterator[tuple[int, int]]:
    """Where each heading of plain words starts, and its colon, which a number follows."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.COLON or kind_at(marks, place + 1) not in _NUMBERS:
            continue
        start = place
        while start and (marks[start - 1].kind in _PLAIN or _is_link(marks[start - 1])):
            start -= 1
        if start < place and kind_at(marks, start - 1) in (None, *EDGES):
            yield start, place


def _is_link(mark: Mark) -> bool:
    return mark.kind in (Kind.AT, Kind.FOR, Kind.WITH, Kind.TO) and mark.text.isalpha()
