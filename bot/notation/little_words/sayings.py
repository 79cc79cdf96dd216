"""What clients say before and behind a report that says nothing of it, as patterns on plain lower-case text."""

import re

WHEN = r"(?:\ (?:today|tonight|now|this\ (?:morning|afternoon|evening)))?"
_VERY = (
    r"(?:(?:an?|so|too|really|very|super|pretty|quite|rather|absolutely|completely|totally|bit|tad|little|all|proper|"
    r"nice\ and)\ )*"
)
_STATE = r"(?:packed|busy|heaving|rammed|crowded|mobbed|dead|empty|quiet|boiling|freezing|roasting|baking|sweltering)"
_LIKED = (
    r"(?:good|great|nice|solid|strong|smooth|fast|snappy|decent|fine|ok|okay|alright|lovely|amazing|awesome|fantastic|"
    r"heavy|light|easy|hard|tough|rough|slow|awful|terrible|horrible|brutal|grim|better|worse|heavier|lighter|easier|"
    r"harder)"
)
_TASTE = (
    r"(?:bad|awful|terrible|rubbish|dire|dreadful|shocking|horrible|good|great|loud|off|banging|cheesy|boring|class)"
)
_DRAINED = (
    r"(?:knackered|shattered|tired|sleepy|hungover|starving|hungry|rushed|stressed|sweaty|buzzing|flying|pumped|hyped|"
    r"chuffed|happy)"
)
_GYM = r"(?:garage|home|hotel|work|new|old|other|local)\ gym"
_THE = r"(?:(?:the|my|a|some|his|her|your)\ )?"
_KIT = (
    r"(?:(?:new|old|usual|good|lifting|squat|weight|leather|knee|wrist|elbow)\ )*"
    r"(?:belt|straps?|sleeves|wraps|chalk|shoes|trainers|sneakers|lifters|flats|socks|gloves)"
)

WORN = rf"(?:(?:with|in|wearing|using)\ {_THE}{_KIT}(?:\ on)?|(?:no|without|w/o)\ {_THE}(?:belt|straps|wraps|sleeves))"
"""What was worn, or not: it is no load but that of body weight."""
LOOSE = r"\b(?:beltless|strapless|whether\ (?:i|a|you|we)\ (?:like|want)\ it\ or\ no(?:t|pe)?)\b"
"""The same in a word, wherever it stands."""
_WHERE = (
    r"(?:on|with|in)\ (?:the\ |my\ )?(?:good|nice|new|old|usual|rusty|bent|wobbly|corner|back|window)\ "
    r"(?:bar|rack|platform|cage|corner)"
    rf"|(?:from|at|in)\ (?:the\ |my\ |a\ )?{_GYM}"
)
_ABOUT = (
    rf"(?:the\ |my\ )?(?:music|playlist|tunes|radio|speakers?)\ (?:is|was|were)\ {_VERY}{_TASTE}"
    rf"|(?:the\ )?(?:gym|place)(?:\ is|\ was|'?s)\ {_VERY}{_STATE}(?:\ in\ here)?"
    rf"|{_VERY}{_STATE}\ in\ here"
    r"|(?:had\ to\ wait|waited|waiting|queued|had\ to\ queue)\ (?:(?:ages|forever|a\ while)\ )?"
    r"for\ (?:the|a)\ (?:rack|bench|bar|machine|platform|cage)"
    r"|(?:my\ )?grip\ (?:was\ |is\ |kept\ )?slipping(?:\ a\ (?:bit|little))?"
)
_FELT = rf"(?:it\ |that\ |they\ |all\ )?(?:felt|feels)\ {_VERY}{_LIKED}(?:\ than\ last\ (?:time|week))?"
_SLEPT = (
    r"(?:i\ )?(?:slept|sleep\ was)\ "
    r"(?:badly|terribly|awful|bad|poorly|well|great|\d\ ?(?:h|hrs?|hours)(?!,?\ (?:got|only|but)))"
    r"(?:,?\ (?:only\ |about\ |maybe\ )?\d(?:\.5)?\ ?(?:h|hrs?|hours))?"
)

TAIL = rf"""
    (?:nice|good|great|solid)\ (?:pump|session|workout)
  | {_ABOUT} | {_WHERE} | {WORN}
  | (?:video|vid|clip|form\ check)s?\ (?:is\ |are\ )?(?:coming|incoming|to\ follow|attached|uploading|on\ its\ way)
    (?:\ (?:soon|later|shortly|in\ a\ (?:sec|minute|bit|moment)))?
  | (?:sweating|dripping)(?:\ (?:loads|buckets|like\ mad))
  | (?:so\ |really\ |very\ |pretty\ )?(?:chuffed|happy|pleased)(?:\ (?:with\ (?:that|this|those|it)|to\ bits))
"""
"""Said behind a report, with a mark between or none."""
TAIL_APART = rf"{_FELT} | {_SLEPT} | {_VERY}{_DRAINED}"
"""Said so behind a mark only: of `the 60 felt heavy` the number is what felt so."""

HEAD = rf"""
    (?:sorry|apologies)\ (?:for|about)\ (?:the\ |my\ )?(?:late|slow|delayed)\ (?:reply|response|answer|message|text)
  | (?:my\ )?phone\ (?:died|was\ (?:dead|off|flat))(?:\ so\ (?:only\ now|late))?
  | {_ABOUT} | {_GYM} | {_WHERE} | {WORN}
  | (?:just\ |finally\ )?back\ from\ (?:my\ |the\ |our\ )?(?:holidays?|hols|vacation|trip|honeymoon)(?:\ so)?
  | (?:squeezed|fitted|snuck|sneaked|crammed)\ (?:this|it|one|the\ session)\ in\ (?:at|over|during|before|after)
    (?:\ my)?\ (?:lunch(?:\ break)?|work|breakfast|dinner|school)
  | (?:just\ |finally\ )+(?:made\ it|got)\ (?:in|here)
  | (?:\d|one|two|three)\ coffees?\ in(?:\ and\ (?:flying|buzzing))?
  | (?:my\ |the\ )?(?:train|bus|tram|lift)\ was\ (?:\d+\ ?min(?:ute)?s?\ )?(?:late|delayed|cancelled)
  | (?:a\ )?(?:quick|little|short)\ update
  | here\ (?:you|we|it)\ (?:go|goes|is)
"""
"""Said before a report, with a mark between or none."""
HEAD_APART = rf"""
    {_SLEPT} | {_FELT} | (?:i'?m\ |was\ |feeling\ )?{_VERY}{_DRAINED}
  | (?:good|great|nice|solid|decent|tough)\ (?:session|workout)
  | (?:this\ (?:morning|afternoon|evening)|tonight|today)(?=\s*[,.:;\n])
  | (?:good\ )?(?:morning|afternoon|evening)(?:\ (?:coach|all|boss|mate))?
"""
"""Said so with a mark behind, or straight before a number."""


def compiled(pattern: str, *, before: str = "", behind: str = "") -> re.Pattern[str]:
    """The pattern between two others, with when it was so."""
    return re.compile(rf"{before}(?:{pattern}){WHEN}{behind}", re.VERBOSE)
