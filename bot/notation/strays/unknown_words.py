"""A number behind a word that nobody knows, kept as repetitions at the load before: `60x8 zorp asdf 9` is asked about.

What the word says is not known, so that the number may be of anything; a number of a sentence has a known word before
it, or its word tells how it went: `and a sad 22`. Common practice, no source.
"""

from collections.abc import Iterator, Sequence

from bot.notation.answer import Source
from bot.notation.bounds import SEVERAL
from bot.notation.clauses import text_at
from bot.notation.grounds import Told
from bot.notation.hurt.patterns import SPELLER
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TELLING_HOW = frozenset(words("a an the my that this very really so and then pretty super too"))


def behind_unknown_word(marks: Sequence[Mark], told: Sequence[Told]) -> Mark | None:
    """The word before the first such number; `None` where there is none."""
    gibberish = _gibberish(marks)
    if gibberish is not None and told:
        return gibberish
    starts = set(_bare(told))
    for place, mark in enumerate(marks[1:], start=1):
        word = marks[place - 1]
        unknown = mark.kind is Kind.NUM and mark.start in starts and word.kind is Kind.WORD
        how = _TELLING_HOW & set(text_at(marks, place - 2).split()[-1:])
        if unknown and not how and not _is_known(word.text):
            return word
    return None


def _gibberish(marks: Sequence[Mark]) -> Mark | None:
    """The first word of `asdf (qwer) 4,5`: no word that is known, several that are not, and bare numbers."""
    if any(m.kind not in _BARE_TALK and m.text.isalnum() for m in marks):
        return None
    said = [m for m in marks if m.kind is Kind.WORD]
    unknown = [m for m in said if len(m.text) > _SHORT and m.text.isalpha() and not _is_known(m.text)]
    return unknown[0] if len(unknown) >= SEVERAL and len(unknown) == len(said) else None


_SHORT = 2
"""Letters of a word that may be short for anything."""
_BARE_TALK = frozenset((
    Kind.WORD, Kind.NUM, Kind.OPEN, Kind.CLOSE, Kind.COMMA, Kind.DASH, Kind.ARROW, Kind.NO, Kind.DONE, Kind.GAP,
    Kind.STOP, Kind.LINE, Kind.AT, Kind.BREAK, Kind.SLASH, Kind.PLUS, Kind.AND,
))  # fmt: skip
"""Kinds of a message that says nothing else."""


def _is_known(text: str) -> bool:
    """Whether a word is an everyday one, or a sound of somebody out of breath: `60x8 phone rang 9`, `uff 9`."""
    return text in _SOUNDS or all(SPELLER.is_known(word) or SPELLER.is_known(word.rstrip("s")) for word in text.split())


_SOUNDS = frozenset(words("uff ufff uf puh pff pfff phew phewf oof ooof woof argh aargh ugh bah"))


def _bare(told: Sequence[Told]) -> Iterator[int]:
    """Where repetitions begin whose load was said with another set's."""
    ends = [one.grounds.reps.at[1] for one in told if one.grounds.reps.at is not None]
    for one in told:
        load, reps = one.grounds.load, one.grounds.reps
        if reps.source is not Source.SAID or reps.at is None or load.at is None:
            continue
        start = reps.at[0]
        before = load.source is Source.BEFORE or (
            load.source is Source.SAID and any(load.at[1] <= end <= start for end in ends)
        )
        if before:
            yield start
