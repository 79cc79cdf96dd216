"""The verbs of a correction put plainly: `no, set 2 was`, `the first had 9 not 8`, `change it to rpe 9`."""

from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_NAMING = (Kind.ORD, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.LASTREP, Kind.ALL)
"""Kinds that say which set is meant."""
_CUES = (Kind.WAS, Kind.MEANT)
CHANGING = frozenset(["change", "changing", "fix", "correct", "amend", "update", "edit", "swap", "adjust"])
"""Verbs that ask for a stored set to be changed."""
_DID = frozenset(
    ["had", "did", "got", "hit", "used", "lifted", "managed", "i had", "i did", "i got", "i used", "i hit"]
)
"""Verbs of what was done, which say what a set was where what it was not stands behind."""


def voiced(sentence: list[Mark]) -> list[Mark]:
    """A sentence with such a verb in plain wording; as it is where it has none."""
    return _intended(_contrasted(_they_all(_rated_to(_did_not(_no_first(_kept_sides(_not_as_written(sentence))))))))


def _not_as_written(sentence: list[Mark]) -> list[Mark]:
    """`left was 9 and right 11, i wrote 11 both`: both sides are told, so that what was written says nothing more."""
    wrote = next((i for i, m in enumerate(sentence) if m.kind is Kind.WROTE), None)
    if wrote is None or kind_at(sentence, wrote - 1) not in (Kind.COMMA, Kind.DASH, Kind.FILL):
        return sentence
    ahead, behind = sentence[:wrote], [m for m in sentence[wrote + 1 :] if m.kind is not Kind.FILL]
    sided = {m.kind for m in ahead} >= set(_SIDES) and sum(m.kind is Kind.NUM for m in ahead) > 1
    both = [m.kind for m in behind if m.kind is not Kind.FOR] in ([Kind.NUM, Kind.EACH], [Kind.EACH, Kind.NUM])
    return ahead if sided and both else sentence


_SIDES = (Kind.LEFT, Kind.RIGHT)
_STAYING = (Kind.FILL, Kind.WORD, Kind.WAS, Kind.AT, Kind.SAME, Kind.OTHERTIME)
_STAYS = frozenset(words("stays stay stayed remains remain remained still stands stood"))
_UNCHANGED = frozenset(words("unchanged same stays stands remains"))


def _kept_sides(sentence: list[Mark]) -> list[Mark]:
    """`left was 9 not 10, right stays 10`, `L was 9, R unchanged`: a side that is named only to be left as it is."""
    if not any(m.kind in (*_CUES, Kind.NOT, Kind.SORRY) for m in sentence):
        return sentence
    out = [replace(m, kind=Kind.LEFT if m.kind is Kind.L else Kind.RIGHT) if m.kind in (Kind.L, Kind.R) else m
           for m in sentence]  # fmt: skip
    for place in range(len(out) - 1, 0, -1):
        if out[place].kind not in _SIDES or not any(m.kind in _SIDES for m in out[:place]):
            continue
        at = place + 1
        while kind_at(out, at) in _STAYING and out[at].text != "@":
            at += 1
        said = {w for m in out[place + 1 : at] for w in m.text.split()}
        if kind_at(out, at) is Kind.NUM and said & _STAYS:
            out[place + 1 : at] = [replace(out[place], kind=Kind.WAS, text="was", start=out[place].end)]
        elif kind_at(out, at) in (None, *EDGES) and said & _UNCHANGED:
            out[place:at] = []
    return out


def _no_first(sentence: list[Mark]) -> list[Mark]:
    """`no the first set was 95`: the `no` corrects, and leaves out nothing."""
    start = next((i for i, m in enumerate(sentence) if m.kind not in (Kind.FILL, Kind.COMMA)), len(sentence))
    if kind_at(sentence, start) is not Kind.NO:
        return sentence
    at = start + 1
    named = False
    while at < len(sentence) and not _is_cue(sentence[at]):
        set_number = sentence[at].kind is Kind.NUM and sentence[at - 1].kind is Kind.SET
        named = named or sentence[at].kind in _NAMING
        if not (set_number or sentence[at].kind in (*_NAMING, Kind.FILL, Kind.NAME, Kind.COMMA)):
            return sentence
        at += 1
    told = any(m.kind is Kind.NUM for m in sentence[at:])
    if not named or not told:
        return sentence
    return [*sentence[:start], replace(sentence[start], kind=Kind.SORRY), *sentence[start + 1 :]]


def _is_cue(mark: Mark) -> bool:
    """`was`, `should be`, `was rpe`."""
    return mark.kind in _CUES or (mark.kind in (Kind.RPE, Kind.RIR) and mark.text.split(" ")[0] in ("was", "were"))


def _did_not(sentence: list[Mark]) -> list[Mark]:
    """`the first set had 95 not 100`: what it was, and what it was not."""
    denied = [i for i, m in enumerate(sentence) if m.kind is Kind.NOT and kind_at(sentence, i + 1) is Kind.NUM]
    verbs = [i for i, m in enumerate(sentence) if m.kind in (Kind.FILL, Kind.COULD, Kind.WORD) and m.text in _DID]
    if len(denied) != 1 or len(verbs) != 1 or any(m.kind in _CUES for m in sentence):
        return sentence
    verb = verbs[0]
    named = any(m.kind in (*_NAMING, Kind.NAME) or m.text == "that" for m in sentence[:verb])
    if not named or kind_at(sentence, verb + 1) is not Kind.NUM or denied[0] < verb:
        return sentence
    return [*sentence[:verb], replace(sentence[verb], kind=Kind.WAS), *sentence[verb + 1 :]]


def _rated_to(sentence: list[Mark]) -> list[Mark]:
    """`change set 1 to rir 1`, `change set 2 to 4 reps`: no number stands in `to`, and no set 4 is meant."""
    changing = any(set(m.text.split()) & CHANGING for m in sentence)
    rated = [i for i in range(1, len(sentence)) if sentence[i].kind in (Kind.RPE, Kind.RIR)]
    numbered = [
        i
        for i in range(3, len(sentence))
        if changing and [m.kind for m in sentence[i - 3 : i]] == [Kind.SET, Kind.NUM, Kind.TO]
    ]
    return [m for i, m in enumerate(sentence) if not (m.kind is Kind.TO and i + 1 in (*rated, *numbered))]


_WERE = frozenset(["was", "were", "really", "actually", "should", "shouldve"])


def _they_all(sentence: list[Mark]) -> list[Mark]:
    """`they all were 95`: the sets, nobody else."""
    for place, mark in enumerate(sentence[:-2]):
        every, after = sentence[place + 1 : place + 3]
        if mark.text == "they" and every.kind is Kind.ALL and set(after.text.split()) & _WERE:
            return [*sentence[:place], *sentence[place + 1 :]]
    return sentence


_COMPARED = frozenset(["like", "as", "this", "today", "tonight", "unlike", "compared"])


def _contrasted(sentence: list[Mark]) -> list[Mark]:
    """`100x4 not 6 like the first`, `4 not 5 this time`: told beside what others were, nothing is corrected."""
    if any(m.kind in (*_CUES, Kind.SORRY, Kind.WROTE, Kind.LASTSET) for m in sentence):
        return sentence
    for place, mark in enumerate(sentence):
        if mark.kind is not Kind.NOT or kind_at(sentence, place + 1) is not Kind.NUM:
            continue
        end = place + 2 + (kind_at(sentence, place + 2) in (Kind.REPS, Kind.KG, Kind.LB))
        rest = sentence[end:]
        compared = bool(rest) and rest[0].text.split()[:1] and rest[0].text.split(" ")[0] in _COMPARED
        if compared and not any(m.kind is Kind.NUM for m in rest):
            same = rest[0].text.split(" ")[0] in ("like", "as", "unlike", "compared")
            gone = len(sentence) if same else end
            return [*sentence[:place], *(replace(m, kind=Kind.GAP, value=None) for m in sentence[place:gone]),
                    *sentence[gone:]]  # fmt: skip
    return sentence


def _intended(sentence: list[Mark]) -> list[Mark]:
    """`100x5, should be 102.5 next time`, `100x4, was supposed to be 6`: what is to come, or was planned."""
    for place, mark in enumerate(sentence):
        if mark.kind is not Kind.MEANT or kind_at(sentence, place + 1) is not Kind.NUM:
            continue
        end = place + 2 + (kind_at(sentence, place + 2) in (Kind.REPS, Kind.KG, Kind.LB))
        entry = any([m.kind for m in sentence[i : i + 3]] == _ENTRY for i in range(place))
        later = kind_at(sentence, end) is Kind.OTHERTIME
        planned = mark.text.split(" ")[0] in ("was", "were", "supposed", "meant") and "supposed" in mark.text
        if (later or (planned and entry)) and kind_at(sentence, end) is not Kind.X:
            gone = [replace(m, kind=Kind.GAP, value=None) for m in sentence[place:end]]
            return [*sentence[:place], *gone, *sentence[end:]]
    return sentence


_ENTRY = [Kind.NUM, Kind.X, Kind.NUM]
