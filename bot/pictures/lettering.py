"""Text on a picture: sizes in pixels, one bundled typeface, cut to the room that there is.

The typeface comes with the drawing library, so a picture is the same on every machine. A character that it can't
draw (an emoji in a muscle's name) is left out: better a name without it than a box.
"""

from __future__ import annotations

import unicodedata
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from matplotlib.figure import Figure
    from matplotlib.text import Text

DPI = 100
CUT = "…"
LONGEST = 120
"""Characters: no line of a picture holds more."""
UNNAMED = "?"
INK = "#1B2A33"


def write(figure: Figure, at: tuple[float, float], text: str, **style: float | str) -> Text:
    """Put text on the figure at pixel (x from the left, y from the bottom).

    `style`: `size` in pixels (the height of the letters' body), `ha`, `va`, `color`, and `weight` ("normal" or "bold").
    """
    from matplotlib import get_data_path  # noqa: PLC0415 a picture is rare: the library loads when one is drawn
    from matplotlib.font_manager import FontProperties  # noqa: PLC0415 as above
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    face = "DejaVuSans-Bold.ttf" if style.get("weight") == "bold" else "DejaVuSans.ttf"
    font = FontProperties(
        fname=Path(get_data_path()) / "fonts" / "ttf" / face,
        size=float(style["size"]) * 72 / DPI,
    )
    return figure.text(
        *at,
        _drawable(text, font),
        fontproperties=font,
        color=str(style.get("color", INK)),
        ha=str(style.get("ha", "left")),
        va=str(style.get("va", "center_baseline")),
        transform=IdentityTransform(),
        parse_math=False,
    )


def width(text: Text) -> float:
    """How wide the text is drawn, in pixels."""
    return float(text.get_window_extent().width) if text.get_text() else 0.0


def fit(text: Text, room: float) -> float:
    """Cut the text, with a mark, to at most `room` pixels; gives how wide it is then."""
    whole = text.get_text()
    wide = width(text)
    kept = len(whole) if wide <= room else int(len(whole) * room / wide)
    while wide > room and kept > 0:
        text.set_text(whole[:kept].rstrip() + CUT)
        wide = width(text)
        kept -= 1
    return wide


def _drawable(text: str, font: object) -> str:
    """The text in one line, without characters that the typeface has no shape for."""
    from matplotlib.font_manager import FontProperties, get_font  # noqa: PLC0415 as above

    assert isinstance(font, FontProperties)
    shapes = get_font(str(font.get_file()))
    one_line = " ".join(unicodedata.normalize("NFC", text[:LONGEST]).split())
    kept = (c for c in one_line if unicodedata.category(c)[0] != "C" and shapes.get_char_index(ord(c)))
    return " ".join("".join(kept).split()) or (UNNAMED if one_line else "")
