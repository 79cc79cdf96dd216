"""Hurts told in passing, beside a set: what can be felt, what is compared with an old hurt, scores on a scale."""

import pytest

from bot.notation.pain import told_pain

TOLD = [
    ("can feel a pain in my left elbow", "elbow", None),
    ("i can feel a twinge in the right knee", "knee", None),
    ("left shoulder dull ache, same as last year", "shoulder", None),
    ("on a scale of 1 to 10 my wrist is a 5", "wrist", 5),
    ("hip is a 4 on the scale of one to ten", "hip", 4),
    ("level 3 pain in the right knee", "knee", 3),
]


@pytest.mark.parametrize(("text", "where", "score"), TOLD)
@pytest.mark.parametrize("beside", ["{}", "60x9, {}", "{}. 60x9"])
def test_a_hurt_told_in_passing_is_heard(text: str, where: str, score: int | None, beside: str) -> None:
    """With its place and score; the ends of a scale are none."""
    pain = told_pain(beside.format(text))
    assert pain is not None
    assert (pain.where, pain.score) == (where, score)


@pytest.mark.parametrize(
    "text",
    [
        "can you feel your abs in planks?",
        "hurt my back last year, fine now",
        "pre workout kicking in",
        "never once hurt",
    ],
)
def test_what_is_no_hurt_of_today(text: str) -> None:
    """Questions, what is over, look-alikes."""
    assert told_pain(text) is None
