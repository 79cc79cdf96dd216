"""Openings of questions put together from their parts: `got any cues for`, `how i know`, `which attachment`.

In the order of other tongues (`how i must`), in slang (`lmk if`) and in half a sentence (`normal to`): each opens a
question with or without its mark. Common usage on both sides of the Atlantic; no source.
"""

from bot.notation.wordlist import products, words

_ADVICE = words(
    "cue cues tip tips trick tricks pointer pointers hint hints advice drill drills alternative alternatives swap swaps"
)
_GOT = (
    *("got any", "got a", "got an", "got any good", "any good", "gimme a", "give me a", "give me some", "gimme some"),
    *("have you", "you got a", "you got any", "need some", "need a", "need any", "whats a good", "whats the best"),
    *("whats your", "whats your best", "what is a good", "what is the best", "any", "some"),
)
_THING = words(
    "muscle muscles grip attachment attachments tempo rest angle height handle handles order pace cadence shoes "
    "day form setting"
)
_HOW_MUCH = words("high low wide narrow deep far fast slow close long strict straight heavy hard often upright")
_WH = words("if what which whether when where why how")

ASKINGS = "; ".join((
    *products(_GOT, _ADVICE, ("for", "on", "about", "with", "to", "when")),
    *products(("got", "any", "some", "need"), ("cues", "tips", "pointers", "hints", "advice"), ("for", "on", "about")),
    *products(("which", "what"), _THING),
    *products(
        ("how",),
        ("i", "we", "you"),
        words("know must should can hold choose find start begin set calculate decide need"),
    ),
    *products(("how",), ("must", "may", "can", "shud", "to know"), ("i", "we", "")),
    *products(("what", "why"), ("i", "we"), ("must", "should", "shall")),
    *products(("what",), ("you",), ("mean with", "mean by", "reckon", "would do")),
    *products(("what",), ("means", "is meant", "is the meaning", "muscle is", "muscles are")),
    *products(("why",), ("i", "we", "you", "they"), words("do must have need only always never put gave chose")),
    *products(("how",), _HOW_MUCH, words("the my for between rest should shud must do is r up down")),
    *products(("rest", "a rest"), ("how long", "how much")),
    *products(("how much", "how long"), ("rest", "a rest", "break", "pause")),
    *products(("", "is"), ("normal",), ("to", "that", "if", "or")),
    *products(("not sure", "dont see", "dont get", "no clue", "no idea", "dont understand"), ("why",), ("we", "you")),
    *products(("dont see", "dont get", "not sure of", "not sure about", "whats", "what is", "whats even"),
              ("the",), ("point of", "pt of", "purpose of", "reason for", "idea behind", "deal with", "use of")),
    *products(("confused",), ("about", "by", "what", "why", "how", "on", "with", "if")),
    *products(("lmk", "hmu", "lemme know", "jw", "just wondering", "tell us"), _WH),
    *products(("need", "need some", "need your", "some", "want", "want some", ""),
              ("advice on", "advice about", "advice for", "input on", "opinion on", "your opinion on", "guidance on",
               "feedback on", "your thoughts on", "your take on", "some help with")),
    *products(("need", "want"), ("help with", "help on")),
    *products(("you reckon", "you think"), ("i should", "i can", "i could", "im ready", "its ok",
                                                              "its time")),
    *products(("shouldnt", "couldnt", "wouldnt", "mustnt"), ("i", "we", "it")),
    *products(("that", "this", "it"), ("look right", "look ok", "look okay", "sound right", "sound ok",
                                       "look about right", "sound about right", "make sense")),
    *products(("is", "was"), ("tomorrow", "tomorrows", "next week", "next session", *words("monday tuesday wednesday "
              "thursday friday saturday sunday")), ("a", "the", "still", "leg", "off", "rest", "on")),
    *products(("who",), ("invented", "came up with", "thought of")),
    *products(("wanted", "want", "meant", "need", "would like", "can i", "may i", "could i"),
              ("to ask", "ask"), ("how", "if", "what", "which", "why", "when", "whether", "about")),
    *("whose idea", "lmk your thoughts", "what the hell is", "what the heck is", "wtf is", "wtf are", "whats even a"),
))  # fmt: skip
"""Said before what is asked; no sets of today stand in it."""
