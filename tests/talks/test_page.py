"""A day lived in a real browser: the client and the coach on the chat page, the real bot behind it."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

from playwright.async_api import Locator, Page, async_playwright, expect

from bot.cli.tryout import rehearsal
from bot.tryout.practice.people import ADA
from tests.talks.practice import Practice
from tests.tryout.browser import browser_args, find_browser

PATIENCE_MS = 15_000


@asynccontextmanager
async def page_of(folder: Path, *, width: int = 1280) -> AsyncIterator[tuple[Page, Practice]]:
    """The page with Ada on the left and the coach on the right, Monday 17:59 in Berlin."""
    async with rehearsal(folder) as held, async_playwright() as driver:
        practice = Practice(held, held.stage(lambda _: None))
        await practice.coach_joins()
        await practice.ada_joins()
        await practice.given()
        await practice.stage.until(ADA, "2027-01-11 17:59")
        browser = await driver.chromium.launch(executable_path=find_browser(), args=browser_args())
        page = await browser.new_page(viewport={"width": width, "height": 900})
        page.set_default_timeout(PATIENCE_MS)
        await page.goto(held.standin.url)
        try:
            yield page, practice
        finally:
            await browser.close()


async def _say(sheet: Locator, words: str) -> None:
    box = sheet.get_by_role("textbox")
    await box.fill(words)
    await box.press("Enter")


async def test_a_session_lived_in_the_browser(tmp_path: Path) -> None:
    """The clock steps to the session; sets tapped and typed; pain; the coach answers; the client reads it."""
    expect.set_options(timeout=PATIENCE_MS)
    async with page_of(tmp_path) as (page, _):
        client, coach = page.locator("#left"), page.locator("#right")
        await page.get_by_role("button", name="Next due").click()
        await expect(client.get_by_text("Squat and press").last).to_be_visible()
        await client.get_by_role("button", name="52.5 kg").last.click()
        await client.get_by_role("button", name="6 reps").last.click()
        await expect(client.get_by_text("1. done: 52.5 kg × 6").last).to_be_visible()
        await _say(client, "45x9")
        await expect(client.get_by_text("2. done: 45 kg × 9").last).to_be_visible()
        await _say(client, "45x8 but a sharp pain in my left knee 4/10")
        await expect(coach.get_by_text("PAIN: Ada").last).to_be_visible()
        await coach.get_by_role("button", name="Reply to Ada").last.click()
        await expect(coach.get_by_text("Your next message goes to Ada").last).to_be_visible()
        await _say(coach, "Stop squatting for today, do the rest.")
        await expect(client.get_by_text("Stop squatting for today").last).to_be_visible()
        await page.get_by_role("button", name="Tomorrow").click()
        await expect(client.get_by_text("How hard was the whole session").last).to_be_visible()


async def test_a_phone_width_is_enough(tmp_path: Path) -> None:
    """At 390 pixels the sheets become tabs, nothing runs off to the side, and a set can be tapped."""
    expect.set_options(timeout=PATIENCE_MS)
    async with page_of(tmp_path, width=390) as (page, _):
        client = page.locator("#left")
        await page.get_by_role("button", name="Next due").click()
        await client.get_by_role("button", name="52.5 kg").last.click()
        await client.get_by_role("button", name="5 reps").last.click()
        await expect(client.get_by_text("1. done: 52.5 kg × 5").last).to_be_visible()
        assert await page.evaluate("document.documentElement.scrollWidth") <= 390
