"""The catalogue keeps its rules: names, muscles, joints, equipment, coverage; and what published work says of it."""

import tomllib
from collections import Counter
from importlib.resources import files

import pytest

from bot.notation.abbreviations import vocabulary
from bot.notation.lexicon import lexicon_words
from bot.training.catalogue import aliases_of, catalogue
from bot.training.catalogue_exercise import Exercise, name_key, name_words
from bot.training.catalogue_file import ROW_KEYS, read_exercises
from bot.training.catalogue_terms import Equipment, Joint, Muscle, Pattern, WarmUp
from bot.training.gym import loadable
from bot.training.people import Gym
from bot.training.plan import LoadStyle, Measure, Region
from bot.training.samples import sample_programme
from bot.training.units import Unit
from bot.training.week_story import _PULL, _PUSH, _longest

ALL = catalogue().exercises
HELD = {Equipment.BAR, Equipment.HEX_BAR, Equipment.DUMBBELLS, Equipment.KETTLEBELL}
KINDS = {
    "bar": {Equipment.BAR, Equipment.HEX_BAR},
    "dumbbells": {Equipment.DUMBBELLS},
    "kettlebell": {Equipment.KETTLEBELL},
    "machine": {Equipment.MACHINE, Equipment.PLATE_MACHINE},
    "cable": {Equipment.CABLE},
    "body": {Equipment.BODY_WEIGHT, Equipment.NONE},
    "band": {Equipment.BAND},
}
"""The kinds of equipment that every pattern should be covered with."""
_NO_PULL_DOWN = "a free weight pulls down, and nothing pulls it up while one hangs or sits"
_NO_HOLD = "a free weight cannot be held by the foot or thigh safely"
_NOBODY = "the limb alone is no load worth a set"
_NOT_USUAL = "no machine of this kind is usual"
EXEMPT: dict[tuple[Pattern, str], str] = {
    (Pattern.VERTICAL_PULL, "bar"): _NO_PULL_DOWN,
    (Pattern.VERTICAL_PULL, "dumbbells"): _NO_PULL_DOWN,
    (Pattern.VERTICAL_PULL, "kettlebell"): _NO_PULL_DOWN,
    (Pattern.CARRY, "machine"): "a machine stays where it is",
    (Pattern.CARRY, "cable"): "a cable stays where it is",
    (Pattern.CARRY, "band"): "a band stays where it is tied",
    (Pattern.SHOULDER_ABDUCTION, "body"): _NOBODY,
    (Pattern.SHOULDER_FLEXION, "machine"): _NOT_USUAL,
    (Pattern.SHOULDER_FLEXION, "body"): _NOBODY,
    (Pattern.CHEST_FLY, "bar"): "the hands are tied together by it",
    (Pattern.CHEST_FLY, "kettlebell"): "it hangs off the wrist where the arms are apart",
    (Pattern.REAR_FLY, "bar"): "the hands are tied together by it",
    (Pattern.REAR_FLY, "kettlebell"): "it hangs off the wrist where the arms are apart",
    (Pattern.SHOULDER_ROTATION, "bar"): "far too heavy, and the hands are tied together",
    (Pattern.SHOULDER_ROTATION, "kettlebell"): "too heavy where one begins",
    (Pattern.SHOULDER_ROTATION, "machine"): _NOT_USUAL,
    (Pattern.SHOULDER_ROTATION, "body"): _NOBODY,
    (Pattern.SHOULDER_EXTENSION, "body"): "the body hung from straight arms is a feat, not an exercise",
    (Pattern.SHOULDER_ELEVATION, "body"): _NOBODY,
    (Pattern.KNEE_EXTENSION, "bar"): _NO_HOLD,
    (Pattern.KNEE_EXTENSION, "dumbbells"): _NO_HOLD,
    (Pattern.KNEE_EXTENSION, "kettlebell"): _NO_HOLD,
    (Pattern.KNEE_FLEXION, "bar"): _NO_HOLD,
    (Pattern.KNEE_FLEXION, "kettlebell"): _NO_HOLD,
    (Pattern.SHIN, "bar"): _NO_HOLD,
    (Pattern.SHIN, "dumbbells"): _NO_HOLD,
    (Pattern.SHIN, "kettlebell"): _NO_HOLD,
    (Pattern.SHIN, "machine"): _NOT_USUAL,
    (Pattern.HIP_ABDUCTION, "bar"): _NO_HOLD,
    (Pattern.HIP_ABDUCTION, "dumbbells"): _NO_HOLD,
    (Pattern.HIP_ABDUCTION, "kettlebell"): _NO_HOLD,
    (Pattern.HIP_ADDUCTION, "bar"): _NO_HOLD,
    (Pattern.HIP_ADDUCTION, "dumbbells"): _NO_HOLD,
    (Pattern.HIP_ADDUCTION, "kettlebell"): _NO_HOLD,
    (Pattern.HIP_FLEXION, "bar"): _NO_HOLD,
    (Pattern.HIP_FLEXION, "dumbbells"): _NO_HOLD,
    (Pattern.HIP_FLEXION, "kettlebell"): _NO_HOLD,
    (Pattern.HIP_FLEXION, "machine"): _NOT_USUAL,
    (Pattern.FOREARM, "kettlebell"): "its handle turns in the hand",
    (Pattern.FOREARM, "machine"): _NOT_USUAL,
}
"""What makes no sense, and why. All of it common practice, no source."""
CROSSED = {
    Pattern.SQUAT: {Joint.HIP, Joint.KNEE, Joint.ANKLE},
    Pattern.SINGLE_LEG: {Joint.HIP, Joint.KNEE, Joint.ANKLE},
    Pattern.HINGE: {Joint.HIP, Joint.LOWER_BACK},
    Pattern.HORIZONTAL_PUSH: {Joint.SHOULDER, Joint.ELBOW, Joint.WRIST},
    Pattern.HORIZONTAL_PULL: {Joint.SHOULDER, Joint.ELBOW, Joint.WRIST},
    Pattern.VERTICAL_PUSH: {Joint.SHOULDER, Joint.ELBOW, Joint.WRIST},
    Pattern.VERTICAL_PULL: {Joint.SHOULDER, Joint.ELBOW, Joint.WRIST},
    Pattern.ELBOW_FLEXION: {Joint.ELBOW, Joint.WRIST},
    Pattern.ELBOW_EXTENSION: {Joint.ELBOW, Joint.WRIST},
    Pattern.KNEE_EXTENSION: {Joint.KNEE},
    Pattern.KNEE_FLEXION: {Joint.KNEE},
    Pattern.CALF: {Joint.ANKLE},
    Pattern.SHIN: {Joint.ANKLE},
    Pattern.TRUNK: {Joint.LOWER_BACK},
    Pattern.FOREARM: {Joint.WRIST},
    Pattern.SHOULDER_ELEVATION: {Joint.NECK, Joint.SHOULDER},
} | {p: {Joint.SHOULDER} for p in Pattern if p.value.startswith("shoulder") or p.value.endswith("fly")}
# fmt: off
TRADE_ONLY = frozenset({
    "ssb", "stance", "conventional", "hexagonal", "kickstand", "pressup", "hspu", "eccentric", "tgu", "prone",
    "tibiali", "dorsiflexion", "monster", "flexion", "elevated", "supinated",
})
# fmt: on
"""Words of aliases that are in no list of the reader's and that nobody writes but for an exercise."""


def named(name: str) -> Exercise:
    """The exercise of that name; fails where there is none."""
    found = catalogue().find(name)
    assert found is not None, name
    return found


def test_there_are_enough() -> None:
    """At least 160 were asked for."""
    assert len(ALL) >= 160


def test_every_name_means_one_exercise() -> None:
    """Names and aliases are unique, whatever their case, spaces and plural, in the file itself: nothing was mended."""
    counted = Counter(name_key(name) for e in read_exercises() for name in (e.name, *e.aliases))
    assert [key for key, n in counted.items() if n > 1] == []
    assert "" not in counted
    assert catalogue().exercises == read_exercises()


def test_each_is_found_by_all_its_names() -> None:
    """By name and alias, shouted, with and without hyphens, and in the plural (abbreviations as they are)."""
    for exercise in ALL:
        for name in (exercise.name, *exercise.aliases):
            plural = f"{name}s" if name[-1] not in "shxyf" and len(name) > 3 else name
            joined = name if "s-" in name else name.replace("-", "")
            for said in (name, name.upper(), joined, name.replace("-", " "), f"  {name} ", plural):
                assert catalogue().find(said) == exercise, said


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("chest flies", "Dumbbell fly"),
        ("farmer carries", "Farmer carry"),
        ("standing calf raises", "Calf raise"),
        ("Chest Presses", "Machine chest press"),
        ("crunches", "Crunch"),
        ("farmer’s walks", "Farmer carry"),
        ("RDLS", "Romanian deadlift"),
        ("pressups", "Push-up"),
        ("biceps curls", "Biceps curl"),
    ],
)
def test_plurals_as_they_are_written(said: str, name: str) -> None:
    """Whatever the ending makes of the word."""
    assert named(said).name == name


@pytest.mark.parametrize("said", ["", "   ", "-", "s", "xyzzy", "…", "ß" * 500])
def test_what_is_no_name_finds_nothing(said: str) -> None:
    """Nothing is found, and nothing is suggested."""
    assert catalogue().find(said) is None
    assert catalogue().similar(said) == ()


@pytest.mark.parametrize("exercise", ALL, ids=lambda e: e.name)
def test_rules(exercise: Exercise) -> None:
    """What every row must keep."""
    style, equipment = exercise.load_style, exercise.equipment
    assert exercise.muscles
    assert not set(exercise.muscles) & set(exercise.muscles_indirect)
    assert len(set(exercise.muscles + exercise.muscles_indirect)) == len(exercise.muscles + exercise.muscles_indirect)
    assert CROSSED.get(exercise.pattern, {Joint.HIP}) <= exercise.joints
    assert equipment not in HELD or Joint.WRIST in exercise.joints
    assert exercise.sides in (1, 2)
    assert exercise.setup_s in range(10, 181)
    assert style is not LoadStyle.PER_HAND or equipment in (Equipment.DUMBBELLS, Equipment.KETTLEBELL)
    assert (style is LoadStyle.BODYWEIGHT) == (equipment is Equipment.BODY_WEIGHT)
    assert style is LoadStyle.NONE or equipment not in (Equipment.BAND, Equipment.NONE)
    assert equipment not in exercise.also
    assert (exercise.warmup is WarmUp.NONE) == (style in (LoadStyle.NONE, LoadStyle.BODYWEIGHT))
    assert exercise.share is None or (0 < exercise.share < 5 and style in (LoadStyle.TOTAL, LoadStyle.PER_HAND))
    assert exercise.share is not None or style in (LoadStyle.NONE, LoadStyle.BODYWEIGHT) or equipment is Equipment.SLED
    steps = exercise.warmup.steps
    assert [share for share, _ in steps] == sorted(share for share, _ in steps)
    for unit in Unit:
        assert bool(loadable(Gym.usual(unit), exercise.loads)) == (style is not LoadStyle.NONE)


def test_the_region_is_where_the_muscles_are() -> None:
    """What an exercise works directly lies in its region; trunk work may reach out from there."""
    lower = {
        *(Muscle.GLUTES, Muscle.QUADRICEPS, Muscle.HAMSTRINGS, Muscle.ADDUCTORS, Muscle.ABDUCTORS),
        *(Muscle.HIP_FLEXORS, Muscle.CALVES, Muscle.SHINS, Muscle.LOWER_BACK),
    }
    trunk = {Muscle.ABDOMINALS, Muscle.OBLIQUES, Muscle.LOWER_BACK}
    for exercise in ALL:
        match exercise.region:
            case Region.LOWER:
                assert set(exercise.muscles) <= lower, exercise.name
            case Region.UPPER:
                assert not set(exercise.muscles) & (lower | trunk), exercise.name
            case Region.TRUNK:
                assert exercise.pattern is Pattern.CARRY or set(exercise.muscles) & trunk, exercise.name


def test_every_pattern_is_covered_with_every_kind_of_equipment() -> None:
    """But for what makes no sense; and nothing is called senseless that is there."""
    there = {(e.pattern, kind) for e in ALL for kind, members in KINDS.items() if e.equipment in members}
    for pattern in Pattern:
        for kind in KINDS:
            assert ((pattern, kind) in there) != ((pattern, kind) in EXEMPT), (pattern, kind)


def test_every_term_is_used() -> None:
    """No muscle, joint or equipment stands in the terms for nothing."""
    assert {m for e in ALL for m in (*e.muscles, *e.muscles_indirect)} == set(Muscle)
    assert {m for e in ALL for m in e.muscles} == set(Muscle)
    assert {j for e in ALL for j in e.joints} == set(Joint)
    assert {n for e in ALL for n in e.needs} == set(Equipment)
    assert {e.measure for e in ALL} == set(Measure)


def test_a_week_of_it_can_be_named() -> None:
    """The muscles of upper pushes and pulls are ones by which the week tells a push day from a pull day."""
    for exercise in ALL:
        if exercise.pattern in (Pattern.HORIZONTAL_PUSH, Pattern.VERTICAL_PUSH):
            assert all(_longest(m, _PUSH) > _longest(m, _PULL) for m in exercise.muscles), exercise.name
        if exercise.pattern in (
            Pattern.HORIZONTAL_PULL,
            Pattern.VERTICAL_PULL,
            Pattern.ELBOW_FLEXION,
            Pattern.REAR_FLY,
        ):
            assert all(_longest(m, _PULL) > _longest(m, _PUSH) for m in exercise.muscles), exercise.name


def test_the_sample_programme_is_in_it_as_it_is() -> None:
    """Style, sides, measure, region, muscles, what loads it and the time to set up."""
    for workout in sample_programme().workouts:
        for planned in workout.exercises:
            known = named(planned.name)
            assert known.name == planned.name
            assert (known.load_style, known.sides, known.measure, known.region, known.loads, known.setup_s) == (
                *(planned.load_style, planned.sides, planned.measure, planned.region, planned.equipment),
                planned.setup_s,
            )
            assert (known.muscles, known.muscles_indirect) == (planned.muscles, planned.muscles_indirect)


def test_aliases_that_are_listened_for_are_words_of_the_trade() -> None:
    """Each word is one of the exercise's own name or of the trade, and none is a word of talk: the reader takes a word
    of an alias standing alone for the exercise."""
    for exercise in ALL:
        own = name_words(exercise.name)
        for alias in aliases_of(exercise.name):
            assert catalogue().find(alias) == exercise
            for word in name_words(alias) - own - vocabulary():
                assert word in TRADE_ONLY, (exercise.name, alias)
                assert word not in lexicon_words(), (exercise.name, alias)


# --- what published work says


@pytest.mark.parametrize(
    ("name", "direct"),
    [
        # Growth on MRI, nine weeks: squats glutes and quadriceps, hip thrusts glutes (Plotkin et al. 2023,
        # Front Physiol 14:1279170).
        ("Back squat", {Muscle.GLUTES, Muscle.QUADRICEPS}),
        ("Hip thrust", {Muscle.GLUTES}),
        # Growth of the hamstrings in both leg curls (Maeo et al. 2021, Med Sci Sports Exerc 53:825-837).
        ("Seated leg curl", {Muscle.HAMSTRINGS}),
        ("Lying leg curl", {Muscle.HAMSTRINGS}),
        # Growth of the calves in both raises (Kinoshita et al. 2023, Front Physiol 14:1272106).
        ("Calf raise", {Muscle.CALVES}),
        ("Seated calf raise", {Muscle.CALVES}),
        # Over 60 % of a maximal contraction of the glutes (Krause Neto et al. 2020, J Sports Sci Med 19:195-203).
        ("Step-up", {Muscle.GLUTES}),
        ("Hex bar deadlift", {Muscle.GLUTES}),
        ("Belt squat", {Muscle.GLUTES}),
        ("Split squat", {Muscle.GLUTES}),
        ("Dumbbell lunge", {Muscle.GLUTES}),
        ("Deadlift", {Muscle.GLUTES}),
        # The chest alike in three presses (Saeterbakken et al. 2011, J Sports Sci 29:533-538).
        ("Bench press", {Muscle.CHEST}),
        ("Guided-bar bench press", {Muscle.CHEST}),
        ("Dumbbell bench press", {Muscle.CHEST}),
        # The broad muscle of the back in pulldowns and rows (Lehman et al. 2004, Dynamic Medicine 3:4).
        ("Lat pulldown", {Muscle.BACK}),
        ("Underhand pulldown", {Muscle.BACK}),
        ("Seated cable row", {Muscle.BACK}),
    ],
)
def test_muscles_that_studies_found(name: str, direct: set[Muscle]) -> None:
    """Each is counted as worked directly."""
    assert direct <= set(named(name).muscles)


@pytest.mark.parametrize(
    ("name", "indirect"),
    [
        # Active, less than in pulling of their own (Lehman et al. 2004; Saeterbakken et al. 2011, as above).
        ("Lat pulldown", Muscle.BICEPS),
        ("Seated cable row", Muscle.BICEPS),
        ("Bench press", Muscle.TRICEPS),
        ("Dumbbell bench press", Muscle.TRICEPS),
    ],
)
def test_muscles_that_come_along(name: str, indirect: Muscle) -> None:
    """Each is counted as a half."""
    assert indirect in named(name).muscles_indirect


def test_squats_and_thrusts_are_no_work_for_the_hamstrings() -> None:
    """Little to no growth of theirs in either (Plotkin et al. 2023)."""
    assert Muscle.HAMSTRINGS not in (*named("Back squat").muscles, *named("Back squat").muscles_indirect)
    assert Muscle.HAMSTRINGS not in named("Hip thrust").muscles


@pytest.mark.parametrize(
    ("longer", "shorter"),
    [
        ("Seated leg curl", "Lying leg curl"),  # Maeo et al. 2021: whole hamstrings +14 % against +9 %
        ("Calf raise", "Seated calf raise"),  # Kinoshita et al. 2023: +5.6 % against +2.1 %
        ("Overhead cable extension", "Cable pushdown"),  # Maeo et al. 2022, Eur J Sport Sci, from memory
    ],
)
def test_the_longer_of_two_is_marked(longer: str, shorter: str) -> None:
    """The one that works the muscle while it is long stretches it, the other does not."""
    assert named(longer).stretches
    assert not named(shorter).stretches


@pytest.mark.parametrize(
    ("name", "like", "low", "high"),
    [
        # 17 % less with dumbbells, 3 % less on rails (Saeterbakken et al. 2011); both dumbbells together.
        ("Dumbbell bench press", "Bench press", 0.40, 0.42),
        ("Guided-bar bench press", "Bench press", 0.96, 0.98),
        # 77.3 against 80 kg (Andersen et al. 2014, J Strength Cond Res 28:1135-1142).
        ("Wide-grip pulldown", "Lat pulldown", 0.95, 0.98),
        # At a six-repetition squat of 60 to 140 kg: lunge 0.52 S + 14.82, step-up 0.50 S + 3.32 (Ebben et al. 2008,
        # J Strength Cond Res 22:1947-1949).
        ("Barbell lunge", "Back squat", 0.58, 0.77),
        ("Barbell step-up", "Back squat", 0.48, 0.56),
        # Hammer curl 0.28 B + 6.30, barbell curl 0.33 B + 6.20 (Wong et al. 2013, J Sports Sci Med 12:38-43): at a
        # bench press of 40 to 100 kg 0.87 to 0.90 of it, halved to one hand.
        ("Hammer curl", "Barbell curl", 0.43, 0.46),
        # 48.5 against 61.8 kg (Gullett et al. 2009, J Strength Cond Res 23:284-292, from memory).
        ("Front squat", "Back squat", 0.75, 0.80),
    ],
)
def test_shares_that_studies_found(name: str, like: str, low: float, high: float) -> None:
    """The share of the one lift to the other lies where the study has it."""
    one, other = named(name).share, named(like).share
    assert one is not None
    assert other is not None
    assert low <= one / other <= high


def test_every_word_of_the_file_is_known() -> None:
    """A misspelt column is refused, not dropped: the file names the columns that are read, and no others."""
    text = files("bot.training").joinpath("catalogue.toml").read_text(encoding="utf-8")
    rows = [row for group in tomllib.loads(text)["patterns"].values() for row in group["exercises"]]
    assert {key for row in rows for key in row} <= ROW_KEYS
    assert len(rows) == len(ALL)


@pytest.mark.parametrize(
    ("slip", "meant"),
    [
        ("benhc press", "Bench press"),
        ("romainian deadlift", "Romanian deadlift"),
        ("lat pull", "Lat pulldown"),
        ("bulgarain squat", "Bulgarian split squat"),
        ("facepul", "Face pull"),
        ("plnak", "Plank"),
        ("lateral rasies", "Lateral raise"),
        ("leg xtension", "Leg extension"),
        ("press bench", "Bench press"),
        ("tricep push down", "Cable pushdown"),
        ("seated rows cable", "Seated cable row"),
    ],
)
def test_did_you_mean(slip: str, meant: str) -> None:
    """A slip finds what was meant among the first three, and gives no more than asked for."""
    assert meant in [e.name for e in catalogue().similar(slip, 3)]
    assert len(catalogue().similar(slip, 1)) == 1
    assert catalogue().similar(slip, 0) == ()


# --- a coach's own


def test_a_coachs_own_is_found_and_goes_before() -> None:
    """By its name and aliases; an alias of the catalogue's that they claim means theirs."""
    own = Exercise("Tower row", Pattern.HORIZONTAL_PULL, Equipment.CABLE, (Muscle.BACK,), aliases=("seated row", "tr"))
    both = catalogue().with_own([own])
    assert both.find("tower rows") == own
    assert both.find("Seated row") == own
    cable = both.find("Seated cable row")
    assert cable is not None
    assert cable.name == "Seated cable row"
    assert "seated row" not in cable.aliases
    assert len(both.exercises) == len(ALL) + 1


def test_a_coachs_own_takes_the_place_of_the_same_name() -> None:
    """Theirs are the muscles that count; the later of two of theirs; no alias takes another's name."""
    first = Exercise("Deadlift", Pattern.HINGE, Equipment.BAR, (Muscle.GLUTES,))
    second = Exercise("dead lift", Pattern.HINGE, Equipment.BAR, (Muscle.LOWER_BACK,), aliases=("Bench press", "dl"))
    both = catalogue().with_own([first, second])
    found = both.find("Deadlift")
    assert found is not None
    assert (found.muscles, found.aliases) == ((Muscle.LOWER_BACK,), ("dl",))
    bench = both.find("Bench press")
    assert bench is not None
    assert bench.name == "Bench press"
    assert len(both.exercises) == len(ALL)


def test_without_own_it_stays_as_it_is() -> None:
    """Nothing laid over it changes nothing."""
    assert catalogue().with_own([]).exercises == ALL
