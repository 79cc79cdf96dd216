"""The webhook: the platform brings updates to us. Kept, then answered with 200; anything else brings it again."""

import hmac
import json

import structlog
from aiohttp import web

from bot.gateway.poller import LONGEST_RAW, Receive, arrived_of
from bot.gateway.reader import update_id_of
from bot.runtime.clock import Clock
from bot.runtime.health import Pulse

log = structlog.get_logger("webhook")

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"


def webhook_app(*, path: str, secret: str, receive: Receive, clock: Clock, pulse: Pulse) -> web.Application:
    """The web application. Only a request that carries the secret is read."""
    app = web.Application(client_max_size=LONGEST_RAW)
    expected = secret.encode()

    async def post(request: web.Request) -> web.Response:
        shown = request.headers.get(SECRET_HEADER, "").encode("utf-8", "surrogateescape")
        if not hmac.compare_digest(shown, expected):
            return web.Response(status=403)
        body = await request.read()  # 413 where it is beyond the limit
        try:
            update = json.loads(body)
        except (ValueError, RecursionError):
            return web.Response(status=400)
        if update_id_of(update) is None:
            return web.Response(status=400)
        arrived = arrived_of(update)
        if arrived is not None:
            try:
                await receive((arrived,))
            except Exception as error:  # not kept: the platform brings it again
                log.error("not kept", error=type(error).__name__)
                return web.Response(status=503)
        pulse.polled(clock.now(), 1)
        return web.Response(status=200)

    app.router.add_post(path, post)
    return app
