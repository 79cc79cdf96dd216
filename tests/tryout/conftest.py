"""The stand-in with one bot and two people, and the platform's own client library pointed at it."""

from collections.abc import AsyncIterator, Callable
from datetime import UTC, datetime, timedelta

import pytest
import pytest_asyncio
from playwright.async_api import Browser, async_playwright
from telegram import Bot
from telegram.request import HTTPXRequest

from bot.tryout.standin import Limits, Seat, StandIn
from tests.tryout.browser import browser_args, find_browser

TOKEN = "42:TEST-TOKEN"
MINA, OLEK = 7, 8


class HandClock:
    """A clock that stands until it is moved."""

    def __init__(self) -> None:
        self.time = datetime(2027, 3, 1, 8, 0, tzinfo=UTC)

    def now(self) -> datetime:
        return self.time

    def add(self, delta: timedelta) -> None:
        self.time += delta


class HandSeconds:
    """Monotonic seconds that stand until they are moved."""

    def __init__(self) -> None:
        self.at_s = 100.0

    def __call__(self) -> float:
        return self.at_s


@pytest.fixture(autouse=True)
def _seconds_as_timedelta(monkeypatch: pytest.MonkeyPatch) -> None:
    """The client library warns of a change to come unless told that it is known."""
    monkeypatch.setenv("PTB_TIMEDELTA", "true")


@pytest.fixture
def clock() -> HandClock:
    return HandClock()


@pytest.fixture
def seconds() -> HandSeconds:
    return HandSeconds()


@pytest.fixture
def limits() -> Limits:
    """Overridden where a test is about pace or about smaller limits."""
    return Limits(pace=None, webhook_retry_s=0.01)


@pytest.fixture
async def standin(clock: HandClock, seconds: HandSeconds, limits: Limits) -> AsyncIterator[StandIn]:
    served = StandIn(clock, limits, seconds=seconds, seed=11)
    served.add_bot(TOKEN, username="chalk_bot", name="Chalk")
    served.add_person(MINA, "Mina", zone="Europe/Berlin")
    served.add_person(OLEK, "Olek", "pl")
    await served.start()
    yield served
    await served.stop()


@pytest.fixture
def mina(standin: StandIn) -> Seat:
    """Mina, who has started the bot; the bot has confirmed that."""
    seat = standin.seat(MINA)
    seat.start()
    seat.bot.updates.drop()
    return seat


@pytest.fixture
async def new_bot(standin: StandIn) -> AsyncIterator[Callable[..., Bot]]:
    """Makes client-library bots against the stand-in; they are closed at the end."""
    made: list[Bot] = []

    def make(token: str = TOKEN, *, read_timeout: float = 5.0) -> Bot:
        request = HTTPXRequest(read_timeout=read_timeout)
        polls = HTTPXRequest(read_timeout=read_timeout)
        client = Bot(
            token,
            base_url=standin.base_url,
            base_file_url=standin.base_file_url,
            request=request,
            get_updates_request=polls,
        )
        made.append(client)
        return client

    yield make
    for client in made:
        for request in client._request:
            await request.shutdown()


@pytest.fixture
def bot(new_bot: Callable[..., Bot]) -> Bot:
    """The bot of the token registered."""
    return new_bot()


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def browser() -> AsyncIterator[Browser]:
    """Headless Chromium, one for a module."""
    async with async_playwright() as play:
        launched = await play.chromium.launch(executable_path=find_browser(), args=browser_args())
        yield launched
        await launched.close()
