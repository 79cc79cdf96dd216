"""Ends of the session put together from their parts: `gonna call it a night`, `done for the morning`.

Common usage on both sides of the Atlantic; no source.
"""

from bot.notation.wordlist import products, words

_CALLING = ("calling it", "call it", "called it", "im calling it", "gonna call it", "going to call it", "ima call it")
_DONE = ("done", "im done", "am done", "all done", "finished", "im finished", "dun", "im dun", "thats me done")
_PARTS = ("today", "the day", "tonight", "the morning", "the night", "the evening", "the afternoon", "this morning",
          "this evening", "this afternoon", "the week")  # fmt: skip

ENDINGS = "; ".join((
    *products(_CALLING, ("a day", "a night", "a morning", "there", "here", "quits", "there for today")),
    *products(_DONE, ("for", "4", "fur"), _PARTS),
    *products(("thats my", "thats the"), words("morning evening session lunchtime"), ("done", "sorted", "finished")),
    *products(("", "and", "thats", "and thats", "its", "and its"), ("a wrap",)),
    *products(("hitting the", "hit the", "off to the", "off for a", "off to", "time for a"), ("shower", "showers")),
    *products(("packing", "packed", "packin", "im packing"), ("it in", "up", "up now", "in for today")),
    *products(("clocking", "clocked", "signing", "im clocking"), ("out", "off")),
    *products(("knocking", "knocked"), ("off for the day", "off for today", "it on the head for today")),
    *products(("", "thats", "it is", "for today thats", "for today it is"), ("enough for today", "enough for tonight")),
    *products(("", "im"), ("outta here", "dunzo", "donezo", "away home")),
    *products(("gym", "session", "workout", "training"), ("over", "closed", "ended", "is ended", "is complete")),
    *("wrap !", "im out of here", "am done", "im dun", "over and out", "thats your lot", "thats yer lot"),
    *("for today it is enough", "i have done all", "all is done", "time to go home", "thats time", "and thats time"),
    *("thats the end",),
    *products(("this", "that", "which"),
              ("concludes", "ends", "completes", "closes", "finishes", "wraps up", "rounds off", "brings to an end"),
              ("today", "the day", *products(("todays", "the", "my", "this", "our"),
                                             words("program programme session workout training work")))),
    *products(("end", "the end", "thats the end", "this is the end", "finish", "stop"), ("for", "of"),
              ("today", "the day", "tonight", "this session", "todays session", "the programme", "the program")),
    *products(("session", "workout", "training", "programme", "program"), ("concluded", "is concluded", "at an end")),
))  # fmt: skip
"""Said of the whole session."""
