"""An amount, an effort: what each mark of one says of its number."""

from collections.abc import Sequence
from decimal import Decimal

from bot.notation.answer import Span
from bot.notation.atoms import Amount, Counts, Effort
from bot.notation.grammar import Node
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.tokens import Mark
from bot.training.report import Side
from bot.training.units import Unit


def read_amount(parts: Sequence[Node | Mark]) -> Amount:
    marks = [m for part in parts for m in (part.parts if isinstance(part, Node) else (part,)) if isinstance(m, Mark)]
    amount = Amount(min(m.start for m in marks), max(m.end for m in marks))
    for mark in marks:
        amount = _said(amount, mark)
    return amount


def _said(amount: Amount, mark: Mark) -> Amount:
    """The amount with one more mark's meaning."""
    match mark.kind:
        case Kind.NUM:
            spoken = mark.text[:1].isalpha()
            return replace(amount, value=mark.value, parts=mark.parts, spoken=spoken, parts_at=_parts_at(mark))
        case Kind.CLOCK:
            return replace(amount, value=mark.value, parts=mark.parts, clock=True)
        case Kind.SIGN:
            return replace(amount, sign=-1 if mark.text == "-" else 1, counts=_unless(amount, Counts.UNSAID))
        case Kind.KG | Kind.LB:
            unit = Unit.KG if mark.kind is Kind.KG else Unit.LB
            return replace(amount, unit=unit, counts=Counts.LOAD, unit_at=(mark.start, mark.end))
        case Kind.REPS:
            return replace(amount, counts=Counts.REPS)
        case Kind.SECONDS:
            return replace(amount, counts=Counts.SECONDS)
        case Kind.MINUTES:
            return replace(amount, counts=Counts.MINUTES)
        case Kind.METRES:
            return replace(amount, counts=Counts.METRES)
        case Kind.SETS | Kind.TIMES:
            if mark.kind is Kind.TIMES and mark.text == "twice" and amount.value is None:
                return replace(amount, counts=Counts.SETS, value=Decimal(2), after=True)
            after = mark.text in ("twice", "of them")
            counts = Counts.SETS if mark.kind is Kind.SETS else Counts.TIMES
            return replace(
                amount,
                counts=counts,
                after=after,
                group=mark.text in ("group", "last group", "fold") or mark.text.endswith("sets of"),
                final=mark.text == "last group",
                fold=mark.text == "fold",
            )
        case Kind.S:
            return replace(amount, counts=_unless(amount, Counts.S))
        case Kind.M:
            return replace(amount, counts=_unless(amount, Counts.M))
        case Kind.HAND:
            return replace(amount, hand=True)
        case Kind.TOTAL:
            return replace(amount, total=True)
        case Kind.EACH:
            limbs = ("leg", "legs", "arm", "arms", "side", "sides", "foot", "limb")
            return replace(
                amount, each=True, both=mark.text == "both", limb=mark.text.split(" ")[-1].removeprefix("each") in limbs
            )
        case Kind.PAIR:
            return replace(amount, pair=True, counts=Counts.LOAD)
        case Kind.ASSIST:
            return replace(amount, sign=-1, counts=Counts.LOAD)
        case Kind.ADDED:
            return replace(amount, sign=amount.sign or 1, counts=Counts.LOAD)
        case Kind.PLUS:
            return replace(amount, sign=1)
        case Kind.BODY:
            return replace(amount, body=True, body_at=(mark.start, mark.end))
        case Kind.PLATES:
            return replace(amount, plates=True)
        case Kind.SAMELOAD:
            return replace(amount, same_load=True)
        case Kind.SAMEREPS:
            return replace(amount, same_reps=True)
        case Kind.LEFTPOST:
            return replace(amount, side=Side.LEFT, side_at=(mark.start, mark.end))
        case Kind.RIGHTPOST:
            return replace(amount, side=Side.RIGHT, side_at=(mark.start, mark.end))
        case _:
            return amount


def _parts_at(mark: Mark) -> tuple[Span, ...]:
    """Where the numbers of a list typed as one stand: `10,9,8`."""
    pieces = mark.text.split(",")
    if len(pieces) != len(mark.parts) or len(mark.text) != mark.end - mark.start:
        return ()
    starts = [mark.start + sum(len(p) + 1 for p in pieces[:i]) for i in range(len(pieces))]
    return tuple((start, start + len(piece)) for start, piece in zip(starts, pieces, strict=True))


def _unless(amount: Amount, counts: Counts) -> Counts:
    return counts if amount.counts is Counts.UNSAID else amount.counts


def read_effort(effort: Node) -> Effort:
    marks = [m for m in effort.parts if isinstance(m, Mark)]
    start, end = min(m.start for m in marks), max(m.end for m in marks)
    kinds = {m.kind for m in marks}
    number = next((m for m in marks if m.kind in (Kind.NUM, Kind.ORD)), None)
    value = Decimal(1) if number is None or number.value is None else number.value
    if Kind.EMPTY in kinds:
        return Effort(start, end, Decimal(0))
    if Kind.FAILED in kinds:
        whole = -1 if Kind.LASTREP in kinds or value != int(value) else int(value)
        return Effort(start, end, Decimal(0), failed=whole)
    rir = 10 - value if kinds & {Kind.RPE, Kind.RPEPOST, Kind.FEELS} else value
    return scaled_effort(start, end, rir)


def scaled_effort(start: int, end: int, rir: Decimal) -> Effort:
    beyond = not 0 <= rir <= 10
    half = (rir * 2).to_integral_value() / 2 if not beyond else Decimal(0)
    return Effort(start, end, half, beyond=beyond or half != rir)
