"""What our buttons carry: `1:<op>:<ref>[:<arg>...]`, the version of this form first, at most 64 bytes.

`ref` names what the button is about: a session's token, a client's id, a pain's id. Whoever taps is checked against
it by `storage.desk`: data may be old or forged, and never carries a name.

>>> show_press("set", "k3v9", 2, 10)
'1:set:k3v9:2:10'
>>> read_press("1:set:k3v9:2:10")
Press(op='set', ref='k3v9', args=('2', '10'))
"""

from dataclasses import dataclass
from hashlib import sha256
from zlib import crc32

VERSION = "1"
LONGEST = 64
"""Bytes; the platform refuses more (Bot API, InlineKeyboardButton.callback_data)."""


@dataclass(frozen=True, slots=True)
class Press:
    """A button's data, read."""

    op: str
    ref: str
    args: tuple[str, ...] = ()

    def number(self, place: int) -> int | None:
        """The argument at this place as a whole number; `None` where there is none (forged or old data)."""
        if place >= len(self.args):
            return None
        text = self.args[place]
        return int(text) if text.isascii() and text.removeprefix("-").isdigit() and len(text) <= 9 else None


def check_of(words: str) -> str:
    """Four digits that tell whether a button still means what it said."""
    return f"{crc32(words.encode()) & 0xFFFF:04x}"


def print_of(words: str) -> str:
    """Sixteen digits that no other words have in practice: for the name of a slot, where `check_of` would be too short
    (two programmes in 65,536 share it, and the one's message would be changed in place of the other's)."""
    return sha256(words.encode()).hexdigest()[:16]


def show_press(op: str, ref: str = "", *args: str | int) -> str:
    """The data for a button; `ValueError` where it would not fit."""
    data = ":".join([VERSION, op, ref, *(str(a) for a in args)])
    if len(data.encode()) > LONGEST:
        raise ValueError(f"button data of {len(data.encode())} bytes: {data}")
    return data


def read_press(data: str) -> Press | None:
    """The data of a tapped button; `None` for another version or anything else."""
    version, *rest = data.split(":")
    if version != VERSION or len(rest) < 2 or not rest[0]:
        return None
    return Press(rest[0], rest[1], tuple(rest[2:]))
