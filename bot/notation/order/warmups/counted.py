"""Warm-ups that are counted: `two warm ups with the 26 for 10`, `two warm up sets 40x8 and 70x4`, `2 warmup sets`."""

from dataclasses import replace

from bot.notation.bounds import FEW_SETS
from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.near import whole_number
from bot.notation.order.warmups.entries import ENDS, OF_ONE_SET, entry_end
from bot.notation.order.warmups.spoken_of import SOME
from bot.notation.tokens import Mark


def counted_first(marks: list[Mark]) -> list[Mark]:
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
        opens = kind_at(marks, place - 2) in (None, Kind.FILL, Kind.NAME, Kind.COLON, *ENDS)
        at = place + 1 + (kind_at(marks, place + 1) in (Kind.SETS, Kind.SET))
        led = kind_at(marks, at) in (Kind.WITH, Kind.AT) and kind_at(marks, at + 1) is Kind.NUM
        if not (opens and led):
            continue
        end = next((i for i in range(at, len(marks)) if _parts_warmups(marks, i)), len(marks))
        numbers = sum(m.kind is Kind.NUM for m in marks[at:end])
        if numbers == OF_ONE_SET:
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


def so_many(marks: list[Mark]) -> list[Mark]:
    """`two warm up sets 40x8 and 70x4, now 95x8`: as many warm-ups as are announced, and then work sets."""
    for place in range(1, len(marks)):
        number, at = place - 1, place + 1
        while kind_at(marks, number) in (Kind.WAS, Kind.SETS) or text_at(marks, number) in SOME:
            number -= 1
        count = whole_number(marks, number, 1, FEW_SETS)
        if marks[place].kind is not Kind.WARMUP or count is None or kind_at(marks, number - 1) in _OF_NUMBERS:
            continue
        while kind_at(marks, at) in _ANNOUNCING:
            at += 1
        start, told = at, 0
        while told < count and (end := entry_end(marks, at)) is not None:
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


def _listed(marks: list[Mark], at: int) -> int:
    """Where repetitions told one by one end that start here: `10 and 8`; 0 where none do."""
    end = at
    while kind_at(marks, end) in (Kind.NUM, Kind.AND, Kind.COMMA, Kind.SLASH, Kind.REPS):
        end += 1
    return end if kind_at(marks, at) is Kind.NUM and kind_at(marks, end) in (None, *ENDS) else 0


def _only_loaded(marks: list[Mark], place: int) -> int | None:
    """Where `warmed up twice with the 26` ends, whose repetitions nobody tells; `None` where it is not said."""
    at = place + 1 + (kind_at(marks, place + 1) in (Kind.TIMES, Kind.FILL))
    said = (
        marks[place].kind is Kind.WARMUP and marks[place].text.startswith("warmed") and kind_at(marks, at) is Kind.WITH
    )
    end = at + 2 + (kind_at(marks, at + 2) is Kind.S)
    ends = kind_at(marks, at + 1) is Kind.NUM and kind_at(marks, end) in (Kind.COMMA, Kind.THEN, *ENDS)
    return end if said and ends and kind_at(marks, end + 1) is not Kind.NUM else None


def _parts_warmups(marks: list[Mark], place: int) -> bool:
    """Whether what is told of warm-ups ends here: not before `, 10 each`."""
    counted = kind_at(marks, place + 1) is Kind.NUM and kind_at(marks, place + 2) in (Kind.EACH, Kind.REPS, Kind.ALL)
    return marks[place].kind in (Kind.THEN, Kind.COLON, *ENDS) or (marks[place].kind is Kind.COMMA and not counted)


def only_counted(marks: list[Mark]) -> list[Mark]:
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
        ends = kind_at(marks, at) in (None, Kind.COMMA, Kind.THEN, Kind.AND, *ENDS)
        if marks[place].kind is Kind.WARMUP and counts and free and ends:
            out[place - 1 : at] = [replace(m, kind=Kind.GAP, value=None, parts=()) for m in marks[place - 1 : at]]
    return out
