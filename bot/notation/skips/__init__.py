"""What a client leaves out of the session, and whether the message ends it.

`skipped` names every exercise with sets left that is given up, started or not. What is only thought of, asked about or
denied (`can i skip`, `not skipping`) skips nothing.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.notation.answer import Span
from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.skips.forgotten import with_forgotten
from bot.notation.skips.hindered import is_hindered
from bot.notation.skips.negated import with_negated
from bot.notation.skips.only import only_done
from bot.notation.skips.reach import (
    PRONOUNS,
    counted_after,
    counted_alone,
    counted_before,
    is_after,
    is_all_but,
    is_only,
    left_behind,
    names_after,
    names_before,
    names_too,
    rest_count,
    told_before,
)
from bot.notation.skips.sets_left import stops_after, with_sets_left
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


@dataclass(frozen=True, slots=True)
class SkipsSaid:
    """Names that are skipped, as marks; whether the rest or a set of the exercise under way is; the places used."""

    names: tuple[Mark, ...]
    rest: Span | None
    """The words that give up the rest."""
    partly: tuple[tuple[Span, Mark | None], ...]
    """The words that give up what is left of one exercise, each with its name where sets of others follow."""
    places: frozenset[int]
    denied: tuple[Mark, ...] = ()
    """Names after a plain `no`: `no pullup bar here` skips nothing that the session lacks."""
    every: tuple[Mark, ...] = ()
    """Names of which each that fits is meant: `both curls`."""
    since: Mark | None = None
    """The name after which all is given up: `everything after pull ups`."""
    kept: tuple[Mark, ...] = ()
    """Names that the rest does not hold: `rows only, the rest another day`."""
    counted: int | None = None
    """How many the rest is said to be, of sets or of exercises: `the other two`."""
    counted_of: Mark | None = None
    """The name whose sets stand before that, where those of others follow."""


def read_skips(marks: Sequence[Mark]) -> SkipsSaid:
    """What the message skips."""
    said = with_negated(_with_parted(with_sets_left(_with_all_but(with_forgotten(marks)))))
    skips = _read(said)
    more = names_too(said) if skips.names else {}
    names = (*skips.names, *(m for m in more.values() if m not in skips.names))
    closed = [i for i in range(len(said)) if i not in skips.places and _closes_list(said, i)]
    partly = (*skips.partly, *(((said[i].start, said[i].end), told_before(said, i)) for i in closed))
    return replace(skips, names=names, partly=partly, places=skips.places | set(more) | set(closed))


def _with_all_but(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `skip all but`, `all bar the rows got binned` around a name as what excepts it."""
    out = list(marks)
    for place in range(len(marks) - 2):
        but = marks[place + 1].kind is Kind.EXCEPT or marks[place + 1].text in ("but", "bar")
        name = place + 2 + (marks[place + 2].text in ("the", "my"))
        named = name < len(marks) and marks[name].kind is Kind.NAME
        led = place > 0 and marks[place - 1].kind is Kind.SKIP
        if marks[place].text in _WHOLE and but and named and (led or left_behind(marks, place + 1) is not None):
            out[place] = replace(marks[place], kind=Kind.EXCEPT, text="all but")
            out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    return out


_WHOLE = ("all", "everything", "the lot")


def _read(marks: Sequence[Mark]) -> SkipsSaid:
    """What they skip, a verb that has its name in its middle put together."""
    names: list[Mark] = []
    places: set[int] = set()
    rest: Span | None = None
    partly: list[tuple[Span, Mark | None]] = []
    counted: int | None = None
    counted_of: Mark | None = None
    denied: list[Mark] = []
    every: list[Mark] = []
    since: Mark | None = None
    kept: list[Mark] = []
    for place, mark in enumerate(marks):
        if place in places:
            continue
        if mark.kind is Kind.EXCEPT and is_all_but(marks, place):
            kept, used, _, _ = names_after(marks, place)
            rest = (mark.start, mark.end)
            places |= {place, *(i for i in used if marks[i] not in kept), left_behind(marks, place) or place}
            continue
        if mark.kind not in _CUES or is_hindered(marks, place) or _goes_on(marks, place):
            if _is_crossed(marks, place):
                found, used = _crossed(marks, place)
                names, places = names + found, places | used
            continue
        if mark.kind is Kind.FINISH and not _gives_up(marks, place):
            continue
        found, used, is_rest, is_current = _reach(marks, place)
        used |= counted_after(marks, max(used, default=place)) if found else set()
        used |= set(stops_after(marks, place)) if found else set()
        if found and is_after(marks, found[0]):
            since, found, is_rest = found[0], found[1:], False
            places |= used
        if found or is_rest or is_current:
            one = counted_alone(marks, place)
            if is_rest and one is not None and rest_count(marks, used) is None:
                is_rest, is_current = False, True
            used |= set(range(*one)) if one is not None and is_current else set()
            names += found
            denied += found if mark.kind is Kind.NO else []
            every += [m for m in found if _is_every(marks, m)]
            places |= used
            at = (marks[min(used)].start, marks[max(used)].end) if used else (mark.start, mark.end)
            rest = rest or (at if is_rest else None)
            if is_rest:
                counted, counted_of = rest_count(marks, used), told_before(marks, place)
            partly += [(at, told_before(marks, place))] if is_current else []
    alone = only_done(marks)
    if alone and rest is None and not any(marks[i] in names for i in alone):
        rest = (marks[alone[0]].start, marks[alone[-1]].end)
    kept += [m for i, m in enumerate(marks) if i in alone or is_only(marks, i)] if rest is not None else []
    every_name = tuple(every)
    return SkipsSaid(tuple(names), rest, tuple(partly), frozenset(places), tuple(denied), every_name, since,
                     tuple(kept), counted, counted_of)  # fmt: skip


def _reach(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int], bool, bool]:
    """How far what skips here reaches: names, the places used, whether it is the rest, or what is left of one."""
    kind = marks[place].kind
    found, used, is_rest, is_current = names_after(marks, place)
    if is_current and [m.text for m in marks[place + 1 : place + 2]] in _THAT_ONE:
        named, _, ahead = _named_ahead(marks, place, used)
        if named:
            return named, used | ahead, False, False
    given_up = kind is Kind.FAILED and is_rest and "bailed" in marks[place].text.split()
    if (
        kind in (Kind.FAILED, Kind.EXCEPT)
        and not given_up
        and (not found or (kind is Kind.EXCEPT and _tells_one(marks, place)))
    ):
        return [], set(), False, False
    if not (found or is_rest or is_current) and kind in (Kind.SKIP, Kind.SKIPPED):
        found, used, is_rest = names_before(marks, place, kind is Kind.SKIPPED)
        used |= counted_before(marks, min(used, default=0)) if found else set()
        if not found and not is_rest and (_pronoun(marks, place) or _is_bare(marks, place)):
            found, is_current, used = _named_ahead(marks, place, used)
    if not (found or is_rest or is_current) and kind in (Kind.SKIP, Kind.SKIPPED):
        used = _set_before(marks, place)
        is_current = bool(used)
    if not found and kind is Kind.NO and _is_crossed(marks, place):
        found, used = _crossed(marks, place)
    elif not found and kind is Kind.NO and _after_name(marks, place):
        found, used, is_rest = names_before(marks, place, False)
    return found, used, is_rest, is_current


def _tells_one(marks: Sequence[Mark], place: int) -> bool:
    """`except the last set of rows, only got 6`: what one set was, so that nothing is left out."""
    end = next((i for i in range(place, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    which = any(m.kind in (Kind.LASTSET, Kind.LASTREP, Kind.ORD, Kind.SET) for m in marks[place:end])
    told = [i for i in range(place, end) if marks[i].kind is Kind.NUM and marks[i - 1].kind is not Kind.SET]
    names = [i for i in range(place, end) if marks[i].kind in (Kind.NAME, Kind.WEAK)]
    return which and len(told) == 1 and len(names) == 1


_THAT_ONE = (["that one"], ["this one"])
"""What stands for a name before it: `seated calf machine is broken so skipping that one`."""
_PARTED = frozenset(["left", "leave", "took", "take", "taking", "leaving", "cut", "gave", "give", "giving", "given",
                     "called", "calling", "ended", "sack", "sacked", "sacking", "knock", "knocking", "crossed",
                     "crossing", "kick", "kicked", "kicking", "push", "pushed", "pushing", "move", "moved", "moving",
                     "punt", "punted", "punting", "bump", "bumped", "bumping", "shifted", "shifting", "save", "saving",
                     "writing", "wrote", "ruled", "ruling", "let", "letting", "lets"])  # fmt: skip
_BEHIND = (
    ["out"],
    ["off"],
    ["go"],
    ["up"],
    ["undone"],
    *(["to", day] for day in ("next", "tomorrow", "another", *WEEKDAYS)),
    ["a", "miss"],
    ["the", "miss"],
    ["a", "rest"],
    ["a", "break"],
    ["the", "boot"],
    ["the", "swerve"],
    ["away"],
    ["be"],
    ["a", "swerve"],
    ["a", "skip"],
    ["there"],
    ["for", "next"],
    ["for", "another"],
    ["for", "tomorrow"],
    ["til", "next"],
    ["until", "next"],
)


def _with_parted(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `left` as what skips, where a name stands between it and its `out`: `left the press out`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text not in _PARTED:
            continue
        at = place + 1
        while at < len(marks) and at < place + 9 and marks[at].kind in (Kind.FILL, Kind.NAME, Kind.WEAK, Kind.AND):
            if marks[at - 1].kind in (Kind.NAME, Kind.WEAK) and _said(marks, at)[:1] in (["out"], ["off"], ["away"]):
                break
            if marks[at - 1].kind in (Kind.NAME, Kind.WEAK) and _said(marks, at) in _BEHIND:
                break
            at += 1
        named = at < len(marks) and at > place + 1 and marks[at - 1].kind in (Kind.NAME, Kind.WEAK)
        if named and (_said(marks, at)[:1] in _BEHIND or _said(marks, at) in _BEHIND):
            out[place] = replace(mark, kind=Kind.SKIP)
            if _said(marks, at) == ["a", "rest"]:
                out[at + 1] = replace(marks[at + 1], kind=Kind.FILL)
    return out


def _said(marks: Sequence[Mark], place: int) -> list[str]:
    """The two words from a place on."""
    return [w for m in marks[place : place + 2] for w in m.text.split()][:2]


def _named_ahead(marks: Sequence[Mark], place: int, used: set[int]) -> tuple[list[Mark], bool, set[int]]:
    """What a pronoun or a bare `skipping` stands for: the name before it, or the exercise under way."""
    named = [i for i, m in enumerate(marks[:place]) if m.kind in (Kind.NAME, Kind.WEAK)]
    numbered = bool(named) and any(m.kind in _NUMBERED for m in marks[named[-1] : place])
    if numbered and not _pronoun(marks, place):
        return [], False, used
    both = [m.text for m in marks[place + 1 : place + 2]] == ["both"]
    return [marks[i] for i in named[-2 if both else -1 :]], not named, {place}


_CUES = frozenset((Kind.SKIP, Kind.NO, Kind.SKIPPED, Kind.FINISH, Kind.FAILED, Kind.EXCEPT))


def _is_every(marks: Sequence[Mark], name: Mark) -> bool:
    """Whether a name means each that it fits: `both calves`, `any calves`, `calves of either kind`, `calves, both`."""
    place = next(i for i, m in enumerate(marks) if m is name)
    start, _ = part_of(marks, place, _NEAR)
    ahead = {w for m in marks[max(start, place - 4) : place] for w in m.text.split()}
    stop = next((i for i in range(place + 1, len(marks)) if marks[i].kind in (Kind.STOP, Kind.LINE)), len(marks))
    after = [w for m in marks[place + 1 : min(stop, place + _NEAR)] for w in m.text.split()]
    own = after[: next((i for i, w in enumerate(after) if w in _BECAUSE), len(after))]
    two = any(own[i : i + 3] in (["two", "of", "them"], ["2", "of", "them"]) for i in range(len(own)))
    return bool(ahead & _EACH or set(own) & _EACH_BEHIND) or two or ["at", "all"] in (own[:2], own[1:3])


_EACH = frozenset(["both", "all", "any", "either", "neither", "every", "each"])
_EACH_BEHIND = frozenset(["both", "either", "neither", "any", "whatsoever", "whatever", "altogether"])
_BECAUSE = frozenset(["because", "cos", "coz", "cus", "cuz", "bc", "as", "since", "so", "but"])
_NEAR = 8
"""Marks behind a name that may say that each is meant."""


def _set_before(marks: Sequence[Mark], place: int) -> set[int]:
    """The places of `the third i skipped`, `set 3 not done`: a set of the exercise under way, named before."""
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.FILL, Kind.SET, Kind.COLON, Kind.DASH, Kind.WAS):
        if marks[at].text in ("so", "then", "but"):
            return set()
        at -= 1
    number = at > 0 and marks[at].kind is Kind.NUM and marks[at - 1].kind is Kind.SET
    named = at >= 0 and (marks[at].kind in (Kind.ORD, Kind.LASTSET) or number)
    end = next((i for i in range(place + 1, len(marks)) if marks[i].kind in _ENDS), len(marks))
    behind = any(m.kind in (Kind.NAME, Kind.WEAK, Kind.NUM) for m in marks[place + 1 : min(end, place + 4)])
    return set(range(at - number, place + 1)) if named and not behind else set()


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
    if mark.kind not in (Kind.X, Kind.NO) and mark.text not in _NONE:
        return False
    at = place - 1
    while at >= 0 and marks[at].kind in (Kind.DASH, Kind.COLON, Kind.FILL) and marks[at].text != "but":
        at -= 1
    apart = at == place - 1 and kind_at(marks, at) is Kind.COMMA
    if apart:
        at -= 1
    if (mark.text in ("out", "zero") or apart) and not _opens_part(marks, at):
        return False
    closed = _ends(marks, place) and not (apart and kind_at(marks, place + 1) in (Kind.COMMA, Kind.QUERY))
    return closed and at >= 0 and marks[at].kind is Kind.NAME


def _closes_list(marks: Sequence[Mark], place: int) -> bool:
    """`chins 8, 7, none`, `chins 8 7 x`: no set more, at the end of a list of them."""
    said = marks[place].kind in (Kind.X, Kind.SKIP, Kind.SKIPPED) and marks[place].text in ("x", "skip", "skipped")
    if not (said or marks[place].text in _NONE[2:]) or not _ends(marks, place) or marks[place].tight:
        return False
    at = place - 1
    count = 0
    entry = at - (kind_at(marks, at) is Kind.COMMA)
    if not said and [m.kind for m in marks[max(0, entry - 2) : entry + 1]] == [Kind.NUM, Kind.X, Kind.NUM]:
        return False  # `95x5, none`: nothing was left
    while kind_at(marks, at) in (Kind.NUM, Kind.COMMA, Kind.X):
        count += kind_at(marks, at) is Kind.NUM
        at -= 1
    return count > 1 and kind_at(marks, at) in (Kind.NAME, None)


_NONE = ("nope", "out", "nah", "naw", "nay", "none", "zero", "zilch", "nada", "nothing", "negative", "nah mate")


def _crossed(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int]]:
    """The name before a cross, or those that are joined there: `curls + planks = nope`; and the places used."""
    at = place - 1
    while marks[at].kind is not Kind.NAME:
        at -= 1
    first = at
    while first > 1 and marks[first - 1].kind in (Kind.AND, Kind.PLUS) and marks[first - 2].kind is Kind.NAME:
        first -= 2
    return [m for m in marks[first : at + 1] if m.kind is Kind.NAME], set(range(first, place + 1))


def _opens_part(marks: Sequence[Mark], place: int) -> bool:
    """Whether a name stands first in its part: `hypers out`, not `sorted the hypers out`."""
    while place > 0 and (marks[place - 1].text in ("the", "my", "so", "and", "as for", "then")
                         or (place > 1 and marks[place - 1].kind in (Kind.AND, Kind.PLUS)
                             and marks[place - 2].kind is Kind.NAME)):  # fmt: skip
        place -= 1 + (marks[place - 2].kind is Kind.NAME)
    return place <= 0 or marks[place - 1].kind in _ENDS


def _is_bare(marks: Sequence[Mark], place: int) -> bool:
    """`abductor is broken, skipping`, `skip`: the word alone in its part."""
    starts = place == 0 or marks[place - 1].kind in _ENDS or marks[place - 1].text in ("so", "im", "ill", "just", "to")
    return marks[place].text in _ALONE and starts and _ends(marks, place)


_ALONE = ("skip", "skipping", "skipped", "skip it", "pass", "ill skip", "im skipping")


def _goes_on(marks: Sequence[Mark], place: int) -> bool:
    """`couldnt stop it`, `so i left it at 50x10`: what is denied or left stands behind; `stopped the set`.

    In the words of a hurt the denial stands before.
    """
    if marks[place].kind is Kind.NO and is_gear(marks, place):
        return True
    if marks[place].text == "stop" and place and marks[place - 1].kind is Kind.GAP and _pronoun(marks, place):
        return True
    if marks[place].text.startswith("so ") and not _ends(marks, place):
        return True
    said = marks[place].text.split()
    if said == ["stopped"] and set(text_at(marks, place + 1).split()[:1]) & _BY_ITSELF:
        return True
    if {"stop", "stopped", "stopping", "cut"} & set(said) and [m.kind for m in marks[place + 1 : place + 2]] == [
        Kind.SET
    ]:
        return _ends(marks, place + 1)
    behind = marks[place + 1].kind if place + 1 < len(marks) else None
    verb = behind in (Kind.NAME, Kind.WEAK) and _pronoun(marks, place + 1)
    return marks[place].text == "couldnt" and (verb or behind in (Kind.SKIP, Kind.GAP))


def is_gear(marks: Sequence[Mark], place: int) -> bool:
    """`no belt today so chins 7`, `no dip belt`: what is hung on the body is missing, and no exercise is skipped."""
    at = place + 1
    while kind_at(marks, at) is Kind.NAME or text_at(marks, at) in ("weight", "lifting", "the", "my"):
        at += 1
    return at < place + 3 and text_at(marks, at) in _GEAR


_GEAR = frozenset(words("belt belts vest plate plates chain chains straps wraps sleeves chalk collars shoes"))
_BY_ITSELF = frozenset(
    words("working moving responding listening cooperating functioning hurting aching shaking burning feeling behaving")
)
"""What a body stops doing: `my legs stopped working`."""


def _stands_for(said: str) -> bool:
    """`so i left them`, `so thats a no from me`: said of what was named before."""
    return said.rsplit(maxsplit=1)[-1] in ("them", "it") or "thats" in said.split()[:2]


def _pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether `them` or `it` stands for what is skipped."""
    following = marks[place + 1 : place + 2]
    own = marks[place].kind is Kind.SKIPPED and _stands_for(marks[place].text) and _ends(marks, place)
    return own or (bool(following) and following[0].text in PRONOUNS)


def _gives_up(marks: Sequence[Mark], place: int) -> bool:
    """`that's it for bench`: sets left are given up."""
    after = next((m for m in marks[place + 1 : place + 4] if m.text != "the"), None)
    if after is None or kind_at(marks, part_of(marks, place)[1]) is Kind.QUERY:
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
        "thatll do",
        "that will do",
        "thats my lot",
        "thats your lot",
        "thats yer lot",
        "thats the lot",
        "that is all",
        "thats me",
        "thats me done",
    ) and after.kind in (Kind.FOR, Kind.AT, Kind.WITH, Kind.NAME)
