"""A time of day, spoken or typed: `18:15`, `quarter past six`, `6 pm`."""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark


def time_of_day(marks: Sequence[Mark], at: int) -> tuple[int, int, bool, int] | None:
    """Hour, minute, whether its half of the day is known, and the place after it."""
    while (
        at < len(marks)
        and marks[at].kind is Kind.FILL
        and marks[at].text in ("about", "around", "like", "roughly", "a")
    ):
        at += 1
    if at >= len(marks):
        return None
    mark = marks[at]
    words = [w for w, _ in plain_words(marks, at)]
    if mark.text in ("noon", "midday", "midnight"):
        return (0 if mark.text == "midnight" else 12), 0, True, at + 1
    if words[:2] == ["half", "past"] or words[:1] == ["half"]:
        place = at + 2 if words[:2] == ["half", "past"] else at + 1
        return _hour(marks, place, 30)
    if words[:1] == ["quarter"] and words[1:2] in (["past"], ["to"]):
        return _hour(marks, at + 2, 15 if words[1] == "past" else -15)
    if mark.kind is Kind.NUM and mark.value is not None and text_at(marks, at + 1) in ("past", "to"):
        return _hour(marks, at + 2, int(mark.value) * (1 if text_at(marks, at + 1) == "past" else -1))
    if mark.kind is Kind.CLOCK:
        first, second = (int(p) for p in mark.parts)
        if first > 23 or second > 59:
            return None
        return _half_of_day(marks, at + 1, first, second)
    if mark.kind is Kind.NUM and mark.value is not None:
        if mark.value != int(mark.value):
            hour, minute = int(mark.value), round((mark.value - int(mark.value)) * 100)
            if "." not in mark.text or len(mark.text.split(".")[1]) != 2 or minute > 59 or hour > 23:
                return None
            return _half_of_day(marks, at + 1, hour, minute)
        after = marks[at + 1] if at + 1 < len(marks) else None
        spoken = after is not None and after.kind is Kind.NUM and after.text.isalpha() and mark.text.isalpha()
        if spoken and after is not None and after.value is not None and mark.value <= 12 and 10 <= after.value <= 59:
            return _half_of_day(marks, at + 2, int(mark.value), int(after.value))
        if mark.value <= 23:
            minutes, end = _behind_hour(marks, at + 1)
            return _half_of_day(marks, end, int(mark.value), minutes)
        if 100 <= mark.value <= 2359 and mark.value % 100 < 60 and _is_of_clock(mark):
            return _half_of_day(marks, at + 1, int(mark.value) // 100, int(mark.value) % 100)
    return None


def _behind_hour(marks: Sequence[Mark], at: int) -> tuple[int, int]:
    """The minutes of `19h30`, none of `19h` or `19`; and the place after them."""
    if kind_at(marks, at) is not Kind.HOURS or text_at(marks, at) != "h" or not marks[at].tight:
        return 0, at
    number = marks[at + 1] if kind_at(marks, at + 1) is Kind.NUM else None
    if number is None or not number.tight or number.value is None or number.value >= _HOUR:
        return 0, at + 1
    return int(number.value), at + 2


_HOUR, _HOURS = 60, 23
"""Minutes; the last hour of a day."""


def _is_of_clock(mark: Mark) -> bool:
    """`1830`, or `five thirty` as it is said."""
    return len(mark.text) in (3, 4) or (bool(mark.parts) and " " in mark.text)


def _hour(marks: Sequence[Mark], at: int, minutes: int) -> tuple[int, int, bool, int] | None:
    mark = marks[at] if at < len(marks) else None
    one = mark is not None and mark.text == "one"
    value = Decimal(1) if one else mark.value if mark is not None and mark.kind is Kind.NUM else None
    if value is None or value != int(value) or value > _HOURS:
        return None
    total = int(value) * _HOUR + minutes
    hour = total // _HOUR % (_HOURS + 1)
    return _half_of_day(marks, at + 1, 12 if value == 1 and not hour else hour, total % _HOUR)


def _half_of_day(marks: Sequence[Mark], at: int, hour: int, minute: int) -> tuple[int, int, bool, int]:
    word = text_at(marks, at)
    if word in ("pm", "p"):
        return (hour % 12 + 12, minute, True, at + 1)
    if word in ("am",):
        return (hour % 12, minute, True, at + 1)
    return hour, minute, hour > 12 or hour == 0, at


def words_of(mark: Mark) -> list[str]:
    return mark.text.split()


def plain_words(marks: Sequence[Mark], place: int) -> list[tuple[str, int]]:
    """Words from here on with the mark that each stands in, phrases taken apart, at most ten."""
    words: list[tuple[str, int]] = []
    for index in range(place, min(place + 8, len(marks))):
        words.extend((word, index) for word in words_of(marks[index]))
    return words
