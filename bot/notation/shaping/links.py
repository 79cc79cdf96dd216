"""Signs and links: what joins two amounts stays, what joins none has no bearing."""

from bot.notation.clauses import kind_at, mark_at
from bot.notation.grammar import OPERANDS
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.shaping.neighbours import LINKS, PREFIXES, TAILS, is_number
from bot.notation.tokens import Mark

_UNREAD = frozenset(
    (Kind.WORD, Kind.WEAK, Kind.HOURS, Kind.L, Kind.R, Kind.AGAIN, Kind.FINISH, Kind.UNDONE, Kind.SKIP, Kind.SKIPPED,
     Kind.NO, Kind.THEREST, Kind.EXCEPT, Kind.INSTEAD, Kind.OTHERTIME, Kind.TALKNUM, Kind.ASKING, Kind.UNITALL,
     Kind.COUNTED, Kind.MINUS, Kind.FILL)
)  # fmt: skip


def signs(marks: list[Mark]) -> list[Mark]:
    """A `+` or `-` that touches the number after it, or `minus`, at the start of an entry is its sign."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        after = mark_at(marks, place + 1)
        before = out[-1] if out else None
        if mark.kind is Kind.MINUS:
            out.append(replace(mark, kind=Kind.SIGN if is_number(after) else Kind.GAP, text="-"))
            continue
        if (
            mark.kind is Kind.PLUS
            and not out
            and [kind_at(marks, place + n) for n in (1, 2, 3)] == [Kind.NUM, Kind.PLUS, Kind.NUM]
        ):
            out.append(replace(mark, kind=Kind.MINI))
            continue
        if mark.kind in (Kind.PLUS, Kind.DASH) and after is not None and is_number(after):
            free = before is None or not (is_number(before) or before.kind in TAILS) or before.kind is Kind.BODY
            loose = before is not None and is_number(before) and not mark.tight and after.tight
            if (
                after.tight
                and (free or (mark.kind is Kind.DASH and loose))
                and not (before is not None and before.kind is Kind.BODY and mark.kind is Kind.PLUS)
            ):
                out.append(replace(mark, kind=Kind.SIGN))
                continue
        out.append(mark)
    return out


def links(marks: list[Mark]) -> list[Mark]:
    """Links that join two amounts stay; an `x` that leads a number is `LEADX`; others have no bearing."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind in LINKS:
            ends = _ends_amount(out)
            starts = kind_at(marks, place + 1) in OPERANDS or (
                kind_at(marks, place + 1) in PREFIXES and kind_at(marks, place + 2) is Kind.NUM
            )
            rated = kind_at(marks, place + 2) in (Kind.TANK, Kind.RPEPOST, Kind.RIRPOST) and kind is not Kind.X
            if rated or not (ends and starts):
                lead = kind is Kind.X and kind_at(marks, place + 1) is Kind.NUM
                at = (
                    not rated
                    and kind is Kind.AT
                    and mark.text.startswith("@")
                    and kind_at(marks, place + 1) is Kind.NUM
                )
                kind = Kind.LEADX if lead else Kind.LEADAT if at else Kind.GAP
                if kind is Kind.GAP and mark.kind is not Kind.X:
                    continue
        elif (kind is Kind.PLUS and out and out[-1].kind is Kind.BODY and not is_number(mark_at(marks, place + 1))) or (
            kind is Kind.SIGN and out and out[-1].kind is Kind.BODY and not is_number(mark_at(marks, place + 1))
        ):
            continue
        elif kind in _UNREAD:
            kind = Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _ends_amount(out: list[Mark]) -> bool:
    """Whether an amount ends here: a number or body weight, with what may stand after it."""
    place = len(out) - 1
    while place >= 0 and out[place].kind in TAILS and out[place].kind not in OPERANDS:
        place -= 1
    rated = place > 0 and out[place - 1].kind in (Kind.RPE, Kind.RIR, Kind.FEELS, Kind.FAILED)
    return place >= 0 and out[place].kind in OPERANDS and not rated
