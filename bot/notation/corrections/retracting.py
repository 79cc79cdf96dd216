"""The ways to ask for a stored set to be taken out, as `scrap`: `bin the press i logged`, `take the last one off`.

A verb that is a skip of what is still to come (`bin the press`) is a scrap of what was told (`bin the press i logged`).
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import text_at
from bot.notation.corrections.unsaying import with_reasons, with_uncounted
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_REMOVING = frozenset(words(
    "bin scrap delete remove drop ditch cut cancel lose erase undo wipe kill strike cross rub void clear trash",
    "chuck dump forget ignore disregard discount scrub scratch nix toss",
))  # fmt: skip
_VOIDING = frozenset(
    words("forget ignore disregard discount strike void wipe erase clear undo delete remove scrub scratch")
)
_ONE_SET = (
    [Kind.LASTSET],
    [Kind.LASTREP],
    [Kind.SET, Kind.NUM],
    [Kind.ORD, Kind.NAME],
    [Kind.ORD, Kind.SET],
    [Kind.ORD, Kind.SETS],
    [Kind.ORD, Kind.NAME, Kind.SET],
)
_TAKING = frozenset(words("take get knock cross strike pull"))
_AWAY = frozenset(words("off out away back down rid"))
_TELLING = frozenset(words(
    "logged entered sent put recorded reported posted typed added wrote noted gave submitted inputted saved tracked",
))  # fmt: skip
_ENTRIES = frozenset(words("entry message log report post text input record set one"))
_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_POLITE = (Kind.ASKING, Kind.MEANT)
_TARGET = (Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.SETS, Kind.ORD, Kind.NAME, Kind.NUM, Kind.FILL, Kind.EACH,
           Kind.ALL, Kind.WEAK, Kind.AND)  # fmt: skip


def with_retractions(marks: Sequence[Mark], request: Request) -> list[Mark]:
    """The marks with each such verb as a scrap, and the words about it without bearing."""
    out = list(marks)
    for place, mark in enumerate(marks):
        said = mark.text.split()
        if not said or mark.kind not in (Kind.SKIP, Kind.WORD, Kind.FILL, Kind.SCRAP, Kind.DROP, Kind.SKIPPED):
            continue
        if _is_drop_set(marks, place):
            continue
        if said[0] in _TAKING or said[0] in _REMOVING:
            stored = said[0] in _REMOVING and _is_stored(marks[place + 1 : _end(marks, place)], request)
            _take_back(out, marks, place, said[0], stored=stored)
        if out[place].kind is Kind.SCRAP and _is_to_come(marks, place, request):
            out[place] = replace(mark, kind=Kind.SKIP, text="skip")
        if out[place].kind is Kind.SCRAP and place and marks[place - 1].kind in _POLITE:
            out[place - 1] = replace(marks[place - 1], kind=Kind.FILL)
    return with_reasons(with_uncounted(out))


def _is_drop_set(marks: Sequence[Mark], place: int) -> bool:
    """The noun of `there was a drop on that one as well`, `drop on that last set: 50x6`: nothing is taken out."""
    if marks[place].text != "drop":
        return False
    led = text_at(marks, place - 1).split()[-1:] in (["a"], ["the"], ["one"], ["another"], ["my"])
    return led or (text_at(marks, place + 1) == "on" and any(m.kind is Kind.NUM for m in marks[place:]))


def _is_to_come(marks: Sequence[Mark], place: int, request: Request) -> bool:
    """`please remove the rows for today`: of an exercise with no set stored or told, so that it is left out."""
    end = _end(marks, place)
    part = marks[place + 1 : next((i for i in range(place, end) if marks[i].text in _BECAUSE), end)]
    names = [m for m in part if m.kind is Kind.NAME]
    stored = {p.exercise for p in request.done}
    plain = all(m.kind in (Kind.NAME, Kind.FILL, Kind.FOR, Kind.AND) for m in part)
    open_yet = all(len(m.names) == 1 and request.exercises[m.names[0]].name not in stored for m in names)
    return bool(names) and plain and open_yet and not any(m.kind is Kind.NUM for m in marks[:place])


def _take_back(out: list[Mark], marks: Sequence[Mark], place: int, verb: str, *, stored: bool) -> None:
    """Makes a verb the scrap that it is, where what it takes away was told before; the words about it fall silent."""
    end = _end(marks, place)
    part = marks[place + 1 : end]
    kinds = [m.kind for m in part if m.kind is not Kind.FILL]
    whole = stored or _is_entry(part) or (verb in _VOIDING and kinds in _ONE_SET)
    told = len(part) if verb in _REMOVING and whole else _told(part)
    if (verb in _REMOVING and told is not None) or (verb in _TAKING and _is_taken(marks, place, end)):
        out[place] = replace(marks[place], kind=Kind.SCRAP)
        start = place + 1 + (told if told is not None else len(part))
        for at in range(start, end if told is not None else start):
            out[at] = replace(out[at], kind=Kind.FILL)


def _is_stored(part: Sequence[Mark], request: Request) -> bool:
    """Whether `set 2`, `that last set of dips`, `my last` is nothing but a set that is stored: none is left out."""
    names = [m.names for m in part if m.kind is Kind.NAME]
    kinds = [m.kind for m in part if m.kind not in (Kind.FILL, Kind.NAME, Kind.AT, Kind.FOR)]
    if not request.done or len(names) > 1 or kinds not in (*_ONE_SET, [Kind.ORD]):
        return False
    named = {request.exercises[p].name for p in names[0]} if names else {request.done[-1].exercise}
    numbers = [p.set for p in request.done if p.exercise in named]
    if kinds[0] in (Kind.SET, Kind.ORD):
        return next(m.value for m in part if m.kind in (Kind.NUM, Kind.ORD)) in numbers
    planned = [len(e.sets) for e in request.exercises if e.name in named]
    words_of = {w for m in part for w in m.text.split()}
    return bool(numbers) and (max(planned, default=0) in numbers or bool(words_of & {"that", "my", "this"}))


_BECAUSE = frozenset(["because", "cos", "coz", "bc", "cuz", "cause", "as", "since", "due to", "due"])


def _end(marks: Sequence[Mark], place: int) -> int:
    end = place + 1
    while end < len(marks) and marks[end].kind not in (*_ENDS, Kind.COMMA):
        end += 1
    return end


def _told(part: Sequence[Mark]) -> int | None:
    """Where `i (just) logged` starts, right behind the set that is meant; none where it is not said."""
    for place, mark in enumerate(part):
        last = mark.text.split()[-1:]
        if last and last[0] in _TELLING and all(m.kind in _TARGET for m in part[:place]):
            start = place
            while start and part[start - 1].text in ("i", "just", "ive", "that", "already", "we", "have", "had", "id"):
                start -= 1
            own = {w for m in part[start : place + 1] for w in m.text.split()} & {"i", "ive", "we", "id"}
            return start if own else None
    return None


def _is_entry(part: Sequence[Mark]) -> bool:
    """`my last entry`, `the previous message`: what was told last."""
    said = [w for m in part for w in m.text.split() if w not in ("my", "the", "that", "this", "please", "pls")]
    return len(said) == 2 and said[0] in ("last", "previous", "latest") and said[1] in _ENTRIES


def _is_taken(marks: Sequence[Mark], place: int, end: int) -> bool:
    """`can you take the last set off`, `please take that out`: asked for, a set or what was told between."""
    part = marks[place + 1 : end]
    away = next((i for i, m in enumerate(part) if m.text in _AWAY), None)
    asked = any(m.kind is Kind.ASKING or m.text in ("please", "pls", "plz") for m in marks[max(0, place - 2) : end])
    opens = place == 0 or marks[place - 1].kind in (*_ENDS, Kind.COMMA)
    if away is None or not (
        asked or (opens and [m.kind for m in part[:away]] in ([Kind.LASTSET], [Kind.SET, Kind.NUM]))
    ):
        return False
    target = part[:away] or part[away + 1 :]
    named = any(m.kind in (Kind.LASTSET, Kind.LASTREP, Kind.SET, Kind.ORD, Kind.NAME) for m in target)
    that = any(m.text in ("that", "it", "those", "them") for m in target)
    return (named or that) and all(m.kind in _TARGET for m in target)
