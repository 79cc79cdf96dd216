"""Missed sessions, moved ones, late ones, the week's sum."""

from bot.tryout.practice.people import ADA, BO, COACH
from tests.talks.practice import Practice


async def test_a_missed_session_is_asked_about_once_and_the_coach_is_told(practice: Practice) -> None:
    """At the cut-off, not before, and not again."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-11 20:59")
    assert not any("MISSED" in m.words.text for m in stage.seat(COACH).messages())
    await stage.until(ADA, "2027-01-11 21:00")
    stage.expect(ADA, "is not reported today", within=1)
    stage.expect(COACH, "MISSED: Ada", within=1)
    await stage.until(ADA, "2027-01-13 12:00")
    assert sum("is not reported" in m.words.text for m in stage.seat(ADA).messages()) == 1


async def test_a_missed_session_moves_and_comes_again(practice: Practice) -> None:
    """On the day chosen at the client's hour, once, with the same plan; the coach sees where it went."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-11 21:00")
    await stage.tap(ADA, "Move to Tue 12 Jan")
    stage.expect(COACH, "moves Squat and press to Tue 12 Jan")
    await stage.until(ADA, "2027-01-12 18:00")
    assert "Tue 12 Jan" in practice.card().words.text
    await stage.say(ADA, "60x5", after_min=5)
    assert "1. done: 60 kg × 5" in practice.card().words.text


async def test_they_did_it_after_all(practice: Practice) -> None:
    """The card comes again and takes the report."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-11 21:00")
    await stage.tap(ADA, "I did it")
    await stage.say(ADA, "60x5, 50x9, 50x9")
    assert "60 kg × 5" in practice.card().words.text


async def test_a_skipped_day_goes_on_with_the_next_workout(practice: Practice) -> None:
    """No guilt, and Thursday brings the second workout."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-11 21:00")
    await stage.tap(ADA, "Skip it")
    stage.expect(ADA, "changes nothing", within=1)
    await stage.until(ADA, "2027-01-14 18:00")
    stage.expect(ADA, "Hinge and pull")


async def test_a_session_left_open_is_closed_at_the_cutoff(practice: Practice) -> None:
    """What was reported counts; the effort is asked; nobody is told of a miss."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.until(ADA, "2027-01-11 21:00")
    stage.expect(ADA, "How hard was the whole session", within=1)
    assert not any("MISSED" in m.words.text for m in stage.seat(COACH).messages())


async def test_the_week_comes_as_a_picture_and_the_same_in_words(practice: Practice) -> None:
    """On the last training day, with hard sets counted directly and indirectly."""
    stage = practice.stage
    await practice.monday()
    for text in ("60x5", "50x9", "50x8", "bench 18x10", "row 40x10", "bench 18x9", "row 40x9"):
        await stage.say(ADA, text, after_min=3)
    await stage.until(ADA, "2027-01-14 21:15")
    pictures = [m for m in stage.seat(ADA).messages() if m.by_bot and m.media]
    assert len(pictures) == 1
    words = stage.expect(ADA, "Hard sets by muscle").words.text
    for wanted in ("quadriceps: 3 of", "chest: 2 of 2", "biceps: 1 of", "triceps: 1 of", "Sessions: 1 of 2"):
        assert wanted in words
    assert "60 kg × 5" in words


async def test_a_report_after_the_end_opens_the_session_again(practice: Practice) -> None:
    """A set remembered in the shower still counts."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await stage.say(ADA, "50x9", after_min=5)
    assert "2. done: 50 kg × 9" in practice.card().words.text


async def test_today_asks_for_nothing_on_a_rest_day_but_starts_on_request(practice: Practice) -> None:
    """/today on Tuesday names the next day; the button starts the next workout all the same."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-11 21:00")
    await stage.tap(ADA, "Skip it")
    await stage.until(ADA, "2027-01-12 10:00")
    await stage.say(ADA, "/today")
    stage.expect(ADA, "Thu 14 Jan", within=1)
    await stage.tap(ADA, "Start a session now")
    assert "Hinge and pull" in practice.card().words.text


async def test_a_miss_far_away_does_not_wake_the_coach(practice: Practice) -> None:
    """Nine in the evening in New York is two in the morning in Dublin: the coach is told, without a sound."""
    stage = practice.stage
    await practice.joins(BO, "Bo", "lb", "America/New_York", "tue fri 06:30")
    await practice.given("Bo")
    await stage.until(BO, "2027-01-12 21:00")
    assert stage.expect(COACH, "MISSED: Bo", within=1).silent
