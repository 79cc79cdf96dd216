"""Numbers in words (`twice`, `a triple`), and numbers that count something else than a set's."""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import continues_list, kind_at, mark_at, text_at
from bot.notation.kinds import Kind
from bot.notation.shaping.neighbours import LINKS, PREFIXES, SEPARATORS, is_number
from bot.notation.strays.meanings import is_placed
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_MAYBE = frozenset(["maybe", "perhaps", "possibly"])
"""Words between two numbers of which one is meant: `one maybe two left`."""
_LIGHT = 10
"""A number of plates is less; a plate of so much is common (common practice, no source)."""
_APART = frozenset(
    words("i he she we they it my his her the this that these those because bc cause cos as since while when so but")
)
"""Words that part a number from the thing behind them: `22 i fell` counts no falls."""
_LOW = {"single": 1, "singles": 1, "double": 2, "doubles": 2, "triple": 3, "triples": 3}


def counts_in_words(marks: list[Mark]) -> list[Mark]:
    """`twice` as two sets; `for a triple`, `single at 70` as so many repetitions."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if _is_but(marks, place) or _is_all_at(marks, place):
            continue
        if mark.kind in (Kind.AT, Kind.WITH) and place and _is_all_at(marks, place - 1):
            if out and out[-1].kind is Kind.COMMA:
                out.pop()
            out.append(replace(mark, kind=Kind.WITH))
            continue
        if mark.kind is Kind.MINUTES and [m.text for m in marks[place + 1 : place + 4]] == ["and", "a", "half"]:
            whole = out.pop().value if out and out[-1].kind is Kind.NUM else None
            out.append(replace(mark, kind=Kind.NUM, value=(whole or Decimal(1)) + Decimal("0.5")))
            out.append(replace(mark, start=mark.end))
            continue
        count = _LOW.get(mark.text)
        if _is_two(marks, place):
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(2)))
            continue
        doubted = mark.text in _MAYBE and kind_at(marks, place - 2) not in LINKS
        if doubted and is_number(mark_at(marks, place - 1)) and is_number(mark_at(marks, place + 1)):
            out.append(replace(mark, kind=Kind.OR))
            continue
        if mark.text == "plate" and _is_weighed_plate(marks, place):
            out.append(replace(mark, kind=Kind.S, text="s"))
            continue
        if mark.kind is Kind.PLATES and "bar" not in mark.text.split() and not _is_counted(marks, place):
            out.append(replace(mark, kind=Kind.FILL))
            continue
        if mark.kind is Kind.TIMES and mark.text == "twice":
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(2)))
            out.append(replace(mark, kind=Kind.SETS, start=mark.end))
        elif mark.kind is Kind.MINUTES and not is_number(mark_at(marks, place - 1)) and mark.text in ("minute", "min"):
            half = place > 1 and marks[place - 2].text == "half"
            out.append(replace(mark, kind=Kind.NUM, value=Decimal("0.5") if half else Decimal(1)))
            out.append(replace(mark, start=mark.end))
        elif (
            mark.kind is Kind.NUM
            and mark.value is not None
            and 2 <= mark.value <= 4
            and marks[place - 1 if place else 0].text.split()[-1:]
            in (["last"], ["next"], ["other"], ["final"], ["remaining"])
            and kind_at(marks, place + 1) not in (Kind.X, Kind.REPS, Kind.SETS, Kind.SET, Kind.KG, Kind.LB)
        ):
            out.append(mark)
            out.append(replace(mark, kind=Kind.SETS, start=mark.end))
        elif count is not None and (
            (out and out[-1].kind in (Kind.FOR, Kind.X, Kind.NUM)) or kind_at(marks, place + 1) in (Kind.AT, Kind.WITH)
        ):
            out.append(replace(mark, kind=Kind.NUM, value=Decimal(count)))
            out.append(replace(mark, kind=Kind.REPS, start=mark.end))
        else:
            out.append(mark)
    return out


def parted(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with words that a number before does not count without bearing: `left 30, right 22 i fell`."""
    out = list(marks)
    for place in range(2, len(marks)):
        led = marks[place - 1].kind is Kind.FILL and marks[place - 1].text in _APART
        if marks[place].kind is Kind.WORD and led and marks[place - 2].kind in (Kind.NUM, Kind.CLOCK):
            out[place] = replace(marks[place], kind=Kind.GAP)
    return out


def _is_weighed_plate(marks: Sequence[Mark], place: int) -> bool:
    """`with a 10 plate`: what the plate weighs, not how many there are."""
    number = mark_at(marks, place - 1)
    if marks[place].kind is not Kind.PLATES or number is None or number.kind is not Kind.NUM or number.value is None:
        return False
    single = place > 1 and marks[place - 2].text.split()[-1:] in (["a"], ["an"], ["one"], ["the"], ["just"], ["only"])
    return number.value >= _LIGHT or number.value != int(number.value) or (single and number.value > 1)


def _is_but(marks: Sequence[Mark], place: int) -> bool:
    """The `same` of `same at 70, though only 11 reps`, where all that it would repeat is told."""
    if marks[place].kind is not Kind.SAME:
        return False
    load = [m.kind for m in marks[place + 1 : place + 3]]
    if load not in ([Kind.AT, Kind.NUM], [Kind.WITH, Kind.NUM]):
        return False
    rest = marks[place + 3 :]
    return any(m.kind is Kind.NUM and kind_at(rest, i + 1) is Kind.REPS for i, m in enumerate(rest)) or any(
        m.text in ("only", "but", "though") and kind_at(rest, i + 1) is Kind.NUM for i, m in enumerate(rest)
    )


def _is_all_at(marks: Sequence[Mark], place: int) -> bool:
    """The `both` of `12 and 11, both at 60`: one load for all that was told."""
    if marks[place].kind not in (Kind.ALL, Kind.EACH) or marks[place].text.split(" ")[0] not in ("both", "all"):
        return False
    load = mark_at(marks, place + 2)
    led = any(m.kind is Kind.NUM for m in marks[:place]) and kind_at(marks, place + 1) in (Kind.AT, Kind.WITH)
    unit = kind_at(marks, place + 3) in (Kind.KG, Kind.LB)
    heavy = load is not None and load.kind is Kind.NUM and load.value is not None and (load.value > 10 or unit)
    return led and heavy


def _is_counted(marks: Sequence[Mark], place: int) -> bool:
    """Whether a number, or a load with its unit, stands before a place."""
    weighed = kind_at(marks, place - 1) in (Kind.KG, Kind.LB) and is_number(mark_at(marks, place - 2))
    return weighed or is_number(mark_at(marks, place - 1))


GOES = ("goes", "sets", "tries", "rounds", "attempts", "shots", "cracks", "bashes", "runs")
"""What a couple more of are sets: `had a couple more goes at it`."""


def _is_two(marks: Sequence[Mark], place: int) -> bool:
    """`a couple left`, and `to in the tank` as it is heard."""
    text, after = marks[place].text, place + 1
    if text not in ("couple", "to", "too", "tu"):
        return False
    if text == "couple" and mark_at(marks, after) is not None and marks[after].text == "of":
        after += 1
    following = kind_at(marks, after)
    if text == "couple":
        goes = following is Kind.MORE and text_at(marks, after + 1) in GOES
        return not goes and following in (Kind.TANK, Kind.RIR, Kind.LEFT, Kind.MORE)
    return following in (Kind.TANK, Kind.RIR)


def either(marks: list[Mark]) -> list[Mark]:
    """`twelve or thirteen`: not known which."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.OR and is_number(mark_at(marks, place - 1)) and is_number(mark_at(marks, place + 1)):
            out.append(replace(mark, kind=Kind.SLIP))
        else:
            out.append(mark)
    return out


def _is_spoken_to(marks: Sequence[Mark], place: int) -> bool:
    """Whether one word ends its part that is no plural, which several of would have: `12 dear`, `9 phew`."""
    word, number = marks[place].text, marks[place - 1].value
    ends = kind_at(marks, place + 1) in (None, *SEPARATORS)
    plural = (word.endswith("s") and not word.endswith("ss")) or word in _PLURALS
    return ends and not plural and number is not None and number > 1 and marks[place].kind is Kind.WORD


def _is_said_beside(marks: Sequence[Mark], place: int) -> bool:
    """Whether a word behind a number is none that it counts: `12 dear`, `13 feet on a box`."""
    return _is_spoken_to(marks, place) or is_placed(marks, place)


_PLURALS = frozenset(
    words("people children men women feet teeth mice sheep percent quid kcal km bpm rpm mph sth stone")
)


_LIGHTEST = 40
"""Kilograms that a client may weigh: `bw 82,5` is no set (common practice, no source)."""


_LIFTED = frozenset(("bag", "sack", "ball", "keg", "stone", "log", "tyre", "tire", "boulder", "jug", "can", "backpack"))
"""Things whose weight stands before them: `the 30 bag for 5`."""


def counted(marks: list[Mark]) -> list[Mark]:
    """A bare number that counts something outside the lexicon (`2 coffees`), or sets to come, is no set's."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM:
            continue
        before, after = kind_at(marks, place - 1), kind_at(marks, place + 1)
        weighed = mark.value is not None and mark.value >= _LIGHTEST
        if before is Kind.BODY and weighed and after not in LINKS:
            out[place] = replace(mark, kind=Kind.COUNTED)
            out[place - 1] = replace(marks[place - 1], kind=Kind.GAP)
            continue
        if (
            before in LINKS
            or before in PREFIXES
            or before in (Kind.RPE, Kind.RIR)
            or before in (Kind.SIGN, Kind.DROP, Kind.MINI, Kind.PLUS)
        ):
            continue
        lifted = kind_at(marks, place + 2) in (Kind.FOR, Kind.X) and text_at(marks, place + 1) in _LIFTED
        other = after is Kind.WORD and not lifted and not continues_list(marks, place)
        if (other and not _is_said_beside(marks, place + 1)) or (
            after is Kind.SETS and kind_at(marks, place + 2) in (Kind.TANK, Kind.LEFT, Kind.MORE)
        ):
            out[place] = replace(mark, kind=Kind.SLIP if before in (Kind.KG, Kind.LB) else Kind.COUNTED)
    return out
