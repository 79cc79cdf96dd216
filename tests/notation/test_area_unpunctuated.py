"""A message typed or dictated without its commas is read as the one that has them, and none is put where none belongs.

The sentences are written for this table; a bar stands where a client in a hurry leaves the comma out.
"""

import pytest

from bot.notation.pain import told_pain
from bot.notation.reading import Reading, Request, read_message
from bot.notation.unpunctuated import punctuated
from bot.training.pain import PainSaid
from bot.training.plan import LoadStyle, PlannedExercise
from bot.training.report import Side
from bot.training.units import Unit
from tests.notation.plans import DROP, MINI, NOW, row, sets

CLEAN = PlannedExercise("Power Clean", sets("65", 2, 4, 4), aliases=("cleans",))
CHIN = PlannedExercise("Chin-Up", sets("5", 5, 9), load_style=LoadStyle.BODYWEIGHT, aliases=("chins",))
HACK = PlannedExercise("Hack Squat", sets("110", 8, 10, 3, DROP), aliases=("hacks",))
LATERAL = PlannedExercise("Lateral Raise", sets("9", 12, 15, 3, MINI), aliases=("laterals",))
PLAN = (CLEAN, CHIN, HACK, LATERAL)
HACKS = ("Hack Squat#1 110x9", "Hack Squat#2 110x9", "Hack Squat#3 110x8", "Hack Squat#3 75x8 drop")

SAID = (
    # sets behind sets
    "chins +5x6| +5x6| bw x 8", "warm-up 40x3 50x3| work 65x3", "cleans 65x3 @7| x3 @8| x2 @9",
    "laterals 9x14 +4 +4| 9x12 +4 +3", "65x3| second 65x2", "first one 65x3| after that 65x2",
    # what is told of them
    "65x3| only kilo plates at this gym", "65 for 3| the pound plates were all in use", "65x3| bar was moving slowly",
    "65 for 3| plates are the thick ones here", "65x3| took it easy", "65x3| reckon i was sleepy",
    "65x2| could have done more",
    # the body, and what hurts
    "65x3| left wrist pinched on the rack", "cleans 65x3| right elbow hurts a bit", "65x3| legs are cooked",
    "65x3| my knee clicked but no pain", "65x2 today| shoulder is sore", "my knee hurts going down| the left one",
    # sets behind what hurts, and behind a reason
    "left hip pinches when i sit deep| 65x3", "slow start because traffic was hell| 65x3",
    # days, ends, reasons, time and questions
    "from monday| forgot to send: cleans 65x3", "yesterday| phone was flat: cleans 65x3 65x3",
    "no hacks| done for today", "skipping the laterals| finished", "laterals no| no time", "hacks nope| need to run",
    "no time for laterals| got 15 minutes", "30 min| after i have a call", "65x3| should i go up?",
    "65x3| what about the next one?",
)  # fmt: skip
CORRECTED = (
    "set 3 was 9 not 8| drop stays", "third hack set was 9 reps not 8| the drop is right",
    "scrap that last set| it was my mate's", "delete set 3 of the hacks| i miscounted", "sorry not 110| 105",
    "wrong| set 2 was 8",
)  # fmt: skip
WHOLE = (
    "cleans 65x3 with the kilo plates", "65x3 because the last two went to pieces", "no hacks no laterals",
    "only 12 in the last", "10 right leg 9 left leg", "hacks 110x9 > 75x8", "20 calf raises", "8 left hip thrusts",
    "65x3 because my mate squats 140x5", "took me 50 min", "be there in 20 min", "hang 1 min 5 sec", "60x5 x3",
    "i leave the rest of them", "one rep maybe two more", "saturday i am free. 65x3", "must i start with 70 next time?",
    "shoulder hurt last week at 60x5", "no hacks because i plan 62.5x5", "set 1 was 60 set 2 stays 62.5",
    "60 could have done 7", "hacks no i had 6",
    "two of the 20 plates are missing", "two 20 kg plates are missing", "squats 60 to 62 5 reps",
)  # fmt: skip


def _read(text: str, *done: str) -> Reading:
    return read_message(Request(text, Unit.KG, NOW, PLAN, tuple(row(d) for d in done)))


def _kept(reading: Reading) -> tuple[object, ...]:
    """What is kept, and whether it is asked about."""
    said = (reading.pain, reading.minutes, reading.day, reading.question, reading.finished, reading.skipped)
    return reading.performed, reading.replaces, *said, reading.ask is None


@pytest.mark.parametrize("said", SAID)
def test_without_its_commas_it_is_read_alike(said: str) -> None:
    bare, marked = _read(said.replace("|", "")), _read(said.replace("|", ","))
    assert _kept(bare) == _kept(marked)
    assert _kept(bare) != _kept(_read(""))


@pytest.mark.parametrize("said", CORRECTED)
def test_a_correction_without_its_commas_is_read_alike(said: str) -> None:
    bare, marked = _read(said.replace("|", ""), *HACKS), _read(said.replace("|", ","), *HACKS)
    assert _kept(bare) == _kept(marked)
    assert bare.replaces


@pytest.mark.parametrize("text", WHOLE)
def test_nothing_is_put_where_nothing_new_opens(text: str) -> None:
    assert punctuated(text).text == text


def test_minis_that_were_forgotten_follow_a_colon() -> None:
    assert punctuated("forgot the minis on the last laterals 4 3").text == "forgot the minis on the last laterals: 4 3"


def test_places_are_those_of_the_message_as_typed() -> None:
    """The words that gave a value, and those that are asked about, stand where the client typed them."""
    text = "65x3 left wrist pinched 65x2 right elbow hurts"
    reading = _read(text)
    spans = {e.value: text[slice(*e.span)] for e in reading.evidence}
    assert "wrist" in spans["wrist"]
    asked = "650x3 left wrist pinched"
    ask = _read(asked).ask
    assert ask is not None
    assert asked[slice(*ask.span)] == "650x3"


def test_the_longest_message_is_read_to_its_end() -> None:
    """The commas that are put into it take no room from what stands last: neither from a set nor from a hurt."""
    said = "65x3 left wrist pinched and bar was slow 65x2 right elbow hurts"
    assert len(punctuated(said).text) > len(said)
    for last, kept in (("cleans 65x4", "Power Clean#3 65x4"), ("right knee hurts 9/10", None)):
        text = said + last.rjust(4096 - len(said))
        reading = _read(text)
        assert kept is None or reading.performed[-1] == row(kept)
        if kept is None:
            assert (reading.pain, told_pain(text)) == (PainSaid("knee", 9, Side.RIGHT, urgent=False),) * 2
