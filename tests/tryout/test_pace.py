"""Too fast is 429 with the seconds to wait. Source: the Bot FAQ, "My bot is hitting limits" (1 a second in a chat with
short bursts, 30 a second over all), and "ResponseParameters". How long a burst may be is the stand-in's own choice."""

from datetime import timedelta

import pytest
from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup
from telegram.error import RetryAfter

from bot.tryout.standin import Limits, PaceLimits, Seat, StandIn
from tests.tryout.conftest import MINA, HandSeconds


@pytest.fixture
def limits() -> Limits:
    return Limits(pace=PaceLimits(chat_burst=3))


async def test_a_burst_then_one_a_second(bot: Bot, mina: Seat, seconds: HandSeconds) -> None:
    """Three at once, then one a second; who comes too early waits, and waits on while he keeps asking."""
    for number in range(3):
        await bot.send_message(MINA, str(number))
    with pytest.raises(RetryAfter) as wait:
        await bot.send_message(MINA, "too fast")
    assert wait.value.retry_after == timedelta(seconds=1)
    seconds.at_s += 0.9
    with pytest.raises(RetryAfter):
        await bot.send_message(MINA, "still too fast")
    seconds.at_s += 0.2
    sent = await bot.send_message(MINA, "in time")
    assert [message.words.text for message in mina.messages() if message.by_bot] == ["0", "1", "2", "in time"]
    with pytest.raises(RetryAfter):
        await bot.edit_message_text("edits count", MINA, sent.message_id)


async def test_thirty_a_second_over_all(bot: Bot, standin: StandIn, seconds: HandSeconds) -> None:
    """Thirty chats at once, the thirty-first is refused; a second later there is room again."""
    for number in range(100, 131):
        standin.add_person(number, f"P{number}")
        standin.seat(number).start()
    for number in range(100, 130):
        await bot.send_message(number, "x")
    with pytest.raises(RetryAfter):
        await bot.send_message(130, "x")
    seconds.at_s += 1
    await bot.send_message(130, "x")


async def test_answers_to_taps_and_what_is_refused_do_not_count(bot: Bot, mina: Seat) -> None:
    """Only messages and edits that would go out count."""
    markup = InlineKeyboardMarkup([[InlineKeyboardButton("a", callback_data="1")]])
    sent = await bot.send_message(MINA, "x", reply_markup=markup)
    for _ in range(10):
        await bot.answer_callback_query(mina.tap(sent.message_id, "a"))
        await bot.send_chat_action(MINA, "typing")
    await bot.send_message(MINA, "y")
    await bot.send_message(MINA, "z")


def test_the_pace_can_be_switched_off() -> None:
    """For a bench, or a week played in a minute."""
    assert Limits(pace=None).pace is None
