"""`chalkpost status`: how the bot is, from its database and its last sign of life."""

import sys

import click

import storage.health
from bot.app import clock_of, open_store
from bot.runtime.health import last_beat
from bot.runtime.roles import Role
from bot.settings import read_settings
from bot.wording import show


@click.command("status")
def status() -> None:
    """Say how the bot is; exit code 1 where it needs a look."""
    settings = read_settings()
    store, now = open_store(settings), clock_of(settings).now()
    try:
        with store.begin() as work:
            health = storage.health.health(work, now)
    finally:
        store.close()
    beat = last_beat(settings.data_dir, now)
    polls = settings.mode == "poll" and Role.INTAKE in settings.roles
    is_well = beat is not None and beat.is_well(now, polls=polls) and not health.set_aside
    if beat is None:
        click.echo(show("cli-status-never"))
    else:
        seen_s = int((now - beat.at).total_seconds())
        click.echo(show("cli-status-seen", seconds=seen_s, since=beat.started_at.isoformat(timespec="seconds")))
        if polls and beat.last_poll_at is not None:
            click.echo(show("cli-status-poll", seconds=int((beat.at - beat.last_poll_at).total_seconds())))
        if beat.poll_trouble:
            click.echo(show("cli-status-trouble", what=beat.poll_trouble))
    click.echo(show("cli-status-inbox", waiting=health.inbox_waiting, aside=health.set_aside))
    click.echo(show("cli-status-outbox", waiting=health.outbox_waiting, oldest=int(health.oldest_waiting_s)))
    click.echo(show("cli-status-well" if is_well else "cli-status-unwell"))
    sys.exit(0 if is_well else 1)
