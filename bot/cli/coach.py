"""`chalkpost coach add`: the operator invites a coach; `chalkpost coach forget`: deletes one."""

import asyncio
import hashlib
import secrets
import sys
from datetime import timedelta

import click

import storage.census
import storage.erasure
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


@coach.command("forget")
@click.argument("name")
@click.option("--id", "number", help="Which one, where several bear the name.")
@click.option("--yes", "is_sure", is_flag=True, help="Don't ask.")
def forget(*, name: str, number: str | None, is_sure: bool) -> None:
    """Delete the coach called NAME and all that is kept of their clients. It can't be undone."""
    store = open_store(read_settings())
    try:
        with store.begin() as work:
            found = storage.census.coaches_named(work, name)
        meant = [one for one in found if number in (None, one.coach)]
        for one in meant:
            joined = one.joined_at.date().isoformat()
            told = show("cli-coach-who", name=one.name, joined=joined, clients=one.clients, coach=one.coach)
            click.echo(told, err=len(meant) > 1)
        if len(meant) != 1:
            click.echo(show("cli-forget-which" if meant else "cli-coach-nobody", name=name), err=True)
            sys.exit(1)
        if is_sure or click.confirm(show("cli-forget-sure", name=meant[0].name), default=False):
            with store.begin() as work:
                storage.erasure.forget_coach(work, meant[0].coach)
            click.echo(show("cli-forget-done"))
        else:
            click.echo(show("cli-forget-kept"))
    finally:
        store.close()


def hash_of(payload: str) -> str:
    """What is kept of a link: its payload can't be had back from it."""
    return hashlib.sha256(payload.encode()).hexdigest()


async def _bot_name(settings: Settings) -> str:
    async with library_bot(platform_of(settings)) as bot:
        me = await who_am_i(bot)
    if me is None or not me.name:
        raise ChatFault("The platform can't be asked for the bot's name now. Set CHALKPOST_BOT_NAME, or try again.")
    return me.name
