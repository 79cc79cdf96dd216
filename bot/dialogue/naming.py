"""Names as people give them: without what can't be seen, or would turn around the text beside it. Text to value."""

import unicodedata

LONGEST_NAME = 40
_JOINERS = "\u200c\u200d"
"""Zero-width, but part of how some scripts and many emoji are written."""


def read_name(text: str) -> str:
    """The name on one line, at most 40 characters; empty where nothing of it could be seen.

    >>> read_name("  Ada\\u202e   L. ")
    'Ada L.'
    >>> read_name("\\u200b\\u2066")
    ''
    """
    seen = "".join(c for c in text if c.isspace() or c in _JOINERS or unicodedata.category(c)[0] != "C")
    name = " ".join(seen.split())[:LONGEST_NAME].strip(f"{_JOINERS} ")
    return name if any(unicodedata.category(c)[0] in "LNS" for c in name) else ""
