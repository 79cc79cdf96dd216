"""Refusals put together from their parts: `not gonna fool with`, `too tired to do`, `no energy left for`.

Each is said before the names that it leaves out (`REFUSING`) or behind them (`REFUSED`). They are made by multiplying
short lists, as people make them. Common usage on both sides of the Atlantic; no source.
"""

from bot.notation.wordlist import products, words

_WITH = ("with", "wi", "w")
_DO = (
    *("do", "be doing", "attempt", "be attempting", "face", "touch", "manage", "stomach", "reach", "start", "risk"),
    *("get to", "get round to", "get around to", "make it to", "even look at", "even try", "even attempt"),
    *products(("fool", "mess", "mess about", "mess around", "bother", "deal", "be bothered", "be messing"), _WITH),
)
_DOING = (
    *("doing", "attempting", "touching", "facing", "risking", "trying", "even trying", "getting to", "going near"),
    *("getting round to", "getting around to", "even attempting"),
    *products(("fooling", "messing", "messing about", "messing around", "bothering", "dealing"), _WITH),
)
_WILL_NOT = (
    *("not gonna", "not going to", "aint gonna", "not about to", "aint about to", "wont", "will not", "shant"),
    *("shall not", "refuse to", "refusing to", "refused to", "cant bring myself to", "couldnt bring myself to"),
    *("no way i can", "no way ill", "no way im gonna", "no chance ill", "didnt have it in me to"),
    *("dont have it in me to", "havent got it in me to", "decided not to", "chose not to", "opted not to"),
    *("elected not to", "choosing not to", "opting not to", "dont think i can", "dont think ill", "doubt ill"),
)
_COULD_NOT = ("cant", "cannot", "couldnt", "could not", "didnt", "did not", "never", "dont wanna", "dont want to")
_NOT = (
    *(
        "not",
        "im not",
        "am not",
        "aint",
        "no way im",
        "no chance im",
        "not a chance im",
        "not a hope im",
        "decided against",
        "no",
        "wont be",
    ),
    *("will not be", "shant be", "shall not be", "avoiding", "without"),
)
_GOT_TO = ("bothered", "reached", "attempted", "got to", "made it to", "got round to", "got around to")
_BOTHERED = ("arsed", "assed", "bothered", "fucked", "fagged", "stuffed", "feffed", "hooped")
_TIRED = words(
    "tired knackered gassed cooked fried wrecked shattered sore beat wiped smoked busy weak exhausted dead spent",
    "drained pooped buggered toast late short hot",
)
_LACKING = (
    *("no", "zero", "not enough", "got no", "have no", "had no", "ive no", "ive got no", "didnt have the", "no more"),
    *("had no more", "have no more", "had not the", "have not the", "not the", "no more of the"),
    *("dont have the", "havent got the", "havent the", "dont have any", "didnt have any", "ran out of", "ran outta"),
    *("run out of", "out of", "nae", "run outta", "outta", "hadnt the", "hadnt any", "didnt have any", "had no"),
)
_MEANS = words(
    "time energy juice gas strength appetite motivation interest desire enthusiasm steam puff fuel gas",
    "petrol battery oomph pep legs grunt go fight welly power force room space bandwidth",
)
_OUT = words(
    "noping noped nope opting opted opt bowing bowed ducking ducked duck backing backed wimping wimped chickening",
    "chickened wussed bailing bailed tapping tapped crying bottled copped",
)
_LETTING_GO = (
    *products(words("resign resigning resigned abstain abstaining abstained desist desisting desisted refrain"),
              ("from", "of", "on")),
    *products(words("renounce renouncing renounced"), ("", "on", "to", "of")),
    *products(words("do doing did manage go"), ("without",), ("the",)),
    *products(words("spare spared sparing save saved saving"), words("me myself us")),
)  # fmt: skip
"""`i resign from`, `i spare myself`: what people say who think in another language."""
_LATER = (
    *("next time", "next week", "next session", "another day", "another time", "the next time", "another session"),
    *words("tomorrow tmrw later monday tuesday wednesday thursday friday saturday sunday"),
)
_PUT = ("put off", "pushed back", "held over", *words("left saved kept moved pushed shifted parked postponed delayed"))
_CUT_OUT = (
    *words("ignored refused sacrificed ducked avoided jettisoned dodged excluded nixed vetoed culled"),
    *("crossed off", "crossed out", "struck off", "kicked out", "thrown out", "written off", "put off"),
)
_GONE = ("bail", "dip", "bounce", "leave", "run", "dash", "go", "head off", "shoot off", "split", "scoot", "jet")

REFUSING = "; ".join((
    *products(_WILL_NOT, _DO),
    *products(_COULD_NOT, _DO[2:]),
    *products(_NOT, _DOING),
    *products(("never", "not"), _GOT_TO, ("", *_WITH)),
    *products(("cant", "cannot", "couldnt", "canny", "could not"), ("be",), _BOTHERED, ("", *_WITH, "to do", "doing")),
    *products(("cba", "cbf", "cbb"), ("", *_WITH, "to do", "doing", "for")),
    *products(("too", "2"), _TIRED, ("for", "4", "to do", "to attempt", "to face", "to even try", "to try")),
    *products(_LACKING, _MEANS, ("", "left"), ("for", "4", "fur", "to do", "to attempt")),
    *products(("no", "zero", "no real", "have no", "got no", "havent any"), ("interest in", "desire to do")),
    *products(("dont have it in me", "havent got it in me", "didnt have it in me"), ("for",)),
    *products(("nothing left", "nothing left in the tank", "nothing in the tank"), ("for",)),
    *products(("not in the mood", "in no mood", "not in the right headspace", "no legs", "nae legs"), ("for",)),
    *products(("have not", "i have not", "havent"), ("", "more", "the"), ("force", "power", "strength"), ("for",)),
    *products(("aint nobody got time", "nobody has time", "nobody got time", "no one has time"), ("for", "4")),
    *products(("didnt get", "never got", "didnt make it"), ("as far as",)),
    *products(("pulled", "pulling", "pull"), ("the plug on", "the pin on")),
    *products(_LETTING_GO),
    *products(("cant", "cannot", "couldnt", "could not", "didnt", "wont", "never"), words("squeeze cram jam")),
    *products(("didnt", "couldnt", "didnt even", "never", "wont", "not"), ("get", "got", "going", "go"), ("near",),
              ("", "to")),
    *products(("", "its ", "say ", "saying ", "said ", "thats "), ("a no", "no", "a pass", "nope", "goodbye", "bye"),
              ("to",)),
    *products(("put", "putting", "pushing", "pushed"), ("off", "back")),
    *("ducking", "ducked", "jettisoned", "sacrificed", "sacrificing", "vetoed", "to hell with", "to heck with"),
    *products(_OUT, ("out of", "outta", "oot of")),
    *products(("had to", "have to", "gotta"), _GONE, ("before",)),
    *products(("time ran out", "time was up", "my time was up", "energy ran out"), ("before", "for")),
    *("called off", "calling off", "bagged", "bagging", "canned", "canning"),
    *("left before", "gym closed before", "got kicked out before", "im out on", "i am out on"),
    *products(("taking a", "take a", "a", ""), ("rain check on", "raincheck on")),
    *products(("a", "its a", "gonna be a", ""), ("hard pass on", "hard no on", "hard no to", "no from me on")),
    *products(("keep", "keeping", "kept", "stay", "staying", "stayed", "steer", "steering", "steered", "lay", "laying",
               "laid"), ("off", "off of", "clear of", "away from", "well clear of"), ("", "the")),
    *products(("let", "i let", "we let", "have let", "i have let", "letting"), ("out", "away"), ("", "the")),
    *("gonna avoid", "forgoing"),
    *("avoiding", "decided against", "decided to skip"),
    *("dodging", "dodged", "avoided", "nixing", "nixed", "axing", "excluding", "excluded", "crossing off"),
    *("crossed off", "punting on", "punted on", "rainchecking", "scratching", "scratch the"),
    *("no thanks to", "no thanks on", "no ta on", "sod the", "stuff the", "screw the", "bugger the"),
    *("no ta to", "scratched", "boycotting", "swerved on", "going without", "giein up", "sackin off", "sackin"),
))  # fmt: skip
"""Said before what is left out."""

_DENIED = ("not", "is not", "are not", "isnt", "arent", "wasnt", "werent", "was not", "were not", "never", "aint")
REFUSED = "; ".join((
    *products(_DENIED, ("on the cards", "in the cards", "on the menu", "on the table", "getting done", "on today",
                        "on tonight", "gonna get done", "going to get done", "being done")),
    *products(("wont", "will not", "shant", "aint gonna", "not gonna"), ("be done", "get done", "be getting done")),
    *products(("can",), ("get in the bin", "get in the sea", "get stuffed", "get lost", "jog on", "piss off",
                         "go to hell")),
    *products(("got", "get", "gets", "gettin", "getting"), ("the boot", "the bullet", "the push", "the heave ho",
                                                            "bumped", "nixed", "punted", "shelved", "parked")),
    *products(("went", "were left", "was left", "left", "remain", "remained", "go"), ("undone", "by the wayside")),
    *products(("didnt get", "never got"), ("a look in", "a lookin", "done today", "a turn")),
    *products(("will need to", "need to", "needs to", "must", "gonna have to"), ("wait",)),
    "will wait",
    *products(("fell", "fall", "falls"), ("by the wayside", "out", "out today", "away", "flat", "through")),
    *products(words("stay stays stayed remain remained"), ("out", "undone", "off"), ("", "today")),
    *products(words("drop drops dropped"), ("out",), ("", "today")),
    *products(("", "is", "are", "r", "stay", "stays"), ("off",), ("tonight", "today", "this time", "for today",
              "for tonight", "this week")),
    *products(("", "were", "was", "got", "get", "are", "is", "have been", "has been", "had to be"), _CUT_OUT),
    *products(("", "i", "is", "are", "were", "was"), _PUT, ("to", "for", "til", "until"), _LATER),
    *products(("", "is", "are"), ("on the shelf", "in the bin", "a pass", "a miss", "for the bin", "for the birds")),
    *products(words("none no nope nah nil zero"), words("because bc cos coz cause cuz since")),
    *products(("is", "are", "was", "were", "be"), ("a",), ("write off", "writeoff", "no show", "non starter", "bust")),
    *products(("got", "were", "was", "get"), ("swallowed", "eaten", "derailed", "scuppered", "swallowed up"),
              ("", "by")),
    *products(("didnt", "did not", "couldnt", "never", "wont"), ("bother", "bothered", "fancy", "face", "be bothered",
              "attempt", "touch", "get to"), ("", "it", "them", "with them", "those", "any")),
    *products(("so", "hence"), ("none", "nothing"), ("", "today", "tonight", "for me", "for me today")),
    *products(("go", "went", "goes", "straight"), ("into",), ("the bin", "the trash")),
    *products(("had to", "have to", "must"), ("give way", "make way", "suffer", "wait")),
    *products(("a", "are a", "is a", "was a", "were a", "fell"), ("casualty", "victim"), ("", "of", "to")),
    *products(("i", "we", "i have", "i had", "ive"), ("let out", "let away", "let go", "let be", "given up")),
    *products(("ill", "i will", "we will", "i shall", "imma", "ima", "im gonna", "i am going to", "gonna"),
              ("leave", "skip", "pass on", "leave out", "let be", "leave be", "drop", "leave them", "skip them")),
    *products(("i", "we"), ("pass", "pass on", "give up", "gave up", "leave today", "drop", "cancel", "cancelled")),
    *products(("i", "we"), ("keep", "save", "leave", "do", "make"), ("", "them", "it"), ("for", "to", ""),
              _LATER),
    *products(("was", "were"), ("a no", "a no go", "a no no", "a pass")),
    *products(("didnt", "did not"), ("survive",), ("", "the")),
    *products(("getting", "got", "get", "are", "is", "being"), ("kicked", "pushed", "moved", "bumped", "punted",
              "shifted", "put off"), ("to", "til"), ("next time", "next week", "next session", "another day",
              "tomorrow", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")),
    *products(("", "so"), ("thats a no", "thats a no from me", "thats a pass", "thats a pass from me")),
    *products(("went", "going", "go", "gone"), ("out the window", "in the bin", "out of the window")),
    *products(("cant", "cannot", "couldnt", "canny"), ("be",), _BOTHERED),
    *products(("no", "zero", "nae"), tuple(m for m in _MEANS if m != "time"), ("", "left")),
    *products(("no", "zero"), ("power",), ("", "left")),
    *products(("", "is", "are", "was", "were"), ("out of the question", "out the question"), ("", "today", "tonight")),
    *("hell no", "absolutely not", "no thanks", "no ta", "no way jose", "no way today", "hard pass", "hard no", "cba"),
    *("cba today", "a no from me", "is a no from me", "are a no from me", "bit the dust"),
))  # fmt: skip
"""Said behind what is left out."""
