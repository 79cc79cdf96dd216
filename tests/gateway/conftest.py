"""The stand-in of the platform, and our client library's bot pointed at it: real parts over real HTTP."""

from collections.abc import AsyncIterator
from datetime import UTC, datetime

import pytest

from bot.gateway.library import Platform, RawBot, library_bot
from bot.gateway.sender import LibrarySender
from bot.runtime.clock import SetClock
from bot.tryout.standin import Limits, Seat, StandIn

TOKEN = "42:TEST-TOKEN"
MINA = 7
NOON = datetime(2027, 3, 1, 12, 0, tzinfo=UTC)


@pytest.fixture
def clock() -> SetClock:
    return SetClock(NOON)


@pytest.fixture
def limits() -> Limits:
    """Overridden where a test is about pace."""
    return Limits(pace=None, webhook_retry_s=0.01)


@pytest.fixture
async def standin(clock: SetClock, limits: Limits) -> AsyncIterator[StandIn]:
    served = StandIn(clock, limits, seed=3)
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
async def bot(standin: StandIn) -> AsyncIterator[RawBot]:
    async with library_bot(Platform(TOKEN, standin.url)) as made:
        yield made


def menu(role: str) -> tuple[tuple[str, str], ...]:
    """A menu for tests."""
    return (("help", "What I can do"), ("today", "Your session")) if role == "client" else (("help", "Help"),)


@pytest.fixture
def sender(bot: RawBot) -> LibrarySender:
    return LibrarySender(bot, menu=menu)
