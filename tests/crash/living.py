"""The demo week played through a bot in a process of its own, which is killed with -9 at random moments."""

import asyncio
import random
import sys
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

import sqlalchemy as sa

import storage.health
import storage.outbox
import storage.schedule
from bot.cli.tryout import coach_link, demo_settings, rehearsal
from bot.tryout.practice.clock import DemoClock
from bot.tryout.practice.people import BEGINS, BOT_NAME, EVERYONE, TOKEN
from bot.tryout.practice.stage import Stage
from bot.tryout.practice.week import play
from bot.tryout.standin import Limits, StandIn
from storage.engine import Store
from storage.keyring import Keyring
from storage.tables import sets

SENDERS = 1
"""One call to the platform at once, so that one message at the most is in doubt after a kill."""


@dataclass(frozen=True, slots=True)
class Lived:
    """What a week left: the sets kept, and how often each text was sent to each person."""

    sets: Counter[tuple[object, ...]]
    sent: Counter[tuple[int, str]]
    kills: int


class TimedClock(DemoClock):
    """The demo's clock, told to the bot's process by a file."""

    def __init__(self, at: datetime, file: Path) -> None:
        super().__init__(at)
        self._file = file
        self.set(at)

    def set(self, at: datetime) -> None:
        """It is this moment, for both."""
        super().set(at)
        new = self._file.with_suffix(".new")
        new.write_text(at.isoformat())
        new.replace(self._file)


@dataclass(slots=True)
class Apart:
    """The bot under the stage, known only by its database."""

    store: Store
    clock: DemoClock

    async def tick(self) -> int:
        """The process ticks by itself."""
        return 0

    async def quiet(self) -> None:
        """Until nothing waits any more, however often it has to be started anew."""
        async with asyncio.timeout(60):
            while not self._is_quiet():
                await asyncio.sleep(0.025)

    def _is_quiet(self) -> bool:
        with self.store.begin() as work:
            health = storage.health.health(work, self.clock.now())
            return not (health.inbox_waiting or health.due or health.sending or storage.outbox.waiting(work))

    async def next_due(self) -> datetime | None:
        """When a rule is due next."""
        with self.store.begin() as work:
            return storage.schedule.next_due_at(work)


async def undisturbed(folder: Path) -> Lived:
    """The week as it is when nobody kills anything, in this process."""
    async with rehearsal(folder) as held:
        await play(held.stage(lambda _: None), held.coach_payload)
        return Lived(_sets(held.bot.store), _sent(held.standin), 0)


async def live(folder: Path, environment: dict[str, str], *, kills: int, seed: int) -> Lived:
    """A whole week, in a process that is killed so many times."""
    clock = TimedClock(BEGINS, folder / "clock")
    standin = StandIn(clock, Limits(pace=None), seed=seed, polls=True)
    standin.add_bot(TOKEN, username=BOT_NAME)
    for person in EVERYONE:
        standin.add_person(person.id, person.name, zone=person.zone)
    await standin.start()
    settings = demo_settings(folder, standin.url)
    store = Store.open(settings.store_url, Keyring.from_file(settings.key_path))
    store.migrate()
    try:
        with store.begin() as work:
            payload = coach_link(work, clock)
        apart = Apart(store, clock)
        async with killed(standin, _named(environment, folder, standin), kills=kills, seed=seed) as killing:
            await play(Stage(standin, apart, clock, apart.next_due, lambda _: None, EVERYONE), payload)
        return Lived(_sets(store), _sent(standin), killing.count)
    finally:
        store.close()
        await standin.stop()


class Killing:
    """The process, and whoever kills it."""

    def __init__(self, standin: StandIn, environment: dict[str, str], *, kills: int, seed: int) -> None:
        self.standin, self.environment, self.left = standin, environment, kills
        self.chance = random.Random(seed)
        self.count = 0
        self.process: asyncio.subprocess.Process | None = None

    async def run(self) -> None:
        """Starts the bot, and again each time that it was killed."""
        while True:
            run = (sys.executable, "-m", "bot", "run")
            self.process = await asyncio.create_subprocess_exec(*run, env=self.environment)
            if self.count < self.left:
                await self._until_it_polls()
                with suppress(TimeoutError):
                    await asyncio.wait_for(self.process.wait(), self.chance.uniform(0.05, 1.2))
                self.process.kill()
                self.count += 1
            await self.process.wait()

    async def _until_it_polls(self) -> None:
        seen = len(self.standin.record.of("getUpdates"))
        while len(self.standin.record.of("getUpdates")) == seen:
            await asyncio.sleep(0.01)


@asynccontextmanager
async def killed(standin: StandIn, environment: dict[str, str], *, kills: int, seed: int) -> AsyncIterator[Killing]:
    """The bot's process and its killer, while the block runs."""
    killing = Killing(standin, environment, kills=kills, seed=seed)
    task = asyncio.create_task(killing.run())
    try:
        yield killing
    finally:
        task.cancel()
        await asyncio.wait({task})
        if killing.process is not None and killing.process.returncode is None:
            killing.process.kill()
            await killing.process.wait()


def _named(environment: dict[str, str], folder: Path, standin: StandIn) -> dict[str, str]:
    named = {"TOKEN": TOKEN, "API_URL": standin.url, "DATA_DIR": str(folder), "CLOCK_FILE": str(folder / "clock")}
    named |= {"OPERATOR_CONTACT": "the operator of this demo", "SENDERS": str(SENDERS), "TICK_S": "0.05"}
    named |= {"WAKE_S": "0.05", "LOG_LEVEL": "error", "PACE_PER_S": "9999", "PACE_PER_CHAT_S": "9999"}
    return {**environment, **{f"CHALKPOST_{name}": value for name, value in {**named, "PACE_BURST": "9999"}.items()}}


def _sets(store: Store) -> Counter[tuple[object, ...]]:
    c = sets.c
    with store.begin() as work:
        rows = work.connection.execute(
            sa.select(c.day, c.exercise, c.set_number, c.stage, c.thousandths, c.unit, c.reps, c.rir)
        ).all()
    return Counter(tuple(row) for row in rows)


def _sent(standin: StandIn) -> Counter[tuple[int, str]]:
    messages = ((p.id, m) for p in EVERYONE for m in standin.seat(p.id).messages() if m.by_bot)
    return Counter((who, m.words.text.partition("\n")[0]) for who, m in messages if "start=c" not in m.words.text)
