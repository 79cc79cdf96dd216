"""What opens something new where no mark says so, and what must stand before it: rows of patterns on plain text."""

import re
from dataclasses import dataclass

from bot.notation.days.weekdays import WEEKDAYS, YESTERDAY
from bot.notation.unpunctuated.ends import COUNTS, DOES, NUMBER, OPEN, PLACES, SET, SIDE, UNIT


@dataclass(frozen=True, slots=True)
class Opening:
    """Words that open something new where `behind` ends straight before them; `mark` is what parts the two."""

    opens: re.Pattern[str]
    behind: re.Pattern[str]
    mark: str


def _row(opens: str, *, behind: str, mark: str = ",") -> Opening:
    return Opening(re.compile(opens), re.compile(rf"(?:{behind})$"), mark)


_DAYS = "|".join(sorted({*WEEKDAYS, *YESTERDAY}, key=len, reverse=True))
_KILO = "(?:kilo|kg|lb|pound) (?:plates|bumpers)"
_MOVES = "raise|curl|press|ext|rotation|thrust|tap|drive|lift|bridge|push|row|plank"
_THING = "(?:bar|plates|seat|machine|straps?|stack|bench|pin|peg)"
_STAYS = (
    r"(?: (?:is|are|was|were|all))? ?"
    r"(?:right(?! (?:leg|arm|side|hand|one|foot))|stays?|stands?|the same|fine|correct|as logged)\b(?! ?\d)"
)
_HURTS = r"(?:hurt\w*|pinch\w*|cramp\w*|ach(?:es|ed|ing)|twing\w+|sting\w*)"
_NOT_OWN = (
    r" (?:so|then|did|last|next|he|she|they|his|her|their|mate|lad|guy|bloke|friend|buddy|partner|wife|husband|plan"
    r"|planned|should|could|would|want|wanted|tomorrow|going|gonna|week|btw|anyway|lol)\b"
)
"""In a reason, what makes the set behind it no set of the client's own, or part of the reason."""
_OWN_SET = rf"(?<![\d.,])(?<!the )(?<!his )(?<!her )(?<!their ){NUMBER}(?: ?(?:reps?|each|times))?"
"""The end of a set that is no `the 20` of `the 20 plates`, no `his 6` of `his 6 plates`."""
_TENS = "ten|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen|twenty|thirty|forty|fifty|sixty"
_PAIR_SPOKEN = rf"(?:(?:{_TENS})s|(?:{_TENS})(?: |-)(?:{COUNTS})s) for (?:{COUNTS}|{_TENS})\b"
"""A pair of dumbbells and its repetitions as they are spoken: `fourteens for ten`, `twenty twos for eight`."""
_LISTED = r"l ?\d|r ?\d|[+-]?\d"

_SETS = (
    # `+5 x 8 +5 x 6 bw x 9`
    _row(rf"bw(?:\b|x)|body ?weight\b|\+{NUMBER} ?(?:x|for\b) ?\d", behind=r"(?:\bx ?|\dx ?|for )\d+|\+ ?\d+ ?\+ ?\d+"),
    # `20 +4 +4 16 +4 +3`, `20x12 +4+4 then 20x10 +4`
    _row(r"(?:then |second (?:time )?)?(?:\d+ ?x ?)?\d+ ?\+ ?\d", behind=r"\+ ?\d+"),
    # `135x8 @7 x8 @8`, `90x4 x4 x3`: of two alone the second may count sets
    _row(r"x ?\d+\b(?! ?[x+])", behind=rf"@ ?{NUMBER}|\dx\d+(?: x\d+)+"),
    _row(r"x\d+ x\d+", behind=r"\dx\d+"),
    _row(r"\d+ times?\b|\d+ ?min\b|\d:\d\d", behind=r"\d (?:times?|min)|\dmin"),
    _row(r"(?:then )?(?:(?:first )?work(?:ing)?(?: sets?)?|top set|back ?offs?|back ?downs?):? \d", behind=SET),
    _row(r"(?:now|then|after) \d", behind=r"\bwarm[ -]?ups?"),
    _row(r"\d+ (?:reps|of them|per|each)\b", behind=rf"\b(?:total|together|(?:up|down) to|wait) {NUMBER} ?{UNIT}?"),
    _row(
        rf"(?:and )?(?:second|third|fourth|2nd|3rd|4th|(?:last|second|third) one)(?: one| set)? "
        rf"(?:the same|was \d|{_LISTED}|only \d)|set \d ?:|third:? \d|third now|this one \d|just did"
        r"|second (?:just|now)",
        behind=SET,
    ),
    _row(r"after (?:that|this)\b(?! ?:)", behind=rf"{SET}|\b{SIDE}"),
    _row(r"(?:the )?other two\b|all (?:for|of them)|both of (?:them|those)|same again", behind=SET),
    # a set behind what hurt, or behind a reason: `it pinches when i go deep 55x6`
    _row(
        rf"{NUMBER}(?:kg|lb|s)? ?(?:x|for) ?\d|{_PAIR_SPOKEN}",
        behind=rf"\b(?:when|where|because|cos|cuz|coz|but|{_HURTS})(?:(?!{_NOT_OWN})[^,.;:\d])*"
        rf"(?!{_NOT_OWN}) {OPEN}(?<!ed)(?<! hit)(?<! still)",
    ),
    _row(r"\d+(?: and|,)? \d", behind=r"\b(?:forgot|mention|missed)\b[^.,:\d]* minis?\b[^.,:\d]*[a-z]", mark=":"),
)
"""Sets behind sets, and behind talk."""
_TOLD = (
    # `set 3 was 9 not 8 drop stays`
    _row(
        rf"(?:the )?(?:drop(?:'?s)?|minis|reps|repetitions|rest|sets? (?:\d|one|two|three)|first (?:one|set)(?:'?s)?)"
        rf"{_STAYS}|same reps",
        behind=rf"{SET}|\b(?:actually|sorry|there)",
    ),
    _row(rf"{NUMBER}(?= *(?:$|[.!\n]|, | sorry))", behind=rf"\bnot {NUMBER}"),
    _row(rf"(?:only|the) {_KILO}\b", behind=SET),
    _row(rf"only {_KILO}\b|the {_KILO} (?:were|are|have)\b", behind=OPEN),
    _row(
        rf"(?:the )?{_THING}(?: here)? (?:is|was|were|are|on|set|felt|kept|moved)\b",
        behind=rf"{_OWN_SET}|\bfor (?:{COUNTS})",
    ),
    _row(
        r"(?:i (?:had|was|loaded|forgot|mis\w+|thought|stopped|made)|reckon|read the|grabbed|misloaded|took|used"
        r"|scraped|ended|could(?:'?ve| have) (?:\w+ )?more"
        rf"|went (?:light|heav|up|down|\+|back|to)|got (?:\d+(?! ?min)|{COUNTS}))\b",
        behind=SET,
    ),
    _row(r"not (?:bad|sure|great)\b", behind=rf"{SET}|{OPEN}"),
    _row(r"(?:stopped|bailed|quit) (?:at|after) \d", behind=rf"{OPEN}(?<!oulda)(?<! should)(?<! could)"),
    _row(
        r"(?:set \d|(?:second|third|first|last) set) (?:\w+ ){0,4}?(?:was|were|should)\b",
        behind=r"\b(?:wrong|quick|fast|sets|oops|mistake|early|typo)",
    ),
    # `scratch that last set that was my mate's`
    _row(
        r"(?:i (?:was|have|mis\w+|counted|did(?:n't|nt)|wasn'?t|never)|(?:that|it) was\b|it never|(?:my|the) \w+ was"
        r"|(?:that )?second \w+ was)",
        behind=r"^(?:\w+ ){0,3}?(?:scrap|scratch|scrub|ignore|delete|forget|drop|disregard|bin) "
        r"(?:that|this|my|the|last|set|what)\b[^.,;:!?\n]*",
    ),
)
"""What is told of sets."""
_HURT = (
    _row(
        rf"(?:(?:my|the|both|inside of (?:my|the)|{SIDE}) )*{PLACES}(?: (?:\w+ )?{DOES}\b|'s\b)",
        behind=rf"{SET}(?<!two)(?<!three)|\b(?:today|this time|bailed|skipped|out)",
    ),
    _row(rf"(?:my |the )?{SIDE} (?:side )?{PLACES} {DOES}\b", behind=rf"{OPEN}|\b{SIDE}"),
    _row(
        rf"(?:my |the )?{SIDE} {PLACES}\b(?! (?:{_MOVES}|\d))",
        behind=rf"\d|\d ?s|\b(?:{UNIT}|reps|today|this time)",
    ),
    _row(
        rf"(?:the {SIDE}|(?:the )?{SIDE} (?:one|side))(?= *(?:$|[.!?\n]| when| maybe| might| settled))",
        behind=rf"\b{PLACES}(?: .*{OPEN})?",
    ),
)
"""What hurts or is told of the body, and on which side."""
_TALK = (
    _row(
        r"(?:i|my|had|no|forgot|phone|late|couldn'?t|didn'?t|was|lost|fell)\b[^:.,;!?\d\n]*: ",
        behind=rf"^(?:(?:this|these|that) (?:is|was|are) |\w+ )?(?:from (?:the )?)?(?:{_DAYS}|weekend|last night)",
    ),
    _row(
        r"(?:done for (?:today|the day|tonight|now)|finished(?: for (?:today|tonight|the day))?|that'?s (?:me|it)"
        r"(?: (?:done|finished|for today|for the day))?)(?=[ .!]*(?:$|\n))",
        behind=rf"\b(?:no|skip\w*|leav\w+|left|bail\w*|out|everything|book) (?:.* )?{OPEN}(?<!nt)(?<!n't)",
    ),
    # `nordics no knees were sore`
    _row(
        r"(?:i (?:have|had|need|can'?t|must|got|was|couldn'?t)(?! \d)|need to|ran out|ha(?:ve|d) to|no time"
        rf"|(?:(?:my|the|{SIDE}) )*{PLACES} {DOES}|boss|skipped|bar taken|someone|somebody)\b",
        behind=r"\w (?:no|nope|none|no today|i don'?t do|i (?:did|do) not (?:make|do)|i (?:leave|skip)(?: out| it)?)",
    ),
    _row(
        r"(?:after(?:wards)?|lot of|not a minute|i (?:have|must|need)|before i|baby)\b(?! \d)",
        behind=r"\d+ ?min(?:ute)?s?(?: max| today)?|\bhour",
    ),
    _row(
        r"(?:(?:only |just )?got(?: only| just)?|only|i (?:only |just )?have(?: only| just)?) (?:about |like )?"
        r"\d+ ?min(?:ute)?s?\b",
        behind=OPEN,
    ),
    _row(
        r"(?:(?:do|should|shall|can|could) i|what next|what (?:do|should|shall|did|about|i do)"
        r"|how (?:much|many|far|long|heavy|do)|next (?:one|time|set) (?:at|back|more|up|down)\b"
        r"|(?:is|was) (?:it|that)|ok(?:ay)? (?:to|if)"
        r"|worth|want me|must|which (?:one|two|hole))\b[^.!\n]*\?",
        behind=rf"\d|\d ?s|\b(?:{UNIT}|reps?|times|each|that one|today|broken|friend)",
    ),
    _row(
        r"(?:(?:should|shall|can|could|do) i|ok if i|is it (?:bad|ok|fine|normal)|why (?:are|is)|what'?s the|want me"
        r"|is the|must the|what (?:next|should))\b[^.!\n]*\?",
        behind=OPEN,
    ),
)
"""Days, ends, reasons, time and questions."""
OPENINGS = (*_SETS, *_TOLD, *_HURT, *_TALK)
ANY_OPENING = re.compile(rf"(?<=\w )(?={'|'.join(row.opens.pattern for row in OPENINGS)})")
"""A place behind a bare word at which one of them opens."""
