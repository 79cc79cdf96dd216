"""How long a stretch of words says: `25 min`, `half an hour`, `an hour and a quarter`."""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import plain_words, words_of
from bot.notation.tokens import Mark

_FIXED: tuple[tuple[tuple[str, ...], int], ...] = (
    (("three", "quarters", "of", "an", "hour"), 45),
    (("half", "an", "hour"), 30), (("half", "a", "hour"), 30), (("half", "hour"), 30), (("half", "an", "hr"), 30),
    (("half", "hr"), 30), (("quarter", "of", "an", "hour"), 15), (("quarter", "hour"), 15),
    (("an", "hour"), 60), (("a", "hour"), 60), (("an", "hr"), 60), (("hour",), 60),
)  # fmt: skip
_ROUGHLY = ("ish", "or so", "odd", "something", "plus")
"""Between a number and its unit: `40ish min`, `30 odd minutes`."""
_LEADS = frozenset(lead[0] for lead, _ in _FIXED)


def duration_at(marks: Sequence[Mark], place: int, metres: bool) -> tuple[Decimal, int] | None:
    """The duration that starts here: minutes, and the place after it."""
    mark = marks[place]
    if mark.text in ("three", "3") and _are_quarters(marks, place + 1):
        return Decimal(45), after_hour(marks, place + 1)
    if mark.kind is Kind.NUM and mark.value is not None:
        place += text_at(marks, place + 1) in _ROUGHLY
        unit = kind_at(marks, place + 1)
        if unit is Kind.MORE and kind_at(marks, place + 2) is Kind.MINUTES:
            return mark.value, place + 3
        if unit is Kind.DASH and kind_at(marks, place + 2) is Kind.MINUTES:
            return mark.value, place + 3
        if unit is Kind.MINUTES or (unit is Kind.M and not metres and marks[place + 1].tight and mark.value >= 10):
            return mark.value, place + 2
        if unit is Kind.HOURS:
            return with_rest(marks, place + 2, mark.value * 60)
        if unit is Kind.SLASH and text_at(marks, place + 2) == "4" and "hour" in spoken_after(marks, place + 3):
            return Decimal(45), after_hour(marks, place + 3)
        return None
    if mark.text.split(" ", 1)[0] not in _LEADS:
        return None
    if mark.text in ("a", "an") and not text_at(marks, place + 1).startswith("h"):
        return None
    words = plain_words(marks, place)
    texts = [w for w, _ in words]
    for lead, minutes in _FIXED:
        size = len(lead)
        if tuple(texts[:size]) == lead and words[0][1] == place:
            end = words[size - 1][1] + 1
            return with_rest(marks, end, Decimal(minutes)) if minutes == 60 else (Decimal(minutes), end)
    return None


def _are_quarters(marks: Sequence[Mark], at: int) -> bool:
    """`quarters of an hour`, `quarter of hour`, `quarter hour`, behind `three`."""
    said = [w for w in spoken_after(marks, at, 5) if w not in ("of", "an", "a", "-")]
    return said[:1] in (["quarters"], ["quarter"]) and said[1:2] in (["hour"], ["hours"], ["hr"])


def spoken_after(marks: Sequence[Mark], place: int, most: int = 3) -> list[str]:
    return [word for word, _ in plain_words(marks, place)[:most]]


def after_hour(marks: Sequence[Mark], place: int) -> int:
    for index in range(place, min(place + 5, len(marks))):
        if {"hour", "hours", "hr"} & set(words_of(marks[index])):
            return index + 1
    return place


def with_rest(marks: Sequence[Mark], at: int, minutes: Decimal) -> tuple[Decimal, int]:
    """Hours with what follows: `and ten`, `and a half`, `15`, `30 min`."""
    words = plain_words(marks, at)
    texts = [w for w, _ in words]
    for lead, more in ((("and", "a", "half"), 30), (("and", "a", "quarter"), 15), (("and", "half"), 30)):
        if tuple(texts[: len(lead)]) == lead:
            return minutes + more, words[len(lead) - 1][1] + 1
    joined = at + 1 if kind_at(marks, at) is Kind.AND else at
    number = marks[joined] if joined < len(marks) else None
    if number is not None and number.kind is Kind.NUM and number.value is not None and number.value < 60:
        named = kind_at(marks, joined + 1) in (Kind.MINUTES, Kind.M)
        ends = joined + 1 >= len(marks) or marks[joined + 1].kind in (*EDGES, Kind.DASH)
        spoken = (number.text.isalpha() or _is_rest_of_hour(number)) and (ends or _goes_on(marks, joined + 1))
        if named or joined > at or number.tight or spoken:
            return minutes + number.value, joined + (2 if named else 1)
    return minutes, at


def _is_rest_of_hour(number: Mark) -> bool:
    """The 15 of `1 hr 15`, the 10 of `an hour 10`."""
    return number.value is not None and number.value % 5 == 0 and number.value > 0


def _goes_on(marks: Sequence[Mark], at: int) -> bool:
    """Whether what follows is no unit and no set: `1 hr 15 till school pickup`."""
    return text_at(marks, at) in ("till", "til", "until", "before", "max", "tops", "today", "tonight", "so", "for")
