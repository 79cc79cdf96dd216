"""`deploy/try` and `deploy/test` on a machine with a shell, the core utilities, Python and a package index, no more."""

import re
import signal
import subprocess
from pathlib import Path

import pytest

from tests.deploy.checkout import (
    Machine,
    bare_machine,
    base_python,
    sentences,
    small_checkout,
    uv,
    without_rights,
)

SCRIPTS = ("try", "test")


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    """A bare machine."""
    return bare_machine(tmp_path)


@pytest.fixture
def quick(machine: Machine) -> Machine:
    """The same with uv, which sets up in a second."""
    machine.give("uv", uv())
    return machine


@pytest.fixture(params=["pip", "uv"])
def either(request: pytest.FixtureRequest, machine: Machine) -> Machine:
    """Once with pip, once with uv."""
    if request.param == "uv":
        machine.give("uv", uv())
    return machine


@pytest.fixture
def house(tmp_path: Path) -> Path:
    """A small checkout in a folder whose path has a space."""
    return small_checkout(tmp_path / "my house")


def fake_python(version: str) -> str:
    """A Python of another version, as far as it is asked for that."""
    return f"echo {version}"


def without_ensurepip(folder: Path) -> str:
    """The real Python, as Debian ships it without its venv package: `ensurepip` can't be imported."""
    (folder / "lacking").mkdir()
    (folder / "lacking" / "ensurepip.py").write_text("raise ModuleNotFoundError('ensurepip')\n", encoding="utf-8")
    return f'PYTHONPATH="{folder / "lacking"}" exec "{base_python()}" "$@"'


@pytest.mark.parametrize("script", SCRIPTS)
@pytest.mark.parametrize("version", ["2.7", "3.9", "3.10"])
def test_a_python_too_old_is_one_sentence(machine: Machine, house: Path, script: str, version: str) -> None:
    """The version found is named, and nothing is made."""
    (machine.bin / "python3").unlink()
    machine.write("python3", fake_python(version))
    ran = machine.run("sh", house / "deploy" / script)
    assert ran.code == 1
    assert sentences(ran.err) == [
        f"Chalkpost needs Python 3.11 or newer, and the one here is {version}: install a newer one and start again."
    ]
    assert ran.out == ""
    assert not (house / ".venv").exists()


@pytest.mark.parametrize("script", SCRIPTS)
def test_no_python_is_one_sentence(tmp_path: Path, house: Path, script: str) -> None:
    """A machine without any Python is told so."""
    machine = bare_machine(tmp_path / "other", python=False)
    ran = machine.run("sh", house / "deploy" / script)
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert "there is none on the PATH" in ran.err


@pytest.mark.parametrize("script", SCRIPTS)
def test_a_missing_venv_module_is_one_sentence(machine: Machine, house: Path, tmp_path: Path, script: str) -> None:
    """The package to install is named."""
    (machine.bin / "python3").unlink()
    machine.write("python3", without_ensurepip(tmp_path))
    ran = machine.run("sh", house / "deploy" / script)
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert "without its venv module" in ran.err
    assert "python3-venv" in ran.err
    assert not (house / ".venv").exists()


def test_another_python_on_the_path_will_do(machine: Machine, house: Path, tmp_path: Path) -> None:
    """Where python3 is too old and python3.14 lacks venv, python3.12 is taken; pip does the work. Then all is there."""
    (machine.bin / "python3").unlink()
    machine.write("python3", fake_python("3.9"))
    machine.write("python3.14", without_ensurepip(tmp_path))
    machine.give("python3.12", base_python())
    ran = machine.run("sh", house / "deploy" / "try", "--play")
    assert (ran.code, ran.err) == (0, "")
    assert ran.out.endswith("the bot: try --play\n")
    assert is_at_once(machine, house)


def test_a_venv_without_venv_module_is_made_by_uv(quick: Machine, house: Path, tmp_path: Path) -> None:
    """uv wants no venv module of Python's. Its venv holds no pip: without uv, the next change is a set-up anew."""
    (quick.bin / "python3").unlink()
    quick.write("python3", without_ensurepip(tmp_path))
    assert not is_at_once(quick, house)
    (quick.bin / "uv").unlink()
    (quick.bin / "python3").unlink()
    quick.give("python3", base_python())
    assert is_at_once(quick, house)
    with (house / "pyproject.toml").open("a", encoding="utf-8") as project:
        project.write("# another\n")
    assert not is_at_once(quick, house)
    assert (house / ".venv" / "bin" / "pip").exists()


@pytest.mark.parametrize("script", SCRIPTS)
def test_a_read_only_folder_is_one_sentence(machine: Machine, house: Path, script: str) -> None:
    """The folder is named. (Root gives up its right to write everywhere; the kernel does the refusing.)"""
    house.chmod(0o555)
    try:
        ran = without_rights(machine).run("sh", house / "deploy" / script)
    finally:
        house.chmod(0o755)
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert f"Nothing can be written in {house}" in ran.err
    assert ran.out == ""


def test_an_index_that_does_not_answer_is_one_sentence(either: Machine, house: Path) -> None:
    """Port 9 of this machine refuses; what the installer said is kept for whoever wants to know."""
    either.settings.update(
        PIP_CONFIG_FILE="/dev/null",
        PIP_INDEX_URL="http://127.0.0.1:9/simple",
        PIP_EXTRA_INDEX_URL="",
        PIP_FIND_LINKS="",
        PIP_RETRIES="1",
        PIP_NO_CACHE_DIR="1",
        UV_DEFAULT_INDEX="http://127.0.0.1:9/simple",
        UV_NO_CACHE="1",
        UV_HTTP_RETRIES="1",
    )
    ran = either.run("sh", house / "deploy" / "try")
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert ran.err.startswith("The package index can't be reached:")
    assert "127.0.0.1" in (house / ".venv" / "set-up.log").read_text(encoding="utf-8")


def test_a_package_with_another_hash_is_refused(either: Machine, house: Path) -> None:
    """Nothing counts as set up that is not what the lock names."""
    spoil(house / "requirements.lock")
    ran = either.run("sh", house / "deploy" / "try")
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert "A package is not the one that requirements.lock names" in ran.err
    assert not (house / ".venv" / "made-from").exists()


def test_a_set_up_that_failed_is_made_anew(quick: Machine, house: Path) -> None:
    """Once its cause is gone, the next run is like the first."""
    lock = house / "requirements.lock"
    right = lock.read_text(encoding="utf-8")
    spoil(lock)
    assert quick.run("sh", house / "deploy" / "try").code == 1
    lock.write_text(right, encoding="utf-8")
    assert not is_at_once(quick, house)
    assert is_at_once(quick, house)


def spoil(lock: Path) -> None:
    """Every hash in the lock is another."""
    text = lock.read_text(encoding="utf-8")
    lock.write_text(re.sub("sha256:[0-9a-f]{64}", "sha256:" + "0" * 64, text), encoding="utf-8")


def test_a_life_of_a_set_up(quick: Machine, house: Path, tmp_path: Path) -> None:
    """Made once; at once the second time, from anywhere; made anew when interrupted, damaged, relocked or moved."""
    first = quick.run("sh", house / "deploy" / "try", "--port", "1234", "two words")
    assert (first.code, first.err) == (0, "")
    assert sentences(first.out)[0] == "Setting up (once, about a minute)…"
    assert sentences(first.out)[-1] == "the bot: try --port 1234 two words"
    assert is_at_once(quick, house)
    ran = quick.run("sh", "try", cwd=house / "deploy")
    assert ran.out == "the bot: try\n"

    (house / ".venv" / "made-from").unlink()
    assert not is_at_once(quick, house), "a set-up that never came to its end is made anew"
    assert is_at_once(quick, house)

    with (house / "requirements.lock").open("a", encoding="utf-8") as lock:
        lock.write("# another\n")
    assert not is_at_once(quick, house), "another lock is another set-up"

    before = (house / ".venv" / "pyvenv.cfg").stat().st_mtime_ns
    with (house / "pyproject.toml").open("a", encoding="utf-8") as project:
        project.write("# another\n")
    assert not is_at_once(quick, house)
    assert (house / ".venv" / "pyvenv.cfg").stat().st_mtime_ns == before, "only the project itself is put in again"

    (house / ".venv" / "bin" / "python").unlink()
    (house / ".venv" / "bin" / "python").symlink_to(tmp_path / "a Python that was taken away")
    assert not is_at_once(quick, house)

    moved = house.rename(tmp_path / "other house")
    assert not is_at_once(quick, moved), "a venv does not move with its folder"
    assert is_at_once(quick, moved)


def is_at_once(machine: Machine, house: Path) -> bool:
    """Runs `deploy/try`; whether nothing had to be set up."""
    ran = machine.run("sh", house / "deploy" / "try")
    assert (ran.code, ran.err) == (0, "")
    assert sentences(ran.out)[-1] == "the bot: try"
    return "Setting up" not in ran.out


def start(machine: Machine, house: Path) -> "subprocess.Popen[str]":
    """Starts `deploy/try`, its ends in the test's hands."""
    return subprocess.Popen(
        machine.command("sh", house / "deploy" / "try"),
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )


def test_a_venv_for_the_tests_serves_a_try_out(quick: Machine, house: Path) -> None:
    """The other way round it doesn't: the tests want more. (This small house has no linter: its tests end there.)"""
    quick.write("chromium", "echo Browser 1.0")
    ran = quick.run("sh", house / "deploy" / "test")
    assert f"Chromium for the tests of the chat page: {quick.bin / 'chromium'} (Browser 1.0)" in ran.out
    assert "Stopped at: format" in ran.err
    assert ran.code == 1
    assert is_at_once(quick, house)

    made = house / ".venv" / "made-from"
    made.write_text(made.read_text(encoding="utf-8").replace("test\n", "try\n", 1), encoding="utf-8")
    assert "Setting up" in quick.run("sh", house / "deploy" / "test").out


def test_two_at_once_make_one_set_up(quick: Machine, house: Path) -> None:
    """The second waits, says so at most once, and then runs from what the first made."""
    both = [start(quick, house) for _ in range(2)]
    said = [one.communicate(timeout=300) for one in both]
    assert [one.returncode for one in both] == [0, 0]
    assert sum("Setting up" in out for out, _ in said) == 1
    assert all(out.endswith("the bot: try\n") for out, _ in said)
    assert all(err == "" or err.startswith("Another deploy/try or deploy/test is at work") for _, err in said)


def test_a_venv_in_use_is_not_taken_away(quick: Machine, house: Path) -> None:
    """While a try-out runs, one that would need another set-up waits for its end; killed with -9, it lets go."""
    (house / "bot" / "__main__.py").write_text("import sys\nprint('up', flush=True)\nsys.stdin.read()\n", "utf-8")
    running = start(quick, house)
    assert running.stdout is not None
    assert [running.stdout.readline() for _ in range(3)][-1] == "up\n"
    with (house / "requirements.lock").open("a", encoding="utf-8") as lock:
        lock.write("# another\n")
    waiting = start(quick, house)
    assert waiting.stderr is not None
    assert waiting.stderr.readline().startswith("Another deploy/try or deploy/test is at work")
    assert (house / ".venv" / "bin" / "python").exists()
    running.send_signal(signal.SIGKILL)
    running.communicate(timeout=60)
    out, err = waiting.communicate(timeout=300)
    assert (waiting.returncode, err) == (0, "")
    assert out.endswith("up\n")
