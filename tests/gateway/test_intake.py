"""Updates are kept before they are acknowledged, by polling and by webhook, whatever is among them."""

import asyncio
from collections.abc import AsyncIterator
from dataclasses import dataclass, field

import aiohttp
import pytest

from bot.faults import ChatFault, SettingsFault
from bot.gateway.library import Platform, RawBot, library_bot
from bot.gateway.poller import LONGEST_RAW, Poller
from bot.gateway.serving import serving
from bot.gateway.webhook import SECRET_HEADER, webhook_app
from bot.runtime.clock import SetClock
from bot.runtime.health import Pulse
from bot.runtime.ports import Arrived
from bot.tryout.standin import CutBefore, Fault, Seat, ServerError, Shuffled, StandIn, TooMany, Twice
from tests.gateway.conftest import TOKEN


@dataclass(slots=True)
class Kept:
    """What was received; `refusing` fails as a full disk would."""

    arrived: list[Arrived] = field(default_factory=list)
    refusing: bool = False

    async def receive(self, arrived: tuple[Arrived, ...]) -> None:
        """Keeps it."""
        if self.refusing:
            raise OSError("no space left")
        self.arrived.extend(arrived)

    @property
    def numbers(self) -> list[int]:
        """The updates' numbers."""
        return [a.update for a in self.arrived]


@pytest.fixture
def kept() -> Kept:
    return Kept()


@pytest.fixture
def pulse(clock: SetClock) -> Pulse:
    return Pulse(clock.now())


@pytest.fixture
def poller(bot: RawBot, kept: Kept, clock: SetClock, pulse: Pulse) -> Poller:
    return Poller(bot, receive=kept.receive, clock=clock, pulse=pulse, timeout_s=0)


def waiting(standin: StandIn) -> int:
    """Updates that the platform still holds."""
    return len(standin.house.bot(0).updates)


async def test_an_update_is_acknowledged_only_after_it_was_kept(
    poller: Poller, kept: Kept, mina: Seat, standin: StandIn
) -> None:
    """While it can't be kept, it stays with the platform; afterwards the next poll confirms it."""
    kept.refusing = True
    assert await poller.step() > 0
    assert await poller.step() > 0
    assert waiting(standin) == 1
    kept.refusing = False
    assert await poller.step() == 0
    assert (len(kept.arrived), waiting(standin)) == (1, 1)
    mina.say("more")
    assert await poller.step() == 0
    assert len(kept.arrived) == 2
    assert waiting(standin) == 1


async def test_a_poison_update_holds_up_nobody(poller: Poller, kept: Kept, mina: Seat, standin: StandIn) -> None:
    """Malformed, endless or of an unknown kind: what is behind it arrives."""
    updates = standin.house.bot(0).updates
    updates.push_raw({"message": {"no": "date"}})
    updates.push_raw({"message": 7})
    updates.push_raw({"message": {"text": "x" * (LONGEST_RAW + 1)}})
    mina.say("behind it")
    assert await poller.step() == 0
    assert "behind it" in kept.arrived[-1].raw
    await poller.step()
    assert waiting(standin) == 0


async def test_updates_that_come_twice_or_out_of_order_all_arrive(
    poller: Poller, kept: Kept, mina: Seat, standin: StandIn
) -> None:
    """The numbers tell them apart."""
    standin.faults.add(Fault(Twice(), times=2), Fault(Shuffled(), times=1))
    said = [mina.say(f"{n}") for n in range(5)]
    while waiting(standin) or not kept.arrived:
        await poller.step()
    assert len(set(kept.numbers)) == len(said) + 1


@pytest.mark.parametrize("trouble", [CutBefore(), ServerError(502), TooMany(2)])
async def test_a_platform_in_trouble_is_asked_again_after_a_while(
    trouble: CutBefore | ServerError | TooMany, poller: Poller, kept: Kept, mina: Seat, standin: StandIn
) -> None:
    """A pause that grows, then all is well."""
    standin.faults.add(Fault(trouble, method="getUpdates", times=2))
    first, second = await poller.step(), await poller.step()
    assert first > 0
    assert second >= first or isinstance(trouble, TooMany)
    assert mina.chat.started
    assert await poller.step() == 0
    assert len(kept.arrived) == 1


async def test_a_second_poller_is_told(poller: Poller, pulse: Pulse, standin: StandIn, mina: Seat) -> None:
    """409: noted for the operator, and waited out."""
    assert mina.chat.started
    await poller.step()
    await poller.step()
    async with library_bot(Platform(TOKEN, standin.url)) as other:
        longer = asyncio.create_task(other.raw_updates(offset=None, timeout_s=20, allowed=("message",)))
        waits = [await poller.step() for _ in range(4)]
        longer.cancel()
        await asyncio.wait({longer})
    assert max(waits) > 0 or longer.done()
    del pulse


async def test_a_void_token_ends_the_polling(standin: StandIn, kept: Kept, clock: SetClock, pulse: Pulse) -> None:
    """401."""
    async with library_bot(Platform("43:OTHER", standin.url)) as bot:
        with pytest.raises(ChatFault):
            await Poller(bot, receive=kept.receive, clock=clock, pulse=pulse).step()


async def test_stopping_acknowledges_what_was_kept(
    *, bot: RawBot, kept: Kept, clock: SetClock, pulse: Pulse, mina: Seat, standin: StandIn
) -> None:
    """A long poll is cut short; nothing kept comes again."""
    stop = asyncio.Event()

    async def receive(arrived: tuple[Arrived, ...]) -> None:
        await kept.receive(arrived)
        stop.set()

    poller = Poller(bot, receive=receive, clock=clock, pulse=pulse, timeout_s=25)
    async with asyncio.timeout(5):
        await poller.run(stop)
    assert mina.chat.started
    assert waiting(standin) == 0
    assert pulse.updates == 1


# --- webhook

SECRET = "s3cret-s3cret-s3cret"


@pytest.fixture
async def hook(kept: Kept, clock: SetClock, pulse: Pulse) -> AsyncIterator[str]:
    app = webhook_app(path="/hook", secret=SECRET, receive=kept.receive, clock=clock, pulse=pulse)
    async with serving(app, host="127.0.0.1", port=0) as port:
        yield f"http://127.0.0.1:{port}/hook"


GOOD = b'{"update_id": 4, "message": {"message_id": 1, "chat": {"id": 7, "type": "private"}, "text": "a"}}'

POSTS: tuple[tuple[str, str | None, bytes, int], ...] = (
    ("good", SECRET, GOOD, 200),
    ("no secret", None, GOOD, 403),
    ("a wrong secret", SECRET[:-1] + "x", GOOD, 403),
    ("a secret of other letters", "schlüssel", GOOD, 403),
    ("no JSON", SECRET, b"{", 400),
    ("not UTF-8", SECRET, b"\xff\xfe{", 400),
    ("no number", SECRET, b"{}", 400),
    ("nested without end", SECRET, b"[" * 100_000, 400),
    ("too long", SECRET, b" " * (LONGEST_RAW + 1), 413),
)


@pytest.mark.parametrize(("secret", "body", "status"), [r[1:] for r in POSTS], ids=[r[0] for r in POSTS])
async def test_only_the_platform_may_bring_updates(
    secret: str | None, body: bytes, status: int, hook: str, kept: Kept
) -> None:
    """The secret first, then the shape."""
    headers = {SECRET_HEADER: secret} if secret else {}
    async with aiohttp.ClientSession() as session, session.post(hook, data=body, headers=headers) as answer:
        assert answer.status == status
    assert len(kept.arrived) == (1 if status == 200 else 0)


async def test_a_webhook_answers_only_after_it_was_kept(hook: str, kept: Kept) -> None:
    """Else the platform brings it again."""
    kept.refusing = True
    async with aiohttp.ClientSession() as session:
        async with session.post(hook, data=GOOD, headers={SECRET_HEADER: SECRET}) as answer:
            assert answer.status == 503
        kept.refusing = False
        async with session.post(hook, data=GOOD, headers={SECRET_HEADER: SECRET}) as answer:
            assert answer.status == 200
        async with session.get(hook) as answer:
            assert answer.status == 405
    assert kept.numbers == [4]


async def test_the_platform_brings_updates_by_webhook(hook: str, bot: RawBot, kept: Kept, standin: StandIn) -> None:
    """End to end with the stand-in, the first delivery refused."""
    kept.refusing = True
    await bot.set_webhook(hook, secret_token=SECRET, allowed_updates=["message"])
    with standin.record.following(lambda _: None):
        mina = standin.seat(7)
        mina.start()
        kept.refusing = False
        async with asyncio.timeout(5):
            while waiting(standin):
                await asyncio.sleep(0)
    assert len(kept.arrived) == 1


async def test_a_taken_port_is_told_in_a_sentence() -> None:
    """Not with a traceback."""
    app = aiohttp.web.Application()
    async with serving(app, host="127.0.0.1", port=0) as port:
        with pytest.raises(SettingsFault, match=f"Port {port}"):
            async with serving(aiohttp.web.Application(), host="127.0.0.1", port=port):
                raise AssertionError("served twice")
