"""`9th`, `first`, `second`; `middle`, the second of three."""

from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TELLING = frozenset(words("was were is only got just same")) | NUMBER_WORDS
"""What follows the `second` that is a set's, not of time: `10 second was 9`."""
ORDINALS = {
    word: place
    for place, word in enumerate(
        words(
            "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth",
            "fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth",
        ),
        1,
    )
} | {"2nd": 2}


def ordinal_at(marks: list[Mark], at: int, before: list[Mark]) -> tuple[Mark, int] | None:
    """`9th`, `first`, `second` (after a number that is seconds)."""
    mark = marks[at]
    if mark.kind is Kind.NUM and at + 1 < len(marks) and mark.value is not None:
        suffix = marks[at + 1]
        if suffix.tight and suffix.text in ("st", "nd", "rd", "th") and mark.value == int(mark.value):
            return replace(mark, kind=Kind.ORD, text=mark.text + suffix.text, end=suffix.end, parts=()), at + 2
    if mark.text == "middle" and at + 1 < len(marks) and marks[at + 1].text in ("set", "one"):
        return replace(mark, kind=Kind.ORD, value=Decimal(2)), at + 1
    if mark.kind is Kind.WORD and mark.text in ORDINALS:
        follows = at + 1 < len(marks) and (
            marks[at + 1].kind in (Kind.NUM, Kind.COLON) or marks[at + 1].text in ("set", "one", "round")
        )
        follows = follows or (at + 1 < len(marks) and marks[at + 1].text in _TELLING)
        ends = at + 1 == len(marks) or marks[at + 1].kind in (Kind.COMMA, Kind.STOP, Kind.LINE)
        follows = follows or (ends and any(m.kind is Kind.ORD and m.value == 1 for m in before))
        if mark.text == "second" and before and before[-1].kind is Kind.NUM and not follows:
            return None
        return replace(mark, kind=Kind.ORD, value=Decimal(ORDINALS[mark.text])), at + 1
    return None
