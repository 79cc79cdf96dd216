"""A drop in other words, straight before its numbers: `ds 25x8`, `the drop after that was 25 for 8`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.drops.counted import each_counted, of_several, uncounted
from bot.notation.order.drops.untold import ENDS, forgotten, went_on
from bot.notation.tokens import Mark
from bot.notation.wordlist import products, words

_SHORT = frozenset(["ds", "dset"])
_NAMED = frozenset(["drop", "dropset", "drops", "set"])
_LAST = ("last", "final", "set", "one")
_MOST = 7
"""Words between a drop and its numbers."""


def drops(marks: list[Mark]) -> list[Mark]:
    """The marks with such words as the drop alone."""
    spelled = [_spelled(marks, place) for place in range(len(marks))]
    spelled = [replace(m, text="drop set") if _is_noun(spelled, i) else m for i, m in enumerate(spelled)]
    out = _straight_down(_down_to(went_on(_put_down(_loaded_behind(of_several(uncounted(each_counted(spelled))))))))
    at = 0
    while at < len(out):
        if _is_said_again(out, at):
            out[at] = replace(out[at], kind=Kind.FILL)
        called = out[at].kind is Kind.DROP and set(out[at].text.split()) & _NAMED and "to" not in out[at].text.split()
        minis = out[at].kind is Kind.MINI and any(m.kind is Kind.NUM for m in out[:at])
        if called or minis:
            end = (called and forgotten(out, at)) or _told_behind(out, at + 1)
            of = [m for m in out[at + 1 : end] if m.kind is Kind.NAME and not _is_spoken_of(out[:at], m)][:1]
            said = [replace(m, kind=Kind.FILL) for m in out[at + 1 : end] if m not in of] if called else []
            out[at:end] = [*of, out[at], *said] if end > at + 1 else [out[at]]
            at += len(of)
        at += 1
    return out


def _is_noun(marks: Sequence[Mark], place: int) -> bool:
    """The drop of `also did a drop to 50, got 6`: a drop set, whatever is planned."""
    led = kind_at(marks, place - 1) is Kind.FILL and marks[place - 1].text.split()[-1:] in (["a"], ["one"], ["another"])
    return marks[place].kind is Kind.DROP and marks[place].text == "drop to" and led


def _is_spoken_of(before: Sequence[Mark], name: Mark) -> bool:
    """Whether the exercise named last before a drop is the one that it is said to be of, or one told just here."""
    named = [m for m in before if m.kind is Kind.NAME]
    return bool(named) and (named[-1].names == name.names or any(m.kind is Kind.NUM for m in before))


def _loaded_behind(marks: list[Mark]) -> list[Mark]:
    """`12, and 10 more on the drop with 25`: the drop's own load, told behind it."""
    for place in range(1, len(marks) - 2):
        if marks[place].kind is not Kind.DROPPED:
            continue
        count = place - 1 - (kind_at(marks, place - 1) in (Kind.REPS, Kind.MORE))
        counted = kind_at(marks, count) is Kind.NUM and kind_at(marks, count - 1) not in (Kind.X, Kind.FOR, Kind.AT)
        loaded = kind_at(marks, place + 1) in (Kind.WITH, Kind.AT) and kind_at(marks, place + 2) is Kind.NUM
        end = place + 3 + (kind_at(marks, place + 3) in (Kind.KG, Kind.LB, Kind.S))
        ends = kind_at(marks, end) in (None, Kind.COMMA, Kind.CLOSE, *ENDS)
        if counted and loaded and ends:
            first = count - (kind_at(marks, count - 1) in (Kind.AND, Kind.THEN))
            drop = replace(marks[place], kind=Kind.DROP, text="drop")
            times = replace(marks[place + 1], kind=Kind.X, text="x")
            return [*marks[:first], drop, *marks[place + 2 : end], times, marks[count], *marks[end:]]
    return marks


def _is_said_again(marks: Sequence[Mark], at: int) -> bool:
    """The last word of `60x13 straight into a 40x9 drop`, whose numbers are told to be a drop before them."""
    if marks[at].kind is not Kind.DROP or kind_at(marks, at + 1) not in (None, Kind.STOP, Kind.LINE, Kind.COMMA):
        return False
    entry = [kind_at(marks, at - n) for n in (3, 2, 1)] in (
        [Kind.NUM, Kind.X, Kind.NUM],
        [Kind.NUM, Kind.FOR, Kind.NUM],
    )
    led = at - 4
    while kind_at(marks, led) is Kind.FILL:
        led -= 1
    return entry and kind_at(marks, led) is Kind.DROP


def _straight_down(out: list[Mark]) -> list[Mark]:
    """`50x13 straight down to 35 for 9`: no rest, so a drop; `straight to 35 for 9` only where one is planned."""
    for place in range(1, len(out) - 2):
        follows = out[place].text in ("straight", "right", "directly") and text_at(out, place + 1) in ("to", "into")
        if follows and kind_at(out, place + 2) is Kind.NUM and any(m.kind is Kind.NUM for m in out[:place]):
            out[place] = replace(out[place], kind=Kind.THEN, text="then", names=())
            out[place + 1] = replace(out[place + 1], kind=Kind.FILL)
            if out[-1].kind is Kind.THEN:
                out[-1] = replace(out[-1], kind=Kind.FILL)
    for place in range(1, len(out) - 2):
        down = out[place].text in ("straight down", "right down") and kind_at(out, place + 1) in (Kind.TO, Kind.FILL)
        if down and text_at(out, place + 1) == "to" and kind_at(out, place + 2) is Kind.NUM:
            told = any(m.kind is Kind.NUM for m in out[:place])
            out[place] = replace(out[place], kind=Kind.DROP, names=()) if told else out[place]
            out[place + 1] = replace(out[place + 1], kind=Kind.FILL) if told else out[place + 1]
    return out


def _down_to(out: list[Mark]) -> list[Mark]:
    """`42.5x12, down to 32.5x8, down again to 22.5x7`, `42.5x12 into 32.5x8`: on to a lighter load.

    It is a drop only where one is planned.
    """
    for place in range(1, len(out) - 1):
        number = _end_of_lead(out, place) if kind_at(out, place - 1) in _BEHIND else 0
        told = number and any(m.kind is Kind.NUM for m in out[:place])
        entries = kind_at(out, place - 2) in _LINKS and kind_at(out, place + 2) in _LINKS
        if told and kind_at(out, number) is Kind.NUM and (entries or out[place].kind is not Kind.X):
            out[place:number] = [replace(m, kind=Kind.FILL, names=()) for m in out[place:number]]
            out[place] = replace(out[place], kind=Kind.THEN, text="then")
    return out


_ON_TO = frozenset([
    *products(("", "i"), ("", "went", "back", "go"), ("down",), ("", "again", "further"), ("to",)),
    *products(("finished", "finished off", "burned", "burnt"), ("", "it", "that"), ("", "off", "out"), ("with", "at")),
    *words("into"), "right into", "quick change to", "quickly to", "pin up to", "pin to",
])  # fmt: skip
"""Words that go on to another load."""
_BEHIND = (Kind.COMMA, Kind.AND, Kind.NUM, Kind.REPS, Kind.STOP)
_LINKS = (Kind.X, Kind.FOR, Kind.KG, Kind.LB)


def _end_of_lead(marks: Sequence[Mark], place: int) -> int:
    """Where words that go on to another load end, if they start here, none of which is of a drop already; else 0."""
    said = ""
    for at in range(place, min(len(marks), place + _MOST)):
        if marks[at].kind is Kind.DROP or marks[at].kind is Kind.NUM:
            return 0
        said = f"{said} {marks[at].text}".strip()
        if said in _ON_TO and kind_at(marks, at + 1) is Kind.NUM:
            return at + 1
    return 0


def _put_down(out: list[Mark]) -> list[Mark]:
    """`dropped it at 12`: what was lifted came down after so many, which is no drop."""
    for place, mark in enumerate(out):
        if mark.kind is not Kind.DROP or mark.text.split(" ")[-1] != "dropped":
            continue
        it = place + 1 + (text_at(out, place + 1) in ("it", "them", "that"))
        led = text_at(out, it) in ("at", "after")
        loaded = kind_at(out, it + 2) in (Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.S, Kind.HAND)
        if it > place + 1 and led and kind_at(out, it + 1) is Kind.NUM and not loaded:
            then = Kind.THEN if mark.text.startswith("then") else Kind.FILL
            out[place : it + 1] = [replace(m, kind=Kind.FILL) for m in out[place : it + 1]]
            out[place] = replace(mark, kind=then)
    return out


def _spelled(marks: Sequence[Mark], place: int) -> Mark:
    """`ds`, `d/s` before a number as a drop."""
    mark = marks[place]
    if mark.kind is not Kind.WORD or mark.text not in _SHORT:
        return mark
    at = place + 1
    while kind_at(marks, at) in (Kind.COLON, Kind.AT, Kind.FILL, Kind.WAS):
        at += 1
    return replace(mark, kind=Kind.DROP, text="drop") if kind_at(marks, at) in (Kind.NUM, Kind.BODY) else mark


def _told_behind(marks: Sequence[Mark], at: int) -> int:
    """Where the numbers of a drop start, behind words that only say after which set it came: `after that was`."""
    end, told = at, False
    while end < len(marks) and end - at < _MOST:
        kind = marks[end].kind
        if kind in (Kind.NUM, Kind.BODY):
            return end if told else at
        last = kind in (Kind.LASTSET, Kind.LASTREP) and text_at(marks, end).split(" ")[-1] in _LAST
        apart = told and kind is Kind.STOP and kind_at(marks, end + 2) in (Kind.X, Kind.FOR)
        if not (last or apart or kind in _OF_BEFORE or marks[end].text == "from"):
            return at
        told = told or last or kind in (Kind.WAS, Kind.THEN, Kind.NAME) or marks[end].text in _TOO
        end += 1
    return at


_TOO = frozenset(words("too well also after afterwards done"))
_OF_BEFORE = (Kind.FILL, Kind.THEN, Kind.WAS, Kind.WITH, Kind.AT, Kind.FOR, Kind.NAME, Kind.COMMA, Kind.COLON)
"""Kinds of the words that say which set a drop came after."""
