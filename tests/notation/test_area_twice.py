"""What happened twice, what was gone back to, and a load said with `oh`: told beside sets, and read as what it is."""

import pytest

from tests.notation.plans import read, row

HAPPENED = ("counted the last one twice", "dropped the bar twice", "had to rack it twice", "stopped to breathe twice")
JOINED = ("60x5, {}", "60x5. {}", "60x5 but {}", "60x5 - {}")


@pytest.mark.parametrize("joined", JOINED)
@pytest.mark.parametrize("happened", HAPPENED)
def test_what_happened_twice_is_no_second_set(joined: str, happened: str) -> None:
    """One set was done, whatever was dropped or racked twice in it."""
    assert read(joined.format(happened)).performed == (row("Bench Press#1 60x5"),)


@pytest.mark.parametrize("text", ["60x5 twice", "60x5, did that twice", "60x5, twice"])
def test_a_set_done_twice_is_two(text: str) -> None:
    """`twice` behind a set counts it."""
    assert read(text).performed == (row("Bench Press#1 60x5"), row("Bench Press#2 60x5"))


@pytest.mark.parametrize("back", ["back to", "then back to", "went back to", "and then back to"])
@pytest.mark.parametrize("joint", [". ", ", ", "\n"])
def test_a_load_gone_back_to_is_a_set(back: str, joint: str) -> None:
    """With assistance or without, it is a set that was done."""
    reading = read(f"bw x 6{joint}{back} 15 assist x 8", current="Chin-Up")
    assert reading.performed == (row("Chin-Up#1 0x6"), row("Chin-Up#2 -15x8"))


@pytest.mark.parametrize("said", ["one oh five", "one o five", "one zero five", "a hundred and five"])
@pytest.mark.parametrize(
    "frame", ["{} for eight", "went down to {} for eight", "set two {} for eight", "{} eight reps"]
)
def test_a_nought_said_as_a_letter(frame: str, said: str) -> None:
    """Dictated loads above a hundred."""
    reading = read(frame.format(said), "Deadlift#1 140x5", current="Deadlift")
    assert reading.performed == (row("Deadlift#2 105x8"),)


def test_body_weight_behind_added_weight_without_commas() -> None:
    """`bwx8` opens a set of its own."""
    reading = read("+5x8 +5x7 bwx8", current="Chin-Up")
    assert reading.performed == (row("Chin-Up#1 5x8"), row("Chin-Up#2 5x7"), row("Chin-Up#3 0x8"))


@pytest.mark.parametrize("then", ["after that", "and after that", "then"])
def test_a_dictated_load_behind_another(then: str) -> None:
    """`after that one fifteen`: the load, not a set that is pointed at; `bar was slow` ends nothing."""
    reading = read(
        f"one fifteen for eight {then} one ten for eight bar was slow", "Deadlift#1 140x5", current="Deadlift"
    )
    assert reading.performed == (row("Deadlift#2 115x8"), row("Deadlift#3 110x8"))
