"""What waits for the coach's answer, and messages to several or to all."""

from tests.talks.wireless import ADA, BO, COACH, DANA, OTHER_COACH, Wired

MONDAY = "2027-01-11 18:05"


def test_unread_questions_wait_until_they_are_answered(wired: Wired) -> None:
    """The oldest first, by name; a reply answers them, and so does the button."""
    with wired.bot(MONDAY) as bot:
        bot.say(COACH, "/inbox")
        assert bot.text(COACH) == "Nothing waits for your answer."
        bot.say(BO, "should I use a belt?")
        bot.wait(3)
        bot.say(ADA, "can I swap the days next week?")
        bot.say(COACH, "/inbox")
        words = bot.text(COACH)
        assert words.startswith("2 messages wait for you")
        assert words.index("Bo, Mon 11 Jan 17:05: should I use a belt?") < words.index("Ada, Mon 11 Jan 17:08")
        bot.tap(COACH, "Reply to Bo")
        bot.say(COACH, "Not yet.")
        assert "Not yet." in bot.text(BO)
        bot.tap(COACH, "Answered: Ada")
        bot.say(COACH, "/inbox")
        assert bot.text(COACH) == "Nothing waits for your answer."
        bot.no_turn_failed()


def test_a_message_to_all_is_confirmed_with_its_count(wired: Wired) -> None:
    """Everyone of the coach's gets it once; nobody else does; what they had asked still waits."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "should I use a belt?")
        others = {who: len(bot.screen(who)) for who in (DANA, OTHER_COACH)}
        bot.say(COACH, "The gym is closed on Friday.")
        bot.tap(COACH, "All 2")
        assert "Send it to all 2 clients?" in bot.text(COACH)
        before = {who: len(bot.screen(who)) for who in (ADA, BO)}
        bot.tap(COACH, "Yes, to all 2")
        assert bot.text(COACH) == "Sent to 2 clients."
        for who, count in before.items():
            assert len(bot.screen(who)) == count + 2, "the coach's name, and the message"
            assert bot.screen(who)[-1].relayed
        assert {who: len(bot.screen(who)) for who in others} == others
        bot.say(COACH, "/inbox")
        assert "belt" in bot.text(COACH)
        bot.no_turn_failed()


def test_a_message_to_several_goes_to_those_chosen(wired: Wired) -> None:
    """A tap chooses, another one leaves out."""
    with wired.bot(MONDAY) as bot:
        bot.say(COACH, "Bring long socks.")
        bot.tap(COACH, "Several…")
        bot.tap(COACH, "Ada")
        bot.tap(COACH, "Bo")
        bot.tap(COACH, "✓ Ada")
        before = len(bot.screen(ADA))
        bot.tap(COACH, "Send to one")
        assert bot.text(COACH) == "Sent to one client."
        assert bot.screen(BO)[-1].relayed
        assert len(bot.screen(ADA)) == before


def test_a_second_tap_sends_nothing_twice(wired: Wired) -> None:
    """The message is gone from the line."""
    with wired.bot(MONDAY) as bot:
        bot.say(COACH, "Bring long socks.")
        bot.tap(COACH, "All 2")
        data = next(d for label, d in bot.buttons(COACH) if label == "Yes, to all 2")
        bot.tap_data(COACH, data)
        count = len(bot.screen(ADA))
        assert "older message" in bot.tap_data(COACH, data)
        assert len(bot.screen(ADA)) == count


def test_at_night_nobody_is_woken_by_what_can_wait(wired: Wired) -> None:
    """The coach's words and a client's reach each other without a sound while the reader sleeps."""
    with wired.bot("2027-01-12 02:00") as bot:
        bot.say(ADA, "should I use a belt?")
        assert bot.screen(COACH)[-1].silent
        bot.tap(COACH, "Reply to Ada")
        bot.say(COACH, "Not yet.")
        assert bot.screen(ADA)[-1].silent
        bot.until(bot.wall("Europe/Berlin", "2027-01-12 12:00"))
        bot.tap(COACH, "Reply to Ada")
        bot.say(COACH, "Sleep well?")
        assert not bot.screen(ADA)[-1].silent
