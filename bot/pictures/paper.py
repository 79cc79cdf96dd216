"""The paper that all pictures are drawn on: its measures, its few colours, boxes, lines and marks in pixels, the PNG.

The inks are told apart by how dark they are, so that a grey print says the same.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from io import BytesIO
from threading import Lock
from typing import TYPE_CHECKING

from bot.pictures.lettering import DPI, INK

if TYPE_CHECKING:
    from matplotlib.figure import Figure

WIDTH, HEIGHT = 1280, 960
"""Pixels: what a phone shows without scaling up. `HEIGHT` is the usual one."""
EDGE = 48.0
GAP = 18.0
PAPER, SOLID, FAINT, OUTLINE, QUIET = "#FBF8F1", "#1F5A70", "#F6EBD6", "#8A6A33", "#52616A"

_COLOURS = 64
"""Enough for a few plain colours and the soft edges of letters; a third of the bytes on a client's mobile plan."""
_drawing = Lock()

At = tuple[float, float]


def sheet(height: int = HEIGHT) -> Figure:
    """An empty sheet. All artists lie on it in pixels from the bottom left."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415 a picture is rare: loads when drawn
    from matplotlib.figure import Figure  # noqa: PLC0415 as above

    figure = Figure(figsize=(WIDTH / DPI, height / DPI), dpi=DPI, facecolor=PAPER)
    FigureCanvasAgg(figure)
    return figure


def png_of(draw: Callable[[], Figure]) -> bytes:
    """The picture as a PNG, the same bytes for the same picture. Any thread may ask; one draws at a time."""
    from matplotlib.backends.backend_agg import FigureCanvasAgg  # noqa: PLC0415 a picture is rare: loads when drawn
    from PIL import Image  # noqa: PLC0415 as above

    with _drawing:
        canvas = draw().canvas
        assert isinstance(canvas, FigureCanvasAgg)
        canvas.draw()  # type: ignore[no-untyped-call]  # the library leaves it untyped
        pixels = canvas.buffer_rgba()  # type: ignore[no-untyped-call]  # as above
        drawn = Image.frombuffer("RGBA", canvas.get_width_height(), pixels, "raw", "RGBA", 0, 1)
        out = BytesIO()
        drawn.convert("RGB").quantize(_COLOURS, method=Image.Quantize.FASTOCTREE).save(out, "PNG", compress_level=6)
        return out.getvalue()


def box(figure: Figure, at: At, size: At, *, planned: bool = False, color: str = SOLID, hatch: str = "//") -> None:
    """A bar with its lower left corner at `at`: solid, or hatched within an outline where only planned."""
    from matplotlib.patches import Rectangle  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    drawn = Rectangle(at, *size, transform=IdentityTransform(), linewidth=0 if not planned else 1.6)
    if planned:
        drawn.set(facecolor=FAINT, edgecolor=OUTLINE, hatch=hatch)
        drawn.set_hatch_linewidth(1.6)
    else:
        drawn.set(facecolor=color, edgecolor="none")
    figure.add_artist(drawn)


def frame(figure: Figure, at: At, size: At, *, color: str = OUTLINE, wide: float = 3.0, dashed: bool = False) -> None:
    """An empty box."""
    from matplotlib.patches import Rectangle  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    drawn = Rectangle(at, *size, transform=IdentityTransform(), linewidth=wide, facecolor="none", edgecolor=color)
    if dashed:
        drawn.set_linestyle((0, (3, 2)))
    figure.add_artist(drawn)


def area(figure: Figure, corners: Sequence[At], *, color: str = FAINT) -> None:
    """A filled shape."""
    from matplotlib.patches import Polygon  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    shape = Polygon(list(corners), closed=True, transform=IdentityTransform(), facecolor=color, edgecolor="none")
    figure.add_artist(shape)


def stroke(
    figure: Figure, points: Sequence[At], *, color: str = INK, wide: float = 2.0, dashes: tuple[float, ...] = ()
) -> None:
    """A line through these points; `dashes` are lengths on and off, in widths."""
    from matplotlib.lines import Line2D  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    line = Line2D(
        [x for x, _ in points],
        [y for _, y in points],
        transform=IdentityTransform(),
        color=color,
        linewidth=wide * 72 / DPI,
        solid_joinstyle="round",
        solid_capstyle="round",
    )
    if dashes:
        line.set_linestyle((0, dashes))
    figure.add_artist(line)


def marks(
    figure: Figure, points: Sequence[At], shape: str, size: float, *, color: str = OUTLINE, edge: str = PAPER
) -> None:
    """The same mark (`shape` as the drawing library names it) of `size` pixels at each of these points."""
    from matplotlib.lines import Line2D  # noqa: PLC0415 loads when a picture is drawn
    from matplotlib.transforms import IdentityTransform  # noqa: PLC0415 as above

    drawn = Line2D(
        [x for x, _ in points],
        [y for _, y in points],
        transform=IdentityTransform(),
        linestyle="none",
        marker=shape,
        markersize=size * 72 / DPI,
        markerfacecolor=color,
        markeredgecolor=edge,
        markeredgewidth=1.6 * 72 / DPI,
    )
    figure.add_artist(drawn)
