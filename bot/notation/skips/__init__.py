"""What a client leaves out of the session, and whether the message ends it.

`skipped` names every exercise with sets left that is given up, started or not. What is only thought of, asked about or
denied (`can i skip`, `not skipping`) skips nothing.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import Span
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_BETWEEN = frozenset((Kind.FILL, Kind.AND, Kind.FOR, Kind.WITH, Kind.AT, Kind.ALL, Kind.EACH))
_LISTED = frozenset((Kind.AND, Kind.COMMA, Kind.OR, Kind.FILL, Kind.PLUS, Kind.SLASH))
_SETS = frozenset((Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET, Kind.SETS, Kind.LABEL, Kind.NUM))
_HINDERS = frozenset((Kind.OTHERTIME, Kind.NOT, Kind.UNDONE, Kind.NO))
_PASSIVE = frozenset((Kind.FILL, Kind.WAS, Kind.COLON, Kind.DASH, Kind.COMMA, Kind.ALL, Kind.AND, Kind.PLUS, Kind.SLASH,
                      Kind.OR))  # fmt: skip
_PRONOUNS = frozenset(["them", "it", "those", "these", "that", "em", "dem", "both"])
DENYING = frozenset(["dont", "didnt", "wont", "never", "not", "without", "wouldnt", "cant", "couldnt", "isnt", "no"])


@dataclass(frozen=True, slots=True)
class SkipsSaid:
    """Names that are skipped, as marks; whether the rest or a set of the exercise under way is; the places used."""

    names: tuple[Mark, ...]
    rest: Span | None
    """The words that give up the rest."""
    current: Span | None
    """The words that give up what is left of the exercise under way."""
    places: frozenset[int]
    denied: tuple[Mark, ...] = ()
    """Names after a plain `no`: `no pullup bar here` skips nothing that the session lacks."""
    every: tuple[Mark, ...] = ()
    """Names of which each that fits is meant: `both curls`."""


def read_skips(marks: Sequence[Mark]) -> SkipsSaid:
    """What the message skips."""
    names: list[Mark] = []
    places: set[int] = set()
    rest: Span | None = None
    current: Span | None = None
    denied: list[Mark] = []
    every: list[Mark] = []
    for place, mark in enumerate(marks):
        if place in places:
            continue
        if mark.kind not in _CUES or _is_hindered(marks, place):
            if _is_crossed(marks, place):
                found, used, _ = _before(marks, place, True)
                names, places = names + found[:1], places | {place}
            continue
        if mark.kind is Kind.FINISH and not _gives_up(marks, place):
            continue
        found, used, is_rest, is_current = _after(marks, place)
        if mark.kind in (Kind.FAILED, Kind.EXCEPT) and not found:
            continue
        if not (found or is_rest or is_current) and mark.kind in (Kind.SKIP, Kind.SKIPPED):
            found, used, is_rest = _before(marks, place, mark.kind is Kind.SKIPPED)
            used |= _counted_before(marks, min(used, default=0)) if found else set()
            if not found and not is_rest and (_pronoun(marks, place) or _is_bare(marks, place)):
                named = [i for i, m in enumerate(marks[:place]) if m.kind in (Kind.NAME, Kind.WEAK)]
                numbered = bool(named) and any(m.kind in _NUMBERED for m in marks[named[-1] : place])
                numbered = numbered and not _pronoun(marks, place)
                both = [m.text for m in marks[place + 1 : place + 2]] == ["both"]
                if not numbered:
                    found, is_current, used = [marks[i] for i in named[-2 if both else -1 :]], not named, {place}
        if not found and mark.kind is Kind.NO and (_after_name(marks, place) or _is_crossed(marks, place)):
            found, used, is_rest = _before(marks, place, False)
        if found or is_rest or is_current:
            names += found
            denied += found if mark.kind is Kind.NO else []
            every += [m for m in found if _is_every(marks, m)]
            places |= used
            at = (marks[min(used)].start, marks[max(used)].end) if used else (mark.start, mark.end)
            rest = rest or (at if is_rest else None)
            current = current or (at if is_current else None)
    return SkipsSaid(tuple(names), rest, current, frozenset(places), tuple(denied), tuple(every))


_CUES = frozenset((Kind.SKIP, Kind.NO, Kind.SKIPPED, Kind.FINISH, Kind.FAILED, Kind.EXCEPT))


def _is_every(marks: Sequence[Mark], name: Mark) -> bool:
    """Whether `both` or `all` stands before a name, or `both kinds` after what skips it."""
    place = next(i for i, m in enumerate(marks) if m is name)
    after = [m.text for m in marks[place + 1 : place + 6]]
    kinds = any(
        after[i] == "both" and after[i + 1 : i + 2] in (["kinds"], ["of"], ["types"], []) for i in range(len(after))
    )
    return kinds or any(m.text.split()[:1] in (["both"], ["all"]) for m in marks[max(0, place - 2) : place])


def _after_name(marks: Sequence[Mark], place: int) -> bool:
    """`calves no today`: the name stands before, none after."""
    before = place > 0 and marks[place - 1].kind in (Kind.NAME, Kind.WEAK)
    return before and (place + 1 >= len(marks) or marks[place + 1].kind not in (Kind.NAME, Kind.NUM))


_NUMBERED = frozenset((Kind.NUM, Kind.BODY, Kind.SAME, Kind.PLANNED, Kind.DONE))
_ENDS = frozenset((Kind.STOP, Kind.LINE, Kind.BREAK, Kind.COMMA, Kind.QUERY))


def _ends(marks: Sequence[Mark], place: int) -> bool:
    """Whether a part ends after a place, but for words that change nothing."""
    at = place + 1
    while at < len(marks) and marks[at].kind is Kind.FILL:
        at += 1
    return at >= len(marks) or marks[at].kind in _ENDS


def _is_crossed(marks: Sequence[Mark], place: int) -> bool:
    """`calves x`, `calves - no`, `calves: nope`: a name with a cross or a no behind it, and nothing else."""
    mark = marks[place]
    crossed = mark.kind in (Kind.X, Kind.NO) or mark.text == "nope"
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.DASH, Kind.COLON, Kind.FILL):
        at -= 1
    return crossed and at >= 0 and marks[at].kind is Kind.NAME and _ends(marks, place)


def _is_bare(marks: Sequence[Mark], place: int) -> bool:
    """`abductor is broken, skipping`, `skip`: the word alone in its part."""
    starts = place == 0 or marks[place - 1].kind in _ENDS or marks[place - 1].text in ("so", "im", "ill", "just", "to")
    return marks[place].text in _ALONE and starts and _ends(marks, place)


_ALONE = ("skip", "skipping", "skipped", "skip it", "pass", "ill skip", "im skipping")


def _pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether `them` or `it` stands for what is skipped."""
    following = marks[place + 1 : place + 2]
    return bool(following) and following[0].text in _PRONOUNS


def _gives_up(marks: Sequence[Mark], place: int) -> bool:
    """`that's it for bench`: sets left are given up."""
    if place + 1 >= len(marks):
        return False
    return marks[place].text in (
        "thats it",
        "thats enough",
        "thats all",
        "that is it",
        "stopping there",
        "stopped there",
        "leaving it there",
        "call it a day",
        "ending it there",
        "calling it there",
        "stopping here",
        "stop here",
    ) and marks[place + 1].kind in (Kind.FOR, Kind.AT, Kind.WITH)


def _is_hindered(marks: Sequence[Mark], place: int) -> bool:
    before = marks[max(0, place - 2) : place]
    if any(m.kind in _HINDERS or m.text in DENYING for m in before):
        return marks[place].kind is not Kind.NO and not _is_intent(before)
    return False


def _is_intent(before: Sequence[Mark]) -> bool:
    """`will skip`, `going to skip`: given up all the same."""
    return any(m.text.split()[-1] in ("will", "ill", "to", "gonna", "have") for m in before if m.kind is Kind.OTHERTIME)


def _after(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int], bool, bool]:
    """What follows a `skip`: names in a list, `the rest`, or a set of the exercise under way."""
    found: list[Mark] = []
    used = {place}
    rest = False
    at = place + 1
    sets_first = False
    while at < len(marks):
        mark = marks[at]
        if mark.kind in (Kind.NAME, Kind.WEAK) and not _has_numbers_next(marks, at):
            found.append(mark)
        elif mark.kind is Kind.THEREST and mark.text.endswith((" it", " them")) and not found:
            sets_first = True
        elif (
            mark.kind is Kind.THEREST
            and at + 1 < len(marks)
            and marks[at + 1].kind in (Kind.NAME, Kind.WEAK, Kind.SETS)
        ):
            pass
        elif mark.kind is Kind.THEREST and (not found or rest or marks[at - 1].kind in _LISTED):
            rest = True
        elif mark.kind in _SETS and not found and not _is_entry(marks, at):
            sets_first = True
        elif mark.kind not in _BETWEEN and not (found and mark.kind in _LISTED):
            break
        used.add(at)
        at += 1
    if marks[place].kind is Kind.NO and not (found or rest):
        sets_first = sets_first and any(m.kind in (Kind.ORD, Kind.LASTSET, Kind.LABEL) for m in marks[place + 1 : at])
    while used and max(used) > place and marks[max(used)].kind in (*_LISTED, *_BETWEEN):
        used.discard(max(used))
    return found, used, rest and not (found and sets_first), sets_first and not found and not rest


def _is_entry(marks: Sequence[Mark], at: int) -> bool:
    """Whether a number starts a set rather than counting sets that are left out."""
    if marks[at].kind is not Kind.NUM:
        return False
    if at and marks[at - 1].kind is Kind.SET:
        return False
    return at + 1 >= len(marks) or marks[at + 1].kind not in (Kind.SETS, Kind.SET)


def _has_numbers_next(marks: Sequence[Mark], at: int) -> bool:
    following = marks[at + 1 : at + 3]
    return (
        bool(following)
        and following[0].kind is Kind.NUM
        and len(following) > 1
        and following[1].kind in (Kind.X, Kind.KG, Kind.LB)
    )


def _before(marks: Sequence[Mark], place: int, far: bool) -> tuple[list[Mark], set[int], bool]:
    """Names straight before `skipped`: `calves and rows skipped`."""
    found: list[Mark] = []
    used = {place}
    rest = False
    at = place - 1
    while at >= 0:
        mark = marks[at]
        if mark.kind in (Kind.NAME, Kind.WEAK):
            if found and not any(
                m.kind in (Kind.AND, Kind.COMMA, Kind.SLASH, Kind.PLUS, Kind.OR) for m in marks[at + 1 : at + 3]
            ):
                break
            found.append(mark)
        elif mark.kind is Kind.THEREST:
            rest = not found
        elif not found and (mark.kind is Kind.SETS or (mark.kind is Kind.NUM and marks[at + 1].kind is Kind.SETS)):
            pass
        elif mark.kind not in _PASSIVE or (mark.kind is Kind.COMMA and not (far or found)):
            break
        used.add(at)
        at -= 1
    if not found and not rest:
        return [], set(), False
    return found, used, rest


def _counted_before(marks: Sequence[Mark], place: int) -> set[int]:
    """How many sets of a name are left out: `3 sets of calf raises binned`."""
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.SETS, Kind.SET, Kind.FILL, Kind.THEREST) or marks[at].text == "of"):
        at -= 1
    counts = at >= 0 and at < place - 1 and marks[at].kind is Kind.NUM
    return set(range(at, place)) if counts else set()
