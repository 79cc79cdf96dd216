"""Another exercise today, or for good: wished for in words, by a button, reported in a planned one's place, ordered."""

import pytest

from tests.talks.wireless import ADA, BO, COACH, Shown, Wired, Wireless

MONDAY = "2027-01-11 18:05"
ROW, PUSHDOWN, SQUAT = "Seated cable row", "Cable pushdown", "Back squat"


def card(bot: Wireless) -> Shown:
    """The newest card."""
    return next(s for s in reversed(bot.screen(ADA)) if "· about" in s.text)


def labels(shown: Shown) -> list[str]:
    """What stands on its buttons."""
    return [label for label, _ in shown.data]


def offers(bot: Wireless) -> list[Shown]:
    """The messages that offer something, with buttons still, oldest first."""
    return [s for s in bot.screen(ADA) if s.text.startswith("Instead of ") and s.data]


# --- in words


def test_no_cable_today_offers_three_for_each_exercise_that_needs_one(wired: Wired) -> None:
    """Nothing is kept before the tap; then today's card has the new one, with where to begin, and what needs the cable
    still is offered something too."""
    with wired.bot(MONDAY) as bot:
        before = bot.facts_count()
        bot.say(ADA, "No cable today!")
        assert [s.text.splitlines()[0] for s in offers(bot)] == [f"Instead of {ROW}:", f"Instead of {PUSHDOWN}:"]
        assert [len(s.data) for s in offers(bot)] == [5, 5]
        assert not any("able" in label for s in offers(bot) for label in labels(s)[:3])
        assert bot.facts_count() == before
        assert bot.tap(ADA, "Single-arm dumbbell row") == "Single-arm dumbbell row"
        assert "Single-arm dumbbell row: 8–10 each side" in card(bot).text
        assert ROW not in card(bot).text
        assert "about 32 min" in card(bot).text
        bot.say(ADA, "dumbbell row 20x10, 20x9")
        assert "Single-arm dumbbell row: 20 kg × 10 each side, then 20 kg × 9 each side" in card(bot).text
        bot.no_turn_failed()


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("the rack is taken", SQUAT),
        ("cable machine is broken", ROW),
        ("can't do squats today", SQUAT),
        ("swap rows", ROW),
        ("swap rows for dumbbell rows", ROW),
        ("what can I do instead of squats?", SQUAT),
        ("leg curl machine is taken", "Leg curl"),
    ],
)
def test_such_words_are_a_wish(wired: Wired, words: str, name: str) -> None:
    """Three choices, to skip it, to ask the coach; nothing of a set is kept, nothing is skipped yet."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, words)
        first = offers(bot)[0]
        assert first.text.splitlines()[0] == f"Instead of {name}:"
        assert labels(first)[3:] == [f"Skip {name}", "Ask Maren"]
        assert "Set 0 of 11 done" in card(bot).text
        assert "left out" not in card(bot).text


def test_an_exercise_that_was_named_comes_first(wired: Wired) -> None:
    """`swap rows for dumbbell rows`."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "swap rows for dumbbell rows")
        assert labels(offers(bot)[0])[0] == "Single-arm dumbbell row"


@pytest.mark.parametrize(
    "words",
    [
        "no bench press PR today",
        "the rack was taken but I waited",
        "no gym today",
        "swap days",
        "is the rack taken?",
        "row 40x10",
    ],
)
def test_other_words_are_none(wired: Wired, words: str) -> None:
    """Near to a wish, but none."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, words)
        assert not offers(bot)


def test_what_nothing_needs_is_said(wired: Wired) -> None:
    """No sled is asked for in this session."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "the sled is broken")
        assert "Nothing that is left today needs that" in bot.text(ADA)


def test_a_question_reaches_the_coach_as_well(wired: Wired) -> None:
    """It is offered, and it is asked."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "what can I do instead of squats?")
        assert offers(bot)
        assert any("instead of squats" in s.text for s in bot.screen(COACH))


# --- what hurts


def test_what_hurts_is_spared(wired: Wired) -> None:
    """Pain beside the wish counts at once: the squat is skipped as said, and nothing that loads the knee is offered."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "can't do squats, my knee hurts 4/10")
        shown = offers(bot)[0]
        assert "These spare what hurts." in shown.text
        assert not any(word in " ".join(labels(shown)[:3]) for word in ("quat", "press", "unge", "xtension"))
        assert any("PAIN: Ada" in s.text for s in bot.screen(COACH))


def test_after_an_urgent_sign_nothing_is_offered(wired: Wired) -> None:
    """Not beside it, not by words after it, not by a button that stands from before."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "the rack is taken")
        old = offers(bot)[0].data[0][1]
        other = next(data for label, data in card(bot).data if label == "Other exercise")
        count = len(bot.screen(ADA))
        bot.say(ADA, "can't do squats today, crushing pressure on my chest and I can't breathe")
        assert any(s.text.startswith("Stop training now") for s in bot.screen(ADA)[count:])
        bot.say(ADA, "no cable today")
        before = bot.facts_count()
        assert bot.tap_data(ADA, old) == "This button is from an older message"
        assert bot.tap_data(ADA, other) == "This button is from an older message"
        assert bot.facts_count() == before
        assert not any(s.text.startswith("Instead of") for s in bot.screen(ADA)[count:])


# --- by the card


def test_the_cards_button_offers_for_the_exercise_at_hand(wired: Wired) -> None:
    """What is done of it stays in the plan; the new one takes the rest, begins near what the squat says, and follows
    its own sets from there."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "60x5 2 left")
        bot.tap(ADA, "Other exercise")
        shown = offers(bot)[0]
        assert f"What you have done of {SQUAT} stays" in shown.text
        assert "from your Back squat" in shown.text
        bot.tap(ADA, "Leg press")
        assert f"{SQUAT}: 60 kg × 5, 2 left" in card(bot).text
        assert "Leg press\n1. 8–10, 2 in reserve\n2. 8–10, 2 in reserve" in card(bot).text
        assert "begin near 70 kg" in card(bot).text
        assert "70 kg" in labels(card(bot))
        assert "Set 1 of 11 done" in card(bot).text
        bot.say(ADA, "leg press 70x10 4 left")
        assert "1. done: 70 kg × 10, 4 left" in card(bot).text
        bot.no_turn_failed()


def test_a_known_exercise_comes_with_its_load(wired: Wired) -> None:
    """Thursday after a swap on Monday: what was found then is where it begins."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "swap rows for dumbbell rows")
        bot.tap(ADA, "Single-arm dumbbell row")
        bot.say(ADA, "dumbbell row 20x10 2 left, 20x10 1 left")
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 18:05"))
        bot.say(ADA, "no cable today")
        assert "Single-arm dumbbell row, 2 × 20 kg × 8–10 each side: you have done it before" in offers(bot)[0].text


def test_the_way_back_stands_until_something_of_it_is_reported(wired: Wired) -> None:
    """On the card and under the answer; afterwards the sets have to be taken back first; `/undo` goes step by step."""
    with wired.bot(MONDAY) as bot:
        whole = card(bot).text
        bot.tap(ADA, "Other exercise")
        bot.tap(ADA, "Front squat")
        assert f"Back to {SQUAT}" in labels(card(bot))
        back = next(data for label, data in card(bot).data if label.startswith("Back to"))
        bot.say(ADA, "front squat 40x5")
        assert f"Back to {SQUAT}" not in labels(card(bot))
        assert bot.tap_data(ADA, back) == "Sets of it are saved: take those back first"
        bot.say(ADA, "/undo")
        assert "Taken back: Front squat" in bot.text(ADA)
        bot.say(ADA, "/undo")
        assert f"Back to {SQUAT}" in bot.text(ADA)
        assert card(bot).text == whole
        assert bot.tap_data(ADA, back) == "That is taken back already"
        bot.say(ADA, "/undo")
        assert "nothing to take back" in bot.text(ADA)
        bot.no_turn_failed()


def test_two_changes_are_taken_back_in_turn(wired: Wired) -> None:
    """The later one first."""
    with wired.bot(MONDAY) as bot:
        whole = card(bot).text
        bot.tap(ADA, "Other exercise")
        bot.tap(ADA, "Front squat")
        first = next(data for label, data in card(bot).data if label.startswith("Back to"))
        bot.say(ADA, "only got 20 min")
        assert bot.tap_data(ADA, first) == "Take back first what was changed after it"
        bot.tap(ADA, "Do it all after all")
        assert bot.tap_data(ADA, first) == f"Back to {SQUAT}."
        assert card(bot).text == whole


def test_a_button_drawn_before_the_swap_speaks_of_nothing_else(wired: Wired) -> None:
    """The old card's `5 reps` on the squat is no set of what stands there now, and neither is its `Skip`."""
    with wired.bot(MONDAY) as bot:
        old = [data for label, data in card(bot).data if label in ("52.5 kg", f"Skip {SQUAT}")]
        bot.tap(ADA, "Other exercise")
        bot.tap(ADA, "Front squat")
        before = bot.facts_count()
        forged = old[0].replace(":load:", ":set:").partition(":52500")[0] + ":5:52500:kg"
        for data in (*old, forged):
            assert bot.tap_data(ADA, data) == "This button is from an older message"
        assert bot.facts_count() == before
        assert bot.tap(ADA, "Skip Front squat") == "Front squat skipped"


def test_the_same_choice_twice_changes_once(wired: Wired) -> None:
    """A second tap finds another exercise in that place."""
    with wired.bot(MONDAY) as bot:
        bot.tap(ADA, "Other exercise")
        data = next(data for label, data in offers(bot)[0].data if label == "Front squat")
        bot.tap_data(ADA, data)
        before = bot.facts_count()
        assert bot.tap_data(ADA, data) == "This button is from an older message"
        assert bot.facts_count() == before


def test_the_coach_is_asked_once(wired: Wired) -> None:
    """From the offer; it stays in the digest until it is answered."""
    with wired.bot(MONDAY) as bot:
        bot.tap(ADA, "Other exercise")
        assert bot.tap(ADA, "Ask Maren") == "Sent to Maren"
        bot.tap(ADA, "Ask Maren")
        asked = [s for s in bot.screen(COACH) if "asks what to do instead of Back squat" in s.text]
        assert len(asked) == 1
        bot.say(COACH, "/digest")
        assert "UNREAD" in bot.text(COACH)
        bot.say(COACH, "Leg press will do.", reply_to_message={"message_id": asked[0].number})
        assert "Leg press will do." in bot.text(ADA)


# --- reported in a planned one's place


def test_an_exercise_reported_in_a_planned_ones_place_takes_it(wired: Wired) -> None:
    """Asked first, with those that it may have replaced; nothing is kept before the tap, then all of it."""
    with wired.bot(MONDAY) as bot:
        before = bot.facts_count()
        bot.say(ADA, "goblet squat 20x10, 20x9 2 left")
        shown = bot.screen(ADA)[-1]
        assert "I take it to be Goblet squat. Tap what it took the place of" in shown.text
        assert f"In place of {SQUAT}" in labels(shown)
        assert bot.facts_count() == before + 1
        assert "Set 0 of 11 done" in card(bot).text
        bot.tap(ADA, f"In place of {SQUAT}")
        assert "1. done: 20 kg × 10" in card(bot).text
        assert "2. done: 20 kg × 9, 2 left" in card(bot).text
        assert SQUAT not in card(bot).text
        bot.say(ADA, "/undo")
        assert "Set 0 of 11 done" in card(bot).text
        bot.say(ADA, "/undo")
        assert SQUAT in card(bot).text
        bot.no_turn_failed()


def test_a_message_that_is_still_in_doubt_is_asked_on_beside_the_new_plan(wired: Wired) -> None:
    """`goblet squat 20`: the swap is clear, the repetitions are not."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "goblet squat 20x200")
        bot.tap(ADA, f"In place of {SQUAT}")
        assert "Goblet squat" in card(bot).text
        assert "Set 0 of 11 done" in card(bot).text
        assert bot.screen(ADA)[-1].data


def test_the_session_reads_on_by_the_new_name(wired: Wired) -> None:
    """Summary, week and digest speak of what was done, and the planned volume is the new plan's."""
    with wired.bot(MONDAY) as bot:
        bot.say(ADA, "can't do rows today")
        bot.tap(ADA, "Machine row")
        bot.say(ADA, "machine row 40x10 2 left, 40x9 1 left")
        bot.say(ADA, "that's me done")
        closing = next(s for s in reversed(bot.screen(ADA)) if "Squat and press: done." in s.text)
        assert "Best of Machine row: 40 kg × 10, 2 left" in closing.text
        assert ROW not in closing.text
        bot.say(ADA, "/week")
        assert "back: 2 of 2" in bot.text(ADA)
        bot.say(COACH, "/digest")
        assert f"Ada: Machine row instead of {ROW}" in bot.text(COACH)


# --- the coach's word


def open_lift(bot: Wireless, who: str, name: str) -> None:
    """An exercise's page."""
    bot.say(COACH, "/clients")
    bot.tap(COACH, f"Open {who}")
    bot.tap(COACH, "Lifts and loads")
    bot.tap(COACH, name)


def test_a_coachs_swap_stands_in_every_session_until_it_is_taken_back(wired: Wired) -> None:
    """The client is told; the session sent already stays; the programme's own comes back by a tap."""
    with wired.bot(MONDAY) as bot:
        open_lift(bot, "Ada", ROW)
        bot.tap(COACH, "Another exercise…")
        assert "Ada: instead of Seated cable row, from the next session on" in bot.text(COACH)
        bot.tap(COACH, "Machine row")
        assert "Maren puts Machine row in the place of Seated cable row" in bot.text(ADA)
        assert "In place of Seated cable row, by your word." in bot.text(COACH)
        assert ROW in card(bot).text
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:05"))
        bot.say(ADA, "that's me done")
        bot.until(bot.wall("Europe/Berlin", "2027-01-18 18:05"))
        assert "Machine row: 8–10" in card(bot).text
        open_lift(bot, "Ada", "Machine row")
        bot.tap(COACH, "Another exercise…")
        bot.tap(COACH, f"{ROW}, the programme's own")
        assert f"Maren brings {ROW} back" in bot.text(ADA)
        assert "by your word" not in bot.text(COACH)
        bot.no_turn_failed()


def test_what_a_coach_chose_for_one_client_comes_first_for_another(wired: Wired) -> None:
    """With whose choice it is; not for the clients of another coach."""
    with wired.bot(MONDAY) as bot:
        open_lift(bot, "Bo", ROW)
        bot.tap(COACH, "Another exercise…")
        bot.tap(COACH, "Bent-over row")
        bot.say(ADA, "swap rows")
        assert labels(offers(bot)[0])[0] == "Bent-over row"
        assert "(Maren's choice)" in offers(bot)[0].text.splitlines()[1]
        bot.until(bot.wall("America/New_York", "2027-01-15 18:05"))
        assert any("Bent-over row" in s.text for s in bot.screen(BO))
