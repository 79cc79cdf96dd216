"""A light week offered when three signs agree, and the session load of the last weeks on the coach's page."""

from dataclasses import replace
from datetime import timedelta

import sqlalchemy as sa

from bot.training.facts import ProgrammeAssigned
from bot.training.people import Programme, WeekChange
from bot.training.samples import sample_programme
from storage.facts import keep
from storage.record import Origin
from storage.tables import clients
from tests.talks.wireless import ADA, COACH, DANA, OTHER_COACH, Wired, Wireless


def train(bot: Wireless, sets: str, effort: int | None, *, minutes: int = 30) -> None:
    """A session of one set and another half an hour later, and how hard it felt."""
    first, last = sets.split(" | ")
    bot.say(ADA, first)
    bot.wait(minutes - 2)
    bot.say(ADA, last)
    bot.say(ADA, "that's me done")
    if effort is not None:
        bot.say(ADA, str(effort))


def weeks(bot: Wireless, efforts: list[int | None]) -> None:
    """Mondays and Thursdays with the same sets, and how hard each felt."""
    monday = bot.wall("Europe/Berlin", "2027-01-11 18:05")
    for n, effort in enumerate(efforts):
        at = monday + timedelta(weeks=n // 2, days=3 * (n % 2))
        bot.until(at)
        lift = "romanian deadlift" if n % 2 else "back squat"
        train(bot, f"{lift} 60x6 1 left | {lift} 50x8 1 left", effort)


def gives(bot: Wireless, programme: Programme) -> None:
    """The coach gives Ada a programme."""
    ada = bot.work.all(sa.select(clients.c.id).where(clients.c.chat == ADA))[0].id
    keep(bot.work, ProgrammeAssigned(ada, programme), Origin(f"chat:{COACH}", bot.now, "m1:1"))


def digest(bot: Wireless) -> str:
    """The coach's digest of the next morning."""
    bot.until(bot.now + timedelta(hours=14))
    return next(s.text for s in reversed(bot.screen(COACH)) if s.text.startswith("Digest"))


HARD: list[int | None] = [4, 4, 4, 4, 4, 4, 4, 4, 4, 4, 7, 7]


def test_three_signs_offer_a_light_week_that_one_tap_makes(wired: Wired) -> None:
    """Weeks without one, lifts that don't go on, sessions that feel harder: told with their names."""
    with wired.bot() as bot:
        weeks(bot, HARD)
        text = digest(bot)
        assert "A light week?" in text
        assert "five weeks or more without one" in text
        assert "lifts that don't go on" in text
        assert "sessions feel harder" in text
        bot.tap(COACH, "Ada: light from Mon 22 Feb")
        assert any("the week of Mon 22 Feb a light one" in s.text for s in bot.screen(ADA))
        bot.until(bot.wall("Europe/Berlin", "2027-02-22 18:05"))
        assert "3 in reserve" in bot.text(ADA)
        train(bot, "back squat 60x6 3 left | back squat 50x8 3 left", 4)
        assert "A light week?" not in digest(bot)
        bot.no_turn_failed()


def test_the_programmes_own_light_week_counts(wired: Wired) -> None:
    """The same weeks, the fourth of them a light one of the programme: not five weeks without one, so no offer."""
    with wired.bot() as bot:
        gives(bot, replace(sample_programme(), changes=(WeekChange((4,), sets_percent=50),)))
        weeks(bot, HARD)
        assert "A light week?" not in digest(bot)
        bot.no_turn_failed()


def test_two_signs_offer_none(wired: Wired) -> None:
    """As hard as ever: no offer."""
    with wired.bot() as bot:
        weeks(bot, [4] * 12)
        assert "A light week?" not in digest(bot)
        bot.no_turn_failed()


def test_not_now_is_kept_for_three_weeks(wired: Wired) -> None:
    """The next day's digest doesn't offer it again."""
    with wired.bot() as bot:
        weeks(bot, HARD)
        assert "A light week?" in digest(bot)
        facts = bot.facts_count()
        assert "Ada keeps going" in bot.tap(COACH, "Ada: not now")
        assert bot.facts_count() == facts + 1
        bot.until(bot.wall("Europe/Berlin", "2027-02-22 18:05"))
        train(bot, "back squat 60x6 1 left | back squat 50x8 1 left", 7)
        assert "A light week?" not in digest(bot)
        bot.no_turn_failed()


def page(bot: Wireless) -> str:
    """The page of Ada's load."""
    bot.say(COACH, "/clients")
    bot.tap(COACH, "Open Ada")
    bot.tap(COACH, "Session load")
    return bot.text(COACH)


def test_the_load_of_a_week_is_effort_times_minutes(wired: Wired) -> None:
    """Two sessions of 30 minutes at 6 and 4: 180 and 120. By Foster 1998 with the divisor n - 1: mean 300/7 = 42.9,
    standard deviation 75.2, monotony 0.57, strain 171 (worked by hand)."""
    with wired.bot() as bot:
        weeks(bot, [6, 4])
        assert "Week of Mon 11 Jan, so far: 300 from 2 of 2 sessions" in page(bot)
        assert "monotony 0" not in page(bot)
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 08:00"))
        text = page(bot)
        assert "Week of Mon 11 Jan: 300 from 2 sessions, monotony 0.6, strain 171" in text
        assert "Week of Mon 18 Jan, so far: no session" in text
        assert "Week of Mon 4 Jan: no session" in text
        assert "nothing here predicts an injury" in text
        bot.no_turn_failed()


def test_a_session_without_a_rating_is_not_guessed(wired: Wired) -> None:
    """What is known is a least; monotony and strain are left out."""
    with wired.bot() as bot:
        weeks(bot, [None])
        assert "Week of Mon 11 Jan, so far: one session, effort or minutes not known" in page(bot)
    with wired.bot() as bot:
        weeks(bot, [6, None])
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 08:00"))
        assert "Week of Mon 11 Jan: at least 180, from 1 of 2 sessions" in page(bot)
        bot.no_turn_failed()


def test_another_coach_sees_none_of_it(wired: Wired) -> None:
    """The button of Maren's page, pressed by Oona, and by a client."""
    with wired.bot() as bot:
        weeks(bot, [6])
        page(bot)
        data = next(d for s in bot.screen(COACH) for label, d in s.data if label == "Back to Ada")
        ref = data.split(":")[2]
        for who in (OTHER_COACH, DANA):
            before = [s.text for s in bot.screen(who)]
            bot.tap_data(who, f"1:c.sload:{ref}")
            bot.tap_data(who, f"1:c.nolight:{ref}")
            assert [s.text for s in bot.screen(who)] == before
