"""Slips in the helping words that a reading leans on: `rigth knee`, `abuot a 4`."""

from dataclasses import replace
from functools import lru_cache

from rapidfuzz.distance import OSA

from bot.notation.hurt.patterns import SPELLER, VOCABULARY
from bot.notation.hurt.places import PLACES
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Gap, Kind, Token

_HELPING = word_set(
    """
    left right lower upper about around maybe like again still felt but and because until without when weeks that this
    with today level score after been free for the was and bit not off
    """
)
_SORTED = sorted(_HELPING)
_MINE = frozenset(PLACES) | word_set(
    "left right lower upper water breath pee wee bladder bowels wind whole other bum arse"
)
"""Behind `ma` these say that it is `my`, and nobody's mother: `ma heid`."""


def mended(tokens: tuple[Token, ...]) -> tuple[Token, ...]:
    """The tokens with slips in helping words put right; a misspelt side goes before any other reading of it."""
    after = (*tokens[1:], None)
    out = [_mended(t, then) for t, then in zip(tokens, after, strict=True)]
    for place in range(len(out) - 1):
        if out[place].word == "me" and _owns(out, place):
            out[place] = replace(out[place], word="my")
    return tuple(out)


def _owns(tokens: list[Token], place: int) -> bool:
    """Whether `me` says `my`: `side of me face`, `down me left arm`; not `gives me hip trouble`, `text me back`."""
    if place and tokens[place - 1].word in _GIVING and tokens[place].gap is Gap.NONE:
        return False
    at = place + 1
    while at < len(tokens) and tokens[at].gap is Gap.NONE and tokens[at].word in _SIDES:
        at += 1
    named = at < len(tokens) and tokens[at].gap is Gap.NONE and tokens[at].word in _NAMED
    return named and not (at == place + 1 and tokens[at].word in _NO_PLACE)


_GIVING = word_set("give gives gave given giving get gets got getting cause causes caused causing bring brings")
"""Before `me` these say that it is the client who gets something."""
_SIDES = word_set("left right lower upper inner outer bad good old poor other wee whole")
_NAMED = frozenset(PLACES)
_NO_PLACE = word_set("back backs side core body disc disk arch scar ab bi tri ham si ac")
"""Right behind `me` these need be no places: `text me back`."""

_SHORTEST = 3
"""Letters of an ending in `in` that is none of a word with its g left out: `goin`, `comin`, `breathin`."""
_LITTLE = frozenset({"my", "in", "is", "at", "no", "it"})
"""Words of two letters that may be a part of a joined one."""


def parted(tokens: tuple[Token, ...]) -> tuple[Token, ...]:
    """The tokens with words run together taken apart: `kneehurts`, `chestpain`."""
    return tuple(part for token in tokens for part in _parted(token))


def _parted(token: Token) -> tuple[Token, ...]:
    word = token.word
    whole = token.kind is not Kind.WORD or len(word) < 7 or token.end - token.start != len(word)
    if whole or SPELLER.is_known(word) or SPELLER.slips(word):
        return (token,)
    pieces = pieces_of(word)
    if pieces is None:
        return (token,)
    out: list[Token] = []
    at = token.start
    for piece in pieces:
        out.append(Token(piece, at, at + len(piece), Gap.NONE if out else token.gap, Kind.WORD))
        at += len(piece)
    return tuple(out)


@lru_cache(maxsize=4096)
def pieces_of(word: str) -> tuple[str, ...] | None:
    """The word as known words, the longest first; nothing where it is none."""
    if not word:
        return ()
    for length in range(min(len(word), 12), 1, -1):
        piece = word[:length]
        if piece in VOCABULARY and (length > 2 or piece in _LITTLE):
            rest = pieces_of(word[length:])
            if rest is not None:
                return (piece, *rest)
    return None


def _mended(token: Token, after: Token | None) -> Token:
    if token.word == "ma" and after is not None and after.gap is Gap.NONE and after.word in _MINE:
        return replace(token, word="my")
    if token.kind is not Kind.WORD or len(token.word) < 3 or SPELLER.is_known(token.word):
        return token
    if token.word.endswith("in") and len(token.word) > _SHORTEST and SPELLER.is_known(token.word + "g"):
        return replace(token, word=token.word + "g")
    slips = SPELLER.slips(token.word)
    for side in ("left", "right"):
        if side in slips and after is not None and (after.word in PLACES or not SPELLER.is_known(after.word)):
            return replace(token, word=side)
    if slips:
        helps = all(word in _HELPING for word in slips)
        return replace(token, word=slips[0]) if helps else token
    near = _helping_word(token.word)
    return token if near is None else replace(token, word=near)


@lru_cache(maxsize=4096)
def _helping_word(word: str) -> str | None:
    """The helping word that an unknown one is a slip away from."""
    return next((w for w in _SORTED if abs(len(w) - len(word)) <= 1 and OSA.distance(w, word) == 1), None)
