"""`chalkpost again`: the operator takes up again what was set aside."""

import click

import storage.inbox
from bot.app import open_store
from bot.settings import read_settings
from bot.wording import show


@click.command("again")
def again() -> None:
    """Put the messages that were set aside back into their chats' lines: a bot that runs takes them up at once."""
    store = open_store(read_settings())
    try:
        with store.begin() as work:
            count = storage.inbox.try_again(work)
    finally:
        store.close()
    click.echo(show("cli-again", count=count))
