"""`chalkpost run`: the bot, until it is told to stop."""

import asyncio
import signal

import click

from bot.app import running
from bot.runtime.logs import set_up_logs
from bot.settings import Settings, read_settings


@click.command("run")
def run() -> None:
    """Run the bot until it is told to stop (SIGTERM, or Ctrl-C)."""
    settings = read_settings()
    set_up_logs(as_json=settings.log_format == "json", level=settings.log_level)
    asyncio.run(_run(settings))


async def _run(settings: Settings) -> None:
    async with running(settings) as bot:
        loop = asyncio.get_running_loop()
        for sign in (signal.SIGTERM, signal.SIGINT):
            loop.add_signal_handler(sign, bot.stop)
        await bot.wait()
