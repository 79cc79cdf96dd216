"""The client library's bot over our transport, and who it is."""

from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass
from urllib.parse import quote

from telegram import Bot
from telegram.error import BadRequest, InvalidToken, TelegramError

from bot.faults import ChatFault
from bot.gateway.outcomes import REFUSED_TOKEN
from bot.gateway.transport import READ_S, AiohttpRequest, TooBigError


@dataclass(frozen=True, slots=True)
class Platform:
    """Where the platform is: the Bot API's base address, the bot's token, an HTTP proxy where one is needed."""

    token: str
    api_url: str = "https://api.telegram.org"
    proxy: str = ""


@dataclass(frozen=True, slots=True)
class Self:
    """Who the bot is: its number and its public name."""

    id: int
    name: str


class RawBot(Bot):
    """The library's bot, which can also hand over updates as they come: unread, so that one malformed update
    can't hold up the others; and files, read only as far as they are wanted."""

    __slots__ = ("_files",)

    def __init__(self, platform: "Platform", *, calls: AiohttpRequest, polls: AiohttpRequest) -> None:
        base = platform.api_url.rstrip("/")
        super().__init__(
            platform.token,
            base_url=f"{base}/bot",
            base_file_url=f"{base}/file/bot",
            request=calls,
            get_updates_request=polls,
        )
        self._files = calls

    async def call(self, method: str, fields: Mapping[str, object]) -> object:
        """A call whose answer is taken as it comes: reading a message whole costs more than sending it. Fields that are
        `None` are left out. Raises the library's errors."""
        return await self._post(method, {name: value for name, value in fields.items() if value is not None})

    async def bring(self, file: str, *, most: int) -> bytes:
        """The content of a file that somebody sent: `TooBigError` above `most` bytes, else the library's errors."""
        shown = await self.call("getFile", {"file_id": file})
        found = shown if isinstance(shown, dict) else {}
        size, path = found.get("file_size"), found.get("file_path")
        if isinstance(size, int) and size > most:
            raise TooBigError("too big")
        if not isinstance(path, str) or path.startswith("/"):  # a local server's own disk, where it runs with --local
            raise BadRequest("the file can't be fetched over HTTP")
        return await self._files.take(f"{self.base_file_url}/{quote(path)}", most=most)

    async def raw_updates(self, *, offset: int | None, timeout_s: int, allowed: tuple[str, ...]) -> list[object]:
        """A long poll. What lies before `offset` is acknowledged by it. Raises the library's errors."""
        asked: dict[str, object] = {"timeout": timeout_s, "limit": 100, "allowed_updates": list(allowed)}
        if offset is not None:
            asked["offset"] = offset
        updates: object = await self._post("getUpdates", asked, read_timeout=timeout_s + 10.0)
        return updates if isinstance(updates, list) else []


@asynccontextmanager
async def library_bot(platform: Platform, *, connections: int = 64, read_s: float = READ_S) -> AsyncIterator[RawBot]:
    """The library's bot, its connections open; nothing is asked of the platform yet."""
    calls = AiohttpRequest(connections=connections, read_s=read_s, proxy=platform.proxy)
    polls = AiohttpRequest(connections=2, proxy=platform.proxy)
    try:
        bot = RawBot(platform, calls=calls, polls=polls)
    except InvalidToken as error:
        raise ChatFault(REFUSED_TOKEN) from error
    async with calls, polls:
        yield bot


async def who_am_i(bot: Bot) -> Self | None:
    """Asks the platform; `None` where it can't be reached now. `ChatFault`: it refuses the token."""
    try:
        me = await bot.get_me()
    except InvalidToken as error:
        raise ChatFault(REFUSED_TOKEN) from error
    except TelegramError:
        return None
    return Self(me.id, me.username or "")
