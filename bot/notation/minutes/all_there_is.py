"""What tells behind a time that it is all there is, and ends no session: `25 min, thats all i have`."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.minutes.clock import words_of
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

UNTIL = ("till", "til", "until", "before")
"""Words behind a time before what it lasts to."""
_SHORT = 5
"""Marks between a time and what tells that it is all."""


def all_behind(marks: Sequence[Mark], end: int) -> int:
    """Where `thats all i have`, `till my call, so thats your lot` ends behind a time: no end of the session; else
    `end` itself."""
    at = _until_behind(marks, end)
    until = at > end
    last = at + _SHORT
    while at < last and (
        kind_at(marks, at) in (Kind.FILL, Kind.COMMA, Kind.AND, Kind.STOP) or text_at(marks, at) == "tops"
    ):
        at += 1
    if kind_at(marks, at) is not Kind.FINISH or not text_at(marks, at).startswith("that"):
        return end
    behind = at + 1
    while text_at(marks, behind) and set(text_at(marks, behind).split()) <= _OWNED:
        behind += 1
    owned = {w for m in marks[at + 1 : behind] for w in m.text.split()} & _HAVE
    before = (
        {w for m in marks[max(0, end - 6) : at] for w in words_of(m)} if kind_at(marks, end - 1) in _LENGTHS else set()
    )
    owned |= {"lot"} if until and text_at(marks, at) in _LOT else set()
    owned |= before & {"have", "got", "ive", "only", "tops", "max", "just"}
    return behind if owned and kind_at(marks, behind) in (None, *_CLOSING) else end


def _until_behind(marks: Sequence[Mark], end: int) -> int:
    """Where `till my first call` ends behind a time, at a comma or at `so`; else `end` itself."""
    if text_at(marks, end) not in UNTIL:
        return end
    at = end + 1
    while at < end + _SHORT + 2 and kind_at(marks, at) in _TALK and text_at(marks, at) != "so":
        at += 1
    return at if kind_at(marks, at) in (Kind.FILL, Kind.COMMA, Kind.FINISH, Kind.STOP) else end


_TALK = (Kind.FILL, Kind.WORD, Kind.ORD, Kind.TALKNUM, Kind.OTHERPERSON)
_HAVE = frozenset(words("have got ive had get getting"))
_LOT = ("thats your lot", "thats yer lot", "thats the lot", "thats all", "thats it")
_OWNED = frozenset(words("you get youre getting i ive have got had the time today tonight left we weve there is me"))
_LENGTHS = (Kind.MINUTES, Kind.HOURS)
_CLOSING = (Kind.COMMA, Kind.STOP, Kind.LINE, Kind.BREAK, Kind.QUERY, Kind.ASKING, Kind.DASH)
