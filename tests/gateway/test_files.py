"""Files through the gateway: out as documents, in by getFile and the file server; each trouble told apart.

Source of the limits and refusals: "getFile", "sendDocument" and "Sending files" of the Bot API's documentation.
"""

import json
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from dataclasses import replace

import pytest
from aiohttp import web

from bot.dialogue.incoming import MediaSent
from bot.faults import ChatFault
from bot.gateway.library import Platform, library_bot
from bot.gateway.reader import RawReader
from bot.gateway.sender import LibrarySender, plain_name
from bot.runtime.ports import Bringing, Got, Keyboard, Later, NotSent, Refused, SendFile, Sent, TooBig, Unknown
from bot.tryout.standin import CutAfter, Fault, Limits, Seat, StandIn, TooMany
from tests.gateway.conftest import MINA, NOON, menu

BUTTONS: Keyboard = (({"text": "Done", "callback_data": "1:set:abc"},),)
SHEET = bytes(range(256)) * 40


@pytest.fixture
def limits() -> Limits:
    """The platform gives out small files only: the rule is the same."""
    return replace(Limits(pace=None), download_bytes=20_000)


def file_of(seat: Seat, data: bytes = SHEET, name: str = "plan.xlsx") -> str:
    """Mina sends a file; the platform's name for it."""
    number = seat.send("document", data, name=name)
    media = seat.message(number).media
    assert media is not None
    return media.file_id


async def test_a_file_arrives_with_its_name_words_and_buttons(sender: LibrarySender, mina: Seat) -> None:
    """The same bytes; the caption is HTML."""
    outcome = await sender.send(SendFile(MINA, "plan é.csv", SHEET, "<b>Plan</b>", BUTTONS, silent=True))
    last = mina.last()
    assert outcome == Sent(last.id)
    assert last.media is not None
    assert (last.media.kind, last.media.name, last.media.data) == ("document", "plan é.csv", SHEET)
    assert last.words.text == "Plan"
    assert last.inline is not None
    assert last.silent


async def test_a_file_without_words(sender: LibrarySender, mina: Seat) -> None:
    assert await sender.send(SendFile(MINA, "a.csv", b"1", "")) == Sent(mina.last().id)
    assert mina.last().words.text == ""


@pytest.mark.parametrize(
    ("name", "plain"),
    [
        ("week 2.xlsx", "week 2.xlsx"),
        ("../../etc/passwd", "etc_passwd"),
        ('a\nb"c<d>|?*:.csv', "a_b_c_d_____.csv"),
        ("", "file"),
        ("...", "file"),
        ("x" * 300 + ".xlsx", "x" * 60 + ".xlsx"),
        ("x" * 300, "x" * 60),
    ],
)
def test_a_files_name_is_harmless_on_every_device(name: str, plain: str) -> None:
    assert plain_name(name) == plain


async def test_a_file_is_brought(sender: LibrarySender, mina: Seat) -> None:
    """What was sent, to the last byte; also one of exactly as many as are wanted."""
    assert await sender.bring(file_of(mina), most=len(SHEET)) == Got(SHEET)


async def test_a_file_beyond_what_is_wanted_is_not_read(sender: LibrarySender, mina: Seat) -> None:
    """By the size that the platform tells; and by its own limit (20 MB at the real one)."""
    assert await sender.bring(file_of(mina), most=len(SHEET) - 1) == TooBig()
    assert await sender.bring(file_of(mina, b"x" * 20_001, "big.xlsx"), most=1_000_000) == TooBig()


async def test_a_file_that_never_was_is_refused(sender: LibrarySender, mina: Seat) -> None:
    assert mina.chat.started
    assert isinstance(await sender.bring("no-such-file", most=10), Refused)


@pytest.mark.parametrize(
    ("fault", "kind"), [(Fault(TooMany(7)), Later), (Fault(CutAfter()), Unknown)], ids=["too many", "cut"]
)
async def test_trouble_on_the_way(*, fault: Fault, kind: type[Bringing], sender: LibrarySender, mina: Seat) -> None:
    file = file_of(mina)
    mina.house.faults.add(fault)
    assert isinstance(await sender.bring(file, most=100_000), kind)


async def test_a_void_token_ends_it(standin: StandIn) -> None:
    async with library_bot(Platform("43:OTHER", standin.url)) as bot:
        with pytest.raises(ChatFault, match="refuses the bot's token"):
            await LibrarySender(bot, menu=menu).bring("x", most=10)


# --- a platform that does what the stand-in doesn't


@asynccontextmanager
async def platform(
    *, path: object = "documents/a b.csv", size: object = None, file: Callable[[], Awaitable[web.StreamResponse]]
) -> AsyncIterator[LibrarySender]:
    """A platform whose getFile and file server answer so."""

    async def get_file(_: web.Request) -> web.Response:
        shown = {"file_id": "f", "file_unique_id": "u", "file_path": path, "file_size": size}
        return web.json_response({"ok": True, "result": {k: v for k, v in shown.items() if v is not None}})

    async def serve(_: web.Request) -> web.StreamResponse:
        return await file()

    app = web.Application()
    app.router.add_post("/bot42:TEST/getFile", get_file)
    app.router.add_get("/file/bot42:TEST/documents/a b.csv", serve)
    runner = web.AppRunner(app)
    await runner.setup()
    await web.TCPSite(runner, "127.0.0.1", 0).start()
    async with library_bot(Platform("42:TEST", f"http://127.0.0.1:{runner.addresses[0][1]}"), read_s=0.2) as bot:
        yield LibrarySender(bot, menu=menu)
    await runner.cleanup()


async def answer(status: int, body: bytes = b"1;2") -> web.StreamResponse:
    return web.Response(status=status, body=body)


async def test_a_size_that_is_not_told_or_not_true_is_found_out() -> None:
    """The content is read no further than wanted."""
    for size in (None, 3, "3"):
        async with platform(size=size, file=lambda: answer(200, b"x" * 1_000_000)) as sender:
            assert await sender.bring("f", most=1_000) == TooBig()
        async with platform(size=size, file=lambda: answer(200)) as sender:
            assert await sender.bring("f", most=1_000) == Got(b"1;2")


@pytest.mark.parametrize(
    ("status", "kind"), [(404, Refused), (400, Refused), (500, Unknown), (502, Unknown), (429, Later)]
)
async def test_the_file_servers_refusals(status: int, kind: type[Bringing]) -> None:
    async with platform(file=lambda: answer(status)) as sender:
        assert isinstance(await sender.bring("f", most=1_000), kind)


@pytest.mark.parametrize("path", ["/var/lib/server/documents/a.csv", 7, None])
async def test_a_path_that_is_none_of_http_is_refused(path: object) -> None:
    """A server of one's own run with --local tells a path on its disk: it is not followed."""
    async with platform(path=path, file=lambda: answer(200)) as sender:
        assert isinstance(await sender.bring("f", most=1_000), Refused)


async def test_no_address_of_the_file_server_is_ever_told() -> None:
    """It holds the token."""
    async with library_bot(Platform("42:TEST-SECRET", "http://127.0.0.1:9")) as bot:
        outcome = await LibrarySender(bot, menu=menu).bring("f", most=10)
    assert isinstance(outcome, NotSent)
    assert "SECRET" not in outcome.error


@pytest.mark.parametrize(("told", "size"), [(5, 5), (0, 0), (None, None), (-1, None), (True, None), ("5", None)])
def test_the_size_that_a_message_tells(told: object, size: int | None) -> None:
    message = {
        "message_id": 5,
        "date": int(NOON.timestamp()),
        "chat": {"id": 7, "type": "private"},
        "document": {"file_id": "f", "file_name": "a.csv", "file_size": told},
    }
    read = RawReader().read(json.dumps({"update_id": 1, "message": message}), received_at=NOON)
    assert isinstance(read, MediaSent)
    assert read.size == size
