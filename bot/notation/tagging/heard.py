"""Small words that dictation, or an ear for another tongue, takes for others: put right where their neighbours tell.

`set too eleven` is set two, `won left` is one left, `100 four 12` is 100 for 12, `turd set` is the third.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import FEW_SETS, SEVERAL
from bot.notation.kinds import Kind
from bot.notation.spoken import NUMBER_WORDS, TENS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_COUNTS = {"won": "one", "too": "two", "tu": "two", "tree": "three", "free": "three", "fore": "four", "foor": "four",
           "ate": "eight", "sicks": "six", "sex": "six", "sics": "six", "tin": "ten", "nein": "nine"}  # fmt: skip
_ORDINALS = {
    heard: meant
    for meant, all_heard in (
        ("first", "fist frist firts fisrt furst firt fisst"),
        ("second", "secon secnd seconde secound secend secod"),
        ("third", "turd thrid thirt tird therd thrd"),
        ("fourth", "forth fourt fouth"),
        ("fifth", "fith fift"),
    )
    for heard in words(all_heard)
}
_FOR = frozenset(words("fir fot fo gor dor fpr foe ofr rof vor foor"))
"""`for` as thumbs hit it."""
_COUNTED = frozenset(words("reps rep left sets more repetitions kilos kilo kg pounds lbs"))
_TIMED = frozenset(words("seconds secs sec metres meters reps kilos kilo pounds"))
_COMMAS = ("comma", "komma", "coma", "dot")
_POINTS = frozenset(words("komma coma virgola virgule virgula przecinek kropka punkt punto ponto"))
"""The decimal sign by its name in other languages: no list is told with it."""
_MISHEARD = _FOR | _POINTS | {*_COUNTS, *_ORDINALS, *_COMMAS, *words("than to four into wan yin wun set serie repeat")}
"""All words that are put right somewhere."""
_TENTHS = ("five", "5", "25", "75", "2.5")
_AFTER_LOAD = frozenset(words("for x by kg kilo kilos kgs times lb lbs pounds with"))
_OPENS = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK)


def heard(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as what was meant."""
    return [m if (said := _meant(marks, i)) == m.text else replace(m, text=said) for i, m in enumerate(marks)]


def _meant(marks: Sequence[Mark], place: int) -> str:
    """The word that was meant at a place: the one that stands there, unless its neighbours tell."""
    mark = marks[place]
    if mark.kind is not Kind.WORD or mark.text not in _MISHEARD:
        return mark.text
    before = marks[place - 1] if place else None
    after = marks[place + 1] if place + 1 < len(marks) else None
    numbered = after is not None and _is_number(after)
    if mark.text in _ORDINALS and after is not None and (numbered or after.text in ("set", "one", "round")):
        return _ORDINALS[mark.text]
    if mark.text == "than" and (before is None or before.kind in _OPENS) and after is not None:
        return "then"
    if before is None:
        return mark.text
    halved = [m.text for m in marks[place + 1 : place + 4]] == ["and", "a", "half"]
    if mark.text in ("to", "too") and halved and before.text in TENS:
        return "two"
    if mark.text in ("wan", "yin", "wun") and before.text in (
        "last",
        "that",
        "this",
        "first",
        "second",
        "third",
        "next",
    ):
        return "one"
    if before.text == "set" and numbered and (mark.text in _COUNTS or _is_second(marks, place)):
        return _COUNTS.get(mark.text, "two")
    eaten = after is not None and after.text in _EATEN
    if mark.text == "ate" and before.text == "and" and place > 1 and _is_number(marks[place - 2]) and not eaten:
        return "eight"
    told = after is not None and after.text in _ENDING and place > 1 and marks[place - 2].text in _REPS
    if mark.text in ("set", "serie") and told and before.kind is Kind.NUM:
        return "sets"  # `5 rep 3 set done`
    if mark.text == "repeat" and before.kind is Kind.NUM:
        return "reps"
    between = numbered and _is_number(before)
    if between and mark.text in ("four", "fore") and before.kind is Kind.NUM and after is not None:
        return "for" if after.kind is Kind.NUM else mark.text
    if between and mark.text in ("set", "serie") and _counts_sets(marks, place):
        return "sets"
    if between and mark.text == "into":
        linked = len(marks) > place + 2 and marks[place + 2].text in _LINKS  # `45x12 into 30x9` goes on to a drop
        return mark.text if linked else "x"
    if between and mark.text in _FOR and before.kind is Kind.NUM:
        return "for"
    if between and mark.text in _COMMAS and after is not None and after.text in _TENTHS:
        then = marks[place + 2].text if place + 2 < len(marks) else ""
        return "point" if then in _AFTER_LOAD else mark.text
    if between and mark.text in _POINTS and after is not None and after.text in _TENTHS:
        listed = {m.text for m in (*marks[max(0, place - 2) : place], *marks[place + 1 : place + 3])}
        return mark.text if mark.text in listed else "point"
    counted = after is not None and after.text in _COUNTED
    if mark.text == "too" and after is not None and after.text in _TIMED and before.text in (*TENS, "fourty"):
        return "two"
    scored = before.text == "an" and place > 1 and marks[place - 2].text == "at"
    rated = before.text in ("rpe", "rir") or (scored and mark.text == "ate")
    if rated and (mark.text in _COUNTS or _is_last_to(mark, after)):
        return _COUNTS.get(mark.text, "two")
    if mark.text in _COUNTS and mark.text != "free" and (counted or before.text == "for"):
        return _COUNTS[mark.text]
    return mark.text


def _counts_sets(marks: Sequence[Mark], place: int) -> bool:
    """`3 set 10 reps`: so many sets, whose repetitions follow."""
    few = marks[place - 1].value
    counted = place + 2 < len(marks) and marks[place + 2].text in _REPS
    labelled = place > 1 and marks[place - 2].text in ("set", "x", "for")
    return few is not None and SEVERAL <= few <= FEW_SETS and counted and not labelled


_REPS = frozenset(words("rep reps repetitions repetition"))
_ENDING = frozenset(words("done complete completed finished finish ok"))
_EATEN = ("a", "an", "the", "my", "some", "half", "too", "so", "lunch", "breakfast", "something", "it", "them")
"""What follows `ate` where it was food."""
_LINKS = ("x", "for", "kg", "lb", "kilos", "pounds")
"""Words that a load has behind it."""


def _is_last_to(mark: Mark, after: Mark | None) -> bool:
    """The `to` that ends its part: `rir to`, not `explain rir to me`."""
    return mark.text == "to" and (after is None or after.kind is not Kind.WORD)


def _is_second(marks: Sequence[Mark], place: int) -> bool:
    """`set to eleven` beside other sets that are counted."""
    return marks[place].text == "to" and sum(m.text == "set" for m in marks) > 1


def _is_number(mark: Mark) -> bool:
    return mark.kind is Kind.NUM or mark.text in NUMBER_WORDS
