"""Pain: kept whatever else is wrong, the coach told at once, urgent signs answered first, the morning after asked."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice


async def test_pain_beside_a_set_keeps_both(practice: Practice) -> None:
    """The set counts, the exercise is held, the coach hears in the same minute with the client's words."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 but a sharp pain in my left knee 4/10", after_min=5)
    assert "1. done: 60 kg × 5" in practice.card().words.text
    assert "On hold" in practice.card().words.text
    alert = stage.expect(COACH, "PAIN: Ada", within=1).words.text
    assert "left knee, 4 of 10" in alert
    assert "sharp pain in my left knee" in alert
    mine = stage.expect(ADA, "left knee").words.text
    assert "no heavier" in mine
    assert "see a doctor" in mine


async def test_the_score_is_asked_and_brings_the_alert_up_to_date(practice: Practice) -> None:
    """One alert for the coach, not two."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "my right shoulder hurts", after_min=5)
    await stage.tap(ADA, "7")
    alerts = [m for m in stage.seat(COACH).messages() if "PAIN: Ada" in m.words.text]
    assert len(alerts) == 1
    assert "right shoulder, 7 of 10" in alerts[0].words.text
    stage.expect(ADA, "That is a lot")


async def test_urgent_signs_are_answered_first_with_the_number(practice: Practice) -> None:
    """Stop, get help, the emergency number that the operator set; never a diagnosis; the coach told at once."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 then pressure on my chest and I can't catch my breath", after_min=5)
    words = stage.expect(ADA, "Stop training now").words.text
    assert words.startswith("Stop training now. This can be serious: call 112")
    assert "112" in words
    stage.expect(COACH, "URGENT: Ada", within=1)


async def test_an_urgent_sign_is_not_taken_back_by_what_stands_beside_it(practice: Practice) -> None:
    """A faint without pain is a faint; the set before it is kept."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5. i fainted. no pain though", after_min=5)
    assert stage.expect(ADA, "Stop training now").words.text.startswith("Stop training now.")
    stage.expect(COACH, "URGENT: Ada", within=1)
    assert "1. done: 60 kg × 5" in practice.card().words.text


async def test_urgent_by_the_button(practice: Practice) -> None:
    """Two taps, no typing."""
    stage = practice.stage
    await practice.monday()
    await stage.tap(ADA, "It hurts")
    await stage.tap(ADA, "One of these")
    stage.expect(ADA, "Stop training now")
    stage.expect(COACH, "URGENT: Ada")


async def test_after_the_button_whatever_is_typed_counts_as_pain(practice: Practice) -> None:
    """Even words that no reader of pain would know; and a slip of the thumb keeps nothing."""
    stage = practice.stage
    await practice.monday()
    await stage.tap(ADA, "It hurts")
    await stage.tap(ADA, "Nothing hurts")
    assert not any("PAIN" in m.words.text for m in stage.seat(COACH).messages())
    await stage.tap(ADA, "It hurts")
    await stage.say(ADA, "the thingy above my hip, meh")
    assert "thingy above my hip" in stage.expect(COACH, "PAIN: Ada").words.text


async def test_the_morning_after_is_asked_until_it_is_gone(practice: Practice) -> None:
    """The same: asked again next morning; gone: the hold is lifted and nothing more is asked."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 left knee hurts 4/10", after_min=5)
    await stage.until(ADA, "2027-01-12 09:00")
    stage.expect(ADA, "How is it now", within=1)
    await stage.tap(ADA, "The same")
    stage.expect(COACH, "the same")
    await stage.until(ADA, "2027-01-13 09:00")
    stage.expect(ADA, "How is it now", within=1)
    await stage.tap(ADA, "Gone")
    stage.expect(COACH, "the hold is lifted")
    count = len(stage.seat(ADA).messages())
    await stage.until(ADA, "2027-01-14 17:00")
    assert len(stage.seat(ADA).messages()) == count


async def test_worse_the_morning_after_alerts_the_coach(practice: Practice) -> None:
    """At once, and the client is sent to a doctor."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 left knee hurts 4/10", after_min=5)
    await stage.until(ADA, "2027-01-12 09:00")
    await stage.tap(ADA, "Worse")
    stage.expect(COACH, "WORSE", within=1)
    stage.expect(ADA, "looked at by a doctor")


async def test_a_held_exercise_does_not_go_up_until_the_coach_lets_it(practice: Practice) -> None:
    """With easy sets that would earn more: held, the next load is not above the last."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x6 4 left", after_min=5)
    await stage.say(ADA, "squat gives my left knee a twinge 2/10", after_min=1)
    await stage.say(ADA, "50: 10 10", after_min=6)
    told = stage.expect(ADA, "Back squat, next time").words.text
    load = float(told.split("next time: ")[1].split(" kg")[0])
    assert load <= 60
    await stage.tap(COACH, "Open Ada")
    await stage.tap(COACH, "Lift hold: Back squat")
    await stage.say(COACH, "/clients")
    await stage.tap(COACH, "Open Ada")
    assert "On hold" not in practice.text(COACH)


async def test_pain_without_a_session_counts_too(practice: Practice) -> None:
    """On a rest day, in a message that holds no report."""
    stage = practice.stage
    await stage.say(ADA, "woke up and my lower back really hurts")
    assert "lower back" in stage.expect(COACH, "PAIN: Ada").words.text


async def test_hyperbole_is_not_pain(practice: Practice) -> None:
    """A hard session is not an alarm."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "that killed me lol, brutal session")
    assert not any("PAIN" in m.words.text for m in stage.seat(COACH).messages())


async def test_after_an_urgent_sign_sessions_wait_for_the_coach(practice: Practice) -> None:
    """The card loses its buttons, no score is asked, no session comes, and only the coach can let it go on."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "my chest feels tight and I nearly passed out")
    words = stage.expect(ADA, "Stop training now").words.text
    assert "How bad is it" not in words
    assert not practice.labels(practice.card())
    await stage.until(ADA, "2027-01-15 08:00")
    assert sum("· about" in m.words.text for m in stage.seat(ADA).messages()) == 1
    await stage.say(COACH, "/digest")
    assert "URGENT" in practice.text(COACH)
    await stage.tap(COACH, "Start sessions of Ada")
    await stage.until(ADA, "2027-01-18 18:00")
    assert "Mon 18 Jan" in stage.expect(ADA, "Set 0 of 11").words.text


async def test_the_exercise_that_is_named_is_the_one_that_is_held(practice: Practice) -> None:
    """Not the one that was reported last."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5, 50x9, 50x8", after_min=8)
    await stage.say(ADA, "bench hurts my wrist when I press, 6/10")
    assert "During: Dumbbell bench press" in stage.expect(COACH, "PAIN: Ada").words.text


async def test_the_score_may_be_typed(practice: Practice) -> None:
    """As the very next message; a set after that is a set."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 my left knee hurts", after_min=5)
    await stage.say(ADA, "about a 3")
    assert "left knee, 3 of 10" in stage.expect(COACH, "PAIN: Ada").words.text
    await stage.say(ADA, "9")
    assert "2. done" in practice.card().words.text


async def test_the_morning_may_be_answered_in_words(practice: Practice) -> None:
    """Gone is gone, whoever types it."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 left knee hurts 4/10", after_min=5)
    await stage.until(ADA, "2027-01-12 09:00")
    await stage.say(ADA, "no more pain, all gone")
    stage.expect(COACH, "the hold is lifted")
