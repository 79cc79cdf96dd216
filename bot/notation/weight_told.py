"""What was lifted, told as `weight was 25`: beside bare counts it is their load, and not what the client weighs."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_WEIGHED = frozenset(["weight was", "weight is", "weight"])
_LINKED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH)
_LEADS = (Kind.FILL, Kind.AT, Kind.TO, Kind.COLON)
_PARTS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND, Kind.BREAK, Kind.THEN)
_REST = frozenset(["rested", "resting"])


def with_weight_told(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as what leads a load, where nothing else of the message is one."""
    out = [replace(m, kind=Kind.FILL) if _is_turned(marks, i) else m for i, m in enumerate(marks)]
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


def _is_turned(marks: Sequence[Mark], place: int) -> bool:
    """The word of `turned the help down to 30`, which tells no age."""
    turned = marks[place].kind is Kind.TALKNUM and marks[place].text == "turned"
    return turned and kind_at(marks, place + 1) is not Kind.NUM
