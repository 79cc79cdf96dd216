"""A coach turns a programme into other numbers of days: side by side first, then as a programme of its own."""

import re

import pytest

from bot.dialogue.daycountwords import wants_other_days
from bot.saying import DaysChart
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


def drawn(bot: Wireless) -> list[DaysChart]:
    """The pictures of other days on the coach's screen."""
    return [s.picture for s in bot.screen(COACH) if isinstance(s.picture, DaysChart)]


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
        assert "each new day at most 15 min" in text
        assert "2 days, as it is: " in text
        three = text.partition("3 days: ")[2].partition("4 days: ")[0]
        assert "left out: " in three
        assert max(int(m) for m in re.findall(r" (\d+) min", three)) <= 15


def test_the_picture_says_what_the_table_says(wired: Wired) -> None:
    """Before anything is taken: minutes of each day, sets and rest of each muscle; it follows the page in its place."""
    with wired.bot() as bot:
        text = side(bot).text
        (chart,) = drawn(bot)
        assert chart.title == sample_programme().title
        assert [week.days for week in chart.weeks] == [2, 3, 4, 5]
        assert [week.is_now for week in chart.weeks] == [True, False, False, False]
        for week in chart.weeks:
            held = re.findall(rf"^{week.days} days(?:, as it is)?: (.*)$", text, re.MULTILINE)[0]
            assert [int(m) for m in re.findall(r"(\d+) min", held)] == [m for m in week.minutes if m is not None]
        for row in chart.muscles:
            told = re.findall(rf"^{row.muscle}(.*)\|(.*)$", text, re.MULTILINE)[0]
            assert told[0].split() == [f"{sets:.1f}".removesuffix(".0") for sets in row.sets]
            assert told[1].split() == ["-" if hours is None else str(hours) for hours in row.rest_h]
        bot.tap(COACH, "60 min")
        (longer,) = drawn(bot)
        assert longer.most == 60
        bot.say(COACH, "/programme")
        bot.tap(COACH, sample_programme().title)
        bot.tap(COACH, "Other days")
        assert len(drawn(bot)) == 2
        bot.no_turn_failed()


def test_added_sets_go_to_the_weak_points_that_the_coach_names(wired: Wired) -> None:
    """None before a muscle is tapped, where there is no target; then to that muscle; taken, they are in."""
    with wired.bot() as bot:
        side(bot)
        bot.tap(COACH, "60 min")
        (before,) = drawn(bot)
        bot.tap(COACH, "Up to 3 sets more")
        shown = newest(bot)
        assert "Which muscles get the added sets?" in shown.text
        assert "added: " not in shown.text
        bot.tap(COACH, "First chest")
        text = newest(bot).text
        assert "Sets are added for chest first." in text
        assert "added: " not in text.partition("3 days: ")[0]
        assert "added: " in text.partition("5 days: ")[2]
        (after,) = drawn(bot)
        was, now = (next(r for r in chart.muscles if r.muscle == "chest") for chart in (before, after))
        assert was.sets[0] == now.sets[0]
        assert was.sets[3] < now.sets[3] <= was.sets[3] + 3
        bot.tap(COACH, "Make it 5 days")
        assert f"{sample_programme().title} (5 ×)" in bot.text(COACH)
        bot.no_turn_failed()


def test_no_more_sets_and_no_weak_points_take_it_back(wired: Wired) -> None:
    """The page is as it was."""
    with wired.bot() as bot:
        before = side(bot).text
        bot.tap(COACH, "Up to 6 sets more")
        bot.tap(COACH, "First calves")
        bot.tap(COACH, "First chest")
        assert "Sets are added for calves, chest first." in newest(bot).text
        bot.tap(COACH, "No weak points")
        assert "Which muscles" in newest(bot).text
        bot.tap(COACH, "No more sets")
        assert newest(bot).text == before
        bot.no_turn_failed()


def test_forged_wishes_are_the_plain_page(wired: Wired) -> None:
    """A muscle that there is not, twice the same, too many, another number of sets or minutes: as if just opened."""
    with wired.bot() as bot:
        plain = side(bot)
        data = next(d for label, d in plain.data if label == "60 min").partition(":60:")[0]
        for args in ("45:3:zz", "45:3:00", "45:3:0123", "45:4:", "9999:0:", "45:3:é", "x"):
            bot.tap_data(COACH, f"{data}:60:0:")
            assert newest(bot).text != plain.text
            bot.tap_data(COACH, f"{data}:{args}")
            assert newest(bot).text == plain.text, args
        bot.no_turn_failed()


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


def trains_on(bot: Wireless, days: str) -> None:
    """Ada changes her days."""
    bot.say(ADA, "/settings")
    bot.tap(ADA, "Change days")
    bot.say(ADA, f"{days} 18:00")


def test_more_days_than_sessions_are_told_to_both_and_the_coach_may_lay_the_same_work_over_them(wired: Wired) -> None:
    """Four days for two sessions are twice the work; one tap leads to the table, another makes it, a third gives it."""
    with wired.bot() as bot:
        trains_on(bot, "mon tue thu fri")
        assert any("On 4 days a week your programme’s 2 sessions come in turn" in s.text for s in bot.screen(ADA))
        assert any("which is 2 times its weekly work" in s.text for s in bot.screen(ADA))
        told = bot.screen(COACH)[-1]
        assert told.text.startswith("Ada trains on 4 days a week now: Mon, Tue, Thu, Fri.")
        assert "2 sessions, which come in turn: 2 times its weekly work" in told.text
        bot.tap(COACH, "The same work on 4 days")
        assert "4 days: " in newest(bot).text
        bot.tap(COACH, "Make it 4 days")
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        assert f"{sample_programme().title} (4 ×)" in bot.text(ADA)
        bot.no_turn_failed()


def test_back_to_as_many_days_as_sessions_is_told_in_the_same_place(wired: Wired) -> None:
    """To the coach only; other hours on as many days say nothing."""
    with wired.bot() as bot:
        trains_on(bot, "mon")
        number = bot.screen(COACH)[-1].number
        assert "one day a week now: Mon." in bot.text(COACH)
        assert "0.5 times its weekly work" in bot.text(COACH)
        mine = len(bot.screen(ADA))
        trains_on(bot, "mon fri")
        told = next(s for s in bot.screen(COACH) if s.number == number)
        assert "has as many sessions (2)" in told.text
        assert not any("times its weekly work" in s.text for s in bot.screen(ADA)[mine:])
        before = [s.text for s in bot.screen(COACH)]
        trains_on(bot, "tue fri")
        assert [s.text for s in bot.screen(COACH)] == before
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("text", "wants"),
    [
        ("I want to train 4 days a week", True),
        ("can I train three times a week?", True),
        ("I’d like to train 5 days per week from now on", True),
        ("Could I work out two days a week instead please", True),
        ("let's do 3 sessions a week", True),
        ("train 4x a week", True),
        ("can I train twice a week?", True),
        ("I trained 4 days a week", False),
        ("I can't train 3 days a week", False),
        ("do 3 sets", False),
        ("5 days a week it hurts", False),
        ("I train 4 days, my knee hurts", False),
        ("go 2 kg", False),
    ],
)
def test_another_number_of_days_in_words(text: str, wants: bool) -> None:
    assert wants_other_days(text) is wants


def test_wanted_in_words_the_days_are_asked_for(wired: Wired) -> None:
    """As the button of the settings does; nothing is sent to the coach before they are said."""
    with wired.bot("2027-01-11 18:05") as bot:
        before = bot.facts_count()
        bot.say(ADA, "can I train three days a week?")
        assert "On which days do you train" in bot.screen(ADA)[-1].text
        assert bot.facts_count() == before
        bot.say(ADA, "mon wed fri 18:00")
        assert "3 days a week now: Mon, Wed, Fri." in bot.text(COACH)
        bot.no_turn_failed()
