"""Pictures for the tests, drawn byte by byte after the PNG standard (ISO/IEC 15948)."""

import struct
import zlib


def png(width: int, height: int, *, grey: int = 200) -> bytes:
    """A plain grey picture."""
    rows = (b"\0" + bytes([grey]) * width) * height
    header = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    return b"\x89PNG\r\n\x1a\n" + _chunk(b"IHDR", header) + _chunk(b"IDAT", zlib.compress(rows)) + _chunk(b"IEND", b"")


def _chunk(kind: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
