"""The commas that a message typed or dictated in a hurry lacks: `60x5 right knee pinched` has one behind its set.

Every rule behind this one was written for sentences with their stops. Here, before any of them looks, a comma is put
where what stands left is whole and what follows can only open something new. What opens so, and behind what, is told
row by row in `openings`; nothing is put where a mark is typed.
"""

from dataclasses import dataclass, replace

from bot.notation.answer import Ask, Reading, Span
from bot.notation.unpunctuated.openings import ANY_OPENING, OPENINGS
from bot.notation.unpunctuated.spoken_marks import with_spoken_marks

_PLAIN = str.maketrans({"’": "'", "‘": "'", "×": "x", "*": "x"})
_BEHIND = 60
"""Characters before a place that are looked at."""


@dataclass(frozen=True, slots=True)
class Punctuated:
    """A message with the marks that it lacks; `added` are their places in it, in order."""

    text: str
    added: tuple[int, ...]

    def typed(self, place: int) -> int:
        """Where in the message as typed a place of this one stands."""
        return place - sum(one < place for one in self.added)

    def as_typed(self, reading: Reading) -> Reading:
        """What was read here, its places those of the message as typed."""
        if not self.added:
            return reading
        return replace(
            reading,
            evidence=tuple(replace(e, span=self._span(e.span)) for e in reading.evidence),
            ask=None if reading.ask is None else self._ask(reading.ask),
        )

    def _ask(self, ask: Ask) -> Ask:
        choices = tuple(replace(c, reading=self.as_typed(c.reading)) for c in ask.choices)
        return replace(ask, span=self._span(ask.span), choices=choices)

    def _span(self, span: Span) -> Span:
        return self.typed(span[0]), self.typed(span[1])


def punctuated(text: str) -> Punctuated:
    """The message with a comma wherever something new opens and no mark says so.

    >>> punctuated("60x5 right knee pinched on the last").text
    '60x5, right knee pinched on the last'
    """
    text = with_spoken_marks(text)
    plain = text.lower().translate(_PLAIN)
    if len(plain) != len(text):
        return Punctuated(text, ())
    found: dict[int, str] = {}
    for place in ANY_OPENING.finditer(plain):
        at = place.start()
        for row in OPENINGS:
            if row.opens.match(plain, at) and row.behind.search(plain, max(0, at - _BEHIND), at - 1):
                found[at - 1] = row.mark
                break
    return _with_marks(text, found)


def _with_marks(text: str, found: dict[int, str]) -> Punctuated:
    out: list[str] = []
    last = 0
    places = sorted(found)
    for place in places:
        out += [text[last:place], found[place]]
        last = place
    return Punctuated("".join((*out, text[last:])), tuple(p + i for i, p in enumerate(places)))
