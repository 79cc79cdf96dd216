"""The page in a real browser, over a stand-in with a scripted bot, a coach and two clients."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from playwright.async_api import Browser, ConsoleMessage, Locator, Page

from bot.tryout.page import serve_page
from bot.tryout.standin import Limits, Seat, StandIn
from tests.tryout.conftest import MINA, OLEK, TOKEN, HandClock
from tests.tryout.scripted import ScriptedBot

ROSA = 1
PATIENCE_MS = 5_000


class HandControl:
    """The page's clock, moved over a clock that stands."""

    def __init__(self, clock: HandClock) -> None:
        self.clock = clock
        self.paused = True
        self.due: datetime | None = clock.now() + timedelta(minutes=35)

    def now(self) -> datetime:
        return self.clock.now()

    async def next_due(self) -> datetime | None:
        return self.due

    async def go_to(self, when: datetime) -> None:
        self.clock.time = when
        self.due = None

    async def add(self, delta: timedelta) -> None:
        self.clock.add(delta)

    async def tomorrow(self) -> None:
        self.clock.time = self.clock.time.replace(hour=6, minute=0) + timedelta(days=1)

    async def pause(self, paused: bool) -> None:
        self.paused = paused


@dataclass
class Stage:
    """Everything a page test looks at."""

    page: Page
    standin: StandIn
    bot: ScriptedBot
    control: HandControl
    fetched: list[str] = field(default_factory=list)
    complaints: list[str] = field(default_factory=list)

    @property
    def client(self) -> Locator:
        """The left sheet."""
        return self.page.locator("#left")

    @property
    def coach(self) -> Locator:
        """The right sheet."""
        return self.page.locator("#right")

    @property
    def mina(self) -> Seat:
        """The client at the left sheet."""
        return self.standin.seat(MINA)

    async def write(self, sheet: Locator, words: str) -> None:
        """Types and sends."""
        box = sheet.get_by_role("textbox")
        await box.fill(words)
        await box.press("Enter")

    async def reads(self, sheet: Locator, words: str) -> Locator:
        """The newest entry with these words, once it is there."""
        entry = sheet.locator(".entry", has_text=words).last
        await entry.wait_for(timeout=PATIENCE_MS)
        return entry


def complains(line: ConsoleMessage) -> bool:
    """Whether the page complains. That an answer was no 200 is not for the page to complain of: it shows the reason."""
    return line.type in {"error", "warning"} and not line.text.startswith("Failed to load resource")


@asynccontextmanager
async def open_stage(
    browser: Browser, *, width: int = 1200, height: int = 800, **context: object
) -> AsyncIterator[Stage]:
    """Serves, opens the page, and at the end asks that the page had nothing to complain of."""
    clock = HandClock()
    control = HandControl(clock)
    standin = StandIn(clock, Limits(pace=None))
    standin.add_bot(TOKEN, username="chalk_bot", name="Chalk")
    standin.add_person(ROSA, "Rosa", zone="Europe/Madrid")
    standin.add_person(MINA, "Mina", zone="America/New_York")
    standin.add_person(OLEK, "Olek", "pl")
    await standin.start(wings=[serve_page(control, coaches=(ROSA,))])
    bot = ScriptedBot(standin.base_url)
    bot.start()
    opened = await browser.new_context(viewport={"width": width, "height": height}, **context)  # type: ignore[arg-type]
    page = await opened.new_page()
    page.set_default_timeout(PATIENCE_MS)
    stage = Stage(page, standin, bot, control)
    page.on("request", lambda request: stage.fetched.append(request.url))
    page.on("pageerror", lambda error: stage.complaints.append(str(error)))
    page.on("console", lambda line: stage.complaints.append(line.text) if complains(line) else None)
    try:
        await page.goto(standin.url)
        await page.wait_for_selector("body[data-ready]")
        yield stage
        assert stage.complaints == []
    finally:
        await opened.close()
        await bot.stop()
        await standin.stop()
