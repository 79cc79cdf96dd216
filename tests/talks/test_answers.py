"""Typed answers to the question about a doubtful message, through the chat."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice
from tests.talks.test_reports import _found

MONDAY_AFTER = "2027-01-18 18:00"


async def loaded(practice: Practice) -> None:
    """The second Monday, whose plan has loads."""
    await _found(practice)
    await practice.stage.until(ADA, MONDAY_AFTER)


async def test_a_load_alone_completes_the_message_that_lacked_it(practice: Practice) -> None:
    """The question says how to answer it; the number is no set of its own, and the card counts one set."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "went a bit lighter, 5 reps")
    stage.expect(ADA, "Type the load alone", within=1)
    sent = await stage.say(ADA, "55")
    words = practice.card().words.text
    assert "1. done: 55 kg × 5" in words
    assert "2. done" not in words
    assert practice.reactions(sent) == ("👍",)
    stage.expect(ADA, "“went a bit lighter, 5 reps” is kept as Back squat: 55 kg x 5.", within=4)
    await stage.tap(ADA, "End session", after_min=6)
    assert not [m for m in stage.seat(ADA).messages()[-3:] if "None of these" in practice.labels(m)]


async def test_a_number_put_right_in_words_completes_it(practice: Practice) -> None:
    """What was kept before it stays as it was."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "57.5x5", after_min=3)
    await stage.say(ADA, "600x4")
    await stage.say(ADA, "sorry 60")
    words = practice.card().words.text
    assert "1. done: 57.5 kg × 5" in words
    assert "2. done: 60 kg × 4" in words


async def test_no_keeps_nothing_and_an_open_answer_asks_again(practice: Practice) -> None:
    """Neither is kept as a set."""
    stage = practice.stage
    await loaded(practice)
    before = practice.card().words.text
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "5")
    stage.expect(ADA, "That leaves it open.", within=1)
    stage.expect(ADA, "“600x5” is far from the plan", within=1)
    await stage.say(ADA, "no")
    stage.expect(ADA, "Nothing of “600x5” is kept", within=3)
    assert practice.card().words.text == before


async def test_same_behind_a_question_waits_for_its_answer(practice: Practice) -> None:
    """It would repeat the set before the doubtful one."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "57.5x5", after_min=3)
    await stage.say(ADA, "600x4")
    await stage.say(ADA, "same")
    stage.expect(ADA, "That leaves it open.", within=1)
    await stage.say(ADA, "60x4")
    await stage.say(ADA, "same")
    assert "57.5 kg × 5, then 60 kg × 4, then 60 kg × 4" in practice.card().words.text


async def test_sets_reported_behind_the_question_are_sets(practice: Practice) -> None:
    """And then short words are of those: the question waits for its button."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "62.5x4", after_min=3)
    await stage.say(ADA, "8", after_min=3)
    words = practice.card().words.text
    assert "1. done: 62.5 kg × 4" in words
    assert "2. done: 52.5 kg × 8" in words
    await stage.say(COACH, "/digest")
    assert "600x5" in practice.text(COACH)


async def test_an_edit_of_an_answer_makes_no_set_of_it(practice: Practice) -> None:
    """The number is the load of the message before it; it is put right by editing that one."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "went a bit lighter, 5 reps")
    sent = await stage.say(ADA, "55")
    await stage.edit(ADA, sent, "50")
    stage.expect(ADA, "the record stays as it was", within=1)
    words = practice.card().words.text
    assert "1. done: 55 kg × 5" in words
    assert "2. done" not in words


async def test_a_day_is_offered_in_words_and_lands_in_its_session(practice: Practice) -> None:
    """Typed or tapped; never in today's."""
    stage = practice.stage
    await practice.monday()
    await stage.until(ADA, "2027-01-14 18:00")
    await stage.say(ADA, "11/1: squat 60x5, 50x9, 50x8")
    assert practice.labels(stage.seat(ADA).last())[:2] == ["Sun 1 Nov", "Mon 11 Jan"]
    await stage.say(ADA, "monday")
    stage.expect(ADA, "is kept as Mon 11 Jan", within=4)
    assert "Set 0 of" in [m.words.text for m in stage.seat(ADA).messages() if "Thu 14 Jan · about" in m.words.text][-1]
    await stage.say(ADA, "/week")
    stage.expect(ADA, "quadriceps: 3 of", within=1)


async def test_a_day_without_a_session_keeps_nothing(practice: Practice) -> None:
    """And says so, whatever session is on."""
    stage = practice.stage
    await loaded(practice)
    before = practice.card().words.text
    await stage.say(ADA, "the weekend: squat 60x5, 50x9")
    assert practice.labels(stage.seat(ADA).last()) == ["Sat 16 Jan", "Sun 17 Jan", "None of these"]
    await stage.tap(ADA, "Sat 16 Jan")
    stage.expect(ADA, "no session of yours on Sat 16 Jan", within=2)
    assert practice.card().words.text == before


async def test_an_answered_end_ends_the_session(practice: Practice) -> None:
    """`that's me done` in a doubtful message counts once it is answered; nothing is asked again."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 5th 4, that's me done")
    await stage.say(ADA, "yes")
    stage.expect(ADA, "How hard was the whole session", within=3)
    assert not [m for m in stage.seat(ADA).messages()[-2:] if "None of these" in practice.labels(m)]


async def test_an_urgent_sign_beside_an_answer_is_heard_at_once(practice: Practice) -> None:
    """By the client and by the coach."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "60x5 chest pressure")
    assert any("chest" in m.words.text.lower() for m in stage.seat(COACH).messages() if m.by_bot)
    stage.expect(ADA, "Stop", within=4)


async def test_pain_behind_a_question_has_its_own_talk(practice: Practice) -> None:
    """A number then is its score, and a yes no answer to the question about the message, which keeps its buttons."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "my knee hurts")
    await stage.say(ADA, "4")
    assert any("knee, 4 of 10" in m.words.text for m in stage.seat(COACH).messages() if m.by_bot)
    await stage.say(ADA, "yes")
    words = practice.card().words.text
    assert "1. done" not in words


async def test_an_answered_end_in_place_of_another_exercise_ends_the_session(practice: Practice) -> None:
    """The button that says in place of what the exercise was done keeps the end, too."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "leg press 100x10, that's me done")
    label = next(text for text in practice.labels(stage.seat(ADA).last()) if "Back squat" in text)
    await stage.tap(ADA, label)
    stage.expect(ADA, "How hard was the whole session", within=3)


async def test_a_day_whose_session_lacks_the_exercise_keeps_nothing(practice: Practice) -> None:
    """What reads beside today's plan need not read beside that day's."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 2 left", after_min=5)
    await stage.tap(ADA, "End session")
    await stage.until(ADA, "2027-01-14 18:00")
    await stage.say(ADA, "11/1: split squat 16x10 each")
    await stage.tap(ADA, "Mon 11 Jan")
    stage.expect(ADA, "Beside your session of Mon 11 Jan", within=2)


async def test_after_some_minutes_a_yes_is_no_answer_any_more(practice: Practice) -> None:
    """It may be one to anything; the button stays."""
    stage = practice.stage
    await loaded(practice)
    await stage.say(ADA, "600x5")
    await stage.say(ADA, "yes", after_min=20)
    assert "600 kg" not in practice.card().words.text


async def test_a_letter_has_its_pain_noted_and_its_sets_asked_for(practice: Practice) -> None:
    """What it may report is not kept in silence; the sets sent by themselves are."""
    stage = practice.stage
    await loaded(practice)
    talk = "by the way the kids are at the sea for a couple of days and it was a lot of fun. "
    await stage.say(ADA, talk * 14 + "squat 57.5x5. my left knee hurts a bit")
    stage.expect(ADA, "I have noted pain: left knee.", within=2)
    stage.expect(ADA, "Could you send the sets by themselves, for example 60x5?", within=2)
    stage.expect(COACH, "my left knee hurts a bit", within=2)
    assert "1. done" not in practice.card().words.text
    await stage.say(ADA, "squat 57.5x5")
    assert "1. done: 57.5 kg × 5" in practice.card().words.text


async def test_a_number_behind_a_word_that_nobody_knows_waits_for_an_answer(practice: Practice) -> None:
    """Nothing of it is kept before; a tap keeps what the question shows."""
    stage = practice.stage
    await loaded(practice)
    before = practice.card().words.text
    await stage.say(ADA, "60x5 zorp 🤪 asdf 4")
    stage.expect(ADA, "I'm not sure what “asdf” says.", within=1)
    assert practice.card().words.text == before
    await stage.tap(ADA, "Back squat: 60 kg x 5, 60 kg x 4")
    words = practice.card().words.text
    assert "1. done: 60 kg × 5" in words
    assert "2. done: 60 kg × 4" in words
