"""`chalkpost coach add`: the operator invites a coach."""

import asyncio
import hashlib
import secrets
from datetime import timedelta

import click

import storage.people
from bot.app import clock_of, open_store, platform_of
from bot.faults import ChatFault
from bot.gateway.library import library_bot, who_am_i
from bot.settings import Settings, read_settings
from bot.wording import show

TOKEN_BYTES = 24
"""Bytes of chance in a link: 32 characters of `A-Za-z0-9_-`; the platform takes 64 (Bot API, deep linking)."""


@click.group("coach")
def coach() -> None:
    """Coaches of this practice."""


@coach.command("add")
@click.option("--expires-days", type=click.IntRange(1, 365), default=7, show_default=True, help="Days the link lives.")
def add(expires_days: int) -> None:
    """Print a link that makes whoever opens it first a coach."""
    settings = read_settings()
    name = settings.bot_name or asyncio.run(_bot_name(settings))
    payload = f"c{secrets.token_urlsafe(TOKEN_BYTES)}"
    store, now = open_store(settings), clock_of(settings).now()
    try:
        with store.begin() as work:
            storage.people.new_coach_invite(work, hash_of(payload), now + timedelta(days=expires_days), now)
    finally:
        store.close()
    click.echo(f"https://t.me/{name}?start={payload}")
    click.echo(show("cli-coach-link", days=expires_days), err=True)


def hash_of(payload: str) -> str:
    """What is kept of a link: its payload can't be had back from it."""
    return hashlib.sha256(payload.encode()).hexdigest()


async def _bot_name(settings: Settings) -> str:
    async with library_bot(platform_of(settings)) as bot:
        me = await who_am_i(bot)
    if me is None or not me.name:
        raise ChatFault("The platform can't be asked for the bot's name now. Set CHALKPOST_BOT_NAME, or try again.")
    return me.name
