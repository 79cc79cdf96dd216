"""`/delete_me`: what goes is named, a second yes is asked for, and then nothing is left but the chat's own lines."""

import re
from datetime import timedelta
from pathlib import Path

import pytest
import sqlalchemy as sa

from bot.tryout.practice.people import ADA as ADA_PLAYER
from bot.tryout.practice.people import COACH as COACH_PLAYER
from storage.engine import Store
from storage.people import at_chat
from storage.tables import clients, coaches, facts, inbox, metadata, outbox
from tests.talks.practice import Practice
from tests.talks.test_export import WORDS, busy
from tests.talks.wireless import ADA, BO, COACH, DANA, EVE, OTHER_COACH, STRANGER, Wired, Wireless

MONDAY_EVENING = "2027-01-11 18:05"


def everything(bot: Wireless) -> str:
    """Every value of every row in the database, what is sealed opened."""
    out: list[str] = []
    for table in metadata.sorted_tables:
        for row in bot.work.connection.execute(sa.select(table)):
            out += [bot.work.unseal(bytes(v)) if isinstance(v, bytes | memoryview) else str(v) for v in row]
    return "\n".join(out)


def the_id(bot: Wireless, chat: int) -> str:
    """A client's."""
    row = at_chat(bot.work, chat)
    assert row is not None
    return str(row.id)


def the_sure(bot: Wireless, who: int) -> str:
    """The data of the button that deletes, as it stands on their screen now."""
    return next(data for label, data in reversed(bot.buttons(who)) if label.startswith("Delete"))


def test_what_goes_is_named_and_the_button_that_keeps_stands_first(wired: Wired) -> None:
    """Sets, sessions, pain, questions; and that a copy can be had before."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        bot.say(ADA, "/delete_me")
        text = bot.text(ADA)
        counted = bot.work.connection.execute(
            sa.text("SELECT count(*) FROM sets WHERE client = :one"), {"one": the_id(bot, ADA)}
        ).scalar_one()
        assert counted >= 1
        assert f"· {counted if counted > 1 else 'one'} set" in text
        assert "in one session" in text
        assert "one note of pain" in text
        assert "question" in text
        assert "/export" in text
        labels = [label for label, _ in bot.screen(ADA)[-1].data]
        assert labels[0] == "Keep everything"
        assert labels[1].startswith("Delete")
        assert bot.facts_count() > 0


def test_after_the_second_yes_nothing_of_them_is_left_anywhere(wired: Wired) -> None:
    """No row names them: not by id, chat, name or a word of theirs; also the update and the farewell leave nothing. The
    coach reads the name once; everybody else has what they had."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        me = the_id(bot, ADA)
        before = {who: bot.work.all(sa.select(facts).where(facts.c.client == the_id(bot, who))) for who in (BO, DANA)}
        bot.say(ADA, "/delete_me")
        bot.tap(ADA, "Delete")
        assert "Everything is deleted" in bot.text(ADA)
        assert bot.text(COACH).startswith("Ada has left")
        left = everything(bot)
        for trace in (me, str(ADA), WORDS[ADA], "Ada", f"Ada {WORDS[COACH]}"):
            assert trace not in left.split("\n"), trace
            assert trace == "Ada" or not re.search(rf"(?<!\w){re.escape(trace)}(?!\w)", left), trace
        for who, rows in before.items():
            assert len(bot.work.all(sa.select(facts).where(facts.c.client == the_id(bot, who)))) == len(rows) > 5
        bot.say(COACH, "/clients")
        assert "Ada" not in bot.text(COACH)
        bot.say(ADA, "/today")
        stranger = bot.text(ADA)
        bot.say(STRANGER, "/today")
        assert bot.text(STRANGER) == stranger
        bot.until(bot.now + timedelta(days=8))
        assert not [s for s in bot.screen(ADA) if "session" in s.text and s.number > bot.screen(ADA)[-1].number]
        bot.no_turn_failed()


def test_keeping_everything_and_cancelling_keep_everything(wired: Wired) -> None:
    """The button, or /cancel; the yes under an older question is none any more."""
    with wired.bot(MONDAY_EVENING) as bot:
        facts_then = bot.facts_count()
        bot.say(ADA, "/delete_me")
        sure = the_sure(bot, ADA)
        bot.tap(ADA, "Keep everything")
        assert bot.text(ADA) == "Nothing was deleted."
        bot.tap_data(ADA, sure)
        bot.say(ADA, "/delete_me")
        sure = the_sure(bot, ADA)
        bot.say(ADA, "/cancel")
        bot.tap_data(ADA, sure)
        assert bot.facts_count() == facts_then
        assert at_chat(bot.work, ADA) is not None
        bot.no_turn_failed()


def test_the_yes_holds_for_five_minutes_and_for_its_own_question(wired: Wired) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(ADA, "/delete_me")
        first = the_sure(bot, ADA)
        bot.wait(5.5)
        assert "older message" in bot.tap_data(ADA, first)
        bot.say(ADA, "/delete_me")
        assert "older message" in bot.tap_data(ADA, first)
        assert "older message" in bot.tap_data(BO, the_sure(bot, ADA))
        assert at_chat(bot.work, ADA) is not None
        bot.tap_data(ADA, the_sure(bot, ADA))
        assert at_chat(bot.work, ADA) is None
        assert at_chat(bot.work, BO) is not None


@pytest.mark.parametrize("who", [EVE, BO])
def test_who_is_joining_or_has_taken_the_consent_back_may_delete_too(wired: Wired, who: int) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        if who == BO:
            bot.say(BO, "/settings")
            bot.tap(BO, "Take my consent back")
            bot.tap(BO, "Yes, stop everything")
        bot.say(who, "/delete_me")
        bot.tap(who, "Delete everything of mine")
        assert at_chat(bot.work, who) is None
        assert str(who) not in everything(bot).split("\n")
        bot.no_turn_failed()


def test_an_earlier_time_with_the_practice_goes_too(wired: Wired) -> None:
    """Withdrawn, joined again: both are theirs."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Take my consent back")
        bot.tap(ADA, "Yes, stop everything")
        bot.say(OTHER_COACH, "/invite")
        bot.say(ADA, f"/start {bot.text(OTHER_COACH).partition('?start=')[2].split()[0]}")
        bot.say(ADA, "yes")
        bot.say(ADA, "/delete_me")
        assert "one set in one session" in bot.text(ADA)
        bot.tap(ADA, "Delete one set")
        assert not bot.work.all(sa.select(clients.c.id).where(clients.c.chat == ADA))
        assert not bot.work.all(sa.select(outbox.c.id).where(outbox.c.chat == ADA))
        assert not bot.work.all(sa.select(inbox.c.id).where(inbox.c.chat == ADA))
        bot.no_turn_failed()


def test_a_stranger_reads_what_strangers_read(wired: Wired) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(STRANGER, "/delete_me")
        stranger = bot.text(STRANGER)
        bot.say(STRANGER, "/today")
        assert bot.text(STRANGER) == stranger


def test_a_coach_with_clients_is_told_whom_to_ask(wired: Wired) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(COACH, "/delete_me")
        assert "3 clients still train with you" in bot.text(COACH)
        assert "the operator" in bot.text(COACH)
        assert not bot.screen(COACH)[-1].data


def test_a_coach_without_clients_deletes_the_account(wired: Wired) -> None:
    """With the records of those who had withdrawn; not where somebody has joined between the question and the yes."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(OTHER_COACH, "/invite")
        payload = bot.text(OTHER_COACH).partition("?start=")[2].split()[0]
        bot.say(DANA, "/settings")
        bot.tap(DANA, "Take my consent back")
        bot.tap(DANA, "Yes, stop everything")
        bot.say(OTHER_COACH, "/delete_me")
        sure = the_sure(bot, OTHER_COACH)
        bot.say(STRANGER, f"/start {payload}")
        assert "older message" in bot.tap_data(OTHER_COACH, sure)
        bot.say(STRANGER, "/delete_me")
        bot.tap(STRANGER, "Delete everything of mine")
        bot.say(OTHER_COACH, "/delete_me")
        bot.tap(OTHER_COACH, "Delete my coach's account")
        assert "Everything is deleted" in bot.text(OTHER_COACH)
        assert [row.chat for row in bot.work.all(sa.select(coaches.c.chat))] == [COACH]
        left = everything(bot)
        assert "Oona" not in left
        assert "Dana" not in left
        assert {str(OTHER_COACH), str(DANA)}.isdisjoint(left.split("\n"))
        assert at_chat(bot.work, ADA) is not None
        bot.no_turn_failed()


def test_a_coach_who_also_trains_stays_a_coach(wired: Wired) -> None:
    """What goes is the trainee's side alone."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(OTHER_COACH, "/invite")
        bot.say(COACH, f"/start {bot.text(OTHER_COACH).partition('?start=')[2].split()[0]}")
        bot.say(COACH, "yes")
        bot.say(COACH, "/delete_me")
        bot.tap(COACH, "Delete everything of mine")
        assert not bot.work.all(sa.select(clients.c.id).where(clients.c.chat == COACH))
        bot.say(COACH, "/clients")
        assert "Ada" in bot.text(COACH)
        bot.no_turn_failed()


async def test_over_the_wire_nothing_of_them_is_in_the_files(practice: Practice) -> None:
    """The sealed bytes themselves are gone from the database's files, and no parcel of the farewell stays."""
    stage, store = practice.stage, practice.held.bot.store
    await practice.monday()
    await stage.say(ADA_PLAYER, "60x5 2 left")
    await stage.say(ADA_PLAYER, "my left knee hurts")
    sealed = sealed_of(store, ADA_PLAYER.id)
    assert len(sealed) > 12
    assert not missing(store, sealed)
    await stage.say(ADA_PLAYER, "/delete_me")
    await stage.tap(ADA_PLAYER, "Delete one set and all the rest")
    assert "Everything is deleted" in practice.text(ADA_PLAYER)
    assert practice.text(COACH_PLAYER).startswith("Ada has left")
    assert missing(store, sealed) == sealed
    with store.begin() as work:
        assert not work.all(sa.select(outbox.c.id).where(outbox.c.chat == ADA_PLAYER.id))
        assert not work.all(sa.select(outbox.c.id).where(outbox.c.key.like("gone:%")))


def sealed_of(store: Store, chat: int) -> set[bytes]:
    """Everything sealed in rows of this client."""
    found: set[bytes] = set()
    with store.begin() as work:
        row = at_chat(work, chat)
        assert row is not None
        for table in metadata.sorted_tables:
            if "client" in table.c and table.name not in ("forgetting",):
                for one in work.connection.execute(sa.select(table).where(table.c.client == row.id)):
                    found |= {bytes(v) for v in one if isinstance(v, bytes) and len(v) > 40}
        found.add(bytes(row.name))
    return found


def missing(store: Store, sealed: set[bytes]) -> set[bytes]:
    """Those that are in no file of the database; a long one may lie in pieces: its first bytes are looked for."""
    file = str(store.engine.url.database)
    content = b"".join(Path(f"{file}{end}").read_bytes() for end in ("", "-wal"))
    return {one for one in sealed if one[:40] not in content}
