"""Real parts for the runtime: the stand-in over HTTP, the client library, and a store."""

import socket
from collections.abc import AsyncIterator
from pathlib import Path

import pytest

from bot.gateway.library import Platform, library_bot
from bot.gateway.sender import LibrarySender
from bot.runtime.clock import SetClock
from bot.tryout.standin import Limits, Seat, StandIn
from tests.runtime.house import Here
from tests.runtime.known import MINA, NOON, TOKEN
from tests.store.conftest import keyring, open_store, postgres, store, template, template_file, url

__all__ = ["keyring", "open_store", "postgres", "store", "template", "template_file", "url"]


@pytest.fixture
def clock() -> SetClock:
    return SetClock(NOON)


@pytest.fixture
async def standin(clock: SetClock) -> AsyncIterator[StandIn]:
    served = StandIn(clock, Limits(pace=None), seed=3)
    served.add_bot(TOKEN, username="chalk_bot", name="Chalk")
    served.add_person(MINA, "Mina")
    await served.start()
    yield served
    await served.stop()


@pytest.fixture
def mina(standin: StandIn) -> Seat:
    """Mina has pressed Start: the bot may write to her."""
    seat = standin.seat(MINA)
    seat.start()
    return seat


@pytest.fixture
async def sender(standin: StandIn) -> AsyncIterator[LibrarySender]:
    async with library_bot(Platform(TOKEN, standin.url)) as bot:
        yield LibrarySender(bot, menu=lambda _: (("help", "Help"),))


@pytest.fixture
def here(standin: StandIn, clock: SetClock, url: str, tmp_path: Path) -> Here:
    return Here(standin, clock, url, tmp_path)


@pytest.fixture
def unused_port() -> int:
    """A port that nobody listens on now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return int(probe.getsockname()[1])
