"""The stand-in and the page know nothing of the rest of the project: so they can't be bent to suit the bot."""

import ast
from pathlib import Path

import bot.tryout

ROOM = Path(bot.tryout.__file__).parent


def test_imports_nothing_of_ours() -> None:
    """Only the language, the web server library, and themselves."""
    modules = [path for folder in ("standin", "page") for path in (ROOM / folder).rglob("*.py")]
    assert len(modules) > 30
    for path in modules:
        for name in imported(path):
            root = name.split(".")[0]
            ours = name.startswith(("bot.tryout.standin", "bot.tryout.page"))
            assert ours or root not in {"bot", "storage", "tests", "telegram"}, f"{path.name} imports {name}"


def imported(path: Path) -> list[str]:
    names: list[str] = []
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        match node:
            case ast.Import():
                names.extend(alias.name for alias in node.names)
            case ast.ImportFrom():
                assert node.level == 0
                names.append(node.module or "")
            case _:
                pass
    return names
