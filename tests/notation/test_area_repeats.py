"""A set done again, told in other words than `same`: of the last one, of one that is named, of two or three more.

What only sounds like it (how it felt, what was or will be done by others or another day, a question) repeats nothing.
From memory, no source.
"""

import pytest

from tests.notation.plans import read, row, rows

ONE = "Bench Press#1 60x5"
TWO = (ONE, "Bench Press#2 62.5x4")

LIKE = ("copy of", "a replica of", "equal to", "equal as", "identical as", "matched", "mirrored", "no difference from",
        "unchanged from", "went exactly like", "repeat of", "precisely as", "replicated")  # fmt: skip
LAST = ("the last set", "the previous one", "my last one", "the set before", "the one just gone")


@pytest.mark.parametrize("last", LAST)
@pytest.mark.parametrize("like", LIKE)
def test_like_the_last_one(like: str, last: str) -> None:
    """It is the set stored last, done once more."""
    assert read(f"{like} {last}", *TWO, current="Bench Press").performed == (row("Bench Press#3 62.5x4"),)


@pytest.mark.parametrize("first", ["the first one", "set 1", "my first set", "the 1st"])
@pytest.mark.parametrize("like", LIKE)
def test_like_the_first_one(like: str, first: str) -> None:
    """It is the set that is named."""
    assert read(f"{like} {first}", *TWO, current="Bench Press").performed == (row("Bench Press#3 60x5"),)


@pytest.mark.parametrize(
    "text",
    [
        "3rd = 2nd",
        "set 3 = set 2",
        "third set: see the second",
        "did the very same thing as in the last set",
        "i repeated what i did before",
        "that last set one more time",
        "again the equal set",
        "another equal one",
        "the previous one over again",
        "matched the last one, rep for rep",
        "see above",
        "as above",
    ],
)
def test_the_last_one_again(text: str) -> None:
    """Said by signs, by what was done, or in a second language."""
    assert read(text, *TWO, current="Bench Press").performed == (row("Bench Press#3 62.5x4"),)


@pytest.mark.parametrize(
    "text",
    [
        "two others like the first",
        "2 more equal sets",
        "another two copies of that",
        "i made two identical series more",
        "the remaining two were no different from the first",
        "sets 2 and 3 = set 1",
        "sets two and three: see set one",
        "repeated it two more times",
        "replicated that set twice more",
        "both others unchanged",
        "a pair of further sets exactly as the first",
        "the same thing two times more",
    ],
)
def test_two_more_alike(text: str) -> None:
    """Two sets, and no third one."""
    assert read(text, ONE, current="Bench Press").performed == rows("Bench Press#2 60x5", "Bench Press#3 60x5")


@pytest.mark.parametrize(
    "text",
    [
        "felt good, like the first one",
        "see that",
        "like it",
        "it was like that before",
        "will do the same as the last set",
        "next set i'll copy the first",
        "my mate copied the last set",
        "is it the same as the last set?",
        "nearly equal to the last set",
        "looked like the last one",
        "see the previous message",
        "two more sets to go",
        "tomorrow an exact copy of the last set",
        "not the same as the first set",
    ],
)
def test_no_set_is_repeated(text: str) -> None:
    """Of others, another day, a question, a look, or a denial: nothing is stored."""
    assert read(text, ONE, current="Bench Press").performed == ()


def test_its_effort_is_its_own() -> None:
    """An effort behind it is that of the new set."""
    assert read("identical to the last one @8", ONE).performed == (row("Bench Press#2 60x5 rir 2"),)
