"""A message as tokens that know where they stand in the raw text.

Case, spacing, digit script, zero-width characters, accents and emoji are
folded away here, so nothing behind this module can depend on them.

>>> [(t.word, str(t.kind)) for t in read_tokens("Knee's at 4/10, 60x5")]
[('knee', 'WORD'), ("'s", 'WORD'), ('at', 'WORD'), ('4/10', 'SCORE'), ('60x5', 'SET')]
"""

from __future__ import annotations

import re
import unicodedata
from typing import ClassVar

from rapidfuzz.distance import OSA

from bot.notation.hurt.rows import word_set
from bot.notation.hurt.variants import ABLE, ACTS, AT_ALL, CANON, NEGATED, NOT_ABLE, TRYING, UNABLE
from bot.notation.named import Named
from bot.notation.quick import quick


class Kind(Named):
    """What a token is, by its shape alone."""

    __slots__ = ()

    WORD: ClassVar[Kind]
    NUMBER: ClassVar[Kind]
    """A bare number: a score, a load, repetitions."""
    SCORE: ClassVar[Kind]
    """`4/10` and its like."""
    SET: ClassVar[Kind]
    """A piece of a set report, which is never a pain score: `60x5`, `8 reps`, `rpe 8`, `@8`, `set 2`."""
    TIME: ClassVar[Kind]
    """A number with a unit of time: `10 min`."""


class Gap(Named):
    """What stands between a token and the one before it."""

    __slots__ = ()

    NONE: ClassVar[Gap]
    SOFT: ClassVar[Gap]
    """A comma, a dash, a bracket."""
    HARD: ClassVar[Gap]
    """A full stop, a new line."""


Kind.fill()
Gap.fill()


@quick
class Token:
    """One token: `word` is folded, `start` and `end` are characters of the raw text."""

    word: str
    start: int
    end: int
    gap: Gap
    kind: Kind


_N = r"\d{1,9}(?:[.,]\d{1,3})?"
_S = r"[^\S\n\r]{0,4}"
_SCANNER = re.compile(
    rf"""
      (?P<whole>100\s?% | (?<=\bnot\s)100\b(?!{_S}(?:[x*@\d]|kg|lb|for|but)) | (?<=isn't\s)100\b | (?<=isnt\s)100\b)
    | (?P<first>\ba1\b(?!{_S}(?:[x*@/\d]|of|out|kg|lb)))
    | (?P<set>
          (?:rpe|rir){_S}[:=]?{_S}{_N}
        | @{_S}{_N}(?!{_S}/{_S}10\b)
        | (?:set|rep|reps|round|(?<!last\s)(?<!this\s)(?:week|day)){_S}[#]?\d+(?!{_S}/{_S}10)\b(?!{_S}(?:out|of)\b)
        | {_N}{_S}(?:kgs?|kilos?|lbs?|pounds?|s)?{_S}[x*]{_S}\d+
          (?:(?:,|{_S}[x*/+>-]{_S})\d+\b(?!{_S}/{_S}10))*(?:{_S}@{_S}{_N})?
        | [x*]{_S}\d+\b
        |
        {_N}{_S}(?:kgs?|kilos?|lbs?|pounds?|reps?|sets?|times|rpe|rir|%|plates?|st|nd|rd|th|s|m|each|a\sside)(?![a-z])
        | {_N}{_S}(?:kgs?|kilos?|lbs?|pounds?|reps?|s)?{_S}/{_S}(?:hand|side|arm|leg|foot|bell|ea|each)(?![a-z])
        | {_N}{_S}(?:for|@){_S}{_N}(?!{_S}(?:/{_S}10|out\b))
      )
    | (?P<score>(?<!\d/)(?<!\d\s/\s){_N}(?:{_S}(?:-|–|to|or){_S}{_N})?{_S}/{_S}10(?!\d|{_S}/{_S}\d))
    | (?P<time>\d{{1,4}}{_S}
          (?:minutes?|mins?|hours?|hrs?|h|seconds?|secs?|days?|weeks?|wks?|months?|years?|yrs?)(?![a-z]))
    | (?P<year>(?<![\w'])'\d\d(?!\w))
    | (?P<number>{_N})
    | (?P<word>w/o(?:ut)?\b|[a-z]+(?:'[a-z]+)*)
    | (?P<ampersand>(?<=\s)&(?=\s))
    | (?P<hard>[.!?;\n\r]+)
    | (?P<soft>[,:()\[\]/&+|>=~"–—]+|(?<![a-z])-+|-+(?![a-z]))
    """,
    re.VERBOSE,
)
_KINDS = {kind.lower(): kind for kind in (Kind.WORD, Kind.NUMBER, Kind.SCORE, Kind.SET, Kind.TIME)}
"""By the group of the scanner."""
_AS_NEW = {"whole": "100%", "first": "perfect", "ampersand": "and"}
"""What numbers that praise, and a sign, are read as: `feels A1 today`, `isn't 100`, `knee & hip`."""
_APOSTROPHES = str.maketrans(dict.fromkeys("’‘`´ʼ′", "'"))


def read_tokens(text: str) -> tuple[Token, ...]:
    """The tokens of any text whatever, in order."""
    folded, places = _fold(text)
    out: list[Token] = []
    gap = Gap.HARD
    for match in _SCANNER.finditer(folded):
        kind = match.lastgroup or "soft"
        if kind == "hard":
            gap = Gap.HARD
            continue
        if kind == "soft":
            gap = Gap.SOFT if gap is Gap.NONE else gap
            continue
        if kind in _AS_NEW:
            out.append(Token(_AS_NEW[kind], places[match.start()], places[match.end() - 1] + 1, gap, Kind.WORD))
            gap = Gap.NONE
            continue
        if kind == "year":
            out.append(
                Token(_year(match.group()[1:]), places[match.start()], places[match.end() - 1] + 1, gap, Kind.NUMBER)
            )
            gap = Gap.NONE
            continue
        for word, start, end in _parts(match.group(), match.start(), match.end()):
            out.append(Token(word, places[start], places[end - 1] + 1, gap, _KINDS[kind]))
            gap = Gap.NONE
    return _unable(_little(_timed(out)))


def _year(short: str) -> str:
    """The year of `'09`, `'98`."""
    return ("19" if short >= "50" else "20") + short


_TIMES = ("minutes", "minute", "mins", "hours", "hour", "min")


def _timed(tokens: list[Token]) -> list[Token]:
    """A number and a misspelt unit of time as one time: `20 mintues`."""
    out: list[Token] = []
    for token in tokens:
        last = out[-1] if out else None
        if last is not None and last.kind is Kind.NUMBER and token.gap is Gap.NONE and _is_time(token):
            out[-1] = Token(f"{last.word} {token.word}", last.start, token.end, last.gap, Kind.TIME)
        else:
            out.append(token)
    return out


def _is_time(token: Token) -> bool:
    if token.kind is not Kind.WORD or token.word in _NO_TIME:
        return False
    return any(OSA.distance(token.word, unit, score_cutoff=1) <= 1 for unit in _TIMES)


_NO_TIME = word_set(
    """
    in mine mind men mint man mid mix kin pin bin fin win mi sin tin gin mum main minis mini min our ours four pour
    tour
    """
)


def _little(tokens: list[Token]) -> list[Token]:
    """The `wee` of `a wee twinge` as `little`; the `only` of `not pain only tired` as `just`."""
    out = list(tokens)
    for place in range(1, len(tokens) - 1):
        before, token, after = tokens[place - 1 : place + 2]
        led = token.word == "wee" and before.word in _LED and token.gap is Gap.NONE
        if led and after.gap is Gap.NONE and after.kind is Kind.WORD and after.word not in _AFTER_WATER:
            out[place] = Token("little", token.start, token.end, token.gap, token.kind)
        sized = token.word in _SIZES and before.word in ("a", "about") and token.gap is Gap.NONE
        if sized and _is_out_of_ten(tokens, place + 1):
            out[place] = Token("a", token.start, token.end, token.gap, token.kind)
        if token.word in _ONLY and (after.word in _NO_HURT or tokens[min(place + 2, len(tokens) - 1)].word in _NO_HURT):
            out[place] = Token("just", token.start, token.end, token.gap, token.kind)
    return out


def _is_out_of_ten(tokens: list[Token], place: int) -> bool:
    """Whether a score starts here: `six out of ten`, `6/10`."""
    behind = [t.word for t in tokens[place + 1 : place + 3]]
    return tokens[place].kind is Kind.SCORE or behind in (["out", "of"], ["of", "ten"], ["of", "10"])


_SIZES = ("good", "solid", "decent", "strong", "healthy", "comfortable", "fair", "nice", "proper", "clean", "clear")
"""What leads a score without being said of a place: `ribs are a good six out of ten`."""
_ONLY = ("only", "merely", "simply")
_NO_HURT = word_set(
    "tired tiredness sore soreness work working worked lazy precaution precautionary careful cautious rounding fatigue "
    "fatigued effort pump pumped weak weakness stiff muscle stretch stretching burn exhausted knackered doms caution"
)
"""What `only` is said of behind a denial of pain; `doesn't hurt, only when i lift` is none."""


_LED = word_set("a the this that some her his another just got had felt one first few")
_AFTER_WATER = word_set(
    """
    is was 's looks looked looking came comes turned turns went goes has had and in on now today or but this that colour
    smells smelled since again any anymore earlier before after when at myself it which with like the
    """
)
"""Words behind `wee` where it is water."""


def _unable(tokens: list[Token]) -> tuple[Token, ...]:
    """The tokens with `could not`, `unable to`, `don't manage to` as the one word `can't`, `does not` as `doesn't`."""
    out: list[Token] = []
    skip = 0
    for index, token in enumerate(tokens):
        if skip:
            skip -= 1
            continue
        last = out[-1] if out and token.gap is Gap.NONE else None
        pair = (last.word, token.word) if last is not None else ("", "")
        asked = token.word == "possible" and _next_word(tokens, index) not in ("to", "for", *ACTS)
        able = 0 if asked else _not_able(out, token)
        if last is not None and (pair in UNABLE or pair in NEGATED):
            out[-1] = Token(NEGATED.get(pair, "can't"), last.start, token.end, last.gap, Kind.WORD)
        elif last is not None and last.word == "impossible" and token.word in ACTS:
            out[-1:] = [Token("can't", last.start, last.end, last.gap, Kind.WORD), token]
        elif last is not None and able:
            first = out[-able]
            out[-able:] = [Token("can't", first.start, token.end, first.gap, Kind.WORD)]
        elif last is not None and last.word == "can't" and (more := _at_all(tokens, index)):
            out[-1] = Token("can't", last.start, tokens[index + more - 1].end, last.gap, Kind.WORD)
            skip = more - 1
        elif (
            token.word == "not" and pair[0] in ("i", "we") and _next_word(tokens, index) in ("feel", "notice", "sense")
        ):
            out.append(Token("don't", token.start, token.end, token.gap, Kind.WORD))
        else:
            out.append(token)
    return tuple(out)


def _next_word(tokens: list[Token], index: int) -> str:
    return tokens[index + 1].word if index + 1 < len(tokens) else ""


def _not_able(before: list[Token], token: Token) -> int:
    """How many tokens before one that says `able` deny it: `haven't been`, `no longer`; `don't get` before `to`."""
    words = [t.word for t in before[-2:]]
    if len(words) > 1 and words[1] in TRYING.get(token.word, ()):
        return 2 if words[0] in NOT_ABLE else 0
    if token.word not in ABLE or not words:
        return 0
    if words[-2:] == ["no", "longer"]:
        return 2
    since = 2 if words[-1] in ("been", "really", "even") else 1
    return since if len(words) >= since and words[-since] in NOT_ABLE else 0


def _at_all(tokens: list[Token], index: int) -> int:
    """How many tokens from here only strengthen a `can't`."""
    for said in AT_ALL:
        if tuple(t.word for t in tokens[index : index + len(said)]) == said:
            return len(said)
    return 0


def _parts(word: str, start: int, end: int) -> list[tuple[str, int, int]]:
    """A word without its clitic, and the clitic: `knee's` is two; canonical spellings."""
    if word.endswith("'s") and len(word) > 2 and word not in CANON:
        return [(_plain(word[:-2]), start, end - 2), ("'s", end - 2, end)]
    return [(_plain(word), start, end)]


def _plain(word: str) -> str:
    return CANON.get(word, word)


def _fold(text: str) -> tuple[str, range | list[int]]:
    """The text with one shape for each letter and digit, and the raw index of each of its characters."""
    if text.isascii():
        return text.translate(_APOSTROPHES).lower(), range(len(text))
    letters: list[str] = []
    places: list[int] = []
    for index, raw in enumerate(text):
        for char in _letters(raw):
            letters.append(char)
            places.append(index)
    return "".join(letters), places


def _letters(raw: str) -> str:
    if raw.isascii():
        return raw.translate(_APOSTROPHES).lower()
    plain = unicodedata.normalize("NFKD", raw.translate(_APOSTROPHES)).casefold()
    kept: list[str] = []
    for char in plain:
        category = unicodedata.category(char)
        if category in ("Mn", "Cf", "Me"):
            continue
        if category == "Nd":
            kept.append(str(unicodedata.decimal(char)))
        elif char == "×":
            kept.append("x")
        elif category[0] in "LPZN" or char.isascii():
            kept.append("." if char == "…" else char)
        else:
            kept.append(" ")
    return "".join(kept)
