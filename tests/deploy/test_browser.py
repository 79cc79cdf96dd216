"""Which browser `deploy/test` takes for the tests of the chat page, and what it says where there is none."""

from pathlib import Path

import pytest

from tests.deploy.checkout import Machine, Ran, bare_machine, sentences, small_checkout, uv

LACKING = "The tests of the chat page need Chromium: install it"


@pytest.fixture
def machine(tmp_path: Path) -> Machine:
    """A bare machine with uv, which sets up in a second; no browser."""
    machine = bare_machine(tmp_path)
    machine.give("uv", uv())
    machine.settings["CHALKPOST_CHROMIUM"] = ""
    return machine


@pytest.fixture
def house(tmp_path: Path) -> Path:
    """A small checkout. Its tests end at the first stage, since it has no linter: enough to see what was chosen."""
    return small_checkout(tmp_path / "house")


def check(machine: Machine, house: Path) -> Ran:
    """Runs `deploy/test`."""
    return machine.run("sh", house / "deploy" / "test")


def chosen(ran: Ran) -> str:
    """The line that names the browser, which the log must have once."""
    (line,) = (one for one in sentences(ran.out) if one.startswith("Chromium for the tests of the chat page: "))
    return line.partition(": ")[2]


def be(machine: Machine, user: int) -> None:
    """Who `id` says that one is."""
    (machine.bin / "id").unlink()
    machine.write("id", f"echo {user}")


def test_one_on_the_path_is_taken(machine: Machine, house: Path) -> None:
    """In a fixed order; one that does not start is passed over."""
    machine.write("chromium", "echo 'no display' >&2; exit 1")
    machine.write("chromium-browser", "echo 'a warning' >&2; echo Browser 2.0")
    machine.write("google-chrome", "echo Browser 3.0")
    assert chosen(check(machine, house)) == f"{machine.bin / 'chromium-browser'} (Browser 2.0)"


def test_the_one_that_is_named_goes_first(machine: Machine, house: Path, tmp_path: Path) -> None:
    """CHALKPOST_CHROMIUM names a program by its path, spaces and all."""
    machine.write("chromium", "echo Browser 1.0")
    elsewhere = tmp_path / "my browser"
    elsewhere.write_text("#!/bin/sh\necho Browser 9.0\n", encoding="utf-8")
    elsewhere.chmod(0o755)
    machine.settings["CHALKPOST_CHROMIUM"] = str(elsewhere)
    assert chosen(check(machine, house)) == f"{elsewhere} (Browser 9.0)"


@pytest.mark.parametrize(("user", "has_apt"), [(0, False), (1000, True)])
def test_none_is_one_sentence(machine: Machine, house: Path, user: int, has_apt: bool) -> None:
    """Without apt-get nothing can be installed; with it, but not as root, nothing is tried."""
    be(machine, user)
    if has_apt:
        machine.write("apt-get", "exit 99")
    ran = check(machine, house)
    assert (ran.code, len(sentences(ran.err))) == (1, 1)
    assert ran.err.startswith(LACKING)


def test_root_installs_one(machine: Machine, house: Path) -> None:
    """With apt-get, here one that brings a browser of our own, and only where none is there."""
    be(machine, 0)
    machine.write(
        "apt-get",
        f'echo "$*" >>"{machine.bin}/asked"\n'
        f'case $* in *chromium*) echo "#!/bin/sh\necho Browser 5.0" >"{machine.bin}/chromium"\n'
        f'"{machine.bin}/chmod" +x "{machine.bin}/chromium" ;; esac',
    )
    machine.give("chmod", Path("/bin/chmod"))
    assert chosen(check(machine, house)) == f"{machine.bin / 'chromium'} (Browser 5.0)"
    asked = (machine.bin / "asked").read_text(encoding="utf-8")
    assert asked == "update\ninstall -y --no-install-recommends chromium\n"

    assert chosen(check(machine, house)) == f"{machine.bin / 'chromium'} (Browser 5.0)"
    assert (machine.bin / "asked").read_text(encoding="utf-8") == asked


def test_an_install_that_fails_is_told(machine: Machine, house: Path) -> None:
    """What apt-get said, then the sentence."""
    be(machine, 0)
    machine.write("apt-get", "echo 'no such package' >&2; exit 100")
    ran = check(machine, house)
    assert ran.code == 1
    first, last = sentences(ran.err)
    assert first == "no such package"
    assert last.startswith(LACKING)
