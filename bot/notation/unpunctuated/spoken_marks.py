"""Marks that were spoken and stand as words in a dictated text: `squats one hundred for five comma knee hurts`.

The text keeps its length, so that places in it stay where they were. `twenty two comma five` is a number.
"""

import re

from bot.notation.spoken import NUMBER_WORDS

_COMMA = re.compile(r"(?<=[^\W_]) comma (?=(?P<after>[^\W_]+))", re.IGNORECASE)
_WORD = re.compile(r"[^\W_]+$")
_LONGEST = 20
"""Letters before a comma that are looked at: no number word has more."""
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
    before = _WORD.search(found.string[max(0, found.start() - _LONGEST) : found.start()])
    counts = before is not None and _is_number(before.group()) and _is_number(found["after"])
    return found.group() if counts else ",".ljust(len(found.group()))


def _is_number(word: str) -> bool:
    return word.isdigit() or word.lower() in NUMBER_WORDS


def _stop(found: re.Match[str]) -> str:
    return ".".ljust(len(found.group()))
