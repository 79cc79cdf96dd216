"""Away or ill in plain words: which words say it, what follows at once, what is asked, and what stays a report."""

from datetime import date

import pytest

from bot.dialogue.awaywords import Absent, read_absence, says_back
from bot.training.life import Absence
from tests.talks.test_life import at, cards, said
from tests.talks.wireless import ADA, COACH, Wired

TUESDAY = date(2027, 1, 12)
MONDAY = "2027-01-11 12:00"
AWAY, ILL = Absence.AWAY, Absence.ILL

MEANT: list[tuple[str, Absence | None, str, str]] = [
    # why, from when (empty: today), until when (empty: not said)
    ("I'm ill", ILL, "", ""),
    ("I’m sick today, sorry coach", ILL, "", ""),
    ("not feeling well today", ILL, "", ""),
    ("caught a cold", ILL, "", ""),
    ("fever of 39", ILL, "", ""),
    ("got the flu, back Monday", ILL, "", "2027-01-18"),
    ("Got the flu. Back on Monday!", ILL, "", "2027-01-18"),
    ("off sick until Friday", ILL, "", "2027-01-15"),
    ("covid 😷 back in 10 days", ILL, "", "2027-01-22"),
    ("ill, cant train until the 20th", ILL, "", "2027-01-20"),
    ("sick in bed, no training this week", ILL, "", "2027-01-18"),
    ("in hospital until friday", ILL, "", "2027-01-15"),
    ("on holiday until the 14th", AWAY, "", "2027-01-14"),
    ("I'm on holiday until the 5th", AWAY, "", "2027-02-05"),
    ("I'm away for two weeks", AWAY, "", "2027-01-26"),
    ("on leave for the rest of the week", AWAY, "", "2027-01-18"),
    ("travelling for work until friday", AWAY, "", "2027-01-15"),
    ("out of town till sunday", AWAY, "", "2027-01-17"),
    ("away until next week", AWAY, "", "2027-01-18"),
    ("I'm on vacation", AWAY, "", ""),
    ("away next week", AWAY, "2027-01-18", "2027-01-25"),
    ("on holiday from 5 May to 14 May", AWAY, "2027-05-05", "2027-05-14"),
    ("on holiday 5 May - 14 May", AWAY, "2027-05-05", "2027-05-14"),
    ("on holiday from friday until the 25th", AWAY, "2027-01-15", "2027-01-25"),
    ("away from monday for two weeks", AWAY, "2027-01-18", "2027-02-01"),
    ("no training until Monday please", None, "", "2027-01-18"),
    ("pause my sessions for two weeks", None, "", "2027-01-26"),
    ("I'm out for 3 weeks", None, "", "2027-02-02"),
]

OTHERWISE = [
    # reports, with or without anything else
    "60x5",
    "60x5 feeling sick",
    "60x5, back Monday",
    "felt sick, 2 left",
    "back squat 60x5",
    "off 60 for 3 weeks",
    "until failure",
    "sick set",
    "so sick session",
    "last set sick pump",
    # a day given up, another exercise, a gym
    "can't train thursday",
    "busy thursday",
    "no training today",
    "away from home, hotel gym only",
    "in the hotel gym until friday",
    "holiday gym has no barbell",
    "it's a cold gym today",
    # others, what was, what is only asked or thought of
    "my son is ill, can't train today",
    "I was ill last week",
    "I'm not ill anymore",
    "got over the flu, back to training",
    "should i train with a cold",
    "am I too ill to train?",
    "I might be away next week",
    "flu jab today",
    "sick of squats",
    "I feel ill after that set",
    "back Monday",
    # two ends that don't agree
    "away for two weeks, back on the 30th",
    "",
]


@pytest.mark.parametrize(("text", "why", "since", "until"), MEANT)
def test_words_that_say_it(text: str, why: Absence | None, since: str, until: str) -> None:
    """On a Tuesday; the day said is the one on which sessions come again."""
    end = date.fromisoformat(until) if until else None
    assert read_absence(text, TUESDAY) == Absent(why, date.fromisoformat(since) if since else TUESDAY, end)


@pytest.mark.parametrize("text", OTHERWISE)
def test_words_that_say_something_else(text: str) -> None:
    """None of it stops anybody's sessions."""
    assert read_absence(text, TUESDAY) is None


@pytest.mark.parametrize(
    ("text", "back"),
    [
        ("I'm back", True),
        ("back again!", True),
        ("I'm back from holiday", True),
        ("feeling better, ready to train", True),
        ("well again", True),
        ("good", False),
        ("ok", False),
        ("back squat", False),
        ("60x5", False),
        ("better than last time", False),
    ],
)
def test_words_of_being_back(text: str, back: bool) -> None:
    """Only asked of somebody whose sessions rest."""
    assert says_back(text) is back


def test_the_flu_with_a_day_stops_at_once_and_comes_back_by_itself(wired: Wired) -> None:
    """As by the buttons: no card meanwhile, the coach is told, one tap goes on; pain before it all."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "got the flu, back on Thursday")
        assert "Get well. No sessions until Thu 14 Jan" in bot.text(ADA)
        assert "see a doctor" in bot.text(ADA)
        assert "Ada is ill: no sessions go out until Thu 14 Jan" in bot.text(COACH)
        at(bot, "2027-01-14 07:59")
        assert not cards(bot)
        bot.say(ADA, "feeling better")
        assert "Go on now already?" in bot.text(ADA)
        assert "only once you feel well" in bot.text(ADA)
        at(bot, "2027-01-14 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


def test_what_was_not_said_is_asked(wired: Wired) -> None:
    """No end: until when? No reason: away or ill? Nothing stops before the tap."""
    with wired.bot(MONDAY) as bot:
        facts = bot.facts_count()
        bot.say(ADA, "I'm sick today")
        assert "Until when shall nothing come?" in bot.text(ADA)
        bot.say(ADA, "no training for two weeks")
        assert "away or ill?" in bot.text(ADA)
        assert bot.facts_count() == facts
        bot.tap(ADA, "Ill until Mon 25 Jan")
        assert "Get well. No sessions until Mon 25 Jan" in bot.text(ADA)
        bot.say(ADA, "still ill")
        bot.tap(ADA, "Ill 3 days")
        assert "No sessions until Thu 14 Jan" in bot.text(ADA)
        at(bot, "2027-01-14 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


def test_pain_and_urgent_signs_stand_above_it(wired: Wired) -> None:
    """They are answered as ever; nothing is stopped in the same breath."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "ill with chest pain, back Monday")
        assert any("112" in s.text for s in bot.screen(ADA))
        assert said(bot, ADA, "No sessions until") == 0
        assert said(bot, COACH, "Ada is ill") == 0
        bot.no_turn_failed()


def test_a_holiday_told_before_begins_and_ends_by_itself(wired: Wired) -> None:
    """Until then sessions come; the coach knows from the first day on."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "I'm on holiday from Thursday until the 25th")
        assert "You are away from Thu 14 Jan: no sessions come then until Mon 25 Jan" in bot.text(ADA)
        assert "Ada will be away from Thu 14 Jan until Mon 25 Jan" in bot.text(COACH)
        at(bot, "2027-01-11 18:00")
        assert len(cards(bot)) == 1
        at(bot, "2027-01-14 08:00")
        assert "No sessions until Mon 25 Jan" in bot.text(ADA)
        at(bot, "2027-01-25 17:59")
        assert len(cards(bot)) == 1
        at(bot, "2027-01-25 18:00")
        assert len(cards(bot)) == 2
        bot.no_turn_failed()


def test_a_holiday_begins_on_the_day_on_which_an_illness_ends(wired: Wired) -> None:
    """Told before the flu: on the day both meet, it is the holiday that stands."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "away next week")
        bot.say(ADA, "got the flu, back Monday")
        at(bot, "2027-01-18 18:00")
        assert not cards(bot)
        at(bot, "2027-01-25 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


def test_a_holiday_taken_back_before_it_begins(wired: Wired) -> None:
    """One tap, told to the coach; afterwards the button is an old one."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "away next week")
        data = next(d for s in bot.screen(ADA) for label, d in s.data if label.startswith("I'm staying"))
        bot.tap_data(ADA, data)
        assert "nothing stops on Mon 18 Jan" in bot.text(ADA)
        assert "Ada stays after all" in bot.text(COACH)
        at(bot, "2027-01-18 18:00")
        assert len(cards(bot)) == 3
        assert "older message" in bot.tap_data(ADA, data)
        bot.no_turn_failed()


@pytest.mark.parametrize(
    "data",
    [
        "1:awayto::ill",
        "1:awayto::quiet:2027-02-01",
        "1:awayto::ill:2027-01-01",
        "1:awayto::ill:2099-01-01",
        "1:awaynot",
    ],
)
def test_a_forged_button_changes_nothing(wired: Wired, data: str) -> None:
    """No end, no such reason, an end that is over or too far off."""
    with wired.bot(MONDAY) as bot:
        facts = bot.facts_count()
        bot.tap_data(ADA, data)
        assert bot.facts_count() == facts
        bot.no_turn_failed()
