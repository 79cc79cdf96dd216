"""The tags of the platform's HTML, and the entity each makes. Source: "HTML style" of the public Bot API docs."""

import re
from dataclasses import dataclass

from bot.tryout.standin.entities import Entity, Kind
from bot.tryout.standin.refusals import bad_request

SIMPLE: dict[str, Kind] = {
    "b": "bold",
    "strong": "bold",
    "i": "italic",
    "em": "italic",
    "u": "underline",
    "ins": "underline",
    "s": "strikethrough",
    "strike": "strikethrough",
    "del": "strikethrough",
    "tg-spoiler": "spoiler",
    "span": "spoiler",
}
TAGS = frozenset(SIMPLE) | {"a", "code", "pre", "blockquote", "tg-emoji", "tg-time"}
_TIME_FORMAT = re.compile(r"r|w?[dD]?[tT]?")
_LINK = re.compile(r"(?:https?|tg|ton|mailto|tel):\S+|[\w-]+(?:\.[\w-]+)+(?:[/?#:]\S*)?")
_USER_LINK = re.compile(r"tg://user\?id=(\d+)")


@dataclass(slots=True)
class Opened:
    """A start tag not yet closed: its attributes, where it began in UTF-16 units, and in which part of the text."""

    tag: str
    attributes: dict[str, str]
    offset: int
    part: int


def entity_of(opened: Opened, length: int, covered: str) -> Entity | None:
    """The entity a closed tag makes of the text it covered; None where the platform drops it."""
    at, attributes = opened.offset, opened.attributes
    match opened.tag:
        case "a":
            return _link(attributes.get("href") or covered, at, length)
        case "pre":
            return Entity("pre", at, length)
        case "code":
            return Entity("code", at, length, attributes.get("class", "").removeprefix("language-"))
        case "blockquote":
            return Entity("expandable_blockquote" if "expandable" in attributes else "blockquote", at, length)
        case "tg-emoji":
            if not attributes.get("emoji-id", "").isdecimal():
                raise bad_request("can't parse entities: Invalid custom emoji identifier specified")
            return Entity("custom_emoji", at, length, attributes["emoji-id"])
        case "tg-time":
            return _time(attributes, at, length)
        case simple:
            return Entity(SIMPLE[simple], at, length)


def _link(address: str, at: int, length: int) -> Entity | None:
    if user := _USER_LINK.fullmatch(address):
        return Entity("text_mention", at, length, user.group(1))
    if not _LINK.fullmatch(address.strip()):
        return None
    address = address.strip()
    return Entity("text_link", at, length, address if re.match(r"\w+:", address) else f"http://{address}")


def _time(attributes: dict[str, str], at: int, length: int) -> Entity:
    unix, layout = attributes.get("unix", ""), attributes.get("format", "")
    if not unix.isdecimal() or not _TIME_FORMAT.fullmatch(layout):
        raise bad_request("can't parse entities: Invalid date specified")
    return Entity("date_time", at, length, layout, int(unix))
