"""A hurt and a report that only `and`, `but` or a dash joins: `lower back went and scrap that last one`.

Read as one sentence the one takes from the other: what is scrapped, failed or done would be told of the hurt, and
`nothing left` would deny it. Where one side of the word tells of a hurt and nothing else, and the other tells of sets
and no hurt, a full stop stands for the word; the text keeps its length, so that places in it stay where they were.
"""

import re
from collections.abc import Sequence

from bot.notation.answer import Span
from bot.notation.days.weekdays import WEEKDAYS

_TAKES_BACK = r"(?:scrap|scratch|delete|same\ again|sorry|oops|no\ wait|correction)\b"
_JOIN = re.compile(
    rf"(?<=\S),?\ (?:and|but|&|n)\ (?=\S)|(?<=\S)\ [-–—]\ (?=\S)|(?<=\S),\ (?={_TAKES_BACK})", re.IGNORECASE
)
_EDGE = re.compile(r"[.!?…](?!\d)|,(?!\d|\ both\b)|;|\n|\ [-–—]\ ")
_NUMBERS = (
    "two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|fifty|sixty|seventy|eighty"
    "|ninety|hundred"
)
_TIMES = re.compile(
    rf"\b(?:\d+|an?|{_NUMBERS})\ ?"
    r"(?:years?|months?|weeks?|days?|hours?|hrs?|min(?:ute)?s?|sec(?:ond)?s|am|pm|of\ (?:my|the))\b"
    rf"|\b(?:first|last|every)\ (?:one|rep|few|set)\b|\b(?:{_NUMBERS})\ of\b",
    re.IGNORECASE,
)
"""What tells when and for how long it hurts, and of no set."""
_TELLS = re.compile(
    rf"""
      \d | 👍 | \b(?:{_NUMBERS})\b
    | \b(?:scrap|scratch|delete|forgot|sorry|oops|correction|done|finished|everything|warm\s?-?ups?
      |as\ planned|sets?\ \d|skipp?(?:ed|ing)?|bin(?:ned)?|bailed|minis|the\ drop|nothing\ left|no\ wait|wrote
      |same\ (?:again|weight|load|reps)|fail(?:ed)?|would(?:n'?t|\ not)\ go|kgs?|lbs?|kilos|pounds|weekend|yesterday
      |(?:{"|".join(WEEKDAYS)})'?s)\b
    """,
    re.VERBOSE | re.IGNORECASE,
)
"""What a side must say to be of sets."""


def hurts_apart(text: str, hurts: Sequence[Span]) -> str:
    """The text with a full stop for each word that joins a hurt (`hurts` are the ranges that tell of any) to a report.

    >>> hurts_apart("lower back went and scrap that last one", [(0, 15)])
    'lower back went.    scrap that last one'
    """
    if not hurts:
        return text
    out, start = text, 0
    for join in _JOIN.finditer(text):
        start = max((e.end() for e in _EDGE.finditer(text, start, join.start())), default=start)
        edge = _EDGE.search(text, join.end())
        end = edge.start() if edge else len(text)
        more = _JOIN.search(text, join.end(), end)
        before, after = (start, join.start()), (join.end(), end)
        told = (join.end(), more.start() if more else end)
        if _is_apart(text, before, told, hurts) or _is_apart(text, after, before, hurts):
            out = out[: join.start()] + ".".ljust(len(join.group())) + out[join.end() :]
            start = join.end()
    return out


def _is_apart(text: str, hurt: Span, told: Span, hurts: Sequence[Span]) -> bool:
    """Whether one range tells of a hurt alone, and the other of sets alone."""
    inside = [h for h in hurts if h[0] < hurt[1] and hurt[0] < h[1]]
    if not inside or any(h[0] < told[1] and told[0] < h[1] for h in hurts):
        return False
    own = text[hurt[0] : hurt[1]]
    for first, end in inside:
        a, b = max(0, first - hurt[0]), max(0, end - hurt[0])
        own = own[:a] + " " * (len(own[a:b])) + own[b:]
    own = _TIMES.sub(" ", own)
    return _TELLS.search(own) is None and _TELLS.search(_TIMES.sub(" ", text[told[0] : told[1]])) is not None
