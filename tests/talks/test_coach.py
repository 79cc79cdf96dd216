"""The coach's day: digest, replies both ways, everyone at a glance, alerts handled, nobody else's clients."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice

PNG = bytes.fromhex(
    "89504e470d0a1a0a0000000d4948445200000002000000020802000000fdd49a730000001049444154789c63f8cfc0f01f8c19600c003fee07f99d2c0bb10000000049454e44ae426082"
)


async def test_a_quiet_digest_is_one_line_without_a_sound(practice: Practice) -> None:
    """Nothing happened, nothing rings."""
    await practice.stage.until(COACH, "2027-01-11 07:00")
    message = practice.stage.expect(COACH, "A quiet day", within=1)
    assert message.silent


async def test_the_digest_orders_pain_then_missed_then_unread_then_off_plan_then_done(practice: Practice) -> None:
    """What needs the coach comes first; each client who does has a button."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 left knee hurts 3/10", after_min=5)
    await stage.say(ADA, "should I use a belt?")
    await stage.say(ADA, "that's me done", after_min=5)
    await stage.until(ADA, "2027-01-14 21:00")
    await stage.until(COACH, "2027-01-15 07:00")
    await stage.say(COACH, "/digest")
    words = practice.text(COACH)
    places = [words.find(section) for section in ("PAIN", "MISSED", "UNREAD")]
    assert -1 not in places
    assert places == sorted(places)
    await stage.tap(COACH, "Open Ada")
    page = practice.text(COACH)
    for wanted in ("left knee", "should I use a belt", "On hold"):
        assert wanted in page


async def test_a_question_goes_up_and_the_answer_comes_down_and_back(practice: Practice) -> None:
    """By the button, by replying, and the client's reply to the answer reaches the coach again."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "how deep should I squat?")
    stage.expect(COACH, "how deep")
    await stage.tap(COACH, "Reply to Ada")
    await stage.say(COACH, "As deep as you stay braced.")
    answer = stage.expect(ADA, "As deep as you stay braced.")
    await stage.say(ADA, "got it, will film the next one", reply_to=answer.id)
    back = stage.expect(COACH, "will film the next one")
    await stage.say(COACH, "Good.", reply_to=back.id)
    stage.expect(ADA, "Good.", within=2)


async def test_an_unaddressed_message_of_the_coach_is_never_guessed(practice: Practice) -> None:
    """It goes to nobody until a name is tapped."""
    stage = practice.stage
    before = len(stage.seat(ADA).messages())
    await stage.say(COACH, "Remember to sleep.")
    assert len(stage.seat(ADA).messages()) == before
    await stage.tap(COACH, "Send to Ada")
    stage.expect(ADA, "Remember to sleep.", within=2)


async def test_a_picture_reaches_the_coach_with_the_name_above(practice: Practice) -> None:
    """Media go as they are; the answer to them comes back."""
    stage = practice.stage
    await practice.monday()
    stage.seat(ADA).send("photo", PNG, name="form.png", caption="is this deep enough?")
    await stage.settle()
    stage.expect(COACH, "Ada sends")
    copied = next(m for m in reversed(stage.seat(COACH).messages()) if m.media)
    await stage.say(COACH, "Yes, it is.", reply_to=copied.id)
    stage.expect(ADA, "Yes, it is.", within=2)


async def test_clients_shows_everyone(practice: Practice) -> None:
    """Last session, adherence, next day."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await stage.say(COACH, "/clients")
    words = practice.text(COACH)
    assert "One client" in words
    assert "last: Mon 11 Jan" in words
    assert "next Thu 14 Jan" in words


async def test_a_handled_alert_loses_its_buttons(practice: Practice) -> None:
    """And says who handled it and when."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "my left knee hurts 4/10", after_min=5)
    await stage.tap(COACH, "Handled: pain of Ada")
    alert = next(m for m in stage.seat(COACH).messages() if "PAIN: Ada" in m.words.text)
    assert not practice.labels(alert)
    stage.expect(COACH, "Handled: Ada", within=1)


async def test_a_blocked_client_is_told_to_the_coach_and_comes_back(practice: Practice) -> None:
    """The session can't be sent; nothing stops; unblocking, all goes on."""
    stage = practice.stage
    stage.seat(ADA).block()
    await stage.settle()
    await stage.say(COACH, "/clients")
    assert "can't be reached" in practice.text(COACH)
    await practice.monday()
    stage.seat(ADA).unblock()
    await stage.settle()
    await stage.say(ADA, "/today")
    stage.expect(ADA, "Squat and press")


async def test_a_client_opens_in_the_place_of_the_digest_and_gives_it_back(practice: Practice) -> None:
    """No message more; back shows the digest as it stands now."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 left knee hurts 3/10", after_min=5)
    await stage.say(COACH, "/digest")
    count = len(stage.seat(COACH).messages())
    place = stage.seat(COACH).last().id
    await stage.tap(COACH, "Open Ada")
    assert "It is" in stage.seat(COACH).message(place).words.text
    await stage.tap(COACH, "Back to the digest")
    assert "Digest" in stage.seat(COACH).message(place).words.text
    await stage.say(COACH, "/clients")
    await stage.tap(COACH, "Open Ada")
    await stage.tap(COACH, "Back to everyone")
    assert "One client" in practice.text(COACH)
    assert len(stage.seat(COACH).messages()) == count + 2
