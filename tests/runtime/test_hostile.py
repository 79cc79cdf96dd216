"""Any update, with the real talks: nothing stops the bot, nobody's turn fails, and others are answered meanwhile."""

import copy
import random
from typing import Any

import pytest

import storage.health
from bot.dialogue.router import CLIENT_TAPS, COACH_TAPS
from bot.training.people import Standing
from bot.tryout.standin import StandIn
from storage.engine import Store
from tests.gateway.test_reader import WHOLE
from tests.runtime.house import Here
from tests.runtime.known import NOON
from tests.store import practice

Json = dict[str, Any]  # Any: JSON

CLIENT, COACH, JOINING, STRANGER = 101, practice.COACH_CHAT, 103, 104
EVERYONE = (CLIENT, COACH, JOINING, STRANGER)

JUNK = (
    "", "0", "1", "-1", "2", "3", "5", "10", "x", "None", "nan", "1e9", "999999999", "Europe/Berlin", "No/Where",
    "client-one", "client-joining", "coach-one", "zone", "hour", "name", "yes", "no", "٣", "’; --", "a" * 40,
)  # fmt: skip
"""What stands in forged or old buttons."""

WORDS = (
    "100x5", "100 x 5 x 3 @8", "5 5 5", ".", "ok", "105", "-20x5", "1e9x1e9", "0x0", "999999999999x1", "½x5", "٣x٥",
    "bench 60kg x 8 rir 2, row 40x10", "squat", "skip", "done", "undo", "nothing", "my knee hurts 7/10", "chest pain",
    "I can't feel my arm", "what time is it?", "no", "yes", "both", "left 10 right 8", "7", "11", "kg", "lb", "18:30",
    "25:99", "tomorrow", "monday, wednesday", "Europe/Berlin", "\u202e5x001", "\u200b", "🏋️" * 200, "a\nb\nc", "'", '"',
    "<b>bold", "&amp;", "{0}", "{ $name }", "%s", "/", "//", "/today", "/TODAY@chalk_bot now", "/week", "/undo",
    "/pain", "/settings", "/help", "/privacy", "/digest", "/clients", "/invite", "/programme", "/cancel", "/start",
    "/start cXXXX", "/start " + "c" * 64, "/delete_me", "/export", "/nothing", "x" * 4_096, "100x5\n" * 300,
)  # fmt: skip
"""What people may type, well and ill."""

MEDIA: tuple[Json, ...] = (
    {"photo": [{"file_id": "p"}]},
    {"photo": [], "caption": "100x5"},
    {"video": {"file_id": "v"}, "media_group_id": "1"},
    {"voice": {"file_id": "v"}},
    {"document": {"file_id": "d", "file_name": "../../plan.xlsx"}},
    {"sticker": {"file_id": "s"}},
    {"dice": {"value": 6}},
    {"contact": {"phone_number": "1"}},
    {"new_chat_title": "x"},
)


class Crowd:
    """Updates by chance, from one seed."""

    def __init__(self, seed: int) -> None:
        self.chance = random.Random(seed)
        self.queries: list[str] = []
        self.number = 1_000

    def update(self) -> tuple[int, Json]:
        """Some update, and the chat that it says it is from."""
        chat = self.chance.choice(EVERYONE)
        kind = self.chance.choice((self._typed, self._typed, self._tap, self._tap, self._tap, self._edit, self._media))
        return (chat, kind(chat)) if self.chance.random() < 0.85 else (0, self._bent())

    def _person(self, chat: int) -> Json:
        return {"id": chat, "is_bot": False, "first_name": self.chance.choice(("Mina", "", "<b>", "\u202eanim"))}

    def _message(self, chat: int, **more: object) -> Json:
        self.number += 1
        private = {"id": chat, "type": "private"}
        made = {"message_id": self.number, "from": self._person(chat), "chat": private, "date": int(NOON.timestamp())}
        if self.chance.random() < 0.2:
            made["reply_to_message"] = {"message_id": self.chance.randint(1, self.number)}
        if self.chance.random() < 0.05:
            made["forward_origin"] = {"type": "hidden_user"}
        return {**made, **more}

    def _typed(self, chat: int) -> Json:
        return {"message": self._message(chat, text=self.chance.choice(WORDS))}

    def _edit(self, chat: int) -> Json:
        edited = self._message(chat, text=self.chance.choice(WORDS), edit_date=int(NOON.timestamp()))
        edited["message_id"] = self.chance.randint(1_000, self.number)
        return {"edited_message": edited}

    def _media(self, chat: int) -> Json:
        return {"message": self._message(chat, **self.chance.choice(MEDIA))}

    def _tap(self, chat: int) -> Json:
        op = self.chance.choice((*CLIENT_TAPS, *COACH_TAPS, "gone", ""))
        refs = ("t-session", *JUNK)
        parts = ["1", op, self.chance.choice(refs), *self.chance.choices(JUNK, k=self.chance.randint(0, 3))]
        data = ":".join(parts) if self.chance.random() < 0.9 else self.chance.choice(JUNK)
        query = f"q{len(self.queries)}"
        self.queries.append(query)
        message = self._message(chat)
        return {"callback_query": {"id": query, "from": self._person(chat), "message": message, "data": data[:64]}}

    def _bent(self) -> Json:
        update: Json = copy.deepcopy(self.chance.choice(WHOLE))
        update.pop("update_id")
        place = update
        for _ in range(self.chance.randint(1, 4)):
            key = self.chance.choice(sorted(place))
            if isinstance(place[key], dict) and place[key] and self.chance.random() < 0.8:
                place = place[key]
                continue
            place[key] = self.chance.choice((None, 7, -1, 2**60, "x", [], {}, [{}], True, 1.5))
            break
        return update


def people(standin: StandIn, store: Store) -> None:
    """A coach, a client with a session under way, somebody joining, a stranger."""
    with store.begin() as work:
        practice.practice(work)
        session = practice.session(work, day=NOON.date(), at=NOON)
        practice.report(work, session, "m5", at=NOON)
        practice.client(work, id="client-joining", chat=JOINING, name="Bjarne", standing=Standing.JOINING)
    for chat in EVERYONE:
        standin.add_person(chat, f"P{chat}")
        standin.seat(chat).chat.started = True


@pytest.mark.parametrize("seed", range(3))
async def test_nothing_stops_the_bot(here: Here, store: Store, seed: int) -> None:
    """Three hundred updates of every kind; then everyone is answered as ever, and nothing was set aside."""
    people(here.standin, store)
    crowd = Crowd(seed)
    updates = here.standin.house.bot(0).updates
    async with here.bot(real=True) as bot:
        for _ in range(300):
            chat, body = crowd.update()
            updates.push_raw(body, chat_id=chat)
        await here.settled(bot, moving=True)
        for chat in EVERYONE:
            seat = here.standin.seat(chat)
            before = max((m.id for m in seat.messages()), default=0)
            seat.say("/help")
            await here.settled(bot, moving=True)
            assert seat.last().id > before, f"seed {seed}, chat {chat}"
    with store.begin() as work:
        health = storage.health.health(work, here.clock.now())
        assert (health.set_aside, health.inbox_waiting, health.outbox_waiting) == (0, 0, 0)
    answered = {str(call.params["callback_query_id"]) for call in here.standin.record.of("answerCallbackQuery")}
    assert len(answered) >= 0.9 * len(crowd.queries)
