"""Killed with -9 while it works: nothing acknowledged is lost, nothing is kept twice, no reminder is missed."""

import base64
import os
from collections.abc import Callable
from pathlib import Path

import pytest

from storage.engine import Store
from tests.crash.killing import Killing, Plan
from tests.store.conftest import KEY

KILLS = {"sqlite": 15, "postgres": 10}


@pytest.fixture
def environment(tmp_path: Path) -> dict[str, str]:
    """What the bot's process needs of ours, and the tests' key."""
    key = tmp_path / "test.key"
    key.write_bytes(base64.b64encode(KEY) + b"\n")
    key.chmod(0o600)
    return {**os.environ, "CHALKPOST_KEY_FILE": str(key)}  # noqa: TID251  handed on to a child process


async def test_twenty_five_kills_lose_nothing(
    url: str, open_store: Callable[[], Store], tmp_path: Path, environment: dict[str, str]
) -> None:
    """Fifteen on SQLite, ten on PostgreSQL, half of them as a message reaches the platform."""
    kills = KILLS["postgres" if url.startswith("postgres") else "sqlite"]
    audit = await Killing(Plan(kills, seed=7), url, tmp_path, environment).run(open_store())
    assert (audit.lost, audit.twice, audit.disorder) == ([], [], [])
    assert audit.repeated <= audit.kills
    assert audit.messages >= 2 * kills
    assert audit.files >= kills // 3
    assert audit.reminders >= 12
