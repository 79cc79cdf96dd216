"""Words that say the same, put as the ones that the reader's rules know: `final one` is `last one`, `thus` is `so`.

Rules look for words; each would have to list every other way to say them. Here such a word, or a few, are said by one
of them before any rule looks: `60x5 once more` is `60x5 again`, `9 and in fact 10` is `9 and actually 10`. Only what
means the same wherever it stands is in `anywhere`; what does so only beside something else is told in `beside`.
"""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from functools import cache

from bot.notation.alike.anywhere import ANYWHERE
from bot.notation.alike.beside import BESIDE, Where
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

__all__ = ["said_plainly"]


@cache
def _by_first() -> dict[str, list[tuple[tuple[str, ...], tuple[str, ...], Where | None]]]:
    """All phrases by their first word, the longest first."""
    out: dict[str, list[tuple[tuple[str, ...], tuple[str, ...], Where | None]]] = {}
    rows: list[tuple[str, Iterable[str], Where | None]] = [*BESIDE, *((plain, said, None) for plain, said in ANYWHERE)]
    for plain, said, where in rows:
        for phrase in said:
            spoken = tuple(phrase.split())
            out.setdefault(spoken[0], []).append((spoken, tuple(plain.split()), where))
    for found in out.values():
        found.sort(key=lambda one: -len(one[0]))
    return out


def said_plainly(marks: Sequence[Mark]) -> list[Mark]:
    """The marks as typed, with such phrases as the ones that the rules know.

    >>> from bot.notation.tokens import read_marks
    >>> [m.text for m in said_plainly(read_marks("60 for 5 once more, final one 4"))]
    ['60', 'for', '5', 'again', ',', 'last', 'one', '4']
    """
    phrases = _by_first()
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        found = None
        for spoken, plain, where in phrases.get(marks[at].text, ()):
            end = at + len(spoken)
            fits = all(m.text == w for m, w in zip(marks[at:end], spoken, strict=False))
            if fits and end <= len(marks) and (where is None or where(marks, at, end)):
                found = plain, end
                break
        if found is None:
            out.append(marks[at])
            at += 1
        else:
            out += _put(marks[at : found[1]], found[0])
            at = found[1]
    return out


def _put(said: Sequence[Mark], plain: Sequence[str]) -> list[Mark]:
    """The words of a phrase as marks in the place of those that were typed."""
    start, end = said[0].start, said[-1].end
    places = [said[i].start if i < len(said) else min(start + i, end) for i in range(len(plain))]
    ends = [*places[1:], end]
    return [
        replace(
            said[0], kind=Kind.WORD, value=None, text=word, start=places[i], end=ends[i], tight=said[0].tight and i == 0
        )
        for i, word in enumerate(plain)
    ]
