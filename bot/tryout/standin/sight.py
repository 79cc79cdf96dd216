"""What a person sees of a message: its buttons, and the whole of it in one plain line."""

from collections.abc import Sequence
from typing import TypeAlias

from bot.tryout.standin.keyboards import Button
from bot.tryout.standin.model import Message

Place: TypeAlias = str | int | tuple[int, int]
"""A button by its label, its number counted from 0 over all rows, or (row, column)."""


class CantDo(ValueError):
    """The chat app would not let a person do that; the words say why."""


def find_button(message: Message, place: Place) -> Button:
    """A button under a message."""
    rows = message.inline.rows if message.inline else ()
    flat: Sequence[Button] = [button for row in rows for button in row]
    match place:
        case str():
            found = [button for button in flat if button.label == place]
        case int():
            found = [button for number, button in enumerate(flat) if number == place]
        case (row, column):
            found = [b for r, line in enumerate(rows) for c, b in enumerate(line) if (r, c) == (row, column)]
    if not found:
        labels = ", ".join(f"«{button.label}»" for button in flat) or "none"
        raise CantDo(f"message {message.id} has no button {place!r}; it has {labels}")
    return found[0]


def show_line(message: Message) -> str:
    """One message in one plain line, buttons in brackets."""
    who = "bot" if message.by_bot else message.sender.first_name
    file = f"<{message.media.kind} {message.media.name}> " if message.media else ""
    rows = message.inline.rows if message.inline else ()
    buttons = "".join(f" [{button.label}]" for row in rows for button in row)
    return f"{message.id} {who}: {file}{message.words.text!r}{buttons}{' '.join(('', *message.reactions))}"
