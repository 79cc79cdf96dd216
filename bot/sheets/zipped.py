"""The zip around a workbook: looked over before anything in it is unpacked, and unpacked in small bites.

ZIP application note 6.3 (PKWARE), 4.3.16: the end of the central directory, from which sizes are checked before the
directory itself is read; a directory made of a million entries never becomes a million objects.
"""

import io
import struct
import zlib
from collections.abc import Iterator
from zipfile import ZIP_DEFLATED, ZIP_STORED, BadZipFile, ZipFile, ZipInfo

from bot.sheets.bounds import MOST_DIRECTORY_BYTES, MOST_PARTS, MOST_READ_BYTES, MOST_UNPACKED_BYTES
from bot.sheets.problems import Fault, Refused

_END = b"PK\x05\x06"
_END_BYTES = 22
_LARGE = b"PK\x06\x07"
"""The mark of the form for archives beyond 4 GB; no sheet that we take needs it."""
_BITE = 65_536
UNREADABLE = (
    BadZipFile,
    NotImplementedError,
    RuntimeError,
    ValueError,
    EOFError,
    OSError,
    LookupError,
    zlib.error,
    struct.error,
)
"""What the library says of an archive that it can't read."""

_PICTURES = (".png", ".jpg", ".jpeg", ".gif", ".bmp", ".emf", ".wmf", ".tif", ".tiff", ".svg", ".webp")
_OBJECTS = ("/embeddings/", "/activex/", "/oleobjects/")


class Archive:
    """A workbook's parts, by their names in lower case, and how many bytes may still be unpacked."""

    def __init__(self, data: bytes) -> None:
        _check_end(data)
        try:
            self._zip = ZipFile(io.BytesIO(data))
            self._parts = _parts(self._zip.infolist())
        except UNREADABLE as error:
            raise Refused(Fault.DAMAGED) from error
        self._left = MOST_READ_BYTES

    def has(self, name: str) -> bool:
        """Whether there is such a part."""
        return name.lower() in self._parts

    def bites(self, name: str) -> Iterator[bytes]:
        """A part, unpacked a bite at a time; refused where it is more than its share, or damaged."""
        if not self.has(name):
            raise Refused(Fault.DAMAGED)
        try:
            with self._zip.open(self._parts[name.lower()]) as part:
                while bite := part.read(_BITE):
                    self._left -= len(bite)
                    if self._left < 0:
                        raise Refused(Fault.SWOLLEN)
                    yield bite
        except UNREADABLE as error:
            raise Refused(Fault.DAMAGED) from error

    def all_parts(self) -> tuple[ZipInfo, ...]:
        """Every part, in the file's order."""
        return tuple(self._zip.infolist())

    def whole(self, part: ZipInfo) -> bytes:
        """A part as it is; all together are no more than the directory was checked for."""
        try:
            with self._zip.open(part) as opened:
                return opened.read(part.file_size)
        except UNREADABLE as error:
            raise Refused(Fault.DAMAGED) from error


def _check_end(data: bytes) -> None:
    """Find the directory's end as the library will, and refuse what would be costly to read."""
    place = len(data) - _END_BYTES
    if place < 0 or data[place : place + 4] != _END or data[-2:] != b"\0\0":
        place = data.rfind(_END, max(0, len(data) - _END_BYTES - 65_535))
    if place < 0 or place + _END_BYTES > len(data):
        raise Refused(Fault.DAMAGED)
    entries, size = struct.unpack_from("<HL", data, place + 10)
    if data[max(0, place - 20) :][:4] == _LARGE or entries > MOST_PARTS or size > MOST_DIRECTORY_BYTES:
        raise Refused(Fault.SWOLLEN)


def _parts(found: list[ZipInfo]) -> dict[str, ZipInfo]:
    if len(found) > MOST_PARTS:
        raise Refused(Fault.SWOLLEN)
    parts: dict[str, ZipInfo] = {}
    for part in found:
        name = part.filename.lower()
        if part.flag_bits & 0x1:
            raise Refused(Fault.LOCKED)
        if name in parts or part.compress_type not in (ZIP_STORED, ZIP_DEFLATED):
            raise Refused(Fault.DAMAGED)
        parts[name] = part
    if sum(part.file_size for part in found) > MOST_UNPACKED_BYTES:
        raise Refused(Fault.SWOLLEN)
    if any(name.endswith("vbaproject.bin") for name in parts):
        raise Refused(Fault.MACROS)
    if any(mark in f"/{name}" for name in parts for mark in _OBJECTS):
        raise Refused(Fault.OBJECTS)
    if any("/media/" in f"/{name}" or name.endswith(_PICTURES) for name in parts):
        raise Refused(Fault.PICTURES)
    return parts
