"""The optional notice that a rest is over: once per reported set, on the second, never late, never a flood."""

from datetime import timedelta

import pytest
import sqlalchemy as sa

from bot.dialogue.restwords import RestWish, read_rest_wish
from storage.tables import schedule
from tests.talks.wireless import ADA, Shown, Wired, Wireless

MONDAY = "2027-01-11 18:05"


def wants(bot: Wireless) -> None:
    """In the settings."""
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Rest notice")
    assert bot.tap(ADA, "After the planned rest").startswith("On")


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
        bot.tap(ADA, "Rest notice")
        assert bot.tap(ADA, "No rest notice") == "Off"
        assert rules(bot) == 0
        bot.wait(10)
        assert not notices(bot)


# --- their own seconds, and in words


def test_their_own_seconds_by_a_button(wired: Wired) -> None:
    """Ninety seconds after a squat that the plan gives three minutes; the settings say so."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Rest notice")
        bot.tap(ADA, "90 s")
        assert "A message comes 90 s after each set" in bot.text(ADA)
        bot.say(ADA, "60x5")
        said = bot.now
        bot.until(said + timedelta(seconds=89))
        assert not notices(bot)
        bot.until(said + timedelta(seconds=90))
        assert len(notices(bot)) == 1
        bot.say(ADA, "/settings")
        assert "A message comes 90 s after each set" in bot.text(ADA)
        bot.no_turn_failed()


def test_in_words_in_the_middle_of_a_session(wired: Wired) -> None:
    """On with 75 s, then off: no set is made of it, and what waited is taken away."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "rest timer 75 s")
        assert "75 s after each set" in bot.text(ADA)
        bot.say(ADA, "60x5")
        assert rules(bot) == 1
        bot.say(ADA, "no more rest notices")
        assert rules(bot) == 0
        bot.wait(5)
        assert not notices(bot)
        bot.say(ADA, "rest notice 45 min")
        assert "30 seconds to 10 minutes. Nothing has changed." in bot.text(ADA)
        bot.no_turn_failed()


def test_the_notice_has_the_set_as_a_button(wired: Wired) -> None:
    """A tap under it reports the set; a second tap adds none."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        bot.wait(4)
        label, data = notices(bot)[0].data[0]
        bot.tap_data(ADA, data, message=notices(bot)[0].number)
        facts = bot.facts_count()
        assert any("2. done" in s.text for s in bot.screen(ADA)), label
        bot.tap_data(ADA, data, message=notices(bot)[0].number)
        assert bot.facts_count() == facts
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("text", "wish"),
    [
        ("rest notice on", RestWish(True)),
        ("tell me when my rest is over", RestWish(True)),
        ("Ping me when rest is up please!", RestWish(True)),
        ("rest timer 90", RestWish(True, 90)),
        ("rest timer: 2 min", RestWish(True, 120)),
        ("rest notice 2:30", RestWish(True, 150)),
        ("set the rest timer to 1.5 min", RestWish(True, 90)),
        ("tell me after 2 minutes of rest", RestWish(True, 120)),
        ("rest notice off", RestWish(False)),
        ("no more rest notices", RestWish(False)),
        ("stop telling me when the rest is over", RestWish(False)),
        ("don’t remind me when my rest is over", RestWish(False)),
        ("rest 90", None),
        ("60x5 rest 90 s", None),
        ("rested 3 min", None),
        ("rest day", None),
        ("rest", None),
        ("remind me when the session is over", None),
        ("rest 90 s between sets was enough", None),
    ],
)
def test_words_that_wish_for_notices(text: str, wish: RestWish | None) -> None:
    """Whole messages; a rest that is told of a set is none."""
    assert read_rest_wish(text) == wish


@pytest.mark.parametrize("arg", ["0", "29", "601", "99999999", "-60", "soon"])
def test_a_forged_choice_changes_nothing(wired: Wired, arg: str) -> None:
    """Out of bounds, or no number."""
    with wired.bot(MONDAY) as bot:
        facts = bot.facts_count()
        bot.tap_data(ADA, f"1:restset::{arg}")
        assert bot.facts_count() == facts
        bot.no_turn_failed()


def test_a_process_that_knows_nothing_sends_it(wired: Wired) -> None:
    """The one that took the report is gone; another one on the same database sends it on the second, once."""
    with wired.bot(MONDAY) as bot:
        wants(bot)
        bot.say(ADA, "60x5")
        another = Wireless(bot.work, bot.now)
        another.until(bot.now + timedelta(seconds=200))
        assert len(notices(another)) == 1
        again = Wireless(bot.work, another.now)
        again.wait(5)
        assert not notices(again)
