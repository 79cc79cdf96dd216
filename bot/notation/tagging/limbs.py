"""Each side, each hand, in the words of other tongues: `12 pr leg`, `8 for every leg`, `10 x leg`, `9 por pierna`.

Put as `each leg`, where a number stands beside it and the limb begins no name (`3 x side plank`).
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.notation.abbreviations import HEADS, singular
from bot.notation.clauses import text_at
from bot.notation.kinds import Kind
from bot.notation.names import Index
from bot.notation.spoken import NUMBER_WORDS
from bot.notation.tokens import Mark
from bot.notation.wordlist import words

_LIMBS = {
    said: limb
    for limb, all_said in (
        (
            "leg",
            "leg legs bein beine pierna piernas gamba jambe perna pernas noga noge nogi ben bacak bacakta been jalka",
        ),
        ("arm", "arm arms brazo brazos braccio bras braco bracos reka reke ramie kol kolda"),
        ("side", "side sides seite lado lados lato cote strona strone side sida taraf tarafta kant puoli"),
        ("foot", "foot feet fuss pie fod fot"),
        ("hand", "hand hands mano mao main hende haand el elde"),
    )
    for said in words(all_said)
}
_EACH = frozenset(
    words("each every pr pro par por per cada je jede jedes jeden jeder chaque ogni varje hver hvert her elke")
)
_OWN = frozenset(words("pr pro par por cada je jede jedes jeden jeder chaque ogni varje hver hvert elke x every"))
"""Those which, or before limbs that, no English hand writes."""
_BETWEEN = frozenset(words("one the single of both my"))
_FAR = 6
"""Marks before or behind which the number stands that is told so."""


def with_limbs(marks: Sequence[Mark], index: Index) -> list[Mark]:
    """The marks with such words as `each` and the limb."""
    out = list(marks)
    for place in range(len(marks) - 1, 0, -1):
        limb = _LIMBS.get(marks[place].text) if marks[place].kind is Kind.WORD else None
        if limb is None or _begins_name(marks, place, index):
            continue
        first = _lead(marks, place, limb)
        if first is None or not _is_beside_number(marks, first, place):
            continue
        each = replace(marks[first], kind=Kind.WORD, text="each", value=None, end=marks[place - 1].end)
        out[first : place + 1] = [each, replace(marks[place], text=limb)]
    return out


def _lead(marks: Sequence[Mark], place: int, limb: str) -> int | None:
    """Where the words for `each` start that lead a limb; `None` where none do, or it is English as it is."""
    at = place - 1
    while at > 0 and (marks[at].text in _BETWEEN or (marks[at].kind is Kind.STOP and text_at(marks, at - 1) == "pr")):
        at -= 1
    lead = marks[at].text
    if lead == "x":
        return at if at == place - 1 and not marks[place].tight else None
    if lead not in _EACH:
        return None
    plain = at == place - 1 and lead not in _OWN and marks[place].text.removesuffix("s") == limb
    return None if plain else at


def _begins_name(marks: Sequence[Mark], place: int, index: Index) -> bool:
    """Whether a name of exercises, or a day, goes on behind the limb: `leg press`, `every leg day`."""
    after = singular(text_at(marks, place + 1))
    return after in index.words or after in HEADS or after in ("day", "workout", "session")


def _is_beside_number(marks: Sequence[Mark], first: int, last: int) -> bool:
    """Whether a number stands near."""
    near = (*marks[max(0, first - _FAR) : first], *marks[last + 1 : last + _FAR])
    return any(m.kind is Kind.NUM or m.text in NUMBER_WORDS for m in near)
