"""Stalls and drift in the coach's digest: the numbers behind them and one suggestion."""

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
