"""What is said beside something else, typed where a button stands, or told of another day: heard, and told truly."""

from datetime import date

import pytest

from bot.dialogue.awaywords import read_absence, read_beside, read_end, says_ill
from bot.dialogue.placewords import read_place
from bot.dialogue.sayday import read_day
from bot.dialogue.timewords import named_later
from bot.training.life import Absence
from tests.talks.test_life import at, cards, said
from tests.talks.wireless import ADA, COACH, Shown, Wired, Wireless

MONDAY, TRAINING = "2027-01-11 12:00", "2027-01-11 18:05"
TUESDAY = date(2027, 1, 12)
CARE = "Don't train while you are ill"


def asked(bot: Wireless, label: str) -> Shown | None:
    """The message with this button; `None` where there is none."""
    return next((s for s in bot.screen(ADA) if any(text == label for text, _ in s.data)), None)


@pytest.mark.parametrize(
    "words",
    [
        "60x5 2 left. away until Monday",
        "60x5 2 left and on holiday until monday",
        "my left knee hurts, away until monday",
        "away until Monday. my left knee hurts",
    ],
)
def test_away_beside_a_set_or_pain_is_asked_about(wired: Wired, words: str) -> None:
    """The set or the pain is kept as ever; the absence is one tap away, and nothing stops before it."""
    with wired.bot(TRAINING) as bot:
        bot.say(ADA, words)
        question = asked(bot, "Away until Mon 18 Jan")
        assert question is not None
        assert question.text.startswith("You also say that you are away. Shall no sessions come until Mon 18 Jan?")
        assert said(bot, COACH, "left knee") == ("knee" in words)
        assert ("60 kg × 5" in cards(bot)[-1]) == ("60x5" in words)
        assert said(bot, COACH, "Ada is away") == 0
        bot.tap(ADA, "Away until Mon 18 Jan")
        assert said(bot, COACH, "Ada is away: no sessions go out until Mon 18 Jan") == 1
        bot.no_turn_failed()


def test_an_illness_beside_a_set_is_cautioned_and_the_coach_hears(wired: Wired) -> None:
    """Without an end: the caution at once, not only once an end is chosen."""
    with wired.bot(TRAINING) as bot:
        bot.say(ADA, "60x5 2 left. got the flu I think")
        assert "60 kg × 5" in cards(bot)[-1]
        assert CARE in bot.text(ADA)
        assert said(bot, COACH, "Ada says that they are ill, but not yet until when") == 1
        bot.no_turn_failed()


@pytest.mark.parametrize("words", ["60x5 2 left, so sick", "60x5, sick", "60x5 and 2 left", "60x5, back Monday"])
def test_gym_talk_beside_a_set_is_no_absence(words: str) -> None:
    """Nor is a half of one."""
    assert read_beside(words, TUESDAY) is None


@pytest.mark.parametrize(
    "words",
    [
        "fever of 39 since last night but I will train anyway",
        "ill since yesterday",
        "food poisoning, back in a few days",
    ],
)
def test_an_illness_is_never_left_without_its_caution(wired: Wired, words: str) -> None:
    """Also in words that are else not understood."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, words)
        assert CARE in bot.text(ADA)
        assert said(bot, COACH, "Ada says that they are ill") == 1


@pytest.mark.parametrize(
    "words", ["had a flu jab today", "was ill last week", "my kid is ill", "should I train with a fever?", "sick set"]
)
def test_what_is_no_illness_of_ones_own(words: str) -> None:
    """What was, who else it is about, what is only asked."""
    assert not says_ill(words)


def test_the_end_may_be_typed_where_it_is_asked_for(wired: Wired) -> None:
    """Without a tap before it, as people answer."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "got the flu")
        bot.say(ADA, "until thursday")
        assert "No sessions until Thu 14 Jan" in bot.text(ADA)
        assert "Ada is ill: no sessions go out until Thu 14 Jan" in bot.text(COACH)


def test_the_first_day_is_remembered_when_the_last_is_typed(wired: Wired) -> None:
    """A holiday from Friday on, whose end is typed: Thursday's session still comes."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "on holiday from Friday")
        bot.tap(ADA, "Away until…")
        bot.say(ADA, "the 24th")
        assert "You are away from Fri 15 Jan: no sessions come then until Sun 24 Jan" in bot.text(ADA)
        at(bot, "2027-01-14 18:05")
        assert len(cards(bot)) == 2


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("until thursday", "2027-01-14"),
        ("back on Monday", "2027-01-18"),
        ("the 24th", "2027-01-24"),
        ("2 weeks", "2027-01-26"),
        ("for 3 days", "2027-01-15"),
        ("60x5", ""),
        ("my knee hurts", ""),
    ],
)
def test_an_end_as_people_answer(words: str, day: str) -> None:
    """A day or a time; a report is none."""
    assert read_end(words, TUESDAY) == (date.fromisoformat(day) if day else None)


def test_the_day_of_a_month_alone() -> None:
    """`the` is no month."""
    assert read_day("the 24th", TUESDAY) == date(2027, 1, 24)
    assert read_day("until 24th", TUESDAY) == date(2027, 1, 24)


def test_an_end_before_the_beginning_is_not_taken_for_next_year() -> None:
    """Two days that don't agree say nothing; over the new year they do."""
    assert read_absence("away from 20 Jan to 18 Jan", TUESDAY) is None
    over = read_absence("away from 20 Dec to 5 Jan", TUESDAY)
    assert over is not None
    assert (over.why, over.until) == (Absence.AWAY, date(2028, 1, 5))


def test_minutes_of_another_day_leave_todays_session_alone(wired: Wired) -> None:
    """It says what to do instead."""
    with wired.bot(TRAINING) as bot:
        before = cards(bot)[-1]
        bot.say(ADA, "I only have 25 min on Thursday")
        assert cards(bot) == [before]
        assert "say it again on Thu 14 Jan" in bot.text(ADA)


@pytest.mark.parametrize(
    ("words", "day"),
    [
        ("only 25 min on Thursday", "2027-01-14"),
        ("25 min tomorrow", "2027-01-13"),
        ("only 25 min today", ""),
        ("25 min, it's tuesday", ""),
    ],
)
def test_which_day_minutes_are_told_for(words: str, day: str) -> None:
    """Today's, unless another is named."""
    assert named_later(words, TUESDAY) == (date.fromisoformat(day) if day else None)


def test_an_open_session_of_today_is_not_left_out_yet(wired: Wired) -> None:
    """`/week` in the hour of training blames nobody; the evening's end does."""
    with wired.bot(TRAINING) as bot:
        bot.say(ADA, "/week")
        assert "left out" not in bot.text(ADA)
        assert "Not over yet" in bot.text(ADA)
        at(bot, "2027-01-11 23:00")
        bot.say(ADA, "/week")
        assert "one session was left out" in bot.text(ADA)


def test_welcome_after_a_long_time_away_says_that_it_is_easier(wired: Wired) -> None:
    """Four weeks off: the first session has half the sets, and the welcome says so; after one week it does not."""
    for weeks, day, easier in ((4, "2027-02-08 08:05", 1), (1, "2027-01-18 08:05", 0)):
        with wired.bot(TRAINING) as bot:
            bot.say(ADA, "60x5 2 left")
            bot.say(ADA, "that's me done")
            bot.say(ADA, f"away for {weeks} weeks" if weeks > 1 else "away for a week")
            at(bot, day)
            assert said(bot, ADA, "Welcome back, Ada") == 1
            assert said(bot, ADA, "After so long the first ones are easier") == easier


@pytest.mark.parametrize(
    ("words", "zone"),
    [
        ("back home in Berlin", "Europe/Berlin"),
        ("home in Lisbon again", "Europe/Lisbon"),
        ("landed in Sydney, on Sydney time until Friday", "Australia/Sydney"),
    ],
)
def test_the_way_home_is_a_journey_too(words: str, zone: str) -> None:
    """As it is said at the end of one."""
    assert read_place(words) == zone


def test_a_digest_counts_one_set_as_one(wired: Wired) -> None:
    """`1 set`, not `1 sets`."""
    with wired.bot(TRAINING) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.say(ADA, "that's me done")
        at(bot, "2027-01-12 09:30")
        assert said(bot, COACH, "Squat and press, Mon 11 Jan, 1 set") == 1
        assert said(bot, COACH, "Mon 11 Jan, 1 sets") == 0


def test_a_week_laid_anew_opens_with_the_heavy_lift(wired: Wired) -> None:
    """Three days a week, the third given up: where squats share a day with presses and rows, they come first."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Change days")
        bot.say(ADA, "mon wed fri 18:00")
        bot.say(ADA, "can't do Friday")
        bot.tap(ADA, "I can't")
        shown = next(s.text for s in reversed(bot.screen(ADA)) if "the week would be:" in s.text)
        days = [row for row in shown.splitlines() if "Jan: " in row and "Back squat" in row]
        assert days
        assert all(row.partition(" min: ")[2].startswith("Back squat") for row in days)


@pytest.mark.parametrize(
    ("text", "other"),
    [
        ("can't do Thursday or Monday", "Monday"),
        ("Sorry, can't make it on thursday and saturday", "Saturday"),
        ("can't do thursday and friday works better", ""),
        ("can't do thursday, sorry", ""),
        ("can't do Thursday", ""),
    ],
)
def test_a_second_day_in_the_same_breath_is_not_forgotten(wired: Wired, text: str, other: str) -> None:
    """The first is asked about; how the other is said next stands beneath."""
    with wired.bot("2027-01-12 12:00") as bot:
        bot.say(ADA, text)
        shown = bot.screen(ADA)[-1].text
        assert "Thu 14 Jan" in shown
        assert (f"write “can't do {other}”" in shown) if other else ("One day at a time" not in shown)
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("squat 60x10, knee hurts 3/10", True),
        ("60x10 60x9, is that ok for my bench?", True),
        ("my knee hurts, 3/10", False),
        ("my knee hurts a bit today", False),
        ("squat 60x10 and my chest feels tight, can't breathe", False),
    ],
)
def test_sets_beside_pain_without_a_session_are_not_dropped_in_silence(wired: Wired, text: str, told: bool) -> None:
    """What is not kept is said, once; beside an urgent sign nothing else is said."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, text)
        assert sum("no set of that is kept" in s.text for s in bot.screen(ADA)) == told
        bot.no_turn_failed()
