"""A drop in other words, straight before its numbers: `ds 25x8`, `the drop after that was 25 for 8`."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.notation.bounds import SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import past
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_SHORT = frozenset(["ds", "dset"])
_NAMED = frozenset(["drop", "dropset", "drops", "set"])
_LAST = ("last", "final", "set", "one")
_MOST = 7
"""Words between a drop and its numbers."""


def drops(marks: list[Mark]) -> list[Mark]:
    """The marks with such words as the drop alone."""
    spelled = [_spelled(marks, place) for place in range(len(marks))]
    out = _straight_down(_went_on(_put_down(_loaded_behind(_of_several(_uncounted(_each_counted(spelled)))))))
    at = 0
    while at < len(out):
        if _is_said_again(out, at):
            out[at] = replace(out[at], kind=Kind.FILL)
        called = out[at].kind is Kind.DROP and set(out[at].text.split()) & _NAMED and "to" not in out[at].text.split()
        minis = out[at].kind is Kind.MINI and any(m.kind is Kind.NUM for m in out[:at])
        if called or minis:
            end = (called and _forgotten(out, at)) or _told_behind(out, at + 1)
            of = [m for m in out[at + 1 : end] if m.kind is Kind.NAME and not _is_spoken_of(out[:at], m)][:1]
            said = [replace(m, kind=Kind.FILL) for m in out[at + 1 : end] if m not in of] if called else []
            out[at:end] = [*of, out[at], *said] if end > at + 1 else [out[at]]
            at += len(of)
        at += 1
    return out


def _is_spoken_of(before: Sequence[Mark], name: Mark) -> bool:
    """Whether the exercise named last before a drop is the one that it is said to be of, or one told just here."""
    named = [m for m in before if m.kind is Kind.NAME]
    return bool(named) and (named[-1].names == name.names or any(m.kind is Kind.NUM for m in before))


def _uncounted(marks: list[Mark]) -> list[Mark]:
    """`two drops: 180x11, 90x10`, `dropped twice, 180x11`, `drop 1 180x11`: the drops, not how many or which; so too in
    `35x9 and again to 25x7`."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.NUM, Kind.TIMES, Kind.TO):
            out.append(mark)
            continue
        entry = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (
            Kind.X,
            Kind.FOR,
            Kind.KG,
            Kind.LB,
        )
        many = kind_at(marks, place + 1) is Kind.DROP and set(text_at(marks, place + 1).split()) & _PLURAL
        counts = mark.kind is Kind.NUM and mark.value in (1, 2, 3, 4)
        behind = kind_at(marks, place - 1) is Kind.DROP
        numbered = behind and counts and mark.value != 4 and (entry or kind_at(marks, place + 1) is Kind.COLON)
        if (counts and (many or numbered)) or (mark.kind is Kind.TIMES and behind):
            out.append(replace(mark, kind=Kind.FILL, value=None, parts=()))
        else:
            led = text_at(marks, place - 1).split()[-1:]
            to = mark.kind is Kind.TO and (kind_at(marks, place - 1) is Kind.THEN or led == ["again"])
            went = to and any(m.kind in (Kind.DROP, Kind.ARROW) for m in marks[:place])
            if went and led == ["again"]:
                out[-1] = replace(out[-1], kind=Kind.FILL)
            out.append(replace(mark, kind=Kind.DROP, text="drop to") if went else mark)
    return out


def _each_counted(marks: list[Mark]) -> list[Mark]:
    """`dropped it twice, 10 and 8`, `two drops of 10 and 8`: as many drops, each told by its number alone."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.DROP:
            continue
        at = past(marks, place + 1, Kind.FILL)
        twice = kind_at(marks, at) is Kind.TIMES and text_at(marks, at).split()[-1:] == ["twice"]
        two = kind_at(marks, place - 1) is Kind.NUM and marks[place - 1].value == SEVERAL
        two = two or text_at(marks, place - 1) == "double"
        if not (twice or two or mark.text in _DOUBLED):
            continue
        at = past(marks, at + twice, Kind.FILL, Kind.COMMA, Kind.COLON, Kind.FOR)
        counted = at + 1 + (kind_at(marks, at + 1) is Kind.REPS)
        joined = counted + (kind_at(marks, counted) in (Kind.COMMA, Kind.AND, Kind.SLASH, Kind.THEN))
        end = joined + 1 + (kind_at(marks, joined + 1) is Kind.REPS)
        pair = kind_at(marks, at) is kind_at(marks, joined) is Kind.NUM
        if not pair or kind_at(marks, end) in _LOADED:
            continue
        led = text_at(marks, at - 1) in ("for", "of") or end > joined + 1
        last = next((m.value for m in reversed(marks[: place - two]) if m.kind is Kind.NUM), None)
        if not led and last is not None and (marks[at].value or 0) > last > (marks[joined].value or 0):
            continue
        reps = [replace(mark, kind=Kind.REPS, text="reps", start=mark.end)] if led else []
        one, other = (replace(m, tight=False) for m in (marks[at], marks[joined]))
        drop = replace(mark, kind=Kind.DROP, text="drop")
        apart = replace(mark, kind=Kind.COMMA, text=",", start=one.end, end=one.end)
        first = [replace(marks[place - 1], kind=Kind.FILL, value=None)] if two else []
        again = replace(drop, start=one.end, end=one.end)
        out[place - two : end] = [*first, drop, one, *reps, apart, again, other, *reps]
        return out
    return out


_LOADED = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.KG, Kind.LB, Kind.NUM, Kind.S, Kind.HAND)
_DOUBLED = frozenset(["double drop", "double drops", "double dropped", "double drop set"])


def _of_several(marks: list[Mark]) -> list[Mark]:
    """`180 for 11 and 90 for 10 on the drops`: each set of the part before, but the first of more than two."""
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.DROP, Kind.DROPPED):
            continue
        plural = bool(set(mark.text.split()) & _PLURAL)
        plural = plural or (mark.kind is Kind.DROPPED and kind_at(marks, place + 1) is Kind.SETS)
        end = place + 1 + (kind_at(marks, place + 1) is Kind.SETS)
        if not plural or kind_at(marks, end) not in (None, Kind.COMMA, *_ENDS):
            continue
        opens = (*_ENDS, Kind.THEN, Kind.NAME, Kind.COLON, Kind.DROP)
        start = next((i + 1 for i in range(place - 1, -1, -1) if marks[i].kind in opens), 0)
        led = kind_at(marks, place - 1) is Kind.FOR
        linked = [i for i in range(start, place - led) if marks[i].kind in (Kind.X, Kind.FOR, Kind.NUM)]
        entries = [i for i, link in pairwise(linked) if marks[link].kind is not Kind.NUM]
        loads = [i for i in entries if marks[i].kind is Kind.NUM]
        if len(loads) < SEVERAL:
            continue
        lower = [marks[i].value or 0 for i in loads]
        dropped = loads if len(loads) == SEVERAL else loads[1:]
        if lower != sorted(lower, reverse=True):
            continue
        out: list[Mark] = []
        for at, one in enumerate(marks[:place]):
            if at in dropped:
                out.append(replace(mark, kind=Kind.DROP, text="drop", start=one.start, end=one.start))
            led = one.kind is Kind.FOR and at == place - 1
            joins = one.kind is Kind.ARROW and at > start
            out.append(replace(one, kind=Kind.FILL) if led else replace(one, kind=Kind.COMMA) if joins else one)
        return [*out, *(replace(m, kind=Kind.FILL) for m in marks[place:end]), *marks[end:]]
    return marks


def _loaded_behind(marks: list[Mark]) -> list[Mark]:
    """`12, and 10 more on the drop with 25`: the drop's own load, told behind it."""
    for place in range(1, len(marks) - 2):
        if marks[place].kind is not Kind.DROPPED:
            continue
        count = place - 1 - (kind_at(marks, place - 1) in (Kind.REPS, Kind.MORE))
        counted = kind_at(marks, count) is Kind.NUM and kind_at(marks, count - 1) not in (Kind.X, Kind.FOR, Kind.AT)
        loaded = kind_at(marks, place + 1) in (Kind.WITH, Kind.AT) and kind_at(marks, place + 2) is Kind.NUM
        end = place + 3 + (kind_at(marks, place + 3) in (Kind.KG, Kind.LB, Kind.S))
        ends = kind_at(marks, end) in (None, Kind.COMMA, Kind.CLOSE, *_ENDS)
        if counted and loaded and ends:
            first = count - (kind_at(marks, count - 1) in (Kind.AND, Kind.THEN))
            drop = replace(marks[place], kind=Kind.DROP, text="drop")
            times = replace(marks[place + 1], kind=Kind.X, text="x")
            return [*marks[:first], drop, *marks[place + 2 : end], times, marks[count], *marks[end:]]
    return marks


_PLURAL = frozenset(["drops", "dropsets", "sets"])


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


def _forgotten(marks: Sequence[Mark], at: int) -> int:
    """Where the numbers of a drop not told before start: `forgot to write the drop, it was 25 for 8`; else 0."""
    end = next((i for i in range(at + 1, min(len(marks), at + _FAR)) if marks[i].kind in (Kind.NUM, Kind.BODY)), 0)
    start = next((i + 1 for i in range(at - 1, -1, -1) if marks[i].kind in _ENDS or at - i > _FAR), 0)
    after = marks[end : end + _FAR] if end else []
    stop = next((i for i, m in enumerate(after) if m.kind in _ENDS), len(after))
    said = {w for m in (*marks[start:at], *marks[at + 1 : end], *after[:stop]) for w in m.text.split()}
    plain = all(m.kind in _TELLING for m in marks[at + 1 : end])
    return end if plain and said & _UNTOLD and not any(m.kind is Kind.NUM for m in marks[start:at]) else 0


_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_FAR = 10
_UNTOLD = frozenset(words("forgot forget forgotten missed missing didnt write wrote mention omitted unlogged"))
"""Words of what was not told."""
_TELLING = (Kind.FILL, Kind.WORD, Kind.COMMA, Kind.COLON, Kind.WAS, Kind.NOT, Kind.TO, Kind.DASH, Kind.WITH, Kind.AT,
            Kind.FOR, Kind.SET, Kind.AND, Kind.THEN, Kind.WROTE, Kind.STOP, Kind.SORRY, Kind.NAME, Kind.LASTSET,
            Kind.LASTREP)  # fmt: skip


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


def _went_on(out: list[Mark]) -> list[Mark]:
    """`90x9, dropped the weight and got 12 more`, `dropped, not sure what to, 12`: a drop whose load is not told."""
    for place, mark in enumerate(out):
        lighter = mark.kind is Kind.DROP and bool(set(mark.text.split()) & _LIGHTER)
        lighter = lighter and not (mark.text.endswith("to") and kind_at(out, place + 1) in (Kind.NUM, Kind.BODY))
        lighter = lighter or (mark.text in _LIGHTER and mark.kind in (Kind.WORD, Kind.FILL))
        opens = mark.kind is Kind.DROP and all(m.kind in _OPENING for m in out[:place])
        if not lighter or not (opens or any(m.kind is Kind.NUM for m in out[:place])):
            continue
        count = place + 1
        while count < len(out) and count - place < _FAR and _is_about_weight(out[count]):
            count += 1
        between = out[place + 1 : count]
        more = kind_at(out, count + 1) is Kind.MORE or any(m.kind is Kind.ANOTHER for m in between)
        end = count + 1 + (kind_at(out, count + 1) in (Kind.MORE, Kind.REPS))
        end += kind_at(out, end) is Kind.REPS
        known = mark.kind is Kind.DROP and (more or bool({w for m in between for w in m.text.split()} & _UNKNOWN))
        told = known or (more and bool({w for m in between for w in m.text.split()} & _WEIGHT))
        ends = kind_at(out, end) in (None, Kind.COMMA, Kind.CLOSE, Kind.RPE, Kind.RIR, Kind.EMPTY, *_ENDS)
        if told and kind_at(out, count) is Kind.NUM and ends:
            drop = replace(mark, kind=Kind.DROP, text="drop")
            parted = [replace(mark, kind=Kind.COMMA, text=",", end=mark.start)]
            led = [] if kind_at(out, place - 1) in (Kind.COMMA, *_ENDS) else parted
            gone = [replace(m, kind=Kind.FILL) for m in between]
            return [*out[:place], *led, *gone, drop, out[count], *out[end:]]
    return out


_OPENING = (Kind.FILL, Kind.NAME, Kind.COMMA, Kind.AND, Kind.THEN, Kind.COLON)


def _is_about_weight(mark: Mark) -> bool:
    """A word between a drop and its repetitions: of the weight, of not knowing it, of having gone on."""
    return mark.kind in (Kind.AND, Kind.COMMA, Kind.ANOTHER, Kind.FILL, Kind.THEN) or (
        set(mark.text.split()) <= _WEIGHT | _UNKNOWN and mark.kind is not Kind.NUM
    )


_LIGHTER = frozenset(words("dropped drop lowered reduced lightened moved stripped"))
_WEIGHT = frozenset(words("weight load pin it down off bit some a the few plates plate little way stack light lighter"))
_UNKNOWN = frozenset(words(
    "not sure what to how much something idea no know dont unsure clue forgot low where half roughly about like god "
    "knows who dunno whatever around did got for but"
))  # fmt: skip


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
