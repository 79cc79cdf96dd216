"""Marks that belong to a hurt, and so to no set: what counts its places, and bare numbers after it."""

from collections.abc import Sequence

from bot.notation.clauses import kind_at, part_of, text_at
from bot.notation.kinds import Kind
from bot.notation.segments import EDGES
from bot.notation.tokens import Mark
from bot.notation.wordlist import words


def counted_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """`both` and `all` before a hurt, which count its places and no sets: `145x8, both my wrists hurt`."""
    out: set[int] = set()
    for place in hurt:
        at = place - 1
        while at >= 0 and marks[at].kind is Kind.FILL:
            at -= 1
        if at >= 0 and marks[at].kind in (Kind.EACH, Kind.ALL) and marks[at].text.split()[0] in ("both", "all"):
            out.add(at)
    return out


def bare_after(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """Bare numbers in the part of a hurt, after it: `hurts on chin 3` is no set; `foot cramped so 16` is one."""
    out: set[int] = set()
    for place in sorted(hurt):
        at = place + 1
        while at < len(marks) and marks[at].kind not in EDGES and at not in hurt and marks[at].text != "but":
            after = marks[at + 1].kind if at + 1 < len(marks) else None
            before = marks[at - 1].kind
            linked = (Kind.X, Kind.FOR, Kind.AT, Kind.WITH, Kind.NUM, Kind.KG, Kind.LB, Kind.REPS, Kind.SECONDS, Kind.S,
                      Kind.MINUTES, Kind.HOURS)  # fmt: skip
            told = next((m.text for m in reversed(marks[place:at]) if m.text not in ("the", "only", "just")), "")
            done = told in ("got", "did", "managed", "so") or _is_gone_to(marks, at)
            if marks[at].kind is Kind.NUM and after not in linked and before not in linked and not done:
                out.add(at)
            at += 1
    return out


def _is_gone_to(marks: Sequence[Mark], at: int) -> bool:
    """`so dropped it to 55`, `so went down to 55`: a load that was changed for."""
    said = [w for m in marks[max(0, at - 4) : at] for w in m.text.split()]
    return said[-1:] == ["to"] and bool(_CHANGED & set(said))


_CHANGED = frozenset(words("dropped drop went lowered reduced cut backed down stripped moved switched changed"))
_TIMES = (Kind.MINUTES, Kind.HOURS, Kind.SECONDS)
_LASTED = frozenset(words("been lasted lasting lasts took takes within since"))
_SINCE = frozenset(words("ago later since afterwards now"))
_FOR = frozenset(words("for after"))
_ABOUT = frozenset(words("about like only around maybe"))


def lasting(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """How long it has hurt, which is no hold: `arm wont lift, been 5 min`, `10 minutes after the bike no breath`."""
    out: set[int] = set()
    for place in range(len(marks) - 1) if hurt else ():
        if marks[place].kind is not Kind.NUM or marks[place + 1].kind not in _TIMES or place in hurt:
            continue
        start, end = part_of(marks, place)
        before = [w for m in marks[max(start, place - 3) : place] for w in m.text.split()]
        after = [w for m in marks[place + 2 : place + 3] for w in m.text.split()]
        told = bool(_LASTED & set(before[-3:])) or bool(_SINCE & set(after[:1]))
        led = [w for w in before if w not in _ABOUT][-1:]
        opens = place == start and after[:1] in (["after"], ["into"]) and any(p in hurt for p in range(place, end))
        of_it = opens or (bool(_FOR & set(led)) and any(p in hurt for p in range(start, place)))
        named = any(m.kind is Kind.NAME for m in marks[start:end])
        if (of_it or (told and not named)) and kind_at(marks, place - 1) is not Kind.X:
            out |= {place, place + 1}
    return out


def told_of_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """What tells when or where it hurts: `droopy on one side`, `rep 5 my back went`, `pinches every time i brace`."""
    out: set[int] = set()
    for place, mark in enumerate(marks) if hurt else ():
        side = mark.kind is Kind.NUM and mark.text == "one" and text_at(marks, place + 1) == "side"
        if side and kind_at(marks, place - 1) not in (Kind.NUM, Kind.REPS) and _in_hurt(marks, place, hurt):
            out |= {place, place + 1}
        if mark.kind is Kind.NUM and text_at(marks, place - 1) == "rep" and place + 1 in hurt:
            out |= {place - 1, place}
        again = mark.kind is Kind.ALL and mark.text.endswith(" time")
        if again and text_at(marks, place + 1).split()[:1] in _DOERS and _in_hurt(marks, place, hurt):
            out.add(place)
    return out


def _in_hurt(marks: Sequence[Mark], place: int, hurt: set[int]) -> bool:
    """Whether a hurt is told in the part of a place."""
    start, end = part_of(marks, place)
    return any(p in hurt for p in range(start, end))


_DOERS = (["i"], ["it"], ["my"], ["the"], ["we"], ["when"])


def sides_of_hurts(marks: Sequence[Mark], hurt: set[int]) -> set[int]:
    """`elbow 2/10 and shoulder 4/10, both the left side`: the side of all hurts before it, in a part of its own."""
    out: set[int] = set()
    for place, mark in enumerate(marks):
        if mark.kind is not Kind.EACH or mark.text.split()[0] != "both":
            continue
        before = place - 1
        while before >= 0 and marks[before].kind in (Kind.FILL, Kind.COMMA):
            before -= 1
        at = place + 1
        while at < len(marks) and marks[at].kind in (Kind.FILL, Kind.LEFT, Kind.RIGHT, Kind.AT, Kind.WITH):
            at += 1
        sided = any(m.kind in (Kind.LEFT, Kind.RIGHT) for m in marks[place + 1 : at])
        if before in hurt and sided and (at >= len(marks) or marks[at].kind in EDGES):
            out |= set(range(place, at))
    return out
