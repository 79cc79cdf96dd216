"""What was done in place of an exercise that could not be: `sled was taken so i did 20 minutes on the bike`.

It is no exercise of the session, and whether it stands for one is the coach's to know: it is asked about.
"""

from collections.abc import Sequence

from bot.notation.abbreviations import singular
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.plan import PlannedExercise

_ALONE = frozenset(
    words("taken busy full occupied broken broke gone missing closed hogged bust busted unavailable locked down dead")
)
_DID = frozenset(
    words(
        "did do went pushed dragged pulled used hopped jumped rode hit took carried flipped ran used walked climbed",
        "swam cycled done ended went switched swapped",
    )
)
_ELSE = frozenset(words(
    "bike bikes treadmill rower prowler elliptical stairclimber stepper airbike tyre tire car sprint stair "
    "versaclimber crosstrainer airdyne spin sledge jog wheelbarrow"
))  # fmt: skip
_FOR_ELSE = frozenset(words(
    "warm warmup warmed stretching cool cooldown morning yesterday wait waited waiting didnt couldnt cant meantime "
    "while until then"
))  # fmt: skip
"""Words that say that it was done for something else, or at another time."""
_NAMES = (Kind.NAME, Kind.WEAK)
_REACH = 24
"""Marks between what could not be and what was done."""


def replaced(marks: Sequence[Mark], exercises: Sequence[PlannedExercise]) -> Mark | None:
    """The first word of what was done in place of an exercise of the session; none where nothing was."""
    hindered = next((i for i, m in enumerate(marks) if m.kind in _NAMES and m.names and _is_lacking(marks, i)), None)
    if hindered is None or kind_at(marks, hindered - 1) is Kind.SKIP:
        return None  # `had to skip pulldowns because the machine was broken`
    own = {singular(w) for e in exercises for n in (e.name, *e.aliases) for w in n.lower().replace("-", " ").split()}
    behind = marks[hindered + 1 : hindered + _REACH]
    said = [(w, m) for m in behind for w in m.text.split()]
    done = next((i for i, (w, m) in enumerate(said) if w in _DID or _is_so(behind, m)), None)
    if done is None or {w for w, _ in said} & _FOR_ELSE or _asks(behind):
        return None
    if any(w in _IDLE or m.kind in (Kind.NOT, Kind.QUERY) for w, m in said[done:]):
        return None
    other = next((m for _, m in said[done:] if m.kind is Kind.NAME), None)
    if other is not None and not other.names:
        return other
    return next((m for w, m in said[done + 1 :] if singular(w) in _ELSE and singular(w) not in own), None)


_IDLE = frozenset(words("nothing later didnt wont"))


def _is_so(behind: Sequence[Mark], mark: Mark) -> bool:
    """The name of `so machine press`, `dips it was`: done, with no word of doing."""
    at = next(i for i, m in enumerate(behind) if m is mark)
    so = [m.text for m in behind[max(0, at - 1) : at]] == ["so"]
    was = [m.text for m in behind[at + 1 : at + 3]] in (["it was"], ["it", "was"], ["it", "is"])
    return mark.kind is Kind.NAME and not mark.names and (so or was)


def _is_lacking(marks: Sequence[Mark], place: int) -> bool:
    """`sled was taken`, `no sled here`: an exercise of the session that could not be."""
    if place and marks[place - 1].kind is Kind.NO:
        return True
    ahead = {w for m in marks[max(0, place - 4) : place] for w in m.text.split()}
    if kind_at(marks, place - 1) in (Kind.AT, Kind.WITH) and (ahead & _BARRED or _is_of_people(marks, place)):
        return True
    said = [w for m in marks[place + 1 : place + 5] for w in m.text.split()]
    first = [w for w in said if w not in ("was", "is", "were", "s", "all", "being", "still", "are", "machine")][:3]
    return (
        bool(set(first[:1]) & _ALONE)
        or first in (["out", "of", "order"], ["out", "of", "action"])
        or first[:2] in (["in", "use"],)
    )


_BARRED = frozenset(words("couldnt cant cannot"))


def _is_of_people(marks: Sequence[Mark], place: int) -> bool:
    """`someone on the incline so`: others have it."""
    return any(m.kind is Kind.OTHERPERSON for m in marks[max(0, place - 4) : place]) and any(
        "so" in m.text.split() for m in marks[place : place + 4]
    )


def _asks(behind: Sequence[Mark]) -> bool:
    """`should i do the bike`: only thought of."""
    did = next((i for i, m in enumerate(behind) if set(m.text.split()) & _DID), len(behind))
    return any(m.kind in (Kind.ASKING, Kind.OTHERTIME) for m in behind[:did])
