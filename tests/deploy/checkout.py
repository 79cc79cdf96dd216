"""A copy of this project in a folder of its own, and a machine that has next to nothing to run its scripts with."""

import importlib.metadata
import os
import shutil
import subprocess
import sys
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from pathlib import Path

from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

ROOT = Path(__file__).resolve().parents[2]

CORE = ("cat", "cksum", "date", "dirname", "env", "id", "mkdir", "mv", "rm", "tail", "uname")
"""The core utilities that the scripts use; a bare machine here has these and a shell, so that using another fails."""

SETTING_UP = ("hatchling", "editables")
"""What the set-up itself wants."""


@dataclass(frozen=True)
class Ran:
    """How a script ended, and what it said."""

    code: int
    out: str
    err: str


@dataclass(frozen=True)
class Machine:
    """A PATH of its own, with what is put there, and how programs are started."""

    bin: Path
    as_whom: tuple[str, ...] = ()
    settings: dict[str, str] = field(default_factory=dict)

    def give(self, name: str, target: Path) -> None:
        """A program by this name."""
        (self.bin / name).symlink_to(target)

    def write(self, name: str, text: str) -> None:
        """A shell script by this name."""
        (self.bin / name).write_text(f"#!/bin/sh\n{text}\n", encoding="utf-8")
        (self.bin / name).chmod(0o755)

    def command(self, *words: str | Path) -> list[str]:
        """The command line that runs a program here; the settings of the index come from this environment."""
        path = f"PATH={self.bin}"
        extra = [f"{name}={value}" for name, value in self.settings.items()]
        cleared = [part for name in ("VIRTUAL_ENV", "PYTHONPATH", "CDPATH") for part in ("-u", name)]
        return ["env", *cleared, *extra, *self.as_whom, "env", path, *map(str, words)]

    def run(self, *words: str | Path, cwd: Path = Path("/"), within_s: float = 300) -> Ran:
        """Runs a program to its end."""
        done = subprocess.run(
            self.command(*words),
            cwd=cwd,
            capture_output=True,
            text=True,
            timeout=within_s,
            stdin=subprocess.DEVNULL,
            check=False,
        )
        return Ran(done.returncode, done.stdout, done.stderr)


def bare_machine(folder: Path, *, python: bool = True) -> Machine:
    """A machine with a shell, the core utilities and, unless told otherwise, the Python that runs this test."""
    machine = Machine(folder / "bin")
    machine.bin.mkdir(parents=True)
    for name in ("sh", *CORE):
        machine.give(name, _found("dash" if name == "sh" and shutil.which("dash") else name))
    if python:
        machine.give("python3", base_python())
    return machine


def base_python() -> Path:
    """The Python below this test's venv."""
    return Path(sys.executable).resolve()


def uv() -> Path:
    """The other installer, from the lock of the tests."""
    return Path(sys.executable).parent / "uv"


def copy_checkout(folder: Path) -> Path:
    """What is needed to run this project, copied."""
    folder.mkdir(parents=True)
    for name in ("bot", "storage", "deploy"):
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in ("pyproject.toml", "requirements.lock", "README.md", "LICENSE"):
        shutil.copy(ROOT / name, folder / name)
    return folder


def small_checkout(folder: Path) -> Path:
    """The scripts as they are, around a project of one line and two locks of a few packages: sets up in seconds."""
    (folder / "deploy").mkdir(parents=True)
    for name in ("setup.sh", "try", "test"):
        shutil.copy(ROOT / "deploy" / name, folder / "deploy" / name)
    blocks = read_lock((ROOT / "requirements.lock").read_text(encoding="utf-8"))
    small = "".join(blocks[name] for name in sorted(with_their_own(SETTING_UP)))
    (folder / "requirements.lock").write_text(small, encoding="utf-8")
    (folder / "deploy" / "test.lock").write_text(small, encoding="utf-8")
    (folder / "pyproject.toml").write_text(
        '[build-system]\nrequires = ["hatchling"]\nbuild-backend = "hatchling.build"\n\n'
        '[project]\nname = "chalkpost"\nversion = "0"\n\n[tool.hatch.build.targets.wheel]\npackages = ["bot"]\n',
        encoding="utf-8",
    )
    (folder / "bot").mkdir()
    (folder / "bot" / "__init__.py").touch()
    (folder / "bot" / "__main__.py").write_text("import sys\nprint('the bot:', *sys.argv[1:])\n", encoding="utf-8")
    return folder


def read_lock(text: str) -> dict[str, str]:
    """A lock file's text: each package's name and its lines."""
    blocks: dict[str, str] = {}
    name = ""
    for line in text.splitlines(keepends=True):
        if line[0] not in " #":
            name = line.partition("==")[0]
        blocks[name] = blocks.get(name, "") + line
    return blocks


def with_their_own(names: Iterable[str]) -> set[str]:
    """The packages and all that they want here, as the lock names them."""
    found: set[str] = set()
    todo = list(names)
    while todo:
        name = todo.pop()
        if name not in found:
            found.add(name)
            wants = [Requirement(text) for text in importlib.metadata.requires(name) or ()]
            todo += [canonicalize_name(w.name) for w in wants if w.marker is None or w.marker.evaluate({"extra": ""})]
    return found


def without_rights(machine: Machine) -> Machine:
    """The machine for somebody to whom a folder's mode applies: root, who may do all, gives those rights up."""
    if os.geteuid() != 0:
        return machine
    kept_off = "-dac_override,-dac_read_search"
    return Machine(machine.bin, (str(_found("setpriv")), f"--bounding-set={kept_off}", f"--inh-caps={kept_off}"))


def sentences(text: str) -> Sequence[str]:
    """The lines that were said."""
    return text.strip().splitlines()


def _found(name: str) -> Path:
    found = shutil.which(name)
    if found is None:
        raise LookupError(f"this machine has no {name}")
    return Path(found)
