"""A correction told with its reason, or with what was written first, put plainly: its set, what it was, what not.

`set 3: i put 80, meant 85`, `that 9 was an 8 and with the 18s`, `it was 90, the bar here is 20 not 10`,
`that curl was on the small plates, so 27.5 not 30`, `those chins had no belt on, just bodyweight`.
"""

from dataclasses import replace
from itertools import pairwise

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_CUES = (Kind.WAS, Kind.MEANT)
_UNITS = (Kind.KG, Kind.LB, Kind.REPS, Kind.S)
_ON = (Kind.AT, Kind.WITH)
_THAT = ("that", "the", "those", "my")
_GEAR = frozenset(words("belt plate plates weight weights vest chain load kettlebell dumbbell"))
_BARS = frozenset(words("bar barbell bars plates plate"))


def reasoned(sentence: list[Mark]) -> list[Mark]:
    """A sentence with such a correction in plain wording; as it is where it has none."""
    sentence = _bar_missed(sentence)
    if not any(m.kind in (*_CUES, Kind.BODY) for m in sentence):
        return sentence
    return _of_bar(_on_gear(_without_gear(_with_load(_twice_was(sentence)))))


def _twice_was(sentence: list[Mark]) -> list[Mark]:
    """`the second one was 8 and it was 85`, `set 2 was 85 and it was 8 reps`: both numbers of the set, load first."""
    cues = [i for i, m in enumerate(sentence) if m.kind is Kind.WAS]
    if len(cues) != 2 or any(m.kind in (Kind.NOT, Kind.X, Kind.WROTE, Kind.RPE, Kind.RIR, Kind.S) for m in sentence):
        return sentence
    first, second = cues
    one = [m for m in sentence[first + 1 : second] if m.kind not in (Kind.AND, Kind.COMMA, Kind.FILL)]
    two = [m for m in sentence[second + 1 :] if m.kind is not Kind.FILL]
    named = any(m.kind in (Kind.SET, Kind.ORD, Kind.LASTSET) for m in sentence[:first])
    numbers = [[m.kind for m in part if m.kind not in _UNITS] for part in (one, two)]
    joined = sentence[second].text.split(" ")[0] in ("it", "that", "was") and len(one) + len(two) < len(sentence)
    if not named or not joined or numbers != [[Kind.NUM]] * 2:
        return sentence
    counted = any(m.kind is Kind.REPS for m in one) or ((one[0].value or 0) < (two[0].value or 0) >= _LOAD)
    load, count = (two, one) if counted and not any(m.kind is Kind.REPS for m in two) else (one, two)
    x = Mark(Kind.X, "x", sentence[second].start, sentence[second].start)
    return [*sentence[: first + 1], *load, x, *(m for m in count if m.kind is not Kind.REPS)]


_LOAD = 20
"""The greater of two numbers is the load where it is no less (common practice, no source)."""


def _with_load(sentence: list[Mark]) -> list[Mark]:
    """`that 9 was an 8 and with the 18s`, `that was 8 with the 18s`: both numbers of the set."""
    cue = next((i for i, m in enumerate(sentence) if m.kind in _CUES), None)
    if cue is None or any(m.kind in (Kind.NOT, Kind.X, Kind.FOR) for m in sentence):
        return sentence
    one = cue + 1 + (text_at(sentence, cue + 1) in ("a", "an", "only", "just", "really", "actually"))
    if kind_at(sentence, one) is not Kind.NUM or not _aims_at_that(sentence[:cue], sentence[cue]):
        return sentence
    pointed = kind_at(sentence, cue - 1) is Kind.NUM
    ahead = sentence[:cue]
    if pointed and kind_at(ahead, 0) is Kind.SORRY:
        ahead = [*ahead[:-1], replace(ahead[0], kind=Kind.FILL, text="that", end=ahead[0].start), ahead[-1]]
    behind = one + 1 + (kind_at(sentence, one + 1) is Kind.REPS)
    if behind == len(sentence) and pointed and one > cue + 1:
        return [*ahead, sentence[cue], *sentence[one:]]
    at = behind
    while kind_at(sentence, at) in (Kind.AND, Kind.COMMA, Kind.FILL, Kind.WAS):
        at += 1
    on = kind_at(sentence, at) in _ON
    at += on
    at += text_at(sentence, at) == "the"
    ends = at + 1 + (kind_at(sentence, at + 1) in (Kind.S, Kind.KG, Kind.LB))
    if not on or kind_at(sentence, at) is not Kind.NUM or ends != len(sentence):
        return sentence
    x = Mark(Kind.X, "x", sentence[one].start, sentence[one].start)
    return [*ahead, sentence[cue], *sentence[at:ends], x, sentence[one]]


def _aims_at_that(before: list[Mark], cue: Mark) -> bool:
    """`that`, `sorry that 9`, `the 9`, `sorry, that was`: the set that was told, by nothing else."""
    said = [m for m in before if m.kind not in (Kind.SORRY, Kind.COMMA)]
    opens = "that" in cue.text.split() and not said
    led = any(m.kind is Kind.SORRY and m.text.endswith("that") for m in before) or text_at(said, 0) in _THAT
    rest = said[1:] if text_at(said, 0) in _THAT else said
    return opens or (led and [m.kind for m in rest] in ([], [Kind.NUM]))


def _without_gear(sentence: list[Mark]) -> list[Mark]:
    """`those chins had no belt on, just bodyweight`: `that chin-up was bodyweight`."""
    body = next((i for i, m in enumerate(sentence) if m.kind is Kind.BODY), None)
    no = next((i for i, m in enumerate(sentence) if m.kind is Kind.NO), None)
    if body is None or no is None or no > body or any(m.kind is Kind.NUM for m in sentence):
        return sentence
    pointed = [m for m in sentence[:body] if m.text in ("that", "those", "that one") or m.kind is Kind.LASTSET]
    names = [m for m in sentence[:body] if m.kind is Kind.NAME]
    if not pointed or text_at(sentence, no + 1) not in _GEAR or len(names) > 1:
        return sentence
    was = replace(sentence[body], kind=Kind.WAS, text="was", end=sentence[body].start)
    last = replace(pointed[0], kind=Kind.LASTSET, text="last")
    return [*names, last, was, *sentence[body:]]


def _on_gear(sentence: list[Mark]) -> list[Mark]:
    """`that curl was on the small plates, so 27.5 not 30`: the reason, before what it was and what not."""
    cue = next((i for i, m in enumerate(sentence) if m.kind is Kind.WAS), None)
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    if cue is None or len(numbers) != 2 or numbers[0] < cue or kind_at(sentence, cue + 1) not in _ON:
        return sentence
    start = numbers[0]
    so = start - (kind_at(sentence, start - 1) is Kind.FILL)
    between = {m.kind for m in sentence[start + 1 : numbers[1]] if m.kind not in _UNITS}
    told = between == {Kind.NOT} and kind_at(sentence, so - 1) is Kind.COMMA
    plain = not any(m.kind in (Kind.NAME, Kind.SET, Kind.ORD, Kind.X) for m in sentence[cue + 1 : start])
    return [*sentence[: cue + 1], *sentence[start:]] if told and plain else sentence


def _bar_missed(sentence: list[Mark]) -> list[Mark]:
    """`that was 65 plus the bar, so 80`, `sorry that didnt include the bar, 80 total`: `that was 80 not 65`."""
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    gear = next((i for i, m in enumerate(sentence) if m.kind is Kind.PLATES), None)
    linked = any(m.kind in (Kind.X, Kind.FOR, Kind.AT, Kind.NOT, Kind.REPS) and m.text != "not" for m in sentence)
    denies = any(a.kind is Kind.NOT and b.kind is Kind.NUM for a, b in pairwise(sentence))
    if gear is None or not 1 <= len(numbers) <= 2 or numbers[-1] < gear or linked or denies:
        return sentence
    new, said = numbers[-1], {w for m in sentence[: numbers[-1]] for w in m.text.split()}
    told = len(numbers) == 2 or any(m.kind in (Kind.SORRY, *_CUES) for m in sentence[:gear])
    ends = all(m.kind in (*_UNITS, Kind.FILL, Kind.TOTAL, Kind.SORRY) for m in sentence[new + 1 :])
    if not said & _MISSED or not told or not ends or any(m.kind is Kind.MORE for m in sentence):
        return sentence
    aim = [m for m in sentence[: numbers[0]] if m.kind in (Kind.NAME, Kind.SET, Kind.ORD, Kind.LASTSET)]
    was = replace(sentence[gear], kind=Kind.MEANT, text="was")
    unit = [m for m in sentence[new + 1 : new + 2] if m.kind in _UNITS]
    denied = replace(sentence[gear], kind=Kind.NOT, text="not")
    old = [denied, sentence[numbers[0]]] if len(numbers) == 2 else []
    return [*aim, was, sentence[new], *unit, *old]


_MISSED = frozenset(words("plus without didnt not forgot only just top add adding excluding minus wasnt isnt"))
"""Words of what a number did not count."""


def _of_bar(sentence: list[Mark]) -> list[Mark]:
    """`it was 90 not 80, the bar here is 20 not 10`: what the bar weighs is the reason, and no number of the set."""
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM]
    if len(numbers) < 3 or any(m.kind is Kind.X for m in sentence):
        return sentence
    denied, bar = numbers[-1], numbers[-2]
    before = max((i for i in range(bar) if _parts(sentence[i])), default=0)
    said = {w for m in sentence[before:bar] for w in m.text.split()}
    weighs = [m.kind for m in sentence[bar + 1 : denied] if m.kind not in _UNITS] == [Kind.NOT]
    ends = all(m.kind in (*_UNITS, Kind.FILL) for m in sentence[denied + 1 :])
    told = any(m.kind is Kind.NUM for m in sentence[:before])
    return sentence[:before] if said & _BARS and weighs and ends and told else sentence


def _parts(mark: Mark) -> bool:
    """A comma, or the word before a reason."""
    return mark.kind in (Kind.COMMA, Kind.DASH) or mark.text in ("because", "cos", "cause", "since", "as")
