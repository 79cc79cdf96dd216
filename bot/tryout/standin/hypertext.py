"""Reads the platform's HTML into words with entities, refusing what it refuses in its own words.

Source: "HTML style" of the public Bot API documentation; the error texts are those of the platform's public server.
Byte offsets in errors count UTF-8 bytes, as there.
"""

import re
from dataclasses import dataclass, field

from bot.tryout.standin.entities import Entity, Words
from bot.tryout.standin.refusals import Refusal, bad_request
from bot.tryout.standin.tags import TAGS, Opened, entity_of
from bot.tryout.standin.units import utf16_length

_NAMED = {"lt": "<", "gt": ">", "amp": "&", "quot": '"'}
_MARK = re.compile(r"[<&]")
_REFERENCE = re.compile(r"&(?:#x([0-9a-fA-F]{1,6})|#([0-9]{1,7})|([A-Za-z]+));?")
_NAME = re.compile(r"[^\s>]*")
_ATTRIBUTE = re.compile(r"[^\s=>/\"']*")
_TOKEN = re.compile(r"[A-Za-z0-9.-]*")
_SPACE = re.compile(r"\s*")


@dataclass(slots=True)
class _Reading:
    html: str
    parts: list[str] = field(default_factory=list)
    units: int = 0
    stack: list[Opened] = field(default_factory=list)
    entities: list[Entity] = field(default_factory=list)

    def add(self, text: str) -> None:
        if text:
            self.parts.append(text)
            self.units += utf16_length(text)

    def fail(self, what: str, at: int) -> Refusal:
        return bad_request(f"can't parse entities: {what} at byte offset {_bytes(self.html, at)}")


def read_html(html: str) -> Words:
    """Text and entities of the platform's HTML; raises `Refusal` "can't parse entities: ..."."""
    reading = _Reading(html)
    at = 0
    while hit := _MARK.search(html, at):
        reading.add(html[at : hit.start()])
        at = _read_reference(reading, hit.start()) if hit.group() == "&" else _read_tag(reading, hit.start())
    reading.add(html[at:])
    if reading.stack:
        raise bad_request(
            f"can't parse entities: Can't find end tag corresponding to start tag \"{reading.stack[-1].tag}\""
        )
    return Words("".join(reading.parts), tuple(reading.entities))


def _bytes(html: str, at: int) -> int:
    return len(html[:at].encode("utf-8", "surrogatepass"))


def _character(hit: re.Match[str]) -> str | None:
    hexadecimal, decimal, name = hit.groups()
    if name is not None:
        return _NAMED.get(name)
    code = int(hexadecimal, 16) if hexadecimal else int(decimal)
    return chr(code) if 0 < code < 0x10FFFF and not 0xD800 <= code <= 0xDFFF else None


def _read_reference(reading: _Reading, at: int) -> int:
    hit = _REFERENCE.match(reading.html, at)
    character = _character(hit) if hit else None
    if hit is None or character is None:
        reading.add("&")
        return at + 1
    reading.add(character)
    return hit.end()


def _read_tag(reading: _Reading, at: int) -> int:
    if reading.html.startswith("</", at):
        return _read_end(reading, at)
    name = _match(_NAME, reading.html, at + 1)
    here = at + 1 + len(name)
    if here >= len(reading.html):
        raise reading.fail("Unclosed start tag", at)
    tag = name.lower()
    if tag not in TAGS:
        raise reading.fail(f'Unsupported start tag "{tag}"', at)
    attributes, here = _read_attributes(reading, tag, at, here)
    if tag == "span" and attributes.get("class") != "tg-spoiler":
        raise reading.fail('Tag "span" must have class "tg-spoiler"', at)
    reading.stack.append(Opened(tag, attributes, reading.units, len(reading.parts)))
    return here + 1


def _read_attributes(reading: _Reading, tag: str, begin: int, at: int) -> tuple[dict[str, str], int]:
    html = reading.html
    attributes: dict[str, str] = {}
    while True:
        at += len(_match(_SPACE, html, at))
        if html.startswith(">", at):
            return attributes, at
        name = _match(_ATTRIBUTE, html, at)
        if not name:
            raise reading.fail(f'Empty attribute name in the tag "{tag}"', begin)
        at += len(name)
        at += len(_match(_SPACE, html, at))
        if not html.startswith("=", at):
            if at >= len(html):
                raise reading.fail("Unclosed start tag", begin)
            attributes[name.lower()] = ""
            continue
        at += 1
        at += len(_match(_SPACE, html, at))
        value, at = _read_value(reading, tag, begin, at)
        attributes[name.lower()] = value


def _read_value(reading: _Reading, tag: str, begin: int, at: int) -> tuple[str, int]:
    html = reading.html
    if at >= len(html):
        raise reading.fail(f'Unclosed start tag "{tag}"', begin)
    quote = html[at]
    if quote in "'\"":
        close = html.find(quote, at + 1)
        if close < 0 or close + 1 >= len(html):
            raise reading.fail("Unclosed start tag", begin)
        return _REFERENCE.sub(lambda hit: _character(hit) or hit.group(), html[at + 1 : close]), close + 1
    token = _match(_TOKEN, html, at)
    after = at + len(token)
    if after >= len(html):
        raise reading.fail("Unclosed start tag", begin)
    if html[after] != ">" and not html[after].isspace():
        raise reading.fail("Unexpected end of name token", at)
    return token.lower(), after


def _read_end(reading: _Reading, at: int) -> int:
    html = reading.html
    if not reading.stack:
        raise reading.fail("Unexpected end tag", at)
    name = _match(_NAME, html, at + 2)
    here = at + 2 + len(name)
    here += len(_match(_SPACE, html, here))
    if not html.startswith(">", here):
        raise reading.fail("Unclosed end tag", at)
    opened = reading.stack[-1]
    if name and name.lower() != opened.tag:
        place = f"Unmatched end tag at byte offset {_bytes(html, at)}"
        raise bad_request(f'can\'t parse entities: {place}, expected "</{opened.tag}>", found "</{name.lower()}>"')
    reading.stack.pop()
    if reading.units > opened.offset:
        _close(reading, opened)
    return here + 1


def _close(reading: _Reading, opened: Opened) -> None:
    length = reading.units - opened.offset
    entity = entity_of(opened, length, "".join(reading.parts[opened.part :]))
    if entity is None:
        return
    before = reading.entities[-1] if reading.entities else None
    same = before is not None and (before.offset, before.length) == (opened.offset, length)
    if before is not None and same and {before.kind, entity.kind} == {"pre", "code"}:
        reading.entities[-1] = Entity("pre", opened.offset, length, before.detail or entity.detail)
        return
    reading.entities.append(entity)


def _match(pattern: re.Pattern[str], text: str, at: int) -> str:
    hit = pattern.match(text, at)
    return hit.group() if hit else ""
