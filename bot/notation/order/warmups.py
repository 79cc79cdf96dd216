"""Warm-ups told behind their sets or before them: `20x8 30x5 all warmups`, `first was a warmup`."""

from dataclasses import replace

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)


def warmups(marks: list[Mark]) -> list[Mark]:
    """The marks with the word before the sets that it is of."""
    marks = [replace(m, kind=Kind.FILL) if _leads_name(marks, i) else m for i, m in enumerate(marks)]
    marks = _one_behind(_not_of_work(_told_after(_headed(_of_talk(_crossed(marks))))))
    return _it_was(_all_were(_first_was(_done(_only_counted(_counted_first(_so_many(marks)))))))


def _leads_name(marks: list[Mark], place: int) -> bool:
    """The `for` of `couple of warm up sets for push press, then 135 for 5`."""
    led = marks[place].kind is Kind.FOR and kind_at(marks, place - 1) is Kind.WARMUP
    return led and kind_at(marks, place + 1) is Kind.NAME


def _crossed(marks: list[Mark]) -> list[Mark]:
    """`warm up bw x5 x5`: two sets, and not five of five, where each has its own cross straight before it."""
    out = list(marks)
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), len(marks))
    for place in range(first + 3, len(marks) - 1):
        if marks[place].kind is Kind.WORKSET or marks[place].kind in _ENDS:
            break
        if marks[place].kind is Kind.BODY and kind_at(marks, place - 1) is Kind.NUM:
            out[place] = replace(marks[place], kind=Kind.COMMA, text=",")
        listed = [m.kind for m in marks[place - 2 : place + 2]] == [Kind.X, Kind.NUM, Kind.X, Kind.NUM]
        apart = marks[place].kind is Kind.X and not marks[place].tight and marks[place + 1].tight
        if apart and (listed or [m.kind for m in out[place - 2 : place]] == [Kind.COMMA, Kind.NUM]):
            out[place] = replace(marks[place], kind=Kind.COMMA, text=",")
    return out


def _of_talk(marks: list[Mark]) -> list[Mark]:
    """The `warm` of `engine is warm`, and `after a few warm ups`, `warm up felt heavy but 90x5`: no sets."""
    return [
        replace(m, kind=Kind.FILL) if m.kind is Kind.WARMUP and (_is_ambient(marks, i) or _is_past(marks, i)) else m
        for i, m in enumerate(marks)
    ]


def _is_ambient(marks: list[Mark], place: int) -> bool:
    after_is = kind_at(marks, place - 1) in (Kind.WAS, Kind.AND, Kind.WORD)
    return marks[place].text == "warm" and (after_is or text_at(marks, place + 1) in _AMBIENT)


def _is_past(marks: list[Mark], place: int) -> bool:
    """Whether the sets of a warm-up are only spoken of: `after warming up, 275x5`, `warm up was ok but 275x5`."""
    start, end = place - 1, place + 1
    while kind_at(marks, start) is Kind.FILL and text_at(marks, start) in _SOME:
        start -= 1
    ends = kind_at(marks, end) in (None, Kind.COMMA, *_ENDS)
    if text_at(marks, start) == "after" and (ends or (marks[place].text.endswith("ing up") and _counts(marks, end))):
        return True
    while kind_at(marks, end) in (Kind.FILL, Kind.WORD, Kind.FEELS, Kind.WAS) and text_at(marks, end) not in _TURNS:
        end += 1
    said = {w for m in marks[place + 1 : end] for w in m.text.split()}
    turned = text_at(marks, end) in _TURNS or kind_at(marks, end) is Kind.COMMA
    return turned and bool(said & _JUDGING) and _entry_end(marks, end + 1) is not None


_SOME = frozenset(
    words("a few some my the usual quick couple of short long good proper easy light gentle decent slow little")
)
_TURNS = frozenset(["but", "so", "then"])
_JUDGING = frozenset(["felt", "feeling", "went", "was", "were", "moved", "flew"])
_AMBIENT = ("in", "now", "today", "here", "enough", "outside")


def _told_after(marks: list[Mark]) -> list[Mark]:
    """`60x7 after a warm up of 40x8`: two sentences."""
    for place in range(2, len(marks) - 1):
        article = kind_at(marks, place - 1) is Kind.FILL and text_at(marks, place - 1) in ("a", "my", "one", "the")
        before = place - 1 - article
        opened = before - (kind_at(marks, before - 1) in (Kind.OPEN, Kind.COMMA))
        whole = [m.kind for m in marks[max(0, opened - 3) : opened]] in _ENTRIES
        if marks[place].kind is Kind.WARMUP and text_at(marks, before) == "after" and whole:
            stop = replace(marks[before], kind=Kind.STOP, text=".", value=None)
            return [*marks[:opened], stop, *marks[place:]]
    return marks


def _headed(marks: list[Mark]) -> list[Mark]:
    """`warm up` on a line of its own: the sets on the lines below it, up to an empty one or a name."""
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), len(marks))
    line = first + 1
    while kind_at(marks, line) in (Kind.SET, Kind.SETS, Kind.COLON, Kind.DASH):
        line += 1
    if kind_at(marks, line) is not Kind.LINE or kind_at(marks, first - 1) not in (None, Kind.LINE, Kind.NAME):
        return marks
    at, told = line + 1, 0
    while (end := _entry_end(marks, at)) is not None:
        told, at = told + 1, end
        while kind_at(marks, at) is Kind.COMMA:
            at += 1
        at += kind_at(marks, at) is Kind.LINE and _entry_end(marks, at + 1) is not None
    name = at + 1
    parted = kind_at(marks, at) is Kind.LINE and kind_at(marks, name) in (Kind.LINE, Kind.NAME, Kind.WORKSET)
    if not told or not parted:
        return marks
    listed = [replace(m, kind=Kind.COMMA, text=",") if m.kind is Kind.LINE else m for m in marks[line + 1 : at]]
    return [*marks[: first + 1], *listed, replace(marks[at], kind=Kind.WORKSET, text="work set"), *marks[at:]]


_ENTRIES = ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM], [Kind.X, Kind.NUM, Kind.REPS])


def _not_of_work(marks: list[Mark]) -> list[Mark]:
    """`40x6, not a work set`: a warm-up."""
    out = list(marks)
    for place, mark in enumerate(marks):
        at = place + 1
        while text_at(marks, at) in _REAL:
            at += 1
        real = text_at(marks, at - 1) in _REAL - {"a"} and kind_at(marks, at) is Kind.SET
        if mark.kind is Kind.NOT and (kind_at(marks, at) is Kind.WORKSET or real):
            warm = Mark(Kind.WARMUP, "warm up", mark.start, marks[at].end)
            out[place : at + 1] = [warm, *(replace(m, kind=Kind.GAP) for m in marks[place + 1 : at + 1])]
    return out


_REAL = frozenset(["a", "real", "proper", "working", "work", "counted", "true", "top"])


def _one_behind(marks: list[Mark]) -> list[Mark]:
    """`20x8 warm up, 60x10`, `first 60x15, doesnt count just warm up`: the only set of its sentence before it."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    end = place + 1 if place is not None else 0
    while kind_at(marks, end) in (Kind.FILL, Kind.SET, Kind.GAP):
        end += 1
    if place is None or kind_at(marks, end) not in (None, Kind.COMMA, Kind.THEN, Kind.AND, Kind.CLOSE, *_ENDS):
        return marks
    start = max((i + 1 for i in range(place) if marks[i].kind in _ENDS), default=0)
    numbers = [i for i in range(start, place) if marks[i].kind is Kind.NUM]
    after = next((i for i in range(place + 1, len(marks)) if marks[i].kind is Kind.NUM), None)
    again = after is not None and any(m.kind is Kind.WARMUP for m in marks[place + 1 : after + 4])
    if len(numbers) != _TOLD or again:
        return marks
    entry, told = marks[numbers[0] : numbers[1] + 1], marks[numbers[1] + 1 : place]
    plain = all(m.kind in (Kind.NUM, Kind.X, Kind.FOR, Kind.KG, Kind.LB, Kind.FILL, Kind.S) for m in entry)
    plain = plain and all(m.kind in _LITTLE for m in told)
    if not plain or not any(m.kind in (Kind.X, Kind.FOR) for m in entry):
        return marks
    early = replace(marks[place], start=entry[0].start, end=entry[0].start)
    work = replace(marks[place], kind=Kind.WORKSET, text="work set")
    led = [replace(m, kind=Kind.FILL) if m.kind is Kind.ORD and m.value == 1 else m for m in marks[: numbers[0]]]
    behind = [m for m in told if m.kind is not Kind.COMMA and not (m.kind is Kind.ORD and m.value == 1)]
    return [*led, early, *entry, *behind, work, *marks[end:]]


_LITTLE = (Kind.REPS, Kind.FILL, Kind.OPEN, Kind.COMMA, Kind.WAS, Kind.WORD, Kind.TO, Kind.ORD, Kind.DASH, Kind.NOT,
           Kind.GAP)  # fmt: skip


def _counted_first(marks: list[Mark]) -> list[Mark]:
    """`two warm ups with the 26 for 10`: how many sets of warm-up, whose load and repetitions follow."""
    first = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    if first is None:
        return marks
    loaded = _only_loaded(marks, first)
    if loaded is not None:
        gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[first:loaded]]
        return [*marks[:first], *gone, *marks[loaded:]]
    for place in range(1, len(marks) - 2):
        number, mark = marks[place - 1], marks[place]
        if (
            mark.kind is not Kind.WARMUP
            or number.kind is not Kind.NUM
            or number.value is None
            or number.value > FEW_SETS
        ):
            continue
        opens = kind_at(marks, place - 2) in (None, Kind.FILL, Kind.NAME, Kind.COLON, *_ENDS)
        at = place + 1 + (kind_at(marks, place + 1) in (Kind.SETS, Kind.SET))
        led = kind_at(marks, at) in (Kind.WITH, Kind.AT) and kind_at(marks, at + 1) is Kind.NUM
        if not (opens and led):
            continue
        end = next((i for i in range(at, len(marks)) if _parts_warmups(marks, i)), len(marks))
        numbers = sum(m.kind is Kind.NUM for m in marks[at:end])
        if numbers == _TOLD:
            sets = replace(mark, kind=Kind.SETS, text="sets", start=mark.end)
            held = [m for m in marks[at:end] if m.kind not in (Kind.ALL, Kind.EACH)]
            return [*marks[: place - 1], mark, number, sets, *held, *marks[end:]]
        listed = _listed(marks, end + 1) if numbers == 1 and kind_at(marks, end) in (Kind.COMMA, Kind.COLON) else 0
        if listed and sum(max(1, len(m.parts)) for m in marks[end:listed] if m.kind is Kind.NUM) == number.value:
            colon = replace(marks[end], kind=Kind.COLON)
            return [*marks[: place - 1], mark, *marks[at + 1 : end], colon, *marks[end + 1 : listed], *marks[listed:]]
        if numbers == 1:
            gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place - 1 : end]]
            return [*marks[: place - 1], *gone, *marks[end:]]
    return marks


def _so_many(marks: list[Mark]) -> list[Mark]:
    """`two warm up sets 40x8 and 70x4, now 95x8`: as many warm-ups as are announced, and then work sets."""
    for place in range(1, len(marks)):
        number, at = place - 1, place + 1
        while kind_at(marks, number) in (Kind.WAS, Kind.SETS) or text_at(marks, number) in _SOME:
            number -= 1
        count = whole_number(marks, number, 1, FEW_SETS)
        if marks[place].kind is not Kind.WARMUP or count is None or kind_at(marks, number - 1) in _OF_NUMBERS:
            continue
        while kind_at(marks, at) in _ANNOUNCING:
            at += 1
        start, told = at, 0
        while told < count and (end := _entry_end(marks, at)) is not None:
            told, at = told + 1, end
            while told < count and kind_at(marks, at) in (Kind.COMMA, Kind.AND, Kind.THEN, Kind.FILL, Kind.LINE):
                at += 1
        if told < count or kind_at(marks, at) in (Kind.EACH, Kind.NUM, Kind.X, Kind.SLASH):
            continue
        joined = [replace(m, kind=Kind.COMMA, text=",") if m.kind in (Kind.THEN, Kind.LINE) else m
                  for m in marks[start:at]]  # fmt: skip
        ends = replace(marks[place], kind=Kind.WORKSET, text="work set")
        first = number - (kind_at(marks, number - 1) in (Kind.ORD, Kind.LABEL))
        gone = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[first:place]]
        return [*marks[:first], *gone, marks[place], *joined, ends, *marks[at:]]
    return marks


_OF_NUMBERS = (Kind.X, Kind.FOR, Kind.AT, Kind.NUM, Kind.SLASH, Kind.SET)
_ANNOUNCING = (Kind.COLON, Kind.COMMA, Kind.DASH, Kind.OPEN, Kind.FILL, Kind.WAS, Kind.WITH, Kind.ORD, Kind.AT,
               Kind.SETS, Kind.SET)  # fmt: skip


def _entry_end(marks: list[Mark], at: int) -> int | None:
    """Where a load with its repetitions ends that starts here; `None` where none does."""
    link = at + 1 + (kind_at(marks, at + 1) in (Kind.KG, Kind.LB, Kind.S))
    linked = kind_at(marks, at) is Kind.NUM and kind_at(marks, link) in (Kind.X, Kind.FOR)
    if not linked or kind_at(marks, link + 1) is not Kind.NUM:
        return None
    return link + 2 + (kind_at(marks, link + 2) is Kind.REPS)


def _listed(marks: list[Mark], at: int) -> int:
    """Where repetitions told one by one end that start here: `10 and 8`; 0 where none do."""
    end = at
    while kind_at(marks, end) in (Kind.NUM, Kind.AND, Kind.COMMA, Kind.SLASH, Kind.REPS):
        end += 1
    return end if kind_at(marks, at) is Kind.NUM and kind_at(marks, end) in (None, *_ENDS) else 0


def _only_loaded(marks: list[Mark], place: int) -> int | None:
    """Where `warmed up twice with the 26` ends, whose repetitions nobody tells; `None` where it is not said."""
    at = place + 1 + (kind_at(marks, place + 1) in (Kind.TIMES, Kind.FILL))
    said = (
        marks[place].kind is Kind.WARMUP and marks[place].text.startswith("warmed") and kind_at(marks, at) is Kind.WITH
    )
    end = at + 2 + (kind_at(marks, at + 2) is Kind.S)
    ends = kind_at(marks, at + 1) is Kind.NUM and kind_at(marks, end) in (Kind.COMMA, Kind.THEN, *_ENDS)
    return end if said and ends and kind_at(marks, end + 1) is not Kind.NUM else None


def _parts_warmups(marks: list[Mark], place: int) -> bool:
    """Whether what is told of warm-ups ends here: not before `, 10 each`."""
    counted = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (Kind.EACH, Kind.REPS, Kind.ALL)
    return marks[place].kind in (Kind.THEN, Kind.COLON, *_ENDS) or (marks[place].kind is Kind.COMMA and not counted)


def _only_counted(marks: list[Mark]) -> list[Mark]:
    """`did 2 warmup sets then 60x9`: how many there were, and nothing of them."""
    out = list(marks)
    for place in range(1, len(marks)):
        number = marks[place - 1]
        counts = number.kind is Kind.NUM and number.value is not None and number.value <= FEW_SETS
        free = kind_at(marks, place - 2) not in (Kind.X, Kind.FOR, Kind.AT, Kind.NUM, Kind.COMMA, Kind.SLASH, Kind.SET,
                                                  Kind.ORD, Kind.LABEL)  # fmt: skip
        at = place + 1
        while kind_at(marks, at) in (Kind.SETS, Kind.SET, Kind.FILL):
            at += 1
        ends = kind_at(marks, at) in (None, Kind.COMMA, Kind.THEN, Kind.AND, *_ENDS)
        if marks[place].kind is Kind.WARMUP and counts and free and ends:
            out[place - 1 : at] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place - 1 : at]]
    return out


def _done(marks: list[Mark]) -> list[Mark]:
    """`warm up done: bar only 20x8, then 35x5. work set: 50x5`: the sets up to the working ones."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    work = next((i for i, m in enumerate(marks) if m.kind is Kind.WORKSET), None)
    if place is None:
        return marks
    out = list(marks)
    if [kind_at(marks, place + n) for n in (1, 2)] == [Kind.DONE, Kind.COLON]:
        out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
    for at in range(place, work or place):
        if marks[at].kind is Kind.THEN:
            out[at] = replace(marks[at], kind=Kind.COMMA, text=",")
        if marks[at].kind is Kind.PLATES and kind_at(marks, at + 1) is Kind.NUM:
            out[at] = replace(marks[at], kind=Kind.FILL)
    return out


def _all_were(marks: list[Mark]) -> list[Mark]:
    """`135x8, 185x5, 225x3 just warm ups so far`, `135x8, 185x5 to warm up, 225x3`: all of the part before."""
    for place, mark in enumerate(marks):
        if not _is_of_all(marks, place):
            continue
        start = _start(marks, place, (*_ENDS, Kind.NAME))
        if all(m.kind in _LED for m in marks[start:place]) and kind_at(marks, place - 1) is Kind.WAS:
            start = _start(marks, start - 1, (*_ENDS, Kind.NAME))
        before = marks[start:place]
        last = next((m for m in reversed(before) if m.kind not in _LED), None)
        ended = last is not None and last.kind in (Kind.NUM, Kind.REPS)
        if not ended or any(m.kind is Kind.WARMUP for m in before):
            continue
        entries = [i for i, m in enumerate(before) if m.kind in (Kind.X, Kind.FOR) and _counts(before, i + 1)]
        if len(entries) < SEVERAL:
            continue
        first = start + next(i for i, m in enumerate(before) if m.kind is Kind.NUM)
        held = [replace(m, kind=Kind.COMMA) if m.kind is Kind.THEN else m for m in marks[first:place]]
        while held[-1].kind in _LED:
            held.pop()
        held = [m for m in held if m.kind is not Kind.ALL]
        early = replace(mark, end=mark.start)
        return [*marks[:first], early, *held, replace(mark, kind=Kind.WORKSET, text="work set"), *marks[place + 1 :]]
    return marks


_LED = (Kind.FILL, Kind.ALL, Kind.WAS, Kind.EACH, Kind.FOR, Kind.TO, Kind.DASH, Kind.COMMA, Kind.OPEN, Kind.STOP)


def _start(marks: list[Mark], place: int, bounds: tuple[Kind, ...]) -> int:
    """Where the part starts in which a place is."""
    return next((i for i in range(place, 0, -1) if marks[i - 1].kind in bounds), 0)


def _is_of_all(marks: list[Mark], place: int) -> bool:
    """Whether a warm-up is of all sets before it: `all warm up`, `warm ups`, `to warm up`."""
    mark = marks[place]
    if mark.kind is not Kind.WARMUP:
        return False
    said = mark.text.split()
    plural = said[-1] in ("ups", "warmups", "warms", "feelers") or mark.text.endswith(("up sets", "warmup sets"))
    ends = kind_at(marks, place + 1) in (None, Kind.COMMA, Kind.THEN, Kind.AND, Kind.BREAK, Kind.CLOSE, *_ENDS)
    purpose = said[0] in ("to", "as", "for") or "warming" in said
    start = _start(marks, place, (*_ENDS, Kind.NAME, Kind.COMMA, Kind.THEN))
    was = kind_at(marks, place - 1) is Kind.WAS and start == _start(marks, place, (*_ENDS, Kind.NAME))
    return plural or kind_at(marks, place - 1) is Kind.ALL or (ends and (purpose or was))


def _counts(marks: list[Mark], at: int) -> bool:
    return kind_at(marks, at) is Kind.NUM


def _first_was(marks: list[Mark]) -> list[Mark]:
    """`120x8, 135x8 - first was a warmup`, `first two were warm ups`: the first sets that the message tells."""
    place = next((i for i, m in enumerate(marks) if m.kind is Kind.WARMUP), None)
    if place is None or any(m.kind is Kind.NUM for m in marks[place:]):
        return marks
    at = place - 1
    while at >= 0 and (marks[at].kind in (Kind.FILL, Kind.WAS, Kind.SET, Kind.SETS)):
        at -= 1
    many = whole_number(marks, at, 2, FEW_SETS) if kind_at(marks, at - 1) in (Kind.ORD, Kind.LABEL) else None
    at -= many is not None
    first = kind_at(marks, at) in (Kind.ORD, Kind.LABEL) and marks[at].value == 1
    numbers = [i for i in range(max(at, 0)) if marks[i].kind is Kind.NUM]
    parts = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.THEN, Kind.AND)
    ends = [i for i in range(numbers[0], at) if marks[i].kind in parts] if numbers else []
    end = ends[(many or 1) - 1] if len(ends) >= (many or 1) else None
    if not first or end is None or not any(i > end for i in numbers):
        return marks
    rest = [replace(m, kind=Kind.GAP, value=None) for m in marks[at : place + 1]]
    early = replace(marks[place], start=marks[numbers[0]].start, end=marks[numbers[0]].start)
    work = replace(marks[end], kind=Kind.WORKSET, text="work set")
    return [*marks[: numbers[0]], early, *marks[numbers[0] : end + 1], work, *marks[end + 1 : at], *rest,
            *marks[place + 1 :]]  # fmt: skip


_WAS = frozenset(["only", "just", "was", "my", "last", "a", "the", "still", "as", "for", "to"])
_TOLD = 2
"""A set told loosely has two numbers: `140 for the feeling, 2 reps`."""


def _it_was(marks: list[Mark]) -> list[Mark]:
    """`140 for the feeling, 2 reps, only warm up. then 150x3`: the one set of the sentence that the word ends."""
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.WARMUP or kind_at(marks, place + 1) not in (None, *_ENDS):
            continue
        start = max((i + 1 for i in range(place) if marks[i].kind in _ENDS), default=0)
        numbers = [i for i in range(start, place) if marks[i].kind is Kind.NUM]
        led = place - 1
        while led >= start and (marks[led].kind in (Kind.WAS, Kind.FILL, Kind.LASTREP, Kind.LASTSET)):
            led -= 1
        apart = led < place - 1 and kind_at(marks, led) in (Kind.COMMA, Kind.DASH, Kind.NUM, Kind.REPS)
        if not apart or len(numbers) != _TOLD or not set(_words(marks[led + 1 : place])) & _WAS:
            continue
        first = numbers[0]
        early = replace(mark, end=mark.start)
        work = replace(mark, kind=Kind.WORKSET, text="work set")
        return [*marks[:first], early, *marks[first : led + 1], work, *marks[place + 1 :]]
    return marks


def _words(marks: list[Mark]) -> list[str]:
    return [w for m in marks for w in m.text.split()]
