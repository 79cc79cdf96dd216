"""A load that is only looked at, feared, loaded or hoped for: `150 looks so heavy from here`, `staring at 140`.

Nothing was lifted yet, so its number is of no set. Only where the message tells no other number, but for the
repetitions that the set is to have, and no word of a lift. Common wordings; no source.
"""

import re
from collections.abc import Sequence

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.masking import masked
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LOAD = r"#(?: (?:kg|kgs|kilos?|lbs?|pounds?|s))?"
_STILL = (
    r"(?:(?:still|just|already|now|really|absolutely|literally|honestly|always|actually|so|a bit|kinda|"
    r"kind of|lowkey|"
    r"highkey|proper|straight up|today|again|thing|bar|one) )*"
)
_FEAR = (
    r"(?:scares|scaring|terrif(?:ies|ying)|frighten(?:s|ing)|intimidat(?:es|ing)|daunt(?:s|ing)|haunt(?:s|ing)|"
    r"mock(?:s|ing)|taunt(?:s|ing)|spooks|worries|stress(?:es|ing) me)"
)
_SEEN = re.compile(
    rf"(?:^| ){_LOAD} {_STILL}(?:(?:is|are) )?{_STILL}"
    rf"(?:(?:scary|terrifying|frightening|intimidating|daunting)(?=$| [,.]| ngl| tbh| lol| tho)|"
    rf"looks?|looking|keeps? (?:looking|staring)|star(?:es|ing)|glar(?:es|ing)|{_FEAR}|"
    r"(?:a )?(?:scary|terrifying|frightening|daunting|horrifying|intimidating) (?:number|load|weight|bar|thought)|"
    r"giv(?:es|ing) me (?:the |an? )?(?:fear|ick|creeps|chills|nightmares|butterflies|anxiety)|"
    r"loaded and|(?:sat|sitting|stood|standing) (?:there|here)|waiting for me|calling (?:me|my name)|"
    r"(?:has|have|had) been living|lives)\b"
)
"""The load as what is seen, or as what frightens."""
_EYED = re.compile(
    r"\b(?:(?:star|glar|gaz|look)(?:ing|ed) (?:down |up )?(?:at |down )?|(?:scared|afraid|terrified|frightened|wary|"
    r"fear(?:ing)?|dread(?:ing)?|nervous|anxious|worried) (?:of |about |for )?|"
    r"(?:psych\w*|hyp\w*|gear\w*|chalk\w*|belt\w*|strap\w*|wrap\w*|fir\w*) (?:myself |me )?(?:all )?(?:up )?"
    r"(?:for|to|about) |(?:work\w*|build\w*) up (?:the )?(?:courage|nerve|guts) (?:for|to) )"
    rf"(?:(?:the|that|a|this|my|me|bar|with|of|full|big|scary) )*(?:# (?:reps? )?(?:at|for|x|of|"
    rf"on) (?:the )?)?{_LOAD}"
)
"""The load behind a word of looking, fearing or making ready."""
_STANDS = re.compile(
    rf"\b(?:left|leaves|leaving|loaded|loading|set|put|racked)(?: (?:me|up|exactly|just|the|my|a|to|at|on|"
    rf"with|bar|it))*"
    rf" {_LOAD}(?= |$)|(?:^| ){_LOAD} (?:(?:is|are|now|just|all|already) )*(?:on|loaded)"
    r"(?: (?:the |my )?(?:bar|barbell|rack|racks|pins|machine|sled|stack|floor))?(?= (?:and|but|now|,|\.)|$)"
)
"""The load as what stands on the bar."""
_WAITS = re.compile(
    r"\b(?:star(?:ing|ed)|stood|standing|sat|sitting|waiting|pray|prayers|gulp|wish me|luck|knocking|"
    r"shaking|hype|psych"
    r"\w*|scared|terrified|nervous|gent|legend|hero|saint|angel|kind soul|how kind|someone|somebody|whoever|who left|"
    r"need a (?:minute|min|sec|moment)|here (?:we|goes)|lets go|about to|ready when|deep breaths?|send help|"
    r"courage)\b"
)
"""Words of who waits before a loaded bar, or who loaded it."""
_TO_COME = re.compile(rf"(?:^| )(?:# (?:reps? )?(?:at|x|of) {_LOAD}|{_LOAD} (?:for|x) #)(?: (?:is|are))?"
                      r" (?:up next|next up|coming up|is next|to come|awaits?|incoming)(?= ,| \.|$)")  # fmt: skip
_FORETOLD = re.compile(
    r"\b(?:gonna|going to|will|ill|well|be|im|hitting|by|before|come)\b.* # ?.*\bcalling it (?:now|early|"
    r"right now|here first)\b"
    r"|\bcalling it (?:now|early|right now)\b.* (?:gonna|going to|will|ill|by)\b.* #"
)
"""What is foretold: `gonna be thrusting 150 by xmas calling it now`, which ends nothing."""
_TAKEN = re.compile(
    r"\b(?:bloke|guy|lad|dude|man|woman|girl|lady|kid|someone|somebody|some|they|he|she|pt|trainer|"
    r"staff)(?: \w+){0,4}? "
    r"(?:took|takes|taken|nicked|stole|grabbed|borrowed|swiped|pinched|using|has|needs|wanted)(?: (?!so |"
    r"but |then |and |at |now )\w+){0,4}? "
    rf"{_LOAD}"
)
"""The kit that somebody took away, or has."""
NEEDS = frozenset(words(
    "took takes taken nicked stole grabbed borrowed swiped pinched using has needs wanted "
    "look looks looking keeps keep stares stare staring stared glares glaring scares scaring terrifies "
    "terrifying scary "
    "frightens frightening intimidates intimidating daunts daunting haunts haunting mocks mocking taunts "
    "taunting spooks "
    "worries stresses stressing gives giving loaded loading left leaves leaving sat sitting stood standing waiting "
    "calling living lives gazing gazed scared afraid terrified frightened wary fear fearing dread dreading nervous "
    "anxious worried psyching psyched psyched hyping hyped gearing geared chalking chalked belting belted strapping "
    "strapped wrapping wrapped firing fired courage nerve guts on next coming incoming awaits come"
))  # fmt: skip
_LIFTED = re.compile(
    r"\b(?:got|did|hit|made|moved|flew|done|lifted|pulled|pressed|squatted|benched|pushed|managed|went|came|finished|"
    r"completed|felt|feels|feel|easy|light|smooth|smoothly|fine|good|nailed|smashed|crushed|repped|failed|"
    r"missed|fail|"
    r"miss|reps?|sets?|same|again|all of|in the bag|ticked|survived|beat|won|conquered|buried|pinned|stuck|dropped|"
    r"bailed|lost|than it|than i|lighter|kept|keeping|stayed|staying|used|using|tried|only|instead|"
    r"swapped|stopped|stopping|worked|ok|okay|grind|ground|grinder)\b"
)
_OF_SETS = frozenset((Kind.SET, Kind.SETS, Kind.SAME, Kind.DONE, Kind.RPE, Kind.RIR, Kind.TANK, Kind.FAILED,
                      Kind.EMPTY, Kind.QUERY, Kind.CLOCK, Kind.SORRY, Kind.MEANT, Kind.SCRAP, Kind.DROP, Kind.MINI,
                      Kind.WARMUP, Kind.SKIP, Kind.SKIPPED, Kind.BAD))  # fmt: skip
_STARING = "staring me"
"""Of `150 staring me down`: no exercise that is given up."""
_MOST = 2
"""Numbers of a set that is to come: its load and its repetitions."""


def without_loads_awaited(marks: Sequence[Mark]) -> Sequence[Mark]:
    """The marks with such a load, its repetitions and what is foretold of it without bearing."""
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and kind_at(marks, i + 1) is not Kind.MINUTES]
    if not 0 < len(numbers) <= _MOST:
        return marks
    if any(m.parts for m in marks if m.kind is Kind.NUM) or any(
        m.kind in _OF_SETS and m.text != _STARING for m in marks
    ):
        return marks
    line = " ".join("#" if m.kind is Kind.NUM else m.text for m in marks).replace("mid set", "")
    if _LIFTED.search(line):
        return marks
    numbers += [i for i, m in enumerate(marks) if m.text == _STARING]
    if _FORETOLD.search(line):
        return masked(marks, [i for i, m in enumerate(marks) if m.kind in (Kind.NUM, Kind.FINISH)])
    bars = [i for i, m in enumerate(marks) if m.kind is Kind.PLATES]
    count = sum(marks[i].kind is Kind.NUM for i in numbers)
    return masked(marks, [*numbers, *bars]) if _is_awaited(line, count) else marks


def _is_awaited(line: str, count: int) -> bool:
    if count == _MOST:
        return bool(_TO_COME.search(line) or _EYED.search(line))
    return bool(
        _SEEN.search(line)
        or _EYED.search(line)
        or _TAKEN.search(line)
        or (_STANDS.search(line) and _WAITS.search(line))
    )
