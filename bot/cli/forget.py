"""`chalkpost forget [NAME] [--id ID]`: the operator deletes a client who asked for it, for good."""

import sys

import click

import storage.census
import storage.erasure
from bot.app import open_store
from bot.settings import read_settings
from bot.wording import show
from storage.census import Namesake
from storage.engine import Store


@click.command("forget")
@click.argument("name", default="")
@click.option("--id", "number", help="Which one of several; or alone, as the log names who left.")
@click.option("--yes", "is_sure", is_flag=True, help="Don't ask.")
def forget(*, name: str, number: str | None, is_sure: bool) -> None:
    """Delete all that is kept of the client called NAME. It can't be undone."""
    if not name and not number:
        raise click.UsageError(show("cli-forget-neither"))
    store = open_store(read_settings())
    try:
        one = _the_one(store, name, number)
        if is_sure or click.confirm(show("cli-forget-sure", name=one.name), default=False):
            with store.begin() as work:
                storage.erasure.forget(work, one.client)
            click.echo(show("cli-forget-done"))
        else:
            click.echo(show("cli-forget-kept"))
    finally:
        store.close()


def _the_one(store: Store, name: str, number: str | None) -> Namesake:
    """The client who is meant; ends with exit code 1 where there is none, or more than one."""
    with store.begin() as work:
        found = storage.census.clients_named(work, name) if name else storage.census.everyone(work)
    meant = [one for one in found if number in (None, one.client)]
    if not meant:
        click.echo(show("cli-forget-nobody", name=name or number or ""), err=True)
        sys.exit(1)
    for one in meant:
        joined = one.joined_at.date().isoformat()
        row = show("cli-forget-who", name=one.name, coach=one.coach, joined=joined, client=one.client)
        click.echo(row, err=len(meant) > 1)
    if len(meant) > 1:
        click.echo(show("cli-forget-which"), err=True)
        sys.exit(1)
    return meant[0]
