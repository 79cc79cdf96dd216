"""Words for where it hurts, and the joints that an exercise would load there. Common practice, no source."""

import pytest

from bot.notation.hurt.places import PLACES, VAGUE, Tissue
from bot.training.catalogue import catalogue
from bot.training.catalogue_places import joints_hurt, joints_of
from bot.training.catalogue_terms import Joint

J = Joint


@pytest.mark.parametrize(
    ("place", "joints"),
    [
        ("knee", {J.KNEE}),
        ("lower back", {J.LOWER_BACK}),
        ("shoulder", {J.SHOULDER}),
        ("wrist", {J.WRIST}),
        ("elbow", {J.ELBOW}),
        ("hip", {J.HIP}),
        ("ankle", {J.ANKLE}),
        ("neck", {J.NECK}),
        ("Left Knee", {J.KNEE}),
        ("my right shoulders", {J.SHOULDER}),
        ("knees", {J.KNEE}),
        ("feet", {J.ANKLE}),
        ("calves", {J.KNEE, J.ANKLE}),
        ("lower-back", {J.LOWER_BACK}),
        ("inner thigh", {J.HIP, J.KNEE}),
        ("back", {J.LOWER_BACK, J.UPPER_BACK}),
        ("hamstring", {J.HIP, J.KNEE}),
        ("achilles", {J.ANKLE}),
        ("piriformis", {J.HIP}),
    ],
)
def test_a_place_maps_to_its_joints(place: str, joints: set[Joint]) -> None:
    """Whatever the side, the case and the number."""
    assert set(joints_of(place)) == joints


@pytest.mark.parametrize("place", ["", "  ", "heart", "eye", "the", "left", "dumbbell", "kneel"])
def test_what_is_no_such_place_maps_to_none(place: str) -> None:
    """An organ is nothing to train around, and a word that is no place says nothing."""
    assert joints_of(place) == ()


def test_every_place_that_the_pain_reader_keeps_is_known() -> None:
    """Joints, muscles and what may be either map to joints; places too vague to say may map to none."""
    for kept in {p.name: p for p in PLACES.values()}.values():
        if kept.tissue is not Tissue.ORGAN and kept.name not in VAGUE and kept.name != "heart":
            assert joints_of(kept.name), kept.name


def test_every_joint_is_meant_by_its_own_word() -> None:
    """Each joint's own name maps to it."""
    for joint in Joint:
        assert joint in joints_of(joint.value)


def test_pain_without_a_place_spares_all_that_the_exercise_loads() -> None:
    """As cautious as can be: what was done when it hurt must not be done under another name."""
    press = catalogue().find("Bench press")
    assert press is not None
    assert joints_hurt(None, press) == press.joints
    assert joints_hurt("skin", press) == press.joints
    assert joints_hurt("wrist", press) == {Joint.WRIST}
    assert joints_hurt(None, None) == frozenset()
