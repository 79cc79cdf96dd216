"""Files in the chat: a coach's spreadsheet is fetched and answered; everything else goes where it went."""

import pytest

from bot.dialogue.incoming import FileTrouble
from bot.dialogue.programmes import LARGEST
from bot.tryout.practice.people import COACH as COACH_PLAYER
from tests.talks.practice import Practice
from tests.talks.wireless import ADA, COACH, DANA, OTHER_COACH, STRANGER, Wired, Wireless

SHEET = b"\xef\xbb\xbfweek;workout;exercise\n1;One;Squat\n"
SUNDAY = "2027-01-10 18:05"


def answered(bot: Wireless, who: int, name: str, content: bytes | FileTrouble, **more: object) -> list[str]:
    """What the bot wrote to somebody after they sent a file."""
    before = len(bot.screen(who))
    bot.send_file(who, name, content, **more)
    return [shown.text for shown in bot.screen(who)[before:]]


@pytest.mark.parametrize("name", ["plan.xlsx", "PLAN.XLSX", "plan.csv", "a.b.csv"])
def test_a_coachs_sheet_is_fetched_and_answered(wired: Wired, name: str) -> None:
    with wired.bot(SUNDAY) as bot:
        texts = answered(bot, COACH, name, SHEET)
        assert any(name in text for text in texts), texts
        assert bot.fetched == 1
        assert not [s for who in (ADA, DANA, OTHER_COACH) for s in bot.screen(who) if name in s.text]
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"x" * (LARGEST + 1), "too big"),
        (FileTrouble.TOO_BIG, "too big"),
        (FileTrouble.GONE, "send it again"),
        (FileTrouble.FAILED, "send it again"),
    ],
)
def test_what_can_not_be_had_is_said_plainly(wired: Wired, content: bytes | FileTrouble, said: str) -> None:
    """With the file's name, and what to do."""
    with wired.bot(SUNDAY) as bot:
        (text,) = answered(bot, COACH, "plan.xlsx", content)
        assert "“plan.xlsx”" in text
        assert said in text
        bot.no_turn_failed()


def test_nobody_elses_file_is_ever_fetched(wired: Wired) -> None:
    """A client's goes to their coach, a stranger's nowhere; other things than sheets of a coach's to the client whom
    they choose; a sheet in answer to a client, to that client."""
    with wired.bot(SUNDAY) as bot:
        fetched = bot.fetched
        assert "Maren" in answered(bot, ADA, "plan.xlsx", SHEET)[-1]
        assert bot.screen(COACH)[-1].relayed
        assert len(answered(bot, STRANGER, "plan.xlsx", SHEET)) == 1
        assert "whom" in answered(bot, COACH, "plan.pdf", b"%PDF")[-1]
        relayed = next(s.number for s in reversed(bot.screen(COACH)) if s.relayed)
        reply = {"reply_to_message": {"message_id": relayed}}
        assert "Ada" in answered(bot, COACH, "for you.xlsx", SHEET, **reply)[-1]
        assert bot.screen(ADA)[-1].relayed
        assert bot.fetched == fetched
        bot.no_turn_failed()


async def test_over_the_wire_the_answer_stands_under_the_file(practice: Practice) -> None:
    """Through the platform's file server and back."""
    number = await practice.stage.send(COACH_PLAYER, "plan ß.csv", SHEET)
    answers = [m for m in practice.stage.seat(COACH_PLAYER).messages() if m.by_bot and m.reply_to == number]
    assert any("plan ß.csv" in m.words.text for m in answers)
    assert practice.held.standin.record.of("getFile")
