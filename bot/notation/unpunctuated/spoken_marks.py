"""Marks that were spoken and stand as words in a dictated text: `squats one hundred for five comma knee hurts`.

The text keeps its length, so that places in it stay where they were. `twenty two comma five` is a number.
"""

import re

from bot.notation.spoken import NUMBER_WORDS

_COMMA = re.compile(r"(?P<before>[^\W_]+) comma (?=(?P<after>[^\W_]+))", re.IGNORECASE)
_STOP = re.compile(r"(?<=[^\W_]) full stop(?= |$)", re.IGNORECASE)
_PERIOD = re.compile(r"(?<=[^\W_]) period(?= |$)", re.IGNORECASE)


def with_spoken_marks(text: str) -> str:
    """The text with commas and full stops for their names; `period` only beside another mark that is spoken.

    >>> with_spoken_marks("bench sixty for five comma knee hurts full stop")
    'bench sixty for five,      knee hurts.         '
    """
    out = _STOP.sub(_stop, _COMMA.sub(_comma, text))
    return out if out == text and len(_PERIOD.findall(text)) < _SEVERAL else _PERIOD.sub(_stop, out)


_SEVERAL = 2


def _comma(found: re.Match[str]) -> str:
    counts = all(_is_number(found[side]) for side in ("before", "after"))
    return found.group() if counts else found["before"] + ",".ljust(len(" comma "))


def _is_number(word: str) -> bool:
    return word.isdigit() or word.lower() in NUMBER_WORDS


def _stop(found: re.Match[str]) -> str:
    return ".".ljust(len(found.group()))
