"""Charts as PNG files: 1280 x 960, dark on light, readable on a phone and in print, no meaning by colour alone."""

from bot.pictures.week import draw_week

__all__ = ["draw_week"]
