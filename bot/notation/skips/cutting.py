"""Everyday verbs straight before a name that leave it out where nothing else is said of it: `bin curls`, `❌ calves`.

The same words tell much else: `dropped to 50`, `left rows 20x10`, `stuff the curls in`.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_VERBS = frozenset(words(
    "drop dropped dropping bin scratch strike screw stuff sod forget miss refuse park parked duck sack f eff axe nix "
    "veto veto'd cull kill killed lose chuck chucked ditch bust x zero nil nae scrub scrubbed bag hoof lob lobbed"
))  # fmt: skip
_ABSENT = ("left", "left the", "did not", "did not the")
"""What leaves out only what is named in the plural: `left calves`; a `left calf` is a side."""
_LEADING = frozenset(words(
    "i im ill id we lets so and then to gotta gonna had have just will think must should might could better best "
    "today tonight now ok right well sorry coach but also going even"
))  # fmt: skip
_ARTICLES = ("the", "my", "any", "those", "all", "these")
_TRAILING = frozenset(words(
    "today tonight now then sorry altogether completely entirely off out too also for this time session coach again "
    "lol haha im afraid as well pls please thanks ta cheers mate coach boss either the day night entirely instead"
))  # fmt: skip
_BECAUSE = frozenset(words("because cos coz cause cuz bc as since so but"))
_NAMES = (Kind.NAME, Kind.WEAK)
_FAR = 20


def with_cut(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such a verb as one that skips."""
    out = list(marks)
    for place, mark in enumerate(marks):
        crossed = mark.kind is Kind.X and not mark.tight and kind_at(marks, place - 1) in (None, *EDGES, *_NAMES)
        none = mark.kind is Kind.NUM and mark.value == 0
        if none and kind_at(marks, place + 1) in (Kind.SETS, Kind.SET):
            kind = Kind.SKIPPED if kind_at(marks, place - 1) in (*_NAMES, Kind.COLON, Kind.DASH) else Kind.SKIP
            out[place] = replace(mark, kind=kind, text="no sets", value=None, parts=())
            out[place + 1] = replace(marks[place + 1], kind=Kind.FILL)
        plain = mark.text in _VERBS and mark.kind is not Kind.X
        plural = mark.text in _ABSENT and mark.kind is not Kind.SKIP
        if (crossed or none or plain or plural) and _leads(marks, place) and _is_all(marks, place, plural=plural):
            out[place] = replace(mark, kind=Kind.SKIP, text="skip", value=None, parts=())
    return out


def _leads(marks: Sequence[Mark], place: int) -> bool:
    """Whether the verb opens its part, or its clause: `had to drop`, `so screw`."""
    before = marks[place - 1] if place else None
    if before is None or before.kind in (*EDGES, Kind.DASH, Kind.THEN, Kind.AND):
        return True
    return set(before.text.split()) <= _LEADING or marks[place].kind is Kind.X


def _is_all(marks: Sequence[Mark], place: int, *, plural: bool) -> bool:
    """Whether names follow, alone in their part but for little words or a reason."""
    _, end = part_of(marks, place, _FAR)
    at = place + 1
    while text_at(marks, at) in _ARTICLES:
        at += 1
    if kind_at(marks, at) not in _NAMES or (plural and not text_at(marks, at).endswith("s")):
        return False
    while at < end and (marks[at].kind in (*_NAMES, Kind.AND, Kind.OR) or text_at(marks, at) in _ARTICLES):
        at += 1
    because = next((i for i in range(at, end) if marks[i].text in _BECAUSE), end)
    behind = marks[at:because]
    told = any(m.kind in (Kind.NUM, Kind.TO, Kind.X, Kind.AT) for m in marks[at:end])
    return (
        not told and kind_at(marks, end) is not Kind.QUERY and {w for m in behind for w in m.text.split()} <= _TRAILING
    )
