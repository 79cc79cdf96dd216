"""A set told once more beside itself: `60x9, all nine completed`, `60x9, a copy of the first` of a first set just "
"like it."""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import told_last
from bot.notation.order.steps import said_in
from bot.notation.tokens import Mark
from bot.notation.worded import clause_at, opens_clause
from bot.notation.wordlist import words

_ALL_OF_THEM = re.compile(
    r"(?:(?:and|got|did|made|with|but) )*(?:all|all of|all the|the full|every one of the|all of the|full) #(?: "
    r"reps?)?(?: (?:were|was|of them|are|"
    r"really|very|nice and|fully|well))*"
    r" (?:completed|complete|done|made|clean|good|good ones|finished|in|up|achieved|counted|there|smooth|solid|"
    r"strict|paused|"
    r"in the bag|legit|honest|deep|full range|to depth|with good form|with control|controlled|mine|in the book|in "
    r"the books)"
    r"(?= |$)"
)
_AS_BEFORE = re.compile(
    r"(?:(?:a|an|the|exact|exactly|just|basically|pretty much|so|and|which is) )*"
    r"(?:carbon copy|copy|mirror|mirror image|repeat|twin|clone|replica|same|the same|same again|identical|equal|"
    r"like|exact same)"
    r"(?: (?:of|as|like|to))? (?:the |my )?(?:first|last|previous|one before|#th|first one|last one|previous one|"
    r"set before|"
    r"opener)(?: (?:set|one))?(?= |$)"
)


_COMPARED = re.compile(
    r"(?:(?:just|only|so|but|a|thats|that is|and) )*(?P<n>one|two|#|rep)(?: reps?)? (?:less|fewer|down|short|off|"
    r"shy|under|more|up|"
    r"better|extra)(?: (?:than|of|on|from|off|to|the|my|that|last|first|set|one|time|before|earlier|previous|#|#th|"
    r"round|go|in|"
    r"it|was|now|this|time|today|reps?|previous one|last one|first one|last time))*(?= |$)"
)

_COUNTING = frozenset(words("all full every"))
_LIKE = frozenset(words("copy mirror repeat twin clone replica same identical equal like"))
_COMPARING = frozenset(words("less fewer down short off shy under more up better extra"))
"""One word of each of the grammars above at least: without it none of them finds anything."""


def with_counted_again(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks without what only says again how many there were, or that they were as before."""
    out = list(marks)
    said = said_in(out)
    compared, again_told, like_before = (not need.isdisjoint(said) for need in (_COMPARING, _COUNTING, _LIKE))
    if not (compared or again_told or like_before):
        return out
    for place in range(len(out)):
        if not opens_clause(out, place):
            continue
        if compared:
            _leave_compared(out, place, request)
        again = clause_at(out, place, _ALL_OF_THEM) if again_told else None
        if again is not None and out[again.numbers[0]].value == told_last(out[:place]):
            _leave(out, again.start, again.end)
        as_before = clause_at(out, place, _AS_BEFORE) if like_before else None
        if as_before is not None and _is_as_before(out[:place], request):
            _leave(out, as_before.start, as_before.end)
    return out


def _leave_compared(out: list[Mark], place: int, request: Request) -> None:
    """`nine, one off the ten from before`, `one less: 9 at 60`: how many more or less than the set kept last."""
    if not request.done or kind_at(out, place) in (Kind.X, Kind.FOR):
        return
    last = request.done[-1].reps
    at = next((i for i in range(place, min(len(out), place + 4)) if kind_at(out, i) is Kind.COLON), None)
    clause = clause_at(out if at is None else out[:at], place, _COMPARED)
    if clause is None:
        return
    first = out[clause.numbers[0]].value if clause.numbers and out[clause.numbers[0]].text != str(last) else None
    step = 2 if any(m.text == "two" for m in out[clause.start : clause.end]) else 1 if first == last else first or 1
    numbers = [m.value for i, m in enumerate(out) if m.kind is Kind.NUM and not clause.start <= i < clause.end]
    said = {w for m in out[clause.start : clause.end] for w in m.text.split()}
    more = bool(said & {"more", "up", "better", "extra"})
    if more and not said & {"than", "on", "from"} and "better" not in said:
        return  # `60x6, 2 more`: in reserve, or to come
    if any(n is not None and n - last == (step if more else -step) for n in numbers):
        _leave(out, clause.start, clause.end)
        if at == clause.end:
            out[at] = replace(out[at], kind=Kind.COMMA, text=",")


def _leave(out: list[Mark], start: int, end: int) -> None:
    out[start:end] = [replace(m, kind=Kind.GAP, value=None, parts=(), names=()) for m in out[start:end]]


def _is_as_before(before: Sequence[Mark], request: Request) -> bool:
    """Whether the set told before is whole, and just like the one kept last."""
    last = request.done[-1] if request.done else None
    told = [m.value for m in before if m.kind is Kind.NUM]
    if last is None or last.load is None:
        return False
    return any([Decimal(last.load.thousandths) / 1000, last.reps] == told[i : i + 2] for i in range(len(told)))
