"""Time zones on a journey: said in words or set, east and west and over the date line: nothing twice, nothing lost. The
moments are worked out here by `zoneinfo` (IANA time zone database)."""

from collections.abc import Iterator
from datetime import timedelta

import pytest

from bot.dialogue.placewords import read_place
from storage.engine import Store
from tests.talks.test_clocks import ASK, CARD, MISSED, Diary, heard, utc
from tests.talks.wireless import ADA, COACH, Wireless, coach_joins, joins, life

BERLIN, TOKYO, YORK, AUCKLAND, HONOLULU = (
    "Europe/Berlin",
    "Asia/Tokyo",
    "America/New_York",
    "Pacific/Auckland",
    "Pacific/Honolulu",
)


@pytest.fixture
def monday(blank: Store) -> Iterator[Wireless]:
    """Ada trains on Mondays, Tuesdays and Thursdays at 18:00 in Berlin; it is Monday noon."""
    with life(blank, utc("2027-01-11 12:00", BERLIN)) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, BERLIN, days="mon tue thu 18:00")
        yield bot
        bot.no_turn_failed()


def goes(bot: Wireless, zone: str) -> None:
    """By the settings."""
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Change clock")
    bot.say(ADA, zone)


def test_said_in_words_it_is_offered_and_one_tap_sets_it(monday: Wireless) -> None:
    """With the time there; until the tap nothing changes. Then sessions come at 18:00 of that clock, each once."""
    bot, diary = monday, Diary(monday, ADA)
    facts = bot.facts_count()
    bot.say(ADA, "I'm in New York until Friday")
    assert "It is 06:00 in New York." in bot.text(ADA)
    assert bot.facts_count() == facts
    bot.tap(ADA, "Yes, by the clock of New York")
    assert "where it is 06:00" in bot.text(ADA)
    diary.look()
    diary.until(utc("2027-01-12 23:30", YORK))
    assert diary.when(ADA, CARD) == [utc(f"2027-01-{day} 18:00", YORK) for day in (11, 12)]
    assert diary.when(ADA, ASK) == [utc(f"2027-01-{day} 21:00", YORK) for day in (11, 12)]


def test_no_leaves_the_clock(monday: Wireless) -> None:
    """And a place by the same clock isn't asked about."""
    bot = monday
    bot.say(ADA, "landed in Tokyo")
    facts = bot.facts_count()
    bot.tap(ADA, "No, stay on Berlin")
    assert bot.facts_count() == facts
    bot.say(ADA, "I'm in Paris")
    assert "Shall sessions" not in bot.text(ADA)


def test_eastwards_the_session_whose_hour_was_flown_over_comes_at_once(monday: Wireless) -> None:
    """Noon in Berlin is 20:00 in Tokyo: Monday's comes now, is asked about at Tokyo's 21:00, and comes no second time
    at Berlin's 18:00."""
    bot, diary = monday, Diary(monday, ADA, COACH)
    goes(bot, TOKYO)
    diary.until(utc("2027-01-12 17:59", TOKYO))
    assert diary.when(ADA, CARD) == [utc("2027-01-11 20:00", TOKYO)]
    assert diary.when(ADA, ASK) == [utc("2027-01-11 21:00", TOKYO)]
    assert "Mon 11 Jan" in heard(bot, ADA, CARD, 0)[0]
    diary.until(utc("2027-01-12 18:00", TOKYO))
    assert diary.when(ADA, CARD)[1:] == [utc("2027-01-12 18:00", TOKYO)]


def test_eastwards_into_the_night_it_is_asked_about_in_the_morning(monday: Wireless) -> None:
    """15:00 in Berlin is 23:00 in Tokyo: no session comes at night; in the morning it is asked where Monday's went,
    and the coach knows, though Tuesday has a session of its own."""
    bot, diary = monday, Diary(monday, ADA, COACH)
    diary.until(utc("2027-01-11 15:00", BERLIN))
    goes(bot, TOKYO)
    diary.until(utc("2027-01-12 23:00", TOKYO))
    assert diary.when(ADA, CARD) == [utc("2027-01-12 18:00", TOKYO)]
    assert diary.when(ADA, ASK) == [utc("2027-01-12 09:00", TOKYO), utc("2027-01-12 21:00", TOKYO)]
    assert diary.when(COACH, MISSED) == [utc("2027-01-12 09:00", TOKYO), utc("2027-01-12 21:00", TOKYO)]


def test_an_open_session_of_a_day_that_is_over_there_is_asked_about(monday: Wireless) -> None:
    """Monday's card came at 18:00; an hour later it is Tuesday morning in Auckland."""
    bot, diary = monday, Diary(monday, ADA)
    diary.until(utc("2027-01-11 19:00", BERLIN))
    goes(bot, AUCKLAND)
    diary.until(utc("2027-01-12 17:00", AUCKLAND))
    (at,) = diary.when(ADA, ASK)
    assert at == utc("2027-01-12 09:00", AUCKLAND)
    assert "Mon 11 Jan" in heard(bot, ADA, ASK, 0)[0]


def test_it_is_asked_about_also_where_the_next_days_session_is_there_already(blank: Store) -> None:
    """Monday's of 08:00 is still open when it is Tuesday, 07:00, in Auckland; Tuesday's comes at 08:00 there, and at
    09:00 it is Monday's that is asked about."""
    with life(blank, utc("2027-01-11 07:00", BERLIN)) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, BERLIN, days="mon tue 08:00")
        diary = Diary(bot, ADA)
        diary.until(utc("2027-01-11 19:00", BERLIN))
        goes(bot, AUCKLAND)
        diary.until(utc("2027-01-12 10:00", AUCKLAND))
        assert diary.when(ADA, CARD) == [utc("2027-01-11 08:00", BERLIN), utc("2027-01-12 08:00", AUCKLAND)]
        assert diary.when(ADA, ASK) == [utc("2027-01-12 09:00", AUCKLAND)]
        assert "Mon 11 Jan" in heard(bot, ADA, ASK, 0)[0]
        bot.no_turn_failed()


@pytest.mark.parametrize("zone", [YORK, TOKYO, AUCKLAND, HONOLULU])
def test_a_time_away_ends_by_the_new_clock(monday: Wireless, zone: str) -> None:
    """Back on the 25th at eight in the morning wherever that is, once; the session follows at 18:00."""
    bot, diary = monday, Diary(monday, ADA)
    bot.say(ADA, "on holiday until the 25th")
    goes(bot, zone)
    diary.until(utc("2027-01-25 18:00", zone))
    assert diary.when(ADA, "Welcome back, Ada") == [utc("2027-01-25 08:00", zone)]
    assert diary.when(ADA, CARD) == [utc("2027-01-25 18:00", zone)]


@pytest.mark.parametrize("zone", [YORK, TOKYO, HONOLULU])
def test_a_moved_session_comes_at_its_hour_by_the_new_clock(monday: Wireless, zone: str) -> None:
    """Monday's, given up at 18:05 and moved to Wednesday: 18:00 there, once."""
    bot, diary = monday, Diary(monday, ADA)
    diary.until(utc("2027-01-11 18:05", BERLIN))
    bot.say(ADA, "can't do today")
    bot.tap(ADA, "Move to Wed")
    diary.until(utc("2027-01-12 12:00", BERLIN))
    goes(bot, zone)
    diary.look()
    diary.until(utc("2027-01-13 20:00", zone))
    assert utc("2027-01-13 18:00", zone) in diary.when(ADA, CARD)
    assert sum("Wed 13 Jan" in words for words in heard(bot, ADA, CARD, 0)) == 1


def test_over_the_date_line_a_session_begun_tomorrow_goes_on(blank: Store) -> None:
    """Tuesday morning in Auckland is Monday in Honolulu: what is reported there still belongs to Tuesday's session, and
    no session comes for a day that they have lived already."""
    with life(blank, utc("2027-01-11 12:00", AUCKLAND)) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, AUCKLAND, days="mon tue 07:00")
        diary = Diary(bot, ADA)
        diary.until(utc("2027-01-12 07:10", AUCKLAND))
        bot.say(ADA, "60x5")
        goes(bot, HONOLULU)
        bot.say(ADA, "50x9")
        assert "2. done: 50 kg × 9" in "".join(s.text for s in bot.screen(ADA))
        diary.look()
        diary.until(utc("2027-01-12 12:00", HONOLULU))
        assert diary.when(ADA, "Set 0 of") == [utc("2027-01-12 07:00", AUCKLAND)]
        bot.no_turn_failed()


def test_there_and_back_nothing_comes_twice(monday: Wireless) -> None:
    """A week of flights: one session for each training day, whichever the clock."""
    bot, diary = monday, Diary(monday, ADA)
    for hours, zone in ((3, TOKYO), (20, BERLIN), (30, YORK), (26, AUCKLAND), (24, HONOLULU), (25, BERLIN)):
        diary.until(bot.now + timedelta(hours=hours))
        goes(bot, zone)
        diary.look()
    diary.until(utc("2027-01-19 23:30", BERLIN))
    days = [words.splitlines()[0] for words in heard(bot, ADA, CARD, 0)]
    assert len(days) == len(set(days))


@pytest.mark.parametrize(
    ("text", "zone"),
    [
        ("I'm in New York", YORK),
        ("i’m in nyc this week", YORK),
        ("Just landed in Tokyo!", TOKYO),
        ("on London time", "Europe/London"),
        ("back in Berlin", BERLIN),
        ("my timezone is Europe/Lisbon", "Europe/Lisbon"),
        ("set my clock to New Zealand", AUCKLAND),
        ("change my time zone", ""),
        ("I'm in another time zone", ""),
        ("I'm in the gym", None),
        ("I'm in pain", None),
        ("I'm in Middle-earth", None),
        ("on la", None),
        ("nice", None),
        ("60x5", None),
        ("Tokyo bar 60x5", None),
        ("my timezone is Mars/Olympus", None),
    ],
)
def test_words_that_say_where_somebody_is(text: str, zone: str | None) -> None:
    """Whole messages only; a place that we don't know is none."""
    assert read_place(text) == zone


@pytest.mark.parametrize("arg", ["", "Nowhere/Land", "UTC", "../etc/passwd", "Europe"])
def test_a_forged_zone_changes_nothing(monday: Wireless, arg: str) -> None:
    """No zone of the database."""
    facts = monday.facts_count()
    monday.tap_data(ADA, f"1:clockto::{arg}")
    assert monday.facts_count() == facts
