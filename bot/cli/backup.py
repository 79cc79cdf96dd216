"""`chalkpost backup FILE`: a copy of the database, made while the bot runs."""

from pathlib import Path

import click

import storage.backup
from bot.app import open_store
from bot.settings import read_settings
from bot.wording import show


@click.command("backup")
@click.argument("file", type=click.Path(dir_okay=False, path_type=Path))
def backup(file: Path) -> None:
    """Copy the database into FILE. The key is not in it: keep that apart."""
    settings = read_settings()
    store = open_store(settings)
    try:
        storage.backup.backup(store, file)
    finally:
        store.close()
    click.echo(show("cli-backup-done", file=str(file), keyfile=str(settings.key_path)))
