"""Which joints an exercise would have to spare where something hurts. A mapping of words, never a diagnosis.

Common practice, no source. It errs towards more joints; what is no place to train around (the heart, an eye, "the
skin") maps to none.
"""

from collections.abc import Mapping

from bot.training.catalogue_exercise import Exercise
from bot.training.catalogue_terms import Joint

_ROWS: tuple[tuple[tuple[Joint, ...], str], ...] = (
    ((Joint.NECK,), "neck, throat, jaw"),
    ((Joint.SHOULDER,), "shoulder, rotator cuff, ac joint, collarbone, clavicle, delt, deltoid, armpit, pec"),
    (
        (Joint.SHOULDER, Joint.UPPER_BACK),
        "shoulder blade, scapula, chest, breast, sternum, breastbone, rib, ribcage, lat",
    ),
    ((Joint.SHOULDER, Joint.ELBOW), "arm, upper arm, bicep, biceps, tricep, triceps"),
    ((Joint.SHOULDER, Joint.HIP), "labrum"),
    ((Joint.NECK, Joint.SHOULDER, Joint.UPPER_BACK), "trap, trapezius"),
    ((Joint.ELBOW,), "elbow"),
    ((Joint.ELBOW, Joint.WRIST), "forearm"),
    ((Joint.WRIST,), "wrist, hand, finger, pinky, thumb, knuckle, palm, callus, grip"),
    ((Joint.UPPER_BACK,), "upper back, mid back, middle back, rhomboid"),
    (
        (Joint.LOWER_BACK,),
        "lower back, low back, lumbar, ab, abs, abdominal, abdomen, stomach, belly, tummy, gut, core, oblique, ql",
    ),
    ((Joint.LOWER_BACK, Joint.UPPER_BACK), "back, erector"),
    ((Joint.NECK, Joint.UPPER_BACK, Joint.LOWER_BACK), "spine, column, vertebra, disc, disk"),
    ((Joint.LOWER_BACK, Joint.HIP), "si joint, tailbone, coccyx, sacrum, psoas, pelvis, waist"),
    ((Joint.HIP,), "hip, hip bone, hip flexor, groin, glute, piriformis, bum, backside, buttock, adductor, abductor"),
    ((Joint.HIP, Joint.KNEE), "thigh, quad, quadriceps, quadricep, hamstring, ham, hammy, hammies, it band"),
    ((Joint.KNEE,), "knee, kneecap, patella, meniscus, acl, mcl"),
    ((Joint.KNEE, Joint.ANKLE), "calf, shin, shinbone, soleus, lower leg"),
    ((Joint.HIP, Joint.KNEE, Joint.ANKLE), "leg, lower body"),
    (
        (Joint.ANKLE,),
        "ankle, achilles, heel, foot, forefoot, instep, sole, toe, toenail, bunion, arch, plantar fascia, nail",
    ),
    (tuple(Joint), "body, whole body, joint, bone"),
    ((Joint.NECK, Joint.SHOULDER, Joint.ELBOW, Joint.WRIST, Joint.UPPER_BACK), "upper body"),
)
_PLACES: Mapping[str, tuple[Joint, ...]] = {
    place.strip(): joints for joints, places in _ROWS for place in places.split(",")
}
_PLURALS: Mapping[str, str] = {"feet": "foot", "calves": "calf", "arches": "arch"}
_SIDES = ("left", "right", "my", "both", "the", "inner", "outer", "front", "rear")


def joints_of(place: str) -> tuple[Joint, ...]:
    """The joints to spare for a plain noun (`knee`, `lower back`); none where it names no such place.

    Case, side, plural and a leading "my" don't count.

    >>> joints_of("left knees")
    (<Joint.KNEE: 'knee'>,)
    """
    words = place.casefold().replace("-", " ").split()
    while words and words[0] in _SIDES and " ".join(words) not in _PLACES:
        words = words[1:]
    said = " ".join(words)
    if said in _PLACES:
        return _PLACES[said]
    return _PLACES.get(_singular(said), ())


def joints_hurt(place: str | None, exercise: Exercise | None) -> frozenset[Joint]:
    """The joints to spare for pain as said during an exercise: of the place; where no place was said, or none that is
    known, all that the exercise loads."""
    joints = frozenset(joints_of(place)) if place else frozenset()
    return joints or (exercise.joints if exercise is not None else frozenset())


def _singular(said: str) -> str:
    head, _, last = said.rpartition(" ")
    single = _PLURALS.get(last, last.removesuffix("s"))
    return f"{head} {single}".strip()
