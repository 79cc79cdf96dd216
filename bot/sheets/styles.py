"""Which number formats of a workbook show a day, a time or a percentage (ECMA-376 part 1, 18.8.30 and 18.8.31)."""

import re
from collections.abc import Iterable, Mapping

from bot.sheets.table import Kind
from bot.sheets.xml import Counter, read_xml

_DAYS = {*range(14, 18), 22, *range(27, 37), *range(50, 59)}
_CLOCKS = {*range(18, 22), *range(45, 48)}
_PERCENTS = {9, 10}
_QUOTED = re.compile(r'"[^"]*"|\\.|_.|\*.|\[(?![hms]+\])[^\]]*\]', re.IGNORECASE)
"""Parts of a format that are shown as they are: quoted, escaped, padding, colours and conditions."""


def read_styles(bites: Iterable[bytes], counter: Counter) -> tuple[Kind, ...]:
    """The kind of number that each style of the workbook shows, in the order in which cells name them."""
    codes: dict[int, str] = {}
    formats: list[int] = []
    within: list[str] = []

    def start(name: str, attributes: Mapping[str, str]) -> None:
        within.append(name)
        if name == "numFmt":
            codes[_number(attributes.get("numFmtId", ""))] = attributes.get("formatCode", "")
        elif name == "xf" and len(within) > 1 and within[-2] == "cellXfs":
            formats.append(_number(attributes.get("numFmtId", "")))

    read_xml(bites, counter, start, lambda _: within.__delitem__(-1))
    kinds = {number: kind_of(number, codes.get(number, "")) for number in set(formats)}
    return tuple(kinds[number] for number in formats)


def kind_of(number: int, code: str) -> Kind:
    """What a format shows. A code of the file's own goes before the number's usual meaning."""
    if code:
        plain = _QUOTED.sub("", code.split(";", maxsplit=1)[0][:200]).lower()
        if "%" in plain:
            return Kind.PERCENT
        if "y" in plain or "d" in plain:
            return Kind.DATE
        if "h" in plain or "s" in plain:
            return Kind.CLOCK
        return Kind.DATE if "m" in plain else Kind.NUMBER
    if number in _PERCENTS:
        return Kind.PERCENT
    if number in _DAYS:
        return Kind.DATE
    return Kind.CLOCK if number in _CLOCKS else Kind.NUMBER


def _number(text: str) -> int:
    return int(text) if text.isascii() and text.isdigit() and len(text) < 6 else 0
