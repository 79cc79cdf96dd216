"""Words that mean the same wherever they stand. Common usage, no source."""

from collections.abc import Iterable

from bot.notation.wordlist import products, words

_COUNTS = {"three": ("three", "3"), "four": ("four", "4"), "five": ("five", "5")}
ANYWHERE: tuple[tuple[str, Iterable[str]], ...] = (
    ("so", ("therefore", "thus", "hence", "ergo", "that is why", "thats why", "which is why", "for that reason")),
    ("so far", ("thus far", "up to this point", "up until now", "as of now")),
    ("actually", ("in fact", "in actual fact", "in reality", "in truth", "as a matter of fact", "in actuality")),
    ("last", ("final", "very last", "very final")),
    ("again", ("once more", "one more time", "1 more time", "once again", "one time more", "yet again", "over again")),
    ("and", ("n", "&")),
    ("and a half", products(("n", "nd", "plus", "an", "&", "+"), ("a half",))),
    ("instead of", ("rather than", "in place of", "in lieu of", "in the place of", "as opposed to", "in stead of")),
    ("couldnt", (*products(("was", "were"), ("not able to", "unable to")), "could not", "wasnt able to",
                 "werent able to")),
    *((f"{verb}nt", (f"{verb} not",)) for verb in words("did was were is are do does would should")),
    ("done for the day", ("done for day",)),
    ("wont", ("will not",)),
    ("cant", ("can not", "cannot")),
    ("wrong", words("mistaken incorrect")),
    ("mistakenly", words("erroneously wrongly incorrectly")),
    ("in the tank", products(("inside", "inside of", "in", "into", "on"), ("the", "my"), ("tank", "bucket"))),
    ("rep", ("repetition", "repetion", "repitition")),
    *((f"reps {left}", products(words("solid good clean easy decent honest proper strong quality comfortable full"),
                                ("reps", "ones"), (left,))) for left in ("left", "in the tank", "to spare")),
    *((left, (f"ish {left}",)) for left in ("left", "in the tank", "to spare", "reps left", "more")),
    ("thats that set", ("thats that one", "that is that one", "thats that set done", "thats that one done")),
    ("reps", ("repetitions", "repetions", "repititions")),
    ("as planned", products(
        ("according to", "accordingly to", "in line with", "in accordance with", "per", "as per", "following",
         "true to", "matching", "exactly per", "exactly as per"),
        ("the", "my", "your", "our", ""),
        ("plan", "programme", "program", "sheet", "schedule", "prescription", "planning"),
    )),
    ("as planned", ("as intended", "as envisaged", "as set out", "as outlined", "as stated", "as specified",
                    "as required", "as ordered", "as requested", "as listed", "as given", "as assigned")),
    ("as planned", ("to the letter", "by the book", "bang on plan", "spot on plan", "on plan", "to plan", "as laid out",
                    "exactly as written", "exactly as prescribed", "exactly as planned", "just as planned",
                    "as instructed", "as directed", "exactly to plan")),
    ("as planned", (*products(("no", "no real", "without any", "without"), ("changes", "change", "deviation"),
                              ("from", "to"), ("the plan", "plan")),)),
    ("as planned", products(
        ("like", "how", "the way", "just like", "exactly like", "exactly how", "just how", "as", "just as"),
        ("it was", "it is", "its", "it were", "they were", "you had it", "you have it"),
        ("written", "planned", "prescribed", "programmed", "set", "on the sheet", "on the plan", "in the plan", "down",
         "put down", "written down"),
    )),
    ("same again", products(("another", "one more", "another one"), ("like that", "of those", "just like that",
                            "just like it", "like it", "of them the same", "exactly like that"))),
    ("the same twice", products(("two more", "2 more", "another two", "another 2"),
                                ("the same", "of the same", "like that", "of those", "just like it"))),
    ("yesterday", ("last evening", "yesterday night", "yesterday evening")),
    ("meant to say", ("intended to say", "wanted to say", "wanted to write", "intended to write", "meant to type",
                      "wanted to type", "intended to type", "was trying to say")),
    ("meant", ("intended",)),
    ("same as", ("identical to", "identical as", "identical with", "equal to", "the same like", "same again as")),
    *((f"{nth} time", products((f"{nth} time",), ("it was", "it went", "i held", "i did", "i held it")))
      for nth in words("first second third fourth last 1st 2nd 3rd 4th")),
    *((f"{which} plank", (f"{which} blank", f"{which} planck")) for which in words("side front copenhagen reverse")),
    ("sorry", words("sory srry sry soz soory sorri soryy sorrry")),
    ("typo", ("misprint", "mistype", "mis type", "typing error", "typing mistake", "spelling mistake")),
    ("both sides", ("the two sides",)),
    ("both sets", products(("both", "both of the", "on both", "for both"),
                           words("runs trips lengths carries walks laps holds hangs sets rounds goes tries"))),
    ("done", ("also done", "done also", "too is done", "also is done", "is also done")),
    *((f"each {side}", products(("the same", "same", "equal", "an equal"), ("number", "reps", "amount", "count"),
                                ("on", "for", "with", "of", ""), ("both", "each", "either", "the two"),
                                (side, f"{side}s"))) for side in words("leg side arm hand")),
    *((f"both {those}", products(("the two", "the 2", "both the", "both of the"), (those,)))
      for those in words("legs arms hands")),
    ("both of those", products(("the two", "the 2"), ("of those", "of these"))),
    *((f"all {count}", (
        *products(("the",), said, ("of them", "of those", "of these")),
        *products(("each of the", "all of the", "all the", "every one of the"), said),
    )) for count, said in _COUNTS.items()),
    (
        "not sure if",
        products(
            ("cant", "can not", "cannot", "dont", "do not", "couldnt"),
            ("recall", "remember", "say", "tell"),
            ("if", "whether"),
        ),
    ),
    ("nothing left", ("nothing more left", "no more left", "nothing remaining", "nothing else left")),
)  # fmt: skip
"""What is said for what: `final one` is `last one`, `thus` is `so`."""
