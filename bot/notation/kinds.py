"""The kinds of token that a message is made of: the terminals of the grammar, and those that are read before it."""

from __future__ import annotations

from typing import ClassVar

from bot.notation.named import Named


class Kind(Named):
    """What a token is: the grammar's name of it."""

    __slots__ = ()

    NUM: ClassVar[Kind]
    BAD: ClassVar[Kind]
    """A number that can be written for several."""
    CLOCK: ClassVar[Kind]
    """`1:05`, `18:15`: minutes and seconds, or a time of day; `value` is the first part, `parts` both."""
    WORD: ClassVar[Kind]
    """A word outside the lexicon."""
    FILL: ClassVar[Kind]
    """A word that changes nothing."""
    NAME: ClassVar[Kind]
    WEAK: ClassVar[Kind]
    """Exercise words that are everyday talk too: a name only beside numbers or a skip."""
    """Exercise words; `name` says which."""
    X: ClassVar[Kind]
    FOR: ClassVar[Kind]
    AT: ClassVar[Kind]
    WITH: ClassVar[Kind]
    COMMA: ClassVar[Kind]
    BREAK: ClassVar[Kind]
    """A semicolon or a bar."""
    LINE: ClassVar[Kind]
    STOP: ClassVar[Kind]
    """A full stop or exclamation mark that ends a sentence."""
    QUERY: ClassVar[Kind]
    SLASH: ClassVar[Kind]
    PLUS: ClassVar[Kind]
    DASH: ClassVar[Kind]
    ARROW: ClassVar[Kind]
    COLON: ClassVar[Kind]
    OPEN: ClassVar[Kind]
    CLOSE: ClassVar[Kind]
    AND: ClassVar[Kind]
    THEN: ClassVar[Kind]
    OR: ClassVar[Kind]
    TO: ClassVar[Kind]
    KG: ClassVar[Kind]
    LB: ClassVar[Kind]
    REPS: ClassVar[Kind]
    SECONDS: ClassVar[Kind]
    MINUTES: ClassVar[Kind]
    HOURS: ClassVar[Kind]
    METRES: ClassVar[Kind]
    S: ClassVar[Kind]
    """A bare `s` at a number: dumbbells of it, or seconds."""
    M: ClassVar[Kind]
    """A bare `m` at a number: metres or minutes."""
    L: ClassVar[Kind]
    R: ClassVar[Kind]
    """A bare `r` at a number: right or repetitions."""
    SETS: ClassVar[Kind]
    SET: ClassVar[Kind]
    TIMES: ClassVar[Kind]
    """`twice`; `3 times`."""
    LASTSET: ClassVar[Kind]
    ORD: ClassVar[Kind]
    ANOTHER: ClassVar[Kind]
    HAND: ClassVar[Kind]
    TOTAL: ClassVar[Kind]
    PAIR: ClassVar[Kind]
    EACH: ClassVar[Kind]
    LEFT: ClassVar[Kind]
    RIGHT: ClassVar[Kind]
    BODY: ClassVar[Kind]
    BAND: ClassVar[Kind]
    """A band, whose help is not known."""
    ASSIST: ClassVar[Kind]
    ADDED: ClassVar[Kind]
    MINUS: ClassVar[Kind]
    PLATES: ClassVar[Kind]
    DROP: ClassVar[Kind]
    DROPPED: ClassVar[Kind]
    """Said after its numbers: `8 on the drop`."""
    MINI: ClassVar[Kind]
    WARMUP: ClassVar[Kind]
    WORKSET: ClassVar[Kind]
    RPE: ClassVar[Kind]
    RIR: ClassVar[Kind]
    FEELS: ClassVar[Kind]
    """`felt like an`: an effort where a number of 5 to 10 follows."""
    TANK: ClassVar[Kind]
    """Said after a number: `in the tank`."""
    COULD: ClassVar[Kind]
    MORE: ClassVar[Kind]
    EMPTY: ClassVar[Kind]
    """`nothing left`, `to failure`."""
    FAILED: ClassVar[Kind]
    """`failed the`, with the repetition that follows."""
    LASTREP: ClassVar[Kind]
    ALL: ClassVar[Kind]
    SAME: ClassVar[Kind]
    AGAIN: ClassVar[Kind]
    SAMELOAD: ClassVar[Kind]
    SAMEREPS: ClassVar[Kind]
    PLANNED: ClassVar[Kind]
    DONE: ClassVar[Kind]
    FINISH: ClassVar[Kind]
    UNDONE: ClassVar[Kind]
    """`not done yet`: no end."""
    SKIP: ClassVar[Kind]
    SKIPPED: ClassVar[Kind]
    """Said after the name."""
    NO: ClassVar[Kind]
    THEREST: ClassVar[Kind]
    EXCEPT: ClassVar[Kind]
    INSTEAD: ClassVar[Kind]
    SORRY: ClassVar[Kind]
    MEANT: ClassVar[Kind]
    WAS: ClassVar[Kind]
    NOT: ClassVar[Kind]
    SCRAP: ClassVar[Kind]
    OTHERTIME: ClassVar[Kind]
    """`next week`, `going for`, `last time`: what is said with it is not what was done now."""
    OTHERPERSON: ClassVar[Kind]
    """`my mate`: what somebody else did."""
    TALKNUM: ClassVar[Kind]
    """`rested`, `weighed`: the number that follows is no set's."""
    WROTE: ClassVar[Kind]
    """`i put`: what follows is what was said before, not what was done."""
    ASKING: ClassVar[Kind]
    """`should i`, `how long`: opens a question."""
    UNITALL: ClassVar[Kind]
    """`all in pounds`; `name` is the unit."""
    EFFORT: ClassVar[Kind]
    """An effort already read; `value` is repetitions in reserve."""
    LABEL: ClassVar[Kind]
    """The number of a set already read; `value` is it."""
    GAP: ClassVar[Kind]
    """Words already read as something else, or without bearing on the sets."""
    LEADX: ClassVar[Kind]
    """An `x` with no number before it: `x3`."""
    SIGN: ClassVar[Kind]
    """A `+` or `-` that belongs to the number after it."""
    RPEPOST: ClassVar[Kind]
    RIRPOST: ClassVar[Kind]
    LEFTPOST: ClassVar[Kind]
    RIGHTPOST: ClassVar[Kind]
    """A side said after its number: `10 left`, `9R`."""
    PART: ClassVar[Kind]
    """The end of a message's part: nothing reaches over it."""
    LEADAT: ClassVar[Kind]
    """An `@` with no number before it."""
    SLIP: ClassVar[Kind]
    """An unknown word at a number, near to one that would change the number."""
    COUNTED: ClassVar[Kind]
    """A number of things that are no part of a set: `2 coffees`."""


KINDS = Kind.fill()
"""All kinds, in the order in which they are named above."""
