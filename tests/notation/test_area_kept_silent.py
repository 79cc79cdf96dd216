"""A place that is known to hurt and kept silent is no hurt; one that was silent only at first is.

The words are those of everyday talk; common practice, no source.
"""

import pytest

from tests.notation.plans import read

DONE = "Bench Press#1 60x5"

SILENT = [
    "60x5 and the bad knee didnt make a peep for once",
    "60x5 and the bad shoulder never said a word",
    "elbow that always moans kept its gob shut, 60x5",
    "60x5, dodgy wrist kept its mouth shut",
    "old hamstring injury today say nothing, 60x5",
    "60x5 the bad elbow said nothing",
    "60x5. my bad shoulder hasnt made a sound",
    "60x5 without a murmur from the bad shoulder",
    "60x5, sore shoulder didnt utter a word",
    "60x5, not a peep from the bad wrist",
    "60x5, the grumpy knee stayed silent",
    "60x5 and the bad knee was silent",
    "60x5, bad shoulder kept quiet",
]


@pytest.mark.parametrize("text", SILENT)
def test_a_place_that_kept_silent_is_no_hurt(text: str) -> None:
    reading = read(text, DONE, current="Bench Press")
    assert reading.pain is None
    assert reading.ask is None
    assert [(row.set, row.reps) for row in reading.performed] == [(2, 5)]


HURTS = [
    ("60x5 and the bad knee didnt make a peep till rep 4, then it screamed", "knee"),
    ("60x5 the shoulder said nothing until the last rep, then it pinched", "shoulder"),
    ("60x5 bad knee didnt make a peep but my elbow is sore", "elbow"),
    ("60x5 knee is killing me, coach said nothing about it", "knee"),
    ("60x5 knee hurts, i never said a word", "knee"),
    ("60x5 my shoulder made a noise and hurt", "shoulder"),
    ("60x5 i said nothing last week but my knee hurts", "knee"),
    ("60x5 bad wrist was quiet at first, then it really hurt", "wrist"),
    ("60x5 shoulder pinched, said nothing to the lads", "shoulder"),
    ("60x5 elbow hurts kept quiet about it", "elbow"),
    ("60x5 sharp pain in the knee, kept quiet", "knee"),
    ("60x5 bad pain in the knee, kept quiet", "knee"),
    ("60x5 wrist hurts, was quiet in here", "wrist"),
    ("60x5 bad knee hurts, never said a word", "knee"),
    ("60x5, kept my mouth shut but the elbow is sore", "elbow"),
]


@pytest.mark.parametrize(("text", "where"), HURTS)
def test_what_hurts_all_the_same_is_pain(text: str, where: str) -> None:
    pain = read(text, DONE, current="Bench Press").pain
    assert pain is not None
    assert pain.where == where
