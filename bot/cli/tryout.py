"""`chalkpost try`: the demo week through the real bot, then the chat page, all on this machine."""

import asyncio
import errno
import secrets
import shutil
import signal
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

import click

import storage.people
import storage.schedule
from bot.app import Running, running
from bot.cli.coach import TOKEN_BYTES, hash_of
from bot.faults import SettingsFault
from bot.runtime.logs import set_up_logs
from bot.settings import Settings
from bot.tryout.page.wing import serve_page
from bot.tryout.practice.clock import DemoClock, Steps
from bot.tryout.practice.people import BEGINS, BOT_NAME, COACH, EVERYONE, TOKEN
from bot.tryout.practice.stage import Stage, WentWrong
from bot.tryout.practice.week import arrive, play
from bot.tryout.standin import Limits, StandIn
from bot.wording import show
from storage.work import Work

USUAL_PORT = 8095
PROGRESS_EVERY = 100
"""Lines between two progress lines."""


@click.command("try")
@click.option("--play", "only_play", is_flag=True, help="End after the week.")
@click.option("--serve", "only_serve", is_flag=True, help="Skip the week; serve the page at once.")
@click.option("--port", type=click.IntRange(0, 65535), default=USUAL_PORT, show_default=True, help="Of the page.")
def try_(*, only_play: bool, only_serve: bool, port: int) -> None:
    """Play an invented practice's week through the real bot, then serve the chat page on this machine."""
    if only_play and only_serve:
        raise SettingsFault(show("try-both"))
    set_up_logs(as_json=False, level="warning")
    folder = Path(tempfile.mkdtemp(prefix="chalkpost-try-"))
    try:
        asyncio.run(_try(folder, only_play=only_play, only_serve=only_serve, port=port))
    except WentWrong as wrong:
        click.echo(show("try-went-wrong", what=str(wrong)), err=True)
        sys.exit(1)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


async def _try(folder: Path, *, only_play: bool, only_serve: bool, port: int) -> None:
    async with rehearsal(folder, port=0 if only_play else port) as held:
        began = time.monotonic()
        if only_serve:
            await arrive(held.stage(_quietly), held.coach_payload)
        else:
            stage = held.stage(_Progress(click.echo).show)
            await play(stage, held.coach_payload)
            seconds = round(time.monotonic() - began)
            click.echo(show("try-played", messages=stage.heard, seconds=seconds))
        if not only_play:
            await _serve(held)


async def _serve(held: "Rehearsal") -> None:
    """Until somebody ends it; the clock runs."""
    held.clock.stand(False)
    click.echo(show("try-serving", address=held.standin.url))
    ended = asyncio.Event()
    loop = asyncio.get_running_loop()
    for sign in (signal.SIGTERM, signal.SIGINT):
        loop.add_signal_handler(sign, ended.set)
    waiting = asyncio.create_task(ended.wait())
    await asyncio.wait({waiting, held.bot.task}, return_when=asyncio.FIRST_COMPLETED)
    waiting.cancel()


@dataclass(frozen=True, slots=True)
class Rehearsal:
    """The stand-in, the bot at it, and their common clock."""

    standin: StandIn
    bot: Running
    clock: DemoClock
    coach_payload: str

    def stage(self, show_line: Callable[[str], None]) -> Stage:
        """A stage on it."""
        return Stage(self.standin, self.bot, self.clock, self.next_due, show_line, EVERYONE)

    async def next_due(self) -> datetime | None:
        """When a rule is due next."""
        return await self.bot.service.writer.run(storage.schedule.next_due_at)


@asynccontextmanager
async def rehearsal(folder: Path, *, port: int = 0) -> AsyncIterator[Rehearsal]:
    """The demo practice's stage: nobody there yet but the people with their phones, and a coach's link."""
    clock = DemoClock(BEGINS)
    standin = StandIn(clock, Limits(pace=None))
    standin.add_bot(TOKEN, username=BOT_NAME, name="Chalkpost")
    for person in EVERYONE:
        standin.add_person(person.id, person.name, language="en", zone=person.zone)
    steps = Steps(clock, _nothing_due, _settled)
    try:
        await standin.start(port=port, wings=(serve_page(steps, coaches=(COACH.id,), title="Chalkpost"),))
    except OSError as error:
        if error.errno == errno.EADDRINUSE:
            raise SettingsFault(show("try-port-taken", port=str(port))) from None
        raise SettingsFault(show("try-no-port", port=str(port), what=error.strerror or "")) from None
    try:
        async with running(demo_settings(folder, standin.url), clock=clock) as bot:
            payload = await bot.service.writer.run(lambda work: coach_link(work, clock))
            held = Rehearsal(standin, bot, clock, payload)
            steps.due, steps.settle = held.next_due, lambda: _settle(bot)
            yield held
    finally:
        await standin.stop()


def demo_settings(folder: Path, address: str) -> Settings:
    """The embedded defaults, at the stand-in, without the platform's pace."""
    return Settings.model_validate(
        {
            "token": TOKEN,
            "data_dir": folder,
            "api_url": address,
            "operator_contact": "the operator of this demo",
            "pace_per_s": 10_000.0,
            "pace_per_chat_s": 10_000.0,
            "pace_burst": 10_000,
        }
    )


def coach_link(work: Work, clock: DemoClock) -> str:
    """The payload of an operator's link, as `chalkpost coach add` makes it."""
    payload = f"c{secrets.token_urlsafe(TOKEN_BYTES)}"
    now = clock.now()
    storage.people.new_coach_invite(work, hash_of(payload), now + timedelta(days=7), now)
    return payload


async def _settle(bot: Running) -> None:
    await bot.tick()
    await bot.quiet()


async def _nothing_due() -> None:
    return None


async def _settled() -> None:
    return None


def _quietly(line: str) -> None:
    del line


class _Progress:
    """Shows each line; where the output goes to a file or a pipe, also now and then on the terminal how far it is."""

    def __init__(self, echo: Callable[[str], None]) -> None:
        self._echo = echo
        self._lines = 0
        self._began = time.monotonic()

    def show(self, line: str) -> None:
        self._echo(line)
        self._lines += 1
        if not sys.stdout.isatty() and self._lines % PROGRESS_EVERY == 0:
            click.echo(show("try-progress", lines=self._lines, seconds=round(time.monotonic() - self._began)), err=True)
