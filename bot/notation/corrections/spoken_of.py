"""Which sets a correction speaks of, put plainly: `and set 2 also`, `the 2 set`, `a triple, not a double`.

Also the talk around it that is none: an apology for something else, plates that were forgotten.
"""

from dataclasses import replace
from decimal import Decimal

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_CUES = (Kind.WAS, Kind.MEANT)
_NAMING = (Kind.ORD, Kind.SET, Kind.LASTSET, Kind.LASTREP)
_ALSO = frozenset(["also", "too", "as well", "likewise", "as was", "same"])
_LOWS = {"single": 1, "double": 2, "triple": 3}


def spoken_of(sentence: list[Mark]) -> list[Mark]:
    """A sentence with the sets that it corrects in plain wording."""
    return _had_on(_no_plates(_low(_also(_whole_time(_without_drop(_apology(sentence)))))))


def _without_drop(sentence: list[Mark]) -> list[Mark]:
    """`the last one, before the drop, was 12`, `the main part was 14`: the work set, and nothing of its drop."""
    main = next((i for i, m in enumerate(sentence[:-1]) if m.text in _MAIN and sentence[i + 1].text in _PART), None)
    if main is not None and any(m.kind in _CUES for m in sentence[main:]):
        sentence = [m if i not in (main, main + 1) else replace(m, kind=Kind.FILL) for i, m in enumerate(sentence)]
    for place, mark in enumerate(sentence[:-1]):
        apart = mark.text in _APART and sentence[place + 1].kind in (Kind.DROP, Kind.MINI)
        if apart and kind_at(sentence, place + 2) is not Kind.NUM and any(m.kind in _CUES for m in sentence):
            gone = [replace(m, kind=Kind.FILL) for m in sentence[place : place + 2]]
            return [*sentence[:place], *gone, *sentence[place + 2 :]]
    return sentence


_MAIN = ("main", "work", "working", "proper", "first")
_PART = ("part", "bit", "portion")
_APART = frozenset(["before", "without", "not counting", "excluding", "ahead of", "prior to", "leaving out", "minus"])


def _apology(sentence: list[Mark]) -> list[Mark]:
    """`sorry for my english, last set was`, `sorry teacher the second set is`: what comes behind corrects."""
    start = next((i for i, m in enumerate(sentence) if m.kind is not Kind.FILL), len(sentence))
    if kind_at(sentence, start) is not Kind.SORRY or not any(m.kind in _CUES for m in sentence):
        return sentence
    end = start + 1
    while kind_at(sentence, end) in (Kind.FOR, Kind.FILL, Kind.WORD):
        end += 1
    talks = any(m.kind is Kind.WORD for m in sentence[start:end])
    named = kind_at(sentence, end) in _NAMING or kind_at(sentence, end + 1) is Kind.SET
    if not talks or not (kind_at(sentence, end) in (Kind.COMMA, Kind.DASH) or named):
        return sentence
    rest = sentence[end:]
    if any(m.kind is Kind.NOT or m.kind in _NAMING for m in rest) and any(m.kind is Kind.NUM for m in rest):
        return [replace(sentence[start], kind=Kind.SORRY), *(rest if named else rest[1:])]
    return sentence


def _whole_time(sentence: list[Mark]) -> list[Mark]:
    """`were 16 not 14 the whole time`: all of them."""
    for place, mark in enumerate(sentence):
        whole = text_at(sentence, place + 1) in ("whole", "entire") and text_at(sentence, place + 2) in ("time", "way")
        if mark.text == "the" and whole and any(m.kind in _CUES for m in sentence[:place]):
            every = replace(mark, kind=Kind.ALL, text="all", end=sentence[place + 2].end)
            return [*sentence[:place], every, *sentence[place + 3 :]]
    return sentence


def _low_that_was(ahead: list[Mark]) -> list[Mark]:
    """The words before what it was: `top single`, `that triple`, as the set that was told with so many repetitions."""
    if len(ahead) < _TWO_WORDS or ahead[-1].text not in _LOWS or ahead[-2].text not in _LED_LOW:
        return ahead
    the, low = replace(ahead[-2], kind=Kind.FILL, text="the"), ahead[-1]
    return [*ahead[:-2], the, replace(low, kind=Kind.NUM, value=Decimal(_LOWS[low.text]), parts=())]


_TWO_WORDS = 2
"""Marks of `top single`: which set, and its repetitions."""
_LED_LOW = frozenset(["top", "the", "that", "my", "heavy"])
_PLATES = frozenset(
    ["chucked", "forgot", "had", "added", "put", "threw", "left", "missed", "stuck", "slapped", "loaded"]
)


def _no_plates(sentence: list[Mark]) -> list[Mark]:
    """`set 1 was 105, chucked the fives on and forgot`: plates, no repetitions."""
    cue = next((i for i, m in enumerate(sentence) if m.kind in _CUES), None)
    if cue is None:
        return sentence
    told = next((i for i in range(cue, len(sentence)) if sentence[i].kind is Kind.NUM), len(sentence))
    out = list(sentence)
    for place in range(told + 2, len(sentence) - 1):
        plates = sentence[place].kind is Kind.NUM and sentence[place + 1].kind is Kind.S
        if not plates or sentence[place - 1].text not in ("the", "my", "some", "a couple of", "two"):
            continue
        if {w for m in sentence[max(0, place - 4) : place - 1] for w in m.text.split()} & _PLATES:
            out[place] = replace(sentence[place], kind=Kind.GAP, value=None)
            out[place + 1] = replace(sentence[place + 1], kind=Kind.GAP)
    return out


def _also(sentence: list[Mark]) -> list[Mark]:
    """`set 1 was 97.5 and set 2 also`: both sets named first."""
    named = next((i for i, m in enumerate(sentence) if m.kind in _NAMING), len(sentence))
    cue = next((i for i, m in enumerate(sentence) if i > named and m.kind in _CUES), None)
    if cue is None:
        return sentence
    numbers = [i for i in range(cue, len(sentence)) if sentence[i].kind is Kind.NUM]
    first = next((i for i in range(cue, len(sentence)) if sentence[i].kind in (Kind.SET, Kind.ORD)), None)
    if first is None or not numbers or numbers[0] > first:
        return sentence
    wide = sentence[first].kind is Kind.SET and kind_at(sentence, first + 1) is Kind.NUM
    end = first + 1 + (wide or kind_at(sentence, first + 1) is Kind.SET or text_at(sentence, first + 1) == "one")
    rest = sentence[numbers[0] + 1 : first] + sentence[end:]
    said = {w for m in rest for w in (m.text, *m.text.split())}
    plain = (Kind.FILL, Kind.AND, Kind.COMMA, Kind.SAME, Kind.FOR, Kind.WITH, Kind.WAS, Kind.KG, Kind.LB, Kind.REPS,
             Kind.AGAIN, Kind.SORRY)  # fmt: skip
    also = bool(said & _ALSO) or {"as", "well"} <= said
    if not also or not all(m.kind in plain for m in rest):
        return sentence
    unit = [m for m in sentence[numbers[0] + 1 : numbers[0] + 2] if m.kind in (Kind.KG, Kind.LB, Kind.REPS)]
    link = replace(sentence[first], kind=Kind.AND, text="and", end=sentence[first].start, value=None)
    return [*sentence[:cue], link, *sentence[first:end], *sentence[cue : numbers[0] + 1], *unit]


def _low(sentence: list[Mark]) -> list[Mark]:
    """`the third set was a triple, not a double`: so many repetitions."""
    cue = next((i for i, m in enumerate(sentence) if m.kind in (*_CUES, Kind.SORRY)), None)
    sentence = sentence if cue is None else [*_low_that_was(sentence[:cue]), *sentence[cue:]]
    led = cue is not None and kind_at(sentence, cue - 1) is Kind.NUM
    named = led or any(m.kind in (*_NAMING, Kind.NAME, Kind.NOT) or "that" in m.text.split() for m in sentence)
    if cue is None or not named or any(m.kind is Kind.X for m in sentence):
        return sentence
    out: list[Mark] = []
    for place, mark in enumerate(sentence):
        counted = place > cue and mark.kind is Kind.WORD and mark.text in _LOWS
        if not counted or text_at(sentence, place - 1) not in ("a", "only a", "was a", "just a"):
            out.append(mark)
            continue
        out.append(replace(mark, kind=Kind.NUM, value=Decimal(_LOWS[mark.text]), parts=()))
        out.append(Mark(Kind.REPS, "", mark.end, mark.end))
    return out


def _had_on(sentence: list[Mark]) -> list[Mark]:
    """`i had 105 on for set 2`, `the second set had 10 on`: the set, and what it was with."""
    verb = next((i for i, m in enumerate(sentence) if m.text in ("had", "i had", "i actually had")), None)
    if verb is None or any(m.kind in (*_CUES, Kind.X) for m in sentence):
        return sentence
    at = verb + 1
    while kind_at(sentence, at) is Kind.FILL:
        at += 1
    unit = at + 1 if kind_at(sentence, at + 1) in (Kind.KG, Kind.LB) else at
    on = unit + 1
    if kind_at(sentence, at) is not Kind.NUM or text_at(sentence, on) not in ("on", "on the", "loaded"):
        return sentence
    end = on + 1 + sum(m.text in ("bar", "the bar", "the", "belt") for m in sentence[on + 1 : on + 3])
    named = [m for m in (*sentence[:verb], *sentence[end:]) if m.kind in (*_NAMING, Kind.NAME)]
    if not named:
        return sentence
    aim = [m for m in (*sentence[:verb], *sentence[end:]) if m.kind is not Kind.FOR and m.kind is not Kind.WITH]
    denied = next((i for i, m in enumerate(aim) if m.kind is Kind.NOT), len(aim))
    was = replace(sentence[verb], kind=Kind.WAS, text="was with")
    return [*aim[:denied], was, *sentence[at : unit + 1], *aim[denied:]]
