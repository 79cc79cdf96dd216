"""What hinders a skip: it is denied, asked about, only thought of, or only put off to the end of the session."""

import re
from collections.abc import Sequence

from bot.notation.clauses import FARTHEST
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark

_HINDERS = frozenset((Kind.OTHERTIME, Kind.NOT, Kind.UNDONE, Kind.NO))
DENYING = frozenset(["dont", "didnt", "wont", "never", "not", "without", "wouldnt", "cant", "couldnt", "isnt", "no",
                     "shouldnt", "mustnt", "neednt", "refuse", "refusing", "shant"])  # fmt: skip
_LETTING = frozenset(["let", "letting", "me", "myself", "you", "us", "to", "from", "gonna", "going", "about", "dare",
                      "be", "way", "chance", "im", "ill", "on", "thinking", "keep", "even", "allowed"])  # fmt: skip
_STOPPING = ("stop", "stopping", "quit")
_ALWAYS = frozenset(["always", "never", "who", "that", "just", "usually", "often", "also"])
_BEFORE_NOW = frozenset(["last week", "last time", "last session", "last month", "last year", "usually", "normally",
                         "yet"])  # fmt: skip
_FAR = 8
"""Marks that a denial stands before what it denies, or a time behind it."""


_BODY = frozenset(["grip", "arm", "arms", "leg", "legs", "back", "hands", "hand", "forearms", "lungs", "side", "quads",
                   "shoulders", "triceps", "biceps", "glutes", "calves", "abs", "core", "knees", "body"])  # fmt: skip
"""What gives up in a set, and no exercise."""


def is_hindered(marks: Sequence[Mark], place: int) -> bool:
    """Whether the word at a place, which may skip, skips nothing."""
    if _is_asked(marks, place) or (
        marks[place].text.endswith(" out") and [m.text for m in marks[place + 1 : place + 2]] == ["of"]
    ):
        return True  # `the curl machine is out of order`
    if place and marks[place].text == "gave up" and set(marks[place - 1].text.split()) & _BODY:
        return True  # `left arm gave up first`
    if marks[place].text.startswith("dropped") and _is_kit(marks, place + 1):
        return True  # `i dropped the dumbbell, could not hold it`
    before = marks[max(0, place - 2) : place]
    if _is_kept_for_later(marks, place) or _is_only_wished(marks, place) or _is_elsewhere(marks, place):
        return True
    if marks[place].kind in (Kind.SKIP, Kind.SKIPPED) and (_is_not_let(marks, place) or _is_of_others(marks, place)):
        return True
    if marks[place].kind is Kind.SKIP and any(
        m.text in ("maybe", "perhaps", "possibly", "might", "may", "depends") for m in before
    ):
        return True
    numbered = place + 1 < len(marks) and marks[place + 1].kind is Kind.NUM
    if marks[place].kind is Kind.SKIPPED and numbered and marks[place].text.startswith(("no ", "zero ", "nae ")):
        return True  # `rows no energy 50x8`
    if any(m.kind in _HINDERS or m.text in DENYING for m in before):
        return marks[place].kind is not Kind.NO and not _is_intent(before)
    return False


def _is_kit(marks: Sequence[Mark], place: int) -> bool:
    at = place + (place < len(marks) and marks[place].text in ("the", "my", "a"))
    return at < len(marks) and marks[at].text in ("dumbbell", "kettlebell", "bar", "barbell", "weight", "plate")


def _is_elsewhere(marks: Sequence[Mark], place: int) -> bool:
    """`no bench at home`, `missed the bench at my old gym`, `tomorrow no bench`: of another place, time or person."""
    if marks[place].kind not in (Kind.SKIP, Kind.NO, Kind.SKIPPED):
        return False
    behind = place + 1
    while behind < len(marks) and (
        marks[behind].kind in (Kind.NAME, Kind.WEAK) or marks[behind].text in ("the", "any", "my", "machine", "a")
    ):
        behind += 1
    said = " ".join(m.text for m in marks[behind : behind + _FAR])
    led = " ".join(m.text for m in marks[max(0, place - _FAR) : place])
    return bool(_ELSEWHERE.match(said)) or bool(_LED_ELSEWHERE.search(led))


_ELSEWHERE = re.compile(
    r"(?:at home|at (?:his|her|their|my old|my other|another|the other|school|the office)|as a (?:kid|child|teenager)"
    r"|for years|like (?:that|him|her|them)|(?:from|by) (?:my|a) (?:mate|friend)"
    r"|in (?:the|my) (?:garden|shed|garage|house)"
    r"|zone)\b"
)
_LED_ELSEWHERE = re.compile(
    r"\b(?:tomorrow|on holiday|"
    r"rest days|wish there were|wish there was|if it hurts)\s*,?$"
)


def _is_not_let(marks: Sequence[Mark], place: int) -> bool:
    """`dont let me skip rows`, `no way im skipping rows`, `need to stop skipping rows`."""
    at = place - 1
    while at > max(0, place - _FAR) and set(marks[at].text.split()) <= _LETTING:
        at -= 1
    if at < 0 or not set(marks[place].text.split()) & _SKIPPING:
        return False
    denied = marks[at].kind in (Kind.NOT, Kind.NO) or bool(set(marks[at].text.split()) & DENYING)
    return denied or marks[at].text in _STOPPING


def _is_of_others(marks: Sequence[Mark], place: int) -> bool:
    """`my mate always skips rows`, `i skipped rows last week`: not the client's, or not today's."""
    at = place - 1
    while at > max(0, place - _FAR) and set(marks[at].text.split()) <= _ALWAYS:
        at -= 1
    if at >= 0 and marks[at].kind is Kind.OTHERPERSON:
        return True
    behind = place + 1
    while behind < min(len(marks), place + _FAR) and marks[behind].kind in (Kind.NAME, Kind.WEAK, Kind.FILL, Kind.AND):
        behind += 1
    return behind < len(marks) and marks[behind].text in _BEFORE_NOW


_SKIPPING = frozenset(["skip", "skipping", "skipped", "bail", "bailing", "miss", "ditch", "ditching", "leave", "dodge",
                       "cut", "drop", "bin", "avoid"])  # fmt: skip


def _is_asked(marks: Sequence[Mark], place: int) -> bool:
    """`carry on with thrusts or leave them?`, `skip calves?`: asked about."""
    start, end = place, place
    first, last = max(0, place - FARTHEST), min(len(marks), place + FARTHEST)
    while start > first and marks[start - 1].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY, Kind.COMMA):
        start -= 1
    bare = place == start and marks[place].text.split(" ")[0] in _BARE
    if not bare and not any(m.kind is Kind.OR for m in marks[start:place]):
        return False
    while end < last and marks[end].kind not in (Kind.STOP, Kind.LINE, Kind.QUERY):
        end += 1
    apart = bare and any(m.kind is Kind.COMMA for m in marks[place:end])
    return end < len(marks) and marks[end].kind is Kind.QUERY and not apart


_BARE = frozenset(["skip", "leave", "ditch", "bin", "miss", "drop"])
"""Words that open a question of what to do: `skip calves?`, no telling."""
_KEEPING = frozenset(["saving", "save", "leaving", "leave", "keeping", "left", "saved"])
_LATER = frozenset(["last", "end", "later", "finisher", "dessert", "after"])


def _is_kept_for_later(marks: Sequence[Mark], place: int) -> bool:
    """`saving planks for last`: only the order changes."""
    if marks[place].text not in _KEEPING:
        return False
    at = place + 1
    while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.NAME, Kind.WEAK, Kind.AND):
        at += 1
    led = at > place + 1 and at < len(marks) and (marks[at].kind is Kind.FOR or marks[at].text in ("to", "til"))
    said = {w for m in marks[at : at + 3] for w in m.text.split()}
    return led and bool(said & _LATER)


def _is_only_wished(marks: Sequence[Mark], place: int) -> bool:
    """`wanted to skip rows but 60x10`: done all the same."""
    said = " ".join(m.text for m in marks[max(0, place - 3) : place + 1])
    wished = any(f"{wish} " in said for wish in _WISHED)
    return wished and any(m.text == "but" for m in marks[place + 1 : place + 8])


_WISHED = ("wanted to", "was going to", "was gonna", "nearly", "almost", "planned to", "tempted to")


def _is_intent(before: Sequence[Mark]) -> bool:
    """`will skip`, `going to skip`: given up all the same; not `dying to skip`, `used to skip`."""
    wished = any(m.text.split(" ")[0] in ("dying", "used", "cant", "love", "tempted") for m in before)
    will = any(
        m.text.split(" ")[-1] in ("will", "ill", "to", "gonna", "have") for m in before if m.kind is Kind.OTHERTIME
    )
    return will and not wished
