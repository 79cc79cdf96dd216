"""Posts updates to a bot's webhook, several at once, and again when that fails. Source: "setWebhook" of the docs."""

import asyncio
import json
from collections.abc import Awaitable, Callable

from aiohttp import ClientError, ClientSession, ClientTimeout

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.house import Bot, Hook, House
from bot.tryout.standin.updates import Waiting

SECRET_HEADER = "X-Telegram-Bot-Api-Secret-Token"
LONGEST_PAUSE_S = 60.0


class Poster:
    """One task a bot with a webhook, and one a post under way."""

    def __init__(self, house: House, perform: Callable[[Bot, Ask], Awaitable[None]]) -> None:
        self._house = house
        self._perform = perform
        self._tasks: dict[int, asyncio.Task[None]] = {}
        self._session: ClientSession | None = None

    def changed(self, bot: Bot) -> None:
        """Begins, changes or ends posting for a bot."""
        running = self._tasks.pop(bot.id, None)
        if running is not None:
            running.cancel()
        if bot.hook is not None:
            self._tasks[bot.id] = asyncio.get_running_loop().create_task(self._run(bot, bot.hook))

    async def stop(self) -> None:
        """Ends all posting."""
        for task in self._tasks.values():
            task.cancel()
        await asyncio.gather(*self._tasks.values(), return_exceptions=True)
        self._tasks.clear()
        if self._session is not None:
            await self._session.close()
            self._session = None

    async def _run(self, bot: Bot, hook: Hook) -> None:
        if self._session is None:
            self._session = ClientSession(timeout=ClientTimeout(total=30))
        under_way: set[int] = set()
        async with asyncio.TaskGroup() as posts:
            while True:
                for update in bot.updates.due(hook.connections):
                    if update.number not in under_way and len(under_way) < hook.connections:
                        under_way.add(update.number)
                        posts.create_task(self._post(self._session, bot, hook, update, under_way))
                await bot.updates.pushed()

    async def _post(self, session: ClientSession, bot: Bot, hook: Hook, update: Waiting, under_way: set[int]) -> None:
        pause_s = self._house.limits.webhook_retry_s
        try:
            while not await self._delivered(session, bot, hook, update):
                await asyncio.sleep(pause_s)
                pause_s = min(2 * pause_s, LONGEST_PAUSE_S)
        finally:
            under_way.discard(update.number)
        bot.updates.settle(update.number)
        bot.updates.wake()

    async def _delivered(self, session: ClientSession, bot: Bot, hook: Hook, update: Waiting) -> bool:
        headers = {SECRET_HEADER: hook.secret} if hook.secret else {}
        try:
            async with session.post(hook.url, json=update.body, headers=headers, allow_redirects=False) as reply:
                body = await reply.read()
        except (ClientError, TimeoutError) as error:
            return self._failed(hook, f"Connection failed: {type(error).__name__}")
        if not 200 <= reply.status < 300:
            return self._failed(hook, f"Wrong response from the webhook: {reply.status} {reply.reason}")
        await self._perform(bot, _ask_in(body))
        return True

    def _failed(self, hook: Hook, why: str) -> bool:
        hook.last_error, hook.last_error_at = why, int(self._house.clock.now().timestamp())
        return False


def _ask_in(body: bytes) -> Ask:
    """A call that the bot put into its answer; empty when there is none."""
    try:
        given = json.loads(body)
    except ValueError:
        return Ask()
    return Ask(given) if isinstance(given, dict) else Ask()
