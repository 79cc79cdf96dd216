"""The composition root: the only place that builds the bot, from its settings."""

import asyncio
import contextlib
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass, replace
from urllib.parse import urlsplit

import structlog

from bot.dialogue import router
from bot.dialogue.desk import House
from bot.faults import SettingsFault
from bot.gateway.intake import Hook, hooked, polling
from bot.gateway.library import Platform, RawBot, Self, library_bot, who_am_i
from bot.gateway.reader import RawReader
from bot.gateway.sender import LibrarySender
from bot.gateway.serving import health_app, serving
from bot.runtime.clock import Clock, FileClock, SystemClock
from bot.runtime.copies.pack import copier
from bot.runtime.health import Pulse, beat_of, keep_beat
from bot.runtime.identity import identity
from bot.runtime.inbox import Answer, Desks
from bot.runtime.leases import Leases
from bot.runtime.loops import Intake, Rhythm, Service
from bot.runtime.outbox import Outbox
from bot.runtime.pacing import Pacer
from bot.runtime.ports import Draw
from bot.runtime.programmes import making
from bot.runtime.taps import Taps
from bot.runtime.waiting import wait_for
from bot.runtime.writer import Writer
from bot.saying import Chart
from bot.settings import Settings, read_address
from bot.wording.menu import menu
from storage.engine import Store
from storage.keyring import Keyring

log = structlog.get_logger("app")

BEAT_S = 5.0


@dataclass(frozen=True, slots=True)
class Running:
    """A bot that runs: its service, its database, and the task that ends when it does."""

    service: Service
    store: Store
    clock: Clock
    task: "asyncio.Task[None]"
    health_port: int | None

    async def quiet(self) -> None:
        """Returns when nothing waits any more; raises what ended the bot."""
        waiting = asyncio.create_task(self.service.quiet())
        try:
            await asyncio.wait({waiting, self.task}, return_when=asyncio.FIRST_COMPLETED)
            if self.task.done():
                await self.task
        finally:
            waiting.cancel()

    async def tick(self) -> int:
        """Takes up what is due now, without waiting for the next tick."""
        return await self.service.ticker.tick()

    def stop(self) -> None:
        """Ends the loops after what is in hand."""
        self.service.stop()

    async def wait(self) -> None:
        """Until the bot ends; raises what ended it."""
        await asyncio.shield(self.task)


def clock_of(settings: Settings) -> Clock:
    """The machine's clock, or for a rehearsal the file's."""
    return FileClock(settings.clock_file) if settings.clock_file else SystemClock()


def open_store(settings: Settings) -> Store:
    """The database, brought up to the present version. `SettingsFault`, `StoreFault`, `KeyFault`: it can't be."""
    for folder in (settings.data_dir, settings.key_path.parent):
        try:
            folder.mkdir(parents=True, exist_ok=True, mode=0o700)
        except OSError as error:
            raise SettingsFault(f"The folder {folder} can't be made: {error.strerror}.") from error
    store = Store.open(settings.store_url, Keyring.from_file(settings.key_path))
    store.migrate()
    return store


def platform_of(settings: Settings) -> Platform:
    """Where the platform is; `SettingsFault` without a token."""
    return Platform(settings.bot_token(), settings.api_url, settings.proxy.get_secret_value())


@asynccontextmanager
async def running(
    settings: Settings, *, clock: Clock | None = None, answer: Answer | None = None, draw: Draw | None = None
) -> AsyncIterator[Running]:
    """The bot, while the block runs; the same in a process of its own, a test or the demo."""
    platform, clock = platform_of(settings), clock or clock_of(settings)
    async with AsyncExitStack() as stack:
        store = open_store(settings)
        stack.callback(store.close)
        worker = stack.enter_context(identity(settings.data_dir, several=store.is_postgres))
        writer = Writer(store)
        stack.callback(writer.close)
        bot = await stack.enter_async_context(library_bot(platform, connections=settings.senders + 16))
        service = _service(
            settings, bot, store=store, worker=worker, writer=writer, clock=clock, answer=answer, draw=draw
        )
        port = await _watched(settings, service, stack)
        task = asyncio.create_task(_run(settings, bot, service), name="bot")
        beat = asyncio.create_task(_beat(settings, service), name="heartbeat")
        try:
            yield Running(service, store, clock, task, port)
        finally:
            service.stop()
            await asyncio.wait({task, beat})
            if not task.cancelled() and isinstance(task.exception(), Exception):
                log.debug("ended", error=type(task.exception()).__name__)
        await task


def _service(
    settings: Settings,
    bot: RawBot,
    *,
    store: Store,
    worker: str,
    writer: Writer,
    clock: Clock,
    answer: Answer | None,
    draw: Draw | None,
) -> Service:
    sender = LibrarySender(bot, menu=menu)
    house = House(
        bot_name=settings.bot_name,
        emergency_number=settings.emergency_number,
        operator_contact=settings.operator_contact,
        consent_version=settings.consent_version,
    )
    outbox = Outbox(
        writer=writer,
        sender=sender,
        draw=draw or _draw,
        make=making(writer.store, copier(writer.store, clock.now)),
        clock=clock,
        pacer=Pacer(settings.pace, monotonic=asyncio.get_running_loop().time),
        senders=settings.senders,
        worker=worker,
    )
    return Service(
        writer=writer,
        clock=clock,
        desks=Desks(RawReader(), answer or router.answer, house, worker),
        outbox=outbox,
        taps=Taps(sender),
        bot=settings.bot_id(),
        pulse=Pulse(clock.now()),
        roles=settings.roles,
        rhythm=Rhythm(settings.wake_s, settings.tick_s),
        leases=Leases(writer=writer, clock=clock, holder=worker) if store.is_postgres else None,
    )


async def _run(settings: Settings, bot: RawBot, service: Service) -> None:
    """Learns who the bot is, then runs the loops."""
    if not settings.bot_name:
        me = await _learn_self(bot, service)
        if me is None:
            return
        service.desks = replace(service.desks, house=replace(service.desks.house, bot_name=me.name))
    roles = ",".join(sorted(role.value for role in service.roles))
    log.info("running", bot=service.desks.house.bot_name, mode=settings.mode, roles=roles)
    await service.run(_intake(settings, bot))
    log.info("stopped", turns=service.pulse.turns, sent=service.outbox.sent)


async def _learn_self(bot: RawBot, service: Service) -> Self | None:
    """Asks until the platform answers; `None` where the bot is to stop before."""
    wait_s = 1.0
    while not service.is_stopping:
        me = await who_am_i(bot)
        if me is not None:
            return me
        log.warning("the platform is not there", wait_s=wait_s)
        await wait_for(service.stopping, wait_s)
        wait_s = min(30.0, wait_s * 2)
    return None


def _intake(settings: Settings, bot: RawBot) -> Intake:
    if settings.mode == "poll":
        return polling(bot, timeout_s=settings.poll_timeout_s)
    host, port = read_address(settings.webhook_listen, name="webhook_listen")
    path = urlsplit(settings.webhook_url).path or "/"
    secret = settings.webhook_secret.get_secret_value()
    return hooked(bot, Hook(settings.webhook_url, path, secret, host, port))


async def _watched(settings: Settings, service: Service, stack: AsyncExitStack) -> int | None:
    """The health endpoint's port, where one is wanted."""
    if not settings.health_listen:
        return None
    host, port = read_address(settings.health_listen, name="health_listen")
    return await stack.enter_async_context(serving(health_app(service), host=host, port=port))


async def _beat(settings: Settings, service: Service) -> None:
    """Leaves a sign of life for `chalkpost status`."""
    while True:
        beat = beat_of(service.pulse, sent=service.outbox.sent, now=service.clock.now())
        with contextlib.suppress(OSError):  # a full disk is told by the database
            keep_beat(settings.beat_path(service.desks.worker), beat)
        if service.is_stopping:
            return
        await wait_for(service.stopping, BEAT_S)


def _draw(chart: Chart) -> bytes:
    """The drawing library takes its time: it is loaded when the first picture is drawn."""
    from bot.pictures import draw  # noqa: PLC0415

    return draw(chart)
