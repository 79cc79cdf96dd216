"""Scores of something else than a set: `pain 0/10`, `energy 7 out of 10`."""

from collections.abc import Sequence

from bot.notation.clauses import part_of
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_RATED = frozenset(
    words(
        "pain hurt hurts pains ache discomfort energy sleep mood stress motivation soreness sore tired form technique",
        "depth pump focus vibes mindset feeling confidence control recovery nutrition",
    )
)


def without_ratings(marks: Sequence[Mark], hurts: bool) -> list[Mark]:
    """The marks with such scores without bearing. `hurts`: the message tells of pain, which a bare score rates."""
    gone: set[int] = set()
    for place, mark in enumerate(marks):
        ten = next((i for i in range(place + 2, min(place + 4, len(marks))) if marks[i].value == 10), None)
        if (
            mark.kind is Kind.NUM
            and ten is not None
            and (marks[place + 1].kind is Kind.SLASH or [m.text for m in marks[place + 1 : ten]] == ["out", "of"])
        ):
            near = [w for m in (*marks[max(0, place - 4) : place], *marks[ten + 1 : ten + 3]) for w in m.text.split()]
            told = (hurts and mark.value is not None and mark.value < 10) or mark.value == 0
            told = told or _is_of_talk(marks, place, ten)
            if set(near) & _RATED or marks[place + 1].kind is not Kind.SLASH or told:
                gone.update(range(place, ten + 1))
    return masked(marks, gone)


def _is_of_talk(marks: Sequence[Mark], place: int, ten: int) -> bool:
    """`dog outside the window 10/10`: a score of what a sentence of talk tells, beside a set with its load."""
    start, end = part_of(marks, place)
    rest = [m for i, m in enumerate(marks[start:end], start) if not place <= i <= ten]
    talks = sum(m.kind is Kind.WORD for m in rest) > 0 and all(m.kind in (Kind.WORD, *_PLAIN) for m in rest)
    return talks and any(m.kind in (Kind.X, Kind.FOR) for i, m in enumerate(marks) if not start <= i < end)


_PLAIN = (Kind.FILL, Kind.WAS, Kind.AT, Kind.WITH)
