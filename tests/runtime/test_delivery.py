"""One parcel carried to the platform: what it becomes there, and what every kind of trouble means for it."""

import zlib
from dataclasses import replace

import pytest

from bot.gateway.sender import LibrarySender
from bot.runtime.bodies import MenuBody, ReactBody, RelayBody, SendBody, StripBody, body_hash, show_body
from bot.runtime.delivery import deliver
from bot.runtime.ports import Keyboard, Made
from bot.runtime.settlements import Claimed, Delivered, Given, Postponed, Settlement, Unreachable
from bot.saying import Chart, Repeat, Wanted, WeekChart
from bot.tryout.standin import CutAfter, CutBefore, Fault, Seat, ServerError, StandIn, TooMany
from storage.outbox import Parcel, ParcelKind
from storage.slots import SlotRow
from tests.runtime.known import MINA

BUTTONS: Keyboard = (({"text": "Done", "callback_data": "1:set:abc"},),)
BODY = SendBody("<b>One</b> two", "One two", BUTTONS)
NEWER = SendBody("<b>One</b> three", "One three", BUTTONS)


def parcel(body: SendBody = BODY, /, **changes: object) -> Parcel:
    """A parcel with words for Mina."""
    made = Parcel(
        id=1,
        key="reply:1:0",
        chat=MINA,
        kind=ParcelKind.SEND,
        body=show_body(body),
        urgency=1,
        repeat=Repeat.RESEND,
        slot="",
        fresh=False,
        about="",
        tries=1,
        expires_at=None,
        silent=False,
        maybe_sent=False,
    )
    return replace(made, **changes)  # type: ignore[arg-type]  # a test's shorthand


def draw(chart: Chart) -> bytes:
    """A picture that is one (PNG, W3C recommendation): grey, 8 by 8."""

    assert isinstance(chart, WeekChart)
    done = chart.done

    def chunk(kind: bytes, data: bytes) -> bytes:
        return len(data).to_bytes(4) + kind + data + zlib.crc32(kind + data).to_bytes(4)

    header = (8).to_bytes(4) + (8).to_bytes(4) + bytes([8, 0, 0, 0, 0])
    rows = zlib.compress(b"".join(b"\0" + bytes([done] * 8) for _ in range(8)))
    return b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")


def make(wanted: Wanted) -> Made | None:
    """A wanted file: two parts of somebody's, none of nobody's."""
    if wanted.whose != "mina":
        return None
    following = None if wanted.after else replace(wanted, after="one", part=2)
    return Made(f"{wanted.copy} {wanted.part}".encode(), following)


async def carry(
    one: Parcel, sender: LibrarySender, *, slot: SlotRow | None = None, maybe_sent: bool = False
) -> Settlement:
    """The parcel carried, as the outbox does."""
    return await deliver(Claimed(one, slot, maybe_sent), sender=sender, draw=draw, make=make)


async def first(sender: LibrarySender, body: SendBody = BODY) -> SlotRow:
    """A message that stands in a slot."""
    settled = await carry(parcel(body), sender)
    assert isinstance(settled, Delivered)
    assert settled.message is not None
    return SlotRow(settled.message, settled.shown)


async def test_a_message_goes_out(sender: LibrarySender, mina: Seat) -> None:
    """Its number and the hash of what it shows come back."""
    settled = await carry(parcel(), sender)
    assert settled == Delivered(mina.last().id, body_hash(BODY))
    assert mina.last().words.text == "One two"


async def test_what_stands_in_its_slot_is_edited(sender: LibrarySender, mina: Seat) -> None:
    """The same message, with the newer words."""
    slot = await first(sender)
    settled = await carry(parcel(NEWER, slot="card"), sender, slot=slot)
    assert settled == Delivered(slot.message, body_hash(NEWER))
    assert (mina.last().id, mina.last().words.text) == (slot.message, "One three")


async def test_what_already_shows_it_is_left_alone(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    """No call at all; and where we did not know, "not modified" is as good as done."""
    slot = await first(sender)
    before = len(standin.record.calls)
    settled = await carry(parcel(slot="card"), sender, slot=slot)
    assert settled == Delivered(slot.message, slot.body_hash, skipped=True)
    assert len(standin.record.calls) == before
    unknown = SlotRow(slot.message, "")
    assert await carry(parcel(slot="card"), sender, slot=unknown) == Delivered(slot.message, slot.body_hash)
    assert mina.last().id == slot.message


async def test_a_message_that_was_deleted_is_sent_anew(sender: LibrarySender, mina: Seat) -> None:
    """The person deleted the card: there is a card again."""
    slot = await first(sender)
    mina.delete(slot.message)
    settled = await carry(parcel(NEWER, slot="card"), sender, slot=slot)
    assert isinstance(settled, Delivered)
    assert settled.message == mina.last().id != slot.message
    assert mina.last().words.text == "One three"


async def test_a_fresh_one_is_a_new_message_and_the_old_loses_its_buttons(sender: LibrarySender, mina: Seat) -> None:
    """The old one's number comes back to be stripped."""
    slot = await first(sender)
    settled = await carry(parcel(NEWER, slot="card", fresh=True), sender, slot=slot)
    assert settled == Delivered(mina.last().id, body_hash(NEWER), strip=slot.message)
    strip = parcel(kind=ParcelKind.STRIP, body=show_body(StripBody(slot.message)))
    assert await carry(strip, sender) == Delivered()
    assert mina.message(slot.message).inline is None
    assert await carry(strip, sender) == Delivered()


async def test_refused_markup_goes_out_once_more_in_plain_words(sender: LibrarySender, mina: Seat) -> None:
    """A defect of ours does not cost the person the message; also in an edit."""
    broken = SendBody("<b>One", "One")
    slot = await first(sender, broken)
    assert mina.last().words.text == "One"
    settled = await carry(parcel(replace(broken, html="<i>Two", plain="Two"), slot="card"), sender, slot=slot)
    assert isinstance(settled, Delivered)
    assert mina.last().words.text == "Two"


async def test_a_picture_goes_out_and_is_replaced(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    """Drawn when it is sent."""
    chart = WeekChart("Week 9", (), 2, 3)
    slot = await first(sender, replace(BODY, picture=chart))
    assert mina.last().media is not None
    newer = replace(NEWER, picture=replace(chart, done=3))
    settled = await carry(parcel(newer, slot="week"), sender, slot=slot)
    assert settled == Delivered(slot.message, body_hash(newer))
    assert mina.last().words.text == "One three"
    assert [c.method for c in standin.record.calls] == ["sendPhoto", "editMessageMedia"]


async def test_the_small_kinds(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    """Reaction, copy, menu, leaving, and a strip of whatever stands in the slot."""
    said = mina.say("hello")
    slot = await first(sender)
    react = parcel(kind=ParcelKind.REACT, body=show_body(ReactBody(said, "👍")))
    relay = parcel(kind=ParcelKind.RELAY, body=show_body(RelayBody(MINA, said)))
    menu = parcel(kind=ParcelKind.MENU, body=show_body(MenuBody("client")))
    strip = parcel(kind=ParcelKind.STRIP, body=show_body(StripBody(None)), slot="card")
    assert await carry(react, sender) == Delivered()
    assert mina.message(said).reactions == ("👍",)
    assert await carry(relay, sender) == Delivered(mina.last().id)
    assert mina.last().words.text == "hello"
    assert await carry(menu, sender) == Delivered()
    assert await carry(strip, sender, slot=slot) == Delivered()
    assert mina.message(slot.message).inline is None
    assert await carry(strip, sender) == Delivered(skipped=True)
    assert standin.record.of("setMyCommands")


SEND, AGAIN, DROP = Repeat.RESEND, Repeat.AGAIN, Repeat.DROP
BLIND = Postponed("connection broke: ServerDisconnectedError", maybe_sent=True)

TROUBLE: tuple[tuple[str, Fault, Repeat, Settlement | type[Given] | type[Postponed]], ...] = (
    ("asked to wait", Fault(TooMany(7), times=1), SEND, Postponed("asked to wait", after_s=7)),
    ("cut, resend", Fault(CutAfter(), times=1), SEND, BLIND),
    ("cut, resend with a mark", Fault(CutAfter(), times=1), AGAIN, BLIND),
    ("cut, better never than twice", Fault(CutBefore(), times=1), DROP, Given),
    ("the platform's own fault", Fault(ServerError(502), times=1), SEND, Postponed),
    ("the same, never twice", Fault(ServerError(500), times=1), DROP, Postponed),
)


@pytest.mark.parametrize(("fault", "repeat", "expected"), [row[1:] for row in TROUBLE], ids=[row[0] for row in TROUBLE])
async def test_trouble_decides_what_happens_next(
    *,
    fault: Fault,
    repeat: Repeat,
    expected: Settlement | type[Given] | type[Postponed],
    sender: LibrarySender,
    mina: Seat,
    standin: StandIn,
) -> None:
    """Wait as told; try again where nothing is lost by it; leave it where twice is worse than never."""
    assert mina.chat.started
    standin.faults.add(fault)
    settled = await carry(parcel(repeat=repeat), sender)
    if isinstance(expected, type):
        assert isinstance(settled, expected)
        assert not isinstance(settled, Postponed) or settled.maybe_sent == (repeat is not DROP)
    else:
        assert settled == expected


async def test_an_edit_that_may_have_arrived_is_simply_made_again(
    sender: LibrarySender, mina: Seat, standin: StandIn
) -> None:
    """Twice is once; also where a message would have been dropped."""
    slot = await first(sender)
    standin.faults.add(Fault(CutAfter(), method="editMessageText", times=1))
    one = parcel(NEWER, slot="card", repeat=DROP)
    settled = await carry(one, sender, slot=slot)
    assert isinstance(settled, Postponed)
    assert not settled.maybe_sent
    assert await carry(one, sender, slot=slot) == Delivered(slot.message, body_hash(NEWER))
    assert mina.last().words.text == "One three"


async def test_a_second_try_of_an_alert_says_so(sender: LibrarySender, mina: Seat) -> None:
    """ "(again)" stands before it; a plain answer is repeated without."""
    await carry(parcel(repeat=AGAIN), sender, maybe_sent=True)
    assert mina.last().words.text == "(again) One two"
    await carry(parcel(), sender, maybe_sent=True)
    assert mina.last().words.text == "One two"


async def test_who_blocked_us_is_unreachable(sender: LibrarySender, mina: Seat) -> None:
    """And so is a chat that never was."""
    mina.block()
    assert isinstance(await carry(parcel(), sender), Unreachable)
    assert isinstance(await carry(parcel(chat=999), sender), Unreachable)


async def test_what_the_platform_refuses_is_given_up(sender: LibrarySender, mina: Seat) -> None:
    """No retry makes an empty message a message."""
    assert mina.chat.started
    assert isinstance(await carry(parcel(SendBody("", "")), sender), Given)
