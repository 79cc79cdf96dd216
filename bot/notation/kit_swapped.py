"""A load that was not to be had, and the one that was taken in its place: `couldn't find the 20 so grabbed the 22, 10
reps`, `only the 22 was free. 10 reps`, `22 instead of the 20`; `the 20 is missing`, `looking for the 20`: no set.

Only of loads near those planned for the exercise that is named or under way, so that no repetitions are meant.
"""

import re
from collections.abc import Sequence
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import EDGES
from bot.notation.kinds import Kind
from bot.notation.order.steps import said_in
from bot.notation.session_place import place_spoken_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import PlannedExercise

_KIT = (
    r"(?: (?:kgs?|kilos?|s|lbs?|pounds?|ones?|dumbb?ells?|kettleb?ells?|dbs?|kbs?|bells?|weights?|pairs?|plates?|disc"
    r"|vest|belt))*"
)
_THE = r"(?:(?:the|a|an|any|my|that|those|these|usual|normal|single|pair|of|right|proper) )*"
_BE = (
    r"(?:(?:is|was|are|were|has|have|had|been|got|get|went|being|all|both|currently|already|still|just|now"
    r"|s|yet|again) )*"
)
_GONE = (
    r"(?:taken|missing|gone|busy|broken|occupied|nowhere|lost|hidden|stolen|nicked|bagged|borrowed|claimed|hogged"
    r"|in use|used|being used|disappeared|vanished|walked off|wandered off|hiding|snapped up|spoken for|out of order)"
)
_HAD = (
    r"(?:available|free|there|here|around|about|back|in (?:its|their|the) (?:place|rack|spot|stand)"
    r"|on the (?:rack|shelf)|to be (?:found|had|seen)|in sight|where (?:it|they) should be|left|anywhere|today"
    r"|at all|in the gym)"
)
_SOMEONE = (
    r"(?:someone|somebody|people|they|he|she|everyone|PERSON|(?:some|a|the|another|that) (?:\w+ )?(?:guy|bloke|lad|"
    r"lady|kid|man|woman|girl|dude|fella|chap|group))(?: else)?"
)
_LACKING = re.compile(
    rf"(?<!\S)no {_THE}#{_KIT}(?: {_HAD})+"
    rf"|(?<!\S)no {_THE}#{_KIT}(?= so | but )"
    rf"|(?<!\S)(?:i |we )?(?:couldnt|cant|didnt|wasnt able to|unable to|never) (?:find|get|see|reach|locate|grab|have) "
    rf"{_THE}#{_KIT}(?: {_HAD})*"
    rf"|(?<!\S){_THE}#{_KIT} {_BE}{_GONE}(?: (?:again|today|yet|still|now|by \w+))*"
    rf"|(?<!\S){_THE}#{_KIT} {_BE}(?:not|isnt|wasnt|arent|werent|never|no longer|nowhere) {_BE}{_HAD}"
    rf"|(?<!\S)(?:instead of|rather than|in place of|in plaats van|statt|anstatt|ipv|en lugar de|en vez de|au lieu de|"
    rf"invece di|in lieu of) {_THE}#{_KIT}"
    rf"|(?<!\S){_SOMEONE} (?:has|had|have|took|takes|nicked|stole|got|grabbed|is on|was on|hogging|hogged|"
    rf"(?:(?:is|was|are|were|s) )?(?:using|hogging)) {_THE}#{_KIT}"
    rf"|(?<!\S)(?:looking|hunting|searching|waiting|queuing|queueing)(?: around)? (?:for|on) {_THE}#{_KIT}"
    rf"(?: (?:to (?:free up|come back|be free|turn up|come free)|still|now|at the moment))*"
)
_TAKEN = re.compile(
    rf"(?<!\S)(?:grabbed|took|used|using|picked(?: up)?|went (?:with|for)|going with|had(?: to use)?|holding|held|chose"
    rf"|settled for|made do with|nabbed|borrowed|hugging|hugged|swapped to|went up to|went down to) "
    rf"(?:(?:(?:the|a|that) )+#{_KIT}|#(?: (?:s|kgs?|kilos?|lbs?)){_KIT})"
    rf"(?: (?:by (?:accident|mistake)|instead|one))*"
    rf"|(?<!\S)(?:only|just) (?:(?:the|a) )*#{_KIT} {_BE}(?:free|left|available|there|around|about)"
    rf"|(?<!\S)(?:(?:theyve|they|gym|weve|ive|we|i|place) )?(?:(?:only|just) (?:got|has|have|had)|"
    rf"(?:got|has|have|had) only) {_THE}#{_KIT}(?: (?:here|there|left|today|free))*"
)
_CHOICE = re.compile(r"(?<!\S)only (?:(?:a|the) )?# (?:and|or) (?:(?:a|the) )?#")
"""What there was to choose from is read by `kit_told`."""
_WAITING = re.compile(
    r"(?<!\S)no (?:\w+ )?NAME (?:is |are )?(?:free|available|empty|open|going) "
    r"(?:yet|still|at the moment|right now|so far)"
    r"|(?<!\S)(?:wait|waiting|queue|queuing|queueing|hanging (?:on|about|around)) (?:on|for) (?:\w+ )?NAME"
    r"(?: to (?:free up|clear|come free|be free|open up))?"
)
"""What waits for a place to train, and leaves nothing out."""
_CUES = frozenset(words(
    "no couldnt cant didnt wasnt unable never in used being walked wandered snapped spoken out not isnt arent "
    "werent instead rather statt anstatt ipv en au invece has had have took takes stole nicked got grabbed is "
    "was using hogging hogged looking hunting searching waiting queuing queueing picked went going holding "
    "held chose settled made nabbed borrowed hugging hugged swapped only just wait queue hanging nowhere"
))  # fmt: skip
_LOST = words(
    "taken missing gone busy broken occupied nowhere lost hidden stolen nicked bagged borrowed claimed hogged used "
    "disappeared vanished hiding"
)
"""One word of each of the patterns above at least, or what a word begins with: without it none finds anything."""
_LEAST, _MOST = Decimal("0.5"), Decimal("1.7")
"""Of the planned loads: what people take in their place (common practice, no source)."""
_OTHER = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.SETS, Kind.EACH, Kind.LABEL, Kind.SET, Kind.WARMUP)


def with_kit_swapped(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with the load that was taken straight before its count; without one that was not to be had, in talk."""
    said = said_in(marks)
    if said.isdisjoint(_CUES) and not any(word.startswith(_LOST) for word in said):
        return list(marks)
    names = [m for m in marks if m.kind is Kind.NAME and m.names]
    place = place_spoken_of(names, request)
    if not any(m.kind is Kind.NUM for m in marks):
        waits = {i for span in _spans(_WAITING, marks) for i in range(*span)}
        return _without(marks, waits)
    if place is None:
        return list(marks)
    exercise = request.exercises[place]
    if _spans(_CHOICE, marks):
        return list(marks)
    lacked = _found(_LACKING, marks, exercise)
    gone = {i for span in lacked for i in range(*span)}
    if _is_correction(marks, gone, request):
        return list(marks)
    taken = [span for span in _found(_TAKEN, marks, exercise) if gone.isdisjoint(range(*span))]
    taken = [span for span in taken if _is_own(marks, span)]
    if not lacked and not taken:
        return list(marks)
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and i not in gone]
    other = (*_OTHER, *((Kind.LEFT, Kind.RIGHT) if exercise.sides > 1 else ()))
    if taken and not any(m.kind in other for m in marks):
        spans = {i for span in taken for i in range(*span)}
        told = [i for i in numbers if i in spans]
        values = {marks[i].value for i in told}
        others = [i for i in numbers if i not in told]
        crossed = any(m.kind in (Kind.X, Kind.FOR) for m in marks)
        if any(marks[i].value in values for i in others):  # `24x10, they only had 24s`; not `grabbed 10s. 10 each`
            if not crossed:
                return list(marks)
            gone |= spans
        elif (
            len(told) == 1
            and len(others) == 1
            and _is_count(marks, others[0], exercise)
            and _is_bare(marks, told[0], others[0])
            and not any(m.kind is Kind.X for m in _without(marks, gone | spans))
        ):
            return _put(marks, names, told[0], others[0], gone | spans)
    rest = _without(marks, gone)
    return list(marks) if any(m.kind is Kind.NUM for m in rest) else rest


def _is_own(marks: Sequence[Mark], span: tuple[int, int]) -> bool:
    """Whether the client took it, and a load: not `my mate used the 55`, `took the 55 bus`."""
    first, end = span
    before = marks[first - 1] if first else None
    other = before is not None and (before.kind is Kind.OTHERPERSON or before.text.split()[-1:] in _OTHERS)
    return not other and _is_plain(marks, end)


def _is_bare(marks: Sequence[Mark], load: int, count: int) -> bool:
    """Whether what stands behind a count is no thing that it counts, and nothing turns the two round: `at 9`."""
    at = marks[count - 1] if count else None
    clock = at is not None and at.kind is Kind.AT and load < count
    return not clock and _is_plain(marks, count + 1)


def _is_plain(marks: Sequence[Mark], at: int) -> bool:
    said = marks[at].text.split()[:1] if at < len(marks) else []
    known = at >= len(marks) or marks[at].kind not in (Kind.WORD, Kind.FILL, Kind.TALKNUM, Kind.OTHERPERSON, Kind.TO,
                                                       Kind.MINUTES, Kind.HOURS, Kind.M)  # fmt: skip
    return known or not said or said[0] in _BEHIND


_OTHERS = (["he"], ["she"], ["they"], ["mate"], ["guy"], ["lad"], ["wife"], ["husband"], ["brother"], ["son"])
_BEHIND = frozenset(words(
    "and so but for got get did done made then today which because cos as since instead by was were is on with i hit",
    "managed felt each clean good solid here there kg s free left available one ones reps rep times sir coach",
    "boss mate",
    "lol haha only just over this time rather like not anyway the a it myself up kettlebell dumbbell bell easy",
    "hard heavy light",
))  # fmt: skip
"""Words that may follow the load that was taken, or its count, and name no other thing."""


def _is_count(marks: Sequence[Mark], at: int, exercise: PlannedExercise) -> bool:
    """Whether a number may be the repetitions of the load that was taken: not the 60 of `only had 55 on, not 60`."""
    value, most = marks[at].value, max(s.reps.high for s in exercise.sets)
    if any(s.load is not None and s.load.amount == value for s in exercise.sets):
        return False  # `was supposed to be 20 but i grabbed the 18s`
    denied = at > 0 and marks[at - 1].kind in (Kind.NOT, Kind.INSTEAD)
    return not denied and value is not None and value == int(value) and value <= 2 * most


def _without(marks: Sequence[Mark], gone: set[int]) -> list[Mark]:
    return [m for i, m in enumerate(marks) if i not in gone]


def _is_correction(marks: Sequence[Mark], gone: set[int], request: Request) -> bool:
    """`it has to be 55 instead of 60`, where a set is stored with 60: what it was not, and no kit."""
    loads = {p.load.amount for p in request.done if p.load is not None}
    rest = [i for i, m in enumerate(marks) if m.kind is Kind.NUM and i not in gone]
    stored = any(marks[i].value in loads for i in gone if marks[i].kind is Kind.NUM)
    instead = any(marks[i].kind in (Kind.INSTEAD, Kind.OTHERTIME) for i in gone)
    return stored and instead and len(rest) == 1


def _put(marks: Sequence[Mark], names: Sequence[Mark], load: int, reps: int, gone: set[int]) -> list[Mark]:
    """`goblet squat 22 x 10`, and what stands behind both numbers."""
    end = max(*gone, load, reps) + 1
    end = max(end, reps + 1)
    at = marks[reps].start
    cross = Mark(Kind.X, "x", at, at)
    unit = [m for m in marks[load + 1 : load + 2] if m.kind in (Kind.KG, Kind.LB)]
    return [*names[:1], marks[load], *unit, cross, marks[reps], *_without(marks, gone)[_count(end, gone) :]]


def _count(end: int, gone: set[int]) -> int:
    """How many marks that stay stand before a place."""
    return end - sum(i < end for i in gone)


def _found(pattern: re.Pattern[str], marks: Sequence[Mark], exercise: PlannedExercise) -> list[tuple[int, int]]:
    """The stretches of marks that a pattern finds, whose number is a load of the exercise."""
    spans = _spans(pattern, marks)
    return [
        (first, end)
        for first, end in spans
        if all(_is_load(m, exercise) for m in marks[first:end] if m.kind is Kind.NUM)
    ]


def _spans(pattern: re.Pattern[str], marks: Sequence[Mark]) -> list[tuple[int, int]]:
    """The stretches of marks that a pattern finds."""
    said = [_words(m) for m in marks]
    owners = [place for place, told in enumerate(said) for _ in told]
    text = " ".join(w for told in said for w in told)
    out = []
    for found in pattern.finditer(text):
        first = owners[text[: found.start()].count(" ")]
        out.append((first, owners[text[: found.end()].count(" ")] + 1))
    return out


def _words(mark: Mark) -> list[str]:
    """The words of a mark, a number as `#`; what ends a part is told as such."""
    if mark.kind is Kind.NUM:
        return ["#"]
    if mark.kind in EDGES:
        return ["END"]
    if mark.kind is Kind.NAME and mark.names:
        return ["NAME"]
    return ["PERSON"] if mark.kind is Kind.OTHERPERSON else mark.text.split() or ["-"]


def _is_load(mark: Mark, exercise: PlannedExercise) -> bool:
    planned = [s.load.amount for s in exercise.sets if s.load is not None and s.load.amount > 0]
    return bool(planned) and mark.value is not None and _LEAST * min(planned) <= mark.value <= _MOST * max(planned)
