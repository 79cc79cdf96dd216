"""One effort, as it is told of a set: `rpe 8`, `2 rir`, `two in the tank`, `nothing left`, or only its number."""

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal

from bot.notation.bounds import EASIEST, HARDEST, MOST_LEFT
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.in_reserve import NOTHING
from bot.notation.tokens import Mark

WORDS = (Kind.RPE, Kind.RIR)
LITTLE = (Kind.FILL, Kind.WAS, Kind.COLON, Kind.AT, Kind.WITH, Kind.FOR, Kind.SET, Kind.COULD)
ENDS = (None, Kind.COMMA, Kind.AND, Kind.THEN, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.FILL, Kind.CLOSE)
_TELLING = (Kind.NUM, Kind.EMPTY, *WORDS)
"""What an effort begins with."""
OTHERS = frozenset(["other", "others", "rest"])
_BEHIND = {
    Kind.RPE: Kind.RPE, Kind.RPEPOST: Kind.RPE, Kind.RIR: Kind.RIR, Kind.RIRPOST: Kind.RIR, Kind.TANK: Kind.RIR,
    Kind.LEFT: Kind.RIR,
}  # fmt: skip
"""What an effort is told in, by the word behind its number."""
RATED = frozenset((*_BEHIND, Kind.EMPTY, "@"))
"""Kinds and words of which one stands wherever an effort is told."""


@dataclass(frozen=True, slots=True)
class _Effort:
    """Repetitions in reserve, the word that they were told by, and the places where they stand."""

    left: Decimal
    word: Kind
    start: int
    end: int


def effort_at(piece: Sequence[Mark], at: int, word: Kind | None) -> _Effort | None:
    """An effort that starts here: `rpe 8`, `2 rir`, `two in the tank`, `nothing left`, or a number of its `word`."""
    kind, start = kind_at(piece, at), at
    if word is None and kind not in _TELLING:
        return None
    none = word is Kind.RIR and text_at(piece, at) in NOTHING and kind_at(piece, at + 1) in (*LITTLE, *ENDS)
    if kind is Kind.EMPTY or none:
        return _Effort(Decimal(0), Kind.RIR, start, at + 1)
    led = text_at(piece, at - 1) == "@" and word is None and not _is_entry_led(piece, at)
    word = Kind.RPE if led else word
    if kind in WORDS:
        word, at = kind, past_kinds(piece, at + 1, LITTLE)
    behind = _BEHIND.get(kind_at(piece, at + 1) or Kind.GAP) if kind is Kind.NUM else None
    if behind is Kind.RIR and kind_at(piece, at + 1) is Kind.LEFT and text_at(piece, at + 1) != "left":
        behind = None
    word = behind or word
    if word is None or not is_effort(piece, at, word):
        return None
    value = piece[at].value or Decimal(0)
    return _Effort(value if word is Kind.RIR else 10 - value, word, start, at + 1 + (behind is not None))


def _is_entry_led(piece: Sequence[Mark], at: int) -> bool:
    """Whether sets name themselves before their entries: the `@8` of `first 90x4 @7, second @8` is of one to come."""
    return any(m.kind is Kind.ORD and kind_at(piece, i + 2) is Kind.X for i, m in enumerate(piece[:at]))


def is_effort(piece: Sequence[Mark], at: int, word: Kind) -> bool:
    """Whether a number on the scale of its word stands there, and counts nothing."""
    value = piece[at].value if kind_at(piece, at) is Kind.NUM else None
    if value is None or kind_at(piece, at + 1) in (
        Kind.X,
        Kind.REPS,
        Kind.KG,
        Kind.LB,
        Kind.SETS,
        Kind.SLASH,
        Kind.NUM,
    ):
        return False
    return value <= MOST_LEFT if word is Kind.RIR else EASIEST <= value <= HARDEST


def past_kinds(piece: Sequence[Mark], at: int, kinds: Sequence[Kind]) -> int:
    while kind_at(piece, at) in kinds and text_at(piece, at) not in OTHERS | NOTHING:
        at += 1
    return at
