"""The optional notice that a rest is over: once per reported set, on the second, never late, never a flood."""

from datetime import timedelta

import pytest
import sqlalchemy as sa

from storage.tables import schedule
from tests.talks.wireless import ADA, Shown, Wired, Wireless

MONDAY = "2027-01-11 18:05"


def wants(bot: Wireless) -> None:
    """In the settings."""
    bot.say(ADA, "/settings")
    assert bot.tap(ADA, "Rest notice").startswith("On")


def notices(bot: Wireless) -> list[Shown]:
    """Those that have come."""
    return [s for s in bot.screen(ADA) if s.text.startswith("Rest over.")]


def rules(bot: Wireless) -> int:
    """Notices that wait."""
    waits = sa.select(schedule.c.id).where(schedule.c.kind == "rest", schedule.c.next_due_at.is_not(None))
    return len(bot.work.all(waits))


def test_it_is_off_unless_wanted(wired: Wired) -> None:
    """No message between sets."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5")
        bot.wait(10)
        assert not notices(bot)
        assert rules(bot) == 0


def test_it_comes_on_the_second_with_the_next_set_and_once(wired: Wired) -> None:
    """Three minutes after a squat: not a second before, and never again."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        said = bot.now
        bot.until(said + timedelta(seconds=179))
        assert not notices(bot)
        bot.until(said + timedelta(seconds=180))
        assert [s.text.split(":")[0] for s in notices(bot)] == ["Rest over. Back squat, set 2"]
        bot.wait(60)
        assert len(notices(bot)) == 1
        bot.no_turn_failed()


def test_a_new_set_puts_its_own_in_the_place_of_the_one_before(wired: Wired) -> None:
    """The second set two minutes later: one notice, two minutes after that one."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        bot.wait(2)
        bot.say(ADA, "50x9")
        said = bot.now
        assert rules(bot) == 1
        bot.until(said + timedelta(minutes=1, seconds=59))
        assert not notices(bot)
        bot.wait(5)
        assert len(notices(bot)) == 1
        assert "set 3" in notices(bot)[0].text


def test_effort_told_in_between_leaves_it_waiting(wired: Wired) -> None:
    """The tap that says how many were left is no set."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        said = bot.now
        bot.wait(1)
        bot.tap(ADA, "2 left")
        bot.until(said + timedelta(seconds=180))
        assert len(notices(bot)) == 1


@pytest.mark.parametrize("words", ["/undo", "that's me done", "50: 9 9", "skip the squats"])
def test_nothing_comes_where_the_next_set_is_another_or_none(wired: Wired, words: str) -> None:
    """After an undo, the end, several sets at once, an exercise given up."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        bot.wait(1)
        bot.say(ADA, words)
        bot.wait(15)
        assert not notices(bot)
        bot.no_turn_failed()


@pytest.mark.parametrize(("late_s", "comes"), [(20, 1), (21, 0), (600, 0)])
def test_it_is_never_late(wired: Wired, late_s: int, comes: int) -> None:
    """We were down when it was due: twenty seconds later it is still of use, later it isn't said at all."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        bot.now += timedelta(seconds=180 + late_s)
        bot.tick()
        assert len(notices(bot)) == comes
        assert rules(bot) == 0


def test_a_message_from_a_phone_without_signal_starts_none(wired: Wired) -> None:
    """It was written two minutes ago: its time says nothing."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        written = bot.message(ADA, 999_001)
        bot.now += timedelta(seconds=120)
        bot.raw({"message": {**written, "text": "60x5"}})
        bot.wait(10)
        assert not notices(bot)


def test_a_whole_session_never_has_more_than_one_for_a_set(wired: Wired) -> None:
    """Each set five minutes after the one before: as many notices as sets with a rest behind them, one a set."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        for words in ("60x5", "50x9", "50x9", "bench 18x10", "row 40x10", "bench 18x10", "row 40x10"):
            bot.say(ADA, words)
            assert rules(bot) <= 1
            bot.wait(5)
        heads = [s.text.split(":")[0] for s in notices(bot)]
        assert len(heads) == len(set(heads))
        assert "Rest over. Back squat, set 2" in heads
        assert 3 <= len(heads) <= 6
        bot.no_turn_failed()


def test_switched_off_takes_the_waiting_one_away(wired: Wired) -> None:
    """At once."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        bot.say(ADA, "/settings")
        assert bot.tap(ADA, "Rest notice") == "Off"
        assert rules(bot) == 0
        bot.wait(10)
        assert not notices(bot)
