"""Updates wait, are confirmed, and go to one poller. Source: "Getting updates", "getUpdates", "Update" of the docs."""

import asyncio
from collections.abc import Callable
from datetime import timedelta

import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, Update
from telegram.error import Conflict

from bot.tryout.standin import Fault, Seat, Shuffled, StandIn, Twice
from tests.tryout.conftest import MINA, OLEK, HandClock
from tests.tryout.drawings import png


async def test_ids_count_up_and_are_confirmed_by_the_next_offset(bot: Bot, mina: Seat) -> None:
    """getUpdates: confirmed as soon as it is called with a higher offset, not before."""
    for text in ("one", "two", "three"):
        mina.say(text)
    first = await bot.get_updates()
    numbers = [update.update_id for update in first]
    assert numbers == list(range(numbers[0], numbers[0] + 3))
    assert [update.update_id for update in await bot.get_updates()] == numbers
    assert [update.update_id for update in await bot.get_updates(offset=numbers[1])] == numbers[1:]
    assert [update.update_id for update in await bot.get_updates()] == numbers[1:]
    assert await bot.get_updates(offset=numbers[2] + 1) == ()


async def test_limit_and_negative_offset(bot: Bot, mina: Seat) -> None:
    """getUpdates: up to `limit`, 1 to 100; a negative offset keeps so many from the end and forgets the rest."""
    for number in range(120):
        mina.say(f"n{number}")
    assert len(await bot.get_updates()) == 100
    assert [texts(update) for update in await bot.get_updates(limit=2)] == ["n0", "n1"]
    assert [texts(update) for update in await bot.get_updates(offset=-2)] == ["n118", "n119"]
    assert [texts(update) for update in await bot.get_updates()] == ["n118", "n119"]


def texts(update: Update) -> str:
    assert update.message is not None
    return update.message.text or ""


async def test_a_long_poll_ends_with_the_update(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """getUpdates: `timeout` seconds at most, at once when something comes."""
    poll = asyncio.create_task(bot.get_updates(timeout=50))
    await until(lambda: mina.bot.updates.is_polled)
    standin.seat(OLEK).say("hello")
    (update,) = await poll
    assert update.effective_user is not None
    assert (update.effective_user.id, update.effective_user.language_code) == (OLEK, "pl")


async def until(true: Callable[[], bool]) -> None:
    async with asyncio.timeout(5):
        while not true():
            await asyncio.sleep(0)


async def test_two_pollers(bot: Bot, new_bot: Callable[..., Bot], mina: Seat) -> None:
    """Error 409: a second poller ends the first one's call; the client library says Conflict."""
    first = asyncio.create_task(bot.get_updates(timeout=50))
    await until(lambda: mina.bot.updates.is_polled)
    second = asyncio.create_task(new_bot().get_updates(timeout=50))
    with pytest.raises(Conflict, match="terminated by other getUpdates request"):
        await first
    mina.say("x")
    assert len(await second) == 1


async def test_a_poller_that_has_gone_takes_nothing_along(new_bot: Callable[..., Bot], bot: Bot, mina: Seat) -> None:
    """getUpdates: what was never confirmed is there for the next one."""
    gone = asyncio.create_task(new_bot().get_updates(timeout=50))
    await until(lambda: mina.bot.updates.is_polled)
    gone.cancel()
    with pytest.raises(asyncio.CancelledError):
        await gone
    mina.say("x")
    assert len(await bot.get_updates()) == 1


async def test_a_day_at_most(bot: Bot, mina: Seat, clock: HandClock) -> None:
    """ "Getting updates": not kept longer than 24 hours."""
    mina.say("early")
    clock.add(timedelta(hours=12))
    mina.say("late")
    clock.add(timedelta(hours=12, seconds=1))
    assert [texts(update) for update in await bot.get_updates()] == ["late"]


async def test_a_new_numbering_after_an_idle_week(bot: Bot, mina: Seat, clock: HandClock) -> None:
    """ "Update": after a week without any, the next id is random. An offset of the old numbering hides nothing."""
    mina.say("before")
    (before,) = await bot.get_updates()
    clock.add(timedelta(days=7))
    mina.say("after")
    (after,) = await bot.get_updates(offset=before.update_id + 1)
    assert after.update_id != before.update_id + 1
    assert texts(after) == "after"


async def test_only_the_kinds_asked_for(bot: Bot, mina: Seat) -> None:
    """getUpdates: `allowed_updates` holds for updates created from then on, and until it is changed."""
    spoken = mina.say("x")
    await bot.get_updates(allowed_updates=["message"])
    mina.edit(spoken, "y")
    mina.say("z")
    assert [texts(update) for update in await bot.get_updates()] == ["x", "z"]
    await bot.get_updates(allowed_updates=[])
    mina.edit(spoken, "w")
    assert len(await bot.get_updates()) == 3


async def test_what_people_do(bot: Bot, mina: Seat) -> None:
    """ "Message", "CallbackQuery", "ChatMemberUpdated": each act in the shape the client library reads."""
    spoken = mina.say("squat 100x5", reply_to=mina.messages()[0].id)
    mina.edit(spoken, "squat 102.5x5")
    mina.send("document", b"a;b\n", name="plan.csv", mime="text/csv", caption="my plan")
    mina.send("photo", png(40, 30))
    mina.send("voice", b"OggS", mime="audio/ogg", seconds=3)
    mina.send("video", b"....", name="lift.mp4", mime="video/mp4", seconds=9)
    mina.sticker("💪")
    mina.forward("100x5", sender_name="Somebody")
    mina.block()
    mina.unblock()
    said, edited, document, photo, voice, video, sticker, forward, blocked, unblocked = await bot.get_updates()
    assert said.message is not None
    assert said.message.reply_to_message is not None
    assert (said.message.message_id, said.message.reply_to_message.text) == (spoken, "/start")
    assert edited.edited_message is not None
    assert (edited.edited_message.message_id, edited.edited_message.text) == (spoken, "squat 102.5x5")
    assert edited.edited_message.edit_date is not None
    assert document.message is not None
    assert document.message.document is not None
    assert (document.message.document.file_name, document.message.caption) == ("plan.csv", "my plan")
    assert photo.message is not None
    assert (photo.message.photo[-1].width, photo.message.photo[-1].height) == (40, 30)
    assert voice.message is not None
    assert voice.message.voice is not None
    assert video.message is not None
    assert video.message.video is not None
    assert sticker.message is not None
    assert sticker.message.sticker is not None
    assert sticker.message.sticker.emoji == "💪"
    assert forward.message is not None
    assert forward.message.forward_origin is not None
    assert [one.my_chat_member.new_chat_member.status for one in (blocked, unblocked) if one.my_chat_member] == [
        "kicked",
        "member",
    ]


async def test_a_tap_on_what_has_gone(bot: Bot, mina: Seat) -> None:
    """ "InaccessibleMessage": a tap on a deleted message names it with date 0."""
    markup = InlineKeyboardMarkup([[InlineKeyboardButton("Done", callback_data="d")]])
    sent = await bot.send_message(MINA, "x", reply_markup=markup)
    await bot.delete_message(MINA, sent.message_id)
    mina.tap_data(sent.message_id, "d")
    (update,) = await bot.get_updates()
    assert update.callback_query is not None
    assert update.callback_query.message is not None
    assert not update.callback_query.message.is_accessible


async def test_an_album_is_several_messages(bot: Bot, mina: Seat) -> None:
    """ "Message.media_group_id": one message a picture, the same group."""
    for grey in (1, 2):
        mina.send("photo", png(4, 4, grey=grey), album="A1")
    updates = await bot.get_updates()
    assert {update.message.media_group_id for update in updates if update.message} == {"A1"}
    assert len(updates) == 2


async def test_updates_twice(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """ "Update.update_id": repeated updates can be told by their id. The repeat comes after the confirmation."""
    standin.faults.add(Fault(Twice(), times=1))
    mina.say("x")
    mina.say("y")
    first = [update.update_id for update in await bot.get_updates()]
    again = [update.update_id for update in await bot.get_updates(offset=first[-1] + 1)]
    assert again == first[:1]
    assert await bot.get_updates(offset=first[-1] + 1) == ()


async def test_updates_out_of_order(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """ "Update.update_id": the sequence can be restored if updates get out of order."""
    standin.faults.add(Fault(Shuffled(), times=1))
    for number in range(6):
        mina.say(str(number))
    mixed = [update.update_id for update in await bot.get_updates()]
    assert mixed != sorted(mixed)
    assert [update.update_id for update in await bot.get_updates()] == sorted(mixed)


async def test_any_update_can_be_pushed(mina: Seat) -> None:
    """A hostile update goes to the bot as it is."""
    number = mina.bot.updates.push_raw({"message": {"text": ["not", "text"]}, "odd": None})
    (body,) = await mina.bot.updates.poll(0, 100, 0)
    assert body == {"update_id": number, "message": {"text": ["not", "text"]}, "odd": None}


async def test_several_bots(standin: StandIn, new_bot: Callable[..., Bot], mina: Seat) -> None:
    """Each bot has its own chats, updates and files."""
    other = standin.add_bot("43:SECOND", username="other_bot")
    standin.seat(MINA, other.id).say("to the other")
    mina.say("to the first")
    (update,) = await new_bot("43:SECOND").get_updates()
    assert texts(update) == "to the other"
    assert [message.words.text for message in mina.messages()] == ["/start", "to the first"]
