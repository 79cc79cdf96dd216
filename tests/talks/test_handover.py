"""A client handed over to a colleague with the client's yes; and the record of what was changed."""

from tests.talks.wireless import ADA, COACH, DANA, OTHER_COACH, Wired, Wireless

MONDAY = "2027-01-11 18:05"


def link_of(bot: Wireless, coach: int) -> str:
    """A colleague's invitation."""
    bot.say(coach, "/invite")
    return next(word for word in bot.text(coach).split() if "start=" in word)


def offered(bot: Wireless) -> None:
    """Maren asks Ada whether to go on with a colleague."""
    link = link_of(bot, OTHER_COACH)
    bot.say(COACH, "/clients")
    bot.tap(COACH, "Open Ada")
    bot.tap(COACH, "Hand over")
    bot.say(COACH, link)


def test_nothing_changes_before_the_clients_yes(wired: Wired) -> None:
    """The colleague sees nothing; a no leaves all as it was."""
    with wired.bot(MONDAY) as bot:
        offered(bot)
        assert "Until there is a yes" in bot.text(COACH)
        bot.say(OTHER_COACH, "/clients")
        assert "Ada" not in bot.text(OTHER_COACH)
        bot.tap(ADA, "No, stay with")
        assert "stays with you" in bot.text(COACH)
        bot.say(COACH, "/clients")
        assert "Ada" in bot.text(COACH)
        bot.no_turn_failed()


def test_with_a_yes_the_record_goes_along(wired: Wired) -> None:
    """The colleague has programme, sessions and what waits; the coach before sees nothing more; notes stay behind."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "Notes")
        bot.tap(COACH, "New note")
        bot.say(COACH, "Talks a lot.")
        offered(bot)
        page = next(d for label, d in reversed(bot.buttons(COACH)) if label == "Lifts and loads")
        bot.tap(ADA, "Yes, go on with")
        assert "Ada is your client now" in bot.text(OTHER_COACH)
        bot.tap(OTHER_COACH, "Open Ada")
        assert "Two short days" in bot.text(OTHER_COACH)
        assert "Talks a lot" not in bot.text(OTHER_COACH)
        assert bot.tap_data(COACH, page) == "Not available."
        bot.say(COACH, "/clients")
        assert "Ada" not in bot.text(COACH)
        bot.say(ADA, "left knee hurts")
        assert any("Ada" in s.text and "PAIN" in s.text for s in bot.screen(OTHER_COACH))
        assert not any("left knee" in s.text for s in bot.screen(COACH))
        bot.no_turn_failed()


def test_only_an_open_invitation_of_a_colleague_counts(wired: Wired) -> None:
    """One's own, a used one, an invented one: nothing happens."""
    with wired.bot(MONDAY) as bot:
        own = link_of(bot, COACH)
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "Hand over")
        facts = bot.facts_count()
        for words in (own, "https://t.me/chalk_bot?start=cnothing", "Rikke"):
            bot.say(COACH, words)
            assert "no open invitation of a colleague" in bot.text(COACH)
        assert bot.facts_count() == facts


def test_the_answer_is_the_clients_alone(wired: Wired) -> None:
    """Replayed by anybody else, and a second time, it does nothing."""
    with wired.bot(MONDAY) as bot:
        offered(bot)
        yes = next(d for label, d in bot.buttons(ADA) if label.startswith("Yes, go on"))
        facts = bot.facts_count()
        for who in (COACH, OTHER_COACH, DANA):
            bot.tap_data(who, yes)
        assert bot.facts_count() == facts
        bot.tap_data(ADA, yes)
        assert bot.facts_count() == facts + 1
        assert "older message" in bot.tap_data(ADA, yes)


def test_the_record_of_changes_says_who_when_from_what_to_what_and_why(wired: Wired) -> None:
    """The coach's orders, and what the engine moved, with the set that it followed from."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "squat 60x6 5 left")
        bot.wait(6)
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))
        bot.say(ADA, "romanian deadlift 60x8")
        bot.wait(6)
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 18:05"))
        bot.say(COACH, "/clients")
        bot.tap(COACH, "Open Ada")
        bot.tap(COACH, "Plan settings")
        bot.tap(COACH, "At most 5 %")
        bot.tap(COACH, "Back to Ada")
        bot.tap(COACH, "What was changed")
        words = bot.text(COACH)
        assert "Maren: loads rise by themselves, at most 5 % a step" in words
        assert "by the clock: Back squat: first load" in words
        assert "after 60 kg x 6, 5 left, 2027-01-11" in words
        assert "programme “Two short days”" in words
