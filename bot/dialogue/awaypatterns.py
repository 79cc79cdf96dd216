"""How people say that they are away, ill, or back, and until when: patterns for `awaywords`."""

import re

_FLU = (
    r"(?:the |a |man |bad |nasty |stomach |proper )*(?:flu|influenza|covid|corona|fever|virus|infection|tonsillitis|"
    r"bronchitis|pneumonia|norovirus|food poisoning)(?: of (?:about )?\d\d(?:[.,]\d)?)?"
)
_COLD = (
    r"a (?:bad |nasty |heavy |stinking |terrible )*cold(?! (?:gym|day|one|room|night|bar|week|morning))|"
    r"(?:have|got|caught) (?:the |a )?cold"
)
_FEELING = (
    r"(?:feel|feeling|am|been|being|off|fallen|really|very|quite|pretty|so|too|still|home|a bit|bit|got|getting|out) "
    r"(?:sick|ill)"
)
_ILL = (
    r"not (?:feeling |at all |very |so )*well|un ?well|poorly|under the weather|not feeling (?:good|great)|"
    rf"{_FEELING}|ill|sick|{_FLU}|{_COLD}|(?:a )?high temperature|(?:a )?(?:stomach|tummy|sickness|nasty) bug|"
    r"in (?:the )?hospital|(?:an |my )?(?:operation|surgery)"
)
_AWAY = (
    r"(?:on|off on|going on|leaving for|off for) (?:a |my |our |family |annual |parental |summer |winter )*"
    r"(?:holidays?|vacation|leave|honeymoon|business trip|work trip|trip|city break)|(?:holiday|vacation|travelling|"
    r"traveling|abroad|overseas|out of town|out of the country|away|off grid)(?: (?:for|with) work| on business)?|"
    r"at a (?:conference|wedding|festival)"
)
_NOTHING = (
    r"(?:can't|cannot|won't be able to|not able to|unable to|won't be) (?:train|training|make it|come|lift|work out)|"
    r"no (?:training|sessions?|gym|workouts?|lifting)|not training|(?:need|taking|take|having) (?:a |some )?"
    r"(?:break|time off)|out|out of action|laid up|"
    r"(?:please )?pause (?:me|my sessions|my training|everything|sessions|training)"
)
ILLNESS = re.compile(
    rf"\b(?:{_FLU}|{_COLD}|high temperature|(?:stomach|tummy|sickness) bug|(?:i feel|i'm feeling|i am|i'm|feeling) "
    r"(?:(?:a bit|really|very|quite|pretty|still) )*(?:sick|ill|un ?well|poorly))\b(?! (?:jab|shot|vaccin|season))"
)
"""An illness that is meant as one, also where the words around it are not understood."""
ILL, AWAY = re.compile(rf"\b(?:{_ILL})\b"), re.compile(rf"\b(?:{_AWAY})\b")
NOTHING = re.compile(rf"\b(?:{_NOTHING})\b")
"""Nobody trains, whatever the reason."""

_MONTH = r"(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*"
_NAMED = r"(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?"
_DAY = (
    r"(?:the |next |this |on )*(?:\d{4}-\d\d?-\d\d?|\d\d?\.\s?\d\d?\.(?:\s?\d{4})?|"
    rf"\d{{1,2}}(?:st|nd|rd|th)?(?: of)? {_MONTH}(?: \d{{4}})?|{_MONTH} \d{{1,2}}(?:st|nd|rd|th)?(?: \d{{4}})?|"
    rf"\d{{1,2}}(?:st|nd|rd|th)|{_NAMED}|tomorrow|week)"
)
_SPAN = r"(?:the next |another |about |at least )*(?:\d{1,2}|a|one|two|three|four) (?:days?|weeks?|months?)"
_BACK_ON = (
    r"(?:i'll be |i will be |will be |i'm |am |be )?(?:back|return|returning|home|training again|fine again)"
    r"(?: (?:home|training|again|at it|in the gym))*(?: (?:on|from|by|in))?"
)
UNTIL = re.compile(rf"(?:{_BACK_ON}|until|till|til|through|up to|see you(?: on)?) (?P<day>{_DAY}|{_SPAN})\b")
FROM_TO = re.compile(
    rf"(?:from |between )?(?P<first>{_DAY})(?:,? (?:to|until|till|til|and|through|-)|-| -) ?(?P<day>{_DAY})\b"
)
FROM = re.compile(rf"(?:from|starting|as of|beginning) (?P<first>{_DAY})\b")
FOR = re.compile(rf"(?:for |in )?(?P<day>{_SPAN})\b")
NEXT_WEEK = re.compile(r"\b(?:all |the whole of |the whole )?next week\b")
THIS_WEEK = re.compile(
    r"\b(?:(?:for )?(?:the )?rest of (?:the|this) week|(?:all |the whole of |the whole )?this week)\b"
)

_SAID_BESIDE = (
    "hi hey hello sorry ok okay coach so and but unfortunately i i'm im i've am are we we're have has had got getting",
    "get a an the my me it it's is this that be been being will i'll going to with in at bed home from for on of today",
    "tonight tomorrow now right just really very quite pretty bit little again currently atm still all day week no not",
    "can't won't cannot train training gym session sessions workout workouts lifting able make do any until then there",
    "think guess looks like seems as since because down caught off out here work please need fyi days well thanks bye",
    "cheers ugh argh damn ill sick unwell feeling feel",
)
CLAUSES = re.compile(r"(?:[.;!\n]|,)(?=\s|$)|\s(?:and|but)\s(?!the\b)")
"""What parts a message that says several things."""
SINCE = re.compile(
    r"\bsince (?:yesterday|last night|this morning|the weekend|(?:mon|tues?|wednes|thurs?|fri|satur|sun)day)\b"
)
"""How long it has lasted already: not the day on which sessions stop."""
FILLERS = frozenset(word for words in _SAID_BESIDE for word in words.split())
"""What may stand beside it without saying anything else."""
NOT_SO = re.compile(
    r"\b(?:no longer|any ?more|was|were|had been|last|yesterday|ago|if|when|after|before|over|recovered|better|past|"
    r"should|would|could|might|may|wife|husband|kids?|son|daughter|mum|dad|partner|baby|dog|how|what|does|do you|"
    r"sick (?:of|sets?|sessions?|workouts?|pump|training|gym|day)|ill (?:training|gym))\b"
)
"""What was, what may be, who else it is about, and what only sounds like it."""
BACK = re.compile(
    r"(?:(?:hi|hey|hello|ok|okay|so|coach|good news)[, ]+)*(?:i'm |i am |we're |im )?"
    r"(?:feeling |all |fit |fully |much |home |finally |now )*(?:back|home|better|well|fit|healthy|recovered)"
    r"(?: (?:again|now|home|to train|from (?:my |the |our )?(?:holidays?|vacation|trip)|early|and|fit|well|better|"
    r"ready|training|for more|today))*(?:[,.!]* (?:let's go|ready to (?:train|go|lift)|can train again))?"
)
"""Somebody whose sessions rest says that they could go on."""
