"""`same` and `again` of something else than a set: `same setup`, `felt the same`, `same again tomorrow`, `hello again`.

Only in messages that tell no number: beside one the other rules know what is the same. Common usage, no source.
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import EDGES, kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.talk.things import TALKED_OF
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

REPEATING = (Kind.SAME, Kind.AGAIN)
_THINGS = TALKED_OF | frozenset(words(
    "setup grip stance tempo gym spot bar rack belt machine result days traffic yesterdays plan coffee old always",
))  # fmt: skip
_SEEMING = frozenset(words("felt feels feel looks looked look sounds sounded smells tastes seems"))
_LATER = ("tomorrow", "next week", "next time", "next session")
_GREETING = frozenset(words("hello hi hey late thanks cheers"))


def without_same_talk(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with such words as no more than talk."""
    marks = [replace(m, kind=Kind.GAP) if _is_of_body(marks, i) else m for i, m in enumerate(marks)]
    if any(m.kind in (Kind.NUM, Kind.NAME, Kind.SET, Kind.SETS, Kind.PLANNED) for m in marks):
        return marks
    return [
        replace(m, kind=Kind.GAP, value=None, parts=()) if m.kind in REPEATING and _is_talk(marks, i) else m
        for i, m in enumerate(marks)
    ]


def _is_of_body(marks: Sequence[Mark], at: int) -> bool:
    """`elbow same as ever`, `knee feels the same`: how a place of the body is, and no set again."""
    if marks[at].kind is not Kind.SAME:
        return False
    place = at - 1
    while place >= 0 and set(text_at(marks, place).split()) <= _IS:
        place -= 1
    ends = at + 1 >= len(marks) or marks[at + 1].kind in EDGES or text_at(marks, at + 1).split()[:1] == ["as"]
    return ends and kind_at(marks, place) in (Kind.WORD, Kind.FILL) and marks[place].text in _BODY


_IS = frozenset(words("is are was were feels feel felt still the about just pretty much seems"))
_BODY = frozenset(words(
    "elbow elbows knee knees shoulder shoulders back hip hips wrist wrists ankle ankles neck hamstring hamstrings "
    "groin achilles heel heels rib ribs spine tendon"
))  # fmt: skip


def _is_talk(marks: Sequence[Mark], at: int) -> bool:
    behind = at + 1
    while text_at(marks, behind) in ("the", "my", "of", "on the", "on", "as", "a"):
        behind += 1
    after = text_at(marks, behind)
    ends = behind + 1 >= len(marks) or kind_at(marks, behind + 1) in EDGES or text_at(marks, behind + 1) in ("as", "of")
    thing = behind < len(marks) and set(after.split()[:1]) <= _THINGS and bool(after.split()) and ends
    addressed = [m.text for m in marks[at:]] in (["same", "to", "you"], ["same", "to"], ["same", "to you"])
    seems = at > 0 and (text_at(marks, at - 1) == "is the" or bool(set(text_at(marks, at - 1).split()) & _SEEMING))
    greets = marks[at].kind is Kind.AGAIN and bool(
        {w for m in (*marks[max(0, at - 1) : at], *marks[at + 1 : at + 2]) for w in m.text.split()} & _GREETING
    )
    asked = len(marks) == at + 2 and kind_at(marks, at + 1) is Kind.QUERY and marks[at].text in ("again", "repeat that")
    old = marks[at].text == "same old"
    return thing or addressed or seems or greets or asked or old or after in _LATER
