"""A coach turns a programme into other numbers of days: side by side first, then as a programme of its own."""

import re

from bot.training.samples import sample_programme
from tests.talks.wireless import ADA, COACH, OTHER_COACH, Shown, Wired, Wireless


def side(bot: Wireless) -> Shown:
    """The sample on two to five days."""
    bot.say(COACH, "/programme")
    bot.tap(COACH, sample_programme().title)
    bot.tap(COACH, "Other days")
    return newest(bot)


def newest(bot: Wireless) -> Shown:
    """The page as it stands."""
    return next(s for s in reversed(bot.screen(COACH)) if "on other days a week" in s.text)


def test_two_to_five_days_side_by_side(wired: Wired) -> None:
    """Minutes of each day, at most as long as now; a row a muscle with sets and hours of rest; as it is for two."""
    with wired.bot() as bot:
        shown = side(bot)
        limit = int(re.findall(r"at most (\d+) min", shown.text)[0])
        for days in (2, 3, 4, 5):
            held = re.findall(rf"^{days} days(?:, as it is)?: (.*)$", shown.text, re.MULTILINE)[0]
            minutes = [int(m) for m in re.findall(r"(\d+) min", held)]
            assert len(minutes) == days
            assert max(minutes) <= limit
        assert re.search(r"^quadriceps( +\d+(\.\d)?){4} +\|( +(\d+|-)){4}$", shown.text, re.MULTILINE)
        labels = [label for label, _ in shown.data]
        assert "Make it 2 days" not in labels
        assert {"Make it 3 days", "Make it 4 days", "Make it 5 days"} <= set(labels)
        assert bot.facts_count() > 0
        bot.no_turn_failed()


def test_fewer_minutes_say_what_is_left_out(wired: Wired) -> None:
    """A quarter of an hour on three days can't hold it all; on two it stays as it is."""
    with wired.bot() as bot:
        data = next(d for label, d in side(bot).data if label == "30 min")
        bot.tap_data(COACH, data.replace(":30:", ":15:"))
        text = newest(bot).text
        assert "each at most 15 min" in text
        assert "2 days, as it is: " in text
        three = text.partition("3 days: ")[2].partition("4 days: ")[0]
        assert "left out: " in three
        assert max(int(m) for m in re.findall(r" (\d+) min", three)) <= 15


def test_taken_it_is_a_programme_of_its_own_that_is_given_as_ever(wired: Wired) -> None:
    """Nobody has it by that; given to Ada, her next sessions are its days, in order, with all of the work."""
    with wired.bot() as bot:
        side(bot)
        facts = bot.facts_count()
        bot.tap(COACH, "Make it 4 days")
        assert bot.facts_count() == facts + 1
        title = f"{sample_programme().title} (4 ×)"
        assert title in bot.text(COACH)
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 17:00"))
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Change days")
        bot.say(ADA, "mon tue thu fri 18:00")
        asked: dict[str, int] = {}
        for day in ("11", "12", "14", "15"):
            bot.until(bot.wall("Europe/Berlin", f"2027-01-{day} 18:00"))
            bot.say(ADA, "/week")
            page = next(s.text for s in reversed(bot.screen(ADA)) if s.text.startswith("Your week") and s.data)
            asked[day] = int(re.findall(rf"{day} Jan: .* (\d+) sets", page)[0])
            bot.say(ADA, "that's me done")
        wanted = sum(len(e.sets) for w in sample_programme().workouts for e in w.exercises)
        assert sum(asked.values()) == wanted
        bot.no_turn_failed()


def test_another_coach_finds_no_such_programme(wired: Wired) -> None:
    """The new one is on Maren's shelf only; an old button of a changed table is looked at again."""
    with wired.bot() as bot:
        shown = side(bot)
        data = next(d for label, d in shown.data if label == "Make it 3 days")
        bot.tap_data(COACH, data)
        new = next(d for s in bot.screen(COACH) for label, d in s.data if label == "Other days…" and ":d3" in d)
        facts = bot.facts_count()
        assert bot.tap_data(OTHER_COACH, new) == "Not available."
        assert "changed" in bot.tap_data(COACH, data[:-4] + "0000")
        assert bot.facts_count() == facts
        bot.no_turn_failed()
