"""A bot's call: its parameters, read from a query, a form, a multipart body or JSON, all alike.

Source: "Making requests" of the public Bot API documentation.
"""

import json
from collections.abc import Mapping
from dataclasses import dataclass, field

from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.values import JsonObject, JsonValue


@dataclass(frozen=True, slots=True)
class Upload:
    """A file sent along with a call."""

    name: str
    mime: str
    data: bytes = field(repr=False)


@dataclass(frozen=True, slots=True)
class Ask:
    """Parameters of one call, by name. Numbers may come as text, and objects as JSON in text."""

    fields: Mapping[str, JsonValue] = field(default_factory=dict)
    uploads: Mapping[str, Upload] = field(default_factory=dict)

    def has(self, name: str) -> bool:
        """Whether the parameter was given at all."""
        return name in self.fields or name in self.uploads

    def text(self, name: str) -> str:
        """A text; empty when not given."""
        value = self.fields.get(name)
        if value is None:
            return ""
        return value if isinstance(value, str) else json.dumps(value)

    def whole(self, name: str, default: int = 0) -> int:
        """A whole number; the default when not given or not a number, as the platform reads it."""
        value = self.fields.get(name)
        if isinstance(value, bool) or value is None:
            return default
        if isinstance(value, int):
            return value
        text = str(value).strip()
        return int(text) if text.removeprefix("-").isdecimal() and text.isascii() else default

    def flag(self, name: str) -> bool:
        """A yes or no: true, yes or 1."""
        value = self.fields.get(name)
        return value if isinstance(value, bool) else str(value or "").strip().lower() in {"true", "yes", "1"}

    def json(self, name: str) -> JsonValue:
        """An object or list, given as such or as JSON in text; None when not given."""
        value = self.fields.get(name)
        if not isinstance(value, str):
            return value
        if not value:
            return None
        try:
            read: JsonValue = json.loads(value)
        except ValueError as error:
            raise bad_request(f"can't parse {name.replace('_', ' ')} JSON object") from error
        check_characters(value, read)
        return read

    def object(self, name: str) -> JsonObject:
        """An object; empty when not given."""
        value = self.json(name)
        if value is None:
            return {}
        if not isinstance(value, dict):
            raise bad_request(f"can't parse {name.replace('_', ' ')} JSON object")
        return value

    def for_record(self) -> JsonObject:
        """The parameters with each file replaced by its name and size."""
        if not self.uploads:
            return dict(self.fields)
        files = {name: f"<file {one.name}, {len(one.data)} bytes>" for name, one in self.uploads.items()}
        return {**self.fields, **files}


def check_characters(written: str, read: JsonValue) -> None:
    """JSON can name half of a surrogate pair, which is no character: refused. `written` is the JSON before reading."""
    if "\\ud" not in written.lower():
        return
    try:
        json.dumps(read, ensure_ascii=False).encode()
    except UnicodeEncodeError as error:
        raise bad_request("strings must be encoded in UTF-8") from error
