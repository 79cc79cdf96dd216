"""What was lifted, told by the way: `weight was 25`, beside bare counts, is their load and not what the client weighs;
`hung a 35, got 4`, `put a 10 plate on my chest, 8` is a load added to body weight.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle

_WEIGHED = frozenset(["weight was", "weight is", "weight"])
_LINKED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_LEADS = (Kind.FILL, Kind.AT, Kind.TO, Kind.COLON)
_PARTS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND, Kind.BREAK, Kind.THEN)
_REST = frozenset(["rested", "resting"])


def with_weight_told(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as what leads a load, where nothing else of the message is one."""
    out = [replace(m, kind=Kind.FILL) if _is_turned(marks, i) else m for i, m in enumerate(marks)]
    out = [replace(m, kind=Kind.WORD) if _is_back_to_backs(marks, i) else m for i, m in enumerate(out)]
    place = next((i for i, m in enumerate(out) if m.kind is Kind.TALKNUM and m.text in _WEIGHED), None)
    if place is None:
        return out
    at = place + 1
    while kind_at(out, at) in _LEADS:
        at += 1
    end = at + 1 + (kind_at(out, at + 1) in (Kind.KG, Kind.LB))
    if kind_at(out, at) is not Kind.NUM or kind_at(out, end) not in _PARTS:
        return out
    rest = out[end + 1 :]
    counts = [i for i, m in enumerate(rest) if m.kind is Kind.NUM]
    loaded = any(m.kind in (Kind.KG, Kind.LB, Kind.X) for m in rest) or any(
        kind_at(rest, i + 1) in _LINKED and kind_at(rest, i + 2) is Kind.NUM for i in counts
    )
    if not counts or loaded or not any(kind_at(rest, i - 1) in (Kind.FILL, Kind.WORD, *_PARTS) for i in counts):
        return out
    led = [replace(m, kind=Kind.FILL) for m in out[place:at]]
    out[place:at] = [*led[:-1], replace(led[-1], kind=Kind.WITH, text="with")]
    return [replace(m, kind=Kind.FILL) if i > at and m.text in _REST else m for i, m in enumerate(out)]


def with_hung_load(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with such a load as one that is added, in a message of exercises on body weight alone."""
    out = list(marks)
    if not _is_on_body(marks, request):
        return out
    place = 0
    while place < len(out):
        end = _hung_end(out, place) if out[place].kind is Kind.NUM else None
        if end is not None:
            unit = out[place + 1 : place + 2] if kind_at(out, place + 1) in (Kind.KG, Kind.LB) else []
            added = Mark(Kind.ADDED, "added", out[end - 1].end, out[end - 1].end)
            while kind_at(out, end) in (Kind.FILL, Kind.TIMES) and text_at(out, end) in _THIS_TIME:
                end += 1
            stop = kind_at(out, end) is Kind.STOP and end + 1 < len(out)
            joined = [replace(out[end], kind=Kind.COMMA, text=",")] if stop else []
            out[place : end + stop] = [out[place], *unit, added, *joined]
        place += 1
    return out


_HUNG = frozenset(words("hung hang hanging strapped clipped slung dangled dangling chained"))
_TAKEN = frozenset(words("put wore added add had used stuck threw tied took using with"))
_LITTLE = frozenset(words("a an the my another this it on off to from around round of around at over in across"))
_CARRIED = frozenset(words("belt chest lap back waist vest backpack rucksack harness hips stomach tummy shoulders me"))
_THIS_TIME = ("this", "time", "this time", "today", "now", "again", "tonight", "for", "this one")
_PLATE = ("plate", "weight", "dumbbell", "db", "kettlebell", "kb", "disc", "disk")


def _hung_end(marks: Sequence[Mark], place: int) -> int | None:
    """Where the words of a load that is hung on the body end, from its number on; `None` where it is none."""
    verb = place - 1
    while verb >= 0 and set(text_at(marks, verb).split()) <= _LITTLE and marks[verb].text:
        verb -= 1
    led = set(text_at(marks, verb).split())
    hung, taken = bool(led & _HUNG), bool(led & _TAKEN)
    if verb < 0 or not (hung or taken):
        return None
    at = place + 1 + (kind_at(marks, place + 1) in (Kind.KG, Kind.LB))
    plate = text_at(marks, at) in _PLATE and text_at(marks, place - 1).split()[-1:] in (["a"], ["an"], ["the"])
    end = at + plate
    where = end
    while text_at(marks, where) and set(text_at(marks, where).split()) <= _LITTLE:
        where += 1
    carried = where > end and (text_at(marks, where) in _CARRIED or (plate and kind_at(marks, where) is Kind.NAME))
    on = hung and text_at(marks, end) == "on"
    end = where + 1 if carried else end + on
    follows = (
        kind_at(marks, end) in (*_PARTS, Kind.FILL, Kind.FOR, Kind.NUM, None) and kind_at(marks, end + 1) is not Kind.X
    )
    return end if (hung or carried or plate) and follows and kind_at(marks, place + 1) is not Kind.NUM else None


def _is_on_body(marks: Sequence[Mark], request: Request) -> bool:
    """Whether all that the message names is done on body weight, or else what is under way."""
    named = {p for m in marks if m.kind is Kind.NAME for p in m.names}
    if not named:
        done = [len({p.set for p in request.done if p.exercise == x.name and p.set}) for x in request.exercises]
        is_open = [p for p, x in enumerate(request.exercises) if done[p] < len(x.sets)]
        current = [p for p, x in enumerate(request.exercises) if x.name == request.current]
        named = set(current or is_open[:1])
    return bool(named) and all(request.exercises[p].load_style is LoadStyle.BODYWEIGHT for p in named)


def _is_back_to_backs(marks: Sequence[Mark], place: int) -> bool:
    """`two back to backs with the auditors`: things that are counted, and no other time."""
    return marks[place].text == "back to" and place + 1 < len(marks) and marks[place + 1].text == "backs"


def _is_turned(marks: Sequence[Mark], place: int) -> bool:
    """The word of `turned the help down to 30`, no age; of `back to 180 for the other two`, no other time."""
    turned = marks[place].kind is Kind.TALKNUM and marks[place].text == "turned"
    if not turned and marks[place].text != "back to":
        return False
    load = place + 2 + (kind_at(marks, place + 2) in (Kind.KG, Kind.LB))
    for_rest = kind_at(marks, load) is Kind.FOR and kind_at(marks, load + 1) in (Kind.THEREST, Kind.LASTSET)
    back = marks[place].text == "back to" and kind_at(marks, place + 1) is Kind.NUM and for_rest
    return back or (turned and kind_at(marks, place + 1) is not Kind.NUM)
