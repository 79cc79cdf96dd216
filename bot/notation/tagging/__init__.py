"""Marks given their kinds: names first, then spoken numbers, then the longest phrases of the lexicon.

A word outside the lexicon that is a slip away from one word of it is taken for that word; short words never are.
"""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.lexicon import fillers
from bot.notation.names import Index
from bot.notation.order.figures import with_decimals, with_times
from bot.notation.quick import replace
from bot.notation.spoken import UNITS, read_spoken
from bot.notation.tagging.coded import with_coded
from bot.notation.tagging.dictated import run_together, sets_apart, spoken_signs, without_opening
from bot.notation.tagging.heard import heard
from bot.notation.tagging.limbs import with_limbs
from bot.notation.tagging.mending import is_slip, mended
from bot.notation.tagging.naming import with_names, with_one_limb, with_verbs
from bot.notation.tagging.ordinals import ordinal_at
from bot.notation.tagging.phrases import kind_meant, longest_phrase
from bot.notation.tagging.plurals import with_plurals
from bot.notation.tagging.small_words import small_words
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

__all__ = ["read_kinds"]


_COUNTABLE = (Kind.REPS, Kind.SETS, Kind.SET, Kind.TANK, Kind.LEFT, Kind.RIR, Kind.MORE, Kind.X, Kind.KG, Kind.LB,
              Kind.MINUTES, Kind.HOURS, Kind.SECONDS, Kind.RPE, Kind.EACH, Kind.ASSIST, Kind.OR)  # fmt: skip
_COUNTING = (Kind.X, Kind.AT, Kind.RIR, Kind.RPE, Kind.COULD, Kind.NUM, Kind.FOR, Kind.LEFT, Kind.RIGHT, Kind.SET)


def read_kinds(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with kinds; a phrase of several words is one mark over all of them."""
    marks = with_coded(marks, index)
    typed = small_words(
        heard(with_verbs(with_one_limb(with_plurals(with_limbs(spoken_signs(marks), index)), index), index)), index
    )
    corrected = with_names(mended(typed, index), index)
    out: list[Mark] = []
    at = 0
    while at < len(corrected):
        mark, at = _next(corrected, at, out)
        out.append(mark)
    out = [replace(m, kind=Kind.FILL, value=None) if _is_pronoun(out, i) else m for i, m in enumerate(out)]
    out = with_times(with_decimals(run_together(without_opening(sets_apart(out)))))
    return [_given_up(out, i) if m.kind in _GIVING_UP else _of_now(out, i) for i, m in enumerate(out)]


def _given_up(marks: Sequence[Mark], place: int) -> Mark:
    """`so dropped the curls`, `left the rows`: left out, where no lighter load is told behind the name."""
    mark = marks[place]
    named = place + 1 + (kind_at(marks, place + 1) is Kind.FILL)
    start, end = part_of(marks, place)
    opens = all(m.kind in (Kind.FILL, Kind.AND, Kind.THEN) for m in marks[start:place])
    told = any(m.kind in (Kind.NUM, Kind.BAD, Kind.SAME, Kind.TO, Kind.BODY) for m in marks[named:end])
    told = told or any(w in _LATER for m in marks[named:end] for w in m.text.split())
    asked = any(m.kind is Kind.QUERY for m in marks[end : end + 1])
    the = mark.kind is Kind.DROP or text_at(marks, place + 1) in ("the", "my")
    what = kind_at(marks, named) in (Kind.NAME, Kind.THEREST) or text_at(marks, named) == "everything"
    what = what or (mark.kind is Kind.DROP and kind_at(marks, named) is Kind.WEAK and named == place + 1)
    given = mark.text in _DROPPED and the and what and opens and not told and not asked
    return replace(mark, kind=Kind.SKIP, text="skipped") if given else mark


_LATER = ("later", "till", "until", "last", "end", "for")
_GIVING_UP = (Kind.DROP, Kind.LEFT)
_DROPPED = ("drop", "dropped", "dropping", "left")


def _of_now(marks: Sequence[Mark], place: int) -> Mark:
    """`next set 9`, `always nine`, `two series finished`: words of another time or an end, beside sets."""
    mark = marks[place]
    if mark.kind not in (Kind.OTHERTIME, Kind.FINISH):
        return mark
    at = place + 1
    while at < len(marks) and (marks[at].kind is Kind.WAS or marks[at].text in ("the", "a", "with")):
        at += 1
    at += kind_at(marks, at) in (Kind.LEFT, Kind.RIGHT, Kind.L, Kind.R) and kind_at(marks, at + 1) is Kind.NUM
    numbered = at < len(marks) and marks[at].kind is Kind.NUM
    told = any(m.kind is Kind.NUM for m in marks[:place])
    was = kind_at(marks, place + 1) is Kind.WAS and marks[place + 1].text in ("was", "were")
    if mark.kind is Kind.OTHERTIME and mark.text == "next set" and numbered and (told or was):
        return replace(mark, kind=Kind.THEN)
    if mark.kind is Kind.OTHERTIME and mark.text == "next set" and _is_next_told(marks, place, at):
        return replace(mark, kind=Kind.THEN)
    if mark.kind is Kind.OTHERTIME and mark.text == "next set" and _is_repeated(marks, place):
        return replace(mark, kind=Kind.THEN)
    if mark.kind is Kind.OTHERTIME and mark.text == "always" and numbered:
        return replace(mark, kind=Kind.ALL, text="all")
    named = place > 1 and [m.kind for m in marks[place - 2 : place]] == [Kind.NAME, Kind.WAS]
    if mark.kind is Kind.FINISH and mark.text == "finished" and named:
        return replace(mark, kind=Kind.DONE)
    alone = [m.kind for m in marks[place + 1 : place + 3]] == [Kind.NUM]
    if mark.kind is Kind.FINISH and mark.text in ("thats all", "that was all") and alone:
        return replace(mark, kind=Kind.WAS)
    counted = place > 1 and marks[place - 1].kind is Kind.SETS and marks[place - 2].kind is Kind.NUM
    return replace(mark, kind=Kind.DONE) if mark.kind is Kind.FINISH and counted else mark


def _is_next_told(marks: Sequence[Mark], place: int, at: int) -> bool:
    """`next set nine reps`, `next set 57.5 for 8`: at the start, with its repetitions, and no word of a plan."""
    if place and any(m.kind is not Kind.FILL for m in marks[:place]):
        return False
    while at < len(marks) and marks[at].kind is Kind.SAMELOAD:
        at += 1
    numbers = [i for i, m in enumerate(marks) if m.kind is Kind.NUM]
    counted = kind_at(marks, at) is Kind.NUM and kind_at(marks, at + 1) in (*_LINKED, None, Kind.COMMA, Kind.STOP)
    planned = {w for m in marks for w in m.text.split()} & _PLANNING
    whole = len(numbers) > 1 or kind_at(marks, at + 1) is Kind.REPS or kind_at(marks, at - 1) is Kind.SAMELOAD
    return counted and whole and not planned and not any(m.kind is Kind.QUERY for m in marks)


_LINKED = (Kind.X, Kind.FOR, Kind.REPS, Kind.KG, Kind.LB, Kind.AT, Kind.WITH)
_PLANNING = frozenset(
    words(
        "will ill try trying gonna going aim aiming want wanna should shall plan planning hope hoping maybe target",
        "goal let then wish could can might or if",
    )
)


def _is_repeated(marks: Sequence[Mark], place: int) -> bool:
    """`next set also same`, `next set same weight @8`: told as done where that is all that its part says."""
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.WAS):
        if marks[at].text in ("will", "be", "try", "do"):
            return False
        at += 1
    if kind_at(marks, at) is Kind.SAMELOAD and any(m.kind is Kind.NUM for m in marks[:place]):
        return kind_at(marks, at + 1) in (Kind.AT, Kind.RPE, Kind.RIR) and kind_at(marks, at + 2) is Kind.NUM
    said = at < len(marks) and marks[at].kind is Kind.SAME
    return said and all(m.kind in (Kind.FILL, Kind.STOP, Kind.LINE) for m in marks[at + 1 :])


def _is_pronoun(marks: Sequence[Mark], place: int) -> bool:
    """Whether a `one` counts nothing: `an easy one`, `one exercise to go`."""
    if marks[place].kind is not Kind.NUM or marks[place].text not in ("one", "zero", "nil", "nought"):
        return False
    after = marks[place + 1].kind if place + 1 < len(marks) else None
    before = marks[place - 1].kind if place else None
    if [m.text for m in marks[place + 1 : place + 3]] == ["out", "of"] and kind_at(marks, place + 3) is Kind.NUM:
        return False
    if (
        marks[place].text == "one"
        and before in (Kind.LEFT, Kind.RIGHT)
        and (marks[place - 1].text.startswith(("the ", "my ")) or (place > 1 and marks[place - 2].text == "the"))
    ):
        return after not in _COUNTABLE
    if place and (marks[place - 1].text == "number" or (before is Kind.SETS and after is Kind.NUM)):
        return False
    if marks[place].text != "one" and before is Kind.WITH:
        return False
    doubted = [m.text for m in marks[place + 1 : place + 2]] in (["maybe"], ["perhaps"], ["possibly"])
    if doubted and place + 2 < len(marks) and marks[place + 2].kind is Kind.NUM:
        return False
    ranged = after in (Kind.OR, Kind.TO, Kind.DASH) and place + 2 < len(marks) and marks[place + 2].kind is Kind.NUM
    return after not in _COUNTABLE and before not in _COUNTING and not ranged


def _next(marks: list[Mark], at: int, before: list[Mark]) -> tuple[Mark, int]:
    """The next mark with its kind, and where the one after it starts."""
    mark = marks[at]
    if mark.kind in (Kind.NAME, Kind.WEAK, Kind.LINE, Kind.BAD):
        return mark, at + 1
    phrase = longest_phrase(marks, at)
    if phrase is not None and phrase[0][0] is Kind.PAIR and before and before[-1].kind is Kind.SET:
        phrase = None
    spoken = read_spoken(marks, at)
    if spoken is not None and (phrase is None or spoken[1] >= phrase[1]):
        return spoken
    ordinal = ordinal_at(marks, at, before)
    if ordinal is not None and (phrase is None or ordinal[1] >= phrase[1]):
        return ordinal
    if phrase is not None:
        kinds, end = _short_of_count(marks, at, phrase)
        text = " ".join(m.text for m in marks[at:end])
        return replace(mark, kind=kind_meant(mark, kinds, before), text=text, end=marks[end - 1].end), end
    if mark.kind is not Kind.WORD:
        return mark, at + 1
    if mark.text in fillers():
        return replace(mark, kind=Kind.FILL), at + 1
    return replace(mark, kind=Kind.SLIP) if is_slip(marks, at) else mark, at + 1


def _short_of_count(marks: list[Mark], at: int, phrase: tuple[tuple[Kind, ...], int]) -> tuple[tuple[Kind, ...], int]:
    """`all two left in the tank`: the number of `all two` is that of what follows it."""
    kinds, end = phrase
    counts = end - at > 1 and (marks[end - 1].text in UNITS or marks[end - 1].kind is Kind.NUM)
    following = marks[end].text if end < len(marks) else ""
    fives = following == "s" and marks[end].tight and marks[end - 1].kind is Kind.NUM
    if kinds[0] is Kind.ALL and counts and fives:
        return kinds, end - 1
    if kinds[0] is Kind.ALL and counts and following in ("left", "in", "rir", "reps", "more", "to"):
        return kinds, end - 1
    return phrase
