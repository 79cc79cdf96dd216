"""Looking back: pictures with their words, a client's page, past sessions, a client's own lifts."""

import copy
import re
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

import storage.facts
import storage.people
from bot.pictures import draw
from bot.saying import AttendanceChart, MusclesChart, StrengthChart
from bot.training.attendance import DayMark
from bot.training.facts import ProgrammeAssigned
from bot.training.people import MuscleTarget
from storage.engine import Store
from storage.facts import Origin
from storage.keyring import Keyring
from storage.plans import programme_of
from tests.talks.wireless import ADA, BEGINS, BO, COACH, Shown, Wired, Wireless, life, practice

ZONE = "Europe/Berlin"
MONDAYS = ("2027-01-11", "2027-01-18", "2027-01-25", "2027-02-01")
LATER = ("2027-03-08", "2027-03-15")


Lives = Callable[[], AbstractContextManager[Wireless]]
"""Begins a life after the months; nothing of it stays."""


@pytest.fixture(scope="module")
def months(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lives]:
    """Ada squats on four Mondays and pulls on the Thursdays, is away for a month, squats on two more Mondays and leaves
    the Thursday between."""
    store = Store.open(f"sqlite:///{tmp_path_factory.mktemp('months')}/store.db", Keyring.of(bytes(range(32))))
    store.migrate()
    with store.begin() as work:
        bot = Wireless(work, BEGINS)
        practice(bot)
        for n, monday in enumerate(MONDAYS):
            squats(bot, monday, kg=60 + n)
            pulls(bot, monday)
        bot.say(ADA, "/settings")
        bot.tap(ADA, "Pause")
        bot.until(bot.wall(ZONE, f"{LATER[0]} 12:00"))
        bot.tap(ADA, "Go on")
        for n, monday in enumerate(LATER):
            squats(bot, monday, kg=64 + n)
            if monday != LATER[-1]:
                pulls(bot, monday)
        bot.no_turn_failed()
        now, screens = bot.now, bot.screens

    @contextmanager
    def again() -> Iterator[Wireless]:
        with life(store, now) as bot:
            bot.screens = copy.deepcopy(screens)
            yield bot
            bot.no_turn_failed()

    yield again
    store.close()


@pytest.fixture
def bot(months: Lives) -> Iterator[Wireless]:
    """The bot on the evening of the last Monday."""
    with months() as bot:
        yield bot


def squats(bot: Wireless, day: str, *, kg: float) -> None:
    """A Monday on which Ada squats, and does nothing else."""
    bot.until(bot.wall(ZONE, f"{day} 18:05"))
    bot.say(ADA, f"back squat {kg:g}x6 2 left")
    bot.wait(5)
    bot.say(ADA, f"back squat {kg - 10:g}: 9 9")
    bot.wait(5)
    bot.say(ADA, "that's me done")


def pulls(bot: Wireless, monday: str) -> None:
    """The Thursday after it."""
    day = date.fromisoformat(monday) + timedelta(days=3)
    bot.until(bot.wall(ZONE, f"{day} 18:05"))
    bot.say(ADA, "romanian deadlift 60x8 2 left")
    bot.wait(5)
    bot.say(ADA, "that's me done")


def opened(bot: Wireless) -> Shown:
    """Ada's page on the coach's screen."""
    bot.say(COACH, "/clients")
    bot.tap(COACH, "Open Ada")
    return bot.screen(COACH)[-1]


def newest(bot: Wireless, who: int) -> Shown:
    return bot.screen(who)[-1]


def test_a_lifts_strength_as_a_picture_with_its_words(bot: Wireless) -> None:
    """The client's page asks which lift; the picture holds the estimates with their band, the sets, the break."""
    opened(bot)
    bot.tap(COACH, "Picture: strength")
    assert "strength of which lift" in bot.text(COACH)
    assert [label for label, _ in newest(bot, COACH).data] == ["Back squat", "Romanian deadlift", "Back to Ada"]
    bot.tap(COACH, "Back squat")
    shown = newest(bot, COACH)
    chart = shown.picture
    assert isinstance(chart, StrengthChart)
    assert [p.day.isoformat() for p in chart.points] == [*MONDAYS, *LATER]
    assert all(p.least < p.mean < p.most for p in chart.points)
    assert [(s.load, s.reps, s.sets) for s in chart.sets if s.day == date(2027, 1, 11)] == [
        (Decimal(60), 6, 1),
        (Decimal(50), 9, 2),
    ]
    assert "No sets between Mon 1 Feb and Mon 8 Mar" in shown.text
    assert "18 sets, the heaviest 65 kg × 6 on Mon 15 Mar" in shown.text
    assert draw(chart).startswith(b"\x89PNG")


def test_the_picture_says_what_the_exercises_page_says(bot: Wireless) -> None:
    """The last estimate, worked out from the sessions, is the one that is kept; the page has the button as well."""
    opened(bot)
    bot.tap(COACH, "Lifts and loads")
    bot.tap(COACH, "Back squat")
    told = next(row for row in bot.text(COACH).splitlines() if row.startswith("One-repetition maximum about"))
    bot.tap(COACH, "Picture: strength")
    words = bot.text(COACH)
    about, _, between = told.removesuffix(".").partition("; ")
    assert about.removesuffix(" kg") in words
    assert between.removesuffix(" kg") in words


def test_sets_by_muscle_against_the_coachs_targets(bot: Wireless) -> None:
    """Six weeks, this one last; muscles with a target first; the words say the same."""
    row = storage.people.at_chat(bot.work, ADA)
    assert row is not None
    programme = programme_of(bot.work, row.snapshot)
    assert programme is not None
    aimed = replace(programme, targets=(MuscleTarget("quadriceps", 4, 8), MuscleTarget("neck", 2, 2)))
    storage.facts.keep(bot.work, ProgrammeAssigned(row.id, aimed), Origin(f"chat:{COACH}", bot.now, "t1"))
    page = opened(bot).text
    assert "Hard sets this week, of your targets: quadriceps 3 of 4–8, neck 0 of 2" in page
    bot.tap(COACH, "Sets by muscle")
    shown = newest(bot, COACH)
    chart = shown.picture
    assert isinstance(chart, MusclesChart)
    assert (len(chart.mondays), chart.mondays[-1].isoformat()) == (6, LATER[-1])
    quads, neck = chart.muscles[:2]
    assert (quads.muscle, quads.low, quads.high) == ("quadriceps", 4, 8)
    assert quads.done == tuple(map(Decimal, (0, 0, 0, 0, 3, 3)))
    assert neck.done == (Decimal(0),) * 6
    assert "quadriceps: 0, 0, 0, 0, 3; so far 3, target 4–8" in shown.text
    assert draw(chart).startswith(b"\x89PNG")


def test_attendance_day_by_day(bot: Wireless) -> None:
    """Squats alone are a session in part; the Thursday that nobody reported is missed; a pause is rest."""
    opened(bot)
    bot.tap(COACH, "Attendance")
    assert "To come: Thu 18 Mar" in bot.text(COACH)
    bot.until(bot.wall(ZONE, "2027-03-19 12:00"))
    page = opened(bot).text
    assert "Four weeks: 3 of 4 sessions done" in page
    bot.tap(COACH, "Attendance")
    shown = newest(bot, COACH)
    chart = shown.picture
    assert isinstance(chart, AttendanceChart)
    assert (chart.first.weekday(), len(chart.marks)) == (0, 84)
    mondays, thursdays = chart.marks[::7], chart.marks[3::7]
    partly, missed, rest = DayMark.PARTLY, DayMark.MISSED, DayMark.REST
    assert mondays == (rest, rest, *[partly] * 4, *[rest] * 4, partly, partly)
    assert thursdays == (rest, rest, *[partly] * 4, *[rest] * 4, partly, missed)
    assert set(chart.marks[1::7]) == {rest}
    assert "Done: 11 of 12" in shown.text
    assert "Missed: 1 (Thu 18 Mar)" in shown.text
    assert draw(chart).startswith(b"\x89PNG")


def test_past_sessions_open_with_what_was_done_beside_what_was_planned(bot: Wireless) -> None:
    """The last three days with sets have a button each."""
    labels = [label for label, _ in opened(bot).data]
    assert [d for d in labels if d.endswith(" Mar")] == ["Mon 15 Mar", "Thu 11 Mar", "Mon 8 Mar"]
    bot.tap(COACH, "Mon 8 Mar")
    words = bot.text(COACH)
    assert "Ada: Squat and press, Mon 8 Mar" in words
    assert re.search(r"^1\. 60 kg × 4–6, \d in reserve → 64 kg × 6, 2 left$", words, re.MULTILINE)
    assert "→ left out" in words


def test_the_page_tells_of_pain_and_how_it_ended_and_of_the_equipment(wired: Wired) -> None:
    """The last five, with their days; what is open says so."""
    with wired.bot("2027-01-11 18:05") as bot:
        bot.say(ADA, "60x6 2 left")
        bot.say(ADA, "left knee hurts 4/10")
        bot.until(bot.wall(ZONE, "2027-01-12 12:00"))
        bot.tap(ADA, "Gone")
        bot.say(ADA, "my right shoulder hurts 3/10")
        page = opened(bot).text
        assert "Mon 11 Jan pain: left knee, 4 of 10 (Back squat): gone, Tue 12 Jan" in page
        assert "Tue 12 Jan pain: right shoulder, 3 of 10" in page
        assert page.index("right shoulder, 3 of 10") > 0
        assert ": open" in page
        assert "Equipment (kg): bar 20, smallest plate 1.25, dumbbells 2–50 by 2, stack 5–120 by 5" in page


def test_a_moved_session_leaves_an_arrow_behind(wired: Wired) -> None:
    """The day that it left is marked; the day that it went to shows what became of it."""
    with wired.bot("2027-01-12 12:00") as bot:
        bot.tap(ADA, "Move to")
        bot.until(bot.wall(ZONE, "2027-01-20 12:00"))
        opened(bot)
        bot.tap(COACH, "Attendance")
        chart = newest(bot, COACH).picture
        assert isinstance(chart, AttendanceChart)
        week = chart.marks[-14:-7]
        assert week[0] is DayMark.MOVED
        assert DayMark.MISSED in week[1:3]
        assert "Moved to another day: 1 (Mon 11 Jan)" in bot.text(COACH)


def test_where_nothing_was_done_there_is_nothing_to_draw(wired: Wired) -> None:
    """No empty picture; a word for a moment. No past session has a button."""
    with wired.bot() as bot:
        assert not [label for label, _ in opened(bot).data if label.startswith("Mon ")]
        before = len(bot.screen(COACH))
        assert bot.tap(COACH, "Sets by muscle") == "Nothing to draw yet"
        assert bot.tap(COACH, "Attendance") == "Nothing to draw yet"
        bot.tap(COACH, "Picture: strength")
        assert "has done no lift" in bot.text(COACH)
        assert len(bot.screen(COACH)) == before
        bot.no_turn_failed()


def test_a_client_sees_their_own_lifts_and_a_picture_of_each(bot: Wireless) -> None:
    """From the week's words: a line a lift with the estimate and the next load; the picture has no name in it."""
    bot.say(ADA, "/week")
    bot.tap(ADA, "My lifts")
    words = bot.text(ADA)
    assert "Your lifts" in words
    assert "Back squat: about " in words
    assert "for a single repetition, next " in words
    assert "Leg curl: not done yet" in words
    assert "Plank" not in words
    bot.tap(ADA, "Picture: Back squat")
    shown = newest(bot, ADA)
    assert isinstance(shown.picture, StrengthChart)
    assert shown.picture.whose == ""
    assert shown.text.startswith("Back squat, Mon 11 Jan to Mon 15 Mar")


def test_loads_that_wait_for_the_coachs_yes_are_not_told_before_it(wired: Wired) -> None:
    with wired.bot() as bot:
        squats(bot, MONDAYS[0], kg=60)
        opened(bot)
        bot.tap(COACH, "Plan settings")
        bot.tap(COACH, "Ask me first")
        bot.say(ADA, "/week")
        bot.tap(ADA, "My lifts")
        assert "Back squat" in bot.text(ADA)
        assert "next" not in bot.text(ADA)


def test_buttons_of_a_programme_that_has_changed_are_old(bot: Wireless) -> None:
    """The number on a button still has to mean what it said; other clients' are about their own lifts."""
    row = storage.people.at_chat(bot.work, ADA)
    assert row is not None
    stale = f"1:c.curve:{row.id}:0:beef"
    assert "screen" not in bot.tap_data(COACH, stale)
    before = len(bot.screen(BO))
    bot.tap_data(BO, "1:curve::0:beef")
    bot.tap_data(BO, "1:curve:x")
    bot.tap_data(COACH, f"1:c.past:{row.id}:2027-13-45")
    bot.tap_data(COACH, f"1:c.past:{row.id}")
    assert len(bot.screen(BO)) == before
    bot.no_turn_failed()
