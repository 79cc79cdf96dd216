"""Signs that part exercises as a line does: `rdl 90 10 9 -> curls 25: 12 11`, `rows 60x8 + 12, 12 push ups`.

An arrow before an exercise with its sets, a plus before sets that name theirs behind them, a tick between the sets of
one and the name of the next, where sets or talk stand before. An arrow from one bare exercise to the next tells of a
swap, and stays. Dots between repetitions are commas, and an arrow between a load and its repetitions is a cross:
`gm 60 · 8 · 8`, `squats 185 → 5, 5`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_PARTING = (Kind.ARROW, Kind.PLUS, Kind.SLASH, Kind.AND, Kind.THEN)
NEEDS = (*_PARTING, Kind.DONE, Kind.LINE, Kind.OPEN)
_DOTS = ("•", "·", "∙", "‧")
_TICKED = (Kind.NUM, Kind.EACH, Kind.REPS, Kind.SECONDS, Kind.METRES, Kind.KG, Kind.LB)
_HEAVY, _SHARE = 20, Decimal("0.6")
"""The least load, and how much of it a number of repetitions is at the most (common practice, no source)."""
_DOING = frozenset(words("did got managed hit then next also and finally finished lastly"))
_LEADS = (Kind.COLON, Kind.COMMA, Kind.DASH, Kind.WITH, Kind.AT, Kind.BODY, Kind.ALL, Kind.X, Kind.LEADX, Kind.FILL,
          Kind.PLUS, Kind.MINUS, Kind.SIGN, Kind.OPEN, Kind.WARMUP)  # fmt: skip
_LISTED = (Kind.NUM, Kind.COMMA, Kind.AND, Kind.SLASH, Kind.X, Kind.KG, Kind.LB, Kind.FOR, Kind.S, Kind.AT, Kind.WITH,
           Kind.REPS, Kind.EACH)  # fmt: skip
_LEAST = 2
"""Numbers of sets that name their exercise behind them."""


def with_signs_as_ends(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such signs, and a dash that leads to one, as the end of a line."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.THEN and kind_at(marks, place - 1) in EDGES and kind_at(marks, place + 1) in _SKIPPING:
            continue  # `. next no bench today`
        if _is_dot(marks, place):
            out.append(replace(mark, kind=Kind.COMMA, text=","))
        elif mark.kind is Kind.ARROW and _is_behind_load(marks, place):
            out.append(replace(mark, kind=Kind.X, text="x"))
        elif _is_tick(marks, place):
            out.append(Mark(Kind.LINE, "\n", mark.start, mark.end))
        elif mark.kind in _PARTING and _is_end(marks, place):
            while out and out[-1].kind in (Kind.DASH, Kind.COLON, Kind.STOP):
                out.pop()
            out.append(Mark(Kind.LINE, "\n", mark.start, mark.end))
        else:
            out.append(mark)
    return _with_names_first(out)


def _with_names_first(marks: list[Mark]) -> list[Mark]:
    """`24 x 10, 8, 8 on db bench (last one rpe 8)`: the name before its sets, where a bracket follows it."""
    for place in range(_LEAST + 1, len(marks) - 1):
        if marks[place].kind is not Kind.NAME or marks[place + 1].kind is not Kind.OPEN:
            continue
        start = place
        while kind_at(marks, start - 1) in _LISTED:
            start -= 1
        while kind_at(marks, start) is Kind.COMMA:
            start += 1
        led = kind_at(marks, start - 1) in (None, *_SENTENCES) or text_at(marks, start - 1) in _DOING
        numbers = sum(m.kind is Kind.NUM for m in marks[start:place])
        if led and numbers >= _LEAST and kind_at(marks, start) is Kind.NUM:
            sets = marks[start:place]
            while sets[-1].kind in (Kind.AT, Kind.WITH, Kind.FOR):
                sets.pop()
            return _with_names_first([*marks[:start], marks[place], *sets, *marks[place + 1 :]])
    return marks


_SENTENCES = (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.BREAK)


def _is_dot(marks: Sequence[Mark], place: int) -> bool:
    """Whether a dot stands between two numbers on one line, and starts no line itself."""
    before = kind_at(marks, place - 1) in (Kind.NUM, Kind.KG, Kind.LB, Kind.S)
    return marks[place].text in _DOTS and before and kind_at(marks, place + 1) is Kind.NUM


def _is_behind_load(marks: Sequence[Mark], place: int) -> bool:
    """Whether an arrow leads from a load to its repetitions: not from set to set, `100 → 90`, nor `60 → 62.5 x 5`."""
    at = place - 1 - (kind_at(marks, place - 1) in (Kind.S, Kind.KG, Kind.LB))
    unit = at < place - 1
    load = marks[at].value if kind_at(marks, at) is Kind.NUM else None
    count = marks[place + 1].value if kind_at(marks, place + 1) is Kind.NUM else None
    lead = kind_at(marks, at - 1) in (None, *EDGES, Kind.NAME, Kind.COLON, Kind.DASH, Kind.THEN, Kind.ARROW)
    if load is None or count is None or not lead or kind_at(marks, place + 2) in (Kind.X, Kind.KG, Kind.LB, Kind.S):
        return False
    return (unit or load >= _HEAVY) and count <= _SHARE * load and count == int(count)


def _is_tick(marks: Sequence[Mark], place: int) -> bool:
    """Whether a sign that says done stands between sets and the next exercise: `row 65x9 ✅ flyes skipped`."""
    mark = marks[place]
    signed = mark.kind is Kind.DONE and not any(c.isalnum() for c in mark.text)
    return signed and kind_at(marks, place - 1) in _TICKED and kind_at(marks, place + 1) is Kind.NAME


def _is_end(marks: Sequence[Mark], place: int) -> bool:
    start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind in _SENTENCES), 0)
    before = marks[start:place]
    told = any(
        m.kind is Kind.CLOCK or (m.kind is Kind.NUM and kind_at(marks, start + i + 1) is not Kind.MINUTES)
        for i, m in enumerate(before)
    )
    bare = any(m.kind is Kind.NAME for m in before) and not told and not any(m.kind in _SKIPPING for m in before)
    if not before or bare:
        return False
    if marks[place].kind is Kind.SLASH and marks[place].tight:
        return False
    at = place + 1
    while text_at(marks, at) in _DOING:
        at += 1
    if marks[place].kind in (Kind.AND, Kind.THEN) and kind_at(marks, place - 1) in (Kind.NAME, Kind.COMMA):
        return False  # `flies and curls skipped`
    if marks[place].kind in (Kind.AND, Kind.THEN):
        left_out = any(m.kind in _SKIPPING for m in before)
        told = told or not any(m.kind is Kind.NAME for m in before)
        return told and (_opens_skip(marks, place + 1) or (left_out and _opens_sets(marks, place + 1)))
    opens = _opens_sets(marks, at) or _opens_skip(marks, at)
    behind = _names_behind(marks, at) and (not told or any(m.kind is Kind.NAME for m in before))
    return behind or (marks[place].kind is not Kind.SLASH and opens)


def _opens_sets(marks: Sequence[Mark], at: int) -> bool:
    """Whether an exercise with its sets starts there."""
    if kind_at(marks, at) is not Kind.NAME:
        return False
    at += 1
    while kind_at(marks, at) in _LEADS:
        at += 1
    return kind_at(marks, at) in (Kind.NUM, Kind.CLOCK)


def _opens_skip(marks: Sequence[Mark], at: int) -> bool:
    """Whether an exercise that is left out follows: `-> back ext - skipped`, `-> skipped rows`, `-> Leg Press ❌`."""
    while kind_at(marks, at) is Kind.FILL and text_at(marks, at) in _HAD:
        at += 1
    skips = kind_at(marks, at) in _SKIPPING
    at += skips
    while kind_at(marks, at) is Kind.FILL and text_at(marks, at) in ("the", "my"):
        at += 1
    if skips or kind_at(marks, at) is not Kind.NAME:
        return kind_at(marks, at) is Kind.NAME
    at += 1
    while kind_at(marks, at) in (Kind.DASH, Kind.COLON, Kind.COMMA):
        at += 1
    crossed = kind_at(marks, at) is Kind.X and kind_at(marks, at + 1) in (None, *EDGES, *_PARTING)
    return crossed or kind_at(marks, at) in _SKIPPING


_SKIPPING = (Kind.SKIP, Kind.SKIPPED, Kind.NO)
_HAD = frozenset(words("had to never got i just so then"))


def _names_behind(marks: Sequence[Mark], at: int) -> bool:
    """Whether sets start there that name their exercise behind them: `12, 12 push ups`, `25kg x 11, 11 on curls`."""
    if at < len(marks) and marks[at].tight:
        return False
    end = at
    while kind_at(marks, end) in _LISTED:
        end += 1
    numbers = sum(m.kind is Kind.NUM for m in marks[at:end])
    behind = (None, *EDGES, Kind.OPEN, Kind.DASH, Kind.PLUS, Kind.ARROW, Kind.AT, Kind.FILL, Kind.DONE)
    ends = kind_at(marks, end + 1) in behind
    return numbers >= _LEAST and kind_at(marks, at) is Kind.NUM and kind_at(marks, end) is Kind.NAME and ends
