"""An urgent sign as found, and what all rules for signs ask."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.notation.hurt.matching import Mark
from bot.notation.hurt.negation import negated
from bot.notation.hurt.over import long_ago
from bot.notation.hurt.passage import Passage
from bot.notation.hurt.people import anothers, supposed
from bot.notation.hurt.rows import word_set
from bot.notation.hurt.spots import Spot


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


def stands(scene: Passage, mark: Mark, spot: Spot | None = None) -> bool:
    """Not denied, not another's, not a mere supposition, not history."""
    mine = spot.mine if spot else None
    return not (negated(scene, mark) or anothers(scene, mark, mine) or supposed(scene, mark) or long_ago(scene, mark))


def near(scene: Passage, a: Mark | Spot, b: Mark | Spot, within: int) -> bool:
    """Within so many tokens of each other, and no full stop between."""
    if not scene.same_sentence(a.first, b.first):
        return False
    return (b.first - a.end <= within) if b.first >= a.first else (a.first - b.end <= within)


def bounds(scene: Passage, spot: Spot) -> bool:
    """The knee of `the leg i do not feel from the knee down`: from where it is, and not what."""
    led = "from" in scene.words(spot.first - 2, spot.first)
    return led and not scene.words(spot.end, spot.end + 2).isdisjoint(("down", "downwards", "up", "upwards"))


_TORN = word_set("rip ripped ripping tear tore tearing torn pull pulled peeled")
_BEFORE_SKIN = word_set("the a my some all of both bit bits chunk lot more another off open half")
_SKIN = word_set("skin callus calluses callous callouses calus blister blisters nail toenail fingernail scab")


def tears_skin(scene: Passage, at: int) -> bool:
    """Whether what tore is only what covers a place: the `ripped` of `ripped the skin off my palm hanging`."""
    thing = at + 1
    while thing - at < 4 and scene.word(thing) in _BEFORE_SKIN:  # `tore a bit of`
        thing += 1
    return scene.word(at) in _TORN and scene.word(thing) in _SKIN
