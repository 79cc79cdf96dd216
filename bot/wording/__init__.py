"""Words as data: keys and arguments in, the reader's language out. The words stand in `en/*.ftl` (Project Fluent)."""

from bot.wording.bundle import show

__all__ = ["show"]
