"""The word `more` where it counts nothing: `hurt my ego more than anything`, `was more easy`."""

from collections.abc import Sequence

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import UNITS
from bot.notation.shaping.counted import GOES
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_COUNTING = (Kind.NUM, Kind.ANOTHER, Kind.SETS, Kind.SET, Kind.ALL, Kind.REPS, Kind.MINI, Kind.COULD, Kind.KG, Kind.LB)
_VAGUE = frozenset(words("few some couple several many bit little"))


def is_more_of_talk(marks: Sequence[Mark], place: int) -> bool:
    """`hurt my ego more than anything`, `was more easy`, `could do more`: no number is near."""
    mark, before = marks[place], text_at(marks, place - 1)
    if mark.text in ("more easy", "more hard", "more heavy", "more light"):
        return kind_at(marks, place - 1) not in _COUNTING
    if mark.text == "more" and (_is_to_follow(marks, place) or _is_of_goes(marks, place)):
        return True
    if kind_at(marks, place - 1) in _COUNTING or mark.text not in ("more", "more than") or before in _VAGUE:
        return False
    after = [kind_at(marks, place + 1), kind_at(marks, place + 2)]
    if before in ("felt", "feels", "feel", "feeling") and text_at(marks, place + 1) == "like":
        return True
    if after[0] is None or after[0] in EDGES:
        wobbled = kind_at(marks, place - 1) is Kind.WORD and before.endswith("ed")  # `the left one wobbled more`
        if before.split()[-1:] in _WEIGHING or wobbled:
            return True
        could = any(kind_at(marks, place - n) is Kind.COULD for n in (2, 3))
        return could and not any(kind_at(marks, place - n) is Kind.NUM for n in (2, 3))
    than = text_at(marks, place + 1) == "than"
    spoken = than or after[0] is Kind.WORD or (after[0] is Kind.FILL and marks[place + 1].text.isalpha())
    return spoken and not any(k in (*_COUNTING, *UNITS) for k in after)


def _is_of_goes(marks: Sequence[Mark], place: int) -> bool:
    """`had a couple more goes at it`, `a few more sets to go`: sets, of which none is told here."""
    return text_at(marks, place - 1) in ("couple", "few") and text_at(marks, place + 1) in GOES


_WEIGHING = (["weighs"], ["weigh"], ["weighed"], ["weighing"], ["costs"], ["eats"], ["sweats"], ["complains"])
"""What somebody or something does more of: `my shopping weighs more`."""


def _is_to_follow(marks: Sequence[Mark], place: int) -> bool:
    """`6 and 5, more in a bit`: what the client will tell later."""
    said = " ".join(
        m.text for m in marks[place + 1 : place + 5] if m.kind in (Kind.FILL, Kind.WORD, Kind.WITH, Kind.AT)
    )
    return said.startswith(_LATER)


_LATER = (
    "in a bit",
    "in a sec",
    "in a minute",
    "in a min",
    "in a moment",
    "to follow",
    "to come",
    "later",
    "soon",
    "after",
)
