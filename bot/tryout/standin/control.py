"""The people's side over HTTP, all JSON, errors as `{"error": "..."}`. `?bot=<id>` names a bot; else the first.

GET  /people                          everyone           POST /people {id, first_name, language, zone}
GET  /people/<id>/chat                messages, keyboard, commands; `last` is where news goes on
POST /people/<id>/say {text, reply_to}    start {payload}    edit {message, text}    delete {message}
POST /people/<id>/tap {message, button}   button: a label, a number, or [row, column]
POST /people/<id>/send                multipart: file, kind (document, photo, voice, video), caption, reply_to
POST /people/<id>/sticker {emoji}     forward {text}     block {}     unblock {}
GET  /people/news?after=N&wait_s=25   what happened after notice N, waiting for it; N = -1 tells only `last`
GET  /people/files/<bot>/<path>       a file of a message
GET  /control/calls?after=N           the bots' calls    POST /control/faults [{trouble, ...}]    DELETE /control/faults
"""

from collections.abc import Awaitable, Callable
from dataclasses import dataclass

from aiohttp import BodyPartReader, web
from aiohttp.typedefs import Handler

from bot.tryout.standin.acts import act, read_kind
from bot.tryout.standin.house import Bot, House
from bot.tryout.standin.model import Person
from bot.tryout.standin.orders import read_faults
from bot.tryout.standin.pictures import picture_mime
from bot.tryout.standin.seat import Seat
from bot.tryout.standin.shown import show_call, show_chat, show_notice, show_person
from bot.tryout.standin.sight import CantDo
from bot.tryout.standin.values import JsonObject, JsonValue

LONGEST_WAIT_S = 50.0


@dataclass(frozen=True, slots=True)
class Control:
    """The routes, over the same house that the bots use."""

    house: House
    seat: Callable[[int, int], Seat]
    add_person: Callable[..., Person]

    def lay(self, app: web.Application) -> None:
        """Adds the routes."""
        router = app.router
        router.add_get("/people", plain(self.list_people))
        router.add_post("/people", plain(self.new_person))
        router.add_get("/people/news", plain(self.news))
        router.add_get("/people/files/{bot}/{path:.+}", self.file)
        router.add_get("/people/{id}/chat", plain(self.chat))
        router.add_post("/people/{id}/send", plain(self.send))
        router.add_post("/people/{id}/{act}", plain(self.act))
        router.add_get("/control/calls", plain(self.calls))
        router.add_post("/control/faults", plain(self.add_faults))
        router.add_delete("/control/faults", plain(self.clear_faults))

    def _bot(self, request: web.Request) -> Bot:
        return self.house.bot(int(request.query.get("bot", "0")))

    def _seat(self, request: web.Request) -> Seat:
        number = int(request.match_info["id"])
        if number not in self.house.people:
            raise CantDo(f"there is nobody with the id {number}")
        return self.seat(number, int(request.query.get("bot", "0")))

    async def list_people(self, request: web.Request) -> JsonValue:
        """Everyone, and the bot they talk to."""
        bot = self._bot(request)
        people = [show_person(bot, person) for person in self.house.people.values()]
        named: JsonObject = {"id": bot.id, "name": bot.user.first_name, "username": bot.user.username}
        return {"bot": named, "people": people}

    async def new_person(self, request: web.Request) -> JsonValue:
        """Adds someone; an id of their own when none is given."""
        given = await body(request)
        name = str(given.get("first_name") or "").strip()
        if not name:
            raise CantDo("a person needs a name")
        number = given.get("id")
        if not isinstance(number, int):
            number = max(self.house.people, default=1000) + 1
        language, zone = str(given.get("language") or "en"), str(given.get("zone") or "")
        return show_person(self._bot(request), self.add_person(number, name, language, zone=zone))

    async def chat(self, request: web.Request) -> JsonValue:
        """A whole chat."""
        seat = self._seat(request)
        return show_chat(self.house, seat.bot, seat.chat)

    async def act(self, request: web.Request) -> JsonValue:
        """Something a person does."""
        return act(self._seat(request), request.match_info["act"], await body(request))

    async def send(self, request: web.Request) -> JsonValue:
        """A file from a person."""
        seat = self._seat(request)
        fields: dict[str, str] = {}
        name, mime, data = "", "", b""
        async for part in await request.multipart():
            if not isinstance(part, BodyPartReader):
                continue
            if part.name == "file":
                name, mime = part.filename or "file", part.headers.get("Content-Type", "")
                data = bytes(await part.read())
            else:
                fields[part.name or ""] = await part.text()
        caption, reply_to = fields.get("caption", ""), int(fields.get("reply_to") or 0)
        kind = read_kind(fields.get("kind", "document"))
        return {"message": seat.send(kind, data, name=name, mime=mime, caption=caption, reply_to=reply_to)}

    async def news(self, request: web.Request) -> JsonValue:
        """What happened since, waiting for it."""
        after, wait_s = int(request.query.get("after", "0")), float(request.query.get("wait_s", "25"))
        if after < 0:
            return {"last": self.house.news.last, "notices": []}
        notices = await self.house.news.wait(after, min(wait_s, LONGEST_WAIT_S))
        bot = self._bot(request)
        shown = [show_notice(bot, notice) for notice in notices if notice.bot_id in {0, bot.id}]
        return {"last": notices[-1].number if notices else self.house.news.last, "notices": shown}

    async def file(self, request: web.Request) -> web.StreamResponse:
        """A file's bytes; pictures to be looked at, the rest to be kept."""
        media = self.house.bot(int(request.match_info["bot"])).shelf.at(request.match_info["path"])
        if media is None:
            raise web.HTTPNotFound
        mime = picture_mime(media.data) or "application/octet-stream"
        response = web.Response(body=media.data, content_type=mime)
        response.headers["X-Content-Type-Options"] = "nosniff"
        return response

    async def calls(self, request: web.Request) -> JsonValue:
        """The bots' calls after a number."""
        after = int(request.query.get("after", "0"))
        return [show_call(call) for call in self.house.record.calls[after:]]

    async def add_faults(self, request: web.Request) -> JsonValue:
        """Puts trouble in force."""
        self.house.faults.add(*read_faults(await request.json()))
        return {"in_force": len(self.house.faults.listed())}

    async def clear_faults(self, _request: web.Request) -> JsonValue:
        """Takes all trouble away."""
        self.house.faults.clear()
        return {"in_force": 0}


async def body(request: web.Request) -> JsonObject:
    """The JSON object of a request; empty when there is none."""
    if not request.can_read_body:
        return {}
    given = await request.json()
    if not isinstance(given, dict):
        raise CantDo("a JSON object is wanted")
    return given


def plain(handle: Callable[[web.Request], Awaitable[JsonValue]]) -> Handler:
    """Answers with JSON; what a person can't do is 400 with the reason."""

    async def serve(request: web.Request) -> web.StreamResponse:
        try:
            return web.json_response(await handle(request))
        except ValueError as error:
            return web.json_response({"error": str(error)}, status=400)

    return serve
