"""HTTP for the client library over aiohttp: a good deal faster than its own, and plain about what was sent.

The outbox must know three troubles apart: nothing went out (`NotSentError`), the connection broke after the request
may have gone out (`BrokenError`), the answer did not come in time (`SlowError`).
"""

import json
from typing import Any

import aiohttp
from telegram._utils.defaultvalue import DefaultValue
from telegram._utils.types import ODVInput
from telegram.error import NetworkError, TelegramError, TimedOut
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


class SlowError(TimedOut):
    """The request went out; its answer did not come in time."""


UNTOLD_WAIT_S = 5.0
CONNECT_S = 10.0
READ_S = 20.0
"""A slow answer is rarer than a lost one: long enough that a send rarely ends in doubt."""
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
        if self._session is None:
            raise RuntimeError("the transport is not initialized")
        read_s = self._read_s if isinstance(read_timeout, DefaultValue) else read_timeout
        connect_s = CONNECT_S if isinstance(connect_timeout, DefaultValue) else connect_timeout
        timeout = aiohttp.ClientTimeout(total=None, sock_connect=connect_s, sock_read=read_s)
        try:
            async with self._session.request(method, url, data=_form(request_data), timeout=timeout) as answer:
                body = await answer.read()
                if answer.status == 429:
                    raise WaitError(_wait_s(body))
                return answer.status, body
        except (aiohttp.ClientConnectorError, aiohttp.ConnectionTimeoutError, aiohttp.InvalidURL) as error:
            raise NotSentError(f"no connection: {type(error).__name__}") from error
        except TimeoutError as error:  # aiohttp's SocketTimeoutError among them
            raise SlowError(f"no answer: {type(error).__name__}") from error
        except (aiohttp.ClientError, OSError) as error:
            raise BrokenError(f"connection broke: {type(error).__name__}") from error


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
    form = aiohttp.FormData(fields)
    for name, (file_name, content, mime) in request_data.multipart_data.items():
        form.add_field(name, content, filename=file_name, content_type=mime)
    return form
