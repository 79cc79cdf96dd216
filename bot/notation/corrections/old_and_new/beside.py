"""What stands beside a clause that puts stored sets right: that one comes, talk, new sets, sets that are right."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.answer import Request
from bot.notation.clauses import kind_at
from bot.notation.corrections.old_and_new.clause import ANNOUNCING, PUTTING, UNITS
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_CORRECTING = (Kind.MEANT, Kind.SORRY, Kind.WROTE, Kind.NOT, Kind.INSTEAD, Kind.SCRAP)
_LED = (Kind.AND, Kind.COMMA, Kind.THEN, Kind.DASH, Kind.FILL)
_SAYING = (Kind.FILL, Kind.WORD, Kind.SORRY, Kind.MEANT, Kind.COMMA, Kind.AND, Kind.WAS, Kind.DASH, Kind.COLON,
           Kind.FOR, Kind.TO)  # fmt: skip
"""Kinds of words that tell no set."""
_TELLING = frozenset((
    Kind.NUM, Kind.CLOCK, Kind.BAD, Kind.BODY, Kind.NAME, Kind.WEAK, Kind.ORD, Kind.SET, Kind.SETS, Kind.LASTSET,
    Kind.LASTREP, Kind.SCRAP, Kind.SKIP, Kind.SKIPPED, Kind.FINISH, Kind.SAME, Kind.AGAIN, Kind.SAMELOAD, Kind.SAMEREPS,
    Kind.RPE, Kind.RIR, Kind.EMPTY, Kind.FEELS, Kind.ALL, Kind.EACH, Kind.THEREST, Kind.LEFT, Kind.RIGHT, Kind.DONE,
    Kind.PLANNED, Kind.DROP, Kind.MINI, Kind.NOT, Kind.EXCEPT, Kind.COUNTED, Kind.SLIP, Kind.LASTREP, Kind.NO,
))  # fmt: skip
"""Kinds that tell of sets, or of what is not done."""
_NAMING = (Kind.ORD, Kind.SET, Kind.SETS, Kind.LASTSET, Kind.LASTREP, Kind.THEREST, Kind.RIGHT, Kind.ALL, Kind.EACH,
           Kind.SAME, Kind.NUM)  # fmt: skip
_AS_IT_IS = frozenset(words("right correct fine ok okay good true stays stay unchanged stands same accurate"))
"""Words of a set that was told rightly: `first ones right`, `the rest is fine`."""


def with_guesses(sentence: Sequence[Mark]) -> list[Mark]:
    """`that might have been 11`, `i sent 50 but it could have been 55`: `maybe was`, of a set told of before."""
    out = list(sentence)
    for at in range(len(sentence) - 3):
        said = [m.text for m in sentence[at : at + 3]]
        guessed = said[0] in ("might", "may", "could") and said[1:] == ["have", "been"]
        whole = not any(m.kind in (Kind.X, Kind.AT, Kind.WITH, Kind.FOR) for m in sentence)
        led = at > 0 and (sentence[at - 1].kind in _OF_STORED or sentence[at - 1].text in ("that", "it"))
        if guessed and whole and led and kind_at(sentence, at + 3) is Kind.NUM:
            out[at] = replace(sentence[at], kind=Kind.FILL, text="maybe")
            out[at + 1] = replace(sentence[at + 1], kind=Kind.WAS, text="was", end=sentence[at + 2].end)
            return [*out[: at + 2], *out[at + 3 :]]
    return out


_OF_STORED = (Kind.LASTSET, Kind.SET, Kind.ORD, Kind.NUM, Kind.NAME)


def without_links(marks: Sequence[Mark]) -> list[Mark]:
    """The marks without the words that join them to what stands before: `and btw second one was 1 rir`."""
    start = 0
    while start < len(marks) and marks[start].kind in _LED and marks[start].text != "the":
        start += 1
    return list(marks[start:])


def tells_set(marks: Sequence[Mark]) -> bool:
    """Whether a load with its repetitions is told, and nothing is put right."""
    kinds = [m.kind for m in marks if m.kind not in UNITS]
    entry = any(kinds[i : i + 3] in ([Kind.NUM, Kind.X, Kind.NUM], [Kind.NUM, Kind.FOR, Kind.NUM])
                for i in range(len(kinds)))  # fmt: skip
    return entry and not any(k in _CORRECTING for k in kinds)


def tells_left(marks: Sequence[Mark]) -> bool:
    """Whether an effort is told as what was left, so that a small number behind it is one, too: `set 1 had 2 left`."""
    return any(m.kind in (Kind.RIR, Kind.TANK, Kind.MORE, Kind.RIRPOST, Kind.EMPTY) for m in marks)


def asks_for_change(sentence: Sequence[Mark]) -> bool:
    """`can you amend the first rdl?`, `set 2 is wrong.`: of a set whose value follows in the next sentence."""
    said = {w for m in sentence for w in m.text.split()}
    aims = any(m.kind is Kind.ORD or (m.kind is Kind.SET and kind_at(sentence, i + 1) is Kind.NUM)
               for i, m in enumerate(sentence))  # fmt: skip
    numbers = [i for i, m in enumerate(sentence) if m.kind is Kind.NUM and kind_at(sentence, i - 1) is not Kind.SET]
    return aims and not numbers and bool(said & (PUTTING | {"wrong"})) and len(sentence) <= _SHORT


def is_of_open(marks: Sequence[Mark], request: Request) -> bool:
    """Whether the sets told are of a number that is not stored: `third set 110x8`, so that `first` is a stored one."""
    last = request.done[-1].exercise
    stored = {p.set for p in request.done if p.exercise == last}
    named = [m.value for m in marks if m.kind is Kind.ORD]
    named += [marks[i + 1].value for i, m in enumerate(marks[:-1])
              if m.kind is Kind.SET and marks[i + 1].value and kind_at(marks, i - 1) is not Kind.ORD]  # fmt: skip
    return len(named) == 1 and named[0] not in stored and not any(m.kind is Kind.NAME for m in marks)


def is_announcement(marks: Sequence[Mark]) -> bool:
    """`two fixes before i forget`, `correcting`, `hang on`: that something is put right, and nothing else."""
    said = [m for i, m in enumerate(marks) if not (m.kind is Kind.NUM and _is_counted(marks, i))]
    cued = any(m.kind in (Kind.SORRY, Kind.WROTE) or set(m.text.split()) & (ANNOUNCING | {"wrong"}) for m in said)
    return (
        cued and len(marks) <= _SHORT and all(m.kind in (*_SAYING, Kind.WROTE, Kind.OTHERTIME, Kind.SETS) for m in said)
    )


_SHORT = 9
"""Marks of an announcement."""


def _is_counted(marks: Sequence[Mark], at: int) -> bool:
    """The number of `two fixes`, `one little correction sir`."""
    behind = {w for m in marks[at + 1 : at + 3] for w in m.text.split()}
    return bool(behind & ANNOUNCING) or bool(behind & {"things", "thing", "changes", "change", "sets", "wrong"})


def is_unsure(marks: Sequence[Mark]) -> bool:
    """`not sure which dumbbell it was`, `can't remember`: that what is told before is in doubt."""
    said = [w for m in marks for w in m.text.split()]
    unsure = said[:2] == ["not", "sure"] and said[2:3] in ([], ["which"], ["if"], ["tbh"], ["though"], ["anymore"])
    forgot = any(said[i : i + 2] in _UNREMEMBERED for i in range(len(said)))
    plain = all(m.kind is Kind.NOT or m.kind not in _TELLING for m in marks)
    return (unsure or forgot) and plain


_UNREMEMBERED = (["cant", "remember"], ["dont", "remember"], ["cannot", "remember"], ["can't", "recall"])


def is_talk(marks: Sequence[Mark]) -> bool:
    """Whether the words tell no set, or of one that it was told rightly: `miscounted`, `first ones right`."""
    if is_unsure(marks) or not any(m.kind in _TELLING for m in marks):
        return True
    said = {w for m in marks for w in m.text.split()}
    right = bool(said & _AS_IT_IS) and not said & {"not", "wrong"}
    numbered = all(kind_at(marks, i - 1) is Kind.SET for i, m in enumerate(marks) if m.kind is Kind.NUM)
    return right and numbered and all(m.kind in (*_SAYING, *_NAMING) for m in marks)
