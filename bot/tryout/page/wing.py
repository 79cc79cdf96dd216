"""The page's routes: its files, who goes on which sheet, and the clock with its steps."""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

from aiohttp import web

from bot.tryout.page.control import ClockControl
from bot.tryout.standin.server import Wing

FOLDER = Path(__file__).parent / "sheet"
KINDS = {".html": "text/html", ".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml"}
POLICY = "default-src 'self'; img-src 'self' data:; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"


def serve_page(control: ClockControl | None = None, *, coaches: tuple[int, ...] = (), title: str = "Chalkpost") -> Wing:
    """The page as a wing of the stand-in's server."""

    def lay(app: web.Application) -> None:
        Page(control, coaches, title).lay(app)

    return lay


@dataclass(frozen=True, slots=True)
class Page:
    """The routes `/`, `/sheet/<file>`, `/setting` and `/clock`."""

    control: ClockControl | None
    coaches: tuple[int, ...]
    title: str

    def lay(self, app: web.Application) -> None:
        """Adds the routes."""
        app.router.add_get("/", self.index)
        app.router.add_get("/sheet/{name}", self.file)
        app.router.add_get("/setting", self.setting)
        app.router.add_get("/clock", self.clock)
        app.router.add_post("/clock", self.step)

    async def index(self, _request: web.Request) -> web.StreamResponse:
        """The page itself."""
        return _file("index.html")

    async def file(self, request: web.Request) -> web.StreamResponse:
        """One of its files."""
        return _file(request.match_info["name"])

    async def setting(self, _request: web.Request) -> web.StreamResponse:
        """The title, who coaches, and whether there is a clock to move."""
        shown = {"title": self.title, "coaches": list(self.coaches), "clock": self.control is not None}
        return web.json_response(shown)

    async def clock(self, _request: web.Request) -> web.StreamResponse:
        """The time, whether it stands, and when something is due."""
        return await self._show()

    async def step(self, request: web.Request) -> web.StreamResponse:
        """Moves the clock: `{"step": "next" | "hour" | "tomorrow" | "pause" | "go"}`."""
        given = await request.json()
        step = given.get("step") if isinstance(given, dict) else None
        moves = self._moves()
        if self.control is None or step not in moves:
            return web.json_response({"error": f"the clock has no step called {step!r}"}, status=400)
        await moves[step]()
        return await self._show()

    def _moves(self) -> dict[str, Callable[[], Awaitable[None]]]:
        control = self.control
        if control is None:
            return {}

        async def go_next() -> None:
            due = await control.next_due()
            if due is not None:
                await control.go_to(due)

        return {
            "next": go_next,
            "hour": lambda: control.add(timedelta(hours=1)),
            "tomorrow": control.tomorrow,
            "pause": lambda: control.pause(True),
            "go": lambda: control.pause(False),
        }

    async def _show(self) -> web.StreamResponse:
        control = self.control
        if control is None:
            return web.json_response({"error": "there is no clock to move"}, status=404)
        due = await control.next_due()
        shown = {"now": control.now().isoformat(), "paused": control.paused, "next_due": due and due.isoformat()}
        return web.json_response(shown)


def _file(name: str) -> web.Response:
    path = FOLDER / name
    kind = KINDS.get(path.suffix)
    if kind is None or path.parent != FOLDER or not path.is_file():
        raise web.HTTPNotFound
    response = web.Response(body=path.read_bytes(), content_type=kind, charset="utf-8")
    response.headers.update({"Content-Security-Policy": POLICY, "Cache-Control": "no-cache"})
    response.headers["X-Content-Type-Options"] = "nosniff"
    return response
