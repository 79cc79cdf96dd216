"""What gyms call exercises: abbreviations, plural forms, spellings, and the words that exercise names are made of.

General trade usage on both sides of the Atlantic; common practice, no source. The vocabulary decides two things: that a
known word is never a misspelling of another (`hack squat` is no `back squat`), and that an exercise which the session
does not have is noticed.
"""

from functools import cache

ABBREVIATIONS: dict[str, tuple[str, ...]] = {
    "ohp": ("overhead press",), "rdl": ("romanian deadlift",), "rdls": ("romanian deadlift",),
    "sldl": ("stiff leg deadlift",), "db": ("dumbbell",), "dbs": ("dumbbell",), "bb": ("barbell",),
    "kb": ("kettlebell",), "bss": ("bulgarian split squat",), "bp": ("bench press",), "dl": ("deadlift",),
    "dls": ("deadlift",), "sq": ("squat",), "sqt": ("squat",), "sqts": ("squat",), "cgbp": ("close grip bench press",),
    "cg": ("close grip",), "ghr": ("glute ham raise",), "gm": ("good morning",), "bor": ("bent over row", "barbell row"),
    "tbdl": ("trap bar deadlift",), "tbar": ("t bar",), "lat": ("lat", "lateral"), "lats": ("lat", "lateral"),
    "tri": ("triceps",), "tris": ("triceps",), "tricep": ("triceps",), "bi": ("biceps",), "bis": ("biceps",),
    "bicep": ("biceps",), "ham": ("hamstring",), "hams": ("hamstring",), "hammy": ("hamstring",), "ext": ("extension",),
    "exts": ("extension",), "extn": ("extension",), "dead": ("deadlift",), "deads": ("deadlift",), "incl": ("incline",),
    "inc": ("incline",), "dec": ("decline",), "mil": ("military",), "mp": ("military press",), "oh": ("overhead",),
    "sl": ("single leg",), "sa": ("single arm",), "1leg": ("single leg",), "1arm": ("single arm",), "bg": ("bulgarian",),
    "quad": ("quad", "leg"), "quads": ("quad", "leg"), "abs": ("ab",), "pd": ("pulldown",), "lpd": ("lat pulldown",),
    "pullds": ("pulldown",), "pd's": ("pulldown",), "pu": ("pull up", "push up"), "pus": ("pull up", "push up"),
    "hlr": ("hanging leg raise",), "hkr": ("hanging knee raise",), "ht": ("hip thrust",), "fp": ("face pull",),
    "fps": ("face pull",), "lp": ("leg press",), "lc": ("leg curl",), "le": ("leg extension",), "hc": ("hammer curl",),
    "fsq": ("front squat",), "bsq": ("back squat",), "fs": ("front squat",), "bs": ("back squat",), "gs": ("goblet squat",),
    "dbp": ("dumbbell press",), "idbp": ("incline dumbbell press",), "dbr": ("dumbbell row",), "bbr": ("barbell row",),
    "med": ("medicine",), "mach": ("machine",), "cbl": ("cable",), "rev": ("reverse",), "rear": ("rear", "reverse"),
    "delt": ("delt", "lateral"), "obl": ("oblique",), "swiss": ("stability",), "rvrs": ("reverse",), "shldr": ("shoulder",),
    "shoulders": ("shoulder",), "pendlay": ("pendlay",), "skulls": ("skull crusher",), "zercher": ("zercher",),
    "farmers": ("farmer",), "carries": ("carry",), "walks": ("walk", "carry"), "walk": ("walk", "carry"),
    "nordics": ("nordic",), "hypers": ("hyperextension", "back extension"), "hyper": ("hyperextension", "back extension"),
    "pistols": ("pistol squat",), "pistol": ("pistol squat",), "facepulls": ("face pull",), "benching": ("bench",),
    "squatting": ("squat",), "squatted": ("squat",), "benched": ("bench",), "deadlifted": ("deadlift",),
    "rowed": ("row",), "pressed": ("press",), "curled": ("curl",), "pressing": ("press",), "deadlifting": ("deadlift",),
    "deadlfit": ("deadlift",), "rowing": ("row",), "curling": ("curl",), "planked": ("plank",), "planking": ("plank",),
    "pulldwn": ("pulldown",), "pulldwons": ("pulldown",), "presses": ("press",), "flye": ("fly",), "flyes": ("fly",),
    "flies": ("fly",), "flys": ("fly",), "calves": ("calf",), "chinups": ("chin up",), "chins": ("chin up",),
    "chin": ("chin",), "dumbbells": ("dumbbell",), "dumbell": ("dumbbell",), "dumbel": ("dumbbell",),
    "dumbells": ("dumbbell",), "barbel": ("barbell",), "kettle": ("kettlebell",), "ketlebell": ("kettlebell",),
    "romanians": ("romanian deadlift",), "bulgarians": ("bulgarian split squat",), "bulgs": ("bulgarian split squat",),
    "splits": ("split squat",), "thrusts": ("thrust",), "hipthrust": ("hip thrust",), "hipthrusts": ("hip thrust",),
    "pullups": ("pull up",), "pressups": ("press up",), "pushups": ("push up",), "stepups": ("step up",),
    "situps": ("sit up",), "pushdowns": ("pushdown",), "pressdown": ("pushdown",), "pressdowns": ("pushdown",),
    "pulldowns": ("pulldown",), "deadbugs": ("dead bug",), "deadbug": ("dead bug",), "birddog": ("bird dog",),
    "birddogs": ("bird dog",), "benchpress": ("bench press",), "legpress": ("leg press",), "legcurl": ("leg curl",),
    "shrugs": ("shrug",), "latpulldown": ("lat pulldown",), "laterals": ("lateral raise",), "hammers": ("hammer curl",),
    "cgbench": ("close grip bench press",), "inclines": ("incline",), "incs": ("incline",), "goblets": ("goblet squat",),
    "thrusters": ("thruster",), "nordic": ("nordic",), "rollouts": ("rollout",), "pallof": ("pallof",),
    "preacher": ("preacher",), "preachers": ("preacher curl",), "pushdwn": ("pushdown",), "militarys": ("military press",),
    "military": ("military", "overhead"), "strict": ("strict", "overhead"), "crunches": ("crunch",), "raises": ("raise",),
    "lunges": ("lunge",), "bridges": ("bridge",), "extensions": ("extension",), "exstension": ("extension",),
    "hip": ("hip",), "abd": ("abduction",), "add": ("adduction",),
}  # fmt: skip
"""Short for; several where gyms differ. The words of the expansion are matched like any others."""

SYNONYMS: tuple[tuple[str, str], ...] = (
    ("press up", "push up"),
    ("military press", "overhead press"),
    ("shoulder press", "overhead press"),
    ("strict press", "overhead press"),
    ("hamstring curl", "leg curl"),
    ("quad extension", "leg extension"),
    ("leg ext", "leg extension"),
    ("knee extension", "leg extension"),
    ("side raise", "lateral raise"),
    ("side lateral", "lateral raise"),
    ("seated row", "cable row"),
    ("seated cable row", "cable row"),
    ("triceps pushdown", "triceps pressdown"),
    ("cable pushdown", "triceps pushdown"),
    ("rope pushdown", "triceps pushdown"),
    ("lat pull", "lat pulldown"),
    ("pull down", "pulldown"),
    ("push down", "pushdown"),
    ("dead lift", "deadlift"),
    ("chin up", "chin"),
    ("skull crusher", "lying triceps extension"),
    ("farmers walk", "farmer carry"),
    ("farmer walk", "farmer carry"),
    ("calf press", "calf raise"),
    ("bench", "bench press"),
    ("incline bench", "incline press"),
    ("decline bench", "decline press"),
    ("dumbbell bench", "dumbbell press"),
    ("flat bench", "bench press"),
    ("stiff leg deadlift", "stiff legged deadlift"),
    ("rear delt fly", "reverse fly"),
    ("bent over row", "barbell row"),
    ("pec deck", "machine fly"),
    ("pec fly", "chest fly"),
    ("back raise", "back extension"),
    ("hyperextension", "back extension"),
)
"""Two names of one exercise. Used only where the session has exactly one of them."""

HEADS: frozenset[str] = frozenset(
    """squat press row curl raise extension deadlift lunge pulldown pullup pushup fly dip thrust bridge plank carry crunch
    shrug pullover kickback swing clean snatch jerk thruster burpee situp stepup hyperextension pushdown chin chinup
    bench rollout twist hold walk march hang sit getup turn wallball sprint jump skullcrusher crusher abduction adduction
    pull push up down rotation woodchop chop slam wheel bug dog nordic pistol morning rower bike treadmill elliptical
    run burpees facepull climber deck crossover curlup hollow copenhagen muscleup toetouch windmill row""".split()
)
"""The words that name a movement; an exercise that the session lacks is noticed by one of these."""

QUALIFIERS: frozenset[str] = frozenset(
    """back front hack goblet overhead military bulgarian split single leg arm legged armed romanian stiff sumo trap hex
    bar barbell dumbbell kettlebell cable machine smith incline decline flat seated standing lying bent over chest shoulder
    lat lateral side rear reverse face hip glute ham hamstring quad calf wrist forearm triceps biceps tricep bicep hammer
    preacher concentration spider zottman wide narrow close grip neutral underhand overhand supinated pronated rope v
    straight ez curl upright pendlay t meadows yates seal inverted assisted weighted ring banded band box pin pause tempo
    deficit block rack good bird dead farmer suitcase waiter turkish russian medicine ball stability swiss wall step walking
    hanging captain knee toe side ab oblique pallof cuban arnold landmine jefferson zercher pistol sissy belt pendulum leg
    hyper nordic donkey tibialis neck pec deck dip push pull chin sit jump romanian kneeling half tall low high single
    double alternating chest-supported supported bodyweight hollow superman mountain wheel rotation external internal
    muscle power floor spoto larsen sled prowler assault cross country dumbell crossbody skull""".split()
)
"""The words that tell exercises apart."""

EVERYDAY: frozenset[str] = frozenset(
    """dumbbell barbell kettlebell cable machine back front side leg arm chest shoulder hip knee toe neck wrist forearm calf glute quad hamstring lat up down over low
    high half single double bar machine rack box pin pause tempo band belt box wall floor step walk walking run jump march
    turn sit hold push pull good morning dead block close wide flat straight cross country power muscle ball tall ab bike
    treadmill twist hang seated standing bent v t strict grip assisted weighted bodyweight alternating tri bi rope ring
    add oh fs bs ext le inc lc rev med mil sa sl dec pu ht lp fp gs mp cg abs dl hc bp clean right left split deck dog bug
    pistol wheel supported rotation narrow neutral cable smith hack hammer strict incs""".split()
)
"""Words that are also everyday talk: none names an exercise without a movement word or an alias beside it."""


def singular(word: str) -> str:
    """An exercise word without its plural: `rows`, `presses`, `flyes`, `calves`."""
    if word in ("triceps", "biceps", "press", "abs", "ups", "cross", "glutes", "nordics"):
        return {"abs": "ab", "ups": "up", "glutes": "glute", "nordics": "nordic"}.get(word, word)
    if word.endswith("ves") and len(word) > 4:
        return word[:-3] + "f"
    if word.endswith(("yes", "ies")) and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith(("sses", "ches", "shes", "xes")):
        return word[:-2]
    if word.endswith("s") and not word.endswith("ss") and len(word) > 3:
        return word[:-1]
    return word


@cache
def vocabulary() -> frozenset[str]:
    """Every word that exercise names are made of, singular."""
    return HEADS | QUALIFIERS | frozenset(ABBREVIATIONS)
