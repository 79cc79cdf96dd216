"""An urgent sign as found, and what all rules for signs ask."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.scene import Scene, Spot
from bot.notation.hurt.scopes import anothers, long_ago, negated, supposed


@dataclass(frozen=True, slots=True)
class Sign:
    """An urgent sign: its name, its tokens, and the place if one is said."""

    name: str
    tokens: tuple[int, ...]
    spot: Spot | None
    doubts: int = 0
    """Words of it that are another real word, read as a slip."""
    solid: bool = True
    """Whether a telling word of it stands as typed."""


def sign_of(name: str, parts: Iterable[Mark | Spot], spot: Spot | None) -> Sign:
    """The sign made of these marks and spots."""
    all_parts = tuple(parts)
    tokens = tuple(sorted({i for p in all_parts for i in range(p.first, p.end)}))
    doubted = {p.first: p.doubts for p in all_parts if p.doubts}
    return Sign(name, tokens, spot, sum(doubted.values()), any(p.solid for p in all_parts))


def stands(scene: Scene, mark: Mark, spot: Spot | None = None) -> bool:
    """Not denied, not another's, not a mere supposition, not history."""
    mine = spot.mine if spot else None
    return not (negated(scene, mark) or anothers(scene, mark, mine) or supposed(scene, mark) or long_ago(scene, mark))


def near(scene: Scene, a: Mark | Spot, b: Mark | Spot, within: int) -> bool:
    """Within so many tokens of each other, and no full stop between."""
    if not scene.same_sentence(a.first, b.first):
        return False
    return (b.first - a.end <= within) if b.first >= a.first else (a.first - b.end <= within)


def words_in(scene: Scene, first: int, end: int) -> set[str]:
    """The words of the tokens from `first` up to, not with, `end`, as far as there are any."""
    return {scene.word(i) for i in range(max(0, first), min(end, len(scene.tokens)))}


def sentence_words(scene: Scene, index: int) -> set[str]:
    """The words of the sentence that a token stands in."""
    return {scene.word(i) for i in range(len(scene.tokens)) if scene.same_sentence(i, index)}


def implied(mark: Mark) -> Spot | None:
    """The place that a cue means by itself: a headache's head."""
    return (
        Spot(mark.first, mark.end, mark.place, None, None, mark.doubts, mark.solid, mark.typed) if mark.place else None
    )
