"""The whole project set up from its real lock in a folder whose path has a space, and as it goes into the container."""

import subprocess
import sys
import zipfile
from pathlib import Path

from tests.deploy.checkout import ROOT, bare_machine, copy_checkout, sentences, uv


def test_the_first_command_from_nothing(tmp_path: Path) -> None:
    """`deploy/try --help` sets all up and answers; the second time at once. `chalkpost` is there as a command."""
    machine = bare_machine(tmp_path)
    machine.give("uv", uv())
    house = copy_checkout(tmp_path / "my house")
    first = machine.run("sh", house / "deploy" / "try", "--help")
    assert (first.code, first.err) == (0, "")
    assert sentences(first.out)[0] == "Setting up (once, about a minute)…"
    assert "--serve" in first.out
    again = machine.run("sh", house / "deploy" / "try", "--help")
    assert (again.code, again.err) == (0, "")
    assert "Setting up" not in again.out
    said = machine.run(house / ".venv" / "bin" / "chalkpost", "--version")
    assert (said.code, said.out.split(",")[0]) == (0, "chalkpost")


def test_all_that_the_bot_reads_is_in_the_package(tmp_path: Path) -> None:
    """The container installs a built package: words, catalogue, pages and migrations are in it, as every module is."""
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(command, cwd=ROOT, capture_output=True, check=True)
    (wheel,) = tmp_path.glob("*.whl")
    packed = set(zipfile.ZipFile(wheel).namelist())
    there = {
        path.relative_to(ROOT).as_posix()
        for room in ("bot", "storage")
        for path in (ROOT / room).rglob("*")
        if path.is_file() and path.suffix != ".pyc"
    }
    assert any(name.endswith(".ftl") for name in there)
    assert there - packed == set()
