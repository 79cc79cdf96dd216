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
    sober: bool = False
    """Whether laughter takes nothing from it: people laugh off what frightened them."""


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
        sober=True,
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
            word_set("bladder bowel bowels pee wee urine poo pipi piss"),
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
            word_set("cola coke brown tea coffee rust rusty red blood bloody dark stout treacle beer mud muddy gravy"),
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
    Told(
        "fainting",
        12,
        (
            word_set("room world floor vision sight everything gym"),
            word_set("hold holding held hang hanging grab grabbed grabbing lean leaned leaning clung cling clinging"),
            word_set("rack wall bench post machine upright frame rail railing pillar door"),
            word_set("back stopped steady still level straight round"),
        ),
        word_set("squat press row"),
        sober=True,
    ),
    Told(
        "fainting",
        8,
        (
            word_set("lights light ceiling lamp lamps roof rafters fan"),
            word_set("looking staring stared gazing seeing"),
            word_set("woke waking wakened awoke woken know"),
        ),
        word_set("am bed night sleep slept alarm morning tv"),
        sober=True,
    ),
    Told(
        "fainting",
        4,
        (
            word_set("everything world sound sounds hearing"),
            word_set("quiet silent muffled silence"),
            word_set("went goes gone going became suddenly"),
        ),
        word_set("town phone work class street busy app"),
    ),
    Told(
        "fainting",
        8,
        (
            word_set("legs"),
            word_set("folded crumpled concertinaed vanished disappeared"),
            word_set("suddenly floor ground deck heap quiet black dark sec second"),
        ),
        word_set("mat rep"),
    ),
    Told(
        "breath",
        8,
        (
            word_set("words word sentence sentences"),
            word_set("breath air breathe gasp gasping puff wind"),
            word_set("need needing stop stopping gasp gasping run running only"),
        ),
        word_set("hold cue cues"),
    ),
    Told(
        "breath",
        6,
        (
            word_set("puff wind breath"),
            word_set("can't won't hasn't haven't not doesn't never"),
            word_set("back return returned returning"),
            word_set("get got getting find catch come coming came been my"),
        ),
        word_set("hold held nose fan app bike between"),
    ),
    Told(
        "stroke",
        7,
        (
            word_set("words speech sentences talking"),
            word_set("wrong jumbled muddled backwards scrambled garbled slurred mixed"),
            word_set("coming come came comes keep keeps getting"),
        ),
        word_set(
            """
            typing autocorrect phone keyboard thumbs type dictation dictating voice app spelling text message typed lol
            """
        ),
        sober=True,
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
            word_set("pec bicep biceps tricep triceps hamstring calf quad lat"),
            word_set("rip ripped tore tear torn pop popped snap snapped bang crack"),
            word_set("can't won't doesn't"),
            word_set("push press lift move bend raise use walk stand straighten"),
        ),
        word_set("lol haha further heavier pain hurting without"),
    ),
    Told(
        "chest",
        9,
        (
            word_set("blades"),
            word_set("between betwen"),
            word_set("tearing ripping ripped tore splitting torn"),
            word_set("sudden suddenly nowhere boom bang instantly"),
        ),
        frozenset(),
    ),
    Told(
        "heart",
        14,
        (
            word_set("heart pulse heartbeat hr"),
            word_set(
                """
                bonkers nuts mental bananas haywire berserk racing pounding thumping hammering banging crazy wild mad
                fast
                flying sprinting gallop galloping
                """
            ),
            word_set("hasn't won't not doesn't isn't still can't didn't"),
            word_set(
                "calmed calm settle settled slow slowed slowing stop stopped down drop dropped quiet rest resting"
            ),
        ),
        word_set("lol haha watch strap app"),
    ),
    Told(
        "fainting",
        7,
        (
            word_set("eyes"),
            word_set("turned rolled roll rolling turn turning"),
            word_set("fell fall falling floor ground inside head white back"),
        ),
        word_set("foam joke lol haha wife husband boss"),
    ),
    Told(
        "breath",
        2,
        (word_set("breathe respire"), word_set("bad badly poorly ill worse")),
        word_set("nose mask technique smell cue"),
    ),
    Told(
        "headache",
        7,
        (
            word_set("head skull"),
            word_set("split splits splitting cracked crack cracking opened"),
            word_set("two half apart open second suddenly sudden"),
        ),
        word_set("lol haha bar rack plate bench stitches"),
    ),
    Told(
        "stroke",
        12,
        (
            word_set("rubbish gibberish jibberish nonsense gobbledygook babble babbling"),
            word_set("speaking speak talking talked spoke saying said"),
            word_set("understand understood follow after since during suddenly minute minutes"),
        ),
        word_set("lol haha politics ignore podcast online"),
    ),
    Told(
        "fainting",
        8,
        (
            word_set("wake woke waking waken wakened revive revived"),
            word_set("me"),
            word_set("up over round around"),
            word_set("platform floor gym mat people faces staff standing folk everyone"),
        ),
        word_set("alarm morning am early bed baby dog cat kids"),
        sober=True,
    ),
    Told(
        "fainting",
        11,
        (
            word_set("floor ground deck"),
            word_set("knees legs"),
            word_set("went buckled gave folded crumpled buckle"),
            word_set("was ended landed found knew woke"),
        ),
        word_set("lunge lunges plank past touch touched touching kneeling"),
    ),
    Told(
        "control",
        12,
        (
            word_set("accident"),
            word_set("feel felt notice noticed know knew warning"),
            word_set("didn't never not without no"),
        ),
        word_set("car bike work traffic road kid kids son daughter baby dog cat child puppy"),
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
            word_set("tiptoe tiptoes"),
            word_set("can't won't cannot"),
            word_set("stand go rise get push up"),
        ),
        word_set("pain hurts hurting shoes raises lol haha"),
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
)
"""Every row."""
