"""Where it can hurt: the words for places, the plain noun kept, and the kind of tissue.

Common practice, no source: which places get sore from training (muscle), which
should not (joint), and which could be either (mixed).
"""

from dataclasses import dataclass
from enum import Enum

from bot.notation.hurt.rows import word_set


class Tissue(Enum):
    """What a place is made of, as far as soreness after training goes."""

    JOINT = "joint"
    """Joints, tendons, bones: not sore from training as such."""
    MUSCLE = "muscle"
    """Sore from training as a matter of course."""
    MIXED = "mixed"
    """Could be either: shoulder, hip, back, neck."""
    CHEST = "chest"
    """What is urgent wherever it hurts."""
    ORGAN = "organ"
    """Head, stomach, eye: never sore from training."""


@dataclass(frozen=True, slots=True)
class Place:
    """A place as kept: the plain singular noun."""

    name: str
    tissue: Tissue
    plural: bool
    """Said in the plural: `legs`."""


_JOINTS = """
knee: knee, knees, kneee
kneecap: kneecap, kneecaps, knee cap, knee caps
patella: patella
elbow: elbow, elbows, funny bone, funnybone
wrist: wrist, wrists
ankle: ankle, ankles
achilles: achilles, achilles tendon, achilles heel, achillies, achiles
shin: shin, shins
heel: heel, heels
foot: foot, feet, foots, ball of my foot, ball of foot, ball of the foot
toe: toe, toes, big toe, pinky toe, little toe
arch: arch of my foot, foot arch, arches, my arch, left arch, right arch
instep: instep, insteps
sole: sole, soles, sole of my foot
forefoot: forefoot
finger: finger, fingers, index finger, ring finger, little finger, middle finger, fingertip, fingertips
pinky: pinky, pinkie
knuckle: knuckle, knuckles
thumb: thumb, thumbs
hand: hand, hands
palm: palm, palms
jaw: jaw, jawbone
rib: rib, ribs
ribcage: ribcage, rib cage
collarbone: collarbone, collar bone, collarbones
clavicle: clavicle, clavicles
armpit: armpit, armpits, arm pit
pelvis: pelvis, pubic bone, pubis
hip bone: hip bone, hipbone
shinbone: shinbone, shin bone
rotator cuff: rotator cuff, rotator, rotator cuffs, cuff
ac joint: ac joint, ac
si joint: si joint, sij, si, sacroiliac joint, sacroiliac
tailbone: tailbone, tail bone
coccyx: coccyx
sacrum: sacrum
spine: spine
column: column, spinal column, vertebral column
vertebra: vertebra, vertebrae, vertebras
disc: disc, disk
tendon: tendon, tendons, patellar tendon, patella tendon
ligament: ligament, ligaments
meniscus: meniscus
acl: acl
mcl: mcl
it band: it band, itb, i t band
plantar fascia: plantar fascia
labrum: labrum
nerve: nerve
joint: joint, joints
bone: bone, bones
bunion: bunion, bunions
quad: quad tendon, quads tendon
bicep: bicep tendon, biceps tendon
tricep: tricep tendon, triceps tendon
hamstring: hamstring tendon, hamstrings tendon, hammy tendon
skin: skin
scar: scar, scar tissue
callus: callus, calluses, callous
nail: nail, nails, fingernail
toenail: toenail, toenails, toe nail
"""
_MIXED = """
shoulder: shoulder, shoulders, shldr, shldrs
shoulder blade: shoulder blade, shoulder blades, shoulderblade
scapula: scapula, scap, scapulas
hip: hip, hips
hip flexor: hip flexor, hip flexors
waist: waist, waistline
back: my back, back, backs
lower back: lower back, low back, lowerback, lowback, lumbar, lumbar spine, small of my back, bottom of my back
upper back: upper back, upperback, top of my back
mid back: mid back, middle back, midback, middle of my back
neck: neck, back of my neck, nape
groin: groin, groins, groyne
side: my side, left side, right side
psoas: psoas
piriformis: piriformis, piri, piriformus
ql: ql
"""
_MUSCLES = """
quad: quad, quads, quadricep, quadriceps, vmo
hamstring: ham string, hamstring, hamstrings, hamstring muscle, hamstings
hammy: hammy, hammies, hammie
ham: ham, hams
glute: glute, glutes
bum: bum, bums, butt, arse, ass, booty
buttock: buttock, buttocks
backside: backside, backsides
calf: calf, calves, calfs, calve
soleus: soleus
thigh: thigh, thighs, inner thigh, outer thigh
adductor: adductor, adductors
abductor: abductor, abductors
leg: leg, legs
arm: arm, arms, upper arm
pec: pec, pecs, pectoral, pectorals
lat: lat, lats
trap: trap, traps
rhomboid: rhomboid, rhomboids
delt: delt, delts, deltoid, deltoids, rear delt, front delt, side delt
bicep: bicep, biceps, bi
tricep: tricep, triceps, tri
forearm: forearm, forearms
ab: ab, abs, abdominal, abdominals
core: core
oblique: oblique, obliques
erector: erector, erectors
body: body, whole body, entire body, upper body, lower body
"""
_CHEST = """
chest: chest, chest wall, left side of my chest, rib cage and chest, thorax
breast: breast
sternum: sternum
breastbone: breastbone, breast bone
heart: heart, ticker
"""
_ORGANS = """
head: head, back of my head
skull: skull
temple: temple, temples
forehead: forehead
scalp: scalp
face: face
mouth: mouth
chin: my chin, the chin, on chin
cheek: cheek, cheeks, cheekbone
eyelid: eyelid, eyelids
gum: gum, gums
eye: eye, eyes
ear: ear, ears
throat: throat
stomach: stomach
tummy: tummy
belly: belly
gut: gut, guts
crotch: crotch
testicle: testicle, testicles
abdomen: abdomen
tooth: tooth, teeth
tongue: tongue
lip: lip
nose: nose
lung: lung, lungs
kidney: kidney, kidneys
bladder: bladder
"""
_TABLES = (
    (_JOINTS, Tissue.JOINT),
    (_MIXED, Tissue.MIXED),
    (_MUSCLES, Tissue.MUSCLE),
    (_CHEST, Tissue.CHEST),
    (_ORGANS, Tissue.ORGAN),
)
_PLURALS = frozenset({"feet", "calves", "hammies", "teeth"})
_SINGULARS = frozenset(
    {"biceps", "triceps", "quadriceps", "achilles", "abs", "psoas", "piriformis", "soleus", "pecs major"}
)


def _is_plural(phrase: str) -> bool:
    last = phrase.rsplit(" ", 1)[-1]
    return last in _PLURALS or (last.endswith("s") and not last.endswith("ss") and last not in _SINGULARS)


def _places() -> dict[str, Place]:
    out: dict[str, Place] = {}
    for table, tissue in _TABLES:
        for row in table.strip().splitlines():
            name, phrases = row.split(":")
            for phrase in phrases.split(","):
                out[phrase.strip()] = Place(name.strip(), tissue, _is_plural(phrase.strip()))
    return out


PLACES = _places()
"""From the words for a place, as tokens joined by one space, to the place."""

EXERCISE_TAILS = word_set(
    """
    press presses pressing day days workout workouts session fly flys flye flyes flies curl curls ext exts extension
    extensions raise raises thrust thrusts thruster thrusters bridge bridges pulldown pulldowns pushdown pushdowns
    row rows squat squats support supports supported dip dips machine kickback kickbacks abduction adduction
    abductions adductions
    tap taps drive drives tuck tucks sleeve sleeves wrap wraps strap straps roller harness pump pumps exercise
    exercises  circuit finisher superset volume accessories focus focused rotations circles stretch stretches
    mobility lift lifts hinge hinges crunch crunches plank planks twist twists walks carry carries swing swings
    snatch jerk lunge lunges deadlift deadlifts pullover pullovers crusher crushers wheel rollout rollouts shrug
    shrugs bench bike pad pads belt   touches circuits warmup training  height width
    stance rack racked loaded elevated bar  slide slides march marches flutter plate plates platform position
    positions positioning
    placement spacing setup path push pushup pushups ups hops hop
    """
)
"""Words after a place that make it the name of an exercise or a thing: `leg press`, `chest day`, `trap bar`."""

NOT_MY_BACK = word_set(
    """
    to at on off in up down again from into with for then today tomorrow squat squats day extension extensions ext
    raise raises rack row rows set sets lever foam home work by here there soon later stronger next after under
    through out and-forth garden door seat pad hyper tyre tire wheel tyres brake brakes
    """
)
"""Words after `back` that make it an adverb or an exercise, where no word before says that it is a place."""

BACK_BEFORE = word_set(
    """
    my the lower low upper mid middle his her your their a sore bad dodgy tight left right lwr me whole stiff own
    old dicky bloody dodgey strained tweaked pulled hurt hurts hurting tweak injured in slight
    """
)
"""Words before `back` that make it a place."""

SURFACE = frozenset({"skin", "callus", "nail", "scar"})
"""What covers a place, which gives way to it even from afar."""
VAGUE = frozenset(
    {"skin", "callus", "nail", "scar", "tendon", "ligament", "nerve", "joint", "bone", "body", "side", "disc"}
)
"""Places that give way to a plainer one beside them: skin off the hand is the hand."""
HEADS = frozenset({"head", "skull", "temple", "forehead"})
"""The names under which a headache goes."""
LIMBS = word_set(
    "hand wrist finger pinky thumb foot toe arm leg forearm ankle forefoot shin bicep tricep calf thigh quad"
)
"""The parts of a limb that may lose strength or feeling, by name."""
FACES = word_set("face eye lip mouth eyelid cheek")
"""The parts of a face that may droop."""
