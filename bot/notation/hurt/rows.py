"""Tables of words as they are written down here."""


def word_set(rows: str) -> frozenset[str]:
    """The words of a text, parted by blanks and line ends."""
    return frozenset(rows.split())
