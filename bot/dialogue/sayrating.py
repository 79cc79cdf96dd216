"""Typed answers to our own questions: a number from 0 to 10, and how it is the morning after. Text to value."""

import re

HIGHEST = 10
_NUMBERS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
_SPOKEN = {word: number for number, word in enumerate(_NUMBERS)}
_OUT_OF_TEN = re.compile(r"\s*(?:/|of|out of)\s*(?:10|ten)\b")
_TALK = (
    "a about actually again an and around bit felt feels feel hard i i'd id it its it's just like make maybe more",
    "no now of overall pretty probably quite rather roughly say session so sorry that the thing",
    "think tough was would well",
)
_ASIDE = frozenset(word for words in _TALK for word in words.split())
"""Words that may stand around the number and change nothing."""


def read_rating(text: str) -> int | None:
    """The one number from 0 to 10 that a message is, alone or among words of no weight; `None` for anything else.

    >>> read_rating("felt about a 7/10")
    7
    >>> read_rating("60x8") is None
    True
    """
    words = _OUT_OF_TEN.sub("", text.lower()).replace(",", " ").strip(" .!").split()
    found: int | None = None
    for word in words:
        number = int(word) if word.isascii() and word.isdigit() else _SPOKEN.get(word)
        if number is None and word.strip(".!?") in _ASIDE:
            continue
        if number is None or found is not None:
            return None
        found = number
    return found if found is not None and 0 <= found <= HIGHEST else None


_MORNING = (
    ("worse", ("worse", "worsened", "sharper", "more painful", "can't", "cannot", "swollen")),
    ("better", ("better", "improving", "improved", "easier", "less", "almost gone", "nearly gone", "mostly gone")),
    ("same", ("same", "no change", "unchanged", "still there", "still hurts", "still sore", "not better")),
    (
        "gone",
        ("gone", "no pain", "no more pain", "pain free", "painfree", "fine", "nothing", "all good", "healed", "ok now"),
    ),
)
"""The most serious first: in doubt it is the worse one."""


def read_morning(text: str) -> str | None:
    """How it is, as typed: gone, better, same or worse; `None` where the words don't say."""
    plain = f" {' '.join(re.findall(r'[a-z’]+', text.lower().replace(chr(39), '')))} "
    if " not worse " in plain:
        plain = plain.replace(" not worse ", " same ")
    if " no better " in plain or " not better " in plain:
        return "same"
    return next(
        (answer for answer, signs in _MORNING if any(f" {s.replace(chr(39), '')} " in plain for s in signs)), None
    )
