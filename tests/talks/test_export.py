"""`/export`: everything that is kept of somebody, whole; nothing of anybody else."""

import re
from dataclasses import dataclass
from datetime import datetime

import pytest

from bot.runtime.copies.pack import pack
from bot.saying import Copy, Wanted
from bot.tryout.practice.people import ADA as ADA_PLAYER
from bot.tryout.practice.people import COACH as COACH_PLAYER
from storage.copies import scope_of
from storage.openrows import FORMS, NOT_COPIED, OF_CHAT, OF_CLIENT
from storage.record import CODECS, facts_of
from storage.resealing import sealed_columns
from storage.tables import clients, coaches, invites, metadata, programmes, shelves
from tests.talks.opened import Opened
from tests.talks.practice import Practice
from tests.talks.wireless import ADA, BO, COACH, DANA, EVE, NAMES, OTHER_COACH, STRANGER, Wired, Wireless

MONDAY_EVENING = "2027-01-11 18:05"
WORDS = {ADA: "adaword", BO: "boword", DANA: "danaword", EVE: "eveword", COACH: "marenword", OTHER_COACH: "oonaword"}
"""A word of each person's that nobody else says."""


def busy(bot: Wireless) -> None:
    """Everybody trains, hurts, asks and is noted."""
    for who in (ADA, BO, DANA):
        bot.say(who, "/today")
        bot.say(who, "60x5 2 left")
        bot.say(who, "=1+2 60x5")
        bot.say(who, f"my left knee hurts {WORDS[who]}")
        bot.say(who, f"should I {WORDS[who]} with a belt?")
        bot.say(who, "600x5")
    bot.say(EVE, "yes")
    bot.say(EVE, f"Eve {WORDS[EVE]}")
    for coach, client in ((COACH, "Ada"), (OTHER_COACH, "Dana")):
        bot.say(coach, "/clients")
        bot.tap(coach, f"Open {client}")
        bot.tap(coach, "Notes")
        bot.tap(coach, "New note")
        bot.say(coach, f"{client} {WORDS[coach]}")


@dataclass(frozen=True)
class Ids:
    """The ids behind the chats."""

    clients: dict[int, str]
    coaches: dict[int, str]

    @classmethod
    def of(cls, bot: Wireless) -> "Ids":
        """Read from the tables."""
        found = {row.chat: row.id for row in bot.work.all(clients.select())}
        return cls(found, {row.chat: row.id for row in bot.work.all(coaches.select())})

    def of_chat(self, chat: int) -> str:
        """A client's or a coach's."""
        return self.clients.get(chat) or self.coaches[chat]


def holds(text: str, word: str) -> bool:
    """Whether the word stands in it, as a word."""
    return re.search(rf"\b{word}\b", text) is not None


def copied(bot: Wireless, who: int) -> Opened:
    """Asks for the copy, and makes the file that was put."""
    bot.say(who, "/export")
    shown = bot.screen(who)[-1]
    assert isinstance(shown.file, Wanted)
    scope = scope_of(bot.work, shown.file)
    assert scope is not None
    return Opened(pack(bot.work, scope, part=1, now=bot.now))


OWNED = {ADA: (ADA,), BO: (BO,), DANA: (DANA,), COACH: (COACH, ADA, BO, EVE), OTHER_COACH: (OTHER_COACH, DANA)}
"""Whose data stands in whose copy."""


@pytest.mark.parametrize("who", OWNED)
def test_a_copy_holds_everything_of_its_own_and_nothing_of_anybody_else(wired: Wired, who: int) -> None:
    """Names, ids, chats and words: each of one's own is in it, none of anybody else's, but that a client reads their
    own coach's name and what the coach noted of them."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        ids, text = Ids.of(bot), copied(bot, who).everything()
        mine = OWNED[who]
        told = {DANA: OTHER_COACH, ADA: COACH, BO: COACH}.get(who)
        for other in (ADA, BO, DANA, EVE, COACH, OTHER_COACH):
            if other in mine:
                assert holds(text, NAMES[other]), other
                assert ids.of_chat(other) in text, other
                assert WORDS[other] in text or other == EVE, other
            else:
                assert ids.of_chat(other) not in text, other
                assert not holds(text, str(other)), other
                assert WORDS[other] not in text or (other == told and who != BO), other
                assert not holds(text, NAMES[other]) or other == told, other
        bot.no_turn_failed()


def test_every_fact_and_set_is_in_it_as_it_is_kept(wired: Wired) -> None:
    """Read back from the JSON, the facts are equal to those kept, in order, to the last digit."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        me = Ids.of(bot).clients[ADA]
        (mine,) = copied(bot, ADA).clients()
        kept = list(facts_of(bot.work, me))
        assert len(kept) > 15
        coach = Ids.of(bot).coaches[COACH]
        for row, one in zip(mine["facts"], kept, strict=True):
            body = {name: coach if value == "coach" else value for name, value in row["body"].items()}
            assert CODECS[row["kind"]].decode(body) == one.fact
            assert datetime.fromisoformat(row["at"]) == one.origin.at
            assert row["said_by"] in ("client", "coach", "clock")
        first = mine["sets"][0]
        assert (first["thousandths"], first["unit"], first["reps"]) == (60000, "kg", 5)
        assert {m["kind"] for m in mine["matters"]} >= {"pain", "question"}
        assert mine["schedule"]
        assert mine["strengths"]
        assert mine["clients"][0]["name"] == "Ada"


def test_the_workbook_is_for_reading(wired: Wired) -> None:
    """Planned beside done, units stated, local times with their distance from UTC, numbers as numbers."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        copy = copied(bot, ADA)
        (person,) = copy.sheet("People")
        assert (person["Name"], person["Unit"], person["Time zone"]) == ("Ada", "kg", "Europe/Berlin")
        assert person["Coach"] == "Maren"
        assert person["Training days"] == "Monday, Thursday"
        sets = copy.sheet("Sets")
        done = [row for row in sets if row["Stage"] == "work"]
        assert (done[0]["Load"], done[0]["Unit"], done[0]["Done"], done[0]["RIR"]) == (60, "kg", 5, 2)
        assert done[0]["Planned, from"] <= done[0]["Planned, to"]
        assert done[0]["Counted in"] == "repetitions"
        assert [row for row in sets if row["Stage"] == "not done"]
        (pain,) = copy.sheet("Pain")
        assert pain["When"].startswith("2027-01-11T18:0")
        assert pain["When"].endswith("+01:00")
        assert WORDS[ADA] in pain["Words"]
        assert any(WORDS[ADA] in row["Words"] for row in copy.sheet("Words"))
        assert [row["Words"] for row in copy.sheet("Notes")] == [f"Ada {WORDS[COACH]}"]
        assert copy.sheet("Programmes given")[0]["Programme"]
        assert copy.sheet("Strength")[0]["Unit"] == "kg"
        readme = copy.read("README.txt").decode()
        for told in ("kg or lb", "0.45359237", "local", "UTC", "No cell is a formula", "Not in it"):
            assert told in readme


def test_a_practice_has_its_clients_and_programmes_and_says_who_is_left_out(wired: Wired) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(BO, "/settings")
        bot.tap(BO, "Take my consent back")
        bot.tap(BO, "Yes, stop everything")
        copy = copied(bot, COACH)
        assert sorted(row["Name"] for row in copy.sheet("People")) == ["Ada", "Eve"]
        assert "One client has taken their consent back" in copy.read("README.txt").decode()
        assert copy.sheet("Programmes")[0]["Programme"]
        coach = copy.json("coach")
        assert coach["coaches"][0]["name"] == "Maren"
        assert {f["kind"] for f in coach["facts"]} >= {"CoachJoined", "InviteMade"}
        assert coach["programmes"]
        assert "token" not in str(coach["invites"])
        assert "Bo" in copied(bot, BO).everything(), "who has taken the consent back may still have their own"


def test_one_copy_an_hour(wired: Wired) -> None:
    """The second is told when the next can be; an hour later it comes. Also across the hour of the clock."""
    with wired.bot("2027-01-11 17:50") as bot:
        bot.say(ADA, "/export")
        assert bot.screen(ADA)[-1].file is not None
        for minutes in (5, 20):
            bot.wait(minutes)
            bot.say(ADA, "/export")
            assert bot.text(ADA) == "You had a copy at 17:50. The next one can be made from 18:50 on."
        bot.wait(36)
        bot.say(ADA, "/export")
        assert bot.screen(ADA)[-1].file is not None
        bot.say(BO, "/export")
        assert bot.screen(BO)[-1].file is not None
        bot.no_turn_failed()


def test_a_stranger_gets_a_strangers_answer_and_who_is_joining_their_own(wired: Wired) -> None:
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(STRANGER, "/export")
        stranger = bot.text(STRANGER)
        bot.say(STRANGER, "/today")
        assert bot.text(STRANGER) == stranger
        assert bot.screen(STRANGER)[-1].file is None
        assert copied(bot, EVE).sheet("People")[0]["Standing"] == "joining"


def test_a_coach_who_trains_with_another_gets_both(wired: Wired) -> None:
    """Two files, and in their own nothing of their clients."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(OTHER_COACH, "/invite")
        payload = bot.text(OTHER_COACH).partition("?start=")[2].split()[0]
        bot.say(COACH, f"/start {payload}")
        bot.say(COACH, "yes")
        bot.say(COACH, "/export")
        files = [s.file for s in bot.screen(COACH) if isinstance(s.file, Wanted)]
        assert [f.copy for f in files] == [Copy.OWN, Copy.PRACTICE]
        scope = scope_of(bot.work, files[0])
        assert scope is not None
        text = Opened(pack(bot.work, scope, part=1, now=bot.now)).everything()
        assert not any(holds(text, NAMES[who]) for who in (ADA, BO, DANA, EVE))


@pytest.mark.parametrize("words", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", '=HYPERLINK("x")'])
def test_no_words_become_a_formula(wired: Wired, words: str) -> None:
    """Whatever somebody calls themselves or writes: a cell's text stays a text."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(ADA, f"should I {words}?")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Change name")
        bot.say(ADA, words)
        copy = copied(bot, ADA)
        text = copy.everything()
        assert "<f>" not in text
        assert copy.sheet("People")[0]["Name"] in (words.strip(), "Ada")
        assert any(words.strip() in str(row["Words"]) for row in copy.sheet("Words"))


async def test_over_the_wire_the_file_comes(practice: Practice) -> None:
    """Made from the database at the moment of sending, with a caption; also a coach's."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA_PLAYER, "60x5 2 left")
    await stage.say(ADA_PLAYER, "/export")
    name, content = stage.file(ADA_PLAYER)
    assert name == "chalkpost-record-2027-01-11.zip"
    assert "All that is kept of you" in practice.text(ADA_PLAYER)
    done = [row for row in Opened(content).sheet("Sets") if row["Stage"] == "work"]
    assert [(row["Load"], row["Done"]) for row in done] == [(60, 5)]
    await stage.say(COACH_PLAYER, "/export")
    name, content = stage.file(COACH_PLAYER)
    assert name.startswith("chalkpost-practice-")
    assert [row["Name"] for row in Opened(content).sheet("People")] == ["Ada"]


# --- nothing is forgotten when tables change


def test_every_table_is_copied_or_holds_nothing_of_anybody() -> None:
    """Whoever adds a table says here, in `storage.openrows`, whose it is."""
    beside = {coaches.name, invites.name, programmes.name, shelves.name}
    known = {t.name for t in (*OF_CLIENT, *OF_CHAT)} | beside | set(NOT_COPIED)
    assert known == {table.name for table in metadata.sorted_tables}


def test_every_sealed_column_of_what_is_copied_is_opened() -> None:
    for table in metadata.sorted_tables:
        if table.name not in NOT_COPIED:
            assert {(table.name, c.name) for c in sealed_columns(table)} <= set(FORMS), table.name
