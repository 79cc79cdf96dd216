"""A greeting before a report and thanks or a laugh behind it say nothing of it: `hey coach, 3/4: squat 60x5 thanks`.

Rules that look at where a message starts or ends meet what is told there, whoever is greeted first.
"""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

OPENERS = frozenset(words("ok okay okey okie hi hey hello hiya heya yo coach boss so um uh er erm"))
THANKS = frozenset(words("thanks thank thx thanx tnx ty cheers ta you coach boss mate"))
_CLOSERS = THANKS | {"xx"}
_LAUGHS = frozenset(words("lol lmao rofl haha hahaha hehe"))
_LAUGHED_AT = frozenset(words("why who"))
"""What asks nothing where it is laughed at: `why is this so hard lol`."""
_PARTS = (Kind.COMMA, Kind.STOP, Kind.DASH)
_ENDS = (*_PARTS, Kind.LINE)


def without_courtesies(marks: Sequence[Mark]) -> list[Mark]:
    """The marks as typed without such words at the start of the message and at its end; all where nothing else is."""
    start, end = 0, len(marks)
    while start < end and marks[start].text in OPENERS and not _asks(marks[start : start + 2]):
        start += 1
    if 0 < start < end and marks[start].kind in _PARTS and not _is_sign(marks, start):
        start += 1
    closers = _CLOSERS if {m.text for m in marks} & _LAUGHED_AT else _CLOSERS | _LAUGHS
    if end > start + 1 and marks[end - 1].kind is Kind.STOP and marks[end - 2].text in closers:
        end -= 1
    while end > start and (marks[end - 1].text in closers or _is_face(marks[end - 1])):
        end -= 1
    while start < end < len(marks) and marks[end - 1].kind is Kind.COMMA:
        end -= 1
    tells = any(m.kind not in _ENDS for m in marks[start:end])
    return list(marks[start:end] if tells else marks)


def _asks(two: Sequence[Mark]) -> bool:
    """The `ok` of `ok to swap chins for the machine`, `okay if i go lighter`, which asks."""
    return len(two) == len(_ASKS) and all(mark.text in said for mark, said in zip(two, _ASKS, strict=True))


_ASKS = (("ok", "okay", "okey"), ("to", "if"))


def _is_sign(marks: Sequence[Mark], at: int) -> bool:
    """Whether a dash or a point is the number's behind it: `ok -20 x 8`."""
    return at + 1 < len(marks) and marks[at + 1].tight and marks[at + 1].kind is Kind.NUM


def _is_face(mark: Mark) -> bool:
    """Whether a mark is a face, which says nothing."""
    return len(mark.text) == 1 and any(first <= mark.text <= last for first, last in _FACES)


_FACES = (("😀", "🙄"), ("🤐", "🤗"), ("🤠", "🤯"), ("🥰", "🥺"))
