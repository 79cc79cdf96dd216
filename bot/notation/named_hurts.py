"""Words of pain that stand inside the name of an exercise are none: `hip thurst 110x10`, `bumped pec deck to 110`.

The reader of pain knows no session: a slip in a name, a name told the other way round or a part of the body in one may
read to it as a hurt. Such a message is read for pain once more with those names left out. Whatever the client says
beside the name stays as it is said, and a word that the reader of pain knows as typed is never a slip for a name.
"""

from collections.abc import Callable, Sequence

from bot.notation.answer import Request
from bot.notation.hurt.patterns import SPELLER
from bot.notation.kinds import Kind
from bot.notation.little_words import without_little_words
from bot.notation.pain import PainReading, read_sentences
from bot.notation.script import Folded
from bot.notation.tokens import Mark


def pain_beside_names(request: Request, folded: Folded, marks: Callable[[], Sequence[Mark]]) -> PainReading:
    """What a message says of pain, the names of its session's exercises left out where they alone would say it."""
    text = without_little_words(request.text)
    hurt = read_sentences(text)
    if not hurt.spans:
        return hurt
    inside = [
        (start, end)
        for start, end in _names(folded, marks())
        if any(start == one or (start <= one and two <= end) or start < two < end for one, two in hurt.spans)
    ]
    if not inside:
        return hurt
    for start, end in inside:
        text = text[:start] + " " * (end - start) + text[end:]
    return read_sentences(text)


def _names(folded: Folded, marks: Sequence[Mark]) -> list[tuple[int, int]]:
    """The raw ranges of the names of the session's exercises, but those of one word that is one of pain's own."""
    return [
        folded.span(m.start, m.end)
        for m in marks
        if m.kind is Kind.NAME and m.names and (" " in m.text or not SPELLER.is_known(m.text))
    ]
