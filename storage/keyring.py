"""The key that seals people's words, kept in a file of its own, away from the database.

A sealed text is one byte of version, four of the key's name, twelve of nonce, then AES-256-GCM (NIST SP 800-38D; the
library is `cryptography`). The file holds keys, one a line, base64: the first seals, all unseal, so a new key is put on
top and the old ones stay below it.
"""

import base64
import binascii
import hashlib
import os
from dataclasses import dataclass, field
from pathlib import Path

from cryptography.exceptions import InvalidTag
from cryptography.hazmat.primitives.ciphers.aead import AESGCM

from bot.faults import KeyFault

_VERSION = b"\x01"
_NAME = 4
_NONCE = 12
_KEY = 32


@dataclass(frozen=True)
class Keyring:
    """The keys in use. `made` is the file that this run made, since there was none: see `storage.engine`."""

    _sealing: bytes
    _ciphers: dict[bytes, AESGCM] = field(repr=False)
    made: Path | None = None

    @classmethod
    def of(cls, *keys: bytes, made: Path | None = None) -> "Keyring":
        """A keyring of these keys (32 bytes each), the sealing one first."""
        return cls(_name(keys[0]), {_name(key): AESGCM(key) for key in keys}, made)

    @classmethod
    def from_file(cls, path: Path) -> "Keyring":
        """The keys of this file, made on the first run with mode 600.

        `KeyFault` where it can't be read or made, holds no key, or where others than its owner may read it.
        """
        try:
            if not path.exists():
                return cls.of(_make(path), made=path)
            if os.name == "posix" and path.stat().st_mode & 0o077:
                raise KeyFault(f"The key file {path} can be read by others: allow its owner only (chmod 600).")
            lines = path.read_text(encoding="ascii").splitlines()
        except (OSError, UnicodeDecodeError) as error:
            raise KeyFault(f"The key file {path} can't be read or made: {error}.") from error
        keys = [_key(line.strip(), path) for line in lines if line.strip() and not line.startswith("#")]
        if not keys:
            raise KeyFault(f"The key file {path} holds no key: put back the one that belongs to the database.")
        return cls.of(*keys)

    def seal(self, text: str) -> bytes:
        """The text, unreadable without the key; never the same bytes twice."""
        nonce = os.urandom(_NONCE)
        head = _VERSION + self._sealing
        return head + nonce + self._ciphers[self._sealing].encrypt(nonce, text.encode(), head)

    def is_newest(self, sealed: bytes) -> bool:
        """Whether the key that seals now sealed it."""
        return sealed[: 1 + _NAME] == _VERSION + self._sealing

    def unseal(self, sealed: bytes) -> str:
        """The text again; `KeyFault` where another key sealed it, or somebody changed it."""
        head, rest = sealed[: 1 + _NAME], sealed[1 + _NAME :]
        cipher = self._ciphers.get(head[1:])
        if cipher is None or head[:1] != _VERSION:
            raise KeyFault("Sealed data belongs to another key: put back the key file that sealed it.")
        try:
            return cipher.decrypt(rest[:_NONCE], rest[_NONCE:], head).decode()
        except (InvalidTag, ValueError) as error:
            raise KeyFault("Sealed data was changed, or belongs to another key.") from error


def _name(key: bytes) -> bytes:
    return hashlib.sha256(b"chalkpost key name" + key).digest()[:_NAME]


def _make(path: Path) -> bytes:
    path.parent.mkdir(parents=True, exist_ok=True)
    key = AESGCM.generate_key(_KEY * 8)
    with open(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(base64.b64encode(key) + b"\n")
        file.flush()
        os.fsync(file.fileno())
    return key


def _key(line: str, path: Path) -> bytes:
    try:
        key = base64.b64decode(line, validate=True)
    except binascii.Error as error:
        raise KeyFault(f"The key file {path} holds a line that is no key.") from error
    if len(key) != _KEY:
        raise KeyFault(f"The key file {path} holds a line that is no key.")
    return key
