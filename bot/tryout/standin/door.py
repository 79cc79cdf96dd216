"""The bots' door: takes a call, lets the faults have their way, carries it out, writes it down, answers."""

import asyncio
import json
from dataclasses import dataclass

from aiohttp import web

from bot.tryout.standin.ask import Ask
from bot.tryout.standin.faults import CallTrouble, CutAfter, CutBefore, Delay, ServerError, SlowAnswer, TooMany
from bot.tryout.standin.house import TOKEN, Bot, House
from bot.tryout.standin.methods import METHODS, NAMES
from bot.tryout.standin.methods.receiving import get_updates
from bot.tryout.standin.reading import read_ask
from bot.tryout.standin.record import Call
from bot.tryout.standin.refusals import NO_SUCH_METHOD, NOT_FOUND, UNAUTHORIZED, Refusal, too_many
from bot.tryout.standin.values import JsonValue

Outcome = tuple[JsonValue, Refusal | None]


@dataclass(frozen=True, slots=True)
class Knock:
    """A call that has come in."""

    bot: Bot
    method: str
    ask: Ask

    @property
    def chat_id(self) -> int:
        """The chat it is about; that of the tap for an answer to one; 0 for none."""
        query = self.bot.queries.get(self.ask.text("callback_query_id"))
        return query.chat_id if query is not None else self.ask.whole("chat_id")


class Door:
    """Serves `/bot<token>/<method>` and `/file/bot<token>/<path>`."""

    def __init__(self, house: House) -> None:
        self._house = house

    def lay(self, app: web.Application) -> None:
        """Adds its routes."""
        app.router.add_route("*", "/bot{token}/{method}", self.serve_call)
        app.router.add_get("/file/bot{token}/{path:.+}", self.serve_file)

    async def serve_call(self, request: web.Request) -> web.StreamResponse:
        """One call of one bot."""
        bot = self._house.bots.get(request.match_info["token"])
        if bot is None:
            return answer(None, UNAUTHORIZED if TOKEN.fullmatch(request.match_info["token"]) else NOT_FOUND)
        method = NAMES.get(request.match_info["method"].lower())
        if method is None:
            return answer(None, NO_SUCH_METHOD)
        try:
            ask = await read_ask(request, self._house.limits)
        except Refusal as refusal:
            return answer(None, refusal)
        return await self._serve(request, Knock(bot, method, ask))

    async def _serve(self, request: web.Request, knock: Knock) -> web.StreamResponse:
        trouble = self._house.faults.for_call(knock.method, knock.chat_id)
        match trouble:
            case CutBefore():
                self._write_down(knock, (None, None), "cut before")
                return cut(request)
            case TooMany(retry_after_s):
                return self._refuse(knock, too_many(retry_after_s), "too many")
            case ServerError(code, after=False):
                return self._refuse(knock, broken(code), "server error")
            case Delay(seconds):
                await asyncio.sleep(seconds)
            case _:
                pass
        outcome = await self._perform(knock)
        self._write_down(knock, outcome, name_of(trouble))
        return await _answer_after(request, trouble, outcome)

    async def _perform(self, knock: Knock) -> Outcome:
        """Carries a call out: a result, or a refusal."""
        try:
            if knock.method == "getUpdates":
                return await get_updates(self._house, knock.bot, knock.ask), None
            return METHODS[knock.method](self._house, knock.bot, knock.ask), None
        except Refusal as refusal:
            return None, refusal

    async def perform_posted(self, bot: Bot, ask: Ask) -> None:
        """Carries out a call that came as the answer to a webhook post; its result is told to nobody."""
        method = NAMES.get(ask.text("method").lower())
        if method is not None and method != "getUpdates":
            knock = Knock(bot, method, ask)
            self._write_down(knock, await self._perform(knock), "")

    async def serve_file(self, request: web.Request) -> web.StreamResponse:
        """A file that getFile named."""
        bot = self._house.bots.get(request.match_info["token"])
        if bot is None:
            return answer(None, UNAUTHORIZED)
        media = bot.shelf.at(request.match_info["path"])
        if media is None:
            return answer(None, NOT_FOUND)
        return web.Response(body=media.data, content_type="application/octet-stream")

    def _refuse(self, knock: Knock, refusal: Refusal, fault: str) -> web.Response:
        self._write_down(knock, (None, refusal), fault)
        return answer(None, refusal)

    def _write_down(self, knock: Knock, outcome: Outcome, fault: str) -> None:
        house, (result, refusal) = self._house, outcome
        call = Call(
            number=len(house.record.calls) + 1,
            bot_id=knock.bot.id,
            method=knock.method,
            chat_id=knock.chat_id,
            at=house.clock.now(),
            monotonic_s=house.seconds(),
            params=knock.ask.for_record(),
            result=result,
            refusal=refusal,
            fault=fault,
        )
        house.record.keep(call)


async def _answer_after(request: web.Request, trouble: CallTrouble | None, outcome: Outcome) -> web.StreamResponse:
    match trouble:
        case CutAfter():
            return cut(request)
        case ServerError(code):
            return answer(None, broken(code))
        case SlowAnswer(seconds):
            # The handler is cancelled when the client goes away.
            await (asyncio.Event().wait() if seconds is None else asyncio.sleep(seconds))
        case _:
            pass
    return answer(*outcome)


def name_of(trouble: CallTrouble | None) -> str:
    """A fault's name in the record; only those that let the call take effect."""
    match trouble:
        case None:
            return ""
        case CutAfter():
            return "cut after"
        case SlowAnswer():
            return "slow answer"
        case ServerError():
            return "server error after"
        case Delay():
            return "delay"
        case CutBefore() | TooMany():
            return "without effect"


def broken(code: int) -> Refusal:
    """The platform's own trouble."""
    return Refusal(code, {502: "Bad Gateway"}.get(code, "Internal Server Error"))


def answer(result: JsonValue, refusal: Refusal | None) -> web.Response:
    """The platform's envelope; the HTTP status is the error code."""
    body = {"ok": True, "result": result} if refusal is None else refusal.answer()
    status = 200 if refusal is None else refusal.code
    try:
        raw = json.dumps(body, ensure_ascii=False, separators=(",", ":")).encode()
    except UnicodeEncodeError:
        # Half a surrogate pair, which only an update pushed raw can hold.
        raw = json.dumps(body).encode()
    return web.Response(body=raw, status=status, content_type="application/json")


def cut(request: web.Request) -> web.Response:
    """Breaks the connection without an answer."""
    if request.transport is not None:
        request.transport.close()
    return web.Response()
