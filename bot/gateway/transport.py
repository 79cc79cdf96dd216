"""HTTP for the client library over aiohttp: a good deal faster than its own, and plain about what was sent.

The outbox must know three troubles apart: nothing went out (`NotSentError`), the connection broke after the request
may have gone out (`BrokenError`), the answer did not come in time (`SlowError`).
"""

import json
from typing import Any

import aiohttp
from telegram._utils.defaultvalue import DefaultValue
from telegram._utils.types import ODVInput
from telegram.error import BadRequest, InvalidToken, NetworkError, TelegramError, TimedOut
from telegram.request import BaseRequest, RequestData


class NotSentError(NetworkError):
    """No connection came about: surely nothing was sent."""


class BrokenError(NetworkError):
    """The connection broke after the request may have gone out."""


class WaitError(TelegramError):
    """Too many at once (429): ask again after so many seconds. The library's own error for it warns of itself."""

    def __init__(self, after_s: float) -> None:
        super().__init__(f"asked to wait {after_s} s")
        self.after_s = after_s


class TooBigError(TelegramError):
    """A file has more bytes than were asked for."""


class SlowError(TimedOut):
    """The request went out; its answer did not come in time."""


UNTOLD_WAIT_S = 5.0
CONNECT_S = 10.0
READ_S = 20.0
"""A slow answer is rarer than a lost one: long enough that a send rarely ends in doubt."""
FILE_S = 40.0
"""For a whole file, however slowly it comes: shorter than the lease of what is being carried."""
KEEP_ALIVE_S = 30.0
"""An idle connection is closed by us before the other side does: a request never meets a closing door."""


class AiohttpRequest(BaseRequest):
    """The client library's transport. `connections` at most are open at once; more requests wait for one.
    `proxy` is the address of an HTTP proxy, where one is needed."""

    __slots__ = ("_connections", "_proxy", "_read_s", "_session")

    def __init__(self, *, connections: int = 64, read_s: float = READ_S, proxy: str = "") -> None:
        self._connections, self._read_s, self._proxy = connections, read_s, proxy
        self._session: aiohttp.ClientSession | None = None

    @property
    def read_timeout(self) -> float | None:
        """Seconds to wait for an answer where the call says nothing."""
        return self._read_s

    async def initialize(self) -> None:
        """Opens the pool."""
        if self._session is None or self._session.closed:
            connector = aiohttp.TCPConnector(limit=self._connections, keepalive_timeout=KEEP_ALIVE_S, ttl_dns_cache=300)
            self._session = aiohttp.ClientSession(
                connector=connector,
                cookie_jar=aiohttp.DummyCookieJar(),
                headers={"User-Agent": self.USER_AGENT},
                proxy=self._proxy or None,
            )

    async def shutdown(self) -> None:
        """Closes the pool."""
        if self._session is not None:
            await self._session.close()

    async def do_request(  # noqa: PLR0917  the library's signature
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: ODVInput[float] = BaseRequest.DEFAULT_NONE,
        write_timeout: ODVInput[float] = BaseRequest.DEFAULT_NONE,
        connect_timeout: ODVInput[float] = BaseRequest.DEFAULT_NONE,
        pool_timeout: ODVInput[float] = BaseRequest.DEFAULT_NONE,
    ) -> tuple[int, bytes]:
        """One request; status and body. Raises `NotSentError`, `BrokenError` or `SlowError`."""
        del write_timeout, pool_timeout
        session = self._opened()
        read_s = self._read_s if isinstance(read_timeout, DefaultValue) else read_timeout
        connect_s = CONNECT_S if isinstance(connect_timeout, DefaultValue) else connect_timeout
        timeout = aiohttp.ClientTimeout(total=None, sock_connect=connect_s, sock_read=read_s)
        try:
            async with session.request(method, url, data=_form(request_data), timeout=timeout) as answer:
                body = await answer.read()
                if answer.status == 429:
                    raise WaitError(_wait_s(body))
                return answer.status, body
        except _BROKEN as error:
            raise _trouble(error) from error

    async def take(self, url: str, *, most: int) -> bytes:
        """A file's content, read only as far as it is wanted: `TooBigError` above `most` bytes. Else raises as
        `do_request` does, `BadRequest` where there is no such file, `InvalidToken` where the token is refused."""
        timeout = aiohttp.ClientTimeout(total=FILE_S, sock_connect=CONNECT_S, sock_read=self._read_s)
        try:
            async with self._opened().get(url, timeout=timeout) as answer:
                _check_status(answer.status)
                if (answer.content_length or 0) > most:
                    raise TooBigError("too big")
                content = bytearray()
                async for chunk in answer.content.iter_chunked(65_536):
                    content += chunk
                    if len(content) > most:
                        raise TooBigError("too big")
                return bytes(content)
        except _BROKEN as error:
            raise _trouble(error) from error

    def _opened(self) -> aiohttp.ClientSession:
        if self._session is None:
            raise RuntimeError("the transport is not initialized")
        return self._session


_BROKEN = (aiohttp.ClientError, aiohttp.InvalidURL, OSError)


def _trouble(error: Exception) -> NetworkError:
    """Which of the three it was. Never with the address, which holds the token."""
    match error:
        case aiohttp.ClientConnectorError() | aiohttp.ConnectionTimeoutError() | aiohttp.InvalidURL():
            return NotSentError(f"no connection: {type(error).__name__}")
        case TimeoutError():  # aiohttp's SocketTimeoutError among them
            return SlowError(f"no answer: {type(error).__name__}")
        case _:
            return BrokenError(f"connection broke: {type(error).__name__}")


def _check_status(status: int) -> None:
    """What the file server's refusals mean (Bot API, getFile)."""
    match status:
        case 200:
            return
        case 401:
            raise InvalidToken("the file server refuses the token")
        case 429:
            raise WaitError(UNTOLD_WAIT_S)
        case _ if status >= 500:
            raise NetworkError(f"the file server fails ({status})")
        case _:
            raise BadRequest(f"no such file ({status})")


def _wait_s(body: bytes) -> float:
    """Seconds to wait, as the platform says; a few where it doesn't."""
    try:
        told = json.loads(body)["parameters"]["retry_after"]
    except (ValueError, KeyError, TypeError):
        return UNTOLD_WAIT_S
    return float(told) if isinstance(told, int | float) and 0 < told < 86_400 else UNTOLD_WAIT_S


def _form(request_data: RequestData | None) -> Any:  # Any: aiohttp's own type for bodies
    """The parameters as a form, with files where there are any."""
    if request_data is None:
        return None
    fields = request_data.json_parameters
    if not request_data.contains_files:
        return fields
    form = aiohttp.FormData(fields, quote_fields=False)  # else the platform shows a name as `plan%20%C3%A9.csv`
    for name, (file_name, content, mime) in request_data.multipart_data.items():
        form.add_field(name, content, filename=file_name, content_type=mime)
    return form
