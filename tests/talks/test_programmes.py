"""Programmes by spreadsheet: the template out, a sheet in, what it would change, giving, undoing, what is refused."""

from dataclasses import replace
from decimal import Decimal

from bot.saying import Wanted
from bot.sheets.reading import read_programme
from bot.sheets.writing import write_programme, write_programme_csv
from bot.training.people import Programme, Workout
from bot.training.plan import PlannedExercise, PlannedSet, RepRange, Tempo
from bot.training.samples import sample_programme
from bot.tryout.practice.people import COACH as COACH_PLAYER
from tests.talks.practice import Practice
from tests.talks.wireless import ADA, BO, COACH, DANA, OTHER_COACH, Wired, Wireless

SUNDAY = "2027-01-10 18:05"
OWN = Programme(
    "",
    "Three lifts",
    (
        Workout("Whole body", (replace(sample_programme().workouts[0].exercises[0], name="Front squat", aliases=()),)),
        Workout("Pull", (replace(sample_programme().workouts[1].exercises[1], pair=""),)),
    ),
    "A test",
)


def sheet(programme: Programme = OWN) -> bytes:
    """A coach's file."""
    return write_programme(programme)


def sent(bot: Wireless, content: bytes, name: str = "three lifts.xlsx", who: int = COACH) -> list[str]:
    """What the bot wrote after the coach sent it."""
    before = len(bot.screen(who))
    bot.send_file(who, name, content)
    bot.no_turn_failed()
    return [shown.text for shown in bot.screen(who)[before:]]


def newest_file(practice: Practice) -> bytes:
    """The file that the coach got last."""
    media = next(m.media for m in reversed(practice.stage.seat(COACH_PLAYER).messages()) if m.media and m.by_bot)
    return media.data


def test_a_sheet_is_looked_over_and_nobody_has_it_by_that(wired: Wired) -> None:
    """Minutes, hard sets by muscle for two to five days; a button for each client."""
    with wired.bot(SUNDAY) as bot:
        ada = len(bot.screen(ADA))
        (text,) = sent(bot, sheet())
        assert "Three lifts" in text
        assert "Whole body: " in text
        assert "quadriceps" in text
        assert "2, 3, 4, 5 training days" in text
        assert len(bot.screen(ADA)) == ada


def test_it_is_given_after_a_look_at_what_changes(wired: Wired) -> None:
    """The next session is of the new programme; the client is told."""
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet())
        bot.tap(COACH, "Ada…")
        assert "New workout Whole body: Front squat" in bot.text(COACH)
        assert "Workout Squat and press goes" in bot.text(COACH)
        bot.tap(COACH, "Give it to Ada")
        assert "Ada has “Three lifts” now" in bot.text(COACH)
        assert "Three lifts" in bot.text(ADA)
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:01"))
        assert "Front squat" in bot.text(ADA)


def test_it_is_taken_back_until_the_first_report(wired: Wired) -> None:
    """Then it is too late, and said so."""
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet())
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        undo = next(data for label, data in reversed(bot.buttons(COACH)) if label == "Undo")
        bot.tap(COACH, "Undo")
        assert "Ada has “Two short days” again" in bot.text(COACH)
        assert "gives you Two short days" in bot.text(ADA), (
            "she had it this very day; what she reads last is what holds"
        )
        assert "older message" in bot.tap_data(COACH, undo)
        sent(bot, sheet(replace(OWN, title="Three lifts again")))
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:01"))
        bot.say(ADA, "front squat 40x5")
        assert "has been reported" in bot.tap(COACH, "Undo")


def test_the_same_sheet_changed_is_a_new_version_for_all_who_have_it(wired: Wired) -> None:
    """The reference in the file says which programme it is; the count is confirmed."""
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet())
        for name in ("Ada", "Bo"):
            bot.tap(COACH, f"{name}…")
            bot.tap(COACH, f"Give it to {name}")
            bot.say(COACH, "/programme")
            bot.tap(COACH, "Three lifts")
        bot.tap(COACH, "As a sheet")
        file = bot.screen(COACH)[-1].file
        assert isinstance(file, Wanted)
        sent(bot, sheet(replace(OWN, id=file.after, workouts=OWN.workouts[:1])))
        bot.tap(COACH, "All 2 who have it")
        assert "to all 2" in bot.text(COACH)
        bot.tap(COACH, "Yes, to all 2")
        assert "2 clients have “Three lifts” as it is now" in bot.text(COACH)
        for who in (ADA, BO):
            bot.until(bot.wall("Europe/Berlin", "2027-01-12 18:01"))
            assert any("Front squat" in s.text for s in bot.screen(who))


def test_what_was_looked_at_is_what_is_given(wired: Wired) -> None:
    """A button of an older look gives nothing once the programme has changed."""
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet())
        bot.tap(COACH, "Ada…")
        old = next(data for label, data in reversed(bot.buttons(COACH)) if label == "Give it to Ada")
        bot.tap(COACH, "Give it to Ada")
        facts = bot.facts_count()
        assert "changed since" in bot.tap_data(COACH, old)
        assert bot.facts_count() == facts


def test_a_sheet_with_faults_changes_nothing_and_comes_back_with_remarks(wired: Wired) -> None:
    """Row by row, with what to write instead."""
    with wired.bot(SUNDAY) as bot:
        broken = write_programme_csv(OWN).replace(b"4-6", b"8-", 1)
        facts = bot.facts_count()
        texts = sent(bot, broken, "broken.csv")
        assert "can't be taken yet" in texts[0]
        assert "“8-”" in texts[0] or '"8-"' in texts[0]
        assert "Nothing has changed" in texts[0]
        assert bot.screen(COACH)[-1].file is not None
        assert bot.facts_count() == facts


def test_something_else_than_a_sheet_is_refused_in_one_sentence(wired: Wired) -> None:
    """Whatever its name says."""
    with wired.bot(SUNDAY) as bot:
        for content, name in ((b"", "a.xlsx"), (b"MZ" + bytes(500), "b.xlsx"), (b"\x00\xff" * 200, "c.csv")):
            facts = bot.facts_count()
            assert "can't be taken yet" in sent(bot, content, name)[0]
            assert bot.facts_count() == facts


async def test_the_template_and_every_programme_come_as_sheets(practice: Practice) -> None:
    """The template reads as a programme, its worked example; a programme of one's own comes as it went, with its
    reference."""
    stage = practice.stage
    await stage.say(COACH_PLAYER, "/programme")
    await stage.tap(COACH_PLAYER, "Template to write one")
    example, problems = read_programme(newest_file(practice), "programme.xlsx")
    assert example is not None, problems
    await stage.send(COACH_PLAYER, "three lifts.xlsx", sheet())
    await stage.tap(COACH_PLAYER, "As a sheet")
    again, problems = read_programme(newest_file(practice), "three lifts.xlsx")
    assert again is not None, problems
    assert again.id
    assert replace(again, id="") == OWN


def test_another_coachs_programme_is_like_one_that_never_was(wired: Wired) -> None:
    """Looked at, as a sheet, given: nothing."""
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet())
        bot.tap(COACH, "Ada…")
        datas = [d for _, d in bot.buttons(COACH) if ":c.prog:" in d or ":c.sheet:" in d or ":c.giveit:" in d]
        facts = bot.facts_count()
        for who in (OTHER_COACH, DANA, ADA):
            for data in datas:
                bot.tap_data(who, data)
                assert bot.facts_count() == facts
                assert not any("Three lifts" in s.text for s in bot.screen(who))


async def test_a_sheet_over_the_wire(practice: Practice) -> None:
    """Through the platform's file server; the answer has the buttons."""
    stage = practice.stage
    await stage.send(COACH_PLAYER, "three lifts.xlsx", sheet())
    stage.expect(COACH_PLAYER, "looked over")
    await stage.tap(COACH_PLAYER, "Ada…")
    stage.expect(COACH_PLAYER, "would change")


def test_a_fixed_load_of_the_sheet_is_the_first_sessions_load(wired: Wired) -> None:
    """What the coach writes stands, where the client's equipment has it."""
    exercise = PlannedExercise(
        "Front squat", (PlannedSet(RepRange(5, 5), Decimal(2), None, 120),), equipment="bar", muscles=("quadriceps",)
    )
    with wired.bot(SUNDAY) as bot:
        assert "looked over" in sent(bot, sheet(replace(OWN, workouts=(Workout("One", (exercise,)),))))[0]


def test_a_lift_never_done_begins_near_what_a_lift_like_it_says(wired: Wired) -> None:
    """Who squats 60 kg for five is told near which load to look on the front squat; on the calf raise nothing is."""
    with wired.bot("2027-01-11 18:05") as bot:
        bot.say(ADA, "squat 60x5 2 left")
        bot.wait(6)
        bot.say(ADA, "that's me done")
        sent(bot, sheet())
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        bot.until(bot.wall("Europe/Berlin", "2027-01-14 18:01"))
        card = next(s.text for s in reversed(bot.screen(ADA)) if "Front squat" in s.text and "Set 0" in s.text)
        assert "Find your load: " in card, card
        assert "near" in card, card
        loads = [float(word) for word in card.replace(",", " ").split() if word.replace(".", "").isdigit()]
        assert any(35 <= kg <= 60 for kg in loads), card


def test_all_that_the_coach_prescribes_is_on_the_card(wired: Wired) -> None:
    """Tempo, the set's own cue, the exercise's cue, note and link."""
    prescribed = PlannedSet(RepRange(5, 5), Decimal(2), None, 120, tempo=Tempo(3, 1, None, 0), cue="Narrow grip")
    exercise = PlannedExercise(
        "Front squat",
        (prescribed,),
        equipment="bar",
        muscles=("quadriceps",),
        cue="Elbows high",
        note="Film the last one",
        link="https://example.org/front-squat",
    )
    with wired.bot(SUNDAY) as bot:
        sent(bot, sheet(replace(OWN, workouts=(Workout("One", (exercise,)),))))
        bot.tap(COACH, "Ada…")
        bot.tap(COACH, "Give it to Ada")
        bot.until(bot.wall("Europe/Berlin", "2027-01-11 18:01"))
        card = bot.text(ADA)
        for words in ("Tempo 3-1-X-0", "Narrow grip", "Elbows high", "Film the last one", "example.org/front-squat"):
            assert words in card
