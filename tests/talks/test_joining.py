"""Joining: links, seven questions, stopping and going on, caution, strangers."""

from bot.cli.tryout import Rehearsal
from bot.tryout.practice.people import ADA, BO, CLEO, COACH
from tests.talks.practice import Practice


async def test_a_stranger_gets_one_sentence_and_nothing_else(held: Rehearsal) -> None:
    """Whatever a stranger types, sends or taps, the answer is the same sentence; nothing is learnt."""
    stage = held.stage(lambda _: None)
    seat = stage.seat(BO)
    for text in ("hello", "/start", "/clients", "/today", "60x8", "/help"):
        await stage.say(BO, text)
        assert seat.last().words.text.count("invitation only") == 1
    assert not any(m.inline for m in seat.messages() if m.by_bot)


async def test_a_link_that_was_used_or_made_up_opens_nothing(practice: Practice) -> None:
    """A link is good for one person; a forged one and a used one get the same words."""
    stage = practice.stage
    await stage.say(COACH, "/invite")
    payload = stage.link_payload(COACH)
    await stage.start(BO, payload)
    stage.expect(BO, "1 of 7")
    await stage.start(CLEO, payload)
    used = practice.text(CLEO)
    await stage.start(CLEO, "cforgedforgedforged")
    assert practice.text(CLEO) == used
    assert "used already" in used


async def test_enrolment_stops_and_goes_on_where_it_was(practice: Practice) -> None:
    """/start in the middle asks the open question again; answers given stay given."""
    stage = practice.stage
    await stage.start(BO, await practice.invite())
    for answer in ("yes", "Bo"):
        await stage.say(BO, answer)
    stage.expect(BO, "3 of 7", within=1)
    await stage.start(BO)
    stage.expect(BO, "3 of 7", within=1)
    await stage.say(BO, "/today")
    stage.expect(BO, "3 of 7", within=1)
    await stage.say(BO, "stones")
    stage.expect(BO, "Kilograms or pounds?", within=1)
    await stage.tap(BO, "Pounds")
    stage.expect(BO, "4 of 7")


async def test_without_consent_nothing_goes_on(practice: Practice) -> None:
    """No is an answer; anything but yes keeps the question."""
    stage = practice.stage
    await stage.start(BO, await practice.invite())
    await stage.tap(BO, "No")
    stage.expect(BO, "nothing is kept", within=1)
    await stage.say(BO, "maybe")
    stage.expect(BO, "Without your yes", within=1)
    await stage.start(BO)
    stage.expect(BO, "1 of 7", within=1)


async def test_one_reminder_of_an_unfinished_enrolment(practice: Practice) -> None:
    """A day later once, and never again."""
    stage = practice.stage
    await stage.start(BO, await practice.invite())
    await stage.until(BO, "2027-01-11 12:30")
    stage.expect(BO, "this is the only reminder", within=2)
    count = len(stage.seat(BO).messages())
    await stage.until(BO, "2027-01-20 12:30")
    assert len(stage.seat(BO).messages()) == count


async def test_a_readiness_answer_waits_for_the_coach(practice: Practice) -> None:
    """Caution: off to a doctor, the coach is told at once, and no session goes out before the coach's word."""
    stage = practice.stage
    await stage.start(CLEO, await practice.invite())
    for answer in ("yes", "Cleo", "kg", "Europe/Dublin", "mon wed 12:00"):
        await stage.say(CLEO, answer)
    await stage.tap(CLEO, "An ordinary gym")
    await stage.say(CLEO, "I have a heart murmur")
    stage.expect(CLEO, "talk to a doctor", within=1)
    assert "heart murmur" in stage.expect(COACH, "Readiness").words.text
    await stage.tap(COACH, "Sample programme for Cleo")
    await stage.until(CLEO, "2027-01-11 13:00")
    assert "Squat and press ·" not in stage.seat(CLEO).transcript()
    await stage.tap(COACH, "Start sessions of Cleo")
    await stage.until(CLEO, "2027-01-13 12:00")
    stage.expect(CLEO, "Squat and press")


async def test_settings_change_one_thing(practice: Practice) -> None:
    """Each question can be answered anew; the session then comes at the new hour and not at the old one."""
    stage = practice.stage
    await stage.say(ADA, "/settings")
    await stage.tap(ADA, "Change days")
    await stage.say(ADA, "tue 07:30")
    stage.expect(ADA, "Sessions: Tue at 07:30")
    await stage.until(ADA, "2027-01-11 18:30")
    assert "Squat and press ·" not in stage.seat(ADA).transcript()
    await stage.until(ADA, "2027-01-12 07:30")
    stage.expect(ADA, "Squat and press")


async def test_consent_taken_back_stops_everything(practice: Practice) -> None:
    """Two taps; afterwards nothing is sent, and the coach knows."""
    stage = practice.stage
    await stage.say(ADA, "/settings")
    await stage.tap(ADA, "Take my consent back")
    await stage.tap(ADA, "Yes, stop everything")
    stage.expect(ADA, "nothing more is sent")
    stage.expect(COACH, "withdrawn consent")
    count = len(stage.seat(ADA).messages())
    await stage.until(ADA, "2027-01-15 22:00")
    assert len(stage.seat(ADA).messages()) == count
    await stage.say(ADA, "60x8")
    stage.expect(ADA, "invitation only", within=1)


async def test_a_pause_ends_when_they_go_on(practice: Practice) -> None:
    """Paused, no session comes; going on, the next one does."""
    stage = practice.stage
    await stage.say(ADA, "/settings")
    await stage.tap(ADA, "Pause my sessions")
    await stage.until(ADA, "2027-01-12 09:00")
    assert "Squat and press ·" not in stage.seat(ADA).transcript()
    await stage.tap(ADA, "Go on with my sessions")
    await stage.until(ADA, "2027-01-14 18:00")
    stage.expect(ADA, "Squat and press")
