"""Entities of a text: their shape, and the rules by which the platform trims, orders and drops them.

Source: "MessageEntity" and "Formatting options" of the public Bot API documentation.
"""

import re
from dataclasses import dataclass, replace
from typing import Literal, TypeAlias, get_args

from bot.tryout.standin.refusals import bad_request
from bot.tryout.standin.units import utf16_length
from bot.tryout.standin.values import JsonObject, JsonValue

Kind: TypeAlias = Literal[
    "bold", "italic", "underline", "strikethrough", "spoiler", "code", "pre", "blockquote", "expandable_blockquote",
    "text_link", "text_mention", "custom_emoji", "date_time", "bot_command", "url", "email", "mention", "hashtag",
]  # fmt: skip
KINDS: dict[str, Kind] = {kind: kind for kind in get_args(Kind)}
FOUND: frozenset[str] = frozenset({"bot_command", "url", "email", "mention", "hashtag"})
_QUOTES = frozenset({"blockquote", "expandable_blockquote"})
_MONO = frozenset({"code", "pre"})


@dataclass(frozen=True, slots=True)
class Entity:
    """A stretch of text with a meaning. Offset and length in UTF-16 code units; `detail` is a link, a language,
    an emoji id, a user id, or a date's format."""

    kind: Kind
    offset: int
    length: int
    detail: str = ""
    unix: int = 0

    @property
    def end(self) -> int:
        return self.offset + self.length

    def api(self) -> JsonObject:
        """As the platform writes it."""
        shown: JsonObject = {"type": self.kind, "offset": self.offset, "length": self.length}
        match self.kind:
            case "text_link":
                shown["url"] = self.detail
            case "pre" if self.detail:
                shown["language"] = self.detail
            case "custom_emoji":
                shown["custom_emoji_id"] = self.detail
            case "text_mention":
                shown["user"] = {"id": int(self.detail), "is_bot": False, "first_name": "?"}
            case "date_time":
                shown["unix_time"] = self.unix
                if self.detail:
                    shown["date_time_format"] = self.detail
            case _:
                pass
        return shown


@dataclass(frozen=True, slots=True)
class Words:
    """A text with its entities."""

    text: str = ""
    entities: tuple[Entity, ...] = ()


def read_entities(given: JsonValue) -> tuple[Entity, ...]:
    """Entities a bot passes along in place of a parse mode."""
    if not isinstance(given, list):
        raise bad_request("can't parse entities JSON object")
    return tuple(_read_one(one) for one in given)


def _read_one(one: JsonValue) -> Entity:
    if not isinstance(one, dict):
        raise bad_request("can't parse MessageEntity: expected an Object")
    kind, offset, length = KINDS.get(str(one.get("type"))), one.get("offset"), one.get("length")
    if kind is None:
        raise bad_request("can't parse MessageEntity: unsupported type specified")
    if not isinstance(offset, int) or not isinstance(length, int):
        raise bad_request("can't parse MessageEntity: Can't find field \"offset\"")
    user = one.get("user")
    detail = one.get("url") or one.get("language") or one.get("custom_emoji_id") or one.get("date_time_format")
    if isinstance(user, dict):
        detail = user.get("id")
    unix = one.get("unix_time")
    return Entity(kind, offset, length, str(detail or ""), unix if isinstance(unix, int) else 0)


def tidy(words: Words, *, most: int) -> Words:
    """Trims white space at both ends, drops entities that can't stand (nothing inside code, no quote in a quote,
    empty ones, those beyond `most`), and puts outer before inner."""
    left = words.text.lstrip()
    start = utf16_length(words.text) - utf16_length(left)
    text = left.rstrip()
    end = utf16_length(text)
    kept: list[Entity] = []
    for entity in sorted(words.entities, key=lambda one: (one.offset, -one.length)):
        first, last = max(entity.offset - start, 0), min(entity.end - start, end)
        if last <= first or any(_clash(outer, entity.kind, first) for outer in kept):
            continue
        kept.append(replace(entity, offset=first, length=last - first))
    return Words(text, tuple(kept[:most]))


def _clash(outer: Entity, kind: str, first: int) -> bool:
    if first >= outer.end:
        return False
    return outer.kind in _MONO or (outer.kind in _QUOTES and kind in _QUOTES)


_LOOKS = re.compile(
    r"(?P<url>\bhttps?://[^\s<>]+|(?<![\w@.])(?:t\.me|telegram\.me)/[^\s<>]+)"
    r"|(?P<email>\b[\w.+-]+@[\w-]+\.[\w.-]*\w)"
    r"|(?<![\w/])(?P<bot_command>/[A-Za-z0-9_]{1,64}(?:@\w{3,32})?)(?![\w/])"
    r"|(?<![\w@])(?P<mention>@[A-Za-z]\w{3,31})\b"
    r"|(?<![\w#])(?P<hashtag>#\w*[^\W\d]\w*)"
)


def find_entities(words: Words) -> Words:
    """Adds what the platform finds by itself: commands, links, mentions, addresses, hashtags."""
    text = words.text
    if not any(sign in text for sign in "/@#"):
        return words
    taken = [(one.offset, one.end) for one in words.entities if one.kind in _MONO or one.kind == "text_link"]
    found: list[Entity] = []
    for hit in _LOOKS.finditer(text):
        offset = utf16_length(text[: hit.start()])
        cover = hit.group().rstrip(".,;:!?)") if hit.lastgroup == "url" else hit.group()
        entity = Entity(KINDS[hit.lastgroup or "url"], offset, utf16_length(cover))
        if not any(begin < entity.end and entity.offset < end for begin, end in taken):
            found.append(entity)
    if not found:
        return words
    both = sorted((*words.entities, *found), key=lambda one: (one.offset, -one.length))
    return Words(text, tuple(both))
