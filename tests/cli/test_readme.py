"""The README shows what the commands really print, and names files that are there."""

import re
from pathlib import Path

from click.testing import CliRunner

from bot.cli import COMMANDS, chalkpost

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


def test_the_reading_shown_is_the_reading_printed() -> None:
    """The block after the prompt is the command's output, word for word."""
    block = re.search(r'^    \$ \S*chalkpost read --explain "([^"]+)"\n((?:    .*\n)+)', README, re.MULTILINE)
    assert block is not None
    shown = [line[4:] for line in block[2].splitlines()]
    printed = CliRunner().invoke(chalkpost, ["read", "--explain", block[1]])
    assert printed.exit_code == 0
    assert printed.output.splitlines() == shown


def test_the_commands_named_exist() -> None:
    """Every `chalkpost <command>` on paper is a command."""
    named = set(re.findall(r"chalkpost ([a-z]+)", README + (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")))
    assert {"run", "coach", "backup", "read", "next"} <= named & set(COMMANDS)


def test_the_files_named_exist() -> None:
    """Pictures and papers that the README points to are in the repository."""
    for name in re.findall(r"\]\(([\w/.]+)\)|`((?:deploy|bot)/[\w./]+|[A-Z]+\.md)`", README):
        path = next(part for part in name if part)
        assert (ROOT / path).exists(), path
