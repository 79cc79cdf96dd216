"""The coach's hand on a client: lifts seen, loads set, holds, light weeks, a yes before loads rise, notes."""

from bot.tryout.practice.people import ADA, COACH
from tests.talks.practice import Practice


async def test_every_lift_with_its_estimate_and_what_comes_next(practice: Practice) -> None:
    """From the client's page: a line each, and one of them in full with the chances of the loads around."""
    stage = practice.stage
    await _squatted(practice)
    await _lifts(practice)
    words = practice.text(COACH)
    assert "Back squat: next 60 kg, one-repetition maximum about" in words
    assert "Romanian deadlift: not done yet" in words
    await stage.tap(COACH, "Back squat")
    words = practice.text(COACH)
    assert "Last time, Mon 11 Jan: 60 kg × 5, 2 left" in words
    assert "19 times in 20" in words
    assert "in range" in words
    assert "Next: 60 kg × 4–6" in words


async def test_a_load_set_by_the_coach_is_what_the_next_session_asks_for(practice: Practice) -> None:
    """Once: the session after it follows from the sets again. The client is told."""
    stage = practice.stage
    await _squatted(practice)
    await _lift(practice, "Back squat")
    await stage.tap(COACH, "Another load…")
    await stage.say(COACH, "as much as he likes")
    stage.expect(COACH, "is no load that I can read", within=1)
    await stage.say(COACH, "300")
    stage.expect(COACH, "more than twice", within=1)
    await stage.say(COACH, "65")
    stage.expect(COACH, "You set 65 kg", within=1)
    stage.expect(ADA, "Back squat, 65 kg", within=1)
    await _to_next_squats(practice)
    assert "65 kg × 4–6" in practice.card().words.text
    await stage.say(ADA, "65x5 2 left", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await _lift(practice, "Back squat")
    assert "You set" not in practice.text(COACH)


async def test_a_load_is_taken_back(practice: Practice) -> None:
    """The engine decides again."""
    stage = practice.stage
    await _squatted(practice)
    await _lift(practice, "Back squat")
    await stage.tap(COACH, "62.5 kg")
    stage.expect(COACH, "You set 62.5 kg", within=1)
    await stage.tap(COACH, "Take my load back")
    assert "You set" not in practice.text(COACH)


async def test_an_exercise_on_hold_stays_where_it_is(practice: Practice) -> None:
    """However easy it was; until the coach lifts it."""
    stage = practice.stage
    await _squatted(practice, "60x6 5 left")
    await _lift(practice, "Back squat")
    await stage.tap(COACH, "Hold it here")
    stage.expect(COACH, "On hold", within=1)
    await _to_next_squats(practice)
    assert "60 kg × 4–6" in practice.card().words.text


async def test_a_light_week_has_fewer_sets_with_more_left(practice: Practice) -> None:
    """From its Monday; taken back as easily."""
    stage = practice.stage
    await _squatted(practice)
    await _opened(practice)
    await stage.tap(COACH, "Plan settings")
    await stage.tap(COACH, "Make next week a light one")
    stage.expect(COACH, "Light week: Mon 18 Jan", within=1)
    stage.expect(ADA, "a light one", within=1)
    await _to_next_squats(practice)
    words = practice.card().words.text
    assert "3 in reserve" in words
    assert "3. " not in words.partition("Dumbbell bench press")[0].partition("Back squat")[2]


async def test_loads_wait_for_the_coachs_yes_where_the_coach_wants_it(practice: Practice) -> None:
    """Without it nothing rises; with it the next session asks for what the last one suggested."""
    stage = practice.stage
    await practice.monday()
    await _opened(practice)
    await stage.tap(COACH, "Plan settings")
    await stage.tap(COACH, "Ask me first")
    stage.expect(COACH, "only after your yes", within=1)
    await stage.say(ADA, "60x6 5 left", after_min=5)
    await stage.say(ADA, "50: 10 10", after_min=5)
    assert "next time" not in practice.text()
    await stage.say(ADA, "that's me done", after_min=5)
    asked = stage.expect(COACH, "next loads wait for your yes")
    assert "Back squat, next time" in asked.words.text
    await stage.tap(COACH, "Yes, go up")
    stage.expect(COACH, "may go up next time")
    await _to_next_squats(practice)
    assert "60 kg × 4–6" not in practice.card().words.text


async def test_without_the_yes_nothing_rises(practice: Practice) -> None:
    """The session comes all the same."""
    stage = practice.stage
    await practice.monday()
    await _opened(practice)
    await stage.tap(COACH, "Plan settings")
    await stage.tap(COACH, "Ask me first")
    await stage.say(ADA, "60x6 5 left", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await _to_next_squats(practice)
    assert "60 kg × 4–6" in practice.card().words.text


async def test_a_note_is_for_the_coach_alone(practice: Practice) -> None:
    """Kept, shown on the client's page, never sent."""
    stage = practice.stage
    await practice.monday()
    before = len(stage.seat(ADA).messages())
    await _opened(practice)
    await stage.tap(COACH, "Notes")
    await stage.tap(COACH, "New note")
    await stage.say(COACH, "Works nights until March: keep Thursdays short.")
    stage.expect(COACH, "Works nights until March", within=1)
    await _opened(practice)
    assert "Works nights until March" in practice.text(COACH)
    assert len(stage.seat(ADA).messages()) == before


async def _squatted(practice: Practice, top: str = "60x5 2 left") -> None:
    stage = practice.stage
    await practice.monday()
    await stage.say(ADA, top, after_min=5)
    await stage.say(ADA, "50: 9 9", after_min=8)
    await stage.say(ADA, "that's me done", after_min=5)


async def _to_next_squats(practice: Practice) -> None:
    """Thursday's other workout is done in two words, then Monday comes."""
    stage = practice.stage
    await stage.until(ADA, "2027-01-14 18:00")
    await stage.say(ADA, "romanian deadlift 60x8", after_min=5)
    await stage.say(ADA, "that's me done", after_min=5)
    await stage.until(ADA, "2027-01-18 18:00")


async def _opened(practice: Practice) -> None:
    await practice.stage.say(COACH, "/clients")
    await practice.stage.tap(COACH, "Open Ada")


async def _lifts(practice: Practice) -> None:
    await _opened(practice)
    await practice.stage.tap(COACH, "Lifts and loads")


async def _lift(practice: Practice, name: str) -> None:
    await _lifts(practice)
    await practice.stage.tap(COACH, name)
