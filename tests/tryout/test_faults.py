"""Trouble on request, as the client library sees it, and what is written down of it.

Which exception stands for which trouble: `telegram.error` of the client library, and `__cause__` of its HTTP library.
"""

from collections.abc import Callable
from datetime import timedelta

import aiohttp
import httpx
import pytest
from telegram import Bot
from telegram.error import NetworkError, RetryAfter, TimedOut

from bot.tryout.standin import (
    Call,
    CutAfter,
    CutBefore,
    Delay,
    Fault,
    Faults,
    Seat,
    ServerError,
    SlowAnswer,
    StandIn,
    TooMany,
)
from tests.tryout.conftest import MINA, OLEK


def written(seat: Seat) -> list[str]:
    return [message.words.text for message in seat.messages() if message.by_bot]


async def test_cut_before(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """The connection breaks and nothing was sent; the client can't tell."""
    standin.faults.add(Fault(CutBefore(), method="sendMessage", times=1))
    with pytest.raises(NetworkError) as broken:
        await bot.send_message(MINA, "x")
    assert isinstance(broken.value.__cause__, httpx.RemoteProtocolError | httpx.ReadError)
    assert written(mina) == []
    (call,) = standin.record.of("sendMessage")
    assert (call.took_effect, call.fault, call.chat_id) == (False, "cut before", MINA)
    await bot.send_message(MINA, "x")
    assert written(mina) == ["x"]


async def test_cut_after(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """The connection breaks after the message went out: the same error, another truth."""
    standin.faults.add(Fault(CutAfter(), times=1))
    with pytest.raises(NetworkError) as broken:
        await bot.send_message(MINA, "x")
    assert isinstance(broken.value.__cause__, httpx.RemoteProtocolError | httpx.ReadError)
    assert written(mina) == ["x"]
    assert standin.record.of("sendMessage")[0].took_effect


async def test_an_answer_slower_than_the_client_waits(
    new_bot: Callable[..., Bot], mina: Seat, standin: StandIn
) -> None:
    """TimedOut from a read timeout: the message went out."""
    standin.faults.add(Fault(SlowAnswer(), method="sendMessage", times=1))
    with pytest.raises(TimedOut) as late:
        await new_bot(read_timeout=0.05).send_message(MINA, "x")
    assert isinstance(late.value.__cause__, httpx.ReadTimeout)
    assert written(mina) == ["x"]


async def test_a_slow_answer_that_still_comes(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """A delay before, or a slow answer after, of so many seconds only costs time."""
    standin.faults.add(Fault(Delay(0.01), times=1), Fault(SlowAnswer(0.01), times=1))
    await bot.send_message(MINA, "x")
    await bot.send_message(MINA, "y")
    assert written(mina) == ["x", "y"]
    assert [call.fault for call in standin.record.calls] == ["delay", "slow answer"]


async def test_too_many(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """Error 429: "ResponseParameters.retry_after" becomes RetryAfter with the seconds."""
    standin.faults.add(Fault(TooMany(7), chat_id=MINA, times=1))
    standin.seat(OLEK).start()
    await bot.send_message(OLEK, "not his")
    with pytest.raises(RetryAfter) as wait:
        await bot.send_message(MINA, "x")
    assert wait.value.retry_after == timedelta(seconds=7)
    assert written(mina) == []


@pytest.mark.parametrize(
    ("trouble", "sent"),
    [(ServerError(500), []), (ServerError(502), []), (ServerError(500, after=True), ["x"])],
)
async def test_server_errors(bot: Bot, mina: Seat, standin: StandIn, trouble: ServerError, sent: list[str]) -> None:
    """Errors 500 and 502 are NetworkError without a cause; whether the call took effect is not said."""
    standin.faults.add(Fault(trouble, times=1))
    with pytest.raises(NetworkError) as broken:
        await bot.send_message(MINA, "x")
    assert broken.value.__cause__ is None
    assert written(mina) == sent


async def test_trouble_with_polls_must_be_asked_for(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """A fault without a method spares getUpdates; one that names it does not."""
    standin.faults.add(Fault(CutBefore()))
    mina.say("x")
    assert len(await bot.get_updates()) == 1
    standin.faults.clear()
    standin.faults.add(Fault(CutAfter(), method="getUpdates", times=1))
    with pytest.raises(NetworkError):
        await bot.get_updates()
    assert len(await bot.get_updates()) == 1


def test_chance_comes_from_the_seed() -> None:
    """The same seed gives the same trouble; about as much as was asked for."""

    def struck(seed: int) -> list[bool]:
        faults = Faults(seed)
        faults.add(Fault(CutBefore(), chance=0.25))
        return [faults.for_call("sendMessage", 1) is not None for _ in range(2000)]

    assert struck(1) == struck(1) != struck(2)
    assert 400 < sum(struck(1)) < 600


async def test_trouble_over_http(standin: StandIn, bot: Bot, mina: Seat) -> None:
    """Faults can be ordered from another process, and taken back."""
    async with aiohttp.ClientSession() as http:
        order = [{"trouble": "too_many", "retry_after_s": 3, "method": "sendMessage", "times": 1}]
        async with http.post(f"{standin.url}/control/faults", json=order) as reply:
            assert await reply.json() == {"in_force": 1}
        with pytest.raises(RetryAfter):
            await bot.send_message(mina.person.id, "x")
        async with http.post(f"{standin.url}/control/faults", json={"trouble": "gremlins"}) as reply:
            assert reply.status == 400
        for name in ("delay", "slow_answer", "server_error", "cut_before", "cut_after", "twice", "shuffled"):
            async with http.post(f"{standin.url}/control/faults", json={"trouble": name}) as reply:
                assert reply.status == 200
        async with http.delete(f"{standin.url}/control/faults") as reply:
            assert await reply.json() == {"in_force": 0}
        async with http.get(f"{standin.url}/control/calls") as reply:
            (call,) = await reply.json()
    assert (call["method"], call["took_effect"], call["refusal"]["parameters"]) == (
        "sendMessage",
        False,
        {"retry_after": 3},
    )


async def test_calls_are_followed_as_they_come(bot: Bot, mina: Seat, standin: StandIn) -> None:
    """Every call is written down with its parameters, result and time; polls only when asked for."""
    seen: list[Call] = []
    with standin.record.following(seen.append):
        await bot.send_message(MINA, "x")
        await bot.send_document(MINA, b"abc", filename="a.txt")
        await bot.get_updates()
    await bot.send_message(MINA, "y")
    assert [call.method for call in seen] == ["sendMessage", "sendDocument"]
    assert seen[0].params["text"] == "x"
    assert "<file a.txt, 3 bytes>" in str(seen[1].params)
    assert isinstance(seen[0].result, dict)
    assert seen[0].result["message_id"] == 2
    assert mina.last().words.text == "y"
