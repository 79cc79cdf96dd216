"""The chat page, as someone at a desk uses it, in real headless Chromium."""

from pathlib import Path

import pytest
from playwright.async_api import Browser, expect

from tests.tryout.conftest import MINA, OLEK
from tests.tryout.drawings import png
from tests.tryout.scripted import LINK
from tests.tryout.stage import ROSA, open_stage

pytestmark = pytest.mark.asyncio(loop_scope="module")


async def test_typing_on_both_sheets(browser: Browser) -> None:
    """Enter sends, Shift+Enter makes a new line; each sheet shows its own chat only, words as they were typed."""
    async with open_stage(browser) as stage:
        await stage.client.get_by_role("button", name="Start (client)").click()
        await stage.reads(stage.client, "Welcome, Mina")
        await expect(stage.client.get_by_role("button", name="Start (client)")).to_be_hidden()
        box = stage.client.get_by_role("textbox")
        await box.press_sequentially("squat <b>100</b>")
        await box.press("Shift+Enter")
        await box.press_sequentially("felt ok & slow")
        await box.press("Enter")
        await stage.reads(stage.client, "squat <b>100</b>")
        own = stage.client.locator("#left-3")
        assert await own.locator(".words").inner_text() == "squat <b>100</b>\nfelt ok & slow"
        await stage.reads(stage.client, 'You said: "squat <b>100</b>')
        await expect(box).to_have_value("")
        await stage.write(stage.coach, "hello from the coach")
        await stage.reads(stage.coach, "You said: ")
        assert await stage.client.locator(".entry").count() == 4
        assert await stage.client.get_by_text("hello from the coach").count() == 0


async def test_buttons(browser: Browser) -> None:
    """A tap looks pressed until it is answered; the answer is shown for a moment; the card changes where it stands."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "card")
        card = await stage.reads(stage.client, "Lower A")
        assert [await one.text_content() for one in await card.locator(".press button").all()] == [
            "Done (message 2)",
            "Heavier (message 2)",
            "Stop (message 2)",
            "Something hurts (message 2)",
        ]
        done = card.get_by_role("button", name="Done")
        await done.click()
        await expect(stage.client.locator(".toast")).to_have_text("Kept: done")
        card = await stage.reads(stage.client, "Set 1 of 3")
        await expect(card.get_by_text("edited")).to_be_visible()
        await expect(card.locator(".press button")).to_have_count(2)
        await expect(done).to_be_focused()
        stage.bot.holds_answers = True
        await done.click()
        await expect(done).to_have_attribute("aria-busy", "true")
        await done.click()
        query = list(stage.mina.bot.queries)[-1]
        await stage.bot.call("answerCallbackQuery", callback_query_id=query)
        await expect(done).not_to_have_attribute("aria-busy", "true")
        assert len(stage.mina.bot.queries) == 2


async def test_an_answer_that_asks_for_attention(browser: Browser) -> None:
    """answerCallbackQuery with show_alert: a dialog that must be closed."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "card")
        card = await stage.reads(stage.client, "Lower A")
        await card.get_by_role("button", name="Something hurts").click()
        dialog = stage.page.get_by_role("dialog", name="Chalk")
        await expect(dialog).to_contain_text("Stop for now.")
        await dialog.get_by_role("button", name="OK").click()
        await expect(dialog).to_be_hidden()


async def test_formatting(browser: Browser) -> None:
    """Bold, code, hidden words, folded quotes; a time in the person's own zone."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "card")
        card = await stage.reads(stage.client, "Lower A")
        await expect(card.locator("b").first).to_have_text("Lower A")
        await expect(card.locator("code")).to_have_text("brace")
        warm_up = card.locator("details")
        await expect(warm_up.get_by_text("3 × 90 kg")).to_be_hidden()
        await warm_up.locator("summary").click()
        await expect(warm_up.get_by_text("3 × 90 kg")).to_be_visible()
        # 1803888000 is 2027-03-01 08:00 UTC, which is 03:00 in New York.
        await expect(card.locator(".words time")).to_have_text("03:00")
        await expect(card.locator(".gutter time")).to_have_text("03:00")


async def test_editing_and_answering(browser: Browser) -> None:
    """An own message is changed in the box below; an answer shows what it answers, and leads there."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "bench 80x5")
        await stage.reads(stage.client, "You said")
        own, answer = stage.client.locator("#left-1"), stage.client.locator("#left-2")
        await own.hover()
        await own.get_by_role("button", name="Edit").click()
        box = stage.client.get_by_role("textbox")
        await expect(box).to_have_value("bench 80x5")
        await expect(stage.client.get_by_text("Changing: bench 80x5")).to_be_visible()
        await box.fill("bench 82.5x5")
        await box.press("Enter")
        await stage.reads(stage.client, "Changed to: bench 82.5x5")
        await expect(own).to_contain_text("edited 03:00")
        assert await answer.get_by_role("button", name="Edit").count() == 0
        await answer.hover()
        await answer.get_by_role("button", name="Reply to").click()
        await expect(box).to_be_focused()
        await stage.write(stage.client, "why?")
        await stage.reads(stage.client, "(to: You said")
        first = stage.client.locator(".entry", has_text="why?").first
        await first.get_by_role("button", name="In answer to Chalk: You said").click()
        await expect(answer).to_be_focused()


async def test_an_edit_or_answer_can_be_left(browser: Browser) -> None:
    """Cancel, or Escape, goes back to a plain message."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "x")
        await stage.reads(stage.client, "You said")
        own = stage.client.locator(".entry").first
        box = stage.client.get_by_role("textbox")
        for leave in ("button", "Escape"):
            await own.hover()
            await own.get_by_role("button", name="Edit").click()
            if leave == "button":
                await stage.client.get_by_role("button", name="Cancel").click()
            else:
                await box.press("Escape")
            await expect(stage.client.locator(".strip")).to_be_hidden()
            await expect(box).to_have_value("")
            await expect(box).to_be_focused()


async def test_pictures_and_files_down(browser: Browser) -> None:
    """A picture is shown with its caption below; a file has its name and size, and comes down as it went up."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "picture")
        entry = await stage.reads(stage.client, "Squat: 8 weeks")
        picture = entry.get_by_role("img", name="Picture from Chalk")
        await expect(picture).to_be_visible()
        assert await picture.evaluate("one => one.decode().then(() => [one.naturalWidth, one.naturalHeight])") == [
            640,
            360,
        ]
        await stage.write(stage.client, "file")
        entry = await stage.reads(stage.client, "plan.csv (13 bytes)")
        async with stage.page.expect_download() as coming:
            await entry.get_by_role("link", name="plan.csv").click()
        download = await coming.value
        assert download.suggested_filename == "plan.csv"
        assert Path(await download.path()).read_bytes() == b"week;day\n1;1\n"


async def test_pictures_and_files_up(browser: Browser, tmp_path: Path) -> None:
    """A chosen file waits above the box, takes the words as caption, can be taken back."""
    (tmp_path / "up.csv").write_bytes(b"a;b\n")
    (tmp_path / "lift.png").write_bytes(png(90, 60))
    async with open_stage(browser) as stage:
        chooser = stage.client.locator('input[type="file"]')
        await chooser.set_input_files(tmp_path / "up.csv")
        await expect(stage.client.get_by_text("up.csv (4 bytes)")).to_be_visible()
        await stage.write(stage.client, "my plan")
        await stage.reads(stage.client, "Got up.csv, 4 bytes. my plan")
        await chooser.set_input_files(tmp_path / "lift.png")
        await stage.client.get_by_role("button", name="Send").click()
        await stage.reads(stage.client, "Got a picture, 90 wide")
        await chooser.set_input_files(tmp_path / "lift.png")
        await stage.client.get_by_label("Send as").select_option("as a file")
        await stage.client.get_by_role("button", name="Send").click()
        await stage.reads(stage.client, "Got lift.png")
        await chooser.set_input_files(tmp_path / "up.csv")
        await stage.client.get_by_role("button", name="Cancel").click()
        await stage.write(stage.client, "no file")
        await stage.reads(stage.client, 'You said: "no file"')


async def test_reactions_in_words(browser: Browser) -> None:
    """A reaction is told in words beside its sign."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "react")
        own = await stage.reads(stage.client, "react")
        await expect(own.get_by_text("Chalk reacted: thumbs up")).to_be_visible()


async def test_a_reply_keyboard(browser: Browser) -> None:
    """Its buttons stand above the box and say their label; its hint is in the box."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "keys")
        keys = stage.client.get_by_role("group", name="Client's reply buttons")
        await expect(keys.get_by_role("button")).to_have_text(["5", "6", "other"])
        await expect(stage.client.get_by_role("textbox")).to_have_attribute("placeholder", "how many?")
        await keys.get_by_role("button", name="6").click()
        await stage.reads(stage.client, 'You said: "6"')
        await expect(stage.coach.get_by_role("group", name="Coach's reply buttons")).to_be_hidden()


async def test_the_clock(browser: Browser) -> None:
    """The time in UTC and each person's own; next due, an hour on, tomorrow, pause and on."""
    async with open_stage(browser) as stage:
        clock = stage.page.get_by_role("region", name="Clock")
        face = clock.locator("time")
        await expect(face).to_have_text("Mon, 1 Mar 2027, 08:00 UTC")
        await expect(stage.client.locator(".local")).to_have_text(
            "Local time Mon, 1 Mar 2027, 03:00 (America/New_York)"
        )
        await expect(stage.coach.locator(".local")).to_have_text("Local time Mon, 1 Mar 2027, 09:00 (Europe/Madrid)")
        await clock.get_by_role("button", name="Next due (08:35)").click()
        await expect(face).to_have_text("Mon, 1 Mar 2027, 08:35 UTC")
        nothing = clock.get_by_role("button", name="Next due (none)")
        await expect(nothing).to_have_attribute("aria-disabled", "true")
        await nothing.click(force=True)
        await clock.get_by_role("button", name="+1 h").click()
        await expect(face).to_have_text("Mon, 1 Mar 2027, 09:35 UTC")
        await clock.get_by_role("button", name="Tomorrow").click()
        await expect(face).to_have_text("Tue, 2 Mar 2027, 06:00 UTC")
        await expect(clock.get_by_text("paused")).to_be_visible()
        await clock.get_by_role("button", name="Go on").click()
        await expect(clock.get_by_text("running")).to_be_visible()
        await clock.get_by_role("button", name="Pause").click()
        await expect(clock.get_by_text("paused")).to_be_visible()
        await stage.page.get_by_label("Client is").select_option("Olek")
        await expect(stage.client.locator(".local")).to_have_text("Time zone not known: times in UTC")
        await stage.write(stage.client, "on a new day")
        await expect(stage.client.get_by_text("Tuesday, 2 March 2027")).to_be_visible()


async def test_an_invitation_is_opened_by_someone_new(browser: Browser) -> None:
    """A link that starts the bot opens here, as a person of one's choice; that person's chat is then on the left."""
    async with open_stage(browser) as stage:
        await stage.write(stage.coach, "invite")
        entry = await stage.reads(stage.coach, "Your link")
        await entry.get_by_role("link").click()
        dialog = stage.page.get_by_role("dialog", name="Open the link")
        await dialog.get_by_label("First name").fill("Ines")
        await dialog.get_by_label("Where they live").select_option("Asia/Tokyo")
        await dialog.get_by_role("button", name="Use the link").click()
        await stage.reads(stage.client, "Welcome, Ines c_abc")
        await expect(stage.client.get_by_label("Client is")).to_have_value("9")
        await expect(stage.client.locator(".local")).to_contain_text("17:00 (Asia/Tokyo)")


async def test_share_and_copy(browser: Browser) -> None:
    """A share button shows what would be shared, to be used here by someone known; copy fills the clipboard."""
    async with open_stage(browser, permissions=["clipboard-read", "clipboard-write"]) as stage:
        await stage.write(stage.coach, "invite")
        entry = await stage.reads(stage.coach, "Your link")
        await entry.get_by_role("button", name="Copy").click()
        await expect(stage.coach.locator(".toast")).to_have_text(f"Copied: {LINK}")
        assert await stage.page.evaluate("navigator.clipboard.readText()") == LINK
        await entry.get_by_role("button", name="Share").click()
        shared = stage.page.get_by_role("dialog", name="Share")
        await expect(shared).to_contain_text(f"Come along\n{LINK}", use_inner_text=True)
        await shared.get_by_role("button", name="Use the link here").click()
        opened = stage.page.get_by_role("dialog", name="Open the link")
        await opened.get_by_label("Use this link as").select_option("Olek")
        await expect(opened.get_by_label("First name")).to_be_hidden()
        await opened.get_by_role("button", name="Use the link").click()
        await stage.reads(stage.client, "Welcome, Olek c_abc")
        await entry.get_by_role("link").click()
        await opened.get_by_role("button", name="Cancel").click()
        assert len(stage.standin.seat(OLEK).messages()) == 2


async def test_a_new_person(browser: Browser) -> None:
    """A stranger is added, chosen, and can write; the choice outlives a reload."""
    async with open_stage(browser) as stage:
        await stage.client.get_by_role("button", name="New person").click()
        dialog = stage.page.get_by_role("dialog", name="New person")
        await dialog.get_by_label("First name").fill("Zoe")
        await dialog.get_by_label("First name").press("Enter")
        await expect(stage.client.get_by_label("Client is")).to_have_value("9")
        await expect(stage.client.get_by_text("Nothing said yet")).to_be_visible()
        await stage.write(stage.client, "who are you?")
        await stage.reads(stage.client, "You said")
        await stage.page.reload()
        await stage.page.wait_for_selector("body[data-ready]")
        await stage.reads(stage.client, "who are you?")
        await expect(stage.client.get_by_label("Client is")).to_have_value("9")


async def test_the_rest_of_what_people_do(browser: Browser) -> None:
    """Voice note, sticker, forward, commands, blocking and unblocking."""
    async with open_stage(browser) as stage:
        await stage.bot.call("setMyCommands", commands=[{"command": "card", "description": "Today's session"}])
        more = stage.client.locator(".more summary")

        async def choose(name: str) -> None:
            await more.click()
            await stage.client.get_by_role("button", name=name).click()

        await choose("/card Today's session")
        await stage.reads(stage.client, "/card")
        await choose("Send a voice note")
        await stage.reads(stage.client, "Got a voice")
        await choose("Send a sticker")
        await stage.reads(stage.client, "Got a sticker")
        await stage.client.get_by_role("textbox").fill("100x5")
        await choose("Send the text as a forward")
        await expect(await stage.reads(stage.client, "forwarded")).to_contain_text("100x5")
        await choose("Block the bot")
        await expect(stage.client.locator(".local")).to_contain_text("has blocked the bot")
        await stage.write(stage.client, "x")
        await expect(stage.client.locator(".toast")).to_have_text("the bot is blocked; unblock it first")
        await choose("Unblock the bot")
        await expect(stage.client.locator(".local")).not_to_contain_text("blocked")
        await stage.write(stage.client, "back again")
        await stage.reads(stage.client, 'You said: "back again"')


async def test_deleted_messages_go(browser: Browser) -> None:
    """What the bot deletes is gone from the sheet; an answer to it says so after a reload."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "x")
        await stage.reads(stage.client, "You said")
        stage.mina.say("about that", reply_to=2)
        await stage.reads(stage.client, "In answer to Chalk")
        await stage.bot.call("deleteMessage", chat_id=MINA, message_id=2)
        await expect(stage.client.locator("#left-2")).to_have_count(0)
        await stage.page.reload()
        await expect(stage.client.get_by_text("In answer to a message that has gone")).to_be_visible()


async def test_a_lost_connection_is_told_and_mended(browser: Browser) -> None:
    """The page says that it lost the stand-in, tries again, and shows what came meanwhile."""
    async with open_stage(browser) as stage:
        await stage.page.context.set_offline(True)
        stage.mina.say("said meanwhile")
        await expect(stage.page.get_by_text("connection to the stand-in was lost")).to_be_visible(timeout=30_000)
        await stage.page.context.set_offline(False)
        await stage.reads(stage.client, "said meanwhile")
        await expect(stage.page.locator("#trouble")).to_be_empty()


async def test_nothing_is_fetched_from_elsewhere(browser: Browser) -> None:
    """Every request goes to the stand-in; the page's policy allows no other."""
    async with open_stage(browser) as stage:
        await stage.write(stage.client, "picture")
        await stage.reads(stage.client, "8 weeks")
        assert stage.fetched
        assert all(url.startswith(stage.standin.url) for url in stage.fetched)
        reply = await stage.page.request.get(stage.standin.url)
        assert "default-src 'self'" in reply.headers["content-security-policy"]
        for path in ("/sheet/../wing.py", "/sheet/none.js", "/sheet/%2e%2e%2fwing.py"):
            assert (await stage.page.request.get(stage.standin.url + path)).status == 404
        assert (await stage.page.request.post(f"{stage.standin.url}/clock", data={"step": "yesterday"})).status == 400


async def test_who_is_where_at_first(browser: Browser) -> None:
    """The coach is on the right, the first client on the left; everyone can be chosen, coaches are marked."""
    async with open_stage(browser) as stage:
        await expect(stage.client.get_by_label("Client is")).to_have_value(str(MINA))
        await expect(stage.coach.get_by_label("Coach is")).to_have_value(str(ROSA))
        options = stage.coach.get_by_label("Coach is").locator("option")
        await expect(options).to_have_text(["Rosa (coach)", "Mina", "Olek"])
