"""Exercises told together under one heading: `press and rows, 65x6 on both`, `A + B: 50x15 / 40x12, 50x14 / 40x12`.

What is of both is told behind each name; what is told in turn goes to the names in turn.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

_JOINS = (Kind.AND, Kind.PLUS, Kind.SLASH, Kind.COMMA, Kind.WITH)
_TURNS = (Kind.SLASH, Kind.PLUS)
_ROUNDS = (Kind.COMMA, Kind.LINE, Kind.STOP, Kind.BREAK, Kind.THEN, Kind.AND)
_LEADING = frozenset(words(
    "i we did done was were today super superset supersets supersetting supersetted superseted setting setted set",
    "sets paired pairing pair alternating alternated alternate as a an in the my of circuit together giant combo",
))  # fmt: skip
"""Words around such a heading that tell no set."""
_ENTRY = frozenset(
    (Kind.NUM, Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB, Kind.S, Kind.REPS, Kind.FILL, Kind.RPE, Kind.RIR,
     Kind.EACH, Kind.WAS, Kind.SECONDS, Kind.METRES)
)  # fmt: skip
_SHARED = _ENTRY | {Kind.AND, Kind.SETS, Kind.COMMA, Kind.COLON, Kind.STOP, Kind.TANK, Kind.ALL, Kind.DONE}
_LINKS = frozenset(words("on in for of at with on the"))


def with_paired(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> list[Mark]:
    """The marks with what is told of such exercises behind the name of each, a line each."""
    marks = _planned(marks)
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.NAME), None)
    if first is None:
        return list(marks)
    named, end = _headed(marks, first)
    rounds = _rounds_before(marks, first)
    start = first if rounds is None else first - len(rounds)
    opening = all(set(m.text.split()) <= _LEADING for m in marks[:start] if m.kind in (Kind.FILL, Kind.WORD))
    places = {p for m in named for p in m.names}
    if len(named) < SEVERAL or len(places) != len(named) or not opening or any(_is_told(m) for m in marks[:start]):
        return list(marks)
    while end < len(marks) and _is_of_heading(marks[end]):
        end += 1
    stop = _stop(marks, end)
    rest, told = marks[end:stop], [exercises[p] for p in sorted(places)]
    found = _shared(rest, rounds, told) or _in_turn(rest, len(named))
    if found is None:
        return list(marks)
    out = [m for m in marks[:start] if m.kind not in (Kind.FILL, Kind.WORD, Kind.SET)]
    for place, name in enumerate(named):
        out += [name, *found[place % len(found)], Mark(Kind.LINE, "\n", marks[stop - 1].end, marks[stop - 1].end)]
    return [*out, *marks[stop:]]


def _planned(marks: Sequence[Mark]) -> list[Mark]:
    """`both bench and rows as planned`, `as planned on bench and rows`: each as planned."""
    if not any(m.kind is Kind.PLANNED for m in marks):
        return list(marks)
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        named, end = _headed(marks, at) if marks[at].kind is Kind.NAME else ([], at)
        start, stop = len(out), end
        while kind_at(marks, stop) in _WENT or text_at(marks, stop) in ("both", "each"):
            stop += 1
        planned = marks[stop] if kind_at(marks, stop) is Kind.PLANNED else None
        if planned is None and kind_at(out, start - 1) in (Kind.AT, Kind.WITH, Kind.FOR):
            planned = out[start - 2] if kind_at(out, start - 2) is Kind.PLANNED else None
            start, stop = start - 2 - (kind_at(out, start - 3) is Kind.ALL), end - 1
            if kind_at(marks, end) not in (None, *EDGES) and kind_at(marks, end - 2) is Kind.COMMA:
                named, stop = named[:-1], end - 3
        behind = stop + 1
        while kind_at(marks, behind) is Kind.FILL and not any(c.isalnum() for c in text_at(marks, behind)):
            behind += 1
        if planned is None or len(named) < SEVERAL or kind_at(marks, behind) not in _BEHIND:
            out.append(marks[at])
            at += 1
            continue
        del out[start:]
        while out and (out[-1].text in ("both", "of", "the") or out[-1].kind is Kind.ALL):
            out.pop()
        for name in named:
            out += [replace(planned, kind=Kind.LINE, text="\n", start=planned.end), name, planned]
        at = stop + 1
    return out


_WENT = (Kind.FILL, Kind.WAS, Kind.ALL, Kind.DONE, Kind.COLON, Kind.SETS, Kind.FINISH)
_BEHIND = (None, *EDGES, Kind.GAP, Kind.AND, Kind.THEN, Kind.FILL, Kind.WORD)


def _headed(marks: Sequence[Mark], first: int) -> tuple[list[Mark], int]:
    """The names that head what follows, joined by small words and signs, and where they end."""
    named, end = [marks[first]], first + 1
    while kind_at(marks, end) in _JOINS:
        at = end + 1
        while kind_at(marks, at) is Kind.ALL or (kind_at(marks, at) is Kind.FILL and text_at(marks, at) in _LEADING):
            at += 1
        if kind_at(marks, at) is not Kind.NAME:
            break
        named.append(marks[at])
        end = at + 1
    return (named, end) if all(len(m.names) == 1 for m in named) else ([], end)


def _rounds_before(marks: Sequence[Mark], first: int) -> list[Mark] | None:
    """The `3 rounds of` before the names."""
    at = first - (first > 0 and marks[first - 1].text == "of")
    told = at > 1 and marks[at - 1].kind is Kind.SETS and marks[at - 2].kind is Kind.NUM
    return list(marks[at - 2 : first]) if told else None


def _is_told(mark: Mark) -> bool:
    return mark.kind in (Kind.NUM, Kind.CLOCK, Kind.WEAK, Kind.SAME, Kind.SKIP, Kind.SKIPPED, Kind.NO)


def _is_of_heading(mark: Mark) -> bool:
    """The `superset:` behind the names."""
    if mark.kind in (Kind.COLON, Kind.DASH, Kind.COMMA, Kind.LINE, Kind.WAS):
        return True
    return mark.kind in (Kind.FILL, Kind.WORD, Kind.SET, Kind.SETS) and set(mark.text.split()) <= _LEADING


def _stop(marks: Sequence[Mark], end: int) -> int:
    """Where what is told of them ends: before the next exercise."""
    later = next((i for i in range(end, len(marks)) if marks[i].kind in (Kind.NAME, Kind.WEAK)), None)
    if later is None:
        return len(marks)
    return next((i for i in range(later - 1, end, -1) if marks[i].kind in _ROUNDS), end)


def _shared(
    rest: Sequence[Mark], rounds: Sequence[Mark] | None, told: Sequence[PlannedExercise]
) -> list[list[Mark]] | None:
    """`65x6 on both, 3 rounds` without the words that say whose it is; `None` where it is not said of both."""
    alone = all(e.sides == 1 and e.load_style is not LoadStyle.PER_HAND for e in told)
    both = [i for i, m in enumerate(rest) if m.text == "both" or (alone and m.kind is Kind.EACH and m.text == "each")]
    if not both or any(m.kind not in _SHARED for m in rest) or not any(m.kind is Kind.NUM for m in rest):
        return None
    gone = set(both) | {i - 1 for i in both if i and rest[i - 1].text in _LINKS}
    gone |= {i + 1 for i, m in enumerate(rest[:-1]) if m.kind is Kind.SETS and rest[i + 1].text == "in"}
    kept = [m for i, m in enumerate(rest) if i not in gone]
    while kept and kept[0].kind in (Kind.COMMA, Kind.COLON):
        del kept[0]
    kept = [replace(m, text="sets") if m.kind is Kind.SETS and m.text.startswith("round") else m for m in kept]
    if rounds is not None and not any(m.kind is Kind.SETS for m in kept):
        kept = [*kept, replace(kept[-1], kind=Kind.COMMA, text=","), rounds[0], replace(rounds[1], text="sets")]
    return [kept]


def _in_turn(rest: Sequence[Mark], count: int) -> list[list[Mark]] | None:
    """The entries of so many exercises, where every round tells one of each: `50x15 / 40x12, 50x14 / 40x12`."""
    out: list[list[Mark]] = [[] for _ in range(count)]
    for one in _split(rest, _ROUNDS):
        turns = _split(one, _TURNS)
        if not any(m.kind is Kind.NUM for m in one):
            if any(m.kind not in (Kind.FILL, Kind.WORD, Kind.FINISH, Kind.GAP, Kind.DONE, Kind.OTHERTIME) for m in one):
                return None
            continue
        plain = all(m.kind in _ENTRY for m in one if m.kind not in _TURNS)
        if len(turns) != count or not plain or not all(_is_entry(t) for t in turns):
            return None
        for told, turn in zip(out, turns, strict=True):
            told.extend([*([Mark(Kind.COMMA, ",", turn[0].start, turn[0].start)] if told else []), *turn])
    return out if out[0] else None


def _is_entry(turn: Sequence[Mark]) -> bool:
    """Whether a load and its repetitions are told, and once."""
    numbers = sum(m.kind is Kind.NUM for m in turn)
    return numbers == SEVERAL and sum(m.kind in (Kind.X, Kind.FOR, Kind.AT) for m in turn) == 1


def _split(marks: Sequence[Mark], seams: Sequence[Kind]) -> list[list[Mark]]:
    """The marks between such seams, none of them empty."""
    out: list[list[Mark]] = [[]]
    for mark in marks:
        if mark.kind in seams:
            out.append([])
        else:
            out[-1].append(mark)
    return [part for part in out if part]
