"""A load of the plan, or a set kept before, of which is only spoken beside a changed one: `57.5x8, 60 felt grim`.

Why the load was changed is told in a clause of its own (`60 was too much`, `I was shaky at 60`, `the first ten cost
me`): its numbers and ordinals are of no new set.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.worded import ends_clause, opens_clause
from bot.notation.wordlist import words

_ADVERB = (
    r"(?:again|today|just|really|simply|definitely|honestly|already|now|still|twice|clearly|surely|probably|somehow)"
)
_JUDGED = re.compile(
    r"(?:(?:the|a|at|with|that|my|planned|full|old|heavy|first|usual|last|another|on|for|at the|with the|on the|and|"
    r"but) )*"
    r"# ?(?:kg|kgs|kilos?|lbs?|pounds?)?"
    rf"(?: {_ADVERB})*"
    r" (?:was|were|is|are|isnt|wasnt|felt|feels|feeling|looked|looks|seemed|seems|would|wouldnt|wont|will|didnt|did "
    r"not|doesnt|"
    r"does not|couldnt|cant|got|gets|beat|beats|wins|won|scared|scares|buried|crushed|hurt|killed|asked|refused|"
    r"stalled|"
    r"stayed|sounded|became|turned|had|has|made me|makes me|might|could|wouldve|to be|being)\b(?P<rest>[^#]*)"
)
_LED = re.compile(
    r"(?:(?:i|was|im|i was|felt|feeling|got|too|so|a bit|bit|very|still|and|but|pretty|really|just) )*"
    r"(?:wobbly|shaky|unsure|unstable|nervous|scared|tired|weak|sore|cooked|dead|afraid|wary|sick|knackered|flat|"
    r"hesitant|"
    r"sloppy|stuck|struggling|suffering|ugly|slow|grinding|no chance|no way|no hope|no go|bored|done|beaten|rough|"
    r"not ready|not up|not happy|not feeling|not sure|not brave enough|not confident|too weak|worn out|no legs|no "
    r"power|no energy|"
    r"(?:chickened|bottled|backed|wimped|bailed|talked myself|copped|opted|ducked) (?:out|it|off)|"
    r"(?:couldnt|couldn't|could not|cant|didnt|did not|wouldnt|dont|never|wasnt|was not)(?: \w+){0,4}?|"
    r"(?:not|no)(?: \w+){1,4}?|"
    r"(?:avoided|avoiding|skipped|respecting|feared|fearing|hated|dreaded|dreading|failing|missing))"
    r" ?(?:(?:at|with|of|for|about|on|to|by|under|the|a|that|up|out|out of|with the|of the|at the|for the|on the) )*"
    r"#(?: (?:kg|kgs|kilos?|lbs?|pounds?))?(?P<rest>[^#]*)"
)
_COST = re.compile(
    r"(?:(?:the|that|those|my|and|but|all) )+(?:(?:first|last|previous|opening|heavy|#|#th) )*(?:#|#th|ones?|set|"
    r"reps?|sets)"
    r"(?: (?:in|on|at|of|from|with|in the|on the|at the|from the|of the|the|set|one|first|reps?|before|#|#th|kg|"
    r"earlier|just now))*"
    r" (?:cost|killed|took|drained|finished|ruined|emptied|beat|broke|left|cooked|fried|gassed|smoked|did|used|ate|"
    r"wrecked|tired|"
    r"hurt|burned|burnt|exhausted|destroyed|floored|had|was|were|felt|really|already|nearly|almost|must have|still|"
    r"sapped|robbed|stole)"
    r"\b(?P<rest>[^#]*)"
)
_REASON = re.compile(
    r"(?:because|cause|cuz|cos|coz|since|as|after|following)(?: of)? (?=.*#)(?:(?!for|x|reps?|then|did|made|"
    r"plus)\S+ )*?"
    r"(?:was|were|felt|took|had|is|am|got|left|cost|cooked|tired|hurt|drained|gassed|killed|beat|wobbled|to me|me)\b"
    r"(?P<rest>[^#]*)"
)
_UNDER_PLAN = re.compile(
    r"(?:(?:thats|thats a|so|a|just|only|and|its|about) )*# ?(?:kg|kgs|kilos?|lbs?|pounds?)? ?"
    r"(?:under|below|less than|lower than|off|down on|lighter than|short of|shy of|beneath|above|over|more than)"
    r" (?:the |what the |your |my |what was |what you )*(?:plan|planned|prescribed|written|programme|program|sheet|"
    r"usual|target|"
    r"prescription|wrote|said|says)(?P<rest>[^#]*)"
)
_CUES = frozenset(words(
    "was were is are isnt wasnt felt feels feeling looked looks seemed seems would wouldnt wont will didnt did",
    "doesnt does couldnt cant got gets beat beats wins won scared scares buried crushed hurt killed asked refused",
    "stalled stayed sounded became turned had has made makes might could wouldve to being wobbly shaky unsure",
    "unstable nervous tired weak sore cooked dead afraid wary sick knackered flat hesitant sloppy stuck struggling",
    "suffering ugly slow grinding no bored done beaten rough not too worn chickened bottled backed wimped bailed",
    "talked copped opted ducked dont never avoided avoiding skipped respecting feared fearing hated dreaded",
    "dreading failing missing cost took drained finished ruined emptied broke left fried gassed smoked used ate",
    "wrecked burned burnt exhausted destroyed floored really already nearly almost must still sapped robbed stole",
    "because cause cuz cos coz since as after following under below less lower off down on lighter short of shy",
    "beneath above over more",
))  # fmt: skip
"""One word of each of the grammars above at least: where there is none, no clause is looked at."""
_GOOD = frozenset(words(
    "well up fine good easy ok okay smooth smoothly nice great better flew solid light reps rep failure rir rpe left"
))  # fmt: skip
"""Words with which the load was lifted, or that tell of a set."""
_LINKS = (Kind.X, Kind.FOR, Kind.WITH, Kind.AT)
_OF_SETS = (Kind.REPS, Kind.X, Kind.SAME, Kind.TANK, Kind.RPE, Kind.RIR, Kind.EMPTY, Kind.LABEL, Kind.MEANT,
            Kind.SORRY, Kind.SCRAP, Kind.SAMELOAD, Kind.NAME, Kind.WROTE, Kind.DROP, Kind.MINI)  # fmt: skip
_UNITS = (Kind.KG, Kind.LB)
_NEAREST, _FARTHEST = Decimal("0.6"), Decimal("1.6")
"""How far a changed load may lie from that of the plan: beyond it is asked about."""


def with_loads_spoken_of(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks without such clauses."""
    out = list(marks)
    if sum(max(1, len(m.parts)) for m in out if m.kind is Kind.NUM) <= 1 or any(m.kind is Kind.QUERY for m in out):
        return out
    if _CUES.isdisjoint(w for m in out for w in m.text.split()):
        return out
    known = [*(s.load for e in request.exercises for s in e.sets), *(d.load for d in request.done)]
    loads = {Decimal(load.thousandths) / 1000 for load in known if load is not None}
    reps = {Decimal(d.reps) for d in request.done}
    place = 0
    while place < len(out):
        opens = opens_clause(out, place) or kind_at(out, place - 1) in (Kind.SET, Kind.LASTSET, Kind.ORD)
        end = _spoken_of(out, place, loads, reps) if opens else None
        if end is not None:
            end += text_at(out, end) in ("so", "but", "and") and end + 1 < len(out)
            out[place:end] = [replace(m, kind=Kind.GAP, value=None, parts=(), names=()) for m in out[place:end]]
            place = end
        place += 1
    return out


def _spoken_of(marks: Sequence[Mark], start: int, loads: set[Decimal], reps: set[Decimal]) -> int | None:
    """Where a clause that starts here and only speaks of a load or a set before ends."""
    end = start + 1
    while end < len(marks) and (not ends_clause(marks, end) or text_at(marks, end).split()[:1] == ["with"]):
        end += 1
    found = _alone(marks, start, end, loads, reps)
    if found is not None or kind_at(marks, end) is not Kind.COMMA or _is_of_list(marks, start):
        return found
    further = end + 1
    while further < len(marks) and not ends_clause(marks, further):
        further += 1
    return _alone(marks, start, further, loads, reps) if further > end + 1 else None


def _is_of_list(marks: Sequence[Mark], start: int) -> bool:
    """Whether a number ends a list: the last of `12/10/12, felt heavy` is a set, whatever else weighs 12."""
    if kind_at(marks, start) is Kind.AT and kind_at(marks, start - 1) is Kind.NUM:
        return True  # `12 at 55 kg, 12 at 50 kg, felt heavy`
    number = start + (kind_at(marks, start) in (Kind.AND, Kind.COMMA))
    before = start - 1
    while kind_at(marks, before) in (Kind.COMMA, Kind.SLASH, Kind.AND):
        before -= 1
    return kind_at(marks, number) is Kind.NUM and kind_at(marks, before) in (Kind.NUM, Kind.REPS)


def _alone(marks: Sequence[Mark], start: int, end: int, loads: set[Decimal], reps: set[Decimal]) -> int | None:
    """The end of such a clause, where the marks between two places are one; a comma before its verb has no bearing."""
    part = [m for m in marks[start:end] if m.kind is not Kind.COMMA]
    if any(m.kind in _OF_SETS for m in part) or len(part) < 2:
        return None
    like = [i for i, m in enumerate(part) if m.kind is Kind.NUM and (text_at(part, i - 1).endswith("like") or
            kind_at(part, i + 1) is Kind.SETS)]  # fmt: skip
    numbers = [m for i, m in enumerate(part) if m.kind is Kind.NUM and i not in like]
    line = " ".join("#" if m.kind is Kind.NUM else "#th" if m.kind is Kind.ORD else m.text for m in part)
    line = line.replace("like #", "like").replace("# sets", "sets")
    spoken = _JUDGED.fullmatch(line) or _LED.fullmatch(line)
    if spoken is not None:
        said = set(spoken["rest"].split())
        good = said & _LIGHT or (said & _GOOD and not set(line.split()) & _NEVER)
        of_load = len(numbers) == 1 and numbers[0].value in loads
        return end if of_load and not good and _tells_another(marks, start, end, numbers[0].value) else None
    if _COST.fullmatch(line) or _REASON.fullmatch(line):
        of_before = all(m.value in loads | reps for m in numbers)
        return end if of_before and (numbers or reps) and _tells_set(marks, start, end) else None
    return end if _UNDER_PLAN.fullmatch(line) and _tells_set(marks, start, end) else None


_LIGHT = frozenset(words("light easy lighter easier joke"))
_NEVER = frozenset(words("not too wouldnt wasnt didnt couldnt never cant isnt no wont"))


def _tells_set(marks: Sequence[Mark], start: int, end: int) -> bool:
    """Whether a load and repetitions are told apart from a clause."""
    return sum(max(1, len(m.parts)) for i, m in enumerate(marks) if m.kind is Kind.NUM and not start <= i < end) > 1


def _tells_another(marks: Sequence[Mark], start: int, end: int, load: Decimal | None) -> bool:
    """Whether the message tells a set of another load near this one, which ends before or starts behind the clause."""
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and not start <= i < end]
    near = [i for i in numbers if load and marks[i].value != load and _is_near(marks[i].value, load)]
    if not near or len(numbers) <= 1:
        return False
    before = [i for i in numbers if i < start]
    behind = [i for i in numbers if i >= end]
    whole = len(before) > 1
    bare = bool(behind) and behind[0] not in near and kind_at(marks, behind[0] + 1) not in (*_LINKS, *_UNITS, Kind.NUM)
    return not (whole and bare)


def _is_near(value: Decimal | None, load: Decimal) -> bool:
    return value is not None and _NEAREST * load <= value <= _FARTHEST * load
