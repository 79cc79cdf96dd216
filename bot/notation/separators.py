"""A dash, a semicolon or a slash where others type a comma or a colon: `8 - same - same`, `8 each / 7 each`.

People part what they tell by the sign that is near to their thumb. Before anything is read, such a sign between spaces
is put as the comma, behind a heading as the colon, that it stands for, and so is the line's end behind a heading; the
text keeps its length, so that places in it stay where they were. A dash between numbers (a range, a load with its
repetitions), a slash between them (sides, a drop), a bullet and a sign stay.
"""

import re

_SIGN = re.compile(r"(?<=\S) (?:[-–—]{1,3}|/) (?=\w)|;(?= +[+-]?\d)|\n(?=[+-]?\d)")
_NEAR = 80
"""Characters before a sign that are looked at, and the longest heading."""
_WORDS = 16
"""Characters of the words straight before it."""

_DAYS = r"mon|tues?|wed|thurs?|fri|sat|sun|weekend|yesterday|yday|last night"
_HEADS = re.compile(
    r"\b(?:forg[eo]t\w*|warm(?:ed|ing)?[ -]?ups?(?= (?:on|with|sets?)\b)|yesterday['’]?s"
    rf"|(?:from|of) (?:the )?(?:{_DAYS}))",
    re.IGNORECASE,
)
"""Words that head the sets behind them."""
_STATES = re.compile(
    r"\b(?:sore\w*|stiff|tight|tired|wrecked|dead|fried|cooked|smoked|shattered|knackered|doms|recover\w*|hung ?over"
    r"|hurt\w*|pain\w*|ach\w*|tender|legs|quads|heavy|run|game|match|party|wedding|flight)\b",
    re.IGNORECASE,
)
"""Words of a line that tells how the client is: `legs sore from monday` heads nothing."""
_DATE = re.compile(r"\s*\d{1,2}[/.]\d{1,2}(?:[/.]\d{2,4})?")
_SETS = re.compile(r"\d ?[x×*] ?\d")
_WORD = re.compile(r"[^\W\d]{3}$")
_PART = re.compile(r"[.,;!?(]")
_NO_HEAD = re.compile(r"\b(?:reps|bodyweight|minus|each|done)$", re.IGNORECASE)
_FREE_WORD = re.compile(r"(?<!\w)(?!(?:kgs?|lbs?|bw|ez)$)[^\W\d]{2,}$", re.IGNORECASE)
"""A word that is no number's unit: `8 each / 7 each`, not `30kg / 20kg`."""
_TWO_WORDS = re.compile(r"\b(?:push|pull|chin|sit|step|press|muscle|get|warm)$", re.IGNORECASE)
"""The first half of `pull - ups`."""

_LOAD = re.compile(r"(?:^|[^\W\d] )(?P<load>[+-]?\d{1,3}(?:[.,]\d{1,2})?)(?: ?(?:kgs?|kilos?|lbs?))?$", re.IGNORECASE)
_LIST = re.compile(r"(?P<count>\d{1,2})(?:,? \d{1,2})+(?=[ .,!]*(?:\n|$))", re.IGNORECASE)
_MOST_HEAD = 3
"""Words of a heading before a dash and its sets: of more it is talk."""
_COUNTED = re.compile(r"\d|\b(?:for|at) (?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|twenty)\b")
_OF_SET = re.compile(r"(?:with|using|at|on)\b", re.IGNORECASE)
"""What tells more of the set before the dash: `10/9 - with the 16s`."""
_TIMES = 2
"""A number over a list that is so many times its first one is a load, not repetitions."""


_HEAVY = r"(?:\d+[.,]\d+|[2-9]\d|\d{3})"
_PAIRS = re.compile(
    rf"(?<![\d.,/x×*-])(?<![\d.,/x×*:-] ){_HEAVY} \d{{1,2}}(?:; ?{_HEAVY} \d{{1,2}})+(?! ?[\d,/x×*]|\d)"
)
"""Pairs of a load, from 20 on, and repetitions that semicolons part."""


def with_commas(text: str) -> str:
    """The text with commas and colons for other signs that stand for them.

    >>> with_commas("not 14; 12. lunges 8 each / 7 each. rows - 40")
    'not 14, 12. lunges 8 each,  7 each. rows:  40'
    """
    return _SIGN.sub(_put, _PAIRS.sub(_crossed, text))


def _crossed(found: re.Match[str]) -> str:
    """`8 13; 10 14` with a cross in each pair."""
    return re.sub(r"(?<=\d) (?=\d)", "x", found.group())


def _put(found: re.Match[str]) -> str:
    """What stands for a sign, as long as that."""
    text, start, end = found.string, found.start(), found.end()
    line = text[max(text.rfind("\n", 0, start) + 1, start - _NEAR) : start]
    sign = found.group()
    if sign == ";":
        mark: str | None = ","
    elif sign == " / ":
        mark = "," if text[end].isdigit() and _FREE_WORD.search(line[-_WORDS:]) else _between_entries(text, end)
    elif sign == "\n":
        mark = _behind_line(line, text, end)
    else:
        mark = _behind_dash(line, text, end)
    return sign if mark is None else mark.ljust(len(sign))


_PUT_RIGHT = re.compile(
    r"\b(?:no|sorry|mean|meant|wait|oops|actually|scratch|make)\b(?:[ ,]|that|the|last|one|set|was|not)*\d",
    re.IGNORECASE,
)
"""A number put right: `no 14 / leg press 160`."""


def _between_entries(text: str, at: int) -> str | None:
    """A full stop for a slash before words, where several part what is told: `chins 8 / no dips, sore / plank 45`."""
    several = text.count(" / ") >= _SEVERAL or _PUT_RIGHT.search(
        text[max(text.rfind("\n", 0, at) + 1, at - _NEAR) : at]
    )
    return "." if several and text[at].isalpha() and _PER.match(text, at) is None else None


_SEVERAL = 2
_PER = re.compile(
    r"(?:(?:side|leg|arm|hand|set|rep|week|day|sec|min)s?|min\w*|each|l|r|left|right|kg|kilos?|lbs?|x)"
    r"(?=\s*(?:$|[/,.;:)\d]|x\b|then\b|and\b|rpe\b|@))",
    re.IGNORECASE,
)
"""What a slash says something is counted by, or the other of two sides."""


def _behind_line(line: str, text: str, at: int) -> str | None:
    """What a line's end stands for; an equals sign is a colon that makes no clock time of two numbers."""
    if _heads(line):
        return ":"
    load, counts = _LOAD.search(line[-_WORDS:]), _LIST.match(text, at)
    if load is None or counts is None:
        return None
    return "=" if abs(float(load["load"].replace(",", "."))) >= _TIMES * int(counts["count"]) else None


def _behind_dash(line: str, text: str, at: int) -> str | None:
    """What a dash between spaces stands for."""
    if text[at].isdigit():
        part = _PART.split(line)[-1]
        head = _WORD.search(part) and _NO_HEAD.search(part) is None and not any(c.isdigit() for c in part)
        told = _HEADS.search(line) is not None and _STATES.search(line) is not None
        short = len(part.split()) <= _MOST_HEAD or _heads(line)
        return ":" if head and not told and short else None
    if _OF_SET.match(text, at):
        return None
    following = text[at : at + len("skipped")].lower()
    if following[:2] == "up" and _TWO_WORDS.search(line[-_WORDS:]):
        return ""
    if following == "skipped" and ":" not in line:
        return None
    sets = text[at : at + _NEAR].partition("\n")[0]
    if _DATE.fullmatch(line) or (_heads(line) and _SETS.search(sets)):
        return ":"
    return "," if _COUNTED.search(line) else None


def _heads(line: str) -> bool:
    """Whether a line heads the sets behind it."""
    if len(line) == _NEAR or any(c.isdigit() or c == ":" for c in line):
        return False
    return _HEADS.search(line) is not None and _STATES.search(line) is None
