"""Rows of signs told in any order: fainting or near it. Gathered by us."""

from bot.notation.hurt.rows import word_set
from bot.notation.hurt.told import Told

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
FAINT = (
    Told(
        "fainting",
        8,
        (
            word_set("floor ground deck"),
            word_set("woke wakened woken revived slapped slapping slap splashed shook shaking"),
            word_set("me my"),
        ),
        word_set("alarm morning am early bed baby dog cat kids chalk sweat press coffee lol haha"),
        sober=True,
    ),
    Told(
        "fainting",
        6,
        (word_set("floor ground deck"), word_set("before"), word_set("knew"), word_set("was were")),
        frozenset(),
        sober=True,
    ),
    Told(
        "fainting",
        11,
        (
            word_set("floor ground deck"),
            word_set("second seconds secs sec moment minute"),
            word_set("remember recall memory"),
            word_set("not don't can't no without didn't nothing"),
        ),
        word_set("plank planks hold held holding bridge press song lyrics bar plates plan weight set sets reps which"),
        sober=True,
    ),
    Told(
        "fainting",
        11,
        (
            word_set("fell fall falling fallen collapsed dropped"),
            word_set("all everything world eyes sight"),
            word_set("black dark grey gray blank"),
        ),
        _SCREENS | word_set("lights bumpers kit clothes phone asleep bed sleep dumbbell dumbbells kettlebell chalk"),
        sober=True,
    ),
    Told(
        "fainting",
        10,
        (
            word_set("rush"),
            word_set("head"),
            word_set("see knee floor sit sat lie lay hold held wall rack fell stagger staggered wobbled black grey"),
        ),
        word_set("lol haha traffic hour"),
    ),
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
            word_set("lost lose losing loss lack without recovered regained loose loosing losed"),
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
            word_set("room rooms everything world gym ceiling floor walls things"),
            word_set(
                """
                spin spins spun spinning swirling swirl rotating whirling swimming tilting tilted swaying sway rocking
                sideways wobbling wobbled loop loops cartwheel cartwheels somersault somersaults twirl twirled lurched
                lurching lurch rolling tipped tipping circles carousel upside merry
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
            word_set("everything world room gym ceiling walls"),
            word_set(
                """
                black dark grey gray white blurry blurred fuzzy dim faded fading distant faraway muffled foggy
                """
            ),
            _WENT,
        ),
        _SCREENS
        | word_set("lights light dark-room decorated chalk chalked powder snow snowed flour paint painted frost"),
        sober=True,
    ),
    Told(
        "fainting",
        5,
        (word_set("head"), word_set("light floaty airy woozy floating swimmy empty"), _WENT),
        word_set("torch lamp weight weights press"),
    ),
    Told(
        "fainting",
        5,
        (word_set("head"), word_set("light turns turned spins"), word_set("in me")),
        word_set("light-bulb torch bulb bar weights weight press look lol haha went-up room"),
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
        8,
        (
            word_set("hear hearing"),
            word_set("can't couldn't lost stopped"),
            word_set("second seconds sec secs moment minute"),
        ),
        word_set("music phone headphones podcast video voice you him her them bell timer lol haha"),
    ),
    Told(
        "fainting",
        4,
        (
            word_set("everything world sound sounds hearing"),
            word_set("quiet silent muffled silence"),
            word_set("went goes gone going became suddenly got"),
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
        "fainting",
        8,
        (
            word_set("wake woke waking waken wakened revive revived"),
            word_set("me"),
            word_set("up over round around"),
            word_set("platform floor gym mat people faces staff standing folk everyone"),
        ),
        word_set("alarm morning am early bed baby dog cat kids press lol haha"),
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
        "fainting",
        9,
        (
            word_set("everything room world head"),
            word_set("turns turning turned moves moving moved"),
            word_set("when while lie lay stand stood sit sat got get getting after"),
            word_set("lie lay lying stand stood standing up bench down"),
        ),
        word_set("out look looked corner plan press"),
    ),
    Told(
        "fainting",
        9,
        (
            word_set("black stars spots"),
            word_set("see saw seeing sees"),
            word_set("stand stood standing quick quickly fast second seconds moment get got"),
        ),
        word_set("band plate plates belt bar dumbbell kettlebell friday tape shoes app"),
    ),
    Told(
        "fainting",
        10,
        (
            word_set("catch caught catched"),
            word_set("me"),
            word_set("out went fell falling gone dropped"),
            word_set("feet knees legs floor"),
        ),
        word_set("bar spot spotter"),
    ),
    Told(
        "fainting",
        9,
        (
            word_set("wall rack rail railing door post"),
            word_set("grab grabbed hold held holding lean leaned cling clung"),
            word_set("fall falling fallen faint fainting"),
        ),
        word_set("bar plates plate weights"),
        sober=True,
    ),
    Told(
        "fainting",
        7,
        (word_set("floor ground deck mat"), word_set("found"), word_set("me")),
        word_set("press plan"),
    ),
    Told(
        "fainting",
        10,
        (
            word_set("help helped pick picked"),
            word_set("me"),
            word_set("up"),
            word_set("dropped fell collapsed floor ground deck"),
        ),
        word_set("bar weight weights dumbbell plates lol"),
    ),
)
"""The rows of fainting or near it."""
