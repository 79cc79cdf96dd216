"""What people say for `did` and `went down to`, on both sides of the Atlantic and in a second language."""

from bot.notation.wordlist import products, words

DID = (
    *products(
        words("knocked banged cranked repped squeezed ground eked pumped churned smashed grinded cranked belted"),
        ("out",),
    ),
    *products(words("knocked polished ticked reeled rattled churned banged pumped finished"), ("off",)),
    *words("reached achieved completed performed executed accomplished attained nailed smashed"),
    *products(("ended", "finished", "came"), ("up with", "up at", "up on", "up getting", "away with", "out with")),
    *products(("topped", "capped", "maxed", "bottomed", "petered", "gassed"), ("out at",)),
    *products(("ran out of",), ("steam", "gas", "puff", "juice", "energy"), ("at",)),
    *products(("called it", "cut it", "gave out", "packed it in", "died"), ("at",)),
    *("ended with", "ended on", "got through", "got up to", "worked through", "got to", "came to", "ended up"),
    *products(("was able to",), words("do get make hit manage complete perform")),
    *products(("managed", "succeeded"), ("to do", "to get", "to make", "to hit", "with", "in doing", "to complete")),
)
"""`squeezed out 9`, `ended up with 8`: what was done, straight before its number."""

OPENERS = (
    *("update", "quick update", "quick one", "quick note", "reporting in", "here you go", "here we go", "as promised"),
    *("just a quick one", "checking in", "report", "my report", "status", "news", "heads up", "fyi", "for the record"),
)
"""What opens a message before its colon or dash: `update: done`."""

LIGHTER = products(
    ("", "then", "and", "and then", "so", "i", "then i", "and i", "so i"),
    (
        *products(("went", "came", "moved", "stepped", "backed", "scaled", "back", "went back", ""), ("down to",)),
        *products(("went",), ("lighter", "lower"), ("to", "with", "at")),
        *products(("reduced", "decreased", "eased", "lightened", "lowered"), ("", "it", "off", "back"), ("to",)),
        *products(("scaled", "cut", "backed", "eased", "dialled", "dialed"), ("back", "off"), ("to",)),
    ),
)
"""`then went down to 16`, `eased back to 20`: a lighter load, behind a set that is told."""

NONE_MORE = (
    *products(
        ("couldnt", "couldnt have", "wouldnt have", "never would have", "no way id have", "no chance id have"),
        words("squeeze squeezed grind ground manage managed get got gotten do done hit make made push pushed find had"),
        ("out", ""),
        ("another", "another one", "another rep", "one more", "one more rep", "any more", "anymore", "1 more"),
    ),
    *products(
        ("no way i had", "no way there was", "no way i could do", "no way i could get", "no way i was getting",
         "no way of getting", "no chance of", "there wasnt", "there was not", "didnt have", "no hope of", "not"),
        ("another", "another one", "another rep", "one more", "one more rep", "1 more"),
        ("in me", "in the tank", "in there", "left", ""),
    ),
    *products(("gave", "giving", "i gave"), ("it", "that", "that one"), ("everything", "my all", "all i had",
                                                                        "everything i had", "the lot")),
    *("that was my limit", "that was the limit", "my absolute limit", "till i dropped", "until i dropped",
      "with no reps to spare", "no reps to spare", "with nothing to spare", "that was my max", "everything i have"),
)  # fmt: skip
"""`couldnt squeeze out another`, `gave it everything`: nothing was left."""
