"""What may stand before a comma that is not typed: the end of a set, or a word that leads on to nothing."""

from bot.notation.wordlist import words

COUNTS = "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty"
NUMBER = r"\d(?:[\d.,]*\d)?"
UNIT = "(?:kgs?|kilos?|lbs?|pounds)"
SIDE = "(?:left|right)"
_POINTS = ("those", "these", "last", "first", "all", "the", "other", "one")
"""Before a number word: `the last two` counts sets, and ends none."""
SET = (
    rf"(?:\d|\d ?s|\b(?:{UNIT}|m|secs?|reps?|times|each|(?:per|each) (?:side|leg|arm|hand)|failure|tank)"
    rf"|{''.join(f'(?<!{word} )' for word in _POINTS)}\b(?:{COUNTS}))"
)
"""The end of a set: its number, its unit, `each`."""
_LEADING = words(
    "a an the my your his her our this that these those on in at of to for from with without by as than like about",
    "into over under through down up off out around behind across inside outside above below near onto against within",
    "during between and or but so because cause cos cuz coz bc since if when while until till before after then plus",
    "x i we you he she it they is are was were be been am im i'm not no just only all almost nearly half got get have",
    "has had did do does done made make took take went go feel feels felt very too both each every last first second",
    "third next same per left right what how why which where else weight reps sets many much long heavy say know",
    "wonder wondering sure me tell ok okay coach hey hi",
)
OPEN = rf"(?<![a-z'])(?!(?:{'|'.join(_LEADING)})$)[a-z']+"
"""A word that a clause may end with; none that leads on to what follows."""
PLACES = (
    "(?:knees?|kneecaps?|elbows?|wrists?|ankles?|shoulders?|hips?|hamstrings?|hammies|hammys?|quads?|calf|calves|"
    "glutes?|groin|adductors?|(?:low(?:er)? |upper |mid )?back|neck|biceps?|triceps?|forearms?|arms?|legs|hands?|"
    "thumbs?|fingers?|feet|foot|shins?|achilles|traps?|ribs?|chest|toes|inner thigh)"
)
"""Parts of the body, as they are told beside a set."""
DOES = (
    r"(?:is|are|was|were|has|had|hurts?|hurting|aches?|aching|feels?|felt|clicks?|grinds?|gave|pops?|kept|went|not|"
    r"tingl\w+|[a-z]{2,}ed|pinching|cramping|stinging|twinging|stings?|pinches|complaining|grumbling|barking|niggl\w+)"
)
"""What such a part does: the name of an exercise (`calf raises`) does nothing."""
