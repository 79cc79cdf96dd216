"""Slips in the helping words that a reading leans on: `rigth knee`, `abuot a 4`."""

from dataclasses import replace

from rapidfuzz.distance import OSA

from bot.notation.hurt.patterns import SPELLER
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.tokens import Kind, Token

_HELPING = word_set(
    """
    left right lower upper about around maybe like again still felt but and because until without when weeks that this
    with today level score after
    """
)
_SORTED = sorted(_HELPING)


def mended(tokens: tuple[Token, ...]) -> tuple[Token, ...]:
    """The tokens with slips in helping words put right; a misspelt side goes before any other reading of it."""
    return tuple(_mended(t) for t in tokens)


def _mended(token: Token) -> Token:
    if token.kind is not Kind.WORD or len(token.word) < 3 or SPELLER.is_known(token.word):
        return token
    slips = SPELLER.slips(token.word)
    for word in ("left", "right", *slips):
        if word in slips and word in _HELPING:
            return replace(token, word=word)
    if slips:
        return token
    near = [w for w in _SORTED if abs(len(w) - len(token.word)) <= 1 and OSA.distance(w, token.word) == 1]
    return replace(token, word=near[0]) if near else token
