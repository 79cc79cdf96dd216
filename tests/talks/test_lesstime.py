"""Less time today: typed or by the card's button; what was given for it, the way back, and who hears of it."""

import pytest

from tests.talks.wireless import ADA, COACH, Shown, Wired, Wireless

MONDAY = "2027-01-11 18:05"


def card(bot: Wireless) -> Shown:
    """The newest card."""
    return next(s for s in reversed(bot.screen(ADA)) if "· about" in s.text)


def labels(shown: Shown) -> list[str]:
    """What stands on its buttons."""
    return [label for label, _ in shown.data]


def test_minutes_typed_cut_what_is_left_to_fit(wired: Wired) -> None:
    """Optional work goes first; the card and its minutes follow; a line says what was given; the way back is there."""
    with wired.bot(MONDAY) as bot:
        whole = card(bot).text
        assert "about 31 min" in whole
        bot.say(ADA, "only got 25 min")
        shown = bot.screen(ADA)[-1]
        assert shown.text.startswith("25 min: it fits now, about 2")
        assert "Given for it: Plank, Cable pushdown left out; " in shown.text
        assert "turned into short finishes" in shown.text
        assert labels(shown) == ["Do it all after all"]
        assert "Set 0 of 6 done" in card(bot).text
        assert "about 25 min" in card(bot).text
        assert "Plank" not in card(bot).text
        assert bot.tap(ADA, "Do it all after all") == "The whole session again, about 31 min."
        assert card(bot).text == whole
        assert "Do it all after all" not in labels(card(bot))
        bot.no_turn_failed()


def test_the_button_asks_for_the_minutes(wired: Wired) -> None:
    """Three numbers; nothing is cut before one is tapped; a second choice is cut from the whole again."""
    with wired.bot(MONDAY) as bot:
        before = bot.facts_count()
        bot.tap(ADA, "Less time")
        assert labels(bot.screen(ADA)[-1]) == ["20 min", "30 min", "40 min"]
        assert bot.facts_count() == before
        bot.tap(ADA, "20 min")
        assert "Plank" not in card(bot).text
        bot.tap(ADA, "Less time")
        bot.tap(ADA, "30 min")
        assert "Plank" in card(bot).text
        assert "one set of Cable pushdown left out" in bot.screen(ADA)[-1].text
        bot.say(ADA, "40 min")
        assert "40 min are enough for all that is left" in bot.text(ADA)
        assert "Set 0 of 11 done" in card(bot).text
        bot.no_turn_failed()


def test_what_is_done_stays_whatever_the_minutes(wired: Wired) -> None:
    """Sets in the same message count first; two of three squats stay though the third goes."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.say(ADA, "52.5x9 and only got 8 min")
        assert "60 kg × 5, 2 left, then 52.5 kg × 9" in card(bot).text
        assert "Set 2 of" in card(bot).text
        assert bot.tap(ADA, "Do it all after all").startswith("The whole session again")
        assert "2. done: 52.5 kg × 9" in card(bot).text
        assert "Set 2 of 11 done" in card(bot).text
        bot.no_turn_failed()


def test_too_few_minutes_leave_one_set(wired: Wired) -> None:
    """Not nothing: the first heavy set, and the way back."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "only 3 min")
        assert "3 min are short. Do one set of Back squat" in bot.screen(ADA)[-1].text
        assert "Set 0 of 1 done" in card(bot).text
        bot.say(ADA, "60x5")
        assert "Squat and press: done." in bot.screen(ADA)[-1].text
        bot.tap(ADA, "Do it all after all")
        assert "Set 1 of 11 done" in card(bot).text
        bot.no_turn_failed()


def test_undo_takes_the_cut_back_where_it_came_last(wired: Wired) -> None:
    """And the set before it only after that."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5")
        bot.say(ADA, "10 min")
        bot.say(ADA, "/undo")
        assert "The whole session again" in bot.text(ADA)
        assert "Set 1 of 11 done" in card(bot).text
        bot.say(ADA, "/undo")
        assert "Set 0 of 11 done" in card(bot).text


def test_what_was_cut_and_done_after_all_is_kept_by_a_tap(wired: Wired) -> None:
    """Reported though it was left out: asked about, and then the whole session is back with it."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "10 min")
        assert "Plank" not in card(bot).text
        bot.say(ADA, "plank 45")
        bot.say(ADA, "leg curl 30x12")
        bot.tap(ADA, "Leg curl, after all")
        assert "Leg curl: 30 kg × 12" in card(bot).text
        assert "Set 1 of 11 done" in card(bot).text
        bot.no_turn_failed()


def test_a_doubt_is_settled_before_anything_is_cut(wired: Wired) -> None:
    """The minutes stand on a button meanwhile."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "goblet squat 20x8 and I only have 20 min")
        assert "Set 0 of 11 done" in card(bot).text
        assert any("20 min" in labels(s) for s in bot.screen(ADA))
        bot.tap(ADA, "In place of Back squat")
        assert "1. done: 20 kg × 8" in card(bot).text
        bot.tap(ADA, "20 min")
        assert "Cable pushdown, 1 × 10–12" in card(bot).text


def test_nothing_is_cut_after_an_urgent_sign(wired: Wired) -> None:
    """Whatever else the message says."""
    with wired.bot(MONDAY) as bot:
        before = card(bot).text
        bot.say(ADA, "only 20 min, crushing pressure on my chest and I can't breathe")
        bot.say(ADA, "20 min")
        assert card(bot).text == before


def test_what_hurts_is_neither_paired_nor_dropped(wired: Wired) -> None:
    """An exercise on hold keeps its plain sets."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5, my left knee hurts 4/10")
        bot.say(ADA, "9 min")
        assert "Back squat, " not in bot.screen(ADA)[-1].text.partition("in turn")[0].rpartition(";")[2]
        assert "the last set of Back squat" not in bot.screen(ADA)[-1].text


def test_the_coach_and_the_week_see_what_was_given(wired: Wired) -> None:
    """In the digest beside what was left out; the week's planned sets are those of the plan as it stood in the end."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "only got 20 min")
        bot.say(ADA, "60x5, 50x9, 50x9")
        bot.say(ADA, "that's me done")
        bot.say(COACH, "/digest")
        assert "Ada: only 20 min; " in bot.text(COACH)
        assert "Plank" in bot.text(COACH)
        bot.say(ADA, "/week")
        assert "Given for time: abdominals 1" in bot.text(ADA)
        assert "abdominals: " not in bot.text(ADA)


# --- what comes back later in the week


def thursday(bot: Wireless) -> None:
    """Monday's session without its small work, then Thursday's hour."""
    bot.say(ADA, "only got 20 min")
    bot.say(ADA, "60x5, 50x9, 50x9")
    bot.say(ADA, "that's me done")
    bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))


def test_what_went_for_time_is_offered_back_where_a_later_session_has_room(wired: Wired) -> None:
    """A set more, by a tap; the card has it, the way back stands, the coach reads of it."""
    with wired.bot(MONDAY) as bot:
        bot.tap(ADA, "Less time")
        thursday(bot)
        shown = bot.screen(ADA)[-1]
        assert shown.text.startswith("Earlier this week this went for time: ")
        name = labels(shown)[0].removeprefix("One set more of ")
        before = card(bot).text
        assert "of 12 done" in before
        bot.tap(ADA, "One set more of")
        assert "of 13 done" in card(bot).text
        assert f"One set more of {name} is in." in bot.screen(ADA)[-1].text
        bot.tap(ADA, f"{name} as planned")
        assert card(bot).text == before
        bot.no_turn_failed()


def test_a_week_in_which_nothing_was_given_offers_nothing(wired: Wired) -> None:
    """Nor does the next week."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))
        assert not any("went for time" in s.text for s in bot.screen(ADA))
        bot.say(ADA, "only got 20 min")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 18:05"))
        assert not any("Earlier this week" in s.text for s in bot.screen(ADA))


@pytest.mark.parametrize("minutes", ["0", "-5", "99999", "x", ""])
def test_forged_minutes_are_no_minutes(wired: Wired, minutes: str) -> None:
    """A button says what it was made with, or nothing."""
    with wired.bot(MONDAY) as bot:
        token = next(data for label, data in card(bot).data if label == "Less time").split(":")[2]
        before = bot.facts_count()
        assert bot.tap_data(ADA, f"1:cut:{token}:{minutes}") == "This button is from an older message"
        assert bot.facts_count() == before
