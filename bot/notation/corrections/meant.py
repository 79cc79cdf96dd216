"""What a correction says a set really was: which number is meant, by the old value, its words, or what is plausible."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from bot.notation.answer import Span
from bot.notation.atoms import Amount, Atom, Counts, Effort, Join
from bot.notation.atoms.entries import read_atoms
from bot.notation.corrections import CUES
from bot.notation.grammar import read_items
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.training.report import Side, Stage

SIDES = {Kind.LEFT: Side.LEFT, Kind.LEFTPOST: Side.LEFT, Kind.RIGHT: Side.RIGHT, Kind.RIGHTPOST: Side.RIGHT}
_STEERING = frozenset(
    (*CUES, Kind.LASTSET, Kind.LABEL, Kind.WROTE, Kind.COMMA, Kind.STOP, Kind.GAP, Kind.LINE, Kind.QUERY, Kind.SET,
     Kind.ORD, Kind.COLON, Kind.DROP, Kind.MINI, Kind.LEFT, Kind.RIGHT, Kind.LASTREP, Kind.ALL, Kind.TO, Kind.DASH)
)  # fmt: skip
"""Marks of a correction that say which set or how, and no value."""
PAIRING = (Join.X, Join.FOR, Join.AT, Join.WITH)
"""How repetitions are joined to their load."""


@dataclass(frozen=True, slots=True)
class Correction:
    """The correction as said: what it was, what it was not, the effort, and of which stage and side."""

    atoms: tuple[Atom, ...]
    amounts: tuple[Amount, ...]
    olds: tuple[Amount, ...]
    effort: Effort | None
    stage: Stage | None
    side: Side | None
    side_at: Span | None

    sides: tuple[tuple[Side, int, Span], ...] = ()
    """What each side was, the left first, where both are told: `left was 9 and right 11`."""

    @property
    def counts(self) -> tuple[tuple[int, Span], ...]:
        """Bare repetitions in a row, with where each stands: those of `minis were 5 4 3`, none of `sorry 20x9`."""
        out: list[tuple[int, Span]] = []
        if any(amount.join in PAIRING for amount in self.amounts[1:]):
            return ()
        for amount in self.amounts:
            parts = amount.parts if amount.value is None else (amount.value,)
            plain = amount.counts in (Counts.UNSAID, Counts.REPS) and not amount.sign and not amount.body
            if not plain or not parts or any(p != int(p) for p in parts):
                return ()
            places = amount.parts_at if amount.value is None else (amount.at,)
            out += [(int(p), at) for p, at in zip(parts, places or (amount.at,) * len(parts), strict=False)]
        return tuple(out)


def read_correction(shaped: Sequence[Mark]) -> Correction:
    new, old = _new_and_old(shaped)
    sides = {SIDES[m.kind] for m in shaped if m.kind in SIDES}
    atoms = _atoms(new, keep_sides=len(sides) == 2)
    efforts = [a for a in atoms if isinstance(a, Effort)]
    stage = Stage.DROP if any(m.kind is Kind.DROP for m in shaped) else None
    if stage is None and any(m.kind is Kind.MINI for m in shaped):
        stage = Stage.MINI
    sided = next((m for m in shaped if m.kind in SIDES), None) if len(sides) == 1 else None
    return Correction(
        atoms,
        tuple(_loaded(a, shaped) for a in atoms if isinstance(a, Amount)),
        tuple(a for a in _atoms(old) if isinstance(a, Amount)),
        efforts[-1] if efforts else None,
        stage,
        None if sided is None else SIDES[sided.kind],
        None if sided is None else (sided.start, sided.end),
        _both_sides(new),
    )


def _both_sides(marks: Sequence[Mark]) -> tuple[tuple[Side, int, Span], ...]:
    """`left was 9 and right 11`, `9 left 11 right`: the repetitions of each side; none where more is told."""
    said = [m for m in marks if m.kind is Kind.NUM or m.kind in SIDES]
    if any(m.kind in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.RPE, Kind.RIR, Kind.EACH) for m in marks):
        return ()
    numbers, sides = (said[::2], said[1::2]) if said[:1] and said[0].kind is Kind.NUM else (said[1::2], said[::2])
    whole = all(m.kind is Kind.NUM and m.value is not None and m.value == int(m.value) for m in numbers)
    if not len(numbers) == len(sides) == len(Side) or not whole or not all(m.kind in SIDES for m in sides):
        return ()
    told = [(SIDES[s.kind], int(n.value or 0), (n.start, n.end)) for s, n in zip(sides, numbers, strict=True)]
    return tuple(sorted(told, key=lambda one: one[0] is Side.RIGHT)) if told[0][0] is not told[1][0] else ()


def _loaded(amount: Amount, shaped: Sequence[Mark]) -> Amount:
    """The number of `was with 10`, `were at 10` as a load."""
    if amount.counts is not Counts.UNSAID:
        return amount
    behind = any(
        m.kind in (Kind.WAS, Kind.MEANT) and m.text.split(" ")[-1] in ("with", "at") and after.start == amount.start
        for m, after in pairwise(shaped)
        if m.text
    )
    return replace(amount, counts=Counts.LOAD) if behind else amount


def _atoms(marks: Sequence[Mark], *, keep_sides: bool = False) -> tuple[Atom, ...]:
    kept = (Kind.LEFT, Kind.RIGHT) if keep_sides else ()
    every = {i + 1 for i, m in enumerate(marks) if m.kind is Kind.ALL}
    said = [m for i, m in enumerate(marks) if not (i in every and m.kind is Kind.SETS)]
    return read_atoms(read_items([m for m in said if m.kind not in _STEERING or m.kind in kept]))


def _new_and_old(marks: Sequence[Mark]) -> tuple[list[Mark], list[Mark]]:
    """What it was, and what it was not: after `not` or `i put`, up to a comma or another cue."""
    new: list[Mark] = []
    old: list[Mark] = []
    is_old = False
    for mark in marks:
        if mark.kind in (Kind.NOT, Kind.WROTE):
            is_old = True
        elif is_old and mark.kind in (Kind.COMMA, Kind.MEANT, Kind.SORRY, Kind.WAS, Kind.STOP, Kind.AND) and old:
            is_old = False
        elif mark.kind is Kind.LABEL or (is_old and mark.kind is Kind.EACH):
            continue
        (old if is_old and mark.kind not in (Kind.NOT, Kind.WROTE) else new).append(mark)
    return new, old
