"""The many ways to word a correction, brought to those that `is_correction` knows: which set, what it was, what not.

`change 15 to 14`, `the 15 should be 14` and `14 instead of 15` all say `14 not 15`; `make set 2 13` is `set 2 was 13`.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.corrections.idle import without_idle
from bot.notation.corrections.reasoned import reasoned
from bot.notation.corrections.reordered import ignored, rated_last
from bot.notation.corrections.spoken_of import spoken_of
from bot.notation.corrections.voiced import CHANGING, voiced
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_ENDS = (Kind.STOP, Kind.LINE, Kind.QUERY)
_WRONG = frozenset(
    ["should be", "should have been", "shouldve been", "should say", "should read", "is wrong", "was wrong",
     "was supposed to be", "supposed to be", "was meant to be", "were meant to be", "needs to be", "must be",
     "is actually", "was actually", "was really"]
)  # fmt: skip
_SETS = (Kind.SET, Kind.ORD, Kind.LASTSET, Kind.LASTREP)
_ENTRIES = (Kind.X, Kind.FOR, Kind.AT)
_CHANGED = (Kind.TO, Kind.WAS, Kind.MEANT)


def reworded(marks: Sequence[Mark], *, is_first: bool) -> list[Mark]:
    """The marks with each sentence's correction in plain wording. `is_first`: there is nothing to correct."""
    if is_first:
        return list(marks)
    out: list[Mark] = []
    sentence: list[Mark] = []
    for mark in _announced(marks):
        if mark.kind in _ENDS:
            out += [*_plain(sentence, whole=False), mark]
            sentence = []
        else:
            sentence.append(mark)
    return out + _plain(sentence, whole=not out)


def _announced(marks: Sequence[Mark]) -> list[Mark]:
    """`sorry coach i wrote it wrong, set 2 was 4`: that something was wrong, before what it was."""
    end = next((i for i, m in enumerate(marks) if m.kind in _PARTS), len(marks))
    said = marks[:end]
    wrong = any(m.kind is Kind.MEANT and m.text.split(" ")[-1] in ("wrong", "mistake") for m in said)
    sorry = any(m.kind in (Kind.SORRY, Kind.WROTE) for m in said)
    plain = all(m.kind in (Kind.SORRY, Kind.WROTE, Kind.MEANT, Kind.FILL, Kind.WORD, Kind.WAS) for m in said)
    if not (wrong and sorry and plain) or not any(m.kind is Kind.NUM for m in marks[end:]):
        return list(marks)
    return [replace(marks[0], kind=Kind.SORRY, text="sorry"), _mark(marks[end], Kind.COMMA), *marks[end + 1 :]]


_PARTS = (Kind.COMMA, Kind.COLON, Kind.DASH, *_ENDS)


def _plain(sentence: list[Mark], *, whole: bool) -> list[Mark]:
    sentence = rated_last(_of_that(_named_first(_of_all(voiced(spoken_of(reasoned(without_idle(sentence))))))))
    sentence = ignored(sentence)
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    if not numbers:
        return sentence
    sentence = _kept_as(sentence)
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    if whole and len(numbers) == 1 and _is_starred(sentence):
        return [_mark(sentence[0], Kind.MEANT), *sentence[:-1]]
    if any(m.kind in _ENTRIES and m.text not in ("on", "on the") for m in sentence):
        return _making(sentence)
    if len(numbers) == 2:
        first, second = numbers
        between = sentence[first + 1 : second]
        if whole and [m.kind for m in between if m.kind not in (Kind.KG, Kind.LB, Kind.FILL, Kind.REPS)] == [
            Kind.INSTEAD
        ]:
            return [replace(m, kind=Kind.NOT) if m.kind is Kind.INSTEAD else m for m in sentence]
        if _is_old(sentence, first, between):
            return _with_old(sentence, first, second)
    return _several(_making(sentence))


def _mark(beside: Mark, kind: Kind) -> Mark:
    """A mark of its own without words, before another."""
    return Mark(kind, "", beside.start, beside.start)


def _is_starred(sentence: Sequence[Mark]) -> bool:
    """`14*`: a number with a star behind it."""
    star = sentence[-1]
    return len(sentence) == 2 and star.kind is Kind.X and star.text == "*" and star.tight


def _is_old(sentence: Sequence[Mark], first: int, between: Sequence[Mark]) -> bool:
    """Whether the first of two numbers is what was stored: `the 15 should be 14`, `change 15 to 14`."""
    if any(m.kind in (*_SETS, Kind.WROTE, Kind.NOT, Kind.NAME) for m in between):
        return False
    if first and sentence[first - 1].kind in (Kind.SET, Kind.WROTE, Kind.NOT, Kind.SORRY):
        return False
    changing = any(m.text.split()[-1:] and m.text.split(" ")[-1] in CHANGING for m in sentence[:first])
    to = any(m.kind is Kind.TO for m in between)
    wrong = any(m.kind is Kind.MEANT and m.text in _WRONG for m in between)
    led = all(m.kind in (Kind.FILL, Kind.NAME, Kind.COMMA, Kind.MEANT, Kind.COLON) for m in sentence[:first])
    return (changing and to) or (wrong and led and not (changing or to))


def _with_old(sentence: Sequence[Mark], first: int, second: int) -> list[Mark]:
    """The first number as what was written, the second as what was meant."""
    kept = [
        replace(m, kind=Kind.FILL) if i < second and (m.kind in (Kind.TO, Kind.MEANT) or m.text in CHANGING) else m
        for i, m in enumerate(sentence)
    ]
    return [*kept[:first], _mark(sentence[first], Kind.WROTE), *kept[first:second], _mark(sentence[second], Kind.MEANT),
            *kept[second:]]  # fmt: skip


def _making(sentence: list[Mark]) -> list[Mark]:
    """`make set 2 13`, `change the last one to 13`: the verb says that a set is corrected."""
    for place, mark in enumerate(sentence):
        if mark.kind not in (Kind.FILL, Kind.WORD) or not (mark.text == "make" or mark.text in CHANGING):
            continue
        following = [m for m in sentence[place + 1 : place + 5] if m.kind not in (Kind.FILL, Kind.NAME)]
        to = Kind.TO in [m.kind for m in sentence[place:]] and mark.text in CHANGING
        named = to and any(m.kind is Kind.NAME for m in sentence[place + 1 : place + 3])
        sets = bool(following) and (
            following[0].kind in _SETS
            or (following[0].kind in (Kind.ALL, Kind.DROP) and not _leads(sentence[:place]))
            or (
                following[0].kind in (Kind.SETS, Kind.WORKSET) and following[0].text.startswith(("back", "down", "top"))
            )
        )
        if sets or named:
            return [*sentence[:place], replace(mark, kind=Kind.MEANT), *sentence[place + 1 :]]
    return sentence


def _leads(before: Sequence[Mark]) -> bool:
    """Whether more than a word that corrects stands before the verb."""
    return any(m.kind not in (Kind.FILL, Kind.SORRY, Kind.COMMA, Kind.ASKING) for m in before)


_PUTTING = frozenset(["make", "call", "put", "count", "mark", "log", "record", "note", "enter", "set", *CHANGING])
_AS = frozenset(["as", "down", "down as", "to", "at", "only", "just", "please", "pls"])
_KEPT = (Kind.LEFT, Kind.RIGHT, Kind.LASTSET, Kind.LASTREP)


def _kept_as(sentence: list[Mark]) -> list[Mark]:
    """`count the left as 9 please`, `can you put the last one down as 7`: what a side or a set is to be kept as."""
    sides = [i for i, m in enumerate(sentence) if m.kind in _KEPT and "rep" not in m.text]
    verb = next((i for i, m in enumerate(sentence) if set(m.text.split()) & _PUTTING), len(sentence))
    number = next((i for i, m in enumerate(sentence) if m.kind is Kind.NUM), 0)
    if len(sides) != 1 or not verb < sides[0] < number or sum(m.kind is Kind.NUM for m in sentence) != 1:
        return sentence
    between = (*sentence[verb + 1 : sides[0]], *sentence[sides[0] + 1 : number])
    if not all(m.kind is Kind.FILL or set(m.text.split()) <= _AS for m in between):
        return sentence
    ahead = [replace(m, kind=Kind.FILL) if m.kind is Kind.ASKING else m for m in sentence[:verb]]
    was = replace(sentence[verb], kind=Kind.MEANT, text="was")
    told = replace(sentence[sides[0]], kind=Kind.LASTSET) if sentence[sides[0]].kind is Kind.LASTREP else None
    return [*ahead, sentence[sides[0]] if told is None else told, was, *sentence[number:]]


def _named_first(sentence: list[Mark]) -> list[Mark]:
    """`the last curl set`, `my last curl to 12`, with the name before: `curl, the last set`."""
    for place in range(len(sentence) - 2):
        last, name, after = sentence[place : place + 3]
        if (
            last.kind in (Kind.LASTSET, Kind.LASTREP)
            and name.kind is Kind.NAME
            and (after.kind in (Kind.SET, Kind.SETS, *_CHANGED) or after.text == "one")
        ):
            rest = sentence[place + 2 + (after.kind not in _CHANGED) :]
            return [*sentence[:place], name, replace(last, kind=Kind.LASTSET), *rest]
    return sentence


def _of_all(sentence: list[Mark]) -> list[Mark]:
    """`the dips sets were 9 reps`, `make the press sets 32.5`: every set of the name."""
    for place in range(1, len(sentence) - 1):
        name, sets, after = sentence[place - 1 : place + 2]
        if name.kind is not Kind.NAME or sets.kind is not Kind.SETS or sets.text not in ("sets", "set"):
            continue
        before = next((m for m in reversed(sentence[: place - 1]) if m.text not in _OF_NAME), None)
        making = before is not None and (before.text == "make" or before.text in CHANGING)
        opens = before is None or before.kind in _OPENING
        if (making and after.kind in (Kind.NUM, Kind.TO)) or (opens and after.kind in (Kind.WAS, Kind.MEANT)):
            return [*sentence[:place], replace(sets, kind=Kind.ALL, text="all"), *sentence[place + 1 :]]
    return sentence


_OF_NAME = ("the", "my", "those", "these", "of", "for", "that", "hey", "so", "oh", "and", "but")
_OPENING = (Kind.SORRY, Kind.MEANT, Kind.COMMA, Kind.COLON, Kind.DASH, Kind.NO, Kind.WROTE)


def _of_that(sentence: list[Mark]) -> list[Mark]:
    """`that lunge was 14x11`: the set that was told last."""
    for place in range(len(sentence) - 2):
        that, name, was = sentence[place : place + 3]
        if that.text == "that" and name.kind is Kind.NAME and was.kind is Kind.WAS:
            return [*sentence[:place], name, replace(that, kind=Kind.LASTSET), *sentence[place + 2 :]]
    return sentence


def _several(sentence: list[Mark]) -> list[Mark]:
    """`first two sets were`, `sets 1 and 2 were`: each set as a label of its own."""
    cue = next((i for i, m in enumerate(sentence) if m.kind in (Kind.WAS, Kind.MEANT)), None)
    denied = next((i for i, m in enumerate(sentence) if m.kind is Kind.NOT), len(sentence))
    if cue is None or sum(m.kind is Kind.NUM for m in sentence[cue:denied]) != 1:
        return sentence
    before = [i for i in range(cue) if sentence[i].kind is Kind.NUM]
    ordinals = [i for i in range(cue) if sentence[i].kind is Kind.ORD]
    if len(ordinals) > 1 and not before:
        return [replace(m, kind=Kind.LABEL) if m.kind is Kind.ORD else m for m in sentence if m.kind is not Kind.SETS]
    if not before:
        return sentence
    start = before[0]
    led = sentence[start - 1] if start else None
    count = int(sentence[start].value or 0)
    if len(before) == 1 and led is not None and led.text == "first" and 2 <= count <= 6:
        numbers = list(range(1, count + 1))
    elif led is not None and led.kind in (Kind.SET, Kind.SETS) and len(before) == 2:
        one, two = (int(sentence[i].value or 0) for i in before)
        dashed = any(m.kind in (Kind.DASH, Kind.TO) for m in sentence[before[0] : before[1]])
        numbers = list(range(one, two + 1)) if dashed else [one, two]
    else:
        return sentence
    at = sentence[start]
    labels = [replace(at, kind=Kind.LABEL, value=Decimal(n), parts=()) for n in numbers]
    gone = {Kind.SET, Kind.SETS, Kind.ORD, Kind.NUM, Kind.AND, Kind.DASH, Kind.TO, Kind.COMMA}
    return [*(m for m in sentence[:cue] if m.kind not in gone), *labels, *sentence[cue:]]
