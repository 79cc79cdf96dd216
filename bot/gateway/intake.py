"""The two ways in, as the runtime's `Intake`: long polling, or a webhook. What comes is kept, then confirmed."""

import asyncio
from dataclasses import dataclass

import structlog
from telegram.error import InvalidToken, TelegramError

from bot.faults import ChatFault
from bot.gateway.library import RawBot
from bot.gateway.outcomes import REFUSED_TOKEN
from bot.gateway.poller import Poller
from bot.gateway.reader import ASKED_FOR
from bot.gateway.serving import serving
from bot.gateway.webhook import webhook_app
from bot.runtime.loops import Intake, Service
from bot.runtime.waiting import wait_for

log = structlog.get_logger("intake")

WEBHOOK_CONNECTIONS = 20


@dataclass(frozen=True, slots=True)
class Hook:
    """Where the platform calls (`url`, with its path), what it shows (`secret`), and where that is served."""

    url: str
    path: str
    secret: str
    host: str
    port: int


def polling(bot: RawBot, *, timeout_s: int) -> Intake:
    """Intake by long polling. A webhook set before is taken away; what waits at the platform stays."""

    async def intake(service: Service, stop: asyncio.Event) -> None:
        await _until_done(bot, stop, hook=None)
        poller = Poller(bot, receive=service.receive, clock=service.clock, pulse=service.pulse, timeout_s=timeout_s)
        await poller.run(stop)

    return intake


def hooked(bot: RawBot, hook: Hook) -> Intake:
    """Intake by webhook."""

    async def intake(service: Service, stop: asyncio.Event) -> None:
        app = webhook_app(
            path=hook.path, secret=hook.secret, receive=service.receive, clock=service.clock, pulse=service.pulse
        )
        async with serving(app, host=hook.host, port=hook.port):
            await _until_done(bot, stop, hook=hook)
            await stop.wait()

    return intake


async def _until_done(bot: RawBot, stop: asyncio.Event, *, hook: Hook | None) -> None:
    """Tells the platform which way updates come, until it has heard. `ChatFault`: the token is void."""
    wait_s = 1.0
    while not stop.is_set():
        try:
            if hook is None:
                await bot.delete_webhook(drop_pending_updates=False)
            else:
                await bot.set_webhook(
                    hook.url,
                    secret_token=hook.secret,
                    allowed_updates=list(ASKED_FOR),
                    max_connections=WEBHOOK_CONNECTIONS,
                    drop_pending_updates=False,
                )
        except InvalidToken as error:
            raise ChatFault(REFUSED_TOKEN) from error
        except TelegramError as error:
            log.warning("the platform is not there", error=type(error).__name__, wait_s=wait_s)
            await wait_for(stop, wait_s)
            wait_s = min(30.0, wait_s * 2)
        else:
            return
