"""Questions that are only told of: `he asked me how many sets i had left`, `not sure how to write it`."""

from collections.abc import Sequence

from bot.notation.kinds import Kind
from bot.notation.questions.asked import ENDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_TOLD = frozenset(
    words(
        "asked asks asking wondered told knows knew forgot forget remember remembered explained showed look looked "
        "checked notice noticed see saw"
    )
)
_WHOM = frozenset(words("me him her them us everyone"))
_WILL = frozenset(words("will ill shell hell theyll to gonna would should"))
"""Words before `let me know` of somebody who will: `physio will let me know when`."""
_WRITING = frozenset(words("write put say spell log type enter record explain describe count"))


def is_reported(marks: Sequence[Mark], place: int) -> bool:
    """Whether the words that would open a question at a place are told of, or are of how to write something."""
    before = [w for m in marks[max(0, place - 2) : place] for w in m.text.split()]
    if before[-1:] and before[-1] in _WHOM:
        before = before[:-1]
    if before[-1:] and before[-1] in _TOLD:
        return before[-2:-1] != ["to"]
    if marks[place].text.startswith(("let me", "tell me", "remind me")) and before[-1:] and before[-1] in _WILL:
        return True
    following = [w for m in marks[place : place + 4] for w in m.text.split()]
    writes = "how" in following and "to" in following and bool(_WRITING & set(following))
    return writes and not _queries(marks, place)


def _queries(marks: Sequence[Mark], place: int) -> bool:
    at = place
    while at < len(marks) and marks[at].kind not in ENDS:
        at += 1
    return at < len(marks) and marks[at].kind is Kind.QUERY
