"""Width and height of a picture, read from its first bytes: PNG, JPEG, GIF, WebP. Source: those formats' standards."""

import struct
from typing import NamedTuple

_STARTS = {b"\x89PNG": "image/png", b"\xff\xd8": "image/jpeg", b"GIF8": "image/gif"}
_JPEG_FRAMES = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}


class Size(NamedTuple):
    """Pixels."""

    width: int
    height: int


def picture_mime(data: bytes) -> str:
    """What kind of picture, or "" for none."""
    for start, mime in _STARTS.items():
        if data.startswith(start):
            return mime
    return "image/webp" if data[:4] == b"RIFF" and data[8:12] == b"WEBP" else ""


def picture_size(data: bytes) -> Size | None:
    """The size, or None when this is no picture that the platform could take."""
    if data[:8] == b"\x89PNG\r\n\x1a\n" and data[12:16] == b"IHDR" and len(data) >= 24:
        return Size(*struct.unpack(">II", data[16:24]))
    if data[:6] in (b"GIF87a", b"GIF89a") and len(data) >= 10:
        return Size(*struct.unpack("<HH", data[6:10]))
    if data[:2] == b"\xff\xd8":
        return _jpeg_size(data)
    if data[:4] == b"RIFF" and data[8:16] == b"WEBPVP8X" and len(data) >= 30:
        return Size(1 + int.from_bytes(data[24:27], "little"), 1 + int.from_bytes(data[27:30], "little"))
    return None


def _jpeg_size(data: bytes) -> Size | None:
    at = 2
    while at + 9 <= len(data) and data[at] == 0xFF:
        marker = data[at + 1]
        if marker in _JPEG_FRAMES:
            height, width = struct.unpack(">HH", data[at + 5 : at + 9])
            return Size(width, height)
        at += 2 + int.from_bytes(data[at + 2 : at + 4], "big")
    return None
