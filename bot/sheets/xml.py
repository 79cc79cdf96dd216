"""XML as it is read here: as a stream, counted, without a document type (in which entity bombs live).

Nothing is built up but what a handler keeps, so a part costs its bites and no more.
"""

from collections.abc import Callable, Iterable, Mapping
from xml.parsers import expat

from bot.sheets.bounds import MOST_DEPTH, MOST_ELEMENTS
from bot.sheets.problems import Fault, Refused

MOST_IN_ONE = 1_000_000
"""Bytes of one tag with its attributes, or of anything else that the parser has to hold whole."""

Start = Callable[[str, Mapping[str, str]], None]
End = Callable[[str], None]
Text = Callable[[str], None]


class Counter:
    """XML elements that may still come, over all parts of a file."""

    def __init__(self) -> None:
        self.left = MOST_ELEMENTS


def read_xml(
    bites: Iterable[bytes], counter: Counter, start: Start, end: End | None = None, text: Text | None = None
) -> None:
    """Calls the handlers with local names (without namespace); `Refused` where it is no XML, or too much of it."""
    parser = expat.ParserCreate(namespace_separator=" ")
    parser.buffer_text = True
    depth = 0

    def on_start(name: str, attributes: dict[str, str]) -> None:
        nonlocal depth
        depth += 1
        counter.left -= 1
        if depth > MOST_DEPTH:
            raise Refused(Fault.TOO_DEEP)
        if counter.left < 0:
            raise Refused(Fault.SWOLLEN)
        start(name.rpartition(" ")[2], attributes)

    def on_end(name: str) -> None:
        nonlocal depth
        depth -= 1
        if end is not None:
            end(name.rpartition(" ")[2])

    def on_doctype(*_: object) -> None:
        raise Refused(Fault.ENTITIES)

    parser.StartElementHandler = on_start
    parser.EndElementHandler = on_end
    parser.StartDoctypeDeclHandler = on_doctype
    if text is not None:
        parser.CharacterDataHandler = text
    fed = 0
    try:
        for bite in bites:
            fed += len(bite)
            parser.Parse(bite, False)
            if fed - max(parser.CurrentByteIndex, 0) > MOST_IN_ONE:
                raise Refused(Fault.SWOLLEN)
        parser.Parse(b"", True)
    except (expat.ExpatError, ValueError, LookupError) as error:
        raise Refused(Fault.DAMAGED) from error


def attribute(attributes: Mapping[str, str], name: str) -> str:
    """An attribute by its local name, whatever its namespace; empty where there is none."""
    if name in attributes:
        return attributes[name]
    return next((value for key, value in attributes.items() if key.rpartition(" ")[2] == name), "")
