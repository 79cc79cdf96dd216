"""The words around a load, or a count, that stands alone in its part: `nearest was 27.5`, `squeezed out 8 of them`."""

from bot.notation.kinds import Kind
from bot.notation.wordlist import words

LOADING = frozenset(
    words(
        "goes go hotel has put moving moved stuck settled nearest closest heaviest lightest biggest smallest lowest",
        "highest barbell bar plates were was is be this that it its those these they weight of as by pair the a my at",
        "to on with for had i we so went dropped bumped pulled only just still then and could have again one time",
        "managed lifted pressed pushed swapped switched back instead loaded all found grabbed picked weve ive id",
        "turned ended stayed kept slapped whacked chucked threw stacked racked stripped eased backed crept nudged",
        "opened started opening starting strapped wore wearing vest belt extra holding hung hanging same before cut",
        "theyre ran run running enough thats stole stolen nicked borrowed shared",
    )
)
"""Words, outside those without bearing, that lead a load and change nothing about it."""
AFTER_LOAD = frozenset(
    words(
        "feet today tdy now again this that time on the bar barbell plates belt only then instead tonight here it was",
        "one ones kilo kilos kg weight weights total dumbbells dumbbell dbs db kettlebell kettlebells kb bell bells",
        "plate disc stack pin machine vest around waist chest lap loaded in at for all day hand hands straight off",
        "load left round my a an pair of between legs knees ankles me hanging pounders pounder pound free as before",
        "same extra hugged hugging held to against",
    )
)
"""Words, outside those without bearing, that end it."""
REMARKS = frozenset(
    words(
        "because cause cus cos coz cuz bc bcs bcos becuz becuase becos since as which so but though tho although",
        "while felt feels feel was were moved flew looked seemed is are it its thats that and my i legs arms grip",
        "hands back after with where when they there not due thanks before until till for if of bar pad off from by",
        "despite without",
    )
)  # fmt: skip
"""Words with which a remark begins behind a load or a count: `95 because it slips`, `8 and then my grip went`."""
UNREAL = frozenset(
    words(
        "too impossible wouldnt couldnt cant cannot didnt failed fail nope never wanted want hoped hoping nearly",
        "almost should shouldve would wouldve could couldve next tomorrow target goal plan planned supposed meant aim",
        "aiming thought reckon reckoned maybe perhaps might gonna going will ill shall before previous earlier record",
        "missed miss pinned stapled buried binned bailed yesterday yet wrong typo per either or between roughly",
        "unsure forgot think guess probably rather except unless if another second two twice both same rest others",
        "other wish not no possible he she his her him dont doubt less said says coach told",
    )
)
"""Words behind a load or a count that make it none that was done, or not clearly this one."""
VAGUE = UNREAL | frozenset(
    words(
        "pause paused pauses tempo any some many few couple more most less least fewer every under over about around",
        "roughly approx approximately minimum maximum max min prior later bonus half halves quarter result results",
        "score scores number numbers day week weekend wk wks mins pb pr pbs prs personal none always when where who",
        "how why which whose whatever ever say saying know log weigh weighed each sets set knee side",
    )
)
"""Words without bearing elsewhere that beside a load or a count may change it: `92 and a half`, `about 95`."""
REASONS = frozenset(words("because cause cus cos coz cuz bc bcs bcos becuz becuase becos since as"))
"""Words with which a reason begins."""
COUNTING = frozenset(
    words(
        "gave me squeezed ground grinded eked scraped banged knocked pumped churned fought forced cranked repped came",
        "ended with a an my the so it was that and then for x of only just got did made hit done managed completed",
        "finished all still today now this one reps total very earned hard grindy scrappy shaky ropey sloppy wobbly",
        "ugly strict could have stopped at kept going till until to",
    )
)
"""Words, outside those without bearing, that lead a count and change nothing about it."""
AFTER_COUNT = frozenset(
    words(
        "of them em those these out clean strict proper ugly grindy shaky scrappy steady sloppy wobbly ones reps in",
        "total all done times time again there the this bag that it though today now whole entire on one",
    )
)
"""Words, outside those without bearing, that end it."""
OF_SETS = frozenset(
    words(
        "all of them each for the every set sets time times both same again more not no sorry actually wait oops two",
        "three four five six done rounds reps a and half quarter point plus",
    )
)
"""Words that alone in a part tell something of the set beside them."""
TAKING_BACK = frozenset(
    words(
        "wrong typo mistake scratch ignore delete meant undo mixed forget correction nope nah way chance joy dice",
        "luck",
    )
)
"""Words that take something back, or say that it did not come: `no way`, `no chance`."""
CHANGING = frozenset(
    words("up down moved moving bumped jumped dropped went nudged increased raised lowered back upped")
)
"""Words that lead to another load: behind a count it may be the next set's."""
CARRIED = frozenset(
    words("vest belt plate added extra hanging hung strapped wore wearing backpack rucksack holding hugging hugged")
)
"""Words of a load that is hung on the body."""
ENDED = frozenset(("ended", "made", "stayed"))
"""Words that say that it was the load after all: `ended up on 95`."""
GONE = frozenset(words("nicked taken stolen gone missing busy hogged pinched"))
"""Words of loads that were not there: `the 60s were gone`."""
HAD = GONE | frozenset(words("took stole grabbed has had using hogging use used"))
"""Words of what others had: `someone grabbed the 60s`."""
OF_IT = frozenset(
    words("on that in there for this set triple double single one it me though tho at least easy easily today now of")
)
"""Words behind an effort that tell what it is of."""
TELLING = frozenset((
    Kind.FILL, Kind.WORD, Kind.WAS, Kind.GAP, Kind.TALKNUM, Kind.TO, Kind.AT, Kind.FOR, Kind.WITH, Kind.AND,
    Kind.NO, Kind.OTHERPERSON, Kind.PLATES, Kind.COULD, Kind.THEN, Kind.OTHERTIME, Kind.FEELS, Kind.RIGHT,
    Kind.INSTEAD, Kind.AGAIN, Kind.WEAK, Kind.NAME, Kind.ASKING, Kind.MINUTES, Kind.HOURS, Kind.NUM, Kind.PAIR,
    Kind.ALL, Kind.NOT, Kind.SORRY, Kind.LEFT, Kind.WROTE, Kind.X, Kind.MORE, Kind.KG, Kind.LB, Kind.REPS,
    Kind.TANK
))  # fmt: skip
"""Kinds that a remark beside the set is made of; a number in it is told by its words."""
