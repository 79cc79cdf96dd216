"""Any script to one plain alphabet, with a way back to where each character stood.

Digits of any script become `0`-`9` (Unicode category Nd), full-width forms their plain ones (NFKC), no-break spaces a
space; zero-width characters, variation selectors and accents go. Raised digits, circled numbers and thirds become `^`:
a number that holds one is asked about. `×`, `✕` and the Cyrillic and Greek look-alikes of `x` become `x`.
The comma and the stop of Chinese and Japanese part numbers, and are never decimal signs.
"""

import unicodedata
from dataclasses import dataclass
from functools import lru_cache

ODD = "^"
"""Stands for a digit that has no one plain value, as in `100²`."""

_SAME = {
    "×": "x", "✕": "x", "✖": "x", "⨯": "x", "✗": "x", "❌": "x", "╳": "x", "х": "x", "Х": "x", "χ": "x", "Χ": "x",
    "–": "-", "—": "-", "−": "-", "‐": "-", "‑": "-", "‒": "-", "―": "-", "﹣": "-", "－": "-", "➖": "-",
    "’": "'", "‘": "'", "ʼ": "'", "`": "'", "´": "'", "′": "'", "“": '"', "”": '"', "″": '"', "„": '"',
    "→": ">", "➡": ">", "➔": ">", "⇒": ">", "»": ">", "➜": ">", "➕": "+",
    "٫": ".", "٬": ",", "،": ",", "、": ", ", "，": ",", "。": ". ", "・": ", ", "؛": ";", "⁄": "/", "∕": "/", "÷": "/",
    "•": "•", "●": "•", "▪": "•", "‣": "•", "◦": "•", "∙": "•", "∗": "*", "·": "·", "…": ".", "¿": " ", "¡": " ",
    "ł": "l", "Ł": "l", "ø": "o", "Ø": "o", "đ": "d", "ı": "i", "ß": "ss", "æ": "ae", "œ": "oe",
    "✓": "✅", "✔": "✅", "☑": "✅", "½": ".5", "¼": ".25", "¾": ".75",
    "\r": "\n", "\u2028": "\n", "\u2029": "\n", "\x85": "\n", "\x0b": "\n", "\x0c": "\n", "\n": "\n", "\t": " ",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Folded:
    """Plain lower-case text; `at[i]` is where character `i` stood in the raw message (one more at the end)."""

    text: str
    at: tuple[int, ...]

    def span(self, start: int, end: int) -> tuple[int, int]:
        """The raw range of a range of the folded text."""
        if end <= start:
            return (self.at[start], self.at[start])
        return (self.at[start], self.at[end - 1] + 1)


@lru_cache(maxsize=4096)
def _fold_one(char: str) -> str:
    if "!" <= char <= "~" or char == " ":
        return char.lower() if char != ODD else " "
    known = _SAME.get(char)
    if known is not None:
        return known
    category = unicodedata.category(char)
    if category == "Nd":
        return str(unicodedata.digit(char))
    if category in ("No", "Nl"):
        return ODD
    if category in ("Cf", "Mn", "Me", "Cc", "Cs", "Co", "Cn", "Sk", "Mc"):
        return ""
    if category.startswith("Z"):
        return " "
    plain = "".join(c for c in unicodedata.normalize("NFKD", char) if unicodedata.category(c) != "Mn")
    if plain != char:
        return "".join(_fold_one(c) if c != char else c for c in plain)
    return char.lower()


def read_script(text: str) -> Folded:
    """The text in the plain alphabet. Never raises; the result may be longer or shorter than the text."""
    out: list[str] = []
    at: list[int] = []
    for place, char in enumerate(text):
        plain = _fold_one(char)
        if plain in (".5", ".25", ".75"):
            if out[-1:] == [" "] and out[-2:-1] and out[-2].isdigit():
                del out[-1], at[-1]
            plain = plain if out and out[-1].isdigit() else "0" + plain
        elif char == "·":
            plain = "." if out and out[-1].isdigit() and text[place + 1 : place + 2].isdigit() else "•"
        for piece in plain:
            out.append(piece)
            at.append(place)
    at.append(len(text))
    return Folded("".join(out), tuple(at))
