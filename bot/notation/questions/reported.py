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
    if _is_of_load(marks, place):
        return True
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


def _is_of_load(marks: Sequence[Mark], place: int) -> bool:
    """`on the drop 11, dont know what plates`, `60x5, not sure what weight it was`: what was lifted."""
    if not marks[place].text.endswith(("what", "which")):
        return False
    told = any(m.kind is Kind.NUM for m in marks[:place])
    end = place + 1
    while end < len(marks) and marks[end].kind not in ENDS:
        end += 1
    said = [w for m in marks[place + 1 : end] for w in m.text.split()]
    return told and said[:1] != [] and said[0] in _LOADS and set(said[1:]) <= _IT_WAS and not _queries(marks, place)


_LOADS = frozenset(words("plates plate weight weights load loads kilos kg pounds number pin notch"))
_IT_WAS = frozenset(words("it was that were they i used had on there though tbh sorry exactly the this one"))
