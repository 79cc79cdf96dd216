"""Files through the runtime: sent once they are made, fetched and handed back to the chat's talk; whatever happens."""

import asyncio
import json
from dataclasses import replace
from datetime import timedelta

import pytest
import sqlalchemy as sa

import storage.inbox
import storage.outbox
from bot.dialogue.incoming import FileFailed, FileFetched, FileTrouble, Incoming, MediaSent, SheetRead, Typed
from bot.dialogue.turn import NOTHING, Turn
from bot.gateway.poller import arrived_of
from bot.gateway.reader import RawReader
from bot.gateway.sender import LibrarySender
from bot.runtime import settling
from bot.runtime.bodies import FetchBody, FileBody, read_fetch, read_file, show_body
from bot.runtime.files import FETCH_TRIES, read_own
from bot.runtime.settlements import Claimed, Delivered, Fetched, Given, Postponed
from bot.runtime.settling import Carried
from bot.runtime.turns import commit, parcels_of
from bot.saying import LARGEST_MADE, Copy, Fetch, Repeat, SayFile, Wanted, line
from bot.tryout.standin import CutAfter, Fault, Seat, StandIn, TooMany
from storage.engine import Store
from storage.facts import Origin
from storage.outbox import ParcelKind
from storage.tables import inbox, outbox
from tests.runtime.house import Here, echo
from tests.runtime.known import MINA, NOON
from tests.runtime.test_delivery import carry, parcel

SHEET = b"week;day\n1;1\n" * 100
WANTED = Wanted(Copy.OWN, "mina")
BODY = FileBody("copy.zip", WANTED, "<b>One</b>", "One", (({"text": "Go", "callback_data": "1:go:"},),), 3)
FETCH = FetchBody("file-1", 5, "plan.csv", "programme", 100_000)


@pytest.mark.parametrize("file", [WANTED, b"", b"\x00\xff", replace(WANTED, after="x", part=3)])
def test_a_body_comes_back_as_it_was(file: bytes | Wanted) -> None:
    body = replace(BODY, file=file)
    assert read_file(show_body(body)) == body
    assert read_fetch(show_body(FETCH)) == FETCH


# --- out


def newest(seat: Seat) -> tuple[str, bytes]:
    """The bot's newest message is a file: its name and content."""
    media = seat.last().media
    assert media is not None
    return media.name, media.data


def a_file(body: FileBody, **changes: object) -> storage.outbox.Parcel:
    """A parcel with a file for Mina."""
    return parcel(kind=ParcelKind.FILE, body=show_body(replace(body, reply_to=None)), **changes)


async def test_a_file_that_was_made_goes_out(sender: LibrarySender, mina: Seat) -> None:
    settled = await carry(a_file(replace(BODY, file=SHEET)), sender)
    assert settled == Delivered(mina.last().id)
    assert mina.last().words.text == "One"
    assert newest(mina) == ("copy.zip", SHEET)


async def test_a_wanted_file_is_made_as_it_is_sent_in_its_parts(sender: LibrarySender, mina: Seat) -> None:
    """Each says which it is; the first has the words and buttons."""
    settled = await carry(a_file(BODY), sender)
    assert settled == Delivered(mina.last().id, following=replace(WANTED, after="one", part=2))
    assert newest(mina) == ("copy-part-1.zip", b"own 1")
    settled = await carry(a_file(replace(BODY, file=replace(WANTED, after="one", part=2))), sender)
    assert settled == Delivered(mina.last().id)
    assert newest(mina) == ("copy-part-2.zip", b"own 2")
    assert mina.last().words.text == "Part 2."


async def test_a_wanted_file_of_nobody_is_given_up(sender: LibrarySender, mina: Seat) -> None:
    assert isinstance(await carry(a_file(replace(BODY, file=Wanted(Copy.OWN, "gone"))), sender), Given)
    assert not [m for m in mina.messages() if m.by_bot]


async def test_a_files_troubles_are_those_of_a_message(sender: LibrarySender, mina: Seat, standin: StandIn) -> None:
    standin.faults.add(Fault(TooMany(9), method="sendDocument", times=1))
    one = a_file(replace(BODY, file=SHEET))
    assert await carry(one, sender) == Postponed("asked to wait", after_s=9)
    standin.faults.add(Fault(CutAfter(), method="sendDocument", times=1))
    settled = await carry(one, sender)
    assert isinstance(settled, Postponed)
    assert settled.maybe_sent
    await carry(replace(one, repeat=Repeat.AGAIN), sender, maybe_sent=True)
    assert mina.last().words.text == "(again) One"
    broken = a_file(replace(BODY, file=SHEET, html="<b>One"))
    assert isinstance(await carry(broken, sender), Delivered)
    assert mina.last().words.text == "One"


def test_the_part_that_follows_is_put_once(store: Store) -> None:
    with store.begin() as work:
        say = SayFile(MINA, "copy.zip", WANTED, (line("sent-again"),), about="k", key="copy:k:1")
        storage.outbox.put(work, parcels_of(say, key="reply:1:0"), now=NOON)
    for part in (2, 3):
        with store.begin() as work:
            (one,) = settling.claim(work, worker="a", now=NOON, limit=5)
            following = replace(WANTED, after=f"after-{part}", part=part)
            done = Carried(one, Delivered(part, following=following))
            settling.settle(work, done, now=NOON)
            settling.settle(work, done, now=NOON)
    with store.begin() as work:
        (last,) = settling.claim(work, worker="a", now=NOON, limit=5)
        assert (last.parcel.key, last.parcel.about) == ("copy:k:1+3", "k")
        assert read_file(last.parcel.body).file == replace(WANTED, after="after-3", part=3)


def test_a_file_too_large_to_wait_is_a_defect(store: Store) -> None:
    turn = Turn(says=(SayFile(MINA, "x.csv", b"x" * (LARGEST_MADE + 1)),))
    with store.begin() as work, pytest.raises(ValueError, match="bytes"):
        commit(work, turn, origin=Origin("chat:7", NOON, "m7:1"), key="reply:1", now=NOON)


def test_what_a_file_holds_is_taken_away_when_it_is_sent(store: Store) -> None:
    with store.begin() as work:
        storage.outbox.put(work, parcels_of(SayFile(MINA, "x.csv", SHEET), key="k"), now=NOON)
    with store.begin() as work:
        (one,) = settling.claim(work, worker="a", now=NOON, limit=5)
        sealed = work.all(sa.select(outbox.c.body))[0][0]
        assert len(sealed) > len(SHEET)
        settling.settle(work, Carried(one, Delivered(1)), now=NOON)
        assert [bytes(row[0]) for row in work.all(sa.select(outbox.c.body))] == [b""]


# --- in


async def test_a_file_is_fetched(sender: LibrarySender, mina: Seat) -> None:
    number = mina.send("document", SHEET, name="plan.csv")
    media = mina.message(number).media
    assert media is not None
    one = parcel(kind=ParcelKind.FETCH, body=show_body(replace(FETCH, file=media.file_id)))
    assert await carry(one, sender) == Fetched(SHEET)
    small = parcel(kind=ParcelKind.FETCH, body=show_body(replace(FETCH, file=media.file_id, most=10)))
    assert await carry(small, sender) == Fetched(FileTrouble.TOO_BIG)
    gone = parcel(kind=ParcelKind.FETCH, body=show_body(FETCH))
    assert await carry(gone, sender) == Fetched(FileTrouble.GONE)


async def test_what_can_not_be_reached_is_tried_a_few_times(sender: LibrarySender, standin: StandIn) -> None:
    """Then the person hears of it: what waits in the chat waits behind it."""
    standin.faults.add(Fault(CutAfter(), method="getFile"))
    fetch = show_body(FETCH)
    for tries in range(1, FETCH_TRIES):
        settled = await carry(parcel(kind=ParcelKind.FETCH, body=fetch, tries=tries), sender)
        assert isinstance(settled, Postponed)
        assert not settled.maybe_sent
    settled = await carry(parcel(kind=ParcelKind.FETCH, body=fetch, tries=FETCH_TRIES), sender)
    assert settled == Fetched(FileTrouble.FAILED)


def fetching(store: Store) -> Claimed:
    """A fetch in hand."""
    with store.begin() as work:
        storage.outbox.put(work, parcels_of(Fetch(MINA, "file-1", 5, "plan.csv", "programme", 9), key="k"), now=NOON)
    with store.begin() as work:
        (one,) = settling.claim(work, worker="a", now=NOON, limit=1)
    return one


@pytest.mark.parametrize(
    ("settlement", "read"),
    [
        (Fetched(b"1;2"), FileFetched(MINA, 5, NOON, "plan.csv", "programme", b"1;2")),
        (Fetched(b""), FileFetched(MINA, 5, NOON, "plan.csv", "programme", b"")),
        (Fetched(FileTrouble.GONE), FileFailed(MINA, 5, NOON, "plan.csv", "programme", FileTrouble.GONE)),
        (Given("a defect"), FileFailed(MINA, 5, NOON, "plan.csv", "programme", FileTrouble.FAILED)),
    ],
)
def test_what_was_brought_comes_in_once(
    store: Store, settlement: Fetched | Given, read: FileFetched | FileFailed
) -> None:
    """Also where two processes settle it, or it had been recovered meanwhile and is fetched again."""
    one = fetching(store)
    with store.begin() as work:
        settling.settle(work, Carried(one, settlement), now=NOON)
        settling.settle(work, Carried(one, settlement), now=NOON)
    with store.begin() as work:
        row = storage.inbox.claim(work, MINA, worker="a", now=NOON)
        assert row is not None
        assert row.update == -one.parcel.id
        assert read_own(row.raw, chat=MINA, received_at=NOON) == read
        assert storage.inbox.keep_done(work, row, now=NOON)
        assert storage.inbox.claim(work, MINA, worker="a", now=NOON) is None
        assert b"1;2" not in bytes(work.all(sa.select(inbox.c.raw))[0][0])


def test_a_fetch_that_was_lost_is_made_again(store: Store) -> None:
    """A process died with it in hand: it is taken up again, and what the dead one brings counts no more."""
    one = fetching(store)
    with store.begin() as work:
        assert storage.outbox.recover(work, now=NOON + timedelta(hours=1), own="a") == 1
        settling.settle(work, Carried(one, Fetched(b"late")), now=NOON)
        assert storage.inbox.claim(work, MINA, worker="a", now=NOON) is None
    with store.begin() as work:
        (again,) = settling.claim(work, worker="b", now=NOON + timedelta(hours=1), limit=1)
        assert again.parcel.id == one.parcel.id


def asking(incoming: Incoming) -> Turn:
    """Sheets are fetched, read, and a file comes back; words are said back."""
    match incoming:
        case MediaSent():
            fetch = Fetch(incoming.chat, incoming.file, incoming.message, incoming.file_name, "test", 100_000)
            return Turn(says=(fetch,))
        case SheetRead(chat, message, _, name, _, problems):
            return Turn(says=(SayFile(chat, name, b"read" if problems else b"sound", reply_to=message),))
        case FileFailed(chat, _, _, name, _, why):
            return Turn(says=(echo(chat, f"{name}: {why}"),))
        case Typed():
            return Turn(says=(echo(incoming.chat, incoming.text),))
        case _:
            return NOTHING


async def test_a_file_goes_in_and_comes_out(here: Here, mina: Seat, standin: StandIn) -> None:
    """Through the whole bot: received, asked for, brought, worked on in its chat, answered with a file; nothing of it
    is left in the database."""
    here.script.talk = asking
    async with here.bot() as bot:
        number = mina.send("document", SHEET, name="plan.csv")
        await here.settled(bot)
        assert (*newest(mina), mina.last().reply_to) == ("plan.csv", b"read", number)
        mina.send("document", b"x" * 100_001, name="big.csv")
        await here.settled(bot)
        assert mina.last().words.text.endswith("big.csv: too_big")
        standin.faults.add(Fault(CutAfter(), method="getFile", times=2))
        mina.send("document", SHEET, name="again.csv")
        await here.settled(bot, moving=True)
        assert newest(mina) == ("again.csv", b"read")
        with bot.store.begin() as work:
            for column in (inbox.c.raw, outbox.c.body):
                assert not [row for row in work.all(sa.select(column)) if len(row[0])]


async def test_a_bot_that_dies_between_asking_and_bringing_brings_it_later(here: Here, mina: Seat) -> None:
    """The next process finds the fetch, and the file's talk goes on; other words of the chat were answered meanwhile
    or are answered then."""
    here.script.talk = asking
    async with here.bot(roles="intake,work") as bot:
        mina.send("document", SHEET, name="plan.csv")
        mina.say("hello")
        while (await bot.service.writer.run(storage.outbox.waiting)) < 3:
            await asyncio.sleep(0.001)
    async with here.bot() as bot:
        await here.settled(bot)
    said = [m for m in mina.messages() if m.by_bot]
    assert [m.media.name for m in said if m.media is not None] == ["plan.csv"]
    assert [m.words.text[-5:] for m in said if m.media is None] == ["start", "hello"]


def test_an_update_of_the_platform_is_never_taken_for_one_of_ours() -> None:
    """Whatever it holds: ours are told by their number, and the platform's are never below zero."""
    raw = {"content": "eA==", "message": 5, "name": "x", "purpose": "programme"}
    assert arrived_of({"update_id": -5, **raw}) is None
    assert RawReader().read(json.dumps({"update_id": 5, **raw}), received_at=NOON) is None
