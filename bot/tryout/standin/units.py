"""Lengths in UTF-16 code units, which is how the platform counts offsets and limits. One emoji may be several."""


def utf16_length(text: str) -> int:
    """Code units of a text: 2 for a character beyond the basic plane, else 1."""
    if text.isascii():
        return len(text)
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def utf16_cut(text: str, offset: int, length: int) -> str:
    """The part of a text that an entity covers."""
    if text.isascii():
        return text[offset : offset + length]
    raw = text.encode("utf-16-le", "surrogatepass")
    return raw[2 * offset : 2 * (offset + length)].decode("utf-16-le", "replace")


def whole_characters(text: str) -> str:
    """The text with each half of a surrogate pair, which is no character, replaced."""
    if text.isascii():
        return text
    return text.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")
