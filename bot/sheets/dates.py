"""Ranges that a spreadsheet program took for days: `8-10` typed into a plain cell becomes the eighth of October.

What was meant is only ever suggested, since which number was typed first depends on where the program believes to be.
"""

import re

_MONTHS = {
    "jan": 1, "ene": 1, "gen": 1, "feb": 2, "fév": 2, "mar": 3, "mär": 3, "mrz": 3, "apr": 4, "abr": 4, "avr": 4,
    "may": 5, "mai": 5, "mag": 5, "jun": 6, "giu": 6, "jul": 7, "lug": 7, "aug": 8, "ago": 8, "aoû": 8, "sep": 9,
    "set": 9, "oct": 10, "okt": 10, "ott": 10, "out": 10, "nov": 11, "dec": 12, "dez": 12, "dic": 12, "déc": 12,
}  # fmt: skip
_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ].*)?")
_NUMBERS = re.compile(r"(\d{1,2})(?:[./](\d{1,2})[./](?:\d{2}|\d{4})?|-(\d{1,2})-\d{4})")
_DAY_MONTH = re.compile(r"(\d{1,2})[-./ ]{1,2}([^\W\d_]{3,9})\.?(?:[-./ ]{1,2}\d{2,4})?")
_MONTH_YEAR = re.compile(r"([^\W\d_]{3,9})\.?[-./ ]{1,2}(\d{1,2}|\d{4})")


def mistaken_range(text: str) -> str | None:
    """The range that was probably meant where the text is a day; `None` where it is none.

    `8-Oct` and `2026-10-08` give `8-10`, `Oct-45` gives `10-45`.
    """
    text = text.strip().lower()
    if found := _ISO.fullmatch(text):
        return _span(int(found[2]), int(found[3]))
    if found := _NUMBERS.fullmatch(text):
        return _span(int(found[1]), int(found[2] or found[3]))
    if (found := _DAY_MONTH.fullmatch(text)) and (month := _MONTHS.get(found[2][:3])):
        return _span(int(found[1]), month)
    if (found := _MONTH_YEAR.fullmatch(text)) and (month := _MONTHS.get(found[1][:3])):
        return _span(month, int(found[2]) % 100)
    return None


def _span(one: int, other: int) -> str:
    return f"{min(one, other)}-{max(one, other)}"
