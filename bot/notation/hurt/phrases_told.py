"""Urgent signs told in any order: so many ideas within so many words of one sentence, whatever the phrase.

Where `phrases_urgent` and `phrases_effects` know turns of phrase, these rows know only what must be said: an organ,
what is wrong with it, how it is said; and the words beside which the same means something else. Gathered by us.
"""

from dataclasses import dataclass

from bot.notation.hurt.rows import word_set


@dataclass(frozen=True, slots=True)
class Told:
    """A sign as ideas, each a set of words of which one must stand; `within` tokens from the first to the last."""

    name: str
    within: int
    ideas: tuple[frozenset[str], ...]
    unless: frozenset[str]
    """Words of the same sentence beside which it is no sign."""


_WENT = word_set(
    """
    went goes go going gone turned turns turning became becomes become was is 's got gets getting started starts began
    suddenly keeps kept feels felt feel seems looked looks slowly see saw
    """
)
_SCREENS = word_set(
    """
    app screen video phone camera chart font glasses lenses power electricity bulb bulbs early outside sky timer tv
    curtains windows winter wearing painted shirt plates plate belt coffee friday market music car road weather
    """
)
TOLD = (
    Told(
        "fainting",
        9,
        (
            word_set("floor ground deck ceiling mat"),
            word_set("there ended landed woke waking wakened myself opened suddenly"),
            word_set("know remember idea how woke waking wakened found unconscious eyes"),
        ),
        word_set("press row pull plan"),
    ),
    Told(
        "fainting",
        7,
        (
            word_set("vision sight eyesight view eyes"),
            word_set(
                """
                tunnel tube black blackness grey gray dots spots stars fog foggy blur blurry blurred blurring curtain
                closing dark darker darkness sparkly sparkling twinkly starry flickering snow static fuzzy
                shrinking narrow narrowing sparkles sparks
                """
            ),
        ),
        _SCREENS | word_set("eye lashes cucumber"),
    ),
    Told(
        "fainting",
        10,
        (
            word_set("head"),
            word_set("turned turning turns spun went goes"),
            word_set("hold held holding grab grabbed sit sat lean leaned lie lay fall fell falling"),
        ),
        word_set("look looked looking press lol haha talk"),
    ),
    Told(
        "fainting",
        4,
        (
            word_set("lost lose losing loss lack without recovered regained"),
            word_set("consciousness conscious conscience senses knowledge awareness"),
        ),
        frozenset(),
    ),
    Told(
        "fainting",
        6,
        (word_set("blanked blank blackout"), word_set("second seconds secs sec moment")),
        word_set("page form sheet cheque"),
    ),
    Told(
        "fainting", 4, (word_set("no any zero without"), word_set("memory recollection"), word_set("of")), frozenset()
    ),
    Told(
        "fainting",
        6,
        (
            word_set("room everything world gym ceiling floor walls things"),
            word_set(
                """
                spin spins spun spinning swirling swirl rotating whirling swimming tilting tilted swaying sway rocking
                sideways wobbling wobbled
                """
            ),
        ),
        word_set("bike class ideas numbers information bar plates plan pool lengths plate disc lol haha choices"),
    ),
    Told(
        "fainting",
        5,
        (word_set("head brain"), word_set("spin spins spun spinning swirling swirl whirling swimming reeling")),
        word_set("bike class ideas numbers information plan lol haha choices"),
    ),
    Told(
        "fainting",
        6,
        (
            word_set("everything world room gym"),
            word_set(
                """
                black dark grey gray white blurry blurred fuzzy dim faded fading distant faraway far muffled foggy
                """
            ),
            _WENT,
        ),
        _SCREENS | word_set("lights light dark-room decorated"),
    ),
    Told(
        "fainting",
        5,
        (word_set("head"), word_set("light floaty airy woozy floating swimmy empty"), _WENT),
        word_set("torch lamp weight weights press"),
    ),
    Told(
        "breath",
        6,
        (
            word_set("breath breathe breaths oxygen respire respiration inhale"),
            word_set(
                """
                can't difficult difficulty trouble half shallow stuck straw impossible struggle struggling fighting
                lack lacking suffocate suffocating cost costs barely hardly missing refuses blocked closed shut
                """
            ),
        ),
        word_set(
            """
            nose hold holding held brace bracing technique cue fresh believe wait bad mask forgot forget hear talk
            underwater amazing loved awesome brilliant savage buzzing
            """
        ),
    ),
    Told(
        "fainting",
        5,
        (word_set("head"), word_set("light turns turned spins"), word_set("in me")),
        word_set("light-bulb torch bulb bar weights weight press look lol haha went-up room"),
    ),
    Told(
        "breath",
        6,
        (
            word_set("breathless winded puffed puffing panting breath"),
            word_set("just only even merely simply at"),
            word_set("talking sitting lying resting rest standing speaking nothing stairs bed desk"),
        ),
        word_set("hold held bar hip breathing-technique deep take taking took"),
    ),
    Told(
        "headache",
        9,
        (
            word_set("head skull"),
            word_set("hit kicked struck whacked shot smashed bashed clubbed stabbed"),
            word_set("like as-if"),
        ),
        word_set("lol haha idea bar"),
    ),
    Told(
        "headache",
        3,
        (
            word_set("head skull brain"),
            word_set("exploding exploded explode bursting bursted"),
        ),
        word_set("lol haha idea ideas numbers information plan maths questions choices work"),
    ),
    Told(
        "control",
        12,
        (word_set("accident"), word_set("loo toilet bathroom pants shorts leggings knickers trousers bed")),
        word_set("car bike work traffic road kid kids son daughter baby dog cat child puppy"),
    ),
    Told(
        "breath",
        5,
        (word_set("hard tough heavy"), word_set("to"), word_set("breathe respire inhale")),
        word_set("nose mask remember technique"),
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
        "control",
        8,
        (
            word_set("pee wee poo urine bladder bowels bowel piss stool"),
            word_set("can't lost no won't without not never don't didn't doesn't"),
            word_set("control warning noticing notice noticed knowing realising realise coming sensation"),
        ),
        word_set("laughing clear break breaks drinking water good"),
    ),
    Told(
        "control",
        14,
        (
            word_set("leaking leaked leak leaks dribbling dribbled wetting dripping"),
            word_set("feel felt feeling notice noticed know knew knowing realise realised aware"),
            word_set("can't didn't don't not without never doesn't no"),
        ),
        word_set("bottle shaker water pipe roof tap hose sweat sweating nose gas"),
    ),
    Told(
        "control",
        10,
        (
            word_set("bladder bowel bowels pee wee urine poo"),
            word_set("can't unable impossible"),
            word_set("hold stop control wait"),
        ),
        word_set("laughing lol haha coffee water break"),
    ),
    Told(
        "urine",
        9,
        (
            word_set("toilet loo"),
            word_set("cola coke brown tea coffee rust rusty red blood bloody dark"),
            word_set("colour coloured color colored go went water pee wee looks looked bowl"),
        ),
        word_set("painted tiles seat door light lights cup drink drank queue break quick"),
    ),
    Told(
        "headache",
        8,
        (
            word_set("head skull temple brain"),
            word_set(
                "worst sudden suddenly exploded exploding thunder burst blinding unbearable lightning thunderclap"
            ),
            word_set("pain ache aching headache hurts hurt went pressure like bang"),
        ),
        word_set("lol haha idea"),
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
)
"""Every row."""
