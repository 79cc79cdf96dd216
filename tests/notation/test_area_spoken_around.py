"""What is only looked at, scored, compared or put back beside sets; help, halves, failed repetitions in free words.

The readings are those of the words; common practice, no source.
"""

import pytest

from bot.training.units import Unit
from tests.notation.plans import read

BENCH, CHIN, SPLIT = "Bench Press", "Chin-Up", "Split Squat"

NOT_LIFTED = [
    "140 looks so heavy from across the room",
    "140 is staring at me",
    "140 on the bar and im just stood here staring at it",
    "140 scares me more than my exam",
    "140 is giving me the fear",
    "140 still scary ngl",
    "who left 140 on the bar",
    "just loaded 140, gulp",
    "psyching myself up for 140",
    "all chalked up for the 5 at 140 and my song ends. restarting it first",
    "belt on, 5 at 140 up next",
    "gonna be pulling 180 by xmas calling it now",
    "bloke took the 20kg plates off me mid set up, 2 min then im back",
    "playlist 10/10, this gym 3/10",
    "new towels 9/10, smell in here 2/10",
    "changing rooms 10/10 since the refit",
]


@pytest.mark.parametrize("text", NOT_LIFTED)
def test_what_is_only_looked_at_or_scored_is_no_set(text: str) -> None:
    reading = read(text, current="Deadlift")
    assert reading.ask is None
    assert not reading.performed
    assert not reading.finished


LIFTED = [
    "140 looked so heavy but it flew up",
    "140 looked heavy, got 5",
    "140x5 looked heavy from here",
    "scared of 140 but did it for 5",
    "loaded 140, did 5",
    "140 went up. scary",
    "140",
]


@pytest.mark.parametrize("text", LIFTED)
def test_what_was_feared_and_lifted_is_a_set(text: str) -> None:
    reading = read(text, current="Deadlift")
    assert reading.ask is None
    assert _rows(reading.performed) == (("Deadlift", 1, "140", 5, None),)


RESERVE = [
    ("60x5.. couldve done another 2-3 easy", "2.5"),
    ("5@60, prob had 1-2 more in me", "1.5"),
    ("5@60 w another 2 to 3 in there i reckon", "2.5"),
    ("60x5, could of squeezed out 1 or 2", "1.5"),
    ("60x5. there were two to three more reps in there", "2.5"),
    ("60x5, another two or three would have gone", "2.5"),
    ("60x5. another 2-3 easily", "2.5"),
    ("60x5, maybe another one or two in me", "1.5"),
    ("5@60, could of ground out another one maybe two", "1.5"),
    ("60x5 had another 2-3 in there", "2.5"),
    ("got 5 @ 9 with 60 on", "1"),
    ("5 @ 8 with 60 on the bar", "2"),
    ("60x5, 2 or 3 more sets to go", None),
    ("60x5, 2-3 min rest", None),
    ("60x5.. 2 more of these to get through", None),
]


@pytest.mark.parametrize(("text", "left"), RESERVE)
def test_a_range_in_reserve_is_its_middle_and_what_is_to_come_none(text: str, left: str | None) -> None:
    reading = read(text, current=BENCH)
    assert reading.ask is None
    assert _rows(reading.performed) == ((BENCH, 1, "60", 5, left),)


BOTH = [
    "bench 57,5kg 5 rep, then 60 same rep",
    "bench 57.5 for 5, then 60 for the next 5",
    "bench 57.5 for 5 and 60 for 5, both kilos",
    "bench 57.5x5 60x5 both in kg",
    "bench 57.5x5, 60x5, kilos for both",
]


@pytest.mark.parametrize("text", BOTH)
def test_two_sets_with_words_for_both(text: str) -> None:
    reading = read(text, unit=Unit.LB if text.endswith(("kg", "kilos", "both")) else Unit.KG)
    assert reading.ask is None
    assert _rows(reading.performed) == ((BENCH, 1, "57.5", 5, None), (BENCH, 2, "60", 5, None))


HALVES = [
    "chins just me no belt: 7, 6 and a half one i wont count",
    "chins 7, 6 and a half rep that doesnt count",
    "chins 7, 6 plus a half i wont count",
    "chins 7 6 then half of a 7th that i wont take",
    "chins 7, 6 and half of one",
    "chins 7 6, last half rep no good so leaving it out",
    "chins, nothing hanging off me: 7, 6 and a wiggle that doesnt count",
    "chins: me, gravity, no plates. 7, 6 and one ugly half rep (binned)",
    "bw chins 7 n 6, second time there was a kippy 7th but thats cheating so 6 it is",
    "chins bodyweight only. 7 then 6, not counting the half at the end",
]


@pytest.mark.parametrize("text", HALVES)
def test_a_half_that_is_not_counted_is_none(text: str) -> None:
    reading = read(text)
    assert reading.ask is None
    assert not reading.skipped
    assert _rows(reading.performed) == ((CHIN, 1, "0", 7, None), (CHIN, 2, "0", 6, None))


HELP = [
    "machine took 20kg off me, 8 then 6",
    "machine helping with 20kg, 8 and 6 chins",
    "chins w the machine giving me 20kg, 8 then 6",
    "with 20kg taken off by the machine: 8, 6",
    "20kg off my bodyweight on the machine, 8 then 6",
    "counterweight 20 kg, chins 8 and 6",
]


@pytest.mark.parametrize("text", HELP)
def test_the_help_of_a_machine_is_taken_off(text: str) -> None:
    reading = read(text, "Chin-Up#1 0x8", current=CHIN)
    assert reading.ask is None
    assert _rows(reading.performed) == ((CHIN, 2, "-20", 8, None), (CHIN, 3, "-20", 6, None))


def test_so_many_times_as_planned_is_no_comparison() -> None:
    assert _rows(read("60 3 times as planned", current=BENCH).performed) == _rows(
        read("60 3 times", current=BENCH).performed
    )


def test_what_hangs_off_the_client_is_added() -> None:
    reading = read("hung 10kg off me, 8 then 6", "Chin-Up#1 0x8", current=CHIN)
    assert _rows(reading.performed) == ((CHIN, 2, "10", 8, None), (CHIN, 3, "10", 6, None))


FAILED = [
    ("went for an 8th chin and failed", 7, "0"),
    ("tried for an 8th chin, no chance", 7, "0"),
    ("attempted an 8th chin but nope", 7, "0"),
    ("rep 8 of chins died halfway up", 7, "0"),
    ("chins rep 8 stalled", 7, "0"),
    ("fell off the bar on the 8th chin", 7, "0"),
    ("went for an 8th chin and GOT IT", 8, None),
    ("got the 8th chin", 8, None),
    ("nearly failed the 8th chin but got it", 8, None),
]


@pytest.mark.parametrize(("text", "reps", "left"), FAILED)
def test_a_named_repetition_that_failed_or_came(text: str, reps: int, left: str | None) -> None:
    reading = read(text, current=CHIN)
    assert reading.ask is None
    assert not reading.skipped
    assert _rows(reading.performed) == ((CHIN, 1, "0", reps, left),)


@pytest.mark.parametrize("text", ["third rep at 140 never came up, dumped it", "140, third rep never came up"])
def test_a_repetition_that_failed_at_its_load(text: str) -> None:
    assert _rows(read(text, current="Deadlift").performed) == (("Deadlift", 1, "140", 2, "0"),)


BETTER = [
    "ditto, felt 10x better tho",
    "same again, 100x smoother",
    "same again, 3 times easier",
    "same, twice as easy",
    "ditto and 5x as smooth",
    "samesies, a 10/10 set",
    "ditto but way less 50/50 than the first",
]


@pytest.mark.parametrize("text", BETTER)
def test_how_much_better_it_was_counts_nothing(text: str) -> None:
    reading = read(text, "Bench Press#1 60x5", current=BENCH)
    assert reading.ask is None
    assert _rows(reading.performed) == ((BENCH, 2, "60", 5, None),)


@pytest.mark.parametrize("text", ["👍 racked it", "👍 back in the hooks", "racked it 👍", "all five up, racked"])
def test_a_bar_put_back_is_a_set_done(text: str) -> None:
    reading = read(text, current="Deadlift")
    assert reading.ask is None
    assert _rows(reading.performed) == (("Deadlift", 1, "140", 5, None),)


@pytest.mark.parametrize("text", ["👍 got it, starting now", "👍 will do", "👍 on it, loading the bar"])
def test_a_thumb_for_what_the_coach_wrote_is_no_set(text: str) -> None:
    assert not read(text, current="Deadlift").performed


@pytest.mark.parametrize(
    "text", ["playlist 10/10, elbow 3/10", "elbow 3/10, playlist 10/10", "gym 9/10, elbow pain 3/10"]
)
def test_the_score_of_a_thing_is_not_that_of_a_hurt(text: str) -> None:
    pain = read(text).pain
    assert pain is not None
    assert (pain.where, pain.score) == ("elbow", 3)


def test_muscles_that_hate_the_coach_are_no_pain() -> None:
    assert read("plank 2x50, abs hate u").pain is None
    assert read("plank 2x50, knee hates me").pain is not None


@pytest.mark.parametrize("text", ["gonna bin the flys or i'll miss my bus", "gonna bin the flys or ill be late"])
def test_what_is_to_be_left_out_for_the_bus_is_skipped(text: str) -> None:
    assert read(text).skipped == ("Chest Fly",)


def _rows(performed: object) -> tuple[object, ...]:
    assert isinstance(performed, tuple)
    return tuple(
        (p.exercise, p.set, f"{p.load.amount:f}", p.reps, None if p.rir is None else f"{p.rir:g}".rstrip())
        for p in performed
    )
