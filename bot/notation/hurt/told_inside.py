"""Rows of signs told in any order: breath, heart, chest and head. Gathered by us."""

from bot.notation.hurt.rows import word_set
from bot.notation.hurt.told import Told

INSIDE = (
    Told(
        "chest",
        6,
        (
            word_set("chest breastbone sternum"),
            word_set("it"),
            word_set("press presses pressing squeeze squeezes squeezing"),
            word_set("inside"),
        ),
        word_set("machine handles grip elbow elbows bench bar dumbbells"),
    ),
    Told(
        "breath",
        9,
        (
            word_set("breathe breath air"),
            word_set("sit sat upright pillows propped"),
            word_set("bed lying lie night sleep"),
        ),
        word_set("deep technique exercise exercises app leg curl lol haha"),
    ),
    Told(
        "heart",
        7,
        (
            word_set("heart pulse heartbeat"),
            word_set("jumped jumping jumps skipped skipping skips flipped flipping"),
            word_set("over place beat beats everywhere"),
        ),
        word_set("lol haha rope when bar"),
    ),
    Told(
        "stroke",
        12,
        (
            word_set("words word"),
            word_set("can't"),
            word_set("think find get remember"),
            word_set("arm face hand mouth side"),
        ),
        word_set("lol haha crossword describe"),
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
        "breath",
        5,
        (
            word_set("out short lack no"),
            word_set("air breath puff wind oxygen"),
            word_set(
                """
                walking walk stairs upstairs talking talk sitting sit lying bed shoes rest dressing dressed showering
                kettle
                """
            ),
        ),
        word_set(
            """
            lunge lunges bar set sets curl curls press row rows rowing squat squats carry carries machine stepper hill
            pb round rounds rep reps between sled treadmill incline sprint sprints intervals lol haha
            """
        ),
    ),
    Told(
        "headache",
        9,
        (
            word_set("hit kicked struck whacked shot smashed bashed clubbed stabbed"),
            word_set("head skull"),
            word_set("like as-if"),
        ),
        word_set("lol haha idea bar"),
    ),
    Told(
        "headache",
        3,
        (
            word_set("head skull brain"),
            word_set("exploding exploded explode bursting bursted blew"),
        ),
        word_set("lol haha idea ideas numbers information plan maths questions choices work"),
    ),
    Told(
        "breath",
        5,
        (word_set("hard tough heavy"), word_set("to"), word_set("breathe respire inhale")),
        word_set("nose mask remember technique"),
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
            word_set("puff wind breath breathing"),
            word_set("can't won't hasn't haven't not doesn't never"),
            word_set("back return returned returning"),
            word_set("get got getting find catch come coming came been my"),
        ),
        word_set("hold held nose fan app between normal control fine ok okay"),
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
        "heart",
        9,
        (
            word_set("hr pulse heartrate heartbeat heart"),
            word_set("isn't not won't hasn't doesn't still never can't"),
            word_set("down drop dropping drops dropped slowing settling settle"),
            word_set("min mins minutes minute later rest resting sitting hour ages still"),
        ),
        word_set("lol haha strap battery broken goal target zone 2 cardio plan in is-my warm attack"),
    ),
    Told(
        "breath",
        2,
        (word_set("breathe respire"), word_set("bad badly poorly ill worse")),
        word_set("nose mask technique smell cue"),
    ),
    Told(
        "stroke",
        5,
        (
            word_set("eye"),
            word_set("blurry blurred blind black dark grey foggy dim"),
            word_set("went gone goes suddenly can't lost"),
        ),
        word_set("blue bruise bruised purple sweat contact lens lenses makeup sunscreen punch lol haha bloody"),
    ),
    Told(
        "heart",
        12,
        (
            word_set("hr pulse heartrate"),
            word_set("still high racing fast") | frozenset(map(str, range(130, 231))),
            word_set("sitting sat lying laid seated"),
            word_set("min mins minutes minute ages"),
        ),
        word_set("lol haha strap battery zone"),
    ),
    Told(
        "headache",
        10,
        (
            word_set("head skull"),
            word_set("split splits splitting cracked crack cracking opened"),
            word_set("two half apart open second suddenly sudden came nowhere instantly"),
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
        "breath",
        12,
        (
            word_set("puffing puffed breathless winded panting"),
            word_set("steps stairs flight walking shoes kettle bed"),
            word_set("never lately week weeks days new usually normally unusual"),
        ),
        word_set("machine stepper again lol haha"),
        across=True,
    ),
    Told(
        "stroke",
        10,
        (
            word_set("mouth lip lips"),
            word_set("runs leaks dribbles spills falls dribbling running leaking dribble"),
            word_set("side corner"),
        ),
        word_set("mask bottle shaker lol haha"),
    ),
)
"""The rows of breath, heart, chest and head."""
