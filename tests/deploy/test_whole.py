"""The whole project set up from its real lock in a folder whose path has a space, and as it goes into the container."""

import socket
import subprocess
import sys
import zipfile
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.deploy.checkout import Machine, Ran, bare_machine, copy_checkout, sentences, uv, without_rights


@dataclass(frozen=True)
class Whole:
    """A copy of the project on a bare machine, set up, and what that said."""

    machine: Machine
    house: Path
    first: Ran

    def try_out(self, *words: str) -> Ran:
        """Runs `deploy/try`."""
        return self.machine.run("sh", self.house / "deploy" / "try", *words)


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Whole:
    """Set up once, with uv; the small checkouts of the other tests show that pip does the same."""
    folder = tmp_path_factory.mktemp("whole")
    machine = bare_machine(folder)
    machine.give("uv", uv())
    house = copy_checkout(folder / "my house")
    return Whole(machine, house, machine.run("sh", house / "deploy" / "try", "--help"))


def test_the_first_command_from_nothing(whole: Whole) -> None:
    """It sets all up and answers; the second time at once. `chalkpost` is there as a command."""
    assert (whole.first.code, whole.first.err) == (0, "")
    assert sentences(whole.first.out)[0] == "Setting up (once, about a minute)…"
    assert "--serve" in whole.first.out
    again = whole.try_out("--help")
    assert (again.code, again.err) == (0, "")
    assert "Setting up" not in again.out
    said = whole.machine.run(whole.house / ".venv" / "bin" / "chalkpost", "--version")
    assert (said.code, said.out.split(",")[0]) == (0, "chalkpost")


def test_the_week_plays_on_a_bare_machine(whole: Whole) -> None:
    """From the lock for running alone, without git, a browser or the tests' packages, in a folder not to be written."""
    whole.house.chmod(0o555)
    try:
        machine = without_rights(whole.machine)
        ran = machine.run("sh", whole.house / "deploy" / "try", "--play")
    finally:
        whole.house.chmod(0o755)
    assert ran.code == 0, ran.err
    assert "nothing went wrong" in sentences(ran.out)[-1]


@pytest.mark.parametrize("words", [(), ("--serve",)])
def test_a_taken_port_is_one_sentence(whole: Whole, words: tuple[str, ...]) -> None:
    """At once, before the week is played; it names the port."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        ran = whole.try_out(*words, "--port", str(port))
    assert ran.code != 0
    assert len(sentences(ran.err)) == 1
    assert str(port) in ran.err
    assert ran.out == ""


def test_all_that_the_bot_reads_is_in_the_package(tmp_path: Path) -> None:
    """The container installs a built package: words, catalogue, pages and migrations are in it, as every module is."""
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(command, cwd=copy_checkout(tmp_path / "copy"), capture_output=True, check=True)
    (wheel,) = tmp_path.glob("*.whl")
    packed = set(zipfile.ZipFile(wheel).namelist())
    there = {
        path.relative_to(tmp_path / "copy").as_posix()
        for room in ("bot", "storage")
        for path in (tmp_path / "copy" / room).rglob("*")
        if path.is_file()
    }
    assert any(name.endswith(".ftl") for name in there)
    assert there - packed == set()
