"""Which words want less time today, and which only sound like it: a table of wordings, and what is done about them."""

import pytest

from bot.dialogue.timewords import TimeWish, read_time_wish
from tests.talks.wireless import ADA, COACH, Wired, Wireless

MONDAY = "2027-01-11 18:05"
MEANT = {
    "35 minutes total for everything": TimeWish(35),
    "25 min total": TimeWish(25),
    "I've got 30 min in total today": TimeWish(30),
    "25 min all in": TimeWish(25),
    "30 mins for the whole session": TimeWish(30),
    "40 minutes for everything please": TimeWish(40),
    "only 20ish minutes": TimeWish(20),
    "20 min-ish": TimeWish(20),
    "15-20 min": TimeWish(15),
    "I have 20 to 25 minutes today": TimeWish(20),
    "shorten it to 25": TimeWish(25),
    "Shorten the session to 25 min.": TimeWish(25),
    "please keep it under 30 min": TimeWish(30),
    "let's fit everything into 25 minutes": TimeWish(25),
    "I need to be done in 30 min": TimeWish(30),
    "whole session in 30 min": TimeWish(30),
    "have 35 to train": TimeWish(35),
    "25 is all I’ve got": TimeWish(25),
    "30 minutes are all there is today": TimeWish(30),
    "baby wakes up in 20 min": TimeWish(20),
    "my meeting starts in 40 minutes": TimeWish(40),
    "can we do it in 25 min?": TimeWish(25, is_asked=True),
    "Could it be done in 30 minutes?": TimeWish(30, is_asked=True),
    "25 min total?": TimeWish(25, is_asked=True),
    "short on time": TimeWish(),
    "I'm really short on time today": TimeWish(),
    "pressed for time": TimeWish(),
    "not much time today": TimeWish(),
    "I haven't got much time": TimeWish(),
    "little time tonight": TimeWish(),
    "less time today": TimeWish(),
    "in a hurry": TimeWish(),
    "running late, sorry": TimeWish(),
    "quick session today": TimeWish(),
    "can we do a short one?": TimeWish(),
    "make it shorter": TimeWish(),
    "can you make it a bit shorter please?": TimeWish(),
    "keep the session short": TimeWish(),
    "no time for everything": TimeWish(),
}
OTHERWISE = (
    "25",
    "25 min",
    "2 min plank",
    "plank 15-20 min",
    "make it 60",
    "keep it at 60",
    "bring it down to 50",
    "cut it to 40",
    "get to 80",
    "did it in 25 min",
    "finished everything in 30 min",
    "took 40 minutes in total for everything",
    "session in 30 min",
    "workout starts in 30 min",
    "I start in 20 minutes",
    "rest is due in 5 min",
    "3 min rest in total",
    "short rest today",
    "short of breath",
    "I am short of breath and in a hurry to leave",
    "squat 60x5, short on time",
    "2 min for everything",
    "999 min total",
    "what time is it",
    "no time today",
    "quick question",
    "quick sets of 5",
    "",
    "?",
)


@pytest.mark.parametrize(("text", "wish"), MEANT.items())
def test_what_is_meant(text: str, wish: TimeWish) -> None:
    assert read_time_wish(text) == wish


@pytest.mark.parametrize("text", OTHERWISE)
def test_what_only_sounds_like_it(text: str) -> None:
    """Loads, sets, rests, breath, another day, what is over: none of ours."""
    assert read_time_wish(text) is None


@pytest.mark.parametrize("piece", ["i've got ", "a bit ", "a ", "can we ", "it ", "very, ", "all of it "])
def test_no_words_keep_anybody_waiting(piece: str) -> None:
    """However often they are said, they are no wish, and the search for one ends (how soon is in the bench)."""
    assert read_time_wish((piece * 80)[:80]) is None


def shown(bot: Wireless) -> str:
    """What was said last."""
    return bot.screen(ADA)[-1].text


def test_minutes_in_other_words_cut_as_the_number_does(wired: Wired) -> None:
    """With its way back."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "25 minutes total for everything")
        assert shown(bot).startswith("25 min: it fits now, about 2")
        assert [label for label, _ in bot.screen(ADA)[-1].data] == ["Do it all after all"]
        bot.no_turn_failed()


def test_where_no_minutes_are_told_they_are_asked_for(wired: Wired) -> None:
    """Nothing is cut, nothing kept; a question whether it will do has its number on a button, and isn't the coach's."""
    with wired.bot(MONDAY) as bot:
        facts = bot.facts_count()
        bot.say(ADA, "short on time")
        assert [label for label, _ in bot.screen(ADA)[-1].data] == ["20 min", "30 min", "40 min"]
        bot.say(ADA, "can we do it in 25 min?")
        assert [label for label, _ in bot.screen(ADA)[-1].data] == ["25 min"]
        assert bot.facts_count() == facts
        assert "25 min?" not in bot.text(COACH)
        bot.tap(ADA, "25 min")
        assert shown(bot).startswith("25 min: it fits now")
        bot.no_turn_failed()


def test_after_an_urgent_sign_and_without_a_session_they_are_only_words(wired: Wired) -> None:
    """Nothing is offered for less time."""
    with wired.bot() as bot:
        bot.say(ADA, "short on time")
        assert "How many minutes" not in bot.text(ADA)
        bot.until(bot.wall("Europe/Berlin", MONDAY))
        bot.say(ADA, "crushing pressure on my chest and I can't breathe")
        bot.say(ADA, "short on time")
        assert "How many minutes" not in bot.text(ADA)
        bot.no_turn_failed()
