"""The whole bot against the stand-in, on SQLite and PostgreSQL: what people and operators can rely on."""

import asyncio
from datetime import timedelta

import aiohttp
import pytest

import storage.health
import storage.inbox
import storage.outbox
import storage.people
import storage.relays
from bot.dialogue.incoming import BotBlocked, RuleKind, Tapped, Typed
from bot.dialogue.turn import RuleSet, Turn
from bot.faults import ChatFault, SettingsFault
from bot.runtime.bodies import SendBody, show_body
from bot.saying import Menu, React, Relay, Repeat, Strip
from bot.tryout.standin import Delay, Fault, Seat, ServerError, StandIn, TooMany, Twice
from storage.engine import Store
from storage.outbox import NewParcel, ParcelKind
from tests.runtime.house import Here, buttons, echo
from tests.runtime.known import MINA, NOON
from tests.store import practice

OLEK = 8


@pytest.fixture
def olek(standin: StandIn) -> Seat:
    standin.add_person(OLEK, "Olek")
    seat = standin.seat(OLEK)
    seat.start()
    return seat


def replies(seat: Seat) -> list[str]:
    """What the bot wrote, in order, but for the answer to Start."""
    return [m.words.text for m in seat.messages() if m.by_bot and m.words.text != "/start"]


async def test_each_message_is_answered_once_and_in_order(here: Here, mina: Seat, olek: Seat) -> None:
    """Many chats side by side, updates that come twice, each chat in its order."""
    here.standin.faults.add(Fault(Twice(), chance=0.3))
    async with here.bot() as bot:
        for n in range(20):
            mina.say(f"m{n}")
            olek.say(f"o{n}")
        await here.settled(bot)
    assert replies(mina) == [f"m{n}" for n in range(20)]
    assert replies(olek) == [f"o{n}" for n in range(20)]


async def test_a_turn_that_fails_is_set_aside_and_the_person_hears(here: Here, mina: Seat, store: Store) -> None:
    """Three tries; the chat goes on; the operator's count shows it."""
    async with here.bot() as bot:
        mina.say("break this")
        mina.say("after")
        await here.settled(bot)
    wrong, after = replies(mina)
    assert "went wrong" in wrong
    assert after == "after"
    assert sum(isinstance(s, Typed) and s.text == "break this" for s in here.script.seen) == 3
    with store.begin() as work:
        assert storage.health.health(work, NOON).set_aside == 1


async def test_every_tap_is_acknowledged(here: Here, mina: Seat) -> None:
    """With its words, bare where the turn has none, and bare where the turn fails."""
    here.script.turns["card"] = Turn(says=(echo(MINA, "card", buttons=buttons("1:toast:", "1:none:", "1:break:")),))
    async with here.bot() as bot:
        mina.say("card")
        await here.settled(bot)
        card = mina.last().id
        queries = [mina.tap(card, data) for data in ("1:toast:", "1:none:", "1:break:")]
        assert [await mina.wait_answer(q) for q in queries] == ["(again)", "", ""]
        await here.settled(bot)
    taps = [s for s in here.script.seen if isinstance(s, Tapped)]
    assert {(t.chat, t.message) for t in taps} == {(MINA, card)}


async def test_a_card_keeps_itself_up_to_date(here: Here, mina: Seat) -> None:
    """Ten changes while the platform is slow: one message, few edits, the newest words; then a fresh one strips it."""
    for n in range(10):
        here.script.turns[f"{n}"] = Turn(says=(echo(MINA, f"card {n}", slot="card", buttons=buttons("a")),))
    here.script.turns["fresh"] = Turn(says=(echo(MINA, "card again", slot="card", fresh=True, buttons=buttons("a")),))
    here.script.turns["over"] = Turn(says=(Strip(MINA, slot="card"),))
    async with here.bot() as bot:
        mina.say("0")
        await here.settled(bot)
        here.standin.faults.add(Fault(Delay(0.2), method="editMessageText", times=1))
        for n in range(1, 10):
            mina.say(f"{n}")
        await here.settled(bot)
        first = mina.last()
        assert replies(mina) == ["card 9"]
        assert len(here.standin.record.of("editMessageText")) <= 5
        mina.say("fresh")
        await here.settled(bot)
        assert replies(mina) == ["card 9", "card again"]
        assert mina.message(first.id).inline is None
        assert mina.last().inline is not None
        mina.say("over")
        await here.settled(bot)
        assert mina.last().inline is None


async def test_the_quiet_kinds_arrive(here: Here, mina: Seat, olek: Seat) -> None:
    """Reaction, menu, and a relayed message whose answer finds whom it is about."""
    async with here.bot() as bot:
        said = mina.say("look at this")
        here.script.turns["go"] = Turn(
            says=(React(MINA, said, "👍"), Menu(MINA, "client"), Relay(OLEK, MINA, said, about="client-one"))
        )
        mina.say("go")
        await here.settled(bot)
        assert mina.message(said).reactions == ("👍",)
        assert olek.last().words.text == "look at this"
        assert here.standin.record.of("setMyCommands")
        copy = olek.last().id
        with bot.store.begin() as work:
            assert storage.relays.about_of(work, OLEK, copy) == ("client-one", said)


async def test_chats_that_are_no_private_ones_are_left(here: Here, mina: Seat) -> None:
    """Without a word, and without a turn."""
    async with here.bot() as bot:
        here.standin.invite_to_group(MINA, -100, "Gym")
        await here.settled(bot)
    assert here.standin.record.of("leaveChat", chat_id=-100)
    assert mina.chat.started
    assert all(isinstance(s, Typed) for s in here.script.seen)


class TestTrouble:
    """The platform in trouble: nothing lost, no flood."""

    async def test_everything_arrives_through_errors(self, here: Here, mina: Seat, olek: Seat) -> None:
        """A third of the calls fail with 500, 502 or 429; order is kept in each chat."""
        for trouble in (ServerError(500), ServerError(502), TooMany(2)):
            here.standin.faults.add(Fault(trouble, method="sendMessage", chance=0.12))
        async with here.bot() as bot:
            for n in range(15):
                mina.say(f"m{n}")
                olek.say(f"o{n}")
            await here.settled(bot, moving=True)
        assert replies(mina) == [f"m{n}" for n in range(15)]
        assert replies(olek) == [f"o{n}" for n in range(15)]
        assert len(here.standin.record.of("sendMessage")) < 90

    async def test_a_chat_that_must_wait_holds_up_no_other(self, here: Here, mina: Seat, olek: Seat) -> None:
        """429 in one chat for a minute: the other is answered meanwhile; the first afterwards, in order."""
        here.standin.faults.add(Fault(TooMany(60), method="sendMessage", chat_id=MINA, times=1))
        async with here.bot() as bot:
            mina.say("one")
            mina.say("two")
            olek.say("three")
            await olek.wait_for("three")
            assert replies(mina) == []
            here.clock.advance(timedelta(seconds=61))
            bot.service.outbox.wake.set()
            await mina.wait_for("two")
            await here.settled(bot)
        assert replies(mina) == ["one", "two"]

    async def test_who_blocked_us_is_marked_and_not_written_to(self, here: Here, store: Store, mina: Seat) -> None:
        """The client is unreachable from then on, what waited is given up; a block comes as an update too."""
        with store.begin() as work:
            practice.practice(work)
            practice.client(work, id="client-mina", chat=MINA, name="Mina")
        async with here.bot() as bot:
            await here.settled(bot)
            mina.chat.shut = "blocked"  # the update of it is lost
            with store.begin() as work:
                parcels = [_parcel(f"x{n}", MINA) for n in range(3)]
                storage.outbox.put(work, parcels, now=here.clock.now())
            bot.service.outbox.wake.set()
            await here.settled(bot)
            with store.begin() as work:
                client = storage.people.client_at(work, MINA)
                assert client is not None
                assert not client.reachable
                assert storage.outbox.waiting(work) == 0
            refused = [c for c in here.standin.record.of("sendMessage", chat_id=MINA) if c.refusal]
            assert len(refused) == 1
            mina.unblock()
            mina.block()
            await here.settled(bot)
        assert [s.blocked for s in here.script.seen if isinstance(s, BotBlocked)] == [False, True]

    async def test_a_void_token_ends_the_bot_with_a_sentence(self, here: Here) -> None:
        """At the start, and when it is taken back later."""
        with pytest.raises(ChatFault, match="CHALKPOST_TOKEN"):
            await _run_until_refused(here)


class TestRestart:
    """What was in hand when a process died."""

    @pytest.mark.parametrize(
        ("repeat", "arrives"), [(Repeat.RESEND, ["x"]), (Repeat.AGAIN, ["(again) x"]), (Repeat.DROP, [])]
    )
    async def test_what_may_have_arrived_is_treated_by_its_kind(
        self, *, here: Here, repeat: Repeat, arrives: list[str], store: Store, mina: Seat
    ) -> None:
        """Sent again, sent again with a mark, or left; nothing else of the chat is held up."""
        with store.begin() as work:
            storage.outbox.put(work, [_parcel("x", MINA, repeat), _parcel("y", MINA)], now=NOON)
            assert len(storage.outbox.claim_due(work, worker="dead", now=NOON, limit=5)) == 1
        here.clock.advance(timedelta(minutes=2))  # on PostgreSQL a dead worker's claim ends with its lease
        async with here.bot() as bot:
            await here.settled(bot)
        assert replies(mina) == [*arrives, "y"]

    async def test_what_was_kept_and_not_answered_is_answered_now(self, here: Here, mina: Seat, store: Store) -> None:
        """An update that an earlier process acknowledged, and then died."""
        raw = '{"update_id": 5, "message": {"message_id": 1, "date": 1, "text": "kept", "chat": %s}}'
        chat = '{"id": 7, "type": "private"}'
        with store.begin() as work:
            storage.inbox.receive(work, [storage.inbox.RawUpdate(42, 5, MINA, raw % chat)], now=NOON)
        async with here.bot() as bot:
            await here.settled(bot)
        assert "kept" in replies(mina)

    async def test_expired_messages_are_not_sent(self, here: Here, store: Store, mina: Seat) -> None:
        """A rest notice from before the stop helps nobody."""
        with store.begin() as work:
            late = NewParcel("late", MINA, ParcelKind.SEND, BODY, 3, "drop", expires_at=NOON - timedelta(seconds=1))
            storage.outbox.put(work, [late, _parcel("x", MINA)], now=NOON - timedelta(minutes=1))
        async with here.bot() as bot:
            await here.settled(bot)
        assert replies(mina) == ["x"]


BODY = show_body(SendBody("late", "late"))


async def _run_until_refused(here: Here) -> None:
    async with here.bot(bot_name="chalk_bot") as bot:
        here.standin.house.bots.clear()
        await bot.wait()


def _parcel(words: str, chat: int, repeat: Repeat = Repeat.RESEND) -> NewParcel:
    return NewParcel(f"key-{words}", chat, ParcelKind.SEND, show_body(SendBody(words, words)), 1, repeat.value)


class TestClock:
    """What comes due."""

    @pytest.fixture
    def known(self, store: Store) -> Store:
        """A practice with Mina as a client."""
        with store.begin() as work:
            practice.practice(work)
            practice.client(work, id="client-mina", chat=MINA, name="Mina")
        return store

    async def test_a_rule_gives_its_message_once(self, here: Here, mina: Seat, known: Store) -> None:
        """Whatever ticks come; its next time gives the next one."""
        daily = RuleSet(
            "client-mina", RuleKind.SESSION, "UTC", at=(NOON + timedelta(hours=1)).time(), days=tuple(range(7))
        )
        here.script.turns["set"] = Turn(keeps=(daily,))
        here.script.due = Turn(says=(echo(MINA, "time to train"),))
        assert known is not None
        async with here.bot() as bot:
            mina.say("set")
            await here.settled(bot)
            for minutes in (59, 2, 5, 24 * 60):
                here.clock.advance(timedelta(minutes=minutes))
                await asyncio.gather(bot.tick(), bot.tick())
                await here.settled(bot)
        assert replies(mina) == ["time to train"] * 2

    async def test_what_comes_due_goes_out_at_once(self, here: Here, mina: Seat, known: Store) -> None:
        """It doesn't wait until the loops look by themselves, whoever held the senders' room when it was put."""
        soon = RuleSet("client-mina", RuleKind.SESSION, "UTC", once_at=NOON + timedelta(minutes=1))
        here.script.turns["set"] = Turn(keeps=(soon,))
        here.script.due = Turn(says=(echo(MINA, "time to train"),))
        assert known is not None
        async with here.bot(wake_s=1000.0, tick_s=1000.0) as bot:
            mina.say("set")
            await here.settled(bot)
            here.clock.advance(timedelta(minutes=2))
            await bot.tick()
            await here.settled(bot)
        assert "time to train" in replies(mina)

    async def test_a_rule_that_fails_holds_up_no_other_and_comes_again_the_next_time(
        self, here: Here, mina: Seat, known: Store
    ) -> None:
        """Three tries, then it is let go for this time."""
        bad = RuleSet("nobody", RuleKind.SESSION, "UTC", once_at=NOON + timedelta(minutes=1))
        good = RuleSet("client-mina", RuleKind.SESSION, "UTC", once_at=NOON + timedelta(minutes=2))
        here.script.turns["set"] = Turn(keeps=(bad, good))
        here.script.due = Turn(says=(echo(MINA, "time to train"),))
        async with here.bot() as bot:
            mina.say("set")
            await here.settled(bot)
            here.clock.advance(timedelta(minutes=3))
            await bot.tick()
            await here.settled(bot)
        assert "time to train" in replies(mina)
        with known.begin() as work:
            assert storage.health.health(work, here.clock.now()).due == 0


async def test_the_health_endpoint_tells(here: Here, mina: Seat) -> None:
    """200 while polls are answered; 503 after a silence."""
    async with here.bot(health_listen="127.0.0.1:0") as bot, aiohttp.ClientSession() as session:
        await mina.wait_for("/start")
        await here.settled(bot)
        address = f"http://127.0.0.1:{bot.health_port}/health"
        async with session.get(address) as answer:
            assert (answer.status, (await answer.json())["turns"]) == (200, 1)
        here.clock.advance(timedelta(minutes=3))
        async with session.get(address) as answer:
            assert answer.status == 503


async def test_a_webhook_does_the_same_job(here: Here, mina: Seat, unused_port: int) -> None:
    """Set at the start, updates brought by the platform, in order."""
    async with here.bot(
        mode="webhook",
        webhook_url=f"http://127.0.0.1:{unused_port}/hook",
        webhook_secret="s3cret-s3cret-s3cret",
        webhook_listen=f"127.0.0.1:{unused_port}",
    ) as bot:
        for n in range(10):
            mina.say(f"m{n}")
        await mina.wait_for("m9")
        await here.settled(bot)
    assert replies(mina) == [f"m{n}" for n in range(10)]


async def test_several_processes_share_a_database_or_are_told_that_they_cannot(
    here: Here, mina: Seat, olek: Seat
) -> None:
    """PostgreSQL: one takes in, two work and send, each message answered once and in order. SQLite: a sentence."""
    async with here.bot(roles="intake,clock") as bot:
        if here.url.startswith("sqlite"):
            with pytest.raises(SettingsFault, match="already runs"):
                async with here.bot(roles="work,send"):
                    raise AssertionError("ran twice")
            return
        async with here.bot(roles="work,send") as second, here.bot(roles="work,send") as third:
            for n in range(20):
                mina.say(f"m{n}")
                olek.say(f"o{n}")
            await mina.wait_for("m19", timeout_s=20)
            await olek.wait_for("o19", timeout_s=20)
            for one in (bot, second, third):
                await here.settled(one)
    assert replies(mina) == [f"m{n}" for n in range(20)]
    assert replies(olek) == [f"o{n}" for n in range(20)]
