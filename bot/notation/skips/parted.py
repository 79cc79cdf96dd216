"""Verbs that have their name in the middle, as what skips: `left the press out`, `gave the rows a miss`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.clauses import text_at
from bot.notation.days.weekdays import WEEKDAYS
from bot.notation.kinds import Kind
from bot.notation.skips.reach import PRONOUNS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_PARTED = frozenset(words(
    "left leave took take taking leaving cut gave give giving given called calling ended sack sacked sacking "
    "knock knocking knocked crossed crossing kick kicked kicking push pushed pushing move moved moving punt "
    "punted punting bump bumped bumping shifted shifting save saving writing wrote ruled ruling let letting lets "
    "put putting strike struck striking cross scrubbed have"
))  # fmt: skip
_BEHIND = (
    ["out"],
    ["off"],
    ["go"],
    ["up"],
    ["undone"],
    *(["to", day] for day in ("next", "tomorrow", "another", *WEEKDAYS)),
    ["a", "miss"],
    ["the", "miss"],
    ["a", "rest"],
    ["a", "break"],
    ["the", "boot"],
    ["the", "swerve"],
    ["away"],
    ["in", "me"],
    ["be"],
    ["a", "swerve"],
    ["a", "skip"],
    ["there"],
    ["for", "next"],
    ["for", "another"],
    ["for", "tomorrow"],
    ["til", "next"],
    ["until", "next"],
    *(["for", "the", when] for when in ("weekend", "week", "next", "day")),
    *([way, "the", "weekend"] for way in ("to", "til", "till", "until")),
    ["on", "the", "head"],
    ["in", "the", "bin"],
    ["on", "ice"],
    ["on", "hold"],
    ["to", "one", "side"],
    ["on", "the", "shelf"],
)


def with_parted(marks: Sequence[Mark]) -> list[Mark]:
    """The marks with `left` as what skips, where a name, or what stands for one, is between it and its `out`."""
    out = list(marks)
    for place, mark in enumerate(marks):
        if mark.text not in _PARTED:
            continue
        at = place + 1
        while at < len(marks) and at < place + 9 and marks[at].kind in (Kind.FILL, Kind.NAME, Kind.WEAK, Kind.AND):
            if marks[at - 1].kind in (Kind.NAME, Kind.WEAK) and _said(marks, at)[:1] in (["out"], ["off"], ["away"]):
                break
            if marks[at - 1].kind in (Kind.NAME, Kind.WEAK) and _is_behind(marks, at):
                break
            at += 1
        named = at < len(marks) and at > place + 1 and marks[at - 1].kind in (Kind.NAME, Kind.WEAK)
        if text_at(marks, place + 1) in PRONOUNS and _is_name_meant(marks, place):
            two = text_at(marks, place + 2) in ("both", "all")
            if _is_behind(marks, place + 2 + two):
                out[place] = replace(mark, kind=Kind.SKIP, text="skip")
                out[place + 1] = replace(marks[place + 1], text="both" if two else marks[place + 1].text)
                out[place + 2] = replace(marks[place + 2], kind=Kind.FILL)
                out[place + 2 + two] = replace(marks[place + 2 + two], kind=Kind.FILL)
        elif mark.text == "have":
            if named and _said(marks, at) == ["in", "me"] and text_at(marks, place - 1) in ("didnt", "dont", "not"):
                out[place - 1 : place + 1] = [
                    replace(marks[place - 1], kind=Kind.FILL, text="i"),
                    replace(mark, kind=Kind.SKIP),
                ]
        elif named and (_said(marks, at)[:1] in _BEHIND or _is_behind(marks, at)):
            out[place] = replace(mark, kind=Kind.SKIP)
            if _said(marks, at) == ["a", "rest"]:
                out[at + 1] = replace(marks[at + 1], kind=Kind.FILL)
    return out


def _is_name_meant(marks: Sequence[Mark], place: int) -> bool:
    """Whether a pronoun here stands for a name, and for no set or repetition: `8th i had help with so leave it out`."""
    named = max((i for i in range(place) if marks[i].kind in (Kind.NAME, Kind.WEAK)), default=place)
    return (
        not any(m.kind in (Kind.ORD, Kind.LASTREP, Kind.LASTSET, Kind.NUM) for m in marks[named:place])
        and named < place
    )


def _is_behind(marks: Sequence[Mark], place: int) -> bool:
    """Whether the words from a place on are those that end such a verb: all of one word, or its first ones."""
    said = [w for m in marks[place : place + 3] for w in m.text.split()]
    return _said(marks, place) in _BEHIND or any(said[: len(b)] == b for b in _BEHIND if len(b) > _TWO)


_TWO = 2


def _said(marks: Sequence[Mark], place: int) -> list[str]:
    """The two words from a place on."""
    return [w for m in marks[place : place + 2] for w in m.text.split()][:2]
