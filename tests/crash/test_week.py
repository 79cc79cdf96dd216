"""The demo week with the bot's process killed while it plays: as if nobody had touched it."""

import os
from pathlib import Path

from tests.crash.living import live, undisturbed


async def test_a_week_with_twenty_five_kills_is_the_week_without_any(tmp_path: Path) -> None:
    """No message lost, no set kept twice, no reminder missed; at most one message repeated a kill."""
    environment = dict(os.environ)  # noqa: TID251  handed on to a child process
    calm, killed = tmp_path / "calm", tmp_path / "killed"
    calm.mkdir()
    killed.mkdir()
    wanted = await undisturbed(calm)
    found = await live(killed, environment, kills=25, seed=3)
    assert found.kills == 25
    assert found.sets == wanted.sets
    missing = wanted.sent - found.sent
    assert not missing
    repeated = found.sent - wanted.sent
    assert repeated.total() <= found.kills
