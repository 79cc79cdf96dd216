"""Keeps web pages of strangers out: a request that names another origin, or a host that isn't this one, is refused."""

from urllib.parse import urlsplit

from aiohttp import web
from aiohttp.typedefs import Handler, Middleware

LOOPBACK = frozenset({"127.0.0.1", "localhost", "::1"})


def guard(*, loopback: bool) -> Middleware:
    """Checks `Origin`, and on loopback `Host` too (a name that was pointed here from outside)."""

    @web.middleware
    async def check(request: web.Request, handler: Handler) -> web.StreamResponse:
        origin = request.headers.get("Origin")
        if origin is not None and urlsplit(origin).netloc != request.host:
            return web.json_response({"error": "another site may not use this"}, status=403)
        if loopback and urlsplit(f"//{request.host}").hostname not in LOOPBACK:
            return web.json_response({"error": "this is served on loopback only"}, status=403)
        return await handler(request)

    return check
