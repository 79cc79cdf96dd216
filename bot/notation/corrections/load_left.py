"""A load that was left, and why, before the set that was done with another: nothing that is stored was wrong.

`180 was too light so took the 200 for this one, 12 reps`, `couldn't do +15, went +10 for 7`, `wanted 12 but it was 9`,
`went from 180 to 190 for 9`: the words up to the load that was lifted say nothing of a set.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, parts_between, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_UNITS = (Kind.KG, Kind.LB, Kind.S)
_SIGNS = (Kind.PLUS, Kind.MINUS)
_OF_STORED = (Kind.WROTE, Kind.SCRAP, Kind.SET, Kind.ORD, Kind.LASTSET, Kind.LASTREP, Kind.LABEL, Kind.MEANT, Kind.X,
              Kind.ALL, Kind.EACH, Kind.RPE, Kind.RIR, Kind.REPS)  # fmt: skip
"""Kinds before the load that was lifted, beside which the words may speak of a set that is stored."""
_JUDGED = frozenset(words(
    "light lighter heavy heavier easy easier much hard harder enough taken busy happening nicked gone missing tough",
    "occupied unavailable ambitious scary far",
))  # fmt: skip
"""What is said of a load that was left, behind it."""
_UNABLE = frozenset(
    words("couldnt cant cannot didnt dont wouldnt wasnt couldn never unable without swapped dropped ditched")
)
_WANTED = frozenset(words("wanted aimed hoped aiming hoping planned"))
_NOW = (["this", "time"], ["this", "one"], ["this", "set"], ["today"], ["again"])
_SHORT = 10
"""Words of a reason at most."""


def without_left(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with loads that were left, and the words about them, as talk."""
    if not request.done or not _has_open(request):
        return list(marks)
    loads = _loads(request)
    out = list(marks)
    for start, end in parts_between(marks, _ENDS):
        behind = _lifted(marks[start:end], loads)
        for at in range(start, start + behind):
            if out[at].kind not in (Kind.NAME, Kind.COMMA):
                out[at] = replace(out[at], kind=Kind.FILL, value=None, parts=())
        if behind:
            _without_now(out, start + behind, end)
    return out


def _without_now(out: list[Mark], start: int, end: int) -> None:
    """Makes `200 for this one, 12 reps` `200 x 12 reps`: the set that is told, and no count of it."""
    for at in range(start, end - 1):
        then = at + 2 + (at + 2 < end and out[at + 2].kind is Kind.COMMA)
        this = out[at].kind in (Kind.FOR, Kind.AT) and out[at + 1].text in (
            "this one",
            "this set",
            "this",
            "now",
            "today",
        )
        if this and then < end and out[then].kind is Kind.NUM:
            out[at] = replace(out[at], kind=Kind.X, text="x")
            out[at + 1 : then] = [replace(m, kind=Kind.FILL) for m in out[at + 1 : then]]


def _has_open(request: Request) -> bool:
    """Whether a set of the exercise that was told last is still to come."""
    name = request.done[-1].exercise
    planned = sum(len(e.sets) for e in request.exercises if e.name == name)
    return len({p.set for p in request.done if p.exercise == name}) < planned


def _loads(request: Request) -> set[Decimal]:
    """The loads that a message may say were left: those that are stored, without their sign."""
    return {abs(p.load.amount) for p in request.done if p.load is not None}


def _lifted(sentence: Sequence[Mark], loads: set[Decimal]) -> int:
    """Where the load starts that was lifted instead of one that is told before it; 0 where none was left."""
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    if not 1 < len(numbers) <= 4:
        return 0
    old, new = numbers[:2]
    before, between = _words(sentence[:old]), _words(sentence[old + 1 : new])
    if any(m.kind in _OF_STORED for m in sentence[:new]) or len(before) + len(between) > _SHORT:
        return 0
    if sentence[old].value == sentence[new].value or any(
        m.kind is Kind.SORRY and m.text not in ("nah", "no") for m in sentence[:new]
    ):
        return 0
    wanted = bool(set(before) & _WANTED) and kind_at(sentence, new - 1) is Kind.WAS
    if wanted and (_tells(sentence, new) or _is_last(sentence, new)):
        return _with_sign(sentence, new)
    known = sentence[old].value in loads and (kind_at(sentence, old + 1) is not Kind.FOR or "swapped" in before)
    return _with_sign(sentence, new) if known and _is_left(before, between) and _tells(sentence, new) else 0


def _is_left(before: Sequence[str], between: Sequence[str]) -> bool:
    """Whether the words about a load say that it was not the one to lift now."""
    turned = ("so" in between or "but" in between or "," in between or "for" in between) and bool(set(before) & _UNABLE)
    judged = bool(set(between) & _JUDGED)
    denied = before[-1:] in (["not"], ["no"]) and any(list(between[: len(n)]) == n for n in _NOW)
    stepped = before[-1:] == ["from"] and list(between) == ["to"]
    intended = before[-3:] in (["going", "to", "do"], ["gonna", "do"]) and "but" in between
    return turned or judged or denied or stepped or intended


def _tells(sentence: Sequence[Mark], at: int) -> bool:
    """Whether a load with its repetitions is told here: `160x10`, `160 for 10`, `200 for this one, 12 reps`."""
    then = at + 1 + (kind_at(sentence, at + 1) in _UNITS)
    linked = kind_at(sentence, then) in (Kind.X, Kind.FOR)
    then += linked
    while kind_at(sentence, then) in (Kind.FILL, Kind.COMMA, Kind.AT, Kind.FOR, Kind.LASTSET, Kind.TIMES):
        then += 1
    count = sentence[then].value if kind_at(sentence, then) is Kind.NUM else None
    return count is not None and count == int(count) and text_at(sentence, then - 1) != "@"


def _is_last(sentence: Sequence[Mark], at: int) -> bool:
    """Whether a number ends the sentence."""
    return all(m.kind in (Kind.FILL, Kind.REPS) for m in sentence[at + 1 :])


def _with_sign(sentence: Sequence[Mark], at: int) -> int:
    return at - (kind_at(sentence, at - 1) in _SIGNS)


def _words(marks: Sequence[Mark]) -> list[str]:
    return [w for m in marks for w in m.text.split()]
