"""Words that ask for a page of the command menu, typed without its slash: the whole message, with nothing beside it."""

import re
from collections.abc import Mapping

_ASKED: Mapping[str, tuple[str, ...]] = {
    "/today": (
        "today", "show today", "show me today", "what is today", "whats today", "what is on today", "whats on today",
        "what have i got today", "what do i have today", "what am i doing today", "what is the plan today",
        "whats the plan today", "todays session", "todays workout", "todays training", "todays plan", "my session",
        "my workout",
    ),
    "/week": ("week", "the week", "my week", "this week", "show week", "show my week", "week so far"),
    "/undo": ("undo", "undo that", "undo it", "undo please"),
    "/settings": ("settings", "my settings"),
    "/export": ("export", "export my data", "my data"),
    "/privacy": ("privacy",),
    "/help": ("help", "menu", "commands"),
}  # fmt: skip
_COMMANDS: Mapping[str, str] = {said: command for command, asked in _ASKED.items() for said in asked}
LONGEST = 40
"""Characters; a longer message asks for more than a page."""


def asked_page(text: str) -> str | None:
    """The command that these words stand for, with its slash; `None` where they are anything else."""
    if len(text) > LONGEST or any(c.isnumeric() for c in text):
        return None
    plain = re.sub(r"[\W_]+", " ", re.sub("['\u2019]", "", text.lower()))
    return _COMMANDS.get(" ".join(plain.split()))
