"""Nobody reaches what is not theirs: buttons of others replayed, commands of strangers, chats that are not private."""

from dataclasses import dataclass

import pytest

from bot.dialogue.buttons import check_of
from bot.dialogue.offering import show_choice
from bot.dialogue.router import CLIENT_TAPS, COACH_TAPS
from bot.training.catalogue import catalogue
from tests.talks.wireless import ADA, BO, COACH, DANA, EVE, NAMES, OTHER_COACH, STRANGER, Wired, Wireless

MONDAY_EVENING = "2027-01-11 18:05"
TUESDAY_NOON = "2027-01-12 12:00"
COMMANDS = (
    "/start", "/today", "/log", "/week", "/undo", "/pain", "/settings", "/help", "/privacy", "/cancel",
    "/developer_info", "/invite", "/inbox", "/clients", "/digest", "/programme", "/plan",
    "/export", "/delete_me", "/nonsense",
)  # fmt: skip


def busy(bot: Wireless) -> None:
    """Everything that has buttons stands on somebody's screen: cards, doubts, pain, alerts, the coach's pages."""
    bot.say(ADA, "60x5 2 left")
    bot.say(ADA, "left knee hurts")
    bot.say(ADA, "should I use a belt?")
    bot.say(ADA, "600x5")
    bot.say(ADA, "hello hello")
    bot.say(ADA, "dumbbell row 20x8")
    bot.say(ADA, "no cable today")
    bot.say(ADA, "only got 20 min")
    bot.say(BO, "/settings")
    bot.tap(BO, "Take my consent back")
    bot.say(COACH, "for whom is this")
    bot.say(COACH, "/clients")
    bot.tap(COACH, "Open Ada")
    bot.say(COACH, "/programme")
    bot.until(bot.wall("Europe/Berlin", TUESDAY_NOON))  # effort asked, missed sessions, the morning after pain


@dataclass(frozen=True)
class Answer:
    """What a tap leads to: the words for a moment, and what the chat then shows anew."""

    toast: str
    news: tuple[str, ...]
    facts: int


def replay(bot: Wireless, who: int, data: str) -> Answer:
    """Somebody sends this button's data from their own chat."""
    before, facts = {s.number: s.text for s in bot.screen(who)}, bot.facts_count()
    toast = bot.tap_data(who, data)
    news = tuple(s.text for s in bot.screen(who) if before.get(s.number) != s.text)
    return Answer(toast, news, bot.facts_count() - facts)


def foreign(bot: Wireless, owner: int) -> list[str]:
    """The buttons on a screen that are about something: a session, a client, pain."""
    named = (data for _, data in bot.buttons(owner))
    return sorted({d for d in named if d.split(":")[2] and d.split(":")[1] not in ("step", "ask")})


def made_up(data: str) -> str:
    """The same button about something that never was."""
    version, op, ref, *rest = data.split(":")
    return ":".join((version, op, "Z" * len(ref), *rest))


@pytest.mark.parametrize("owner", [ADA, BO, COACH])
def test_a_button_of_somebody_else_is_like_one_that_never_was(wired: Wired, owner: int) -> None:
    """For every button on the owner's screen, pressed by another client, another coach, that coach's client, somebody
    who is joining, and a stranger: the same answer as to an invented one; no fact, no message to anybody."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        datas = foreign(bot, owner)
        assert len({d.split(":")[1] for d in datas}) >= 3
        for who in (BO if owner != BO else ADA, OTHER_COACH, DANA, EVE, STRANGER):
            for data in datas:
                others = {n: [s.text for s in bot.screen(n)] for n in NAMES if n != who}
                theirs, absent = replay(bot, who, data), replay(bot, who, made_up(data))
                assert theirs == absent, data
                if data.split(":")[1] != "hurt":  # something that hurts is always listened to
                    assert theirs.facts == 0, data
                    assert theirs.news == (), data
                assert others == {n: [s.text for s in bot.screen(n)] for n in NAMES if n != who}, data
        bot.no_turn_failed()


SESSION_OPS = (
    "set", "drop", "mini", "left", "rest", "skip", "load", "undo", "end", "felt", "did", "move", "skipday",
    "other", "swapin", "askswap", "instead", "time", "cut", "back", "more",
)  # fmt: skip
FIRST = f"0.{check_of('Back squat')}"
ROW = show_choice(next(e for e in catalogue().exercises if e.name == "Machine row"))
"""Arguments that name an exercise of the session, changed by then, and one of the catalogue."""
OWN_LISTS = (
    "c.ask",
    "c.set",
    "c.cancel",
    "c.clients",
    "c.digest",
    "c.prog",
    "c.tmpl",
    "c.sheet",
    "c.giveall",
    "c.lay",
    "c.layit",
    "c.several",
    "c.tothese",
    "c.toall",
)
"""About nobody: the coach's own settings and lists, whatever a button names."""
CLIENT_OPS = tuple(op for op in COACH_TAPS if op not in OWN_LISTS)


@pytest.mark.parametrize("op", [*SESSION_OPS, *CLIENT_OPS, "pick", "nopick", "score", "check"])
def test_every_operation_about_somebodys_things_asks_whose_they_are(wired: Wired, op: str) -> None:
    """Each of them, on Ada's session, pain and name, with arguments that would do something: for everybody else it is
    like one on what never was, and nothing is kept."""
    assert op in CLIENT_TAPS or op in COACH_TAPS
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        refs = {d.split(":")[2] for _, d in (*bot.buttons(ADA), *bot.buttons(COACH)) if d.split(":")[2]}
        mine = {d.split(":")[2] for who in (BO, DANA, OTHER_COACH, EVE) for _, d in bot.buttons(who)}
        args = {
            "move": "2027-01-13",
            "check": "worse",
            "felt": "7",
            "score": "7",
            "c.pick": "100000",
            "cut": "20",
            "back": "1",
            **dict.fromkeys(("other", "swapin", "askswap", "c.other", "c.swapin", "c.unswap"), f"{FIRST}:{ROW}"),
            "c.handled": "s1",
            "c.light": "2027-01-11:1",
            "c.auto": "1:5",
            "c.ease": "0",
            "c.nolight": "",
            "c.sload": "",
            "c.away": "",
            "c.awayset": "away:1",
            "c.awayask": "away",
            "c.yes": "s1",
        }
        for who in (BO, OTHER_COACH, DANA, EVE, STRANGER):
            for ref in sorted(refs - mine):
                data = f"1:{op}:{ref}:{args.get(op, '0:1:5:20000:kg')}"[:64]
                theirs, absent = replay(bot, who, data), replay(bot, who, made_up(data))
                assert theirs == absent, data
                assert (theirs.facts, theirs.news) == (0, ()), data
        bot.no_turn_failed()


@pytest.mark.parametrize("command", COMMANDS)
def test_a_strangers_command_teaches_nothing(wired: Wired, command: str) -> None:
    """The one sentence; but the privacy notice, and who runs this, are for everybody. Nothing is kept."""
    with wired.bot(MONDAY_EVENING) as bot:
        facts = bot.facts_count()
        for words in (command, command.upper(), f"{command}@chalk_bot", f"{command} Ada", f"{command}\nAda"):
            bot.say(STRANGER, words)
            text = bot.text(STRANGER)
            if command in ("/privacy", "/developer_info"):
                assert "the operator" in text
            elif command == "/start" and "Ada" in words:
                assert "used already" in text
            else:
                assert "invitation only" in text
            assert "Ada" not in text
            assert "Maren" not in text
        assert bot.facts_count() == facts


@pytest.mark.parametrize("command", COMMANDS)
def test_a_coach_reads_of_no_other_coachs_clients(wired: Wired, command: str) -> None:
    """Whatever Oona asks for, nothing of Maren's practice is in the answer; her own Dana is."""
    with wired.bot(MONDAY_EVENING) as bot:
        busy(bot)
        before = len(bot.screen(OTHER_COACH))
        bot.say(OTHER_COACH, command)
        news = "".join(s.text + str(s.data) for s in bot.screen(OTHER_COACH)[before:])
        assert news
        assert not any(name in news for name in ("Ada", "Bo,", "Bo:", "Eve", "Maren"))
        if command == "/clients":
            assert "Dana" in news


@pytest.mark.parametrize("command", ["/invite", "/clients", "/digest", "/programme", "/plan"])
def test_a_clients_coaching_command_is_unknown(wired: Wired, command: str) -> None:
    """No hint that it exists for others, and nothing happens."""
    with wired.bot(MONDAY_EVENING) as bot:
        facts = bot.facts_count()
        bot.say(ADA, command)
        assert "don't know that command" in bot.text(ADA)
        assert bot.facts_count() == facts


def test_a_tap_in_a_group_or_for_another_chat_is_nobodys(wired: Wired) -> None:
    """The button's chat must be the tapper's own: a forged one is not even read."""
    with wired.bot(MONDAY_EVENING) as bot:
        bot.say(ADA, "60x5")
        data = next(d for label, d in bot.buttons(ADA) if label == "9 reps")
        facts = bot.facts_count()
        for chat in ({"id": ADA, "type": "private"}, {"id": -5, "type": "group"}, {"id": ADA, "type": "group"}):
            person = {"id": BO, "is_bot": False, "first_name": "Bo"}
            body = {"id": "q", "from": person, "message": {"message_id": 5, "chat": chat, "date": 0}, "data": data}
            bot.raw({"callback_query": body})
        assert bot.facts_count() == facts


def test_groups_and_channels_are_left_and_nothing_said_there_counts(wired: Wired) -> None:
    """Added to a group, the bot leaves; what was said there, also by somebody whom it knows, is kept nowhere."""
    with wired.bot(MONDAY_EVENING) as bot:
        facts = bot.facts_count()
        person = {"id": ADA, "is_bot": False, "first_name": "Ada"}
        group = {"id": -100_200, "type": "supergroup", "title": "Gym"}
        added = {"chat": group, "from": person, "date": 5, "new_chat_member": {"status": "member"}}
        bot.raw({"my_chat_member": added})
        assert bot.left == [-100_200]
        bot.raw({"message": {**bot.message(ADA, 7), "chat": group, "text": "60x5"}})
        bot.raw({"channel_post": {"message_id": 3, "date": 5, "chat": {"id": -7, "type": "channel"}, "text": "60x5"}})
        assert bot.facts_count() == facts
        assert not bot.screen(-100_200)
        bot.no_turn_failed()


def test_words_by_way_of_another_bot_are_not_the_clients(wired: Wired) -> None:
    """Sent through an inline bot, by a bot, or in a channel's name: not read."""
    with wired.bot(MONDAY_EVENING) as bot:
        facts = bot.facts_count()
        via = {"id": 77, "is_bot": True, "first_name": "Other"}
        bot.say(ADA, "60x5", via_bot=via)
        bot.say(ADA, "60x5", sender_chat={"id": -7, "type": "channel"})
        bot.raw({"message": {**bot.message(ADA, 9), "from": via, "text": "60x5"}})
        assert bot.facts_count() == facts
