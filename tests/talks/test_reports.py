"""Typed reports: read, kept, corrected, asked about, taken back."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice


async def test_a_typed_set_is_kept_quietly(practice: Practice) -> None:
    """A reaction and the card; no message for an ordinary set."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 2 left", after_min=5)
    before = len(stage.seat(ADA).messages())
    sent = await stage.say(ADA, "50x9", after_min=3)
    assert practice.reactions(sent) == ("👍",)
    assert len(stage.seat(ADA).messages()) == before + 1
    assert "2. done: 50 kg × 9" in practice.card().words.text


async def test_an_edited_message_corrects_its_set_and_what_follows(practice: Practice) -> None:
    """The set is replaced, said in words, and the next-time load of the finished exercise is said anew."""
    stage = practice.stage
    await practice.monday()
    first = await stage.say(ADA, "60x6 1 left", after_min=5)
    for text in ("50x9", "50x9"):
        await stage.say(ADA, text, after_min=3)
    told = stage.expect(ADA, "Back squat, next time").words.text
    await stage.edit(ADA, first, "80x6 1 left")
    stage.expect(ADA, "Corrected")
    assert "80 kg × 6, 1 left" in practice.card().words.text
    again = stage.expect(ADA, "Back squat, next time").words.text
    assert again != told
    assert practice.reactions(first) == ("✍",)


async def test_an_edit_that_can_not_be_read_leaves_the_record(practice: Practice) -> None:
    """And says so, with an example."""
    stage = practice.stage
    await practice.monday()
    sent = await stage.say(ADA, "60x5", after_min=5)
    await stage.edit(ADA, sent, "banana")
    stage.expect(ADA, "the record stays as it was", within=1)
    assert "1. done: 60 kg × 5" in practice.card().words.text


async def test_a_doubtful_message_is_asked_about_and_an_answer_completes_it(practice: Practice) -> None:
    """Nothing is stored before the answer; the chosen reading then counts as the message."""
    stage = practice.stage
    await _found(practice)
    await stage.until(ADA, "2027-01-18 18:00")
    before = practice.card().words.text
    await stage.say(ADA, "600x5")
    question = stage.seat(ADA).last()
    assert practice.card().words.text == before
    choices = practice.labels(question)
    assert choices[-1] == "None of these"
    await stage.tap(ADA, choices[0])
    assert len(choices) > 1
    assert "1. done:" in practice.card().words.text


async def test_none_of_these_keeps_nothing(practice: Practice) -> None:
    """The doubt is over and the card as it was."""
    stage = practice.stage
    await _found(practice)
    await stage.until(ADA, "2027-01-18 18:00")
    before = practice.card().words.text
    await stage.say(ADA, "600x5")
    await stage.tap(ADA, "None of these")
    assert practice.card().words.text == before
    stage.expect(ADA, "Nothing of", within=2)


async def test_an_unanswered_doubt_comes_again_at_the_end_and_to_the_coach(practice: Practice) -> None:
    """It is never dropped."""
    stage = practice.stage
    await _found(practice)
    await stage.until(ADA, "2027-01-18 18:00")
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "57.5x5")
    await stage.tap(ADA, "End session", after_min=6)
    assert sum("None of these" in practice.labels(m) for m in stage.seat(ADA).messages()) == 1
    assert "600" in stage.seat(ADA).last().words.text
    await stage.say(COACH, "/digest")
    assert "600x5" in practice.text(COACH)


async def test_undo_typed_takes_back_the_whole_message(practice: Practice) -> None:
    """A list is one report: all its sets go, and the exercise is open again."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "50: 9 8", after_min=8)
    assert "Back squat: 60 kg × 5, then 50 kg × 9, then 50 kg × 8" in practice.card().words.text
    await stage.say(ADA, "/undo")
    words = practice.card().words.text
    assert "1. done: 60 kg × 5" in words
    assert "2. done" not in words


async def test_a_report_of_yesterday_lands_in_yesterdays_session(practice: Practice) -> None:
    """Late reports count for their day, not for today's plan."""
    stage = practice.stage
    await practice.monday()
    await stage.until(ADA, "2027-01-12 08:00")
    await stage.say(ADA, "yesterday: squat 60x5, 50x9, 50x8")
    assert "60 kg × 5, then 50 kg × 9, then 50 kg × 8" in practice.card().words.text
    await stage.say(ADA, "/week")
    stage.expect(ADA, "quadriceps: 3 of")


async def test_talk_stores_nothing_and_can_go_to_the_coach(practice: Practice) -> None:
    """One tap sends it; the coach can answer, and the answer arrives."""
    stage = practice.stage
    await practice.monday()
    before = practice.card().words.text
    await stage.say(ADA, "thanks, gym is packed today")
    assert practice.card().words.text == before
    await stage.tap(ADA, "Send it to Maren")
    message = stage.expect(COACH, "gym is packed")
    await stage.say(COACH, "Take your time.", reply_to=message.id)
    stage.expect(ADA, "Take your time.")


async def test_a_forwarded_set_is_not_a_set(practice: Practice) -> None:
    """Somebody else's words keep nothing."""
    await practice.monday()
    before = practice.card().words.text
    practice.stage.seat(ADA).forward("100x5")
    await practice.stage.settle()
    assert practice.card().words.text == before
    assert "somebody else" in practice.text()


async def _found(practice: Practice) -> None:
    """Monday's session reported whole, Thursday's skipped, so that Monday's plan has loads the week after."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 2 left", after_min=5)
    await stage.say(ADA, "50: 9 9", after_min=8)
    await stage.tap(ADA, "End session")
    await stage.until(ADA, "2027-01-14 21:00")
    await stage.tap(ADA, "Skip it")


async def test_a_typed_number_answers_how_hard_it_was(practice: Practice) -> None:
    """And is no set of anything."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "that's me done", after_min=6)
    await stage.say(ADA, "felt about 7/10")
    assert "felt 7 of 10" in stage.expect(ADA, "Squat and press: done").words.text
    assert "1 of 11" in practice.card().words.text


async def test_editing_a_message_that_was_corrected_meanwhile(practice: Practice) -> None:
    """The edit is the last word: one set, as edited."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    sent = await stage.say(ADA, "55x5", after_min=4)
    await stage.say(ADA, "sorry 4 reps")
    await stage.edit(ADA, sent, "55x4 2 left")
    words = practice.card().words.text
    assert "2. done: 55 kg × 4, 2 left" in words
    assert "3. done" not in words


async def test_the_same_sets_twice_are_kept_once(practice: Practice) -> None:
    """Sent again from a phone without signal, or told again in the evening."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "squat 60x5, 50x9, 50x8", after_min=8)
    await stage.say(ADA, "squat 60x5, 50x9, 50x8", after_min=8)
    assert "kept already" in practice.text()
    assert practice.card().words.text.count("60 kg × 5") == 1


async def test_a_bare_set_after_the_end_is_not_laid_to_anything(practice: Practice) -> None:
    """It is asked for by name."""
    stage = practice.stage
    await practice.monday()
    for text in (
        "60x5",
        "50x9",
        "50x9",
        "bench 18x10",
        "row 40x10",
        "bench 18x9",
        "row 40x9",
        "leg curl 35x12 drop 25x8",
    ):
        await stage.say(ADA, text, after_min=3)
    for text in ("plank 45 s", "pushdown 25x12", "25x11"):
        await stage.say(ADA, text, after_min=3)
    before = practice.card().words.text
    await stage.say(ADA, "25x10")
    assert practice.card().words.text == before
    assert "name the exercise" in practice.text()


async def test_a_day_given_up_in_words_offers_the_days(practice: Practice) -> None:
    """Nobody has to wait for the evening to say that today won't do."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "can't train today, sorry")
    await stage.tap(ADA, "Move to Tue 12 Jan")
    stage.expect(COACH, "moves Squat and press")


async def test_thanks_get_a_nod(practice: Practice) -> None:
    """No lecture about sets."""
    await practice.monday()
    before = len(practice.stage.seat(ADA).messages())
    sent = await practice.stage.say(ADA, "thanks!")
    assert practice.reactions(sent) == ("👌",)
    assert len(practice.stage.seat(ADA).messages()) == before + 1
