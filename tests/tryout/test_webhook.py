"""Updates posted to an address. Source: "setWebhook", "getWebhookInfo", "Making requests when getting updates"."""

import asyncio
from collections.abc import AsyncIterator
from dataclasses import dataclass, field

import pytest
from aiohttp import web
from telegram import Bot
from telegram.error import BadRequest, Conflict

from bot.tryout.standin import Seat
from bot.tryout.standin.poster import SECRET_HEADER
from tests.tryout.conftest import MINA
from tests.tryout.test_updates import until


@dataclass
class Posts:
    """What was posted, and what is answered: status codes used up one by one, then 200 with `body`."""

    url: str = ""
    statuses: list[int] = field(default_factory=list)
    body: dict[str, object] = field(default_factory=dict)
    got: list[tuple[str, dict[str, object]]] = field(default_factory=list)
    held: asyncio.Event | None = None
    most: int = 0
    open: int = 0

    async def take(self, request: web.Request) -> web.Response:
        self.open += 1
        self.most = max(self.most, self.open)
        if self.held is not None:
            await self.held.wait()
        self.open -= 1
        self.got.append((request.headers.get(SECRET_HEADER, ""), await request.json()))
        status = self.statuses.pop(0) if self.statuses else 200
        return web.json_response(self.body, status=status)


@pytest.fixture
async def posts() -> AsyncIterator[Posts]:
    taken = Posts()
    app = web.Application()
    app.router.add_post("/hook", taken.take)
    runner = web.AppRunner(app, shutdown_timeout=0.2)
    await runner.setup()
    await web.TCPSite(runner, "127.0.0.1", 0).start()
    taken.url = f"http://127.0.0.1:{runner.addresses[0][1]}/hook"
    yield taken
    await runner.cleanup()


async def test_posts_with_the_secret_and_again_until_it_is_taken(bot: Bot, mina: Seat, posts: Posts) -> None:
    """setWebhook: a POST with JSON and the secret header; repeated unless the answer is 2xx."""
    posts.statuses = [500, 302]
    await bot.set_webhook(posts.url, secret_token="s-e_cret")
    mina.say("x")
    await until(lambda: len(posts.got) == 3 and not len(mina.bot.updates))
    assert {secret for secret, _ in posts.got} == {"s-e_cret"}
    assert len({str(body) for _, body in posts.got}) == 1
    info = await bot.get_webhook_info()
    assert (info.url, info.pending_update_count, info.max_connections) == (posts.url, 0, 40)
    assert info.last_error_message == "Wrong response from the webhook: 302 Found"


async def test_never_both(bot: Bot, mina: Seat, posts: Posts) -> None:
    """ "Getting updates": getUpdates and webhooks exclude each other; setting one ends the poll under way."""
    poll = asyncio.create_task(bot.get_updates(timeout=50))
    await until(lambda: mina.bot.updates.is_polled)
    await bot.set_webhook(posts.url)
    with pytest.raises(Conflict, match="terminated by setWebhook request"):
        await poll
    with pytest.raises(Conflict, match="can't use getUpdates method while webhook is active"):
        await bot.get_updates()
    await bot.delete_webhook()
    mina.say("x")
    assert len(await bot.get_updates()) == 1
    assert posts.got == []


async def test_what_waits_is_delivered_or_dropped(bot: Bot, mina: Seat, posts: Posts) -> None:
    """setWebhook, deleteWebhook: `drop_pending_updates` forgets what waits, else it is delivered."""
    mina.say("waiting")
    await bot.set_webhook(posts.url)
    await until(lambda: len(posts.got) == 1)
    await bot.delete_webhook()
    mina.say("dropped")
    await bot.set_webhook(posts.url, drop_pending_updates=True)
    mina.say("kept")
    await until(lambda: len(posts.got) == 2)
    assert "kept" in str(posts.got[1])


async def test_no_more_connections_than_allowed(bot: Bot, mina: Seat, posts: Posts) -> None:
    """setWebhook: `max_connections` simultaneous posts at most."""
    posts.held = asyncio.Event()
    await bot.set_webhook(posts.url, max_connections=3)
    for number in range(10):
        mina.say(str(number))
    await until(lambda: posts.open == 3)
    posts.held.set()
    await until(lambda: len(posts.got) == 10)
    assert posts.most == 3


async def test_a_call_in_the_answer(bot: Bot, mina: Seat, posts: Posts) -> None:
    """ "Making requests when getting updates": a method named in the answer is carried out."""
    posts.body = {"method": "sendMessage", "chat_id": MINA, "text": "from the hook"}
    await bot.set_webhook(posts.url)
    mina.say("x")
    assert (await mina.wait_for("from the hook")).by_bot


@pytest.mark.parametrize(
    ("url", "secret", "said"),
    [
        ("http://example.org/hook", None, "An HTTPS URL must be provided for webhook"),
        ("https://example.org:5000/hook", None, "only on ports 80, 88, 443 or 8443"),
        ("https://example.org/hook", "no spaces", "secret token contains unallowed characters"),
    ],
)
async def test_addresses_it_refuses(bot: Bot, url: str, secret: str | None, said: str) -> None:
    """setWebhook: HTTPS on four ports; secret of 1 to 256 characters A-Z, a-z, 0-9, _ and -. (Loopback is let off.)"""
    with pytest.raises(BadRequest, match=f"(?i){said}"):
        await bot.set_webhook(url, secret_token=secret)
