"""Warm-ups that are only spoken of, so that no set is one: `engine is warm`, `after a few warm ups, 275x5`."""

from dataclasses import replace

from bot.notation.clauses import kind_at, text_at
from bot.notation.kinds import Kind
from bot.notation.order.warmups.entries import ENDS, counts_sets, entry_end
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def of_talk(marks: list[Mark]) -> list[Mark]:
    """The `warm` of `engine is warm`, and `after a few warm ups`, `warm up felt heavy but 90x5`: no sets."""
    return [
        replace(m, kind=Kind.FILL) if m.kind is Kind.WARMUP and (_is_ambient(marks, i) or _is_past(marks, i)) else m
        for i, m in enumerate(marks)
    ]


def _is_ambient(marks: list[Mark], place: int) -> bool:
    after_is = kind_at(marks, place - 1) in (Kind.WAS, Kind.AND, Kind.WORD)
    return marks[place].text == "warm" and (after_is or text_at(marks, place + 1) in _AMBIENT)


def _is_past(marks: list[Mark], place: int) -> bool:
    """Whether the sets of a warm-up are only spoken of: `after warming up, 275x5`, `warm up was ok but 275x5`."""
    start, end = place - 1, place + 1
    while kind_at(marks, start) is Kind.FILL and text_at(marks, start) in SOME:
        start -= 1
    ends = kind_at(marks, end) in (None, Kind.COMMA, *ENDS)
    if text_at(marks, start) == "after" and (
        ends or (marks[place].text.endswith("ing up") and counts_sets(marks, end))
    ):
        return True
    while kind_at(marks, end) in (Kind.FILL, Kind.WORD, Kind.FEELS, Kind.WAS) and text_at(marks, end) not in _TURNS:
        end += 1
    said = {w for m in marks[place + 1 : end] for w in m.text.split()}
    turned = text_at(marks, end) in _TURNS or kind_at(marks, end) is Kind.COMMA
    return turned and bool(said & _JUDGING) and entry_end(marks, end + 1) is not None


SOME = frozenset(
    words("a few some my the usual quick couple of short long good proper easy light gentle decent slow little")
)
_TURNS = frozenset(["but", "so", "then"])
_JUDGING = frozenset(["felt", "feeling", "went", "was", "were", "moved", "flew"])
_AMBIENT = ("in", "now", "today", "here", "enough", "outside")
