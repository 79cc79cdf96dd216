"""Time: clocks that change inside the week, two zones, hours slept through, zones and days changed: everything comes
once, at the hour that the wall shows. The UTC moments are worked out here by `zoneinfo` (IANA time zone database)."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from storage.engine import Store
from tests.talks.wireless import ADA, BO, COACH, Wireless, coach_joins, joins, life

ASK, SUM, CARD, MISSED, DIGEST = "is not reported", "Hard sets by muscle", "Set 0 of", "MISSED: ", "Digest for"


@dataclass(frozen=True)
class Change:
    """A change of clocks: the zones of coach and client, the Sunday, and what the client's hours are in UTC before
    and after (hours to add to the wall's)."""

    coach: str
    client: str
    sunday: date
    before_h: int
    after_h: int


CHANGES = (
    Change("Europe/Dublin", "Europe/Berlin", date(2027, 3, 28), -1, -2),
    Change("America/New_York", "America/New_York", date(2027, 3, 14), 5, 4),
    Change("Europe/Dublin", "Europe/Berlin", date(2027, 10, 31), -2, -1),
    Change("America/New_York", "America/New_York", date(2027, 11, 7), 4, 5),
    Change("Europe/Berlin", "America/New_York", date(2027, 3, 14), 5, 4),
    Change("Asia/Kathmandu", "Australia/Sydney", date(2027, 4, 4), -11, -10),
)


def heard(bot: Wireless, who: int, words: str, since: int) -> list[str]:
    """The messages to somebody that hold these words."""
    return [s.text for s in bot.screen(who) if s.number > since and words in s.text]


def utc(wall: str, zone: str) -> datetime:
    """The moment at which a clock there shows it; of two such moments the first."""
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(zone)).astimezone(UTC)


class Diary:
    """When who heard what, looked at whenever something was due."""

    def __init__(self, bot: Wireless, *whose: int) -> None:
        self.bot, self.whose = bot, whose
        self.entries: list[tuple[datetime, int, str]] = []
        self._seen = {who: {s.number for s in bot.screen(who)} for who in whose}

    def until(self, at: datetime) -> None:
        """Lets time pass, stopping at every minute at which the bot had something due."""
        while (due := self.bot.next_due()) is not None and due <= at:
            self.bot.until(due)
            self.look()
        self.bot.until(at)

    def look(self) -> None:
        """Writes down what is new."""
        for who in self.whose:
            for shown in self.bot.screen(who):
                if shown.number not in self._seen[who]:
                    self._seen[who].add(shown.number)
                    self.entries.append((self.bot.now, who, shown.text))

    def when(self, who: int, words: str) -> list[datetime]:
        """The moments at which somebody heard these words."""
        return [at for at, whom, text in self.entries if whom == who and words in text]


@pytest.mark.parametrize("change", CHANGES, ids=lambda c: f"{c.client}-{c.sunday}".replace("/", "-"))
def test_a_week_around_a_change_of_clocks(blank: Store, change: Change) -> None:
    """Training on Saturday, Sunday and Monday at 18:00: each session, cut-off, weekly summary, digest and morning after
    comes once, at its wall time, which is another hour of UTC after the change."""
    saturday, monday = change.sunday - timedelta(days=1), change.sunday + timedelta(days=1)
    with life(blank, utc(f"{saturday - timedelta(days=1)} 09:00", change.client)) as bot:
        coach_joins(bot, COACH, change.coach)
        joins(bot, ADA, COACH, change.client, days="sat sun mon 18:00")
        diary = Diary(bot, ADA, COACH)
        diary.until(utc(f"{saturday} 20:00", change.client))
        bot.say(ADA, "my left knee hurts 4/10")
        diary.look()
        diary.until(utc(f"{monday} 23:59", change.client))
        days = (saturday, change.sunday, monday)
        hours = (change.before_h, change.after_h, change.after_h)
        midnight = [datetime.combine(d, time(), UTC) for d in days]

        def at(hour: float) -> list[datetime]:
            return [m + timedelta(hours=hour + h) for m, h in zip(midnight, hours, strict=True)]

        assert diary.when(ADA, CARD) == at(18)
        assert diary.when(ADA, ASK) == at(21)
        assert diary.when(COACH, MISSED) == at(21)
        assert diary.when(ADA, SUM) == [at(21.25)[1]]
        assert diary.when(ADA, "How is it now") == [at(9)[1]]
        digests = diary.when(COACH, DIGEST)
        assert digests == sorted(
            {utc(f"{d.astimezone(ZoneInfo(change.coach)):%Y-%m-%d} 07:00", change.coach) for d in digests}
        )
        assert len(digests) in (3, 4)
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("sunday", "comes"),
    [
        (date(2027, 3, 28), datetime(2027, 3, 28, 1, 30, tzinfo=UTC)),
        (date(2027, 10, 31), datetime(2027, 10, 31, 0, 30, tzinfo=UTC)),
    ],
    ids=["skipped", "twice"],
)
def test_a_session_at_an_hour_that_is_skipped_or_comes_twice(blank: Store, sunday: date, comes: datetime) -> None:
    """Half past two in Berlin: where the clock jumps over it, at 03:30 summer time; where it comes twice, at the first,
    and only then."""
    with life(blank, utc(f"{sunday - timedelta(days=1)} 09:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="sun 02:30")
        diary = Diary(bot, ADA)
        diary.until(utc(f"{sunday + timedelta(days=1)} 12:00", "Europe/Berlin"))
        assert diary.when(ADA, CARD) == [comes]
        assert len(diary.when(ADA, ASK)) == 1


def test_two_zones_in_one_practice(blank: Store) -> None:
    """Berlin's and New York's 18:00 are five hours apart in the weeks when only America has changed its clocks."""
    with life(blank, utc("2027-03-14 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="mon 18:00")
        joins(bot, BO, COACH, "America/New_York", unit="lb", days="mon 18:00")
        diary = Diary(bot, ADA, BO)
        diary.until(utc("2027-03-16 12:00", "Europe/Berlin"))
        (ada,), (bo,) = diary.when(ADA, CARD), diary.when(BO, CARD)
        assert bo - ada == timedelta(hours=5)


# --- the bot asleep


def asleep(bot: Wireless, until: datetime) -> None:
    """The bot is down until then; everything that fell due meanwhile is found at once."""
    bot.now = until
    bot.tick()


@pytest.fixture
def monday(blank: Store) -> Iterator[Wireless]:
    """Ada trains on Mondays and Thursdays at 18:00 in Berlin; it is Monday noon."""
    with life(blank, utc("2027-01-11 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin")
        yield bot
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("back", "cards", "asked", "sums"),
    [
        ("2027-01-11 20:00", 1, 0, 0),  # two hours late: the session still comes
        ("2027-01-11 23:30", 0, 1, 0),  # too late to begin: asked about instead
        ("2027-01-12 10:00", 0, 1, 0),  # the next morning: asked about, with its day
        ("2027-01-13 12:00", 0, 0, 0),  # longer than a day: let go
        ("2027-01-15 10:00", 0, 1, 1),  # Thursday's is asked about, the week summed up; not Monday's
        ("2027-02-20 10:00", 0, 0, 0),  # weeks: nothing is left to say
    ],
)
def test_after_the_bot_was_down_nothing_floods_and_nothing_comes_twice(
    monday: Wireless, back: str, cards: int, asked: int, sums: int
) -> None:
    """Stopped on Monday noon and started at `back`: what can still be done comes, once; the rest is let go."""
    since = monday.screen(ADA)[-1].number
    asleep(monday, utc(back, "Europe/Berlin"))
    assert len(heard(monday, ADA, CARD, since)) == cards
    assert len(heard(monday, ADA, ASK, since)) == asked
    assert len(heard(monday, COACH, MISSED, since)) == asked
    assert len(heard(monday, ADA, SUM, since)) == sums
    assert len(heard(monday, COACH, DIGEST, since)) == (1 if "01-11" not in back else 0)
    asleep(monday, monday.now + timedelta(minutes=1))
    assert len(heard(monday, ADA, ASK, since)) == asked


def test_the_weekly_summary_that_comes_late_is_of_its_own_week(blank: Store) -> None:
    """Sunday's summary, sent on Monday morning since the bot was down, is about the week that ended."""
    with life(blank, utc("2027-01-16 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="sun 18:00")
        bot.until(utc("2027-01-17 18:05", "Europe/Berlin"))
        bot.say(ADA, "60x5, 50x9, 50x9")
        asleep(bot, utc("2027-01-18 08:00", "Europe/Berlin"))
        (words,) = [s.text for s in bot.screen(ADA) if SUM in s.text]
        assert "quadriceps: 3 of" in words


def test_a_pain_check_slept_through_comes_once_and_late(monday: Wireless) -> None:
    """The morning after, at noon."""
    monday.say(ADA, "my left knee hurts 4/10")
    asleep(monday, utc("2027-01-12 12:00", "Europe/Berlin"))
    asleep(monday, utc("2027-01-12 13:00", "Europe/Berlin"))
    assert len(heard(monday, ADA, "How is it now", 0)) == 1


# --- late hours, and reports at the wrong moment


def test_a_session_at_half_past_eleven_at_night(blank: Store) -> None:
    """It comes at 23:30, is not called missed in the same minute, and is asked about in the morning."""
    with life(blank, utc("2027-01-11 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="mon 23:30")
        diary = Diary(bot, ADA, COACH)
        diary.until(utc("2027-01-12 23:59", "Europe/Berlin"))
        assert diary.when(ADA, CARD) == [utc("2027-01-11 23:30", "Europe/Berlin")]
        assert diary.when(ADA, ASK) == [utc("2027-01-12 09:00", "Europe/Berlin")]
        assert "Mon 11 Jan" in heard(bot, ADA, ASK, 0)[0]


def test_sets_reported_after_midnight_belong_to_the_evening(blank: Store) -> None:
    """Begun at 23:30, reported at half past midnight: Monday's session."""
    with life(blank, utc("2027-01-11 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="mon 23:30")
        bot.until(utc("2027-01-12 00:30", "Europe/Berlin"))
        bot.say(ADA, "60x5")
        card = next(s for s in reversed(bot.screen(ADA)) if "1. done: 60 kg × 5" in s.text)
        assert "Mon 11 Jan" in card.text


def test_after_midnight_today_is_still_the_evenings_session(blank: Store) -> None:
    """Monday's of 18:00, asked for at half past midnight although Tuesday has one of its own: Monday's card. From four
    in the morning on it is Tuesday's."""
    with life(blank, utc("2027-01-11 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="mon tue 18:00")
        bot.until(utc("2027-01-12 00:30", "Europe/Berlin"))
        bot.say(ADA, "/today")
        assert "Mon 11 Jan" in bot.text(ADA)
        bot.until(utc("2027-01-12 04:00", "Europe/Berlin"))
        bot.say(ADA, "/today")
        assert "Tue 12 Jan" in bot.text(ADA)
        bot.no_turn_failed()


def test_the_week_of_who_trains_near_midnight_is_summed_up_in_the_morning(blank: Store) -> None:
    """Sunday at 23:30, reported until a quarter past midnight: the summary waits for the morning, has the sets in it,
    is of the week that is over, and comes once."""
    with life(blank, utc("2027-01-16 12:00", "Europe/Berlin")) as bot:
        coach_joins(bot, COACH, "Europe/Dublin")
        joins(bot, ADA, COACH, "Europe/Berlin", days="sun 23:30")
        diary = Diary(bot, ADA)
        diary.until(utc("2027-01-18 00:15", "Europe/Berlin"))
        bot.say(ADA, "60x5, 50x9, 50x9")
        diary.until(utc("2027-01-18 23:00", "Europe/Berlin"))
        assert diary.when(ADA, SUM) == [utc("2027-01-18 09:00", "Europe/Berlin")]
        (words,) = [s.text for s in bot.screen(ADA) if SUM in s.text]
        assert "quadriceps: 3 of" in words
        bot.no_turn_failed()


def test_who_still_reports_at_the_cut_off_is_left_in_peace(monday: Wireless) -> None:
    """Begun late, a set at 20:55: no summary at 21:00 between two sets; closed an hour later, when no more came."""
    bot = monday
    bot.until(utc("2027-01-11 20:55", "Europe/Berlin"))
    bot.say(ADA, "60x5")
    bot.until(utc("2027-01-11 21:05", "Europe/Berlin"))
    assert not heard(bot, ADA, "How hard", 0)
    bot.say(ADA, "50x9")
    bot.until(utc("2027-01-11 22:01", "Europe/Berlin"))
    (end,) = heard(bot, ADA, "How hard", 0)
    assert "2 of 11 sets" in end
    assert not heard(bot, COACH, MISSED, 0)


def test_a_session_taken_up_again_the_next_day_is_closed_at_that_days_cut_off(monday: Wireless) -> None:
    """And the effort, once said, is not asked again."""
    bot = monday
    bot.until(utc("2027-01-11 18:10", "Europe/Berlin"))
    bot.say(ADA, "60x5")
    bot.tap(ADA, "End session")
    bot.tap(ADA, "7")
    bot.until(utc("2027-01-12 08:00", "Europe/Berlin"))
    bot.say(ADA, "yesterday: squat 50x9")
    assert heard(bot, ADA, "2. done: 50 kg × 9", 0)
    bot.until(utc("2027-01-12 21:05", "Europe/Berlin"))
    assert "2 of 11 sets" in bot.text(ADA)
    assert "felt 7 of 10" in bot.text(ADA)
    assert not any("How hard" in s.text for s in bot.screen(ADA))


# --- zones and days changed in the middle


def test_a_client_who_travels_west_gets_the_next_session_by_the_new_clock(monday: Wireless) -> None:
    """Monday's came in Berlin and comes no second time in New York; Thursday's comes at 18:00 there."""
    bot = monday
    diary = Diary(bot, ADA)
    diary.until(utc("2027-01-11 18:30", "Europe/Berlin"))
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Change clock")
    bot.say(ADA, "America/New_York")
    diary.look()
    diary.until(utc("2027-01-15 12:00", "Europe/Berlin"))
    cards = diary.when(ADA, CARD)
    assert cards == [utc("2027-01-11 18:00", "Europe/Berlin"), utc("2027-01-14 18:00", "America/New_York")]
    assert len(diary.when(ADA, ASK)) == 2


def test_days_changed_on_a_training_day(monday: Wireless) -> None:
    """Monday's session is there; moved to Tuesday, Wednesday at 07:00, the next comes on Tuesday, and the week is
    summed up on Wednesday, once."""
    bot = monday
    diary = Diary(bot, ADA)
    diary.until(utc("2027-01-11 18:30", "Europe/Berlin"))
    bot.say(ADA, "60x5")
    bot.say(ADA, "that's me done")
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Change days")
    bot.say(ADA, "tue wed 07:00")
    diary.look()
    diary.until(utc("2027-01-17 23:00", "Europe/Berlin"))
    assert diary.when(ADA, CARD)[1:] == [
        utc("2027-01-12 07:00", "Europe/Berlin"),
        utc("2027-01-13 07:00", "Europe/Berlin"),
    ]
    assert diary.when(ADA, SUM) == [utc("2027-01-13 21:15", "Europe/Berlin")]


def test_a_message_at_the_very_minute_of_the_session(monday: Wireless) -> None:
    """Typed in the minute in which the session falls due, in either order: one session, the set in it."""
    bot = monday
    bot.now = utc("2027-01-11 18:00", "Europe/Berlin")
    bot.say(ADA, "/today")
    bot.say(ADA, "60x5")
    bot.tick()
    assert len({s.text.splitlines()[0] for s in bot.screen(ADA) if "· about" in s.text}) == 1
    assert len(heard(bot, ADA, "1. done: 60 kg × 5", 0)) == 1
