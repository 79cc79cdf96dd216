"""Every line that the code names has its words, and gets every argument that the words want."""

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message, VariableReference
from fluent.syntax.visitor import Visitor

BOT = Path(__file__).parents[2] / "bot"
WORDS = sorted((BOT / "wording" / "en").glob("*.ftl"))
SOURCES = sorted((BOT / "dialogue").glob("*.py"))


class _Variables(Visitor):
    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802  the library's name
        self.names.add(node.id.name)


@cache
def messages() -> dict[str, set[str]]:
    """Each key with the arguments that its words name."""
    found: dict[str, set[str]] = {}
    for path in WORDS:
        for entry in FluentParser().parse(path.read_text(encoding="utf-8")).body:
            if isinstance(entry, Message):
                variables = _Variables()
                variables.visit(entry)
                found[entry.id.name] = variables.names
    return found


def calls() -> Iterator[tuple[str, str, set[str], bool]]:
    """Each `line(...)`: where it stands, a pattern of its key, its arguments, whether more may come by `**`."""
    for path in SOURCES:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "line":
                names = {k.arg for k in node.keywords if k.arg}
                open_ended = any(k.arg is None for k in node.keywords)
                for pattern in _patterns(node.args[0]):
                    yield f"{path.name}:{node.lineno}", pattern, names, open_ended


def _patterns(key: ast.expr) -> Iterator[str]:
    match key:
        case ast.Constant(value=str(text)):
            yield re.escape(text)
        case ast.IfExp(body=body, orelse=orelse):
            yield from _patterns(body)
            yield from _patterns(orelse)
        case ast.JoinedStr(values=values):
            yield "".join(re.escape(str(v.value)) if isinstance(v, ast.Constant) else "[a-z-]*" for v in values)
        case _:
            return


CALLS = list(calls())


@pytest.mark.parametrize(("where", "pattern", "names", "open_ended"), CALLS, ids=[f"{c[0]} {c[1]}" for c in CALLS])
def test_a_named_line_has_its_words_and_all_their_arguments(
    where: str, pattern: str, names: set[str], open_ended: bool
) -> None:
    """A key without words, or words with an argument that is not given, would fail in front of a client."""
    known = messages()
    matching = {key: wanted for key, wanted in known.items() if re.fullmatch(pattern, key)}
    assert matching, f"{where}: no words for {pattern}"
    served = [key for key, wanted in matching.items() if wanted <= names]
    assert open_ended or served, f"{where}: {matching} want more than {names}"


def test_the_calls_are_found() -> None:
    """The test above looks at the code: it must have found the talks' lines."""
    assert len(CALLS) > 250
