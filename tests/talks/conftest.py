"""The stage of every talk: a fresh database, the real bot, the stand-in, and a clock that the talk sets."""

from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.cli.tryout import Rehearsal, rehearsal
from tests.talks.practice import Practice


@pytest.fixture
async def held(tmp_path: Path) -> AsyncIterator[Rehearsal]:
    """The bot at the stand-in; nobody has joined."""
    async with rehearsal(tmp_path) as stage:
        yield stage


@pytest.fixture
async def practice(held: Rehearsal) -> Practice:
    """A coach and Ada, who trains on Mondays and Thursdays at 18:00 in Berlin, the sample programme."""
    made = Practice(held, held.stage(lambda _: None))
    await made.coach_joins()
    await made.ada_joins()
    await made.given()
    return made
