"""Rows of signs told in any order: limbs without feeling or strength, and what popped. Gathered by us."""

from bot.notation.hurt.rows import word_set
from bot.notation.hurt.told import Told

LIMBS = (
    Told(
        "no strength",
        7,
        (
            word_set("leg"),
            word_set("collapse collapses collapsed collapsing folds crumples"),
            word_set("stairs walking walk steps kerb"),
        ),
        word_set("bar rep reps set sets lol haha lunges"),
    ),
    Told(
        "no feeling",
        10,
        (
            word_set(
                "stood stepped trod burnt burned cut pinched pinch poked poke pricked prick touched touch scratch"
            ),
            word_set("felt feel feeling notice noticed"),
            word_set("nothing didn't don't can't barely hardly"),
        ),
        word_set("pain hurt hurts"),
    ),
    Told(
        "no feeling",
        7,
        (
            word_set("finger fingers hand hands foot feet toe toes leg legs arm arms"),
            word_set("feel feels feeling sense"),
            word_set("anything nothing"),
        ),
        word_set("lol haha pump pain hurt hurts wrong different bad off great"),
    ),
    Told(
        "no feeling",
        12,
        (
            word_set("hand foot leg arm fingers toes"),
            word_set("sleeps asleep sleeping dead"),
            word_set("wake wakes waking woken"),
            word_set("doesn't don't won't not isn't can't never still"),
        ),
        word_set("lol haha early alarm bed slept"),
    ),
    Told(
        "no strength",
        7,
        (
            word_set("hand hands fingers"),
            word_set("lets let letting"),
            word_set("fall falls drop"),
            word_set("things stuff everything cup cups phone objects glass keys"),
        ),
        word_set("lol haha bar barbell dumbbell weight weights"),
    ),
    Told(
        "no strength",
        13,
        (
            word_set("bicep biceps pec tricep triceps calf hamstring quad achilles"),
            word_set("bang pop snap crack popped snapped cracked banged"),
            word_set("lump bulge dent gap ball"),
        ),
        word_set("lol haha roller roll foam"),
    ),
    Told(
        "no strength",
        9,
        (
            word_set("bicep biceps"),
            word_set("up rolled bunched balled slid curled retracted popeye hanging moved shortened recoiled jumped"),
            word_set("shoulder armpit popeye ball lump tennis golf elbow"),
            word_set("now near by towards toward under into my like just suddenly all"),
        ),
        word_set("curl curls pump pumped press day superset supersets finisher band reps sets set lol haha keep hurts"),
    ),
    Told(
        "pop",
        10,
        (
            word_set("achilles calf heel"),
            word_set("kicked hit whacked struck shot"),
            word_set("nobody noone turned looked"),
        ),
        word_set("lol haha"),
        sober=True,
    ),
    Told(
        "pop",
        13,
        (
            word_set("pec bicep biceps tricep triceps hamstring hammy calf quad lat"),
            word_set("rip ripped tore tear torn pop popped snap snapped bang crack exploded went"),
            word_set("can't won't doesn't"),
            word_set("push press lift move bend raise use walk stand straighten"),
        ),
        word_set("lol haha further heavier pain hurting without"),
    ),
    Told(
        "no grip",
        9,
        (
            word_set("grip"),
            word_set("gone lost vanished disappeared"),
            word_set("completely totally entirely since"),
            word_set("side left right one hand"),
        ),
        word_set("rep reps bar last chalk tape lol haha"),
    ),
    Told(
        "no grip",
        6,
        (
            word_set("cup mug kettle fork spoon pen pencil toothbrush glass"),
            word_set("can't won't cannot"),
            word_set("hold lift grip pick carry squeeze open"),
        ),
        word_set("pump pumped fried doms sore sweaty sweat chalk dead toast cooked lol haha"),
    ),
    Told(
        "no grip",
        9,
        (
            word_set("tiptoe tiptoes toes"),
            word_set("can't won't cannot"),
            word_set("stand go rise get push up"),
            word_set("left right one leg foot side"),
        ),
        word_set("pain hurts hurting shoes raises lol haha"),
    ),
    Told(
        "pop",
        13,
        (
            word_set("calf achilles hamstring hammy knee ankle"),
            word_set("pop popped snap snapped bang crack twang"),
            word_set("hop hopping crutches hobbling crawl crawling wheelchair"),
        ),
        word_set("lol haha hops box hopscotch jumps"),
    ),
    Told(
        "no strength",
        9,
        (
            word_set("leg arm hand foot"),
            word_set("weaker weak weakness"),
            word_set("sudden suddenly overnight since"),
        ),
        word_set("lol haha always year years month months usual surgery op cast week weeks weaker-side"),
    ),
    Told(
        "cord",
        12,
        (
            word_set("neck"),
            word_set("can't won't stuck locked"),
            word_set("arms hands legs"),
            word_set("tingle tingling tingly tingles pins buzzing fizzing"),
        ),
        frozenset(),
    ),
    Told(
        "no strength",
        9,
        (
            word_set("wrist foot toes fingers hand"),
            word_set("drop drops dropping droop droops drooping falls falling"),
            word_set("can't won't keeps suddenly anymore"),
            word_set("lift pull raise straighten walk walking stairs hold"),
        ),
        word_set("bar barbell dumbbell weight weights rep reps set sets form cue elbow lol haha phone"),
    ),
    Told(
        "no strength",
        6,
        (word_set("heels heel"), word_set("can't won't"), word_set("walk stand")),
        word_set("pain hurt hurts hurting sore doms shoes high blister blisters lol haha"),
    ),
    Told(
        "no strength",
        10,
        (
            word_set("leg legs"),
            word_set("give gives gave giving"),
            word_set("way out"),
            word_set("stairs walking walk steps suddenly nowhere kerb shower kitchen"),
        ),
        word_set("bar rep reps set sets lol haha lunges wet"),
    ),
    Told(
        "pop",
        4,
        (word_set("bicep biceps"), word_set("rolled bunched balled retracted recoiled slid"), word_set("up")),
        word_set("roller roll foam sleeve sleeves curl curls lol haha"),
    ),
    Told(
        "cord",
        10,
        (
            word_set("back"),
            word_set("both"),
            word_set("legs feet"),
            word_set("weak numb tingling tingly dead"),
        ),
        word_set("tired squats day lol haha pump doms"),
    ),
    Told(
        "cord",
        12,
        (
            word_set("neck"),
            word_set("both"),
            word_set("arms hands legs"),
            word_set("tingle tingling tingly tingles pins buzzing fizzing numb weak clumsy"),
        ),
        frozenset(),
    ),
    Told(
        "no strength",
        9,
        (
            word_set("leg knee ankle foot"),
            word_set("bear bears"),
            word_set("me"),
            word_set("not won't can't doesn't wouldn't isn't refuses"),
        ),
        word_set("bar squat set rep reps lol haha with"),
    ),
    Told(
        "no strength",
        9,
        (
            word_set("leg legs knees"),
            word_set("give gives gave giving buckle buckles buckling fold folds"),
            word_set("under"),
            word_set("notice warning suddenly stairs walking walk keep keeps"),
        ),
        word_set("bar squat set rep reps lol haha"),
    ),
)
"""The rows of limbs without feeling or strength, and what popped."""
