"""A count told with how it went: `95 for a grindy 2`, `95 x an ugly 3`. The words are of the count."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.load_apart.words import COUNTING
from bot.notation.order.near import UNITS
from bot.notation.tokens import Mark

_LINKS = (Kind.X, Kind.FOR)
_WORDS = (Kind.FILL, Kind.WORD, Kind.TALKNUM)
_ARTICLES = ("a", "an")
_MOST = 4
"""Words between a link and its count."""


def with_described_counts(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a count straight behind its link."""
    out: list[Mark] = []
    place = 0
    while place < len(marks):
        out.append(marks[place])
        place += 1
        load = place - 2 - (kind_at(marks, place - 2) in (*UNITS, Kind.S))
        if out[-1].kind not in _LINKS or kind_at(marks, load) is not Kind.NUM:
            continue
        end = place
        while end < place + _MOST and kind_at(marks, end) in _WORDS:
            end += 1
        said = {w for m in marks[place:end] for w in m.text.split()}
        led = out[-1].text.split()[-1] in _ARTICLES or marks[min(place, len(marks) - 1)].text in _ARTICLES
        ends = kind_at(marks, end + 1) in (None, *EDGES)
        if end > place and kind_at(marks, end) is Kind.NUM and (said <= COUNTING or (led and ends)):
            out.append(replace(marks[end], start=out[-1].start))
            place = end + 1
    return out
