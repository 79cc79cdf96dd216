"""The whole bot without the wire: raw updates in, words out, on one database, in one thread, at the test's own clock.

Inbox, reader, desk, talks, commit, outbox and schedule are the real ones; only the calls to the platform are left out:
what would be sent is on a screen here. A property can so live through thousands of turns in seconds.
"""

import copy
import json
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field, replace
from datetime import UTC, datetime, timedelta
from hashlib import sha256
from itertools import count
from zoneinfo import ZoneInfo

import sqlalchemy as sa

import storage.outbox
import storage.people
import storage.schedule
from bot.dialogue.desk import House
from bot.dialogue.incoming import FileTrouble
from bot.dialogue.router import answer
from bot.gateway.reader import RawReader, chat_of
from bot.runtime import settling
from bot.runtime.bodies import body_hash, read_fetch, read_file, read_relay, read_send, read_strip
from bot.runtime.inbox import Desks, receive, work_some
from bot.runtime.ports import Arrived
from bot.runtime.schedule import Failures, tick
from bot.runtime.settlements import Delivered, Fetched, Settlement
from bot.saying import Chart, Wanted
from storage.engine import Store
from storage.health import Health, health
from storage.outbox import ParcelKind
from storage.tables import facts, inbox
from storage.work import Work

BOT = 4242
COACH, OTHER_COACH = 1001, 1002
ADA, BO, DANA, EVE, STRANGER = 2001, 2002, 2004, 2005, 2009
NAMES = {COACH: "Maren", OTHER_COACH: "Oona", ADA: "Ada", BO: "Bo", DANA: "Dana", EVE: "Eve", STRANGER: "Nobody"}
Raw = dict[str, object]


@dataclass(slots=True)
class Shown:
    """A message of the bot's as it stands on a screen. `relayed` is the copied message's number."""

    number: int
    text: str
    html: str = ""
    data: tuple[tuple[str, str], ...] = ()
    """Buttons that call the bot: label and data."""
    silent: bool = False
    relayed: int = 0
    file: bytes | Wanted | None = None
    """A file: what is in it, or which one is to be made."""
    file_name: str = ""
    picture: Chart | None = None


@dataclass(slots=True)
class Wireless:
    """One database, and everybody's screens."""

    work: Work
    now: datetime
    screens: dict[int, dict[int, Shown]] = field(default_factory=dict)
    left: list[int] = field(default_factory=list)
    files: dict[str, bytes | FileTrouble] = field(default_factory=dict)
    """What the platform has of the files that people sent, by its name for them."""
    fetched: int = 0
    """How often it was asked for one."""
    """Groups that the bot has left."""
    _updates: Iterator[int] = field(default_factory=lambda: count(500_000_000))
    _numbers: Iterator[int] = field(default_factory=lambda: count(10))
    _failures: Failures = field(default_factory=Failures)
    _desks: Desks = field(
        default_factory=lambda: Desks(RawReader(), answer, House("chalk_bot", "112", "the operator", "1"), "test")
    )

    # --- what comes in

    def raw(self, body: Raw, *, update: int = 0) -> tuple[str, ...]:
        """Any update; what was answered to taps in it, for a moment."""
        whole = {"update_id": update or next(self._updates), **body}
        text = json.dumps(whole)
        chat = chat_of(json.loads(text))
        receive(self.work, (Arrived(int(str(whole["update_id"])), chat, text),), bot=BOT, now=self.now)
        toasts = self._work()
        self._deliver()
        return tuple(toasts)

    def _work(self) -> list[str]:
        toasts: list[str] = []
        more = True
        while more:
            worked = work_some(self.work, self._desks, now=self.now)
            toasts += [tap.words for tap in worked.taps]
            more = worked.more
        return toasts

    def say(self, who: int, text: str, **more: object) -> int:
        """Types a message; its number."""
        number = next(self._numbers)
        self.raw({"message": {**self.message(who, number), "text": text, **more}})
        return number

    def edit(self, who: int, number: int, text: str) -> None:
        """Changes what they had typed."""
        stamp = int(self.now.timestamp())
        self.raw({"edited_message": {**self.message(who, number), "text": text, "edit_date": stamp}})

    def send_file(self, who: int, name: str, content: bytes | FileTrouble, **more: object) -> int:
        """Sends a file; its number. A trouble in place of the content is what fetching it leads to."""
        number = next(self._numbers)
        self.files[f"file-{number}"] = content
        shape: Raw = {"file_id": f"file-{number}", "file_name": name}
        if isinstance(content, bytes):
            shape["file_size"] = len(content)
        self.raw({"message": {**self.message(who, number), "document": shape, **more}})
        return number

    def tap_data(self, who: int, data: object, *, message: int = 5) -> str:
        """A tap with any data; what was answered for a moment."""
        tap = {
            "id": f"q{next(self._numbers)}",
            "from": {"id": who, "is_bot": False, "first_name": NAMES[who]},
            "message": {"message_id": message, "chat": {"id": who, "type": "private"}, "date": 0},
            "data": data,
        }
        answers = self.raw({"callback_query": tap})
        assert len(answers) <= 1
        return answers[0] if answers else "(none)"

    def tap(self, who: int, label: str) -> str:
        """The newest button whose label begins with these words."""
        for shown in reversed(self.screen(who)):
            for text, data in shown.data:
                if text.startswith(label):
                    return self.tap_data(who, data, message=shown.number)
        raise AssertionError(f"no button «{label}»: {[s.text[:60] for s in self.screen(who)][-5:]}")

    def message(self, who: int, number: int) -> Raw:
        """What every message of a person's has."""
        return {
            "message_id": number,
            "date": int(self.now.timestamp()),
            "chat": {"id": who, "type": "private", "first_name": NAMES.get(who, "X")},
            "from": {"id": who, "is_bot": False, "first_name": NAMES.get(who, "X"), "language_code": "en"},
        }

    # --- time

    def until(self, at: datetime) -> None:
        """Lets time pass; each rule that falls due is taken up at its own moment."""
        while (due := self.next_due()) is not None and due <= at:
            self.now = max(due, self.now)
            self.tick()
        self.now = max(at, self.now)

    def next_due(self) -> datetime | None:
        """When a rule is due next."""
        return storage.schedule.next_due_at(self.work)

    def tick(self) -> None:
        """The bot looks at the clock until nothing is due."""
        while tick(self.work, self._desks, self._failures, now=self.now).rules:
            pass
        assert not self._failures.tries
        self._deliver()

    def wait(self, minutes: float) -> None:
        """Some time passes."""
        self.until(self.now + timedelta(minutes=minutes))

    def wall(self, zone: str, text: str) -> datetime:
        """The moment at which a clock of this zone shows it."""
        return datetime.fromisoformat(text).replace(tzinfo=ZoneInfo(zone))

    # --- what is there

    def screen(self, who: int) -> list[Shown]:
        """All the bot's messages in a chat, oldest first."""
        return list(self.screens.get(who, {}).values())

    def text(self, who: int) -> str:
        """The newest of them."""
        return self.screen(who)[-1].text

    def buttons(self, who: int) -> list[tuple[str, str]]:
        """All buttons that stand on their screen."""
        return [button for shown in self.screen(who) for button in shown.data]

    def health(self) -> Health:
        """How the database is."""
        return health(self.work, self.now)

    def facts_count(self) -> int:
        """How many facts there are."""
        return int(self.work.all(sa.select(sa.func.count()).select_from(facts))[0][0])

    def no_turn_failed(self) -> None:
        """Nothing was set aside, nothing failed even once, nothing waits, nothing was refused by our own renderer."""
        rows = self.work.all(sa.select(inbox.c.error).where(inbox.c.attempts > 0))
        assert not rows, [self.work.unseal(row.error) for row in rows]
        how = self.health()
        assert (how.set_aside, how.inbox_waiting, how.outbox_waiting, how.sending) == (0, 0, 0, 0)

    def _deliver(self) -> None:
        """The outbox, with the wire taken out: everything arrives."""
        while claimed := settling.claim(self.work, worker="test", now=self.now, limit=50):
            for one in claimed:
                parcel = one.parcel
                screen = self.screens.setdefault(parcel.chat, {})
                done: Settlement = Delivered()
                match parcel.kind:
                    case ParcelKind.SEND:
                        body = read_send(parcel.body)
                        edits = one.slot is not None and not parcel.fresh
                        number = one.slot.message if one.slot is not None and edits else next(self._numbers)
                        strip = one.slot.message if one.slot is not None and parcel.fresh else None
                        data = tuple(
                            (str(b["text"]), str(b["callback_data"]))
                            for row in body.keyboard
                            for b in row
                            if "callback_data" in b
                        )
                        screen[number] = Shown(number, body.plain, body.html, data, parcel.silent, picture=body.picture)
                        done = Delivered(number, body_hash(body), strip)
                    case ParcelKind.RELAY:
                        number = next(self._numbers)
                        source = read_relay(parcel.body).source_message
                        screen[number] = Shown(number, "", silent=parcel.silent, relayed=source)
                        done = Delivered(number)
                    case ParcelKind.STRIP:
                        gone = read_strip(parcel.body).message or (one.slot.message if one.slot is not None else None)
                        if gone in screen:
                            screen[gone].data = ()
                    case ParcelKind.LEAVE:
                        self.left.append(parcel.chat)
                    case ParcelKind.FILE:
                        number, file = next(self._numbers), read_file(parcel.body)
                        shown = Shown(number, file.plain, file.html, silent=parcel.silent, file=file.file)
                        screen[number] = replace(shown, file_name=file.name)
                        done = Delivered(number)
                    case ParcelKind.FETCH:
                        self.fetched += 1
                        done = Fetched(self.files.get(read_fetch(parcel.body).file, FileTrouble.GONE))
                    case ParcelKind.REACT | ParcelKind.MENU:
                        pass
                settling.settle(self.work, settling.Carried(one, done), now=self.now)
            self._work()


# --- the practice


def joins(bot: Wireless, who: int, coach: int, zone: str, *, unit: str = "kg", days: str = "mon thu 18:00") -> None:
    """Somebody follows the coach's link and answers the seven questions."""
    bot.say(coach, "/invite")
    payload = bot.text(coach).partition("?start=")[2].split()[0]
    bot.say(who, f"/start {payload}")
    for words in ("yes", NAMES[who], unit, zone, days):
        bot.say(who, words)
    bot.tap(who, "An ordinary gym")
    bot.tap(who, "Nothing that I know of")
    bot.tap(coach, f"Sample programme for {NAMES[who]}")


def coach_joins(bot: Wireless, who: int, zone: str) -> None:
    """By the operator's link."""
    payload = f"c{who}"
    hashed = sha256(payload.encode()).hexdigest()
    storage.people.new_coach_invite(bot.work, hashed, bot.now + timedelta(days=7), bot.now)
    bot.say(who, f"/start {payload}")
    bot.say(who, zone)
    bot.say(who, "07:00")


def practice(bot: Wireless) -> None:
    """Two coaches; Ada and Bo are Maren's, Dana is Oona's, Eve has begun to join Maren."""
    coach_joins(bot, COACH, "Europe/Dublin")
    coach_joins(bot, OTHER_COACH, "Europe/Dublin")
    joins(bot, ADA, COACH, "Europe/Berlin")
    joins(bot, BO, COACH, "America/New_York", unit="lb", days="mon fri 18:00")
    joins(bot, DANA, OTHER_COACH, "Europe/Dublin", days="mon 12:00")
    bot.say(COACH, "/invite")
    bot.say(EVE, f"/start {bot.text(COACH).partition('?start=')[2].split()[0]}")


class _Undone(Exception):
    """Ends a transaction without a trace."""


@contextmanager
def life(store: Store, at: datetime) -> Iterator[Wireless]:
    """A bot on this database from this moment on; nothing of it stays."""
    with suppress(_Undone), store.begin() as work:
        yield Wireless(work, at, _numbers=count(100_000), _updates=count(600_000_000))
        raise _Undone


BEGINS = datetime(2027, 1, 10, 17, 0, tzinfo=UTC)
"""A Sunday afternoon."""


class Wired:
    """A database in which the practice has joined, and what stood on the screens then."""

    def __init__(self, store: Store, screens: dict[int, dict[int, Shown]]) -> None:
        self.store, self.screens = store, screens

    @classmethod
    def made(cls, store: Store) -> "Wired":
        """Everybody joins."""
        with store.begin() as work:
            bot = Wireless(work, BEGINS)
            practice(bot)
            bot.no_turn_failed()
        return cls(store, bot.screens)

    @contextmanager
    def bot(self, at: str = "", *, zone: str = "Europe/Berlin") -> Iterator[Wireless]:
        """A life of the practice of which nothing stays, so that one database sees many. `at` lets the time pass
        until a clock of this zone shows it."""
        with life(self.store, BEGINS) as bot:
            bot.screens = copy.deepcopy(self.screens)
            if at:
                bot.until(bot.wall(zone, at))
            yield bot
