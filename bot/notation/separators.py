"""A dash, a semicolon or a slash where others type a comma or a colon: `8 - same - same`, `8 each / 7 each`.

People part what they tell by the sign that is near to their thumb. Before anything is read, such a sign between spaces
is put as the comma, behind a heading as the colon, that it stands for, and so is the line's end behind a heading; the
text keeps its length, so that places in it stay where they were. A dash between numbers (a range, a load with its
repetitions), a slash between them (sides, a drop), a bullet and a sign stay.
"""

import re

_DAYS = r"mon|tues?|wed|thurs?|fri|sat|sun|weekend|yesterday|yday|last\ night"
_HEADS = (
    r"forg[eo]t\w*|warm(?:ed|ing)?[ -]?ups?(?=\ (?:on|with|sets?)\b|\n|\ [-–—]\ )|yesterday['’]?s"
    rf"|(?:from|of)\ (?:the\ )?(?:{_DAYS})"
)
"""Words that head the sets on the line behind them."""
_STATES = re.compile(
    r"\b(?:sore\w*|stiff|tight|tired|wrecked|dead|fried|cooked|smoked|shattered|knackered|doms|recover\w*|hung\ ?over"
    r"|hurt\w*|pain\w*|ach\w*|tender|legs|quads|heavy|run|game|match|party|wedding|flight)\b",
    re.IGNORECASE,
)
"""Words of a line that tells how the client is: `legs sore from monday` heads nothing."""

_PARTS = re.compile(
    rf"""
      ^(?=[^\n\d:]*\b(?:{_HEADS}))[^\n\d:]*?[^\W\d](?P<line>\n(?=[+-]?\d)|\ [-–—]\ (?=[^\n]*\d\ ?[x×*]\ ?\d))
    | \b(?:push|pull|chin|sit|step|press|muscle|get|warm)(?P<name>\ -\ )(?=ups?\b)
    | ^\s*\d{{1,2}}[/.]\d{{1,2}}(?:[/.]\d{{2,4}})?(?P<date>\ [-–—]\ )
    | (?<=\S)(?P<dash>\ [-–—]{{1,3}}\ )(?=[^\W\d])(?!skip)
    | (?<=[^\W\d][^\W\d][^\W\d])(?<!\breps)(?<!\bbodyweight)(?<!\bminus)(?<!\beach)(?<!\bdone)
      (?P<head>\ [-–—]{{1,3}}\ )(?=\d)
    | (?P<semi>;)(?=\ +[+-]?\d)
    | (?<=[^\W\d][^\W\d])(?<!\d[^\W\d][^\W\d])(?<!\b(?:kg|lb|bw|ez))(?P<slash>\ /\ )(?=\d)
    | (?:^|(?<=[^\W\d]\ ))(?P<load>[+-]?\d{{1,3}}(?:[.,]\d{{1,2}})?)(?:\ ?(?:kgs?|kilos?|lbs?))?
      (?P<list>\n)(?=(?P<count>\d{{1,2}})(?:,?\ \d{{1,2}})+(?![\d.:/x×*@kls]|\ ?(?:[x×*@]|for\b|kg|lb)))
    """,
    re.VERBOSE | re.IGNORECASE | re.MULTILINE,
)
_MARKS = {"name": "", "date": ":", "dash": ",", "head": ":", "semi": ",", "slash": ",", "line": ":", "list": "="}
"""What each stands for; an equals sign is a colon that makes no clock time of two numbers."""
_TIMES = 2
"""A number over a list that is so many times its first one is a load, not repetitions."""
_SIGNS = re.compile(r"\ [-–—/]|;|\n")


def with_commas(text: str) -> str:
    """The text with commas and colons for other signs that stand for them.

    >>> with_commas("not 14; 12. lunges 8 each / 7 each - same. rows - 40")
    'not 14, 12. lunges 8 each,  7 each,  same. rows:  40'
    """
    if _SIGNS.search(text) is None:
        return text
    return _PARTS.sub(_put, text)


def _put(found: re.Match[str]) -> str:
    """What stands for what was found, as long as that."""
    kind = next(name for name in _MARKS if found[name] is not None)
    start, end = found.span(kind)
    heads = kind in ("head", "line")
    if heads and _STATES.search(found.string, found.string.rfind("\n", 0, start) + 1, start):
        return found.group()
    if kind == "list" and abs(float(found["load"].replace(",", "."))) < _TIMES * int(found["count"]):
        return found.group()
    before, behind = found.group()[: start - found.start()], found.group()[end - found.start() :]
    return before + _MARKS[kind].ljust(end - start) + behind
