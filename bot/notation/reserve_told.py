"""What was left in reserve, told in a clause of its own: `none to spare`, `kept a pair back`, `tank: 2`.

Each such clause becomes `to failure` or `2 left`. The grammar is of common wordings, with those of a second language;
no source.
"""

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED, EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import told_last
from bot.notation.reserve_now import CAN
from bot.notation.tokens import Mark
from bot.notation.worded import Clause, clause_in, line_at, opens_clause, sentence_of
from bot.notation.wordlist import words

_SURE = r"(?:absolutely|literally|precisely|exactly|really|basically|pretty much|simply|just|totally|completely|fully)"
_LEAD = (
    r"(?:(?:i|we|and|but|so|with|with a|was|were|is|are|had|have|has|id|ive|there|theres|it|its|im|me|am|felt|then|"
    r"honestly|"
    r"having|by then|at the end|afterwards|after that|that was|maybe|probably|still|only|about|at least|exactly) )*"
)
_REP = r"(?:reps?|ones?|of them|(?:good|clean|solid|proper|full|more|decent|quality) reps?)"
_NONE = (
    rf"(?:{_SURE} )*(?:none|nothing|nowt|nil|zero|nada|zilch|naught|no more|no(?: more)? {_REP}(?: more)?|zero {_REP}|"
    rf"not (?:a|one|another|any|#)(?: single| solitary)?(?: more| further)?(?: {_REP})?(?: more)?|nothing more|"
    r"no further reps?)"
)
_STILL = r"(?:(?:more|still|left|remaining|extra|over|was|were|stayed|that was|that were|available) )*"
_WHERE = (
    r"(?:left over|left|leftover|remaining|unused|over|spare|possible|available|available to me|"
    r"to (?:spare|give|come|be had|draw on|offer)|back|inside|up (?:my|the) sleeve|on the table|"
    r"in (?:the )?(?:tank|reserves?|hand|bank|locker|bag|store|stock|pocket)|"
    r"for later|for the next (?:one|set)|for the last (?:one|set)|"
    r"in (?:me|there|it|store|my (?:arms|legs|pocket|body|back pocket)|these arms|these legs))"
)
_MORE_OF_IT = (
    r"(?: (?:in me|for me|in there|in it|in the tank|in my tank|at all|anymore|whatsoever|today|now|after that|to "
    r"spare|"
    r"to give|on the table|this time|again|too|i think|i reckon|i guess|id say|like before|like last time|tbh))*"
)
_LEFT = (
    r"(?:the |my )?(?:reps? )?(?:left over|left|remaining(?: reps)?|spare(?: reps)?|in the tank|in my tank|in "
    r"reserve|in the reserve|in me|tank|"
    r"reserves?|rir|to spare|reps still there)(?: (?:in me|in the tank|in reserve|over|for me))?"
    r"(?: (?:was|were|is|are|at|stands at))?(?: [:-])? "
)
_TANK = (
    r"(?:(?:i|the|my|a|and|with) )*(?:tank|reserves?|locker)"
    rf"(?: (?:was|is|were|are|now|then|ran|run|felt|came up|went|all|well and truly|bone|clean|{_SURE}))*"
    r" (?:empty|emptied|dry|drained|exhausted|used up|on empty|gone)"
)
_OUT_OF_REPS = rf"{_LEAD}(?:{_SURE} )*(?:(?:was|ran|run) )?(?:{_SURE} )*(?:clean |all )?out of reps"
_NOT_THERE = (
    r"(?:possible|going to happen|gonna happen|happening|on|there|coming|in me|in there|doable|in the cards|on the "
    r"cards|"
    r"an option|achievable|feasible|to be had|realistic|within reach|going up|going to go|gonna go)"
)
_NO_FURTHER = (
    rf"{_LEAD}(?:another|a further|one more|any more|any|anything more|more|# more|the #th|a #th|the next|an extra)"
    r"(?: (?:rep|one|of them))?(?: more)? "
    rf"(?:(?:was|were|is|would have been|wouldve been|would be) (?:{_SURE} )*(?:not|never|not even) (?:{_SURE} )*"
    rf"{_NOT_THERE}|(?:wasnt|werent|isnt|wouldnt have been|wouldnt be) (?:{_SURE} )*(?:even )?{_NOT_THERE}|"
    rf"(?:was|is|would have been|wouldve been) (?:{_SURE} )*(?:impossible|out of the question|beyond me|out of reach|"
    r"not possible)|(?:would|could) (?:not|never) have (?:gone|moved|happened|come|gone up|gone anywhere|budged)|"
    r"wouldnt have (?:gone|moved|happened|come|gone up|gone anywhere|budged))"
)
_NO_WAY = (
    r"(?:and |but |i |there was |there is )*(?:(?:no|not a) (?:way|chance|hope)|no possibility|not possible|impossible)"
    r" (?:of|for|to|i (?:had|could do|could get|was getting|would get)|id (?:do|get|have got))"
    r"(?: (?:do|make|get|doing|getting|making))?"
    r" (?:another|one more|a further|a #th|the #th|any more|even one more|# more)(?: (?:rep|one))?(?: more)?"
)
_EMPTY_SET = (
    r"(?:(?:a|the|that was|it was|this was|as|proper|true|full|total|complete|real) )*(?:failure set|set to failure)"
)
_NOT_COME = (
    rf"{_LEAD}(?:{_NONE}|not another|not one) (?:would|could|was going to|wanted to|was gonna) "
    r"(?:come|go|go up|move|happen|budge|have gone|have come)"
)
_COULD_NOT = (
    r"(?:(?:i|and|but) )*(?:couldnt|could not|could never|wouldnt|would not|would never|didnt|did not|never|cant)"
    r"(?: (?:even|possibly))?(?: have)?(?: (?:had|have|do|done|get|got|make|made|manage|managed|press|pressed|push|"
    r"pushed|"
    r"hit|hold|find|found|lift|lifted|add|added|squeeze|squeezed|grind|ground))?(?: out)?"
    r" (?:(?:another|one more|a further|a single more|an extra)(?: (?:rep|one))?|(?:a|the) #th(?: (?:rep|one))?)"
    rf"{_MORE_OF_IT}"
)
_NEXT_FAILS = (
    r"(?:(?:and|but|the|a|my|i think|i reckon|pretty sure|im sure) )*(?:next (?:one|rep)|#th(?: (?:one|rep))?|"
    r"another(?: one| rep)?|"
    r"one more(?: rep)?) (?:would|wouldve|would have|might have|was going to)(?: (?:definitely|surely|probably|"
    r"certainly))?"
    r"(?: (?:have|of))? (?:failed|fail|been a fail|been a miss|been failure|stuck|got stuck|pinned me|buried me|"
    r"crushed me|"
    r"stapled me|not gone|not gone up|not moved)"
)
_ALL = (
    r"(?:(?:and|which|really) )*(?:(?:that|it|those|this|thats) (?:was|were|is )?)?(?: ?(?:all|everything)) (?:that "
    r")?(?:i|we) "
    r"(?:had|have)(?: (?:in me|in the tank|left|to give|to offer|in there|today|for today))+"
)
_AWAY = (
    rf"{_LEAD}(?:failure|failing|the limit|my limit|the wall|my max) (?:was|is|would have been|felt|seemed|still|"
    rf"about|only|"
    r"maybe|around| )* ?# (?:reps? )?(?:away|off|out|further|later|down the road)"
    r"(?: (?:on|with|for|in) (?:that|this|the last|that last)(?: one| set)?)?"
)
_KEPT = r"(?:left|leaving|kept|keeping|held|holding|saved|saving|had|have|having|with|reserved|banked|spared)"
_COUPLE = r"(?:(?:a |another )?(?:pair|couple)(?: of)?)"
_COUNT = rf"(?:(?:another|the|a|my|about|maybe|around) )*(?:#|{_COUPLE})"
_IN_HAND = (
    rf"{_LEAD}(?:{_KEPT} )?{_LEAD}{_COUNT}(?: more)?(?: {_REP})?(?: more)? {_STILL}(?:{_WHERE}|more){_MORE_OF_IT}"
)
_SAVED = rf"{_LEAD}(?:saved|banked|reserved|spared|saving|sparing) {_COUNT}(?: {_REP})?(?: more)?"
_STAYED = (
    rf"{_LEAD}(?:remain|remains|remained|remaining|rest|rests|rested|stay|stays|stayed|still left|left over)"
    rf"(?: (?:me|for me|to me|still|only|about|maybe))* {_COUNT}(?: {_REP}| repetitions?)(?: more)?"
)
_GOOD_FOR = rf"{_LEAD}(?:good|fit|game) for (?:another {_COUNT}|{_COUNT} more)(?: {_REP})?(?: more)?{_MORE_OF_IT}"
_COULD = (
    rf"{_LEAD}(?:(?:could|would|might) (?:{_SURE} |easily |still |well )*(?:have|of|ve)|couldve|coulda|wouldve|mightve|"
    r"would have|could have|might have)"
    r"(?: (?:still|easily|maybe|probably|also|even))?(?: (?:done|made|got|gotten|managed|had|added|squeezed|pushed|"
    r"ground|"
    r"given|hit|taken|pressed|repped|banged|performed|completed))"
    rf"(?: (?:out|in|you))? {_COUNT}(?: {_REP})? (?:more|further|extra|additional|again)(?: {_REP})?{_MORE_OF_IT}"
)
_LIMIT = (
    rf"{_LEAD}(?:think |reckon |guess |a |the )*(?:#|#th)(?: reps?)? (?:would have been|wouldve been|would be|"
    r"might have been|mightve been|could have been|couldve been|was)(?: (?:probably|about|really|just|surely|maybe))*"
    r" (?:my|the|a|full)?(?: (?:absolute|real|true|likely|hard|very))? ?"
    r"(?:limit|max|maximum|ceiling|cap|failure|end|most|end of the road)(?: (?:i had|for me|today|of me|i think|"
    r"there))*"
)
_COULD_REACH = (
    rf"{_LEAD}(?:(?:could|would|might) (?:{_SURE} |easily |still |well |maybe |probably )*(?:have|of|ve)|couldve|"
    rf"coulda|"
    r"wouldve|mightve|would have|could have|might have|could|might|was on for|was heading for)(?: (?:easily|maybe|"
    r"probably))?"
    r"(?: (?:done|made|got|gotten|managed|had|reached|squeezed|pushed|pushed to|ground|hit|taken|gone to|gone for|"
    r"repped|"
    r"stretched to))?(?: out)? (?:for |to |a |an |the )*(?:#|#th)(?: reps?)?(?: (?:i think|i reckon|at a push|if "
    r"pushed|maybe|probably|"
    r"at most|at the very most|on a good day|easily|no problem|too))*"
)
_SCALE = (
    rf"{_LEAD}(?:(?:call|say|rate|give) (?:it|that) )?(?:an? )?# on the (?:rpe|effort|exertion|borg) ?(?:rpe )?scale"
)
_NOUGHT = rf"{_LEFT}(?:{_NONE}|nothing left)"
_NUMBER = rf"{_LEFT}(?:maybe |about |around |still )?#(?: reps?)?"


@dataclass(frozen=True, slots=True)
class _Telling:
    """A grammar of clauses, and how many were left by one of them."""

    grammar: re.Pattern[str]
    left: Callable[[Sequence[Mark], Clause], Decimal | None]


def _none(_marks: Sequence[Mark], _clause: Clause) -> Decimal | None:
    return Decimal(0)


def _none_next(marks: Sequence[Mark], clause: Clause) -> Decimal | None:
    """None where the repetition that was not possible, if its number is told, is the next one."""
    done = told_last(marks[: clause.start])
    numbers = [marks[i].value for i in clause.numbers if marks[i].kind is Kind.ORD]
    return Decimal(0) if all(done is not None and n == done + 1 for n in numbers) else None


def _counted(marks: Sequence[Mark], clause: Clause) -> Decimal | None:
    """The number told, or the two of a pair."""
    if len(clause.numbers) > 1:
        return None
    value = marks[clause.numbers[0]].value if clause.numbers else Decimal(2)
    return value if value is not None and value <= MOST_LEFT else None


def _counted_or_one(marks: Sequence[Mark], clause: Clause) -> Decimal | None:
    """The number told, or the one of `one more`."""
    return _counted(marks, clause) if clause.numbers else Decimal(1)


def _up_to(marks: Sequence[Mark], clause: Clause) -> Decimal | None:
    """`eleven would have been the limit`: how many more than were done."""
    most = marks[clause.numbers[0]].value
    told = (m.value for m in reversed(marks[: clause.start]) if m.kind is Kind.NUM and m.value is not None)
    if most is not None and most != int(most):
        return None  # a load: `62.5 would have been the limit`
    return next(
        (most - n for n in told if most is not None and n >= EARLIEST_FAILED and 0 < most - n <= MOST_LEFT), None
    )


def _on_scale(marks: Sequence[Mark], clause: Clause) -> Decimal | None:
    value = marks[clause.numbers[0]].value
    return HARDEST - value if value is not None and EASIEST <= value <= HARDEST else None


_TELLINGS = tuple(
    _Telling(re.compile(rf"(?:{said})(?= |$)"), left)
    for said, left in (
        (rf"{_LEAD}{_NONE} {_STILL}{_WHERE}{_MORE_OF_IT}", _none),
        (rf"{_LEAD}not (?:a|one|#)(?: single| solitary)? (?:(?:rep|one) )?more(?: rep| one)?{_MORE_OF_IT}", _none),
        (_NOUGHT, _none),
        (_TANK, _none),
        (_OUT_OF_REPS, _none),
        (_NO_FURTHER, _none_next),
        (_NO_WAY, _none_next),
        (_EMPTY_SET, _none),
        (_NOT_COME, _none),
        (_COULD_NOT, _none_next),
        (_NEXT_FAILS, _none_next),
        (_ALL, _none),
        (rf"{_LEAD}(?:(?:my|the|right|at|absolute|very|to|physical|and) )+limit", _none),
        (_AWAY, _counted),
        (_SCALE, _on_scale),
        (_NUMBER, _counted),
        (_LIMIT, _up_to),
        (_IN_HAND, _counted),
        (_SAVED, _counted),
        (_GOOD_FOR, _counted),
        (_STAYED, _counted),
        (_COULD, _counted),
        (CAN, _counted_or_one),
        (_COULD_REACH, _up_to),
    )
)
NEEDS = frozenset(words(
    "none nothing nowt nil zero nada zilch naught no not never left leaving remaining spare tank reserves rir back",
    "table pocket more out empty failure limit max maximum scale good could couldve would might wouldnt wasnt",
    "another impossible all everything saved banked reserved spared couldnt didnt cant away off next hand bank",
    "locker bag store inside me there reserve can able possible",
))  # fmt: skip


def with_reserve_told(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such clauses as `to failure` and `2 left`, where the message tells a set."""
    out = list(marks)
    numbers = sum(m.kind is Kind.NUM and m.value != 0 for m in out)
    if numbers == 0:
        return out
    sided = any(m.kind is Kind.RIGHT for m in out)
    place = 0
    while place < len(out):
        told = None if sided or not opens_clause(out, place) else _told_at(out, place)
        if told is None:
            place += 1
            continue
        clause, left = told
        if text_at(out, clause.end) in _BEHIND:
            out[clause.end] = replace(out[clause.end], kind=Kind.COMMA, text=",")
        out[clause.start : clause.end] = _said(out[clause.start], out[clause.end - 1], left)
        place = clause.start + 1
    return out


_STILL_THERE = frozenset(("left", "kept", "still", "reps", "rep", "leaving", "keeping", "spare", "unused", "saved",
                          "holding", "held", "had", "with", "another"))  # fmt: skip
_FAILING = ("failure", "failing")
"""`failure was 2 reps away`: these words alone would say that nothing was left."""
_BEHIND = ("after", "after the", "after my", "beyond", "on top of")
"""`good for 2 more after the nine at 60`: leads the set that is told behind its effort."""


def _told_at(marks: Sequence[Mark], place: int) -> tuple[Clause, Decimal] | None:
    """A clause that starts here and tells what was left, and how many; not where it is plain, or asked."""
    _, end = sentence_of(marks, place)
    if kind_at(marks, end) is Kind.QUERY:
        return None
    line = line_at(marks, place)
    for telling in _TELLINGS:
        clause = clause_in(line, marks, telling.grammar)
        if clause is None:
            continue
        left = telling.left(marks, clause)
        told = any(m.kind is Kind.NUM for m in marks[:place])
        said = {w for m in marks[place : clause.end] for w in m.text.split()}
        if said & {"bag", "bank"} and left != 0 and not said & _STILL_THERE:
            return None  # `60x5, 2 in the bag`: reserve, or sets that are done
        ahead = not any("bag" in m.text or "bank" in m.text for m in marks[place : clause.end])  # `2 in the bag`: done
        told = told or (left != 0 and ahead and any(m.kind is Kind.NUM for m in marks[clause.end :]))
        told = told or (place == 0 and clause.end == len(marks) and marks[0].text in _FAILING)  # of the set kept last
        plain = {m.kind for m in marks[clause.start : clause.end]} <= _KNOWN
        return None if left is None or not told or plain or _is_ranged(marks, clause) else (clause, left)
    return None


def _is_ranged(marks: Sequence[Mark], clause: Clause) -> bool:
    """The one number of `one maybe two more`, `rir: 2-3`."""
    before = marks[clause.start - 1] if clause.start else None
    small = before is not None and before.kind is Kind.NUM and (before.value or HARDEST) <= MOST_LEFT
    ahead = kind_at(marks, clause.end) in (Kind.DASH, Kind.SLASH, Kind.OR, Kind.TO, Kind.AND)
    return bool(clause.numbers) and (small or (ahead and kind_at(marks, clause.end + 1) is Kind.NUM))


_KNOWN = {Kind.NUM, Kind.TANK, Kind.EMPTY, Kind.COULD, Kind.LEFT, Kind.RIR, Kind.MORE, Kind.WITH}
"""Kinds of what other rules read already."""


def _said(first: Mark, last: Mark, left: Decimal) -> list[Mark]:
    if left == 0:
        return [Mark(Kind.EMPTY, "to failure", first.start, last.end)]
    number = Mark(Kind.NUM, str(left), first.start, first.end, False, left)
    return [number, Mark(Kind.TANK, "left", last.start, last.end)]
