"""The words of the trade and of talk, each with its kind. Several words make one phrase; the longest phrase wins.

A phrase is written without apostrophes and hyphens (`couldve done`, `warm up`); a symbol stands as a word of its own
(`/ hand`). All of it is common usage on both sides of the Atlantic; no source.
"""

from functools import cache

from bot.notation.askings import ASKINGS
from bot.notation.endings_said import ENDINGS
from bot.notation.kinds import Kind
from bot.notation.refusals import REFUSED, REFUSING
from bot.notation.wordlist import products, words

_EVERY_SET = "; ".join(
    f"{lead}{every}"
    for lead in ("", "for ", "on ", "in ", "across ", "over ", "through ")
    for every in (
        *(f"all {count}" for count in words("2 3 4 5 6 two three four five six")),
        *("all sets", "all the sets", "all my sets", "all of them", "all of those", "all of these", "both sets"),
        *("every set", "each set", "every single set", "each and every set", "every one", "every single one"),
    )
)
"""`all three`, `on every set`, `across all four`: each set that there is."""
_WEIGHT_UNKNOWN = "; ".join(
    " ".join(f"{lead} {what} {weight} {tail}".split())
    for lead in ("dont know", "i dont know", "not sure", "no idea", "no clue", "unsure", "couldnt tell you", "cant say")
    for what in ("what", "what the")
    for weight in ("weight", "pin", "load", "setting")
    for tail in ("", "was", "it was", "that was", "i used", "was on")
)
"""`no idea what weight that was`: told of a set, and asked of nobody."""

_NOT_KNOWN = "; ".join((
    *products(
        ("couldnt tell you", "cant tell you", "i couldnt tell you", "couldnt say", "dunno", "god knows"),
        ("where", "where from", "why", "what it was", "what that was", "how"),
    ),
    *products(
        ("not sure", "dont know", "i dont know", "no idea"),
        ("what that was", "what it was", "what happened", "what happened there", "what that was about", "why that was"),
    ),
))  # fmt: skip
"""`couldn't tell you where`, `not sure what that was`: told of a hurt or a set, and asked of nobody."""
_COULD_HAVE = "; ".join(
    f"{modal}{have} {done}"
    for modal in words("could would might")
    for have in (
        "ve",
        "a",
        " have",
        " of",
        *(f" {surely} have" for surely in words("easily probably maybe still prob")),
    )
    for done in (
        *words("done got gotten had managed made hit gone squeezed ground pushed repped taken banged pulled pressed"),
        *("gone for", "pushed for", "squeezed out", "squeezed in", "ground out", "banged out", "eked out", "fit in"),
    )
)
"""`would have got`, `coulda squeezed out`: leads the repetitions that were left."""
_FAILED_ON = "; ".join(
    f"{lead}{verb} {on}"
    for lead in ("", "then ", "and ", "and then ", "but ")
    for verb in words("failed fail fails failing missed bailed died stalled")
    for on in ("the", "my", "on", "at", "on the", "at the", "on my", "rep", "on rep", "at rep", "rep number", "number")
    if not (on == "at" and verb in ("died", "stalled"))
)
"""`then failed on`, `fail at`, `bailed on the`: leads the repetition that failed; `stalled at 7` were seven."""
_COULD_NOT = "; ".join(
    products(
        ("couldnt", "could not", "didnt", "did not"),
        ("lock out", "finish", "complete", "make", "get", "lock"),
        ("number", "rep", "rep number"),
    )
)
"""`couldn't lock out number 6`: leads the repetition that failed."""
_MISSING = "; ".join(
    products(
        ("the", "my"),
        ("two", "three", "four", "2", "3", "4"),
        ("sets", "ones"),
        ("", "that are", "which are", "that were", "still"),
        ("missing", "left", "remaining", "open", "left over", "outstanding"),
    )
)
"""`the two sets that are missing`: as many as are left."""
_AS_PLANNED = "; ".join(
    said
    for said in products(
        ("as", "like", "just as", "just like", "exactly as", "exactly like", "same as", "the way", "just how", "how"),
        ("you", "u", "the coach", "coach", "the plan", "the sheet", "the app", "it"),
        (
            "planned it",
            "planned them",
            "planned",
            "wrote it",
            "wrote them",
            "wrote",
            "has it",
            "has them",
            "had it",
            "had them",
            "said",
            "says",
            "say",
            "asked",
            "wanted",
            "wanted it",
            "wanted them",
            "programmed it",
            "programmed them",
            "programmed",
            "prescribed it",
            "prescribed them",
            "prescribed",
            "set it",
            "set them",
            "put it",
            "laid it out",
            "laid them out",
            "had planned",
            "had it planned",
            "had written",
            "have it",
            "have them",
            "have written",
            "wrote it down",
            "wrote them down",
            "told me",
            "told me to",
            "gave me",
        ),
    )
    if said not in ("how you say", "how u say")
)
"""`just like you planned them`, `the way the sheet has it`: as it was prescribed."""
_SAME_LOAD = "; ".join(
    products(
        ("", "at", "with", "on", "using"),
        ("the same", "same", "that same", "the very same", "the exact same", "exact same"),
        (
            "pin",
            "pin setting",
            "setting",
            "notch",
            "hole",
            "peg",
            "plate",
            "plates",
            "stack",
            "bell",
            "bells",
            "kettlebell",
            "dumbbell",
            "dumbbells",
            "dbs",
            "db",
            "weight",
            "weights",
            "load",
            "kilos",
            "pounds",
            "lbs",
            "kg",
            "kgs",
            "resistance",
            "poundage",
            "level",
            "bar",
            "band",
            "vest",
            "pair",
            "assistance",
            "assist",
        ),
    )
)
"""`at the same pin`, `with the very same bells`."""
_LED = ("", "and", "then", "and then")
_LOWERED = words("dropped drop dropping stripped strip stripping lowered reduced lightened")
_LOWERED_IT = words("lower lowering reduce reducing cut took brought")
_WEIGHT = ("it", "that", "weight", "the weight", "load", "the load", "the pin", "the stack")
_DOWN = ("down to", "back down to", "down again to", "down once more to", "down further to")
_TO = ("to", "again to", "further to", *_DOWN)
_WENT_DOWN = "; ".join([
    *products(_LED, _LOWERED, ("", *_WEIGHT), _TO),
    *products(_LED, _LOWERED_IT, _WEIGHT, _TO),
])  # fmt: skip
"""`dropped the weight to`, `took it down again to`: a load gone down to."""

TELL_ME = products(
    (
        "let me know",
        "lemme know",
        "tell me",
        "please tell me",
        "please tell",
        "kindly tell me",
        "kindly tell",
        "kindly advise",
        "kindly let me know",
        "kindly confirm",
        "please advise",
        "please confirm",
        "pls advise",
        "pls tell me",
        "pls tell",
        "plz tell",
        "advise me",
        "kindly guide",
        "kindly inform",
    ),
    ("", "please", "pls", "plz", "sir", "coach"),
    ("if", "whether"),
) + products(
    ("kindly", "pls", "plz", "please"),
    ("", "sir", "coach", "madam"),
    ("tell", "tell me", "advise", "guide", "explain"),
    words("if whether how what which when where why"),
)
"""`kindly tell whether`, `tell me please if`: opens a question."""
_NO_KIT = "; ".join(
    products(
        ("no", "no more", "zero"),
        words("dumbbells dbs bells kettlebells plates bars benches racks machines weights bands cables mats space"),
        words("free left available anywhere going spare about"),
    )
)
"""`no dumbbells free`: why something is left out."""
_POWER_CUT = "; ".join(
    (
        *products(
            ("power", "electricity", "electric", "water", "internet", "wifi"), ("cut", "cut out", "got cut", "was cut")
        ),
        *("powercut", "price cut", "pay cut", "hair cut", "short cut", "shortcut"),
    )
)
"""`then power cut`: cut by others, and no exercise left out."""
_OTHER_ORDER = "; ".join(products(
    words("switched swapped changed flipped reversed mixed switching swapping changing flipping"),
    ("the order", "order", "up the order", "the order around", "the order round", "the order up", "the order a bit"),
))  # fmt: skip
"""`swapped the order`: told of the session, in which nothing is swapped for anything else."""
PHRASES: dict[Kind, str] = {
    Kind.QUERY: ("or nah; or not; or what; or no"),
    Kind.FILL: (
        "one for the books; one for the history books; one for the album; "
        "one for the memory; one for the team; cant stop thinking about; cant stop thinking of; cant stop thinking; "
        "cant stop; cannot stop; couldnt stop; "
        + _NO_KIT
        + "; "
        + _OTHER_ORDER
        + "; "
        + _POWER_CUT
        + "; i put it down; i put it back; i put the bar down; i put the bar back; i put them down; a stroke; a mini "
        "stroke; five a side football; 5 a side football; playing five a side; played five a side; at five a "
        "side; from five a side; after five a side; five a side with; playing 5 a side; played 5 a side; from 5 a "
        "side; after 5 a side; seven a side football; 7 a side football; all weekend; not any more; "
        "hold on to; hang on to; hold onto; hang onto; holding on to; holding onto; held on to; "
        "to dont know what; to i dont know what; to i dunno what; to dunno what; to god knows what; to who knows what; "
        "to lord knows what; to whatever; to no idea what; to not sure what; to something lighter; to some lighter "
        "weight; didnt look what weight; didnt look at the weight; didnt check the weight; didnt check what weight; "
        "weight unknown; no idea what weight; dunno what weight; didnt know what weight; didnt know what weight to "
        "use; "
        "didnt know the weight; didnt know what to use; didnt know how heavy; didnt know how heavy to go; wasnt sure "
        "what weight; wasnt sure what weight to use; wasnt sure how heavy; wasnt sure how heavy to go; wasnt sure what "
        "to use; had no idea what weight; had no idea what weight to use; had no idea how heavy; wasnt sure of the "
        "weight; no weight in the plan; no weight on the plan; no weight given; no weight listed; no weight written; "
        "no weight was given; no weight on the sheet; plan didnt say a weight; plan didnt give a weight; plan doesnt "
        "say a weight; it didnt say a weight; it didnt say what weight; plan didnt say what weight; doesnt say what "
        "weight; "
        "yeah nah; nah yeah; yeah na; yeh nah; aye naw; yeah no; for luck; for good luck; for good measure; for the "
        "hell of "
        "it; for the craic; for the road; for old times sake; for the coach; for my coach; "
        "at the same time; at the same time as; at same time; "
        "how you say; how u say; how do you say; how do u say; how to say; how you call it; how do you call it; how is "
        "it called; how it is called; "
        "meant to send; meant to log; meant to post; meant to text; "
        "a set of; a single set of; just a set of; mid set; midset; halfway through the set; half way through the set; "
        "my bad side; my bad leg; my bad arm; my bad shoulder; my bad knee; my bad hip; "
        "my notes say; my notes said; notes say; my notebook says; my book says; my log says; my diary says; the video "
        "says; the video shows; video says; video shows; thinking about it; thinking about that; thinking back; "
        "looking back; looking back on it; looking back at it; "
        "thinking back on it; come to think of it; now that i "
        "think about it; now that i think of it; now i think about it; now i think of it; on second thoughts; on "
        "second thought; on reflection; not gonna lie; not going to lie; not sure how; not sure how but; "
        + _NOT_KNOWN
        + "; "
        + _WEIGHT_UNKNOWN
        + "; dont know "
        "how but; not my best; not my finest; not great; not terrible; not too bad; not bad; wasnt pretty; not pretty; "
        "not the prettiest; by the way; bytheway; what was i going to say; what was i gonna say; what was i saying; "
        "what was i going to ask; what else was i going to say; what i was going to say; where was i; "
        "cut the depth; cut the range; cut the rom; cut the tempo; cut the range of motion; cut my depth; cut my "
        "range; cut my rom; cut my tempo; cut my range of motion; cutting the depth; cutting the range; cutting "
        "the rom; cutting the tempo; cutting the range of motion; cutting my depth; cutting my range; cutting my "
        "rom; cutting my tempo; cutting my range of motion; cut depth; cut range; "
        "cut it short; cutting it short; so i cut it short; cut that one short; cut "
        "that short; cut this one short; keep it short; keeping it short; make it short; cut today short; "
        "took it all out of me; took it out of me; took everything out of me; took all out of me; takes it all out of "
        "me; takes it out of me; took it all out; took everything out; took it out of my legs; emptied me; finished me "
        "off; finished me; done me in; did me in; killed me; "
        "nearly killed me; almost killed me; nearly finished me; almost finished me; nearly did me in; nearly died; "
        "almost died; nearly broke me; almost broke me; nearly had me; nearly ended me; nearly gave up; nearly cried; "
        "almost cried; nearly quit; almost quit; nearly got me; nearly threw up; nearly puked; almost puked; "
        "swapped racks; switched racks; changed racks; swapped rack; switched rack; swapped platforms; "
        "switched platforms; swapped stations; switched stations; swapped shoes; switched shoes; changed shoes; "
        "no cap; no joke; no lie; no word of a lie; no bother; no worries; no problem; no problemo; no drama; no "
        "dramas; no sweat; no probs; no fuss; no doubt; no biggie; no way; no messing; no stress; no issue; no "
        "issues; no excuses; "
        "not to failure; nowhere near failure; near failure; close to failure; far from failure; before failure; not "
        "near failure; not quite to failure; didnt fail; not failed; no failure; short of failing; shy of failing; "
        "didnt go to failure; without failing; near to failure; almost to failure; almost failed; nearly failed; just "
        "short of failure; at all; all good; all in all; all day; all over; of all; after all; not at all; all right; "
        "all the best; all easy; all felt; all fine; all ok; all well; all clean; all smooth; all solid; all hard; "
        "all tough; first time; last time out; each other; all feeling; for real though; all of a sudden; as usual; "
        "on time; in total control; over all; or so; or so i think; or thereabouts; or something; or something like "
        "that; or whatever; on fire; on point; on form; on track; on top of that; on the way; on my own; on my phone; "
        "on repeat; on the go; on purpose; on the bright side; on the plus side; on the move; on holiday; on call; on "
        "shift; "
        "somewhere between; somewhere in between; anywhere between; somewhere around; "
        "by the way; by far; by myself; by now; by then; by the end; give or take; as always; like "
        "always; more or less; this one; back to back"
    ),
    Kind.X: ("x; by; ×"),
    Kind.FOR: ("por; fur; para; stopped at; had to stop at; for; for a set of; for a; for an"),
    Kind.AT: ("@; at; on; @ a; at a; at around; at about"),
    Kind.WITH: ("con; mit; avec; com; with; w; wi; w /; using; with the; on the; with a"),
    Kind.AND: ("and; &; n; and another; and then another; nd; an then"),
    Kind.THEN: (
        "and directly without pause; directly without pause; and without pause; without pause; without a break; and "
        "without rest; without rest; "
        "immediately; and immediately; then immediately; straight after; and straight after; then straight after; "
        "straight away; straightaway; right away; right after; and right after; directly after; and directly after; "
        "immediately after; and immediately after; after that immediately; and after that immediately; no rest; no "
        "rest then; then no rest; with no rest; and no rest; no break; with no break; no pause; with no pause; without "
        "stopping; straight on with; straight on to; straight onto; and straight on with; then straight on with; went "
        "straight on with; carried straight on with; straight on; zero rest; 0 rest; and after; and after that; and "
        "afterwards; thereafter; "
        "then; and then; after that; followed by; next; then another; afterwards; then did; thne; than did; "
        "moved on to; moved onto; moving on to; moving onto; then moved on to; then moved onto; and moved on to; "
        "and moved onto; and then moved on to; moved over to; then over to"
    ),
    Kind.OR: ("or; nor"),
    Kind.TO: ("to; until; till; through"),
    Kind.KG: (
        "kg; kgs; kilo; kilos; kilogram; kilograms; kilogramme; kilogrammes; k; kgg; kh; kq; kay gee; kay gees; keys; "
        "klg; klgs; kgms; kilios"
    ),
    Kind.LB: ("lb; lbs; pound; pounds; lbz; lb s; #; ibs; libs; pounders; pounder; ponds; pouns"),
    Kind.REPS: (
        "wdh; wiederholungen; wiederholung; repeticiones; repeticion; repeticoes; ripetizioni; powtorzen; powtorzenia; "
        "herhalingen; tekrar; toistoa; toistot; gentagelser; repetisjoner; repetitioner; opakovani; "
        "pieces; piece; repeats; pcs; repetitons; rep; reps; repetition; repetitions; resp; rpes; reos; repss; rps; "
        "repts; repes; wraps; raps; times each; rep s; good reps; clean reps; full reps; "
        "solid reps; strict reps; more reps; total reps"
    ),
    Kind.SECONDS: (
        "seg; segs; segundo; segundos; sec; secs; second; seconds; secds; sek; scs; secons; seconda; "
        "sekunden; sekunde; seconden; seconde; secondi; secondes; sekunder; sekundy"
    ),
    Kind.MINUTES: ("min; mins; minute; minutes; minuts; mns; mintues; minuets"),
    Kind.HOURS: ("h; hr; hrs; hour; hours"),
    Kind.METRES: ("metre; metres; meter; meters; mtr; mtrs; mts"),
    Kind.S: ("s"),
    Kind.M: ("m"),
    Kind.L: ("l; lt; lft"),
    Kind.R: ("r; rt; rgt"),
    Kind.SETS: (
        "trips; trips with; trips of; trips at; lengths; lengths of; lengths at; laps; laps of; laps at; "
        "serien; saetze; satze; tandas; sett; serier; ripetute; "
        "series; series of; serie of; back downs; backdowns; back downs at; backdowns at; "
        "backoffs; back offs; backoff sets; back off sets; back down sets; backdown sets; down "
        "sets; drop down sets; lighter sets; volume sets; "
        "sets; sets of; sets at; sets x; sets with; stes; setts; rounds; rounds of; sests; set of; sets of it; sets "
        "like that; setz"
    ),
    Kind.SET: ("serie; set; set number; set no; set #"),
    Kind.TIMES: ("mal; veces; vezes; fois; volte; razy; ganger; ggr; gange; keer; time; twice; times; times over"),
    Kind.LASTSET: (
        "last lot; the last lot; last lot of; the last lot of; my last lot of; last go; the last go; last bout; final "
        "lot; the final lot; final go; the final go; last go at; last bash; "
        "earlier set; the earlier set; earlier one; the earlier one; the one earlier; one earlier; the set earlier; "
        "last serie; the last serie; last series; the last series; latest set; the latest set; latest one; the latest "
        "one; this last one; this last set; my last one; "
        "last set; last one; the last set; the last one; the last; previous set; previous one; that last set; that "
        "last one; prev set; that set; that one; my last set; final set; the final set; lst set; last st"
    ),
    Kind.ANOTHER: ("another; one more; one more set; another set; another one; 1 more set; one more rep; another rep"),
    Kind.HAND: (
        "/ hand; per hand; each hand; a hand; in each hand; per dumbbell; each dumbbell; per db; each db; / db; per "
        "dumbell; each dumbell; / dumbbell; per bell; each bell; hand; ph; p / h; e / h; an hand; one in each hand; "
        "in either hand; either hand; ea hand; apiece; / bell; a dumbbell"
    ),
    Kind.TOTAL: (
        "total; in total; altogether; combined; both hands; both together; total weight; both dumbbells; both dbs; "
        "between both hands; between the two; total load; both hands together; together; for the pair; the pair"
    ),
    Kind.PAIR: ("pair of; a pair of; two of the"),
    Kind.EACH: (
        "p / leg; p / side; p / arm; p / foot; "
        "each; ea; / side; / leg; / arm; / foot; per side; per leg; per arm; each side; each leg; each arm; a side; a "
        "leg; an arm; both sides; both legs; both arms; each way; per foot; either side; on each side; on each leg; "
        "on each arm; on both sides; on both legs; on both arms; e / s; ea side; ea leg; ea arm; es; every side; / "
        "each; p / s; per limb; each foot; on either side; either leg; both; per sides; eahc; aside; for each leg; "
        "for each side; for each arm; for both sides; for both legs; for both arms; side; p side; p leg; p arm; a / "
        "side; eachside; eachleg"
    ),
    Kind.LEFT: (
        "links; linkes bein; linker arm; izquierda; izq; gauche; a gauche; sinistra; lewa; "
        "the left leg; the left arm; the left side; my left leg; my left arm; my left side; on my left leg; on my "
        "left arm; on my left side; the left foot; left ones; the left hand; on the left hand; "
        "left; left side; left leg; left arm; on the left; on left; on my left; left one; lefts; on the left side; on "
        "the left leg; on the left arm; l side; l leg; l arm; the left; my left; lhs; with the left; with my left; "
        "left hand; leftie; lefty; leg left; lef; for the left; left foot; on the left one"
    ),
    Kind.RIGHT: (
        "rechts; rechtes bein; rechter arm; derecha; dcha; droite; a droite; destra; prawa; "
        "the right leg; the right arm; the right side; my right leg; my right arm; my right side; on my right leg; "
        "on my right arm; on my right side; the right foot; the right hand; on the right hand; "
        "right; right side; right leg; right arm; on the right; on right; on my right; right one; rights; on the "
        "right side; on the right leg; on the right arm; r side; r leg; r arm; the right; my right; rhs; with the "
        "right; with my right; right hand; rigth; rihgt; righty; for the right; right foot; on the right one"
    ),
    Kind.BODY: (
        "with my bodyweight; with my own bodyweight; with my body weight; with just my bodyweight; "
        "with only my bodyweight; only with my bodyweight; only my bodyweight; on my bodyweight; at my bodyweight; on "
        "my own bodyweight; my bodyweight only; my own bodyweight; just my own bodyweight; just my own weight; just my "
        "body weight; with my own weight; with my own body weight; only my own weight; just my own body; bodyweight "
        "only today; no weight today; no added weight today; no plate today; no weight on; nothing on the belt; "
        "nothing on my belt; no weight at all; no extra weight today; with nothing added; with nothing extra; "
        "no weights; no added weights; zero weight; no dumbbells; without dumbbells; without weights; without any "
        "weight; without any weights; without added weight; without extra weight; bodyweight today; nothing extra; "
        "no help; just me; just my bodyweight; just my body; no weight added; nothing added; zero added; without "
        "any help; without help; no counterweight; without the counterweight; "
        "zero assist; zero assistance; 0 assist; 0 assistance; zero help; zero band; no band; no bands; without "
        "the band; without a band; without band; band free; unbanded; "
        "bw; bodyweight; body weight; b w; bodywt; just bodyweight; no weight; unweighted; no added weight; no extra "
        "weight; unassisted; bdyweight; own bodyweight; bodyweight only; bw only; no assist; no assistance; without "
        "assistance; without weight; boby weight; no load; own weight; without assist; just bw"
    ),
    Kind.BAND: (
        "band; banded; bands; with a band; with band; with the band; resistance band; green band; red band; blue "
        "band; black band; purple band; yellow band; orange band; grey band; thin band; thick band; light band; heavy "
        "band; the green band; the red band; the blue band; the black band; the purple band; band assisted; band "
        "assist; with band assist; with bands"
    ),
    Kind.ASSIST: (
        "takes off; taking off; takes away; took away; takes about; "
        "assist; assisted; assistance; of assistance; assistance of; of assist; help; of help; kg assist; "
        "counterweight; asist; assisst; asisted; with help; assited; of counterweight; assistence"
    ),
    Kind.ADDED: (
        "added; weighted; added weight; on the belt; on belt; hanging; extra weight; additional; on a belt; with "
        "belt; on top; strapped on; in the vest; vest"
    ),
    Kind.MINUS: ("minus; negative"),
    Kind.PLUS: ("plus; +"),
    Kind.PLATES: (
        "plate; plates; blue plates; red plates; big plates; and the bar; plus bar; plus the bar; + bar; bar; empty "
        "bar; the bar; just the bar; bar only"
    ),
    Kind.DROP: (
        "dropped the weight; dropped the pin; dropped the load; dropped the weight down; dropped the pin down; "
        "pin up to; pin moved to; pin moved up to; moved the pin to; moved the pin up to; moved pin to; shifted the "
        "pin to; pin to; "
        "ripped a plate off; ripped a plate off each side; ripped a plate; stripped a plate; stripped a plate off; "
        "stripped a plate off each side; took a plate off; took a plate off each side; pulled a plate; pulled a "
        "plate off; pulled a plate off each side; dropped a plate; took some weight off; took weight off; took "
        "some off; stripped some off; stripped some weight off; stripped weight off; stripped it; stripped it "
        "down; moved the pin up; pulled the pin up; moved the pin; a plate off; a plate off each side; lost a "
        "plate; stripped some plates; stripped the plates; "
        "strip a plate; strip a plate off; strip another; strip another plate; stripped another; "
        "stripped another plate; "
        "take a plate off; took another plate off; another plate off; strip it; strip it down; "
        f"{_WENT_DOWN}; "
        "drop; drops; dropset; dropsets; drop set; drop sets; dropped to; drop to; drop down to; dropped down to; "
        "dropping to; dropped; strip to; stripped to; stripped down to; then drop; then dropped; then dropped to; and "
        "dropped to; and drop; and drop to; drop it to; dropped it to; drop was; drop set was; drop set at; drop at; "
        "dropset at; dropping; straight into; the drop; the drop set; dropped it down to; then drop set; then "
        "dropset; then a drop; then a drop set; the drop was; with a drop to; and then dropped to; and a drop; and a "
        "drop set; drop set of; drop of; drpo"
    ),
    Kind.DROPPED: (
        "on the drop; on the drop set; on the dropset; for the drop; as a drop; in the drop; after the drop; on drop; "
        "as drop; as the drop; for the drop set; as a drop set; after dropping"
    ),
    Kind.MINI: (
        "minis; mini; mini sets; mini set; minisets; miniset; rest pause; rest pauses; restpause; then minis; with "
        "minis; minis of; rest pause reps; rest pause sets; the minis; then minis of; and minis; and minis of; mini "
        "reps; mini sets of; mini set of; minisets of; mini reps of; rest pause sets of"
    ),
    Kind.WARMUP: (
        "warm up; warmup; warm ups; warmups; warmed up; warming up; w u; wu; w / u; w / you; w / up; "
        "w / ups; warmed up with; warm up with; "
        "warm up set; warm up sets; warmup set; warmup sets; warm up was; warmed up at; wup; warmpup; wramup; "
        "warmupp; warm p; warmed up to; ramp up; ramp up sets; ramped up; ramping; feeler; feeler set; feelers; warm "
        "up of; warming up with; warn up; worm up; warm upp; as a warm up; for a warm up; for warm up; as warm up; to "
        "warm up; warm ups of; the warm up; warmupset; warm set; warm sets; to get warm; get warm; warm; for warming "
        "up; "
        "for the warm up; for my warm up; for warm ups; for the warm ups; as warm ups; as warmups; as my warm up; as "
        "my "
        "warm ups; as the warm up; as warm up sets; to get warmed up; just to warm up; to warm up with; for warmup; "
        "for "
        "warmups; as warmup; to warmup"
    ),
    Kind.WORKSET: (
        "backed off to; backed it off to; backing off to; "
        "back off; back offs; backoff; backoffs; back off set; back off sets; backoff set; backoff sets; back down "
        "set; back down sets; down set; down sets; drop down sets; straight work sets; "
        "work set; working set; work sets; working sets; worksets; workset; main set; main sets; proper set; proper "
        "sets; for real; real set; real sets; top set; first work set; first working set; work; heavy set; then "
        "working"
    ),
    Kind.RPE: (
        "rp; rpi; are pee; are p e; ar pe; r pe; exertion; difficulty; intensity; "
        "rpes; rpes of; rpes were; the rpes were; efforts; efforts of; efforts were; the efforts were; effort levels; "
        "effort level; effort level was; effort rating; effort ratings; exertions; difficulties; "
        "rpe; rpe of; rpe was; r p e; rpe about; rpe around; rpe like; at rpe; at an rpe of; @ rpe; on rpe; effort; "
        "effort was; effort of; rpe is; rpe maybe; rpe probably; rpe a; rpr; rep e; at an rpe; with an rpe of; about "
        "rpe; around rpe; rpe roughly; at about rpe; maybe rpe; say rpe; probably rpe; like rpe; call it rpe; felt "
        "like rpe; felt rpe; was rpe; rpe on that; rpe for that; rpe on this; rpe for this; rpe =; are pe; r p"
    ),
    Kind.RIR: (
        "rir; rir of; rir was; r i r; at rir; @ rir; with rir; rir about; rir maybe; rir is; rir around; rirs; about "
        "rir; maybe rir; with an rir of; rir probably; rir =; reps in reserve of; reps in reserve was"
    ),
    Kind.FEELS: (
        "felt more like; feels more like; "
        "would say; would say a; would say an; i would say; i would say a; would call it; would call it a; would call "
        "it an; id call it; id call it a; would rate it; would rate it a; id rate it; id rate it a; rate it; rate it "
        "a; rate it an; rated it; rated it a; would give it; would give it a; id give it a; id give it an; give it a; "
        "give it an; giving it a; giving it an; would give that a; would give that an; id give that a; id give that "
        "an; "
        "give that a; give that an; call that a; call that an; would call that a; would call that an; rate that a; "
        "rate that an; rated that a; rated that an; "
        "felt like; feels like; that was a hard; that was a solid; that was a tough; that was an easy; that was a "
        "strong; "
        "that was a comfortable; that was a good; "
        "felt like an; felt like a; felt like about a; felt like about an; call it an; call it a; felt about an; felt "
        "about a; feels like an; feels like a; id say an; id say a; difficulty; felt an; felt a; maybe an; probably "
        "an"
    ),
    Kind.TANK: (
        "away from failing; from failing; short of failing; off failing; shy of failing; rep away from failing; reps "
        "away from failing; reps from failing; rep from failing; reps short of failing; reps off failing; to go in the "
        "tank; "
        "rep remaining; reps remaining; repetition remaining; repetitions remaining; rep remained; reps remained; "
        "repetition remained; repetitions remained; rep was remaining; reps were remaining; rep stayed in me; rep "
        "stayed in the tank; reps stayed in the tank; rep rested in me; reps rested in me; repetition rested in me; "
        "repetitions rested in me; rep inside; reps inside; repetition inside; repetitions inside; was still in "
        "there; was still there; was still in me; was in there; were in there; was in me; was in the tank; was in "
        "reserve; "
        "more were there; more was there; more there; more in it; more were in there; more was in there; more were in "
        "it; more were in me; more were in the tank; more to give; more would have gone; more wouldve gone; more would "
        "go; more would have been possible; more would have been there; more were left; more was left; were left; "
        "was left; still left; still there; were left in "
        "the tank; were still there; were still in there; were in the tank; were in reserve; still in reserve; still "
        "in there; in my pocket; in the pocket; in my back pocket; held back; kept back; "
        "more were possible; more was possible; more possible; reps more possible; more reps possible; in the reserve; "
        "reserve; more i could; more i could do; more i could have done; rep before failure; reps before failure; "
        "before failure; in the bank; in the locker; up my sleeve; up the sleeve; to spare; in my pocket; in my back "
        "pocket; in the pocket; in store; still in me; in the tank; left in the tank; "
        "reps in reserve; rep in "
        "reserve; in reserve; reps left; rep left; left in me; "
        "more in me; more in the tank; more left; left over; to spare; spare; more reps in me; in hand; reps in hand; "
        "rep in hand; from failure; off failure; shy of failure; away from failure; short of failure; reps from "
        "failure; rep from failure; reps shy of failure; rep shy of failure; reps short of failure; rep short of "
        "failure; left in it; in me; reps in me; rep in me; reps in the tank; rep in the tank; in tank; in thr tank; "
        "in teh tank; in the tnak; more rep in me; still in the tank; reps left in me; rep left in me; reps left in "
        "the tank; rep left in the tank; reps to spare; rep to spare; left in there; more in there; in the taank; i "
        "reserve; reps away from failure; rep away from failure; reps off failure; rep off failure; more left in me; "
        "more left in the tank; in the locker; left i think; reps left i think; left maybe; leftover; left in the bag"
    ),
    Kind.COULD: (
        "were staying me; was staying me; stayed me; stays me; remained me; remain me; remains me; were remaining me; "
        "were resting me; rested me; was leaving me; "
        "it rested; it remained; it rests; it remains; there remained; there remains; there rested; i had still; "
        "could; could make; could still do; still could do; "
        "could have done; couldve done; coulda done; couldve got; could have got; could of done; could of got; could "
        "have had; could do; couldve gone; couldve gone for; could have gone for; could have managed; couldve "
        "managed; could have made; couldve made; had; i had; maybe had; probably had; still had; had maybe; had "
        "about; had at least; could have squeezed out; couldve squeezed out; could have hit; couldve hit; could have "
        "ground out; had probably; could have gotten; couldve gotten; coulda got; coulda gotten; could have maybe "
        "done; could maybe have done; could probably have done; couldve maybe done; couldve probably done; could have "
        "probably done; felt like i had; couldve pushed; could have pushed; could have pushed for; could have taken; "
        "room for; had in me; cud of done; cudve done; cud have done; coud have done; cld have done; couldhave done; "
        "could have don; could have squeezed; couldve squeezed; could have banged out; could of had; could have "
        "repped; thought i had; think i had; reckon i had; id have got; id have done; id have had; id have made; "
        "id have managed; would still have had; " + _COULD_HAVE
    ),
    Kind.MORE: (
        "more; more reps; extra; more rep; extra reps; more easily; more easy; mroe; more i think; more at least; "
        "more maybe; more probably; mor; moer"
    ),
    Kind.EMPTY: (
        "nowt left; nowt left in the tank; nowt in the tank; nowt left in me; absolutely nowt left; naught left; nada "
        "left; zilch left; zip left; sod all left; bugger all left; jack all left; nothing left whatsoever; nothing "
        "else left; nothing left to give; nothing more to give; nowt more to give; "
        "not another rep in me; not another one in me; not another in me; not one rep in me; not a rep in me; not a "
        "single rep in me; not another rep left; not another left; not one rep left; not a rep left; not a single rep "
        "left; not one left; couldnt do 1 more; nothing remaining; zero remaining; no reps remaining; not a thing "
        "left; not another rep in the tank; not one in the tank; "
        "nothing more was possible; nothing more possible; not one more possible; no more was possible; "
        "nothing left; nothing left in the tank; nothing more in the tank; nothing else in the tank; no more in "
        "the tank; to failure; till failure; til failure; until failure; failure; at "
        "failure; hit failure; reached failure; all out; nothing in the tank; zero left; no reps left; none left; "
        "couldnt do another; couldnt have done another; could not have done another; couldnt do one more; nothing "
        "more in me; empty tank; emptied the tank; tank empty; tank was empty; maxed out; couldnt get another; no "
        "more left; no more in me; to fail; went to failure; taken to failure; took it to failure; absolutely nothing "
        "left; zero in the tank; none in the tank; nothing left in me; nothing in me; nothing to spare; nothing in "
        "reserve; zero in reserve; none in reserve; no reps in reserve; total failure; to total failure; to complete "
        "failure; complete failure; couldnt have done one more; couldnt squeeze another; couldnt have got another; "
        "couldnt have done any more; couldnt have done more; could not do another; could not do one more; couldnt do "
        "any more; couldnt do anymore; to muscular failure; no reps in the tank; nohting left; nothing lft; to "
        "falure; to failiure; to faliure; too failure; nothing left at all; couldnt have got one more; no chance of "
        "another; not one more in me; had nothing left; i had nothing left; failed; then failed; and failed; zero "
        "reps left; zero reps in reserve; failing"
    ),
    Kind.FAILED: (
        "failed the; failed on; failed at; failed on the; failed at the; failed rep; failed on rep; failed at rep; "
        "failed my; missed the; missed rep; missed my; missed on; couldnt get the; couldnt finish the; couldnt lock "
        "out the; got stuck on the; got stuck on; stuck on the; got stuck halfway on the; stuck halfway on the; "
        "got stuck halfway up on the; stuck halfway up on the; got stuck half way on the; got stuck midway on the; "
        "stalled halfway on the; stalled halfway up on the; stalled on the; stuck mid rep on the; "
        "died on the; died on; failing on; failing the; failed "
        "on my; couldnt complete the; didnt get the; didnt make the; didnt finish the; no lockout on; lost the; "
        "failed attempting the; failed going for the; failed trying the; faild the; fialed the; failed th; failed "
        "number; failed on number; couldnt make the; could not lock out the; could not get the; could not finish the; "
        "could not complete the; could not make the; couldnt get number; couldnt get rep; did not get the; did not "
        "make the; didnt get number; " + _FAILED_ON + "; " + _COULD_NOT
    ),
    Kind.LASTREP: ("last rep; the last rep; final rep; the last; last; last one"),
    Kind.ALL: (
        "both times; all the times; both goes; both series; all series; "
        "both rounds; all rounds; every round; each round; all three rounds; all 3 rounds; "
        "both of those; both of them; both of these; on both of those; on both of them; on both of these; for both "
        "of those; for both of them; for both of these; the pair of them; "
        "all round; all around; all the way across; "
        "all of em; for all of em; "
        "all; all of them; for all; across the board; throughout; on all; every time; the whole lot; each time; per "
        "set; a set; the lot; the whole thing; all the way through; all the way; the whole way; the whole way through; "
        "whole way through; for each; across all; straight sets; straight across; across; " + _EVERY_SET
    ),
    Kind.SAME: (
        "snap; matched it; matched that; more of the same; "
        "copy paste; copy and paste; copy paste of the last set; carbon copy; rinse and repeat; samesies; same dance; "
        "same drill; same business; same old; same as ever; same idea; same score; exact same; exact same again; "
        "exactly same; the exact same; the exact same thing; the exact same again; same one again; "
        "same; same again; ditto; same as before; same as last set; same as above; likewise; repeat; repeated; same "
        "thing; same thing again; same as the last; same as the last one; same as that; same as last; identical; and "
        "again; once more; same same; exactly the same; saem; smae; same gain; same agian; sme again; the same; the "
        "same again; same as the first; same as previous; same as the one before; dito; dittto; idem; same numbers; "
        "same as set before; same as the set before; same result; same deal; same story; repeat that; repeat of that; "
        "did it again; done it again; did it all again; did them again; "
        "did the same; did the same again; another the same; another of the same; one more the same; another one the "
        "same; as above; same as the previous; same as my last; same as my last set; same as the last set; same "
        "weight and reps; same weight same reps; same reps same weight; same weight and same reps; same load and "
        "reps; same load same reps; same reps and weight; did that again; as before; like before; as the one before; "
        "like the one before; just like before; as last set; like last set"
    ),
    Kind.AGAIN: ("again; agian; agan"),
    Kind.SAMELOAD: (
        "same band; the same band; same band as before; same band as last time; same vest; same pin; same setting; "
        "same bell; the same bell; same dumbbell; same pair; "
        "same stack; same plate; same plates; same kettlebell; same kb; same ball; same sled; "
        "same weight; same load; the same weight; the same load; with the same weight; at the same weight; same "
        "weights; at same weight; with the same; same kg; same wt; same weight again; same kilos; same dumbbells; "
        "same dbs; same bells; same poundage; same bar; same resistance; weight the same; kept the weight; kept the "
        "same weight; stayed at the same weight; same assist; same assistance; pin the same; stack the same; "
        "plates the same; bells the same; dumbbells the same; kilos the same; " + _SAME_LOAD
    ),
    Kind.SAMEREPS: (
        "same distance; the same distance; for the same distance; same length; the same length; same metres; "
        "same reps; same rep; the same rep; "
        "the same reps; same number of reps; for the same reps; for same reps; same rep count; for the "
        "same; reps the same"
    ),
    Kind.PLANNED: (
        "same as planned; same as plan; same as prescribed; same as written; same as the plan; "
        "as on the paper; as on paper; as on the sheet; like on the paper; like on the sheet; as the paper says; as it "
        "says; as on the card; "
        "like in the plan; like the plan; as you prescribed; as you asked; as you programmed; as you planned; "
        "as you set; as you set it; the way you "
        "wrote it; exactly as written; exactly as prescribed; exactly as you prescribed; exactly as you wrote; as "
        "planned; as prescribed; as written; as programmed; per plan; per the plan; as per plan; to plan; on plan; as "
        "per the plan; by the book; as scheduled; as you wrote; as you wrote it; like planned; as instructed; as the "
        "plan says; like the plan says; as it says; as laid out; as per program; as per programme; per program; per "
        "programme; as asked; as plan; as planed; a planned; according to plan; exactly as planned; just as planned; "
        "as planned again; as on the plan; went to plan; as set out; as in the plan; as in plan; as plannd; as "
        "plnned; all went to plan; as per prescription; as prescibed; how you wrote it; like you said; as you said; "
        "as directed; as told; as per the sheet; as per sheet; exactly what it says; what it says; followed the plan; "
        "to the letter; what the plan says; exactly what the plan says; what the plan said; exactly what you wrote; "
        "what you wrote; exactly to plan; stuck to the plan; as the card says; "
        + "; ".join(
            products(
                ("as", "like", "how it is", "by", "same as"),
                ("in", "on", "at", ""),
                ("", "the", "my"),
                ("plan", "programme", "program", "sheet"),
            )
        )
        + "; "
        + "; ".join(
            products(
                (
                    "according to",
                    "accordingly to",
                    "according",
                    "acc to",
                    "in accordance with",
                    "in line with",
                    "conform",
                    "conforming to",
                    "corresponding to",
                    "following",
                    "respecting",
                    "per",
                    "as per",
                    "as indicated in",
                    "as written in",
                    "as wrote in",
                    "as it stands in",
                    "as stands in",
                    "like it stands in",
                    "as said in",
                ),
                ("", "the", "my", "your"),
                (
                    "plan",
                    "programme",
                    "program",
                    "sheet",
                    "schedule",
                    "training plan",
                    "schema",
                    "scheme",
                    "protocol",
                    "instructions",
                    "instruction",
                    "prescription",
                    "routine",
                    "paper",
                    "table",
                    "workout plan",
                    "card",
                ),
            )
        )
        + "; according to what you wrote; according to you; according your plan; as you putted; like you putted; "
        "as you put; like you put; as indicated; like indicated; how indicated; how it was planned; "
        "like it was planned; "
        "as it was planned; as was planned; like was planned; how planned; like in plan; like in program; like agreed; "
        "as agreed; as discussed; as foreseen; like foreseen; as previewed; as expected in the plan; nach plan; "
        "segun plan; segun el plan; conforme o plano; come da programma; come da piano; som planlagt; som planen; "
        "selon le plan; selon plan; comme prevu; zgodnie z planem; plana gore; wie geplant; como planeado"
        + "; "
        + _AS_PLANNED
    ),
    Kind.DONE: (
        "done; ✅; 👍; did it; completed; thats done; set done; one done; thats that set; complete; doen; dnoe; dun; "
        "all good done; and done; did that; got it done; that set done; set complete; set completed; yep done; done "
        "that; done it; done that one"
    ),
    Kind.FINISH: (
        ENDINGS + "; "
        "session in the bag; workout in the bag; all in the bag; thats it in the bag; "
        "that is me finished; that was me finished; that was me done; that is us done; that is us finished; thats us "
        "finished; that was us done; that makes me done; that makes me finished; thats the session finished; "
        "and done for today; and done for the day; and done for tonight; ready with everything; ready with all; "
        "that was the last one for today; that was the last set for today; that was the last for today; "
        "done with everything; finished with everything; done with it all; done with all of it; finished with it all; "
        "finished with all of it; im done with everything; im finished with everything; all done with everything; "
        "done n dusted; that will have to do; thatll have to do; "
        "that concludes today; home time; hometime; job done; finished at last; done at last; all "
        "boxes ticked; "
        "every box ticked; that was "
        "that; and that was that; i leave it here; i leave it here for today; ill leave it here; leave it here; leave "
        "it here for today; leaving it here for today; leaving it here; "
        "end of training; end of the session; end of the workout; end of my session; wrapping it up; "
        "wrapping it up here; wrapping up; wrapping up here; wrapping up now; wrapping this up; im wrapping up; "
        "i finish now; i am finish; "
        "that concludes my session; that concludes the session; that concludes todays session; that concludes it; "
        "that concludes my workout; concludes my session; calling it here; calling it here for today; called it "
        "here; im calling it; i am calling it; session concluded; done for tonite; finished for tonight; finished "
        "for tonite; that will be all; thatll be all; thatll do; thatll do me; that will do; "
        "finished; thats me done; thats me finished; all done; done for today; done for the day; thats it for today; "
        "thats it; thats all; im done; im finished; workout done; workout complete; session done; session over; "
        "session complete; session finished; workout finished; workout over; wrapped up; called it a day; calling it "
        "a day; calling it; calling it there; done and dusted; done & dusted; im done for the day; im done for today; "
        "all finished; im all done; were done; thats a wrap; "
        "thats everything; everything done; thats the session; thats the session done; thats the workout; thats the "
        "workout done; thats the lot; thats all for today; thats all from me; thats all folks; done here; im done "
        "here; finito; fin; thats me for today; thats me for the day; thats me; finished for today; finished for the "
        "day; finished up; all wrapped up; completed the session; completed the workout; finished the session; "
        "finished the workout; session completed; workout completed; finished my session; finished my workout; thats "
        "us done; thats today done; today done; done with the session; done with the workout; done with today; end of "
        "session; end of workout; thats my session; thats my session done; thats my workout done; thats my lot; "
        "finshed; finishd; finised; finsihed; thats done for today; thats it done; thats it finished; thats it im "
        "done; im out; packing up; heading home; off home; going home; thats training done; training done; gym done; "
        "all complete; all completed; everything complete; everything completed; ended the session; ending it there; "
        "ending there; stopping there; stopped there; leaving it there; leaving it at that; leave it there; call it a "
        "day; lets call it; called it; calling it quits; called it quits; thats enough for today; thats enough; done "
        "for tonight; thats it for tonight; thats me done for today; thats me done for the day; done done; done "
        "training; finished training; thats that; and thats that; thats a day; all done and dusted; thats me all "
        "done; all done here; all done for today; all done for the day; thats all done; thats all she wrote; done 4 "
        "today; session is done; workout is done; session is over; workout is over; session all done; i am done; i am "
        "finished; we are done; that is me done; that is it; that is it for today; that is all; that is all for "
        "today; done for the night; finish; training over; training finished; training complete; training completed; "
        "finishing here; finish here; finishing there; stop here; stopping here; im stopping; im stopping here; i "
        "stop here; i finish here; i have finished; ive finished; have finished; end here; ending here; thats "
        "finished; that is finished; knocking it on the head; out of the gym; leaving the gym; leaving now; off now; "
        "heading off; signing off; wraps it up; that wraps it up; finished now; done now; thats us; calling time; "
        "called time; that is everything; that was the session; that was it; that was it for today; thats session "
        "done; thats the whole session; that was everything; that was all"
    ),
    Kind.UNDONE: (
        "thats it so far; thats all so far; thats me so far; so far; thats it up to now; thats it for the moment; "
        "thats all for now; thats all up to now; thats all for the moment; thats me up to now; "
        "finished with a; finished w a; finished with the; finished on; finished off with; finished it off with; "
        "finish with "
        "a; finished w; finished with; "
        "not done; not done yet; not finished; not finished yet; almost done; nearly done; when im done; once im "
        "done; before im done; until im done; almost finished; nearly finished; half done; not all done; then im "
        "done; then done; after im done; when i finish; once i finish; when finished; if im done; are we done; am i "
        "done; one to go; ill be done; will be done; be done; before i finish; when i was done; then finished; thats "
        "it then; is that it; thats how its done; thats how it is done; how its done; till im done; "
        "havent finished; hadnt finished; hasnt finished; half finished; to finish; never done; as soon as im "
        "done; when done; im done in; done in; half way done; halfway done; thats it or; almost there; until done; "
        "about done; isnt done; arent done; wasnt done; im done for; not quite done; not yet done; still not done; "
        "thats it for now; done soon; finished soon; finish soon; to be done; getting done; got done; get done; done "
        "by; finished by; finish by; finish at; finished at; to finish by; done at; finished in; well done; nicely "
        "done; easier said than done; finished work; done with work; finished late; finished early; finish late; "
        "finish early; finish work; what is done; no more done; should be done; done a; done some; done my"
    ),
    Kind.SKIP: (
        "forget the; forget about; forget about the; scrapping; cried off; cried off the; crying off; wimped out on; "
        "wimped out of; wimped out on the; wussed out of; wussed "
        "out on; pulled out of; pulled out of the; backed out of; backed out of the; ducked out of; ducked out of the; "
        "opted out of; opted out of the; had to drop the; have to drop the; having to drop the; need to drop the; "
        "had to bin; have to bin; had to bin the; have to bin the; had to ditch; had to ditch the; have to ditch; had "
        "to scrap; had to scrap the; had to cut the; had to leave the; had to lose the; had to sacrifice; had to "
        "sacrifice the; had to chuck; had to chuck the; forced to drop; forced to drop the; forced to skip; forced to "
        "skip the; ended up dropping; ended up dropping the; ended up skipping; ended up skipping the; "
        "im calling it on; i am calling it on; not gonna risk; not going to risk; and not doing; and not doing the; "
        "and im not doing; and im not doing the; and not bothering with; "
        "quit; quit the; quitting; quitting the; gave up on; gave up on the; giving up on; "
        "bailed on the; bailing on the; bail on the; let fall; i let fall; let slide; i let slide; letting slide; "
        "shall not do; shall not do the; shall not attempt; shall not attempt the; shant do; shall not be doing; will "
        "not attempt; wont attempt; nope to; nah to; no to the; nay to; "
        "will not make; will not make the; wont make; i not make; i will not make; will not manage; not make the; "
        "would rather leave; id rather leave; would rather skip; id rather skip; rather skip; rather leave; would "
        "rather "
        "not do; id rather not do; rather not do; would prefer to skip; id prefer to skip; prefer to skip; would like "
        "to "
        "skip; id like to skip; want to skip; wanna skip; would prefer to leave; dont think ill bother with; dont "
        "think "
        "ill do; dont think i will do; dont think im doing; dont think ill manage; dont think ill get to; dont think i "
        "can do; dont think i can manage; wont bother with; not gonna bother with; not going to bother with; wont be "
        "bothered with; dont think ill have time for; wont have time for; no more time for; have no time for; had not "
        "time for; there was no time for; wasnt enough time for; "
        "wont manage; wont manage the; cba with; cba doing; cant be bothered with; couldnt be bothered with; "
        "cannot be bothered with; cant be arsed with; couldnt be arsed with; will not do; i will not do; will not "
        "be doing; i wont do; not going to manage; no need for; neither; gave up after; didnt have it in me for; "
        "no stomach for; ditch; ditch the; chucking; chucked; knocking off; knocked off; sacked; sack off; sack; "
        "shelving; shelved; shelve; parking; parked the; postponing; postponed; leaving off; leaving out the; not "
        "attempting; didnt attempt; not risking; wont risk; dont fancy; dont feel like; didnt feel like; couldnt "
        "fit in; couldnt fit; couldnt squeeze in; cant fit in; cant fit; wont fit in; didnt squeeze in; cannot fit "
        "in; passing up; giving up; swerved; swerving; swerve; flicking; flicked; flick off; biffing; biffed; bumping; "
        "nae time for; nae time fur; no time fur; "
        "not bother with; not bother; gonna miss; going to miss; have to miss; will have to miss; need to miss; must "
        "miss; not bothering w; not bothering with; not bothering; cant face; cant face the; cannot face; cannot do; "
        "could not face; not facing; not up to; not touching; shall leave out; am leaving out; not feeling up to; "
        "no time 4; not got time 4; didnt have time 4; cancel; cancelling; cancelled; canceled; pass on; passing on; "
        "stopping there on; stopping on; stopping; stopped; stop; stop the; stopping the; stopped the; leaving it "
        "there on; calling it on; called it on; cutting short; cut short; had to stop; no more; gave up; give up on; "
        "abandoned; abandoning; abandon; leaving; leave; saving; save; skipped; skip; skipping; no time for; didnt "
        "do; did not do; didnt get to; didnt get round to; didnt get around to; couldnt do; could not do; leaving "
        "out; left out; missed; missed out; missing; not doing; wont do; ran out of time for; run out of time for; "
        "out of time for; no time to do; passed on; ditching; ditched; binned; bailed on; bailing on; cutting; cut; "
        "gonna bin; gonna bin the; going to bin; going to bin the; ill bin; ill bin the; gonna ditch; gonna ditch the; "
        "going to ditch; going to ditch the; ill ditch the; gonna chuck; gonna chuck the; gonna axe; gonna axe the; "
        "had to skip; have to skip; gonna skip; going to skip; will skip; ill skip; need to skip; dont have time for; "
        "havent got time for; didnt have time for; havent time for; sacked off; sacking off; no chance for; leave "
        "out; omitted; omit; omitting; omitting the; forgoing; forgoing the; foregoing; foregoing the; "
        "forgo; forgo the; dispensing with; dispensing with the; passing over; passing over the; not going to do; not "
        "gonna do; no energy for; didnt manage; did no; didnt bother with; "
        "cant do; wont be doing; wont get to; skiped; skippd; skpped; skiping; sikpped; skippped; skip the; gave up "
        "on; giving up on; bagged off; blew off; blew through no; dropping the; dropped the; had no time for; theres "
        "no time for; not enough time for; had to miss; had to leave out; had to cut; not had time for; didnt got "
        "time for; no did; i not do; not did; i didnt do; no make; not made; left off; not got time for; no juice "
        "for; nothing left for; never got to; didnt touch; giving a miss; out of time before; ran out of time before; "
        "no time left for; couldnt face; didnt fancy; wasnt able to do; unable to do; bail on; bin off; binning; "
        "binning off; binned off; scrapped; skippin; skippping; skp; not doin; didnt make it to; forgo; skip on; "
        + REFUSING
    ),
    Kind.ASKING: (
        "; ".join(TELL_ME) + "; " + ASKINGS + "; "
        "tell me which; tell me whether; tell me when; tell me where; tell me why; tell me honestly; let me know "
        "which; let me know how; let me know when; let me know where; let me know why; remind me what; remind me how; "
        "remind me which; remind me when; remind me if; remind me where; remind me why; remind me whether; i wonder "
        "if; "
        "i wonder whether; i wonder why; i wonder how; i wonder what; curious if; curious whether; curious what; "
        "was wondering what; was wondering if; was wondering how; was wondering whether; was just wondering if; "
        "was just wondering what; wdyt; wyt; what instead; how about; explain to me; explain what; "
        "explain how; explain why; explain the; please explain; "
        "explain me; ok if; okay if; alright if; fine if; cool if; is it cool if; all right if; good idea to; no "
        "clue what to; no "
        "idea what to; no clue how to; no idea how to; not a clue what to; any pointers; "
        "any suggestions; any pointers on; "
        "should i; shall i; can i; could i; may i; do i; am i; is it ok; is it okay; is it fine; is it alright; is it "
        "better; is it too; is it worth; is that ok; is that okay; is that enough; is that good; is that too; is that "
        "right; is this ok; is this right; how long; how many; how much; how heavy; how often; how do; how should; "
        "how come; how far; how is; how are; how would; how will; how was; how did; hows; what weight; what should; "
        "what load; what next; whats next; whats the; what do; what is; what are; what about; what if; what would; "
        "what did; what does; what can; what reps; what exercise; what time; what kind; whats a; whats my; why is; "
        "why does; why do; why are; why am; why did; any chance; any idea; any tips; any advice; any alternative; any "
        "alternatives; any thoughts; any way; ok to; okay to; fine to; is there; are there; mind if i; mind if; do "
        "you; would you; would it; will it; will i; does it; does that; do we; are we; have i; did i; which one; "
        "which weight; which exercise; when should; when do; when is; when can; where do; where should; where is; who "
        "do; thoughts on; wondering if; wondering whether; wondering what; wondering how; not sure if; not sure "
        "whether; not sure what; not sure how; dont know if; dont know whether; dont know what; dont know how; should "
        "we; can we; could we; could you; can you; will you; let me know if; let me know what; let me know whether; "
        "isnt it; was that ok; was that too; was that enough; was that right; am i ok; do i need; do i have to; would "
        "be ok; whats better; whats best; is x; need advice; should it; should the; should this; should my; can it; "
        "is the; are you; did you get; did u get; did you see; did u see; did you receive; "
        "have you got; have u got; did you note; did u note; u think; you think; "
        "tell me if; tell me what; tell me how; advise; please advise; what to "
        "leave; what to skip; what to drop; what to cut; which to skip; which to leave; is it "
        "normal; is that normal; is this normal; is it bad; is it safe; "
        " shud i; "
        "shoud i; shold i; sould i; cn i; what you think; what u think; wot; hwo; how to; which is better; is ok to; "
        "is ok if; its ok to; its ok if; is possible; possible to"
    ),
    Kind.SKIPPED: (
        "had to be dropped; had to be skipped; had to be cut; had to be left; had to be left out; had to be binned; "
        "had to be scrapped; isnt going to happen; isnt gonna happen; aint going to happen; aint gonna happen; can do "
        "one; off the menu; off the table; off the cards; needed to be dropped; have to be dropped; "
        "have to be skipped; not a chance; "
        "so i left them; so i left it; so left them; so left it; so i dropped them; so i dropped it; so dropped them; "
        "so dropped it; so i leave them; so i leave it; so i binned them; so i binned it; so i cut them; so i cut it; "
        "i dont do today; i dont do it today; i do not do today; i not do today; i wont do today; "
        "not had time; had not time; i not had time; i had not time; i had no time; had no time; i didnt have time; "
        "didnt have time; i dont have time; dont have time; there was no time; there wasnt time; there wasnt enough "
        "time; no time left; i have no time; have no time; have not time; not enough time; no more time; time not "
        "enough; time was not enough; wasnt enough time; was no time; didnt had time; i didnt had time; i have not had "
        "time; havent had time; didnt get time; never got time; there is no time; theres no time; "
        "will not happen; wont happen; wont be happening; will not be happening; arent happening; isnt happening; "
        "for other day; i leave for other day; i leave for another day; ill do another day; ill do them another day; "
        "for another day; will be for another day; another day; some other day; on another day; is for another "
        "day; are for another day; next time instead; got sacked off; sacked off; chopped; scrapped; shelved; "
        "didnt make the cut; will have to go; has to go; have to go; fell off the list; off the list; got left "
        "out; got left; were left out; was left out; will be skipped; to be skipped; is skipped; are skipped; were "
        "binned; was binned; was dropped; were dropped; abandoned; given up; not attempted; not going to happen "
        "today; didnt materialise; no chance; postponed; "
        "another time; some other time; will be another time; was not happening; were not happening; is not "
        "happening; wasnt happening; werent happening; never gonna "
        "happen; got axed; was axed; were axed; axed; got the axe; got canned; canned; was canned; were canned; "
        "are out; is out; is a no; are a no; are a no go; is a no go; is getting skipped; are getting skipped; "
        "getting skipped; is getting binned; are getting binned; are binned; is binned; are off; are off the menu; "
        "is off the menu; are off the table; is off the table; are cancelled; is cancelled; gets skipped; get "
        "skipped; gets the chop; get the chop; "
        "skipped; not done; didnt happen; no time; a miss; missed; left out; skip; not today; skiped; were skipped; "
        "was skipped; got skipped; got cut; ran out of time; out of time; off today; didnt get done; didnt do them; "
        "didnt do it; will have to wait; had to wait; couldnt; had to skip; no go; not happening; isnt happening; "
        "arent happening; aint happening; arent going to happen; not gonna happen; not going to happen; i skipped; i "
        "didnt do; i skip; i had to skip; ill skip; skipping; binned; ditched; cut; have to wait; not possible; didn "
        "t happen; wont happen; left for another day; left for next time; leaving for next time; didnt get to; didnt "
        "get to them; didnt get to it; had to go; got binned; got dropped; got the chop; can wait; i missed; im "
        "skipping; " + REFUSED
    ),
    Kind.NO: ("no; likewise no; nor the; nor any; also no"),
    Kind.THEREST: (
        _MISSING + "; "
        "both others; both the others; both other sets; both of the others; both remaining sets; "
        "both the remaining sets; both of the remaining sets; both the other sets; both of the other sets; the two "
        "remaining sets; two remaining sets; both the sets left; both sets left; the two sets left; "
        "the two other sets; "
        "the three remaining sets; three remaining sets; the three sets left; the two sets that were left; "
        "last two exercises; last 2 exercises; the last 2 exercises; the final two exercises; everything after "
        "that; all the others; anything else; all remaining exercises; every other exercise; the remainder; whats "
        "after; what comes after; both remaining exercises; the two left; the last couple; the last couple of "
        "exercises; what remains; "
        "everything left; everything thats left; all thats left; whatever is left; whatevers left; everything "
        "remaining; all that remains; all the remaining; everything thats remaining; "
        "the rest; everything else; rest of it; rest of the session; rest of the workout; the rest of it; the rest of "
        "the session; the rest of the workout; rest of them; whats left; the remaining; the others; the other "
        "exercises; the rest of the exercises; the remaining exercises; the rest of them; everything after; the other "
        "ones; the rest of today; the remaining ones; all the rest; rest; the other two; the other stuff; everthing "
        "else; remaining sets; the remaining sets; the rest of the sets; the rest of my sets; the last two exercises; "
        "other exercises; whats remaining; all else; the restof it; the rest of my session; the rest of my workout; "
        "last exercise; the last exercise; the final exercise; final exercise"
    ),
    Kind.EXCEPT: (
        "except; except for; exept; exept for; excpet; execpt; ecxept; excep; expect for; "
        "apart from; other than; other all but; bar for; excluding; but not; everything but; everything "
        "except; besides; minus the; aside from"
    ),
    Kind.INSTEAD: (
        "instead; instead of; in place of; swapped; swapped for; subbed; subbed in; substituted; replaced; replaced "
        "with; rather than; switched; switched to; swapped in; swap; in lieu of; subbed for; did instead; swaped; "
        "swapped out; subbed out; sub; replaced by; insted; instad; in stead; changed to; changed for; traded for; "
        "swithced; in place"
    ),
    Kind.SORRY: (
        "small lie; little lie; white lie; tiny lie; confession; i confess; i have to confess; i must confess; "
        "confession time; i beg your pardon; beg your pardon; "
        "my mistake; my error; my fault; my bad sorry; mb; me being daft; silly me; brain fart; brain fade; "
        "numpty; "
        "i make error; make error; i make mistake; make mistake; i did mistake; did mistake; did a mistake; i did a "
        "mistake; i do mistake; i have error; have error; i have mistake; there is error; there was an error; there "
        "is a "
        "mistake; there was a mistake; i got that wrong there; "
        "joking; last rep doesnt count; last rep didnt count; the last rep didnt count; the last rep doesnt count; "
        "last "
        "one doesnt count; last one didnt count; erratum; corrigendum; turns out; turned out; "
        "naw; naw wait; nah wait; no jk; jk; lol jk; just kidding; im kidding; kidding; just joking; im joking; only "
        "joking; i made a mistake; made a mistake; made an error; i made an error; i have made error; have made error; "
        "made error; made mistake; have made mistake; i have made a mistake; i made mistake; excuse me; scuse me; beg "
        "pardon; forgive me; my apologies; "
        "nah; sorry; actually; oops; whoops; wait; wait no; no wait; my bad; ah sorry; oh wait; hang on; hold on; sry; "
        "soz; srry; soory; sory; apologies; oops sorry; ah no; oh no wait; no sorry; sorry no; sorry that; hmm no; "
        "hmm actually; acutally; actualy; aktually; no hang on; no hold on; er; nope; ugh no; pardon; no no; wait "
        "sorry; sorry wait; argh; ooops; woops; misread; miscounted; miscount; i miscounted; lied; i lied; tell a "
        "lie; no actually; actually no; sorry actually; sorry it; ops; oups"
    ),
    Kind.MEANT: (
        "let me fix that; let me correct that; let me redo that; let me recount; let me try again; let me retype that; "
        "lemme fix that; lemme redo that; lemme recount; recounted; redo that; "
        "shud be; shud have been; shud of been; shud say; "
        "shoulda been; shoulda said; shoulda read; shouldve read; shoud be; shoud have been; "
        "i have write wrong; have write wrong; i wrote wrong; wrote wrong; wrote it wrong; wrote that wrong; put it "
        "wrong; put that wrong; put wrong; typed it wrong; typed that wrong; typed wrong; entered it wrong; entered "
        "that wrong; entered wrong; logged it wrong; logged that wrong; logged wrong; had it wrong; had that wrong; "
        "got "
        "it wrong; said it wrong; said that wrong; i lied about that; "
        "fat finger; fat fingered it; fat fingered that; fat thumbed it; typo sorry; sorry typo; "
        "should all be; should all have been; should both be; were all meant to be; should all say; should all "
        "read; "
        "fat thumbs; fat thumb; fat thumbed; clumsy thumbs; clumsy fingers; thumb slipped; finger slipped; my "
        "thumb slipped; sausage fingers; should of read; i meant to put; "
        "counted wrong; i counted wrong; count it as; count that as; log it as; put it down as; mark it as; "
        "lost count; i lost count; "
        "counted it wrong; read it wrong; i read it wrong; got that wrong; i got "
        "that wrong; actually call it; call it; lets call it; make that one; got them backwards; got it backwards; "
        "got those backwards; backwards; other way round; the other way round; other way around; the other way "
        "around; wrong way round; the wrong way round; wrong way around; got them mixed up; got those mixed up; "
        "mixed them up; got them the wrong way round; had them backwards; swap those; swap them round; swap those "
        "round; vice versa; got them swapped; "
        "that isnt right; "
        "make the last one; make the last set; make last set; make my last set; change the last one to; change the "
        "last set to; change last set to; change my last set to; should have read; should read; ought to be; ought to "
        "say; wrong one; wrong number; wrong weight; wrong set; i meant; i mean; meant; correction; typo; make that; "
        "make it; should be; should say; should have been; shouldve been; shouldve said; should have said; was "
        "that was supposed to say; that was meant to say; was supposed to say; was meant to say; supposed to say; "
        "supposed to read; that should say; that should read; that should have said; got the sides mixed up; got my "
        "sides mixed up; mixed up the sides; mixed the sides up; mixed up my sides; sides mixed up; got my left and "
        "right mixed up; sides the wrong way round; sides are the wrong way round; "
        "supposed to be; change it to; change that to; change to; edit; mistake; meant to say; meant to type; meant "
        "to put; meant to write; ment; i ment; should of been; should of said; supposed to be; wanted to write; edit "
        "to; corrected; correct that to; correct to; amend; amend that to; amend to; is wrong; was wrong; wrong; "
        "thats wrong; mistyped; fat fingered; fat fingers; autocorrect; it should be; it should say; i should have "
        "said; i shouldve said; that should be; that should say; that should read; that should have been; set it to; "
        "should had been; correct it; please change; please fix; please correct; i meant to say; or rather; can you "
        "change; could you change; can you fix; can you make that; can you make it; can you correct; could you fix; "
        "must be; is actually; was actually; was really; were actually; it was actually; that was actually; were "
        "really; it was really; that was really; were meant to be; was meant to be; needs to be; need to be; needs "
        "changing to; swap it to; change it; change that; sorry meant; sorry i meant; sorry i mean; oops meant; oops "
        "i meant; not right; isnt right; wasnt right"
    ),
    Kind.WAS: (
        "was; were; that was; it was; they were; those were; is; are; was only; was just; were only; were all; was "
        "also; both were; thats; its; was at; were at; that were; it were; was more like; was with; were with"
    ),
    Kind.NOT: ("wasnt; was not; werent; isnt; not; and not; rather than; instead of"),
    Kind.SCRAP: (
        "roll that back; roll it back; nix that; nix it; cross that out; strike that one; chuck that one; "
        "toss that one; dump that one; pay no attention to that last set; pay no attention to the last set; "
        "pay no attention to that set; dont count what i just sent; ignore what i just sent; forget what i just sent; "
        "delete what i just sent; forget i sent that; pretend i never sent that; pretend i didnt send that; "
        "that wasnt a set; that was not a set; that was no set; "
        "never happened; that never happened; that one never happened; that set never happened; "
        "take out the last; take out; get rid of; get rid of the last; take off the last; take the last one off; "
        "drop that one; lose the last; can you delete; can you remove; please delete; please remove; pls delete; "
        "dont log that; dont log that one; dont save that; that wasnt me; rub that out; bin the last; bin the last "
        "one; undo my last; "
        "scrap that; scratch that; delete that; delete the last; ignore that; undo; undo that; remove that; cancel "
        "that; forget that; disregard; strike that; delete last; ignore last; delete; remove; disregard that; ignore "
        "the last; undo last; undo the last; scrap it; scratch it; delete it; ignore it; cancel it; remove it; forget "
        "it; remove the last; remove last; scrap the last; scrap last; never mind that; nevermind that; take that "
        "off; take that back; erase that; that didnt happen; that one didnt happen; that set didnt happen; that set "
        "didnt count; that one didnt count; that didnt count; dont count that; dont count that one; dont count it; "
        "wipe that; forget the last; cancel the last; cancel last; scratch the last; scratch last; strike the last; "
        "strike last; scrap; erase; ignore my last; delete my last; bin that; discard that; discard; ignore; scrap "
        "tht; scarp that; delet that; delte that; erase the last; discard the last; wipe the last; drop the last; "
        "void that; void the last; that was a mistake; that was an accident; sent by mistake; sent by accident; sent "
        "that by mistake; wrong chat; wrong person; wrong number; didnt mean to send that; didnt mean to send"
    ),
    Kind.OTHERPERSON: (
        "old self; younger self; old me; younger me; shes; hes; theyre; "
        "the trainer; a trainer; trainer; the pt; some pt; another coach; the instructor; told him; told her; the "
        "front desk; "
        "my mate; my friend; my brother; my gym partner; my partner; my training partner; this guy; some guy; a guy; "
        "someones; somebodys; everyones; "
        "the guy; guy next to me; the guy next to me; someone; somebody; he; she; they; my wife; my husband; my "
        "buddy; my dad; my son; my daughter; my girlfriend; my boyfriend; the dude; some dude; a bloke; some bloke; "
        "this bloke; some lad; a lad; this lad; some kid; a kid; this kid; my sister; my mum; my mom; my boss; some "
        "woman; a woman; this woman; some girl; a girl; my missus; people; everyone; everybody; my pal; the fella; "
        "that guy; that bloke; old guy; some old guy; my cousin; my neighbour; my neighbor; my colleague; my "
        "coworker; my flatmate; my roommate; my spotter; big lad; big guy; somebody else; someone else; some "
        "legend; some hero; some joker; some clown; some muppet; some idiot; some genius; some lads; some guys"
    ),
    Kind.OTHERTIME: (
        "never happened to me; never happened before; "
        "my heaviest pair; heaviest pair; the heaviest pair; heaviest dumbbell; my heaviest dumbbell; heaviest "
        "dumbbells; my heaviest dumbbells; heaviest kettlebell; my heaviest kettlebell; heaviest bell; lightest "
        "pair; lightest dumbbell; the lightest pair; heaviest plates; only have up to; we only have up to; only "
        "goes up to; only go up to; tops out at; top out at; maxes out at; stack ends at; stops at; the heaviest "
        "here; heaviest they have; heaviest weight i have; "
        "expected; expecting; i expected; was expecting; pb was; pr was; max is; max was; 1rm; my 1rm; one rep max; "
        "my max; aimed; aimed for; aiming at; was after; next set; next time; next week; next session; tomorrow; "
        "tmrw; tomorow; will; ill; gonna; going to; going for; go for; want to; wanna; hope; hoping; hope to; aim; "
        "aiming; aim for; target; goal; try; trying; plan is; planning; might; maybe try; could try; last week; last "
        "time; used to; my pb; my pr; pb is; pr is; my best; best is; best was; best ever; personal best is; previous "
        "best; record is; my record; up from; down from; last session; last month; last year; since last; wish; want; "
        "would like; id like; wanted; wanted to; thinking; thinking of; thinking about; plan says; the plan says; "
        "sheet says; program says; programme says; says; supposed to do; meant to do; was meant to be doing; it says; "
        "was aiming for; was going for; target is; target was; goal is; goal was; planned; prescribed; than; almost; "
        "nearly; instead of the; not quite; back in; ages ago; months ago; years ago; weeks ago; week ago; a month "
        "ago; a year ago; next month; later; this weekend; next; about to; ready for; should; shall; would; wouldve; "
        "would have; if; unless; never; normally; usually; typically; always; when; wouldnt; wont; working towards; "
        "working up to; building to; building up to; soon; one day; eventually; by summer; by christmas; due; cant; "
        "id love to; i would love to; would love to; love to; dream of; dreaming of; dying to; itching to; keen to; "
        "cant wait to; wish i could; if only; back then; "
        "couldnt; might do; the plan was; plan was; could go; can go; would love; fancy; in future; in the future; "
        "from now on; this time last year; back to; heading for; hopefully; attempt; attempting; off to; before i; "
        "before we"
    ),
    Kind.TALKNUM: (
        "tonnage; total tonnage; volume; total volume; tonnage of; volume of; bp; blood pressure; lost; gained; put "
        "on weight; compared to; compared with; versus; vs; better than; than; ran; run; jogged; cycled; walked; "
        "hiked; swam; rode; weight is; weight was; weight this morning; bodyweight this morning; weigh; weighed; "
        "weighing; weighed in; weighed in at; bodyweight is; bodyweight was; my weight; my bodyweight; scales; scale; "
        "scale said; waiting for; loading; about to do; getting ready; setting up; set up; resting; slept; sleep; "
        "ate; eat; eaten; drank; rested; protein; calories; kcal; heart rate; hr; bpm; steps; cost; paid; costs; "
        "price; age; turned; birthday; bed; wake; woke; awake; "
        "got up at; get up at; getting up at; was up at; set my alarm for; set the alarm for; alarm "
        "went off at; arrive; arrived; arriving; eta; play; played; playing; size; "
        "sized; ordered; ordering; bought; buying; sold; saw; seen; watched; watching; drove; driving; flew; flying; "
        "earned; spent; scored; temp; temperature; step count"
    ),
    Kind.WROTE: (
        "i write; i have write; i have written; i have wrote; i writed; i noted; i have noted; i have put; i have "
        "said; "
        "ive said; i have told; i recorded; i reported; ive entered; ive typed; i have entered; i have typed; id "
        "written; id typed; id said; id logged; i first said; i first put; i originally put; i originally said; i had "
        "said; i had logged; i have logged; "
        "wrote; i told you; i told ye; told you; told ye; i gave you; you wrote down; i wrote down; ive put; id "
        "put; ive written; ive logged; i mustve put; i mustve typed; you put down; its showing; it shows up as; i "
        "texted; i sent; "
        "i put; i wrote; i typed; i said; i logged; you put; you have; it says; you wrote; you logged; it shows; you "
        "got; i had put; i had written; i entered; says; shows; instead of saying"
    ),
}
FILLERS = words(
    "oui si ja da",
    "fewer a an the i me my mine we us our you your it its this that these those he she they them there here im ive id",
    "youre were did do does doing got get getting gets gotten hit hits hitting made make makes managed manage",
    "ended up felt feel feels feeling good great nice nicely ok okay okey fine well better best bad worst easy",
    "easier easiest weaker weakest hard harder hardest tough heavy heavier light lighter smooth smoothly solid strong",
    "stronger",
    "weak clean cleanly strict slow slower fast quick quickly crisp grindy grind grinder ground grim ugly messy",
    "shaky rough brutal killer beast beastly decent happy pleased chuffed proud tired tiring knackered shattered",
    "fried toast smoked gassed wiped dead dying alive legend boom bam bang wow yay yeah yes yep yup yea ya ye aye",
    "hey hi hello hiya morning afternoon evening coach boss mate bro brother brotha habibi amigo man",
    "dude buddy pal lads guys sir maam thanks",
    "thank thankyou cheers ta thx tks pls please lol haha hahaha lmao omg phew ooft oof ouch tbh btw imo fyi ish",
    "really very pretty quite super so too just only about around roughly approx approximately like maybe",
    "probably prob probs prolly probly perhaps possibly kinda sorta bit little lot lots kind sort of today",
    "tonight now currently right",
    "away already still yet finally first firstly second secondly third lastly once also as though tho but",
    "because cause cos since while even ever everything something anything nothing thing things stuff all round",
    "down off out in into onto over under back through along before after during between form technique depth",
    "tempo pause paused pauses speed bar path grip belt belted sleeves straps wraps knee spotter spot help gym",
    "session workout training train trained day week weekend one ones total final finish start started starting",
    "begin began beginning end ending go going went gone came come coming moved moving move moves set working",
    "weight load today's todays weights kept keep keeping stay stayed used using use grabbed picked chose chosen",
    "lifted pulled loaded switched threw bumped repped powered fought struggled upped took take taken taking held hold",
    "holding with without per each any some many much few couple more most less least same other another else",
    "every both own such reps note notes log logged logging record recorded report reporting update forgot forget",
    "send sent sending here's heres hereis was is are been being be am has have had having will can could would",
    "should may might must not dont didnt doesnt isnt wasnt arent cant couldnt wont wouldnt havent hasnt no none",
    "never always again then than when where who what how why which whose whatever anyway anyways alright rite",
    "guess think thought reckon say said saying know known see seen saw look looks looked looking pumped pump",
    "amped psyched fired focused last left mins later ease eased comfy comfortable comfortably controlled control",
    "full range rom lockout locked deep deeper high higher low lower fair fairly extremely insanely mega proper",
    "properly actual actually exactly exact straight flat number numbers top bottom barely nearly almost maximum",
    "minimum max min legit definitely certainly surely totally absolutely completely wasn't energy power powerful",
    "explosive snappy clunky wobbly stable unstable awkward weird odd strange funny different new old next",
    "previous prior late early fresh rested stiff tight loose sweaty sweating dripping breathing breathless count",
    "counted counting counts done complete completed achieved achieve success successful nailed smashed crushed",
    "banged bashed knocked blasted ripped cranked squeezed added add adding increased increase reduced reduce",
    "lowered raised dropped bump jumped jump ahead coachy miss madam xx xxx xo day5 pb pr pbs prs personal plus",
    "bonus extra free machine machines rack bench station dumbbells dumbbell dumbell dumbells barbell kettlebell",
    "kettlebells bells bell cable stack pin plate plates side warm cold hot ha hm hmm mm mmm uh um umm er erm ah",
    "aha oh ooh ugh argh eh welp woo woohoo yippee sweet cool awesome amazing fantastic excellent perfect",
    "perfectly lovely wonderful insane crazy mad wild sick epic huge massive big small tiny short long apparently",
    "basically literally honestly seriously obviously clearly simply overall somehow tday tdy 2day 2nite 2night rn atm",
    "thru u ur r y n b c its' wk wks sesh seshs workouts sessions ain't aint whole half results result score scores",
    "yo yoo yooo ayo oi heya howdy gday bruh fam chief bud brah dawg homie captain champ guv gaffer doc mister hun",
    "luv sis eyup ello ngl fwiw jw idk snapped snaps snap",
    "summary recap follows following below above list workout's hers his session's sets exercise exercises",
    "movement movements lift lifts lifting worked work works hello: ps p.s pps",
)
"""Words that change nothing between the numbers of a set."""


@cache
def fillers() -> frozenset[str]:
    """Words that change nothing."""
    return frozenset(FILLERS)


class Node:
    """A step of the phrase tree."""

    __slots__ = ("kind", "next")

    def __init__(self) -> None:
        self.next: dict[str, Node] = {}
        self.kind: tuple[Kind, ...] = ()


@cache
def phrase_tree() -> Node:
    """All phrases, by their words. A phrase of two kinds keeps both, the first one said in the table first."""
    root = Node()
    for kind, phrases in PHRASES.items():
        for phrase in phrases.split("; "):
            node = root
            for word in phrase.split():
                node = node.next.setdefault(word, Node())
            node.kind = (*node.kind, kind)
    return root


@cache
def lexicon_words() -> frozenset[str]:
    """Every single word of the phrases, and the fillers."""
    words = {word for phrases in PHRASES.values() for phrase in phrases.split("; ") for word in phrase.split()}
    return frozenset(words) | fillers()
