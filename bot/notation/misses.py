"""Repetitions that failed, in other words: `the 8th got stuck`, `missed the 8th on the last`, `failed the 8th so 7`.

All become `failed the 8th`; the words that say of which set it was go before it, and what only says it once more goes.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.bounds import EARLIEST_FAILED
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.next_failed import counts_sets, told_last
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_FAR = 40
"""Marks that are looked over for what a repetition follows, or what is said of it."""
_MISSED = frozenset(words("missed failed lost bailed"))
_STOPPED = frozenset(words("stuck stalled failed died buried pinned crushed"))
_LINKS = (Kind.AT, Kind.WITH, Kind.FOR, Kind.FILL)
_LOADS = (Kind.AT, Kind.WITH, Kind.KG, Kind.LB)
_SAYING = (Kind.WORD, Kind.FILL, Kind.EMPTY, Kind.FAILED)
_LAST = ("last", "final", "set", "one")
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.AND, Kind.THEN, Kind.CLOSE, Kind.AT, Kind.QUERY)
_SAID_AGAIN = frozenset(words("so thats leaving left making"))


def with_misses(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words in that form."""
    out = list(marks)
    if not any(m.kind is Kind.ORD or set(m.text.split()) & _STOPPED for m in out):
        return out
    _leave_uncounted(out)
    at = 0
    while at < len(out):
        _name_failure(out, at)
        if _bails_on_set(out, at):
            out[at] = replace(out[at], kind=Kind.SKIP)
        if out[at].kind is Kind.FAILED:
            _count_repetition(out, at)
            _say_once(out, at)
            at = _put_behind_set(out, _tell_set_first(out, at))
        at += 1
    return _put_behind_load(out)


def _leave_uncounted(out: list[Mark]) -> None:
    """`7 at 95, 8th was a push press so dont count it`: a repetition that is no set, and scraps none."""
    for at, mark in enumerate(out):
        value = mark.value or 0
        rep = mark.kind is Kind.ORD and value >= EARLIEST_FAILED and kind_at(out, at + 1) not in (Kind.SET, Kind.NAME)
        near = range(max(0, at - _FAR), at)
        if not rep or not any(out[i].value == value - 1 and _counts_reps(out, i) for i in near):
            continue
        last = min(len(out), at + _FAR)
        end = next((i for i in range(at, last) if out[i].kind in (Kind.STOP, Kind.LINE, Kind.QUERY)), last)
        taken = any(m.kind in (Kind.SCRAP, Kind.SKIP, Kind.SKIPPED) for m in out[at:end])
        if taken and not any(m.kind in (Kind.NUM, Kind.FAILED) or m.text in _MISSED for m in out[at:end]):
            out[at:end] = [replace(m, kind=Kind.GAP, value=None, parts=(), names=()) for m in out[at:end]]


def _counts_reps(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number may be repetitions: not that of `2 of squats`, `2 squats done`."""
    named = kind_at(marks, place + 1) in (Kind.NAME, Kind.WEAK) and kind_at(marks, place + 2) is Kind.DONE
    times = [kind_at(marks, place - n) for n in (1, 3)] == [Kind.X, Kind.X]  # the 4 of `32x10x4, the fifth i skip`
    return marks[place].kind is Kind.NUM and not named and not times and not counts_sets(marks, place)


def _name_failure(out: list[Mark], at: int) -> None:
    """`the 8th rep got stuck`, `I missed the 8th`: failed the 8th."""
    if out[at].kind is Kind.ORD and (out[at].value or 0) >= EARLIEST_FAILED:
        end = at + 1 + (kind_at(out, at + 1) is Kind.REPS)
        stop = end
        while kind_at(out, stop) in (Kind.FILL, Kind.WAS) and not set(text_at(out, stop).split()) & _STOPPED:
            stop += 1
        known = kind_at(out, at - 1) in (Kind.FAILED, Kind.SET) or kind_at(out, end) is Kind.SET
        said = bool(set(text_at(out, stop).split()) & _STOPPED) and kind_at(out, stop) in _SAYING
        named = text_at(out, stop) == "failed on" and kind_at(out, stop + 1) is Kind.NAME
        stop = _past_where(out, stop)
        if said and not known and (named or kind_at(out, stop + 1) in _ENDS):
            failed = replace(out[at], kind=Kind.FAILED, text="failed", value=None, end=out[at].start)
            gone = [replace(m, kind=Kind.AT if named else Kind.GAP) for m in out[end : stop + 1]]
            out[at : stop + 1] = [failed, *out[at:end], *gone]
        return
    rep = _stuck_on(out, at)
    if rep is not None:
        gone = [replace(m, kind=Kind.GAP) for m in out[at + 1 : rep]]
        failed = replace(out[at], kind=Kind.FAILED, text="failed the")
        out[at : rep + 1] = [*gone, failed, replace(out[rep], kind=Kind.ORD)]
        return
    if out[at].kind not in (Kind.SKIP, Kind.SKIPPED) or not set(out[at].text.split()) & _MISSED:
        return
    rep = at + 1
    while kind_at(out, rep) is Kind.FILL:
        rep += 1
    counted = kind_at(out, rep) is Kind.ORD and (out[rep].value or 0) >= EARLIEST_FAILED
    counted = counted and not _is_next_set(out, at, int(out[rep].value or 0))
    if counted and kind_at(out, rep + 1) not in (Kind.SET, Kind.NAME, Kind.WEAK) and text_at(out, rep + 1) != "one":
        out[at] = replace(out[at], kind=Kind.FAILED, text="failed the")


def _is_next_set(marks: Sequence[Mark], at: int, number: int) -> bool:
    """`50x10 9, bailed on the third`: the set behind those told, where each had more repetitions than that."""
    reps = reps_told(marks, at)
    return len(reps) == number - 1 and all(value is not None and value > number + 1 for value in reps)


def reps_told(marks: Sequence[Mark], at: int) -> list[Decimal | None]:
    """The repetitions told before a place, in its sentence since its name: those of the sets so far."""
    start = next((i + 1 for i in range(at - 1, -1, -1) if marks[i].kind in (Kind.STOP, Kind.LINE, Kind.NAME)), 0)
    return [
        m.value
        for i, m in enumerate(marks[start:at], start)
        if m.kind is Kind.NUM and kind_at(marks, i + 1) not in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.COLON)
    ]


def _bails_on_set(marks: Sequence[Mark], at: int) -> bool:
    """Whether what is called a failure is of a whole set: `50x10 9, bailed on the third`."""
    bailed = marks[at].kind is Kind.FAILED and "bailed" in marks[at].text.split()
    bailed = bailed and kind_at(marks, at + 2) is not Kind.REPS
    return bailed and kind_at(marks, at + 1) is Kind.ORD and _is_next_set(marks, at, int(marks[at + 1].value or 0))


def _stuck_on(marks: Sequence[Mark], at: int) -> int | None:
    """Where the repetition of `stuck in the hole on the 6th` stands; `None` where none does."""
    if not set(text_at(marks, at).split()) & (_STOPPED - {"failed"}) or kind_at(marks, at) not in _SAYING:
        return None
    rep = at + 1
    while text_at(marks, rep) and set(text_at(marks, rep).split()) <= _WHERE | {"rep"}:
        rep += 1
    done = next(
        (m.value for m in reversed(marks[max(0, at - _FAR) : at]) if m.kind is Kind.NUM and m.value is not None), None
    )
    beyond = done is not None and marks[rep : rep + 1] and marks[rep].value == done + 1 and done + 1 >= EARLIEST_FAILED
    counted = kind_at(marks, rep) in (Kind.ORD, Kind.NUM) and kind_at(marks, rep + 1) in _ENDS
    return rep if beyond and counted and rep > at + 1 else None


def _past_where(marks: Sequence[Mark], stop: int) -> int:
    """Where the words end that say how far it came: `stuck in the hole`, `stalled halfway up`, `died on me`."""
    at = stop + 1
    while text_at(marks, at) and set(text_at(marks, at).split()) <= _WHERE:
        at += 1
    return at - 1 if kind_at(marks, at) in _ENDS else stop


_WHERE = frozenset(words(
    "in on at off the hole bottom top me half halfway way up down mid middle chest pins floor just above past knee "
    "knees there coming out of it about"
))  # fmt: skip


def _put_behind_load(out: list[Mark]) -> list[Mark]:
    """`failed the 10th on thrusts at 90`, `failed the 10th. 90 on the bar`: the load, then what failed."""
    numbers = [i for i, m in enumerate(out) if m.kind is Kind.NUM]
    at = next((i for i, m in enumerate(out) if m.kind is Kind.FAILED), len(out))
    if len(numbers) != 1 or numbers[0] < at or kind_at(out, at + 1) is not Kind.ORD:
        return out
    end = at + 2 + (kind_at(out, at + 2) is Kind.REPS)
    load = numbers[0]
    behind = load + 1 + (kind_at(out, load + 1) in _UNITS)
    between = out[end:load]
    plain = all(m.kind in _BETWEEN for m in between) and kind_at(out, behind) in (*_ENDS, Kind.FILL)
    if not plain or not between or (len(between) == 1 and between[0].kind in _LINKS):
        return out
    names = [m for m in between if m.kind is Kind.NAME]
    said = [replace(m, kind=Kind.FILL) for m in between if m.kind is not Kind.NAME]
    where = behind + 2 if kind_at(out, behind) in _LINKS and kind_at(out, behind + 1) is Kind.PLATES else behind
    return [*out[:at], *names, *out[load:behind], *out[at:end], *said, *out[where:]]


_UNITS = (Kind.KG, Kind.LB, Kind.S)
_BETWEEN = (Kind.FILL, Kind.WORD, Kind.NAME, Kind.COMMA, Kind.STOP, Kind.WAS, Kind.ALL, Kind.THEREST, *_LINKS)


def _say_once(out: list[Mark], at: int) -> None:
    """`failed the 8th so 7`, `failed the 8th at 60, so 7`: that seven were done is said already."""
    rep = at + 1
    said = rep + 1
    while kind_at(out, said) in (Kind.REPS, Kind.COMMA, Kind.GAP, *_LOADS):
        said += 2 if kind_at(out, said) in _LINKS and kind_at(out, said + 1) is Kind.NUM else 1
    if kind_at(out, rep) is not Kind.ORD or not set(text_at(out, said).split()) & _SAID_AGAIN:
        return
    number = said
    while kind_at(out, number) in (Kind.FILL, Kind.WAS, Kind.LEFT):
        number += 1
    end = number + 1 + (kind_at(out, number + 1) is Kind.REPS)
    if (
        kind_at(out, number) is Kind.NUM
        and kind_at(out, end) in _ENDS
        and out[number].value == (out[rep].value or 0) - 1
    ):
        out[said:end] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in out[said:end]]


def _count_repetition(out: list[Mark], at: int) -> None:
    """`failed rep 9` is `failed the 9th`."""
    number = out[at + 1] if at + 1 < len(out) else None
    if text_at(out, at).split(" ")[-1] in ("rep", "number") and number is not None and number.kind is Kind.NUM:
        whole = number.value is not None and number.value >= EARLIEST_FAILED and not number.parts
        if whole and kind_at(out, at + 2) in (*_ENDS, *_LINKS):
            out[at + 1] = replace(number, kind=Kind.ORD)


def _tell_set_first(out: list[Mark], at: int) -> int:
    """`10, 9, on the third i failed the 9th`: the number of the set, then what failed; `4. on the last i failed the
    5th` tells again of the set of four. Gives where the failure stands then."""
    which = at - 1
    while kind_at(out, which) is Kind.FILL:
        which -= 1
    which -= kind_at(out, which) is Kind.SET
    told = kind_at(out, which) in (Kind.LASTSET, Kind.LASTREP, Kind.ORD) and kind_at(out, at + 1) is Kind.ORD
    if not told or not {"on", "in"} & set(text_at(out, which - 1).split()):
        return at
    last = out[which].kind is not Kind.ORD
    said = replace(out[which], kind=Kind.LASTSET if last else Kind.LABEL, text="last one")
    return _tell_which(out, which - 1, at, [said])


def _tell_which(out: list[Mark], start: int, at: int, which: list[Mark]) -> int:
    """Puts what says of which set before the failure at a place, for the marks from `start` to it; nothing where the
    repetitions told before it are those of that set. Gives where the failure stands then."""
    before = start
    while kind_at(out, before - 1) in (Kind.COMMA, Kind.STOP, Kind.DASH, Kind.AND, Kind.FILL):
        before -= 1
    told, done = reps_told(out, before), (out[at + 1].value or 0) - 1
    number = int(which[0].value or 0) if which[0].kind is Kind.LABEL else 0
    again = done == told_last(out[:before]) and done + 1 >= EARLIEST_FAILED and number in (0, len(told))
    if again and not any(m.kind is Kind.NAME for m in which):
        out[before:at] = []
        return before
    if told and number == len(told) + 1:
        which = [replace(which[0], kind=Kind.LASTSET, value=None)]
    parted = [] if start == 0 or kind_at(out, start - 1) in _ENDS else [replace(which[0], kind=Kind.COMMA, text=",")]
    out[start:at] = [*parted, *which]
    return start + len(parted) + len(which)


def _put_behind_set(out: list[Mark], at: int) -> int:
    """`missed the 8th on the last bench set at 60`: the last set, 60, failed the 8th; where to go on."""
    end = at + 2 + (kind_at(out, at + 2) is Kind.REPS)
    link = end
    while kind_at(out, link) in _LINKS:
        link += 1
    if kind_at(out, at + 1) is not Kind.ORD or link == end:
        return at
    last = kind_at(out, link) in (Kind.LASTSET, Kind.LASTREP) and text_at(out, link).split(" ")[-1] in _LAST
    link += kind_at(out, link) is Kind.SET and kind_at(out, link + 1) is Kind.NUM
    numbered = kind_at(out, link) is Kind.ORD and out[link].text != out[at + 1].text
    numbered = numbered or kind_at(out, link - 1) is Kind.SET
    named = kind_at(out, link) is Kind.NAME and not any(m.kind is Kind.NUM for m in out)
    stop = link + 1
    while kind_at(out, stop) in (Kind.NAME, Kind.WEAK, Kind.SET) or text_at(out, stop) == "one":
        stop += 1
    if not (last or numbered or named) or kind_at(out, stop) not in _ENDS:
        return at
    names = [m for m in out[link:stop] if m.kind in (Kind.NAME, Kind.WEAK)]
    which = replace(out[link], kind=Kind.LASTSET if last else Kind.LABEL, text="last one")
    load = out[stop : stop + 2] if kind_at(out, stop) is Kind.AT and kind_at(out, stop + 1) is Kind.NUM else []
    unit = [out[stop + 2]] if load and kind_at(out, stop + 2) in (Kind.KG, Kind.LB) else []
    said = [*names, *([] if named else [which]), *load[1:], *unit]
    failed = out[at:end]
    out[at : stop + len(load) + len(unit)] = failed
    if len(said) == 1 and not named:
        return _tell_which(out, at, at, said) + len(failed)
    out[at:at] = said
    return at + len(said) + len(failed)
