"""Stored sets and drops that are taken out, in any order of words: `cancel the second lunge set, it didn't happen`,
`take the second drop off again, i only did one`, `there was no third set`.

As in the rest of this room every word has its place, and the set that is named is stored: of one that is not, it is
left out of what is to come.
"""

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

from bot.notation.answer import Request
from bot.notation.bounds import FEW_SETS
from bot.notation.corrections.old_and_new.clause import EVERY, STAGES, continuation_at
from bot.notation.corrections.old_and_new.stored import exercise_of
from bot.notation.corrections.which_stored import which_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words
from bot.training.report import Stage

_REMOVING = frozenset(words(
    "bin scrap delete remove ditch cancel lose erase undo wipe strike void clear trash chuck forget ignore disregard",
    "discount scratch rid nix toss dump pretend deleting deleted removing removed erasing erased binning binned",
    "scrapping scrapped scrubbing scrubbed cancelling cancelled",
))  # fmt: skip
_TAKING = frozenset(words("take took knock pull cross rub throw chuck strike roll"))
_AWAY = frozenset(words("off out away back"))
_NEVER = frozenset(words("never didnt wasnt"))
_DOING = frozenset(words("did do happen happened exist existed done"))
CUES = _REMOVING | _TAKING | _NEVER
_UNREAL = frozenset(words("shouldnt mistake error bogus fake fiction"))
"""Words of a set that was not: `the second drop shouldn't be there, delete it`."""
_NONE = (
    ["there", "was", "no"],
    ["theres", "no"],
    ["there", "is", "no"],
    ["there", "wasnt", "a"],
    ["there", "were", "no"],
)
_PASSED = (Kind.FILL, Kind.SET, Kind.SETS, Kind.ASKING, Kind.AGAIN, Kind.AT, Kind.FOR, Kind.WITH, Kind.SORRY, Kind.WAS,
           Kind.SCRAP, Kind.SKIP, Kind.SKIPPED, Kind.OTHERTIME, Kind.UNDONE, Kind.NO, Kind.WORD, Kind.DONE,
           Kind.NOT)  # fmt: skip
_WORDS = frozenset(
    words("scratch theres took wasnt mistake error existed exist needs need wants wanted real rub throw strike roll")
)
"""Words outside the lexicon that have a place here."""
_TURNING = frozenset(words("next other others rest before more new instead left right"))
_TALK = (*_PASSED, Kind.MEANT, Kind.WROTE, Kind.TIMES, Kind.COMMA, Kind.AND, Kind.LASTSET, Kind.EACH)
"""Kinds of words that say why: `i only did one`, `logged it twice`."""


def taken_out(sentence: Sequence[Mark], request: Request) -> list[Mark] | None:
    """The sentence in plain wording: the sets by their numbers, and that they are taken out; none where it says not."""
    said = {w for m in sentence for w in m.text.split()}
    if not said & CUES and not any(m.kind is Kind.NO for m in sentence):
        return None
    ends = [i for i, m in enumerate(sentence) if m.kind in (Kind.COMMA, Kind.DASH)] + [len(sentence)]
    for end in ends:
        put = _plain(sentence[:end], request, sentence[end:])
        behind = sentence[end + 1 :]
        did = any(set(m.text.split()) & _DOING for m in behind)
        if put is not None and all(m.kind in _TALK or m.text in ("one", "by") or (did and _is_few(m)) for m in behind):
            return put
    return None


def _is_few(mark: Mark) -> bool:
    """The `two` of `i only did two`."""
    return mark.kind is Kind.NUM and mark.value is not None and mark.value <= FEW_SETS


def _plain(clause: Sequence[Mark], request: Request, behind: Sequence[Mark]) -> list[Mark] | None:
    parts = [STAGES[m.kind] for m in clause if m.kind in STAGES]
    if "all clear" in " ".join(m.text for m in clause):
        return None  # `knee got the all clear`
    names = [m for m in clause if m.kind is Kind.NAME]
    exercise = exercise_of(names[0] if names else None, request, parts[0] if parts else Stage.WORK)
    rows = [p for p in request.done if p.exercise == exercise and p.set is not None]
    stored = sorted({p.set for p in rows if p.set is not None})
    if not rows or len({m.names for m in names}) > 1:
        return None
    sets: Sequence[int] = ()
    part: tuple[Stage, int | None] | None = None
    others: list[Mark] = []
    at = 0
    while at < len(clause):
        ends_last = clause[at].kind is Kind.SCRAP and clause[at].text.endswith("last")
        found = continuation_at(clause, at, numbered=True)
        if ends_last and at + 1 < len(clause) and clause[at + 1].kind in STAGES:
            part, at = (STAGES[clause[at + 1].kind], -1), at + 2
            others.append(clause[at - 2])
            continue
        if found is not None and part is None:
            part, at = found[:2], found[2]
            continue
        which = which_at(clause, at, stored)
        if which is not None and not sets and not which.lasts:
            sets, at = which.sets, which.end
            continue
        if clause[at].kind is not Kind.NAME:
            others.append(clause[at])
        at += 1
    if not (sets or part) or not _says_so(others, behind):
        return None
    staged = [p for p in rows if part is None or p.stage is part[0]]
    staged = [p for p in staged if not sets or p.set in sets]
    if part is not None and not staged:
        return None
    scrap = Mark(Kind.SCRAP, "out", clause[0].start, clause[-1].end)
    labels = [replace(scrap, kind=Kind.LABEL, value=Decimal(n)) for n in sets or (staged[-1].set or 0,)]
    place = next(i for i, e in enumerate(request.exercises) if e.name == exercise)
    name = replace(scrap, kind=Kind.NAME, text=exercise or "", names=(place,), end=scrap.start)
    if part is None:
        return [name, scrap, *labels]
    count = sum(p.set == staged[-1].set for p in staged)
    nth = count if part[1] == -1 else part[1] or EVERY
    kind = Kind.DROP if part[0] is Stage.DROP else Kind.MINI
    if not 0 <= nth <= count or len(labels) > 1:
        return None
    if nth == EVERY:
        return [name, *labels, scrap, replace(scrap, kind=kind)]
    return [name, *labels, scrap, replace(scrap, kind=Kind.ORD, text="nth", value=Decimal(nth)),
            replace(scrap, kind=kind)]  # fmt: skip


def _says_so(others: Sequence[Mark], behind: Sequence[Mark]) -> bool:
    """Whether the words beside the set say that it is taken out and nothing else, or those `behind` do: `delete it`."""
    if {w for m in others for w in m.text.split()} & _UNREAL:
        others = [*others, *behind[1:]]
    said = [w for m in others for w in m.text.split()]
    plain = all(
        m.text in _UNREAL
        or (m.kind in _PASSED and (m.kind is not Kind.WORD or set(m.text.split()) <= _WORDS | _REMOVING | _UNREAL))
        for m in others
    )
    taken = bool(set(said) & _TAKING) and bool(set(said) & _AWAY)
    never = bool(set(said) & _NEVER) and bool(set(said) & _DOING)
    none = any(said[i : i + len(led)] == led for led in _NONE for i in range(len(said)))
    return plain and not set(said) & _TURNING and (bool(set(said) & _REMOVING) or taken or never or none)
