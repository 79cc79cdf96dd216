"""Efforts beside their numbers: ranges taken for their middle, words before or after what they rate."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, mark_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import SEPARATORS, is_number
from bot.notation.tokens import Mark


def ranges(marks: list[Mark]) -> list[Mark]:
    """`rpe 8-9`, `2 to 3 left`: a range of effort is its middle, to the nearest half (halves between round up)."""
    out: list[Mark] = []
    at = 0
    effort: tuple[Kind, ...] = (Kind.RPE, Kind.RIR, Kind.TANK, Kind.FEELS, Kind.COULD, Kind.MORE)
    if not any(m.kind is Kind.RIGHT for m in marks):
        effort = (*effort, Kind.LEFT)
    while at < len(marks):
        mark = marks[at]
        if mark.kind is not Kind.NUM:
            out.append(mark)
            at += 1
            continue
        joined = kind_at(marks, at + 1) in (Kind.DASH, Kind.TO, Kind.OR, Kind.AND, Kind.SLASH)
        second = mark_at(marks, at + 2)
        if mark.kind is Kind.NUM and kind_at(marks, at + 1) is Kind.SLASH and second is not None and second.value == 10:
            rated = [m.kind for m in (*out[-1:], *marks[at + 3 : at + 4])]
            if {Kind.RPE, Kind.FEELS} & set(rated) and mark.value is not None and mark.value <= 10:
                out.append(replace(mark, end=second.end))
                at += 3
                continue
        if mark.kind is Kind.NUM and joined and second is not None and second.kind is Kind.NUM:
            low, high = mark.value, second.value
            before = mark_at(out, len(out) - 1)
            if before is not None and before.kind in (Kind.COLON, Kind.WAS):
                before = mark_at(out, len(out) - 2)
            if kind_at(marks, at + 1) is Kind.SLASH and kind_at(marks, at + 3) is Kind.SLASH:
                before = None
            said = before is not None and before.kind in (*effort, Kind.AT)
            said = said or kind_at(marks, at + 3) in effort
            if said and low is not None and high is not None and low < high <= low + 2 and high <= 10:
                is_at = before is not None and before.kind is Kind.AT
                if not (is_at and kind_at(marks, at + 3) in (Kind.KG, Kind.LB, Kind.REPS)):
                    middle = ((low + high) * 1).quantize(Decimal(1)) / 2
                    out.append(replace(mark, end=second.end, value=middle, parts=()))
                    at += 3
                    continue
        out.append(mark)
        at += 1
    return out


_SEVERAL = (
    Kind.FILL, Kind.REPS, Kind.RPE, Kind.RIR, Kind.AT, Kind.LASTREP, Kind.COLON, Kind.WAS, Kind.DASH, Kind.LEFT,
    Kind.EMPTY, Kind.FEELS, Kind.COULD, Kind.TANK,
)  # fmt: skip
"""Kinds that those beside them may change."""


def efforts(marks: list[Mark], two_sided: bool = False) -> list[Mark]:
    """Efforts before or after their number; `2 left` is one where no side is meant; `had` only with `more`.

    `two_sided`: the session has an exercise that works each side by itself, so that `8 left` is of that side.
    """
    sided = any(m.kind is Kind.RIGHT for m in marks)
    marks = _last_first(marks)
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        kind = mark.kind
        if kind not in _SEVERAL:
            out.append(mark)
            continue
        before, after = mark_at(out, len(out) - 1), mark_at(marks, place + 1)
        if kind is Kind.REPS and is_number(before) and kind_at(marks, place + 1) is Kind.TANK:
            continue
        if kind in (Kind.RPE, Kind.RIR) and not is_number(after):
            reaches = after is not None and after.kind in (Kind.COLON, Kind.AT, Kind.WAS, Kind.DASH)
            if reaches and is_number(mark_at(marks, place + 2)):
                out.append(mark)
                continue
            post = Kind.RPEPOST if kind is Kind.RPE else Kind.RIRPOST
            kind = post if is_number(before) else Kind.GAP
        elif kind is Kind.AT and before is not None and before.kind is Kind.LASTSET and _rates_last(marks, place, out):
            kind = Kind.RPE
        elif kind is Kind.LASTREP and mark.text in _LAST and after is not None and _is_effort(marks, place + 1):
            kind = Kind.LASTSET
        elif kind in (Kind.COLON, Kind.AT, Kind.WAS, Kind.DASH) and before is not None:
            if before.kind in (Kind.RPE, Kind.RIR) and is_number(after):
                continue
            if kind is Kind.AT and after is not None and after.kind in (Kind.RPE, Kind.RIR):
                continue
        elif kind is Kind.LEFT and is_number(before) and not sided and (not mark.tight or _few(before)):
            kind = Kind.TANK if mark.text == "left" and _small(before, _FEW_LEFT if two_sided else 10) else kind
        elif kind is Kind.EMPTY and mark.text.endswith("failed") and after is not None and after.kind is Kind.ORD:
            kind = Kind.FAILED
        elif kind is Kind.FEELS and not (is_number(after) and after is not None and _is_scale(after)):
            kind = Kind.GAP
        elif kind is Kind.COULD:
            more = kind_at(marks, place + 2) in (Kind.MORE, Kind.TANK, Kind.LEFT)
            more = more and is_number(after)
            if not (more or kind_at(marks, place + 1) is Kind.ANOTHER):
                kind = Kind.GAP if is_number(after) is False else Kind.FILL
        elif kind is Kind.TANK and not (before is not None and before.kind in (Kind.NUM, Kind.ANOTHER)):
            kind = Kind.GAP
        if kind is not Kind.FILL:
            out.append(mark if kind is mark.kind else replace(mark, kind=kind))
    return out


def _last_first(marks: list[Mark]) -> list[Mark]:
    """`15x5 all sets, rpe 8 on the last`: what the effort is of, before it."""
    if not any(m.kind in (Kind.LASTSET, Kind.LASTREP) for m in marks):
        return marks
    for place in range(1, len(marks) - 3):
        rated = marks[place].kind in (Kind.RPE, Kind.RIR) and is_number(marks[place + 1])
        kept = marks[place + 1].kind in (Kind.TANK, Kind.LEFT, Kind.RIR, Kind.RPE) and is_number(marks[place])
        if not (rated or (kept and _small(marks[place]))):
            continue
        end = place + 3
        led = marks[place + 2].kind in (Kind.AT, Kind.WITH, Kind.FOR)
        of_last = marks[end].kind is Kind.LASTSET or (marks[end].kind is Kind.LASTREP and marks[end].text in _LAST)
        if led and of_last and kind_at(marks, end + 1) in (None, *SEPARATORS) and _is_apart(marks, place):
            last = replace(marks[end], kind=Kind.LASTSET)
            return [*marks[:place], last, *marks[place : place + 2], *marks[end + 1 :]]
    return marks


def _is_apart(marks: Sequence[Mark], place: int) -> bool:
    """Whether all sets were told before an effort."""
    return any(m.kind in (Kind.ALL, Kind.SETS, Kind.X) or is_number(m) for m in marks[:place])


_LAST = ("last", "the last", "final", "the final")


def _is_effort(marks: Sequence[Mark], place: int) -> bool:
    """`@9`, `rpe 9`, `rir 1`: an effort behind `last`, which is then of a set and not a repetition."""
    place += kind_at(marks, place) is Kind.WAS
    number = mark_at(marks, place + 1)
    if kind_at(marks, place) is Kind.NUM and kind_at(marks, place + 1) in (Kind.RIR, Kind.TANK):
        return True
    rates = kind_at(marks, place) in (Kind.RPE, Kind.RIR)
    if kind_at(marks, place) is Kind.FEELS:
        return number is not None and is_number(number) and _is_scale(number)
    touches = kind_at(marks, place) is Kind.AT and marks[place].text == "@"
    return number is not None and is_number(number) and (rates or (touches and _is_scale(number)))


def _rates_last(marks: Sequence[Mark], place: int, before: Sequence[Mark]) -> bool:
    """`70: 6 6 5, last one at 9`: the effort of the last set, where its repetitions were said before."""
    after = mark_at(marks, place + 1)
    ends = mark_at(marks, place + 2) is None or kind_at(marks, place + 2) in SEPARATORS
    said = sum(is_number(m) for m in before) >= 2
    return ends and said and after is not None and after.kind is Kind.NUM and _is_scale(after)


_FEW_LEFT = 5
"""Repetitions left beyond which `left` beside two-sided work is a side. Ours."""


def _small(mark: Mark | None, most: int = 10) -> bool:
    return mark is not None and mark.value is not None and mark.value <= most


def _few(mark: Mark | None) -> bool:
    """Whether a number touched by `left` is too small for a set of one side: `2left`."""
    return mark is not None and mark.value is not None and mark.value <= 3


def _is_scale(mark: Mark) -> bool:
    return mark.value is not None and 5 <= mark.value <= 10
