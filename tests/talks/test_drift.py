"""Stalls and drift in the coach's digest: the numbers behind them and one suggestion."""

from datetime import UTC, datetime, time

from bot.dialogue import digest
from bot.dialogue.desk import CoachDesk, Desk, DigestEntry, House, OpenPain
from bot.saying import Urgency
from bot.training.pain import PainSaid
from bot.training.people import Coach
from bot.wording.render import render_parts
from tests.talks.wireless import ADA, COACH, Wired, Wireless

MONDAYS = ("2027-01-11", "2027-01-18", "2027-01-25", "2027-02-01")
THURSDAYS = ("2027-01-14", "2027-01-21", "2027-01-28", "2027-02-04")


def squat(bot: Wireless, day: str, text: str) -> None:
    """A session of one set; it is ended in words."""
    bot.until(bot.wall("Europe/Berlin", f"{day} 18:05"))
    bot.say(ADA, text)
    bot.wait(6)
    bot.say(ADA, "that's me done")


def test_four_sessions_without_a_better_set_are_told_in_the_digest(wired: Wired) -> None:
    """Once a session, with first and last set, and something that the coach may do."""
    with wired.bot() as bot:
        for monday, thursday in zip(MONDAYS[:3], THURSDAYS, strict=False):
            squat(bot, monday, "squat 60x5 1 left")
            squat(bot, thursday, "romanian deadlift 60x8 2 left")
        squat(bot, MONDAYS[3], "squat 60x5 1 left")
        bot.until(bot.wall("Europe/Berlin", "2027-02-02 12:00"))
        told = [s.text for s in bot.screen(COACH) if "Back squat has had" in s.text]
        assert len(told) == 1
        assert "Ada: Back squat has had no better set in 4 sessions since Mon 11 Jan" in told[0]
        assert "then 60 kg × 5, 1 left, now 60 kg × 5, 1 left" in told[0]
        assert "light week" in told[0]
        bot.tap(COACH, "Ada: light from Mon 8 Feb")
        assert any("a light one" in s.text for s in bot.screen(ADA))
        bot.no_turn_failed()


def test_effort_that_creeps_up_is_told_sooner(wired: Wired) -> None:
    """Three sessions of the same work, each with less left."""
    with wired.bot() as bot:
        for monday, thursday, left in zip(MONDAYS, THURSDAYS, (3, 2), strict=False):
            squat(bot, monday, f"squat 60x5 {left} left")
            squat(bot, thursday, "romanian deadlift 60x8 2 left")
        squat(bot, MONDAYS[2], "squat 60x5 1 left")
        bot.until(bot.wall("Europe/Berlin", "2027-01-26 12:00"))
        told = [s.text for s in bot.screen(COACH) if "gets harder at the same load" in s.text]
        assert len(told) == 1
        bot.tap(COACH, "Lifts of Ada")
        assert "Back squat: next" in bot.text(COACH)
        assert "3 sessions since Mon 11 Jan (then 60 kg × 5, 3 left, now 60 kg × 5, 1 left)" in told[0]


def test_somebody_who_comes_less_and_less_is_told(wired: Wired) -> None:
    """With the next miss, in numbers."""
    with wired.bot() as bot:
        squat(bot, MONDAYS[0], "squat 60x5 1 left")
        bot.until(bot.wall("Europe/Berlin", "2027-01-26 12:00"))
        assert any("Ada: 1 of 5 sessions in four weeks" in s.text for s in bot.screen(COACH)), bot.text(COACH)


def test_a_large_practices_digest_stays_one_message_with_all_pain_in_it() -> None:
    """Sixty clients, every third in pain: who hurts is named, of the rest the first, and how many more there are."""
    now = datetime(2027, 1, 12, 8, tzinfo=UTC)
    entries = tuple(_entry(n, now) for n in range(60))
    coach = CoachDesk(Coach("c", 1, "Maren", "UTC", time(7)), digest=entries)
    desk = Desk(now, House("b", "112", "o", "1"), ("t",))
    (part,) = render_parts(digest.message(desk, coach, urgency=Urgency.NOTICE))
    assert len(part.plain) < 4096
    assert not part.plain.endswith("…")
    assert all(f"Person {n}: pain: knee" in part.plain for n in range(0, 60, 3))
    assert "and 46 more" in part.plain


def _entry(n: int, now: datetime) -> DigestEntry:
    pains = (OpenPain(f"p{n}", None, PainSaid("knee", 3, None, urgent=False), "", now),) if n % 3 == 0 else ()
    return DigestEntry(f"c{n}", f"Person {n}", pains=pains, missed=(now.date(),))
