"""What stands on paper for the operator is true: settings, commands, units, the container and the runbook."""

import re
import shlex
from collections.abc import Iterator
from configparser import ConfigParser
from pathlib import Path

import click
import pytest
from dotenv import dotenv_values

from bot.cli import COMMANDS, chalkpost
from bot.settings import PREFIX, Settings
from tests.deploy.checkout import ROOT

DEPLOY = ROOT / "deploy"
UNITS = tuple(sorted(p for p in DEPLOY.iterdir() if p.suffix in {".service", ".timer"}))
SERVICES = tuple(p for p in UNITS if p.suffix == ".service")
ELSEWHERE = {f"{PREFIX}ENV_FILE", f"{PREFIX}CHROMIUM"}
"""Named in the papers, but no settings of the bot: where the settings stand, and the tests' browser."""


def read(name: str) -> str:
    """A file of `deploy/`."""
    return (DEPLOY / name).read_text(encoding="utf-8")


def example() -> Iterator[tuple[str, str, str]]:
    """Each setting of env.example: its name, its value, the comment above it."""
    comment: list[str] = []
    for line in read("env.example").splitlines():
        found = re.fullmatch(r"(?:# )?(CHALKPOST_[A-Z_]+)=(.*)", line)
        if found:
            yield found[1], found[2], " ".join(comment)
        if found or not line:
            comment = []
        else:
            comment.append(line.removeprefix("#").strip())


def test_the_example_names_the_settings_there_are() -> None:
    """Each once, in capitals with the prefix, no other."""
    names = [name for name, _, _ in example()]
    assert len(names) == len(set(names))
    assert set(names) == {PREFIX + field.upper() for field in Settings.model_fields}


def test_each_setting_is_explained() -> None:
    """By a sentence above it at least."""
    assert [name for name, _, comment in example() if len(comment) < 20 or not comment.endswith((".", ")"))] == []


def test_the_example_shows_what_holds_when_nothing_is_set(tmp_path: Path) -> None:
    """With every line taken in, the settings are the very ones that there are without any."""
    file = tmp_path / "all.env"
    file.write_text(re.sub(r"(?m)^# (?=CHALKPOST_[A-Z_]+=)", "", read("env.example")), encoding="utf-8")
    values = {k.removeprefix(PREFIX).lower(): v for k, v in dotenv_values(file).items() if v}
    assert Settings.model_validate(values) == Settings.model_validate({})
    assert len(values) > 10


@pytest.mark.parametrize("name", ["RUNBOOK.md", "compose.yaml", "Containerfile", *(p.name for p in UNITS)])
def test_no_paper_names_a_setting_that_there_is_not(name: str) -> None:
    """Every CHALKPOST_ name in it is a setting."""
    known = {PREFIX + field.upper() for field in Settings.model_fields} | ELSEWHERE
    assert set(re.findall(r"CHALKPOST_[A-Z_]+", read(name))) <= known


def called(text: str) -> set[tuple[str, ...]]:
    """The commands of ours that a text names in code: `chalkpost X Y`, `python -m bot X`, `run --rm bot X`."""
    found = re.findall(r"(?m)(?:(?:^ +|`|bin/|exec bot )chalkpost|-m bot|run --rm bot) ([a-z]+)((?: [a-z]+)*)", text)
    return {(first, *rest.split()) for first, rest in found}


@pytest.mark.parametrize("name", ["RUNBOOK.md", "compose.yaml", *(p.name for p in SERVICES)])
def test_the_commands_on_paper_exist(name: str) -> None:
    """Each names a command, and where that is a group, one of its own."""
    words = called(read(name))
    assert words
    for first, *rest in words:
        command = chalkpost.get_command(click.Context(chalkpost), first)
        assert command is not None, first
        if isinstance(command, click.Group):
            assert rest, first
            assert rest[0] in command.commands


def test_the_runbook_tells_of_every_operators_command() -> None:
    """None of the commands that an operator may need is missing."""
    text = read("RUNBOOK.md")
    wanted = {"run", "coach", "status", "backup", "again", "forget"}
    assert wanted <= set(COMMANDS)
    assert [name for name in wanted if f"chalkpost {name}" not in text] == []


def test_links_between_papers_lead_somewhere() -> None:
    """Files that the runbook names in backquotes are there."""
    named = set(re.findall(r"`([\w./-]+\.(?:md|yaml|service|timer|example))`", read("RUNBOOK.md")))
    assert named
    assert [n for n in named if not (DEPLOY / Path(n).name).is_file()] == []


# --- units


def unit(path: Path) -> ConfigParser:
    """A unit's sections; a repeated key keeps its last value, which is enough here."""
    parser = ConfigParser(strict=False, interpolation=None, delimiters=("=",), comment_prefixes=("#",))
    parser.optionxform = str  # type: ignore[assignment, method-assign]  # keys keep their capitals
    parser.read_string(path.read_text(encoding="utf-8"))
    return parser


KNOWN = """
Description Documentation Wants After StartLimitIntervalSec Type User Group Environment ExecStart
ExecStartPost WorkingDirectory Restart RestartSec TimeoutStartSec TimeoutStopSec KillSignal StateDirectory
StateDirectoryMode CacheDirectory CacheDirectoryMode UMask NoNewPrivileges CapabilityBoundingSet
AmbientCapabilities ProtectSystem ProtectHome PrivateTmp PrivateDevices PrivateNetwork ProtectClock
ProtectControlGroups ProtectHostname ProtectKernelLogs ProtectKernelModules ProtectKernelTunables ProtectProc
RemoveIPC RestrictAddressFamilies RestrictNamespaces RestrictRealtime RestrictSUIDSGID LockPersonality
SystemCallArchitectures SystemCallFilter SystemCallErrorNumber MemoryHigh MemoryMax TasksMax Nice
IOSchedulingClass OnCalendar RandomizedDelaySec Persistent Unit WantedBy
"""
"""Directives of systemd.unit(5), .service(5), .exec(5), .resource-control(5) and .timer(5); from those pages."""


@pytest.mark.parametrize("path", UNITS, ids=lambda p: p.name)
def test_units_hold_only_what_systemd_knows(path: Path) -> None:
    """A directive that is misspelt would be passed over with a warning, and its protection with it."""
    parser = unit(path)
    kind = "Service" if path.suffix == ".service" else "Timer"
    assert set(parser.sections()) <= {"Unit", kind, "Install"}
    assert kind in parser
    assert {key for section in parser.sections() for key in parser[section]} <= set(KNOWN.split())


@pytest.mark.parametrize("path", SERVICES, ids=lambda p: p.name)
def test_services_give_their_rights_up(path: Path) -> None:
    """No root, no new rights, nothing to write but the folders of its own, which nobody else may read."""
    service = unit(path)["Service"]
    assert service["User"] == "chalkpost"
    assert service["NoNewPrivileges"] == "yes"
    assert service["ProtectSystem"] == "strict"
    assert service["ProtectHome"] == "yes"
    assert service["CapabilityBoundingSet"] == ""
    assert service["StateDirectoryMode"] == "0700"
    assert service["UMask"] == "0077"
    assert {"chalkpost", "chalkpost-key"} <= set(service["StateDirectory"].split())


def test_the_bot_comes_back() -> None:
    """After any end, without a limit; it is told to stop as it expects, and given time."""
    service = unit(DEPLOY / "chalkpost.service")
    assert service["Service"]["Restart"] == "always"
    assert service["Unit"]["StartLimitIntervalSec"] == "0"
    assert service["Service"]["KillSignal"] == "SIGTERM"
    assert "WatchdogSec" not in service["Service"], "the bot sends no watchdog messages"


def test_the_copy_writes_where_it_may() -> None:
    """Into the folder that the unit makes, under a name with the time; percent signs are doubled for systemd."""
    service = unit(DEPLOY / "chalkpost-backup.service")["Service"]
    assert "chalkpost-backups" in service["StateDirectory"].split()
    _, _, script = shlex.split(service["ExecStart"])
    assert "/var/lib/chalkpost-backups/chalkpost-$$(date -u +%%Y%%m%%dT%%H%%M%%SZ).db" in script
    assert service["ExecStartPost"].split()[1] == "/var/lib/chalkpost-backups"
    assert unit(DEPLOY / "chalkpost-backup.timer")["Timer"]["Unit"] == "chalkpost-backup.service"


# --- container


def test_the_container_has_all_it_copies() -> None:
    """What is copied in is there, and is let through by the ignore file."""
    sources = [
        word
        for line in read("Containerfile").splitlines()
        if line.startswith("COPY ") and "--from" not in line
        for word in line.split()[1:-1]
    ]
    let_in = {line[1:] for line in read("Containerfile.dockerignore").splitlines() if line.startswith("!")}
    assert sources
    assert [s for s in sources if not (ROOT / s).exists()] == []
    assert set(sources) == let_in


def test_the_container_is_nobody_and_tells_its_health() -> None:
    """The last stage runs as a number that is not root's, keeps data and key in volumes, and asks `status`."""
    last = read("Containerfile").rpartition("FROM ")[2]
    user = re.search(r"^USER (\d+):(\d+)$", last, re.MULTILINE)
    assert user is not None
    assert int(user[1]) > 0
    assert 'VOLUME ["/data", "/key"]' in last
    assert re.search(r'^HEALTHCHECK .*CMD \["chalkpost", "status"\]$', last, re.MULTILINE)
    assert "CHALKPOST_DATA_DIR=/data" in last
    assert "CHALKPOST_KEY_FILE=/key/chalkpost.key" in last
    assert last.index("USER ") < last.index("ENTRYPOINT ")


def test_the_container_is_made_of_locked_packages() -> None:
    """Each package is checked against its hash."""
    assert "pip install --no-cache-dir --require-hashes -r requirements.lock" in read("Containerfile")


def test_compose_is_shut_in() -> None:
    """The root file system read-only, no capabilities, no new rights; data and key in volumes of their own."""
    bot = read("compose.yaml").partition("\n  db:")[0]
    for wanted in (
        "read_only: true",
        "cap_drop: [ALL]",
        '"no-new-privileges:true"',
        "- data:/data",
        "- key:/key",
        "restart: unless-stopped",
        "dockerfile: deploy/Containerfile",
    ):
        assert wanted in bot
    assert "ports:" not in read("compose.yaml"), "nothing listens to the outside"


def test_secrets_beside_the_papers_are_not_committed() -> None:
    """The files that compose wants are ignored by git."""
    ignored = read(".gitignore").split()
    assert {"chalkpost.env", "postgres.password"} <= set(ignored)


def test_the_licence_is_open() -> None:
    """The text that the project's metadata names."""
    assert (ROOT / "LICENSE").read_text(encoding="utf-8").startswith("MIT License\n")
