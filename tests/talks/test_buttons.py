"""A session by buttons: one tap a set on plan, another load, drops and minis, effort, undo, skip, the end."""

from bot.tryout.practice.people import ADA, BO, COACH
from tests.talks.practice import Practice


async def _first_squat(practice: Practice) -> None:
    """Monday's squat is found at 60 kg for 5, by buttons."""
    await practice.monday()
    await practice.stage.tap(ADA, "20 kg")
    while "60 kg" not in practice.labels(practice.card()):
        await practice.stage.tap(ADA, _heaviest(practice))
    await practice.stage.tap(ADA, "60 kg")
    await practice.stage.tap(ADA, "5 reps", after_min=5)


def _heaviest(practice: Practice) -> str:
    loads = [label for label in practice.labels(practice.card()) if label.endswith(" kg")]
    return max(loads, key=lambda label: float(label.split()[0]))


async def test_the_session_comes_at_the_hour_as_one_card(practice: Practice) -> None:
    """At 18:00 in Berlin, not before: one message with everything, and buttons."""
    await practice.stage.until(ADA, "2027-01-11 17:59")
    assert "Squat and press ·" not in practice.stage.seat(ADA).transcript()
    await practice.monday()
    words = practice.card().words.text
    for wanted in ("Squat and press", "Mon 11 Jan", "min", "Back squat", "4–6", "Rest 3 min", "Brace", "Plank"):
        assert wanted in words


async def test_a_load_is_found_by_buttons_and_the_rest_follows_from_it(practice: Practice) -> None:
    """The first squat tapped together; the back-off sets then carry a load below it, without anybody typing."""
    await _first_squat(practice)
    words = practice.card().words.text
    assert "1. done: 60 kg × 5" in words
    line = next(text for text in words.splitlines() if text.startswith("2. "))
    load = float(line.split()[1])
    assert 40 <= load < 60
    assert load % 2.5 == 0


async def test_effort_after_a_set_is_one_tap_and_corrects_that_set(practice: Practice) -> None:
    """It belongs to the set just done; the set is still there once."""
    await _first_squat(practice)
    await practice.stage.tap(ADA, "2 left")
    assert "1. done: 60 kg × 5, 2 left" in practice.card().words.text
    assert practice.card().words.text.count("done:") == 1


async def test_tapping_twice_keeps_one_set(practice: Practice) -> None:
    """The second tap of the same button says that it is saved already."""
    await _first_squat(practice)
    card = practice.card()
    data = next(b.detail for row in card.inline.rows for b in row if b.label == "9 reps") if card.inline else ""
    seat = practice.stage.seat(ADA)
    seat.tap_data(card.id, data)
    second = seat.tap_data(card.id, data)
    await practice.stage.settle()
    assert "already" in (seat.answer_to(second) or "")
    assert practice.card().words.text.count("2. done:") == 1


async def test_undo_takes_back_the_last_tap_and_only_that(practice: Practice) -> None:
    """And says what it was."""
    await _first_squat(practice)
    await practice.stage.tap(ADA, "9 reps", after_min=3)
    await practice.stage.tap(ADA, "Undo")
    words = practice.card().words.text
    assert "1. done: 60 kg × 5" in words
    assert "2. done:" not in words


async def test_a_skipped_exercise_is_named_at_the_end(practice: Practice) -> None:
    """Skipping goes on with the next exercise; the end says what was left out and asks for the effort once."""
    await _first_squat(practice)
    for name in ("Back squat", "Dumbbell bench press", "Seated cable row", "Leg curl", "Plank", "Cable pushdown"):
        await practice.stage.tap(ADA, f"Skip {name}", after_min=1)
    words = practice.text()
    assert "Left out: Dumbbell bench press, Seated cable row, Leg curl, Plank, Cable pushdown" in words
    assert "Shortened: Back squat" in words
    await practice.stage.tap(ADA, "7")
    assert "felt 7 of 10" in practice.text()
    assert not practice.labels(practice.card())


async def test_ending_early_keeps_what_was_done_and_takes_no_foreign_tap(practice: Practice) -> None:
    """The card's buttons are gone afterwards; a tap with another session's token changes nothing."""
    await _first_squat(practice)
    card = practice.card()
    await practice.stage.tap(ADA, "End session")
    assert "1 of 11 sets" in practice.text()
    await practice.stage.tap(ADA, "5")
    practice.stage.seat(ADA).tap_data(card.id, "1:set:someothertok:0:2:9")
    await practice.stage.settle()
    assert "1 of 11 sets" in practice.card().words.text
    assert not practice.labels(practice.card())


async def test_a_session_on_plan_takes_at_most_one_and_four_tenths_taps_a_set(practice: Practice) -> None:
    """Counted on the sample's first workout once its loads are known: every set and drop by a tap."""
    stage = practice.stage
    await _whole_session_typed(practice)
    await stage.until(ADA, "2027-01-14 18:00")
    for name in (
        "Romanian deadlift",
        "Lat pulldown",
        "Dumbbell shoulder press",
        "Split squat",
        "Calf raise",
        "Biceps curl",
    ):
        await stage.tap(ADA, f"Skip {name}")
    await stage.until(ADA, "2027-01-18 18:00")
    taps, sets = 0, 11
    while "Set 11 of 11" not in practice.card().words.text and "Finished" not in practice.card().words.text:
        labels = practice.labels(practice.card())
        label = next((x for x in labels if x.startswith("Drop ")), None)
        label = label or next(x for x in labels if x.endswith((" reps", " s")) or x.startswith("Set "))
        await stage.tap(ADA, label, after_min=3)
        taps += 1
    assert taps / sets <= 1.4


async def _whole_session_typed(practice: Practice) -> None:
    await practice.monday()
    for text in ("60x5 2 left", "50x9", "same", "bench 18x10", "row 40x10", "bench 18x9", "row 40x9"):
        await practice.stage.say(ADA, text, after_min=3)
    for text in ("leg curl 35x12 drop 25x9", "plank 45 s", "pushdown 25x12", "25x11"):
        await practice.stage.say(ADA, text, after_min=3)
    assert "Finished: 11 of 11" in practice.card().words.text


async def test_somebody_elses_button_changes_nothing(practice: Practice) -> None:
    """The coach's and another client's taps on Ada's card data: not available, and the card is as it was."""
    await _first_squat(practice)
    card = practice.card()
    before = card.words.text
    datas = [b.detail for row in card.inline.rows for b in row] if card.inline else []
    await practice.joins(BO, "Bo", "lb", "America/New_York", "tue fri 06:30")
    for who in (BO, COACH):
        message = practice.stage.seat(who).last()
        for data in datas:
            practice.stage.seat(who).tap_data(message.id, data)
            await practice.stage.settle()
    assert practice.card().words.text == before


async def test_nonsense_in_a_button_is_an_old_button(practice: Practice) -> None:
    """Forged, truncated, from another version: the answer is that it is from an older message."""
    await practice.monday()
    seat = practice.stage.seat(ADA)
    card = practice.card()
    before = card.words.text
    for data in (
        "",
        "x",
        "1:",
        "1:set",
        "9:set:a:b",
        "1:set:::::",
        "1:load:x:99999999999:1",
        "2:set:abc:0:1:5",
        "1:nope:x",
    ):
        query = seat.tap_data(card.id, data)
        await practice.stage.settle()
        assert seat.answer_to(query) is not None
    assert practice.card().words.text == before
