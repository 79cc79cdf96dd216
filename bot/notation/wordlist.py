"""Lists of words, written as words."""


def words(*lines: str) -> tuple[str, ...]:
    """The words of these lines, in order."""
    return tuple(word for line in lines for word in line.split())
