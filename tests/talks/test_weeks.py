"""The week as days: what each holds, a day moved, a day given up and its work laid over the others, all undone."""

import re
from datetime import date

import pytest

from bot.dialogue.givingup import read_given_up
from tests.talks.wireless import ADA, BO, COACH, Shown, Wired, Wireless

MONDAY = "2027-01-11 12:00"


def week(bot: Wireless, who: int = ADA) -> Shown:
    """The page of the week, opened anew."""
    bot.say(who, "/week")
    return next(s for s in reversed(bot.screen(who)) if s.text.startswith("Your week") and s.data)


def newest(bot: Wireless, who: int = ADA) -> str:
    """The page of the week as it stands on the screen."""
    return next(s.text for s in reversed(bot.screen(who)) if s.data and any(d[1].startswith("1:wk") for d in s.data))


def trains_on(bot: Wireless, days: str, who: int = ADA) -> None:
    """Other days than those of joining."""
    bot.say(who, "/settings")
    bot.tap(who, "Change days")
    bot.say(who, days)


def cards(bot: Wireless, who: int = ADA) -> list[str]:
    """The cards that have come."""
    return [s.text for s in bot.screen(who) if re.search(r"· about \d+ min", s.text)]


def card_days(bot: Wireless) -> list[str]:
    """The days on them."""
    return [day for card in cards(bot) for day in re.findall(r"· (\w+ \d+ Jan)", card)]


def test_the_week_shows_what_each_day_holds_and_what_is_done(wired: Wired) -> None:
    """Days to come with their minutes and sets; a day with reports by its sets."""
    with wired.bot(MONDAY) as bot:
        shown = week(bot)
        assert re.search(r"Mon 11 Jan: Squat and press, about \d+ min: Back squat 3 sets", shown.text)
        assert re.search(r"Thu 14 Jan: Hinge and pull, about \d+ min", shown.text)
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:05"))
        bot.say(ADA, "60x5")
        assert "Mon 11 Jan: Squat and press, under way, 1 of" in week(bot).text
        bot.say(ADA, "that's me done")
        text = week(bot).text
        assert "Mon 11 Jan: Squat and press, done, 1 of" in text
        assert "Thu 14 Jan: Hinge and pull" in text
        assert [label for label, _ in week(bot).data] == ["Thu 14 Jan…", "Next week"]
        bot.no_turn_failed()


def test_a_day_moves_and_comes_there_at_the_clients_hour(wired: Wired) -> None:
    """Thursday's on Friday: nothing on Thursday, the session on Friday, and the next week as ever."""
    with wired.bot(MONDAY) as bot:
        week(bot)
        bot.tap(ADA, "Thu 14 Jan…")
        bot.tap(ADA, "Move to Fri 15 Jan")
        assert "Thu 14 Jan is moved to Fri 15 Jan" in newest(bot)
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:05"))
        bot.say(ADA, "60x5")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 22:00"))
        assert len(cards(bot)) == 1
        bot.say(ADA, "/today")
        assert "Fri 15 Jan" in bot.text(ADA)
        bot.say(COACH, "/clients")
        assert "next Fri 15 Jan" in bot.text(COACH)
        bot.until(bot.wall("Europe/Berlin", "2027-01-15 17:59"))
        assert len(cards(bot)) == 1
        bot.until(bot.wall("Europe/Berlin", "2027-01-15 18:00"))
        assert "Hinge and pull · Fri 15 Jan" in cards(bot)[-1]
        bot.say(ADA, "romanian deadlift 60x8")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-22 18:05"))
        assert card_days(bot)[2:] == ["Mon 18 Jan", "Thu 21 Jan"]
        bot.no_turn_failed()


def test_a_second_tap_moves_nothing_again(wired: Wired) -> None:
    """The button pressed twice before the screen changed: once."""
    with wired.bot(MONDAY) as bot:
        week(bot)
        bot.tap(ADA, "Thu 14 Jan…")
        data = next(d for s in bot.screen(ADA) for label, d in s.data if label == "Move to Fri 15 Jan")
        bot.tap_data(ADA, data)
        facts, shown = bot.facts_count(), newest(bot)
        assert bot.tap_data(ADA, data) == "It comes on Fri 15 Jan"
        assert (bot.facts_count(), newest(bot)) == (facts, shown)


@pytest.mark.parametrize("to", ["Tue 12 Jan", "Wed 13 Jan", "Sat 16 Jan", "Sun 17 Jan"])
def test_moving_a_day_there_and_back_changes_nothing(wired: Wired, to: str) -> None:
    """The week reads as before, and the sessions come as if nothing had been said."""
    with wired.bot(MONDAY) as bot:
        before = week(bot).text
        bot.tap(ADA, "Thu 14 Jan…")
        bot.tap(ADA, f"Move to {to}")
        bot.tap(ADA, f"{to}…")
        bot.tap(ADA, "Move to Thu 14 Jan")
        assert week(bot).text == before
        bot.until(bot.wall("Europe/Berlin", "2027-01-17 23:00"))
        assert card_days(bot) == ["Mon 11 Jan", "Thu 14 Jan"]
        bot.no_turn_failed()


def test_a_lost_days_work_goes_where_there_is_room(wired: Wired) -> None:
    """Of three days the middle one is given up: the proposal says what goes where and what is left out; one tap, and
    Friday's session has it; the coach reads it in the digest."""
    with wired.bot(MONDAY) as bot:
        trains_on(bot, "mon wed fri 18:00")
        week(bot)
        bot.tap(ADA, "Wed 13 Jan…")
        bot.tap(ADA, "I can't: lay the week anew")
        proposal = newest(bot)
        assert "Without Wed 13 Jan (Hinge and pull) the week would be:" in proposal
        assert "Fri 15 Jan: " in proposal
        assert "Left out: " in proposal
        assert "Wed 13 Jan: " not in proposal
        facts = bot.facts_count()
        bot.tap(ADA, "Do it like this")
        assert bot.facts_count() == facts + 1
        assert "Wed 13 Jan is given up" in newest(bot)
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:05"))
        assert "Squat and press + Hinge and pull" in cards(bot)[-1] or "Back squat" in cards(bot)[-1]
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-13 22:00"))
        assert len(cards(bot)) == 1
        bot.say(COACH, "/digest")
        assert any("Ada gave Wed 13 Jan up; left out: " in s.text for s in bot.screen(COACH))
        bot.until(bot.wall("Europe/Berlin", "2027-01-15 18:05"))
        assert "Fri 15 Jan" in cards(bot)[-1]
        assert len(cards(bot)) == 2
        bot.no_turn_failed()


def test_the_proposal_never_goes_over_the_minutes_and_loses_the_least_important_first(wired: Wired) -> None:
    """What the two days then hold, beside what the proposal says."""
    with wired.bot(MONDAY) as bot:
        trains_on(bot, "mon tue wed thu fri 18:00")
        longest = max(int(m) for m in re.findall(r"about (\d+) min", week(bot).text))
        for day in ("Tue 12 Jan", "Thu 14 Jan"):
            bot.tap(ADA, f"{day}…")
            bot.tap(ADA, "I can't: lay the week anew")
            bot.tap(ADA, "Do it like this")
        minutes = [int(m) for m in re.findall(r"about (\d+) min", newest(bot))]
        assert len(minutes) == 3
        assert max(minutes) <= longest
        bot.no_turn_failed()


def test_the_last_day_given_up_comes_with_the_next_session(wired: Wired) -> None:
    """No other day is left: nothing is lost, Monday brings the workout that Thursday would have had."""
    with wired.bot("2027-01-11 18:05") as bot:
        bot.say(ADA, "60x5")
        bot.say(ADA, "that's me done")
        bot.say(ADA, "can't do Thursday")
        bot.tap(ADA, "I can't: lay the week anew")
        assert "comes with your next session" in newest(bot)
        bot.tap(ADA, "Do it like this")
        bot.until(bot.wall("Europe/Berlin", "2027-01-17 12:00"))
        assert len(cards(bot)) == 1
        assert not any("is not reported" in s.text for s in bot.screen(ADA))
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 18:00"))
        assert "Hinge and pull · Mon 18 Jan" in cards(bot)[-1]
        bot.no_turn_failed()


def test_a_day_with_its_card_is_given_up_and_comes_back_with_an_undo(wired: Wired) -> None:
    """The card's buttons go, its work goes to the other day; undone, the card takes reports again."""
    with wired.bot("2027-01-11 18:05") as bot:
        trains_on(bot, "mon thu 18:00")
        week(bot)
        bot.tap(ADA, "Mon 11 Jan…")
        bot.tap(ADA, "I can't: lay the week anew")
        bot.tap(ADA, "Do it like this")
        assert "Mon 11 Jan: Squat and press, given up" in newest(bot)
        assert re.search(r"Thu 14 Jan: .*Back squat", newest(bot))
        bot.tap(ADA, "Undo the last change")
        assert "as it was before" in newest(bot)
        assert "Mon 11 Jan: Squat and press, open" in newest(bot)
        assert not any(label == "Undo the last change" for label, _ in bot.buttons(ADA))
        bot.say(ADA, "60x5")
        assert "1. done: 60 kg × 5" in "".join(s.text for s in bot.screen(ADA))
        bot.no_turn_failed()


def test_next_weeks_days_move_too(wired: Wired) -> None:
    """On Saturday somebody can't do Monday: typed, it is asked where to."""
    with wired.bot("2027-01-16 10:00") as bot:
        bot.say(ADA, "sorry, can't make it on Monday")
        assert "Mon 18 Jan" in bot.text(ADA)
        bot.tap(ADA, "Move to Tue 19 Jan")
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 22:00"))
        assert "Mon 18 Jan" not in cards(bot)[-1]
        bot.until(bot.wall("Europe/Berlin", "2027-01-19 18:00"))
        assert "Tue 19 Jan" in cards(bot)[-1]
        bot.no_turn_failed()


def test_an_old_proposal_is_read_anew(wired: Wired) -> None:
    """The coach gave another programme meanwhile: nothing is kept that nobody has seen."""
    with wired.bot(MONDAY) as bot:
        trains_on(bot, "mon wed fri 18:00")
        week(bot)
        bot.tap(ADA, "Wed 13 Jan…")
        bot.tap(ADA, "I can't: lay the week anew")
        data = next(d for s in bot.screen(ADA) for label, d in s.data if label == "Do it like this")
        bot.tap(ADA, "Leave it as it is")
        bot.tap(ADA, "Fri 15 Jan…")
        bot.tap(ADA, "Move to Sat 16 Jan")
        facts = bot.facts_count()
        bot.tap_data(ADA, data)
        assert bot.facts_count() == facts
        bot.no_turn_failed()


def test_other_training_days_make_it_an_ordinary_week_again(wired: Wired) -> None:
    """Who changes their days in the settings gets sessions on these."""
    with wired.bot(MONDAY) as bot:
        week(bot)
        bot.tap(ADA, "Thu 14 Jan…")
        bot.tap(ADA, "Move to Fri 15 Jan")
        trains_on(bot, "tue sat 18:00", ADA)
        bot.until(bot.wall("Europe/Berlin", "2027-01-17 23:00"))
        assert card_days(bot) == ["Tue 12 Jan", "Sat 16 Jan"]
        bot.no_turn_failed()


def test_pain_in_such_words_is_heard(wired: Wired) -> None:
    """It goes before the days."""
    with wired.bot("2027-01-11 18:05") as bot:
        bot.say(ADA, "can't do thursday my left knee hurts")
        assert any("left knee" in s.text for s in bot.screen(COACH))
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("can't do Thursday", "2027-01-14"),
        ("Sorry, I can't make it on thursday", "2027-01-14"),
        ("i won't be able to train thu", ""),
        ("not able to train on Friday", "2027-01-15"),
        ("no time tomorrow", "2027-01-13"),
        ("busy on friday", "2027-01-15"),
        ("I'm away this Saturday", "2027-01-16"),
        ("Thursday won't work", "2027-01-14"),
        ("can we move Thursday?", "2027-01-14"),
        ("skip today", "2027-01-12"),
        ("can't do Monday", "2027-01-18"),
        ("move today's session to Thursday", "2027-01-12"),
        ("can't feel my legs today", ""),
        ("can't squat today", ""),
        ("couldn't train last Thursday", ""),
        ("I did it on Thursday", ""),
        ("busy gym today", ""),
        ("see you Thursday", ""),
        ("60x8 on thursday", ""),
    ],
)
def test_words_that_give_a_day_up(text: str, day: str) -> None:
    """From Tuesday the 12th on; words of another kind are none."""
    found = read_given_up(text, date(2027, 1, 12))
    assert (found.isoformat() if found else "") == day


def test_a_stranger_moves_nothing(wired: Wired) -> None:
    """The buttons name days only: pressed by another client they are about that client's own week."""
    with wired.bot(MONDAY) as bot:
        week(bot)
        bot.tap(ADA, "Thu 14 Jan…")
        data = next(d for s in bot.screen(ADA) for label, d in s.data if label == "Move to Wed 13 Jan")
        before = week(bot).text
        bot.tap_data(BO, data)
        assert week(bot).text == before
        bot.no_turn_failed()
