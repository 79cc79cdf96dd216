"""What a reply costs after a month and after five years, among ten clients and among ten thousand: the same.

`python -m tests.bench flat [--rounds 60] [--clients 10000] [--postgres]`

A reply is everything from the raw update to the settled send, by the runtime's own functions and the talks, without
HTTP: the client reports a set, looks at the card and the week, takes the set back, and so on. The houses take turns,
so that a slow minute meets them all.
Goal: at most 1.2 times the cost of the small young house.
"""

import argparse
import itertools
import json
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import ExitStack
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path
from statistics import median

from bot.dialogue.router import answer
from bot.gateway.reader import RawReader
from bot.runtime.bodies import read_send
from bot.runtime.inbox import Desks, receive, work_some
from bot.runtime.logs import set_up_logs
from bot.runtime.ports import Arrived
from bot.runtime.settlements import Claimed, Delivered
from bot.runtime.settling import Carried, claim, settle
from bot.training.people import Standing
from storage.engine import Store
from storage.inbox import set_aside_count
from storage.keyring import Keyring
from storage.outbox import ParcelKind
from tests.postgres import server
from tests.store import practice
from tests.store.conftest import KEY
from tests.store.test_growth import history

GOAL = 1.2
CHAT = 101
"""The chat of the client who reports (`tests.store.practice.client`)."""
TEXTS = ("100x5 @2", "/today", "/week", "/undo")
"""A set reported, the card, the week so far, the set taken back: after each round all is as before."""


WARM = 5
"""Rounds before the measurement."""


@dataclass(slots=True)
class House:
    """A filled database, with what its replies took."""

    name: str
    store: Store
    took_ms: dict[str, list[float]] = field(default_factory=lambda: {text: [] for text in TEXTS})
    numbers: Iterator[int] = field(default_factory=lambda: itertools.count(1_000))
    sent: int = 0

    def reply(self, text: str, now: datetime) -> None:
        """One message, from the raw update to its settled answers."""
        number = next(self.numbers)
        chat = {"id": CHAT, "type": "private"}
        message = {"message_id": number, "date": int(now.timestamp()), "text": text, "chat": chat}
        raw = json.dumps({"update_id": number, "message": message})
        desks = Desks(RawReader(), answer, practice.HOUSE, "bench")
        begun = time.perf_counter()
        with self.store.begin() as work:
            receive(work, (Arrived(number, CHAT, raw),), bot=1, now=now)
            work_some(work, desks, now=now)
            claimed = claim(work, worker="bench", now=now, limit=8)
        while claimed:
            claimed = self._turn_over(claimed, now)
        self.took_ms[text].append((time.perf_counter() - begun) * 1000)

    def _turn_over(self, claimed: tuple[Claimed, ...], now: datetime) -> tuple[Claimed, ...]:
        """What was claimed is settled as sent, and what is next is claimed, in one transaction."""
        with self.store.begin() as work:
            for one in claimed:
                shown = "x" if one.parcel.kind is ParcelKind.SEND and read_send(one.parcel.body).html else ""
                self.sent += 1
                settle(work, Carried(one, Delivered(1_000_000 + self.sent, shown)), now=now)
            return claim(work, worker="bench", now=now, limit=8)


def fill(store: Store, *, weeks: int, others: int) -> None:
    """A client with so many weeks of training and a session under way, among so many others with a month each."""
    with store.begin() as work:
        practice.practice(work)
        history(work, weeks)
        practice.session(work)
    for start in range(0, others, 100):
        with store.begin() as work:
            for n in range(start, min(others, start + 100)):
                practice.client(work, id=f"other-{n}", chat=10_000 + n, name=f"P{n}", standing=Standing.ACTIVE)
                history(work, 1, of=f"other-{n}")


def main(argv: Sequence[str]) -> int:
    """Measures and prints; 1 where the goal is missed."""
    parser = argparse.ArgumentParser(prog="flat")
    parser.add_argument("--rounds", type=int, default=60)
    parser.add_argument("--clients", type=int, default=10_000)
    parser.add_argument("--postgres", action="store_true", help="on an embedded PostgreSQL that waits for no disk")
    asked = parser.parse_args(argv)
    set_up_logs(as_json=False, level="critical")
    sizes = {
        "a month, 10 clients": (4, 10),
        "5 years, 10 clients": (260, 10),
        f"a month, {asked.clients} clients": (4, asked.clients),
    }
    with ExitStack() as stack:
        folder = Path(stack.enter_context(tempfile.TemporaryDirectory()))
        postgres = stack.enter_context(server()) if asked.postgres else None
        houses = []
        for n, (name, (weeks, others)) in enumerate(sizes.items()):
            url = postgres.url(postgres.new_database()) if postgres else f"sqlite:///{folder / f'{n}.db'}"
            store = Store.open(url, Keyring.of(KEY))
            stack.callback(store.close)
            store.migrate()
            begun = time.perf_counter()
            fill(store, weeks=weeks, others=others)
            sys.stdout.write(f"filled: {name} ({time.perf_counter() - begun:.0f} s)\n")
            houses.append(House(name, store))
        live(houses, asked.rounds)
        return show(houses)


def live(houses: list[House], rounds: int) -> None:
    """The houses in turn, and their clients' messages in turn."""
    at = practice.NOW
    for _ in range(rounds + WARM):
        for text in TEXTS:
            at += timedelta(seconds=20)
            for house in houses:
                house.reply(text, at)
    for took in (took for house in houses for took in house.took_ms.values()):
        del took[:WARM]  # the first ones prepare their statements


def show(houses: list[House]) -> int:
    """The table with its ratios; 1 where the goal is missed, or a turn failed."""
    worst, out = 0.0, sys.stdout.write
    out(f"{'p50 ms, and ratio to the first':32}{''.join(f'{text:>18}' for text in TEXTS)}\n")
    for house in houses:
        with house.store.begin() as work:
            if failed := set_aside_count(work):
                out(f"{house.name}: {failed} turns failed; nothing was measured\n")
                return 1
        line = f"{house.name:32}"
        for text in TEXTS:
            middle = median(house.took_ms[text])
            ratio = middle / median(houses[0].took_ms[text])
            worst = max(worst, ratio)
            line += f"{middle:12.1f} ({ratio:.2f})"[:19].rjust(18)
        out(f"{line}\n")
    out(f"goal: at most {GOAL}: {'reached' if worst <= GOAL else 'missed'} ({worst:.2f})\n")
    return 0 if worst <= GOAL else 1
