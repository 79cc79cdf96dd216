"""Single letters and short words after a number, by what they touch: sides, repetitions, dumbbells, metres."""

from dataclasses import replace

from rapidfuzz.distance import OSA

from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import is_number
from bot.notation.tokens import Mark

_SHORT = {
    "reps": Kind.REPS, "rep": Kind.REPS, "sets": Kind.SETS, "set": Kind.SETS, "kilo": Kind.KG, "kilos": Kind.KG,
    "each": Kind.EACH, "side": Kind.EACH, "secs": Kind.SECONDS, "mins": Kind.MINUTES,
}  # fmt: skip
"""Words so common after a number that a slip in them is still seen."""
_TRIED = ("reps", "sets", "kilo", "kilos", "each", "secs", "mins", "side", "rep", "set")
"""The order in which they are tried."""
_SEVERAL = (Kind.L, Kind.R, Kind.S, Kind.M, Kind.WEAK, Kind.WORD, Kind.SET, Kind.LB)
"""Kinds that those beside them may change."""


def letters(marks: list[Mark], two_sided: bool) -> list[Mark]:
    """`l`, `r`, `s`, `m` by what they touch: sides, repetitions, dumbbells, metres; else no bearing."""
    letters = {m.kind for m in marks}
    has_left = Kind.L in letters or Kind.LEFT in letters
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind not in _SEVERAL:
            out.append(mark)
            continue
        before, after = mark_at(marks, place - 1), mark_at(marks, place + 1)
        touches = mark.tight and is_number(before)
        measured = kind_at(marks, place - 1) in (Kind.SECONDS, Kind.METRES, Kind.MINUTES) and is_number(
            mark_at(marks, place - 2)
        )
        kind = mark.kind
        if kind is Kind.L:
            kind = (
                Kind.LEFT
                if is_number(before) or is_number(after) or measured or kind_at(marks, place + 1) is Kind.COLON
                else Kind.GAP
            )
        elif kind is Kind.R:
            if has_left or (two_sided and not touches and is_number(after)):
                kind = Kind.RIGHT
            elif is_number(before) and is_number(after) and after is not None and after.tight and not mark.tight:
                kind = Kind.SLIP
            elif is_number(before):
                kind = Kind.REPS
            elif two_sided and measured:
                kind = Kind.RIGHT
            else:
                kind = Kind.GAP
        elif kind is Kind.S and not mark.tight and is_number(after) and after is not None and after.tight:
            kind = Kind.SET
        elif kind in (Kind.S, Kind.M) and not is_number(before):
            labels = kind is Kind.S and is_number(after) and after is not None and after.tight
            kind = Kind.SET if labels else Kind.GAP
        elif (
            kind is Kind.WEAK
            and mark.text.startswith(("dumb", "db", "kettle"))
            and before is not None
            and (is_number(before) or before.kind in (Kind.KG, Kind.LB))
        ):
            kind = Kind.HAND
        elif kind is Kind.WORD and is_number(before):
            kind = _short(mark.text) or kind
        elif kind is Kind.SET and is_number(before) and not is_number(after):
            kind = Kind.SETS
        elif kind is Kind.LB and mark.text == "#" and _is_before(mark, before, after):
            kind = Kind.SET if is_number(after) else Kind.GAP
        out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _is_before(mark: Mark, before: Mark | None, after: Mark | None) -> bool:
    """Whether a `#` is no pound sign after its number: none stands there, or it touches the next one."""
    touches = after is not None and is_number(after) and after.tight and not mark.tight
    return touches or not is_number(before)


def _short(word: str) -> Kind | None:
    """The kind of a short word that is one slip away from one of the commonest after a number."""
    if not 4 <= len(word) <= 6:
        return None
    near = [w for w in _TRIED if w[0] == word[0] and OSA.distance(word, w, score_cutoff=1) <= 1]
    return _SHORT[near[0]] if near else None
