"""Words beside a report that say nothing of it: `music was bad, 60x5`, `60x5 in my new shoes`, `9, felt heavy`.

Rules that look at where a message starts or ends meet what is told there. Such words are put as blanks before anything
is read, for sets and for hurts alike; the text keeps its length, so that places in it stay where they were. Nothing is
put so where the plan gives the words a meaning (a belt hangs weight on a body), where a danger may be told with them,
or where what is left would say less than it did (`done with chalk`).
"""

import re
from collections.abc import Iterable, Sequence

from bot.notation.little_words.sayings import HEAD, HEAD_APART, LOOSE, TAIL, TAIL_APART, WHEN, compiled
from bot.notation.wordlist import words
from bot.training.plan import LoadStyle, PlannedExercise

MOST_PUT = 3
"""Such sayings at either end of a message."""
_FAR = 90
"""Characters at the end of a message in which one may stand."""
_LONGEST_WORD = 24
_PLAIN = str.maketrans({"’": "'", "‘": "'"})
_COUNTS = (
    r"(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|"
    r"seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b"
)
_NUMBER = rf"(?:[+-]?\d|{_COUNTS})"
_MARK = r"\s*(?:[,.;:!…]|\n|\s[-–—](?=\s))[\s,.;:!…]*"
_ENDS = r"[\s.!…\U0001f600-\U0001f64e]*$"
_LEADS_ON = (
    r"(?:(?:and|or|but|so|with(?!\ \d)|for|because|cos|at|in|on|of|to|that|than|too|again|when|while|since|until|"
    r"till|if|enough|as|is|was)\b|\d+\ ?(?:h|hrs?|hours?|mins?|minutes?|am|pm)\b)"
)
"""Straight behind an opening: what makes it part of a longer sentence."""
_REPORTED = (
    rf"(?:\d(?:st|nd|rd|th)?|\b(?:reps?|kgs?|kilos?|lbs?|pounds|secs?|seconds|met(?:er|re)s|each|sides?|legs?|arms?|"
    rf"same|again|them|those|rir|failure|tank|last|other|left|right|set|second|third|fourth|though|tho|this\ time|"
    rf"finished|{_COUNTS}))"
)
"""The end of a report, straight before what is said bare."""

_HEAD = compiled(HEAD, before=r"\s*", behind=rf"(?:{_MARK}|\s+(?!\s|{_LEADS_ON}))(?=\S)")
_HEAD_APART = compiled(HEAD_APART, before=r"\s*", behind=rf"(?:{_MARK}(?=\S)|\s+(?={_NUMBER}(?!{_LEADS_ON})))")
_TAIL = compiled(TAIL, before=rf"(?P<gap>(?<=\S){_MARK}|(?<=\S)\s+)", behind=_ENDS)
_TAIL_APART = compiled(TAIL_APART, before=rf"(?P<gap>(?<=\S){_MARK})", behind=_ENDS)
_ENDS_REPORT = re.compile(rf"{_REPORTED}$")
_LOOSE = re.compile(LOOSE)
_ASKS = re.compile(
    r"\b(?:should|shall|can|could|would|will|what|how|why|which|who|if|when|next|tomorrow|want|wanna|need|try|going|"
    r"gonna|plan|planned|do\ i|did\ i|is\ it|last\ week|last\ time|yesterday)\b[^.!?\n]*$"
)
"""A sentence that asks, plans or tells of another time: what is said in it bare belongs to it."""
_BARE_DONE = re.compile(r"[\W_]*(?:(?:all|im|i'm|thats|that's)\s)*(?:done|finished|me|it|one|yes|yep|no|ok)?[\W_]*$")
_AGAIN = re.compile(r"^[\sa-z]*\bagain[\s.!]*$")
"""Of `starving again` nothing tells whether it is a set."""
_DANGER = re.compile(
    r"\b(?:chest|heart|jaw|breath\w*|dizz\w+|light ?headed|faint\w*|pass(?:ed|ing)? out|black(?:ed|ing)? out|vision|"
    r"speech|numb\w*|collaps\w+|wobbly legs|pee|urine)\b"
)
"""With one of these in the message what was felt is left as it is said."""
_LAST = re.compile(r"([a-z]+)" + _ENDS)
_LAST_WORDS = frozenset(re.findall(r"[a-z]+", TAIL + TAIL_APART + WHEN))
"""Words that such a saying may end with, and more: a message that ends otherwise is not looked through."""
_HANGS = frozenset(("belt", "beltless"))


def without_little_words(text: str, exercises: Sequence[PlannedExercise] = ()) -> str:
    """The text with blanks for such words. `exercises`: the plan, which may give them a meaning.

    >>> without_little_words("music was bad, 60x5 in my new shoes").strip()
    '60x5'
    """
    plain = text.lower().translate(_PLAIN)
    if len(plain) != len(text):
        return text
    feels = _DANGER.search(plain) is None
    typed = plain
    plain = _without_loose(plain, exercises)
    for _ in range(MOST_PUT):
        put = _without_head(plain, exercises, feels=feels)
        put = _without_tail(put, exercises, feels=feels)
        if put == plain:
            break
        plain = put
    if plain == typed or _BARE_DONE.match(plain):
        return text
    return "".join(" " if new == " " else old for old, new in zip(text, plain, strict=True))


def _named(exercises: Iterable[PlannedExercise]) -> frozenset[str]:
    """The words of the plan's names, and those of gear that hangs weight on a body where it moves one."""
    told = (word for e in exercises for name in (e.name, *e.aliases) for word in re.findall(r"[a-z]+", name.lower()))
    hangs = any(e.load_style is LoadStyle.BODYWEIGHT for e in exercises)
    return frozenset(told) | (_HANGS if hangs else frozenset())


def _means(saying: str, exercises: Sequence[PlannedExercise]) -> bool:
    """Whether a saying has a word of the plan's, but for the bar that many names have."""
    named = _named(exercises)
    return any(
        word in named or word.rstrip("s") in named for word in re.findall(r"[a-z]+", saying) if word not in _COMMON
    )


_COMMON = frozenset(words("bar the a my in on with from at to up for and good no of it one out over back off leg"))


def _blank(text: str, start: int, end: int) -> str:
    return text[:start] + " " * (end - start) + text[end:]


def _without_loose(text: str, exercises: Sequence[PlannedExercise]) -> str:
    """`60x5 beltless, 65x5`: without such a word wherever it stands."""
    for found in _LOOSE.finditer(text):
        if not _means(found.group().removesuffix("less"), exercises):
            text = _blank(text, *found.span())
    return text


def _without_head(text: str, exercises: Sequence[PlannedExercise], *, feels: bool) -> str:
    """The text without what it opens with; `feels` where that may tell how the client felt."""
    if _AGAIN.search(text) is not None:
        return text
    found = _HEAD.match(text) or (_HEAD_APART.match(text) if feels else None)
    if found is None or _means(found.group(), exercises):
        return text
    return _blank(text, 0, found.end())


def _without_tail(text: str, exercises: Sequence[PlannedExercise], *, feels: bool) -> str:
    """The text without what it ends with; said bare that must stand behind a report."""
    last = _LAST.search(text, max(0, len(text.rstrip()) - _LONGEST_WORD))
    if last is None or not {last[1], last[1] + "s"} & _LAST_WORDS:
        return text
    far = max(0, len(text.rstrip()) - _FAR)
    found = _TAIL.search(text, far) or (_TAIL_APART.search(text, far) if feels else None)
    if found is None or _means(found.group(), exercises):
        return text
    before = text[: found.start()]
    bare = not found["gap"].strip() and "\n" not in found["gap"]
    if bare and (_ENDS_REPORT.search(before) is None or _ASKS.search(before) is not None):
        return text
    return _blank(text, found.start(), len(text))
