"""Other people by the form of their naming: `the lad before me`, `my son`, `some old boy`, `two women`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LEADS = frozenset(words("a an the my our this that some another one his her every her these those other your"))
_KINDS = frozenset(
    words("old older young younger big little tall huge massive wee elderly nice teenage other new poor")
)
PEOPLE = frozenset(
    words(
        "guy guys bloke blokes lad lads lass dude dudes man men woman women girl girls boy boys kid kids person people",
        "lady ladies gent gentleman chap chaps fella fellas teenager teenagers student students granny grandad grandpa",
        "grandma nan son sons daughter daughters wife husband partner girlfriend boyfriend fiance fiancee brother",
        "brothers sister sisters mum mom mother dad father uncle aunt auntie cousin cousins nephew niece neighbour",
        "neighbor friend friends mate buddy pal colleague coworker boss flatmate roommate housemate spotter trainer",
        "instructor receptionist member members newbie newcomer powerlifter bodybuilder crossfitter beginner",
        "stranger couple influencer nurse teacher twin twins missus hubby bf gf bro toddler child children baby",
        "grandson granddaughter grandkid grandkids stepson stepdaughter",
    )
)
"""Who lifts beside the client."""
_BESIDE = (("before", "me"), ("next", "to", "me"), ("in", "front", "of", "me"), ("ahead", "of", "me"), ("behind", "me"),
           ("beside", "me"), ("after", "me"), ("with", "me"))  # fmt: skip
_OWN = frozenset(words("i me im ive mine my myself we us"))
_OF = frozenset(words("with at to for from by of off than like near beside behind"))
"""Words before a person who does not act: `trained with my son`."""
_TALKED_TO = frozenset(words("boss bro mate man dude buddy pal guys lads"))
"""Words that are said to the coach too: another person only behind a word that leads to one."""


def with_people(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with each such person who does something as one that is not the client."""
    marks = _with_aged(list(marks))
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind not in (Kind.WORD, Kind.FILL) or mark.text not in PEOPLE:
            continue
        start = _start(marks, place)
        start = place if start is None and _is_someone(marks, place) else start
        if start is None or (mark.text in _TALKED_TO and start == place):
            continue
        end = _end(marks, place)
        led = marks[start - 1].text.split()[-1:] if start else []
        if not _acts(marks, end) or (led and led[0] in _OF):
            continue
        out[place] = replace(mark, kind=Kind.OTHERPERSON)
    for place, mark in enumerate(marks):
        if out[place].kind is Kind.OTHERPERSON:
            beside = range(place + 1, _end(marks, place))
            out[beside.start : beside.stop] = [replace(marks[i], kind=Kind.FILL) for i in beside]
        elif _is_whoever(marks, place) or (mark.text in _KIN and _opens(marks, place) and _acts(marks, place + 1)):
            out[place] = replace(mark, kind=Kind.OTHERPERSON)
    return out


def _with_aged(marks: list[Mark]) -> list[Mark]:
    """The marks with the `8 year old` of `my 8 year old did 3` as a kid."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.NUM or not place or marks[place - 1].text.split()[-1:] not in _OWNED:
            continue
        end = place + 1
        while end < len(marks) and end < place + 5 and (marks[end].kind is Kind.DASH or marks[end].text in _AGED):
            end += 1
        if marks[end - 1].text in ("old", "yo", "olds"):
            out[place:end] = [replace(m, kind=Kind.FILL, text="little", value=None) for m in marks[place:end]]
            out[end - 1] = replace(marks[end - 1], kind=Kind.WORD, text="kid")
    return out


_OWNED = (["my"], ["our"], ["the"], ["a"], ["her"], ["his"], ["this"], ["some"])
_AGED = frozenset(words("year years yr yrs old olds yo"))


def _is_someone(marks: Sequence[Mark], place: int) -> bool:
    """`bloke next to me doing 140`, `spotter counted 11`, `kids are 4 and 6`: a person who opens what is told."""
    opens = place == 0 or marks[place - 1].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.OPEN, Kind.DASH)
    following = marks[place + 1].text if place + 1 < len(marks) else ""
    aged = following in ("are", "is", "turned", "turns") and place + 2 < len(marks)
    aged = aged and marks[place + 2].kind is Kind.NUM
    said = {w for m in marks[place + 2 : place + 7] for w in m.text.split()}
    placed = following in ("in", "on", "at", "from", "over", "across", "who") and bool(said & _DOES)
    return opens and (_end(marks, place) > place + 1 or following in _SAYING | _DOES or aged or placed)


_DOES = frozenset(words("had has did does doing was using lifting squatting benching pulling repping hit put"))
_SAYING = frozenset(words("counted counts said says reckons reckoned called thought thinks claims claimed saw"))
_HAVING = frozenset(words("had has was left used trained benched squatted is put"))
_KIN = frozenset(words("dad mum mom daddy mummy nan granny grandma grandad grandpa hubby wifey"))


def _is_whoever(marks: Sequence[Mark], place: int) -> bool:
    """`whoever had the rack before me`."""
    following = marks[place + 1].text if place + 1 < len(marks) else ""
    return marks[place].text == "whoever" and following in _HAVING


def _opens(marks: Sequence[Mark], place: int) -> bool:
    """Whether a person without a word that leads to them starts what is told, and does something: `dad squatted 60`."""
    starts = place == 0 or marks[place - 1].kind in (Kind.STOP, Kind.LINE, Kind.COMMA, Kind.AND)
    following = marks[place + 1].kind if place + 1 < len(marks) else None
    return starts and following not in (Kind.NUM, Kind.COMMA, Kind.STOP, None)


def _start(marks: Sequence[Mark], place: int) -> int | None:
    """Where the words that lead to a person start; `None` where none does."""
    at = place - 1
    while at >= 0 and marks[at].text in _KINDS:
        at -= 1
    if at < place - 1 and (at < 0 or marks[at].kind in (Kind.STOP, Kind.LINE, Kind.COMMA)):
        return at + 1
    if at >= 0 and (marks[at].text in _LEADS or marks[at].text.split()[-1:] in (["the"], ["a"])):
        return at
    return None


def _end(marks: Sequence[Mark], place: int) -> int:
    """Where what places a person ends: `before me`."""
    said = tuple(w for m in marks[place + 1 : place + 5] for w in m.text.split())
    for form in _BESIDE:
        if said[: len(form)] == form:
            at = place + 1
            left = len(form)
            while left > 0 and at < len(marks):
                left -= len(marks[at].text.split())
                at += 1
            return at
    return place + 1


def _acts(marks: Sequence[Mark], at: int) -> bool:
    """Whether the person does something: a word follows that is not the client's own."""
    if at >= len(marks):
        return False
    mark = marks[at]
    told = mark.kind in (Kind.WORD, Kind.FILL, Kind.WAS, Kind.NAME, Kind.WEAK, Kind.COULD, Kind.DONE, Kind.OTHERTIME,
                         Kind.NUM, Kind.AT, Kind.WITH)  # fmt: skip
    return told and not set(mark.text.split()) & _OWN
