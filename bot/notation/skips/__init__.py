"""What a client leaves out of the session, and whether the message ends it.

`skipped` names every exercise with sets left that is given up, started or not. What is only thought of, asked about or
denied (`can i skip`, `not skipping`) skips nothing.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.notation.answer import Span
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.quick import replace
from bot.notation.skips.counted import counted_after, counted_alone, counted_before, rest_count, told_before
from bot.notation.skips.crossed import closes_list, crossed_names, is_crossed
from bot.notation.skips.cutting import with_cut
from bot.notation.skips.every import is_every
from bot.notation.skips.forgotten import with_forgotten
from bot.notation.skips.giving_up import gives_up, goes_on, tells_one
from bot.notation.skips.hindered import is_hindered
from bot.notation.skips.kept import is_after, is_all_but, left_behind
from bot.notation.skips.names_ahead import names_before
from bot.notation.skips.negated import with_negated
from bot.notation.skips.only import only_done
from bot.notation.skips.parted import with_parted
from bot.notation.skips.reach import names_after, names_too
from bot.notation.skips.sets_left import stops_after, with_sets_left
from bot.notation.skips.stands_for import is_bare, named_ahead, pronoun, set_before
from bot.notation.tokens import Mark


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
    said = with_negated(with_parted(with_sets_left(with_cut(_with_all_but(with_forgotten(marks))))))
    skips = _read(said)
    more = names_too(said) if skips.names else {}
    names = (*skips.names, *(m for m in more.values() if m not in skips.names))
    closed = [i for i in range(len(said)) if i not in skips.places and closes_list(said, i)]
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
        if mark.kind not in _CUES or is_hindered(marks, place) or goes_on(marks, place):
            if is_crossed(marks, place):
                found, used = crossed_names(marks, place)
                names, places = names + found, places | used
            continue
        if mark.kind is Kind.FINISH and not gives_up(marks, place):
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
            every += [m for m in found if is_every(marks, m)]
            places |= used
            at = (marks[min(used)].start, marks[max(used)].end) if used else (mark.start, mark.end)
            rest = rest or (at if is_rest else None)
            if is_rest:
                counted, counted_of = rest_count(marks, used), told_before(marks, place)
            partly += [(at, told_before(marks, place))] if is_current else []
    alone = only_done(marks)
    if alone and rest is None and not any(marks[i] in names for i in alone):
        rest = (marks[alone[0]].start, marks[alone[-1]].end)
    kept += [m for i, m in enumerate(marks) if i in alone] if rest is not None else []
    every_name = tuple(every)
    return SkipsSaid(tuple(names), rest, tuple(partly), frozenset(places), tuple(denied), every_name, since,
                     tuple(kept), counted, counted_of)  # fmt: skip


def _reach(marks: Sequence[Mark], place: int) -> tuple[list[Mark], set[int], bool, bool]:
    """How far what skips here reaches: names, the places used, whether it is the rest, or what is left of one."""
    kind = marks[place].kind
    found, used, is_rest, is_current = names_after(marks, place)
    if found and _is_also(marks, place, used):
        before, led, _ = names_before(marks, place, kind is Kind.SKIPPED)
        found, used = before + found, used | led
    if is_current and [m.text for m in marks[place + 1 : place + 2]] in _THAT_ONE:
        named, _, ahead = named_ahead(marks, place, used)
        if named:
            return named, used | ahead, False, False
    given_up = kind is Kind.FAILED and is_rest and "bailed" in marks[place].text.split()
    if (
        kind in (Kind.FAILED, Kind.EXCEPT)
        and not given_up
        and (not found or (kind is Kind.EXCEPT and tells_one(marks, place)))
    ):
        return [], set(), False, False
    if not (found or is_rest or is_current) and kind in (Kind.SKIP, Kind.SKIPPED):
        found, used, is_rest = names_before(marks, place, kind is Kind.SKIPPED)
        used |= counted_before(marks, min(used, default=0)) if found else set()
        if not found and not is_rest and (pronoun(marks, place) or is_bare(marks, place)):
            found, is_current, used = named_ahead(marks, place, used)
    if not (found or is_rest or is_current) and kind in (Kind.SKIP, Kind.SKIPPED):
        used = set_before(marks, place)
        is_current = bool(used)
    if not found and kind is Kind.NO and is_crossed(marks, place):
        found, used = crossed_names(marks, place)
    return found, used, is_rest, is_current


def _is_also(marks: Sequence[Mark], place: int, used: set[int]) -> bool:
    """`calves i leave and planks also`: the names on both sides of it."""
    led = kind_at(marks, place + 1) is Kind.AND and any(m.kind is Kind.NAME for m in marks[max(0, place - 2) : place])
    return led and text_at(marks, max(used) + 1) in ("also", "too", "as well", "likewise", "aswell", "as")


_THAT_ONE = (["that one"], ["this one"])
"""What stands for a name before it: `seated calf machine is broken so skipping that one`."""
_CUES = frozenset((Kind.SKIP, Kind.NO, Kind.SKIPPED, Kind.FINISH, Kind.FAILED, Kind.EXCEPT))
