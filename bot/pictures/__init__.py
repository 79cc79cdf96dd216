"""Charts as PNG files: 1280 wide, dark on light, readable on a phone and in print, no meaning by colour alone."""

from bot.pictures.drawing import draw
from bot.pictures.week import draw_week

__all__ = ["draw", "draw_week"]
