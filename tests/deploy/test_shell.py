"""The scripts are plain POSIX shell: every shell at hand reads them, and they call nothing but what is promised."""

import re
import shutil
import subprocess
from pathlib import Path

import pytest

from tests.deploy.checkout import CORE, ROOT

SCRIPTS = tuple(ROOT / "deploy" / name for name in ("try", "test", "setup.sh", "relock"))
SHELLS = tuple(name for name in ("sh", "dash", "bash", "busybox", "ksh", "mksh", "yash", "zsh") if shutil.which(name))
BASHISMS = (
    r"\[\[",
    r"\bfunction\b",
    r"<<<",
    r"\blocal\b",
    r"\bsource\b",
    r"\becho -[en]",
    r"\$'",
    r"<\(",
    r"&>",
    r"==",
)


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_every_shell_reads_it(script: Path) -> None:
    """`sh -n`, and the same in each other shell of this machine."""
    assert "sh" in SHELLS
    for shell in SHELLS:
        words = [shell, "sh"] if shell == "busybox" else [shell]
        done = subprocess.run([*words, "-n", str(script)], capture_output=True, text=True, check=False)
        assert (done.returncode, done.stderr) == (0, ""), shell


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda path: path.name)
def test_nothing_but_posix(script: Path) -> None:
    """No word that only some shells know."""
    text = script.read_text(encoding="utf-8")
    code = "\n".join(line for line in text.splitlines() if not line.lstrip().startswith("#"))
    code = re.sub(r"'[^']*'", "''", code)  # what stands in quotes is another program's
    assert [word for word in BASHISMS if re.search(word, code)] == []


def test_the_core_utilities_are_those_promised() -> None:
    """Each of the core utilities of the tests' bare machine is used; a new one must be added there on purpose."""
    text = "".join(path.read_text(encoding="utf-8") for path in SCRIPTS)
    unused = [name for name in CORE if name != "env" and not re.search(rf"\b{name}\b", text)]
    assert unused == []


def test_continuous_integration_runs_the_tests() -> None:
    """`.ci/run` is a script that may be run, and hands everything to `deploy/test`."""
    script = ROOT / ".ci" / "run"
    assert script.stat().st_mode & 0o100
    assert script.read_text(encoding="utf-8").rstrip().endswith('exec sh deploy/test "$@"')
    assert subprocess.run(["bash", "-n", str(script)], check=False).returncode == 0
