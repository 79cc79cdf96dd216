"""What the bot itself serves: the webhook's application, and a health endpoint for a probe on loopback."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from aiohttp import web

from bot.faults import SettingsFault
from bot.runtime.health import beat_of, show_beat
from bot.runtime.loops import Service


def health_app(service: Service) -> web.Application:
    """`GET /health`: the sign of life as JSON; 200 while all is well, else 503."""

    async def get(_: web.Request) -> web.Response:
        now = service.clock.now()
        beat = beat_of(service.pulse, sent=service.outbox.sent, now=now)
        status = 200 if beat.is_well(now) else 503
        return web.Response(text=show_beat(beat), content_type="application/json", status=status)

    app = web.Application()
    app.router.add_get("/health", get)
    return app


@asynccontextmanager
async def serving(app: web.Application, *, host: str, port: int) -> AsyncIterator[int]:
    """A web application while the block runs; gives its port (0 takes a free one). `SettingsFault`: it is taken."""
    runner = web.AppRunner(app, access_log=None)
    await runner.setup()
    try:
        try:
            await web.TCPSite(runner, host, port).start()
        except OSError as error:
            raise SettingsFault(f"Port {port} on {host} can't be used: {error.strerror}.") from error
        yield int(runner.addresses[0][1])
    finally:
        await runner.cleanup()
