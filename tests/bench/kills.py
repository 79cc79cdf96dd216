"""Kills with -9 by the hundred, on SQLite and PostgreSQL, and an audit of every row.

`python -m tests.bench kills [--kills 500] [--seed 1] [--senders 1] [--databases sqlite,postgres]`
"""

import argparse
import asyncio
import base64
import os
import sys
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path

from storage.engine import Store
from storage.keyring import Keyring
from tests.crash.killing import Audit, Killing, Plan
from tests.postgres import server
from tests.store.conftest import KEY


def one_run(plan: Plan, url: str) -> Audit:
    """The whole of it on one database."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        key = folder / "test.key"
        key.write_bytes(base64.b64encode(KEY) + b"\n")
        key.chmod(0o600)
        store = Store.open(url or f"sqlite:///{folder / 'kills.db'}", Keyring.of(KEY))
        try:
            store.migrate()
            environment = {**os.environ, "CHALKPOST_KEY_FILE": str(key)}  # noqa: TID251  for a child process
            return asyncio.run(Killing(plan, url or f"sqlite:///{folder / 'kills.db'}", folder, environment).run(store))
        finally:
            store.close()


def show(name: str, audit: Audit, took_s: float) -> bool:
    """A line for a database; whether all is well."""
    well = not (audit.lost or audit.twice or audit.disorder) and audit.repeated <= audit.kills
    sys.stdout.write(
        f"{name}: {audit.kills} kills, {audit.messages} messages, {audit.reminders} reminders: "
        f"{len(audit.lost)} lost, {len(audit.twice)} kept twice, {len(audit.disorder)} chats out of order, "
        f"{audit.repeated} messages repeated ({audit.repeated / max(1, audit.kills):.2f} a kill); {took_s:.0f} s\n"
    )
    for what in (*audit.lost, *audit.twice, *audit.disorder):
        sys.stdout.write(f"  {what}\n")
    return well


def main(argv: Sequence[str]) -> int:
    """Runs it; 1 where anything was lost, doubled or out of order, or more than one message a kill was repeated."""
    parser = argparse.ArgumentParser(prog="kills")
    parser.add_argument("--kills", type=int, default=500)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--senders", type=int, default=1)
    parser.add_argument("--databases", default="sqlite,postgres")
    asked = parser.parse_args(argv)
    names = asked.databases.split(",")
    plan = Plan(asked.kills // len(names), asked.seed, senders=asked.senders)
    well = True
    for name in names:
        begun = time.monotonic()
        if name == "postgres":
            with server() as postgres:
                audit = one_run(plan, postgres.url(postgres.new_database()))
        else:
            audit = one_run(plan, "")
        well &= show(name, audit, time.monotonic() - begun)
    return 0 if well else 1
