"""`chalkpost reseal`: what older keys of the key file sealed is sealed anew by the newest."""

import click

from bot.app import open_store
from bot.settings import read_settings
from bot.wording import show
from storage.resealing import Resealed, reseal

TOLD_EVERY = 50_000
"""Texts between two lines of progress."""


@click.command("reseal")
def reseal_() -> None:
    """Seal everything by the newest key, so that the older ones can go. The bot may run meanwhile."""
    settings = read_settings()
    store = open_store(settings)
    progress = _Progress()
    try:
        done = reseal(store, told=progress.show)
    finally:
        store.close()
    click.echo(show("cli-reseal-done", anew=done.anew, seen=done.seen, keyfile=str(settings.key_path)))


class _Progress:
    """A line now and then, on standard error."""

    def __init__(self) -> None:
        self._next = TOLD_EVERY

    def show(self, sofar: Resealed) -> None:
        if sofar.seen >= self._next:
            self._next = sofar.seen + TOLD_EVERY
            click.echo(show("cli-reseal-so-far", anew=sofar.anew, seen=sofar.seen), err=True)
