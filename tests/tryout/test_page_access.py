"""The chat page by keyboard, for a screen reader, on a phone, in the dark. Rules: WCAG 2.2 AA, the criterion named."""

from collections import Counter

import pytest
from playwright.async_api import Browser, Locator, Page, expect

from tests.tryout.stage import Stage, open_stage

pytestmark = pytest.mark.asyncio(loop_scope="module")

PHONE = {"has_touch": True, "is_mobile": True, "device_scale_factor": 2}

# Every visible text with its colour and what lies behind it, as contrast ratios (WCAG 1.4.3, relative luminance).
CONTRAST = """() => {
  const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  const rgba = (colour) => {
    canvas.clearRect(0, 0, 1, 1); canvas.fillStyle = colour; canvas.fillRect(0, 0, 1, 1);
    const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data; return [r, g, b, a / 255];
  };
  const over = (top, under) => top.slice(0, 3).map((v, i) => v * top[3] + under[i] * (1 - top[3]));
  const behind = (element) => {
    const layers = [];
    for (let one = element; one; one = one.parentElement) layers.push(rgba(getComputedStyle(one).backgroundColor));
    return layers.reverse().reduce((under, top) => over(top, under), [255, 255, 255]);
  };
  const light = (rgb) => {
    const [r, g, b] = rgb.map((v) => v / 255).map((v) => (v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const found = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const element = walk.currentNode.parentElement;
    const style = getComputedStyle(element);
    if (!walk.currentNode.textContent.trim() || element.closest('.unseen, .spoiler, script, style, template')) continue;
    if (!element.checkVisibility({ checkVisibilityCSS: true })) continue;
    const back = behind(element);
    const [a, b] = [light(over(rgba(style.color), back)), light(back)].sort((x, y) => y - x);
    found.push([walk.currentNode.textContent.trim().slice(0, 30), (a + 0.05) / (b + 0.05)]);
  }
  return found;
}"""

FOCUS = """() => {
  const one = document.activeElement;
  const target = one.matches('input[type=file]') ? one.closest('.file') : one;
  const box = target.getBoundingClientRect();
  const style = getComputedStyle(target);
  const named = one.labels && one.labels.length ? one.labels[0] : null;
  const label = named ? ((one.matches('select') && named.querySelector('.unseen')) || named).textContent : '';
  return {
    name: (one.getAttribute('aria-label') || label || one.textContent).replace(/\\s+/g, ' ').trim(),
    sheet: (one.closest('.sheet') || { id: '' }).id,
    outline: style.outlineStyle === 'none' ? 0 : parseFloat(style.outlineWidth),
    seen: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.width > 0,
  };
}"""


async def talk(stage: Stage) -> None:
    """Something of everything on both sheets."""
    for words in ("card", "picture", "react"):
        await stage.write(stage.client, words)
    await stage.reads(stage.client, "8 weeks")
    await stage.reads(stage.client, "thumbs up")
    for seat_words in ("invite", "keys"):
        stage.standin.seat(1).say(seat_words)
    await expect(stage.page.locator("#right .keys button").first).to_be_attached()


async def test_by_keyboard_alone(browser: Browser) -> None:
    """WCAG 2.1.1, 2.4.1, 2.4.3, 2.4.7: all is reached by Tab in reading order, focus is seen, nothing traps it."""
    async with open_stage(browser) as stage:
        page = stage.page
        await page.keyboard.press("Tab")
        await page.keyboard.press("Enter")
        await expect(stage.client.get_by_role("textbox")).to_be_focused()
        await page.keyboard.type("card")
        await page.keyboard.press("Enter")
        await stage.reads(stage.client, "Lower A")
        await page.evaluate("document.activeElement.blur()")
        await page.reload()
        await page.wait_for_selector("body[data-ready]")
        order = await tab_through(page)
        assert [name for _, name in order[:6]] == [
            "Skip to the client's message box",
            "Skip to the coach's message box",
            "Next due (08:35)",
            "+1 h on the clock",
            "Tomorrow",
            "Go on",
        ]
        sheets = [sheet for sheet, _ in order[6:]]
        assert sheets == sorted(sheets, key=["left", "right"].index)
        left = [name for sheet, name in order if sheet == "left"]
        assert left[:3] == ["Client is", "New person (client)", "Client's log"]
        done = left.index("Done (message 2)")
        assert left[done : done + 3] == ["Done (message 2)", "Heavier (message 2)", "Stop (message 2)"]
        assert left[-4:] == ["Client's message", "Send (client)", "File (client)", "More (client)"]


async def tab_through(page: Page) -> list[tuple[str, str]]:
    """Presses Tab until it comes round; each stop must be seen and show its focus."""
    order: list[tuple[str, str]] = []
    for _ in range(80):
        await page.keyboard.press("Tab")
        stop = await page.evaluate(FOCUS)
        if not stop["name"] or (order and stop["name"].startswith("Skip to the client") and len(order) > 1):
            return order
        assert stop["seen"], f"{stop['name']} has the focus but is not on the screen"
        assert stop["outline"] >= 2, f"{stop['name']} does not show its focus"
        order.append((stop["sheet"], stop["name"]))
    raise AssertionError(f"Tab never came round: {order}")


async def test_pressing_by_keyboard(browser: Browser) -> None:
    """WCAG 2.1.1, 3.2.2: buttons answer to Space and Enter, the focus stays on the button of a card that changes."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "card")
        card = await stage.reads(stage.client, "Lower A")
        done = card.get_by_role("button", name="Done")
        await done.focus()
        await stage.page.keyboard.press("Space")
        await stage.reads(stage.client, "Set 1 of 3")
        await expect(done).to_be_focused()
        await stage.page.keyboard.press("Enter")
        await stage.reads(stage.client, "Set 2 of 3")
        await expect(done).to_be_focused()
        more = stage.client.locator(".more")
        await more.locator("summary").press("Enter")
        await expect(more.get_by_role("button", name="Block the bot")).to_be_visible()
        await stage.page.keyboard.press("Escape")
        await expect(more.get_by_role("button", name="Block the bot")).to_be_hidden()


async def test_a_dialog_keeps_the_focus_and_gives_it_back(browser: Browser) -> None:
    """WCAG 2.1.2, 2.4.3: the dialog takes the focus, Escape leaves it, the focus is back on the page."""
    async with open_stage(browser) as stage:
        await stage.client.get_by_role("button", name="New person").press("Enter")
        dialog = stage.page.get_by_role("dialog", name="New person")
        await expect(dialog.get_by_label("First name")).to_be_focused()
        await stage.page.keyboard.press("Escape")
        await expect(dialog).to_be_hidden()
        await expect(stage.client.get_by_role("textbox")).to_be_focused()


async def test_what_a_screen_reader_finds(browser: Browser) -> None:
    """WCAG 1.3.1, 2.4.6, 4.1.2: landmarks and headings; every control has a name, and no two buttons the same."""
    async with open_stage(browser) as stage:
        await talk(stage)
        nodes = await tree(stage.page)
        roles = Counter(role for role, _ in nodes)
        assert (roles["banner"], roles["main"], roles["navigation"]) == (1, 1, 1)
        assert {name for role, name in nodes if role == "region"} == {
            "Clock",
            "Client",
            "Coach",
            "Client's log",
            "Coach's log",
        }
        assert [name for role, name in nodes if role == "heading"] == ["Chalkpost", "Clock", "Client", "Coach"]
        named = [(role, name) for role, name in nodes if role in {"button", "link", "textbox", "combobox", "img"}]
        assert [one for one in named if not one[1].strip()] == []
        buttons = Counter(name for role, name in named if role == "button")
        assert [name for name, count in buttons.items() if count > 1] == []
        assert {name for role, name in named if role in {"textbox", "combobox"}} == {
            "Client's message",
            "Coach's message",
            "Client is",
            "Coach is",
        }


async def tree(page: Page) -> list[tuple[str, str]]:
    """Role and name of all that the browser tells assistive technology."""
    session = await page.context.new_cdp_session(page)
    full = await session.send("Accessibility.getFullAXTree")
    return [
        (node["role"]["value"], node.get("name", {}).get("value", ""))
        for node in full["nodes"]
        if not node["ignored"] and "role" in node
    ]


async def test_new_messages_are_told(browser: Browser) -> None:
    """WCAG 4.1.3: what the bot writes, changes and answers is put into a polite live region, with its buttons."""
    async with open_stage(browser) as stage:
        heard = stage.client.locator(".heard")
        await expect(heard).to_have_attribute("aria-live", "polite")
        await expect(heard).to_be_empty()
        await stage.write(stage.client, "card")
        await expect(heard).to_contain_text("Chalk: Lower A")
        await expect(heard).to_contain_text("Buttons: Done, Heavier, Stop, Something hurts.")
        await stage.client.get_by_role("button", name="Done").click()
        await expect(heard).to_contain_text("Chalk, changed: Lower A")
        await expect(stage.client.locator(".toast")).to_have_attribute("aria-live", "polite")


@pytest.mark.parametrize("scheme", ["light", "dark"])
async def test_contrast(browser: Browser, scheme: str) -> None:
    """WCAG 1.4.3: 4.5 to 1 at least for every text shown, light and dark, dialog and menu included."""
    async with open_stage(browser, color_scheme=scheme) as stage:
        await talk(stage)
        await stage.client.locator(".more summary").click()
        await check_contrast(stage.page)
        await stage.coach.get_by_role("link", name="start=").click()
        await check_contrast(stage.page)


async def check_contrast(page: Page) -> None:
    found = await page.evaluate(CONTRAST)
    assert len(found) > 20
    assert [(text, round(ratio, 2)) for text, ratio in found if ratio < 4.5] == []


async def test_reduced_motion(browser: Browser) -> None:
    """WCAG 2.3.3: nothing moves for those who ask for that; else a new entry fades in."""
    for motion, animation in (("reduce", "none"), ("no-preference", "fresh")):
        async with open_stage(browser, reduced_motion=motion) as stage:
            await stage.write(stage.client, "x")
            entry = await stage.reads(stage.client, "You said")
            assert await entry.evaluate("one => getComputedStyle(one).animationName") == animation


async def test_on_a_phone_the_sheets_are_tabs(browser: Browser) -> None:
    """One sheet at a time, chosen by tap or arrow key; a tab tells how much is new on it."""
    async with open_stage(browser, width=390, height=780, **PHONE) as stage:
        client, coach = (stage.page.get_by_role("tab", name=name) for name in ("Client", "Coach"))
        await expect(client).to_have_attribute("aria-selected", "true")
        await expect(stage.coach).to_be_hidden()
        await stage.write(stage.client, "card")
        await stage.reads(stage.client, "Lower A")
        stage.standin.seat(1).say("hello")
        await expect(coach).to_have_text("Coach (1 new)")
        await coach.tap()
        await expect(coach).to_have_text("Coach")
        await expect(stage.client).to_be_hidden()
        await stage.reads(stage.page.get_by_role("tabpanel", name="Coach"), "You said")
        await stage.page.keyboard.press("ArrowLeft")
        await expect(client).to_be_focused()
        await expect(stage.client).to_be_visible()
        await stage.client.get_by_role("button", name="Done").tap()
        await stage.reads(stage.client, "Set 1 of 3")
        await stage.client.get_by_role("button", name="Edit message 1").tap()
        await stage.write(stage.client, "changed by thumb")
        await stage.reads(stage.client, "Changed to: changed by thumb")


@pytest.mark.parametrize("width", [320, 390])
async def test_it_fits_a_phone(browser: Browser, width: int) -> None:
    """WCAG 1.4.10, 2.5.8: no scrolling sideways from 320 pixels on; everything to be tapped is at least 24 by 24."""
    async with open_stage(browser, width=width, height=640, **PHONE) as stage:
        await talk_on_phone(stage)
        for sheet, tab in ((stage.client, "Client"), (stage.coach, "Coach")):
            await stage.page.get_by_role("tab", name=tab).tap()
            assert await stage.page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
            assert await sheet.locator(".scroll").evaluate("one => one.scrollWidth - one.clientWidth") <= 0
            assert await sheet.locator(".scroll").evaluate("one => one.clientHeight") >= 150
            for button in await sheet.locator("button:visible, select:visible, .file:visible, summary:visible").all():
                await check_target(button)


async def talk_on_phone(stage: Stage) -> None:
    for words in ("card", "picture", "averyveryverylongwordwithoutanyspaceatallthatmustbreaksomewhere" * 2):
        stage.mina.say(words)
    for words in ("invite", "file", "keys"):
        stage.standin.seat(1).say(words)
    await stage.mina.wait_for("You said")
    await stage.standin.seat(1).wait_for("How many?")
    await expect(stage.client.locator(".entry")).to_have_count(6)
    await expect(stage.coach.locator(".entry")).to_have_count(6)


async def check_target(button: Locator) -> None:
    box = await button.bounding_box()
    assert box is not None
    assert min(box["width"], box["height"]) >= 24, await button.inner_text()


async def test_everything_twice_as_large(browser: Browser) -> None:
    """WCAG 1.4.4: at 200 % (half the room) nothing is lost: no scrolling sideways, and all can be scrolled to."""
    async with open_stage(browser, width=600, height=400) as stage:
        await stage.write(stage.client, "card")
        await stage.reads(stage.client, "Lower A")
        assert await stage.page.evaluate("document.documentElement.scrollWidth - innerWidth") <= 0
        for name in ("Send", "New person", "Done"):
            button = stage.client.get_by_role("button", name=name)
            await button.scroll_into_view_if_needed()
            await expect(button).to_be_in_viewport(ratio=1)
