"""A greeting before what hurts, and thanks behind it: `ok left knee hurts thanks`. A laugh stays, it tells a joke."""

from dataclasses import replace

from bot.notation.courtesies import OPENERS, THANKS
from bot.notation.hurt.tokens import Gap, Token


def without_courtesies(tokens: tuple[Token, ...]) -> tuple[Token, ...]:
    """The tokens without such words at both ends; all of them where nothing else is said."""
    start, end = 0, len(tokens)
    while start < end and tokens[start].word in OPENERS:
        start += 1
    while end > start and tokens[end - 1].word in THANKS:
        end -= 1
    if start == end or not start:
        return tokens[:end] if end else tokens
    return (replace(tokens[start], gap=Gap.HARD), *tokens[start + 1 : end])
