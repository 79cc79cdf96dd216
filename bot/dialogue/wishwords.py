"""How people say that they want another exercise: patterns for `wishes`, each for a whole clause."""

import re

_LEAD = (
    r"(?:(?:ok|okay|hi|hey|hello|so|well|sorry|ah|oh|ugh|damn|hmm|argh|unfortunately|today|coach|and|also|again|"
    r"looks like|seems like|apparently|fyi|turns out|just|it's just that)\s+)*"
)
ARTICLE = r"(?:(?:the|a|an|any|my|our|this|that|those|these|all|both|of|free|single)\s+)*"
_THING = r"(?P<thing>[a-z][a-z' -]*?)"
_TAIL = (
    r"(?:\s+(?:today|tonight|here|now|right now|at the moment|atm|again|still|free|available|left|sorry|unfortunately|"
    r"so far|this time|for now|for me|anywhere|(?:in|at) (?:this|the|my|our) (?:gym|hotel|place)))*"
)
_IS = r"(?:(?:'s| is| are| was| were| all| both| still| currently| already| always| completely| totally)+)"
_GONE = (
    r"(?:taken|busy|occupied|in use|being used|broken|bust|busted|out of order|out of service|not (?:free|available|"
    r"working|there)|unavailable|hogged|closed|missing|being repaired|under repair)"
)
_ISNT = r"(?:isn't|aren't|is not|are not|wasn't|weren't) (?:free|available|working|there)"
_ASKS = (
    r"(?:(?:please|pls|can i|can we|can you|could i|could we|could you|may i|let me|let's|i'd like to|i would like to|"
    r"i want to|want to|i need to|need to|i'll|we could)\s+)*"
)
_OTHER = (
    r"(?:what (?:can|could|should) i do|(?:give me |have you |do you have |is there |i need |need )?"
    r"(?:something|anything|another exercise|another one|an?(?: other| different)? exercise|(?:an )?alternatives?|"
    r"other exercises?|(?:a )?substitute|(?:a )?replacement))(?: else)?(?: today)?"
)
_NOUN = (
    r"(?:give me |have you |do you have |is there |i need |need )?(?:another exercise|a different exercise|"
    r"(?:an )?alternatives?|(?:an ?)?other exercises?|(?:a )?substitute|(?:a )?replacement)(?: exercise)?(?: today)?"
)
LACKS = (
    re.compile(
        rf"{_LEAD}(?:no|without|there(?:'s| is| are) no|(?:i |we |they )?(?:don't|do not) have|"
        rf"(?:i |we |they )?haven't got|missing) {ARTICLE}{_THING}{_TAIL}"
    ),
    re.compile(rf"{_LEAD}{ARTICLE}{_THING}(?:{_IS} {_GONE}| {_GONE}| {_ISNT}){_TAIL}"),
    re.compile(
        rf"{_LEAD}(?:some ?one|some ?body|people|a guy|some guy|every ?one|every ?body|they)(?:'s| is| are|'re)? "
        rf"(?:on|hogging|using|blocking|training on|in|keep|keeps) {ARTICLE}{_THING}{_TAIL}"
    ),
    re.compile(
        rf"{_LEAD}(?:i |we )?(?:can't|cannot|can not|couldn't|could not) (?:use|get on|get to|get at|get|access|find) "
        rf"{ARTICLE}{_THING}{_TAIL}"
    ),
)
"""Equipment that is not there, or an exercise that goes by the name of its machine."""
CANT = re.compile(
    rf"{_LEAD}(?:i |we )?(?:can't|cannot|can not|couldn't|could not|i'm not able to|am not able to|not able to|"
    rf"unable to|won't be able to) (?:do |perform )?{ARTICLE}{_THING}{_TAIL}"
)
SWAP = re.compile(
    rf"{_LEAD}{_ASKS}(?:swap|change|replace|exchange|switch|substitute)(?: out)? {ARTICLE}{_THING}(?: today)?"
    rf"(?: (?:for|with|to|by) (?P<into>[a-z][a-z' -]*?))?(?: (?:today|please|pls))*\??"
)
ELSE = re.compile(
    rf"{_LEAD}{_ASKS}(?:{_OTHER} (?:instead of|in place of|in the place of|rather than)|{_NOUN} (?:for|to)) "
    rf"{ARTICLE}{_THING}(?: please| pls)?{_TAIL}\??"
)
INSTEAD = re.compile(rf"{_LEAD}instead of {ARTICLE}{_THING},? {_OTHER}{_TAIL}\??")
VAGUE = frozenset({"", "something", "else", "something else", "anything", "another", "another one", "another exercise"})
STORY = re.compile(
    r"\d|\b(?:yesterday|last|but|finally|waited|then|did|done|got|found|used|tomorrow|next|more|sets?|reps?|rest|"
    r"video|shoes?|belt)\b"
)
"""Words of a report, of another day, or of what came of it."""
MAY = re.compile(
    r"\b(?:no|without|have|haven't|missing|taken|busy|occupied|use|used|using|broken|bust|busted|order|service|free|"
    r"available|working|there|unavailable|hogged|hogging|closed|repaired|repair|on|blocking|can't|cannot|cant|can|"
    r"couldn't|could|able|unable|swap|change|replace|exchange|switch|substitute|instead|else|alternative|alternatives|"
    r"another|other|replacement|in)\b"
)
AT_HOME = re.compile(r"\b(?:home|hotel|holiday|park|garden|travelling|traveling)\b")
"""Where no gym is meant as equipment: alone, `no gym today` gives the day up."""
