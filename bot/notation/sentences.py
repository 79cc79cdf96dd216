"""A full stop, dots or a new line where others type a comma: `it was 20. not 15.`, `the knee. the right one.`.

Some sentences cannot stand by themselves: what begins with `not 15`, `same weight`, `both sets`, `the right one` is
said of what stands before it, and `sorry.` of what follows. Between the two the end of a sentence is put as the comma
that it stands for, before anything is read, for sets and for hurts alike; the text keeps its length, so that places
in it stay where they were. What can stand by itself keeps its end; a semicolon before it is a full stop.
"""

import re

_WORDS = (
    "zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|"
    "eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred"
)
_NUMBER = rf"(?:[+-]?\d[\d.,]*+|an?\ (?:hundred|dozen)\b|(?:{_WORDS})\b)"
_COUNT = rf"{_NUMBER}(?!\s*(?:[x×*@]|(?:kgs?|lbs?|kilos?|pounds?|for|at|by)\b))"
"""A number that is no load with its repetitions."""
_ENDS = r"(?=\s*(?:[.,;:!?()\n…-]|$))"
_NAMED = r"\ \d+(?:,\ \d+)*(?:,|\ and)\ \d+\ (?!reps?\b|each\b|on\b|at\b|with\b|for\b|per\b|sec)[a-z]{3}"
"""Counts that name their exercise behind them: `did 9, 9 and 8 chins`."""
_SIDE_ENDS = r"(?=\s*(?:[.;!?()\n…-]|,(?!\s*\d)|$))"
_SETS = r"(?:sets?|rounds?|trips?|times|goes|series?|lengths?|runs?)"
_SIDE = r"(?:on\ )?(?:the\ |my\ )?(?:left|right)(?:\ (?:side|one|arm|leg|hand|hip|shoulder))?+"
_BODY = r"(?:ankle|back|calf|elbow|foot|groin|hamstring|hand|hip|knee|neck|quad|shin|shoulder|wrist)"
_SAID = r"(?:(?:was|were|got|did|only|also|about|maybe|at|with|for|plus|more\ like)\ |@\ ?)*"
"""Little words between what is named and its number."""
_NO_EFFORT = r"(?!\ (?:more\ )?(?:in\b|left\b|rir\b|rpe\b|to\ spare))"
_ORDINAL = r"(?:first|second|third|fourth|last|2nd|3rd|4th)"

_END = re.compile(
    r"(?<=[\w\])'’\"%])[^\S\n]*(?:[.…!]++(?![\d+-])|;(?=\ [^\W\d])|(?=\n))[^\S\n]*\n?[^\S\n]*(?=[^\W_]|[+-]\d)"
)
"""The end of a sentence with more behind it, on the same line or the next."""
_LISTED = re.compile(r"\A1\..*\n2\.", re.DOTALL)
"""Lines with numbers: what stands behind a number's point starts no sentence."""
_STOPS = re.compile(r"[.…!;\n]")

_LEANS = re.compile(
    rf"""
      (?:sorry\W{{1,3}})?not\ (?:an?\ |the\ |on\ |with\ |at\ |in\ )?(?:{_NUMBER}|bodyweight|single|double)
    | (?:hmm?\ |er\ |ah\ |nah\ )?no\ (?:wait|sorry|hang\ on|call\ it|make\ (?:it|that)|{_NUMBER}(?!\ reps))
    | no\ (?:added\ |extra\ )?(?:weight|belt|band|plates?|assist\w*|feeling|strength|power|grip)\b
    | same\ (?:weight|load|reps|rep|pin|bell|plates?|dumbbells?|height|band|assist\w*|as)\b
    | (?:just|only)\ (?:bodyweight|an?\ warm|warm)
    | (?<!x\d\n)(?<!x\d\d\n)x\ ?\d+(?![!\d])
    | (?:the\ )?(?:all|both|each|always|every\ time)\ (?:of\ (?:them|those|em)\ )?(?:(?:for|at|with|on)\ )?(?:the\ )?
      (?:{_NUMBER}{_NO_EFFORT}|{_SETS}|sides?|kinds|left|right|of\ (?:em|them)\b)
    | (?:all|both)\s*[.!]?\s*$
    | (?:all\ )?(?:singles|doubles|triples|fours|fives|sixes|sevens|eights|nines|tens|twelves|fifteens)\b
    | twice\b
    | (?:did|done)\ that\ (?:twice|{_NUMBER})
    | (?:that'?s\ )?{_NUMBER}\ {_SETS}(?:\ of\ (?:that|those|it|them))?{_ENDS}
    | {_NUMBER}\ (?:(?:reps?\ )?(?:less|fewer)|(?:more\ )?(?:was\ possible|in\ (?:the\ tank|reserve)))\b
    | {_NUMBER}\ on\ (?:the|my)\ (?:left|right)\b
    | (?:minus|plus)\ {_NUMBER}
    | (?:but\ )?only\ (?:got\ |did\ |managed\ |for\ )?{_NUMBER}
    | (?:(?:still\ )?(?:got|did(?!{_NAMED})|was|were|are|went)|another|also(?:\ each)?|and(?:\ then|\ only)?)\ {_COUNT}
    | for\ {_NUMBER}
    | (?:except|though|without)\b
    | (?:just\ |exactly\ )?as\ (?:planned|written|prescribed|instructed|told|per|you)\b
    | {_SIDE}(?:{_SIDE_ENDS}|\ {_SAID}{_NUMBER}|\ (?:got|was|only|stopped|failed)\b)
    | (?:the\ |my\ )(?:(?:left|right)\ )?{_BODY}{_ENDS}
    | (?:the\ )?(?:other|first|last)\ (?:one\ |two\ |three\ |\d\ )?{_SAID}{_NUMBER}{_NO_EFFORT}
    | (?:the\ )?{_ORDINAL}\ (?:one|set|serie|only)\ {_SAID}{_NUMBER}{_NO_EFFORT}
    | (?:maybe|about|like|around|roughly|probably|call\ it|meant)\ (?:an?\ )?{_NUMBER}
    | (?:it|that|they|there)\ (?:was|were)\ (?:only\ |with\ |at\ |on\ |just\ )?{_NUMBER}(?!\s?[x×*]\s?\d)
    | so\ (?:let'?s\ )?(?:call\ it\ |it\ was\ )?{_NUMBER}
    | (?:(?:then\ )?straight(?:\ down)?|dropped|down(?:\ again)?)\ to\ {_NUMBER}
    | the\ (?:drop|minis?)\ (?:was|were)\b
    | (?:the\ |my\ )?bar\ (?:here\ )?(?:is|was)\ {_NUMBER}
    | failed\ (?:the|on)\b
    | (?:does|did)n'?t\ count\b | never\ happened\b | wrong\ (?:chat|window|person|group)\b
    | (?:i\ )?(?:miscounted|lost\ count)
    | i\ (?:only\ did|counted|(?:have\ )?(?:put|wrote|written|typed)|never\ did)\b
    | (?:delete|swap|ignore)\ (?:it|them|that)\b
    | (?:red|swollen|numb|worse|inside|outside|came\ on|all\ clear)\b
    | (?:an?\ )?(?:small|slight|little|mild)\ pain\b
    | (?:like\ |it\ (?:really\ )?)(?:stab|pinch|burn|sting|hurt)\w*
    | (?:there(?:'?s|\ is)\ )?no\ time{_ENDS}
    | (?:is\ (?:it|that)\ )?(?:enough|ok|okay)\ ?\?
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""What a sentence begins with that is said of the one before it."""
_LEANS_IN_LINE = re.compile(
    r"(?:rpe|rir|effort) (?:\d|between)(?![^.\n]*\b(?:all|both|each)\b)|[lr] ?(?:(?:arm|side|leg) )?\d", re.IGNORECASE
)
"""The same, but where it starts a line it is a row of its own."""

_HALF = re.compile(
    rf"""
      (?:(?:ah|oh|er|erm|um|no|well|ok|okay)[ ,]+)?
      (?:sorry|oops|whoops|oups|ups|nah|nope|wait|hang\ on|correction|my\ bad|actually|edit|hello|hi|hey|so|well|okay|
      ok)
    | (?:take|scratch|scrap)\ (?:that(?:\ back)?|what\ i\ (?:just\ )?(?:put|sent|said))
    | (?:forget|ignore|scratch|not)\ (?:the\ )?{_NUMBER}
    | (?:the|my)\ (?:(?:left|right)\ )?[^\W\d]+
    | {_SIDE}
    | (?:on\ )?(?:mon|tues?|wed|thurs?|fri|sat|sun)(?:day|sday|nesday|urday)?
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""A sentence that only leads to the next."""

_LOAD_ALONE = re.compile(
    rf"""
    (?!.*\b(?:reps?|times|x|done|left|none|nothing|tank)\b)(?:[^\W\d]|[ ,:'/()-]|(?<=set\ )\d\b)*?
    (?:[+-]?\d+(?:[.,]\d+)?|(?:{_WORDS})s?(?:[-\ ](?:{_WORDS}|and|point|an?|half))*)
    (?:[^\W\d]|[ ,'/()-])*
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""A sentence with one number."""
_LOADED = re.compile(
    r"\d ?(?:kgs?|kilos?|lbs?|pounds?|s)\b|\+\d|\d[.,]\d"
    r"|\b(?:kg|kilos?|pounds?|assist\w*|used|with|at|on|plus|minus|each|half|\w+eens)\b",
    re.IGNORECASE,
)
"""What tells the number to be a load."""
_COUNTED = re.compile(rf"(?:(?:there\ )?i\ (?:do|did|make|made|got)\ )?{_COUNT}", re.IGNORECASE)


def joined(text: str) -> str:
    """The text with a comma for each end between two sentences of which one cannot stand by itself.

    A semicolon between two that can is a full stop.

    >>> joined("Sorry. it was 20 assist. not 15. Rows next.")
    'Sorry, it was 20 assist, not 15. Rows next.'
    """
    if _STOPS.search(text) is None:
        return text
    out: list[str] = []
    start = 0
    listed = _LISTED.match(text) is not None
    for end in _END.finditer(text):
        if listed and text[end.start() - 1].isdigit() and text[: end.start() - 1][-1:] in ("", "\n"):
            continue
        between = end.group()
        before = text[start : end.start()].lstrip(" ,.!…\n")
        if _is_one(before, text, end.end(), same_line="\n" not in between):
            apart = between != "\n" or not (before[-1:].isdigit() and text[end.end()].isdigit())
            between = ",".ljust(len(between)) if apart else "="
        elif between[:1] == ";":
            between = "." + between[1:]
        out += (text[start : end.start()], between)
        start = end.end()
    return "".join((*out, text[start:]))


def _is_one(before: str, text: str, at: int, *, same_line: bool) -> bool:
    """Whether a sentence and the text behind it are one."""
    if _LEANS.match(text, at) or _HALF.fullmatch(before) or (same_line and _LEANS_IN_LINE.match(text, at)):
        return True
    if _COUNTED.match(text, at) is None:
        return False
    return _LOADED.search(before) is not None and _LOAD_ALONE.fullmatch(before) is not None
