"""The operator's commands as processes: run, coach add, status, backup; each fault one sentence and exit code 2."""

import asyncio
import os
import re
import signal
import socket
import sqlite3
import sys
from collections.abc import AsyncIterator
from dataclasses import dataclass
from hashlib import sha256
from pathlib import Path

import pytest

from bot.runtime.clock import SystemClock
from bot.tryout.standin import Limits, StandIn
from storage.engine import Store
from storage.keyring import Keyring
from storage.people import invite_of

TOKEN = "42:TEST-TOKEN"
ROOT = Path(__file__).parents[2]


@dataclass(frozen=True, slots=True)
class Ended:
    """How a command ended."""

    code: int
    out: str
    err: str


@dataclass(slots=True)
class Operator:
    """Somebody at the command line, with a data folder and the stand-in for the platform."""

    folder: Path
    url: str

    def environment(self, **more: str) -> dict[str, str]:
        """What the commands are given."""
        ours = {"TOKEN": TOKEN, "API_URL": self.url, "DATA_DIR": str(self.folder), "WAKE_S": "0.05", **more}
        plain = {k: v for k, v in os.environ.items() if not k.startswith("CHALKPOST_")}  # noqa: TID251  handed on
        return {**plain, **{f"CHALKPOST_{name}": value for name, value in ours.items()}}

    async def start(self, *words: str, **more: str) -> asyncio.subprocess.Process:
        """A command, running."""
        return await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            "bot",
            *words,
            cwd=ROOT,
            env=self.environment(**more),
            stdout=asyncio.subprocess.PIPE,
            stderr=asyncio.subprocess.PIPE,
        )

    async def do(self, *words: str, **more: str) -> Ended:
        """A command, to its end."""
        process = await self.start(*words, **more)
        out, err = await asyncio.wait_for(process.communicate(), 60)
        assert process.returncode is not None
        return Ended(process.returncode, out.decode(), err.decode())


@pytest.fixture
async def standin() -> AsyncIterator[StandIn]:
    served = StandIn(SystemClock(), Limits(pace=None))
    served.add_bot(TOKEN, username="chalk_bot")
    served.add_person(7, "Mina")
    await served.start()
    yield served
    await served.stop()


@pytest.fixture
def operator(standin: StandIn, tmp_path: Path) -> Operator:
    return Operator(tmp_path / "data", standin.url)


async def test_the_bot_runs_answers_and_stops_when_told(operator: Operator, standin: StandIn) -> None:
    """A stranger gets an answer; SIGTERM ends it with 0; afterwards the operator can see how it was."""
    process = await operator.start("run")
    mina = standin.seat(7)
    mina.say("hello")
    hello = await mina.wait_for("", timeout_s=60)
    assert hello.words.text
    second = await operator.do("run")
    assert (second.code, second.err.count("\n")) == (2, 1)
    assert "already runs" in second.err
    backup = operator.folder / "copy.db"
    assert (await operator.do("backup", str(backup))).code == 0
    assert sqlite3.connect(backup).execute("PRAGMA integrity_check").fetchone() == ("ok",)
    running = await operator.do("status")
    assert "Messages waiting: 0" in running.out
    assert running.code == 0, running.out
    process.send_signal(signal.SIGTERM)
    _, err = await asyncio.wait_for(process.communicate(), 30)
    assert process.returncode == 0, err.decode()
    assert TOKEN not in err.decode()
    assert "hello" not in err.decode()


async def test_a_coach_is_invited_by_a_link_that_works_once(operator: Operator) -> None:
    """Only its hash is kept; the name is asked of the platform."""
    ended = await operator.do("coach", "add", "--expires-days", "3")
    link = ended.out.strip()
    assert re.fullmatch(r"https://t\.me/chalk_bot\?start=[A-Za-z0-9_-]{30,64}", link), ended
    assert "3 days" in ended.err
    payload = link.partition("start=")[2]
    store = Store.open(f"sqlite:///{operator.folder / 'chalkpost.db'}", Keyring.from_file(key_of(operator)))
    with store.begin() as work:
        invite = invite_of(work, sha256(payload.encode()).hexdigest(), now=SystemClock().now())
    store.close()
    assert invite is not None
    assert (invite.is_open, invite.coach) == (True, "")


def key_of(operator: Operator) -> Path:
    """The key that was made on the first run."""
    return operator.folder / "key" / "chalkpost.key"


async def test_the_key_is_its_owners_alone(operator: Operator) -> None:
    """And a copy that others may read is refused."""
    assert (await operator.do("coach", "add")).code == 0
    assert key_of(operator).stat().st_mode & 0o777 == 0o600
    key_of(operator).chmod(0o644)
    ended = await operator.do("run")
    assert (ended.code, ended.err.count("\n")) == (2, 1)
    assert "chmod 600" in ended.err


async def test_a_bot_that_never_ran_is_told_so(operator: Operator) -> None:
    """Exit code 1: it needs a look."""
    ended = await operator.do("status")
    assert ended.code == 1
    assert "never run" in ended.out


FAULTS: tuple[tuple[str, tuple[str, ...], dict[str, str], str], ...] = (
    ("no token", ("run",), {"TOKEN": ""}, "CHALKPOST_TOKEN"),
    ("a token that is none", ("run",), {"TOKEN": "secret"}, "CHALKPOST_TOKEN"),
    ("a void token", ("run",), {"TOKEN": "43:OTHER-TOKEN"}, "refuses the bot's token"),
    ("a wrong setting", ("run",), {"SENDERS": "many"}, "CHALKPOST_SENDERS"),
    ("no such database", ("run",), {"DATABASE_URL": "mysql://x"}, "mysql"),
    ("a folder that can't be made", ("run",), {"DATA_DIR": "/proc/chalkpost"}, "/proc/chalkpost"),
    ("no platform to ask", ("coach", "add"), {"API_URL": "http://127.0.0.1:9"}, "CHALKPOST_BOT_NAME"),
    ("a backup into nowhere", ("backup", "/proc/copy.db"), {}, "/proc/copy.db"),
)


@pytest.mark.parametrize(("words", "more", "named"), [f[1:] for f in FAULTS], ids=[f[0] for f in FAULTS])
async def test_a_fault_is_one_sentence(
    words: tuple[str, ...], more: dict[str, str], named: str, operator: Operator
) -> None:
    """On standard error, with exit code 2 and no traceback."""
    ended = await operator.do(*words, LOG_LEVEL="error", **more)
    assert (ended.code, ended.out) == (2, "")
    assert named in ended.err
    assert ended.err.count("\n") == 1
    assert ended.err.rstrip().endswith(".")


async def test_a_taken_port_is_one_sentence(operator: Operator) -> None:
    """The health endpoint's, and the webhook's."""
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = taken.getsockname()[1]
        ended = await operator.do("run", LOG_LEVEL="error", HEALTH_LISTEN=f"127.0.0.1:{port}")
        hook = {"MODE": "webhook", "WEBHOOK_URL": "https://example.org/hook", "WEBHOOK_SECRET": "s" * 20}
        hooked = await operator.do("run", LOG_LEVEL="error", WEBHOOK_LISTEN=f"127.0.0.1:{port}", **hook)
    for one in (ended, hooked):
        assert (one.code, one.err.count("\n")) == (2, 1)
        assert str(port) in one.err


async def test_help_names_every_command_without_loading_them(operator: Operator) -> None:
    """And an unknown one is told."""
    ended = await operator.do("--help")
    assert ended.code == 0
    for name in ("run", "coach", "status", "backup", "read", "next"):
        assert re.search(rf"^  {name} ", ended.out, re.MULTILINE), name
    assert (await operator.do("dance")).code == 2
