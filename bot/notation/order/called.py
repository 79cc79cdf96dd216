"""What a set is called by its effort: `60x5, that was a hard 9`, `first set at a 7`, `felt like a grindy 9`."""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.bounds import EASIEST, HARDEST
from bot.notation.clauses import kind_at
from bot.notation.kinds import Kind
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_HARD = frozenset(
    words(
        "hard solid easy tough grindy strong comfortable true honest brutal proper heavy light smooth ugly slow cheeky"
    )
    + words("legit definite clear firm shaky big soft high low good nice rough real full straight decent")
)
_ENDS = (None, Kind.COMMA, Kind.STOP, Kind.LINE, Kind.AND, Kind.THEN, Kind.QUERY, Kind.BREAK, Kind.CLOSE, Kind.FILL)


def called(marks: list[Mark]) -> list[Mark]:
    """The marks with such numbers as efforts."""
    out: list[Mark] = []
    for place, mark in enumerate(marks):
        if mark.kind is Kind.NUM and _is_scale(mark) and kind_at(marks, place + 1) in _ENDS:
            if _is_at_a(marks, place):
                out[-1] = replace(out[-1], kind=Kind.RPE, text="rpe")
            elif _is_called(marks, place):
                out.append(Mark(Kind.RPE, "rpe", mark.start, mark.start))
        out.append(mark)
    return out


def _is_scale(mark: Mark) -> bool:
    return mark.value is not None and EASIEST <= mark.value <= HARDEST


def _is_at_a(marks: Sequence[Mark], place: int) -> bool:
    """`at a 7` before anything that it could count."""
    before = marks[place - 1] if place else None
    led = before is not None and before.kind is Kind.AT and before.text in ("at a", "at an")
    free = kind_at(marks, place - 2) not in (Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.S)
    return led and free


def _is_called(marks: Sequence[Mark], place: int) -> bool:
    """Whether an article and a word of effort stand before the number, or `that was a` behind a whole set."""
    said = [w for m in marks[max(0, place - 5) : place] for w in m.text.split()]
    if kind_at(marks, place - 1) not in (Kind.FILL, Kind.WORD, Kind.WAS, Kind.FEELS):
        return False
    article = next((i for i in (-1, -2, -3) if said[i : len(said) + i + 1] in (["a"], ["an"])), None)
    if article is None or not any(m.kind is Kind.NUM for m in marks[:place]):
        return False
    between = said[len(said) + article + 1 :]
    verb = said[: len(said) + article][-1:]
    rated = verb in (["was"], ["felt"], ["like"], ["is"], ["thats"], ["say"], ["call"], ["it"], ["probably"], ["maybe"])
    if between:
        return rated and all(w in _HARD for w in between)
    whole = [m.kind for m in marks[:place] if m.kind in (Kind.NUM, Kind.X, Kind.FOR)][-2:]
    told = verb in (["like"], ["say"], ["call"]) or said[: len(said) + article][-2:-1] in (["that"], ["one"], ["it"])
    return rated and told and whole in ([Kind.X, Kind.NUM], [Kind.FOR, Kind.NUM])
