"""Away, ill, back after a break, two weeks without a word: what comes, what doesn't, and who is told."""

import re
from datetime import date, timedelta

import pytest

from bot.dialogue.sayday import read_day
from tests.talks.wireless import ADA, BO, COACH, Wired, Wireless

MONDAY = "2027-01-11 12:00"


def cards(bot: Wireless, who: int = ADA) -> list[str]:
    """The cards that have come."""
    return [s.text for s in bot.screen(who) if re.search(r"· about \d+ min", s.text)]


def said(bot: Wireless, who: int, words: str) -> int:
    """How many messages in a chat have these words."""
    return sum(words in s.text for s in bot.screen(who))


def at(bot: Wireless, when: str) -> None:
    """Time passes until Berlin's clock shows it."""
    bot.until(bot.wall("Europe/Berlin", when))


def train(bot: Wireless, words: str = "60x5 2 left") -> None:
    """A session in two messages."""
    bot.say(ADA, words)
    bot.say(ADA, "that's me done")


def sets_in(card: str) -> int:
    """How many sets a card asks for."""
    found = re.search(r"Set \d+ of (\d+) done|Finished: \d+ of (\d+) sets", card)
    assert found
    return int(found[1] or found[2])


# --- away and ill


def test_away_until_a_day_then_sessions_come_by_themselves(wired: Wired) -> None:
    """Nothing comes meanwhile, nobody is asked, the coach is told of both."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away 2 weeks")
        assert "No sessions until Mon 25 Jan" in bot.text(ADA)
        assert "Ada is away: no sessions go out until Mon 25 Jan" in bot.text(COACH)
        before = len(bot.screen(ADA))
        at(bot, "2027-01-25 07:59")
        assert len(bot.screen(ADA)) == before
        assert said(bot, COACH, "MISSED: Ada") == 0
        at(bot, "2027-01-25 08:00")
        assert "Welcome back, Ada. Sessions come again on" in bot.text(ADA)
        assert "Ada is back" in bot.text(COACH)
        at(bot, "2027-01-25 18:00")
        assert "Mon 25 Jan" in cards(bot)[-1]
        bot.no_turn_failed()


def test_an_own_date_is_typed(wired: Wired) -> None:
    """As people write days; something else is an ordinary message, pain before all."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away until")
        bot.say(ADA, "my left knee hurts")
        assert said(bot, COACH, "left knee") > 0
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away until")
        bot.say(ADA, "3 May")
        assert "No sessions until Mon 3 May" in bot.text(ADA)
        at(bot, "2027-05-02 23:00")
        assert not cards(bot)
        at(bot, "2027-05-03 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


def test_ill_says_to_see_a_doctor_and_comes_back_easier(wired: Wired) -> None:
    """A week ill after a week of training: the first session has fewer sets, and more in reserve."""
    with wired.bot("2027-01-11 18:05") as bot:
        full = sets_in(cards(bot)[-1])
        train(bot)
        at(bot, "2027-01-12 12:00")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        assert "see a doctor" in bot.text(ADA)
        bot.tap(ADA, "Ill 1 week")
        assert "see a doctor" in bot.text(ADA)
        assert "Ada is ill" in bot.text(COACH)
        at(bot, "2027-01-19 08:00")
        assert "The first ones are easier" in bot.text(ADA)
        at(bot, "2027-01-21 18:00")
        assert said(bot, ADA, "first session after a break: 70 % of the sets") == 1
        bot.say(ADA, "romanian deadlift 40x8")
        bot.say(ADA, "that's me done")
        at(bot, "2027-01-25 18:00")
        assert "4 in reserve" not in cards(bot)[-1]
        assert sets_in(cards(bot)[-1]) < full
        train(bot)
        at(bot, "2027-02-01 18:00")
        train(bot, "romanian deadlift 40x8")
        at(bot, "2027-02-04 18:00")
        assert sets_in(cards(bot)[-1]) == full
        bot.no_turn_failed()


def test_going_on_earlier_takes_the_end_away(wired: Wired) -> None:
    """One tap; nothing is said a second time when the day comes."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away 1 week")
        bot.tap(ADA, "Go on with my sessions")
        at(bot, "2027-01-18 12:00")
        assert said(bot, ADA, "Welcome back, Ada") == 0
        assert len(cards(bot)) == 2
        bot.no_turn_failed()


def test_a_longer_absence_takes_the_place_of_a_shorter_one(wired: Wired) -> None:
    """Two weeks after all."""
    with wired.bot(MONDAY) as bot:
        for weeks in ("Away 1 week", "Away 2 weeks"):
            bot.say(ADA, "/settings")
            bot.tap(ADA, "Away or ill")
            bot.tap(ADA, weeks)
        at(bot, "2027-01-18 22:00")
        assert not cards(bot)
        at(bot, "2027-01-25 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


def test_a_second_tap_sets_nothing_again(wired: Wired) -> None:
    """Nor is the coach told twice."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        data = next(d for s in bot.screen(ADA) for label, d in s.data if label == "Away 2 weeks")
        bot.tap_data(ADA, data)
        facts = bot.facts_count()
        assert bot.tap_data(ADA, data) == "That is done already"
        assert bot.facts_count() == facts
        assert said(bot, COACH, "Ada is away") == 1


def test_the_coach_sends_somebody_away(wired: Wired) -> None:
    """From the client's page, by weeks or by a date; the client is told, the page says it."""
    with wired.bot(MONDAY) as bot:
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "Away or ill")
        bot.tap(COACH, "Ill until")
        bot.say(COACH, "when the fever is gone")
        assert "no day that I can read" in bot.text(COACH)
        bot.say(COACH, "20 January")
        assert "Ada is ill: no sessions go out until Wed 20 Jan" in bot.text(COACH)
        assert "Maren has set this for you" in bot.text(ADA)
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        assert "Ill since Mon 11 Jan, until Wed 20 Jan" in bot.text(COACH)
        at(bot, "2027-01-21 18:00")
        assert len(cards(bot)) == 1
        bot.no_turn_failed()


# --- back after a break


def test_after_three_weeks_off_work_comes_back_in_steps(wired: Wired) -> None:
    """Fewer sets and more in reserve in the first session; said in a line; two weeks later all is as before."""
    with wired.bot("2027-01-11 18:05") as bot:
        full = sets_in(cards(bot)[-1])
        reserve = re.findall(r"(\d) in reserve", cards(bot)[-1])
        train(bot)
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away 3 weeks")
        at(bot, "2027-02-01 18:00")
        assert said(bot, ADA, "first session after a break: 70 % of the sets") == 1
        first = cards(bot)[-1]
        assert min(map(int, re.findall(r"(\d) in reserve", first))) > min(map(int, reserve))
        bot.say(ADA, "romanian deadlift 60x8")
        bot.say(ADA, "that's me done")
        at(bot, "2027-02-04 18:00")
        assert said(bot, ADA, "Still coming back: 70 % of the sets") == 1
        assert sets_in(cards(bot)[-1]) < full
        train(bot)
        at(bot, "2027-02-08 18:00")
        bot.say(ADA, "that's me done")
        at(bot, "2027-02-11 18:00")
        assert sets_in(cards(bot)[-1]) == full
        bot.no_turn_failed()


def back_after_three_weeks(bot: Wireless) -> None:
    """Ada trains from Monday to Friday, was away for three weeks, and it is her first day back."""
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Change days")
    bot.say(ADA, "mon tue wed thu fri 18:00")
    train(bot)
    bot.say(ADA, "on holiday until 1 February")
    at(bot, "2027-02-01 18:00")


def test_the_first_week_back_has_three_training_days_and_the_second_four(wired: Wired) -> None:
    """Told with the first session; what falls out is no miss; the week shows it, and another day is one tap."""
    with wired.bot("2027-01-11 18:05") as bot:
        back_after_three_weeks(bot)
        assert said(bot, ADA, "three training days are enough: Mon 1 Feb, Wed 3 Feb, Fri 5 Feb.") == 1
        bot.say(ADA, "/week")
        assert not any("Tue 2 Feb" in s.text for s in bot.screen(ADA)[-3:])
        for day in range(1, 15):
            at(bot, f"2027-02-{day:02} 18:05")
            if "Set 0 of" in cards(bot)[-1]:
                train(bot, "squat 60x5" if "Back squat" in cards(bot)[-1] else "romanian deadlift 60x8")
            at(bot, f"2027-02-{day:02} 23:00")
        days = [re.search(r"· (\w+ \d+ Feb)", c) for c in cards(bot)]
        came = list(dict.fromkeys(m[1] for m in days if m))
        assert came == ["Mon 1 Feb", "Wed 3 Feb", "Fri 5 Feb", "Mon 8 Feb", "Tue 9 Feb", "Wed 10 Feb", "Fri 12 Feb"]
        assert said(bot, COACH, "MISSED: Ada") == 0
        bot.no_turn_failed()


def test_on_a_day_that_fell_out_they_may_train_all_the_same(wired: Wired) -> None:
    """`/today` says when the next comes, with a button for now; the coach's record tells of the change."""
    with wired.bot("2027-01-11 18:05") as bot:
        back_after_three_weeks(bot)
        bot.say(ADA, "that's me done")
        at(bot, "2027-02-02 12:00")
        bot.say(ADA, "/today")
        assert "the next session comes on Wed 3 Feb" in bot.text(ADA)
        bot.tap(ADA, "Start a session now")
        assert "Tue 2 Feb" in cards(bot)[-1]
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "What was changed")
        assert "fewer training days in the week of Mon 1 Feb" in bot.text(COACH)
        bot.no_turn_failed()


def test_the_coachs_word_stands_over_it(wired: Wired) -> None:
    """Without easing, the session is whole."""
    with wired.bot("2027-01-11 18:05") as bot:
        train(bot)
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "Plan settings")
        assert "come back in steps" in bot.text(COACH)
        bot.tap(COACH, "No easing after a break")
        assert "as they were before it" in bot.text(COACH)
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Away or ill")
        bot.tap(ADA, "Away 3 weeks")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Change days")
        bot.say(ADA, "mon tue wed thu fri 18:00")
        at(bot, "2027-02-02 18:00")
        assert said(bot, ADA, "after a break:") == 0
        assert said(bot, ADA, "three training days are enough") == 0
        assert "Tue 2 Feb" in cards(bot)[-1]
        bot.no_turn_failed()


# --- two weeks without a word


def test_two_missed_weeks_stop_the_reminders_and_one_tap_goes_on(wired: Wired) -> None:
    """The coach is told once; nothing comes any more until the tap, then sessions do, and don't stop at once again."""
    with wired.bot(MONDAY) as bot:
        at(bot, "2027-01-24 23:00")
        assert len(cards(bot)) == 4
        at(bot, "2027-01-25 18:00")
        assert len(cards(bot)) == 4
        assert said(bot, ADA, "no more reminders come") == 1
        assert said(bot, COACH, "Two weeks without a session: Ada") == 1
        before = len(bot.screen(ADA))
        at(bot, "2027-02-28 12:00")
        assert len(bot.screen(ADA)) == before
        bot.tap(ADA, "Go on with my sessions")
        at(bot, "2027-03-01 18:00")
        assert "Mon 1 Mar" in cards(bot)[-1]
        bot.no_turn_failed()


def test_who_answers_is_not_quiet(wired: Wired) -> None:
    """A day skipped with a tap is an answer."""
    with wired.bot(MONDAY) as bot:
        at(bot, "2027-01-18 21:30")
        bot.tap(ADA, "Skip it")
        at(bot, "2027-01-28 18:00")
        assert said(bot, ADA, "no more reminders come") == 0
        assert said(bot, BO, "no more reminders come") == 1
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("3 May", "2027-05-03"),
        ("until May 3rd", "2027-05-03"),
        ("the 3rd of may", "2027-05-03"),
        ("2027-02-01", "2027-02-01"),
        ("3.5.", "2027-05-03"),
        ("3.5.2027", "2027-05-03"),
        ("tomorrow", "2027-01-12"),
        ("Monday", "2027-01-18"),
        ("next sunday", "2027-01-17"),
        ("tue", "2027-01-12"),
        ("2 weeks", "2027-01-25"),
        ("in ten days", ""),
        ("in 10 days", "2027-01-21"),
        ("a month", "2027-02-10"),
        ("4 January", "2028-01-04"),
        ("3/5", ""),
        ("31 February", ""),
        ("3 Mayhem", ""),
        ("2026-12-01", ""),
        ("60x8", ""),
        ("soon", ""),
    ],
)
def test_days_as_people_type_them(text: str, day: str) -> None:
    """From Monday, 11 January 2027 on; what could be two days is none."""
    today = date(2027, 1, 11)
    found = read_day(text, today)
    assert (found.isoformat() if found else "") == day
    assert found is None or today < found <= today + timedelta(days=366)
