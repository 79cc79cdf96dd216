"""Plain text cut into marks: numbers, words and symbols, each with its place.

A number that can be written for several (`1.000`, `1,000`, `1e9`, `100²`) is `BAD`. A comma between digits stays inside
the number, with both readings: `value` is the decimal, `parts` the list. A letter at a digit (`60kgx5`, `22.5s`) is a
word of its own.
"""

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.kinds import Kind
from bot.notation.quick import quick

_MEANT = frozenset("✅👍#%£$€°")
"""Symbols that say something; others are decoration."""
_GLUED_UNITS = ("kgs", "kg", "lbs", "lb", "kilos", "reps", "rep", "secs", "sec", "s", "m", "k", "r")
_GLUED = frozenset(["x", "for", "at", "each", "left", "right", "with", "and", "then", "per", "ea"])
"""Words that get glued to a unit: `12sfor`, `60kgx`."""
MAX_DIGITS = 9
"""More digits than any load or count has: such a number is asked about."""

_MARK = re.compile(
    r"(?P<number>\d[\d.,:^]*(?:(?<=\d)e[+-]?\d+)?|\.\d+|\^+\d*)"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)*)"
    r"|(?P<line>\n)"
    r"|(?P<space>[ _]+)"
    r"|(?P<symbol>.)",
    re.DOTALL,
)
_LETTER_O = re.compile(r"(?<=\d)o(?=o*(?:\d|x|kg|lb|\b))")
"""A letter typed for a nought: `12ox5`."""
_LETTER_L = re.compile(r"(?<![^\W\d_])[li](?=[0o](?!\w))|(?<=[x×*])[li](?=[0o](?!\w))")
"""A letter typed for a one before a nought: `20 x l0`; on a side it would count none."""
_HIGH_POINT = re.compile(r"(?<=\d\d)'(?=(?:5|25|75)\b)")
"""An apostrophe written for the decimal point: `72'5`."""
_DECIMAL = re.compile(r"\d*\.\d{1,2}|\d+")
_COMMA = re.compile(r"\d+(?:\.\d{1,2})?(?:,\d+(?:\.\d{1,2})?)+")
_CLOCK = re.compile(r"\d{1,3}:\d\d")
SYMBOLS: dict[str, Kind] = {
    ",": Kind.COMMA, ";": Kind.BREAK, "|": Kind.BREAK, ".": Kind.STOP, "!": Kind.STOP, "?": Kind.QUERY,
    "/": Kind.SLASH, "\\": Kind.SLASH, "+": Kind.PLUS, "-": Kind.DASH, "~": Kind.GAP, ">": Kind.ARROW, ":": Kind.COLON,
    "=": Kind.COLON, "(": Kind.OPEN, ")": Kind.CLOSE, "[": Kind.OPEN, "]": Kind.CLOSE, "*": Kind.X, "•": Kind.LINE,
    "@": Kind.AT, "&": Kind.AND,
}  # fmt: skip


@quick
class Mark:
    """A token: what it is, its text, the folded text's range, whether it touches the one before it, and its number."""

    kind: Kind
    text: str
    start: int
    end: int
    tight: bool = False
    value: Decimal | None = None
    parts: tuple[Decimal, ...] = ()
    """Another reading of a number: the list in `12,11`, minutes and seconds in `1:05`, the two in `sixty five`."""
    names: tuple[int, ...] = ()
    """Of a name: the exercises that it fits, by their place in the session; none where the session lacks it."""


_SECONDS = re.compile(r'\d"(?!\w)')
"""`30"`: where every such sign stands behind a number, they are no quotes."""


def read_marks(text: str) -> tuple[Mark, ...]:
    """The marks of folded text, in order, without spaces. Never raises."""
    text = _HIGH_POINT.sub(".", _LETTER_O.sub("0", _LETTER_L.sub("1", text)))
    marks: list[Mark] = []
    space = True
    bullets = {sign for sign in "-+" if _has_bullets(text, sign)}
    seconds = len(_SECONDS.findall(text)) == text.count('"')
    for found in _MARK.finditer(text):
        start, end = found.span()
        piece = found.group()
        match found.lastgroup:
            case "space":
                space = True
                continue
            case "number":
                marks.extend(_numbers(piece, start, tight=not space))
            case "word":
                marks.extend(_words(piece, start, not space, marks, text[end : end + 1]))
            case "line":
                marks.append(Mark(Kind.LINE, piece, start, end, not space))
            case _:
                kind = SYMBOLS.get(piece, Kind.WORD if piece in _MEANT else Kind.FILL)
                kind = Kind.SECONDS if piece == '"' and seconds and not space else kind
                twice = piece == "/" and bool(marks) and marks[-1].text == "/" and not space
                if twice and not text[end:].lstrip()[:1].isdigit():
                    marks[-1] = replace(marks[-1], kind=Kind.BREAK, text="//", end=end)
                    continue
                starts = not marks or marks[-1].kind is Kind.LINE
                if starts and piece in "*-+" and text[end : end + 1] == " ":
                    kind = Kind.LINE if piece == "*" or piece in bullets else kind
                marks.append(Mark(kind, piece, start, end, not space))
        space = False
    return tuple(_with_initials(marks))


def _with_initials(marks: list[Mark]) -> list[Mark]:
    """`w.u. 40x5`, `r.p.e. 8`: letters with a point behind each as one word."""
    out: list[Mark] = []
    at = 0
    while at < len(marks):
        if len(marks[at].text) > 1:
            out.append(marks[at])
            at += 1
            continue
        end = at
        while _is_initial(marks, end, first=end == at):
            end += 2
        if end > at + 2 or (end == at + 2 and _is_letter(marks, end) and marks[end].tight):
            last = end + (end < len(marks) and _is_letter(marks, end) and marks[end].tight)
            word = "".join(m.text for m in marks[at:last] if m.kind is Kind.WORD)
            out.append(replace(marks[at], text=word, end=marks[last - 1].end))
            at = last
            continue
        out.append(marks[at])
        at += 1
    return out


def _is_letter(marks: Sequence[Mark], at: int) -> bool:
    return at < len(marks) and marks[at].kind is Kind.WORD and len(marks[at].text) == 1


def _is_initial(marks: Sequence[Mark], at: int, *, first: bool) -> bool:
    """Whether a letter with a point straight behind it stands at a place, alone or straight behind another."""
    if not _is_letter(marks, at) or (marks[at].tight is first and at > 0 and (not first or marks[at - 1].text != "(")):
        return False
    return at + 1 < len(marks) and marks[at + 1].kind is Kind.STOP and marks[at + 1].tight


def _has_bullets(text: str, bullet: str) -> bool:
    """Whether several lines start with this sign: a list, not a minus or a plus."""
    return "\n" in text and sum(line.lstrip().startswith(bullet + " ") for line in text.split("\n")) > 1


def _words(word: str, start: int, tight: bool, marks: list[Mark], after: str) -> list[Mark]:
    """A word, cut where an `x` between numbers is glued to it: `60kgx5`, `60xten`."""
    plain = word.replace("'", "")
    after_number = tight and bool(marks) and marks[-1].kind is Kind.NUM
    if after.isdigit() and plain.endswith("x") and 1 < len(plain) <= 10:
        cut = start + len(word) - 1
        return [
            Mark(Kind.WORD, plain[:-1], start, cut, tight),
            Mark(Kind.WORD, "x", cut, start + len(word), True),
        ]
    if after_number:
        for unit in _GLUED_UNITS:
            rest = plain[len(unit) :]
            if plain.startswith(unit) and rest in _GLUED:
                cut = start + len(unit)
                return [Mark(Kind.WORD, unit, start, cut, tight), Mark(Kind.WORD, rest, cut, start + len(word), True)]
    if after_number and plain.startswith("x") and len(plain) > 2:
        return [
            Mark(Kind.WORD, "x", start, start + 1, True),
            Mark(Kind.WORD, plain[1:], start + 1, start + len(word), True),
        ]
    return [Mark(Kind.WORD, plain, start, start + len(word), tight)]


def _numbers(piece: str, start: int, tight: bool) -> list[Mark]:
    """The marks of a stretch of digits with points, commas and colons; what ends it unfinished stands by itself."""
    body = piece.rstrip(".,:")
    marks: list[Mark] = []
    if body:
        marks.append(_number(body, start, tight))
        if marks[0].kind is Kind.BAD and ":" in body and not any(c in body for c in "^e"):
            marks = _split(body, start, tight)
    for offset, char in enumerate(piece[len(body) :], len(body)):
        marks.append(Mark(SYMBOLS[char], char, start + offset, start + offset + 1, True))
    return marks


def _split(body: str, start: int, tight: bool) -> list[Mark]:
    """`60:10,9,8` and `60:5`: numbers with a colon between."""
    marks: list[Mark] = []
    place = start
    for index, part in enumerate(body.split(":")):
        if index:
            marks.append(Mark(Kind.COLON, ":", place, place + 1, True))
            place += 1
        if part:
            marks.append(_number(part, place, tight or index > 0))
            place += len(part)
    return marks


def _number(body: str, start: int, tight: bool) -> Mark:
    """One number with its other reading, or a `BAD` one."""
    end = start + len(body)
    bad = Mark(Kind.BAD, body, start, end, tight)
    if len(body) > 60 or max(map(len, re.split(r"\D", body))) > MAX_DIGITS:
        return bad
    if _DECIMAL.fullmatch(body):
        return Mark(Kind.NUM, body, start, end, tight, Decimal(body))
    if _CLOCK.fullmatch(body):
        first, second = body.split(":")
        return Mark(Kind.CLOCK, body, start, end, tight, Decimal(first), (Decimal(first), Decimal(second)))
    if _COMMA.fullmatch(body):
        return _with_commas(Mark(Kind.NUM, body, start, end, tight), bad)
    return bad


def _with_commas(number: Mark, bad: Mark) -> Mark:
    pieces = number.text.split(",")
    parts = tuple(Decimal(p) for p in pieces)
    if len(pieces) > 2 or any("." in p for p in pieces):
        if any(len(p) >= 3 and "." not in p for p in pieces[1:]) and all(len(p) == 3 for p in pieces[1:]):
            return bad
        return replace(number, parts=parts)
    if len(pieces[1]) > 2:
        return bad
    return replace(number, value=Decimal(f"{pieces[0]}.{pieces[1]}"), parts=parts)
