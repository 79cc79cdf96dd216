"""Kit that is only spoken of, and weights that the client is likened to: `only the 10s are on the rack`, `pin is stuck
at 80`, `the 20 kilo bar weighs more than my car`, `arms like two 40 kilo sacks`.

Where repetitions are told that have no load of their own, the kit may be what they were done with: then it stays.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bot.notation.clauses import EDGES, FARTHEST, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.talk.times import is_hour
from bot.notation.tokens import Mark

_ENDS = EDGES | {Kind.COLON, Kind.THEN}
_TURNS = ("so", "but", "anyway", "lol", "though")
_JOINS = ("and", "because", "cos", "when", "while", "as")
_UNITS = (Kind.KG, Kind.LB, Kind.S, Kind.HAND)
_OF_SET = (Kind.X, Kind.REPS, Kind.RPE, Kind.RIR, Kind.SETS, Kind.PLUS, Kind.TIMES)
_UNIT = r"(?:kgs?|kilos?|kilograms?|lbs?|pounds?)"
_LOADS = (
    rf"#(?: (?:s|{_UNIT})\b| (?=(?:bar|bell|vest|dumbbell|kettlebell)s?\b))"
    rf"(?:(?:,| and| or| &)+(?: the)? #(?: (?:s|{_UNIT}))?)*"
)
_THING = r"(?: (?:bar|bells?|dumbbells?|kettlebells?|plates?|discs?|bumpers?|vest|pair|ones?))?"
_HERE = (
    r"(?:(?:on|in|at) (?:the |a )?(?:rack|stand|gym|floor|shelf|tree)|left|free|available|here|around|about|to be had|"
    r"out|there)"
)
_GONE = r"(?:gone|taken|missing|busy|in use|being used|nowhere|broken|hogged|all gone)"
_RACK = re.compile(
    rf"(?:.* )?(?:only|just|nothing but|all|theres|there is|there are|there's) "
    rf"(?:(?:a|the|a pair of|one|some|is|are|that is|thats|thats left|left|free|on the rack|on|have|has|got) )*"
    rf"{_LOADS}{_THING}"
    rf"(?: (?:is|are))?(?: just)? {_HERE}\b.*"
    rf"|(?:.* )?all (?:that is|thats|that's|that) "
    rf"(?:is )?(?:left|free|here|available|on)(?: on)?(?: the rack)?(?: here)? "
    rf"(?:is|are) (?:a |the )?(?:{_LOADS}|#){_THING}\b.*"
    rf"|(?:all )?(?:the )?{_LOADS}{_THING} (?:is|are) (?:all |both |still |the only ones )*(?:{_HERE}|{_GONE})\b.*"
    rf"|(?:the |this |my |our )?(?:rack|gym|place|stand) "
    rf"(?:here )?(?:only |just )*(?:has|have|got|holds)(?: only| just)+ "
    rf"(?:the )?{_LOADS}.*"
    rf"|(?:theres|there is|there are|there's) (?:only |just |a |the )+(?:{_LOADS}|# (?=bar|bell)){_THING}(?: .*)?"
    r"|(?:(?:im|am|still|just|now|so) )*(?:looking|searching|hunting|queueing|queuing|queue|in line|waiting|wait)"
    r" (?:for|on)"
    r"(?: the| a| that| another| my| other| second)* #.*"
    rf"|no {_LOADS}(?: (?:here|left|free|around|today|anywhere|on the rack))?"
)
_STUCK = r"(?:stuck|jammed|bent|trapped|wedged|frozen|seized|broken|broke|snapped|slipping|slips|slipped|jams|sticks)"
_KIT = (
    r"(?:the |this |my |our )?(?:weight )?(?:pin|stack|cable|selector|key|lever|peg|carriage|pulley|knob|machine|"
    r"(?:§ )?machine|§)(?: machine| stack| pin| cable)?"
)
_PIN = re.compile(
    rf"(?:.* )?{_KIT} (?:(?:is|was|got|gets|has|just|keeps|kept|always|all|totally|really|completely) )*{_STUCK}"
    r"(?: (?:out|in|up|down|off|here|again))*"
    r"(?: (?:at|on|in|of|with|the|a|pin|stack|hole|notch|for|under))* #.*"
    r"|(?:.* )?pin (?:wont|won't|doesnt|doesn't|cant|can't|will not) (?:come|move|budge|go|get|pull|be)(?: \w+)* #.*"
)
_BAR = r"(?:bar|barbell|olympic bar|bar alone|bar itself|bar on its own)"
_LIKE = r"(?:like|than|as heavy as|as much as|as if|as though)"
_IS = r"(?:is|feels|feels like|feel|weighs|seems|looks|moves|s|has|already|even)"
_HEAVY_BAR = re.compile(
    rf"(?:even |just )?(?:the |a |my |this |that )?(?:empty |plain |bare |naked |lonely )?#(?: {_UNIT})? {_BAR} "
    rf"(?:alone |today |here |already |even |just |itself )*{_IS}\b.*"
    rf"|(?:even |just )?(?:the |a |my )?(?:empty |plain |bare )?{_BAR} (?:of |with |at )?(?:only |just |the )*# {_UNIT}"
    rf"(?: alone| today)? {_IS}\b.*"
)
_LIKENED = re.compile(rf"\b(?:{_LIKE}|killing|impossible)\b|feels like|heav|enough")
_BODY = (
    r"(?:i|body|arms|legs|feet|hands|head|shoulders|eyes|eyelids|quads|calves|hamstrings|glutes|forearms|belly|stomach|"
    r"me|thighs|everything|brain)"
)
_SELF = re.compile(
    rf"{_BODY}(?: (?:both|all|each|still|just|really|currently|honestly|already|today|now))*"
    r" (?:(?:feel|feels|feeling|felt|weigh|weighs|weighing|am|are|is|like|about|around|roughly|as|heavy|more|maybe|a|"
    r"an|i|two|some|three|at least|easily|probably|the|of|same) )*"
    rf"(?:# )?#(?: {_UNIT})(?: (?!for|x|reps?|then|today for)[^#]*)?"
)
_TELLS_SELF = re.compile(r"\b(?:feel|feels|feeling|felt|like|weigh|weighs|weighing)\b")
_CARRIED = re.compile(
    r"(?:my |the |this |a )?(?:\w+ )?(?:bag|backpack|rucksack|suitcase|dog|cat|kid|baby|toddler|daughter|son|shopping|"
    rf"breakfast|lunch|dinner|laptop|handbag|car) (?:only |already |now |just )*"
    rf"(?:is|weighs|was|weighed|s) (?:\w+ )?# ?{_UNIT}.*"
)
_TURN_TO = re.compile(r"\b(?:used|did|took|take|grabbed|had to|went|using|i had|doing|lifted|pushed|i got)\b")


@dataclass(frozen=True, slots=True)
class _Talk:
    """One kind of such talk: a grammar of a whole clause, what its words must have too, and one word that it needs."""

    grammar: re.Pattern[str]
    also: re.Pattern[str]
    needs: re.Pattern[str]


_ALL = re.compile("")
_TALKS = (
    _Talk(
        _RACK,
        _ALL,
        re.compile(
            r"left|free|available|here|around|about|rack|out|stand|for|no|floor|wait|queu|look|search|are|is|only|just"
        ),
    ),
    _Talk(_PIN, _ALL, re.compile(rf"{_STUCK}|pin")),
    _Talk(_HEAVY_BAR, _LIKENED, re.compile("bar")),
    _Talk(_CARRIED, _ALL, re.compile(_UNIT)),
)


def kit_talk(marks: Sequence[Mark]) -> set[int]:
    """The places of such clauses."""
    found = [(_told_from(marks, start, end), end) for start, end in _clauses(marks)]
    found = [*((start, end) for start, end in found if start < end), *_of_others(marks)]
    talked = {place for start, end in found for place in range(start, end)}
    return {place for start, end in found if not _is_lifted(marks, start, end, talked) for place in range(start, end)}


def _of_others(marks: Sequence[Mark]) -> Iterator[tuple[int, int]]:
    """`left his 6 plates on the bar`, `kept their 4 plates on`: what others loaded, where the load is told itself."""
    for place, mark in enumerate(marks):
        if (
            mark.kind is Kind.NUM
            and kind_at(marks, place + 1) is Kind.PLATES
            and _WHOSE.search(text_at(marks, place - 1))
        ):
            yield place - 1 - (kind_at(marks, place - 2) in (Kind.LEFT, Kind.FILL, Kind.WORD)), place + 2


_WHOSE = re.compile(r"\b(?:his|her|their|theirs|somebodys|someones|guys|blokes|lads|mates)$")


def _told_from(marks: Sequence[Mark], start: int, end: int) -> int:
    """Where in a clause such talk starts; the end where it is none."""
    part = marks[start:end]
    if not any(m.kind is Kind.NUM for m in part):
        return end
    begins = [start, *(i + 1 for i in range(start, end) if marks[i].text in _JOINS)]
    for at in begins if not any(m.kind in _OF_SET for m in part) else ():
        line = _line(marks[at:end])
        told = any(t.needs.search(line) and t.grammar.fullmatch(line) and t.also.search(line) for t in _TALKS)
        if told and not _TURN_TO.search(line):
            return at
    return _likened_from(marks, start, end)


def _clauses(marks: Sequence[Mark]) -> Iterator[tuple[int, int]]:
    """Where each clause starts and ends; a comma between two loads of a list does not part them."""
    start = 0
    for place in range(min(len(marks), FARTHEST) + 1):
        if place >= len(marks) or place == FARTHEST or marks[place].kind in _ENDS or _turns(marks, place):
            if start < place:
                yield start, place
            start = place + 1


def _turns(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word begins what follows from a clause, or is told against it; not that of `nothing but 8s`."""
    return marks[place].text in _TURNS and text_at(marks, place - 1) != "nothing"


def _line(part: Sequence[Mark]) -> str:
    """The words, a number in them as `#` and an exercise as `§`."""
    return " ".join("#" if m.kind is Kind.NUM else "§" if m.kind is Kind.NAME else m.text for m in part)


def _likened_from(marks: Sequence[Mark], start: int, end: int) -> int:
    """Where in a clause the client likens a part of the body, or all of it, to a weight; the end where nowhere."""
    for at in range(start, end):
        if not _BODY_AT.match(marks[at].text):
            continue
        line = _line(marks[at:end])
        if _SELF.fullmatch(line) and _TELLS_SELF.search(line):
            led = at
            while led > start and marks[led - 1].text in ("my", "both", "the", "whole", "both my", "all"):
                led -= 1
            return led
    return end


_BODY_AT = re.compile(rf"{_BODY}\b")


def _is_lifted(marks: Sequence[Mark], start: int, end: int, talked: set[int]) -> bool:
    """Whether repetitions are told outside of a clause, and of other such talk, that have no load of their own."""
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and i not in talked and not is_hour(marks, i)]
    behind = next((i for i in numbers if i >= end), None)
    before = [i for i in numbers if i < start]
    return (behind is not None and not _is_load(marks, behind)) or (
        bool(before) and not any(_is_load(marks, i) for i in before)
    )


def _is_load(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number is a load with its repetitions."""
    after = place + 1
    while kind_at(marks, after) in _UNITS:
        after += 1
    joined = kind_at(marks, after) in (Kind.X, Kind.FOR, Kind.COLON, Kind.NUM)
    return joined or kind_at(marks, place - 1) in (Kind.X, Kind.AT)
