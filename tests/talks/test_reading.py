"""What the reader understands, through the chat: corrections, continuations, sides, units, other days, doubts."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice
from tests.talks.test_coach import PNG


async def test_a_correction_in_words_takes_the_place_of_what_was_kept(practice: Practice) -> None:
    """Load, repetitions, a set by its number, effort said afterwards: each replaces its set, and is said back."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "that was 62.5 not 60")
    assert "1. done: 62.5 kg × 5" in practice.card().words.text
    await stage.say(ADA, "sorry 4 reps")
    assert "1. done: 62.5 kg × 4" in practice.card().words.text
    sent = await stage.say(ADA, "2 left on that")
    assert "1. done: 62.5 kg × 4, 2 left" in practice.card().words.text
    assert practice.reactions(sent) == ("✍",)
    await stage.say(ADA, "50x9", after_min=3)
    await stage.say(ADA, "set 1 was 60")
    words = practice.card().words.text
    assert "1. done: 60 kg × 4, 2 left" in words
    assert "2. done: 50 kg × 9" in words


async def test_a_set_put_right_keeps_its_place_on_the_card(practice: Practice) -> None:
    """Behind its exercise the sets stand as they were done, whatever was put right last."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "squat 60x5, 50x9, 50x8", after_min=8)
    await stage.say(ADA, "set 2 was 52.5", after_min=1)
    assert "60 kg × 5, then 52.5 kg × 9, then 50 kg × 8" in practice.card().words.text


async def test_a_set_scrapped_in_words_is_open_again(practice: Practice) -> None:
    """The set after it would take its place."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "scrap that")
    assert "done" not in practice.card().words.text.partition("\n1.")[2].partition("\n")[0]
    await stage.say(ADA, "55x5", after_min=3)
    assert "1. done: 55 kg × 5" in practice.card().words.text


async def test_pounds_said_by_a_client_in_kilograms_are_kept_as_said(practice: Practice) -> None:
    """135 lb are 61.2 kg; the record keeps what was lifted."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "110lb x 9", after_min=3)
    assert "2. done: 110 lb × 9" in practice.card().words.text


async def test_a_drop_belongs_to_its_set_told_together_or_later(practice: Practice) -> None:
    """The leg curl's last set has a drop: it counts as no set of its own."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "leg curl 35x12 then 25x8", after_min=20)
    assert "35 kg × 12, then drop 25 kg × 8" in practice.card().words.text
    await stage.say(ADA, "scrap that")
    await stage.say(ADA, "leg curl 35x12", after_min=1)
    await stage.say(ADA, "drop 25x8", after_min=1)
    assert "35 kg × 12, then drop 25 kg × 8" in practice.card().words.text


async def test_sides_told_apart_are_one_set(practice: Practice) -> None:
    """Left and right, in one message or in two."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await stage.until(ADA, "2027-01-14 18:00")
    await stage.say(ADA, "split squat 16: L10 R9", after_min=10)
    assert "left 16 kg each hand × 10, then right 16 kg each hand × 9" in practice.card().words.text


async def test_a_weekday_names_the_session_that_it_was(practice: Practice) -> None:
    """Told on Wednesday, kept on Monday."""
    stage = practice.stage
    await practice.monday()
    await stage.until(ADA, "2027-01-13 12:00")
    await stage.say(ADA, "monday: squat 60x5, 50x9, 50x8")
    await stage.say(ADA, "/week")
    stage.expect(ADA, "quadriceps: 3 of")


async def test_a_doubt_answered_late_is_read_as_it_was_meant(practice: Practice) -> None:
    """The sets reported since keep their places; the answered message's set comes after them."""
    stage = practice.stage
    await _found(practice)
    await stage.until(ADA, "2027-01-18 18:00")
    await stage.say(ADA, "600x5")
    doubt = stage.seat(ADA).last()
    first = practice.labels(doubt)[0]
    await stage.say(ADA, "60x4", after_min=4)
    await stage.tap(ADA, first)
    words = practice.card().words.text
    assert "1. done: 60 kg × 4" in words
    assert "2. done:" in words
    assert "× 5" in words


async def test_a_doubt_asked_again_at_the_end_offers_the_same_readings(practice: Practice) -> None:
    """Whatever was reported since."""
    stage = practice.stage
    await _found(practice)
    await stage.until(ADA, "2027-01-18 18:00")
    await stage.say(ADA, "600x5")
    before = practice.labels(stage.seat(ADA).last())
    for text in ("57.5x5", "50x9", "50x9"):
        await stage.say(ADA, text, after_min=3)
    await stage.tap(ADA, "End session", after_min=6)
    assert practice.labels(stage.seat(ADA).last()) == before


async def test_a_number_with_no_place_leaves_the_sets_that_were_understood_to_tap(practice: Practice) -> None:
    """The question says what is unclear and offers what was read; a tap keeps it."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 5th 4")
    asked = stage.seat(ADA).last()
    assert "Is this what you did?" in asked.words.text
    assert "None of these" in practice.labels(asked)
    await stage.tap(ADA, practice.labels(asked)[0])
    assert "60 kg × 5" in practice.card().words.text


async def test_one_long_offer_stands_in_the_question(practice: Practice) -> None:
    """A button can't show it whole, and there is nothing to number."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5, 50x9, 50x8 5th 4")
    asked = stage.seat(ADA).last()
    assert "Back squat: 60 kg x 5, 50 kg x 9, 50 kg x 8" in asked.words.text
    assert practice.labels(asked) == ["Yes, keep it", "None of these"]
    await stage.tap(ADA, "Yes, keep it")
    assert "60 kg × 5, then 50 kg × 9, then 50 kg × 8" in practice.card().words.text


async def test_the_words_under_a_picture_may_be_corrected(practice: Practice) -> None:
    """A set in a caption counts, and so does its edit."""
    stage = practice.stage
    await practice.monday()
    sent = stage.seat(ADA).send("photo", PNG, name="bar.png", caption="60x5")
    await stage.settle()
    assert "1. done: 60 kg × 5" in practice.card().words.text
    await stage.edit(ADA, sent, "60x6")
    assert "1. done: 60 kg × 6" in practice.card().words.text


async def test_the_answer_to_the_pain_button_may_hold_a_set(practice: Practice) -> None:
    """Both are kept: nothing has to be typed twice."""
    stage = practice.stage
    await practice.monday()
    await stage.tap(ADA, "It hurts", after_min=5)
    await stage.say(ADA, "60x5 but my left knee pinched, 4/10")
    assert "1. done: 60 kg × 5" in practice.card().words.text
    stage.expect(COACH, "left knee")


async def test_the_answer_to_the_pain_button_is_no_set_by_itself(practice: Practice) -> None:
    """A score is a score."""
    stage = practice.stage
    await practice.monday()
    before = practice.card().words.text
    await stage.tap(ADA, "It hurts", after_min=5)
    await stage.say(ADA, "knee, 5")
    assert practice.card().words.text.count("done") == before.count("done")
    stage.expect(COACH, "knee")


async def _found(practice: Practice) -> None:
    """Monday's session reported whole, Thursday's skipped, so that Monday's plan has loads the week after."""
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, "60x5 2 left", after_min=5)
    await stage.say(ADA, "50: 9 9", after_min=8)
    await stage.tap(ADA, "End session")
    await stage.until(ADA, "2027-01-14 21:00")
    await stage.tap(ADA, "Skip it")
