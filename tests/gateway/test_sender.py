"""Each call as the platform sees it, and each of its errors as the outcome that the outbox must know."""

import socket
import zlib

import pytest
from aiohttp import web

from bot.faults import ChatFault
from bot.gateway.library import Platform, library_bot
from bot.gateway.sender import LibrarySender
from bot.runtime.ports import (
    AnswerTap,
    Call,
    CopyOver,
    EditPicture,
    EditWords,
    Gone,
    Keyboard,
    Later,
    LeaveChat,
    NotSent,
    Outcome,
    Refusal,
    Refused,
    SendPicture,
    SendWords,
    Sent,
    SetReaction,
    ShowMenu,
    StripButtons,
    Unknown,
)
from bot.tryout.standin import (
    CutAfter,
    CutBefore,
    Fault,
    Limits,
    PaceLimits,
    Seat,
    ServerError,
    SlowAnswer,
    StandIn,
    TooMany,
)
from tests.gateway.conftest import MINA, menu

BUTTONS: Keyboard = (({"text": "Done", "callback_data": "1:set:abc"}, {"text": "Web", "url": "https://example.org"}),)
STRANGER = 99


def png() -> bytes:
    """The smallest picture that is one: 8 by 8, grey (PNG, W3C recommendation)."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        return len(data).to_bytes(4) + kind + data + zlib.crc32(kind + data).to_bytes(4)

    header = (8).to_bytes(4) + (8).to_bytes(4) + bytes([8, 0, 0, 0, 0])
    rows = zlib.compress(b"".join(b"\0" + bytes(range(8)) for _ in range(8)))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


async def test_words_arrive_as_html_with_their_buttons_and_without_a_preview(
    sender: LibrarySender, mina: Seat, standin: StandIn
) -> None:
    """A message is one call; its number comes back."""
    outcome = await sender.send(SendWords(MINA, "<b>Squat</b> 3 &lt; 4 https://example.org", BUTTONS, silent=True))
    last = mina.last()
    assert outcome == Sent(last.id)
    assert last.words.text == "Squat 3 < 4 https://example.org"
    assert [b.label for row in (last.inline.rows if last.inline else ()) for b in row] == ["Done", "Web"]
    params = standin.record.of("sendMessage")[-1].params
    assert params["disable_notification"] in (True, "true")
    assert "is_disabled" in str(params["link_preview_options"])


async def test_a_message_is_edited_in_place(sender: LibrarySender, mina: Seat) -> None:
    """Words and buttons are replaced; the number stays."""
    sent = await sender.send(SendWords(MINA, "One", BUTTONS))
    assert isinstance(sent, Sent)
    assert sent.message is not None
    assert await sender.send(EditWords(MINA, sent.message, "<i>Two</i>")) == Sent(None)
    assert mina.last().words.text == "Two"
    assert mina.last().inline is None


async def test_buttons_are_stripped(sender: LibrarySender, mina: Seat) -> None:
    """The words stay."""
    sent = await sender.send(SendWords(MINA, "One", BUTTONS))
    assert isinstance(sent, Sent)
    assert sent.message is not None
    assert await sender.send(StripButtons(MINA, sent.message)) == Sent(None)
    assert mina.last().words.text == "One"
    assert mina.last().inline is None
    again = await sender.send(StripButtons(MINA, sent.message))
    assert isinstance(again, Refused)
    assert again.why is Refusal.UNCHANGED


async def test_a_picture_arrives_and_is_replaced(sender: LibrarySender, mina: Seat) -> None:
    """Its caption is HTML."""
    sent = await sender.send(SendPicture(MINA, png(), "<b>Week</b> 9", BUTTONS))
    assert isinstance(sent, Sent)
    assert sent.message is not None
    assert mina.last().words.text == "Week 9"
    assert mina.last().media is not None
    assert await sender.send(EditPicture(MINA, sent.message, png(), "Week 10")) == Sent(None)
    assert mina.last().words.text == "Week 10"


async def test_somebodys_message_is_copied_and_reacted_to(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    """A copy gives the new message's number."""
    said = mina.say("hello")
    standin.add_person(8, "Olek")
    olek = standin.seat(8)
    olek.start()
    outcome = await sender.send(CopyOver(8, MINA, said))
    assert outcome == Sent(olek.last().id)
    assert olek.last().words.text == "hello"
    assert await sender.send(SetReaction(MINA, said, "👍")) == Sent(None)


async def test_a_reply_to_a_message_that_is_gone_goes_out_all_the_same(sender: LibrarySender, mina: Seat) -> None:
    """The words matter more than what they answer."""
    assert isinstance(await sender.send(SendWords(MINA, "Yes", reply_to=4_000)), Sent)
    assert mina.last().words.text == "Yes"


async def test_the_menu_of_a_role_is_shown_in_one_chat(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    """Names and descriptions come from the words."""
    assert await sender.send(ShowMenu(mina.chat.id, "client")) == Sent(None)
    assert "today" in str(standin.record.of("setMyCommands")[-1].params)


async def test_a_tap_is_acknowledged_once_and_in_time(sender: LibrarySender, mina: Seat) -> None:
    """With words or without; what comes too late is refused, and harms nobody."""
    sent = await sender.send(SendWords(MINA, "One", BUTTONS))
    assert isinstance(sent, Sent)
    assert sent.message is not None
    query = mina.tap(sent.message, "Done")
    assert await sender.send(AnswerTap(query, "Saved " * 100)) == Sent(None)
    assert (await mina.wait_answer(query)).startswith("Saved")
    late = await sender.send(AnswerTap("123456789", "x"))
    assert isinstance(late, Refused)
    assert late.why is Refusal.TAP_TOO_OLD


async def test_a_chat_that_is_no_private_one_is_left(sender: LibrarySender) -> None:
    """A chat that the bot isn't in can't be left: it is gone either way."""
    assert isinstance(await sender.send(LeaveChat(-1001)), Gone | Refused)


HELLO = SendWords(MINA, "Hello")

TABLE: tuple[tuple[str, Fault | None, Call, type[Outcome], Refusal | None], ...] = (
    ("too many", Fault(TooMany(7)), HELLO, Later, None),
    ("never begun", None, SendWords(STRANGER, "Hello"), Gone, None),
    ("unknown chat", None, SendWords(123_456, "Hello"), Gone, None),
    ("bad markup", None, SendWords(MINA, "<b>Hello"), Refused, Refusal.BAD_MARKUP),
    ("too long", None, SendWords(MINA, "x" * 5_000), Refused, Refusal.OTHER),
    ("empty", None, SendWords(MINA, ""), Refused, Refusal.OTHER),
    ("no such message", None, EditWords(MINA, 4_000, "x"), Refused, Refusal.NO_SUCH_MESSAGE),
    ("cut before it took effect", Fault(CutBefore()), HELLO, Unknown, None),
    ("cut after it took effect", Fault(CutAfter()), HELLO, Unknown, None),
    ("500", Fault(ServerError(500)), HELLO, Unknown, None),
    ("502", Fault(ServerError(502)), HELLO, Unknown, None),
)


@pytest.mark.parametrize(("fault", "call", "kind", "why"), [row[1:] for row in TABLE], ids=[row[0] for row in TABLE])
async def test_the_platforms_errors_are_told_apart(
    *, fault: Fault | None, call: Call, kind: type[Outcome], why: Refusal | None, sender: LibrarySender, mina: Seat
) -> None:
    """The table of outcomes, against the stand-in's refusals and faults."""
    if fault is not None:
        mina.house.faults.add(fault)
    outcome = await sender.send(call)
    assert isinstance(outcome, kind)
    if isinstance(outcome, Refused):
        assert outcome.why is why
    if isinstance(outcome, Later):
        assert outcome.after_s == 7
    if isinstance(outcome, Unknown):
        assert outcome.answered == (fault is not None and isinstance(fault.trouble, ServerError))


async def test_an_unmodified_edit_is_told_apart(sender: LibrarySender, mina: Seat) -> None:
    """It is as good as done."""
    sent = await sender.send(SendWords(MINA, "One"))
    assert isinstance(sent, Sent)
    assert sent.message is not None
    outcome = await sender.send(EditWords(mina.chat.id, sent.message, "One"))
    assert isinstance(outcome, Refused)
    assert outcome.why is Refusal.UNCHANGED


async def test_who_blocked_the_bot_is_gone(sender: LibrarySender, mina: Seat) -> None:
    """403."""
    mina.block()
    assert isinstance(await sender.send(HELLO), Gone)


async def test_without_a_connection_nothing_was_sent() -> None:
    """A port that nobody listens on: surely not sent."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    async with library_bot(Platform("42:TEST", f"http://127.0.0.1:{port}")) as bot:
        assert isinstance(await LibrarySender(bot, menu=menu).send(HELLO), NotSent)


async def test_a_slow_answer_is_uncertain(standin: StandIn, mina: Seat) -> None:
    """It took effect, and we can't know."""
    standin.faults.add(Fault(SlowAnswer()))
    async with library_bot(Platform("42:TEST-TOKEN", standin.url), read_s=0.05) as bot:
        outcome = await LibrarySender(bot, menu=menu).send(HELLO)
    assert isinstance(outcome, Unknown)
    assert not outcome.answered
    assert mina.last().words.text == "Hello"


async def test_a_void_token_ends_it(standin: StandIn) -> None:
    """401: nothing will ever go out with it."""
    async with library_bot(Platform("43:OTHER", standin.url)) as bot:
        with pytest.raises(ChatFault, match="refuses the bot's token"):
            await LibrarySender(bot, menu=menu).send(HELLO)


async def test_calls_go_through_the_proxy_where_one_is_set() -> None:
    """The proxy is asked for the platform's whole address."""
    asked: list[str] = []

    async def proxy(request: web.BaseRequest) -> web.Response:
        asked.append(str(request.url))
        return web.json_response({"ok": True, "result": {"message_id": 5}})

    runner = web.ServerRunner(web.Server(proxy))
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", 0)
    await site.start()
    port = runner.addresses[0][1]
    platform = Platform("42:TEST", "http://platform.invalid", f"http://127.0.0.1:{port}")
    async with library_bot(platform) as bot:
        assert await LibrarySender(bot, menu=menu).send(HELLO) == Sent(5)
    await runner.cleanup()
    assert asked == ["http://platform.invalid/bot42:TEST/sendMessage"]


class TestPace:
    """The platform's own speed limits."""

    @pytest.fixture
    def limits(self) -> Limits:
        return Limits(pace=PaceLimits())

    @pytest.fixture
    async def flooded(self, sender: LibrarySender, mina: Seat) -> Outcome:
        outcomes = [await sender.send(SendWords(mina.chat.id, f"{n}")) for n in range(7)]
        return outcomes[-1]

    async def test_too_many_at_once_are_told_when_to_come_again(self, flooded: Outcome) -> None:
        """429 with its seconds."""
        assert isinstance(flooded, Later)
        assert flooded.after_s >= 1
